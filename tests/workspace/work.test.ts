import { describe, expect, test } from 'vitest';
import { countingWorkshop, longNote, openNote } from './open-note.ts';

const typed = (line: number, character: number, text: string) => ({
  range: { start: { line, character }, end: { line, character } },
  text,
});

describe('the work that an edit causes', () => {
  test.each([10, 200])('is one line and one visit, in a note of %i visits', (visits) => {
    const { note, work } = opened(visits);
    note.change([typed(note.firstLine(visits / 2) + 6, 20, ' painful')], 2);
    note.settle();
    expect(work).toEqual({ lines: 1, visits: 1, headers: 0 });
  });

  test.each([10, 200])('is two lines and no visit for a new line at the top of %i visits', (visits) => {
    const { note, work } = opened(visits);
    note.change([typed(0, 0, '\n')], 2);
    note.settle();
    expect(work).toEqual({ lines: 2, visits: 0, headers: 1 });
  });

  test('is the lines that a section heading reaches, and no line of the next visit', () => {
    const { note, work } = opened(100);
    const [first, below] = [note.firstLine(50), note.firstLine(51) - note.firstLine(50)];
    note.change([typed(first + 1, 0, 'plan:\n')], 2);
    note.settle();
    expect(work.lines).toBeLessThanOrEqual(below + 2);
    expect(note.line(first + 2)?.under).toBe('plan');
    const { lines } = work;
    note.change([typed(first + 1, 5, 's')], 3);
    note.change([typed(first + 2, 0, '// ')], 4);
    expect(work.lines - lines).toBeLessThanOrEqual(below + 3);
    expect(note.line(first + 3)?.under).toBeUndefined();
  });

  test('stops at the visit after which the episode is what it was', () => {
    const { note, work } = opened(100);
    const drawer = note.firstLine(50) + 5;
    note.change(
      [{ range: { start: { line: drawer, character: 0 }, end: { line: drawer, character: 99 } }, text: '' }],
      2,
    );
    note.settle();
    expect(work.visits).toBeLessThanOrEqual(2);
  });

  test('reaches every later visit where the episode changes for good', () => {
    const { note, work } = opened(100);
    note.change([typed(note.firstLine(50) + 1, 0, 'operation done 2nd plate repair\n')], 2);
    note.settle();
    expect(work.visits).toBe(51);
  });

  test('is a visit or two when a visit line appears or goes', () => {
    const { note, work } = opened(100);
    const middle = note.firstLine(50) + 6;
    note.change([typed(middle, 0, 'visit 2026-01-01 review right\n')], 2);
    note.settle();
    expect(note.blockCount).toBe(102);
    expect(work.visits).toBeLessThanOrEqual(3);
    note.change(
      [{ range: { start: { line: middle, character: 0 }, end: { line: middle + 1, character: 0 } }, text: '' }],
      3,
    );
    note.settle();
    expect(note.blockCount).toBe(101);
    expect(work.visits).toBeLessThanOrEqual(5);
  });

  test('is none for a change of the name, and every visit for a change of what staging needs', () => {
    const { note, work } = opened(20);
    note.change([typed(1, 14, '8')], 2);
    note.settle();
    expect(work.visits).toBe(0);
    note.change([{ range: { start: { line: 2, character: 16 }, end: { line: 2, character: 17 } }, text: '3' }], 3);
    note.settle();
    expect(note.header.drawerScale).toBe('0-3');
    expect(work.visits).toBe(20);
  });

  test('is every visit once on another day', () => {
    const { note, work } = opened(20);
    note.today = '2027-01-01';
    note.settle();
    note.today = '2027-01-01';
    note.settle();
    expect(work.visits).toBe(20);
  });

  test('is each visit once, and each distinct line once, when a note is opened', () => {
    const works = [50, 100].map((visits) => {
      const { shop, work } = countingWorkshop();
      openNote(longNote(visits), shop).settle();
      return { ...work, distinct: new Set(longNote(visits).split('\n')).size };
    });
    expect(works.map(({ visits }) => visits)).toEqual([50, 100]);
    for (const { lines, distinct } of works) expect(lines).toBe(distinct);
  });

  test('is not forgotten when an earlier visit changes while later ones still wait', () => {
    const { note } = opened(8);
    note.change([typed(note.firstLine(3) + 1, 0, 'operation done 2nd plate repair\n')], 2);
    note.settle(3);
    note.change([typed(note.firstLine(1) + 6, 0, ' ')], 3);
    note.settle();
    expect(note.visit(8)?.analysis.before.operated).toEqual(note.visit(3)?.analysis.after.operated);
    expect(Object.keys(note.visit(8)?.analysis.before.operated ?? {})).toHaveLength(1);
  });

  test('goes on where it was when something is typed meanwhile', () => {
    const { note, work } = opened(60);
    note.change([typed(note.firstLine(1) + 1, 0, 'operation done 2nd plate repair\n')], 2);
    note.settle(10);
    expect(work.visits).toBe(10);
    note.change([typed(note.firstLine(1) + 6, 0, ' ')], 3);
    note.settle(11);
    expect(work.visits).toBe(21);
  });

  test('can be done in slices, and what is asked for is done first', () => {
    const { shop, work } = countingWorkshop();
    const note = openNote(longNote(30), shop);
    expect(note.settle(10)).toBe(false);
    expect(work.visits).toBe(10);
    expect(note.visit(15)?.analysis.rays.length).toBeGreaterThan(0);
    expect(work.visits).toBe(15);
    expect(note.settle()).toBe(true);
    expect(work.visits).toBe(30);
  });
});

function opened(visits: number) {
  const { shop, work } = countingWorkshop();
  const note = openNote(longNote(visits), shop);
  note.settle();
  Object.assign(work, { lines: 0, visits: 0, headers: 0 });
  return { note, work };
}
