import { ordinalOf } from '../../../grammar/values.ts';
import { clearFacts, isStated } from '../answers.ts';
import { dayFrom, dayOf, daysBetween, isoOf } from '../dates.ts';
import { type AnyFact, subjectKey } from '../facts.ts';
import { mentions } from '../remarks.ts';
import { IMPACT_EARLIEST_DAYS, SHOES_EARLIEST_DAYS } from '../windows.ts';
import { defineRule, type RuleView } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

const HEADER = 'forefoot 1\nscales drawer 0-4\n\nvisit 2026-01-12 operation right\n';

/** The day of the newest operation of a foot. */
export function operatedOn({ operated }: RuleView['before'], side: string | undefined): string | undefined {
  const days = Object.entries(operated).flatMap(([ray, on]) => (!side || ray.startsWith(side) ? [on] : []));
  return days
    .filter((on) => on !== 'undated')
    .sort()
    .at(-1);
}

export const shoeBeforeWindow = defineRule({
  ...practice,
  code: 'shoe-before-window',
  name: 'Ordinary shoe before its time',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['ordinary-shoes', 'procedure'],
  needs: ['ordinary-shoes'],
  what: 'Ordinary shoes are worn before the day that the operation note orders, or before six weeks where it orders none.',
  why: 'Load before the repair holds stretches it again; every named protocol waits six weeks at least.',
  instead: 'Go back to the shoe or boot that was ordered, or write the changed order in the plan.',
  examples: {
    invalid: `${HEADER}operation 2nd plate repair\n\nvisit 2026-02-09 postop right\nordinary-shoes`,
    valid: `${HEADER}operation 2nd plate repair\n\nvisit 2026-03-02 postop right\nordinary-shoes`,
    nearMiss: `${HEADER}operation 2nd plate repair, ordinary-shoes from 4 weeks\n\nvisit 2026-02-09 postop right\nordinary-shoes`,
  },
  *check({ visit, before }) {
    const worn = clearFacts(visit.facts, 'ordinary-shoes').find(
      ({ section, status }) => section === 'exam' && status === 'present',
    );
    const since = worn && dayOf(operatedOn(before, worn.side) ?? '');
    if (!worn || !since || !visit.date) return;
    const ordered = dayOf(before.watch[`shoes ${worn.side ?? 'patient'}`] ?? before.watch['shoes patient'] ?? '');
    const now = dayFrom(visit.date);
    const early = ordered ? daysBetween(now, ordered) > 0 : daysBetween(since, now) < SHOES_EARLIEST_DAYS;
    if (!early) return;
    const weeks = Math.floor(daysBetween(since, now) / 7);
    const until = ordered ? `the note orders them from ${isoOf(ordered)}` : 'no protocol here allows them before six';
    yield {
      place: worn.origin.place,
      message: `Ordinary shoes ${weeks} weeks after the operation, and ${until}. Protect the foot, or write the changed order.`,
    };
  },
});

const IMPACT: readonly string[] = ['running', 'dancing', 'sport'];

export const impactBeforeWindow = defineRule({
  ...practice,
  code: 'impact-before-window',
  name: 'Impact before its time',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['activity', 'procedure'],
  needs: ['activity'],
  what: 'Running, dancing or sport is stated after an operation, before twelve weeks.',
  why: 'Impact sport waits twelve weeks in every named protocol, and three to six months after a repair from below.',
  instead: 'Stop it until its time; what was done before the operation belongs to the earlier visits.',
  examples: {
    invalid: `${HEADER}operation 2nd plate repair\n\nvisit 2026-03-09 postop right\nhistory activity running`,
    valid: `${HEADER}operation 2nd plate repair\n\nvisit 2026-04-20 postop right\nhistory activity running`,
    nearMiss: `${HEADER}operation 2nd plate repair\n\nvisit 2026-03-09 postop right\nhistory activity cycling`,
  },
  *check({ visit, before }) {
    const done = clearFacts(visit.facts, 'activity').find(
      ({ status, values }) => status === 'present' && values.what?.words.some((word) => IMPACT.includes(word)),
    );
    const side = visit.side === 'both' ? undefined : visit.side;
    const since = done && dayOf(operatedOn(before, side) ?? '');
    if (!done || !since || !visit.date) return;
    const days = daysBetween(since, dayFrom(visit.date));
    if (days >= IMPACT_EARLIEST_DAYS) return;
    yield {
      place: done.origin.place,
      message: `Impact ${Math.floor(days / 7)} weeks after the operation: it waits twelve weeks at least. Stop it, or say that it was before.`,
    };
  },
});

const UNSTABLE: readonly string[] = ['mtp instability', 'plantar plate tear', 'crossover toe'];

