import type { ValuesOf } from '../../grammar/lexicon/index.ts';

/** Percent of NGSP for mmol/mol of IFCC: the master equation (NGSP, read). */
export const percentOf = (millimoles: number): number => 0.09148 * millimoles + 2.152;

/** The HbA1c in percent, the upper end of a range; `undefined` where no result was written. */
export function hba1cPercent({ percent, ifcc }: ValuesOf<'hba1c'>): number | undefined {
  if (percent) return percent.high;
  return ifcc && percentOf(ifcc.high);
}
