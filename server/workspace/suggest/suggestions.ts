import { readLine } from '../../../grammar/read-line.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Span } from '../../../grammar/values.ts';
import { alike } from './sound-index.ts';

/** A form of the language in place of words that could not be read. */
export interface Suggestion extends Span {
  readonly text: string;
  /** With it everything on the line reads that was unclear by the words. */
  readonly fits: boolean;
}

/** Candidates that are tried on the line; each costs reading it once. */
const TRIED = 12;
const OFFERED = 3;
const MOST_WORDS = 3;

/**
 * What may have been meant by an unknown word, alone or with its neighbours (`hall ux valgus`): forms that are spelt or sound like
 * it and that the line can hold in its place, the ones that leave least unread first. Never taken by itself.
 */
export function suggestionsFor(line: LineSyntax, unknown: Span): Suggestion[] {
  if (!/\p{L}{2}/u.test(line.text.slice(unknown.start, unknown.end))) return [];
  const before = cost(line);
  const tried = spansWith(line, unknown)
    .flatMap((span, widest) =>
      alike(line.text.slice(span.start, span.end)).map((each) => ({
        ...each,
        ...span,
        order: each.letters - (each.sound ? 1.5 : 0) + widest,
      })),
    )
    .sort((a, b) => a.order - b.order)
    .slice(0, TRIED);
  const fitting = tried.flatMap(({ text, start, end, order }) => {
    const after = readLine(line.text.slice(0, start) + text + line.text.slice(end), line.under);
    const read = after.roles.some((role) => role.start <= start && start < role.end && role.kind !== 'reported');
    const left = cost(after);
    return read && left < before
      ? [{ text, start, end, fits: left === 0 || left < before - 1, rank: left * 2 + order }]
      : [];
  });
  return fitting
    .sort((a, b) => a.rank - b.rank)
    .slice(0, OFFERED)
    .map(({ rank: _, ...each }) => each);
}

/** What a line leaves unread or unclear. */
const cost = ({ problems, statements }: LineSyntax): number =>
  problems.length + statements.flatMap(({ findings }) => findings).filter(({ causes }) => causes.length > 0).length;

/** The word itself, and the runs of up to three words that hold it. */
function spansWith({ text, roles }: LineSyntax, unknown: Span): Span[] {
  const words = [...text.matchAll(/[\p{L}'’-]+/gu)].map((match) => ({
    start: match.index,
    end: match.index + match[0].length,
  }));
  const at = words.findIndex(({ start }) => start === unknown.start);
  const isBroken = (from: number, to: number) => /[^\p{L}\s'’-]/u.test(text.slice(words[from]?.start, words[to]?.end));
  const spans: Span[] = [{ start: unknown.start, end: unknown.end }];
  for (let length = 2; length <= MOST_WORDS; length++)
    for (let from = Math.max(0, at - length + 1); at >= 0 && from <= at && from + length <= words.length; from++) {
      const [first, last] = [words[from], words[from + length - 1]];
      const free = (span: Span) =>
        !roles.some(
          (role) =>
            role.start < span.end && span.start < role.end && (role.kind === 'keyword' || role.kind === 'subject'),
        );
      if (first && last && !isBroken(from, from + length - 1) && free({ start: first.start, end: last.end }))
        spans.push({ start: first.start, end: last.end });
    }
  return spans;
}
