import type { Said } from './index.ts';

/** Onset and course, pain, what was tried, work and sport, drugs and illnesses. */
export const STORY: Said = {};
