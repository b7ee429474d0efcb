import type { HeaderNode, VisitKind } from '../syntax.ts';
import type { Side } from '../values.ts';

/** The words of the header lines: the reader, completion and the reference take them from here. */

type Forms<K extends string> = Readonly<Record<K, readonly string[]>>;
type Sex = NonNullable<Extract<HeaderNode, { is: 'patient' }>['sex']>;

export const HEADER_WORDS = ['forefoot', 'patient', 'scales', 'visit', 'allow'] as const;

/** Kind of visit to the other words for it. */
export const VISIT_WORDS: Forms<VisitKind> = {
  first: ['new', 'initial', 'new patient', 'first visit'],
  review: ['rv', 'f/u', 'fu', 'follow-up', 'follow up', 'followup', 'reviewed'],
  preop: ['pre-op', 'pre op', 'pre-operative', 'preoperative', 'pre-assessment', 'preassessment'],
  operation: ['surgery', 'theatre'],
  postop: ['post-op', 'post op', 'post-operative', 'postoperative'],
  phone: ['telephone', 'tel', 'phone call'],
  emergency: ['urgent', 'a&e', 'a/e', 'ed', 'casualty'],
};
export const VISIT_SIDES: Forms<Side | 'both'> = { right: ['r'], left: ['l'], both: ['bilateral'] };
export const SEX_WORDS: Forms<Sex> = { female: ['f'], male: ['m'], other: [] };

export const formsOf = (table: Forms<string>): string[] =>
  Object.entries(table).flatMap(([word, others]) => [word, ...others]);

const byForm = <K extends string>(table: Forms<K>): ReadonlyMap<string, K> =>
  new Map(
    Object.entries<readonly string[]>(table).flatMap(([word, others]) =>
      [word, ...others].map((form) => [form, word as K]),
    ),
  );

/** Each form to its canonical word. */
export const VISIT_KIND_BY_FORM = byForm(VISIT_WORDS);
export const VISIT_SIDE_BY_FORM = byForm(VISIT_SIDES);
export const SEX_BY_FORM = byForm(SEX_WORDS);
