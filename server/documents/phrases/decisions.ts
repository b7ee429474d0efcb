import { type OwnPhrase, spaced, was } from './phrase.ts';

const DIAGNOSES = {
  'plantar plate tear': 'plantar plate tear',
  'mtp instability': 'MTP joint instability',
  'crossover toe': 'crossover toe',
  metatarsalgia: 'metatarsalgia',
  'interdigital neuroma': 'interdigital neuroma',
  'hammer toe': 'hammer toe',
  'claw toe': 'claw toe',
  'mallet toe': 'mallet toe',
  'hallux valgus': 'hallux valgus',
  'hallux rigidus': 'hallux rigidus',
  freiberg: 'Freiberg disease',
  'stress fracture': 'stress fracture',
  synovitis: 'synovitis',
  bursitis: 'bursitis',
  'inflammatory arthritis': 'inflammatory arthritis',
  osteoarthritis: 'osteoarthritis',
  'plantar plate sprain': 'plantar plate sprain',
  sesamoiditis: 'sesamoiditis',
  'stump neuroma': 'stump neuroma',
  gout: 'gout',
  'fat pad atrophy': 'fat pad atrophy',
} as const;
const STATED = '(stated by the clinician)';

const diagnosis: OwnPhrase<'diagnosis'> = {
  shape: 'own',
  name: 'the working diagnosis',
  by: 'made',
  preposition: { ray: 'at', web: 'in', foot: 'of' },
  wording: { what: DIAGNOSES, phase: { acute: 'acute', chronic: 'chronic', early: 'early', recurrent: 'recurrent' } },
  present: ({ what, phase }) => ({ verb: 'is', rest: spaced(phase, what ?? 'given as written', STATED) }),
  absent: ({ what, phase }) => ({ verb: 'is', rest: spaced('not', phase, what ?? 'made', STATED) }),
};

const decision: OwnPhrase<'decision'> = {
  shape: 'own',
  name: "the patient's decision",
  by: 'recorded',
  wording: {
    what: {
      'wants operation': 'to have an operation',
      'declines operation': 'against an operation',
      'prefers to wait': 'to wait',
      'transfer of care': 'to transfer the care',
      'second opinion': 'to hear a second opinion',
      'prefers no operation': 'for treatment without operation',
    },
  },
  present: ({ what }) => was(what ?? 'given as written'),
  absent: ({ what }) => was(spaced('not', what ?? 'made')),
};

export const DECISION_PHRASES = { diagnosis, decision };
