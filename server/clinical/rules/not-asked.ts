import type { Side } from '../../../grammar/values.ts';
import { clearFacts } from '../answers.ts';
import { factsOf } from '../fact-index.ts';
import type { AnyFact, VisitFacts } from '../facts.ts';
import { footFeeling, neuropathicWhy } from '../feeling.ts';
import { mayClot } from '../known.ts';
import { mentions } from '../remarks.ts';
import { ANTI_INFLAMMATORY_RISKS, holds, type Risk, saysFalls, type Watch } from '../watch.ts';
import { yearsIn } from '../whole-visit.ts';
import { defineRule } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

const says = (visit: VisitFacts, what: RegExp): boolean => mentions(visit, what);
const planned = (visit: VisitFacts, finding: 'boot' | 'anti-inflammatory'): AnyFact | undefined =>
  (clearFacts(visit.facts, finding) as AnyFact[]).find(
    ({ section, status }) => section === 'plan' && status === 'present',
  );

export const feverUnasked = defineRule({
  ...practice,
  code: 'fever-unasked',
  name: 'Fever not asked at a hot joint',
  severity: 'contradiction',
  scope: 'visit',
  reads: ['hot', 'fever', 'temperature'],
  needs: ['hot'],
  what: 'A hot joint or foot, and nothing is said of fever.',
  why: 'A hot joint with fever is infection until shown otherwise, and waits hours, not weeks.',
  instead: 'Write fever, or no fever, with the temperature.',
  examples: {
    invalid: '2nd hot, swelling moderate, tender plantar',
    valid: 'history no fever\n2nd hot, swelling moderate, tender plantar',
    nearMiss: '2nd not hot, swelling moderate, tender plantar',
  },
  *check({ visit, redFlags }) {
    const hot = clearFacts(visit.facts, 'hot').find(({ status }) => status === 'present');
    const asked = factsOf(visit.facts, 'fever').length + factsOf(visit.facts, 'temperature').length;
    if (!hot || asked > 0 || says(visit, /fever|febrile|temp|sepsis|septic/i)) return;
    if (redFlags.some(({ flag }) => flag === 'infection')) return;
    const message =
      'A hot joint may be infected, and nothing is said of fever. Ask, take the temperature, and write it.';
    yield { place: hot.origin.word, message };
  },
});

export const neuropathicSwelling = defineRule({
  ...practice,
  code: 'neuropathic-swelling',
  name: 'Painless swelling of a foot with poor feeling',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['swelling', 'foot-swelling', 'sensation', 'neuropathy', 'hot', 'tenderness'],
  needs: ['swelling', 'foot-swelling'],
  what: 'A swollen joint or foot without tenderness in a foot with lost feeling or known neuropathy, and nothing is said of heat.',
  why: 'An acute neuropathic foot may be painless and looks like a sprain; walking on it destroys the joints.',
  instead: 'Compare the temperature of both feet, take a film, off-load until it is settled.',
  examples: {
    invalid: 'sense lost\n2nd swelling moderate, tender none',
    valid: 'sense lost\n2nd swelling moderate, tender none, not hot',
    nearMiss: 'sense normal\n2nd swelling moderate, tender none',
  },
  *check({ visit, before }) {
    const swollen = (['swelling', 'foot-swelling'] as const)
      .flatMap((finding) => clearFacts(visit.facts, finding) as AnyFact[])
      .filter(({ status }) => status === 'present');
    if (swollen.length === 0 || factsOf(visit.facts, 'hot').length > 0 || says(visit, /\bhot|warm|temp|charcot/i))
      return;
    for (const fact of swollen) {
      const side = fact.side as Side;
      const ray = fact.subject.at === 'ray' ? fact.subject.ray : 1;
      const sore = clearFacts(visit.facts, 'tenderness', { side, ray }).some(({ status }) => status === 'present');
      if (sore || neuropathicWhy(footFeeling(visit, before.known, side)) === undefined) continue;
      if (visit.kind === 'postop' || before.operated[`${side} ray ${ray}`]) continue;
      yield {
        place: fact.origin.word,
        message:
          'Painless swelling where feeling is lost may be an acute neuropathic foot. Compare the temperature of both feet, take a film, off-load.',
      };
      return;
    }
  },
});

