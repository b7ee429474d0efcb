import type { SlotId } from '../../grammar/lexicon/index.ts';

export type AofasItem = Exclude<SlotId<'aofas'>, 'total'>;

/**
 * Points that each item of the AOFAS lesser MTP-IP scale can give. Section maxima 40, 45 and 15; the points of the items
 * are from memory, to be verified against KIT94.
 */
export const AOFAS_POINTS: Readonly<Record<AofasItem, readonly number[]>> = {
  pain: [0, 20, 30, 40],
  activity: [0, 4, 7, 10],
  footwear: [0, 5, 10],
  motion: [0, 5, 10],
  ip: [0, 5],
  stability: [0, 5],
  callus: [0, 5],
  alignment: [0, 8, 15],
};

/** Every total that some choice of items gives; a mean of several patients may lie between them. */
export const AOFAS_TOTALS: ReadonlySet<number> = sums(Object.values(AOFAS_POINTS));

function sums(items: readonly (readonly number[])[]): Set<number> {
  let totals = [0];
  for (const points of items) totals = totals.flatMap((total) => points.map((each) => total + each));
  return new Set(totals);
}
