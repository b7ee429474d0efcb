import { date, duration, entry, given, type Lead, leadsOf, number, within, words } from './entry.ts';
import { DOSING, NSAIDS } from './medicines.ts';
import { PROCEDURES, WIDER_PROCEDURES } from './operation.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** How a measure went: the time, how well it was kept, what it changed, when and why it ended. */
export const COURSE = {
  for: duration(),
  on: date(),
  // What is used every day is kept for the course (common practice); how often it was used stays as told.
  kept: words(
    {
      'well kept': ['kept', 'kept well'],
      daily: [],
      'poorly kept': ['not kept', 'kept poorly'],
      irregular: [],
      intermittent: [],
    },
    { wider: within({ 'well kept': ['daily'], 'poorly kept': ['irregular', 'intermittent'] }) },
  ),
  response: words(
    {
      better: ['improved', 'helped', 'relief'],
      'good relief': ['good effect'],
      'much better': ['a lot better'],
      partial: ['some relief', 'some help', 'partial relief', 'some benefit', 'with some benefit'],
      'a little better': ['helped a bit', 'a bit better'],
      'no-relief': [
        'no relief',
        'nil relief',
        'nil benefit',
        'no benefit',
        'no better',
        'no help',
        'unhelpful',
        'no effect',
      ],
      worse: ['aggravated', 'made worse'],
      'much worse': [],
    },
    { wider: within({ better: ['good relief', 'much better'], partial: ['a little better'], worse: ['much worse'] }) },
  ),
  stop: date(['until', 'till', 'stopped', 'stopped on', 'stopped in'], true),
  reason: words(
    {
      'skin reaction': [],
      rash: [],
      blisters: [],
      'skin irritation': [],
      'side effects': [],
      'stomach upset': [],
      discomfort: ['uncomfortable'],
      intolerance: ['not tolerated'],
      impractical: [],
      work: [],
      cost: [],
    },
    {
      labels: ['stopped for', 'stopped because of', 'stopped due to'],
      labelled: true,
      wider: within({
        'skin reaction': ['rash', 'blisters', 'skin irritation'],
        'side effects': ['stomach upset'],
        impractical: ['work'],
      }),
    },
  ),
};
const shared = {
  ...practice,
  kind: 'treatment',
  bare: 'present',
  sections: ['tried', 'plan'],
  many: true,
} as const;

const PADS = {
  "dancer's pad": ['dancers pad'],
  'gel pad': ['gel pads'],
  pad: ['pads'],
  dome: ['met dome', 'metatarsal dome', 'dome pads'],
} as const;
const INSERTS = {
  insert: [],
  'stiff sole': ['stiff soled shoe'],
  'stiff shoe': [],
  'carbon plate': ['carbon insert', 'carbon insole'],
  'rocker shoe': ['stiff rocker shoe', 'rocker soled shoe'],
  insole: ['insoles'],
  'total contact insole': ['tci'],
  'rocker sole': ['rocker'],
  'metatarsal bar': ['met bar'],
} as const;
const HEEL_SHOES = {
  'heel wedge shoe': ['wedge shoe'],
  'heel wb shoe': ['heel shoe'],
  'offloading shoe': [],
} as const;

