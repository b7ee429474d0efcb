import { type OwnPhrase, was } from './phrase.ts';

const AT = { ray: 'at', web: 'in', foot: 'in' } as const;

const worse: OwnPhrase<'worse-with'> = {
  shape: 'own',
  name: 'the complaint',
  preposition: AT,
  by: 'asked about',
  wording: {
    what: {
      walking: 'on walking',
      barefoot: 'on walking barefoot',
      'push-off': 'on push-off',
      running: 'on running',
      standing: 'on standing',
      'weight-bearing': 'on weight-bearing',
      stairs: 'on stairs',
      heels: 'in high heels',
      shoes: 'in narrow shoes',
      cycling: 'on cycling',
      sport: 'at sport',
      dancing: 'on dancing',
      jumping: 'on jumping',
      activity: 'with activity',
      'end of day': 'at the end of the day',
      mornings: 'in the morning',
      night: 'at night',
    },
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
      rubbing: 'rubbing',
      'wide shoes': 'wide or soft shoes',
      walking: 'walking',
      cold: 'cold',
      elevation: 'elevation',
    },
  },
  present: ({ what }) => was(what ? `eased by ${what}` : 'given as eased'),
  absent: ({ what }) => was(what ? `not eased by ${what}` : 'not eased'),
};

export const WHAT_CHANGES_IT_PHRASES = { 'worse-with': worse, 'eased-by': eased };
