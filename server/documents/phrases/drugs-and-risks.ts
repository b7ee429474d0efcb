import { MEDICINES } from '../../../grammar/lexicon/medicines.ts';
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
  ...asNamed({ 'atrial fibrillation': [], 'a heart valve': [], 'a stroke': [], 'a stent': [] }),
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
      latex: 'latex',
      metal: 'metal',
      iodine: 'iodine',
      chlorhexidine: 'chlorhexidine',
      penicillin: 'penicillin',
      'any drug': 'any drug known',
      'anti-inflammatory': 'an anti-inflammatory',
      'local anaesthetic': 'a local anaesthetic',
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
  present: dated('a stomach ulcer or bleed'),
  absent: dated('stomach ulcer or bleed'),
};
const kidney: TherePhrase<'kidney-disease'> = {
  ...RISK,
  name: 'kidney disease',
  present: () => 'kidney disease',
  absent: () => 'kidney disease',
};
const heart: TherePhrase<'heart-failure'> = {
  ...RISK,
  name: 'heart failure or heart disease',
  present: () => 'heart failure or heart disease',
  absent: () => 'heart failure or heart disease',
};
const clot: TherePhrase<'clot-history'> = {
  ...RISK,
  name: 'an earlier clot',
  present: dated('an earlier clot'),
  absent: dated('earlier clot'),
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
      'pip fusion': 'PIP joint fusion',
      'neuroma excision': 'neuroma excision',
      'hallux valgus correction': 'hallux valgus correction',
      amputation: 'amputation',
      fusion: 'a fusion',
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
      },
      why: THINNING,
      often: OFTEN,
    },
  },
  antiplatelet: {
    ...taken<'antiplatelet'>('an antiplatelet drug'),
    wording: { name: { aspirin: 'aspirin', clopidogrel: 'clopidogrel' }, why: THINNING, often: OFTEN },
  },
  'steroid-tablets': { ...taken<'steroid-tablets'>('steroid by mouth'), wording: { often: OFTEN } },
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
  'clot-history': clot,
  'cancer-history': cancer,
  'earlier-surgery': surgery,
};
