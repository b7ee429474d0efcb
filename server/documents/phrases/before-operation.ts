import { HANDLED } from '../../../grammar/lexicon/before-operation.ts';
import { asNamed, type OwnPhrase, type Predicate, type Said, spaced, was } from './phrase.ts';

const consent: OwnPhrase<'consent'> = {
  shape: 'own',
  name: 'consent',
  by: 'recorded',
  wording: {
    how: { informed: 'informed', written: 'written', verbal: 'verbal' },
    state: {
      given: 'given',
      signed: 'signed',
      confirmed: 'confirmed',
      'to be taken': 'still to be taken',
      declined: 'declined',
      withdrawn: 'withdrawn',
    },
  },
  present: ({ how, state, on }) => was(spaced('recorded as', state ?? 'written', on), how && `${how} consent`),
  absent: ({ how, state, on }) => was(spaced('not recorded as', state ?? 'given', on), how && `${how} consent`),
};

const handled = ({ what, drug, for: time, when, on }: Said<'drug-plan'>, not: boolean): Predicate => ({
  verb: 'is',
  rest: spaced(
    not ? 'not' : undefined,
    what ?? 'handled as written',
    time && (when ? time : what?.endsWith('stopped') ? `for ${time}` : `(${time}, as written)`),
    when,
    on,
  ),
  ...(drug ? { subject: drug } : {}),
});
const drugPlan: OwnPhrase<'drug-plan'> = {
  shape: 'own',
  name: 'a drug around the operation',
  by: 'planned',
  wording: {
    what: {
      stopped: 'to be stopped',
      continued: 'to be continued',
      restarted: 'to be restarted',
      bridged: 'to be bridged',
    },
    drug: {
      ...asNamed(HANDLED),
      anticoagulant: 'the anticoagulant',
      doac: 'the direct oral anticoagulant',
      biologic: 'the biologic drug',
    },
    when: { 'before the operation': 'before the operation', 'after the operation': 'after the operation' },
  },
  present: (said) => handled(said, false),
  absent: (said) => handled(said, true),
};

const smoking: OwnPhrase<'smoking-advice'> = {
  shape: 'own',
  name: 'stopping smoking',
  by: 'raised',
  wording: {},
  present: ({ for: time }) => ({ verb: 'is', rest: spaced('advised', time && `for ${time}`) }),
  absent: ({ for: time }) => ({ verb: 'is', rest: spaced('not advised', time && `for ${time}`) }),
};

export const BEFORE_OPERATION_PHRASES = { consent, 'drug-plan': drugPlan, 'smoking-advice': smoking };
