import { partsOfForm } from '../reader/forms.ts';

/** Regular expressions (Oniguruma) for the words and phrases of the lexicon. */

/** The letters of a word, as the lexer takes them. */
export const LETTER = '[A-Za-zÀ-ɏ]';
/** A word starts where no letter, digit, or joined part of the same word stands before it. */
const START = `(?<![0-9A-Za-zÀ-ɏ])(?<!${LETTER}[-'’/])`;
const END = `(?!${LETTER}|[-'’/]${LETTER})`;
/** A space and a hyphen are the same between the words of a phrase. */
const GAP = String.raw`(?:\s+|-)`;

const escaped = (text: string): string => text.replace(/[\\^$.|?*+()[\]{}]/g, '\\$&').replaceAll("'", "['’]");

/** `pulls-out` and `Pulls out` have one key. */
export const keyOf = (form: string): string => partsOfForm(form.toLowerCase()).join(' ');

/** Phrases in the order in which an alternation must try them: longest first, each once. */
function longestFirst(keys: readonly string[]): string[] {
  const size = (key: string): number => key.split(' ').length;
  return [...new Set(keys)].sort((a, b) => size(b) - size(a) || b.length - a.length || (a < b ? -1 : 1));
}

const spelled = (key: string): string => key.split(' ').map(escaped).join(GAP);
const endsInLetter = (key: string): boolean => /\p{L}$/u.test(key);

/** What must not follow a phrase: the rest of a longer phrase that starts with it and is read in its place. */
function unlessLonger(key: string, longer: readonly string[]): string {
  const starting = longer.filter((other) => other.startsWith(`${key} `));
  return starting.length === 0 ? '' : `(?!${GAP}${words(starting.map((other) => other.slice(key.length + 1)))})`;
}

/** Any of the forms, longest first. A form gives way where it only begins one of the `longer` phrases. */
export function words(forms: readonly string[], longer: readonly string[] = []): string {
  const keys = longestFirst(forms.map(keyOf));
  const others = longer.map(keyOf);
  const group = (some: readonly string[]): string =>
    `(?:${some.map((key) => spelled(key) + unlessLonger(key, others)).join('|')})`;
  const [signs, lettered] = [keys.filter((key) => !endsInLetter(key)), keys.filter(endsInLetter)];
  if (signs.length === 0) return group(lettered) + END;
  return lettered.length === 0 ? group(signs) : `(?:${group(signs)}|${group(lettered)}${END})`;
}

/** The same, as whole words. */
export const phrases = (forms: readonly string[], longer: readonly string[] = []): string =>
  START + words(forms, longer);
