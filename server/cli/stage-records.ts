import type { Mark } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import type { PartialDate, Ray, Side } from '../../grammar/values.ts';
import type { NoteAnalysis } from '../clinical/analyse.ts';
import type { Evidence, RayAnalysis, Stage } from '../clinical/analysis.ts';
import { dayFrom, isoOf } from '../clinical/dates.ts';

interface EvidenceRecord {
  readonly finding: FindingId;
  readonly role: Evidence['role'];
  readonly why: string;
  /** As typed. */
  readonly words: string;
  readonly line: number;
}

/** What `forefoot stage` says of one ray in one visit, as programs get it. */
export interface StageRecord {
  readonly file: string;
  readonly date: string | null;
  readonly side: Side;
  readonly ray: Ray;
  readonly status: 'staged' | 'span' | 'cannot' | 'notApplicable';
  /** Null unless one stage is computed. */
  readonly stage: Stage | null;
  readonly stageLow: Stage | null;
  readonly stageHigh: Stage | null;
  /** Why there is no stage. */
  readonly why: string | null;
  /** The clinician's own stage; a range such as `1-2` is text. */
  readonly stated: number | string | null;
  readonly labels: readonly string[];
  readonly evidence: readonly EvidenceRecord[];
  readonly missing: readonly string[];
  readonly assumptions: readonly string[];
  readonly source: SourceKey;
  readonly mark: Mark;
  readonly next: {
    readonly step: string;
    readonly why: string;
    readonly cautions: readonly string[];
    readonly review: string;
    readonly urgent: boolean;
    readonly row: string;
    readonly source: SourceKey;
    readonly mark: Mark;
  };
}

export type Visit = NoteAnalysis['visits'][number];

export const isoDate = (date: (PartialDate & { month: number; day: number }) | undefined): string | null =>
  date ? isoOf(dayFrom(date)) : null;

/** A record for each side and lesser ray that the visit examines, right before left. */
export function stageRecords(file: string, visit: Visit): StageRecord[] {
  const { analysis } = visit;
  return analysis.rays.map((ray) => ({
    file,
    date: isoDate(analysis.facts.date),
    side: ray.side,
    ray: ray.ray,
    ...outcomeFields(ray),
    stated: statedField(ray),
    labels: ray.labels,
    evidence: ray.evidence.map((each) => evidenceRecord(visit, each)),
    missing: ray.missing.map(({ ask }) => ask),
    assumptions: ray.assumptions,
    source: ray.source,
    mark: ray.mark,
    next: nextField(ray),
  }));
}

function evidenceRecord(
  { firstLine, syntax, analysis }: Visit,
  { finding, role, why, place, statement }: Evidence,
): EvidenceRecord {
  const fact = analysis.facts.facts.find((each) => each.statement === statement && each.finding === finding);
  const { line, start, end } = fact?.origin.place ?? place;
  const words = syntax[line]?.text.slice(start, end) ?? '';
  return { finding, role, why, words, line: firstLine + line + 1 };
}

type Outcome = Pick<StageRecord, 'status' | 'stage' | 'stageLow' | 'stageHigh' | 'why'>;

function outcomeFields({ outcome }: RayAnalysis): Outcome {
  const none = { stage: null, stageLow: null, stageHigh: null } as const;
  switch (outcome.is) {
    case 'staged': {
      const { stage } = outcome;
      return { status: 'staged', stage, stageLow: stage, stageHigh: stage, why: null };
    }
    case 'span':
      return { status: 'span', stage: null, stageLow: outcome.low, stageHigh: outcome.high, why: null };
    case 'cannot stage':
      return { status: 'cannot', ...none, why: outcome.why };
    case 'not applicable':
      return { status: 'notApplicable', ...none, why: outcome.why };
  }
}

function statedField({ stated }: RayAnalysis): StageRecord['stated'] {
  if (!stated) return null;
  return stated.low === stated.high ? stated.low : `${stated.low}-${stated.high}`;
}

function nextField({ next }: RayAnalysis): StageRecord['next'] {
  const { step, why, cautions, review, urgent, row, source, mark } = next;
  return { step, why, cautions, review, urgent, row, source, mark };
}
