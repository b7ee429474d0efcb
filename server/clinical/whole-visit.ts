import type { Side } from '../../grammar/values.ts';
import { type Course, courseOf } from './course.ts';
import { type EpisodeState, isoDayOf, type PlateImage, plateImages } from './episode.ts';
import type { HeaderFacts, VisitFacts } from './facts.ts';
import { type FootFeeling, footFeeling } from './feeling.ts';
import { isAcuteInjury } from './injury.ts';
import { once } from './once.ts';
import { type FlagsOfVisit, redFlags } from './red-flags.ts';
import { isSystemic } from './systemic.ts';

/** What the rays of one foot share; each is worked out when it is first asked for. */
export interface WholeFoot {
  readonly feeling: () => FootFeeling;
  readonly course: () => Course;
  readonly acute: () => boolean | 'unknown';
}

/** What every ray of a visit shares, worked out once. A value that is handed on, and gone with its visit. */
export interface WholeVisit {
  readonly flags: FlagsOfVisit;
  readonly systemic: boolean;
  readonly years?: number;
  readonly plates: () => Readonly<Record<string, PlateImage>>;
  readonly feet: Readonly<Record<Side, WholeFoot>>;
}

/** Years that the patient has at most reached in the visit's year; a birth year allows one more or less. */
export function yearsIn(visit: VisitFacts, header: HeaderFacts): number | undefined {
  const born = header.patient?.born;
  return born !== undefined && visit.date ? visit.date.year - born : undefined;
}

export function wholeVisit(visit: VisitFacts, before: EpisodeState, header: HeaderFacts): WholeVisit {
  const foot = (side: Side): WholeFoot => ({
    feeling: once(() => footFeeling(visit, before.known, side)),
    course: once(() => courseOf(visit, before, side)),
    acute: once(() => isAcuteInjury({ visit, before, side })),
  });
  const feet = { right: foot('right'), left: foot('left') };
  const years = yearsIn(visit, header);
  return {
    flags: redFlags({ visit, before, feet }),
    systemic: isSystemic(visit),
    ...(years === undefined ? {} : { years }),
    plates: once(() => plateImages(visit, isoDayOf(visit))),
    feet,
  };
}
