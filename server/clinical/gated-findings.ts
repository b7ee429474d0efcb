import type { Evidence, NoStage } from './analysis.ts';
import { clearFacts } from './answers.ts';
import type { DecidingFindings } from './deciding.ts';
import { shows } from './evidence.ts';
import type { AnyFact } from './facts.ts';
import type { GateView } from './gates.ts';
import { proceduresOf } from './known.ts';

/** Deformity and drawer of a joint that is not staged: what is abnormal, each in its own words (common practice). */
export function gatedFindings(view: GateView, deciding: DecidingFindings, by: NoStage): Evidence[] {
  const { visit, before, side, ray } = view;
  const about = { side, ray };
  const done = by === 'operated' ? proceduresOf(before.known, visit, side, ray) : [];
  const list: Evidence[] = [];
  const add = (facts: readonly AnyFact[], why: string) => {
    for (const { statement, finding, origin, status } of facts)
      if (status === 'present') list.push({ statement, place: origin.word, finding, role: 'describes', why });
  };
  const { drawer } = deciding.possible;
  if (drawer.some((step) => step !== 0 && step !== 'not done'))
    add(deciding.facts.drawer ?? [], shows('drawer', deciding.possible));
  add(clearFacts(visit.facts, 'dislocated', about), 'dislocated');
  add(clearFacts(visit.facts, 'overlap', about), 'it overlaps');
  add(clearFacts(visit.facts, 'deviation', about), 'out of line');
  add(clearFacts(visit.facts, 'lifted', about), after(done, FLOATING, 'no ground contact'));
  add(clearFacts(visit.facts, 'extension', about), after(done, EXTENDED, 'extended at the MTP joint'));
  for (const fact of clearFacts(visit.facts, 'paper', about))
    if (fact.values.result && !fact.values.result.words.includes('holds'))
      add([fact], after(done, PURCHASE, 'purchase is reduced'));
  for (const fact of clearFacts(visit.facts, 'pip', about))
    if (fact.values.rigidity && !fact.values.rigidity.words.includes('flexible'))
      add([fact], after(done, FUSED, isStiff(fact) ? 'the PIP joint is stiff' : 'the PIP joint does not straighten'));
  return list;
}

/** A stiff joint may still straighten. */
const isStiff = ({ values }: Extract<AnyFact, { finding: 'pip' }>): boolean =>
  values.rigidity?.words.includes('stiff') ?? false;

type Reason = readonly [procedure: string, why: string];
const EXTENDED: readonly Reason[] = [
  ['weil osteotomy', 'extended after an osteotomy, no sign of instability by itself'],
];
const FLOATING: readonly Reason[] = [
  ['weil osteotomy', 'a floating toe after an osteotomy, no sign of instability by itself'],
];
const PURCHASE: readonly Reason[] = [
  ['tendon transfer', 'purchase is lost by design after a flexor transfer'],
  ['flexor tenotomy', 'purchase is lost by design after a flexor tenotomy'],
  ['weil osteotomy', 'purchase is reduced after an osteotomy, no sign of instability by itself'],
];
const FUSED: readonly Reason[] = [['pip fusion', 'the PIP joint is fused: no fixed hammer toe']];

const after = (done: readonly string[], reasons: readonly Reason[], otherwise: string): string =>
  reasons.find(([procedure]) => done.includes(procedure))?.[1] ?? otherwise;
