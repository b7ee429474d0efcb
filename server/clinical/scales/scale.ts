import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../../grammar/lexicon/index.ts';
import type { Ray } from '../../../grammar/values.ts';
import type { About } from '../answers.ts';
import type { DecidingFindings } from '../deciding.ts';
import type { AnyFact } from '../facts.ts';

/** What a description is weighed against: the facts of one visit about one lesser ray. */
export interface Seen {
  readonly facts: readonly AnyFact[];
  readonly about: Required<Pick<About, 'side' | 'ray'>>;
  readonly deciding: DecidingFindings;
}

/** Silence, doubt and unread words leave a criterion open. */
export type Met = 'yes' | 'no' | 'open';

/** One part of the description of a stage or grade. */
export interface Criterion {
  /** Reads alone: `drawer negative`. */
  readonly says: string;
  readonly finding: FindingId;
  /** What would tell, in the words of the exam. */
  readonly ask: string;
  readonly met: (seen: Seen) => Met;
}

/** A stage or grade of a scale is a name of that scale alone, never a number to compare. */
export interface Described {
  readonly name: string;
  readonly criteria: readonly Criterion[];
}

/** A published way to describe the joint beside the clinical stage. */
export interface OtherScale extends Sourced {
  readonly id: string;
  /** The only ray that it describes; missing where it describes each lesser ray. */
  readonly ray?: Ray;
  /** What a reader must know before using it. */
  readonly limits: string;
  readonly rows: readonly Described[];
}

export type ScaleOutcome =
  | { readonly is: 'told'; readonly name: string; readonly by: readonly string[] }
  | {
      readonly is: 'cannot be told';
      /** The descriptions that the findings leave possible. */
      readonly possible: readonly string[];
      /** The open findings of these. */
      readonly missing: readonly string[];
    }
  /** Each description has a part that the findings contradict. */
  | { readonly is: 'fits none'; readonly against: readonly string[] }
  | { readonly is: 'not applied'; readonly why: string };
