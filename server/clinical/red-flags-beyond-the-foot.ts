import type { Ray, Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import type { Flagged } from './red-flags.ts';

type Found = Omit<Flagged, 'flag'> | undefined;
const ids = (facts: readonly AnyFact[]): string[] => [...new Set(facts.map(({ statement }) => statement))];
const present = <T extends AnyFact>(facts: readonly T[]): T[] => facts.filter(({ status }) => status === 'present');

const CALF_SIGNS: readonly string[] = ['swollen', 'tender', 'hot', 'red'];

/**
 * A clot in leg or lung: a chest sign, two signs of a calf, or one where the patient is off the foot or after operation
 * (common practice). It concerns the patient, whatever foot is examined.
 */
export function clot(visit: VisitFacts): Found {
  const chest = present(clearFacts(visit.facts, 'chest'));
  const calf = present(clearFacts(visit.facts, 'calf')).flatMap((fact) => {
    const signs = fact.values.state?.words.filter((word) => CALF_SIGNS.includes(word)) ?? [];
    return signs.length > 0 ? [{ fact, signs }] : [];
  });
  const told = ids([...chest, ...calf.map(({ fact }) => fact)]);
  if (chest.length > 0) return { statements: told, why: 'a sign of a clot in the lung', closes: true };
  const twice = (['right', 'left', undefined] as const).some(
    (side) => new Set(calf.filter(({ fact }) => fact.side === side).flatMap(({ signs }) => signs)).size >= 2,
  );
  if (calf.length === 0 || !(twice || offTheFoot(visit))) return undefined;
  const after = twice ? 'two signs of a clot in the calf' : 'a calf sign while off the foot or after operation';
  return { statements: told, why: after, closes: true };
}

/** After operation, or in a boot, as far as this visit says. */
const offTheFoot = (visit: VisitFacts): boolean =>
  visit.kind === 'postop' ||
  visit.kind === 'operation' ||
  present(clearFacts(visit.facts, 'boot')).length > 0 ||
  present(clearFacts(visit.facts, 'procedure')).length > 0;

/** A mass by the clinician's word, or pain at night beside a history of cancer or loss of weight (common practice). */
export function tumour(visit: VisitFacts, { side, ray }: { readonly side: Side; readonly ray: Ray }): Found {
  const near = (fact: AnyFact): boolean =>
    (fact.side === undefined || fact.side === side) && (fact.subject.at !== 'ray' || fact.subject.ray === ray);
  const masses = present(clearFacts(visit.facts, 'mass')).filter(near);
  if (masses.length > 0) return { statements: ids(masses), why: 'a mass', closes: true };
  const night = present(clearFacts(visit.facts, 'pain')).filter(
    (fact) => near(fact) && fact.values.character?.words.includes('night'),
  );
  const other = [
    ...present(clearFacts(visit.facts, 'cancer-history')),
    ...present(clearFacts(visit.facts, 'weight-loss')),
  ];
  if (night.length === 0 || other.length === 0) return undefined;
  const why = 'pain at night beside a history of cancer or a loss of weight';
  return { statements: ids([...night, ...other]), why, closes: true };
}
