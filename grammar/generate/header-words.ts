import type { HeaderNode, VisitKind } from '../syntax.ts';
import type { Side } from '../values.ts';

/** The words of the header lines, as the header reader takes them; a test reads each of them. */

type Forms<K extends string> = Readonly<Record<K, readonly string[]>>;
type Sex = NonNullable<Extract<HeaderNode, { is: 'patient' }>['sex']>;

export const HEADER_WORDS = ['forefoot', 'patient', 'scales', 'visit', 'allow'] as const;

/** Kind of visit to the other words for it. */
export const VISIT_WORDS: Forms<VisitKind> = {
  first: ['new', 'initial'],
  review: ['rv', 'f/u'],
  preop: ['pre-op', 'pre-operative'],
  operation: ['surgery'],
  postop: ['post-op', 'post-operative'],
  phone: [],
  emergency: ['urgent'],
};
export const VISIT_SIDES: Forms<Side | 'both'> = { right: ['r'], left: ['l'], both: ['bilateral'] };
export const SEX_WORDS: Forms<Sex> = { female: ['f'], male: ['m'], other: [] };

export const formsOf = (table: Forms<string>): string[] =>
  Object.entries(table).flatMap(([word, others]) => [word, ...others]);
