import type { GradeSlot, NumberSlot, Slot, TimeUnit, Unit } from '../lexicon/entry.ts';
import { CONVERTED, TIME_UNITS, UNIT_WORDS } from '../lexicon/unit-words.ts';
import { own } from '../own.ts';
import type { CauseKind } from '../syntax.ts';
import { type Bound, type Duration, isWeb, type Making, type Value } from '../values.ts';
import type { Item, ItemOf } from './items.ts';

/** A number with the unit that follows it, before any slot has claimed it. */
export interface Quantity {
  readonly low: number;
  readonly high: number;
  readonly unit?: Unit;
  /** As typed, for the message about a unit that does not fit. */
  readonly unitText?: string;
  readonly bound?: Bound;
  readonly range: boolean;
  /** `2+` is a grade. */
  readonly plus: boolean;
  readonly start: number;
  readonly end: number;
  /** Index of the item after the quantity. */
  readonly next: number;
}

const BOUNDS: Readonly<Record<string, Bound>> = { '~': 'about', '<': 'under', '>': 'over' };

/** The number at `start` with its unit; `undefined` where no number stands. */
export function quantityAt(items: readonly Item[], start: number): Quantity | undefined {
  const item = items[start];
  if (item?.is === 'slashed') return slashedDuration(item, start);
  if (item?.is !== 'number') return undefined;
  const daily = perDay(items, start);
  if (daily) return daily;
  const after = items[start + 1];
  const word = after?.is === 'word' ? after.text.toLowerCase() : undefined;
  const typed = item.unit?.toLowerCase() ?? word;
  const converted = typed === undefined ? undefined : own(CONVERTED, typed);
  const unit = converted?.to ?? (typed === undefined ? undefined : own(UNIT_WORDS, typed));
  const factor = converted?.factor ?? 1;
  const takesWord = item.unit === undefined && unit !== undefined;
  const end = takesWord && after ? after.end : item.end;
  const next = takesWord ? start + 2 : start + 1;
  const { range, plus = false, bound } = item;
  const { low, high } = item;
  const read: Making<Quantity> = { low: low * factor, high: high * factor, range, plus, start: item.start, end, next };
  if (unit && typed) {
    read.unit = unit;
    read.unitText = typed;
  }
  if (bound) read.bound = BOUNDS[bound] as Bound;
  return read;
}

const A_DAY: readonly string[] = ['a', 'per', '/'];
const DAY: readonly string[] = ['day', 'd'];
const COUNTED: readonly string[] = ['cigarettes', 'cigs', 'cigarette'];
/** `20 a day`, `20 cigarettes per day`, `20/day`. */
function perDay(items: readonly Item[], start: number): Quantity | undefined {
  const item = items[start];
  if (item?.is !== 'number' || item.unit !== undefined) return undefined;
  const wordAt = (index: number): string => {
    const found = items[index];
    return found?.is === 'word' || found?.is === 'other' ? found.text.toLowerCase() : '';
  };
  const joiner = COUNTED.includes(wordAt(start + 1)) ? start + 2 : start + 1;
  const last = items[joiner + 1];
  if (!A_DAY.includes(wordAt(joiner)) || !DAY.includes(wordAt(joiner + 1)) || !last) return undefined;
  return {
    low: item.low,
    high: item.high,
    unit: '/day',
    unitText: 'a day',
    ...(item.bound ? { bound: BOUNDS[item.bound] as Bound } : {}),
    range: item.range,
    plus: item.plus ?? false,
    start: item.start,
    end: last.end,
    next: joiner + 2,
  };
}

/** `7/52` is weeks, `3/12` months, `5/7` days: the trade's fractions of a year and a week. */
function slashedDuration(item: ItemOf<'slashed'>, start: number): Quantity | undefined {
  const units: Readonly<Record<number, TimeUnit>> = { 52: 'weeks', 12: 'months', 7: 'days' };
  const unit = units[item.second];
  if (!unit) return undefined;
  const low = item.from ?? item.first;
  const bound = item.bound ? { bound: BOUNDS[item.bound] as Bound } : {};
  const count = { low, high: item.first, unit, ...bound, range: low !== item.first, plus: false };
  return low > item.first ? undefined : { ...count, start: item.start, end: item.end, next: start + 1 };
}

export interface Fitted {
  readonly slot: string;
  readonly value: Value;
  readonly cause?: CauseKind;
}

const isTime = (unit: Unit | undefined): unit is TimeUnit => TIME_UNITS.some((known) => known === unit);
const SHORT: readonly TimeUnit[] = ['minutes', 'hours'];
const durationOf = (q: Quantity, unit: TimeUnit): Duration => ({
  low: q.low,
  high: q.high,
  unit,
  ...(q.bound ? { bound: q.bound } : {}),
});

/**
 * The slot among `open` that takes the quantity, with its value. A quantity whose unit fits none of them is kept in the
 * only slot that measures, marked `wrong unit`; a grade is never taken from millimetres.
 */
