import { COMPLETE } from './complete.ts';
import { EXAM, SHAPE, VESSELS, WEBS } from './exam.ts';
import { BACKGROUND, HISTORY } from './history.ts';
import { IMAGES } from './images.ts';
import type { Phrase } from './phrase.ts';
import { MISHEARD, PLACES, SMALL } from './places.ts';
import { TREATMENT } from './treatment.ts';

/** Every row, in the order in which they apply. */
export const REPHRASED: readonly Phrase[] = [
  ...MISHEARD,
  ...PLACES,
  ...SMALL,
  ...HISTORY,
  ...BACKGROUND,
  ...EXAM,
  ...SHAPE,
  ...WEBS,
  ...VESSELS,
  ...IMAGES,
  ...TREATMENT,
  ...COMPLETE,
];
