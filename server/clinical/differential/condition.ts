import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../../grammar/lexicon/index.ts';
import type { AnyFact } from '../facts.ts';
import { clear, type FactOf, type Site, type View } from './view.ts';

/** `no proof`: stated and weighed, and it argues neither way. */
export type Role = 'for' | 'against' | 'no proof';

/** What some facts say of a condition. `why` reads after the words of the note. */
export interface Claim extends Sourced {
  readonly role: Role;
  readonly when: (view: View) => readonly AnyFact[];
  readonly why: string;
}

/** One thing to look at. A fact is taken by the first claim that wants it. */
export interface Criterion {
  readonly finding: FindingId;
  readonly claims: readonly Claim[];
  /** How it is examined or asked, where it should be; what is only useful when known has none. */
  readonly ask?: string;
  /** Why it argues for the condition where only an earlier visit told it and this one does not deny it; common practice. */
  readonly told?: string;
}

export interface Condition {
  readonly id: string;
  readonly at: readonly Site['at'][];
  /** Comes first whatever argues for the others. */
  readonly neverMiss?: true;
  readonly criteria: readonly Criterion[];
  /** The exam or test that tells it from the others. */
  readonly separate: Sourced & { readonly ask: string };
}

export const practice = { source: 'common practice', mark: 'common practice' } as const;

type Test<F extends FindingId> = (fact: FactOf<F>, view: View) => boolean;
const pick =
  <F extends FindingId>(finding: F, wanted: (fact: FactOf<F>) => boolean, test?: Test<F>) =>
  (view: View): readonly AnyFact[] =>
    clear(view, finding).filter((fact) => wanted(fact) && (!test || test(fact, view)));

/** Clear facts of a finding that is there. */
export const present = <F extends FindingId>(finding: F, test?: Test<F>) =>
  pick(finding, ({ status }) => status === 'present', test);
/** Clear facts that deny a finding; never silence. */
export const absent = <F extends FindingId>(finding: F, test?: Test<F>) =>
  pick(finding, ({ status }) => status === 'absent', test);
/** Clear facts of a finding, whatever their status. */
export const stated = <F extends FindingId>(finding: F, test?: Test<F>) => pick(finding, () => true, test);

/** Said of an image that an injury or an injection followed. */
export const OUTDATED = 'the image is older than an injury or an injection: it says nothing of the foot as it is now';

interface WordsValue {
  readonly words: readonly string[];
}
/** Does a value of words hold one of these? A value that was not written holds none. */
export const says = (value: WordsValue | undefined, ...wanted: readonly string[]): boolean =>
  value?.words.some((word) => wanted.includes(word)) ?? false;

type Why = string | ({ readonly why: string } & Partial<Sourced>);
function claim(role: Role, when: Claim['when'], given: Why): Claim {
  const { why, source, mark } = typeof given === 'string' ? { ...practice, why: given } : { ...practice, ...given };
  return { role, when, why, source, mark };
}
/** Claims; without a source of their own they are common practice. */
export const argues = (when: Claim['when'], why: Why): Claim => claim('for', when, why);
export const speaksAgainst = (when: Claim['when'], why: Why): Claim => claim('against', when, why);
export const provesNothing = (when: Claim['when'], why: Why): Claim => claim('no proof', when, why);
