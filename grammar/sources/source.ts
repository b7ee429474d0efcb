/** How the publication itself is known; a single figure of it may be known less well, and carries a mark of its own. */
export type Known = 'read' | 'secondary' | 'from memory, to be verified';

/** What kind of study, as far as what was read says. */
export type Design =
  | 'case report'
  | 'case series'
  | 'cohort'
  | 'case-control'
  | 'diagnostic accuracy'
  | 'reliability'
  | 'cadaver'
  | 'measurement'
  | 'meta-analysis'
  | 'review'
  | 'guideline'
  | 'survey'
  | 'description'
  | 'score'
  | 'not given';

/** Where it can be found. `unidentified` says that no identifier was given where it was read; none is made up. */
type Identified =
  | { readonly doi: string; readonly pmid?: string; readonly pmc?: string }
  | { readonly doi?: never; readonly pmid: string; readonly pmc?: string }
  | { readonly doi?: never; readonly pmid?: never; readonly pmc: string }
  | { readonly doi?: never; readonly pmid?: never; readonly pmc?: never; readonly unidentified: true };

/** A publication. Marks stand where a figure of it is used, since one paper may be read for one figure and recalled for another. */
export type Publication = Identified & {
  readonly citation: string;
  readonly year: number | 'not given';
  readonly design: Design;
  /** Who or what was studied, `154 patients, 291 toes`. */
  readonly n: string | 'not given';
  readonly known: Known;
};

/** One of the two honest alternatives to a publication. */
export interface Unpublished {
  readonly citation: string;
  readonly known: 'common practice' | 'from memory, to be verified';
}

export type Source = Publication | Unpublished;
