import { LEXICON } from '../../../grammar/lexicon/index.ts';
import { CAUTIONS } from '../../../server/clinical/cautions.ts';
import { PATH_ROWS } from '../../../server/clinical/path-rows.ts';
import { CAUTION_SOURCES, GATE_TEXTS, LIMIT_TEXTS, RED_FLAG_TEXTS } from '../../../server/clinical/row-texts.ts';
import { RULES } from '../../../server/clinical/rules/index.ts';

/** Every text that the product can show of its own accord. */
const TEXTS: readonly string[] = [
  ...LEXICON.flatMap(({ technique, meaning }) => [technique, meaning]),
  ...PATH_ROWS.flatMap(({ step, why, wouldChange, review, plan }) => [step, why, wouldChange, review, plan ?? '']),
  ...Object.values(CAUTIONS),
  ...RULES.flatMap(({ what, why, instead }) => [what, why, instead]),
  ...Object.values(GATE_TEXTS).map(({ says }) => says),
  ...Object.values(RED_FLAG_TEXTS).map(({ says }) => says),
  ...LIMIT_TEXTS.map(({ says }) => says),
];
export const textsWith = (pattern: RegExp): string[] => TEXTS.filter((text) => pattern.test(text));
export const meaningOf = (id: string): string => LEXICON.find((entry) => entry.id === id)?.meaning ?? '';
export const cautionSource = (id: keyof typeof CAUTION_SOURCES) => CAUTION_SOURCES[id];
export const percent = (part: number, whole: number): number => Math.round((part / whole) * 1000) / 10;

/** Sensitivity, specificity, positive and negative predictive value, in percent. */
export const accuracy = (tp: number, fn: number, fp: number, tn: number) => ({
  sens: percent(tp, tp + fn),
  spec: percent(tn, tn + fp),
  ppv: percent(tp, tp + fp),
  npv: percent(tn, tn + fn),
});
