import type { FindingId } from '../../../grammar/lexicon/index.ts';
import { RAYS, type Ray, type Side, WEBS, type Web } from '../../../grammar/values.ts';
import { clearFacts } from '../answers.ts';
import { type EpisodeState, rayKey } from '../episode.ts';
import { factsOf } from '../fact-index.ts';
import type { AnyFact, VisitFacts } from '../facts.ts';

export type FactOf<F extends FindingId> = Extract<AnyFact, { finding: F }>;

/** What a differential is about: one lesser ray, the great toe, one web space, or one foot as a whole. */
export type Site =
  | { readonly at: 'ray'; readonly ray: Ray }
  /** Apart from the rays: no plate of it is weighed, and no stage is ever given. */
  | { readonly at: 'great toe' }
  | { readonly at: 'web'; readonly web: Web }
  | { readonly at: 'foot' };

/** What a condition may look at: the site itself, its neighbours that share its pain, the foot, the patient. */
export interface View {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly side: Side;
  readonly site: Site;
  /** The ray itself, the two beside a web, all of a foot. */
  readonly rays: readonly Ray[];
  /** The web itself, the two beside a ray, all of a foot. */
  readonly webs: readonly Web[];
}

export function viewOf(visit: VisitFacts, before: EpisodeState, side: Side, site: Site): View {
  const near = <N extends Ray | Web>(all: readonly N[], ...wanted: readonly number[]): N[] =>
    all.filter((each) => wanted.includes(each));
  if (site.at === 'foot') return { visit, before, side, site, rays: RAYS, webs: WEBS };
  if (site.at === 'great toe') return { visit, before, side, site, rays: [1], webs: [] };
  if (site.at === 'web')
    return { visit, before, side, site, rays: near(RAYS, site.web, site.web + 1), webs: [site.web] };
  return { visit, before, side, site, rays: [site.ray], webs: near(WEBS, site.ray - 1, site.ray) };
}

/** Facts of a finding that concern the view, clear or not. What is planned was not found. */
export const written = <F extends FindingId>({ visit, ...view }: View, finding: F): FactOf<F>[] =>
  factsOf(visit.facts, finding).filter((fact) => fact.section !== 'plan' && isNear(view, fact));

/** The clear ones: only these argue. */
export const clear = <F extends FindingId>({ visit, ...view }: View, finding: F): FactOf<F>[] =>
  clearFacts(visit.facts, finding).filter((fact) => fact.section !== 'plan' && isNear(view, fact));

function isNear({ side, rays, webs }: Omit<View, 'visit'>, fact: AnyFact): boolean {
  if (fact.side !== undefined && fact.side !== side) return false;
  if (fact.subject.at === 'ray') return rays.includes(fact.subject.ray);
  return fact.subject.at !== 'web' || webs.includes(fact.subject.web);
}

/** Operated on before or in this visit, as far as the file says; a toe then floats or stiffens by the operation. */
export const isOperated = ({ visit, before, side }: View, ray: Ray): boolean =>
  before.operated[rayKey(side, ray)] !== undefined ||
  before.known.surgery[rayKey(side, ray)] === 'told' ||
  (['procedure', 'earlier-surgery'] as const).some((finding) =>
    clearFacts(visit.facts, finding, { side, ray }).some(({ status }) => status === 'present'),
  );
