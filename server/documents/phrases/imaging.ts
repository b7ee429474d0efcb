import {
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

const view: OwnPhrase<'view'> = {
  shape: 'own',
  name: 'the view',
  by: 'taken',
  topic: 'angles',
  wording: {
    load: { 'weight-bearing': 'weight-bearing', 'not weight-bearing': 'not weight-bearing' },
    projection: { ap: 'from the front', lat: 'from the side', obl: 'oblique' },
  },
  present: ({ load, projection }) => was(load || projection ? spaced(load, projection) : 'given as written'),
  absent: ({ load, projection }) => was(commas('recorded as absent', load, projection)),
};

const hva: OwnPhrase<'hva'> = {
  shape: 'own',
  name: 'the hallux valgus angle',
  by: 'measured',
  topic: 'angles',
  wording: {},
  present: ({ angle }) => was(angle ?? 'given as written'),
  absent: ({ angle }) => was(commas('recorded as absent', angle)),
};

const ima: OwnPhrase<'ima'> = { ...hva, name: 'the intermetatarsal angle' };

const protrusion: SubjectPhrase<'protrusion'> = {
  shape: 'subject',
  noun: 'metatarsal',
  name: 'the protrusion',
  by: 'measured',
  wording: { than: { longer: 'longer', shorter: 'shorter', long: 'long', 'slightly long': 'slightly long' } },
  present: ({ than, by }) =>
    than
      ? was(spaced(than, by && `by ${by}`))
      : did('had', by ? `a protrusion of ${by}` : `a protrusion with ${UNREAD_RESULT}`),
  absent: ({ than, by }) =>
    than ? was(spaced('not', than, by && `by ${by}`)) : did('had', spaced('no protrusion', by && `of ${by}`)),
};

const joint: SubjectPhrase<'film-joint'> = {
  shape: 'subject',
  noun: 'MTP joint',
  name: 'the state of the joint',
  wording: {
    state: {
      congruent: 'congruent',
      normal: 'normal',
      subluxed: 'subluxed',
      dislocated: 'dislocated',
      narrowed: 'narrowed',
    },
    direction: { medial: 'medially', lateral: 'laterally', dorsal: 'dorsally', dorsomedial: 'dorsomedially' },
  },
  present: ({ state, direction }) => was(spaced(state ?? 'given as written', direction)),
  absent: ({ state, direction }) => was(spaced(state ? `not ${state}` : 'recorded as negative', direction)),
};

const tear: TherePhrase<'tear'> = {
  shape: 'there',
  name: 'a tear of the plantar plate',
  wording: {
    kind: { rupture: 'rupture' },
    extent: {
      partial: 'partial',
      'high grade partial': 'high-grade partial',
      'low grade partial': 'low-grade partial',
      full: 'full',
    },
    shape: { transverse: 'transverse', longitudinal: 'lengthwise' },
    place: {
      distal: 'distal',
      insertion: 'at the insertion',
      'phalangeal insertion': 'at the phalangeal insertion',
      midsubstance: 'midsubstance',
      proximal: 'proximal',
      medial: 'medial',
      lateral: 'lateral',
      central: 'central',
    },
  },
  present: ({ kind = 'tear', extent, shape, place, share, size }) => {
    const where = commas(place, share, size);
    return spaced('a', extent, shape, `${kind} of the plantar plate`, where && `(${where})`);
  },
  absent: ({ kind = 'tear', extent, shape, place, share, size }) => {
    const where = commas(place, share, size);
    return spaced(extent, shape, `${kind} of the plantar plate`, where && `(${where})`);
  },
};

const lesion: TherePhrase<'web-lesion'> = {
  shape: 'there',
  name: 'a lesion',
  wording: {
    what: { neuroma: 'neuroma', bursitis: 'bursitis', fibrosis: 'fibrosis', thickening: 'thickening', bursa: 'bursa' },
  },
  present: ({ what, size }) =>
    spaced(
      what === undefined ? 'a lesion' : what === 'neuroma' || what === 'bursa' ? `a ${what}` : what,
      size && `of ${size}`,
    ),
  absent: ({ what, size }) => spaced(what ?? 'lesion', size && `of ${size}`),
};

/** Said without an article. */
const MASS_NOUNS: readonly string[] = [
  'degenerative change',
  'synovitis',
  'osteoarthritis',
  'bone oedema',
  'vessel calcification',
  'soft tissue swelling',
  'avascular necrosis',
  'gas',
  'osteomyelitis',
  'neuropathic change',
];
const otherText = ({ what, degree, displacement, pattern, site, size }: Said<'image-other'>): string =>
  spaced(degree, displacement, pattern, what, site, size && `of ${size}`);
const other: TherePhrase<'image-other'> = {
  shape: 'there',
  name: 'another finding',
  wording: {
    what: {
      synovitis: 'synovitis',
      effusion: 'effusion',
      fracture: 'fracture',
      'stress fracture': 'stress fracture',
      'stress reaction': 'stress reaction of bone',
      erosion: 'erosion',
      osteoarthritis: 'osteoarthritis',
      osteophyte: 'osteophyte',
      'degenerative change': 'degenerative change',
      'bone oedema': 'bone oedema',
      'bone bruise': 'bone bruise',
      'loose body': 'loose body',
      'periosteal reaction': 'periosteal reaction',
      sclerosis: 'sclerosis',
      flattening: 'flattening',
      cyst: 'cyst',
      callus: 'bony callus',
      'joint space narrowing': 'narrowing of the joint space',
      lysis: 'lysis',
      'vessel calcification': 'vessel calcification',
      'soft tissue swelling': 'soft tissue swelling',
      'avascular necrosis': 'avascular necrosis',
      gas: 'gas',
      osteomyelitis: 'osteomyelitis',
      'neuropathic change': 'neuropathic change',
    },
    degree: {
      slight: 'small',
      minor: 'minor',
      tiny: 'tiny',
      mild: 'mild',
      moderate: 'moderate',
      marked: 'marked',
      severe: 'severe',
    },
    displacement: { undisplaced: 'undisplaced', displaced: 'displaced' },
    pattern: { transverse: 'transverse', oblique: 'oblique', spiral: 'spiral' },
    site: { neck: 'at the neck', shaft: 'at the shaft', base: 'at the base', head: 'at the head' },
  },
  present: (said) => {
    const text = otherText(said);
    if (said.what === undefined) return spaced('a finding given as written', text);
    return MASS_NOUNS.includes(said.what) ? text : withArticle(text);
  },
  absent: (said) => (said.what ? otherText(said) : spaced('other finding', otherText(said))),
};

export const IMAGING_PHRASES = {
  view,
  hva,
  ima,
  protrusion,
  'film-joint': joint,
  tear,
  'web-lesion': lesion,
  'image-other': other,
};
