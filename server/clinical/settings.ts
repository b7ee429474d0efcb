import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { DrawerScale, Status, Value } from '../../grammar/values.ts';
import type { Severity } from './analysis.ts';
import type { OnRequest } from './completeness.ts';

/** One thing that `normal` says of its subject. */
export interface PanelMember {
  readonly finding: FindingId;
  readonly status: Status;
  readonly values?: Readonly<Record<string, Value>>;
}

/** What a clinic sets for all of its notes. Every part is optional; without it the built-in tables hold. An input of the core, and a key of every cache. */
export interface Settings {
  /** What `normal` says, in place of the built-in panel. */
  readonly panels?: { readonly ray?: readonly PanelMember[]; readonly web?: readonly PanelMember[] };
  /** For drawers where neither the statement nor the file names a scale. */
  readonly drawerScale?: DrawerScale;
  /** When a course without operation is reviewed by local protocol, as written: `4-6 weeks`. */
  readonly courseReview?: string;
  /** HbA1c in percent above which diabetes is to be settled before an operation, by local protocol. */
  readonly hba1cPercent?: number;
  /** By code. What is a danger stays one. */
  readonly severity?: Readonly<Record<string, Severity | 'off'>>;
  /** What the formatter writes for a word that has a canonical form. */
  readonly words?: 'canonical' | 'as-written';
  /** Every visit is asked to be complete, not only one that plans or stages. No key of the file: the command line asks. */
  readonly complete?: OnRequest;
}

export const NO_SETTINGS: Settings = {};
