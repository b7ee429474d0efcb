import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { diagnostics } from '../../server/features/diagnostics.ts';
import { OpenNotes } from '../../server/features/open-notes.ts';
import { Publisher } from '../../server/features/publisher.ts';
import { longNote } from '../workspace/open-note.ts';
import { markedNote, settled } from './fixture.ts';

/** Exactly the marked reports among those with the codes that the marks name. */
function checkDiagnostics(fixture: string, ...alsoNone: string[]): void {
  const { text, marks } = markedNote(fixture);
  const codes = new Set([...marks.map(({ code }) => code), ...alsoNone]);
  const found = diagnostics(settled(text), 0).diagnostics.filter(({ code }) => codes.has(String(code)));
  expect(found.map(({ range: { start, end }, code }) => [start.line, start.character, end.character, code])).toEqual(
    marks.map(({ line, start, end, code }) => [line, start, end, code]),
  );
  found.forEach(({ message, source }, index) => {
    expect(message).toContain(marks[index]!.message);
    expect(source).toBe('forefoot');
  });
}

describe('diagnostics', () => {
  test('stand on the smallest offending words, counted in lines of the file', () => {
    checkDiagnostics(`forefoot 1

visit 2026-03-09 first right
2nd drawer 2, blorp
              ^^^^^ unknown-word: "blorp" isn't understood
visit 2026-05-04 review right
2nd paper holds, "no end
                 ^^^^^^^ open-quote: has no end on this line`);
  });

  test('stand in the header too', () => {
    checkDiagnostics(`forefoot 1 extra
           ^^^^^ bad-header: extra
visit 2026-03-09 first right`);
  });

  test('say nothing of a note without faults', () => {
    checkDiagnostics(
      'forefoot 1\nscales drawer 0-4\nvisit 2026-03-09 first right\n2nd drawer 2, paper holds',
      'unknown-word',
      'bad-header',
    );
  });

  test('are limited to those that stand near, and say how many do not', () => {
    const text = longNote(150).replaceAll('pip flexible', 'pip flexible, blorp, blirp');
    const note = settled(text);
    const near = note.firstLine(140);
    const { diagnostics: shown } = diagnostics(note, near);
    expect(shown.length).toBeLessThan(300);
    expect(shown[0]).toMatchObject({ code: 'more-reports', severity: 3 });
    const total = note.counts.reports.reduce((sum, count) => sum + count, 0);
    expect(shown[0]!.message).toContain(String(total - (shown.length - 1)));
    expect(shown.slice(1).every(({ range }) => range.start.line > note.firstLine(5))).toBe(true);
  });

  test('keep every danger, however far', () => {
    const text = longNote(150)
      .replaceAll('pip flexible', 'pip flexible, blorp, blirp')
      .replace('pulses   dp 2, pt 2', 'L2 drawer 2');
    const note = settled(text);
    expect(note.counts.dangers[1]).toBeGreaterThan(0);
    const { diagnostics: shown } = diagnostics(note, note.lineCount - 1);
    expect(shown.filter(({ severity }) => severity === 1)).toHaveLength(note.counts.dangers.reduce((a, b) => a + b, 0));
  });
});

describe('publishing', () => {
  const uri = 'file:///a.forefoot';
  let sent: { version: number; codes: unknown[] }[] = [];
  let notes: OpenNotes;
  let codes: (code: unknown) => boolean;
  beforeEach(() => {
    vi.useFakeTimers();
    sent = [];
    codes = (code) => code === 'unknown-word';
    const publisher = new Publisher(
      (_, version, found) => sent.push({ version, codes: found.map(({ code }) => code).filter((code) => codes(code)) }),
      (work) => work(),
    );
    notes = new OpenNotes(publisher, () => new Date(2026, 4, 4));
  });
  afterEach(() => {
    vi.useRealTimers();
  });
  const typed = (line: number, character: number, text: string, removed = 0) => [
    { range: { start: { line, character }, end: { line, character: character + removed } }, text },
  ];

  test('carries the version of the text', () => {
    notes.open(uri, 7, 'visit 2026-03-09 right\n2nd blorp');
    expect(sent).toEqual([{ version: 7, codes: ['unknown-word'] }]);
  });

  test('holds a half-typed word back until the typing rests', () => {
    notes.open(uri, 1, 'visit 2026-03-09 right\n2nd ');
    notes.change(uri, 2, typed(1, 4, 'dr'));
    expect(sent.at(-1)).toEqual({ version: 2, codes: [] });
    vi.advanceTimersByTime(299);
    expect(sent).toHaveLength(2);
    vi.advanceTimersByTime(1);
    expect(sent.at(-1)).toEqual({ version: 2, codes: ['unknown-word'] });
  });

  test('shows it at once when the line is left', () => {
    notes.open(uri, 1, 'visit 2026-03-09 right\n2nd ');
    notes.change(uri, 2, typed(1, 4, 'blorp'));
    notes.change(uri, 3, typed(1, 9, '\n'));
    expect(sent.at(-1)).toEqual({ version: 3, codes: ['unknown-word'] });
  });

  test('keeps what was shown before the line was typed in', () => {
    notes.open(uri, 1, 'visit 2026-03-09 right\n2nd blorp, tender ');
    notes.change(uri, 2, typed(1, 18, 'pl'));
    expect(sent.at(-1)).toEqual({ version: 2, codes: ['unknown-word'] });
  });

  test('clears a mended error at once', () => {
    notes.open(uri, 1, 'visit 2026-03-09 right\n2nd drawr 2');
    notes.change(uri, 2, typed(1, 7, 'e'));
    expect(sent.at(-1)).toEqual({ version: 2, codes: [] });
  });

  test('holds nothing back that was pasted', () => {
    notes.open(uri, 1, 'visit 2026-03-09 right\n');
    notes.change(uri, 2, typed(1, 0, '2nd blorp\n3rd blorp\n4th drawer 1'));
    expect(sent.at(-1)).toEqual({ version: 2, codes: ['unknown-word', 'unknown-word'] });
  });

  test('clears the diagnostics of a closed note, and no timer speaks after it', () => {
    notes.open(uri, 1, 'visit 2026-03-09 right\n2nd ');
    notes.change(uri, 2, typed(1, 4, 'dr'));
    notes.close(uri);
    vi.advanceTimersByTime(1000);
    expect(sent.at(-1)).toEqual({ version: 2, codes: [] });
    expect(sent).toHaveLength(3);
  });

  test('of a long note comes in slices, and once', () => {
    notes.open(uri, 1, longNote(150));
    expect(sent).toHaveLength(0);
    vi.runAllTimers();
    expect(sent).toHaveLength(1);
  });

  test('of an edit that reaches every later visit shows the edited one at once, and the last when it is known', () => {
    const later = Array.from({ length: 300 }, (_, at) => `visit ${2000 + at}-01-05 review right\n2nd drawer 2`);
    const plan = 'plan naproxen 2 weeks';
    const text = ['visit 1999-01-05 first right', '', plan, ...later, plan].join('\n');
    notes.open(uri, 1, text);
    vi.runAllTimers();
    const before = sent.length;
    const risk = 'anti-inflammatory-risk';
    codes = (code) => code === risk;
    notes.change(uri, 2, typed(1, 0, 'history kidney-disease'));
    expect(sent.slice(before)).toEqual([{ version: 2, codes: [risk] }]);
    vi.runAllTimers();
    expect(sent.slice(before + 1)).toEqual([{ version: 2, codes: [risk, risk] }]);
  });
});
