import type { Section } from '../../../grammar/lexicon/entry.ts';
import {
  AMOUNT,
  commas,
  type OwnPhrase,
  type Predicate,
  spaced,
  type TherePhrase,
  was,
  withArticle,
} from './phrase.ts';

const DEGREE = { degree: AMOUNT } as const;

const sutureState = (section: Section, rest: string): Predicate =>
  section === 'plan' ? { verb: 'is', rest: spaced('planned', rest && `(${rest})`) } : was(rest || 'given as written');
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
  present: ({ state, at, on }, section) => sutureState(section, spaced(state, at && `at ${at}`, on)),
  absent: ({ state, at, on }, section) => {
    const { verb, rest } = sutureState(section, spaced(state, at && `at ${at}`, on));
    return { verb, rest: `not ${rest}` };
  },
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
      discharging: 'discharging',
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
  wording: DEGREE,
  present: ({ degree }) => spaced(degree, 'transfer pain'),
  absent: ({ degree }) => spaced(degree, 'transfer pain'),
};

const complication: TherePhrase<'complication'> = {
  shape: 'there',
  name: 'a complication',
  wording: {
    what: {
      infection: 'infection',
      'wound breakdown': 'wound breakdown',
      'loose screw': 'loose or prominent screw',
      'broken hardware': 'broken hardware',
      nonunion: 'nonunion',
      malunion: 'malunion',
      'avascular necrosis': 'avascular necrosis',
      crps: 'complex regional pain syndrome',
      'nerve injury': 'nerve injury',
      'painful scar': 'painful scar',
      haematoma: 'haematoma',
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
