import type { Ray, Side } from '../../grammar/values.ts';
import type { RayAnalysis, StageOutcome } from './analysis.ts';
import { clearFacts, isStated } from './answers.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { isTold, type Known } from './known.ts';

/** Tender or swollen at three or more MTP joints over both feet, or compression sore in both feet. */
export function isSystemic(visit: VisitFacts): boolean {
  const sore = (at: Side) =>
    clearFacts(visit.facts, 'compression', { side: at }).some(
      (fact) => fact.side === at && fact.values.pain?.words.includes('sore'),
    );
  return (sore('right') && sore('left')) || inflamedJoints(visit).size >= 3;
}

/** MTP joints that are stated tender (not at the shaft) or swollen. */
export function inflamedJoints(visit: VisitFacts): ReadonlySet<string> {
  const joints = new Set<string>();
  const add = (fact: AnyFact) => {
    if (fact.status === 'present' && fact.side && fact.subject.at === 'ray' && fact.subject.part !== 'metatarsal')
      joints.add(`${fact.side} ray ${fact.subject.ray}`);
  };
  for (const fact of clearFacts(visit.facts, 'swelling')) add(fact);
  for (const fact of clearFacts(visit.facts, 'tenderness'))
    if (!fact.values.place?.words.every((place) => place === 'shaft')) add(fact);
  return joints;
}

/** Two or more rays of the foot at stage 3 or 4, and nobody asked about inflammatory arthritis. */
export function severalRaysUnasked(
  visit: VisitFacts,
  side: Side,
  rays: readonly Pick<RayAnalysis, 'side' | 'outcome'>[],
): string | undefined {
  const asked =
    clearFacts(visit.facts, 'morning-stiffness').length > 0 ||
    clearFacts(visit.facts, 'compression', { side }).length > 0;
  const severe = rays.filter(({ side: at, outcome }) => at === side && lowest(outcome) >= 3);
  return !asked && severe.length >= 2 ? 'several rays at stage 3 or 4, inflammatory arthritis not asked' : undefined;
}
const lowest = (outcome: StageOutcome): number =>
  outcome.is === 'staged' ? outcome.stage : outcome.is === 'span' ? outcome.low : -1;

interface JointView {
  readonly visit: VisitFacts;
  readonly known: Known;
  readonly side: Side;
  readonly ray: Ray;
}

/** Why a disease of the joint comes before a plate in this one joint; `undefined` where nothing says so. Common practice. */
export function jointDiseaseWhy({ visit, known, side, ray }: JointView): string | undefined {
  const about = { side, ray };
  const has = (finding: 'swelling' | 'hot' | 'redness') => isStated(visit.facts, finding, 'present', about);
  const named = clearFacts(visit.facts, 'diagnosis', about)
    .filter(({ status }) => status === 'present')
    .flatMap(({ values }) => values.what?.words ?? []);
  const [disease] = named.filter((word) => word === 'inflammatory arthritis' || word === 'gout');
  if (disease) return `${disease} is the stated diagnosis of this joint`;
  const eroded = clearFacts(visit.facts, 'image-other', about).some(
    ({ status, values }) => status === 'present' && values.what?.words.includes('erosion'),
  );
  if (eroded) return 'an image shows an erosion at this joint: think of inflammatory arthritis first';
  const active = has('swelling') || has('hot');
  if (active && isTold(known, visit, 'inflammatory-arthritis'))
    return 'inflammatory arthritis is stated and this joint is swollen or hot: think of it first';
  if (has('swelling') && (has('hot') || has('redness')) && isTold(known, visit, 'gout'))
    return 'gout is stated and this joint is hot or red and swollen: think of it first';
  return undefined;
}
