import { clearFacts } from '../answers.ts';
import type { AnyFact, VisitFacts } from '../facts.ts';
import { subjectKey } from '../facts.ts';
import { givenSteroid, injectionDays } from '../watch.ts';
import { defineRule, type RuleView, replace } from './define-rule.ts';

const memory = { source: 'REIS89', mark: 'from memory, to be verified' } as const;

/** From the third on; common practice. */
const MANY = 3;
type Foot = 'right' | 'left' | 'patient';
const FEET: readonly Foot[] = ['right', 'left', 'patient'];
type Steroid = Extract<AnyFact, { finding: 'steroid' }>;
const ofFoot = (visit: VisitFacts, foot: Foot): Steroid[] =>
  clearFacts(visit.facts, 'steroid').filter(({ side, status }) => status === 'present' && (side ?? 'patient') === foot);

/** Injections that a foot has had by now: days of earlier visits and of this one once each, and counts as stated. */
function countOf({ visit, before }: RuleView, foot: Foot, given: readonly Steroid[]): number {
  const earlier = before.watch[`injection ${foot}`]?.split(' ') ?? [];
  const dated = new Set([...earlier, ...injectionDays(visit, foot)]).size;
  const undated = given.filter(({ values }) => !values.on && !values.count).length;
  const counted = given.map(({ values }) => (values.count?.bound === 'under' ? 0 : (values.count?.low ?? 0)));
  return Math.max(dated + (earlier.length > 0 ? 0 : undated), ...counted);
}

export const steroidRepeated = defineRule({
  ...memory,
  code: 'steroid-repeated',
  name: 'Three or more steroid injections',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['steroid'],
  needs: ['steroid'],
  what: 'A foot has had three steroid injections or more, or the planned one would be the third.',
  why: 'Repeated steroid weakens plate, fat pad and skin; dislocation after repeated injections has been reported.',
  instead: 'Think again what the pain is; examine for drift and thin skin. Write "no steroid" to say so.',
  examples: {
    invalid: 'tried steroid web 3 2025-03; steroid web 3 2025-09\n4th drawer 0, straight\nplan steroid web 3',
    valid: 'tried steroid web 3 2025-03; steroid web 3 2025-09\n4th drawer 0, straight\nplan no steroid',
    nearMiss: 'tried steroid web 3 2025-03\n4th drawer 0, straight\nplan steroid web 3',
  },
  *check(view) {
    for (const foot of FEET) {
      const steroids = ofFoot(view.visit, foot);
      if (steroids.length === 0) continue;
      const given = steroids.filter(givenSteroid);
      const planned = steroids.find(({ section }) => section === 'plan');
      const count = countOf(view, foot, given);
      const fact = planned ?? given.at(-1);
      if (!fact || count + (planned ? 1 : 0) < MANY) continue;
      yield {
        place: fact.origin.place,
        message: planned
          ? `This would be injection ${count + 1} of the foot: repeated steroid weakens the plate. Think again what the pain is.`
          : `The foot has had ${count} steroid injections: no further one; look for drift and thin skin.`,
        fixes: planned
          ? [{ title: 'Write "no steroid"', safety: 'needs review', edits: [replace(fact.origin.word, 'no steroid')] }]
          : [],
      };
    }
  },
});

export const driftAfterSteroid = defineRule({
  source: 'common practice',
  mark: 'common practice',
  code: 'drift-after-steroid',
  name: 'Drift after a steroid injection',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['deviation', 'steroid'],
  needs: ['deviation'],
  what: 'A toe that an earlier visit found straight deviates now, in a foot that has had a steroid injection.',
  why: 'Drift after an injection may be the first sign that the plate is giving way.',
  instead: 'Do the drawer, hold the toe down, take an image; no further injection here.',
  examples: {
    invalid:
      'forefoot 1\nscales drawer 0-4\n\nvisit 2025-12-01 first right\ntried steroid web 2 2025-11\n2nd straight, drawer 0\n\nvisit 2026-03-09 review right\n2nd medial mild',
    valid:
      'forefoot 1\nscales drawer 0-4\n\nvisit 2025-12-01 first right\ntried steroid web 2 2025-11\n2nd straight, drawer 0\n\nvisit 2026-03-09 review right\n2nd straight',
    nearMiss:
      'forefoot 1\nscales drawer 0-4\n\nvisit 2025-12-01 first right\n2nd straight, drawer 0\n\nvisit 2026-03-09 review right\n2nd medial mild',
  },
  *check({ visit, before }) {
    for (const fact of clearFacts(visit.facts, 'deviation')) {
      if (fact.status !== 'present' || !fact.side || fact.subject.at !== 'ray' || fact.subject.ray === 1) continue;
      const name = subjectKey(fact.subject, fact.side);
      if (before.watch[`aligned ${name}`] !== 'straight' || before.operated[name]) continue;
      const { watch } = before;
      const here = ofFoot(visit, fact.side).some(givenSteroid);
      const days = watch[`injection ${fact.side}`] ?? watch['injection patient'];
      if (!here && !days) continue;
      const when = days ? ` (${days.split(' ').at(-1)})` : '';
      yield {
        place: fact.origin.place,
        message: `This toe was straight before and the foot has had a steroid injection${when}: the plate may be giving way. No further injection; hold the toe down and take an image.`,
      };
    }
  },
});
