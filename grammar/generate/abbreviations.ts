import * as closed from '../lexicon/closed-words.ts';
import { SEX_WORDS, VISIT_SIDES, VISIT_WORDS } from '../lexicon/header-words.ts';
import { ENTRIES } from './contexts.ts';
import { code, paragraphs, table } from './markdown.ts';

/** A short form with what it is short for, and the heading under which that stands. */
interface Abbreviation {
  readonly short: string;
  readonly means: string;
  readonly under: string;
}

const LONGEST = 5;
/** Beyond so many headings none is named. */
const MANY = 4;
/** Is the word short for another: its first letters, some of its letters in order, or a word without vowels? */
function isShort(short: string, full: string): boolean {
  if (short === full || short.includes(' ') || short.length > LONGEST || short.length >= full.length) return false;
  const letters = short.toLowerCase().replace(/[^a-z0-9]/g, '');
  const words = full.toLowerCase().split(/[\s-]+/);
  // A word of the phrase itself (`kept`, `weil`) is no abbreviation of it.
  if (words.includes(short.toLowerCase())) return false;
  const initials = words.map((word) => word.charAt(0)).join('');
  if (letters === '' || letters === initials || !/[aeiou]/.test(letters)) return true;
  return full.toLowerCase().startsWith(letters.charAt(0)) && isWithin(letters, words.join(''));
}
function isWithin(letters: string, word: string): boolean {
  let at = 0;
  for (const letter of letters) {
    at = word.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}

/** The short ones among the words for one thing. */
const among = (words: readonly string[], means: string, under: string): Abbreviation[] =>
  words.flatMap((short) => (words.some((full) => isShort(short, full)) ? [{ short, means, under }] : []));

function ofFindings(): Abbreviation[] {
  return ENTRIES.flatMap(({ word, forms, leads, slots }) => {
    const under = `[${word}](#${word})`;
    return [
      ...among([word, ...forms], code(word), under),
      ...Object.entries(leads).flatMap(([lead, { gives, absent }]) => {
        const value = [...Object.values(gives ?? {}), ...(absent ? ['none'] : [])].join(', ');
        return isShort(lead, value) || isShort(lead, `${word} ${value}`)
          ? [{ short: lead, means: code(`${word} ${value}`.trim()), under }]
          : [];
      }),
      ...Object.values(slots).flatMap((slot) =>
        slot.kind === 'words'
          ? Object.entries<readonly string[]>(slot.values).flatMap(([value, others]) =>
              among([value, ...others], code(value), under),
            )
          : [],
      ),
    ];
  });
}

const ofTable = (table: Readonly<Record<string, readonly string[]>>, under: string): Abbreviation[] =>
  Object.entries(table).flatMap(([word, others]) =>
    others.flatMap((short) =>
      isShort(short, word) || isShort(short, others[0] ?? '') ? [{ short, means: code(word), under }] : [],
    ),
  );

function ofLanguage(): Abbreviation[] {
  const note = '[A note](#a-note)';
  const sections = Object.entries(closed.SECTION_WORDS).flatMap(([short, { section }]) =>
    short.length <= LONGEST && short !== closed.SECTION_WORD[section]
      ? [{ short, means: `section ${code(closed.SECTION_WORD[section])}`, under: note }]
      : [],
  );
  return [
    ...sections,
    ...ofTable(VISIT_WORDS, note),
    ...ofTable(VISIT_SIDES, note),
    ...ofTable(SEX_WORDS, note),
    ...ofTable({ none: closed.ABSENT }, '[Absent](#absent)'),
    ...ofTable({ positive: closed.POSITIVE }, '[Present and positive](#present-and-positive)'),
    ...ofTable({ 'not done': closed.NOT_DONE }, '[Not done](#not-done)'),
  ];
}

/** Every short form of the language in the order of the alphabet. */
export function abbreviations(): string {
  const rows = new Map<string, [string, string, string[]]>();
  for (const { short, means, under } of [...ofLanguage(), ...ofFindings()]) {
    // A canonical word of more than three letters is looked for under its own heading.
    if (means === code(short) && short.length > 3) continue;
    const [, , places] = rows.get(`${short} ${means}`) ?? [short, means, []];
    rows.set(`${short} ${means}`, [short, means, [...new Set([...places, under])]]);
  }
  const sorted = [...rows.values()]
    .sort(([a], [b]) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1))
    .map(([short, means, under]) => [code(short), means, under.length > MANY ? 'many findings' : under.join(', ')]);
  return paragraphs(
    '## Abbreviations',
    'Case does not matter. What a short form means depends on its place: on the section, and on the finding that it stands beside.',
    table(['Short', 'Means', 'Stands under'], sorted),
  );
}
