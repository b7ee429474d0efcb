import { date, duration, entry, type Lead, words } from './entry.ts';
import { DOSING } from './medicines.ts';
import { COURSE } from './treatment.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const shared = {
  ...practice,
  kind: 'treatment',
  bare: 'present',
  sections: ['tried', 'plan'],
  many: true,
} as const;
const ordered = { ...practice, kind: 'event', sections: ['plan'], subjects: ['patient'], many: true } as const;

const FOOTWEAR = {
  'wide shoes': ['wider shoes', 'soft wide shoes', 'wide toe box', 'wide fitting shoes'],
  'extra depth shoes': ['extra depth', 'extra depth footwear'],
  'larger shoes': ['bigger shoes', 'bigger boots', 'larger boots'],
  'flat shoes': ['flats', 'lower heels'],
  'cushioned shoes': ['soft shoes'],
} as const;
const RESTRICTIONS = {
  running: ['no running', 'stop running', 'avoid running'],
  jumping: ['no jumping', 'stop jumping', 'avoid jumping'],
  football: ['no football', 'off football', 'stop football'],
  sport: ['no sport', 'no sports', 'off sport', 'stop sport'],
  impact: ['no impact', 'avoid impact'],
  barefoot: ['no barefoot', 'no barefoot walking', 'avoid barefoot', 'avoid barefoot walking'],
  heels: ['no heels', 'no high heels', 'avoid heels'],
} as const;
const REFERRALS = {
  'vascular surgery': ['vascular', 'vascular team'],
  rheumatology: ['rheum'],
  podiatry: ['podiatrist'],
  orthotics: ['orthotist'],
  physiotherapy: [],
  'sports medicine': ['sports med'],
  'general practitioner': ['gp'],
  'diabetic foot clinic': ['foot clinic', 'mdt foot clinic', 'foot mdt', 'diabetic foot team'],
  'fracture clinic': [],
  'falls clinic': [],
  'dressing clinic': ['dressings clinic'],
  'preoperative assessment': ['preop clinic', 'pre op clinic', 'preop assessment'],
} as const;
/** A clinic's own name refers to it; the name of a speciality needs a word that does. */
const CLINICS = [
  ['diabetic foot clinic', 'foot clinic'],
  ['diabetic foot clinic', 'mdt foot clinic'],
  ['fracture clinic', 'fracture clinic'],
  ['falls clinic', 'falls clinic'],
  ['dressing clinic', 'dressing clinic'],
  ['preoperative assessment', 'preop clinic'],
  ['preoperative assessment', 'pre op clinic'],
  ['vascular surgery', 'vascular ref'],
  ['vascular surgery', 'vascular referral'],
  ['rheumatology', 'rheum ref'],
  ['rheumatology', 'rheum referral'],
] as const;

/** Every form of a table opens its finding with that value. */
const leadsOf = (slot: string, table: Readonly<Record<string, readonly string[]>>, withName = true) =>
  Object.fromEntries(
    Object.entries(table).flatMap(([value, others]) =>
      [...(withName ? [value] : []), ...others].map((form): [string, Lead] => [
        form,
        { gives: { [slot]: value }, noun: true },
      ]),
    ),
  );

