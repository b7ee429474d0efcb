import { expect, test } from 'vitest';
import { RULES } from '../../server/clinical/rules/index.ts';
import { expectGolden } from './golden.ts';
import { folderWith, forefoot, note } from './run.ts';

const today = ['--today', '2026-11-01'];

interface Checked {
  file: string;
  line: number;
  column: number;
  endLine: number;
  endColumn: number;
  severity: string;
  code: string;
  message: string;
}
const json = (...args: string[]): Checked[] => JSON.parse(forefoot(['check', '--format', 'json', ...args]).out);

test('a clean note exits with 0 and says so', () => {
  const cwd = folderWith({ 'a.forefoot': note('2nd  tender plantar, drawer 2') });
  expect(forefoot(['check', 'a.forefoot'], { cwd })).toEqual({
    code: 0,
    out: '1 note checked: nothing to report\n',
    err: '',
  });
});

test('hints alone exit with 0', () => {
  const cwd = folderWith({ 'a.forefoot': note('2nd  drawer 2').replace('scales drawer 0-4\n', '') });
  const { code, out } = forefoot(['check', 'a.forefoot'], { cwd });
  expect(out).toContain('1 note checked: 0 errors, 0 warnings, 1 hint\n');
  expect(code).toBe(0);
});

test.each([
  ['a warning', '2nd  drawer 9', 'warning'],
  ['an error', 'L2  tender plantar', 'error'],
])('%s exits with 1', (_, line, severity) => {
  const { code, out } = forefoot(['check', '-'], { input: note(line) });
  expect(out).toContain(`  ${severity}`);
  expect(code).toBe(1);
});

test('JSON places a report by lines and columns from 1, the end after the last character', () => {
  const cwd = folderWith({ 'a.forefoot': note('2nd  drawer 9') });
  const { code, out } = forefoot(['check', 'a.forefoot', '--format', 'json'], { cwd });
  expect(code).toBe(1);
  expect(JSON.parse(out)).toEqual([
    {
      file: 'a.forefoot',
      line: 6,
      column: 13,
      endLine: 6,
      endColumn: 14,
      severity: 'warning',
      code: 'value-out-of-range',
      message: expect.stringContaining('drawer'),
      source: 'common practice',
      mark: 'common practice',
    },
  ]);
});

test('JSON of a clean note is an empty array', () => {
  expect(forefoot(['check', '-', '--format', 'json'], { input: note('2nd  drawer 2') }).out).toBe('[]\n');
});

test('JSON of several notes is one array with every field', () => {
  const reports = json('samples', ...today);
  expect(new Set(reports.map(({ file }) => file)).size).toBeGreaterThan(1);
  for (const report of reports) {
    const always = ['file', 'line', 'column', 'endLine', 'endColumn', 'severity', 'code', 'message'];
    const sourced = RULES.some(({ code }) => code === report.code) ? ['source', 'mark'] : [];
    expect(Object.keys(report)).toEqual([...always, ...sourced]);
    expect(report.severity).toMatch(/^(error|warning|hint)$/);
    expect(report.line).toBeGreaterThan(0);
    expect(report.endColumn).toBeGreaterThan(report.column);
  }
});

test('red flags come first, then the reports in the order of the note', () => {
  const reports = json('samples/faulty.forefoot', ...today);
  const flags = reports.filter(({ code }) => FLAGS.includes(code));
  expect(new Set(flags.map(({ code }) => code))).toEqual(new Set(FLAGS));
  expect(reports.slice(0, flags.length)).toEqual(flags);
  for (const part of [flags, reports.slice(flags.length)]) {
    const lines = part.map(({ line }) => line);
    expect(lines).toEqual([...lines].sort((a, b) => a - b));
  }
});
const FLAGS = ['red-flag', 'acute-dislocation-incomplete', 'unread-red-flag'];

test('a red flag of the last line stands above a warning of the first, in text too', () => {
  const { out } = forefoot(['check', '-'], { input: note('2nd  drawer 9', '3rd  hot', 'fever') });
  expect(out.indexOf('[red-flag]')).toBeGreaterThan(0);
  expect(out.indexOf('[red-flag]')).toBeLessThan(out.indexOf('[value-out-of-range]'));
});

test.each([
  ['Windows line endings', (text: string) => text.replaceAll('\n', '\r\n')],
  ['a byte order mark', (text: string) => `\ufeff${text}`],
])('%s move no report', (_, change) => {
  const text = note('2nd  drawer 9');
  const run = (input: string) => forefoot(['check', '-', '--format', 'json'], { input }).out;
  expect(JSON.parse(run(change(text)))).toEqual(JSON.parse(run(text)));
});

test('what cannot be read exits with 2, and the rest is still checked', () => {
  const cwd = folderWith({ 'a.forefoot': note('2nd  drawer 9') });
  const { code, out, err } = forefoot(['check', 'nowhere.forefoot', 'a.forefoot'], { cwd });
  expect(code).toBe(2);
  expect(err).toBe('forefoot: nowhere.forefoot: no such file or folder\n');
  expect(out).toContain('[value-out-of-range]');
  expect(out).toContain('1 note checked: 0 errors, 1 warning, 0 hints; 1 could not be read\n');
});

test('an empty note is clean', () => {
  expect(forefoot(['check', '-'], { input: '' }).code).toBe(0);
});

test('text for people, as it is printed', () => {
  expectGolden('check-faulty', forefoot(['check', 'samples/faulty.forefoot', ...today]).out);
});
