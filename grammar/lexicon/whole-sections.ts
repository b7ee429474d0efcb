import type { Status } from '../values.ts';
import { entry } from './entry.ts';

const shared = {
  source: 'common practice',
  mark: 'common practice',
  kind: 'event',
  bare: 'incomplete',
  subjects: ['foot'],
  slots: {},
} as const;

/** What a section says of itself as a whole, where nothing else stands in its statement: it says nothing of any one finding. */
export const WHOLE_SECTIONS = [
  entry({
    ...shared,
    id: 'earlier-treatment',
    sections: ['tried', 'history', 'exam'],
    word: 'earlier-treatment',
    order: 12.5,
    technique: 'Ask what was tried, for how long, how well it was kept, and what it did.',
    meaning: 'That nothing was tried is an answer; that nothing is written is none.',
  }),
  entry({
    ...shared,
    id: 'standing-exam',
    sections: ['stand'],
    word: 'standing-exam',
    order: 29.5,
    technique: 'Look at both feet standing, with the weight on both.',
    meaning: 'A foot that was not seen standing is not a straight one: what was not done says nothing of the toes.',
  }),
] as const;

/** Of which section which statements do so, as `section words`; a reason may follow in quotes. */
export const SAID_OF_WHOLE: readonly (readonly [(typeof WHOLE_SECTIONS)[number]['id'], Status, RegExp])[] = [
  ['earlier-treatment', 'absent', /^tried (none|nil|nothing|no treatment)( so far| yet)?$/],
  ['earlier-treatment', 'absent', /^(tried|history|exam) (nothing tried( so far| yet)?|no treatment (so far|yet))$/],
  ['earlier-treatment', 'not done', /^tried (not done|nd)$/],
  ['standing-exam', 'not done', /^stand (not (done|examined|assessed|tested)|nd)$/],
  ['standing-exam', 'unable', /^stand (unable|not possible)$/],
];
