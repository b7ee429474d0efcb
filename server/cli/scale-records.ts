import type { Mark } from '../../grammar/lexicon/entry.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import type { RayAnalysis } from '../clinical/analysis.ts';
import { PLATE_SOURCE, plateSeenText, platesSeen } from '../clinical/scales/anatomical.ts';
import type { ScaleOutcome } from '../clinical/scales/scale.ts';
import { otherScales } from '../clinical/scales/tell.ts';
import type { Visit } from './stage-records.ts';

/** One statement of the plate as seen, in words. */
export interface PlateRecord {
  readonly low: number | null;
  readonly high: number | null;
  readonly says: string;
  readonly line: number;
  /** Of what the grade means; a tear of half of the width has none. */
  readonly source?: SourceKey;
  readonly mark?: Mark;
}

/** What one other scale says of a ray; the name in `outcome` is a stage or grade of that scale alone. */
export interface ScaleRecord {
  readonly scale: string;
  readonly outcome: ScaleOutcome;
  readonly assumptions: readonly string[];
  readonly limits: string;
  readonly source: SourceKey;
  readonly mark: Mark;
}

export const plateRecords = ({ firstLine, analysis }: Visit, { side, ray }: RayAnalysis): PlateRecord[] =>
  platesSeen(analysis.facts, side, ray).map((seen) => ({
    low: seen.grade?.low ?? null,
    high: seen.grade?.high ?? null,
    says: plateSeenText(seen),
    line: firstLine + seen.place.line + 1,
    ...(seen.grade ? PLATE_SOURCE : {}),
  }));

export const scaleRecords = ({ analysis }: Visit, ray: RayAnalysis): ScaleRecord[] =>
  otherScales(analysis, ray).map(({ scale: { id, limits, source, mark }, outcome, assumptions }) => ({
    scale: id,
    outcome,
    assumptions,
    limits,
    source,
    mark,
  }));
