import { SECTION_WORD } from '../../grammar/lexicon/closed-words.ts';
import { readLine } from '../../grammar/read-line.ts';
import { subjectText } from '../../grammar/reader/read-subjects.ts';
import type { FindingNode, LineSyntax, StatementNode } from '../../grammar/syntax.ts';

/**
 * A finding of a line as a line of its own, in the words in which it was written; `undefined` where it is unclear, or would
 * not be read the same there.
 */
export function isolatedFinding(
  { text }: LineSyntax,
  { section }: StatementNode,
  node: FindingNode,
): string | undefined {
  if (!isClear(node)) return undefined;
  const { subject, start, end } = node;
  const outside = subject && !(start <= subject.start && subject.end <= end);
  const line = [
    ...(section === 'exam' ? [] : [SECTION_WORD[section]]),
    ...(outside ? [subjectText(subject)] : []),
    text.slice(start, end),
  ].join(' ');
  const { statements, problems } = readLine(line);
  const findings = statements.flatMap((each) => each.findings);
  const verbatim = statements.some((each) => each.verbatim.length > 0);
  const [only] = findings;
  return !verbatim && problems.length === 0 && only && findings.length === 1 && meaningOf(only) === meaningOf(node)
    ? line
    : undefined;
}

const isClear = ({ causes, slots }: FindingNode): boolean =>
  causes.length === 0 && Object.values(slots).every((slot) => slot.causes.length === 0);

function meaningOf({ id, section, status, side, subject, slots, quotes, causes }: FindingNode): string {
  const { start: _, end: __, ...named } = subject ?? { start: 0, end: 0 };
  const values = Object.entries(slots)
    .map(([slot, { value, causes: doubts }]) => [slot, value, doubts.length])
    .sort(([a], [b]) => String(a).localeCompare(String(b)));
  return JSON.stringify([id, section, status, side, named, values, quotes.map(({ text }) => text), causes.length]);
}
