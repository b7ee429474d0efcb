import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Ray } from '../../grammar/values.ts';
import type { AnyFact } from './facts.ts';

type ByFinding = ReadonlyMap<FindingId, readonly AnyFact[]>;
interface Index {
  readonly all: ByFinding;
  readonly clear: ByFinding;
  /** The clear ones of a finding by their rays, once somebody asks for one. */
  readonly rays: Map<FindingId, Map<Ray, AnyFact[]>>;
  /** Facts with a remark in quotes. */
  readonly quoted: readonly AnyFact[];
}
/**
 * Facts by finding of the list that was asked last: the core asks some hundred times of one visit, then of the next. A weak
 * map over all lists would keep every visit of a note until the next full collection.
 */
let indexed: { readonly facts: readonly AnyFact[]; readonly index: Index } | undefined;

const indexOf = (facts: readonly AnyFact[]): Index => (indexed?.facts === facts ? indexed.index : indexAnew(facts));
function indexAnew(facts: readonly AnyFact[]): Index {
  const all = new Map<FindingId, AnyFact[]>();
  const quoted: AnyFact[] = [];
  let clear = true;
  for (const fact of facts) {
    const list = all.get(fact.finding);
    if (list) list.push(fact);
    else all.set(fact.finding, [fact]);
    if (fact.quotes.length > 0) quoted.push(fact);
    if (fact.clarity !== 'clear') clear = false;
  }
  const index = { all, clear: clear ? all : clearOnly(all), rays: new Map<FindingId, Map<Ray, AnyFact[]>>(), quoted };
  indexed = { facts, index };
  return index;
}

function clearOnly(all: ByFinding): ByFinding {
  const clear = new Map<FindingId, readonly AnyFact[]>();
  for (const [finding, list] of all) clear.set(finding, list.every(isClear) ? list : list.filter(isClear));
  return clear;
}
const isClear = ({ clarity }: AnyFact): boolean => clarity === 'clear';

const NONE: readonly never[] = [];

/** All facts of one finding, typed. */
export const factsOf = <F extends FindingId>(
  facts: readonly AnyFact[],
  finding: F,
): readonly Extract<AnyFact, { finding: F }>[] =>
  (indexOf(facts).all.get(finding) ?? NONE) as readonly Extract<AnyFact, { finding: F }>[];

/** The clear facts of one finding, typed. */
export const clearFactsOf = <F extends FindingId>(
  facts: readonly AnyFact[],
  finding: F,
): readonly Extract<AnyFact, { finding: F }>[] =>
  (indexOf(facts).clear.get(finding) ?? NONE) as readonly Extract<AnyFact, { finding: F }>[];

/** The clear facts of one finding that are of a ray, of either foot: of each ray the same few findings are asked, again and again. */
export function clearFactsOfRay<F extends FindingId>(
  facts: readonly AnyFact[],
  finding: F,
  ray: Ray,
): readonly Extract<AnyFact, { finding: F }>[] {
  const { clear, rays } = indexOf(facts);
  const list = clear.get(finding);
  if (!list) return NONE;
  let byRay = rays.get(finding);
  if (!byRay) {
    byRay = new Map<Ray, AnyFact[]>();
    for (const fact of list) {
      if (fact.subject.at !== 'ray') continue;
      const same = byRay.get(fact.subject.ray);
      if (same) same.push(fact);
      else byRay.set(fact.subject.ray, [fact]);
    }
    rays.set(finding, byRay);
  }
  return (byRay.get(ray) ?? NONE) as readonly Extract<AnyFact, { finding: F }>[];
}

/** The facts of each finding that is mentioned, clear ones and others. */
export const byFinding = (facts: readonly AnyFact[]): Iterable<readonly AnyFact[]> => indexOf(facts).all.values();

/** The facts that hold a remark in quotes, in their order. */
export const quotedFacts = (facts: readonly AnyFact[]): readonly AnyFact[] => indexOf(facts).quoted;
