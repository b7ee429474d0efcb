import type { Ray, Side } from '../../grammar/values.ts';
import { LESSER_RAYS } from '../../grammar/values.ts';
import { clearFacts, deniesOneKind, dislocatedFilms } from './answers.ts';
import { ageOf, type Day, dayFrom, dayOf, daysBefore, daysBetween, daysOf, isoOf } from './dates.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { type Feeling, footSensation } from './sensation.ts';

/** What stays, once told, until a later visit denies them. */
const CONDITIONS = [
  'neuropathy',
  'inflammatory-arthritis',
  'gout',
  'cancer-history',
  'clot-history',
  'thrombophilia',
  'laxity',
] as const;
export type Condition = (typeof CONDITIONS)[number];

/** What was told once and still gates and warns in later visits. Days are ISO days, or `undated`. */
export interface Known {
  /** Condition to the day on which it was first told. */
  readonly told: Readonly<Partial<Record<Condition, string>>>;
  /** Foot to the newest examination of its feeling. */
  readonly feeling: Readonly<Partial<Record<Side, { readonly is: Feeling; readonly on: string }>>>;
  /** Ray (`right ray 2`), foot or `patient` to what was said of an operation before this file. */
  readonly surgery: Readonly<Record<string, 'told' | 'denied'>>;
  /** Foot to the newest day of an operation, a boot or an order to keep off the foot. */
  readonly offFoot: Readonly<Record<string, string>>;
  /** Ray to the procedures that were done on it, in this file or before. */
  readonly procedures: Readonly<Record<string, readonly string[]>>;
  /** Ray to the day since which its joint is known to lie dislocated. */
  readonly dislocated: Readonly<Record<string, string>>;
}
export const NOTHING_KNOWN: Known = { told: {}, feeling: {}, surgery: {}, offFoot: {}, procedures: {}, dislocated: {} };

/** What is known after a visit. Pure; the same object where the visit adds nothing. */
export function foldKnown(before: Known, visit: VisitFacts): Known {
  const day = visit.date ? dayFrom(visit.date) : undefined;
  const on = day ? isoOf(day) : 'undated';
  return {
    told: told(before.told, visit, on),
    feeling: feelings(before.feeling, visit, on),
    surgery: surgery(before.surgery, visit),
    offFoot: offFoot(before.offFoot, visit, on),
    procedures: procedures(before.procedures, visit),
    dislocated: dislocations(before.dislocated, visit, day),
  };
}

function told(before: Known['told'], visit: VisitFacts, on: string): Known['told'] {
  let now = before;
  for (const condition of CONDITIONS)
    for (const fact of clearFacts(visit.facts, condition) as readonly AnyFact[]) {
      const { status } = fact;
      if (status === 'present' && now[condition] === undefined) now = { ...now, [condition]: on };
      if (status === 'absent' && !deniesOneKind(fact) && now[condition] !== undefined)
        now = { ...now, [condition]: undefined };
    }
  return now;
}

function feelings(before: Known['feeling'], visit: VisitFacts, on: string): Known['feeling'] {
  let now = before;
  for (const side of ['right', 'left'] as const) {
    const is = footSensation(visit, side);
    if (is) now = { ...now, [side]: { is, on } };
  }
  return now;
}

function surgery(before: Known['surgery'], visit: VisitFacts): Known['surgery'] {
  let now = before;
  for (const { status, side, subject } of clearFacts(visit.facts, 'earlier-surgery')) {
    if (status !== 'present' && status !== 'absent') continue;
    const key = subject.at === 'ray' ? `${side} ray ${subject.ray}` : (side ?? 'patient');
    if (subject.at !== 'web') now = { ...now, [key]: status === 'present' ? 'told' : 'denied' };
  }
  return now;
}

function procedures(before: Known['procedures'], visit: VisitFacts): Known['procedures'] {
  let now = before;
  for (const fact of [...clearFacts(visit.facts, 'procedure'), ...clearFacts(visit.facts, 'earlier-surgery')]) {
    if (fact.status !== 'present' || fact.subject.at !== 'ray' || !fact.values.what) continue;
    const key = `${fact.side} ray ${fact.subject.ray}`;
    now = { ...now, [key]: [...new Set([...(now[key] ?? []), ...fact.values.what.words])] };
  }
  return now;
}
/** What is known to have been done on a ray, today's visit included. */
export const proceduresOf = (known: Known, visit: VisitFacts, side: Side, ray: Ray): readonly string[] =>
  procedures(known.procedures, visit)[`${side} ray ${ray}`] ?? [];

