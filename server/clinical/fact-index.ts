import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { AnyFact } from './facts.ts';

type ByFinding = ReadonlyMap<FindingId, readonly AnyFact[]>;
/**
 * Facts by finding of the list that was asked last: the core asks some hundred times of one visit, then of the next. A weak
 * map over all lists would keep every visit of a note until the next full collection.
 */
let indexed: { readonly facts: readonly AnyFact[]; readonly index: ByFinding } | undefined;

function indexOf(facts: readonly AnyFact[]): ByFinding {
  if (indexed?.facts === facts) return indexed.index;
  const index = new Map<FindingId, AnyFact[]>();
  for (const fact of facts) {
    const list = index.get(fact.finding);
    if (list) list.push(fact);
    else index.set(fact.finding, [fact]);
  }
  indexed = { facts, index };
  return index;
}

const NONE: readonly never[] = [];

/** All facts of one finding, typed. */
export const factsOf = <F extends FindingId>(
  facts: readonly AnyFact[],
  finding: F,
): readonly Extract<AnyFact, { finding: F }>[] =>
  (indexOf(facts).get(finding) ?? NONE) as readonly Extract<AnyFact, { finding: F }>[];
