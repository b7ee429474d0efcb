import { date, duration, entry, given, type Lead, words } from './entry.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;
const practical = { ...practice, kind: 'event', subjects: ['patient'] } as const;

/** Drugs that a plan may stop, continue or bring back around an operation, with their other names. */
export const HANDLED = {
  anticoagulant: ['blood thinner', 'blood thinners'],
  doac: [],
  warfarin: [],
  apixaban: [],
  rivaroxaban: [],
  edoxaban: [],
  dabigatran: [],
  aspirin: [],
  clopidogrel: [],
  methotrexate: ['mtx'],
  biologic: ['biologics'],
  adalimumab: [],
  etanercept: [],
  rituximab: [],
  tocilizumab: [],
  metformin: [],
} as const;
/** Those of them that thin the blood by more than a platelet drug does. */
export const ANTICOAGULANTS: readonly string[] = [
  'anticoagulant',
  'warfarin',
  'apixaban',
  'rivaroxaban',
  'edoxaban',
  'dabigatran',
] satisfies (keyof typeof HANDLED)[];

const HANDLING = {
  stopped: ['stop', 'hold', 'omit'],
  continued: ['continue'],
  restarted: ['restart'],
  bridged: ['bridge'],
} as const;

/** `hold warfarin`: the verb and the drug stand together, so that neither is read without the other. */
const leads: Readonly<Record<string, Lead>> = Object.fromEntries(
  Object.entries(HANDLING).flatMap(([what, verbs]) =>
    verbs.flatMap((verb) =>
      Object.entries<readonly string[]>(HANDLED).flatMap(([drug, names]) =>
        [drug, ...names].map((name): [string, Lead] => [`${verb} ${name}`, { gives: { what, drug } }]),
      ),
    ),
  ),
);

/** What is written before an operation: consent as it was given, drugs around the day, smoking. */
export const BEFORE_OPERATION = [
  entry({
    ...practical,
    id: 'consent',
    bare: 'incomplete',
    sections: ['exam', 'operation', 'plan'],
    word: 'consent',
    forms: ['consent form'],
    leads: {
      consented: { gives: { state: 'given' } },
      ...given('how', { 'informed consent': 'informed', 'written consent': 'written', 'verbal consent': 'verbal' }),
    },
    slots: {
      how: words({ informed: [], written: [], verbal: [] }, { locating: true }),
      state: words(
        {
          given: ['obtained', 'done', 'taken'],
          signed: [],
          confirmed: ['reconfirmed', 'confirmed today'],
          'to be taken': ['pending', 'not yet signed', 'to be signed'],
          declined: ['refused'],
          withdrawn: [],
        },
        { many: true },
      ),
      on: date(['on']),
    },
    order: 124.5,
    technique: 'Whoever takes it writes it, with the operation and the side in a quote.',
    meaning: 'Kept as stated. Nothing here says what was discussed or understood, unless it is written.',
  }),
  entry({
    ...practical,
    id: 'drug-plan',
    bare: 'incomplete',
    sections: ['plan'],
    word: 'drug-plan',
    leads,
    slots: {
      what: words({ stopped: [], continued: [], restarted: [], bridged: [] }),
      drug: words(HANDLED, { wider: { doac: 'anticoagulant' } }),
      for: duration(),
      when: words({
        'before the operation': ['before surgery', 'before op', 'before operation', 'preop', 'pre op'],
        'after the operation': ['after surgery', 'after op', 'after operation', 'postop', 'post op'],
      }),
      on: date(['on']),
    },
    many: true,
    order: 124.6,
    technique: 'Drug, what becomes of it, and when; agreed with the prescriber.',
    meaning: 'The prescriber and the local protocol decide; no interval is computed here.',
  }),
  entry({
    ...practical,
    id: 'smoking-advice',
    bare: 'present',
    sections: ['plan'],
    word: 'smoking-advice',
    forms: ['stop smoking', 'smoking cessation', 'cessation advice', 'quit smoking'],
    slots: { for: duration() },
    order: 119.8,
    technique: 'Since when, and when it is asked about again.',
    meaning: 'Whether it has been stopped is asked again before the operation.',
  }),
] as const;
