import type { FindingId } from '../lexicon/index.ts';
import type { Binder } from './binder.ts';
import { matchesAt } from './forms.ts';
import { endsSegment } from './items.ts';
import { quantityAt } from './quantities.ts';

export type Claim = NonNullable<ReturnType<Binder['findingIn']>>;

/** Does the word before an index lack what makes a finding of it: its year, its size, its distance, or the sign of its fellow? */
export function needsMore(binder: Binder, { id, lead }: Claim, index: number): boolean {
  const word = wordBefore(binder, index);
  switch (id) {
    case 'dp':
    case 'pt':
      return (word === '+' || word === '-') && !signedAlike(binder, index);
    case 'earlier-surgery':
      // `weil 2019` is of the past by its year; `s/p` by what was done.
      if (word === 's/p' || word === 'post') return !hasValueAt(binder, id, index);
      return lead !== undefined && !datedAfter(binder, index);
    case 'weight-bearing':
      return (
        word === 'heel' &&
        !((binder.current ?? binder.closed)?.id === id && quantityAt(binder.items, index)?.unit !== undefined)
      );
    case 'walking-distance':
      return !isDistance(binder, index);
    case 'closure':
      return (
        ['skin', 'subcut', 'subcutaneous'].includes(word) && !isSize(binder, index) && !hasValueAt(binder, id, index)
      );
    default:
      return false;
  }
}

const wordBefore = ({ line, items }: Binder, index: number): string =>
  line.slice(items[index - 1]?.start, items[index - 1]?.end).toLowerCase();

/** `dp + pt -`: each has its sign, to the end of the segment; `dp + pt absent` joins the two. */
function signedAlike(binder: Binder, index: number): boolean {
  if (endsSegment(binder.items[index])) return true;
  const after = binder.findingAt(index);
  const sign = after?.form.parts.at(-1);
  return (after?.id === 'dp' || after?.id === 'pt') && (sign === '+' || sign === '-');
}

const hasValueAt = ({ items }: Binder, id: FindingId, index: number): boolean =>
  matchesAt(items, index).some(({ form }) => form.values.has(id));

function datedAfter({ items }: Binder, index: number): boolean {
  for (let i = index; !endsSegment(items[i]); i++) {
    const item = items[i];
    if (item?.is === 'date') return true;
    if (item?.is === 'number' && item.low >= 1900 && item.low <= 2100 && !item.unit && !item.range) return true;
  }
  return false;
}

const FAR: readonly string[] = ['m', 'km', 'miles', 'yards', 'blocks', 'minutes', 'hours'];
function isDistance({ items }: Binder, index: number): boolean {
  const start = items[index]?.is === 'keeper' ? index + 1 : index;
  const unit = quantityAt(items, start)?.unit;
  return unit !== undefined && FAR.includes(unit);
}

/** `4-0`, `3/0`. */
export function isSize({ line, items }: Binder, index: number): boolean {
  const item = items[index];
  return item !== undefined && /^[2-5][-/]0$/.test(line.slice(item.start, item.end));
}
