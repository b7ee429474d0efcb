import {
  commas,
  did,
  type OwnPhrase,
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
  wording: { load: { 'weight-bearing': 'weight-bearing', 'not weight-bearing': 'not weight-bearing' } },
  present: ({ load }) => was(load ?? 'given as written'),
  absent: ({ load }) => was(commas('recorded as absent', load)),
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
  wording: { than: { longer: 'longer', shorter: 'shorter' } },
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
    state: { congruent: 'congruent', subluxed: 'subluxed', dislocated: 'dislocated', narrowed: 'narrowed' },
  },
  present: ({ state }) => was(state ?? 'given as written'),
  absent: ({ state }) => was(state ? `not ${state}` : 'recorded as negative'),
};

const tear: TherePhrase<'tear'> = {
  shape: 'there',
  name: 'a tear of the plantar plate',
  wording: {
    extent: { partial: 'partial', full: 'full' },
    place: {
      distal: 'distal',
      midsubstance: 'midsubstance',
      proximal: 'proximal',
      medial: 'medial',
      lateral: 'lateral',
      central: 'central',
    },
  },
  present: ({ extent, place, share }) => {
    const where = commas(place, share);
    return spaced('a', extent, 'tear of the plantar plate', where && `(${where})`);
  },
  absent: ({ extent, place, share }) => {
    const where = commas(place, share);
    return spaced(extent, 'tear of the plantar plate', where && `(${where})`);
  },
};

const lesion: TherePhrase<'web-lesion'> = {
  shape: 'there',
  name: 'a lesion',
  wording: {
    what: { neuroma: 'neuroma', bursitis: 'bursitis', fibrosis: 'fibrosis', thickening: 'thickening' },
  },
  present: ({ what, size }) =>
    spaced(what === undefined ? 'a lesion' : what === 'neuroma' ? 'a neuroma' : what, size && `of ${size}`),
  absent: ({ what, size }) => spaced(what ?? 'lesion', size && `of ${size}`),
};

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
    },
  },
  present: ({ what }) =>
    what === undefined ? 'a finding given as written' : what === 'synovitis' ? what : withArticle(what),
  absent: ({ what }) => what ?? 'other finding',
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
