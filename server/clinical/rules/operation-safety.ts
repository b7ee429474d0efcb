import { ordinalOf, type Side } from '../../../grammar/values.ts';
import { clearFacts } from '../answers.ts';
import { pulsesFelt } from '../circulation.ts';
import { PROTECTING } from '../course.ts';
import { dayFrom, dayOf, daysBetween, range } from '../dates.ts';
import { footKey, rayKey, steroidDays } from '../episode.ts';
import { factsOf } from '../fact-index.ts';
import type { AnyFact, VisitFacts } from '../facts.ts';
import { hba1cPercent } from '../hba1c.ts';
import { isOpenWound } from '../open-wound.ts';
import { HBA1C_PERCENT, plansAnticoagulant } from '../operation-risks.ts';
import { mentions, remarks } from '../remarks.ts';
import { holds } from '../watch.ts';
import { STEROID_CLEAR_DAYS } from '../windows.ts';
import { defineRule, type RuleView, replace } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

type Operation = Extract<AnyFact, { finding: 'operation' }>;
/** The operations that a visit plans, the first of each foot. What drains an infection waits for nothing here. */
export function plannedOperations({ facts }: VisitFacts): Operation[] {
  const planned = clearFacts(facts, 'operation').filter(
    ({ status, values }) => status === 'present' && !values.procedure?.words.every((word) => word === 'debridement'),
  );
  return planned.filter((fact, i) => planned.findIndex(({ side }) => side === fact.side) === i);
}

const noOperation = ({ origin }: Operation) =>
  ({
    title: 'Write "no operation"',
    safety: 'needs review',
    edits: [replace(origin.word, 'no operation')],
  }) as const;

const VESSELS = ['abi', 'toe-pressure', 'doppler'] as const;
const PREGNANT_DAYS = 280;

/** No pulse, in this visit or, where this one says nothing, in the newest that did; a measured pressure answers it. */
function circulation({ visit, before }: RuleView, side: Side | undefined): 'felt' | 'low' | 'absent' | 'open' {
  if (!side) return 'open';
  if (isLow(visit, side)) return 'low';
  const measured = VESSELS.some((finding) => clearFacts(visit.facts, finding, { side }).length > 0);
  const now = pulsesFelt(visit, side);
  const known = now === 'not examined' ? (before.watch[`pulses ${side}`] ?? 'open') : now;
  return measured || known === 'felt' ? 'felt' : known === 'absent' ? 'absent' : 'open';
}
/** Below these a foot is ischaemic by the WIfI grades (grade 1: index 0.60 to 0.79, toe pressure 40 to 59 mmHg; read). */
const LEAST = { index: 0.8, toePressure: 60 } as const;
function isLow({ facts }: VisitFacts, side: Side): boolean {
  const isUnder = (number: { readonly low: number; readonly bound?: string } | undefined, least: number) =>
    number !== undefined && (number.low < least || (number.bound === 'under' && number.low <= least));
  return (
    clearFacts(facts, 'abi', { side }).some(({ values }) => isUnder(values.index, LEAST.index)) ||
    clearFacts(facts, 'toe-pressure', { side }).some(({ values }) => isUnder(values.pressure, LEAST.toePressure))
  );
}
/** Something is written of the vessels that was not read: asking again would not help. */
const isWritten = ({ visit }: RuleView): boolean =>
  (['dp', 'pt', 'pulses'] as const).some((finding) =>
    factsOf(visit.facts, finding).some(({ clarity }) => clarity === 'unclear'),
  ) || mentions(visit, /puls|abpi|\babi\b|doppler|vascular/i);

/** Stated in this visit, or within the length of a pregnancy before it. */
function isPregnant({ visit, before }: RuleView): boolean {
  const stated = clearFacts(visit.facts, 'pregnancy');
  if (stated.length > 0) return stated.some(({ status }) => status === 'present');
  const since = dayOf(before.watch['risk pregnancy'] ?? '');
  return since !== undefined && visit.date !== undefined && daysBetween(since, dayFrom(visit.date)) < PREGNANT_DAYS;
}