export const floatingToe = defineRule({
  source: 'HIGH11',
  mark: 'read',
  code: 'floating-toe',
  name: 'Floating toe called instability',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['diagnosis', 'lifted', 'extension', 'drawer', 'procedure'],
  needs: ['diagnosis'],
  what: 'An operated toe that floats or is extended is called unstable, and no drawer, overlap or dislocation says so.',
  why: 'A toe may float after a Weil osteotomy (36 % in HIGH11) with a stable joint; it is no new tear.',
  instead: 'Do the drawer; describe the floating toe, or residual instability where the drawer is positive.',
  examples: {
    invalid: `${HEADER}operation 2nd weil\n\nvisit 2026-04-20 review right\n2nd floating, diagnosis plate tear`,
    valid: `${HEADER}operation 2nd weil\n\nvisit 2026-04-20 review right\n2nd floating, drawer 0`,
    nearMiss: `${HEADER}operation 2nd weil\n\nvisit 2026-04-20 review right\n2nd floating, drawer 2, diagnosis plate tear`,
  },
  *check({ visit, before }) {
    for (const fact of clearFacts(visit.facts, 'diagnosis')) {
      if (fact.subject.at !== 'ray' || !fact.side || fact.status !== 'present') continue;
      const about = { side: fact.side, ray: fact.subject.ray };
      const called = fact.values.what?.words.some((word) => UNSTABLE.includes(word));
      if (!called || !before.operated[subjectKey(fact.subject, fact.side)]) continue;
      const floats = (['lifted', 'extension'] as const).some((each) => isStated(visit.facts, each, 'present', about));
      const drawer = clearFacts(visit.facts, 'drawer', about).some(
        ({ status, values }) => status === 'present' && (values.result || (values.grade?.high ?? 0) >= 1),
      );
      const lies = (['overlap', 'dislocated'] as const).some((each) => isStated(visit.facts, each, 'present', about));
      if (!floats || drawer || lies) continue;
      yield {
        place: fact.origin.place,
        message:
          'This toe was operated on and floats: that is no instability by itself. Do the drawer, and describe what is residual.',
      };
    }
  },
});

/** Seconds from which a refill is slow (common practice); the lexicon computes no cut, so the clinician's word is asked for. */
const SLOW_SECONDS = 3;

export const refillUnjudged = defineRule({
  ...practice,
  code: 'refill-unjudged',
  name: 'Slow refill after an operation, not judged',
  severity: 'contradiction',
  scope: 'visit',
  reads: ['capillary-refill', 'dislocated', 'procedure'],
  needs: ['capillary-refill'],
  what: 'A refill of more than three seconds in an operation or post-operative visit, and nobody says whether it is delayed.',
  why: 'A tight dressing, a pin or a stretched vessel costs the toe; the number alone raises no alarm.',
  instead: 'Write normal or delayed; loosen the dressing, look again, and tell the surgeon where it stays slow.',
  examples: {
    invalid: 'forefoot 1\n\nvisit 2026-03-09 postop right\n2nd capillary-refill 5 s',
    valid: 'forefoot 1\n\nvisit 2026-03-09 postop right\n2nd capillary-refill 5 s normal',
    nearMiss: 'forefoot 1\n\nvisit 2026-03-09 postop right\n2nd capillary-refill 2 s',
  },
  *check({ visit }) {
    if (visit.kind !== 'postop' && visit.kind !== 'operation') return;
    for (const { status, values, origin } of clearFacts(visit.facts, 'capillary-refill')) {
      const seconds = values.time?.low;
      if (status !== 'present' || values.state || seconds === undefined || seconds <= SLOW_SECONDS) continue;
      yield {
        place: origin.place,
        message: `A refill of ${seconds} s after an operation is slow (common practice: over ${SLOW_SECONDS} s). Loosen the dressing, look again, and write normal or delayed.`,
      };
    }
  },
});

export const feverAfterOperation = defineRule({
  ...practice,
  code: 'fever-after-operation',
  name: 'Fever after an operation',
  severity: 'contradiction',
  scope: 'visit',
  reads: ['fever'],
  needs: ['fever'],
  what: 'Fever in a post-operative visit that states no red flag of infection or clot.',
  why: 'Wound, pin, chest, calf and bladder are looked at before a fever is called harmless.',
  instead: 'Examine wound, pin site, calf and chest, and write what was found.',
  examples: {
    invalid: 'forefoot 1\n\nvisit 2026-03-09 postop right\nfever 38.4',
    valid: 'forefoot 1\n\nvisit 2026-03-09 postop right\nno fever',
    nearMiss: 'fever 38.4',
  },
  *check({ visit, redFlags }) {
    if (visit.kind !== 'postop' || redFlags.some(({ flag }) => flag === 'infection' || flag === 'clot')) return;
    const fever = clearFacts(visit.facts, 'fever').find(({ status }) => status === 'present');
    if (!fever) return;
    const message =
      'Fever after an operation: look at wound, pin site, calf and chest today, and write what was found.';
    yield { place: fever.origin.word, message };
  },
});

