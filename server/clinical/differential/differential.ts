import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import { LESSER_RAYS, type Side, WEBS } from '../../../grammar/values.ts';
import type { VisitAnalysis } from '../analysis.ts';
import type { AnyFact } from '../facts.ts';
import { isStatedPainless } from '../gates.ts';
import { hasUnreadRedFlag } from '../reading-reports.ts';
import type { Flagged } from '../red-flags.ts';
import { balance, type Ground, type Weighed, weigh } from './argue.ts';
import { type Concordance, concordance } from './concordance.ts';
import { CONDITIONS } from './conditions.ts';
import { openingSigns } from './opening-signs.ts';
import { type Site, type View, viewOf } from './view.ts';

/** Said once beside the conditions of a site. */
export interface Remark extends Sourced {
  readonly text: string;
}

/** The conditions that may explain one ray, great toe, web or foot with a complaint or a sign. */
export interface SiteDifferential {
  readonly side: Side;
  readonly site: Site;
  /** The complaints and signs that open it. */
  readonly opened: readonly Ground[];
  /** What must not be missed first, then by how many findings argue for, then by how few against. */
  readonly conditions: readonly Weighed[];
  readonly remarks: readonly Remark[];
  readonly images: readonly Concordance[];
  /** Words of this site that were not understood and not used. */
  readonly unread: readonly string[];
}

export interface Differential {
  /** They outrank everything else. */
  readonly flags: readonly Flagged[];
  /** Words that may be a red flag were not understood. */
  readonly unreadFlag: boolean;
  readonly sites: readonly SiteDifferential[];
}

const known = new WeakMap<VisitAnalysis, Differential>();

/**
 * The differential of one visit, computed when it is first asked for and kept as long as the analysis. Pure: no clock, no
 * file. A visit without complaint or sign has no site. Arguments are counted, never weighted: no probability is given.
 */
export function differentialOf(analysis: VisitAnalysis): Differential {
  const found = known.get(analysis) ?? {
    flags: analysis.redFlags,
    unreadFlag: hasUnreadRedFlag(analysis.facts),
    sites: sitesOf(analysis),
  };
  known.set(analysis, found);
  return found;
}

function sitesOf(analysis: VisitAnalysis): SiteDifferential[] {
  const sites: Site[] = [
    { at: 'great toe' },
    ...LESSER_RAYS.map((ray) => ({ at: 'ray', ray }) as const),
    ...WEBS.map((web) => ({ at: 'web', web }) as const),
    { at: 'foot' },
  ];
  return (['right', 'left'] as const).flatMap((side) =>
    sites.flatMap((site) => siteOf(analysis, viewOf(analysis.facts, analysis.before, side, site))),
  );
}

function siteOf({ rays }: VisitAnalysis, view: View): SiteDifferential[] {
  const { side, site, visit } = view;
  const painless = site.at === 'ray' && isStatedPainless(visit, side, site.ray);
  const opened = openingSigns(view, painless);
  if (opened.length === 0) return [];
  const conditions = ordered(CONDITIONS.filter(({ at }) => at.includes(site.at)).map((each) => weigh(each, view)));
  const analysis = rays.find((ray) => site.at === 'ray' && ray.side === side && ray.ray === site.ray);
  return [
    {
      side,
      site,
      opened: opened.map(groundOf),
      conditions,
      remarks: remarksOn(conditions),
      images: concordance(view, analysis),
      unread: unreadWords(view),
    },
  ];
}

const groundOf = ({ statement, subject, origin }: AnyFact): Ground => ({ statement, subject, place: origin.place });

/** A sort that is stable keeps the order of the table where the evidence is alike. */
function ordered(all: readonly Weighed[]): Weighed[] {
  const first = ({ condition }: Weighed) => (condition.neverMiss ? 0 : 1);
  return [...all].sort((a, b) => {
    const [left, right] = [balance(a), balance(b)];
    if (first(a) !== first(b)) return first(a) - first(b);
    if (a.condition.neverMiss) return Number(right.for > 0) - Number(left.for > 0);
    return right.for - left.for || left.against - right.against;
  });
}

/** The conditions that at least one finding argues for: what must not be missed first. */
export const argued = ({ conditions }: Pick<SiteDifferential, 'conditions'>): Weighed[] =>
  conditions.filter((each) => balance(each).for > 0);

function remarksOn(conditions: readonly Weighed[]): Remark[] {
  const likely = new Set(argued({ conditions }).map(({ condition }) => condition.id));
  const both = likely.has('plantar plate tear') && likely.has('interdigital neuroma');
  return both ? [BOTH] : [];
}
const BOTH: Remark = {
  source: 'COUGH02',
  mark: 'read',
  text: 'A torn plate and a neuroma can both be true: of 121 people operated on for a neuroma 24 had an unstable second MTP joint as well.',
};

const unreadWords = ({ visit, side, site }: View): string[] =>
  visit.verbatim.flatMap(({ text, quote, subject, side: on, section }) => {
    const here =
      (site.at === 'ray' && subject?.at === 'ray' && subject.ray === site.ray) ||
      (site.at === 'great toe' && subject?.at === 'ray' && subject.ray === 1) ||
      (site.at === 'web' && subject?.at === 'web' && subject.web === site.web) ||
      (site.at === 'foot' && subject?.at === 'foot');
    return !quote && section !== 'plan' && here && (on === undefined || on === side) ? [text] : [];
  });
