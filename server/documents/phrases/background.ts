import { OCCUPATIONS } from '../../../grammar/lexicon/daily-life.ts';
import type { Section } from '../../../grammar/lexicon/entry.ts';
import { commas, did, type OwnPhrase, type Predicate, type Said, spaced, type TherePhrase, was } from './phrase.ts';

const AT = { ray: 'at', web: 'in', foot: 'in' } as const;
const forTime = (time: string | undefined): string | undefined => time && `for ${time}`;

const distance: OwnPhrase<'walking-distance'> = {
  shape: 'own',
  name: 'the walking distance',
  by: 'asked about',
  wording: {},
  present: ({ metres, kilometres, miles, yards, blocks, for: time }) =>
    was(commas(metres, kilometres, miles, yards, blocks, time) || 'given as written'),
  absent: ({ metres, kilometres, miles, yards, blocks, for: time }) =>
    was(commas('recorded as none', metres, kilometres, miles, yards, blocks, time)),
};

const course: OwnPhrase<'course'> = {
  shape: 'own',
  name: 'the course over time',
  preposition: AT,
  by: 'asked about',
  topic: 'course',
  wording: {
    direction: {
      better: 'better',
      worse: 'worse',
      steady: 'unchanged',
      'no worse': 'no worse',
      'no better': 'no better',
      fluctuating: 'up and down',
    },
  },
  present: ({ direction, share, for: time, on }) =>
    was(commas(direction ?? 'given as written', share && `by ${share}`, forTime(time), on)),
  absent: ({ direction, share, for: time, on }) =>
    was(commas(spaced('not', direction ?? 'given'), share && `by ${share}`, forTime(time), on)),
};

const activity: OwnPhrase<'activity'> = {
  shape: 'own',
  name: 'activity',
  by: 'asked about',
  wording: {
    what: {
      running: 'running',
      jogging: 'jogging',
      walking: 'walking',
      hiking: 'hiking',
      dancing: 'dancing',
      ballet: 'ballet',
      football: 'football',
      cycling: 'cycling',
      swimming: 'swimming',
      sport: 'sport',
      sedentary: 'sedentary',
    },
  },
  present: ({ what }) => was(what ? `given as ${what}` : 'recorded'),
  absent: ({ what }) => was(what ? `recorded as not ${what}` : 'recorded as none'),
};

/** In a plan it is advice, elsewhere it is told. */
const workText = ({ load, job, for: time }: Said<'work'>, section: Section, not: boolean): Predicate => {
  const what = commas(job, load) || undefined;
  const verb = section === 'plan' ? 'planned' : 'recorded';
  const rest = spaced(what ? `${verb} as` : verb, not ? (what ? 'not' : 'as none') : undefined, what, forTime(time));
  return section === 'plan' ? { verb: 'is', rest } : was(rest);
};
const work: OwnPhrase<'work'> = {
  shape: 'own',
  name: 'work',
  by: 'asked about',
  wording: {
    load: {
      sitting: 'sitting',
      desk: 'desk work',
      office: 'office work',
      'on feet': 'on the feet',
      'on feet all day': 'on the feet all day',
      'standing all day': 'standing all day',
      heavy: 'heavy',
      manual: 'manual',
      'heavy manual': 'heavy manual',
      retired: 'retired',
      'off work': 'off work',
      'sick leave': 'sick leave',
      'not working': 'not working',
      'back at work': 'back at work',
    },
    job: Object.fromEntries(OCCUPATIONS.map((job) => [job, job])) as Readonly<
      Record<(typeof OCCUPATIONS)[number], string>
    >,
  },
  present: (said, section) => workText(said, section, false),
  absent: (said, section) => workText(said, section, true),
};

const home: OwnPhrase<'home'> = {
  shape: 'own',
  name: 'the home',
  by: 'asked about',
  wording: {
    with: { alone: 'living alone', 'with family': 'living with family', 'with a partner': 'living with a partner' },
  },
  present: ({ with: who }) => was(who ? `recorded as ${who}` : 'recorded'),
  absent: ({ with: who }) => was(who ? `recorded as not ${who}` : 'recorded as none'),
};
const driving: OwnPhrase<'driving'> = {
  shape: 'own',
  name: 'driving',
  by: 'asked about',
  wording: {
    what: {
      drives: 'done',
      'drives an automatic': 'done in an automatic car',
      'drives a manual': 'done in a manual car',
      'does not drive': 'left out',
      'may drive': 'allowed',
    },
  },
  present: ({ what, for: time }, section) =>
    section === 'plan' && what === 'left out'
      ? { verb: 'is', rest: spaced('to be left out', forTime(time)) }
      : was(spaced(what ?? 'recorded', forTime(time))),
  absent: ({ what, for: time }) => was(spaced('recorded as', what ? `not ${what}` : 'none', forTime(time))),
};

