import type { NoStage, RayAnalysis, VisitAnalysis } from '../analysis.ts';
import { decidingFindings } from '../deciding.ts';
import { OTHER_SCALES } from './other-scales.ts';
import type { OtherScale, ScaleOutcome, Seen } from './scale.ts';

/** What one scale says of a ray. It never reads the clinical stage, and the stage never reads it. */
export interface ScaleTold {
  readonly scale: OtherScale;
  readonly outcome: ScaleOutcome;
  /** What was taken for granted, as beside the clinical stage. */
  readonly assumptions: readonly string[];
}

/** These say that the joint is stable or painless; a description may still fit. */
const STILL_DESCRIBED: readonly NoStage[] = ['lax', 'no symptom', 'no instability'];

/**
 * What the other scales say of a lesser ray, computed when asked. A gate that keeps the clinical stage away keeps them away
 * too. One description whose parts are all found is told; where findings lack, it names them and what they leave possible.
 */
export function otherScales(visit: VisitAnalysis, ray: RayAnalysis): ScaleTold[] {
  const { facts, before } = visit;
  const deciding = decidingFindings(facts, before.known, ray.side, ray.ray);
  const seen: Seen = { facts: facts.facts, about: { side: ray.side, ray: ray.ray }, deciding };
  return OTHER_SCALES.map((scale) => {
    const why = keptAway(scale, ray, seen);
    const outcome: ScaleOutcome = why ? { is: 'not applied', why } : weigh(scale, seen);
    return { scale, outcome, assumptions: why ? [] : deciding.assumptions };
  });
}

function keptAway(scale: OtherScale, { outcome, ray }: RayAnalysis, { deciding }: Seen): string | undefined {
  if (outcome.is === 'not applicable' && !STILL_DESCRIBED.includes(outcome.by)) return outcome.why;
  if (scale.ray !== undefined && scale.ray !== ray) return 'it describes the second toe only';
  const { dislocated, drawer } = deciding.possible;
  const open = dislocated.includes('undated') || (drawer.includes(4) && !dislocated.includes('old'));
  return open ? 'a dislocation of unknown age is possible: acute until shown otherwise' : undefined;
}

function weigh({ rows }: OtherScale, seen: Seen): ScaleOutcome {
  const weighed = rows.map(({ name, criteria }) => ({
    name,
    criteria: criteria.map((criterion) => ({ criterion, met: criterion.met(seen) })),
  }));
  const possible = weighed.filter(({ criteria }) => criteria.every(({ met }) => met !== 'no'));
  if (possible.length === 0)
    return {
      is: 'fits none',
      against: weighed.map(({ name, criteria }) => {
        const parts = criteria.filter(({ met }) => met === 'no').map(({ criterion }) => criterion.says);
        return `${name} asks for ${parts.join(' and ')}`;
      }),
    };
  const [only, ...others] = possible;
  const open = possible.flatMap(({ criteria }) => criteria.filter(({ met }) => met === 'open'));
  if (only && others.length === 0 && open.length === 0)
    return { is: 'told', name: only.name, by: only.criteria.map(({ criterion }) => criterion.says) };
  return {
    is: 'cannot be told',
    possible: possible.map(({ name }) => name),
    missing: [...new Set(open.map(({ criterion }) => criterion.ask))],
  };
}
