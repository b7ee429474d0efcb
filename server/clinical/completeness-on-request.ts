import { NEEDED, type OnRequest } from './completeness.ts';
import { type Step, wound } from './exam-steps.ts';
import type { AnyFact } from './facts.ts';

/** The words of an operation: of those, a pin is asked for apart, since nobody infers one from the approach. */
const isPin = ({ values }: AnyFact): boolean =>
  'what' in values && values.what?.is === 'word' && (values.what.words as readonly string[]).includes('pin');

/** Steps of an operation, and of what is asked after it; common practice. */
export const LATER_STEPS = {
  procedure: {
    ask: 'operation: what was done',
    findings: ['procedure', 'hallux-procedure'],
    is: (fact) => !isPin(fact),
  },
  approach: { ask: 'approach', findings: ['approach'] },
  pin: { ask: 'pin, or no pin', findings: ['procedure'], is: isPin },
  load: { ask: 'weight-bearing', findings: ['weight-bearing'] },
  colour: { ask: 'toe colour', findings: ['perfusion', 'capillary-refill', 'neurovascular'] },
  clot: { ask: 'calf, chest', findings: ['calf', 'chest'] },
} as const satisfies Readonly<Record<string, Step>>;
const { procedure, approach, pin, load, colour, clot } = LATER_STEPS;

/**
 * The purposes that are not asked while somebody types. After an operation the pale toe, infection and the signs of a clot lead every
 * contact, on the telephone too; common practice.
 */
export const ON_REQUEST: OnRequest = {
  needed: {
    operation: [procedure, approach, pin, load, colour],
    postop: [colour, wound, clot, ...(NEEDED.postop ?? []).filter((step) => step !== wound)],
    phone: [colour, wound, clot],
  },
  noPurpose:
    'The visit does not say what it is for, so that nobody can tell what it lacks. Write first, review, preop, operation, postop, phone or emergency after its date.',
};
