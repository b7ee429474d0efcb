import { DIAGNOSES } from '../../../grammar/lexicon/decisions.ts';
import { asNamed, type OwnPhrase, spaced, was } from './phrase.ts';

const NAMES = {
  ...asNamed(DIAGNOSES),
  'mtp instability': 'MTP joint instability',
  freiberg: 'Freiberg disease',
  'mtp synovitis': 'MTP synovitis',
  'mtp osteoarthritis': 'MTP osteoarthritis',
  'recurrent/stump neuroma': 'recurrent or stump neuroma',
} as const;
const STATED = '(stated by the clinician)';

const diagnosis: OwnPhrase<'diagnosis'> = {
  shape: 'own',
  name: 'the working diagnosis',
  by: 'made',
  preposition: { ray: 'at', web: 'in', foot: 'of' },
  wording: { what: NAMES, phase: { acute: 'acute', chronic: 'chronic', early: 'early', recurrent: 'recurrent' } },
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
