import type { Sourced } from '../lexicon/entry.ts';
import type { DrawerScale } from '../values.ts';

interface ScaleText extends Sourced {
  readonly grades: Readonly<Record<number, string>>;
  readonly note: string;
}

/** The three drawer scales in words, as far as they are known; the numbers of one are not those of another. */
export const DRAWER_SCALE_TEXTS: Readonly<Record<DrawerScale, ScaleText>> = {
  '0-4': {
    grades: {
      0: 'stable',
      1: 'subluxes by less than half',
      2: 'subluxes by more than half',
      3: 'can be dislocated',
      4: 'is dislocated',
    },
    note: 'Grades 0 and 1 read; 2 to 4 from memory, to be verified.',
    source: 'NERY-RF',
    mark: 'read',
  },
  '0-3': {
    grades: {
      0: 'no dorsal translation',
      1: 'base of the phalanx subluxes',
      2: 'base dislocates, reducible',
      3: 'fixed dislocation',
    },
    note: '',
    source: 'THOMP87',
    mark: 'from memory, to be verified',
  },
  '1-3': {
    grades: { 1: 'wording not found', 2: 'wording not found', 3: 'wording not found' },
    note: 'The grades and their counts were read; a dislocated joint is counted apart.',
    source: 'PECK12',
    mark: 'read',
  },
};
