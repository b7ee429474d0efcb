import { MEDICINES, NSAIDS } from '../../../grammar/lexicon/medicines.ts';
import { asNamed, commas, OFTEN, type OwnPhrase, type Said, spaced, type TherePhrase, was } from './phrase.ts';

type Drug = 'anticoagulant' | 'antiplatelet' | 'antirheumatic' | 'biologic' | 'bisphosphonate' | 'steroid-tablets';

const forTime = (time: string | undefined): string | undefined => time && `for ${time}`;
type Dosed = { readonly [S in 'name' | 'why' | 'for' | 'on' | 'dose' | 'amount' | 'often']?: string };
/** How much and how often; an amount without unit says so. */
export const dosed = ({ dose, amount, often }: Dosed): string =>
  commas(dose, amount && `${amount} (unit not stated)`, often);
/** What was taken, by its name where one was given. */
const taken = <F extends Drug>(name: string): Omit<OwnPhrase<F>, 'wording'> => {
  const say = (how: string) => (said: Said<F>) => {
    const { name: drug, for: time, on, why, ...dosing } = said as Dosed;
    return was(
      commas(spaced(how, why ? `for ${why}` : forTime(time)), dosed(dosing), on && `last ${on}`),
      drug ? `${name} (${drug})` : name,
    );
  };
  return { shape: 'own', name, by: 'asked about', topic: 'drugs', present: say('taken'), absent: say('not taken') };
};

const THINNING = {
  'atrial fibrillation': 'atrial fibrillation',
  'a heart valve': 'a heart valve',
  'a mechanical heart valve': 'a mechanical heart valve',
  'a stroke': 'a stroke',
  'a tia': 'a TIA',
  'a stent': 'a stent',
} as const;
const RISK = { shape: 'there', by: 'asked about', wording: {} } as const;
const dated =
  (text: string) =>
  ({ on }: { readonly on?: string }): string =>
    spaced(text, on);

const allergy: TherePhrase<'allergy'> = {
  shape: 'there',
  name: 'an allergy',
  by: 'asked about',
  wording: {
    to: {
      tape: 'tape',
      adhesive: 'adhesive',
      plaster: 'sticking plaster',
      latex: 'latex',
      metal: 'metal',
      nickel: 'nickel',
      iodine: 'iodine',
      chlorhexidine: 'chlorhexidine',
      penicillin: 'penicillin',
      'any drug': 'any drug known',
      'anti-inflammatory': 'an anti-inflammatory',
      ...asNamed(NSAIDS),
      'local anaesthetic': 'a local anaesthetic',
      lidocaine: 'lidocaine',
      ...asNamed(MEDICINES),
      aspirin: 'aspirin',
      clopidogrel: 'clopidogrel',
      warfarin: 'warfarin',
      heparin: 'heparin',
      methotrexate: 'methotrexate',
      sulfasalazine: 'sulfasalazine',
    },
    reaction: {
      rash: 'rash',
      'rash on contact': 'rash on contact',
      anaphylaxis: 'anaphylaxis',
      'stomach upset': 'stomach upset',
      nausea: 'nausea',
    },
  },
  present: ({ to, reaction }) =>
    to && reaction === 'rash on contact'
      ? `a rash from ${to}`
      : spaced('an allergy', to && `to ${to}`, reaction && `(${reaction})`),
  absent: ({ to, reaction }) => spaced('allergy', to && `to ${to}`, reaction && `(${reaction})`),
};

const ulcer: TherePhrase<'ulcer-or-bleed'> = {
  ...RISK,
  name: 'a stomach ulcer or bleed',
  wording: {
    kind: {
      'stomach ulcer': 'stomach ulcer',
      'peptic ulcer': 'peptic ulcer',
      'duodenal ulcer': 'duodenal ulcer',
      'gi bleed': 'gastrointestinal bleed',
      'gastric bleed': 'gastric bleed',
    },
  },
  present: ({ kind, on }) => spaced('a', kind ?? 'stomach ulcer or bleed', on),
  absent: ({ kind, on }) => spaced(kind ?? 'stomach ulcer or bleed', on),
};
const kidney: TherePhrase<'kidney-disease'> = {
  ...RISK,
  name: 'kidney disease',
  wording: {
    kind: {
      ckd: 'chronic kidney disease',
      'ckd stage 3': 'chronic kidney disease stage 3',
      'ckd stage 4': 'chronic kidney disease stage 4',
      'kidney failure': 'kidney failure',
      'renal impairment': 'renal impairment',
    },
  },
  present: ({ kind, stage }) => spaced(kind ?? 'kidney disease', stage && `stage ${stage}`),
  absent: ({ kind, stage }) => spaced(kind ?? 'kidney disease', stage && `stage ${stage}`),
};
const heart: TherePhrase<'heart-failure'> = {
  ...RISK,
  name: 'heart failure',
  present: () => 'heart failure',
  absent: () => 'heart failure',
};
const heartDisease: TherePhrase<'heart-disease'> = {
  ...RISK,
  name: 'heart disease',
  wording: { kind: { 'ischaemic heart disease': 'ischaemic heart disease' } },
  present: ({ kind }) => kind ?? 'heart disease',
  absent: ({ kind }) => kind ?? 'heart disease',
};
const clot: TherePhrase<'clot-history'> = {
  ...RISK,
  name: 'an earlier clot',
  wording: { kind: { dvt: 'deep vein thrombosis', pe: 'pulmonary embolism', vte: 'venous thromboembolism' } },
  present: ({ kind, on }) => spaced(kind ? `an earlier ${kind}` : 'an earlier clot', on),
  absent: ({ kind, on }) => spaced(kind ? `earlier ${kind}` : 'earlier clot', on),
};
const thrombophilia: TherePhrase<'thrombophilia'> = {
  ...RISK,
  name: 'thrombophilia',
  present: () => 'thrombophilia',
  absent: () => 'thrombophilia',
};
const cancer: TherePhrase<'cancer-history'> = {
  ...RISK,
  name: 'a history of cancer',
  present: dated('a history of cancer'),
  absent: dated('history of cancer'),
};
const pregnancy: OwnPhrase<'pregnancy'> = {
  shape: 'own',
  name: 'pregnancy',
  by: 'asked about',
  wording: {},
  present: ({ for: time }) => was(commas('recorded', time)),
  absent: ({ for: time }) => was(commas('denied', time)),
};

