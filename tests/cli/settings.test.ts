import { describe, expect, test } from 'vitest';
import { folderWith, forefoot, note } from './run.ts';

const bad = note('2nd blorp');
const quiet = JSON.stringify({ severity: { 'unknown-word': 'off' } });

describe('the settings file of a clinic on the command line', () => {
  test('holds for the notes at and below its folder, the nearest first', () => {
    const cwd = folderWith({
      '.forefoot.json': quiet,
      'a/1.forefoot': bad,
      'b/.forefoot.json': '{}',
      'b/2.forefoot': bad,
    });
    expect(forefoot(['check', 'a'], { cwd }).code).toBe(0);
    expect(forefoot(['check', 'b'], { cwd }).code).toBe(1);
    expect(forefoot(['check', '-'], { cwd, input: bad }).code).toBe(0);
  });

  test('can be named, and is used instead of the near one', () => {
    const cwd = folderWith({ '.forefoot.json': '{}', 'clinic.json': quiet, '1.forefoot': bad });
    expect(forefoot(['check', '1.forefoot', '--settings', 'clinic.json'], { cwd }).code).toBe(0);
    expect(forefoot(['check', '1.forefoot', '--settings', 'none.json'], { cwd })).toEqual({
      code: 2,
      out: '',
      err: 'forefoot: none.json: no such settings file\n',
    });
  });

  test('that is broken is reported once, and the notes are checked with the built-in settings', () => {
    const cwd = folderWith({
      '.forefoot.json': '{ "severity": { "red-flag": "off" } }',
      '1.forefoot': bad,
      '2.forefoot': bad,
    });
    const { code, out, err } = forefoot(['check', '.'], { cwd });
    expect(code).toBe(2);
    expect(out).toContain('2 notes checked');
    expect(out.match(/unknown-word/g)).toHaveLength(2);
    expect(err.split('\n')).toHaveLength(2);
    expect(err).toContain('.forefoot.json: severity.red-flag: a danger is never lowered or turned off');
  });

  test('holds for stages and prose too', () => {
    const cwd = folderWith({
      '.forefoot.json': '{ "panels": { "ray": ["swelling none"] } }',
      '1.forefoot': note('4th normal'),
    });
    const { out } = forefoot(['write', '1.forefoot', '--filed'], { cwd });
    const builtIn = forefoot(['write', '1.forefoot', '--filed'], {
      cwd: folderWith({ '1.forefoot': note('4th normal') }),
    }).out;
    expect(builtIn).toMatch(/tender/);
    expect(out).toMatch(/swelling|swollen/);
    expect(out).not.toMatch(/tender/);
  });
});

test('check --complete asks a visit that neither plans nor stages', () => {
  const cwd = folderWith({ '1.forefoot': note('2nd swelling mild') });
  expect(forefoot(['check', '1.forefoot'], { cwd }).out).not.toContain('incomplete-visit');
  const { code, out } = forefoot(['check', '--complete', '1.forefoot'], { cwd });
  expect(code).toBe(0);
  expect(out.match(/incomplete-visit/g)).toHaveLength(1);
});
