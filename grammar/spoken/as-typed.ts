import type { Slot } from '../lexicon/entry.ts';
import type { Item } from '../reader/items.ts';
import { type Fitted, fitQuantity, type Quantity } from '../reader/quantities.ts';
import type { ReadingProblem, Role } from '../syntax.ts';
import type { PartialDate } from '../values.ts';

const two = (n: number): string => String(n).padStart(2, '0');
const dateText = ({ year, month, day }: PartialDate): string =>
  [String(year), ...(month ? [two(month)] : []), ...(month && day ? [two(day)] : [])].join('-');

/** What the language writes for a date or a fraction that was said; `undefined` for one that was typed. */
export function typedItem(item: Item): string | undefined {
  if (item.is === 'date' && item.said) return dateText(item.date);
  if (item.is === 'slashed' && item.said) return `${item.first}/${item.second}`;
  return undefined;
}

const SIGNS = { about: '~', under: '<', over: '>' } as const;
/** What the language writes for a quantity that was said; `undefined` for one that was typed. */
export function typedQuantity(item: Item, { low, high, range, bound, unit }: Quantity): string | undefined {
  if (item.is !== 'number' || item.said === undefined) return undefined;
  const number = `${bound ? SIGNS[bound] : ''}${low}${range ? `-${high}` : ''}`;
  if (unit === undefined) return number;
  return unit === '°' || unit === '%' || unit.startsWith('/') ? `${number}${unit}` : `${number} ${unit}`;
}

/** `gap two three`: two neighbours said one after the other, where a pair is open. */
export function spokenPair(
  items: readonly Item[],
  index: number,
  open: readonly (readonly [string, Slot])[],
): (Fitted & { readonly typed: string }) | undefined {
  const first = items[index];
  const second = items[index + 1];
  const slot = open.find((each) => each[1].kind === 'pair');
  if (!slot || first?.is !== 'number' || second?.is !== 'number' || !first.said || !second.said) return undefined;
  if (second.low !== first.low + 1 || first.unit || second.unit) return undefined;
  const at = { start: first.start, end: second.end, next: index + 2 };
  const fitted = fitQuantity({ low: first.low, high: second.low, range: true, plus: false, ...at }, [slot]);
  return fitted && { ...fitted, typed: `${first.low}-${second.low}` };
}

/** Hesitations belong to no item; each run of them is a filler, so that no character is without a role. */
export function pauses(line: string, items: readonly Item[]): Role[] {
  const roles: Role[] = [];
  let from = 0;
  const fill = (start: number): void => {
    const gap = line.slice(from, start);
    const text = gap.trim();
    if (!text) return;
    const at = from + gap.indexOf(text);
    roles.push({ kind: 'filler', start: at, end: at + text.length });
  };
  for (const { start, end } of items) {
    if (start > from + 1 || (start > from && line[from] !== ' ')) fill(start);
    from = Math.max(from, end);
  }
  if (from < line.length) fill(line.length);
  return roles;
}

/** Numbers that were heard as another word: read, and said so. */
export function heard(line: string, items: readonly Item[]): ReadingProblem[] {
  const problems: ReadingProblem[] = [];
  for (const item of items) {
    if (item.is !== 'number' || !item.heard) continue;
    const { start, end } = item;
    problems.push({ code: 'heard-number', text: line.slice(start, end), start, end });
  }
  return problems;
}
