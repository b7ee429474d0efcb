import { Recent } from '../../grammar/recent.ts';
import type { Duration, PartialDate, ValueOf } from '../../grammar/values.ts';

/** A day without time: how many days after the first that a `Date` can hold, so that none is 0. No other number is one. */
export type Day = number & { readonly is: 'day' };

const DAY = 86_400_000;
/** 1970-01-01; a `Date` reaches as far from it either way. */
const EPOCH = 100_000_001;
const dateOf = (day: Day): Date => new Date((day - EPOCH) * DAY);
const dayOn = (date: Date): Day => checked(date.getTime() / DAY + EPOCH);
/** Throws for a day beyond what a calendar holds. */
function checked(day: number): Day {
  if (!(day >= 1 && day < 2 * EPOCH)) throw new RangeError('there is no such day');
  return day as Day;
}

/** Reads an ISO day (`2026-03-09`); `undefined` for anything else or a day that the calendar lacks. */
export function dayOf(iso: string): Day | undefined {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? [];
  if (year === undefined) return undefined;
  try {
    return dayAt(Number(year), Number(month), Number(day));
  } catch {
    return undefined;
  }
}
export const dayFrom = ({ year, month, day }: PartialDate & { month: number; day: number }): Day =>
  dayAt(year, month, day);

/** Throws for a day that the calendar lacks. */
function dayAt(year: number, month: number, day: number): Day {
  const at = new Date(0);
  at.setUTCFullYear(year, month - 1, day);
  if (at.getUTCMonth() !== month - 1 || at.getUTCDate() !== day) throw new RangeError('there is no such day');
  return dayOn(at);
}

/** Whole days from one day to another; negative where `to` is earlier. */
export const daysBetween = (from: Day, to: Day): number => to - from;

/** The first and the last day that a partial date may mean. */
export function range(date: PartialDate): { first: Day; last: Day } {
  const { year, month, day } = date;
  const first = dayAt(year, month ?? 1, day ?? 1);
  if (day) return { first, last: first };
  return { first, last: daysBefore(addMonths(first, month ? 1 : 12), 1) };
}

/** So many months on; a month that is too short for the day gives its last one. */
function addMonths(day: Day, months: number): Day {
  const from = dateOf(day);
  const [year, month] = [from.getUTCFullYear(), from.getUTCMonth() + months];
  const last = new Date(0);
  last.setUTCFullYear(year, month + 1, 0);
  const to = new Date(0);
  to.setUTCFullYear(year, month, Math.min(from.getUTCDate(), last.getUTCDate()));
  return dayOn(to);
}

/** The shortest and the longest time in days that a duration may mean; an open bound is kept open. */
export function daysOf(duration: Duration): { least: number; most: number } {
  const days: Readonly<Record<Duration['unit'], number>> = {
    minutes: 1 / 1440,
    hours: 1 / 24,
    days: 1,
    weeks: 7,
    months: 30.4,
    years: 365.25,
  };
  const least = duration.low * days[duration.unit];
  const most = duration.high * days[duration.unit];
  if (duration.bound === 'over') return { least, most: Number.POSITIVE_INFINITY };
  return duration.bound === 'under' ? { least: 0, most } : { least, most };
}

/** The day before which lies a duration from `day`; the day that a review falls on counts forward. */
export function after(day: Day, duration: Duration): Day {
  const { low, unit } = duration;
  if (unit === 'hours' || unit === 'minutes') return day;
  const count = Math.round(low);
  if (unit === 'months' || unit === 'years') return addMonths(day, unit === 'years' ? count * 12 : count);
  return checked(day + (unit === 'weeks' ? count * 7 : count));
}

/** How long before its visit a date lies, in days; `undefined` where the visit has no date. */
export function ageOf(
  on: ValueOf<'date'> | ValueOf<'ago'>,
  visit: { readonly date?: PartialDate & { month: number; day: number } },
): { least: number; most: number } | undefined {
  if (on.is === 'ago') return daysOf(on.ago);
  if (!visit.date) return undefined;
  const { first, last } = range(on.date);
  const day = dayFrom(visit.date);
  return { least: daysBetween(last, day), most: daysBetween(first, day) };
}

const written = new Recent<Day, string>(1_000);
export function isoOf(day: Day): string {
  const known = written.get(day);
  if (known !== undefined) return known;
  const iso = dateOf(day).toISOString();
  const text = iso.slice(0, iso.indexOf('T'));
  written.set(day, text);
  return text;
}
/** The day a whole number of days earlier. */
export const daysBefore = (day: Day, days: number): Day => checked(day - days);
