import { clearFacts, present, statementIds } from './answers.ts';
import { dayFrom, dayOf, daysBetween } from './dates.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { isTold, loadsFreely } from './known.ts';
import type { FlagView, Found } from './red-flags.ts';
import { OFF_FOOT_DAYS } from './windows.ts';

const CALF_SIGNS: readonly string[] = ['swollen', 'tender', 'hot', 'red'];

/**
 * A clot in leg or lung: the clinician's word, a chest sign, two signs of a calf, or one where the patient is off the foot, after operation, or has
 * had a clot before or a thrombophilia (common practice). It concerns the patient, whatever foot is examined.
 */
export function clot({ visit, before }: Pick<FlagView, 'visit' | 'before'>): Found {
  const chest = present(clearFacts(visit.facts, 'chest'));
  const calf = present(clearFacts(visit.facts, 'calf')).flatMap((fact) => {
    const signs = fact.values.state?.words.filter((word) => CALF_SIGNS.includes(word)) ?? [];
    return signs.length > 0 ? [{ fact, signs }] : [];
  });
  const named = present(clearFacts(visit.facts, 'complication')).filter(({ values }) =>
    values.what?.words.includes('clot'),
  );
  const told = statementIds([...chest, ...named, ...calf.map(({ fact }) => fact)]);
  if (named.length > 0) return { statements: told, why: 'the clinician states a clot', closes: true };
  if (chest.length > 0) return { statements: told, why: 'a sign of a clot in the lung', closes: true };
  if (calf.length === 0) return undefined;
  const twice = (['right', 'left', undefined] as const).some(
    (side) => new Set(calf.filter(({ fact }) => fact.side === side).flatMap(({ signs }) => signs)).size >= 2,
  );
  if (twice) return { statements: told, why: 'two signs of a clot in the calf', closes: true };
  if (isOffTheFoot(visit, before.known.offFoot))
    return { statements: told, why: 'a calf sign while off the foot or after operation', closes: true };
  const why = isTold(before.known, visit, 'clot-history')
    ? 'a calf sign in a patient who has had a clot'
    : isTold(before.known, visit, 'thrombophilia') && 'a calf sign in a patient with a thrombophilia';
  return why ? { statements: told, why, closes: true } : undefined;
}

/** After operation, or in a boot or off the foot, as this visit or one of the last three months says. */
function isOffTheFoot(visit: VisitFacts, ordered: Readonly<Record<string, string>>): boolean {
  if (visit.kind === 'postop' || visit.kind === 'operation') return true;
  const orders = clearFacts(visit.facts, 'weight-bearing').filter(({ values }) => !loadsFreely(values.load?.words));
  const here = [...clearFacts(visit.facts, 'boot'), ...clearFacts(visit.facts, 'procedure'), ...orders];
  return present(here as AnyFact[]).length > 0 || Object.values(ordered).some((on) => isRecent(on, visit));
}
function isRecent(on: string, { date }: VisitFacts): boolean {
  const day = dayOf(on);
  return day === undefined || date === undefined || daysBetween(day, dayFrom(date)) <= OFF_FOOT_DAYS;
}

/** Does anybody complain of pain at night? */
export const saysNightPain = (facts: readonly AnyFact[]): boolean => clearFacts(facts, 'pain').some(isAtNight);
const isAtNight = ({ values }: Extract<AnyFact, { finding: 'pain' }>): boolean =>
  values.character?.words.includes('night') ?? false;

/** A mass by the clinician's word, or pain at night beside a history of cancer or loss of weight (common practice). */
export function tumour({ visit, before, side, ray }: FlagView): Found {
  const near = (fact: AnyFact): boolean =>
    (fact.side === undefined || fact.side === side) && (fact.subject.at !== 'ray' || fact.subject.ray === ray);
  const masses = present(clearFacts(visit.facts, 'mass')).filter(near);
  if (masses.length > 0) return { statements: statementIds(masses), why: 'a mass', closes: true };
  const night = present(clearFacts(visit.facts, 'pain')).filter((fact) => near(fact) && isAtNight(fact));
  const other = [
    ...present(clearFacts(visit.facts, 'cancer-history')),
    ...present(clearFacts(visit.facts, 'weight-loss')),
  ];
  if (night.length === 0 || (other.length === 0 && !isTold(before.known, visit, 'cancer-history'))) return undefined;
  const why = 'pain at night beside a history of cancer or a loss of weight';
  return { statements: statementIds([...night, ...other]), why, closes: true };
}
