import { entryOf } from '../../../grammar/lexicon/index.ts';
import { clearFacts, deniesOneKind } from '../answers.ts';
import type { AnyFact, VisitFacts } from '../facts.ts';
import { againstTape } from '../tape-risk.ts';
import { ANTI_INFLAMMATORY_RISKS, isRisk } from '../watch.ts';
import { defineRule, type RuleView, replace } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

const planned = (visit: VisitFacts, finding: 'tape' | 'anti-inflammatory'): AnyFact[] =>
  (clearFacts(visit.facts, finding) as AnyFact[]).filter(
    ({ section, status }) => section === 'plan' && status === 'present',
  );
const allergies = (visit: VisitFacts, to: 'anti-inflammatory'): AnyFact[] =>
  clearFacts(visit.facts, 'allergy').filter(
    ({ status, values }) => status === 'present' && values.to?.words.includes(to),
  );
/** In the word that was typed, so that a drug keeps its name. */
const refusal = ({ origin: { word } }: AnyFact, lines: RuleView['lines']) => {
  const no = `no ${lines[word.line]?.text.slice(word.start, word.end)}`;
  return { title: `Write "${no}"`, safety: 'needs review', edits: [replace(word, no)] } as const;
};

export const antiInflammatoryRisk = defineRule({
  ...practice,
  code: 'anti-inflammatory-risk',
  name: 'Anti-inflammatory against a stated risk',
  severity: 'danger',
  scope: 'visit',
  reads: ['anti-inflammatory', 'allergy', ...ANTI_INFLAMMATORY_RISKS],
  needs: ['anti-inflammatory'],
  what: 'An anti-inflammatory is planned, and the visit states a risk that speaks against it.',
  why: 'Ulcer or bleed, kidney disease, heart failure or disease, an anticoagulant, pregnancy or an allergy make it dangerous.',
  instead: 'Leave it out, or settle it with the prescriber and say so in a quote.',
  examples: {
    invalid: 'history warfarin\nplan naproxen',
    valid: 'history warfarin\nplan no naproxen',
    nearMiss: 'history no anticoagulant, not pregnant\nplan naproxen',
  },
  *check({ visit, before, lines }) {
    const drugs = planned(visit, 'anti-inflammatory');
    if (drugs.length === 0) return;
    const risks = [
      ...ANTI_INFLAMMATORY_RISKS.flatMap((finding) => clearFacts(visit.facts, finding) as AnyFact[]).filter(
        ({ status }) => status === 'present',
      ),
      ...allergies(visit, 'anti-inflammatory'),
    ];
    // Said at an earlier visit and not denied in this one.
    const earlier = [
      ...ANTI_INFLAMMATORY_RISKS.filter(
        (risk) => isRisk(before.watch, risk) && (clearFacts(visit.facts, risk) as AnyFact[]).every(deniesOneKind),
      ),
      ...(isRisk(before.watch, 'allergy anti-inflammatory') ? (['allergy'] as const) : []),
    ].filter((risk) => risk !== 'pregnancy');
    if (risks.length + earlier.length === 0) return;
    const names = [...new Set([...risks.map(({ finding }) => finding), ...earlier])]
      .map((finding) => entryOf(finding).word)
      .join(', ');
    for (const fact of drugs)
      yield {
        place: fact.origin.place,
        message: `An anti-inflammatory is planned against a stated risk (${names}): it may do harm. Leave it out or settle it with the prescriber.`,
        related: risks.map(({ origin }) => ({ place: origin.place, message: 'stated here' })),
        fixes: [refusal(fact, lines)],
      };
  },
});

export const tapeRisk = defineRule({
  ...practice,
  code: 'tape-risk',
  name: 'Tape over skin at risk',
  severity: 'danger',
  scope: 'visit',
  reads: ['tape', 'allergy', 'sensation', 'dp', 'pt', 'pulses', 'perfusion', 'skin', 'wound'],
  needs: ['tape'],
  what: 'Tape is planned, and a tape allergy, a foot without feeling, a poor circulation, fragile skin or a wound is stated.',
  why: 'Tape blisters allergic skin, and cuts skin that cannot feel or is poorly supplied.',
  instead: 'Use a stiff sole, or a splint over skin that feels and is well supplied, or say "no tape".',
  examples: {
    invalid: 'history allergy tape\nplan tape 2nd 8 weeks',
    valid: 'history allergy tape\nplan stiff-insert 8 weeks',
    nearMiss: 'history allergy latex\nsense normal\npulses 2\nplan tape 2nd 8 weeks',
  },
  *check(view) {
    for (const fact of planned(view.visit, 'tape')) {
      const ray = fact.subject.at === 'ray' ? fact.subject.ray : undefined;
      const { reasons, allergies: allergic, skinAtRisk } = againstTape(view, { side: fact.side, ray });
      if (reasons.length === 0) continue;
      yield {
        place: fact.origin.place,
        message: `Tape is planned with ${reasons.join(' and ')} stated: it may break the skin. Use a stiff sole${skinAtRisk ? '' : ' or a splint'} instead.`,
        related: allergic.map(({ origin }) => ({ place: origin.place, message: 'stated here' })),
        fixes: [refusal(fact, view.lines)],
      };
    }
  },
});