/** An order to put no weight on the foot, or a cast. */
const offTheFoot = ({ facts }: VisitFacts): AnyFact | undefined =>
  [
    ...clearFacts(facts, 'weight-bearing').filter(({ values }) => values.load?.words.includes('non-weight-bearing')),
    ...clearFacts(facts, 'cast'),
  ].find(({ section, status }) => section === 'plan' && status === 'present');

export const bootUnasked = defineRule({
  ...practice,
  code: 'boot-unasked',
  name: 'Boot without a thought of falls and of a clot',
  severity: 'missing',
  scope: 'episode',
  reads: [
    'boot',
    'weight-bearing',
    'cast',
    'clot-history',
    'thrombophilia',
    'family-history',
    'anticoagulant',
    'falls',
  ],
  needs: ['boot', 'weight-bearing', 'cast'],
  what: 'A boot is planned, and nothing is said of falls or of an earlier clot; or a boot, a cast or no weight on the foot after an earlier clot or with a thrombophilia, and no protection.',
  why: 'A boot makes legs unequal and calves still: people fall in it, and clots form.',
  instead: 'Ask for falls and for an earlier clot, and write both; a clot decides the protection by local protocol.',
  examples: {
    invalid: '2nd tender plate, drawer 1\nplan boot 6 weeks',
    valid: 'history no clot-history or falls\n2nd tender plate, drawer 1\nplan boot 6 weeks',
    nearMiss: '2nd tender plate, drawer 1\nplan no boot; stiff-insert 6 weeks',
  },
  *check({ visit, before }) {
    const boot = planned(visit, 'boot');
    const off = boot ?? offTheFoot(visit);
    if (!off) return;
    const clots = clearFacts(visit.facts, 'clot-history');
    const clot = mayClot(before.known, visit);
    const protectedAlready =
      holds(visit, before.watch, 'anticoagulant') ||
      clearFacts(visit.facts, 'clot-prevention').some(({ status }) => status === 'present') ||
      says(visit, /heparin|prophyla|thrombo|anticoag|clot|dvt|vte/i);
    if (clot && !protectedAlready)
      yield {
        place: off.origin.word,
        severity: 'contradiction',
        message: `${boot ? 'A boot' : 'Time off the foot'} is planned after an earlier clot or with a thrombophilia, and no protection is written. Decide it by the local protocol.`,
      };
    if (!boot) return;
    const open = [
      !saysFalls(visit) && before.watch['risk falls'] === undefined && 'falls',
      clots.length === 0 && !protectedAlready && 'an earlier clot',
    ].filter(Boolean);
    if (open.length > 0 && !clot)
      yield {
        place: boot.origin.word,
        message: `A boot is planned and nothing is said of ${open.join(' or ')}. Ask, and write it.`,
      };
  },
});

const ASKED: readonly Risk[] = ['ulcer-or-bleed', 'kidney-disease', 'heart-failure', 'anticoagulant'];
/** Years from which nobody asks. */
const NO_PREGNANCY_FROM = 55;
/** Who was asked for heart disease was asked for the failure of the heart. */
const ASKED_WITH: Readonly<Partial<Record<Risk, Risk>>> = { 'heart-failure': 'heart-disease' };
const isAsked = (visit: VisitFacts, watch: Watch, risk: Risk): boolean => {
  const beside = ASKED_WITH[risk];
  return (
    factsOf(visit.facts, risk).length > 0 ||
    watch[`risk ${risk}`] !== undefined ||
    (beside !== undefined && isAsked(visit, watch, beside))
  );
};

