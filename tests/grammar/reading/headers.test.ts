import { describe, expect, test } from 'vitest';
import { readLine } from '../../../grammar/read-line.ts';

const date = (year: number, month: number, day: number) => ({ year, month, day });

test.each([
  ['forefoot 1', { is: 'version', version: 1 }],
  ['FOREFOOT 1', { is: 'version', version: 1 }],
  ['patient KM-207  born 1971  female', { is: 'patient', name: 'KM-207', born: 1971, sex: 'female' }],
  ['patient: KM-207, born 1971', { is: 'patient', name: 'KM-207', born: 1971 }],
  ['patient KM-207', { is: 'patient', name: 'KM-207' }],
  ['scales drawer 0-4', { is: 'scales', drawer: '0-4' }],
  ['scales drawer 0-3', { is: 'scales', drawer: '0-3' }],
  ['scales drawer 1-3', { is: 'scales', drawer: '1-3' }],
  ['visit 2026-03-09 first right', { is: 'visit', date: date(2026, 3, 9), kind: 'first', side: 'right' }],
  ['visit 2026-03-09 review left', { is: 'visit', date: date(2026, 3, 9), kind: 'review', side: 'left' }],
  ['visit 2026-03-09', { is: 'visit', date: date(2026, 3, 9) }],
  ['visit 2026-03-09 emergency both', { is: 'visit', date: date(2026, 3, 9), kind: 'emergency', side: 'both' }],
])('a header is read: %s', (text, header) => {
  const read = readLine(text);
  expect({ kind: read.kind, header: read.header, problems: read.problems }).toEqual({
    kind: 'header',
    header,
    problems: [],
  });
});

describe('a header that can not be read is reported, and its other parts still count', () => {
  test.each([
    ['forefoot x', 'bad-header'],
    ['forefoot', 'bad-header'],
    ['patient', 'bad-header'],
    ['scales drawer 0-5', 'bad-header'],
    ['scales drawer', 'bad-header'],
    ['visit', 'bad-header'],
    ['visit 04/05/26 first right', 'ambiguous-date'],
    ['visit 2026-13-01', 'ambiguous-date'],
    ['visit 2026-02-30', 'ambiguous-date'],
    ['visit 2026-03-09 zzq right', 'bad-header'],
  ])('%s', (text, code) => {
    const { kind, problems } = readLine(text);
    expect({ kind, codes: problems.map((problem) => problem.code) }).toEqual({ kind: 'header', codes: [code] });
  });

  test.each(['allow // why', 'forefoot // which', 'scales // of what'])('%s keeps its roles in order', (text) => {
    expect(readLine(text).roles.map(({ kind }) => kind)).toEqual(['reported', 'comment']);
  });

  test('a bad date leaves kind and side of a visit', () => {
    expect(readLine('visit 04/05/26 first right').header).toEqual({ is: 'visit', kind: 'first', side: 'right' });
  });
});

test.each([
  ['', 'blank'],
  ['   ', 'blank'],
  ['// a comment', 'comment'],
  ['2nd tender', 'statements'],
  ['visits are rare', 'statements'],
  ['patients say so', 'statements'],
])('the kind of a line: %j is %s', (text, kind) => {
  expect(readLine(text).kind).toBe(kind);
});
