import type { Sourced } from '../../grammar/lexicon/entry.ts';

/** A time that the engine decides by. */
export interface Window extends Sourced {
  readonly days: number;
}

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** Times that the engine decides by, in days; the local protocol takes precedence. */
export const WINDOWS = {
  /** An injury or a dislocation is acute under six weeks, and old from then on. */
  acute: { days: 42, ...practice },
  /** A course without operation is judged from six weeks on. */
  'course judged': { days: 42, ...practice },
  /** A course without operation is complete at twelve weeks. */
  'course complete': { days: 84, ...practice },
  /** No operation within three months of a steroid injection; the three months come from joint replacement. */
  'steroid clear': { days: 91, source: 'from memory', mark: 'from memory, to be verified' },
  /** A calf sign counts as one of a patient off the foot for three months after an operation, a boot or an order to keep off. */
  'off the foot': { days: 91, ...practice },
  /** Ordinary shoes not before six weeks, impact not before twelve: the earliest of the named protocols. */
  'ordinary shoes': { days: 42, ...practice },
  impact: { days: 84, ...practice },
  /** A dated step is overdue a week after its day, a review four weeks after it. */
  'step overdue': { days: 7, ...practice },
  'review late': { days: 28, ...practice },
} as const satisfies Readonly<Record<string, Window>>;
export type WindowId = keyof typeof WINDOWS;

export const ACUTE_DAYS = WINDOWS.acute.days;
export const COURSE_JUDGED_DAYS = WINDOWS['course judged'].days;
export const COURSE_COMPLETE_DAYS = WINDOWS['course complete'].days;
export const STEROID_CLEAR_DAYS = WINDOWS['steroid clear'].days;
export const SHOES_EARLIEST_DAYS = WINDOWS['ordinary shoes'].days;
export const IMPACT_EARLIEST_DAYS = WINDOWS.impact.days;
export const OVERDUE_AFTER_DAYS = WINDOWS['step overdue'].days;
export const REVIEW_LATE_DAYS = WINDOWS['review late'].days;
export const OFF_FOOT_DAYS = WINDOWS['off the foot'].days;
