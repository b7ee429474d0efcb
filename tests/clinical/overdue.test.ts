import { describe, expect, test } from 'vitest';
import type { StageRecord } from '../../server/cli/stage-records.ts';
import { overdue } from '../../server/clinical/overdue.ts';
import { hover } from '../../server/features/hover.ts';
import { forefoot } from '../cli/run.ts';
import { noteWithCursor } from '../features/fixture.ts';
import { lastVisit, wrap } from './note.ts';

const FOUND = '2nd tender plate, drawer 2';
const told = (plan: string, today: string) =>
  overdue(lastVisit(`${FOUND}\nplan ${plan}`), today).map(({ about, due }) => `${about} ${due}`);

// When a review or a course is due is the note's own order; that a course is judged at six weeks is common practice.
describe('of the newest visit', () => {
  test.each([
    ['review in 8 weeks', '2026-05-04', []],
    ['review in 8 weeks', '2026-05-05', ['review 2026-05-04']],
    ['review in 6-8 weeks', '2026-04-25', []],
    ['review 2026-04', '2026-04-30', []],
    ['review 2026-04', '2026-05-01', ['review 2026-04-30']],
    ['tape 2nd 8 weeks', '2026-05-05', ['course 2026-05-04']],
    ['tape 2nd', '2026-04-20', []],
    ['tape 2nd', '2026-04-21', ['course 2026-04-20']],
    ['no tape', '2026-09-01', []],
    ['review in 8 weeks', '2026-03-09', []],
    ['review in 8 weeks', '2025-01-01', []],
  ])('plan %s, today %s', (plan, today, expected) => {
    expect(told(plan, today)).toEqual(expected);
  });
  test('a pin is told by its ray', () => {
    const visit = lastVisit('operation done 2nd weil, pin 6 weeks');
    expect(overdue(visit, '2026-04-20')).toEqual([]);
    expect(overdue(visit, '2026-05-11').map(({ text }) => text)).toEqual([
      'The pin (right ray 2) was to be out by 2026-04-20, 3 weeks before 2026-05-11; no visit of a later date stands in this file.',
    ]);
  });
  test('the decision of the patient stands beside it', () => {
    const [first] = overdue(lastVisit(`${FOUND}\nplan review in 8 weeks; patient declines operation`), '2026-06-01');
    expect(first?.text).toMatch(
      /no visit of a later date stands in this file\. The patient's decision of 2026-03-09: /,
    );
  });
  test('an unclear review is nothing to be late for', () => {
    expect(told('review in 8 weeks unless better', '2026-06-01')).toEqual([]);
  });
});

const TWO = wrap(
  `${FOUND}\nplan review in 8 weeks\n\nvisit 2026-05-04 review right\n2nd drawer 1\nplan review in 4 weeks`,
);
describe('shown', () => {
  test('by the stage command, of the newest visit only, against --today', () => {
    const run = (today: string) => forefoot(['stage', '-', '--today', today], { input: TWO }).out;
    expect(
      run('2026-07-01').match(/overdue +The review was planned for 2026-06-01, 4 weeks before 2026-07-01/g),
    ).toHaveLength(1);
    expect(run('2026-06-01')).not.toContain('overdue');
    const { out } = forefoot(['stage', '-', '--today', '2026-07-01', '--format', 'json'], { input: TWO });
    expect((JSON.parse(out) as StageRecord[]).map(({ date, overdue: past }) => [date, past.length])).toEqual([
      ['2026-03-09', 0],
      ['2026-05-04', 1],
    ]);
  });
  test('in the editor on a ray of the newest visit only', () => {
    const at = (text: string) => {
      const { note, position } = noteWithCursor(text);
      note.today = '2026-07-01';
      return JSON.stringify(hover(note, position));
    };
    expect(at(TWO.replace('2nd drawer 1', '2n|d drawer 1'))).toMatch(/Overdue.*2026-06-01/);
    expect(at(TWO.replace('2nd tender', '2n|d tender'))).not.toContain('Overdue');
  });
});
