import { DATED_SURGERY, EARLIER_SURGERY, WIDER_SURGERY } from './earlier-surgery.ts';
import { date, duration, entry, given, type Lead, leadsOf, number, within, words } from './entry.ts';
import { DOSING, MEDICINES, NSAIDS } from './medicines.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const asked = {
  ...practice,
  kind: 'event',
  bare: 'present',
  sections: ['history', 'exam'],
  subjects: ['patient'],
} as const;

/** An allergy may be to any drug that has a name here; without a place in the slot the drug would be read as taken. */
const NAMED_DRUGS = {
  ...MEDICINES,
  aspirin: [],
  clopidogrel: [],
  warfarin: [],
  heparin: [],
  methotrexate: [],
  sulfasalazine: [],
} as const;

const DMARDS = { methotrexate: ['mtx'], sulfasalazine: [], leflunomide: [], hydroxychloroquine: [] } as const;
const BIOLOGICS = { adalimumab: [], etanercept: [], rituximab: [], tocilizumab: [] } as const;
const BISPHOSPHONATES = { alendronate: ['alendronic acid'], risedronate: [], zoledronate: [] } as const;
/** Why a drug that thins the blood is taken. A clot is no reason here: it is written as a history of its own, which warns. */
const THINNING = words(
  {
    'atrial fibrillation': ['af', 'a fib'],
    'a heart valve': ['valve'],
    'a mechanical heart valve': ['mechanical heart valve', 'mechanical valve'],
    'a stroke': ['stroke'],
    'a tia': ['tia'],
    'a stent': ['stent'],
  },
  { labels: ['for'], labelled: true },
);

/** Each of them reads as one drug; only the clinician knows which `pred` was meant. */
const STEROID_TABLETS = { prednisolone: [], prednisone: [], pred: [] } as const;
const BLEEDS = {
  'stomach ulcer': ['gastric ulcer'],
  'peptic ulcer': [],
  'duodenal ulcer': [],
  'gi bleed': [],
  'gastric bleed': [],
} as const;
const KIDNEY = {
  ckd: [],
  'ckd stage 3': ['ckd3'],
  'ckd stage 4': ['ckd4'],
  'kidney failure': ['renal failure'],
  'renal impairment': [],
} as const;
const HEART = { 'ischaemic heart disease': ['ischemic heart disease', 'ihd'] } as const;
const CLOTS = {
  dvt: ['previous dvt', 'prev dvt', 'past dvt', 'history of dvt'],
  pe: ['previous pe', 'prev pe'],
  vte: ['previous vte', 'history of vte'],
} as const;
/** `dvt` alone may be one of today: only with its `previous` does it open an earlier one. */
const EARLIER_CLOTS = Object.fromEntries(
  Object.entries<readonly string[]>(CLOTS).flatMap(([kind, forms]) =>
    forms.map((form): [string, Lead] => [form, { gives: { kind }, noun: true }]),
  ),
);

/** In a history `no dvt` is of all that was; of a calf that is looked at today it would say something else. */
const NEVER_CLOTS = Object.fromEntries(
  Object.entries({ dvt: ['dvt'], pe: ['pe'], vte: ['vte', 'dvt/pe', 'dvt or pe'] }).flatMap(([kind, forms]) =>
    forms.map((form): [string, Lead] => [
      `no ${form}`,
      { absent: true, gives: { kind }, noun: true, sections: ['history'] },
    ]),
  ),
);