/** Measures without operation. Their section says whether they were tried or are planned; nothing else does. */
export const TREATMENT = [
  entry({
    ...shared,
    id: 'tape',
    subjects: ['ray', 'foot', 'patient'],
    word: 'tape',
    forms: ['taping', 'strapping', 'toe tape', 'tape toe', 'tape the toe', 'strap toe'],
    leads: {
      'sling tape': { gives: { kind: 'sling' }, noun: true },
      'buddy tape': { gives: { kind: 'buddy' }, noun: true },
      'buddy taping': { gives: { kind: 'buddy' }, noun: true },
      'buddy strapping': { gives: { kind: 'buddy' }, noun: true },
    },
    slots: { ...COURSE, kind: words({ buddy: [], sling: [], plantarflexed: ['pf', 'in pf', 'in plantarflexion'] }) },
    order: 110,
    technique: 'Hold the proximal phalanx plantarflexed with a sling of tape, renewed as the skin allows.',
    meaning:
      'Protects the plate from dorsal translation. Not on numb, ischaemic or fragile skin, nor with a tape allergy.',
  }),
  entry({
    ...shared,
    id: 'pad',
    source: 'LEE14',
    mark: 'read',
    subjects: ['ray', 'foot', 'patient'],
    word: 'met-pad',
    forms: ['met pads', 'metatarsal pad', 'metatarsal pads'],
    leads: leadsOf('kind', PADS),
    slots: { ...COURSE, kind: words(PADS) },
    order: 111,
    technique: 'Place the pad near the metatarsal heads; published positions disagree, so judge by relief.',
    meaning:
      'Lowers the pressure under the forefoot (LEE14); where it sits best is disputed (PAD22 found no clear effect of place).',
  }),
  entry({
    ...shared,
    id: 'insert',
    subjects: ['foot', 'patient'],
    word: 'stiff-insert',
    forms: ['stiff insole'],
    leads: leadsOf('kind', INSERTS),
    slots: {
      ...COURSE,
      kind: words(INSERTS),
    },
    order: 112,
    technique: 'A stiff plate or sole that limits extension of the MTP joints.',
    meaning: 'Rests the plate during push-off.',
  }),
  entry({
    ...shared,
    sections: ['tried', 'operation', 'plan'],
    id: 'boot',
    subjects: ['foot', 'patient'],
    word: 'boot',
    forms: ['walker', 'walking boot', 'walker boot', 'air boot'],
    slots: COURSE,
    order: 113,
    technique: 'A walking boot, heel height matched on the other side.',
    meaning: 'Off-loads the forefoot; think of falls and of a clot before prescribing it.',
  }),
  entry({
    ...shared,
    sections: ['tried', 'operation', 'plan'],
    id: 'postop-shoe',
    subjects: ['foot', 'patient'],
    word: 'postop-shoe',
    forms: ['post op shoe', 'surgical shoe'],
    leads: leadsOf('kind', HEEL_SHOES),
    slots: { ...COURSE, kind: words(HEEL_SHOES) },
    order: 113,
    technique: 'A flat or heel-wedge shoe with a stiff sole.',
    meaning: 'Keeps the load off the forefoot while it heals; the note of the operation says for how long.',
  }),
  entry({
    ...shared,
    id: 'anti-inflammatory',
    source: 'LILUI24',
    mark: 'read',
    subjects: ['patient'],
    word: 'anti-inflammatory',
    forms: ['anti inflammatories', 'nsaid', 'nsaids'],
    leads: leadsOf('name', NSAIDS),
    slots: { ...COURSE, name: words(NSAIDS), ...DOSING },
    order: 114,
    technique: 'Ask every risk first: ulcer or bleed, kidney, heart, anticoagulant, pregnancy, allergy.',
    meaning: 'Eases pain for a time; does not stop deformity (LILUI24).',
  }),
  entry({
    ...shared,
    id: 'steroid',
    subjects: ['ray', 'web', 'foot', 'patient'],
    word: 'steroid',
    forms: [
      'cortisone',
      'steroid injection',
      'steroid injections',
      'steroid inj',
      'cortisone injection',
      'cortisone injections',
      'cortisone jab',
      'steroid jab',
      'corticosteroid',
    ],
    slots: {
      ...COURSE,
      count: number('', 1, 20, false, { labels: ['count', 'times'] }),
      guidance: words(
        {
          'us-guided': ['ultrasound guided', 'under ultrasound'],
          'x-ray-guided': ['fluoroscopy guided', 'image intensifier'],
          landmark: ['landmark guided', 'unguided'],
        },
        { before: true },
      ),
      agent: words({
        triamcinolone: [],
        methylprednisolone: [],
        betamethasone: [],
        dexamethasone: [],
        hydrocortisone: [],
      }),
      dose: number('mg', 0, 500, false),
      beside: words({ 'local anaesthetic': ['la'] }),
      by: words({ 'the general practitioner': ['gp', 'by gp'], elsewhere: [] }),
    },
    order: 115,
    technique: 'Name the place: which web space or which joint, and the date.',
    meaning: 'Weakens the plate further; dislocation after repeated local steroid was reported (REIS89, from memory).',
    source: 'REIS89',
    mark: 'from memory, to be verified',
  }),
] as const;

