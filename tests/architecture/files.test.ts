import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, test } from 'vitest';

const longest = 400;
const skipped = /^(node_modules|dist|generated|\.cache)$/;

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return skipped.test(entry.name) ? [] : filesUnder(path);
    return [path];
  });
}

function written(...folders: string[]): { path: string; text: string }[] {
  return folders
    .flatMap(filesUnder)
    .filter((path) => /\.(ts|mjs|js|css)$/.test(path))
    .map((path) => ({ path, text: readFileSync(path, 'utf8') }));
}

const isTooLong = (text: string): boolean => text.trimEnd().split('\n').length > longest;
const suppresses = (text: string): boolean => /biome-ignore|@ts-(ignore|expect-error|nocheck)/.test(text);
const saysNothing = (path: string): boolean => /^(utils?|helpers?|common|managers?|handlers?)\./.test(basename(path));
const isStray = (name: string): boolean =>
  !/^(README\.md|DEVELOPERS\.md|CHANGELOG\.md|LICENSE|package(-lock)?\.json|tsconfig(\.\w+)?\.json|biome\.json|vitest\.config\.ts|esbuild\.config\.mjs|client|server|grammar|tests|samples|dist|node_modules|\..+)$/.test(
    name,
  );
const namesDownload = (lock: string): boolean => lock.includes('"resolved"');

describe('the files of the repository', () => {
  test(`no source file is longer than ${longest} lines`, () => {
    const long = written('grammar', 'server', 'client', 'tests', 'samples').filter(({ text }) => isTooLong(text));
    expect(long.map(({ path }) => path)).toEqual([]);
  });

  test('no source file silences the compiler or the linter', () => {
    const silenced = written('grammar', 'server', 'client').filter(({ text }) => suppresses(text));
    expect(silenced.map(({ path }) => path)).toEqual([]);
  });

  test('every file is named after what it holds', () => {
    const vague = written('grammar', 'server', 'client', 'tests').filter(({ path }) => saysNothing(path));
    expect(vague.map(({ path }) => path)).toEqual([]);
  });

  test('the top level holds the known folders and the usual root files', () => {
    expect(readdirSync('.').filter(isStray)).toEqual([]);
  });

  test('no lock file names a download address', () => {
    const locks = ['.', 'tests/editors', 'tests/bench']
      .map((folder) => join(folder, 'package-lock.json'))
      .filter((path) => existsSync(path));
    expect(locks).toContain('package-lock.json');
    expect(locks.filter((path) => namesDownload(readFileSync(path, 'utf8')))).toEqual([]);
  });
});

describe('the checks can fail', () => {
  test('on length', () => {
    expect(isTooLong('x\n'.repeat(longest))).toBe(false);
    expect(isTooLong('x\n'.repeat(longest + 1))).toBe(true);
  });

  test.each(['// biome-ignore lint/x: y', '// @ts-ignore', '// @ts-expect-error later'])('on %s', (text) => {
    expect(suppresses(text)).toBe(true);
  });

  test.each(['server/utils.ts', 'grammar/helpers.ts', 'client/common.ts'])('on the name %s', (path) => {
    expect(saysNothing(path)).toBe(true);
  });

  test.each(['docs', 'notes.txt', 'src', 'package.json.bak'])('on %s at the top level', (name) => {
    expect(isStray(name)).toBe(true);
  });

  test('on a lock file with addresses', () => {
    expect(namesDownload('{ "resolved": "https://example.org/a.tgz" }')).toBe(true);
  });
});
