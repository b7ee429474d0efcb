import { HANDLED } from '../../../../../grammar/lexicon/before-operation.ts';
import { PROCEDURES } from '../../../../../grammar/lexicon/operation.ts';
import type { Said } from './index.ts';
import { listed } from './listed.ts';
import { STEPS_SAID } from './steps-said.ts';

const DONE = /(?<![^ ])(?:[a-z]+ed|cut|done|made|out|shrunk)(?![^ ])/;

/** Orders for a drug, by what the language says for each. */
const VERBS: Readonly<Record<string, readonly string[]>> = {
  stop: listed('withhold, pause, suspend, discontinue, cease, halt, come off, leave off'),
  continue: listed(
    'carry on with, carry on, keep taking, keep on, stay on, continue with, continue taking, keep going with',
  ),
  restart: listed('resume, recommence, go back on, reintroduce'),
};
const drugs = Object.entries<readonly string[]>(HANDLED).flatMap(([drug, others]) => [drug, ...others]);
const drugOrders = Object.fromEntries(
  Object.entries(VERBS).flatMap(([verb, said]) =>
    drugs.map((drug): [string, readonly string[]] => [
      `${verb} ${drug}`,
      said.flatMap((each) => [`${each} ${drug}`, `${each} the ${drug}`, `${each} her ${drug}`, `${each} his ${drug}`]),
    ]),
  ),
);

/** What is planned is named by its noun; a step that is told as done is of a note of an operation. */
const planned = Object.fromEntries(
  Object.entries(STEPS_SAID)
    .filter(([step]) => step in PROCEDURES && step !== 'debridement' && step !== 'washout')
    .map(([step, said]): [string, readonly string[]] => [step, said.filter((each) => !DONE.test(each))])
    .filter(([, said]) => said.length > 0),
);

/** Before an operation. */
export const BEFORE_THEATRE: Said = {
  consent: {
    value: {
      given: listed('gained, completed, in place, complete, got, received, provided'),
      signed: listed('signed and dated, signed today'),
      confirmed: listed('rechecked, re confirmed, verified'),
      'to be taken': listed('to be obtained, to follow, outstanding, to be done, awaited, to be completed'),
      informed: listed('fully informed, full informed'),
      written: listed('in writing'),
      verbal: listed('oral, verbally, orally'),
      withdrawn: listed('revoked'),
    },
  },
  'drug-plan': {
    finding: drugOrders,
    value: {
      'before the operation': listed('ahead of surgery, preoperatively, ahead of the operation'),
      'after the operation': listed(
        'following surgery, post operatively, postoperatively, following the operation, following the procedure',
      ),
    },
  },
  operation: {
    finding: {
      operation: listed('operative treatment, surgical treatment, operative repair, surgical repair'),
      ...planned,
    },
    value: planned,
  },
};
