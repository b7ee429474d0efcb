import type { Mark } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import type { PartialDate, Ray, Side } from '../../grammar/values.ts';
import type { NoteAnalysis } from '../clinical/analyse-note.ts';
import type { AdvisedRay, Evidence, RayAnalysis, Stage } from '../clinical/analysis.ts';
import { type ArgumentPart, stageArguments } from '../clinical/argument/stage-argument.ts';
import { CAUTIONS } from '../clinical/cautions.ts';
import type { Change } from '../clinical/change.ts';
import { dayFrom, isoOf } from '../clinical/dates.ts';
import type { HeaderFacts } from '../clinical/facts.ts';
import type { Overdue } from '../clinical/overdue.ts';
import { flagsWithoutRay, type LedFlag } from '../clinical/red-flags-first.ts';
import { type PlateRecord, plateRecords, type ScaleRecord, scaleRecords } from './scale-records.ts';

interface EvidenceRecord {
  readonly finding: FindingId;
  readonly role: Evidence['role'];
  readonly why: string;
  /** As typed. */
  readonly words: string;
  readonly line: number;
}

type ArgumentRecord = Omit<ArgumentPart, 'statements'>;

/** What `forefoot stage` says of one ray in one visit, as programs get it. */
export interface StageRecord {
  readonly file: string;
  readonly date: string | null;
  /** Null in the record of a red flag that no examined ray leads with. */
  readonly side: Side | null;
  readonly ray: Ray | null;
  readonly status: 'staged' | 'span' | 'cannot' | 'notApplicable' | 'redFlag';
  /** Every red flag that concerns the ray, in words. */
  readonly redFlags: readonly string[];
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
  /** What became of the ray since its last visit, computed; null where there is nothing to compare. */
  readonly change: Change | null;
  readonly missing: readonly string[];
  readonly assumptions: readonly string[];
  readonly source: SourceKey;
  readonly mark: Mark;
  /** The torn plate as an operation or an image of the visit grades it: a scale of its own. */
  readonly plate: readonly PlateRecord[];
  /** What the newest visit planned for a day before today; empty in older visits. */
  readonly overdue: readonly Overdue[];
  /** Only where they were asked for. */
  readonly scales?: readonly ScaleRecord[];
  /** Only where it was asked for. */
  readonly argument?: readonly ArgumentRecord[];
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

/** What is shown beside the stage: the other scales, and, with the header of the note, the argument. */
export interface Shown {
  readonly scales: boolean;
  /** What is overdue, of the newest visit; none of others. */
  readonly overdue?: readonly Overdue[];
  readonly why?: HeaderFacts;
}

export type Visit = NoteAnalysis['visits'][number];

export const isoDate = (date: (PartialDate & { month: number; day: number }) | undefined): string | null =>
  date ? isoOf(dayFrom(date)) : null;

/** The red flags that no examined ray leads with, then a record for each side and lesser ray, right before left. */
export function stageRecords(file: string, visit: Visit, { scales, why, overdue = [] }: Shown): StageRecord[] {
  const flags = flagsWithoutRay(visit.analysis).map((led) => flagRecord(file, visit, led));
  const rays = rayRecords(file, visit, scales);
  const all = [...flags, ...(why ? argued(visit, why, rays) : rays)];
  return overdue.length > 0 ? all.map((record) => ({ ...record, overdue })) : all;
}

/** The rays of a visit with the argument for their stage. */
function argued(visit: Visit, header: HeaderFacts, rays: readonly StageRecord[]): StageRecord[] {
  const all = stageArguments(visit.analysis, header, (evidence) => {
    const { words, line } = evidenceRecord(visit, evidence);
    return `"${words.replaceAll(/\s+/g, ' ')}" (line ${line})`;
  });
  return rays.map((record, at) => ({
    ...record,
    argument: (all[at] ?? []).map(({ about, text, source, mark }) => ({ about, text, source, mark })),
  }));
}

function flagRecord(file: string, visit: Visit, { flagged: { why, statements }, row }: LedFlag): StageRecord {
  const { source, mark } = row;
  const signs = visit.analysis.facts.facts.filter(({ statement }) => statements.includes(statement));
  return {
    file,
    date: isoDate(visit.analysis.facts.date),
    side: null,
    ray: null,
    status: 'redFlag',
    redFlags: [why],
    stage: null,
    stageLow: null,
    stageHigh: null,
    why,
    stated: null,
    labels: [],
    evidence: signs.map(({ statement, finding, origin }) =>
      evidenceRecord(visit, { statement, finding, place: origin.place, role: 'decides', why }),
    ),
    change: null,
    missing: [],
    assumptions: [],
    source,
    mark,
    plate: [],
    overdue: [],
    next: {
      step: row.step,
      why: row.why,
      cautions: row.cautions.map((id) => CAUTIONS[id]),
      review: row.review,
      urgent: true,
      row: row.id,
      source,
      mark,
    },
  };
}

function rayRecords(file: string, visit: Visit, scales: boolean): StageRecord[] {
  const { analysis } = visit;
  return analysis.rays.map((ray) => ({
    file,
    date: isoDate(analysis.facts.date),
    side: ray.side,
    ray: ray.ray,
    ...outcomeFields(ray),
    redFlags: ray.redFlags.map(({ why }) => why),
    stated: statedField(ray),
    labels: ray.labels,
    evidence: ray.evidence.map((each) => evidenceRecord(visit, each)),
    change: ray.change ?? null,
    missing: ray.missing.map(({ ask }) => ask),
    assumptions: ray.assumptions,
    source: ray.source,
    mark: ray.mark,
    plate: plateRecords(visit, ray),
    overdue: [],
    ...(scales ? { scales: scaleRecords(visit, ray) } : {}),
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

function nextField({ next }: AdvisedRay): StageRecord['next'] {
  const { step, why, cautions, review, urgent, row, source, mark } = next;
  return { step, why, cautions, review, urgent, row, source, mark };
}
