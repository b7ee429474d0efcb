import { amount, duration, entry, given, type Lead, leadsOf, number, pair, within, words } from './entry.ts';
import { HEADS } from './what-changes-it.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const ray = { sections: ['exam'], subjects: ['ray'] } as const;

/** Said of all toes at once. */
const TOES = {
  pink: 'pink',
  'warm and pink': 'warm and pink',
  pale: 'pale',
  white: 'white',
  blue: 'blue',
  dusky: 'dusky',
  cold: 'cold',
} as const;

const OTHER_SIDE = {
  'the other side': ['the other', 'other side', 'the other foot', 'other foot'],
  'the left': ['left', 'l'],
  'the right': ['right', 'r'],
} as const;
/** `warm cf L`: against the other foot; `warm` alone is also said of a toe that is well supplied. */
const WARMER = Object.fromEntries(
  Object.entries(OTHER_SIDE).flatMap(([than, forms]) =>
    [than, ...forms].flatMap((form) =>
      ['warm cf', 'hot cf', 'warmer cf', 'warmer than', 'hotter than', 'warm compared to', 'warm compared with'].map(
        (said): [string, Lead] => [`${said} ${form}`, { gives: { than }, noun: true }],
      ),
    ),
  ),
);
/** A toe that no longer comes down, as after an osteotomy; it counts as lifted, and is called by its name. */
const FLOATING = { floating: ['floating toe', 'floats'] } as const;
/** A foot swollen through and through, or with water in it. */
const SWOLLEN = {
  'diffuse swelling': ['diffusely swollen'],
  'whole foot swollen': [],
  oedema: [],
  'pitting oedema': [],
} as const;
/** Old wounds and fresh ones, by what they are. */
const WOUNDS = { ulcer: ['ulcers', 'ulceration'], incision: [] } as const;