const goal: OwnPhrase<'goal'> = {
  shape: 'own',
  name: "the patient's goal",
  by: 'asked about',
  wording: {},
  present: () => was('recorded'),
  absent: () => was('recorded as none'),
};
const constraint: OwnPhrase<'constraint'> = { ...goal, name: 'a constraint' };

const family: OwnPhrase<'family-history'> = {
  shape: 'own',
  name: 'the family history',
  by: 'asked about',
  wording: {
    of: {
      'rheumatoid arthritis': 'rheumatoid arthritis',
      'psoriatic arthritis': 'psoriatic arthritis',
      psoriasis: 'psoriasis',
      gout: 'gout',
      diabetes: 'diabetes',
      'hallux valgus': 'hallux valgus',
      bunions: 'bunions',
      thrombosis: 'thrombosis',
      dvt: 'deep vein thrombosis',
      clot: 'a clot',
      vte: 'venous thromboembolism',
      'heart disease': 'heart disease',
      'ischaemic heart disease': 'ischaemic heart disease',
    },
    who: { mother: 'mother', father: 'father', sister: 'sister', brother: 'brother' },
  },
  present: ({ of, who }) => was(spaced(of ? `positive for ${of}` : 'recorded as positive', who && `(${who})`)),
  absent: ({ of, who }) => was(spaced(of ? `negative for ${of}` : 'negative', who && `(${who})`)),
};

const weightLoss: TherePhrase<'weight-loss'> = {
  shape: 'there',
  name: 'weight loss',
  by: 'asked about',
  wording: {},
  present: ({ for: time }) => spaced('weight loss', time && `over ${time}`),
  absent: ({ for: time }) => spaced('weight loss', time && `over ${time}`),
};
const malaise: TherePhrase<'malaise'> = {
  shape: 'there',
  name: 'malaise',
  by: 'asked about',
  wording: {},
  present: ({ for: time }) => spaced('malaise', forTime(time)),
  absent: ({ for: time }) => spaced('malaise', forTime(time)),
};

const diabetesText = ({ type, treatment, for: time }: { [S in 'type' | 'treatment' | 'for']?: string }): string =>
  spaced(type, 'diabetes', commas(treatment && `treated by ${treatment}`, forTime(time)));
const diabetes: TherePhrase<'diabetes'> = {
  shape: 'there',
  name: 'diabetes',
  by: 'asked about',
  wording: {
    type: { 'type 1': 'type 1', 'type 2': 'type 2' },
    treatment: { diet: 'diet', tablets: 'tablets', metformin: 'metformin', insulin: 'insulin' },
  },
  present: diabetesText,
  absent: diabetesText,
};

const smoking: OwnPhrase<'smoking'> = {
  shape: 'own',
  name: 'smoking',
  by: 'asked about',
  wording: {
    status: { never: 'never', ex: 'former', current: 'current', 'non-smoker': 'none at present', vaping: 'vaping' },
  },
  present: ({ status, amount, on }) => was(commas(status ? `recorded as ${status}` : 'recorded', amount, on)),
  absent: ({ status, amount, on }) => was(commas('denied', status, amount, on)),
};

const neuropathy: TherePhrase<'neuropathy'> = {
  shape: 'there',
  name: 'neuropathy',
  by: 'asked about',
  wording: { kind: { diabetic: 'diabetic' } },
  present: ({ kind }) => spaced('known', kind, 'neuropathy'),
  absent: ({ kind }) => spaced('known', kind, 'neuropathy'),
};
const arthritis: TherePhrase<'inflammatory-arthritis'> = {
  shape: 'there',
  name: 'inflammatory arthritis',
  by: 'asked about',
  wording: {
    kind: {
      rheumatoid: 'rheumatoid arthritis',
      psoriatic: 'psoriatic arthritis',
      spondyloarthritis: 'spondyloarthritis',
    },
  },
  present: ({ kind, for: time }) => spaced(kind ?? 'inflammatory arthritis', forTime(time)),
  absent: ({ kind, for: time }) => spaced(kind ?? 'inflammatory arthritis', forTime(time)),
};
const gout: OwnPhrase<'gout'> = {
  shape: 'own',
  name: 'gout',
  by: 'asked about',
  wording: {},
  present: ({ on }) => was(commas('recorded', on)),
  absent: ({ on }) => did('was', commas('denied', on)),
};

const falls: OwnPhrase<'falls'> = {
  shape: 'own',
  name: 'falls',
  plural: true,
  by: 'asked about',
  wording: {},
  present: ({ on }) => was(commas('recorded', on)),
  absent: ({ on }) => did('were', commas('denied', on)),
};

export const BACKGROUND_PHRASES = {
  'walking-distance': distance,
  course,
  activity,
  work,
  home,
  driving,
  goal,
  constraint,
  'family-history': family,
  'weight-loss': weightLoss,
  malaise,
  diabetes,
  smoking,
  neuropathy,
  'inflammatory-arthritis': arthritis,
  gout,
  falls,
};
