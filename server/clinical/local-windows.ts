import type { NextStep } from './analysis.ts';
import type { Settings } from './settings.ts';

/** The step with the clinic's own time in place of the usual six to eight weeks of a course, said to be the clinic's. */
export function withLocalWindows(next: NextStep, { courseReview }: Settings): NextStep {
  if (courseReview === undefined || !next.review.includes('six to eight weeks')) return next;
  return {
    ...next,
    review: `${next.review.replace('six to eight weeks', courseReview)} (set by the clinic)`,
    ...(next.plan ? { plan: next.plan.replace('6-8 weeks', courseReview) } : {}),
  };
}
