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

const at = expect.anything();
test.each([
  ['signed 2026-03-09 AB', { is: 'signed', date: date(2026, 3, 9), by: 'AB', at }],
  [
    'Signed: 2026-03-09 at 14:30 by AB',
    { is: 'signed', date: date(2026, 3, 9), clock: { hour: 14, minute: 30 }, by: 'AB', at },
  ],
  ['signed AB 2026-03-09', { is: 'signed', date: date(2026, 3, 9), by: 'AB', at }],
  ['signed 2026-03-09 Surgeon', { is: 'signed', date: date(2026, 3, 9), by: 'surgeon', at }],
  [
    'signed 2026-03-09 AB seal k3f9-2p',
    { is: 'signed', date: date(2026, 3, 9), by: 'AB', seal: { text: 'k3f9-2p', start: 26, end: 33 }, at },
  ],
  ['addendum 2026-03-10 registrar', { is: 'addendum', date: date(2026, 3, 10), by: 'registrar', at }],
  ['event reduction 14:30', { is: 'event', event: 'reduction', clock: { hour: 14, minute: 30 }, rays: [], at }],
  ['event pin out', { is: 'event', event: 'pin-out', rays: [], at }],
  [
    'event toe block R2 at 9:05',
    { is: 'event', event: 'block', clock: { hour: 9, minute: 5 }, rays: [2], side: 'right', at },
  ],
  ['event reduction left 2nd-3rd', { is: 'event', event: 'reduction', rays: [2, 3], side: 'left', at }],
  ['visit 2026-03-09 a&e right', { is: 'visit', date: date(2026, 3, 9), kind: 'emergency', side: 'right' }],
  ['visit 2026-03-09 follow up left', { is: 'visit', date: date(2026, 3, 9), kind: 'review', side: 'left' }],
  ['visit 2026-03-09 post op', { is: 'visit', date: date(2026, 3, 9), kind: 'postop' }],
])('a line of a visit is read: %s', (text, header) => {
  const read = readLine(text);
  expect({ kind: read.kind, header: read.header, problems: read.problems }).toEqual({
    kind: 'header',
    header,
    problems: [],
  });
});

describe('what a line of the lifecycle can not take is kept as typed and reported', () => {
  test.each([
    ['signed 2026-03-09 Smith', 'bad-signer', 'Smith'],
    ['signed 2026-03-09 Dr Ann Smith', 'bad-signer', 'Dr Ann Smith'],
    ['signed 2026-03-09', 'bad-signer', ''],
    ['signed 2026-03-09 ab', 'bad-signer', 'ab'],
    ['signed 2026-03 AB', 'bad-header', '2026-03'],
    ['signed 09/03/26 AB', 'ambiguous-date', '09/03/26'],
    ['addendum 2026-03-10 AB toe is pale', 'bad-header unread-red-flag', 'toe is pale'],
    ['event reduction under sedation', 'bad-header bad-header', 'under sedation'],
    ['signed', 'bad-header', ''],
  ])('%s', (text, codes, kept) => {
    const { kind, problems, statements } = readLine(text);
    expect(kind).toBe('header');
    expect(problems.map(({ code }) => code).join(' ')).toBe(codes);
    expect(statements.flatMap(({ verbatim }) => verbatim.map((each) => each.text)).join(' ')).toBe(kept);
  });
});

test.each([
  'signed off by phone',
  'addendum: patient has diabetes',
  'event at home, fell',
  'events of last week',
  'carried out a block',
  'examiner was not sure',
])('a line that only starts with such a word is a statement, and nothing of it is a fact: %s', (text) => {
  const { kind, statements } = readLine(text);
  expect(kind).toBe('statements');
  const clear = statements.flatMap(({ findings }) => findings).filter(({ causes }) => causes.length === 0);
  expect(clear).toEqual([]);
});

test.each([
  ['carried 2026-03-09 2nd drawer 2', '2nd drawer 2', date(2026, 3, 9)],
  ['carried from 2026-03-09: 2nd drawer 2 // ask', '2nd drawer 2', date(2026, 3, 9)],
  ['carried 2nd drawer 2, medial', '2nd drawer 2, medial', undefined],
  ['carried 2026-03-09', '', date(2026, 3, 9)],
  ['carried 2026-03-09 // all', '', date(2026, 3, 9)],
])('carried words are told apart: %s', (text, words, on) => {
  const { carried } = readLine(text);
  expect([text.slice(carried!.words.start, carried!.words.end), carried!.date]).toEqual([words, on]);
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

test.each([
  'visit 2026-03-09 first rightaft,er',
  'visit 2026-03-09 um first right',
  'patient KM-207 um born 1971',
  'scales um drawer 0-4',
])('a hesitation in a header has a role too, and only one: %s', (text) => {
  const covered = readLine(text).roles.flatMap(({ start, end }) =>
    Array.from({ length: end - start }, (_, i) => start + i),
  );
  const written = [...text].flatMap((character, at) => (character.trim() ? [at] : []));
  expect(new Set(covered).size).toBe(covered.length);
  expect(covered.filter((at) => text.charAt(at).trim())).toEqual(written);
});
