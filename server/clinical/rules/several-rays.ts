import type { RayAnalysis } from '../analysis.ts';
import { clearFacts } from '../answers.ts';
import { defineRule, type RuleView } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const SIDES = ['right', 'left'] as const;

const lowest = ({ outcome }: RayAnalysis): number =>
  outcome.is === 'staged' ? outcome.stage : outcome.is === 'span' ? outcome.low : -1;

/** Stiffness in the morning or compression of the joints is stated, present or absent. */
const asked = ({ visit }: RuleView, side: (typeof SIDES)[number]): boolean =>
  clearFacts(visit.facts, 'morning-stiffness').length > 0 ||
  clearFacts(visit.facts, 'compression', { side }).length > 0;

export const severalUnstableRays = defineRule({
  ...practice,
  code: 'several-unstable-rays',
  name: 'Several rays at stage 3 or 4',
  severity: 'missing',
  scope: 'visit',
  reads: ['drawer', 'overlap', 'dislocated', 'morning-stiffness', 'compression'],
  what: 'Two or more rays of a foot are at stage 3 or 4, and nobody asked about inflammatory arthritis.',
  why: 'Several plates that fail at once suggest one disease of the joints rather than several tears.',
  instead: 'Ask about morning stiffness and compress the row of MTP joints, before several plates are reported.',
  examples: {
    invalid: '2nd drawer 3, tender plate\n3rd drawer 3, medial',
    valid: 'history no morning-stiffness\n2nd drawer 3, tender plate\n3rd drawer 3, medial',
    nearMiss: '2nd drawer 3, tender plate\n3rd drawer 2, medial',
  },
  *check(view) {
    for (const side of SIDES) {
      const severe = view.rays.filter((each) => each.side === side && lowest(each) >= 3);
      if (severe.length < 2 || asked(view, side)) continue;
      const [first, second] = severe.flatMap(({ evidence }) => evidence.find(({ role }) => role === 'decides') ?? []);
      if (!first || !second) continue;
      const rays = severe.map(({ ray }) => ray).join(' and ');
      yield {
        place: second.place,
        message: `Rays ${rays} of the ${side} foot are at stage 3 or 4: think of inflammatory arthritis. Ask about morning stiffness, compress the joints.`,
        related: [{ place: first.place, message: 'the other ray' }],
      };
    }
  },
});
