import type { EventKind } from '../syntax.ts';

/** The words of the lines that sign, add to, divide and carry over a visit: one place for reader, completion and reference. */

/** Lines of their own. */
export const LIFECYCLE_WORDS = ['signed', 'addendum', 'event'] as const;
/** They stand before the statements of a line, or alone above a block of lines. */
export const PREFIX_WORDS = ['carried', 'proposed', 'examiner'] as const;

type Forms<K extends string> = Readonly<Record<K, readonly string[]>>;

/** Kind of event to the other words for it. */
export const EVENT_WORDS: Forms<EventKind> = {
  reduction: ['closed reduction', 'relocation', 'reduced'],
  'pin-out': ['pin out', 'pin removal', 'pin removed', 'wire out', 'k-wire out'],
  block: ['anaesthetic block', 'local block', 'toe block', 'ring block', 'nerve block'],
};

/** Who signs or examines where no initials stand. A name is never asked for. */
export const SIGNER_ROLES: readonly string[] = [
  'surgeon',
  'consultant',
  'registrar',
  'fellow',
  'resident',
  'trainee',
  'doctor',
  'nurse',
  'physiotherapist',
  'podiatrist',
  'assistant',
  'scribe',
  'student',
];

/** Small words after `carried`, before its date. */
export const CARRIED_FILLERS: readonly string[] = ['from', 'over', 'forward'];

export const EVENT_BY_FORM: ReadonlyMap<string, EventKind> = new Map(
  Object.entries<readonly string[]>(EVENT_WORDS).flatMap(([kind, others]) =>
    [kind, ...others].map((form) => [form, kind as EventKind] as const),
  ),
);

const TITLES: readonly string[] = ['DR', 'MR', 'MRS', 'MS', 'MISS', 'PROF'];
/** Up to four capital letters: words in small letters may be a name, or grammar. */
export const isInitials = (text: string): boolean => /^\p{Lu}{1,4}$/u.test(text) && !TITLES.includes(text);
