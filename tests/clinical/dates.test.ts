import fc from 'fast-check';
import {
  addDays,
  addMonths,
  addWeeks,
  addYears,
  create,
  diffDays,
  subtractDays,
  toString as toIso,
} from 'temporal-polyfill/fns/PlainDate';
import { describe, expect, test } from 'vitest';
import { dayFrom, dayOf, daysBefore, daysBetween, isoOf, after as later, range } from '../../server/clinical/dates.ts';

const date = fc.record({
  year: fc.oneof(fc.integer({ min: 1900, max: 2100 }), fc.integer({ min: 0, max: 9999 })),
  month: fc.integer({ min: 1, max: 12 }),
  day: fc.oneof(fc.integer({ min: 1, max: 31 }), fc.integer({ min: 28, max: 31 })),
});
const units = { days: addDays, weeks: addWeeks, months: addMonths, years: addYears };
const unit = fc.constantFrom(...(['days', 'weeks', 'months', 'years'] as const));

/** What a calculation gives, or that it refuses. */
function told<T>(make: () => T): T | 'refused' {
  try {
    return make();
  } catch {
    return 'refused';
  }
}

describe('days are those of the calendar library (temporal-polyfill)', () => {
  test('each day, or none where the calendar has none', () => {
    fc.assert(
      fc.property(date, ({ year, month, day }) => {
        const own = told(() => isoOf(dayFrom({ year, month, day })));
        expect(own).toBe(told(() => toIso(create(year, month, day))));
        expect(dayOf(own) === undefined).toBe(own === 'refused');
      }),
      { numRuns: 2_000 },
    );
  });
  test('so long after and before a day', () => {
    fc.assert(
      fc.property(date, unit, fc.integer({ min: 0, max: 900 }), ({ year, month, day }, of, count) => {
        const own = told(() => dayFrom({ year, month, day }));
        if (own === 'refused') return;
        const theirs = create(year, month, day);
        expect(isoOf(later(own, { low: count, high: count, unit: of }))).toBe(toIso(units[of](theirs, count)));
        expect(isoOf(daysBefore(own, count))).toBe(toIso(subtractDays(theirs, count)));
      }),
      { numRuns: 2_000 },
    );
  });
  test('the days between two, and what a month or a year alone may mean', () => {
    fc.assert(
      fc.property(date, date, (a, b) => {
        const between = told(() => daysBetween(dayFrom(a), dayFrom(b)));
        expect(between).toBe(told(() => diffDays(create(a.year, a.month, a.day), create(b.year, b.month, b.day))));
        const { year, month } = a;
        const [inMonth, inYear] = [range({ year, month }), range({ year })];
        expect(isoOf(inMonth.first)).toBe(toIso(create(year, month, 1)));
        expect(isoOf(inMonth.last)).toBe(toIso(subtractDays(addMonths(create(year, month, 1), 1), 1)));
        expect(isoOf(inYear.first)).toBe(toIso(create(year, 1, 1)));
        expect(isoOf(inYear.last)).toBe(toIso(subtractDays(addYears(create(year, 1, 1), 1), 1)));
      }),
      { numRuns: 2_000 },
    );
  });
  test('no day is taken for none', () => {
    for (const iso of ['1970-01-01', '0000-01-01', '9999-12-31']) expect(dayOf(iso)).toBeTruthy();
  });
  test('a time beyond every calendar is refused', () => {
    const day = dayFrom({ year: 2026, month: 3, day: 9 });
    for (const [of, add] of Object.entries(units)) {
      const low = 99_999_999_999;
      expect(() => later(day, { low, high: low, unit: of as keyof typeof units })).toThrow(RangeError);
      expect(() => add(create(2026, 3, 9), low)).toThrow(RangeError);
    }
  });
});
