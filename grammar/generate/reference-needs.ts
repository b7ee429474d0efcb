import type { FindingId } from '../lexicon/index.ts';

/** Words of a finding that are read only with something beside them: which, what it is, and a line that is read. */
export interface Need {
  readonly words: readonly string[];
  readonly says: string;
  readonly example: string;
}

const OPERATIONS = [
  's/p',
  'status post',
  'weil',
  'weil osteotomy',
  'plate repair',
  'pip fusion',
  'fusion',
  'arthrodesis',
  'neurectomy',
  'bunionectomy',
  'bunion surgery',
  'hv correction',
];

/** A test reads every word of the lexicon alone in its place: what is not read so stands here, and nothing else does. */
export const NEEDS: Readonly<Partial<Record<FindingId, Need>>> = {
  'worse-with': {
    words: ['worse-with', 'worse', 'worst', 'worse when', 'aggravated by'],
    says: 'what makes it worse',
    example: 'history worse with running',
  },
  'eased-by': {
    words: ['eased-by', 'eases', 'relieved by', 'better with', 'better in'],
    says: 'what eases it',
    example: 'history eased by rest',
  },
  'walking-distance': {
    words: ['walking-distance', 'walking distance', 'walking tolerance', 'walks'],
    says: 'the distance',
    example: 'history walks 200 m',
  },
  'earlier-surgery': { words: OPERATIONS, says: 'its date, or `s/p` before it', example: 'history weil 2019' },
  listing: { words: ['list for', 'listed for'], says: 'the operation', example: 'plan listed for weil 2nd' },
  discharge: { words: ['physiotherapy', 'physio'], says: '`to` before it', example: 'plan discharge to physio' },
  'foot-swelling': {
    words: ['swelling', 'swollen', 'puffy'],
    says: 'the foot named before it',
    example: 'right foot swollen',
  },
  hot: {
    words: ['the other side', 'the left', 'the right'],
    says: 'the words that open it, `warm cf`',
    example: '2nd warm cf the other side',
  },
  drawer: { words: ['0-4', '0-3', '1-3'], says: 'the grade before it', example: '2nd drawer 2 0-4' },
  overlap: { words: ['third toe'], says: 'its `toe` left away', example: '2nd overlap third' },
  mtp: { words: ['mtp', 'mtp joint', 'mtpj', 'mpj'], says: 'its result', example: '2nd mtp stiff' },
  'film-joint': { words: ['joint'], says: 'its result', example: 'xray 2nd joint congruent' },
  'weight-bearing': {
    words: ['heel'],
    says: 'another order before it',
    example: 'operation done nwb 2/52 heel 4/52',
  },
  closure: {
    words: ['skin', 'subcutaneous', 'subcut'],
    says: 'the material behind it',
    example: 'operation done skin nylon',
  },
};
