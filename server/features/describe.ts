import { ordinalOf } from '../../grammar/values.ts';
import type { RayAnalysis, StageOutcome } from '../clinical/analysis.ts';

export const rayName = ({ ray, side }: Pick<RayAnalysis, 'ray' | 'side'>): string => `${ordinalOf(ray)} ${side}`;

/** `stage 2`, `stage 1-3`, or why there is none. */
export function stageText(outcome: StageOutcome): string {
  switch (outcome.is) {
    case 'staged':
      return `stage ${outcome.stage}`;
    case 'span':
      return `stage ${outcome.low}-${outcome.high}`;
    case 'cannot stage':
      return `cannot be staged: ${outcome.why}`;
    case 'not applicable':
      return `staging does not apply: ${outcome.why}`;
  }
}

export const paragraphs = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n\n');
