import { AMOUNT, commas, type OwnPhrase, type Said, spaced, type TherePhrase, was } from './phrase.ts';

const ABLE = { able: 'possible', painful: 'painful', weak: 'weak' } as const;

const gait: OwnPhrase<'gait'> = {
  shape: 'own',
  name: 'gait',
  by: 'watched',
  topic: 'gait',
  wording: {
    kind: {
      normal: 'normal',
      antalgic: 'antalgic',
      limping: 'limping',
      'lateral loading': 'loading the lateral border',
      'short push-off': 'short of push-off',
      'no push-off': 'without push-off',
      'avoids push-off': 'avoiding push-off',
    },
    degree: AMOUNT,
  },
  present: ({ kind, degree }) => was(commas(kind ?? (degree ? undefined : 'given as written'), degree)),
  absent: ({ kind, degree }) => was(commas(kind ? `not ${kind}` : 'recorded as absent', degree)),
};
const toeWalk: OwnPhrase<'toe-walk'> = {
  shape: 'own',
  name: 'walking on the toes',
  by: 'tested',
  topic: 'gait',
  wording: { result: ABLE },
  present: ({ result }) => was(result ?? 'given as written'),
  absent: ({ result }) => was(result ? `not ${result}` : 'recorded as absent'),
};
const heelRise: OwnPhrase<'heel-rise'> = {
  shape: 'own',
  name: 'the heel rise',
  by: 'tested',
  topic: 'gait',
  wording: {
    result: ABLE,
    heel: { inverts: 'the heel turning inwards', 'stays in valgus': 'the heel staying in valgus' },
  },
  present: ({ result, heel }) => was(commas(result ?? 'recorded', heel && `with ${heel}`)),
  absent: ({ result, heel }) => was(commas(result ? `not ${result}` : 'recorded as absent', heel && `with ${heel}`)),
};
const arch: OwnPhrase<'arch'> = {
  shape: 'own',
  name: 'the arch',
  by: 'examined',
  topic: 'gait',
  wording: {
    height: {
      normal: 'normal',
      flat: 'flat',
      low: 'low',
      high: 'high',
      cavovarus: 'high, with the heel in varus',
      planovalgus: 'flat, with the heel in valgus',
      unremarkable: 'unremarkable (extent not stated)',
    },
    degree: AMOUNT,
  },
  present: ({ height, degree }) => was(commas(height ?? 'given as written', degree)),
  absent: ({ height, degree }) => was(commas(height ? `not ${height}` : 'recorded as absent', degree)),
};

const hindfoot: OwnPhrase<'hindfoot'> = {
  shape: 'own',
  name: 'the hindfoot',
  by: 'examined',
  topic: 'gait',
  wording: { alignment: { neutral: 'in neutral', valgus: 'in valgus', varus: 'in varus' }, degree: AMOUNT },
  present: ({ alignment, angle, degree }) =>
    was(spaced(commas(alignment ?? 'given as written', degree), angle && `by ${angle}`)),
  absent: ({ alignment, angle, degree }) =>
    was(spaced(commas(alignment ? `not ${alignment}` : 'recorded as absent', degree), angle && `by ${angle}`)),
};

const PAIN = { painful: 'painful', painless: 'painless' } as const;
const callusText = ({ place, degree, pain, thickness, size, bleeding, kind }: Said<'callus'>): string => {
  const details = commas(place, size);
  return spaced(degree, pain, thickness, kind ?? 'callus', bleeding, details && `(${details})`);
};
const callus: TherePhrase<'callus'> = {
  shape: 'there',
  name: 'callus',
  wording: {
    place: {
      plantar: 'plantar',
      head: 'under the metatarsal head',
      'pip knuckle': 'over the PIP joint',
      'dorsal pip': 'on the back of the PIP joint',
      tip: 'at the tip of the toe',
      pulp: 'at the pulp of the toe',
      medial: 'medial',
      lateral: 'lateral',
    },
    degree: AMOUNT,
    pain: PAIN,
    thickness: { thin: 'thin', thick: 'thick' },
    bleeding: { 'with haemorrhage': 'with haemorrhage' },
    kind: { ipk: 'intractable plantar keratosis' },
  },
  present: callusText,
  absent: callusText,
};
const fatPad: OwnPhrase<'fat-pad'> = {
  shape: 'own',
  name: 'the fat pad',
  noun: 'toe',
  preposition: 'of',
  by: 'felt',
  wording: {
    state: {
      thin: 'thin',
      atrophic: 'atrophic',
      wasted: 'wasted',
      displaced: 'displaced',
      full: 'full',
      normal: 'normal',
      good: 'good',
    },
  },
  present: ({ state, thickness }) => was(commas(state, thickness && `${thickness} thick`) || 'given as written'),
  absent: ({ state, thickness }) =>
    was(commas(state ? `not ${state}` : 'recorded as absent', thickness && `${thickness} thick`)),
};
const corn: TherePhrase<'corn'> = {
  shape: 'there',
  name: 'a corn',
  wording: {
    kind: { hard: 'hard', soft: 'soft' },
    place: { 'pip knuckle': 'over the PIP joint', tip: 'at the tip of the toe', plantar: 'plantar' },
    pain: PAIN,
  },
  present: ({ kind, place, pain }) => spaced('a', pain, kind, 'corn', place && `(${place})`),
  absent: ({ kind, place, pain }) => spaced(pain, kind, 'corn', place && `(${place})`),
};
const skin: OwnPhrase<'skin'> = {
  shape: 'own',
  name: 'the skin',
  noun: 'toe',
  preposition: { ray: 'of', web: 'in', foot: 'of' },
  by: 'examined',
  wording: {
    condition: {
      intact: 'intact',
      healthy: 'healthy',
      good: 'good',
      ok: 'recorded as ok',
      fragile: 'fragile',
      thin: 'thin',
      papery: 'papery',
      dry: 'dry',
      macerated: 'macerated',
      fissured: 'fissured',
      blistered: 'blistered',
      fungal: 'affected by fungus',
      tinea: 'affected by tinea',
      atrophic: 'atrophic',
    },
  },
  present: ({ condition }) => was(condition ?? 'given as written'),
  absent: ({ condition }) => was(condition ? `not ${condition}` : 'recorded as absent'),
};

export const GAIT_AND_SKIN_PHRASES = {
  gait,
  'toe-walk': toeWalk,
  'heel-rise': heelRise,
  hindfoot,
  arch,
  callus,
  'fat-pad': fatPad,
  corn,
  skin,
};