export const operationUnsafe = defineRule({
  ...practice,
  code: 'operation-unsafe',
  name: 'Operation against a stated danger',
  severity: 'danger',
  scope: 'episode',
  reads: ['operation', 'dp', 'pt', 'pulses', ...VESSELS, 'wound', 'pregnancy'],
  needs: ['operation'],
  what: 'An operation is planned, and the note states absent pulses without a pressure, an ankle-brachial index under 0.8, a toe pressure under 60 mmHg (WIfI, read), an open wound of that foot, or a pregnancy.',
  why: 'A foot without pulses may not heal, an ulcer seeds the implant, and a pregnancy makes an elective operation wait.',
  instead: 'Measure a pressure and see the vascular team, heal the skin, date a recheck. It is no refusal.',
  examples: {
    invalid: '2nd tender plate, drawer 2\npulses absent\nmri 2nd tear full\nplan operation 2nd plate repair',
    valid: '2nd tender plate, drawer 2\npulses absent\nabi 1.0\nmri 2nd tear full\nplan operation 2nd plate repair',
    nearMiss:
      '2nd tender plate, drawer 2, wound healed\ndp 2, pt 1\nmri 2nd tear full\nplan operation 2nd plate repair',
  },
  *check(view) {
    for (const fact of plannedOperations(view.visit)) {
      const wounds = clearFacts(view.visit.facts, 'wound', fact.side ? { side: fact.side } : {}).filter(isOpenWound);
      const reasons = [
        circulation(view, fact.side) === 'absent' && 'absent pulses and no pressure measured',
        circulation(view, fact.side) === 'low' && 'an ankle-brachial index under 0.8 or a toe pressure under 60 mmHg',
        wounds.length > 0 && 'an open wound or ulcer',
        isPregnant(view) && 'a pregnancy',
      ].filter(Boolean);
      if (reasons.length === 0) continue;
      yield {
        place: fact.origin.word,
        message: `An operation is planned with ${reasons.join(' and ')}: settle it first and date a recheck.`,
        related: wounds.map(({ origin }) => ({ place: origin.place, message: 'the open wound' })),
        fixes: [noOperation(fact)],
      };
    }
  },
});

/** Risks of the patient that the note states and that nobody says how to settle. */
function unsettled(view: RuleView): string[] {
  const { visit, before, context } = view;
  const levels = clearFacts(visit.facts, 'hba1c').filter(({ status, values }) => status === 'present' && !values.state);
  const [percent] = levels.flatMap(({ values }) => hba1cPercent(values) ?? []);
  const level = percent ?? (levels.length > 0 ? 0 : Number(before.watch['risk hba1c'] ?? Number.NaN));
  const limit = context.settings?.hba1cPercent ?? HBA1C_PERCENT;
  const said = (finding: 'smoking' | 'anticoagulant', words: RegExp) =>
    clearFacts(visit.facts, finding).some(({ quotes }) => quotes.length > 0) || mentions(visit, words);
  return [
    holds(visit, before.watch, 'smoking') &&
      !said('smoking', /smok|tobacco|nicotine|cotinine/i) &&
      clearFacts(visit.facts, 'smoking-advice').length === 0 &&
      'smoking now',
    holds(visit, before.watch, 'anticoagulant') &&
      !plansAnticoagulant(visit) &&
      !said('anticoagulant', /anticoag|warfarin|xaban|dabigatran|heparin|inr|bridg|thinner|prescriber/i) &&
      'an anticoagulant without a plan',
    level > limit
      ? `an HbA1c above ${limit} %`
      : holds(visit, before.watch, 'diabetes') && Number.isNaN(level) && 'diabetes without an HbA1c',
  ].filter((reason) => typeof reason === 'string');
}

