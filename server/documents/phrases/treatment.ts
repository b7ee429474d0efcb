import type { Section } from '../../../grammar/lexicon/entry.ts';
import { PROCEDURE_WORDING } from './operation.ts';
import {
  commas,
  type OwnPhrase,
  type Predicate,
  type Preposition,
  type Said,
  spaced,
  was,
  withArticle,
} from './phrase.ts';

type Course = 'tape' | 'pad' | 'insert' | 'boot' | 'postop-shoe' | 'anti-inflammatory' | 'steroid';

const wording = {
  kept: { 'well kept': 'well kept', 'poorly kept': 'poorly kept' },
  response: {
    better: 'with improvement',
    partial: 'with partial relief',
    'no-relief': 'without relief',
    worse: 'with worsening',
  },
  reason: {
    'skin reaction': 'a skin reaction',
    'side effects': 'side effects',
    discomfort: 'discomfort',
    intolerance: 'intolerance',
    impractical: 'being impractical',
    cost: 'its cost',
  },
} as const;

/** What only an injection says. */
interface Injected {
  readonly count?: string;
  readonly guidance?: string;
  readonly agent?: string;
}
const forTime = (time: string | undefined): string | undefined => time && `for ${time}`;
const planned = (rest: string): Predicate => ({ verb: 'is', rest });

/** How a measure went, or is to go: the section says which, nothing else does. */
const course =
  (verb: string) =>
  (said: Said<Course> & Injected, section: Section): Predicate => {
    const times = said.count && (said.count === '1' ? '1 time' : `${said.count} times`);
    const ahead = section === 'plan' || section === 'operation';
    const done = section === 'plan' ? 'planned' : ahead ? 'ordered' : verb;
    const rest = commas(
      spaced(done, times, said.agent && `with ${said.agent}`, said.guidance, said.on, forTime(said.for)),
      said.stop && `stopped ${said.stop}`,
      said.reason && `stopped for ${said.reason}`,
      said.kept,
      said.response,
    );
    return ahead ? planned(rest) : was(rest);
  };
const without =
  (verb: string) =>
  (said: Said<Course> & Injected, section: Section): Predicate => {
    const { verb: be, rest } = course(verb)(said, section);
    return { verb: be, rest: `not ${rest}` };
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

const review: OwnPhrase<'review'> = {
  shape: 'own',
  name: 'review',
  by: 'arranged',
  wording: {},
  present: ({ in: interval, on }) => planned(spaced('planned', interval && `in ${interval}`, on)),
  absent: ({ in: interval, on }) => planned(spaced('not planned', interval && `in ${interval}`, on)),
};

const image: OwnPhrase<'image'> = {
  shape: 'own',
  name: 'imaging',
  by: 'requested',
  wording: { by: { xray: 'a radiograph', us: 'ultrasound', mri: 'MRI' } },
  present: ({ by }) => ({ ...planned('planned'), ...(by ? { subject: by } : {}) }),
  absent: ({ by }) => ({ ...planned('not planned'), ...(by ? { subject: by } : {}) }),
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
  tape: { ...measure<'tape'>('taping', 'tried', 'of'), noun: 'toe' as const },
  pad: measure<'pad'>('a metatarsal pad', 'tried', 'under'),
  insert: measure<'insert'>('a stiff insert', 'tried', 'for'),
  boot: measure<'boot'>('a walking boot', 'tried', 'for'),
  'postop-shoe': measure<'postop-shoe'>('a postoperative shoe', 'tried', 'for'),
  'anti-inflammatory': measure<'anti-inflammatory'>('anti-inflammatory medication', 'tried', 'for'),
  steroid: {
    ...measure<'steroid'>(withArticle('steroid injection'), 'given', { ray: 'at', web: 'in', foot: 'in' }),
    wording: {
      ...wording,
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
    },
  },
  review,
  image,
  operation,
};
