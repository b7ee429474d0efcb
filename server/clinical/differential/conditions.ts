import type { Condition } from './condition.ts';
import { GREAT_TOE } from './great-toe.ts';
import { JOINT } from './joint.ts';
import { LOAD_AND_NERVE } from './load-and-nerve.ts';
import { NEVER_MISS } from './never-miss.ts';
import { PLATE } from './plate.ts';
import { WEB } from './web.ts';

/** Every condition that is weighed, what must not be missed first. */
export const CONDITIONS: readonly Condition[] = [
  ...NEVER_MISS,
  PLATE,
  ...WEB,
  ...JOINT,
  ...GREAT_TOE,
  ...LOAD_AND_NERVE,
];