export const operationUnsettled = defineRule({
  source: 'CANC17',
  mark: 'read',
  code: 'operation-unsettled',
  name: 'Operation before its risks are settled',
  severity: 'contradiction',
  scope: 'episode',
  reads: [
    'operation',
    'dp',
    'pt',
    'pulses',
    'smoking',
    'anticoagulant',
    'drug-plan',
    'smoking-advice',
    'diabetes',
    'hba1c',
  ],
  needs: ['operation'],
  what: 'An operation is planned, and pulses were never examined, or smoking, an anticoagulant, or diabetes out of its limit is left open.',
  why: 'Infection rose above an HbA1c of 7.5 % (CANC17) and complications were four times as many in smokers as in never smokers (BETT15).',
  instead: 'Examine the pulses, and write in a quote how the risk is settled and when it is looked at again.',
  examples: {
    invalid:
      'history smoker\n2nd tender plate, drawer 2\npulses palpable\nmri 2nd tear full\nplan operation 2nd plate repair',
    valid:
      'history smoker\n2nd tender plate, drawer 2\npulses palpable\nmri 2nd tear full\nplan operation 2nd plate repair "after six weeks without smoking"',
    nearMiss:
      'history ex smoker; diabetes; hba1c 6.9%\n2nd tender plate, drawer 2\npulses palpable\nmri 2nd tear full\nplan operation 2nd plate repair',
  },
  *check(view) {
    // What is urgent comes first, and alone.
    if (view.redFlags.length > 0) return;
    for (const fact of plannedOperations(view.visit)) {
      const open = circulation(view, fact.side) === 'open' && !isWritten(view) ? ['pulses not examined'] : [];
      const reasons = [...open, ...unsettled(view)];
      if (reasons.length === 0) continue;
      yield {
        place: fact.origin.word,
        message: `An operation is planned with ${reasons.join(', ')}: write how it is settled, or date a recheck.`,
      };
    }
  },
});

export const steroidBeforeOperation = defineRule({
  source: 'from memory',
  mark: 'from memory, to be verified',
  code: 'steroid-before-operation',
  name: 'Steroid shortly before an operation',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['operation', 'steroid'],
  needs: ['operation'],
  what: 'An operation is planned within three months after a steroid injection of that foot, or beside a planned one.',
  why: 'A recent steroid may raise the risk of infection; the three months come from joint replacement, from memory.',
  instead: 'Date the operation later, or leave the injection out.',
  examples: {
    invalid:
      'tried steroid 4th 2026-01-20\n2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan operation 2nd plate repair',
    valid:
      'tried steroid 4th 2026-01-20\n2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan operation 2nd plate repair on 2026-06-01',
    nearMiss:
      'tried steroid 4th 2025-09\n2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan operation 2nd plate repair; no steroid',
  },
  *check({ visit, before }) {
    for (const fact of plannedOperations(visit)) {
      const about = fact.side ? { side: fact.side } : {};
      const steroids = clearFacts(visit.facts, 'steroid', about).filter(({ status }) => status === 'present');
      const planned = steroids.some(({ section }) => section === 'plan');
      const on = fact.values.on?.is === 'date' ? range(fact.values.on.date).first : visit.date && dayFrom(visit.date);
      const given = [before.steroid[footKey(fact.side)], before.steroid.patient, ...steroidDays(visit)];
      const recent =
        on && given.flatMap((iso) => dayOf(iso ?? '') ?? []).some((day) => daysBetween(day, on) < STEROID_CLEAR_DAYS);
      if (!planned && !recent) continue;
      yield {
        place: fact.origin.word,
        message: planned
          ? 'A steroid and an operation are planned together: leave three months between them, since infection may be more likely (from memory). Leave one out.'
          : 'An operation is planned within three months of a steroid injection: infection may be more likely (from memory). Date it later.',
        related: steroids.map(({ origin }) => ({ place: origin.place, message: 'the injection' })),
      };
    }
  },
});

const AGAINST: readonly string[] = ['declines operation', 'prefers to wait', 'transfer of care'];

