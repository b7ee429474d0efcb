import { RED_FLAG_WORDS } from '../lexicon/closed-words.ts';
import { orNone } from '../none.ts';
import type { FindingNode, ReadingProblem, StatementNode } from '../syntax.ts';
import type { Span } from '../values.ts';
import type { Item } from './items.ts';

const WORDS = new RegExp(`(?<![\\p{L}\\d])(?:${RED_FLAG_WORDS.join('|')})(?![\\p{L}\\d])`, 'giu');

/** Adds a report for every red-flag word that no clear finding has read; it stands instead of a plain report of that word. */
export function withRedFlags(
  line: string,
  items: readonly Item[],
  statements: readonly StatementNode[],
  problems: readonly ReadingProblem[],
): readonly ReadingProblem[] {
  if (line.search(WORDS) < 0) return orNone(problems);
  const comment = items.find(({ is }) => is === 'comment')?.start ?? line.length;
  const findings = statements.flatMap((statement) => statement.findings);
  const flags: ReadingProblem[] = [];
  for (const match of line.slice(0, comment).matchAll(WORDS)) {
    const at = { start: match.index, end: match.index + match[0].length };
    if (!findings.some((finding) => reads(finding, at)) || findings.some((finding) => mayBeOf(finding, at)))
      flags.push({ code: 'unread-red-flag', text: match[0], ...at });
  }
  if (flags.length === 0) return orNone(problems);
  const plain = problems.filter(({ start, end }) => !flags.some((flag) => flag.start === start && flag.end === end));
  return [...plain, ...flags].sort((a, b) => a.start - b.start);
}

/** `calf not swollen, tender`: what is unclear may be of it. */
const mayBeOf = ({ causes, status }: FindingNode, { start, end }: Span): boolean =>
  status === 'present' &&
  causes.some(
    (cause) => cause.why === 'foreign part' && cause.text === '' && cause.start === start && cause.end === end,
  );
const within = (inner: Span, outer: Span): boolean => outer.start <= inner.start && inner.end <= outer.end;
const reads = (finding: FindingNode, word: Span): boolean =>
  finding.causes.length === 0 &&
  within(word, finding) &&
  !(finding.id === 'temperature' && Object.values(finding.slots).some(({ causes }) => causes.length > 0)) &&
  !finding.quotes.some((quote) => within(word, quote)) &&
  !Object.values(finding.slots).some((slot) => slot.causes.length > 0 && within(word, slot));
