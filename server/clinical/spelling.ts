import { distance } from 'fastest-levenshtein';

const OFFERED = 2;

/** How many letters may differ, by the length of the word. */
export const reach = (length: number): number => (length < 4 ? 1 : 2);

/** Those of a few words that are spelt like another one, the most alike first; two letters that changed places count as one. */
export function speltLike(word: string, words: Iterable<string>): string[] {
  const typed = word.toLowerCase();
  const apart = (other: string): number => (sorted(typed) === sorted(other) ? 1 : distance(typed, other));
  return [...new Set(words)]
    .map((each) => ({ each, letters: apart(each) }))
    .filter(({ each, letters }) => letters > 0 && letters <= reach(Math.min(typed.length, each.length)))
    .sort((a, b) => a.letters - b.letters)
    .slice(0, OFFERED)
    .map(({ each }) => each);
}
const sorted = (word: string): string => [...word].sort().join('');
