import type { Side } from '../../grammar/values.ts';
import type { AdvisedRay, Evidence, NextStep, VisitAnalysis } from '../clinical/analysis.ts';
import { CAUTIONS } from '../clinical/cautions.ts';
import { changeWords } from '../clinical/change.ts';
import type { Site } from '../clinical/differential/view.ts';
import { hasUnreadRedFlag } from '../clinical/reading-reports.ts';
import { cite } from './cite.ts';
import { paragraphs, rayName, stageText } from './describe.ts';

import { leadingConditions } from './leading-conditions.ts';

const UNREAD_FLAG = CAUTIONS['unread red flag'];
const DECISION_SUPPORT =
  '*Computed as decision support. The clinician decides; local protocol and licensed practice take precedence.*';

/** What is computed for a ray, with its evidence, beside what was stated. Markdown. */
function describeStage(analysis: AdvisedRay, quote: (evidence: Evidence) => string): string {
  const { outcome, stated, labels, evidence, missing, assumptions, next, source, mark } = analysis;
  const shown = evidence.map((each) => `- ${each.role}: \`${quote(each)}\`: ${each.why}`);
  return paragraphs(
    ...analysis.redFlags.map(({ why }) => `**Red flag**: ${why}.`),
    next.cautions.includes(UNREAD_FLAG) ? `**Red flag?** ${UNREAD_FLAG}` : '',
    `**${rayName(analysis)}**, computed: **${stageText(outcome)}**${labels.length > 0 ? ` (${labels.join(', ')})` : ''}`,
    stated ? `Stated: stage ${stated.low === stated.high ? stated.low : `${stated.low}-${stated.high}`}` : '',
    analysis.change ? `*Change*, computed: ${changeWords(analysis.change)}` : '',
    shown.length > 0 ? `*Evidence*\n\n${shown.join('\n')}` : '',
    missing.length > 0 ? `*Not examined*: ${missing.map(({ ask }) => ask).join('; ')}` : '',
    assumptions.length > 0 ? `*Assumed*: ${assumptions.join('; ')}` : '',
    describeNext(next),
    DECISION_SUPPORT,
    cite(source, mark),
  );
}

function describeNext({ step, why, cautions, urgent }: NextStep): string {
  const others = cautions.filter((caution) => caution !== UNREAD_FLAG);
  const lead = urgent ? '*Next, urgent.*' : '*Next.*';
  return [`${lead} ${step}${why ? ` (${why})` : ''}`, ...others.map((caution) => `- ${caution}`)].join('\n');
}

/** A ray with its stage and what may explain its complaint. Markdown. */
export const describeRay = (analysis: VisitAnalysis, ray: AdvisedRay, quote: (evidence: Evidence) => string): string =>
  paragraphs(describeStage(ray, quote), leadingConditions(analysis, ray.side, { at: 'ray', ray: ray.ray }));

/** What may explain a site that has no stage, red flags of the visit first. Empty where nothing is argued for. Markdown. */
export function describeSite(analysis: VisitAnalysis, side: Side, site: Exclude<Site, { at: 'ray' }>): string {
  const leading = leadingConditions(analysis, side, site);
  const flags = analysis.redFlags.map(({ why }) => `**Red flag**: ${why}.`);
  if (hasUnreadRedFlag(analysis.facts)) flags.push(`**Red flag?** ${UNREAD_FLAG}`);
  const name = site.at === 'web' ? `web ${site.web} ${side}` : `${site.at} ${side}`;
  return leading ? paragraphs(...flags, `**${name}**`, leading, DECISION_SUPPORT) : '';
}
