import type { Section } from '../../../grammar/lexicon/entry.ts';
import { COMPLICATIONS } from '../../../grammar/lexicon/recovery.ts';
import {
  AMOUNT,
  asNamed,
  commas,
  type OwnPhrase,
  type Predicate,
  spaced,
  type TherePhrase,
  was,
  withArticle,
} from './phrase.ts';

const DEGREE = { degree: AMOUNT } as const;

/** In a plan they are to come out, unless it says what becomes of them. */
function sutureState(section: Section, state: string | undefined, when: string, not: boolean): Predicate {
  const no = not ? 'not' : undefined;
  if (section !== 'plan') return was(spaced(no, spaced(state, when) || 'given as written'));
  const out = state === undefined ? 'to come out' : state === 'removed' ? 'to be removed' : undefined;
  return { verb: 'is', rest: out ? spaced(no, out, when) : spaced(no, 'planned', `(${spaced(state, when)})`) };
}

const sutures: OwnPhrase<'sutures'> = {
  shape: 'own',
  name: 'the sutures',
  plural: true,
  by: 'looked at',
  preposition: 'at',
  wording: {
    state: {
      removed: 'removed',
      'alternate removed': 'removed in part (alternate)',
      'in place': 'in place',
      absorbable: 'absorbable',
    },
  },
  present: ({ state, at, on }, section) => sutureState(section, state, spaced(at && `at ${at}`, on), false),
  absent: ({ state, at, on }, section) => sutureState(section, state, spaced(at && `at ${at}`, on), true),
};

const pinSite: OwnPhrase<'pin-site'> = {
  shape: 'own',
  name: 'the pin site',
  by: 'inspected',
  preposition: 'at',
  wording: {
    state: {
      clean: 'clean',
      dry: 'dry',
      red: 'red',
      inflamed: 'inflamed',
      discharging: 'discharging',
      weeping: 'weeping',
      oozing: 'oozing',
      pus: 'discharging pus',
      spreading: 'surrounded by spreading redness',
      loose: 'loose',
      migrated: 'marked by a pin that had moved',
    },
  },
  present: ({ state }) => was(state ?? 'given as written'),
  absent: ({ state }) => was(spaced('not', state ?? 'present')),
};

const stiffness: TherePhrase<'stiffness'> = {
  shape: 'there',
  name: 'stiffness',
  wording: DEGREE,
  present: ({ degree }) => spaced(degree, 'stiffness'),
  absent: ({ degree }) => spaced(degree, 'stiffness'),
};
const recurrence: TherePhrase<'recurrence'> = {
  shape: 'there',
  name: 'recurrence',
  wording: DEGREE,
  present: ({ degree }) => spaced(degree, 'recurrence of the deformity'),
  absent: ({ degree }) => spaced(degree, 'recurrence of the deformity'),
};
const transferPain: TherePhrase<'transfer-pain'> = {
  shape: 'there',
  name: 'transfer pain',
  wording: { ...DEGREE, kind: { lesion: 'transfer lesion' } },
  present: ({ kind, degree }) => (kind ? withArticle(spaced(degree, kind)) : spaced(degree, 'transfer pain')),
  absent: ({ kind = 'transfer pain', degree }) => spaced(degree, kind),
};

const complication: TherePhrase<'complication'> = {
  shape: 'there',
  name: 'a complication',
  wording: {
    what: {
      ...asNamed(COMPLICATIONS),
      crps: 'complex regional pain syndrome',
      clot: 'blood clot',
    },
  },
  present: ({ what, on }) => commas(spaced(withArticle('complication'), what && `(${what})`), on),
  absent: ({ what, on }) => commas(spaced('complication', what && `(${what})`), on),
};

export const RECOVERY_PHRASES = {
  sutures,
  'pin-site': pinSite,
  stiffness,
  recurrence,
  'transfer-pain': transferPain,
  complication,
};
