import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wordEdits } from '../../server/workspace/word-edits.ts';

const applied = (old: string, text: string): string =>
  wordEdits(old, text)
    .toReversed()
    .reduce((so, edit) => so.slice(0, edit.start) + edit.text + so.slice(edit.end), old);
const told = (old: string, text: string) =>
  wordEdits(old, text).map(({ start, end, text: by }) => [old.slice(start, end), by]);

describe('the edits of a line', () => {
  test('are one a word', () => {
    expect(
      told('R2  swelling mod,TTP plantar, lachman 2', 'R2       swelling moderate, tender plantar, drawer 2'),
    ).toEqual([
      ['  ', '       '],
      ['mod', 'moderate'],
      ['TTP', ' tender'],
      ['lachman', 'drawer'],
    ]);
    expect(told('a b c', 'x y c')).toEqual([
      ['a', 'x'],
      ['b', 'y'],
    ]);
    expect(told('same', 'same')).toEqual([]);
  });

  const word = fc.constantFrom('a', 'b', 'c', 'dd', ',', ';', '"q r"', '//', 'é', '😀');
  const line = fc
    .array(fc.tuple(word, fc.constantFrom('', ' ', '  ', '\t')), { maxLength: 12 })
    .map((parts) => parts.flat().join(''));

  test('give the other text, stand in order, and cover no word that they put back', () => {
    fc.assert(
      fc.property(line, line, (old, text) => {
        expect(applied(old, text)).toBe(text);
        let end = -1;
        for (const edit of wordEdits(old, text)) {
          expect(edit.start).toBeGreaterThanOrEqual(end);
          end = edit.end;
          const words = (part: string): readonly string[] => part.match(/[,;]|[^\s,;]+/g) ?? [];
          const kept = words(old.slice(edit.start, edit.end)).filter((each) => words(edit.text).includes(each));
          expect(kept).toEqual([]);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('of a very long line cover what differs between its ends', () => {
    const many = (each: string) => Array.from({ length: 1500 }, (_, i) => `${each}${i}`).join(' ');
    const [old, text] = [`start ${many('a')} end`, `start ${many('b')} end`];
    expect(applied(old, text)).toBe(text);
  });
});
