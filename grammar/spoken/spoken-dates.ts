import { own } from '../own.ts';
import type { Item } from '../reader/items.ts';
import type { PartialDate } from '../values.ts';
import { numberAt } from './spoken-numbers.ts';
import { spanOf, wordAt } from './spoken-phrases.ts';
import { BEFORE_MONTH, MONTHS, ORDINAL_WORDS } from './spoken-words.ts';

interface Part {
  readonly value: number;
  readonly next: number;
}

const TENS: Readonly<Record<string, number>> = { twenty: 20, thirty: 30 };
/** `third`, `twenty first`, `3rd`, `3`: a day of a month. */
function dayAt(items: readonly Item[], index: number): Part | undefined {
  const item = items[index];
  if (item?.is === 'ordinal' && item.low === item.high) return { value: item.low, next: index + 1 };
  const word = wordAt(items, index);
  const one = ORDINAL_WORDS.get(word);
  if (one !== undefined) return { value: one, next: index + 1 };
  const tens = own(TENS, word);
  const unit = ORDINAL_WORDS.get(wordAt(items, index + 1));
  if (tens && unit !== undefined && unit < 10) return { value: tens + unit, next: index + 2 };
  const number = numberAt(items, index);
  return number && Number.isInteger(number.value) && number.value >= 1 && number.value <= 31
    ? { value: number.value, next: number.next }
    : undefined;
}

/** `2026`, `twenty twenty six`, `two thousand and twenty six`, `nineteen ninety eight`. */
function yearAt(items: readonly Item[], index: number): Part | undefined {
  const first = numberAt(items, index);
  if (!first) return undefined;
  if (first.value >= 1900 && first.value <= 2100) return { value: first.value, next: first.next };
  if (first.value !== 19 && first.value !== 20) return undefined;
  const rest = numberAt(items, first.next);
  return rest && Number.isInteger(rest.value) && rest.value >= 10 && rest.value <= 99
    ? { value: first.value * 100 + rest.value, next: rest.next }
    : undefined;
}

const monthAt = (items: readonly Item[], index: number): number | undefined => MONTHS.get(wordAt(items, index));
/** `jan`, which only its year makes a month. */
const isShort = (items: readonly Item[], index: number): boolean =>
  /^(?!may)(?:sept|\w{3})$/.test(wordAt(items, index));
/** Names of months that are common words too. */
const isCommon = (items: readonly Item[], index: number): boolean =>
  isShort(items, index) || /^(?:march|may)$/.test(wordAt(items, index));

/**
 * A date that names its month: `third of june twenty twenty six`, `june third 2026`, `march 2026`. Without its year, or after
 * `last`, it is a date that is reported and not read. A month that is also a common word needs a day or a year beside it.
 */
export function spokenDate(items: readonly Item[], start: number): { item: Item; next: number } | undefined {
  const day = dayAt(items, start);
  if (day) {
    const of = wordAt(items, day.next) === 'of';
    const month = of ? day.next + 1 : day.next;
    const sure = of || !isCommon(items, month) || yearAt(items, month + 1);
    if (monthAt(items, month) !== undefined && sure) return dated(items, start, month, day.value, month + 1);
  }
  if (monthAt(items, start) === undefined) return undefined;
  const after = wordAt(items, start + 1) === 'the' ? start + 2 : start + 1;
  const year = yearAt(items, start + 1);
  const later = year ? undefined : dayAt(items, after);
  if (later && yearAt(items, later.next)) return dated(items, start, start, later.value, later.next);
  if (year) return dated(items, start, start, undefined, start + 1);
  const before = !isShort(items, start) && BEFORE_MONTH.includes(wordAt(items, start - 1));
  if (isCommon(items, start) && !before) return undefined;
  return { item: { is: 'bad date', why: 'ambiguous', ...spanOf(items, start, start + 1) }, next: start + 1 };
}

function dated(
  items: readonly Item[],
  start: number,
  monthIndex: number,
  day: number | undefined,
  yearIndex: number,
): { item: Item; next: number } {
  const from = items[yearIndex]?.is === 'break' ? yearIndex + 1 : yearIndex;
  const year = yearAt(items, from);
  const next = year?.next ?? yearIndex;
  const at = spanOf(items, start, next);
  if (!year) return { item: { is: 'bad date', why: 'ambiguous', ...at }, next };
  const date = { year: year.value, month: monthAt(items, monthIndex) ?? 1, ...(day === undefined ? {} : { day }) };
  return isDay(date)
    ? { item: { is: 'date', date, said: true, ...at }, next }
    : { item: { is: 'bad date', why: 'impossible', ...at }, next };
}

const isDay = ({ year, month = 1, day }: PartialDate): boolean =>
  day === undefined || (day >= 1 && day <= new Date(Date.UTC(year, month, 0)).getUTCDate());
