import { doubleMetaphone } from 'double-metaphone';
import { type Form, formIndex } from '../../../grammar/reader/forms.ts';
import { lettersApart, reach } from '../../clinical/spelling.ts';
import { isPlainWord } from './plain-words.ts';

/** A form of the language that is like an unknown word. */
export interface Alike {
  readonly text: string;
  /** Letters that differ. */
  readonly letters: number;
  /** Both sound the same. */
  readonly sound: boolean;
}

interface SoundIndex {
  /** Forms by what is left of them once up to two letters are missing. */
  readonly bySpelling: ReadonlyMap<string, readonly string[]>;
  readonly bySound: ReadonlyMap<string, readonly string[]>;
}

const SHORTEST = 3;
const LONG = 6;
const joined = (text: string): string => text.replaceAll(/[\s'’-]/g, '').toLowerCase();

/** Words that mean something by themselves: what only joins, denies or moves a finding is never proposed for a misheard word. */
const isMeant = ({ section, side, findings, values }: Form): boolean =>
  section !== undefined || side !== undefined || findings.length > 0 || values.size > 0;

/** The word, and the word without up to `missing` of its letters: two words meet where they differ in no more. */
function eachShortened(word: string, missing: number, from: number, take: (key: string) => void): void {
  take(word);
  if (missing === 0) return;
  for (let i = from; i < word.length; i++) eachShortened(word.slice(0, i) + word.slice(i + 1), missing - 1, i, take);
}

function build(): SoundIndex {
  const bySpelling = new Map<string, string[]>();
  const bySound = new Map<string, string[]>();
  const add = (map: Map<string, string[]>, key: string, text: string) => {
    const list = map.get(key);
    if (!list) map.set(key, [text]);
    else if (!list.includes(text)) list.push(text);
  };
  const texts = new Set(
    [...formIndex().values()]
      .flat()
      .filter(isMeant)
      .map(({ parts }) => parts.join(' ')),
  );
  for (const text of texts) {
    const word = joined(text);
    if (word.length < SHORTEST || /[^\p{L}]/u.test(word)) continue;
    eachShortened(word.slice(0, LONGEST), reach(word.length), 0, (key) => add(bySpelling, key, text));
    for (const code of doubleMetaphone(word)) if (code !== '') add(bySound, code, text);
  }
  return { bySpelling, bySound };
}
/** What stands after it in a long phrase hardly tells phrases apart, and costs the most. */
const LONGEST = 14;

let index: SoundIndex | undefined;

/** The forms that may have been meant by words that are spelt or sound like them, the most alike first; none for fewer than three letters. */
export function alike(unknown: string): Alike[] {
  index ??= build();
  const { bySpelling, bySound } = index;
  const word = joined(unknown);
  if (word.length < SHORTEST || /[^\p{L}]/u.test(word)) return [];
  const sounding = new Set(doubleMetaphone(word).flatMap((code) => bySound.get(code) ?? []));
  const found = new Set(sounding);
  eachShortened(word.slice(0, LONGEST), reach(word.length), 0, (key) => {
    for (const text of bySpelling.get(key) ?? []) found.add(text);
  });
  const words = unknown.split(/\s+/);
  const isRight = words.every(isPlainWord);
  // Two short words in a row are like too much (`do as`, `to do`).
  if (isRight && words.length > 1 && word.length < LONG) return [];
  const may = isRight ? mayBeHeard : mayBeSpelt;
  return [...found]
    .filter((text) => text !== unknown.toLowerCase())
    .map((text) => ({ text, letters: lettersApart(word, joined(text)), sound: sounding.has(text) }))
    .filter((each) => may(word, each))
    .sort((a, b) => weight(a) - weight(b) || a.text.length - b.text.length || (a.text < b.text ? -1 : 1));
}
export const weight = ({ letters, sound }: Omit<Alike, 'text'>): number => letters - (sound ? 1.5 : 0);

/** May the word be the form, misspelt? As a rule people get its first letter right. */
function mayBeSpelt(word: string, { text, letters, sound }: Alike): boolean {
  const most = reach(Math.min(word.length, joined(text).length));
  if (sound) return letters <= most + 1;
  return letters <= most && (letters === 1 || text.startsWith(word.charAt(0)));
}

/** May words that are right in themselves be the form, misheard or cut short? It starts and sounds as they do, or goes on from them. */
function mayBeHeard(word: string, { text, letters, sound }: Alike): boolean {
  const form = joined(text);
  const long = word.length >= LONG;
  if (form.charAt(0) !== word.charAt(0) || letters > 2) return false;
  if (text.includes(' ') && long) return true;
  return sound || (letters <= 1 && long) || (form.startsWith(word) && word.length > SHORTEST);
}
