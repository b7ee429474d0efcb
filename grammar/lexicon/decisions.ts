import { entry, type Lead, within, words } from './entry.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

const DECISIONS = {
  'wants operation': [
    'keen for surgery',
    'keen for operation',
    'wants op',
    'wants surgery',
    'patient wants operation',
    'patient wants surgery',
  ],
  'declines operation': [
    'declined operation',
    'declines surgery',
    'declined surgery',
    'patient declines operation',
    'patient declines surgery',
  ],
  'prefers to wait': ['wants to wait', 'patient prefers to wait', 'patient wants to wait'],
  'transfer of care': ['care transferred'],
  'second opinion': ['wants second opinion'],
  'prefers no operation': ['prefers non op', 'prefers non operative', 'patient prefers non operative'],
} as const;
const leads: Readonly<Record<string, Lead>> = Object.fromEntries(
  Object.entries(DECISIONS).flatMap(([what, others]) =>
    [what, ...others].map((form) => [form, { gives: { what } }] as const),
  ),
);

export const DIAGNOSES = {
  'plantar plate tear': ['plate tear'],
  'plantar plate rupture': ['plate rupture'],
  'plantar plate injury': [],
  'mtp instability': ['mtpj instability', 'unstable mtp', 'lesser mtp instability'],
  'crossover toe': ['cross over toe'],
  'plantar plate sprain': ['plate sprain'],
  sesamoiditis: [],
  'stump neuroma': [],
  'recurrent/stump neuroma': [],
  'recurrent neuroma': [],
  metatarsalgia: [],
  'transfer metatarsalgia': [],
  'interdigital neuroma': ['neuroma', "morton's neuroma", 'morton neuroma', 'mortons neuroma'],
  'hammer toe': ['hammertoe'],
  'claw toe': [],
  'mallet toe': [],
  'hallux valgus': [],
  bunion: [],
  'hallux rigidus': [],
  freiberg: ["freiberg's disease", 'freiberg disease'],
  'stress fracture': [],
  'stress injury': [],
  synovitis: [],
  'mtp synovitis': [],
  capsulitis: [],
  bursitis: [],
  'intermetatarsal bursitis': [],
  'inflammatory arthritis': [],
  'rheumatoid arthritis': [],
  osteoarthritis: [],
  'mtp osteoarthritis': [],
  gout: [],
  'fat pad atrophy': [],
} as const;
/** What each counts as; a capsulitis is no synovitis, and a stress injury may be no fracture yet. */
const WIDER = within({
  'plantar plate tear': ['plantar plate rupture', 'plantar plate injury'],
  metatarsalgia: ['transfer metatarsalgia'],
  'hallux valgus': ['bunion'],
  bursitis: ['intermetatarsal bursitis'],
  'inflammatory arthritis': ['rheumatoid arthritis'],
  synovitis: ['mtp synovitis'],
  osteoarthritis: ['mtp osteoarthritis'],
});
/** After `imp` the diagnosis stands by itself. */
const diagnosed: Readonly<Record<string, Lead>> = Object.fromEntries(
  Object.entries<readonly string[]>(DIAGNOSES).flatMap(([what, others]) =>
    [what, ...others].map((form) => [form, { gives: { what }, sections: ['impression'], noun: true }] as const),
  ),
);

/** What the clinician thinks it is, and what the patient decided: as stated, never computed. */
export const DECISIONS_AND_DIAGNOSIS = [
  entry({
    ...practice,
    id: 'diagnosis',
    kind: 'event',
    bare: 'incomplete',
    sections: ['exam', 'impression', 'plan'],
    subjects: ['ray', 'web', 'foot', 'patient'],
    word: 'diagnosis',
    forms: ['working diagnosis', 'dx', 'impression'],
    leads: diagnosed,
    slots: {
      what: words(DIAGNOSES, { many: true, wider: WIDER }),
      phase: words({ acute: [], chronic: [], early: [], recurrent: [] }, { before: true }),
    },
    many: true,
    order: 101,
    technique: 'The working diagnosis in the words of the trade, with its ray or web.',
    meaning: 'Kept as the clinician states it; nothing is computed from it.',
  }),
  entry({
    ...practice,
    id: 'decision',
    kind: 'event',
    bare: 'incomplete',
    sections: ['plan', 'history', 'exam'],
    subjects: ['patient'],
    word: 'decision',
    leads,
    slots: { what: words(DECISIONS) },
    many: true,
    order: 123,
    technique: 'What the patient decided, in these words only; whether it was discussed is for the clinician to write.',
    meaning: 'A decision to wait or to decline stands above every computed next step.',
  }),
] as const;
