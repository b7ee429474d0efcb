import { describe, expect, test } from 'vitest';
import * as explain from '../../server/features/explain.ts';
import { hover } from '../../server/features/hover.ts';
import { noteWithCursor } from './fixture.ts';

function checkHover(fixture: string, word: string, ...contents: RegExp[]): void {
  const { note, position } = noteWithCursor(fixture);
  const found = hover(note, position, explain);
  expect(found).not.toBeNull();
  const { start, end } = found!.range!;
  expect(note.line(start.line)?.text.slice(start.character, end.character)).toBe(word);
  const { value } = found!.contents as { value: string };
  for (const each of contents) expect(value).toMatch(each);
}
const inVisit = (line: string): string => `visit 2026-03-09 first right\n${line}`;

describe('hover', () => {
  test('explains a finding with its technique, values and source', () => {
    checkHover(
      inVisit('2nd dra|wer 2'),
      'drawer',
      /\*\*drawer\*\* \(test, said of a ray\)/,
      /\*Technique\.\* One hand holds the metatarsal head/,
      /- pain: `painful`, `painless`/,
      /\*Source\.\* NERY15: Nery C.*\(.*read in the publication\)/,
    );
  });

  test('explains another form of a finding as the finding', () => {
    checkHover(inVisit('2nd lach|man 2'), 'lachman', /\*\*drawer\*\*/);
  });

  test.each([
    ['scales drawer 0-3\n', /\*Scale\.\* 0-3, from the `scales` line/],
    ['', /\*Scale\.\* Not stated; read as 0-4/],
  ])('names the scale of a grade (%j)', (header, scale) => {
    checkHover(header + inVisit('2nd drawer |2'), '2', scale);
  });

  test('shows the computed stage on a subject, with its evidence and its caution', () => {
    checkHover(
      inVisit('2n|d swelling moderate, tender plantar, drawer 2, straight, paper weak'),
      '2nd',
      /\*\*2nd right\*\*, computed: \*\*stage/,
      /- decides: `drawer`/,
      /Computed as decision support\. The clinician decides/,
      /\*Source\.\*/,
    );
  });

  test('shows the computed stage beside a stated one', () => {
    checkHover(inVisit('2nd drawer 2, paper weak\nstage 2nd |3'), '3', /Stated: stage 3/, /\*\*stage\*\* \(test/);
  });

  test('explains a header word', () => {
    checkHover('sca|les drawer 0-4', 'scales', /Three scales exist/);
  });

  test.each(['// com|ment', '2nd "qu|ote"', '2nd dra|aawer', ' |', ''])('says nothing on %j', (line) => {
    const { note, position } = noteWithCursor(inVisit(line.includes('|') ? line : `${line}|`));
    expect(hover(note, position, explain)).toBeNull();
  });

  test('says nothing outside the text', () => {
    const { note } = noteWithCursor('|');
    expect(hover(note, { line: 9, character: 9 }, explain)).toBeNull();
  });
});
