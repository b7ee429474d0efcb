import { argues, type Condition, practice, present, says, speaksAgainst } from './condition.ts';
import type { FactOf } from './view.ts';

const isStiff = ({ values }: FactOf<'mtp-dorsiflexion' | 'mtp-motion'>): boolean => says(values.extent, 'limited');
const isFull = ({ values }: FactOf<'mtp-dorsiflexion' | 'mtp-motion'>): boolean => says(values.extent, 'full');
const under = ({ values }: FactOf<'tenderness'>): boolean =>
  says(values.place, 'plantar', 'head', 'sesamoids', 'medial sesamoid', 'lateral sesamoid');

/** What is of the great toe alone; it is never staged, and no plate of a lesser ray is weighed there. Common practice. */
export const GREAT_TOE: readonly Condition[] = [
  {
    id: 'hallux rigidus',
    at: ['great toe'],
    criteria: [
      {
        finding: 'mtp-dorsiflexion',
        ask: 'measure dorsiflexion of the great toe joint, and say whether it is limited or painful',
        claims: [
          argues(present('mtp-dorsiflexion', isStiff), 'a stiff great toe joint fits worn cartilage'),
          argues(
            present('mtp-dorsiflexion', ({ values }) => says(values.pain, 'painful')),
            'pain on dorsiflexion fits worn cartilage',
          ),
          speaksAgainst(present('mtp-dorsiflexion', isFull), 'dorsiflexion is full'),
        ],
      },
      {
        finding: 'mtp-motion',
        claims: [
          argues(present('mtp-motion', isStiff), 'a stiff great toe joint fits worn cartilage'),
          speaksAgainst(present('mtp-motion', isFull), 'motion is full'),
        ],
      },
      {
        finding: 'mtp',
        claims: [
          argues(
            present('mtp', ({ values }) => says(values.rigidity, 'fixed') || says(values.rigidity, 'stiff')),
            'a stiff great toe joint fits worn cartilage',
          ),
        ],
      },
      {
        finding: 'tenderness',
        claims: [
          argues(
            present('tenderness', ({ values }) => says(values.place, 'dorsal')),
            'dorsal tenderness fits the joint margin',
          ),
        ],
      },
      {
        finding: 'film-joint',
        claims: [
          argues(
            present('film-joint', ({ values }) => says(values.state, 'narrowed')),
            'the joint is narrowed on the film',
          ),
        ],
      },
    ],
    separate: {
      ...practice,
      ask: 'move the joint through its range, grinding it; weight-bearing film of the great toe',
    },
  },
  {
    id: 'sesamoid pain',
    at: ['great toe'],
    criteria: [
      {
        finding: 'tenderness',
        ask: 'press each sesamoid from below while the toe is moved',
        claims: [argues(present('tenderness', under), 'tenderness under the first head fits the sesamoids')],
      },
      {
        finding: 'pain',
        claims: [
          argues(
            present('pain', ({ values }) => says(values.place, 'plantar')),
            'pain under the first head fits the sesamoids',
          ),
        ],
      },
      {
        finding: 'trigger',
        claims: [
          argues(
            present('trigger', ({ values }) => says(values.what, 'load-rise')),
            'a rise in load overloads the sesamoids',
          ),
        ],
      },
    ],
    separate: { ...practice, ask: 'press each sesamoid apart; a view of the sesamoids, MRI where it shows nothing' },
  },
];
