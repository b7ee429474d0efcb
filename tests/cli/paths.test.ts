import { chmodSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folderWith, forefoot, note } from './run.ts';

const bad = note('2nd  drawer 9');
const clinic = () =>
  folderWith({
    'a.forefoot': bad,
    'b.forefoot': bad,
    'b.txt': bad,
    'c[1].forefoot': bad,
    'ward/d.forefoot': bad,
    'ward/deep/e.forefoot': bad,
    '.hidden/f.forefoot': bad,
    'node_modules/x/g.forefoot': bad,
  });

/** The files that a check of these paths reports on. */
function checkedIn(cwd: string, ...paths: string[]): string[] {
  const { out } = forefoot(['check', '--format', 'json', ...paths], { cwd });
  return (JSON.parse(out) as { file: string }[]).map(({ file }) => file.replaceAll('\\', '/'));
}

test.each([
  [
    'a folder, with its folders, without hidden ones and dependencies',
    ['.'],
    ['a', 'b', 'c[1]', 'ward/d', 'ward/deep/e'],
  ],
  ['a folder by name', ['ward'], ['ward/d', 'ward/deep/e']],
  ['* in a name', ['*.forefoot'], ['a', 'b', 'c[1]']],
  ['* without an ending, which means notes', ['*'], ['a', 'b', 'c[1]']],
  ['? for one character', ['?.forefoot'], ['a', 'b']],
  ['** for any folders', ['**/*.forefoot'], ['a', 'b', 'c[1]', 'ward/d', 'ward/deep/e']],
  ['** in the middle', ['ward/**/*.forefoot'], ['ward/d', 'ward/deep/e']],
  ['* for a folder', ['*/d.forefoot'], ['ward/d']],
  ['a name with brackets as it is', ['c[1].forefoot'], ['c[1]']],
  ['each file once', ['a.forefoot', './a.forefoot', '*.forefoot'], ['a', 'b', 'c[1]']],
])('%s', (_, paths, expected) => {
  expect(checkedIn(clinic(), ...paths)).toEqual(expected.map((name) => `${name}.forefoot`));
});

test('a file is read whatever its ending', () => {
  expect(checkedIn(clinic(), 'b.txt')).toEqual(['b.txt']);
  expect(checkedIn(clinic(), '*.txt')).toEqual(['b.txt']);
});

test('an absolute pattern is followed', () => {
  const cwd = clinic();
  expect(checkedIn(cwd, join(cwd, 'ward', '*.forefoot'))).toEqual([join(cwd, 'ward/d.forefoot').replaceAll('\\', '/')]);
});

test('a link that leads in a circle ends', () => {
  const cwd = clinic();
  symlinkSync(cwd, join(cwd, 'ward', 'round'), 'junction');
  expect(checkedIn(cwd, 'ward')).toEqual(['ward/d.forefoot', 'ward/deep/e.forefoot']);
});

test('- is standard input', () => {
  const { code, out } = forefoot(['check', '-', '--format', 'json'], { input: bad });
  expect(code).toBe(1);
  expect(JSON.parse(out)).toMatchObject([{ file: '<stdin>' }]);
});

const latin = Buffer.from(note('2nd  medial 12\u00b0'), 'latin1');
const utf16 = (mark: string, text: string) => Buffer.from(mark + text, 'utf16le');

test.each<[string, string, Buffer | string | undefined, string]>([
  ['a missing file', 'nowhere', undefined, 'nowhere: no such file or folder'],
  ['a pattern without a match', 'no*.forefoot', undefined, 'no*.forefoot: no file matches'],
  ['a binary file', 'x', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]), 'x: not a text file (zero byte at byte 5)'],
  [
    'Windows-1252',
    'x',
    latin,
    `x: not valid UTF-8 at byte ${latin.indexOf(0xb0) + 1} (looks like Windows-1252); save it as UTF-8`,
  ],
  [
    'a broken byte',
    'x',
    Buffer.concat([Buffer.from('forefoot 1 \ufffd '), Buffer.from([0x90])]),
    'x: not valid UTF-8 at byte 16; save it as UTF-8',
  ],
  [
    'UTF-16 without a mark',
    'x',
    utf16('', bad),
    'x: not valid UTF-8 (looks like UTF-16 without a byte order mark); save it as UTF-8',
  ],
  ['half a UTF-16', 'x', Buffer.from([0xff, 0xfe, 0x41]), 'x: not valid UTF-16, although its byte order mark says so'],
])('%s: one line on standard error, exit 2', (_, path, content, line) => {
  const cwd = folderWith(content === undefined ? {} : { [path]: content });
  expect(forefoot(['check', path], { cwd })).toEqual({
    code: 2,
    out: '1 could not be read\n',
    err: `forefoot: ${line}\n`,
  });
});

test('a folder without notes: one line, exit 2', () => {
  const cwd = folderWith({ 'empty/readme.txt': '' });
  expect(forefoot(['check', 'empty'], { cwd })).toMatchObject({
    code: 2,
    err: 'forefoot: empty: no .forefoot file in this folder\n',
  });
});

test('UTF-16 is read where it says so', () => {
  const swapped = utf16('\ufeff', bad).swap16();
  const cwd = folderWith({ 'le.forefoot': utf16('\ufeff', bad), 'be.forefoot': swapped, 'u8.forefoot': bad });
  const { out } = forefoot(['check', '.', '--format', 'json'], { cwd });
  const places = (JSON.parse(out) as { line: number; column: number }[]).map(({ line, column }) => `${line}:${column}`);
  expect(places).toEqual(['6:13', '6:13', '6:13']);
});

// Nothing is closed to root, so the command runs as nobody where the tests run as root; Windows has no such bits.
test.skipIf(process.platform === 'win32')('what may not be read: one line, exit 2', () => {
  const cwd = folderWith({ 'a.forefoot': bad, 'ok.forefoot': bad });
  mkdirSync(join(cwd, 'closed'));
  chmodSync(cwd, 0o755);
  chmodSync(join(cwd, 'a.forefoot'), 0);
  chmodSync(join(cwd, 'closed'), 0);
  const nobody = process.getuid?.() === 0 ? { uid: 65_534 } : {};
  const { code, out, err } = forefoot(['check', 'a.forefoot', 'closed', 'ok.forefoot'], { cwd, ...nobody });
  expect(code).toBe(2);
  expect(err).toBe(
    'forefoot: a.forefoot: cannot be read (permission denied)\nforefoot: closed: cannot be read (permission denied)\n',
  );
  expect(out).toContain('ok.forefoot');
});
