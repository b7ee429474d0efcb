import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { CautionId } from './cautions.ts';
import type { Course } from './course.ts';
import type { RedFlag } from './red-flags.ts';

/** What the path looks at: each a small closed set, so that every combination can be enumerated. */
export interface PathInputs {
  readonly flag: RedFlag | 'none';
  readonly growing: boolean;
  /** Tender shaft after a rise in load, or a fracture on an image. */
  readonly bone: boolean;
  readonly systemic: boolean;
  readonly operated: 'no' | 'on track' | 'off track';
  /** Sudden or injured under six weeks ago, drawer 2 or more; the newest image may show the tear. */
  readonly acuteRupture: 'no' | 'suspected' | 'imaged';
  /** Tender at the head beside a ray that was operated on in an earlier visit: load may have moved there. */
  readonly transfer: boolean;
  readonly web: boolean;
  readonly joint: 'stable' | 'unstable' | 'unknown';
  /** `quiet`: no drawer, but stated straight, neither tender nor swollen. Else the lower stage of a span, unless overlap or dislocation is in it. */
  readonly stage:
    | 'lax'
    | 'none found'
    | 'not used'
    | 'neuropathic'
    | 'wound'
    | 'acute injury'
    | 'injury elsewhere'
    | 'quiet'
    | 'cannot'
    | 0
    | 1
    | 2
    | 3
    | 4;
  readonly course: Course['length'];
  readonly response: Course['response'];
  readonly kept: Course['kept'];
  readonly imaging: 'concordant' | 'discordant' | 'absent';
  readonly progressing: boolean;
  readonly operation: 'not planned' | 'safety clear' | 'safety not clear';
  /** Few symptoms, or the circulation is poor. */
  readonly accommodate: boolean;
}

export interface PathRow extends Sourced {
  readonly id: string;
  readonly when: (inputs: PathInputs) => boolean;
  readonly step: string;
  readonly why: string;
  readonly wouldChange: string;
  readonly cautions: readonly CautionId[];
  readonly review: string;
  readonly urgent?: true;
  /** Rests on an adequate course; where nobody said how it was kept, the step says so. */
  readonly adequate?: true;
  /** The step as a plan in the shorthand, offered for acceptance; `{ray}` is the ray. Missing where the step is no plan. */
  readonly plan?: string;
}