export const fusedPip = defineRule({
  ...practice,
  code: 'fused-pip',
  name: 'Fused PIP joint called a fixed hammer toe',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['diagnosis', 'pip', 'procedure', 'earlier-surgery'],
  needs: ['diagnosis', 'pip'],
  what: 'A toe whose PIP joint was fused is called a hammer toe, or its PIP joint fixed.',
  why: 'A fused joint is stiff by design; as a fixed hammer toe it would be counted as a deformity or operated on again.',
  instead: 'Describe the position of the fused toe; write what bothers.',
  examples: {
    invalid: `${HEADER}operation 2nd pip fusion\n\nvisit 2026-04-20 review right\n2nd diagnosis hammer toe`,
    valid: `${HEADER}operation 2nd pip fusion\n\nvisit 2026-04-20 review right\n2nd straight, stiff`,
    nearMiss: `${HEADER}operation 2nd pip fusion\n\nvisit 2026-04-20 review right\n3rd diagnosis hammer toe`,
  },
  *check({ visit, before }) {
    const fused = (fact: AnyFact) => before.watch[`fused ${subjectKey(fact.subject, fact.side)}`];
    const called = [
      ...clearFacts(visit.facts, 'diagnosis').filter(({ values }) => values.what?.words.includes('hammer toe')),
      ...clearFacts(visit.facts, 'pip').filter(({ values }) => values.rigidity?.words.includes('fixed')),
    ];
    const fact = (called as AnyFact[]).find((each) => each.status === 'present' && fused(each));
    if (!fact) return;
    yield {
      place: fact.origin.place,
      severity: fact.finding === 'pip' ? 'missing' : 'contradiction',
      message: 'The PIP joint of this toe was fused: it is stiff by design and no hammer toe. Describe its position.',
    };
  },
});

export const transferTenderness = defineRule({
  source: 'HIGH11',
  mark: 'read',
  code: 'transfer-tenderness',
  name: 'New tenderness beside an operated ray',
  severity: 'missing',
  scope: 'episode',
  reads: ['tenderness', 'transfer-pain', 'procedure', 'pad', 'image'],
  needs: ['tenderness'],
  what: 'The head beside an operated ray is tender for the first time, and nothing is said or planned of it.',
  why: 'Load that moved over from a shortened ray: 7 % after a Weil osteotomy in a review (HIGH11).',
  instead: 'Write transfer-pain, present or absent; pad behind the head, take a weight-bearing film, do the drawer.',
  examples: {
    invalid: `${HEADER}operation 2nd weil\n\nvisit 2026-04-20 review right\n3rd tender head, drawer 0`,
    valid: `${HEADER}operation 2nd weil\n\nvisit 2026-04-20 review right\n3rd tender head, drawer 0, transfer-pain mild`,
    nearMiss: `${HEADER}3rd tender head\noperation 2nd weil\n\nvisit 2026-04-20 review right\n3rd tender head, drawer 0`,
  },
  *check({ visit, before }) {
    if (Object.keys(before.operated).length === 0) return;
    for (const fact of clearFacts(visit.facts, 'tenderness')) {
      const { subject, side } = fact;
      if (fact.status !== 'present' || subject.at !== 'ray' || subject.ray === 1 || !side) continue;
      const under = fact.values.place?.words.some((place) => place === 'head' || place === 'plantar');
      const beside = [subject.ray - 1, subject.ray + 1].find((ray) => before.operated[`${side} ray ${ray}`]);
      const name = subjectKey(subject, side);
      if (!under || !beside || before.operated[name] || before.watch[`tender ${name}`]) continue;
      const about = { side, ray: subject.ray };
      const said = clearFacts(visit.facts, 'transfer-pain', about).length > 0 || mentions(visit, /transfer/i);
      const acted = (['pad', 'image'] as const).some((each) =>
        clearFacts(visit.facts, each, { side }).some(({ section }) => section === 'plan'),
      );
      if (said || acted) continue;
      yield {
        place: fact.origin.place,
        message: `The ${ordinalOf(subject.ray)} head is tender for the first time beside an operated ray: think of load that moved over. Write transfer-pain, or a pad and a film.`,
      };
    }
  },
});
