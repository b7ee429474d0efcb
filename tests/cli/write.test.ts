import { expect, test } from 'vitest';
import { expectGolden } from './golden.ts';
import { forefoot, note } from './run.ts';

const file = 'samples/second-ray.forefoot';
const rule = `\n${'-'.repeat(72)}\n`;

test('writes the newest visit, what is computed below a line', () => {
  const { code, out, err } = forefoot(['write', file]);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  expect(out).toMatch(/^KM-207, 4 May 2026, review, right foot\n/);
  const [stated = '', computed = ''] = out.split(rule);
  expect(stated).toContain('stated by the clinician');
  expect(stated.toLowerCase()).not.toContain('comput');
  expect(computed).toMatch(/^\nComputed, not part of the filed note\n/);
  expect(computed).toContain('decision support');
});

test('--filed writes what was stated alone', () => {
  const { out } = forefoot(['write', file, '--filed']);
  expect(forefoot(['write', file]).out.startsWith(out)).toBe(true);
  expect(out.toLowerCase()).not.toContain('comput');
  expect(out).not.toContain('---');
});

test('--visit writes the visit of that day', () => {
  expect(forefoot(['write', file, '--visit', '2026-03-09']).out).toMatch(/^KM-207, 9 March 2026, first visit/);
});

test('--visit writes every visit of that day', () => {
  const { out } = forefoot(['write', 'samples/acute-dislocation.forefoot', '--visit', '2026-07-11', '--filed']);
  expect(out.match(/^TN-305, 11 July 2026/gm)).toHaveLength(2);
});

test('red flags stand before everything else, outside what is filed', () => {
  const input = note('2nd  tender plantar, toe-colour blue');
  const { out } = forefoot(['write', '-'], { input });
  const [urgent = '', stated = ''] = out.split(rule);
  expect(urgent).toMatch(/^Red flags and urgent advice \(computed\)\n/);
  expect(stated.trimStart()).toMatch(/^KM-207/);
  expect(forefoot(['write', '-', '--filed'], { input }).out).toMatch(/^KM-207/);
});

test('the newest visit is the one of the latest day, wherever it stands', () => {
  const input = `${note('2nd  drawer 2')}\nvisit 2026-01-05 phone right\nhistory  onset gradual\n`;
  expect(forefoot(['write', '-'], { input }).out).toMatch(/^KM-207, 9 March 2026/);
});

test('an unknown day names those that exist, in one line', () => {
  expect(forefoot(['write', file, '--visit', '2026-03-10'])).toEqual({
    code: 2,
    out: '',
    err: `forefoot: ${file}: no visit on 2026-03-10; this note has 2026-03-09, 2026-05-04\n`,
  });
});

test.each([
  ['a note without a visit', '-', 'forefoot: <stdin>: no visit in this note\n'],
  ['a missing note', 'nowhere.forefoot', 'forefoot: nowhere.forefoot: no such file or folder\n'],
])('%s: one line, exit 2', (_, path, err) => {
  expect(forefoot(['write', path], { input: 'forefoot 1\n' })).toEqual({ code: 2, out: '', err });
});

test('a folder is refused: one note is written at a time', () => {
  expect(forefoot(['write', 'samples'])).toEqual({
    code: 2,
    out: '',
    err: 'forefoot: write takes one note, and samples names several\n',
  });
});

test('the prose is wrapped to a terminal, and whole paragraphs are kept for files', () => {
  const whole = forefoot(['write', file]).out;
  const narrow = forefoot(['write', file], { env: { COLUMNS: '60' } }).out;
  expect(narrow.replaceAll(/\s+/g, ' ')).toBe(whole.replaceAll(/\s+/g, ' '));
  const prose = narrow.split('\n').filter((line) => !line.startsWith('---'));
  expect(Math.max(...prose.map(({ length }) => length))).toBeLessThanOrEqual(60);
  expect(Math.max(...whole.split('\n').map(({ length }) => length))).toBeGreaterThan(100);
});

test('as it is printed', () => {
  for (const name of ['second-ray', 'acute-dislocation'])
    expectGolden(`write-${name}`, forefoot(['write', `samples/${name}.forefoot`]).out);
});
