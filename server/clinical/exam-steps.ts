import type { Section } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { AnyFact } from './facts.ts';

/** A step of the exam sequence, and what counts as its answer: any statement, with any status. */
export interface Step {
  /** In the words of the shorthand. */
  readonly ask: string;
  /** Any one of these answers it. */
  readonly findings: readonly FindingId[];
  /** Where a finding answers more than one step: which fact of it is meant. */
  readonly is?: (fact: AnyFact) => boolean;
  /** As does anything in this section. */
  readonly section?: Section;
}
const step = (ask: string, ...findings: readonly FindingId[]): Step => ({ ask, findings });

/*
 * The steps in the order of the exam; common practice.
 */
export const onset = step('history onset, duration', 'onset', 'duration', 'trigger');
export const pain = step('pain', 'pain');
export const tried: Step = { ...step('tried, with its response', 'earlier-treatment'), section: 'tried' };
export const stand: Step = { ...step('stand', 'lifted', 'gap', 'hallux-valgus'), section: 'stand' };
export const wound = step('wound', 'wound');
export const swelling = step('swelling', 'swelling', 'foot-swelling');
export const tenderness = step('tender', 'tenderness');
export const drawer = step('drawer', 'drawer', 'dislocated');
export const alignment = step('straight or deviated', 'deviation', 'extension', 'overlap', 'rotation', 'dislocated');
export const paper = step('paper', 'paper');
export const webs = step('webs: click, squeeze', 'click', 'squeeze');
export const sensation = step('sense', 'sensation', 'numbness');
export const circulation = step('pulses', 'pulses', 'dp', 'pt', 'perfusion', 'capillary-refill');
export const smoking = step('history smoking', 'smoking');
export const diabetes = step('history diabetes, with its HbA1c', 'diabetes', 'hba1c');
export const anticoagulant = step('history anticoagulant', 'anticoagulant');
export const allergy = step('history allergy', 'allergy');
