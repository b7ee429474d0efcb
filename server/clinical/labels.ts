import type { StageOutcome } from './analysis.ts';
import type { DecidingFindings } from './deciding.ts';
import type { GateView } from './gates.ts';
import { isTold } from './known.ts';
import { isStable } from './supporting.ts';

/** What stands beside a stage: `extrapolated`, `painless`, `low certainty`, `reducible`, `irreducible`. */
export function labels(view: GateView, deciding: DecidingFindings, outcome: StageOutcome, painless: boolean): string[] {
  const list: string[] = [];
  if (outcome.is !== 'staged' && outcome.is !== 'span') return list;
  if (view.ray === 4) list.push('extrapolated to the fourth ray');
  if (painless) list.push('painless');
  if (isUncertain(view, deciding, outcome)) list.push('low certainty');
  for (const fact of deciding.facts.dislocated ?? [])
    if (outcome.is === 'staged' && outcome.stage === 4 && fact.finding === 'dislocated')
      list.push(...(fact.values.reducibility?.words ?? []));
  return list;
}

/** A low drawer beside an overlap, a stable one with guarding, or lax joints that nobody compared with the other foot. */
function isUncertain(
  { visit, before }: GateView,
  { possible, facts, other }: DecidingFindings,
  outcome: Extract<StageOutcome, { is: 'staged' | 'span' }>,
): boolean {
  const [low, high] = outcome.is === 'staged' ? [outcome.stage, outcome.stage] : [outcome.low, outcome.high];
  const weak = possible.drawer.some((step) => step === 0 || step === 1);
  if (weak && high === 3 && !possible.overlap.includes('no')) return true;
  const guarded = facts.drawer?.some((fact) => fact.finding === 'drawer' && fact.values.guarding && isStable(fact));
  if (guarded && !possible.dislocated.includes('old')) return true;
  return low >= 1 && high <= 3 && other.facts.length === 0 && isTold(before.known, visit, 'laxity');
}
