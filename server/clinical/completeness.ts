import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { VisitKind } from '../../grammar/syntax.ts';
import type { Side } from '../../grammar/values.ts';
import type { Step } from './exam-steps.ts';
import * as step from './exam-steps.ts';
import { factsOf } from './fact-index.ts';
import type { AnyFact, VisitFacts } from './facts.ts';

type Needed = Readonly<Partial<Record<VisitKind, readonly Step[]>>>;
/** What is asked only of somebody who asks for complete visits; it stands before what is asked of every visit. */
export interface OnRequest {
  readonly needed: Needed;
  /** What to write of a visit that does not say what it is for. */
  readonly noPurpose: string;
}

/** What a visit of each purpose needs, in the order of the exam; common practice. The others are asked only on request. */
export const NEEDED: Needed = {
  first: [
    step.onset,
    step.pain,
    step.tried,
    step.stand,
    step.swelling,
    step.tenderness,
    step.drawer,
    step.alignment,
    step.paper,
    step.webs,
    step.sensation,
    step.circulation,
  ],
  review: [step.pain, step.tried, step.swelling, step.tenderness, step.drawer, step.alignment, step.paper],
  preop: [
    step.pain,
    step.wound,
    step.drawer,
    step.alignment,
    step.sensation,
    step.circulation,
    step.smoking,
    step.diabetes,
    step.anticoagulant,
    step.allergy,
  ],
  postop: [step.pain, step.wound, step.swelling, step.alignment],
  emergency: [step.onset, step.pain, step.wound, step.alignment, step.sensation, step.circulation],
};

/** Every finding that may answer a step. */
export const findingsAskedFor = (): FindingId[] =>
  [...new Set(Object.values(step).flatMap(({ findings }) => findings))].sort();

/** The steps that the purpose of a visit needs and that nobody mentions, for one foot. Silence is never an answer. */
export function missingSteps(visit: VisitFacts, side?: Side, onRequest?: OnRequest): Step[] {
  const needed = (visit.kind && (onRequest?.needed[visit.kind] ?? NEEDED[visit.kind])) ?? [];
  return needed.filter((each) => !isAnswered(visit, each, side));
}

function isAnswered({ facts, verbatim }: VisitFacts, { findings, section, is }: Step, side?: Side): boolean {
  const isOfFoot = (fact: AnyFact) => !side || !fact.side || fact.side === side;
  for (const finding of findings)
    for (const fact of factsOf(facts, finding))
      if (fact.section !== 'plan' && isOfFoot(fact) && (is?.(fact) ?? true)) return true;
  if (!section) return false;
  // Words that were not read answer it too: asking again would not help.
  return (
    verbatim.some((each) => each.section === section) ||
    facts.some((fact) => fact.section === section && isOfFoot(fact))
  );
}
