import { commas, type OwnPhrase, type Predicate, spaced } from './phrase.ts';

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
    },
  },
  present: ({ from, for: time, until }) =>
    is(commas(spaced('to be left out', forTime(time)), until && `until ${until}`), from, from?.endsWith('heels')),
  absent: ({ from, for: time, until }) =>
    is(commas(spaced('not to be left out', forTime(time)), until && `until ${until}`), from, from?.endsWith('heels')),
};

const referral: OwnPhrase<'referral'> = {
  shape: 'own',
  name: 'a referral',
  by: 'made',
  wording: {
    to: {
      'vascular surgery': 'vascular surgery',
      rheumatology: 'rheumatology',
      podiatry: 'podiatry',
      orthotics: 'orthotics',
      physiotherapy: 'physiotherapy',
      'sports medicine': 'sports medicine',
      'general practitioner': 'the general practitioner',
      'diabetic foot clinic': 'the foot clinic',
      'fracture clinic': 'the fracture clinic',
      'falls clinic': 'the falls clinic',
      'dressing clinic': 'the dressing clinic',
      'preoperative assessment': 'preoperative assessment',
    },
    urgency: { urgent: 'urgently', routine: 'as routine', 'same day': 'the same day' },
  },
  present: ({ to, urgency, in: time }) =>
    is(spaced('planned', urgency, time && `in ${time}`), to && `a referral to ${to}`),
  absent: ({ to, urgency, in: time }) =>
    is(spaced('not planned', urgency, time && `in ${time}`), to && `a referral to ${to}`),
};

const listing: OwnPhrase<'listing'> = {
  shape: 'own',
  name: 'a place on the waiting list',
  by: 'arranged',
  wording: { stay: { 'day case': 'a stay as a day case', 'overnight stay': 'an overnight stay' } },
  present: ({ stay }) => is('planned', stay),
  absent: ({ stay }) => is('not planned', stay),
};

export const ADVICE_PHRASES = { 'walking-aid': aid, restriction, referral, listing };
