import type { Section } from '../../../grammar/lexicon/entry.ts';
import { type OwnPhrase, type Predicate, spaced, was } from './phrase.ts';

const ahead = (section: Section, done: string, planned: string, subject: string | undefined): Predicate => ({
  verb: section === 'plan' ? 'is' : 'was',
  rest: section === 'plan' ? planned : done,
  ...(subject ? { subject } : {}),
});

const anaesthesia: OwnPhrase<'anaesthesia'> = {
  shape: 'own',
  name: 'anaesthesia',
  by: 'given',
  wording: {
    kind: {
      general: 'general',
      spinal: 'spinal',
      sedation: 'by sedation',
      'ankle block': 'by ankle block',
      'popliteal block': 'by popliteal block',
      'saphenous block': 'by saphenous block',
      local: 'local',
    },
  },
  present: ({ kind }, section) => {
    const how = kind ?? 'given as written';
    return ahead(section, how, spaced('planned', kind && `(${kind})`), undefined);
  },
  absent: ({ kind }, section) =>
    ahead(section, kind ? `not ${kind}` : 'recorded as absent', spaced('not planned', kind && `(${kind})`), undefined),
};

const hallux: OwnPhrase<'hallux-procedure'> = {
  shape: 'own',
  name: 'a procedure at the great toe',
  by: 'carried out',
  wording: {
    what: {
      'scarf osteotomy': 'scarf osteotomy',
      'akin osteotomy': 'Akin osteotomy',
      'chevron osteotomy': 'chevron osteotomy',
      'lapidus fusion': 'Lapidus fusion',
      'lateral release': 'lateral release',
      'hallux fusion': 'fusion of the first MTP joint',
    },
  },
  present: ({ what }, section) => ahead(section, 'done', 'planned', what),
  absent: ({ what }, section) => ahead(section, 'not done', 'not planned', what),
};

const pin: OwnPhrase<'pin-in-place'> = {
  shape: 'own',
  name: 'the pin',
  by: 'looked at',
  preposition: 'at',
  wording: {},
  present: () => was('in place'),
  absent: () => was('not in place'),
};

export const OPERATION_BESIDE_PHRASES = { anaesthesia, 'hallux-procedure': hallux, 'pin-in-place': pin };
