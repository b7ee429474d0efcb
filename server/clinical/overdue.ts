import type { Sourced } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import type { Duration } from '../../grammar/values.ts';
import type { VisitAnalysis } from './analysis.ts';
import { clearFacts } from './answers.ts';
import { capital } from './argument/phrases.ts';
import { PROTECTING } from './course.ts';
import { after, dayFrom, dayOf, daysBetween, isoOf } from './dates.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { writtenOn } from './lifecycle.ts';
import { COURSE_JUDGED_DAYS } from './windows.ts';

/** A day of the newest visit's plan that has passed without a later visit. */
export interface Overdue extends Sourced {
  readonly about: 'review' | 'pin' | 'course';
  /** ISO day. */
  readonly due: string;
  readonly text: string;
}
const practice = { source: 'common practice', mark: 'common practice' } as const;

/**
 * What the newest visit of a note planned for a day before `today` (ISO): a review, a pin out, a course. Only the newest
 * visit may be asked: a later one took its plan up. Empty where the visit has no date or lies after today. Pure.
 */
export function overdue({ facts, after: left }: VisitAnalysis, today: string): Overdue[] {
  const now = dayOf(today);
  if (!now || !facts.date || daysBetween(dayFrom(facts.date), now) <= 0) return [];
  const decision = left.watch.decision?.split('|');
  const decided = decision ? ` The patient's decision of ${decision[1]}: ${decision[0]}.` : '';
  return [...pins(left.watch), ...reviews(left.watch), ...courses(facts)].flatMap(({ about, due, what }) => {
    const day = dayOf(due);
    const late = day ? daysBetween(day, now) : 0;
    if (late <= 0) return [];
    const text = `${what} ${due}, ${lateness(late)} before ${today}; no visit of a later date stands in this file.${decided}`;
    return [{ about, due, text, ...practice }];
  });
}

interface Due {
  readonly about: Overdue['about'];
  readonly due: string;
  /** Reads before the day. */
  readonly what: string;
}
type Watch = VisitAnalysis['after']['watch'];

const reviews = ({ review }: Watch): Due[] =>
  review ? [{ about: 'review', due: review, what: 'The review was planned for' }] : [];

const pins = (watch: Watch): Due[] =>
  Object.entries(watch).flatMap(([key, due]) =>
    key.startsWith('pin ') && due
      ? [{ about: 'pin', due, what: `The pin (${key.slice('pin '.length)}) was to be out by` }]
      : [],
  );

/** The last day of each protecting measure that this visit plans; one without a length can be judged from six weeks on. */
function courses(visit: VisitFacts): Due[] {
  const planned = PROTECTING.flatMap((finding) =>
    (clearFacts(visit.facts, finding) as AnyFact[]).flatMap((fact) => {
      const start = writtenOn(visit, fact);
      if (fact.section !== 'plan' || fact.status !== 'present' || !start) return [];
      const time = 'for' in fact.values && fact.values.for?.is === 'duration' ? fact.values.for : undefined;
      const what = capital(entryOf(finding).word);
      return time
        ? { due: isoOf(after(start, { ...time, low: time.high })), what: `${what} was planned to` }
        : { due: isoOf(after(start, JUDGED)), what: `${what} was planned, and can be judged from` };
    }),
  );
  const all = new Map(planned.map((each) => [`${each.what} ${each.due}`, each]));
  return [...all.values()].map((each) => ({ about: 'course', ...each }));
}
const JUDGED: Duration = { low: COURSE_JUDGED_DAYS, high: COURSE_JUDGED_DAYS, unit: 'days' };

const lateness = (days: number): string => {
  const [count, unit] = days < 14 ? [days, 'day'] : [Math.floor(days / 7), 'week'];
  return `${count} ${unit}${count === 1 ? '' : 's'}`;
};
