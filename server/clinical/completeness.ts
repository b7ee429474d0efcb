import type { Section } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { VisitKind } from '../../grammar/syntax.ts';
import type { Side } from '../../grammar/values.ts';
import type { ExamStep } from './analysis.ts';
import { factsOf } from './fact-index.ts';
import type { AnyFact, VisitFacts } from './facts.ts';

/** A step of the exam sequence, and what counts as its answer: any statement, with any status. */
interface Step extends ExamStep {
  /** Any one of these answers it. */
  readonly findings: readonly FindingId[];
  /** As does anything in these sections. */
  readonly sections?: readonly Section[];
}

/** The steps in the order of the exam; common practice. `ask` is in the words of the shorthand. */
export const EXAM_STEPS = {
  onset: { finding: 'onset', ask: 'history onset, duration', findings: ['onset', 'duration', 'trigger'] },
  pain: { finding: 'pain', ask: 'pain', findings: ['pain'] },
  tried: { finding: 'tape', ask: 'tried, with its response', findings: [], sections: ['tried'] },
  stand: { finding: 'lifted', ask: 'stand', findings: ['lifted', 'gap', 'hallux-valgus'], sections: ['stand'] },
  wound: { finding: 'wound', ask: 'wound', findings: ['wound'] },
  swelling: { finding: 'swelling', ask: 'swelling', findings: ['swelling', 'foot-swelling'] },
  tenderness: { finding: 'tenderness', ask: 'tender', findings: ['tenderness'] },
  drawer: { finding: 'drawer', ask: 'drawer', findings: ['drawer', 'dislocated'] },
  alignment: {
    finding: 'deviation',
    ask: 'straight or deviated',
    findings: ['deviation', 'extension', 'overlap', 'rotation', 'dislocated'],
  },
  paper: { finding: 'paper', ask: 'paper', findings: ['paper'] },
  webs: { finding: 'click', ask: 'webs: click, squeeze', findings: ['click', 'squeeze'] },
  sensation: { finding: 'sensation', ask: 'sense', findings: ['sensation', 'numbness'] },
  circulation: {
    finding: 'pulses',
    ask: 'pulses',
    findings: ['pulses', 'dp', 'pt', 'perfusion', 'capillary-refill'],
  },
  smoking: { finding: 'smoking', ask: 'history smoking', findings: ['smoking'] },
  diabetes: { finding: 'diabetes', ask: 'history diabetes, with its HbA1c', findings: ['diabetes', 'hba1c'] },
  anticoagulant: { finding: 'anticoagulant', ask: 'history anticoagulant', findings: ['anticoagulant'] },
  allergy: { finding: 'allergy', ask: 'history allergy', findings: ['allergy'] },
} as const satisfies Readonly<Record<string, Step>>;
export type ExamStepId = keyof typeof EXAM_STEPS;

/** What a visit of each purpose needs, in the order of the exam; common practice. The others are never asked to be complete. */
export const NEEDED: Readonly<Partial<Record<VisitKind, readonly ExamStepId[]>>> = {
  first: [
    'onset',
    'pain',
    'tried',
    'stand',
    'swelling',
    'tenderness',
    'drawer',
    'alignment',
    'paper',
    'webs',
    'sensation',
    'circulation',
  ],
  review: ['pain', 'tried', 'swelling', 'tenderness', 'drawer', 'alignment', 'paper'],
  preop: [
    'pain',
    'wound',
    'drawer',
    'alignment',
    'sensation',
    'circulation',
    'smoking',
    'diabetes',
    'anticoagulant',
    'allergy',
  ],
  postop: ['pain', 'wound', 'swelling', 'alignment'],
  emergency: ['onset', 'pain', 'wound', 'alignment', 'sensation', 'circulation'],
};

/** The steps that the purpose of a visit needs and that nobody mentions, for one foot. Silence is never an answer. */
export function missingSteps(visit: VisitFacts, side?: Side): ExamStepId[] {
  const needed = (visit.kind && NEEDED[visit.kind]) ?? [];
  return needed.filter((id) => !isAnswered(visit.facts, EXAM_STEPS[id], side) && !isWritten(visit, EXAM_STEPS[id]));
}

/** Words under a section that answers the step, though they were not read: asking again would not help. */
const isWritten = ({ verbatim }: VisitFacts, { sections }: Step): boolean =>
  sections !== undefined && verbatim.some(({ section }) => sections.includes(section));

function isAnswered(facts: readonly AnyFact[], { findings, sections }: Step, side: Side | undefined): boolean {
  const isOfFoot = (fact: AnyFact) => !side || !fact.side || fact.side === side;
  for (const finding of findings)
    for (const fact of factsOf(facts, finding)) if (fact.section !== 'plan' && isOfFoot(fact)) return true;
  return sections?.some((section) => facts.some((fact) => fact.section === section && isOfFoot(fact))) ?? false;
}
