import type { Ray, Side } from '../../grammar/values.ts';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { AdvisedRay, AdvisedVisit, StageOutcome } from '../../server/clinical/analysis.ts';
import type { Rule } from '../../server/clinical/rules/define-rule.ts';
import { RULES } from '../../server/clinical/rules/index.ts';

export const TODAY = '2026-03-09';

/** A note of one visit of the right foot, with the drawer scale named unless `header` says otherwise. */
export function wrap(body: string, header = 'scales drawer 0-4', visit = 'visit 2026-03-09 first right'): string {
  if (/^forefoot\b/.test(body)) return body;
  return `forefoot 1\n${header ? `${header}\n` : ''}\n${visit}\n${body}\n`;
}

export function analyses(text: string, rules: readonly Rule[] = RULES): readonly AdvisedVisit[] {
  return analyseNote(wrap(text), TODAY, {}, rules).visits.map(({ analysis }) => analysis);
}

/** The last visit of a note. */
export function lastVisit(text: string, rules: readonly Rule[] = RULES): AdvisedVisit {
  const last = analyses(text, rules).at(-1);
  if (!last) throw new Error('the note has no visit');
  return last;
}

export function rayOf(text: string, ray: Ray = 2, side: Side = 'right'): AdvisedRay {
  const found = lastVisit(text).rays.find((one) => one.ray === ray && one.side === side);
  if (!found) throw new Error(`nothing was said of ${side} ray ${ray}`);
  return found;
}

/** `2`, `1-2`, `cannot stage`, `not applicable`. */
export function spelled(outcome: StageOutcome): string {
  if (outcome.is === 'staged') return `${outcome.stage}`;
  return outcome.is === 'span' ? `${outcome.low}-${outcome.high}` : outcome.is;
}
export const stageOf = (text: string, ray: Ray = 2, side: Side = 'right'): string =>
  spelled(rayOf(text, ray, side).outcome);
export function whyOf(text: string, ray: Ray = 2, side: Side = 'right'): string {
  const { outcome } = rayOf(text, ray, side);
  return 'why' in outcome ? outcome.why : '';
}
export const codesOf = (text: string, rules: readonly Rule[] = RULES): string[] =>
  lastVisit(text, rules).reports.map(({ code }) => code);
export const questioning = (text: string, ray: Ray = 2): string[] =>
  rayOf(text, ray)
    .evidence.filter(({ role }) => role === 'questions')
    .map(({ finding }) => finding);