export const antiInflammatoryUnasked = defineRule({
  ...practice,
  code: 'anti-inflammatory-unasked',
  name: 'Anti-inflammatory without its risks asked',
  severity: 'missing',
  scope: 'episode',
  reads: ['anti-inflammatory', ...ANTI_INFLAMMATORY_RISKS],
  needs: ['anti-inflammatory'],
  what: 'An anti-inflammatory is planned, and a risk that speaks against it was never asked.',
  why: 'Ulcer or bleed, kidney, heart, anticoagulant and late pregnancy are known to the patient and seldom told unasked.',
  instead: 'Ask each, and write it present or absent once; later visits remember it.',
  examples: {
    invalid: '2nd tender plate, drawer 1\nplan naproxen 2 weeks',
    valid:
      'history no ulcer-or-bleed, kidney-disease, heart-failure, anticoagulant or pregnancy\n2nd tender plate, drawer 1\nplan naproxen 2 weeks',
    nearMiss: '2nd tender plate, drawer 1\nplan no naproxen',
  },
  *check({ visit, before, context }) {
    const drug = planned(visit, 'anti-inflammatory');
    if (!drug) return;
    const { patient } = context.header;
    const young = (yearsIn(visit, context.header) ?? 0) < NO_PREGNANCY_FROM;
    const risks: Risk[] = [...ASKED, ...(young && patient?.sex !== 'male' ? (['pregnancy'] as const) : [])];
    const open = risks.filter((risk) => !isAsked(visit, before.watch, risk));
    // A risk that is stated is reported as such.
    const stated = [...risks, 'heart-disease' as const].some((risk) => holds(visit, before.watch, risk));
    if (open.length === 0 || stated || says(visit, /nsaid|anti-?inflam|stomach|kidney|renal/i)) return;
    yield {
      place: drug.origin.word,
      message: `An anti-inflammatory is planned and nobody asked for: ${open.join(', ')}. Ask, and write each present or absent.`,
    };
  },
});

export const otherCausesUnasked = defineRule({
  ...practice,
  code: 'other-causes-unasked',
  name: 'Callus, fat pad and bursa forgotten',
  severity: 'missing',
  scope: 'visit',
  reads: ['tenderness', 'callus', 'corn', 'skin', 'fat-pad', 'drawer'],
  what: 'A first visit plans for a head that is tender over a joint without instability, and says nothing of skin or fat pad.',
  why: 'A painful callus, a thin fat pad or a bursa hurts under the head and needs no plate treatment.',
  instead: 'Write callus or no callus, and the fat pad; put a bursa in a quote.',
  examples: {
    invalid: '2nd tender head, drawer 0, no swelling, straight, paper holds\nplan met-pad; review in 6 weeks',
    valid: '2nd tender head, drawer 0, no swelling, straight, paper holds, no callus\nplan met-pad; review in 6 weeks',
    nearMiss: '2nd tender head, drawer 2, no swelling, straight, paper holds\nplan met-pad; review in 6 weeks',
  },
  *check({ visit, rays }) {
    if (visit.kind !== 'first' || !visit.facts.some(({ section }) => section === 'plan')) return;
    const skin = ['callus', 'corn', 'skin', 'fat-pad'] as const;
    if (skin.some((finding) => factsOf(visit.facts, finding).length > 0) || says(visit, /callus|fat pad|burs|corn/i))
      return;
    for (const { side, ray, outcome } of rays) {
      if (outcome.is !== 'not applicable' || outcome.by !== 'no instability') continue;
      const head = clearFacts(visit.facts, 'tenderness', { side, ray }).find(
        ({ status, values }) => status === 'present' && values.place?.words.includes('head'),
      );
      if (!head) continue;
      yield {
        place: head.origin.word,
        message: 'A tender head over a stable joint: look for a callus, a thin fat pad and a bursa, and write them.',
      };
      return;
    }
  },
});
