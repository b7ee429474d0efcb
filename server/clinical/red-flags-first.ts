import type { VisitAnalysis } from './analysis.ts';
import type { PathRow } from './path-inputs.ts';
import { PATH_ROWS } from './path-rows.ts';
import type { Flagged, RedFlag } from './red-flags.ts';

/** What to do first about a red flag: its row of the path. */
export function redFlagRow(flag: RedFlag): PathRow {
  const row = PATH_ROWS.find(({ id }) => id === flag);
  if (!row) throw new RangeError(`no path row for the red flag ${flag}`);
  return row;
}

export interface LedFlag {
  readonly flagged: Flagged;
  readonly row: PathRow;
}

/** The red flags that no ray names as its urgent step: of feet without an examined ray, of the great toe, and second ones of a ray. */
export function flagsWithoutRay({ redFlags, rays }: Pick<VisitAnalysis, 'redFlags' | 'rays'>): LedFlag[] {
  const led = new Set(rays.flatMap((ray) => ray.redFlags.slice(0, 1)));
  return redFlags.filter((flagged) => !led.has(flagged)).map((flagged) => ({ flagged, row: redFlagRow(flagged.flag) }));
}