const surgery: OwnPhrase<'earlier-surgery'> = {
  shape: 'own',
  name: 'earlier surgery',
  by: 'asked about',
  preposition: { ray: 'of', web: 'in', foot: 'of' },
  wording: {
    what: {
      'plate repair': 'plantar plate repair',
      'weil osteotomy': 'Weil osteotomy',
      'tendon transfer': 'tendon transfer',
      'flexor transfer': 'flexor tendon transfer',
      'pip fusion': 'PIP joint fusion',
      'toe fusion': 'fusion of a toe',
      'neuroma excision': 'neuroma excision',
      neurectomy: 'neurectomy',
      'hallux valgus correction': 'hallux valgus correction',
      'bunion surgery': 'bunion surgery',
      bunionectomy: 'bunionectomy',
      amputation: 'amputation',
      fusion: 'a fusion',
      'scarf osteotomy': 'scarf osteotomy',
      'akin osteotomy': 'Akin osteotomy',
      'chevron osteotomy': 'chevron osteotomy',
      'lapidus fusion': 'Lapidus fusion',
      'hammer toe correction': 'correction of a hammer toe',
    },
  },
  present: ({ what, on }) => was(commas('recorded', what && `as ${what}`, on)),
  absent: ({ what, on }) => was(commas('denied', what, on)),
};

export const DRUG_AND_RISK_PHRASES = {
  anticoagulant: {
    ...taken<'anticoagulant'>('an anticoagulant'),
    wording: {
      name: {
        warfarin: 'warfarin',
        apixaban: 'apixaban',
        rivaroxaban: 'rivaroxaban',
        edoxaban: 'edoxaban',
        dabigatran: 'dabigatran',
        heparin: 'heparin',
        'low molecular weight heparin': 'low molecular weight heparin',
        doac: 'a direct oral anticoagulant',
      },
      why: THINNING,
      often: OFTEN,
    },
  },
  antiplatelet: {
    ...taken<'antiplatelet'>('an antiplatelet drug'),
    wording: { name: { aspirin: 'aspirin', clopidogrel: 'clopidogrel' }, why: THINNING, often: OFTEN },
  },
  'steroid-tablets': {
    ...taken<'steroid-tablets'>('steroid by mouth'),
    wording: {
      name: {
        prednisolone: 'prednisolone',
        prednisone: 'prednisone',
        pred: 'prednisolone or prednisone, written "pred"',
      },
      often: OFTEN,
    },
  },
  antirheumatic: {
    ...taken<'antirheumatic'>('an antirheumatic drug'),
    wording: {
      name: {
        methotrexate: 'methotrexate',
        sulfasalazine: 'sulfasalazine',
        leflunomide: 'leflunomide',
        hydroxychloroquine: 'hydroxychloroquine',
      },
      often: OFTEN,
    },
  },
  biologic: {
    ...taken<'biologic'>('a biologic'),
    wording: {
      name: {
        adalimumab: 'adalimumab',
        etanercept: 'etanercept',
        rituximab: 'rituximab',
        tocilizumab: 'tocilizumab',
        'anti tnf': 'an anti-TNF drug',
      },
      often: OFTEN,
    },
  },
  bisphosphonate: {
    ...taken<'bisphosphonate'>('a bisphosphonate'),
    wording: { name: { alendronate: 'alendronate', risedronate: 'risedronate', zoledronate: 'zoledronate' } },
  },
  allergy,
  pregnancy,
  'ulcer-or-bleed': ulcer,
  'kidney-disease': kidney,
  'heart-failure': heart,
  'heart-disease': heartDisease,
  'clot-history': clot,
  thrombophilia,
  'cancer-history': cancer,
  'earlier-surgery': surgery,
};
