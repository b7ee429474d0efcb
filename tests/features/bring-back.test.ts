import { describe, expect, test } from 'vitest';
import { codeActions, convertEdits } from '../../server/features/asked.ts';
import type { OpenNote } from '../../server/workspace/note.ts';
import { passagesOf } from '../dictation/passages.ts';
import { applied, settled } from './fixture.ts';

const HEAD = 'forefoot 1\nscales drawer 0-4\n\n';
const VISIT = 'visit 2026-03-09 first right';
const noteOf = (body: string, visit = VISIT) => settled(`${HEAD}${visit}\n${body}`);
const bodyOf = (text: string) => text.split('\n').slice(4).join('\n');
const converted = (body: string, visit = VISIT) => {
  const note = noteOf(body, visit);
  return noteOf(bodyOf(applied(note, convertEdits(note, 0, note.lineCount - 1))), visit);
};
const proposedLines = (note: OpenNote): number[] =>
  note
    .text()
    .split('\n')
    .flatMap((text, at) => (text.startsWith('proposed') ? [at] : []));
const actionsOn = (note: OpenNote, line: number) => {
  const place = { line, character: 0 };
  return codeActions(note, { start: place, end: place }, [], ['quickfix']);
};
/** The note once an action on a line is taken; the note itself where none is offered. */
const taken = (note: OpenNote, line: number, title: RegExp): OpenNote => {
  const edits = actionsOn(note, line).find((each) => title.test(each.title))?.edit?.changes?.[note.uri] ?? [];
  return settled(applied(note, edits));
};
const WORDS = /^Bring back what was said/;
const LINE = 'Bring back the whole line as it was dictated';
const back = (dictated: string, at = 0, visit = VISIT): string => {
  const note = converted(dictated, visit);
  return bodyOf(taken(note, proposedLines(note)[at] ?? 0, WORDS).text());
};
const clear = (note: OpenNote): unknown[] =>
  (note.visit(1)?.analysis.facts.facts ?? [])
    .filter(({ clarity }) => clarity === 'clear')
    .map(({ finding, section, subject, side, status, values }) =>
      JSON.stringify([
        finding,
        section,
        { ...subject, part: subject.at === 'ray' && subject.part === 'joint' ? undefined : subject },
        side,
        status,
        values,
      ]),
    )
    .sort();

describe('what was said is brought back under its section, side and ray', () => {
  test('a ray that was said before it', () => {
    const dictated =
      'second ray swelling mild comma drawer grade one no sorry grade two and it reproduces her pain full stop third ray drawer zero';
    expect(back(dictated).split('\n').slice(1)).toEqual([
      '2nd      swelling mild',
      '2nd drawer grade one no sorry grade two and it reproduces her pain',
      '3rd      drawer 0',
    ]);
  });
  test('a side that was said before it, in a visit of both feet', () => {
    const both = 'visit 2026-03-09 first both';
    const note = converted('right third ray swelling mild comma drawer grade two and it reproduces her pain', both);
    const after = taken(note, proposedLines(note)[0] ?? 0, WORDS);
    expect(bodyOf(after.text())).toContain('\nright 3rd drawer grade two and it reproduces her pain');
    expect(after.reports(1).map(({ code }) => code)).not.toContain('wrong-side');
  });
  test('a section that was said before it; what would be clear alone stays unread', () => {
    const dictated = 'plan tape for eight weeks stiff insole met pad no steroid come back in eight weeks';
    expect(back(dictated, 0)).toContain('\nplan … met pad\n');
    expect(back(dictated, 2)).toContain('\nplan come back in eight weeks');
    expect(clear(settled(`${HEAD}${VISIT}\n${back(dictated, 1)}`))).toEqual(clear(noteOf(dictated)));
  });
  test('words that stand in the line above are not written twice', () => {
    const note = noteOf('second ray drawer two maybe three\nproposed 2nd drawer 2-3  // drawer two maybe three');
    expect(bodyOf(taken(note, 5, WORDS).text())).toBe('second ray drawer two maybe three');
  });
  test('several proposals for the same words make room for them together', () => {
    const note = noteOf(
      'proposed 2nd tender  // it reproduces her pain\nproposed 3rd tender\nproposed 4th drawer 1  // and one',
    );
    expect(bodyOf(taken(note, 5, WORDS).text())).toBe('2nd it reproduces her pain\nproposed 4th drawer 1  // and one');
  });
  test('in a note that keeps no dictated line, what is proposed for the words says where they belong', () => {
    const note = noteOf('proposed plan met-pad  // the dome thing');
    expect(bodyOf(taken(note, 4, WORDS).text())).toBe('plan the dome thing');
  });
});

describe('the whole line is brought back to the letter', () => {
  const spaced = '  second ray  drawer two   and it   reproduces her pain  // seen by AB';
  test('with its spaces and its comment', () => {
    const note = converted(spaced);
    const after = taken(note, proposedLines(note)[0] ?? 0, new RegExp(LINE));
    expect(bodyOf(after.text())).toBe(spaced);
  });
  test('and not over what was confirmed or changed since', () => {
    const note = converted('third ray tender no redness and it is warm hva twenty degrees');
    const [first = 0, second = 0] = proposedLines(note);
    const after = taken(note, first, /^Confirm as/);
    expect(actionsOn(after, second).map(({ title }) => title)).not.toContain(LINE);
  });
});

const passages = (['passages', 'natural', 'spoken'] as const).flatMap((folder) => passagesOf(folder));
describe.each(passages)('$name', ({ visit, dictated }) => {
  const before = noteOf(dictated, visit);
  const note = converted(dictated, visit);
  test('is converted once', () => {
    expect(convertEdits(note, 0, note.lineCount - 1)).toEqual([]);
  });
  test('is brought back as it was dictated, line by line', () => {
    let now = note;
    for (let [line] = proposedLines(now); line !== undefined; [line] = proposedLines(now)) {
      const after = taken(now, line, new RegExp(LINE));
      if (after.text() === now.text()) break;
      now = after;
    }
    if (now !== note) expect(now.text()).toBe(before.text());
    expect(proposedLines(now)).toEqual([]);
  });
  test('says no more and no less once the words of a proposal are brought back', () => {
    for (const line of proposedLines(note)) {
      const after = taken(note, line, WORDS);
      expect(after.text()).not.toBe(note.text());
      expect(clear(after)).toEqual(clear(note));
      expect(convertEdits(after, 0, after.lineCount - 1)).toEqual([]);
    }
  });
});
