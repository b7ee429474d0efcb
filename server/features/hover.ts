import type { Hover } from 'vscode-languageserver-types';
import { PREFIX_WORDS } from '../../grammar/lexicon/lifecycle-words.ts';
import { own } from '../../grammar/own.ts';
import type { SubjectNode } from '../../grammar/syntax.ts';
import { advised } from '../clinical/advise.ts';
import type { Evidence, Report, VisitAnalysis } from '../clinical/analysis.ts';
import { overdue } from '../clinical/overdue.ts';
import type { Position, Range } from '../workspace/blocks.ts';
import type { Note, Visit } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';
import { paragraphs } from './describe.ts';
import { describeRay, describeSite } from './describe-computed.ts';
import { describeFinding } from './describe-finding.ts';
import { describeWord } from './describe-language.ts';
import { describeRule } from './describe-rule.ts';
import { describeAnatomicalGrades, describeScales } from './describe-scales.ts';
import { HEADER_WORDS } from './header-words.ts';
import { isOf, subjectAt, type WordAt, wordAt } from './word-at.ts';

/**
 * Explains what is at a position: the rule behind each report there, then a finding, its value, a subject with its computed
 * stage, or a header word. `rulesPage` is where the pages of the rules stand.
 */
export function hover(note: Note, position: Position, rulesPage?: string): Hover | null {
  const word = wordAt(note, position);
  const told = reportsAt(note, position);
  const rules = [...new Set(told.map(({ report }) => report.code))].map((code) => describeRule(code, rulesPage));
  const about = word ? aboutWord(note, position, word) : '';
  const value = [...rules, about].filter((part) => part !== '').join('\n\n---\n\n');
  const range = word && about !== '' ? word.range : told[0]?.range;
  return value === '' || !range ? null : { contents: { kind: 'markdown', value }, range };
}

function aboutWord(note: Note, position: Position, word: WordAt): string {
  const language = describeWord(word, note.settings);
  if (word.role.finding) return [language, finding(note, position, word)].filter((part) => part !== '').join(RULE);
  return language || subject(note, position, word) || header(word);
}

/** The reports on the words at a position, as far as they are known. */
function reportsAt(note: Note, { line, character }: Position): { report: Report; range: Range }[] {
  const index = note.indexAt(line);
  const firstLine = note.firstLine(index);
  return note.reports(index).flatMap((report) => {
    const { line: at, start, end } = report.place;
    const here = firstLine + at === line && start <= character && character <= end;
    return here ? [{ report, range: spanOn(line, start, end) }] : [];
  });
}

function finding(note: Note, position: Position, { role, line }: WordAt): string {
  const { finding } = role;
  if (!finding) return '';
  const meaning = describeFinding(finding);
  if (finding === 'anatomical-grade' || finding === 'plate-found')
    return paragraphs(meaning, describeAnatomicalGrades());
  if (finding !== 'stage') return paragraphs(meaning, role.slot === 'grade' ? scale(note, role.finding) : '');
  const node = line.statements
    .flatMap(({ findings }) => findings)
    .find(({ id, start, end }) => id === 'stage' && start <= role.start && role.start < end);
  const stages = node?.subject ? computed(note, position, node.subject) : '';
  return paragraphs(stages, node?.subject ? scales(note, position, node.subject) : '', meaning);
}

/** Three scales exist whose numbers differ, so a grade is never shown without its own. */
function scale(note: Note, finding: string | undefined): string {
  if (finding !== 'drawer') return '';
  const { drawerScale } = note.header;
  return drawerScale
    ? `*Scale.* ${drawerScale}, from the \`scales\` line, where the statement names no other.`
    : '*Scale.* Not stated; read as 0-4 for staging. A line `scales drawer 0-4` in the header states it.';
}

function subject(note: Note, position: Position, word: WordAt): string {
  const named = subjectAt(word);
  return named ? computed(note, position, named) : '';
}

function computed(note: Note, { line }: Position, subject: SubjectNode): string {
  const visit = note.visitAt(line);
  if (!visit) return '';
  const rays = advised(visit.analysis, note).rays.filter((ray) => isOf(ray, subject));
  const each = (ray: (typeof rays)[number]) => describeRay(visit.analysis, ray, (evidence) => textOf(visit, evidence));
  const newest = note.indexAt(line) === note.blockCount - 1;
  const past = newest ? overdue(visit.analysis, note.today).map(({ text }) => `- ${text}`) : [];
  const due = past.length > 0 && rays.length > 0 ? [`*Overdue*, by common practice\n\n${past.join('\n')}`] : [];
  return [...sites(visit.analysis, subject), ...rays.map(each), ...due].join(RULE);
}
const RULE = '\n\n---\n\n';

/** The other scales of the rays of a subject; only the word `stage` asks for them. */
function scales(note: Note, { line }: Position, subject: SubjectNode): string {
  const visit = note.visitAt(line);
  if (!visit || subject.at === 'webs') return '';
  const rays = visit.analysis.rays.filter((ray) => isOf(ray, subject));
  return paragraphs(...rays.map((ray) => describeScales(visit.analysis, ray)));
}

/** The webs or the great toe that a subject names: what may explain them, and never a stage. */
function sites(analysis: VisitAnalysis, subject: SubjectNode): string[] {
  const { side } = subject;
  const sides = (['right', 'left'] as const).filter((each) => side === undefined || side === 'both' || side === each);
  const named: readonly Parameters<typeof describeSite>[2][] =
    subject.at === 'webs'
      ? subject.webs.map((web) => ({ at: 'web', web }))
      : subject.at === 'rays' && subject.rays.includes(1)
        ? [{ at: 'great toe' }]
        : [];
  const all = sides.flatMap((on) => named.map((site) => describeSite(analysis, on, site)));
  return all.filter((text) => text !== '');
}

const textOf = ({ lines }: Visit, { place }: Evidence): string =>
  lines[place.line]?.text.slice(place.start, place.end) ?? '';

const header = ({ line, role, text }: WordAt): string =>
  (line.kind === 'header' || (PREFIXES.includes(text.toLowerCase()) && role === line.roles[0])) &&
  role.kind === 'keyword'
    ? (own(HEADER_WORDS, text.toLowerCase())?.about ?? '')
    : '';
/** Words before the statements of a line. */
const PREFIXES: readonly string[] = PREFIX_WORDS;
