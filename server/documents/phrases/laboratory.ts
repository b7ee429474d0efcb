import { commas, type OwnPhrase, type Said, was } from './phrase.ts';

type Numeric = 'crp' | 'esr' | 'urate' | 'vitamin-d' | 'white-cells';
const STATE = { ordered: 'ordered', pending: 'pending' } as const;
const LEVEL = { level: { normal: 'normal', raised: 'raised', low: 'low' }, state: STATE } as const;

type Numbers = { readonly [S in 'value' | 'mass' | 'plain' | 'level' | 'state' | 'on']?: string };
/** A number without unit says so: laboratories differ. */
const found = ({ value, mass, plain, level, state, on }: Numbers): string =>
  commas(state, value, mass, plain && `${plain} (unit not stated)`, level, on);
const measured = <F extends Numeric>(
  name: string,
): Omit<OwnPhrase<F>, 'wording'> & { readonly wording: typeof LEVEL } => ({
  shape: 'own',
  name,
  by: 'measured',
  topic: 'laboratory',
  wording: LEVEL,
  present: (said: Said<F>) => was(found(said as Numbers) || 'given as written'),
  absent: (said: Said<F>) => was(commas('recorded as absent', found(said as Numbers))),
});

const hba1c: OwnPhrase<'hba1c'> = {
  shape: 'own',
  name: 'HbA1c',
  by: 'measured',
  topic: 'laboratory',
  wording: { state: STATE },
  present: ({ percent, ifcc, on, state }) => was(commas(state, percent, ifcc, on) || 'given as written'),
  absent: ({ percent, ifcc, on, state }) => was(commas('recorded as absent', state, percent, ifcc, on)),
};

type Antibody = 'rheumatoid-factor' | 'anti-ccp';
const ANTIBODY = { result: { positive: 'positive' }, state: STATE } as const;
const antibody = <F extends Antibody>(
  name: string,
): Omit<OwnPhrase<F>, 'wording'> & { readonly wording: typeof ANTIBODY } => ({
  shape: 'own',
  name,
  by: 'measured',
  topic: 'laboratory',
  wording: ANTIBODY,
  present: ({ result, plain, on, state }: Said<Antibody>) =>
    was(commas(state, result, plain, on) || 'given as written'),
  absent: ({ result, plain, on, state }: Said<Antibody>) =>
    was(commas('negative', state, result && `and recorded as ${result}`, plain, on)),
});

const otherTest: OwnPhrase<'lab-other'> = {
  shape: 'own',
  name: 'another test',
  by: 'measured',
  topic: 'laboratory',
  wording: {
    what: {
      haemoglobin: 'haemoglobin',
      creatinine: 'creatinine',
      egfr: 'eGFR',
      albumin: 'albumin',
      glucose: 'glucose',
      lactate: 'lactate',
      calcium: 'calcium',
      'parathyroid hormone': 'parathyroid hormone',
      'thyroid function': 'thyroid function',
      tsh: 'TSH',
      'antinuclear antibodies': 'the test for antinuclear antibodies',
      mrsa: 'the MRSA screen',
      sodium: 'sodium',
      potassium: 'potassium',
      platelets: 'the platelet count',
    },
    ...LEVEL,
    result: { positive: 'positive' },
  },
  present: ({ what, plain, level, result, on, state }) =>
    was(
      commas(state, result, plain && `${plain} (unit not stated)`, level, on) || 'given as written',
      ...(what ? [what] : []),
    ),
  absent: ({ what, plain, level, result, on, state }) =>
    was(commas('negative', state, result && `and recorded as ${result}`, plain, level, on), ...(what ? [what] : [])),
};

const TESTS = {
  crp: 'CRP',
  esr: 'ESR',
  urate: 'urate',
  'rheumatoid factor': 'rheumatoid factor',
  'anti-ccp': 'anti-CCP',
  hba1c: 'HbA1c',
  'vitamin d': 'vitamin D',
  'blood count': 'blood count',
  'white cell count': 'white cell count',
  'kidney function': 'kidney function',
  calcium: 'calcium',
  'parathyroid hormone': 'parathyroid hormone',
  'thyroid function': 'thyroid function',
  tsh: 'TSH',
} as const;
const bloods: OwnPhrase<'bloods'> = {
  shape: 'own',
  name: 'blood tests',
  plural: true,
  by: 'taken',
  wording: {
    what: TESTS,
  },
  present: ({ what }) => ({ verb: 'is', rest: 'planned', ...(what ? { subject: `blood tests (${what})` } : {}) }),
  absent: ({ what }) => ({ verb: 'is', rest: 'not planned', ...(what ? { subject: `blood tests (${what})` } : {}) }),
};

const sent: OwnPhrase<'bloods-sent'> = {
  shape: 'own',
  name: 'blood tests',
  plural: true,
  by: 'sent',
  wording: { what: TESTS },
  present: ({ what }) => was('sent', what ? `blood tests (${what})` : undefined, true),
  absent: ({ what }) => was('recorded as not sent', what ? `blood tests (${what})` : undefined, true),
};

export const LABORATORY_PHRASES = {
  hba1c,
  crp: measured<'crp'>('CRP'),
  esr: measured<'esr'>('ESR'),
  urate: measured<'urate'>('urate'),
  'vitamin-d': {
    ...measured<'vitamin-d'>('vitamin D'),
    wording: { level: { ...LEVEL.level, deficient: 'deficient', insufficient: 'insufficient' }, state: STATE },
  },
  'white-cells': { ...measured<'white-cells'>('the white cell count') },
  'rheumatoid-factor': antibody<'rheumatoid-factor'>('rheumatoid factor'),
  'anti-ccp': antibody<'anti-ccp'>('anti-CCP'),
  'lab-other': otherTest,
  bloods,
  'bloods-sent': sent,
};
