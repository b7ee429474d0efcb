import type { Said } from './index.ts';

/** After an operation, and what is planned. */
export const AFTER: Said = {};
