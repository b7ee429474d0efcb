import type { Entry, Mark, Slot, SubjectKind } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { SOURCES, type Source, type SourceKey } from '../../grammar/sources.ts';
import { ordinalOf } from '../../grammar/values.ts';
import type { Evidence, NextStep, RayAnalysis, StageOutcome } from '../clinical/analysis.ts';

const KINDS: Readonly<Record<Entry['kind'], string>> = {
  sign: 'sign',
  measure: 'test',
  treatment: 'treatment',
  procedure: 'procedure',
  event: 'event',
};
const OF: Readonly<Record<SubjectKind, string>> = {
  ray: 'a ray',
  web: 'a web space',
  foot: 'the foot',
  patient: 'the patient',
};
const MARKS: Readonly<Record<Mark, string>> = {
  read: 'read in the publication',
  secondary: 'as reported in another publication',
  'common practice': 'common practice',
  'from memory, to be verified': 'from memory, to be verified',
};

/** A finding of the lexicon for a reader: meaning, technique, values, source. Markdown. */
export function describeFinding(entry: Entry): string {
  const { word, kind, subjects, meaning, technique, slots, source, mark } = entry;
  const values = Object.entries(slots).map(([name, slot]) => `- ${name}: ${describeSlot(slot)}`);
  return paragraphs(
    `**${word}** (${KINDS[kind]}, said of ${listed(subjects.map((subject) => OF[subject]))})`,
    meaning,
    `*Technique.* ${technique}`,
    values.length > 0 ? `*Values*\n\n${values.join('\n')}` : '',
    cite(source, mark),
  );
}

export function describeSlot(slot: Slot): string {
  switch (slot.kind) {
    case 'words':
      return Object.keys(slot.values)
        .map((value) => `\`${value}\``)
        .join(', ');
    case 'number':
      return `${slot.min} to ${slot.max}${slot.unit ? ` ${slot.unit}` : ''}`;
    case 'grade':
      return `grade ${slot.min} to ${slot.max}`;
    case 'fraction':
      return 'so many of so many, `9/10`';
    case 'duration':
      return 'a time, `8 weeks`';
    case 'date':
      return 'a date, `2026-03-09` or `2026-03`, or `3 weeks ago`';
    case 'clock':
      return 'a time of day, `14:30`';
    case 'pair':
      return 'two neighbouring rays, `2-3`';
  }
}

/** `*Source.* NERY15: Nery C et al. ... (read in the publication)`. */
export function cite(source: SourceKey, mark: Mark): string {
  if (source === 'common practice' || source === 'from memory') return `*Source.* ${SOURCES[source].citation}`;
  const { citation, doi, pmid }: Source = SOURCES[source];
  const found = doi ? ` doi:${doi}` : pmid ? ` PMID ${pmid}` : '';
  return `*Source.* ${source}: ${citation}${found} (${MARKS[mark]})`;
}

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
export function describeRay(analysis: RayAnalysis, quote: (evidence: Evidence) => string): string {
  const { outcome, stated, labels, evidence, missing, assumptions, next, source, mark } = analysis;
  const shown = evidence.map((each) => `- ${each.role}: \`${quote(each)}\`: ${each.why}`);
  return paragraphs(
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

const listed = (items: readonly string[]): string =>
  items.length < 2 ? items.join('') : `${items.slice(0, -1).join(', ')} or ${items.at(-1)}`;
