import type { Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import { ageOf, dayFrom, dayOf, daysBefore, daysBetween, daysOf, isoOf } from './dates.ts';
import type { EpisodeState } from './episode.ts';
import { factsOf } from './fact-index.ts';
import { type AnyFact, subjectKey, type VisitFacts } from './facts.ts';
import { ACUTE_DAYS } from './windows.ts';

interface InjuryView {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly side: Side;
}

/** The shortest and longest age of the complaint in days that the visit states. */
function symptomDays(visit: VisitFacts): { least: number; most: number } | undefined {
  for (const { values } of clearFacts(visit.facts, 'onset')) {
    const age = values.for ? daysOf(values.for) : values.on && ageOf(values.on, visit);
    if (age) return age;
  }
  const [first] = clearFacts(visit.facts, 'duration').flatMap(({ values }) => values.for ?? []);
  return first && daysOf(first);
}

/** The clinician calls the joint's own trouble acute (`dx acute plate tear`): an injury, whose age nothing else states. */
export const isCalledAcute = ({ facts }: VisitFacts, side: Side): boolean =>
  clearFacts(facts, 'diagnosis').some(
    (fact) =>
      fact.status === 'present' &&
      (fact.side === undefined || fact.side === side) &&
      fact.values.phase?.words.includes('acute') === true &&
      fact.values.what?.words.some((what) => OF_THE_PLATE.includes(what)) === true,
  );
const OF_THE_PLATE: readonly string[] = ['plantar plate tear', 'plantar plate sprain', 'mtp instability'];

type Injury = Extract<AnyFact, { finding: 'trigger' | 'onset' }>;
/** The statements of an injury or a sudden onset. */
const injuries = (visit: VisitFacts): Injury[] => [
  ...clearFacts(visit.facts, 'trigger').filter(
    (fact) => fact.status === 'present' && fact.values.what?.words.includes('injury'),
  ),
  ...clearFacts(visit.facts, 'onset').filter(
    (fact) => fact.status === 'present' && fact.values.manner?.words.includes('sudden'),
  ),
];

/** An onset, its time or an injury is written and cannot be read. A trigger of another kind says nothing of an injury. */
export const isInjuryUnread = ({ facts }: VisitFacts): boolean =>
  (['onset', 'duration'] as const).some((finding) => factsOf(facts, finding).some(isUnread)) ||
  factsOf(facts, 'trigger').some((fact) => isUnread(fact) && (fact.values.what?.words.includes('injury') ?? true));
const isUnread = ({ clarity, causes }: AnyFact): boolean =>
  clarity === 'unclear' && causes.some(({ why }) => why !== 'no result');

/** How old a stated injury is by its own time, else by that of the complaint. */
function injuryAge({ values }: Injury, visit: VisitFacts): { least: number; most: number } | undefined {
  const own = values.for ? daysOf(values.for) : values.on && ageOf(values.on, visit);
  return own ?? symptomDays(visit);
}

interface Aged {
  readonly fact: AnyFact;
  readonly age: { readonly least: number; readonly most: number };
}
/** Joints that lay dislocated and were reduced in this visit: an injury of today, unless its age is stated. */
function reducedJoints(visit: VisitFacts): Aged[] {
  const aged = (visit.lifecycle?.passed ?? []).flatMap((fact): Aged[] => {
    const age = dislocationAge(fact, visit);
    return age ? [{ fact, age }] : [];
  });
  const old = new Set(aged.flatMap(({ fact, age }) => (age.least >= ACUTE_DAYS ? [siteOf(fact)] : [])));
  return aged.filter(({ fact }) => !old.has(siteOf(fact)));
}
const siteOf = ({ subject, side }: AnyFact): string => subjectKey(subject, side);

function dislocationAge(fact: AnyFact, visit: VisitFacts): Aged['age'] | undefined {
  if (fact.clarity !== 'clear' || fact.status !== 'present') return undefined;
  const today = { least: 0, most: 0 };
  if (fact.finding === 'film-joint') return fact.values.state?.words.includes('dislocated') ? today : undefined;
  if (fact.finding !== 'dislocated') return undefined;
  const { age, for: time, on } = fact.values;
  if (age?.words.includes('chronic')) return { least: ACUTE_DAYS, most: Number.POSITIVE_INFINITY };
  return time ? daysOf(time) : ((on && ageOf(on, visit)) ?? today);
}

/** An injury or a sudden onset under six weeks old, stated in this visit or, with its time, in an earlier one. */
export function isAcuteInjury({ visit, before, side }: InjuryView): boolean | 'unknown' {
  const stated = injuries(visit);
  const reduced = reducedJoints(visit).filter(({ fact }) => !fact.side || fact.side === side);
  const ages = [...stated.flatMap((fact) => injuryAge(fact, visit) ?? []), ...reduced.map(({ age }) => age)];
  if (ages.some(({ most }) => most < ACUTE_DAYS)) return true;
  // An age that lies on either side of six weeks is not old.
  if (ages.length > 0) return ages.some(({ least }) => least < ACUTE_DAYS) ? 'unknown' : false;
  if (isCalledAcute(visit, side)) return true;
  const earlier = symptomDays(visit) ? undefined : (before.injury[side] ?? before.injury.patient);
  const [first, last] = [dayOf(earlier?.earliest ?? ''), dayOf(earlier?.latest ?? '')];
  if (first && last && visit.date) {
    const on = dayFrom(visit.date);
    if (daysBetween(first, on) < ACUTE_DAYS) return true;
    return daysBetween(last, on) < ACUTE_DAYS ? 'unknown' : false;
  }
  return stated.length > 0 ? 'unknown' : false;
}

/** The ISO days between which an injury happened; the same day where its time is exact. */
export interface InjuryTime {
  readonly earliest: string;
  readonly latest: string;
}

/** Foot to the time of the newest injury that this visit states with its time. */
export function injuryDays(visit: VisitFacts): Record<string, InjuryTime> {
  const days: Record<string, InjuryTime> = {};
  const all = [...injuries(visit).map((fact) => ({ fact, age: injuryAge(fact, visit) })), ...reducedJoints(visit)];
  for (const { fact, age } of all) {
    if (!age || !visit.date || !Number.isFinite(age.most)) continue;
    const on = dayFrom(visit.date);
    const earliest = isoOf(daysBefore(on, Math.ceil(age.most)));
    const latest = isoOf(daysBefore(on, Math.max(0, Math.floor(age.least))));
    const foot = fact.side ?? 'patient';
    if ((days[foot]?.earliest ?? '') < earliest) days[foot] = { earliest, latest };
  }
  return days;
}
