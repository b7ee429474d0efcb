import type { Ray, Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import type { RaySeen } from './change.ts';
import { type Day, dayFrom, daysBefore, daysBetween, daysOf, isoOf, range } from './dates.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { type InjuryTime, injuryDays } from './injury.ts';
import { foldKnown, type Known, NOTHING_KNOWN } from './known.ts';
import { foldWatch, type Watch } from './watch.ts';
import { COURSE_COMPLETE_DAYS, COURSE_JUDGED_DAYS } from './windows.ts';

/** What later visits need to know of earlier ones; small, so that the fold over visits stops soon after an edit. */
export interface EpisodeState {
  /** Operated rays with the day of the operation, `right ray 2` to an ISO day or `undated`. */
  readonly operated: Readonly<Record<string, string>>;
  /** Foot to the day on which a protecting measure was first planned and not yet followed by a response. */
  readonly course: Readonly<Record<string, string>>;
  /** Ray to the newest image of the plate. */
  readonly plate: Readonly<Record<string, PlateImage>>;
  /** Ray to the stage that the newest visit computed, low and high. */
  readonly stage: Readonly<Record<string, readonly [number, number]>>;
  /** Foot to the newest day of a steroid injection. */
  readonly steroid: Readonly<Record<string, string>>;
  /** Foot to the days between which an injury or a sudden onset happened whose time was stated. */
  readonly injury: Readonly<Record<string, InjuryTime>>;
  /** Ray to what its newest visit left of its deciding findings. */
  readonly seen: Readonly<Record<string, RaySeen>>;
  /** What was told once and still gates and warns. */
  readonly known: Known;
  /** A drawer grade without scale has been seen: one hint a file is enough. */
  readonly scaleAsked: boolean;
  /** What the hazards that reach over visits need. */
  readonly watch: Watch;
}
export interface PlateImage {
  readonly tear: 'present' | 'absent' | 'equivocal';
  readonly by: 'us' | 'mri';
  readonly day: string;
}

export const NO_EPISODE: EpisodeState = {
  operated: {},
  course: {},
  plate: {},
  stage: {},
  steroid: {},
  injury: {},
  seen: {},
  known: NOTHING_KNOWN,
  scaleAsked: false,
  watch: {},
};

/** Measures that protect the plate; a pad alone unloads the head and is no course (common practice). */
export const PROTECTING = ['tape', 'insert', 'boot'] as const;

export const rayKey = (side: Side, ray: Ray): string => `${side} ray ${ray}`;
export const footKey = (side: Side | undefined): string => side ?? 'patient';

/** The state after a visit. Pure: the same state and facts give an equal state. */
export function foldVisit(
  before: EpisodeState,
  visit: VisitFacts,
  seen: readonly (RaySeen & { readonly side: Side; readonly ray: Ray })[],
): EpisodeState {
  const day = visit.date ? dayFrom(visit.date) : undefined;
  const on = day ? isoOf(day) : 'undated';
  const operated = { ...before.operated };
  for (const fact of clearFacts(visit.facts, 'procedure'))
    if (fact.subject.at === 'ray' && fact.side && fact.status === 'present')
      operated[rayKey(fact.side, fact.subject.ray)] = on;
  const stage = { ...before.stage };
  const latest = { ...before.seen };
  for (const { side, ray, ...each } of seen) {
    latest[rayKey(side, ray)] = each;
    if (each.stage) stage[rayKey(side, ray)] = each.stage;
  }
  return {
    operated,
    course: courses(before, visit, on),
    plate: { ...before.plate, ...plateImages(visit, on) },
    stage,
    steroid: { ...before.steroid, ...steroids(visit, day) },
    injury: { ...before.injury, ...injuryDays(visit) },
    seen: latest,
    known: foldKnown(before.known, visit),
    scaleAsked:
      before.scaleAsked || clearFacts(visit.facts, 'drawer').some(({ values }) => values.grade && !values.grade.scale),
    watch: foldWatch(before.watch, visit),
  };
}

/** A course starts with the first plan of a protecting measure; an operation ends it. */
function courses(before: EpisodeState, visit: VisitFacts, on: string): EpisodeState['course'] {
  const course = { ...before.course };
  for (const finding of PROTECTING)
    for (const fact of clearFacts(visit.facts, finding)) {
      const key = footKey(fact.side);
      if (fact.section === 'plan' && fact.status === 'present' && course[key] === undefined) course[key] = on;
    }
  for (const fact of clearFacts(visit.facts, 'procedure'))
    if (fact.status === 'present') delete course[footKey(fact.side)];
  return course;
}

/** What this visit reports of each plate; statements that contradict each other are equivocal. */
export function plateImages(visit: VisitFacts, on: string): Record<string, PlateImage> {
  const images: Record<string, PlateImage> = {};
  for (const fact of clearFacts(visit.facts, 'tear')) {
    if (fact.subject.at !== 'ray' || !fact.side) continue;
    const tear = fact.status === 'present' || fact.status === 'absent' ? fact.status : 'equivocal';
    const key = rayKey(fact.side, fact.subject.ray);
    const other = images[key];
    images[key] = {
      tear: other && other.tear !== tear ? 'equivocal' : tear,
      by: fact.section === 'mri' ? 'mri' : 'us',
      day: on,
    };
  }
  return images;
}

/** The visit's day as the state keeps it. */
export const isoDayOf = (visit: VisitFacts): string => (visit.date ? isoOf(dayFrom(visit.date)) : 'undated');
/** The newest days of injections that the visit reports as given, over both feet. */
export const steroidDays = (visit: VisitFacts): string[] =>
  Object.values(steroids(visit, visit.date ? dayFrom(visit.date) : undefined));

/** The newest day that an injection reported as given may mean. */
function steroids(visit: VisitFacts, day: Day | undefined): Record<string, string> {
  const newest: Record<string, string> = {};
  for (const fact of clearFacts(visit.facts, 'steroid')) {
    const given = fact.section === 'tried' && fact.status === 'present' ? lastDayOf(fact, day) : undefined;
    const key = footKey(fact.side);
    if (given && (newest[key] ?? '') < given) newest[key] = given;
  }
  return newest;
}
function lastDayOf(fact: Extract<AnyFact, { finding: 'steroid' }>, day: Day | undefined): string | undefined {
  const on = fact.values.on;
  if (on?.is === 'date') return isoOf(range(on.date).last);
  if (on?.is === 'ago' && day) return isoOf(daysBefore(day, Math.floor(daysOf(on.ago).least)));
  return undefined;
}

export interface Course {
  /** `none` counts pads alone; `unknown` is a measure without any time. */
  readonly length: 'none' | 'unknown' | 'under six weeks' | 'six to twelve weeks' | 'twelve weeks or more';
  readonly response: 'better' | 'not better' | 'not stated';
  readonly kept: 'well' | 'poorly' | 'not stated';
  readonly statements: readonly string[];
}

/** The course without operation of one foot, as far as this visit and the earlier ones tell. */
export function courseOf(visit: VisitFacts, before: EpisodeState, side: Side): Course {
  const tried = PROTECTING.flatMap((finding) => clearFacts(visit.facts, finding, { side }) as AnyFact[]).filter(
    (fact) => fact.section === 'tried' && fact.status === 'present',
  ) as Extract<AnyFact, { finding: 'tape' }>[];
  const all: typeof tried = [
    ...tried,
    ...(clearFacts(visit.facts, 'pad', { side }).filter(({ section }) => section === 'tried') as never[]),
  ];
  const saidOf = (facts: typeof tried) => facts.flatMap((fact) => fact.values.response?.words ?? []);
  // What the protecting measures did decides; a pad speaks only where they are silent.
  const said = saidOf(tried).length > 0 ? saidOf(tried) : saidOf(all);
  const kept = tried.flatMap((fact) => fact.values.kept?.words ?? []);
  return {
    length: lengthOf(tried, started(visit, before, side)),
    response:
      said.includes('better') && !said.includes('worse') ? 'better' : said.length > 0 ? 'not better' : 'not stated',
    kept: kept.includes('poorly kept') ? 'poorly' : kept.length > 0 ? 'well' : 'not stated',
    statements: all.map(({ statement }) => statement),
  };
}

/** Days since the course was planned in an earlier visit. */
function started(visit: VisitFacts, before: EpisodeState, side: Side): number | undefined {
  const on = before.course[side] ?? before.course.patient;
  if (on === undefined || on === 'undated' || !visit.date) return undefined;
  const [year = 0, month = 1, day = 1] = on.split('-').map(Number);
  return daysBetween(dayFrom({ year, month, day }), dayFrom(visit.date));
}

function lengthOf(
  tried: readonly Extract<AnyFact, { finding: 'tape' }>[],
  planned: number | undefined,
): Course['length'] {
  const stated = tried.flatMap((fact) => (fact.values.for ? [daysOf(fact.values.for).least] : []));
  // What the note says of its length counts before the day on which it was planned.
  const longest = stated.length > 0 ? Math.max(...stated) : (planned ?? -1);
  if (longest < 0) return tried.length > 0 ? 'unknown' : 'none';
  return longest < COURSE_JUDGED_DAYS
    ? 'under six weeks'
    : longest < COURSE_COMPLETE_DAYS
      ? 'six to twelve weeks'
      : 'twelve weeks or more';
}
