import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AnalysedVisit, foldNote } from '../../server/clinical/analyse-note.ts';
import { readSettings } from '../../server/clinical/read-settings.ts';
import type { Settings } from '../../server/clinical/settings.ts';
import type { Change } from '../../server/workspace/note.ts';
import { argued, everything, openNote, TODAY } from './open-note.ts';

const settingsOf = (json: object): Settings => {
  const read = readSettings(JSON.stringify(json));
  if ('problems' in read) throw new Error(read.problems.join());
  return read.settings;
};
const SETTINGS: Settings[] = [
  {},
  settingsOf({ scales: { drawer: '0-3' } }),
  settingsOf({ severity: { 'unknown-word': 'off', 'bad-header': 'style', 'unused-allow': 'off' } }),
  settingsOf({ panels: { ray: ['drawer 0', 'swelling none'], 'includes-stability': true } }),
  settingsOf({ windows: { 'course-review': '4 weeks' } }),
];

const line = fc.constantFrom(
  'forefoot 1',
  'patient KM-207  born 1971  female',
  'patient KM-207  born 2011',
  'scales drawer 0-3',
  'scales drawer 0-4',
  'allow unknown-word the clinic says so',
  'visit 2026-03-09 first right',
  'visit 2026-05-04 review both',
  'visit',
  'revisit',
  'R:',
  '2nd      swelling moderate, drawer 2 painful, paper pulls-out',
  '2nd drawer 0, tender plantar foo',
  '3rd no redness, fever',
  '4th normal',
  'us 2nd tear partial distal lateral',
  'operation 2nd plate repair',
  'tried tape 2nd 8 weeks no relief; steroid web 2 2026-01',
  'plan tape 2nd 8 weeks; no steroid',
  'stage 2nd 2',
  'signed 2026-03-09 AB seal 0000-00',
  'addendum 2026-03-10 CD',
  'event reduction 14:30',
  '2nd dislocated acute 2 hours',
  'carried 2026-03-09',
  'carried 2026-03-09 2nd drawer 2',
  'examiner AB',
  'plan:',
  'Imaging:',
  'plan',
  'Notes:',
  '- tape 2nd 8 weeks',
  '2nd straight',
  '// visit 2026-01-01',
  '',
  '"an open quote',
);
const piece = fc.oneof(
  line,
  fc.constantFrom(
    '\n',
    '\r\n',
    '\r',
    'v',
    ' ',
    'x',
    'visit 2026-04-04 right\n',
    '\nvisit 2026-04-05\n',
    'né ',
    '\ud83d\ude00',
    '',
  ),
);
const visits = fc.array(
  fc.tuple(
    fc.constantFrom('visit 2026-03-09 first right', 'visit 2026-05-04 review both', 'visit 2026-05-04 review right'),
    fc.array(line, { maxLength: 5 }),
  ),
  { maxLength: 4 },
);
const note = fc
  .tuple(fc.array(line, { maxLength: 3 }), visits)
  .map(([header, rest]) => [...header, ...rest.flatMap(([opening, body]) => [opening, ...body])].join('\n'));
const place = fc.record({ line: fc.integer({ min: -1, max: 16 }), character: fc.integer({ min: -1, max: 40 }) });
const step = fc.oneof(
  {
    weight: 4,
    arbitrary: fc.record({ is: fc.constant('line' as const), at: fc.nat(12), text: line, insert: fc.boolean() }),
  },
  { weight: 4, arbitrary: fc.record({ is: fc.constant('edit' as const), from: place, to: place, text: piece }) },
  { weight: 1, arbitrary: fc.record({ is: fc.constant('replace' as const), text: note }) },
  {
    weight: 1,
    arbitrary: fc.record({ is: fc.constant('today' as const), day: fc.constantFrom('2026-05-04', '2026-12-01') }),
  },
  {
    weight: 2,
    arbitrary: fc.record({ is: fc.constant('settings' as const), set: fc.constantFrom(...SETTINGS) }),
  },
  { weight: 6, arbitrary: fc.record({ is: fc.constant('settle' as const), visits: fc.constantFrom(0, 1, 2, 3, 99) }) },
  { weight: 1, arbitrary: fc.record({ is: fc.constant('ask' as const), index: fc.integer({ min: 0, max: 4 }) }) },
);

