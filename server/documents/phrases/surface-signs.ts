import {
  AMOUNT,
  AMOUNT_ADVERBS,
  commas,
  did,
  type OwnPhrase,
  type Said,
  type SubjectPhrase,
  spaced,
  type TherePhrase,
  UNREAD_RESULT,
  was,
  withArticle,
} from './phrase.ts';

const REDUCIBLE = { reducible: 'reducible', irreducible: 'irreducible' } as const;
const POSITIVE = { result: { positive: 'positive' } } as const;

const shapeText = ({ shape, rigidity, degree }: Said<'toe-shape'>): string =>
  spaced(degree, rigidity, shape ? `${shape} deformity` : 'deformity of the toe');
const shape: TherePhrase<'toe-shape'> = {
  shape: 'there',
  name: 'deformity of the toe',
  wording: {
    shape: { claw: 'claw', hammer: 'hammer', mallet: 'mallet' },
    rigidity: { flexible: 'flexible', 'semi-rigid': 'semi-rigid', fixed: 'fixed' },
    degree: AMOUNT,
  },
  present: (said) => withArticle(shapeText(said)),
  absent: shapeText,
};

const subluxedText = ({ degree, direction, reducibility }: Said<'subluxed'>): string =>
  commas(spaced(degree, 'subluxed', direction), reducibility);
const subluxed: SubjectPhrase<'subluxed'> = {
  shape: 'subject',
  noun: 'MTP joint',
  name: 'subluxation',
  wording: {
    direction: { dorsal: 'dorsally', medial: 'medially', lateral: 'laterally', dorsomedial: 'dorsomedially' },
    reducibility: REDUCIBLE,
    degree: AMOUNT_ADVERBS,
  },
  present: (said) => was(subluxedText(said)),
  absent: (said) => was(`not ${subluxedText(said)}`),
};

const reducibility: SubjectPhrase<'reducibility'> = {
  shape: 'subject',
  noun: 'ray',
  name: 'reducibility',
  by: 'tested',
  wording: { result: REDUCIBLE },
  present: ({ result }) => (result ? was(result) : did('had', `a position with ${UNREAD_RESULT}`)),
  absent: ({ result }) => was(result ? `not ${result}` : 'recorded as not reducible'),
};

const bruising: TherePhrase<'bruising'> = {
  shape: 'there',
  name: 'bruising',
  wording: { place: { plantar: 'plantar', dorsal: 'dorsal' }, degree: AMOUNT },
  present: ({ place, degree }) => spaced(degree, place, 'bruising'),
  absent: ({ place, degree }) => spaced(degree, place, 'bruising'),
};

const infection: TherePhrase<'infection-sign'> = {
  shape: 'there',
  name: 'a sign of infection',
  by: 'looked for',
  wording: {
    what: {
      pus: 'pus',
      cellulitis: 'cellulitis',
      'spreading redness': 'spreading redness',
      'tracking redness': 'tracking redness',
      discharge: 'discharge',
      ooze: 'ooze',
      exudate: 'exudate',
    },
    degree: AMOUNT,
  },
  present: ({ what, degree }) => spaced(degree, what ?? 'signs of infection'),
  absent: ({ what, degree }) => spaced(degree, what ?? 'sign of infection'),
};

const nerveText = ({ what, when, for: time }: Said<'nerve-symptom'>): string =>
  spaced(what ?? 'nerve symptoms', when, time && `for ${time}`);
const nerve: TherePhrase<'nerve-symptom'> = {
  shape: 'there',
  name: 'burning or shocks',
  by: 'asked about',
  wording: {
    what: {
      burning: 'burning',
      'electric shocks': 'electric shocks',
      shooting: 'shooting',
      'pins and needles': 'pins and needles',
      tingling: 'tingling',
    },
    when: { 'at night': 'at night', 'in shoes': 'in shoes', 'on walking': 'on walking' },
  },
  present: nerveText,
  absent: nerveText,
};

const neurovascular: OwnPhrase<'neurovascular'> = {
  shape: 'own',
  name: 'the neurovascular state',
  by: 'examined',
  wording: { state: { intact: 'recorded as intact', unremarkable: 'unremarkable (extent not stated)' } },
  present: ({ state }) => was(state ?? 'given as written'),
  absent: ({ state }) => was(state ? `not ${state}` : 'recorded as absent'),
};

const fork: OwnPhrase<'tuning-fork'> = {
  shape: 'own',
  name: 'the tuning fork test',
  by: 'done',
  preposition: 'at',
  wording: POSITIVE,
  present: ({ result }) => was(result ?? 'given as written'),
  absent: ({ result }) => was(commas('negative', result)),
};
const hop: OwnPhrase<'hop-test'> = {
  shape: 'own',
  name: 'the hop test',
  by: 'done',
  wording: POSITIVE,
  present: ({ result }) => was(result ?? 'given as written'),
  absent: ({ result }) => was(commas('negative', result)),
};
const lisfranc: OwnPhrase<'lisfranc'> = {
  shape: 'own',
  name: 'the examination of the tarsometatarsal joints',
  by: 'done',
  wording: { result: { positive: 'positive', tender: 'painful', 'not tender': 'without tenderness' } },
  present: ({ result }) => was(result ?? 'given as written'),
  absent: ({ result }) => was(commas('negative', result)),
};
const vibration: OwnPhrase<'vibration'> = {
  shape: 'own',
  name: 'vibration sense',
  by: 'tested',
  topic: 'feeling',
  wording: {
    state: { normal: 'normal', reduced: 'reduced' },
    level: { 'to the ankles': 'to the ankles', 'to the toes': 'to the toes' },
  },
  present: ({ state, level }) => was(spaced(state ?? 'present', level)),
  absent: ({ state, level }) => was(commas(spaced('absent', level), state)),
};
const grind: TherePhrase<'grind'> = {
  shape: 'there',
  name: 'grinding',
  by: 'tested for',
  wording: { pain: { painful: 'painful', painless: 'painless' } },
  present: ({ pain }) => spaced(pain, 'grinding'),
  absent: ({ pain }) => spaced(pain, 'grinding'),
};
const motion: OwnPhrase<'mtp-motion'> = {
  shape: 'own',
  name: 'the range of motion',
  noun: 'MTP joint',
  by: 'examined',
  wording: {
    extent: { full: 'full', limited: 'limited' },
    pain: { painful: 'painful', painless: 'painless' },
  },
  present: ({ arc, extent, pain }) => was(commas(arc, extent, pain) || 'given as written'),
  absent: ({ arc, extent, pain }) => was(commas('recorded as absent', arc, extent, pain)),
};

export const SURFACE_SIGN_PHRASES = {
  'toe-shape': shape,
  subluxed,
  reducibility,
  bruising,
  'infection-sign': infection,
  'nerve-symptom': nerve,
  neurovascular,
  'tuning-fork': fork,
  'hop-test': hop,
  lisfranc,
  vibration,
  grind,
  'mtp-motion': motion,
};
