import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../../grammar/lexicon/index.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Context, Fix, RayAnalysis, Report, Severity } from '../analysis.ts';
import type { EpisodeState } from '../episode.ts';
import { factsOf } from '../fact-index.ts';
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
  /** Without one of these the rule has nothing to say of a visit, and is not asked; missing where it always may. */
  readonly needs?: readonly Need[];
  readonly what: string;
  readonly why: string;
  readonly instead: string;
  readonly examples: Examples;
  readonly check: (view: RuleView) => Iterable<Finding>;
}

/** A finding that the visit mentions, an unclear one, or a signature, an event or words carried over. */
export type Need = FindingId | 'unclear' | 'lifecycle';

/** May the rule say anything of the visit? Most visits mention little of what fifty rules look for. */
export function isConcerned({ needs }: Rule, visit: VisitFacts): boolean {
  if (needs === undefined) return true;
  for (const need of needs) if (isThere(visit, need)) return true;
  return false;
}

function isThere({ facts, unclear, lifecycle }: VisitFacts, need: Need): boolean {
  if (need === 'unclear') return unclear.length > 0;
  return need === 'lifecycle' ? lifecycle !== undefined : factsOf(facts, need).length > 0;
}

/** Declares a rule; the registry in `index.ts` holds it by one row. */
export const defineRule = (rule: Rule): Rule => rule;

export const replace = (place: Place, text: string) => ({ edit: 'replace', place, text }) as const;
