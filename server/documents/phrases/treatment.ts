import type { Section } from '../../../grammar/lexicon/entry.ts';
import { NSAIDS } from '../../../grammar/lexicon/medicines.ts';
import { PROCEDURE_WORDING } from './operation.ts';
import {
  asNamed,
  commas,
  OFTEN,
  type OwnPhrase,
  type Predicate,
  type Preposition,
  type Said,
  spaced,
  was,
  withArticle,
} from './phrase.ts';

type Course =
  | 'tape'
  | 'pad'
  | 'insert'
  | 'boot'
  | 'postop-shoe'
  | 'anti-inflammatory'
  | 'steroid'
  | 'stretching'
  | 'physiotherapy'
  | 'footwear'
  | 'rest-and-cold'
  | 'cast'
  | 'toe-splint';

const wording = {
  kept: {
    'well kept': 'well kept',
    daily: 'worn daily',
    'poorly kept': 'poorly kept',
    irregular: 'worn irregularly',
    intermittent: 'worn intermittently',
  },
  response: {
    better: 'with improvement',
    'good relief': 'with good relief',
    'much better': 'with much improvement',
    partial: 'with partial relief',
    'a little better': 'with a little improvement',
    'no-relief': 'without relief',
    worse: 'with worsening',
    'much worse': 'with much worsening',
  },
  reason: {
    'skin reaction': 'a skin reaction',
    rash: 'a rash',
    blisters: 'blisters',
    'skin irritation': 'skin irritation',
    'side effects': 'side effects',
    'stomach upset': 'a stomach upset',
    discomfort: 'discomfort',
    intolerance: 'intolerance',
    impractical: 'being impractical',
    work: 'work',
    cost: 'its cost',
  },
} as const;
/** Of what is done or taken, and not worn. */
const done = {
  ...wording,
  kept: { ...wording.kept, daily: 'daily', irregular: 'irregularly', intermittent: 'intermittently' },
} as const;

/** What only an injection says. */
interface Injected {
  readonly count?: string;
  readonly guidance?: string;
  readonly agent?: string;
  readonly beside?: string;
  readonly by?: string;
}
/** Which of its kind a measure is, its dose and how often. */
interface Detailed {
  readonly kind?: string;
  readonly of?: string;
  readonly what?: string;
  /** The drug that it was. */
  readonly name?: string;
  readonly often?: string;
  readonly dose?: string;
  readonly amount?: string;
}
/** Kinds whose name is a plural. */
const PLURAL = /\b(shoes|pads|boots|heels)$| and /;
const forTime = (time: string | undefined): string | undefined => time && `for ${time}`;
const planned = (rest: string): Predicate => ({ verb: 'is', rest });

/** How a measure went, or is to go: the section says which, nothing else does. */
const course =
  (verb: string) =>
  (said: Said<Course> & Injected & Detailed, section: Section): Predicate => {
    const times = said.count && (said.count === '1' ? '1 time' : `${said.count} times`);
    const ahead = section === 'plan' || section === 'operation';
    const done = section === 'plan' ? 'planned' : ahead ? 'ordered' : verb;
    const rest = commas(
      spaced(
        done,
        times,
        said.agent && `with ${said.agent}`,
        said.beside && `with ${said.beside}`,
        said.by,
        said.guidance,
        said.of && `(${said.of})`,
        said.on,
        forTime(said.for),
      ),
      said.dose,
      said.amount && `${said.amount} (unit not stated)`,
      said.often,
      said.stop && `stopped ${said.stop}`,
      said.reason && `stopped for ${said.reason}`,
      said.kept,
      said.response,
    );
    const named = said.kind ?? said.what ?? said.name;
    const { verb: be, rest: how } = ahead ? planned(rest) : was(rest);
    return { verb: be, rest: how, ...(named ? { subject: named, plural: PLURAL.test(named) } : {}) };
  };
const without =
  (verb: string) =>
  (said: Said<Course> & Injected & Detailed, section: Section): Predicate => {
    const told = course(verb)(said, section);
    return { ...told, rest: `not ${told.rest}` };
  };

const measure = <F extends Course>(
  name: string,
  verb: string,
  preposition: Preposition,
): Omit<OwnPhrase<F>, 'wording'> & { readonly wording: typeof wording } => ({
  shape: 'own',
  name,
  by: verb === 'tried' ? 'provided' : 'carried out',
  preposition,
  wording,
  present: course(verb),
  absent: without(verb),
});

const reviewDetails = ({ in: interval, on, when, with: brought }: Said<'review'>): string =>
  spaced(interval && `in ${interval}`, on, when, brought && `with ${brought}`);
const review: OwnPhrase<'review'> = {
  shape: 'own',
  name: 'review',
  by: 'arranged',
  wording: {
    when: { 'if needed': 'if needed' },
    with: {
      mri: 'the MRI',
      film: 'a radiograph',
      us: 'the ultrasound',
      ct: 'the CT',
      bloods: 'the blood results',
      results: 'the results',
      scan: 'the scan',
    },
  },
  present: (said) => planned(spaced('planned', reviewDetails(said))),
  absent: (said) => planned(spaced('not planned', reviewDetails(said))),
};

const image: OwnPhrase<'image'> = {
  shape: 'own',
  name: 'imaging',
  by: 'requested',
  wording: {
    by: {
      xray: 'a radiograph',
      'wb xray': 'a weight-bearing radiograph',
      us: 'ultrasound',
      'dynamic us': 'dynamic ultrasound',
      mri: 'MRI',
      ct: 'CT',
    },
  },
  present: ({ by, in: interval }) => ({
    ...planned(spaced('planned', interval && `in ${interval}`)),
    ...(by ? { subject: by } : {}),
  }),
  absent: ({ by, in: interval }) => ({
    ...planned(spaced('not planned', interval && `in ${interval}`)),
    ...(by ? { subject: by } : {}),
  }),
};

