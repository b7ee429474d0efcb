import { duration, entry, type Lead, number, words } from './entry.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** How much and how often, as written: an amount without unit stays one. */
export const DOSING = {
  dose: number('mg', 0, 5000, false),
  amount: number('', 0, 1000, true),
  often: words({
    'once a day': ['od', 'once daily'],
    'twice a day': ['bd', 'bid', 'twice daily'],
    'three times a day': ['tds', 'tid'],
    'four times a day': ['qds', 'qid'],
    weekly: ['once weekly', 'once a week'],
    'every two weeks': ['fortnightly'],
    'as needed': ['prn', 'as required', 'when needed'],
  }),
} as const;

/** Drugs by generic name that are met here and have no entry of their own; any other is quoted. */
export const MEDICINES = {
  paracetamol: [],
  codeine: [],
  'co-codamol': [],
  tramadol: [],
  morphine: [],
  amitriptyline: [],
  gabapentin: [],
  pregabalin: [],
  duloxetine: [],
  capsaicin: [],
  metformin: [],
  gliclazide: [],
  amlodipine: [],
  ramipril: [],
  lisinopril: [],
  losartan: [],
  bisoprolol: [],
  bendroflumethiazide: [],
  furosemide: [],
  'a statin': ['statin', 'atorvastatin', 'simvastatin'],
  levothyroxine: [],
  sertraline: [],
  donepezil: [],
  allopurinol: [],
  colchicine: [],
  omeprazole: [],
  lansoprazole: [],
  'a proton pump inhibitor': ['ppi'],
  'folic acid': ['folic'],
  flucloxacillin: ['fluclox'],
  terbinafine: [],
  'a contraceptive pill': ['ocp', 'contraceptive pill', 'combined pill'],
  'hormone replacement': ['hrt'],
  salbutamol: [],
  'a blue inhaler': ['blue inhaler'],
} as const;
const leads: Readonly<Record<string, Lead>> = Object.fromEntries(
  Object.entries(MEDICINES).flatMap(([name, others]) =>
    [name, ...others].map((form) => [form, { gives: { name }, noun: true }] as const),
  ),
);

/** Illnesses that bear on the anaesthetic and the healing and have no entry of their own. */
export const ILLNESSES = {
  hypertension: ['htn', 'high blood pressure'],
  asthma: [],
  copd: [],
  'atrial fibrillation': ['af'],
  stroke: ['cva'],
  'thyroid disease': ['hypothyroidism', 'hypothyroid', 'underactive thyroid'],
  prediabetes: ['prediabetic', 'borderline diabetes'],
  osteoporosis: [],
  osteopenia: [],
  psoriasis: [],
  uveitis: [],
  epilepsy: [],
  migraine: [],
  anaemia: [],
  'sleep apnoea': [],
  'high cholesterol': [],
} as const;
const illnessLeads: Readonly<Record<string, Lead>> = Object.fromEntries(
  Object.entries(ILLNESSES).flatMap(([what, others]) =>
    [what, ...others].map((form) => [form, { gives: { what }, noun: true }] as const),
  ),
);

export const MEDICINES_AND_ILLNESSES = [
  entry({
    ...practice,
    id: 'medicine',
    kind: 'treatment',
    bare: 'present',
    sections: ['history', 'exam', 'tried', 'plan'],
    subjects: ['patient'],
    word: 'medicine',
    forms: ['medicines', 'medication', 'medications', 'meds', 'regular meds', 'regular medication'],
    leads,
    slots: {
      name: words(MEDICINES),
      ...DOSING,
      for: duration(),
      response: words({
        better: ['helped', 'relief', 'good relief', 'good effect'],
        partial: ['some relief', 'some help', 'partial relief', 'helped a bit'],
        'no relief': ['no benefit', 'no help', 'no effect', 'unhelpful'],
      }),
    },
    many: true,
    order: 139,
    technique: 'By generic name; the drugs that speak against another drug or an operation have words of their own.',
    meaning: 'As told; no interaction is computed from it.',
  }),
  entry({
    ...practice,
    id: 'illness',
    kind: 'event',
    bare: 'present',
    sections: ['history', 'exam'],
    subjects: ['patient'],
    word: 'illness',
    forms: ['illnesses', 'medical problems', 'other illnesses'],
    leads: { ...illnessLeads, 'no pmh': { absent: true }, 'pmh nil': { absent: true } },
    slots: { what: words(ILLNESSES), for: duration() },
    many: true,
    order: 39,
    technique: 'Ask for what bears on the anaesthetic, the bone and the healing; quote what has no word here.',
    meaning: 'Kept as told.',
  }),
] as const;
