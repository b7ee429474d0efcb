import { expect, test } from 'vitest';
import { AOFAS_POINTS, AOFAS_TOTALS } from '../../server/clinical/scores.ts';

/** KIT94 (title read): section maxima 40, 45 and 15; the points of the items are from memory. */
test('the items of the AOFAS lesser scale add up to its sections and to 100', () => {
  const top = (...items: (keyof typeof AOFAS_POINTS)[]) =>
    items.reduce((all, item) => all + Math.max(...AOFAS_POINTS[item]), 0);
  expect(top('pain')).toBe(40);
  expect(top('activity', 'footwear', 'motion', 'ip', 'stability', 'callus')).toBe(45);
  expect(top('alignment')).toBe(15);
});

/** Worked out by hand apart from the program, from the points that are recalled. */
test('77 of the 101 totals can be reached', () => {
  const unreachable = [1, 2, 3, 6, 11, 16, 21, 26, 31, 36, 41, 46, 51, 56, 61, 66, 71, 76, 81, 86, 91, 96, 98, 99];
  const all = Array.from({ length: 101 }, (_, total) => total);
  expect(all.filter((total) => !AOFAS_TOTALS.has(total))).toEqual(unreachable);
  expect(AOFAS_TOTALS.size).toBe(77);
});

/** MYER05 and one other series give ranges of single patients: 47 to 100, and 19 to 95. */
test.each([19, 95, 47, 100])('a published score of one patient can be reached: %i', (total) => {
  expect(AOFAS_TOTALS.has(total)).toBe(true);
});
