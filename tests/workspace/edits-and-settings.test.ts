import { describe, expect, test } from 'vitest';
import type { SyntaxEdit } from '../../server/clinical/analysis.ts';
import { settingsOf, systemDay } from '../../server/workspace/settings.ts';
import { textEdits } from '../../server/workspace/text-edits.ts';

const lines = ['forefoot 1', 'visit 2026-03-09', '2nd drawer 2'];
const edited = (edit: SyntaxEdit, firstLine: number, versionLine?: number) =>
  textEdits([edit], firstLine, {
    lineEnd: '\r\n',
    lineCount: lines.length,
    lengthOf: (line) => lines[line]!.length,
    ...(versionLine === undefined ? {} : { versionLine }),
  })[0];
const at = (line: number, start: number, end = start) => ({
  start: { line, character: start },
  end: { line, character: end },
});

describe('edits in the language become edits of the file', () => {
  test('a place counts from its visit', () => {
    const place = { line: 1, start: 4, end: 10 };
    expect(edited({ edit: 'replace', place, text: 'paper' }, 1)).toEqual({ range: at(2, 4, 10), newText: 'paper' });
  });
  test('a line is inserted after another, with the line end of the file, even after the last', () => {
    expect(edited({ edit: 'insert line', afterLine: 1, text: 'x' }, 1)).toEqual({ range: at(2, 12), newText: '\r\nx' });
  });
  test('a header line follows the version, or stands first', () => {
    const edit = { edit: 'insert header', text: 'scales drawer 0-4' } as const;
    expect(edited(edit, 0, 0)).toEqual({ range: at(0, 10), newText: '\r\nscales drawer 0-4' });
    expect(edited(edit, 0)).toEqual({ range: at(0, 0), newText: 'scales drawer 0-4\r\n' });
  });
});

describe('settings', () => {
  test('name the day that counts as today', () => {
    expect(settingsOf({ today: '2026-05-04' })).toEqual({ today: '2026-05-04' });
    expect(settingsOf({ convertDictation: true })).toEqual({ convertDictation: true });
    expect(settingsOf({ convertDictation: 'yes' })).toEqual({});
  });
  test.each([undefined, null, 7, {}, { today: '' }, { today: '2026-02-30' }, { today: '4 May' }, { today: 5 }])(
    'ignore %j',
    (sent) => {
      expect(settingsOf(sent)).toEqual({});
    },
  );
  test('fall back to the calendar day of the clock', () => {
    expect(systemDay(new Date(2026, 0, 5, 23, 59))).toBe('2026-01-05');
  });
});
