import type { Side } from '../../../grammar/values.ts';
import { findingsAskedFor, missingSteps } from '../completeness.ts';
import { factsOf } from '../fact-index.ts';
import type { AnyFact, Place, Verbatim, VisitFacts } from '../facts.ts';
import { defineRule, type RuleView } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
/** Nobody fills in a longer list. */
const AT_ONCE = 3;

const AT_VISIT: Place = { line: 0, start: 0, end: 'visit'.length };

/** Where the visit asks to be complete: at its first plan, else at its stage. Elsewhere only on request, at its first word. */
const asked = ({ visit, context, lines }: RuleView): Place | undefined =>
  planned(visit, lines) ??
  factsOf(visit.facts, 'stage')[0]?.origin.word ??
  (context.settings?.complete ? AT_VISIT : undefined);

/** The first word that is planned, read or not; else a plan that has no word yet. */
function planned({ facts, verbatim, lifecycle }: VisitFacts, lines: RuleView['lines']): Place | undefined {
  const isPlanned = ({ section }: AnyFact | Verbatim): boolean => section === 'plan';
  // What was said for a proposal stands in its comment.
  const isProposed = ({ place }: Verbatim): boolean =>
    lifecycle?.carried.some((each) => each.proposed && each.place.line === place.line) ?? false;
  const told =
    facts.find(isPlanned)?.origin.word ?? verbatim.find((each) => isPlanned(each) && !isProposed(each))?.place;
  if (told) return told;
  for (const [line, { roles }] of lines.entries())
    for (const { kind, canonical, start, end } of roles)
      if (kind === 'keyword' && canonical === 'plan') return { line, start, end };
  return undefined;
}

/** In a visit of both feet each foot that is examined is asked for, one after the other; where neither is, the visit is. */
function sidesOf({ side, facts }: VisitFacts): (Side | undefined)[] {
  if (side !== 'both') return [undefined];
  const examined = (['right', 'left'] as const).filter((each) =>
    facts.some((fact) => fact.side === each && fact.section === 'exam'),
  );
  return examined.length > 0 ? examined : [undefined];
}

export const incompleteVisit = defineRule({
  ...practice,
  code: 'incomplete-visit',
  name: 'Incomplete visit',
  severity: 'missing',
  scope: 'visit',
  reads: [...findingsAskedFor(), 'stage'],
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
    const onRequest = view.context.settings?.complete;
    if (onRequest && !view.visit.kind) yield { place: AT_VISIT, message: onRequest.noPurpose };
    for (const side of sidesOf(view.visit)) {
      const missing = missingSteps(view.visit, side, onRequest);
      if (missing.length === 0) continue;
      const asks = missing.slice(0, AT_ONCE).map(({ ask }) => ask);
      const more = missing.length > AT_ONCE ? ` (and ${missing.length - AT_ONCE} more)` : '';
      const foot = side ? ` of the ${side} foot` : '';
      yield {
        place,
        message: `Not mentioned${foot} in this ${view.visit.kind} visit: ${asks.join('; ')}${more}. Write it, or that it was not done.`,
      };
      return;
    }
  },
});
