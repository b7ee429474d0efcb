import { dayFrom, dayOf, daysBetween } from '../dates.ts';
import { quotedFacts } from '../fact-index.ts';
import type { Place, VisitFacts } from '../facts.ts';
import { yearsIn } from '../whole-visit.ts';
import { REVIEW_LATE_DAYS } from '../windows.ts';
import { defineRule } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

const AGE = /\b(?:aged?\s+(\d{1,3})\b|(\d{1,3})[\s-]*(?:years?[\s-]+old|y\/?o|yrs?\s+old)\b)/i;

const SOMEBODY_ELSE = /mother|father|sister|brother|son\b|daughter|husband|wife|partner/i;

function* remarksWithPlace({ facts, verbatim }: VisitFacts): Iterable<{ text: string; place: Place }> {
  yield* verbatim;
  for (const { quotes, origin } of quotedFacts(facts)) for (const text of quotes) yield { text, place: origin.place };
}

export const ageAgainstBirthYear = defineRule({
  ...practice,
  code: 'age-against-birth-year',
  name: 'Age against the year of birth',
  severity: 'contradiction',
  scope: 'visit',
  reads: [],
  what: 'An age in words disagrees with the year of birth and the date of the visit.',
  why: 'A birth year allows two ages; another one is a slip, or somebody else. It also decides whether the foot still grows.',
  instead: 'Correct the age or the year of birth; the age need not be written at all.',
  examples: {
    invalid: 'forefoot 1\npatient AB-123  born 1970\n\nvisit 2026-03-09 first right\nhistory "a 45 year old runner"',
    valid: 'forefoot 1\npatient AB-123  born 1970\n\nvisit 2026-03-09 first right\nhistory "a 55 year old runner"',
    nearMiss: 'forefoot 1\npatient AB-123  born 1970\n\nvisit 2026-03-09 first right\nhistory "a 45 minute run"',
  },
  *check({ visit, context }) {
    const years = yearsIn(visit, context.header);
    if (years === undefined) return;
    for (const { text, place } of remarksWithPlace(visit)) {
      const found = AGE.exec(text);
      const said = Number(found?.[1] ?? found?.[2] ?? Number.NaN);
      if (Number.isNaN(said) || said === years || said === years - 1 || SOMEBODY_ELSE.test(text)) continue;
      yield {
        place,
        message: `The year of birth makes the patient ${years - 1} or ${years} in this visit, not ${said}. Correct one of them.`,
      };
      return;
    }
  },
});

export const reviewOverdue = defineRule({
  ...practice,
  code: 'review-overdue',
  name: 'Review later than planned',
  severity: 'missing',
  scope: 'episode',
  reads: ['review'],
  what: 'The visit falls more than four weeks after the day for which the last one planned a review.',
  why: 'A course runs on unjudged, a pin stays, a result waits: what was due then may still be open.',
  instead: 'Say why it was later, in a quote, and take up what was due.',
  examples: {
    invalid:
      'forefoot 1\n\nvisit 2026-01-05 first right\nplan review in 4 weeks\n\nvisit 2026-03-23 review right\npain 2nd plantar 3/10',
    valid:
      'forefoot 1\n\nvisit 2026-01-05 first right\nplan review in 4 weeks\n\nvisit 2026-02-02 review right\npain 2nd plantar 3/10',
    nearMiss:
      'forefoot 1\n\nvisit 2026-01-05 first right\nplan review in 3 months\n\nvisit 2026-03-23 review right\npain 2nd plantar 3/10',
  },
  *check({ visit, before }) {
    const due = dayOf(before.watch.review ?? '');
    if (!due || !visit.date || visit.kind === 'emergency') return;
    const late = daysBetween(due, dayFrom(visit.date));
    if (late <= REVIEW_LATE_DAYS) return;
    yield {
      place: { line: 0, start: 0, end: 'visit'.length },
      message: `The review was planned for ${before.watch.review}, ${Math.round(late / 7)} weeks before this visit. Take up what was due, and say why it was later.`,
    };
  },
});
