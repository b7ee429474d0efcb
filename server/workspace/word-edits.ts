import type { Span } from '../../grammar/values.ts';

/** A part of a line with what stands in its place. */
export interface WordEdit extends Span {
  readonly text: string;
}
interface Token extends Span {
  readonly text: string;
}

/** Beyond so many pairs of words a line is compared from its two ends only. */
const PAIRS = 200_000;

/**
 * The edits that turn one text of a line into another: one for each word, mark or stretch of white space that differs, none over a word
 * that both have, so that cursors and marks stay in place.
 */
export function wordEdits(old: string, text: string): WordEdit[] {
  const [before, after] = [tokensOf(old), tokensOf(text)];
  const edits: WordEdit[] = [];
  let [i, j] = [0, 0];
  for (const [nextI, nextJ] of [...common(before, after), [before.length, after.length] as const]) {
    edits.push(...between(before.slice(i, nextI), after.slice(j, nextJ), before[i]?.start ?? old.length));
    [i, j] = [nextI + 1, nextJ + 1];
  }
  return edits;
}

const isWord = ({ text }: Token): boolean => /\S/.test(text);
const tokensOf = (line: string): Token[] =>
  [...line.matchAll(/\s+|[,;]|[^\s,;]+/g)].map(({ 0: text, index }) => ({
    text,
    start: index,
    end: index + text.length,
  }));

/** What stands between two words that both texts have. */
function between(old: readonly Token[], text: readonly Token[], at: number): WordEdit[] {
  // White space that is equal on both sides tells the words apart, one for one.
  const paired = old.length === text.length && old.every((each, i) => isWord(each) === isWord(text[i] ?? each));
  if (!paired) return [trimmed(old, text, at)];
  return old.flatMap((each, i) => {
    const other = text[i]?.text ?? each.text;
    return other === each.text ? [] : [{ start: each.start, end: each.end, text: other }];
  });
}

/** One edit for a run of words, without what is equal at its two ends. */
function trimmed(old: readonly Token[], text: readonly Token[], at: number): WordEdit {
  let start = 0;
  while (start < old.length && start < text.length && old[start]?.text === text[start]?.text) start++;
  let end = 0;
  const most = Math.min(old.length, text.length) - start;
  while (end < most && old.at(-1 - end)?.text === text.at(-1 - end)?.text) end++;
  const [cut, put] = [old.slice(start, old.length - end), text.slice(start, text.length - end)];
  const from = cut[0]?.start ?? old[start]?.start ?? old.at(-1)?.end ?? at;
  return { start: from, end: cut.at(-1)?.end ?? from, text: put.map((each) => each.text).join('') };
}

/** The longest run of words, in order, that both have; as pairs of indices. */
function common(a: readonly Token[], b: readonly Token[]): (readonly [number, number])[] {
  const [left, right] = [indicesOf(a), indicesOf(b)];
  const same = (i: number, j: number): boolean => a[left[i] ?? -1]?.text === b[right[j] ?? -1]?.text;
  let first = 0;
  while (first < left.length && first < right.length && same(first, first)) first++;
  let last = 0;
  const most = Math.min(left.length, right.length) - first;
  while (last < most && same(left.length - 1 - last, right.length - 1 - last)) last++;
  const pair = (i: number, j: number): readonly [number, number] => [left[i] ?? 0, right[j] ?? 0];
  const [n, m] = [left.length - last - first, right.length - last - first];
  return [
    ...Array.from({ length: first }, (_, i) => pair(i, i)),
    ...(n * m > PAIRS
      ? []
      : longest(n, m, (i, j) => same(first + i, first + j)).map(([i, j]) => pair(first + i, first + j))),
    ...Array.from({ length: last }, (_, i) => pair(left.length - last + i, right.length - last + i)),
  ];
}
const indicesOf = (tokens: readonly Token[]): number[] => tokens.flatMap((each, i) => (isWord(each) ? [i] : []));

function longest(n: number, m: number, same: (i: number, j: number) => boolean): (readonly [number, number])[] {
  const lengths = Array.from({ length: n + 1 }, () => new Uint32Array(m + 1));
  const at = (i: number, j: number): number => lengths[i]?.[j] ?? 0;
  for (let i = n - 1; i >= 0; i--)
    for (let j = m - 1; j >= 0; j--)
      (lengths[i] as Uint32Array)[j] = same(i, j) ? at(i + 1, j + 1) + 1 : Math.max(at(i + 1, j), at(i, j + 1));
  const pairs: (readonly [number, number])[] = [];
  for (let i = 0, j = 0; i < n && j < m; ) {
    if (same(i, j)) pairs.push([i++, j++]);
    else if (at(i + 1, j) >= at(i, j + 1)) i++;
    else j++;
  }
  return pairs;
}