export function fitQuantity(q: Quantity, open: readonly (readonly [string, Slot])[]): Fitted | undefined {
  for (const [slot, shape] of open) {
    if (shape.kind === 'duration' && isTime(q.unit) && !(shape.least === 'days' && SHORT.includes(q.unit)))
      return { slot, value: { is: 'duration', ...durationOf(q, q.unit) } };
    if (shape.kind === 'grade' && q.unit === undefined) return { slot, ...graded(q, shape) };
    if (shape.kind === 'number' && fitsUnit(q, shape)) return { slot, ...measured(q, shape) };
    if (shape.kind === 'date' && isYear(q)) return { slot, value: { is: 'date', date: { year: q.low } } };
    if (shape.kind === 'pair' && q.range && q.unit === undefined && q.high === q.low + 1 && isWeb(q.low))
      return { slot, value: { is: 'pair', web: q.low } };
  }
  if (q.unit === undefined || isTime(q.unit)) return undefined;
  const measuring = open.filter(([, shape]) => shape.kind === 'number' || shape.kind === 'grade');
  const only = measuring.length === 1 ? measuring[0] : undefined;
  if (!only) return undefined;
  const value: Value = { is: 'number', low: q.low, high: q.high, unit: q.unit, wrongUnit: q.unitText ?? q.unit };
  return { slot: only[0], value, cause: 'wrong unit' };
}

/** A year alone keeps its precision. */
const isYear = (q: Quantity): boolean =>
  Number.isInteger(q.low) && q.low >= 1900 && q.low <= 2100 && !q.range && !q.plus && !q.unit && !q.bound;

const fitsUnit = (q: Quantity, shape: NumberSlot): boolean =>
  !q.plus &&
  (q.unit === undefined
    ? (shape.bare || shape.unit === '') &&
      q.low >= (shape.bareFrom ?? Number.NEGATIVE_INFINITY) &&
      q.high <= (shape.bareTo ?? Number.POSITIVE_INFINITY)
    : q.unit === shape.unit);

function measured(q: Quantity, shape: NumberSlot): { value: Value; cause?: CauseKind } {
  const bound = q.bound ? { bound: q.bound } : {};
  const value: Value = { is: 'number', low: q.low, high: q.high, unit: shape.unit, ...bound };
  return outside(q, shape) ? { value, cause: 'out of range' } : { value };
}
const outside = (q: Quantity, shape: { min: number; max: number }): boolean =>
  q.low < shape.min || q.high > shape.max || q.high < q.low;

const GRADES = {
  drawer: 'drawer grade',
  stage: 'stage',
  anatomical: 'anatomical grade',
  pulse: 'pulse grade',
} as const;
/** Ranges of grades are of neighbours only, and a grade is whole and unbounded. */
function graded(q: Quantity, shape: GradeSlot): { value: Value; cause?: CauseKind } {
  const value: Value = { is: GRADES[shape.of], low: q.low, high: q.high };
  if (outside(q, shape) || !Number.isInteger(q.low) || !Number.isInteger(q.high))
    return { value, cause: 'out of range' };
  if (q.range && q.high - q.low !== 1) return { value, cause: 'wide range' };
  return q.bound ? { value, cause: 'doubt' } : { value };
}

/** `aofas 85/100`: of all the points that the score can take. */
const isOfAllPoints = ({ unit, bare, max }: NumberSlot, whole: number): boolean =>
  unit === '' && bare && max === 100 && whole === 100;

/** A date, a clock time, or a fraction for one of the open slots. */
export function fitItem(item: Item, open: readonly (readonly [string, Slot])[]): Fitted | undefined {
  for (const [slot, shape] of open) {
    if (item.is === 'date' && shape.kind === 'date') return { slot, value: { is: 'date', date: item.date } };
    if (item.is === 'clock' && shape.kind === 'clock')
      return { slot, value: { is: 'clock', hour: item.hour, minute: item.minute } };
    if (item.is !== 'slashed') continue;
    const whole = item.from === undefined && item.bound === undefined;
    if (shape.kind === 'pair' && whole && item.second === item.first + 1 && isWeb(item.first))
      return { slot, value: { is: 'pair', web: item.first } };
    if (shape.kind === 'fraction' && whole) {
      const value: Value = { is: 'fraction', part: item.first, whole: item.second };
      return item.first > item.second || item.second === 0 ? { slot, value, cause: 'out of range' } : { slot, value };
    }
    const outOf = shape.kind === 'number' && (shape.unit === `/${item.second}` || isOfAllPoints(shape, item.second));
    if (outOf) {
      const low = item.from ?? item.first;
      const bound = item.bound ? { bound: BOUNDS[item.bound] as Bound } : {};
      const value: Value = { is: 'number', low, high: item.first, unit: shape.unit, ...bound };
      return item.first > item.second || low > item.first ? { slot, value, cause: 'out of range' } : { slot, value };
    }
  }
  return undefined;
}
