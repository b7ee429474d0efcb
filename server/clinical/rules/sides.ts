import { subjectKey } from '../facts.ts';
import { defineRule } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

export const wrongSide = defineRule({
  ...practice,
  code: 'wrong-side',
  name: 'Wrong side',
  severity: 'danger',
  scope: 'visit',
  reads: [],
  what: "A statement names the other foot than its visit, or no side where the visit doesn't give one.",
  why: 'The wrong side reaches the imaging request and the theatre list.',
  instead: 'Correct the side, make the visit bilateral, or name the side of each statement.',
  examples: { invalid: 'L2 drawer 2', valid: 'R2 drawer 2', nearMiss: 'compression sore both feet' },
  *check({ visit }) {
    const seen = new Set<number>();
    for (const { why, place, word } of visit.unclear) {
      if (why !== 'no side' || seen.has(word.line)) continue;
      seen.add(word.line);
      const message =
        visit.side === 'both'
          ? 'A bilateral visit needs the side of every statement: write R2 or L2, or a heading "right". Not staged.'
          : 'No side is given: write right, left or both on the visit line. Not staged.';
      yield { place, message };
    }
    if (visit.side !== 'right' && visit.side !== 'left') return;
    const reported = new Set<string>();
    for (const fact of visit.facts) {
      const once = `${fact.origin.place.line} ${subjectKey(fact.subject, fact.side)}`;
      if (!fact.side || fact.side === visit.side || reported.has(once)) continue;
      const bothSides = visit.facts.some((other) => other.statement === fact.statement && other.side === visit.side);
      if (bothSides) continue;
      reported.add(once);
      yield {
        place: fact.origin.place,
        message: `This says ${subjectKey(fact.subject, fact.side)}, but the visit is of the ${visit.side} foot. Correct one of them.`,
      };
    }
  },
});
