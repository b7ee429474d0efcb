import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { AnyFact } from './facts.ts';

type ByFinding = ReadonlyMap<FindingId, readonly AnyFact[]>;
/** Facts by finding, kept as long as their list: the core asks some fifty times a visit. */
const indexes = new WeakMap<readonly AnyFact[], ByFinding>();

function indexOf(facts: readonly AnyFact[]): ByFinding {
  const known = indexes.get(facts);
  if (known) return known;
  const index = new Map<FindingId, AnyFact[]>();
  for (const fact of facts) {
    const list = index.get(fact.finding);
    if (list) list.push(fact);
    else index.set(fact.finding, [fact]);
  }
  indexes.set(facts, index);
  return index;
}

/** All facts of one finding, typed. */
export const factsOf = <F extends FindingId>(
  facts: readonly AnyFact[],
  finding: F,
): readonly Extract<AnyFact, { finding: F }>[] =>
  (indexOf(facts).get(finding) ?? []) as readonly Extract<AnyFact, { finding: F }>[];
