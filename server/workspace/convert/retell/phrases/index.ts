import { CLIPPED } from './clipped.ts';
import { CLIPPED_FEEL } from './clipped-feel.ts';
import { CLIPPED_IMAGES } from './clipped-images.ts';
import { COMPLETE } from './complete.ts';
import { CORRECTED } from './corrected.ts';
import { COURSES } from './courses.ts';
import { EXAM, SHAPE, VESSELS, WEBS } from './exam.ts';
import { EXAMINED } from './examined.ts';
import { HEALING } from './healing.ts';
import { BACKGROUND, HISTORY } from './history.ts';
import { IMAGES } from './images.ts';
import { OPERATED } from './operated.ts';
import { OPINIONS } from './opinions.ts';
import { ORDER_LISTS, ORDERS } from './orders.ts';
import type { Phrase } from './phrase.ts';
import { MISHEARD, PLACES, SMALL } from './places.ts';
import { PLANS } from './plans.ts';
import { QUANTITIES } from './quantities.ts';
import { NUMBERED } from './rays.ts';
import { REVIEWS } from './reviews.ts';
import { ASIDES, SENTENCES } from './sentences.ts';
import { STEPS } from './steps.ts';
import { TALK } from './talk.ts';
import { THEATRE } from './theatre.ts';
import { TOLD } from './told.ts';
import { TREATMENT } from './treatment.ts';
import { TRIED } from './tried.ts';

/** What is put right before anything is taken for a list, in the order in which they apply. */
export const HEARD: readonly Phrase[] = [...MISHEARD, ...QUANTITIES, ...CORRECTED, ...NUMBERED];
/** Every other row, in the order in which they apply. */
export const REPHRASED: readonly Phrase[] = [
  ...PLACES,
  ...STEPS,
  ...OPERATED,
  ...HEALING,
  ...COURSES,
  ...ORDERS,
  ...TOLD,
  ...CLIPPED,
  ...CLIPPED_FEEL,
  ...CLIPPED_IMAGES,
  ...SENTENCES,
  ...ASIDES,
  ...REVIEWS,
  ...OPINIONS,
  ...TRIED,
  ...PLANS,
  ...ORDER_LISTS,
  ...SMALL,
  ...EXAMINED,
  ...HISTORY,
  ...BACKGROUND,
  ...EXAM,
  ...SHAPE,
  ...WEBS,
  ...VESSELS,
  ...THEATRE,
  ...IMAGES,
  ...TREATMENT,
  ...TALK,
  ...COMPLETE,
];
