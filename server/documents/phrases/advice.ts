import { dosed } from './drugs-and-risks.ts';
import { commas, OFTEN, type OwnPhrase, type Predicate, spaced } from './phrase.ts';

const is = (rest: string, subject?: string, plural = false): Predicate => ({
  verb: 'is',
  rest,
  ...(subject ? { subject } : {}),
  plural,
});
const forTime = (time: string | undefined): string | undefined => time && `for ${time}`;

const aid: OwnPhrase<'walking-aid'> = {
  shape: 'own',
  name: 'a walking aid',
  by: 'provided',
  wording: { what: { crutches: 'crutches', 'a stick': 'a walking stick', 'a frame': 'a walking frame' } },
  present: ({ what, for: time }, section) => aidText(section, what, time, false),
  absent: ({ what, for: time }, section) => aidText(section, what, time, true),
};
const aidText = (section: string, what: string | undefined, time: string | undefined, not: boolean): Predicate => {
  const ahead = section === 'plan' || section === 'operation';
  const rest = spaced(not ? 'not' : undefined, ahead ? 'ordered' : 'used', forTime(time));
  const plural = what === 'crutches';
  return { verb: ahead ? 'is' : 'was', rest, ...(what ? { subject: what } : {}), plural };
};

const restriction: OwnPhrase<'restriction'> = {
  shape: 'own',
  name: 'a restriction',
  by: 'advised',
  wording: {
    from: {
      running: 'running',
      jumping: 'jumping',
      football: 'football',
      sport: 'sport',
      impact: 'impact',
      barefoot: 'walking barefoot',
      heels: 'high heels',
      dancing: 'dancing',
    },
  },
  present: ({ from, for: time, until }) =>
    is(commas(spaced('to be left out', forTime(time)), until && `until ${until}`), from, from?.endsWith('heels')),
  absent: ({ from, for: time, until }) =>
    is(commas(spaced('not to be left out', forTime(time)), until && `until ${until}`), from, from?.endsWith('heels')),
};

const back: OwnPhrase<'sport-return'> = {
  shape: 'own',
  name: 'the return to activity',
  by: 'advised',
  wording: {
    what: {
      running: 'running',
      jogging: 'jogging',
      walking: 'walking',
      sport: 'sport',
      dancing: 'dancing',
      football: 'football',
      cycling: 'cycling',
      swimming: 'swimming',
      impact: 'impact',
    },
  },
  present: ({ what, from }) => is(spaced('planned', from && `from ${from}`), what && `a return to ${what}`),
  absent: ({ what, from }) => is(spaced('not planned', from && `from ${from}`), what && `a return to ${what}`),
};

const REFERRED = {
  'vascular surgery': 'vascular surgery',
  rheumatology: 'rheumatology',
  podiatry: 'podiatry',
  orthotics: 'orthotics',
  physiotherapy: 'physiotherapy',
  'sports medicine': 'sports medicine',
  'general practitioner': 'the general practitioner',
  'diabetic foot clinic': 'the diabetic foot clinic',
  'foot clinic': 'the foot clinic',
  'multidisciplinary foot clinic': 'the multidisciplinary foot clinic',
  'fracture clinic': 'the fracture clinic',
  'falls clinic': 'the falls clinic',
  'dressing clinic': 'the dressing clinic',
  'preoperative assessment': 'preoperative assessment',
} as const;
const referral: OwnPhrase<'referral'> = {
  shape: 'own',
  name: 'a referral',
  by: 'made',
  wording: {
    to: REFERRED,
    urgency: { urgent: 'urgently', routine: 'as routine', 'same day': 'the same day' },
  },
  present: ({ to, urgency, in: time }) =>
    is(spaced('planned', urgency, time && `in ${time}`), to && `a referral to ${to}`),
  absent: ({ to, urgency, in: time }) =>
    is(spaced('not planned', urgency, time && `in ${time}`), to && `a referral to ${to}`),
};

const discharge: OwnPhrase<'discharge'> = {
  shape: 'own',
  name: 'discharge',
  by: 'arranged',
  wording: { to: REFERRED },
  present: ({ to }) => is(spaced('planned', to && `to ${to}`)),
  absent: ({ to }) => is(spaced('not planned', to && `to ${to}`)),
};

const listing: OwnPhrase<'listing'> = {
  shape: 'own',
  name: 'a place on the waiting list',
  by: 'arranged',
  wording: { stay: { 'day case': 'a stay as a day case', 'overnight stay': 'an overnight stay' } },
  present: ({ stay }) => is('planned', stay),
  absent: ({ stay }) => is('not planned', stay),
};

const injection: OwnPhrase<'injection'> = {
  shape: 'own',
  name: 'an injection',
  by: 'given',
  preposition: { ray: 'at', web: 'in', foot: 'in' },
  wording: { agent: { unknown: 'agent unknown', hyaluronate: 'hyaluronate', saline: 'saline' } },
  present: ({ agent }, section) => injected(section, agent, false),
  absent: ({ agent }, section) => injected(section, agent, true),
};
const injected = (section: string, agent: string | undefined, not: boolean): Predicate => ({
  verb: section === 'plan' ? 'is' : 'was',
  rest: spaced(not ? 'denied' : section === 'plan' ? 'planned' : 'given', agent && `(${agent})`),
});

const woundCare: OwnPhrase<'wound-care'> = {
  shape: 'own',
  name: 'care of the wound',
  by: 'arranged',
  wording: { what: { 'wound check': 'a wound check', dressings: 'dressings', 'keep dry': 'keeping the wound dry' } },
  present: ({ what, in: time }) => is(spaced('planned', time && `(${time})`), what, what === 'dressings'),
  absent: ({ what, in: time }) => is(spaced('not planned', time && `(${time})`), what, what === 'dressings'),
};

const prevention: OwnPhrase<'clot-prevention'> = {
  shape: 'own',
  name: 'clot prevention',
  by: 'given',
  wording: {
    by: {
      'low molecular weight heparin': 'low molecular weight heparin',
      enoxaparin: 'enoxaparin',
      dalteparin: 'dalteparin',
      tinzaparin: 'tinzaparin',
      stockings: 'stockings',
    },
    often: OFTEN,
  },
  present: ({ by, for: time, ...dosing }) =>
    is(commas(spaced('ordered', by && `(${by})`, forTime(time)), dosed(dosing))),
  absent: ({ by, for: time, ...dosing }) =>
    is(commas(spaced('not ordered', by && `(${by})`, forTime(time)), dosed(dosing))),
};

export const ADVICE_PHRASES = {
  injection,
  'wound-care': woundCare,
  'clot-prevention': prevention,
  'walking-aid': aid,
  restriction,
  'sport-return': back,
  referral,
  listing,
  discharge,
};
