import type { Ray, Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import type { RaySeen } from './change.ts';
import { type CourseTold, foldCourses } from './course.ts';
import { type Day, dayFrom, daysBefore, daysOf, isoOf, range } from './dates.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { type InjuryTime, injuryDays } from './injury.ts';
import { foldKnown, type Known, NOTHING_KNOWN } from './known.ts';
import { writtenOn } from './lifecycle.ts';
import { foldWatch, type Watch } from './watch.ts';

/** What later visits need to know of earlier ones; small, so that the fold over visits stops soon after an edit. */
export interface EpisodeState {
  /** Operated rays with the day of the operation, `right ray 2` to an ISO day or `undated`. */
  readonly operated: Readonly<Record<string, string>>;
  /** Foot to the day on which the running course was first planned. */
  readonly course: Readonly<Record<string, string>>;
  /** Foot to what was last told of its course, until a measure is planned anew. */
  readonly told: Readonly<Record<string, CourseTold>>;
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
  told: {},
  plate: {},
  stage: {},
  steroid: {},
  injury: {},
  seen: {},
  known: NOTHING_KNOWN,
  scaleAsked: false,
  watch: {},
};

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
  const stage: Record<string, NonNullable<RaySeen['stage']>> = {};
  const latest: Record<string, RaySeen> = {};
  for (const { side, ray, ...each } of seen) {
    latest[rayKey(side, ray)] = each;
    if (each.stage) stage[rayKey(side, ray)] = each.stage;
  }
  const { course, told } = foldCourses(before, visit);
  return {
    operated: withAll(before.operated, operations(visit, on)),
    course,
    told,
    plate: withAll(before.plate, plateImages(visit, on)),
    stage: withAll(before.stage, stage),
    steroid: withAll(before.steroid, steroids(visit)),
    injury: withAll(before.injury, injuryDays(visit)),
    seen: withAll(before.seen, latest),
    known: foldKnown(before.known, visit),
    scaleAsked:
      before.scaleAsked || clearFacts(visit.facts, 'drawer').some(({ values }) => values.grade && !values.grade.scale),
    watch: foldWatch(before.watch, visit),
  };
}

/** The same record where nothing is added: most visits add little, and what is the same is not compared. */
function withAll<T>(
  before: Readonly<Record<string, T>>,
  more: Readonly<Record<string, T>>,
): Readonly<Record<string, T>> {
  for (const _ in more) return { ...before, ...more };
  return before;
}

function operations(visit: VisitFacts, on: string): Record<string, string> {
  const operated: Record<string, string> = {};
  for (const fact of clearFacts(visit.facts, 'procedure'))
    if (fact.subject.at === 'ray' && fact.side && fact.status === 'present')
      operated[rayKey(fact.side, fact.subject.ray)] = on;
  return operated;
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
export const steroidDays = (visit: VisitFacts): string[] => Object.values(steroids(visit));

/** The newest day that an injection reported as given may mean. */
function steroids(visit: VisitFacts): Record<string, string> {
  const newest: Record<string, string> = {};
  for (const fact of clearFacts(visit.facts, 'steroid')) {
    const given =
      fact.section === 'tried' && fact.status === 'present' ? lastDayOf(fact, writtenOn(visit, fact)) : undefined;
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