/** In a plan the name of a procedure plans it; washout and debridement may be of a wound or a callus. */
const PLANNED: Readonly<Record<string, Lead>> = Object.fromEntries(
  Object.entries(PROCEDURES)
    .filter(([procedure]) => procedure !== 'debridement' && procedure !== 'washout')
    .flatMap(([procedure, others]) =>
      [procedure, ...others].map((form) => [form, { gives: { procedure }, noun: true }] as const),
    ),
);

export const PLAN = [
  entry({
    ...practice,
    id: 'review',
    kind: 'event',
    bare: 'incomplete',
    sections: ['plan'],
    subjects: ['patient'],
    word: 'review',
    forms: ['rv', 'f/u', 'fu', 'rtc', 'follow up', 'see again', 'see'],
    leads: { sos: { gives: { when: 'if needed' } } },
    slots: {
      in: duration(['in', 'after']),
      on: date(['on']),
      when: words({ 'if needed': ['sos', 'prn'] }),
      with: words(
        {
          mri: [],
          film: ['xray', 'x-ray', 'xr', 'radiograph', 'new film'],
          us: ['ultrasound'],
          ct: [],
          bloods: [],
          results: [],
          scan: [],
        },
        { labels: ['with', 'w'], labelled: true, many: true },
      ),
    },
    order: 120,
    technique: 'State when; the interval counts from the visit.',
    meaning: 'Six to eight weeks is the usual time to judge a course without operation.',
  }),
  entry({
    ...practice,
    id: 'image',
    kind: 'event',
    bare: 'incomplete',
    sections: ['plan'],
    subjects: ['ray', 'web', 'foot', 'patient'],
    word: 'image',
    forms: ['imaging', 'request'],
    leads: {
      ...given(
        'by',
        { mri: 'mri', us: 'us', ultrasound: 'us', xray: 'xray', 'x-ray': 'xray', film: 'xray' },
        { noun: true },
      ),
      ...Object.fromEntries(
        ['xr', 'repeat xray', 'repeat xr', 'repeat film'].map((form): [string, Lead] => [
          form,
          { gives: { by: 'xray' }, noun: true },
        ]),
      ),
      ...given('by', { 'wb film': 'wb xray', 'wb xray': 'wb xray', 'wb xr': 'wb xray' }, { noun: true }),
      ...given('by', { 'repeat mri': 'mri', 'repeat us': 'us', ct: 'ct', 'wb ct': 'ct' }, { noun: true }),
    },
    slots: {
      by: words(
        {
          xray: ['x-ray', 'xr', 'film', 'radiograph'],
          'wb xray': ['wb film'],
          us: ['ultrasound'],
          'dynamic us': ['dynamic ultrasound'],
          mri: [],
          ct: [],
        },
        { wider: { 'wb xray': 'xray', 'dynamic us': 'us' } },
      ),
      in: duration(['in', 'at']),
    },
    many: true,
    order: 121,
    technique: 'Name the modality and the question.',
    meaning:
      'Imaging is judged by its concordance with the exam; nearly half of plates without symptoms look torn on ultrasound.',
    source: 'GREGG06',
    mark: 'read',
  }),
  entry({
    ...practice,
    id: 'operation',
    kind: 'procedure',
    bare: 'present',
    sections: ['plan'],
    subjects: ['ray', 'web', 'foot'],
    word: 'operation',
    forms: ['surgery', 'theatre', 'op'],
    leads: PLANNED,
    slots: {
      procedure: words(PROCEDURES, { many: true, wider: WIDER_PROCEDURES }),
      on: date(['on']),
    },
    many: true,
    order: 122,
    technique: 'State the ray and the procedure; consent is recorded by whoever takes it.',
    meaning: 'Elective after an adequate course and concordant imaging.',
  }),
] as const;
