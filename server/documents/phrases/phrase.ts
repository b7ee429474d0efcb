import type { Section } from '../../../grammar/lexicon/entry.ts';
import type { FindingId, SlotId, ValuesOf } from '../../../grammar/lexicon/index.ts';

/** The words of the values that a fact carries, slot by slot. */
export type Said<F extends FindingId> = { readonly [S in SlotId<F>]?: string };

type WordsIn<V> =
  NonNullable<V> extends { readonly is: 'word'; readonly words: readonly (infer W extends string)[] } ? W : never;
/** English for every word that a slot takes; a new word in the lexicon doesn't compile until it has one. */
export type Wording<F extends FindingId> = {
  readonly [S in SlotId<F> as WordsIn<ValuesOf<F>[S]> extends never ? never : S]: Readonly<
    Record<WordsIn<ValuesOf<F>[S]>, string>
  >;
};

/** A predicate with its verb apart, so that equal verbs and subjects can be joined: `was` + `grade 2`. */
export interface Predicate {
  readonly verb: string;
  readonly rest: string;
  /** In place of the finding's name. */
  readonly subject?: string;
  readonly plural?: boolean;
}
export const was = (rest: string, subject?: string, plural = false): Predicate => ({
  verb: 'was',
  rest,
  ...(subject ? { subject } : {}),
  plural,
});
/** A verb that is the same in the singular and the plural. */
export const did = (verb: string, rest: string): Predicate => ({ verb, rest });
/** A verb as its number asks. */
export const conjugate = (verb: string, plural: boolean): string =>
  plural ? ({ was: 'were', is: 'are' }[verb] ?? verb) : verb;

/** What joins a finding to its place, for each kind of place that differs. */
export type Preposition = string | Readonly<Record<'ray' | 'web' | 'foot', string>>;

interface PhraseBase<F extends FindingId> {
  /** The finding as a subject, where its status is told and not its result: `the drawer test`. */
  readonly name: string;
  readonly plural?: true;
  readonly wording: Wording<F>;
  /** What is done to find it, as a participle. */
  readonly by?: string;
  /** `of`, `under`, `on` before the place. */
  readonly preposition?: Preposition;
  /** The place stands at the end: `running was given as the trigger at the second ray`. */
  readonly placeLast?: true;
  /** What a ray is called with it; else `ray`. */
  readonly noun?: Noun;
  /** Findings of one topic share a sentence. */
  readonly topic?: string;
}
/** `There was ... at the second ray`. Both texts follow `there was` or `no`. */
export interface TherePhrase<F extends FindingId> extends PhraseBase<F> {
  readonly shape: 'there';
  readonly present: (said: Said<F>) => string;
  readonly absent: (said: Said<F>) => string;
}
export type Noun = 'toe' | 'MTP joint' | 'metatarsal' | 'ray';
/** `The second toe was ...`. */
export interface SubjectPhrase<F extends FindingId> extends PhraseBase<F> {
  readonly shape: 'subject';
  readonly noun: Noun;
  readonly present: (said: Said<F>) => Predicate;
  readonly absent: (said: Said<F>) => Predicate;
}
/** The finding is its own subject: `The hallux valgus angle was 22°`. */
export interface OwnPhrase<F extends FindingId> extends PhraseBase<F> {
  readonly shape: 'own';
  readonly present: (said: Said<F>, section: Section) => Predicate;
  readonly absent: (said: Said<F>, section: Section) => Predicate;
}
export type Phrase<F extends FindingId> = TherePhrase<F> | SubjectPhrase<F> | OwnPhrase<F>;

/** Joins the words that are there: `adj('mild', undefined, 'swelling')`. */
export const spaced = (...texts: readonly (string | undefined)[]): string =>
  texts.filter((text) => text !== undefined && text !== '').join(' ');
/** The words that are there, set off by commas. */
export const commas = (...texts: readonly (string | undefined)[]): string =>
  texts.filter((text) => text !== undefined && text !== '').join(', ');
export const withArticle = (text: string): string => `${/^[aeiou]/i.test(text) ? 'an' : 'a'} ${text}`;
/** A test whose result could not be read; the text itself stands beside it as written. */
export const UNREAD_RESULT = 'a result that was not interpreted (quoted as written)';

/** Values whose own names are the English. */
export const asNamed = <T extends object>(table: T): { readonly [K in keyof T & string]: string } =>
  Object.fromEntries(Object.keys(table).map((name) => [name, name])) as { [K in keyof T & string]: string };
export const OFTEN = {
  'once a day': 'once a day',
  'twice a day': 'twice a day',
  'three times a day': 'three times a day',
  'four times a day': 'four times a day',
  weekly: 'weekly',
  'every two weeks': 'every two weeks',
  'as needed': 'as needed',
} as const;
export const AMOUNT = {
  slight: 'slight',
  mild: 'mild',
  moderate: 'moderate',
  marked: 'marked',
  severe: 'severe',
  gross: 'gross',
  exquisite: 'exquisite',
} as const;
export const AMOUNT_ADVERBS = {
  slight: 'slightly',
  mild: 'mildly',
  moderate: 'moderately',
  marked: 'markedly',
  severe: 'severely',
  gross: 'grossly',
  exquisite: 'exquisitely',
} as const;
