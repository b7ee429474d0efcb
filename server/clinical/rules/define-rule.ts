import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../../grammar/lexicon/index.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Context, Fix, RayAnalysis, Report, Severity } from '../analysis.ts';
import type { EpisodeState } from '../episode.ts';
import type { Place, VisitFacts } from '../facts.ts';
import type { Flagged } from '../red-flags.ts';

/** What a rule may look at: one visit, what is computed for its rays, and the episode before it. */
export interface RuleView {
  readonly visit: VisitFacts;
  readonly rays: readonly RayAnalysis[];
  readonly redFlags: readonly Flagged[];
  readonly before: EpisodeState;
  readonly context: Context;
  /** The visit as typed, its first line first. */
  readonly lines: readonly LineSyntax[];
}

/** What a rule reports; the code and the usual severity are the rule's own. */
export interface Finding {
  readonly place: Place;
  readonly message: string;
  readonly severity?: Severity;
  readonly related?: Report['related'];
  readonly fixes?: readonly Fix[];
}

/** Examples are visit bodies, or whole notes where they start with `forefoot`; the tests execute them. */
export interface Examples {
  /** Gives exactly one report with the rule's code. */
  readonly invalid: string;
  /** Gives none. */
  readonly valid: string;
  /** Looks like the invalid one and gives none. */
  readonly nearMiss: string;
}

export interface Rule extends Sourced {
  readonly code: string;
  readonly name: string;
  readonly severity: Severity;
  readonly scope: 'statement' | 'ray' | 'visit' | 'episode';
  readonly reads: readonly FindingId[];
  readonly what: string;
  readonly why: string;
  readonly instead: string;
  readonly examples: Examples;
  readonly check: (view: RuleView) => Iterable<Finding>;
}

/** Declares a rule; the registry in `index.ts` holds it by one row. */
export const defineRule = (rule: Rule): Rule => rule;

export const replace = (place: Place, text: string) => ({ edit: 'replace', place, text }) as const;
