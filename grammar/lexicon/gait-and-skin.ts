import { amount, entry, words } from './entry.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const standing = {
  ...practice,
  kind: 'measure',
  bare: 'incomplete',
  sections: ['stand', 'exam'],
  subjects: ['foot'],
} as const;
const able = { able: ['manages'], painful: ['with pain'], weak: [] } as const;

/** Gait, standing on the toes, the arch, and the skin that carries the load. */
export const GAIT_AND_SKIN = [
  entry({
    ...standing,
    id: 'gait',
    subjects: ['foot', 'patient'],
    word: 'gait',
    leads: {
      antalgic: { gives: { kind: 'antalgic' }, noun: true },
      limp: { gives: { kind: 'limping' }, noun: true },
      limping: { gives: { kind: 'limping' }, noun: true },
    },
    slots: {
      kind: words(
        {
          normal: [],
          antalgic: [],
          limping: ['limp', 'limps'],
          'lateral loading': ['on the lateral border', 'lateral border'],
          'short push-off': ['no push-off', 'avoids push-off', 'reduced push-off'],
        },
        { many: true },
      ),
    },
    order: 35,
    technique: 'Barefoot, some metres, from behind and from the side.',
    meaning: 'Shows what the patient avoids: loading of the lateral border, or no push-off.',
  }),
  entry({
    ...standing,
    id: 'toe-walk',
    word: 'toe-walk',
    forms: ['toe walk', 'toe walking', 'tiptoe', 'tiptoe walk', 'walks on toes'],
    slots: { result: words(able, { many: true }) },
    order: 36,
    technique: 'Some steps on the toes.',
    meaning: 'Loads the MTP joints in extension.',
  }),
  entry({
    ...standing,
    id: 'heel-rise',
    word: 'heel-rise',
    forms: ['heel rise', 'heel raise', 'single heel rise', 'single leg heel rise'],
    slots: {
      result: words(able, { many: true }),
      heel: words({ inverts: ['heel inverts', 'inversion'], 'stays in valgus': ['heel stays in valgus'] }),
    },
    order: 37,
    technique: 'On one leg, fingers on the wall; watch whether the heel turns inwards.',
    meaning: 'Weak or without inversion: think of the tibialis posterior tendon.',
  }),
  entry({
    ...standing,
    id: 'arch',
    word: 'arch',
    leads: {
      flatfoot: { gives: { height: 'flat' }, noun: true },
      'flat foot': { gives: { height: 'flat' }, noun: true },
      'pes planus': { gives: { height: 'flat' }, noun: true },
      'pes cavus': { gives: { height: 'high' }, noun: true },
      'cavus foot': { gives: { height: 'high' }, noun: true },
    },
    slots: { height: words({ normal: [], flat: ['low', 'planus'], high: ['cavus'] }), degree: amount() },
    order: 38,
    technique: 'Standing, from the medial side.',
    meaning: 'Arch and forefoot load go together; treated with it where it drives the load.',
  }),
  entry({
    ...practice,
    id: 'callus',
    kind: 'sign',
    bare: 'present',
    sections: ['exam', 'stand'],
    subjects: ['ray', 'foot'],
    word: 'callus',
    forms: ['callosity', 'callosities', 'hyperkeratosis', 'ipk', 'calluses'],
    slots: {
      place: words(
        {
          plantar: [],
          head: ['met head', 'metatarsal head', 'the head', 'the met head'],
          'pip knuckle': ['pip', 'dorsal pip', 'knuckle'],
          tip: ['toe tip', 'tip of toe', 'pulp'],
          medial: [],
          lateral: [],
        },
        { locating: true, before: true, many: true, labels: ['under', 'beneath'] },
      ),
      degree: amount(),
      pain: words({ painful: ['tender', 'sore'], painless: ['non tender', 'nt'] }, { before: true }),
    },
    many: true,
    order: 44,
    technique: 'Look at the sole and at the knuckles; note ray and place.',
    meaning: 'Shows where load goes; usually absent over a torn plate (as another page reports it).',
  }),
  entry({
    ...practice,
    id: 'corn',
    kind: 'sign',
    bare: 'present',
    sections: ['exam', 'stand'],
    subjects: ['ray', 'web'],
    word: 'corn',
    forms: ['corns', 'heloma'],
    slots: {
      kind: words({ hard: [], soft: [] }, { before: true }),
      place: words(
        { 'pip knuckle': ['pip', 'dorsal pip', 'knuckle'], tip: ['toe tip'], plantar: [] },
        { locating: true, before: true },
      ),
      pain: words({ painful: ['tender', 'sore'], painless: ['non tender', 'nt'] }, { before: true }),
    },
    many: true,
    order: 45,
    technique: 'Over the knuckle, at the tip, between the toes.',
    meaning: 'Soft between the toes; hard where the shoe presses.',
  }),
  entry({
    ...practice,
    id: 'skin',
    kind: 'measure',
    bare: 'incomplete',
    sections: ['exam', 'stand'],
    subjects: ['foot', 'ray', 'web'],
    word: 'skin',
    forms: ['skin condition'],
    slots: {
      condition: words(
        {
          intact: ['healthy', 'good', 'ok'],
          fragile: ['thin', 'papery'],
          dry: [],
          macerated: ['maceration'],
          fissured: ['cracked', 'fissures'],
          blistered: ['blister', 'blisters'],
          fungal: ['tinea'],
        },
        { many: true },
      ),
    },
    many: true,
    order: 46,
    technique: 'Look between the toes and at the sole before tape, injection or incision.',
    meaning: 'Tape needs skin that bears it; an incision needs skin that heals.',
  }),
] as const;
