import type { Side } from '../../../grammar/values.ts';
import { EXAM_STEPS, missingSteps } from '../completeness.ts';
import { factsOf } from '../fact-index.ts';
import type { AnyFact, Place, VisitFacts } from '../facts.ts';
import { defineRule, type RuleView } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
/** Nobody fills in a longer list. */
const AT_ONCE = 3;

/** Where the visit asks to be complete: at its first plan, else at its stage. Elsewhere only on request, at its first word. */
function asked({ visit, context }: RuleView): Place | undefined {
  const plan = firstPlanned(visit.facts);
  const [stage] = factsOf(visit.facts, 'stage');
  const onRequest = context.settings?.complete ? { line: 0, start: 0, end: 'visit'.length } : undefined;
  return (plan ?? stage)?.origin.word ?? onRequest;
}

function firstPlanned(facts: readonly AnyFact[]): AnyFact | undefined {
  for (const fact of facts) if (fact.section === 'plan') return fact;
  return undefined;
}

/** In a visit of both feet each foot that is examined is asked for, one after the other. */
function sidesOf({ side, facts }: VisitFacts): (Side | undefined)[] {
  if (side !== 'both') return [undefined];
  return (['right', 'left'] as const).filter((each) =>
    facts.some((fact) => fact.side === each && fact.section === 'exam'),
  );
}

export const incompleteVisit = defineRule({
  ...practice,
  code: 'incomplete-visit',
  name: 'Incomplete visit',
  severity: 'missing',
  scope: 'visit',
  reads: [...Object.values(EXAM_STEPS).flatMap(({ findings }) => findings), 'stage'],
  what: 'A visit that plans or stages does not mention a step of the exam that its purpose needs.',
  why: 'What nobody mentions is not normal; it is open, to the reader of the note and to the stage.',
  instead: 'Write the step, or say that it was not done.',
  examples: {
    invalid: '2nd drawer 2\nstage 2nd 2',
    valid: [
      'history onset gradual 5 months',
      'pain 2nd plantar 6/10',
      'tried met-pad 4 weeks no-relief',
      'stand 2nd lifted 3 mm',
      '2nd swelling mild, tender plantar, drawer 2, straight, paper weak',
      'webs 2-3 click none, squeeze none',
      'sense monofilament 10/10',
      'pulses dp 2, pt 2',
      'plan tape 2nd 8 weeks',
    ].join('\n'),
    nearMiss: '2nd drawer 2',
  },
  *check(view) {
    const place = asked(view);
    // What is urgent comes first, and alone.
    if (!place || view.redFlags.length > 0) return;
    for (const side of sidesOf(view.visit)) {
      const missing = missingSteps(view.visit, side);
      if (missing.length === 0) continue;
      const steps = missing.slice(0, AT_ONCE).map((id) => EXAM_STEPS[id].ask);
      const more = missing.length > AT_ONCE ? ` (and ${missing.length - AT_ONCE} more)` : '';
      const foot = side ? ` of the ${side} foot` : '';
      yield {
        place,
        message: `Not mentioned${foot} in this ${view.visit.kind} visit: ${steps.join('; ')}${more}. Write it, or that it was not done.`,
      };
      return;
    }
  },
});
