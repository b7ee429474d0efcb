import type { Mark, Sourced } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import type { Ray, Side } from '../../grammar/values.ts';
import type { Change } from './change.ts';
import type { EpisodeState } from './episode.ts';
import type { HeaderFacts, Place, StatementId, VisitFacts } from './facts.ts';
import type { Flagged } from './red-flags.ts';
import type { Settings } from './settings.ts';

/** A clinical stage, 0 to 4. Never a drawer grade, never an anatomical grade. */
export type Stage = 0 | 1 | 2 | 3 | 4;

export type StageOutcome =
  | { readonly is: 'staged'; readonly stage: Stage }
  | { readonly is: 'span'; readonly low: Stage; readonly high: Stage }
  | { readonly is: 'cannot stage'; readonly why: string }
  | { readonly is: 'not applicable'; readonly by: NoStage; readonly why: string };

/** What keeps a joint from being staged. */
export type NoStage =
  | 'red flag'
  | 'operated'
  | 'wound'
  | 'ray 5'
  | 'growing'
  | 'neuropathic'
  | 'acute injury'
  | 'systemic'
  | 'lax'
  | 'no symptom'
  | 'no instability';

export interface Evidence {
  readonly statement: StatementId;
  readonly place: Place;
  readonly finding: FindingId;
  /** `describes` stands at a joint that is not staged: its deformity and drawer are told all the same. */
  readonly role: 'decides' | 'supports' | 'questions' | 'describes';
  /** Reads after the finding: `over half of the head is uncovered`. */
  readonly why: string;
}

/** A step of the exam that is missing, in the words of the shorthand that would fill it. */
export interface ExamStep {
  readonly finding: FindingId;
  readonly ask: string;
}

/** Advice, computed, never a statement of the clinician. */
export interface NextStep extends Sourced {
  readonly row: string;
  readonly step: string;
  readonly why: string;
  readonly wouldChange: string;
  readonly cautions: readonly string[];
  readonly review: string;
  readonly urgent: boolean;
  /** The step as a plan in the shorthand, where it is one; acceptance writes it into the note. */
  readonly plan?: string;
  readonly statements: readonly StatementId[];
}

/** What is computed for one lesser ray in one visit, beside what the clinician stated. */
export interface RayAnalysis {
  readonly side: Side;
  readonly ray: Ray;
  readonly outcome: StageOutcome;
  /** The red flags that concern the ray, the first first. */
  readonly redFlags: readonly Flagged[];
  readonly source: SourceKey;
  readonly mark: Mark;
  /** `painless`, `extrapolated`, `low certainty`, `reducible`, `irreducible`. */
  readonly labels: readonly string[];
  readonly stated?: {
    readonly low: number;
    readonly high: number;
    readonly statement: StatementId;
    readonly place: Place;
    /** Where the number stands, if it can be replaced. */
    readonly valuePlace?: Place;
  };
  readonly evidence: readonly Evidence[];
  readonly assumptions: readonly string[];
  /** Every statement of the visit about this ray. */
  readonly statements: readonly StatementId[];
}

/** With what only those need who ask about the ray. */
export interface AdvisedRay extends RayAnalysis {
  readonly next: NextStep;
  /** The smallest set of exam steps that would narrow an open outcome. */
  readonly missing: readonly ExamStep[];
  /** What became of the ray since its last visit; missing where there is nothing to compare. */
  readonly change?: Change;
}

export type Severity = 'danger' | 'contradiction' | 'missing' | 'style';

/** An edit in the language's own terms; the workspace turns it into text. */
export type SyntaxEdit =
  | { readonly edit: 'replace'; readonly place: Place; readonly text: string }
  | { readonly edit: 'insert line'; readonly afterLine: number; readonly text: string }
  | { readonly edit: 'remove line'; readonly line: number }
  | { readonly edit: 'insert header'; readonly text: string };

export interface Fix {
  readonly title: string;
  readonly safety: 'safe' | 'needs review';
  readonly edits: readonly SyntaxEdit[];
}

/** One finding of a rule or of the reader, on the smallest offending words. */
export interface Report {
  readonly code: string;
  readonly severity: Severity;
  readonly place: Place;
  readonly message: string;
  readonly related: readonly { readonly place: Place; readonly message: string }[];
  readonly fixes: readonly Fix[];
}

/** What the core knows of one visit. Places count lines from the visit's first line. */
export interface VisitAnalysis {
  readonly facts: VisitFacts;
  readonly rays: readonly RayAnalysis[];
  /** Every red flag of the visit, whether a ray was examined or not. First in every output. */
  readonly redFlags: readonly Flagged[];
  readonly reports: readonly Report[];
  /** Codes that an allowance hid in this visit. */
  readonly hidden: readonly string[];
  readonly before: EpisodeState;
  readonly after: EpisodeState;
}

/** A visit whose rays are advised. */
export interface AdvisedVisit extends VisitAnalysis {
  readonly rays: readonly AdvisedRay[];
}

export interface Context {
  /** ISO day; the core has no clock. */
  readonly today: string;
  readonly header: HeaderFacts;
  /** The clinic's; missing where it sets nothing. */
  readonly settings?: Settings;
}