const operation: OwnPhrase<'operation'> = {
  shape: 'own',
  name: 'an operation',
  by: 'arranged',
  preposition: 'on',
  wording: {
    procedure: PROCEDURE_WORDING,
  },
  present: ({ procedure, on }) =>
    planned(spaced('planned', on && `to take place ${on}`, procedure && `(${procedure})`)),
  absent: ({ procedure, on }) => planned(spaced('not planned', on, procedure && `(${procedure})`)),
};

export const TREATMENT_PHRASES = {
  tape: {
    ...measure<'tape'>('taping', 'tried', 'of'),
    noun: 'toe' as const,
    wording: {
      ...wording,
      kind: { buddy: 'buddy taping', sling: 'sling taping', plantarflexed: 'taping in plantarflexion' },
    },
  },
  'toe-splint': {
    ...measure<'toe-splint'>('a toe splint', 'tried', 'of'),
    wording: {
      ...wording,
      kind: {
        'budin splint': 'a Budin splint',
        'toe prop': 'a toe prop',
        'silicone prop': 'a silicone prop',
        'toe spacer': 'a toe spacer',
        'silicone spacer': 'a silicone spacer',
      },
    },
  },
  pad: {
    ...measure<'pad'>('a metatarsal pad', 'tried', 'under'),
    wording: {
      ...wording,
      kind: { "dancer's pad": "a dancer's pad", 'gel pad': 'a gel pad', pad: 'a pad', dome: 'a metatarsal dome' },
    },
  },
  insert: {
    ...measure<'insert'>('a stiff insert', 'tried', 'for'),
    wording: {
      ...wording,
      kind: {
        insert: 'an insert',
        'stiff sole': 'a stiff sole',
        'stiff shoe': 'a stiff shoe',
        'carbon plate': 'a carbon plate',
        'rocker shoe': 'a rocker shoe',
        insole: 'an insole',
        'total contact insole': 'a total contact insole',
        'rocker sole': 'a rocker sole',
        'metatarsal bar': 'a metatarsal bar',
      },
    },
  },
  stretching: {
    ...measure<'stretching'>('stretching of the calf', 'done', 'for'),
    wording: {
      ...done,
      often: OFTEN,
      kind: {
        stretches: 'stretching',
        'achilles stretches': 'stretching of the Achilles tendon',
        'gastrocnemius stretches': 'stretching of the gastrocnemius',
      },
    },
  },
  physiotherapy: {
    ...measure<'physiotherapy'>('physiotherapy', 'tried', 'for'),
    wording: {
      ...done,
      of: {
        strength: 'strength',
        'intrinsic muscles': 'intrinsic muscles',
        'range of motion': 'range of motion',
        plantarflexion: 'plantarflexion',
        gait: 'gait',
        balance: 'balance',
        'scar massage': 'scar massage',
        exercises: 'exercises',
        'foot exercises': 'foot exercises',
      },
      often: OFTEN,
    },
  },
  footwear: {
    ...measure<'footwear'>('a change of shoes', 'tried', 'for'),
    wording: {
      ...wording,
      kind: {
        'wide shoes': 'wide shoes',
        'soft wide shoes': 'soft wide shoes',
        'wide toe box': 'a wide toe box',
        'extra depth shoes': 'extra depth shoes',
        'larger shoes': 'larger shoes',
        'bigger boots': 'bigger boots',
        'flat shoes': 'flat shoes',
        'lower heels': 'lower heels',
        'cushioned shoes': 'cushioned shoes',
        'soft shoes': 'soft shoes',
        'shoe advice': 'advice on shoes',
      },
    },
  },
  'rest-and-cold': {
    ...measure<'rest-and-cold'>('rest or cold', 'tried', 'for'),
    wording: { ...done, what: { rest: 'rest', ice: 'ice', elevation: 'elevation' } },
  },
  cast: {
    ...measure<'cast'>('a cast', 'tried', 'for'),
    wording: { ...wording, kind: { 'total contact': 'a total contact cast' } },
  },
  boot: measure<'boot'>('a walking boot', 'tried', 'for'),
  'postop-shoe': {
    ...measure<'postop-shoe'>('a postoperative shoe', 'tried', 'for'),
    wording: {
      ...wording,
      kind: {
        'heel wedge shoe': 'a heel wedge shoe',
        'heel wb shoe': 'a heel weight-bearing shoe',
        'offloading shoe': 'an offloading shoe',
      },
    },
  },
  'anti-inflammatory': {
    ...measure<'anti-inflammatory'>('anti-inflammatory medication', 'tried', 'for'),
    wording: { ...done, name: asNamed(NSAIDS), often: OFTEN },
  },
  steroid: {
    ...measure<'steroid'>(withArticle('steroid injection'), 'given', { ray: 'at', web: 'in', foot: 'in' }),
    wording: {
      ...done,
      guidance: {
        'us-guided': 'under ultrasound guidance',
        'x-ray-guided': 'under X-ray guidance',
        landmark: 'by landmarks',
      },
      agent: {
        triamcinolone: 'triamcinolone',
        methylprednisolone: 'methylprednisolone',
        betamethasone: 'betamethasone',
        dexamethasone: 'dexamethasone',
        hydrocortisone: 'hydrocortisone',
      },
      beside: { 'local anaesthetic': 'local anaesthetic' },
      by: { 'the general practitioner': 'by the general practitioner', elsewhere: 'elsewhere' },
    },
  },
  review,
  image,
  operation,
};
