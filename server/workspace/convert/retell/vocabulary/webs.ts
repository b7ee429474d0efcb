import type { Said } from './index.ts';

/** Web spaces, nerve and vessel, skin, gait and the rest of the foot. */
export const WEBS: Said = {};