export const decisionIgnored = defineRule({
  ...practice,
  code: 'decision-ignored',
  name: 'Operation against the decision of the patient',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['operation', 'decision'],
  needs: ['operation'],
  what: 'An operation is planned, and the newest decision that is written is to decline, to wait, or to go elsewhere.',
  why: 'The decision of the patient stands above every plan and every computed step.',
  instead: 'Write the new decision (wants operation), or "no operation".',
  examples: {
    invalid:
      '2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan patient prefers to wait; operation 2nd plate repair',
    valid: '2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan patient prefers to wait; review in 3 months',
    nearMiss:
      '2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan patient wants operation; operation 2nd plate repair',
  },
  *check({ visit, before }) {
    const [fact] = plannedOperations(visit);
    if (!fact) return;
    const now = clearFacts(visit.facts, 'decision').filter(({ status }) => status === 'present');
    const [earlier, day] = (before.watch.decision ?? '').split('|');
    const words = now.length > 0 ? now.flatMap(({ values }) => values.what?.words ?? []) : [earlier ?? ''];
    const [against] = words.filter((word) => AGAINST.includes(word));
    if (!against || words.includes('wants operation')) return;
    const when = now.length > 0 ? '' : ` (${day})`;
    yield {
      place: fact.origin.word,
      message: `An operation is planned, but the decision that is written is "${against}"${when}. Write the new decision, or leave the operation out.`,
      related: now.map(({ origin }) => ({ place: origin.place, message: 'the decision' })),
      fixes: [noOperation(fact)],
    };
  },
});

/** Stages 0 to 2 of a joint that was not injured freshly: there an operation follows a course. */
function needsCourse({ rays, before }: RuleView, { subject, side }: Operation): boolean {
  if (subject.at !== 'ray' || !side) return false;
  const today = rays.find((each) => each.side === side && each.ray === subject.ray)?.outcome;
  const low = today === undefined ? before.stage[rayKey(side, subject.ray)]?.[0] : lowest(today);
  return low !== undefined && low <= 2;
}
const lowest = (outcome: RuleView['rays'][number]['outcome']): number | undefined =>
  outcome.is === 'staged' ? outcome.stage : outcome.is === 'span' ? outcome.low : undefined;

export const courseUnreported = defineRule({
  ...practice,
  code: 'course-unreported',
  name: 'Planned course taken as done',
  severity: 'contradiction',
  scope: 'episode',
  reads: ['operation', ...PROTECTING],
  needs: ['operation'],
  what: 'An operation is planned after a course that an earlier visit planned, and nobody wrote whether it was worn.',
  why: 'A course that was planned is not a course that was done, and an elective operation follows a course that failed.',
  instead: 'Write it under tried: since when, how it was kept, whether it helped; or that it was not worn.',
  examples: {
    invalid:
      'forefoot 1\nscales drawer 0-4\n\nvisit 2025-11-03 first right\n2nd tender plate, drawer 2\nplan tape 2nd 12 weeks\n\nvisit 2026-03-09 review right\n2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan operation 2nd plate repair',
    valid:
      'forefoot 1\nscales drawer 0-4\n\nvisit 2025-11-03 first right\n2nd tender plate, drawer 2\nplan tape 2nd 12 weeks\n\nvisit 2026-03-09 review right\ntried tape 2nd 12 weeks daily no-relief\n2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan operation 2nd plate repair',
    nearMiss:
      'forefoot 1\nscales drawer 0-4\n\nvisit 2025-11-03 first right\n2nd tender plate, drawer 2\nplan tape 2nd 12 weeks\n\nvisit 2026-03-09 review right\n2nd tender plate, drawer 2\npulses 2\nmri 2nd tear full\nplan tape 2nd 4 weeks',
  },
  *check(view) {
    const { visit, before } = view;
    for (const fact of plannedOperations(visit)) {
      const foot = footKey(fact.side) as Side | 'patient';
      const since = before.course[foot] ?? before.course.patient;
      const told = before.watch[`told ${foot}`] ?? before.watch['told patient'];
      const now = visit.facts.some(({ section }) => section === 'tried') || remarks(visit, 'tried').length > 0;
      if (!since || told || now || !needsCourse(view, fact)) continue;
      const ray = fact.subject.at === 'ray' ? ` of the ${ordinalOf(fact.subject.ray)} ray` : '';
      yield {
        place: fact.origin.word,
        message: `An operation${ray} is planned, and the course of ${since} was only planned: write whether it was worn and helped.`,
      };
    }
  },
});
