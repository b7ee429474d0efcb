import type { Section } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';
import { formOf } from '../../grammar/reader/forms.ts';
import { subjectText } from '../../grammar/reader/read-subjects.ts';
import type { LineSyntax, SubjectNode } from '../../grammar/syntax.ts';
import type { Fix, Report } from './analysis.ts';
import type { Place, VisitFacts } from './facts.ts';
import { replace } from './rules/define-rule.ts';

const fix = (title: string, place: Place, text: string): Fix => ({
  title,
  safety: 'needs review',
  edits: [replace(place, text)],
});
const keyOf = ({ line, start }: Place): string => `${line}:${start}`;
const kindOf = ({ at }: SubjectNode) => (at === 'webs' ? 'web' : 'ray');

/** A finding without ray or web: the last one that was named above it or on its line, if it can be said of one. */
export function subjectNamer(
  lines: readonly LineSyntax[],
  { unclear }: VisitFacts,
): (report: Report) => Fix | undefined {
  const open = new Map(unclear.filter(({ why }) => why === 'no subject').map((each) => [keyOf(each.place), each]));
  return ({ place }) => {
    const found = open.get(keyOf(place));
    if (!found || found.finding === 'panel') return undefined;
    const kinds = entryOf(found.finding).subjects;
    const last = lastNamed(lines.slice(0, place.line + 1), (subject) => kinds.includes(kindOf(subject)));
    const text = lines[place.line]?.text.slice(found.word.start, found.word.end);
    if (!last || !text) return undefined;
    const named = `${subjectText(last)} ${text}`;
    return fix(`Name the ${kindOf(last)}: ${named}`, found.word, named);
  };
}

function lastNamed(lines: readonly LineSyntax[], fits: (subject: SubjectNode) => boolean): SubjectNode | undefined {
  const named = ({ statements, heading }: LineSyntax): SubjectNode[] => [
    ...(heading?.subject ? [heading.subject] : []),
    ...statements.flatMap(({ findings }) => findings.flatMap(({ subject }) => subject ?? [])),
  ];
  for (const line of lines.toReversed()) {
    const found = named(line).findLast(fits);
    // A side that came with several rays or with a web has no short form: the clinician writes it.
    if (found) return found.side && !(found.at === 'rays' && found.rays.length === 1) ? undefined : found;
  }
  return undefined;
}

/** A finding in a section that cannot hold it: the sections that can. */
export function nameSection({ text, statements }: LineSyntax, { code, place }: Report): Fix[] {
  if (code !== 'word-out-of-place' && code !== 'unclear-finding') return [];
  const word = text.slice(place.start, place.end);
  const form = formOf(word);
  const here = statements.find(({ start, end }) => start <= place.start && place.start < end)?.section;
  const sections = new Set(form?.findings.flatMap(({ id, lead }) => lead?.sections ?? entryOf(id).sections));
  if (here === undefined || sections.has(here)) return [];
  const before = text.slice(0, place.start).trimEnd();
  const opens = before === '' || ['.', ';'].includes(before.at(-1) ?? '');
  const at = { ...place, start: opens ? place.start : before.length };
  return [...sections]
    .filter((section) => section !== 'exam')
    .slice(0, 3)
    .map((section) => fix(`Name the section: ${section} ${word}`, at, `${opens ? '' : '; '}${section} ${word}`));
}

/** A line that opens no section and holds words of others: the two that most of them may stand in. */
export function nameSectionOfLine(line: LineSyntax, at: number): Fix[] {
  const [first] = line.roles;
  if (!first || first.kind === 'keyword' || line.statements.some(({ section }) => section !== 'exam')) return [];
  const words = new Map<Section, number>();
  for (const { kind, start, end } of line.roles) {
    if (kind !== 'reported') continue;
    const form = formOf(line.text.slice(start, end));
    const sections = new Set(form?.findings.flatMap(({ id, lead }) => lead?.sections ?? entryOf(id).sections));
    if (!sections.has('exam')) for (const section of sections) words.set(section, (words.get(section) ?? 0) + 1);
  }
  const place = { line: at, start: first.start, end: first.start };
  return [...words]
    .sort(([, a], [, b]) => b - a)
    .slice(0, 2)
    .map(([section]) => fix(`Read this line as ${section}`, place, `${section} `));
}

/**
 * An unread word after a finding, or a subject between two: what follows becomes a part of its own, where a finding is clear by it and
 * nothing more is left unread. A number is never parted from its finding, nor a web or a date from what it is of.
 */
export function splitAt(line: LineSyntax, { code, place, related }: Report): Fix | undefined {
  if (code !== 'unclear-finding' || !related.some((each) => each.place.end <= place.start)) return undefined;
  const { text, roles, problems } = line;
  const word = text.slice(place.start, place.end);
  const before = text.slice(0, place.start).trimEnd();
  const free = before !== '' && before.length < place.start && !',;.:='.includes(before.at(-1) ?? '');
  const subject = roles.some(({ kind, start }) => kind === 'subject' && start === place.start);
  const opened = problems.some((each) => each.start === place.start && each.code.startsWith('ambiguous'));
  if (word === '' || !free || opened || (!subject && /^\d/.test(word))) return undefined;
  const by = `${subject ? ';' : ','} ${word}`;
  const after = readLine(before + by + text.slice(place.end), line.under);
  if (after.problems.length > problems.length || clearIn(after) <= clearIn(line)) return undefined;
  return fix(`Split before "${word}"`, { ...place, start: before.length }, by);
}
const clearIn = ({ statements }: LineSyntax): number =>
  statements.flatMap(({ findings }) => findings).filter(({ causes }) => causes.length === 0).length;
