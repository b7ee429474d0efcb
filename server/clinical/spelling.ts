import { distance } from 'fastest-levenshtein';

const OFFERED = 2;

/** How many letters may differ, by the length of the word. */
export const reach = (length: number): number => (length < 4 ? 1 : 2);

/** How many letters differ; some that only changed places count as one. */
export const lettersApart = (a: string, b: string): number => (sorted(a) === sorted(b) && a !== b ? 1 : distance(a, b));

/** Those of a few words that are spelt like another one, the most alike first. */
export function speltLike(word: string, words: Iterable<string>): string[] {
  const typed = word.toLowerCase();
  return [...new Set(words)]
    .map((each) => ({ each, letters: lettersApart(typed, each) }))
    .filter(({ each, letters }) => letters > 0 && letters <= reach(Math.min(typed.length, each.length)))
    .sort((a, b) => a.letters - b.letters)
    .slice(0, OFFERED)
    .map(({ each }) => each);
}
const sorted = (word: string): string => [...word].sort().join('');
