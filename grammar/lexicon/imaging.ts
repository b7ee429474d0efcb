import { entry, given, type Lead, leadsOf, number, within, words } from './entry.ts';
import { PLATE_PLACES, WIDER_PLACES } from './plate-places.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const film = { ...practice, kind: 'measure', sections: ['xray'] } as const;
const scan = { ...practice, kind: 'sign', sections: ['us', 'mri'] } as const;

const SHOWN = {
  synovitis: [],
  effusion: [],
  fracture: ['#', 'fx'],
  'stress fracture': ['stress #', 'stress fx'],
  'stress reaction': [],
  erosion: ['erosions'],
  osteoarthritis: ['oa'],
  osteophyte: ['osteophytes'],
  'degenerative change': ['degenerative changes'],
  'bone oedema': [],
  'bone bruise': [],
  'loose body': [],
  'periosteal reaction': ['periosteal rxn'],
  sclerosis: [],
  flattening: [],
  cyst: ['cysts'],
  callus: ['bony callus'],
  'joint space narrowing': [],
  'vessel calcification': [],
  'soft tissue swelling': [],
} as const;
/** Only ever denied: present they are a red flag, and stay reported. */
const ONLY_DENIED = {
  'no avn': 'avascular necrosis',
  'no gas': 'gas',
  'no om': 'osteomyelitis',
  'no lysis': 'lysis',
  'no charcot': 'neuropathic change',
} as const;

