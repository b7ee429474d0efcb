import type { Binder } from './binder.ts';
import { isSize } from './goes-with.ts';
import { fitQuantity, quantityAt } from './quantities.ts';

/** `4-0 nylon`: the size of a suture is no range. */
export function sutureSize(binder: Binder, index: number): number | undefined {
  const { current, items } = binder;
  const item = items[index];
  if (current?.id !== 'closure' || !item || !isSize(binder, index) || !binder.isOpen('size')) return undefined;
  const text = binder.line.slice(item.start, item.end).replace('/', '-');
  binder.setValue('size', { is: 'word', words: [text] }, item);
  return index + 1;
}

const TIMES: readonly string[] = ['x', '×'];
/** `5 x 8 mm`: two measures with one unit, where the finding has a size and takes another across. */
export function readTwoSizes(binder: Binder, index: number): number | undefined {
  const { current, items } = binder;
  const [first, times, second] = [items[index], items[index + 1], items[index + 2]];
  const shape = current?.entry?.slots.size;
  const across = current?.entry?.slots.across;
  if (!current || !shape || !across || current.slots.size || current.slots.across || binder.no || binder.not)
    return undefined;
  if (first?.is !== 'number' || first.range || first.plus || first.bound || second?.is !== 'number') return undefined;
  const joins = (times?.is === 'word' || times?.is === 'other') && TIMES.includes(times.text.toLowerCase());
  const quantity = joins ? quantityAt(items, index + 2) : undefined;
  if (!quantity?.unit || quantity.range || quantity.low === 0) return undefined;
  const factor = quantity.low / second.low;
  const own = { ...quantity, low: first.low * factor, high: first.low * factor };
  const [size, width] = [fitQuantity(own, [['size', shape]]), fitQuantity(quantity, [['across', across]])];
  if (!size || !width || size.cause || width.cause || (first.unit && quantityAt(items, index)?.unit !== quantity.unit))
    return undefined;
  binder.setValue('size', size.value, first);
  binder.role('filler', binder.span(index + 1, index + 2));
  binder.setValue('across', width.value, binder.span(index + 2, quantity.next));
  return quantity.next;
}
