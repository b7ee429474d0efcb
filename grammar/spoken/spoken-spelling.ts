import { CONVERTED, UNIT_WORDS } from '../lexicon/unit-words.ts';
import { isForm } from '../reader/forms.ts';
import type { Item } from '../reader/items.ts';
import { phrases, spanOf, wordAt } from './spoken-phrases.ts';
import { SPELLED } from './spoken-words.ts';

const spelled = phrases(Object.keys(SPELLED));

const LETTER = /^\p{L}$/u;
/** `m t p`, `d p`, `m m`: letters that spell a word of the language, and the few words that are said with a number. */
export function spelledWord(items: readonly Item[], start: number): { item: Item; next: number } | undefined {
  const found = spelled.at(items, start);
  if (found) return { item: wordOf(items, start, found.next, SPELLED[found.phrase] ?? ''), next: found.next };
  let letters = '';
  let best: { item: Item; next: number } | undefined;
  for (let i = start; LETTER.test(wordAt(items, i)); i++) {
    letters += wordAt(items, i);
    if (letters.length > 1 && isWritten(letters)) best = { item: wordOf(items, start, i + 1, letters), next: i + 1 };
  }
  // `a p i p fusion` is a fusion of the PIP joint.
  const rest = best && wordAt(items, start) === 'a' ? spelledWord(items, start + 1) : undefined;
  return rest && best && rest.next > best.next ? undefined : best;
}
const isWritten = (letters: string): boolean =>
  isForm(letters) || Object.hasOwn(UNIT_WORDS, letters) || Object.hasOwn(CONVERTED, letters);

const wordOf = (items: readonly Item[], start: number, next: number, text: string): Item => ({
  is: 'word',
  text,
  parts: text.split(' '),
  said: true,
  ...spanOf(items, start, next),
});

/** `the plantar side`, `the dorsal aspect`: a place without its noun. */
export const isPlaceNoun = (items: readonly Item[], index: number): boolean =>
  ['side', 'aspect', 'surface'].includes(wordAt(items, index)) &&
  ['plantar', 'dorsal'].includes(wordAt(items, index - 1));
