import { Recent } from '../../grammar/recent.ts';
import type { NoStage, RayAnalysis, Stage, StageOutcome } from './analysis.ts';
import { type Deciding, type Possible, rowFor, type Verdict, worlds } from './staging-rows.ts';

export const notApplicable = (by: NoStage, why: string): StageOutcome => ({ is: 'not applicable', by, why });

export interface Decision {
  readonly outcome: StageOutcome;
  readonly rows: readonly string[];
  readonly decides: readonly Deciding[];
  readonly source: RayAnalysis['source'];
  readonly mark: RayAnalysis['mark'];
}

/** Few joints differ in what decides: most were decided before, in another visit. */
const decided = new Recent<string, Decision>(500);

/** The outcome over all worlds that the findings allow, found once for equal findings. */
export function decide(possible: Possible): Decision {
  const key = keyOf(possible);
  const known = decided.get(key);
  if (known) return known;
  const decision = overWorlds(possible);
  decided.set(key, decision);
  return decision;
}
/** Written out: every ray of every visit asks. */
const keyOf = (of: Possible): string =>
  `${of.dislocated}|${of.overlap}|${of.drawer}|${of.alignment}|${of.gap}|${of.tender}|${of.swollen}|${of.purchase}|${of.sameOtherSide}`;

/** One stage, the span of several, or no stage with its reason. */
function overWorlds(possible: Possible): Decision {
  const rows = worlds(possible).map((world) => ({ row: rowFor(world), world }));
  const verdicts = rows.map(({ row, world }) => row.verdict(world));
  const [first] = rows;
  const marks = rows.map(({ row }) => row);
  const worst = marks.find(({ mark }) => mark === 'from memory, to be verified') ?? first?.row;
  return {
    outcome: outcomeOf(verdicts),
    rows: [...new Set(marks.map(({ id }) => id))],
    decides: [...new Set(marks.flatMap(({ decides }) => decides))],
    source: worst?.source ?? 'common practice',
    mark: worst?.mark ?? 'common practice',
  };
}

function outcomeOf(verdicts: readonly Verdict[]): StageOutcome {
  if (verdicts.includes('acute until shown otherwise')) {
    const certain = verdicts.every((verdict) => verdict === 'acute until shown otherwise');
    const why = certain
      ? 'dislocated, onset not stated: acute until shown otherwise'
      : 'a dislocation is possible: confirm it first';
    return { is: 'cannot stage', why };
  }
  if (verdicts.includes('cannot')) return { is: 'cannot stage', why: 'the drawer is missing' };
  if (verdicts.every((verdict) => verdict === 'no instability'))
    return notApplicable('no instability', 'no instability found');
  if (verdicts.includes('no instability'))
    return { is: 'cannot stage', why: 'stable joint: tenderness, swelling or purchase missing' };
  const stages = verdicts.flatMap((verdict) => verdict as readonly Stage[]);
  const low = Math.min(...stages) as Stage;
  const high = Math.max(...stages) as Stage;
  return low === high ? { is: 'staged', stage: low } : { is: 'span', low, high };
}