/** What an image was reported to show. An image without symptoms proves nothing. */
export const IMAGING = [
  entry({
    ...film,
    sections: ['xray', 'ct'],
    id: 'view',
    source: 'JFAS-WB',
    mark: 'read',
    bare: 'incomplete',
    subjects: ['foot'],
    word: 'view',
    leads: {
      ...given('projection', { ap: 'ap', lat: 'lat' }),
      ...given('load', {
        wb: 'weight-bearing',
        'weight bearing': 'weight-bearing',
        nwb: 'not weight-bearing',
        'non weight bearing': 'not weight-bearing',
      }),
    },
    slots: {
      load: words({ 'weight-bearing': ['wb'], 'not weight-bearing': ['nwb', 'non weight bearing'] }),
      projection: words({ ap: [], lat: [], obl: [] }, { many: true }),
    },
    order: 70,
    technique: 'Weight-bearing views of both feet where pain allows.',
    meaning: 'Angles change by a degree or two with load; a dislocation on a film without load is to be confirmed.',
  }),
  entry({
    ...film,
    id: 'hva',
    bare: 'incomplete',
    subjects: ['foot'],
    word: 'hva',
    forms: ['hallux valgus angle'],
    slots: { angle: number('°', 0, 90, true) },
    order: 71,
    technique: 'Angle between the first metatarsal and the proximal phalanx of the great toe.',
    meaning: 'Normal under 15° in the schemes read; the bands beyond it disagree, so the scheme must be named (PIQ09).',
    source: 'PIQ09',
    mark: 'read',
  }),
  entry({
    ...film,
    id: 'ima',
    bare: 'incomplete',
    subjects: ['foot'],
    word: 'ima',
    forms: ['intermetatarsal angle'],
    slots: { angle: number('°', 0, 45, true) },
    order: 72,
    technique: 'Angle between the first and second metatarsals.',
    meaning: 'Normal under 9° in the schemes read; the bands beyond it disagree (PIQ09).',
    source: 'PIQ09',
    mark: 'read',
  }),
  entry({
    ...film,
    id: 'protrusion',
    bare: 'incomplete',
    subjects: ['ray'],
    word: 'protrusion',
    leads: given('than', { longer: 'longer', shorter: 'shorter', long: 'long', 'slightly long': 'slightly long' }),
    slots: { than: words({ longer: [], shorter: [], long: [], 'slightly long': [] }), by: number('mm', 0, 30, true) },
    order: 73,
    technique: 'How far the metatarsal head lies beyond its neighbour.',
    meaning:
      'Published studies disagree on whether length matters: PROT and FLEI17 for, KAZ07 against in crossover toes.',
    source: 'PROT',
    mark: 'read',
  }),
  entry({
    ...film,
    id: 'film-joint',
    bare: 'incomplete',
    subjects: ['ray'],
    word: 'joint',
    leads: {
      ...given('state', {
        congruent: 'congruent',
        subluxed: 'subluxed',
        subluxated: 'subluxed',
        dislocated: 'dislocated',
      }),
      dislocation: { gives: { state: 'dislocated' }, noun: true },
      subluxation: { gives: { state: 'subluxed' }, noun: true },
    },
    slots: {
      state: words(
        {
          congruent: [],
          normal: [],
          subluxed: ['subluxated', 'subluxation'],
          dislocated: ['dislocation'],
          narrowed: [],
        },
        { wider: { normal: 'congruent' } },
      ),
      direction: words(
        { medial: ['medially', 'med'], lateral: ['laterally', 'lat'], dorsal: ['dorsally'], dorsomedial: [] },
        { before: true },
      ),
    },
    order: 74,
    technique: 'MTP joint of the ray on the film.',
    meaning: 'Imaging moves a stage only by showing a dislocation.',
  }),
  entry({
    ...scan,
    id: 'tear',
    bare: 'present',
    subjects: ['ray'],
    word: 'tear',
    forms: ['plate tear', 'plantar plate tear', 'pp tear', 'torn', 'plate torn', 'plantar plate torn'],
    leads: {
      'plate rupture': { gives: { kind: 'rupture' }, noun: true },
      'plate intact': { absent: true },
      'intact plate': { absent: true },
    },
    slots: {
      kind: words({ rupture: [] }),
      extent: words(
        {
          partial: ['partial thickness'],
          'high grade partial': [],
          'low grade partial': [],
          full: ['complete', 'full thickness'],
        },
        { before: true, wider: within({ partial: ['high grade partial', 'low grade partial'] }) },
      ),
      shape: words({ transverse: [], longitudinal: ['lengthwise'] }, { many: true, before: true }),
      place: words(PLATE_PLACES, { many: true, locating: true, before: true, wider: WIDER_PLACES }),
      share: number('%', 0, 100, false, { trails: ['of width', 'of the width', 'of its width'] }),
      size: number('mm', 0, 40, false),
    },
    order: 75,
    technique: 'State ray, extent, place and share of the width.',
    meaning:
      'Most tears start laterally at the distal insertion (LINK16). Nearly half of plates without symptoms look torn on ultrasound (GREGG06).',
    source: 'GREGG06',
    mark: 'read',
  }),
  entry({
    ...scan,
    id: 'web-lesion',
    bare: 'present',
    subjects: ['web'],
    word: 'lesion',
    forms: ['web lesion'],
    leads: given(
      'what',
      { neuroma: 'neuroma', bursitis: 'bursitis', fibrosis: 'fibrosis', thickening: 'thickening', bursa: 'bursa' },
      { noun: true },
    ),
    slots: {
      what: words(
        { neuroma: [], bursitis: [], bursa: [], fibrosis: [], thickening: [] },
        { wider: { bursa: 'bursitis' } },
      ),
      size: number('mm', 0, 40, true),
    },
    order: 76,
    technique: 'State the space, the kind and the size.',
    meaning:
      'Beside an unstable joint web thickening is not proof of a neuroma: of 36 second-MTP tears 35 had a second-space change and none a definite neuroma (UMANS14).',
    source: 'UMANS14',
    mark: 'read',
  }),
  entry({
    ...scan,
    sections: ['xray', 'us', 'mri', 'ct'],
    id: 'image-other',
    bare: 'incomplete',
    subjects: ['ray', 'web', 'foot'],
    word: 'other',
    leads: {
      ...leadsOf('what', SHOWN),
      ...Object.fromEntries(
        Object.entries(ONLY_DENIED).map(([form, what]): [string, Lead] => [
          form,
          { absent: true, gives: { what }, noun: true },
        ]),
      ),
    },
    slots: {
      what: words(
        {
          ...SHOWN,
          'avascular necrosis': [],
          gas: [],
          osteomyelitis: [],
          lysis: [],
          'neuropathic change': [],
        },
        { wider: { 'bone bruise': 'bone oedema' } },
      ),
      degree: words(
        { slight: ['small'], minor: [], tiny: [], mild: [], moderate: [], marked: [], severe: [] },
        { before: true, wider: { minor: 'slight', tiny: 'slight', severe: 'marked' } },
      ),
      size: number('mm', 0, 60),
      displacement: words({ undisplaced: ['not displaced'], displaced: [] }),
      pattern: words({ transverse: [], oblique: [], spiral: [] }, { before: true }),
      site: words(
        {
          neck: ['mt neck', 'met neck'],
          shaft: ['mt shaft', 'met shaft'],
          base: ['mt base'],
          head: ['mth', 'mt head', 'met head'],
        },
        { before: true },
      ),
    },
    many: true,
    order: 77,
    technique: 'Anything else reported; quote what has no word here.',
    meaning: 'Kept as reported.',
  }),
] as const;
