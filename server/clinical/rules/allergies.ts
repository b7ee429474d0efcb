import { clearFacts } from '../answers.ts';
import type { AnyFact, VisitFacts } from '../facts.ts';
import { isRisk } from '../watch.ts';
import { defineRule, type RuleView } from './define-rule.ts';

/** Drugs of one kind by the names that the lexicon has for them: who reacts to one may react to the others (from memory). */
const KINDS: Readonly<Record<string, readonly string[]>> = {
  penicillin: ['flucloxacillin', 'co-amoxiclav'],
  flucloxacillin: ['penicillin', 'co-amoxiclav'],
  'co-amoxiclav': ['penicillin', 'flucloxacillin'],
  cefalexin: ['cefazolin', 'cefuroxime'],
  cefazolin: ['cefalexin', 'cefuroxime'],
  cefuroxime: ['cefalexin', 'cefazolin'],
  codeine: ['co-codamol', 'morphine'],
  'co-codamol': ['codeine', 'paracetamol', 'morphine'],
  paracetamol: ['co-codamol'],
  aspirin: ['anti-inflammatory'],
};
/** After an anaphylaxis the neighbouring kind is asked about too (from memory). */
const AFTER_ANAPHYLAXIS: Readonly<Record<string, readonly string[]>> = {
  penicillin: ['cefalexin', 'cefazolin', 'cefuroxime'],
  flucloxacillin: ['cefalexin', 'cefazolin', 'cefuroxime'],
  'co-amoxiclav': ['cefalexin', 'cefazolin', 'cefuroxime'],
};

const ANTIBIOTICS: readonly string[] = [...Object.keys(AFTER_ANAPHYLAXIS), 'cefalexin', 'cefazolin', 'cefuroxime'];
/** Why an order stands against an allergy; the first that holds. What is only asked about is no danger yet. */
const AGAINST: readonly {
  readonly holds: (allergy: Allergy, drug: string) => boolean;
  readonly says: string;
  readonly asks?: true;
}[] = [
  { holds: ({ to }, drug) => to === drug || to === 'any drug', says: '' },
  { holds: ({ to }, drug) => KINDS[to]?.includes(drug) ?? false, says: ', which is of its kind' },
  {
    holds: ({ to }, drug) => drug === 'an antibiotic' && ANTIBIOTICS.includes(to),
    says: ' without its name',
    asks: true,
  },
  {
    holds: ({ to, severe }, drug) => severe && (AFTER_ANAPHYLAXIS[to]?.includes(drug) ?? false),
    says: ', which is near it, after an anaphylaxis',
    asks: true,
  },
];

interface Allergy {
  readonly to: string;
  readonly severe: boolean;
  /** `penicillin allergy?`: asked about before the drug is given. */
  readonly doubted?: boolean;
  /** Missing where an earlier visit stated it. */
  readonly fact?: AnyFact;
}

const isGiven = ({ status, section }: AnyFact): boolean =>
  status === 'present' && (section === 'plan' || section === 'operation');

/** The drugs that a visit plans or gives, by the name that an allergy would have. */
function ordered({ facts }: VisitFacts): { readonly name: string; readonly fact: AnyFact }[] {
  const named = clearFacts(facts, 'medicine').flatMap((fact) =>
    isGiven(fact) ? (fact.values.name?.words ?? []).map((name) => ({ name, fact })) : [],
  );
  const eased = clearFacts(facts, 'anti-inflammatory').flatMap((fact) =>
    isGiven(fact) ? [{ name: 'anti-inflammatory', fact }] : [],
  );
  return [...named, ...eased];
}

function allergiesOf({ visit, before }: RuleView): Allergy[] {
  const stated = clearFacts(visit.facts, 'allergy');
  const now = stated.flatMap((fact) =>
    fact.status === 'present' || fact.status === 'equivocal'
      ? (fact.values.to?.words ?? []).map((to) => ({
          to,
          severe: fact.values.reaction?.words.includes('anaphylaxis') ?? false,
          doubted: fact.status === 'equivocal',
          fact,
        }))
      : [],
  );
  const denied = stated.some(({ status, values }) => status === 'absent' && !values.to);
  const known = denied ? [] : Object.keys(before.watch).flatMap((key) => /^risk allergy (.+)$/.exec(key)?.[1] ?? []);
  const earlier = known.filter((to) => isRisk(before.watch, `allergy ${to}`) && !now.some((each) => each.to === to));
  return [...now, ...earlier.map((to) => ({ to, severe: false }))];
}

export const drugAllergy = defineRule({
  source: 'common practice',
  mark: 'common practice',
  code: 'drug-allergy',
  name: 'Drug against a stated allergy',
  severity: 'danger',
  scope: 'episode',
  reads: ['medicine', 'anti-inflammatory', 'allergy'],
  needs: ['medicine', 'anti-inflammatory'],
  what: 'A drug is planned or given, and an allergy to it, or to one of its kind, is stated; which drugs are of a kind is from memory.',
  why: 'A second dose after a reaction may be the severe one; an allergy that was written once is easily overlooked later.',
  instead: 'Choose another, or settle the allergy with the prescriber and write how.',
  examples: {
    invalid: 'history allergy penicillin\nplan flucloxacillin 500 mg qds 7 days',
    valid: 'history allergy penicillin\nplan doxycycline',
    nearMiss: 'history allergy latex\nplan flucloxacillin 500 mg qds 7 days',
  },
  *check(view) {
    const allergies = allergiesOf(view);
    if (allergies.length === 0) return;
    for (const { name, fact } of ordered(view.visit)) {
      // An allergy to anti-inflammatories has a rule of its own.
      const pairs = AGAINST.flatMap((way) =>
        allergies
          .filter(({ to }) => to !== 'anti-inflammatory')
          .flatMap((allergy) => (way.holds(allergy, name) ? [{ ...way, ...allergy }] : [])),
      );
      const [first] = pairs;
      if (!first) continue;
      yield {
        place: fact.origin.place,
        ...(first.asks || first.doubted ? { severity: 'contradiction' as const } : {}),
        message: `An allergy to ${first.to} is ${first.doubted ? 'in doubt' : 'stated'}, and ${name} is ordered${first.says}. Choose another, or settle it with the prescriber and write how.`,
        related: first.fact ? [{ place: first.fact.origin.place, message: 'stated here' }] : [],
      };
    }
  },
});
