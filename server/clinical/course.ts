import type { Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import { dayFrom, dayOf, daysBetween, daysOf, isoOf } from './dates.ts';
import { type EpisodeState, footKey, isoDayOf } from './episode.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { writtenOn } from './lifecycle.ts';
import { COURSE_COMPLETE_DAYS, COURSE_JUDGED_DAYS } from './windows.ts';

/** Measures that protect the plate; a pad alone unloads the head and is no course (common practice). */
export const PROTECTING = ['tape', 'insert', 'boot'] as const;

export interface Course {
  /** `none` counts pads alone; `unknown` is a measure without any time. */
  readonly length: 'none' | 'unknown' | 'under six weeks' | 'six to twelve weeks' | 'twelve weeks or more';
  readonly response: 'better' | 'not better' | 'not stated';
  readonly kept: 'well' | 'poorly' | 'not stated';
  readonly statements: readonly string[];
  /** The day of the earlier visit that told what this one leaves open (ISO, or `undated`). */
  readonly toldOn?: string;
}

/** What earlier visits told of a course and no later plan has overtaken. */
export interface CourseTold {
  /** The day of the newest visit that told of it, ISO or `undated`. */
  readonly on: string;
  /** The shorter end of the longest time that was stated. */
  readonly days?: number;
  readonly response: Course['response'];
  readonly kept: Course['kept'];
}

type Measure = Extract<AnyFact, { finding: 'tape' }>;
type Courses = Pick<EpisodeState, 'course' | 'told'>;

/** The course without operation of one foot, as far as this visit and the earlier ones tell. */
export function courseOf(visit: VisitFacts, before: Courses, side: Side): Course {
  const tried = triedMeasures(visit, side);
  const pads = clearFacts(visit.facts, 'pad', { side }).filter(({ section }) => section === 'tried') as never[];
  const now = told(tried, pads);
  const earlier = before.told[side] ?? before.told.patient;
  const all = earlier ? merged(asToday(earlier), now) : now;
  const used = earlier && (now.response !== all.response || now.kept !== all.kept || now.days !== all.days);
  return {
    length: lengthOf(all.days ?? started(visit, before, side), tried.length > 0 || earlier !== undefined),
    response: all.response,
    kept: all.kept,
    statements: [...tried, ...pads].map(({ statement }) => statement),
    ...(used ? { toldOn: earlier.on } : {}),
  };
}

type Told = Omit<CourseTold, 'on'>;
/** A course that failed stays one; whether one that helped still does has to be asked again. */
const asToday = (earlier: CourseTold): Told =>
  earlier.response === 'better' ? { ...earlier, response: 'not stated' } : earlier;
const merged = (earlier: Told, now: Told): Told => ({
  ...((now.days ?? earlier.days) ? { days: now.days ?? earlier.days } : {}),
  response: now.response === 'not stated' ? earlier.response : now.response,
  kept: now.kept === 'not stated' ? earlier.kept : now.kept,
});

function told(tried: readonly Measure[], pads: readonly Measure[]): Told {
  const saidOf = (facts: readonly Measure[]) => facts.flatMap((fact) => fact.values.response?.words ?? []);
  // What the protecting measures did decides; a pad speaks only where they are silent.
  const said = saidOf(tried).length > 0 ? saidOf(tried) : saidOf(pads);
  const kept = tried.flatMap((fact) => fact.values.kept?.words ?? []);
  const times = tried.flatMap((fact) => (fact.values.for ? [daysOf(fact.values.for).least] : []));
  return {
    ...(times.length > 0 ? { days: Math.max(...times) } : {}),
    response:
      said.includes('better') && !said.includes('worse') ? 'better' : said.length > 0 ? 'not better' : 'not stated',
    kept: kept.includes('poorly kept') ? 'poorly' : kept.length > 0 ? 'well' : 'not stated',
  };
}

const triedMeasures = (visit: VisitFacts, side: Side): Measure[] =>
  PROTECTING.flatMap((finding) => clearFacts(visit.facts, finding, { side }) as AnyFact[]).filter(
    ({ section, status }) => section === 'tried' && status === 'present',
  ) as Measure[];

/** Days since the course was planned in an earlier visit. */
function started(visit: VisitFacts, before: Courses, side: Side): number | undefined {
  const on = dayOf(before.course[side] ?? before.course.patient ?? '');
  return on && visit.date ? daysBetween(on, dayFrom(visit.date)) : undefined;
}

/** What the note says of its length counts before the day on which it was planned. */
function lengthOf(days: number | undefined, known: boolean): Course['length'] {
  if (days === undefined || days < 0) return known ? 'unknown' : 'none';
  if (days < COURSE_JUDGED_DAYS) return 'under six weeks';
  return days < COURSE_COMPLETE_DAYS ? 'six to twelve weeks' : 'twelve weeks or more';
}

/**
 * The courses after a visit. One starts with the first plan of a protecting measure; a plan after it was poorly kept, or
 * after it had helped and ended, starts its clock again, and any plan leaves open how the time from now on goes. An
 * operation ends it. Common practice.
 */
export function foldCourses(before: Courses, visit: VisitFacts): Courses {
  let { course, told: memory } = before;
  const planned = new Map<string, string>();
  for (const finding of PROTECTING)
    for (const fact of clearFacts(visit.facts, finding) as AnyFact[])
      if (fact.section === 'plan' && fact.status === 'present')
        planned.set(footKey(fact.side), dayWritten(visit, fact));
  for (const side of ['right', 'left'] as const) {
    const tried = triedMeasures(visit, side);
    if (tried.length === 0 || planned.has(side)) continue;
    const went = told(tried, []);
    const earlier = memory[side];
    memory = { ...memory, [side]: { on: isoDayOf(visit), ...(earlier ? merged(earlier, went) : went) } };
  }
  for (const [foot, on] of planned) {
    const restarts = () => foot !== 'patient' && isOver(courseOf(visit, before, foot as Side), before.told[foot]);
    if (course[foot] === undefined || restarts()) course = { ...course, [foot]: on };
    memory = without(memory, foot);
  }
  for (const fact of clearFacts(visit.facts, 'procedure'))
    if (fact.status === 'present') {
      course = without(course, footKey(fact.side));
      memory = without(memory, footKey(fact.side));
    }
  return { course, told: memory };
}

function dayWritten(visit: VisitFacts, fact: AnyFact): string {
  const day = writtenOn(visit, fact);
  return day ? isoOf(day) : 'undated';
}

/** It was poorly kept, or it had helped at an earlier visit and nothing was planned then: what is planned now is a new one. */
const isOver = ({ kept }: Course, earlier: CourseTold | undefined): boolean =>
  kept === 'poorly' || earlier?.response === 'better';

function without<T>(from: Readonly<Record<string, T>>, key: string): Readonly<Record<string, T>> {
  if (!(key in from)) return from;
  const { [key]: _, ...rest } = from;
  return rest;
}
