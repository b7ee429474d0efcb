import { entryOf } from '../../grammar/lexicon/index.ts';
import { ordinalOf } from '../../grammar/values.ts';
import type { Evidence, NextStep, RayAnalysis, StageOutcome } from '../clinical/analysis.ts';
import type { Explain } from './explain.ts';

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

export const DECISION_SUPPORT =
  '*Computed as decision support. The clinician decides; local protocol and licensed practice take precedence.*';

/** What is computed for a ray, with its evidence, beside what was stated. Markdown. */
export function describeRay(analysis: RayAnalysis, quote: (evidence: Evidence) => string, { cite }: Explain): string {
  const { outcome, stated, labels, evidence, missing, assumptions, next, source, mark } = analysis;
  const shown = evidence.map((each) => `- ${each.role}: \`${quote(each)}\`: ${each.why}`);
  return paragraphs(
    ...analysis.redFlags.map(({ why }) => `**Red flag**: ${why}.`),
    `**${rayName(analysis)}**, computed: **${stageText(outcome)}**${labels.length > 0 ? ` (${labels.join(', ')})` : ''}`,
    stated ? `Stated: stage ${stated.low === stated.high ? stated.low : `${stated.low}-${stated.high}`}` : '',
    shown.length > 0 ? `*Evidence*\n\n${shown.join('\n')}` : '',
    missing.length > 0 ? `*Not examined*: ${missing.map(({ ask }) => ask).join('; ')}` : '',
    assumptions.length > 0 ? `*Assumed*: ${assumptions.join('; ')}` : '',
    describeNext(next),
    DECISION_SUPPORT,
    cite(source, mark),
  );
}

function describeNext({ step, why, cautions, urgent }: NextStep): string {
  const lead = urgent ? '*Next, urgent.*' : '*Next.*';
  return [`${lead} ${step}${why ? ` (${why})` : ''}`, ...cautions.map((caution) => `- ${caution}`)].join('\n');
}

export const evidenceWord = ({ finding }: Evidence): string => entryOf(finding).word;

export const paragraphs = (...parts: readonly string[]): string => parts.filter((part) => part !== '').join('\n\n');

export const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} or ${items.at(-1)}`;