/** Standing, skin and palpation, ray by ray. */
export const INSPECTION = [
  entry({
    ...practice,
    id: 'lifted',
    kind: 'sign',
    bare: 'present',
    sections: ['stand', 'exam'],
    subjects: ['ray'],
    word: 'lifted',
    forms: [
      'off the ground',
      'off the floor',
      'off floor',
      'no ground contact',
      "doesn't touch floor",
      "doesn't touch the floor",
      'does not touch the floor',
      'not touching the floor',
      'not touching floor',
      'does not touch the ground',
      'not touching the ground',
    ],
    leads: {
      ...leadsOf('kind', FLOATING),
      'touches floor': { absent: true },
      'touches the floor': { absent: true },
      'touches the ground': { absent: true },
      'touches ground': { absent: true },
      'touching the ground': { absent: true },
    },
    slots: {
      kind: words(FLOATING),
      by: number('mm', 0, 40, true),
      from: words({ floor: ['off floor', 'off the floor', 'off ground', 'off the ground'] }),
    },
    order: 40,
    technique: 'Patient standing: see whether the toe touches the ground; measure the gap.',
    meaning:
      'Loss of ground touch tracks the anatomical grade of the tear (NERY15). It supports a stage and never sets it.',
    source: 'NERY15',
    mark: 'read',
  }),
  entry({
    id: 'gap',
    kind: 'sign',
    bare: 'present',
    sections: ['stand', 'exam'],
    subjects: ['foot'],
    word: 'gap',
    forms: ['spread', 'splaying', 'splay', 'widened gap'],
    leads: leadsOf('kind', { 'v sign': [], 'daylight sign': [] }),
    slots: {
      kind: words({ 'v sign': [], 'daylight sign': [] }),
      between: pair(),
      size: amount(),
      by: number('mm', 0, 40, false),
    },
    many: true,
    order: 41,
    technique: 'Patient standing: compare the spaces between the toes.',
    meaning: 'Progressive widening of the space tracks the anatomical grade of the tear.',
    source: 'NERY15',
    mark: 'read',
  }),
  entry({
    ...practice,
    id: 'hallux-valgus',
    kind: 'sign',
    bare: 'present',
    sections: ['stand', 'exam'],
    subjects: ['foot'],
    word: 'hallux-valgus',
    forms: ['hv'],
    leads: leadsOf('kind', { bunion: [] }),
    slots: { kind: words({ bunion: [] }), degree: amount(), angle: number('°', 0, 90, true) },
    order: 42,
    technique: 'Patient standing: judge the lean of the great toe.',
    meaning: 'Often stands beside an unstable second ray and is treated with it when it crowds the toe.',
  }),
  entry({
    ...practice,
    ...ray,
    id: 'swelling',
    source: 'COUGH11',
    mark: 'from memory, to be verified',
    kind: 'sign',
    bare: 'present',
    word: 'swelling',
    forms: ['swollen', 'puffy'],
    leads: {
      boggy: { gives: { feel: 'boggy' } },
      effusion: { gives: { feel: 'effusion' }, noun: true },
      thickened: { gives: { feel: 'thickening' }, noun: true },
      thickening: { gives: { feel: 'thickening' }, noun: true },
    },
    slots: {
      degree: amount(),
      place: words({ dorsal: ['dorsally'], plantar: [] }, { locating: true }),
      feel: words({ boggy: [], effusion: [], thickening: ['thickened'] }, { before: true }),
    },
    order: 50,
    technique: 'Look and feel for fullness around the joint, from above and from the sole.',
    meaning: 'Supports stage 0 beside tenderness; tends to fall as the stage rises (from memory).',
  }),
  entry({
    ...practice,
    id: 'redness',
    kind: 'sign',
    bare: 'present',
    sections: ['exam'],
    subjects: ['ray', 'foot'],
    word: 'redness',
    forms: ['red', 'erythema'],
    slots: { degree: amount() },
    order: 51,
    technique: 'Compare the colour of the skin with the neighbouring toes.',
    meaning: 'With heat and fever, or spreading from a wound: infection until shown otherwise.',
  }),
  entry({
    ...practice,
    id: 'foot-swelling',
    kind: 'sign',
    bare: 'present',
    sections: ['exam'],
    subjects: ['foot'],
    word: 'foot-swelling',
    forms: ['foot swelling', 'foot swollen', 'swollen foot', 'swelling', 'swollen', 'puffy'],
    leads: {
      ...given(
        'place',
        {
          'midfoot swollen': 'midfoot',
          'midfoot swelling': 'midfoot',
          'forefoot swelling': 'forefoot',
          'forefoot swollen': 'forefoot',
          'swollen forefoot': 'forefoot',
        },
        { noun: true },
      ),
      ...leadsOf('kind', SWOLLEN),
    },
    slots: {
      degree: amount(),
      kind: words(SWOLLEN),
      place: words({ forefoot: [], midfoot: [], ankle: [] }, { locating: true }),
      for: duration(),
    },
    order: 50.5,
    technique: 'Of the foot as a whole, compared with the other; a joint is written with its ray.',
    meaning:
      'With heat and poor feeling an acute neuropathic foot until shown otherwise; it says nothing of one joint.',
  }),
  entry({
    ...practice,
    id: 'hot',
    kind: 'sign',
    bare: 'present',
    sections: ['exam'],
    subjects: ['ray', 'foot'],
    word: 'hot',
    forms: ['heat', 'hot joint', 'hot foot'],
    // Less than hot, and looked into as if it were: infection and an acute neuropathic foot begin so (common practice).
    leads: { ...WARMER, ...given('degree', { 'warm joint': 'warm', 'warm foot': 'warm' }, { noun: true }) },
    slots: {
      degree: words({ warm: [] }),
      // Given by the leading word alone: `hot the left` is no comparison.
      than: words({ 'the other side': [], 'the left': [], 'the right': [] }, { locating: true, labelled: true }),
    },
    order: 52,
    technique: 'Back of the hand, compared with the other foot. Ask about fever.',
    meaning: 'Hot joint with fever: infection. Hot swollen foot without feeling: acute neuropathic foot.',
  }),
  entry({
    ...practice,
    id: 'wound',
    kind: 'sign',
    bare: 'present',
    sections: ['exam'],
    subjects: ['ray', 'foot'],
    word: 'wound',
    forms: ['wounds'],
    leads: leadsOf('kind', WOUNDS),
    slots: {
      kind: words(WOUNDS),
      size: number('mm', 0, 200, false),
      // The second of two measures (`5 x 8 mm`).
      across: { ...number('mm', 0, 200, false), labelled: true },
      bone: words(
        { 'reaches bone': ['to bone'], 'probes to bone': ['probe to bone'], 'bone exposed': [] },
        { wider: within({ 'reaches bone': ['probes to bone', 'bone exposed'] }) },
      ),
      state: words(
        {
          clean: [],
          dry: [],
          'clean and dry': ['clean dry', 'dry and clean'],
          unremarkable: ['ok', 'fine'],
          healed: [],
          open: [],
          dehisced: [],
          gaping: [],
          discharging: [],
          oozing: [],
          pus: ['discharging pus', 'purulent'],
          spreading: ['spreading redness'],
        },
        { wider: within({ open: ['dehisced', 'gaping'], discharging: ['oozing'] }) },
      ),
    },
    order: 53,
    technique: 'Inspect the skin and every wound, pin track included; probe an ulcer for bone.',
    meaning: 'Pus, spreading redness or an ulcer that reaches bone is infection until shown otherwise: same day.',
  }),
  entry({
    ...practice,
    ...ray,
    id: 'tenderness',
    kind: 'sign',
    bare: 'present',
    subjects: ['ray', 'web'],
    word: 'tender',
    noun: 'tenderness',
    forms: ['tenderness', 'ttp', 'tender to palpation', 'tender on palpation'],
    leads: {
      nt: { absent: true },
      nttp: { absent: true },
      'non tender': { absent: true },
      nontender: { absent: true },
    },
    slots: {
      place: words(
        {
          plate: ['plantar plate'],
          plantar: ['plantarly', 'underneath', 'on the sole'],
          head: HEADS,
          shaft: ['met shaft', 'mt shaft', 'metatarsal shaft'],
          'phalanx base': ['base pp', 'base of pp', 'pp base', 'base of the proximal phalanx'],
          dorsal: ['dorsally', 'on top', 'dorsum'],
          sesamoids: [],
          'medial sesamoid': ['tibial sesamoid'],
          'lateral sesamoid': ['fibular sesamoid'],
        },
        { locating: true, before: true, many: true },
      ),
      degree: amount(),
    },
    many: true,
    order: 54,
    technique:
      'Press plantar at the base of the proximal phalanx (plate), then the head, the shaft, and the dorsum, each apart.',
    meaning: 'At the plate it points to the joint, at the shaft to bone, in the space to the nerve.',
  }),
  entry({
    ...practice,
    ...ray,
    id: 'perfusion',
    kind: 'sign',
    bare: 'incomplete',
    word: 'toe-colour',
    forms: ['colour', 'toe colour', 'color'],
    leads: {
      ...given('state', { 'pink warm': 'pink', 'warm pink': 'pink', 'pink and warm': 'pink', 'warm and pink': 'pink' }),
      ...given('state', TOES),
      ...Object.fromEntries(
        Object.entries(TOES).map(([form, state]): [string, Lead] => [
          `toes ${form}`,
          { gives: { state }, whole: true },
        ]),
      ),
    },
    slots: {
      state: words(
        { pink: [], 'warm and pink': [], pale: [], white: [], blue: [], dusky: [], cold: [] },
        { many: true, wider: within({ pink: ['warm and pink'], blue: ['dusky'] }) },
      ),
    },
    many: true,
    order: 69,
    technique: 'Colour and warmth against the neighbouring toes, before and after any reduction.',
    meaning: 'A cold, pale, white or blue toe is an emergency.',
  }),
] as const;
