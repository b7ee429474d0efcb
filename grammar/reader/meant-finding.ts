import type { FindingId } from '../lexicon/index.ts';
import type { Binder } from './binder.ts';
import { type Match, matchesAt } from './forms.ts';
import { type Claim, needsMore } from './goes-with.ts';
import { endsSegment } from './items.ts';

/** `df -5 knee straight`: dorsiflexion with the place of the knee is the ankle's. */
export function ofAnkle(binder: Binder, claim: ReturnType<Binder['findingIn']>, next: number): typeof claim {
  if (claim?.id !== 'mtp-dorsiflexion') return claim;
  for (let i = next; i < binder.items.length && binder.items[i]?.is !== 'break'; i++)
    if (matchesAt(binder.items, i).some(({ form }) => form.values.has('ankle-dorsiflexion')))
      return { id: 'ankle-dorsiflexion' };
  return claim;
}

/** `worse` alone compares; only with its circumstance (`worse in heels`) does it say something of its own. */
export function lacksCircumstance(binder: Binder, claim: Claim, index: number): boolean {
  const { id } = claim;
  // `d/c tape` stops the tape; alone it sends the patient home.
  if (id === 'discharge' && SHORT.test(binder.line.slice(0, binder.items[index - 1]?.end)))
    return !endsSegment(binder.items[index]);
  // `tape rash on the second toe` is seen today; alone it is told of the patient.
  if (id === 'allergy' && /\brash(?: \w+ tape)?$/i.test(wordsBefore(binder, index)))
    return !endsSegment(binder.items[index]);
  if (needsMore(binder, claim, index)) return true;
  // `list for mri` waits for no operation.
  if (id === 'listing' && /\bfor$/i.test(binder.line.slice(0, binder.items[index - 1]?.end)))
    return binder.findingAt(index)?.id !== 'operation';
  if (!ONLY_WITH_VALUE.includes(id) || binder.before.length > 0) return false;
  for (let i = index; ; ) {
    const matches = matchesAt(binder.items, i);
    if (matches.some(({ form }) => form.values.has(id))) return false;
    const filler = matches.find(({ form }) => form.classes.has('filler'));
    if (!filler) return true;
    i = filler.next;
  }
}
/** The few words before an item. */
const wordsBefore = ({ line, items }: Binder, index: number): string =>
  line.slice(items[Math.max(0, index - 3)]?.start, items[index - 1]?.end);
const SHORT = /\bd\/?c$/i;
const ONLY_WITH_VALUE: readonly FindingId[] = ['worse-with', 'eased-by'];

/** What is said of an image before what is seen on it. */
export const OF_IMAGE: readonly string[] = ['view', 'image-date', 'image-reader', 'ultrasound-method'];

/** `drawer 1+ red`: short for another word beside that test. */
export const shortFor = ({ parts }: Match['form'], current: string | undefined): boolean =>
  current !== undefined && (SHORT_FOR[parts.join(' ')]?.includes(current) ?? false);
const SHORT_FOR: Readonly<Record<string, readonly string[]>> = { red: ['drawer', 'dislocated', 'mtp', 'pip'] };
