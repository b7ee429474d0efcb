import type { Slot } from '../lexicon/entry.ts';
import type { FindingId } from '../lexicon/index.ts';
import type { Side, Span } from '../values.ts';
import type { Binder } from './binder.ts';
import { type Draft, hasValue } from './draft.ts';
import { matchesAt } from './forms.ts';
import { endsSegment } from './items.ts';
import { fitItem, fitQuantity, quantityAt } from './quantities.ts';

/** A side as read at an index, and where it goes on. */
interface SideAt extends Span {
  readonly value: Side;
  readonly next: number;
}

/**
 * One finding said of both sides, each with its own value: `abi right 0.9 left 1.0`, `monofilament 4/10 R 6/10 L`. The pair, or a
 * single side with its value (`toe pressure R 52`), must fill its segment to the end; anything else is left to the other rules.
 */
export function takePair(binder: Binder, here: SideAt): boolean {
  const { current: draft } = binder;
  const last = binder.last();
  const waits = binder.no || binder.not || binder.side || binder.question || binder.before.length > 0;
  if (!draft?.entry || waits || last?.is !== 'finding' || last.draft !== draft) return false;
  if (draft.trailing === here.value) draft.end = Math.max(draft.end, here.end);
  else if (draft.awaits === here.value) binder.twin(draft, here.value, here, here);
  else if (!startsPair(binder, draft, here)) return false;
  return true;
}

function startsPair(binder: Binder, draft: Draft, here: SideAt): boolean {
  if ((draft.side && draft.side !== 'both') || draft.subject?.side) return false;
  if (hasValue(draft)) return startsTrailing(binder, draft, here);
  const value = valueEnd(binder, draft, here.next);
  if (value === undefined || draft.statusGiven) return false;
  const touching = otherSide(binder, value, here.value);
  const parted = touching ? undefined : otherSide(binder, pastComma(binder, value), here.value);
  const end = (at: SideAt | undefined) => at && valueEnd(binder, draft, at.next, true);
  const second = end(touching ?? parted);
  const ends = second !== undefined && endsAt(binder, second);
  if (touching ? !ends : !endsAt(binder, value)) return false;
  const other = touching ?? (ends ? parted : undefined);
  draft.side = here.value;
  draft.end = Math.max(draft.end, here.end);
  if (other) draft.awaits = other.value;
  return true;
}

/** `hv R mild, L moderate`, `crt 2 R, 4 L`: a comma may part the two halves. */
function pastComma({ items }: Binder, index: number): number {
  const item = items[index];
  return item?.is === 'break' && item.of === 'segment' ? index + 1 : index;
}

/** Stands the comma at an index between the halves of a pair that has begun? */
export function partsPair(binder: Binder, index: number): boolean {
  const { current } = binder;
  if (!current) return false;
  if (current.trailing) return !hasValue(current) && !current.statusGiven;
  return current.awaits !== undefined && sideAt(binder, index + 1)?.value === current.awaits;
}

/** `monofilament 4/10 R 6/10 L`: each side after its value. */
function startsTrailing(binder: Binder, draft: Draft, here: SideAt): boolean {
  const from = pastComma(binder, here.next);
  // After a comma and before a side a number is no ray.
  const value = valueEnd(binder, draft, from, from > here.next);
  const other = value === undefined ? undefined : otherSide(binder, value, here.value);
  if (!other || !endsAt(binder, other.next)) return false;
  draft.side = here.value;
  draft.end = Math.max(draft.end, here.end);
  const start = binder.items[from]?.start ?? other.start;
  binder.twin(draft, other.value, { start, end: other.end }, other).trailing = other.value;
  return true;
}

/** Does `both` only announce a pair (`hv both R 30 L 22`)? */
export function announcesPair(binder: Binder, next: number): boolean {
  const first = sideAt(binder, next);
  const { current: draft } = binder;
  const sided = draft?.side !== undefined && draft.side !== 'both';
  if (!first || !draft?.entry || sided || draft.subject?.side || hasValue(draft) || draft.statusGiven) return false;
  const value = valueEnd(binder, draft, first.next);
  const other = value === undefined ? undefined : otherSide(binder, value, first.value);
  const second = other && valueEnd(binder, draft, other.next, true);
  return second !== undefined && endsAt(binder, second);
}

function sideAt({ items }: Binder, index: number): SideAt | undefined {
  const match = matchesAt(items, index).find(({ form }) => form.side);
  const [first, last] = [items[index], items[(match?.next ?? 0) - 1]];
  const value = match?.form.side;
  if (!match || !first || !last || !value || value === 'both') return undefined;
  return { value, next: match.next, start: first.start, end: last.end };
}
function otherSide(binder: Binder, index: number, side: Side): SideAt | undefined {
  const found = sideAt(binder, index);
  return found && found.value !== side ? found : undefined;
}

/** Past words that change nothing (`hv both R 30 L 22 clinically`). */
function endsAt({ items }: Pick<Binder, 'items'>, index: number): boolean {
  const item = items[index];
  if (endsSegment(item)) return true;
  const after = item?.is === 'word' && AFTERTHOUGHTS.includes(item.text.toLowerCase());
  return after && endsAt({ items }, index + 1);
}
const AFTERTHOUGHTS: readonly string[] = ['clinically', 'today'];

/** The index after one value of the finding, or after its denial; `undefined` where none stands. Only of the first it may be asked whether it is a ray. */
function valueEnd({ items }: Binder, draft: Draft, index: number, isSecond = false): number | undefined {
  const { entry } = draft;
  const item = items[index];
  if (!entry || !item) return undefined;
  const open: (readonly [string, Slot])[] = Object.entries(entry.slots).filter(
    ([, { labelled, locating }]) => !labelled && !locating,
  );
  const direct = fitItem(item, open);
  if (direct) return direct.cause ? undefined : index + 1;
  const quantity = quantityAt(items, index);
  if (quantity) {
    // `R 2` may be the second ray, where none has been named.
    const ray =
      !isSecond && quantity.unit === undefined && quantity.low <= 5 && entry.subjects.includes('ray') && !draft.subject;
    const fitted = ray ? undefined : fitQuantity(quantity, open);
    return fitted && !fitted.cause ? quantity.next : undefined;
  }
  const names = new Set(open.map(([slot]) => slot));
  return matchesAt(items, index).find(
    ({ form: { values, classes } }) =>
      values.get(draft.id as FindingId)?.some(({ slot }) => names.has(slot)) ||
      classes.has('absent') ||
      classes.has('not done'),
  )?.next;
}