describe('a note that follows its edits', () => {
  test('knows after any edits what a note opened anew knows', () => {
    fc.assert(
      fc.property(note, fc.array(step, { maxLength: 12 }), (text, steps) => {
        const edited = openNote(text);
        edited.settle();
        for (const each of steps) {
          if (each.is === 'line') edited.change([lineChange(each)], 2);
          if (each.is === 'edit') edited.change([{ range: { start: each.from, end: each.to }, text: each.text }], 2);
          if (each.is === 'replace') edited.change([{ text: each.text }], 2);
          if (each.is === 'today') edited.today = each.day;
          if (each.is === 'settings') edited.settings = each.set;
          if (each.is === 'settle') edited.settle(each.visits);
          if (each.is === 'ask') edited.visit(each.index);
        }
        const { lineEnd } = edited;
        const anew = openNote(edited.text(), undefined, edited.today, edited.settings);
        anew.lineEnd = lineEnd;
        expect(everything(edited)).toEqual(everything(anew));
      }),
      { numRuns: 300 },
    );
  });

  test('knows what the command line knows of the same text', () => {
    fc.assert(
      fc.property(note, (text) => {
        const opened = openNote(text);
        opened.settle();
        const folded: AnalysedVisit[] = [];
        const whole = foldNote(text, { today: TODAY, settings: {} }, (visit) => folded.push(visit));
        const visits = folded.map((_, index) => opened.visit(index + 1));
        expect(opened.blockCount - 1).toBe(folded.length);
        expect(visits.map((visit) => visit?.firstLine)).toEqual(folded.map(({ firstLine }) => firstLine));
        expect(visits.map((visit) => argued(visit?.analysis))).toEqual(folded.map(({ analysis }) => argued(analysis)));
        expect(opened.headerReports).toEqual(whole.headerReports);
      }),
      { numRuns: 200 },
    );
  });

  test('reads the text that the edits leave, as one string would have it', () => {
    fc.assert(
      fc.property(
        note,
        fc.array(fc.record({ from: place, to: place, text: line }), { maxLength: 8 }),
        (text, edits) => {
          const edited = openNote(text);
          let whole = text;
          for (const { from, to, text: added } of edits) {
            const change: Change = { range: { start: from, end: to }, text: added };
            edited.change([change], 2);
            const [start, end] = [offset(whole, from), offset(whole, to)].sort((a, b) => a - b);
            whole = whole.slice(0, start) + added + whole.slice(end);
          }
          edited.lineEnd = '\n';
          expect(edited.text()).toBe(whole);
        },
      ),
    );
  });
});

const lineChange = ({ at, text, insert }: { at: number; text: string; insert: boolean }): Change => ({
  range: { start: { line: at, character: 0 }, end: { line: at, character: insert ? 0 : 999 } },
  text: insert ? `${text}\n` : text,
});

/** The offset of a position; one outside the text is at its nearest place. */
function offset(text: string, { line, character }: { line: number; character: number }): number {
  const lines = text.split('\n');
  if (line < 0) return 0;
  if (line >= lines.length) return text.length;
  const before = lines.slice(0, line).reduce((sum, each) => sum + each.length + 1, 0);
  return before + Math.max(0, Math.min(character, lines[line]!.length));
}

describe('the lines of a note', () => {
  test.each([
    ['a\nb\nc', 3],
    ['a\r\nb\r\nc', 3],
    ['a\rb\rc', 3],
    ['', 1],
    ['a\n', 2],
  ])('%j has %i', (text, count) => {
    expect(openNote(text).lineCount).toBe(count);
  });

  test('a byte order mark does not hide the first word', () => {
    expect(openNote('\ufeffvisit 2026-03-09 right').blockCount).toBe(2);
    expect(openNote('\ufeffscales drawer 0-3').header.drawerScale).toBe('0-3');
  });

  test('positions count UTF-16 units', () => {
    const note = openNote('2nd "\ud83d\ude00" tender');
    note.change([{ range: { start: { line: 0, character: 8 }, end: { line: 0, character: 9 } }, text: ' no ' }], 2);
    expect(note.text()).toBe('2nd "\ud83d\ude00" no tender');
  });
});
