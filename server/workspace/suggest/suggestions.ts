import { RED_FLAG_WORDS } from '../../../grammar/lexicon/closed-words.ts';
import { readLine } from '../../../grammar/read-line.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Span } from '../../../grammar/values.ts';
import { formatLine } from '../format-line.ts';
import { isPlainWord } from './plain-words.ts';
import { type Alike, alike, weight } from './sound-index.ts';

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
  const tried = spansWith(line, unknown)
    .flatMap((span, widest) =>
      alike(line.text.slice(span.start, span.end)).map((each) => ({ ...each, ...span, order: weight(each) + widest })),
    )
    .sort((a, b) => a.order - b.order)
    .slice(0, TRIED)
    .flatMap((each) => inPlace(line, each));
  // Beside a word that is nearly the same, one that is far off is no guess worth reading.
  const nearest = Math.min(...tried.map(({ letters }) => letters));
  const fitting = tried.filter(({ letters }) => letters <= nearest + 1).sort((a, b) => a.rank - b.rank);
  return fitting
    .filter((each, i) => !fitting.slice(0, i).some((better) => isSame(better, each)))
    .slice(0, OFFERED)
    .map(({ text, start, end, fits }) => ({ text, start, end, fits }));
}

/** The formatter would write the same, or one is the plural of the other. */
const isSame = (a: Suggestion & { written: string }, b: typeof a): boolean =>
  a.written === b.written || (a.start === b.start && a.end === b.end && b.text === `${a.text}s`);

interface Tried extends Alike, Span {
  readonly order: number;
}
/** The line with the form in its place: how well it reads, and what the formatter would write, which is the same for two words of one meaning. */
function inPlace(line: LineSyntax, each: Tried): (Tried & Suggestion & { rank: number; written: string })[] {
  const { text, start, end, order } = each;
  const before = cost(line);
  const after = readLine(line.text.slice(0, start) + text + line.text.slice(end), line.under);
  const role = after.roles.find((other) => other.start <= start && start < other.end);
  const opens = role?.kind !== 'keyword' || /(?:^|[,;.])\s*$/.test(line.text.slice(0, start));
  const read = role !== undefined && role.kind !== 'reported' && opens;
  const left = cost(after);
  const fits = read && (left === 0 || left < before - 1);
  const typed = line.text.slice(start, end);
  // What is right in itself is taken for another word only where that makes the line whole.
  if (typed.split(/\s+/).every(isPlainWord) && !fits) return [];
  // A red flag is worth asking about even where its finding cannot stand.
  const flag = RED_FLAG_WORDS.includes(text) && each.letters === 1;
  if (!flag && !(read && left < before)) return [];
  return [{ ...each, fits, rank: left * 2 + order, written: formatLine(after) }];
}

/** What a line leaves unread, and half as much for what is only unclear by it. */
const cost = ({ problems, statements }: LineSyntax): number =>
  problems.length + statements.flatMap(({ findings }) => findings).filter(({ causes }) => causes.length > 0).length / 2;

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
