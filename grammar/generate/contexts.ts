import * as closed from '../lexicon/closed-words.ts';
import type { Entry, Section, Slot } from '../lexicon/entry.ts';
import { LEXICON } from '../lexicon/index.ts';
import { keyOf } from './phrases.ts';

/** Where a line, or the rest of one, stands: its section, and whether a word has opened it. */
export interface Context {
  readonly section: Section;
  readonly named: boolean;
}

export const ENTRIES: readonly Entry[] = LEXICON;
export const SECTIONS = Object.keys(closed.SECTION_WORD) as Section[];

/** A line starts in the exam; from each section word on it stands in that section. */
export const LINE: Context = { section: 'exam', named: false };
/** One context a section: what the exam holds is the same whether or not its word stands there. */
export const CONTEXTS: readonly Context[] = SECTIONS.map((section) =>
  section === LINE.section ? LINE : { section, named: true },
);

export const entriesIn = (section: Section): Entry[] => ENTRIES.filter(({ sections }) => sections.includes(section));
export const wordsOf = ({ word, forms }: Entry): string[] => [word, ...forms];
export const leadsIn = (entry: Entry, section: Section): string[] =>
  Object.entries(entry.leads).flatMap(([word, lead]) => ((lead.sections?.includes(section) ?? true) ? [word] : []));
/** Every form that may open the finding in the section. */
export const openersOf = (entry: Entry, section: Section): string[] => [...wordsOf(entry), ...leadsIn(entry, section)];

/** The words of the values of the slots that `which` picks; a value of digits (`0-4`) is read as a number. */
export function valueForms(entry: Entry, which: (slot: Slot) => boolean = () => true): string[] {
  return Object.values(entry.slots)
    .filter(which)
    .flatMap((slot) => (slot.kind === 'words' ? Object.entries(slot.values) : []))
    .flatMap(([value, others]) => [value, ...others])
    .filter((form) => !/^\d/.test(form));
}

/** Every word list of the closed classes that the reader keeps. */
export const CLOSED_FORMS: readonly string[] = [
  ...Object.values(closed).flatMap((list: readonly string[] | object) =>
    Array.isArray(list) ? (list as readonly string[]) : [],
  ),
  ...Object.keys(closed.SECTION_WORDS),
  ...Object.keys(closed.SIDES),
];

/** Section words that open their section here: a finding of a section that was named comes before them. */
export function sectionWordsIn({ section, named }: Context, strong?: true): string[] {
  const forms = entriesIn(section).flatMap((entry) => [...openersOf(entry, section), ...valueForms(entry)]);
  const own = new Set(forms.map(keyOf));
  return Object.entries(closed.SECTION_WORDS)
    .filter(([word, row]) => (!strong || row.strong) && !(named && own.has(keyOf(word))))
    .map(([word]) => word);
}
