import type { AnyFact } from './facts.ts';

const QUIET_WOUND: readonly string[] = ['healed', 'clean', 'dry', 'clean and dry'];

/** Present and not said to be clean, dry or healed; a fresh incision without that word counts. */
export const isOpenWound = ({ status, values }: Extract<AnyFact, { finding: 'wound' }>): boolean =>
  status === 'present' && !values.state?.words.some((word) => QUIET_WOUND.includes(word));
