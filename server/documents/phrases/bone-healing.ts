import { commas, type OwnPhrase, spaced, was } from './phrase.ts';

const OF = {
  'weil osteotomy': 'of the Weil osteotomy',
  'pip fusion': 'of the PIP fusion',
  'scarf osteotomy': 'of the scarf osteotomy',
  'akin osteotomy': 'of the Akin osteotomy',
  fracture: 'of the fracture',
} as const;
const union: OwnPhrase<'union'> = {
  shape: 'own',
  name: 'bony union',
  by: 'looked for',
  preposition: 'at',
  wording: {
    of: OF,
    state: {
      united: 'complete',
      healing: 'in progress',
      bridging: 'in progress with bridging',
      'not united': 'not reached',
    },
  },
  present: ({ of, state, share }) => was(commas(state ?? 'recorded as present', share), of && `bony union ${of}`),
  absent: ({ of, state, share }) => was(commas('recorded as absent', state, share), of && `bony union ${of}`),
};

const implant: OwnPhrase<'implant-film'> = {
  shape: 'own',
  name: 'the implant',
  by: 'looked at',
  preposition: 'in',
  wording: {
    what: { screw: 'the screw', screws: 'the screws', staple: 'the staple' },
    state: {
      unremarkable: 'unremarkable (extent not stated)',
      'in place': 'in place',
      loose: 'loose',
      broken: 'broken',
      prominent: 'prominent',
      'moved back': 'moved back',
    },
  },
  present: ({ what, state, by }) =>
    was(spaced(state ?? (by ? 'measured' : 'given as written'), by && `by ${by}`), what, what === 'the screws'),
  absent: ({ what, state, by }) => was(spaced('not', state ?? 'seen', by && `by ${by}`), what, what === 'the screws'),
};

export const BONE_HEALING_PHRASES = { union, 'implant-film': implant };
