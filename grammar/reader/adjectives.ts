import { entryOf, type FindingId } from '../lexicon/index.ts';
import type { Binder } from './binder.ts';
import { beforeClaim, matchesAt } from './forms.ts';

interface Described {
  readonly id: FindingId;
  /** The slots of the adjectives that stand between. */
  readonly slots: readonly string[];
}

/** The finding at an index, past adjectives that are all of it and each of a slot of its own (`shaft mild TTP`). */
export function findingPast(binder: Binder, index: number): Described | undefined {
  const found = binder.findingAt(index);
  if (found) return { id: found.id, slots: [] };
  for (const { form, next } of matchesAt(binder.items, index)) {
    if (form.classes.size > 0 || form.values.size === 0) continue;
    const after = findingPast(binder, next);
    const claim = after && beforeClaim(form, after.id, entryOf(after.id));
    if (after && claim && !after.slots.includes(claim.slot))
      return { id: after.id, slots: [claim.slot, ...after.slots] };
  }
  return undefined;
}
