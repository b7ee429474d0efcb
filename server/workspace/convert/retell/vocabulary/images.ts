import type { Said } from './index.ts';

/** Radiograph, ultrasound, MRI, CT, laboratory and what they are taken for. */
export const IMAGES: Said = {};
