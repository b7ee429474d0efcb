import {
  addDays,
  addMonths,
  addWeeks,
  addYears,
  create,
  diffDays,
  type Record as PlainDate,
  subtractDays,
  toString as toIso,
} from 'temporal-polyfill/fns/PlainDate';
import { Recent } from '../../grammar/recent.ts';
import type { Duration, PartialDate, ValueOf } from '../../grammar/values.ts';

/** A day without time. */
export type Day = PlainDate;

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

const days = new Recent<number, Day>(1_000);
/** One object a day: a visit asks for its own some ten times. Throws for a day that the calendar lacks. */
function dayAt(year: number, month: number, day: number): Day {
  const key = (year * 100 + month) * 100 + day;
  const known = days.get(key);
  if (known) return known;
  const made = create(year, month, day);
  days.set(key, made);
  return made;
}

/** Whole days from one day to another; negative where `to` is earlier. */
export const daysBetween = (from: Day, to: Day): number => diffDays(from, to);

/** The first and the last day that a partial date may mean. */
export function range(date: PartialDate): { first: Day; last: Day } {
  const { year, month, day } = date;
  const first = create(year, month ?? 1, day ?? 1);
  if (day) return { first, last: first };
  const next = month ? addMonths(first, 1) : addYears(first, 1);
  return { first, last: subtractDays(next, 1) };
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
  const add = { days: addDays, weeks: addWeeks, months: addMonths, years: addYears }[unit];
  return add(day, Math.round(low));
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

const written = new WeakMap<Day, string>();
export function isoOf(day: Day): string {
  const known = written.get(day);
  if (known !== undefined) return known;
  const iso = toIso(day);
  written.set(day, iso);
  return iso;
}
/** The day a whole number of days earlier. */
export const daysBefore = (day: Day, days: number): Day => subtractDays(day, days);
