import { ROWS_BEFORE_STAGING } from './path-before-staging.ts';
import { ROWS_BY_STAGE } from './path-by-stage.ts';
import type { PathInputs, PathRow } from './path-inputs.ts';

/** The next step: the first row that applies. Red flags first; rows 15 to 20 are for stages 0 to 2. */
export const PATH_ROWS: readonly PathRow[] = [...ROWS_BEFORE_STAGING, ...ROWS_BY_STAGE];

/** The one row that applies to the inputs. */
export function pathRow(inputs: PathInputs): PathRow {
  const row = PATH_ROWS.find(({ when }) => when(inputs));
  if (!row) throw new RangeError('the last path row takes every input');
  return row;
}
