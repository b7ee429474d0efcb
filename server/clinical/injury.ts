import type { Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import { ageOf, dayFrom, dayOf, daysBetween, daysOf, isoOf } from './dates.ts';
import type { EpisodeState } from './episode.ts';
import type { AnyFact, VisitFacts } from './facts.ts';

interface InjuryView {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly side: Side;
}
const SIX_WEEKS = 42;

/** The shortest and longest age of the complaint in days that the visit states. */
function symptomDays(visit: VisitFacts): { least: number; most: number } | undefined {
  for (const { values } of clearFacts(visit.facts, 'onset')) {
    const age = values.for ? daysOf(values.for) : values.on && ageOf(values.on, visit);
    if (age) return age;
  }
  const [first] = clearFacts(visit.facts, 'duration').flatMap(({ values }) => values.for ?? []);
  return first && daysOf(first);
}

/** The statements of an injury or a sudden onset. */
const injuries = (visit: VisitFacts): AnyFact[] => [
  ...clearFacts(visit.facts, 'trigger').filter(
    (fact) => fact.status === 'present' && fact.values.what?.words.includes('injury'),
  ),
  ...clearFacts(visit.facts, 'onset').filter(
    (fact) => fact.status === 'present' && fact.values.manner?.words.includes('sudden'),
  ),
];

/** An injury or a sudden onset under six weeks old, stated in this visit or, with its time, in an earlier one. */
export function isAcuteInjury({ visit, before, side }: InjuryView): boolean | 'unknown' {
  const stated = injuries(visit).length > 0;
  const age = symptomDays(visit);
  if (stated && age) return age.most < SIX_WEEKS;
  const earlier = age ? undefined : (before.injury[side] ?? before.injury.patient);
  const day = earlier === undefined ? undefined : dayOf(earlier);
  if (day && visit.date) return daysBetween(day, dayFrom(visit.date)) < SIX_WEEKS;
  return stated ? 'unknown' : false;
}

/** Foot to the earliest day on which an injury that this visit states, with its time, may have happened. */
export function injuryDays(visit: VisitFacts): Record<string, string> {
  const age = symptomDays(visit);
  if (!age || !visit.date || !Number.isFinite(age.most)) return {};
  const day = isoOf(dayFrom(visit.date).subtract({ days: Math.ceil(age.most) }));
  return Object.fromEntries(injuries(visit).map((fact) => [fact.side ?? 'patient', day]));
}
