import type { Side } from '../../grammar/values.ts';
import type { VisitFacts } from './facts.ts';
import { isTold, type Known } from './known.ts';
import { type Feeling, footSensation } from './sensation.ts';

/** Feeling of one foot, from this visit, else from the newest earlier one, and whether neuropathy is stated. */
export interface FootFeeling {
  readonly today?: Feeling;
  readonly earlier?: { readonly is: Feeling; readonly on: string };
  readonly neuropathy: boolean;
}
export function footFeeling(visit: VisitFacts, known: Known, side: Side): FootFeeling {
  const today = footSensation(visit, side);
  const earlier = known.feeling[side];
  return {
    ...(today ? { today } : {}),
    ...(earlier ? { earlier } : {}),
    neuropathy: isTold(known, visit, 'neuropathy'),
  };
}

/** Feeling that cannot be relied on: what was found today decides, else what is known. */
export function isPoor({ today, earlier, neuropathy }: FootFeeling): boolean {
  if (today) return today !== 'normal';
  return neuropathy || (earlier !== undefined && earlier.is !== 'normal');
}

/** Why the foot counts as neuropathic, so that pain neither stages a joint nor guards it. */
export function neuropathicWhy({ today, earlier, neuropathy }: FootFeeling): string | undefined {
  if (today === 'lost') return 'protective sensation is lost (neuropathic foot)';
  if (today === 'normal') return undefined;
  if (neuropathy)
    return today
      ? 'neuropathy is stated and feeling is reduced (neuropathic foot)'
      : 'neuropathy is stated and feeling was not examined today (neuropathic foot)';
  return today === undefined && earlier?.is === 'lost'
    ? `protective sensation was lost on ${earlier.on} and has not been found since (neuropathic foot)`
    : undefined;
}

/** What is assumed of the feeling of a foot that is taken as kept. */
export function feelingAssumed({ today, earlier, neuropathy }: FootFeeling): string | undefined {
  if (today === 'reduced') return 'feeling is reduced, protective sensation taken as kept: confirm it';
  if (today === 'normal')
    return neuropathy ? 'neuropathy is stated and feeling was found normal, taken as kept' : undefined;
  return earlier ? `feeling not examined today, ${earlier.is} on ${earlier.on}` : 'feeling not examined';
}
