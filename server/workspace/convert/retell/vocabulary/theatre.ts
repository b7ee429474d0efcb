import type { Said } from './index.ts';

/** Before and during an operation. */
export const THEATRE: Said = {};
