import { Chance } from './chance.ts';
import {
  dislocated,
  frail,
  fusion,
  gout,
  infected,
  inflammatory,
  injected,
  injured,
  lapse,
  neuropathic,
  nothing,
  stress,
  web,
  webAndPlate,
} from './stories-of-other-causes.ts';
import { bilateral, crossover, operated, settles } from './stories-of-the-plate.ts';
import { Pen } from './writing.ts';

/** Each story with how often it is told and the years in which its patients are born; as a forefoot clinic sees them. */
const STORIES = [
  ['settles', settles, 12, 1955, 1990],
  ['operated', operated, 11, 1948, 1975],
  ['crossover', crossover, 7, 1942, 1960],
  ['bilateral', bilateral, 4, 1955, 1980],
  ['web', web, 9, 1955, 1985],
  ['web and plate', webAndPlate, 5, 1955, 1980],
  ['inflammatory', inflammatory, 4, 1960, 1990],
  ['stress', stress, 4, 1965, 2000],
  ['injured', injured, 5, 1970, 2000],
  ['dislocated', dislocated, 2, 1960, 1990],
  ['neuropathic', neuropathic, 5, 1945, 1970],
  ['gout', gout, 4, 1950, 1980],
  ['fusion', fusion, 5, 1948, 1975],
  ['infected', infected, 3, 1950, 1985],
  ['nothing', nothing, 6, 1960, 2000],
  ['frail', frail, 4, 1935, 1946],
  ['injected', injected, 6, 1950, 1980],
  ['lapse', lapse, 6, 1950, 1980],
] as const;

export interface RealisticNote {
  readonly id: string;
  readonly text: string;
}

/** The generated notes of invented patients, the same on every run. */
export function realisticNotes(): RealisticNote[] {
  return STORIES.flatMap(([name, tell, times, from, to], story) =>
    Array.from({ length: times }, (_, i) => {
      const chance = new Chance(1000 * (story + 1) + i);
      const letters = String.fromCharCode(65 + story, 65 + (i % 26));
      const pen = new Pen(
        chance,
        `${letters}-${100 + 7 * i + story}`,
        chance.whole(from, to),
        chance.likely(0.8) ? 'female' : 'male',
      );
      tell(pen);
      return { id: `${name} ${i + 1}`, text: pen.text() };
    }),
  );
}
