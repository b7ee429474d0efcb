import {
  AMOUNT_ADVERBS,
  commas,
  did,
  type Predicate,
  type Said,
  type SubjectPhrase,
  spaced,
  UNREAD_RESULT,
  was,
} from './phrase.ts';

/** How the drawer was tested, in the order in which it is said. */
const tails = ({ pain, guarding, under, examiner }: Said<'drawer'>): string => commas(pain, guarding, under, examiner);

/** A grade prints with its scale; a scale without a grade is told by itself. */
function drawerResult(said: Said<'drawer'>): Predicate {
  const { grade, scale, result, pain, guarding, under, examiner } = said;
  const tail = tails(said);
  const onScale = !grade && scale ? `on the ${scale} scale` : undefined;
  if (grade) return did('showed', commas(grade, result && `recorded as ${result}`, tail));
  if (result) {
    const test = result === 'positive' ? 'a positive drawer test' : `a drawer test recorded as ${result}`;
    return did('showed', commas(spaced(test, onScale), tail));
  }
  const [first, ...others] = [pain, guarding, under, examiner].filter((each) => each !== undefined);
  if (first) return did('had', commas(spaced('a drawer test', onScale, first), ...others));
  return did('had', spaced('a drawer test', onScale, `with ${UNREAD_RESULT}`));
}

const drawer: SubjectPhrase<'drawer'> = {
  shape: 'subject',
  noun: 'MTP joint',
  name: 'the drawer test',
  by: 'done',
  wording: {
    scale: { '0-4': '0-4', '0-3': '0-3', '1-3': '1-3' },
    result: { positive: 'positive', half: 'half' },
    pain: { painful: 'with pain', painless: 'without pain' },
    guarding: { guarding: 'with guarding' },
    under: { 'under block': 'under an anaesthetic block' },
    examiner: { 'first examiner': 'by the first examiner', 'other examiner': 'by a second examiner' },
  },
  present: drawerResult,
  absent: (said) =>
    did(
      'showed',
      commas(
        'a negative drawer test',
        said.grade,
        !said.grade && said.scale ? `on the ${said.scale} scale` : undefined,
        said.result,
        tails(said),
      ),
    ),
};

const deviation: SubjectPhrase<'deviation'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'deviation',
  wording: {
    direction: {
      medial: 'medially',
      lateral: 'laterally',
      dorsomedial: 'dorsomedially',
      dorsolateral: 'dorsolaterally',
    },
    degree: AMOUNT_ADVERBS,
  },
  present: ({ direction, degree, angle }) => was(spaced(degree, 'deviated', direction, angle && `by ${angle}`)),
  absent: ({ direction, degree, angle }) =>
    direction || degree || angle
      ? was(spaced('not', degree, 'deviated', direction, angle && `by ${angle}`))
      : was('straight'),
};

const extension: SubjectPhrase<'extension'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'extension',
  wording: { kind: { hyperextended: 'hyperextended', 'cocked up': 'cocked up' }, degree: AMOUNT_ADVERBS },
  present: ({ kind, degree, angle }) =>
    was(spaced(degree, kind ?? 'extended', 'at the MTP joint', angle && `by ${angle}`)),
  absent: ({ kind, degree, angle }) =>
    was(spaced('not', degree, kind ?? 'extended', 'at the MTP joint', angle && `by ${angle}`)),
};

const overlap: SubjectPhrase<'overlap'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'overlap',
  wording: {
    onto: { hallux: 'the hallux', third: 'the third toe', 'lateral neighbour': 'its lateral neighbour' },
    when: { sometimes: 'sometimes', constant: 'constantly' },
  },
  present: ({ onto, when }) => was(spaced(when, 'overlapping', onto)),
  absent: ({ onto, when }) => was(spaced('not', when, 'overlapping', onto)),
};

const rotation: SubjectPhrase<'rotation'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'rotation',
  wording: {
    direction: { supinated: 'in supination', pronated: 'in pronation' },
    degree: AMOUNT_ADVERBS,
  },
  present: ({ direction, degree }) => was(spaced(degree, 'rotated', direction)),
  absent: ({ direction, degree }) => was(spaced('not', degree, 'rotated', direction)),
};

