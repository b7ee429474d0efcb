import { chmodSync, lstatSync, readdirSync, readFileSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { folderWith, forefoot, note } from './run.ts';

const untidy = note('2nd  swollen mild ,TTP plantar // as   before', 'pain 2nd  "so  sore" 4/10');
const tidy = note('2nd      swelling mild, tender plantar // as   before', 'pain     2nd "so  sore" 4/10');
const asWritten = note('2nd      swollen mild, TTP plantar // as   before', 'pain     2nd "so  sore" 4/10');
const text = (folder: string, name: string): string => readFileSync(join(folder, name), 'utf8');

describe('forefoot format', () => {
  test('writes files in place, and has nothing to do the second time', () => {
    const cwd = folderWith({ 'a.forefoot': untidy, 'b.forefoot': tidy });
    expect(forefoot(['format', '.'], { cwd })).toEqual({ code: 0, out: '2 notes: 1 changed\n', err: '' });
    expect(text(cwd, 'a.forefoot')).toBe(tidy);
    expect(forefoot(['format', '.'], { cwd }).out).toBe('2 notes: all formatted already\n');
    expect(readdirSync(cwd).sort()).toEqual(['a.forefoot', 'b.forefoot']);
  });

  test('--check changes nothing, names the files that would change, and exits 1', () => {
    const cwd = folderWith({ 'a.forefoot': untidy, 'b.forefoot': tidy });
    expect(forefoot(['format', '--check', '.'], { cwd })).toEqual({
      code: 1,
      out: 'a.forefoot\n2 notes: 1 would change\n',
      err: '',
    });
    expect(text(cwd, 'a.forefoot')).toBe(untidy);
    expect(forefoot(['format', '--check', 'b.forefoot'], { cwd }).code).toBe(0);
  });

  test('--dictated writes dictated lines as typed lines, names what it proposes, and leaves them alone the second time', () => {
    const said = note(
      'second ray drawer grade one no sorry grade two full stop third ray drawer zero',
      'zzq tender two',
    );
    const typed = note('2nd      drawer 2', '3rd      drawer 0', 'zzq tender two');
    const dos = said.replaceAll('\n', '\r\n');
    const cwd = folderWith({
      'a.forefoot': said,
      'b.forefoot': note('plan tape eight weeks stiff insert no steroid'),
      'c.forefoot': dos,
    });
    expect(forefoot(['format', '--dictated', '--check', 'a.forefoot'], { cwd }).code).toBe(1);
    expect(text(cwd, 'a.forefoot')).toBe(said);
    expect(forefoot(['format', '--dictated', '.'], { cwd }).code).toBe(0);
    expect(text(cwd, 'a.forefoot')).toBe(typed);
    expect(text(cwd, 'b.forefoot')).toBe(
      note(
        '// dictated: plan tape eight weeks stiff insert no steroid\nplan     tape 8 weeks\nproposed plan stiff-insert  // stiff insert\nproposed plan no steroid  // no steroid',
      ),
    );
    expect(text(cwd, 'c.forefoot')).toBe(typed.replaceAll('\n', '\r\n'));
    expect(forefoot(['format', '--dictated', '--check', '.'], { cwd }).code).toBe(0);
    expect(forefoot(['format', '--dictated', '-'], { input: said })).toEqual({ code: 0, out: typed, err: '' });
  });

  test('prints standard input', () => {
    expect(forefoot(['format', '-'], { input: untidy })).toEqual({ code: 0, out: tidy, err: '' });
    expect(forefoot(['format', '--check', '-'], { input: untidy })).toEqual({ code: 1, out: '<stdin>\n', err: '' });
  });

  test('keeps the words of the writer where the clinic asks for it', () => {
    const cwd = folderWith({ '.forefoot.json': '{ "wording": { "words": "as-written" } }', 'a.forefoot': untidy });
    forefoot(['format', '.'], { cwd });
    expect(text(cwd, 'a.forefoot')).toBe(asWritten);
  });

  test('keeps line ends, a byte order mark, the encoding, the mode and links', () => {
    const mixed = `\ufeff${untidy.replace('\n', '\r\n')}`;
    const cwd = folderWith({
      'a.forefoot': mixed,
      'b.forefoot': Buffer.from(mixed, 'utf16le'),
      'c.forefoot': Buffer.from(mixed, 'utf16le').swap16(),
    });
    chmodSync(join(cwd, 'a.forefoot'), 0o640);
    symlinkSync('a.forefoot', join(cwd, 'link.forefoot'));
    expect(forefoot(['format', 'link.forefoot', 'b.forefoot', 'c.forefoot'], { cwd }).code).toBe(0);
    const wanted = `\ufeff${tidy.replace('\n', '\r\n')}`;
    expect(text(cwd, 'a.forefoot')).toBe(wanted);
    expect(statSync(join(cwd, 'a.forefoot')).mode & 0o777).toBe(0o640);
    expect(lstatSync(join(cwd, 'link.forefoot')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(cwd, 'b.forefoot')).toString('utf16le')).toBe(wanted);
    expect(readFileSync(join(cwd, 'c.forefoot')).swap16().toString('utf16le')).toBe(wanted);
  });

  test('says in one line what it cannot read, and formats the rest', () => {
    const cwd = folderWith({ 'a.forefoot': Buffer.from([0xc3, 0x28]), 'b.forefoot': untidy });
    const { code, err } = forefoot(['format', '.'], { cwd });
    expect(code).toBe(2);
    expect(err).toMatch(/^forefoot: a\.forefoot: not valid UTF-8[^\n]*\n$/);
    expect(text(cwd, 'b.forefoot')).toBe(tidy);
  });

  test('formats every sample once and for all', () => {
    const cwd = folderWith({});
    for (const name of readdirSync('samples').filter((each) => each.endsWith('.forefoot')))
      writeFileSync(join(cwd, name), readFileSync(`samples/${name}`));
    const before = readdirSync(cwd).map((name) => text(cwd, name));
    forefoot(['format', '.'], { cwd });
    forefoot(['format', '.'], { cwd });
    expect(forefoot(['format', '--check', '.'], { cwd }).code).toBe(0);
    expect(before).toHaveLength(readdirSync(cwd).length);
  });
});

test('a note that nobody may write is left as it was, and the summary says so', () => {
  const cwd = folderWith({ '1.forefoot': note('2nd   tender'), '2.forefoot': note('2nd   tender') });
  chmodSync(join(cwd, '1.forefoot'), 0o444);
  const { code, out, err } = forefoot(['format', '.'], { cwd });
  expect([code, out]).toEqual([2, '2 notes: 1 changed, 1 could not be read or written\n']);
  expect(err).toContain('1.forefoot: cannot be written (read-only); it is left as it was');
  expect(readFileSync(join(cwd, '1.forefoot'), 'utf8')).toBe(note('2nd   tender'));
});