/** Drugs that matter here, allergies, and what speaks against a drug or an operation. */
export const DRUGS_AND_RISKS = [
  entry({
    ...asked,
    id: 'anticoagulant',
    word: 'anticoagulant',
    forms: ['anticoagulated', 'anticoagulation', 'blood thinner', 'blood thinners', 'on anticoagulant'],
    leads: {
      doac: { gives: { name: 'doac' }, noun: true },
      ...given(
        'name',
        {
          warfarin: 'warfarin',
          apixaban: 'apixaban',
          rivaroxaban: 'rivaroxaban',
          edoxaban: 'edoxaban',
          dabigatran: 'dabigatran',
          heparin: 'heparin',
        },
        { noun: true },
      ),
    },
    slots: {
      name: words({
        warfarin: [],
        apixaban: [],
        rivaroxaban: [],
        edoxaban: [],
        dabigatran: [],
        heparin: [],
        'low molecular weight heparin': ['lmwh'],
        doac: [],
      }),
      why: THINNING,
      ...DOSING,
    },
    many: true,
    order: 140,
    technique: 'Name the drug and why it is taken.',
    meaning: 'No anti-inflammatory beside it without advice; an operation needs a plan made with the prescriber.',
  }),
  entry({
    ...asked,
    id: 'antiplatelet',
    word: 'antiplatelet',
    leads: {
      aspirin: { gives: { name: 'aspirin' }, noun: true },
      clopidogrel: { gives: { name: 'clopidogrel' }, noun: true },
    },
    slots: { name: words({ aspirin: [], clopidogrel: [] }, { many: true }), why: THINNING, ...DOSING },
    many: true,
    order: 141,
    technique: 'Name the drug and why it is taken.',
    meaning: 'Bleeding beside an anti-inflammatory; a recent stent decides with the prescriber.',
  }),
  entry({
    ...asked,
    id: 'steroid-tablets',
    word: 'steroid-tablets',
    forms: ['steroid tablets', 'oral steroid', 'oral steroids'],
    leads: leadsOf('name', STEROID_TABLETS),
    slots: { name: words(STEROID_TABLETS), for: duration(), ...DOSING },
    order: 142,
    technique: 'Dose by quote, and for how long.',
    meaning: 'Thin skin, slow healing, masked infection.',
  }),
  entry({
    ...asked,
    id: 'antirheumatic',
    word: 'antirheumatic',
    forms: ['dmard', 'dmards'],
    leads: leadsOf('name', DMARDS),
    slots: {
      name: words(DMARDS, { many: true }),
      ...DOSING,
    },
    many: true,
    order: 143,
    technique: 'Name the drug.',
    meaning: 'Usually continued around an operation (from memory); the prescriber decides.',
  }),
  entry({
    ...asked,
    id: 'biologic',
    word: 'biologic',
    forms: ['biologics', 'biologic drug'],
    leads: { ...leadsOf('name', BIOLOGICS), 'anti tnf': { gives: { name: 'anti tnf' }, noun: true } },
    slots: {
      name: words({ ...BIOLOGICS, 'anti tnf': [] }),
      on: date(['from']),
      ...DOSING,
    },
    many: true,
    order: 144,
    technique: 'Name the drug, the interval and the last dose.',
    meaning: 'An operation is timed at the end of the dosing interval (from memory); the prescriber decides.',
  }),
  entry({
    ...asked,
    id: 'bisphosphonate',
    word: 'bisphosphonate',
    forms: ['bisphosphonates'],
    leads: leadsOf('name', BISPHOSPHONATES),
    slots: { name: words(BISPHOSPHONATES), for: duration() },
    many: true,
    order: 145,
    technique: 'Name the drug and the years.',
    meaning: 'Says that bone health has been a concern.',
  }),
  entry({
    ...asked,
    id: 'allergy',
    word: 'allergy',
    forms: ['allergies', 'allergic', 'allergic to', 'allergy to'],
    leads: {
      nkda: { absent: true, gives: { to: 'any drug' } },
      nka: { absent: true, gives: { to: 'any drug' } },
      'no known allergies': { absent: true },
      'no known drug allergies': { absent: true, gives: { to: 'any drug' } },
      ...Object.fromEntries(
        ['tape rash', 'rash with tape', 'rash from tape', 'rash to tape', 'plaster rash'].map(
          (form): [string, Lead] => [
            form,
            { gives: { to: 'tape', reaction: 'rash on contact' }, noun: true, sections: ['history'] },
          ],
        ),
      ),
    },
    slots: {
      to: words(
        {
          tape: [],
          adhesive: [],
          plaster: ['plasters', 'sticking plaster'],
          latex: [],
          metal: [],
          nickel: [],
          iodine: [],
          chlorhexidine: [],
          penicillin: [],
          'any drug': ['drugs'],
          'anti-inflammatory': ['nsaid', 'nsaids'],
          ...NSAIDS,
          'local anaesthetic': [],
          lidocaine: [],
          ...NAMED_DRUGS,
        },
        {
          many: true,
          locating: true,
          wider: within({
            tape: ['adhesive', 'plaster'],
            metal: ['nickel'],
            'anti-inflammatory': Object.keys(NSAIDS),
            'local anaesthetic': ['lidocaine'],
          }),
        },
      ),
      reaction: words({
        rash: ['rash only'],
        'rash on contact': [],
        anaphylaxis: ['anaphylactic'],
        'stomach upset': ['gi upset'],
        nausea: [],
      }),
    },
    many: true,
    order: 146,
    technique: 'Ask for tape, latex, metal, skin preparation and drugs; quote a drug that has no word here.',
    meaning: 'A tape allergy forbids taping; a metal allergy bears on the implant.',
  }),
  entry({
    ...asked,
    id: 'pregnancy',
    word: 'pregnant',
    forms: ['pregnancy'],
    slots: { for: duration([]) },
    order: 147,
    technique: 'Ask before a film, a drug or an operation is planned.',
    meaning: 'No elective operation, and no anti-inflammatory late in it.',
  }),
  entry({
    ...asked,
    id: 'ulcer-or-bleed',
    word: 'ulcer-or-bleed',
    forms: ['previous ulcer or bleed', 'ulcer or bleed'],
    leads: leadsOf('kind', BLEEDS),
    slots: { kind: words(BLEEDS), on: date(['since', 'from']) },
    order: 148,
    technique: 'Ask before any anti-inflammatory.',
    meaning: 'Speaks against an anti-inflammatory.',
  }),
  entry({
    ...asked,
    id: 'kidney-disease',
    word: 'kidney-disease',
    forms: ['kidney disease', 'renal disease'],
    leads: leadsOf('kind', KIDNEY),
    slots: { kind: words(KIDNEY), stage: number('', 1, 5, true, { labels: ['stage'], labelled: true }) },
    order: 149,
    technique: 'Ask before any anti-inflammatory.',
    meaning: 'Speaks against an anti-inflammatory.',
  }),
  entry({
    ...asked,
    id: 'heart-failure',
    word: 'heart-failure',
    forms: ['heart failure', 'cardiac failure', 'ccf'],
    slots: {},
    order: 150,
    technique: 'Ask before any anti-inflammatory.',
    meaning: 'Speaks against an anti-inflammatory.',
  }),
  entry({
    ...asked,
    id: 'heart-disease',
    word: 'heart-disease',
    forms: ['heart disease', 'cardiac disease'],
    leads: leadsOf('kind', HEART),
    slots: { kind: words(HEART) },
    order: 150.5,
    technique: 'Say which: ischaemic disease, and heart failure by its own word.',
    meaning: 'Speaks against an anti-inflammatory; it is not heart failure unless that is written.',
  }),
  entry({
    ...asked,
    id: 'clot-history',
    word: 'clot-history',
    forms: ['previous clot', 'past clot', 'history of clot', 'clot history'],
    leads: { ...EARLIER_CLOTS, ...NEVER_CLOTS },
    slots: { kind: words({ dvt: [], pe: [], vte: [] }, { many: true }), on: date(['since', 'from']) },
    many: true,
    order: 151,
    technique: 'Ask before a boot, time off the foot, or an operation.',
    meaning: 'Raises the risk of another clot; protection is decided by the local protocol.',
  }),
  entry({
    ...asked,
    id: 'thrombophilia',
    word: 'thrombophilia',
    slots: {},
    order: 151.5,
    technique: 'Ask with an earlier clot, and quote which.',
    meaning: 'A tendency to clot and no clot: it raises the risk, and protection is decided by the local protocol.',
  }),
  entry({
    ...asked,
    id: 'cancer-history',
    word: 'cancer-history',
    forms: [
      'previous cancer',
      'past cancer',
      'history of cancer',
      'cancer history',
      'previous malignancy',
      'known cancer',
    ],
    slots: { on: date(['since', 'from']) },
    many: true,
    order: 152,
    technique: 'Ask, and quote which.',
    meaning: 'With a mass or night pain: MRI and the tumour route before any injection.',
  }),
  entry({
    ...practice,
    id: 'earlier-surgery',
    kind: 'event',
    bare: 'present',
    sections: ['history', 'exam'],
    subjects: ['ray', 'web', 'foot'],
    word: 'earlier-surgery',
    forms: [
      'earlier surgery',
      'previous surgery',
      'previous operation',
      'previous foot surgery',
      'prev surgery',
      'prev op',
      'past surgery',
      'prior surgery',
      'previously operated',
      's/p',
      'status post',
    ],
    leads: given('what', DATED_SURGERY, { noun: true, sections: ['history'] }),
    slots: {
      what: words(EARLIER_SURGERY, { many: true, wider: WIDER_SURGERY }),
      on: date(['since', 'from']),
    },
    many: true,
    order: 153,
    technique: 'By ray, what was done and when; look at the scars.',
    meaning: 'An operated joint is not staged; the deformity and the drawer are described.',
  }),
] as const;