const dislocated: SubjectPhrase<'dislocated'> = {
  shape: 'subject',
  noun: 'MTP joint',
  name: 'dislocation',
  wording: {
    reducibility: { reducible: 'reducible', irreducible: 'irreducible' },
    direction: { dorsal: 'dorsally', dorsomedial: 'dorsomedially', plantar: 'towards the sole' },
    age: { acute: 'acute', chronic: 'chronic' },
  },
  present: ({ reducibility, direction, age, for: time, on, at }) =>
    was(spaced('dislocated', direction, bracket(age, reducibility, time && `for ${time}`, spaced(on, at)))),
  absent: ({ reducibility, direction, age, for: time, on, at }) =>
    was(spaced('not dislocated', direction, bracket(age, reducibility, time && `for ${time}`, spaced(on, at)))),
};

const bracket = (...texts: (string | undefined)[]): string => {
  const inside = commas(...texts);
  return inside && `(${inside})`;
};

const paper: SubjectPhrase<'paper'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'the paper test',
  by: 'done',
  wording: {
    result: {
      holds: 'held the paper',
      weak: 'held the paper weakly',
      'pulls-out': 'let the paper pull out',
      'no purchase': 'had no purchase',
    },
  },
  present: ({ result }) => (result ? did(result, '') : did('had', `a paper test with ${UNREAD_RESULT}`)),
  absent: ({ result }) => did('had', commas('a paper test recorded as negative', result)),
};

const RIGIDITY = {
  flexible: 'flexible',
  correctable: 'correctable',
  'semi-rigid': 'semi-rigid',
  fixed: 'fixed',
  stiff: 'stiff',
} as const;

const pip: SubjectPhrase<'pip'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'flexibility of the PIP joint',
  wording: { rigidity: { ...RIGIDITY, fused: 'fused' } },
  present: ({ rigidity }) =>
    rigidity ? was(`${rigidity} at the PIP joint`) : did('had', `a PIP joint with ${UNREAD_RESULT}`),
  absent: ({ rigidity }) =>
    rigidity
      ? was(`not ${rigidity} at the PIP joint`)
      : did('had', 'a PIP joint whose flexibility was recorded as absent'),
};

const mtp: SubjectPhrase<'mtp'> = {
  shape: 'subject',
  noun: 'toe',
  name: 'flexibility of the MTP joint',
  wording: { rigidity: RIGIDITY, stability: { stable: 'stable', unstable: 'unstable' } },
  present: ({ rigidity, stability }) => {
    const how = [rigidity, stability].filter((word) => word !== undefined).join(' and ');
    return how ? was(`${how} at the MTP joint`) : did('had', `an MTP joint with ${UNREAD_RESULT}`);
  },
  absent: ({ rigidity, stability }) => {
    const how = [rigidity, stability].filter((word) => word !== undefined).join(' and ');
    return how
      ? was(`not ${how} at the MTP joint`)
      : did('had', 'an MTP joint whose flexibility was recorded as absent');
  },
};

const STATED = '(stated by the clinician)';
const stage: SubjectPhrase<'stage'> = {
  shape: 'subject',
  noun: 'ray',
  name: 'the clinical stage',
  preposition: 'of',
  by: 'assigned',
  wording: { note: { unstageable: 'unstageable' } },
  present: ({ stage: grade, note }) => ({
    verb: 'is',
    rest: spaced(commas(grade, note) || 'staged as written', STATED),
  }),
  absent: ({ stage: grade, note }) => ({ verb: 'is', rest: spaced('not', commas(grade, note) || 'staged', STATED) }),
};

const unremarkable: SubjectPhrase<'unremarkable'> = {
  shape: 'subject',
  noun: 'ray',
  name: 'an unremarkable finding',
  wording: {},
  present: () => was('recorded as unremarkable, without saying what was examined'),
  absent: () => was('recorded as not unremarkable, without saying what was examined'),
};

export const RAY_PHRASES = {
  drawer,
  deviation,
  extension,
  overlap,
  rotation,
  dislocated,
  paper,
  pip,
  mtp,
  stage,
  unremarkable,
};