/** Orders under which the foot is walked on as usual. */
const FREE_LOADS: readonly string[] = ['full-weight-bearing', 'weight-bearing-as-tolerated'];
export const loadsFreely = (load: readonly string[] | undefined): boolean =>
  load?.some((word) => FREE_LOADS.includes(word)) ?? false;

/** An order counts from its visit; a measure that was tried may be over. */
function offFoot(before: Known['offFoot'], visit: VisitFacts, on: string): Known['offFoot'] {
  const orders = clearFacts(visit.facts, 'weight-bearing').filter(({ values }) => !loadsFreely(values.load?.words));
  const boots = clearFacts(visit.facts, 'boot').filter(({ section }) => section !== 'tried');
  const done = clearFacts(visit.facts, 'procedure').filter(({ section }) => section === 'operation');
  let now = before;
  for (const { status, side } of [...orders, ...boots, ...done])
    if (status === 'present') now = { ...now, [side ?? 'patient']: on };
  return now;
}

function dislocations(before: Known['dislocated'], visit: VisitFacts, day: Day | undefined): Known['dislocated'] {
  if (clearFacts(visit.facts, 'dislocated').length + clearFacts(visit.facts, 'film-joint').length === 0)
    return withoutOperated(before, visit);
  const now = { ...before };
  for (const side of ['right', 'left'] as const)
    for (const ray of LESSER_RAYS) {
      const key = `${side} ray ${ray}`;
      const exam = clearFacts(visit.facts, 'dislocated', { side, ray });
      const present = exam.filter(({ status }) => status === 'present');
      if (present.length === 0 && exam.some(({ status }) => status === 'absent')) delete now[key];
      else if (present.some(({ values }) => values.age?.words.includes('acute')))
        now[key] = sinceOf(present, visit, day);
      else if (present.length > 0 || dislocatedFilms(visit.facts, { side, ray }).length > 0)
        now[key] = earlier(now[key], sinceOf(present, visit, day));
    }
  return withoutOperated(now, visit);
}

/** An operation ends what was known of the joint's place. */
function withoutOperated(before: Known['dislocated'], visit: VisitFacts): Known['dislocated'] {
  const keys = clearFacts(visit.facts, 'procedure').flatMap(({ status, side, subject }) =>
    status === 'present' && subject.at === 'ray' ? [`${side} ray ${subject.ray}`] : [],
  );
  const gone = keys.filter((key) => key in before);
  return gone.length === 0 ? before : Object.fromEntries(Object.entries(before).filter(([key]) => !gone.includes(key)));
}

/** The latest day on which the dislocation may have begun: never older than it is said to be. */
function sinceOf(
  facts: readonly Extract<AnyFact, { finding: 'dislocated' }>[],
  visit: VisitFacts,
  day: Day | undefined,
): string {
  if (!day) return 'undated';
  if (facts.some(({ values }) => values.age?.words.includes('chronic'))) return OLD;
  const ages = facts.flatMap(({ values }) =>
    values.for ? daysOf(values.for) : ((values.on && ageOf(values.on, visit)) ?? []),
  );
  const least = Math.min(...ages.map((age) => age.least));
  return isoOf(daysBefore(day, Number.isFinite(least) ? Math.max(0, Math.floor(least)) : 0));
}
/** Older than any visit: the clinician called it old. */
const OLD = 'old';
function earlier(a: string | undefined, b: string): string {
  if (a === undefined || a === 'undated') return b;
  if (a === OLD || b === OLD) return OLD;
  return b === 'undated' || a < b ? a : b;
}

/** Is the joint known from earlier visits to lie dislocated for at least so many days? */
export function isKnownDislocated(
  known: Known,
  visit: VisitFacts,
  { side, ray }: { readonly side: Side; readonly ray: Ray },
  days: number,
): boolean {
  const since = known.dislocated[`${side} ray ${ray}`];
  if (since === undefined || since === 'undated') return false;
  const first = dayOf(since);
  if (since === OLD) return true;
  return first !== undefined && visit.date !== undefined && daysBetween(first, dayFrom(visit.date)) >= days;
}

/** Has the patient had a clot, or a tendency to clot, as told? */
export const mayClot = (known: Known, visit: VisitFacts): boolean =>
  isTold(known, visit, 'clot-history') || isTold(known, visit, 'thrombophilia');

/** Is a condition stated as present in this visit, or told earlier and not denied now? */
export function isTold(known: Known, visit: VisitFacts, condition: Condition): boolean {
  const today = clearFacts(visit.facts, condition) as readonly AnyFact[];
  if (today.some(({ status }) => status === 'present')) return true;
  return known.told[condition] !== undefined && !today.some((fact) => fact.status === 'absent' && !deniesOneKind(fact));
}