/** Measures and advice beside tape, pad, boot and drug; where the patient is sent. */
export const ADVICE = [
  entry({
    ...shared,
    id: 'stretching',
    subjects: ['foot', 'patient'],
    word: 'stretching',
    forms: [
      'calf stretching',
      'calf stretches',
      'calf stretch',
      'stretches',
      'achilles stretches',
      'gastrocnemius stretches',
      'gastroc stretches',
    ],
    slots: { ...COURSE, often: DOSING.often },
    order: 114.1,
    technique: 'Calf, knee straight and bent, several times a day.',
    meaning: 'A tight calf raises the load of the forefoot.',
  }),
  entry({
    ...shared,
    id: 'physiotherapy',
    subjects: ['ray', 'foot', 'patient'],
    word: 'physiotherapy',
    forms: ['physio', 'physical therapy', 'exercises', 'toe exercises', 'foot exercises'],
    leads: {
      'scar massage': { gives: { of: 'scar massage' }, noun: true },
      'plantarflexion exercises': { gives: { of: 'plantarflexion' }, noun: true },
      'intrinsic exercises': { gives: { of: 'intrinsic muscles' }, noun: true },
    },
    slots: {
      ...COURSE,
      of: words(
        {
          strength: ['strengthening'],
          'intrinsic muscles': ['intrinsic', 'intrinsics'],
          'range of motion': ['rom'],
          plantarflexion: [],
          gait: ['gait training'],
          balance: [],
          'scar massage': [],
        },
        { many: true },
      ),
      often: DOSING.often,
    },
    order: 114.2,
    technique: 'Name what is exercised; no passive motion of a joint that a pin crosses.',
    meaning: 'Keeps strength and motion; does not close a torn plate.',
  }),
  entry({
    ...shared,
    id: 'footwear',
    subjects: ['foot', 'patient'],
    word: 'footwear',
    forms: ['shoe advice', 'footwear advice', 'shoe change'],
    leads: leadsOf('kind', FOOTWEAR),
    slots: { ...COURSE, kind: words(FOOTWEAR, { many: true }) },
    order: 112.5,
    technique: 'Name what is worn: width, depth, heel.',
    meaning: 'Room for the toes and less load in front.',
  }),
  entry({
    ...shared,
    id: 'rest-and-cold',
    subjects: ['foot', 'patient'],
    bare: 'incomplete',
    word: 'rest-and-cold',
    leads: {
      rest: { gives: { what: 'rest' }, noun: true, sections: ['tried'] },
      ice: { gives: { what: 'ice' }, noun: true },
      elevate: { gives: { what: 'elevation' } },
      elevation: { gives: { what: 'elevation' }, noun: true },
    },
    slots: { ...COURSE, what: words({ rest: [], ice: ['icing'], elevation: ['elevate'] }, { many: true }) },
    order: 109,
    technique: 'For how long, and what it changed.',
    meaning: 'Eases a flare; a course is judged by tape, sole and pad.',
  }),
  entry({
    ...shared,
    id: 'cast',
    subjects: ['foot', 'patient'],
    word: 'cast',
    leads: {
      'total contact cast': { gives: { kind: 'total contact' }, noun: true },
      tcc: { gives: { kind: 'total contact' }, noun: true },
    },
    slots: { ...COURSE, kind: words({ 'total contact': [] }) },
    order: 113.5,
    technique: 'Circulation and feeling first; who changes it and when.',
    meaning: 'Off-loads a foot without feeling; think of falls, skin and a clot.',
  }),
  entry({
    ...practice,
    id: 'walking-aid',
    kind: 'event',
    bare: 'present',
    sections: ['exam', 'history', 'operation', 'plan'],
    subjects: ['patient'],
    word: 'walking-aid',
    forms: ['walking aid', 'walking aids'],
    leads: {
      crutches: { gives: { what: 'crutches' }, noun: true },
      'with crutches': { gives: { what: 'crutches' } },
      'w crutches': { gives: { what: 'crutches' } },
      'on crutches': { gives: { what: 'crutches' } },
      'walking stick': { gives: { what: 'a stick' }, noun: true },
      'walking frame': { gives: { what: 'a frame' }, noun: true },
    },
    slots: { what: words({ crutches: [], 'a stick': [], 'a frame': [] }), for: duration() },
    order: 140.5,
    technique: 'Name it, and for how long.',
    meaning: 'Bears on falls and on help at home.',
  }),
  entry({
    ...ordered,
    id: 'restriction',
    bare: 'incomplete',
    word: 'restriction',
    leads: leadsOf('from', RESTRICTIONS, false),
    slots: { from: words(RESTRICTIONS, { many: true }), for: duration(), until: date(['until', 'till', 'til'], true) },
    order: 119,
    technique: 'What is to be left, and for how long.',
    meaning: 'Advice as given; the windows of a milestone are another matter.',
  }),
  entry({
    ...ordered,
    id: 'referral',
    bare: 'incomplete',
    word: 'referral',
    forms: ['refer', 'ref', 'refer to', 'referral to', 'referred to'],
    leads: Object.fromEntries(CLINICS.map(([to, form]): [string, Lead] => [form, { gives: { to }, noun: true }])),
    slots: {
      to: words(REFERRALS, { many: true }),
      urgency: words({ urgent: ['urgently'], routine: [], 'same day': [] }, { before: true }),
      in: duration(['in']),
    },
    order: 124,
    technique: 'To whom, how soon, and what is asked.',
    meaning: 'Planned; whether it was sent is for the letter.',
  }),
  entry({
    ...ordered,
    id: 'listing',
    bare: 'present',
    word: 'listed',
    forms: ['listed for surgery', 'waiting list', 'wait list', 'add to list'],
    leads: {
      daycase: { gives: { stay: 'day case' }, noun: true },
      'day case': { gives: { stay: 'day case' }, noun: true },
    },
    slots: { stay: words({ 'day case': ['daycase'], 'overnight stay': ['overnight'] }) },
    order: 122.5,
    technique: 'Where and how the stay is planned.',
    meaning: 'A place on a list is no consent.',
  }),
] as const;
