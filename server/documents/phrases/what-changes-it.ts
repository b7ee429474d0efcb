import { type OwnPhrase, was } from './phrase.ts';

/** A moment as it is said after what happens then. */
export const AT_MOMENTS = {
  'push-off': 'on push-off',
  night: 'at night',
  barefoot: 'on walking barefoot',
  'barefoot on tiles': 'on walking barefoot on tiles',
  walking: 'on walking',
  running: 'on running',
  'weight-bearing': 'on weight-bearing',
  'end of day': 'at the end of the day',
  evenings: 'in the evening',
  mornings: 'in the morning',
  cycling: 'on cycling',
  sport: 'at sport',
  standing: 'on standing',
  stairs: 'on stairs',
  hills: 'on hills',
  shoes: 'in shoes',
  'tight shoes': 'in tight shoes',
  'narrow shoes': 'in narrow shoes',
  jumping: 'on jumping',
  dancing: 'on dancing',
  'demi pointe': 'on demi pointe',
} as const;

const AT = { ray: 'at', web: 'in', foot: 'in' } as const;

const worse: OwnPhrase<'worse-with'> = {
  shape: 'own',
  name: 'the complaint',
  preposition: AT,
  by: 'asked about',
  wording: {
    what: { ...AT_MOMENTS, heels: 'in high heels', activity: 'with activity' },
  },
  present: ({ what }) => was(what ? `worse ${what}` : 'given as worse'),
  absent: ({ what }) => was(what ? `not worse ${what}` : 'not worse'),
};

const eased: OwnPhrase<'eased-by'> = {
  shape: 'own',
  name: 'the complaint',
  preposition: AT,
  by: 'asked about',
  wording: {
    what: {
      rest: 'rest',
      'shoes off': 'taking the shoes off',
      trainers: 'trainers',
      'running shoes': 'running shoes',
      rubbing: 'rubbing',
      massage: 'massage',
      'wide shoes': 'wide shoes',
      'soft shoes': 'soft shoes',
      walking: 'walking',
      movement: 'movement',
      cold: 'cold',
      ice: 'ice',
      elevation: 'elevation',
    },
  },
  present: ({ what }) => was(what ? `eased by ${what}` : 'given as eased'),
  absent: ({ what }) => was(what ? `not eased by ${what}` : 'not eased'),
};

export const WHAT_CHANGES_IT_PHRASES = { 'worse-with': worse, 'eased-by': eased };
