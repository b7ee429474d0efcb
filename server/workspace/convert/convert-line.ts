import { entryOf } from '../../../grammar/lexicon/index.ts';
import { readLine } from '../../../grammar/read-line.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import { type AnyFact, subjectKey, type VisitFacts } from '../../clinical/facts.ts';
import { formatLine } from '../format-line.ts';
import { proposeBreaks } from './propose-breaks.ts';
import { type Joining, type Written, writeLines } from './write-lines.ts';

/** The lines of a visit, the line among them that is converted, and how the visit is read. */
export interface Dictation {
  readonly lines: readonly LineSyntax[];
  readonly at: number;
  readonly read: (lines: readonly LineSyntax[]) => VisitFacts;
  /** Keeps what was taken back in a comment. */
  readonly remember?: boolean;
}

const JOINING: readonly Joining[] = ['none', 'labels', 'all'];

/**
 * A dictated line as the lines that would have been typed. Every clear fact of the visit is still said, and says the same; breaks,
 * subjects and sections that are proposed may make more facts clear, and a comment on their line names them, to be confirmed. What was
 * not read keeps its words. `undefined` where no such lines are found.
 */
export function convertLine(dictation: Dictation): string[] | undefined {
  const { lines, at, read, remember = false } = dictation;
  const line = lines[at];
  // What is copied from an earlier visit, or names who examined, is left as its writer put it.
  if (line?.kind !== 'statements' || line.carried || line.examiner) return undefined;
  const before = read(lines);
  for (const source of new Set([proposeBreaks(line), line]))
    for (const joining of JOINING) {
      const written = writeLines(source, joining).map((each) => formatted(each, remember));
      if (written.length === 0) return undefined;
      const after = read([...lines.slice(0, at), ...written.map((text) => readLine(text)), ...lines.slice(at + 1)]);
      const same = source === line ? equal(before, after) : contains(after, before);
      if (same && keepsWords(source, written)) return withProposals(written, added(before, after), at);
    }
  return undefined;
}

/** The facts that only the breaks, subjects and sections of the conversion made clear. */
function added(before: VisitFacts, after: VisitFacts): AnyFact[] {
  const said = clear(before);
  return clearFacts(after).filter((fact) => {
    const at = said.indexOf(keyOf(fact));
    if (at >= 0) said.splice(at, 1);
    return at < 0;
  });
}
/** Each line names in a comment what is clear on it by proposal alone, for the clinician to confirm by taking the comment away. */
function withProposals(written: readonly string[], facts: readonly AnyFact[], at: number): string[] {
  return written.map((text, i) => {
    const here = facts.filter(({ origin }) => origin.place.line === at + i);
    const words = new Set(here.map(named));
    if (words.size === 0) return text;
    return `${text}${text.includes('//') ? '; ' : '  // '}${PROPOSED} ${[...words].join(', ')}`;
  });
}
function named({ finding, origin, status }: AnyFact): string {
  const word = origin.kind === 'panel' ? 'normal' : entryOf(finding).word;
  return status === 'absent' || status === 'avoid' ? `no ${word}` : word;
}
/** Opens the comment on what the conversion proposes. */
const PROPOSED = 'proposed, please confirm:';

function formatted({ text, struck }: Written, remember: boolean): string {
  const note =
    remember && struck.length > 0 ? `${text.includes('//') ? ';' : '  //'} said first: ${struck.join(' ')}` : '';
  return formatLine(readLine(`${text}${note}`));
}

const keyOf = ({
  section,
  subject,
  side,
  finding,
  status,
  values,
  unclear,
  quotes,
  origin,
  examiner,
}: AnyFact): string =>
  JSON.stringify([
    section,
    subjectKey(subject, side),
    partOf(subject),
    finding,
    status,
    sorted(values),
    unclear,
    quotes,
    origin.kind,
    examiner,
  ]);
const partOf = (subject: AnyFact['subject']): unknown => ('part' in subject ? subject.part : undefined);
const sorted = (values: object): unknown => Object.entries(values).sort(([a], [b]) => (a < b ? -1 : 1));
const clearFacts = ({ facts }: VisitFacts): AnyFact[] => facts.filter(({ clarity }) => clarity === 'clear');
const clear = (facts: VisitFacts): string[] => clearFacts(facts).map(keyOf);

function contains(after: VisitFacts, before: VisitFacts): boolean {
  const said = clear(after);
  return clear(before).every((each) => {
    const at = said.indexOf(each);
    if (at >= 0) said.splice(at, 1);
    return at >= 0;
  });
}
const equal = (before: VisitFacts, after: VisitFacts): boolean => contains(after, before) && contains(before, after);

/** Is every word that was not read with certainty still there? */
function keepsWords(line: LineSyntax, written: readonly string[]): boolean {
  const there = written.join(' ').toLowerCase();
  return line.roles.every(
    ({ kind, start, end }) =>
      kind !== 'reported' || there.includes(line.text.slice(start, end).toLowerCase().replace(/\s+/g, ' ')),
  );
}
