import { expect, test } from 'vitest';
import { formattedText } from '../../server/workspace/format-note.ts';
import { openNote } from './open-note.ts';

test('a visit is formatted in time that follows its length, however much of it is unread', () => {
  const time = (count: number) => {
    const lines = Array.from({ length: count }, (_, i) => `2nd zq${i} tender no bananas, drawer 2 wobbly${i}`);
    const text = ['visit 2026-03-02 review right', ...lines].join('\n');
    const note = openNote(text);
    note.settle();
    const began = performance.now();
    expect(formattedText(note, text)).toContain('bananas');
    return performance.now() - began;
  };
  time(400);
  const ratios = [0, 1, 2].map(() => time(3_200) / time(400));
  // Eight times the lines take about eight times the time, and 64 times where each looks through all the others.
  expect(Math.min(...ratios)).toBeLessThan(24);
});
