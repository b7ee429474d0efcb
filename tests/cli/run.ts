import { type SpawnSyncOptions, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';

export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export const cli = resolve('dist/cli.js');
const { COLUMNS: _, ...environment } = process.env;

/** Runs the built command as a process of its own. */
export function forefoot(args: readonly string[], options: SpawnSyncOptions = {}): Ran {
  const env = { ...environment, ...options.env };
  const { status, stdout, stderr } = spawnSync(process.execPath, [cli, ...args], { input: '', ...options, env });
  return { code: status, out: stdout.toString(), err: stderr.toString() };
}

/** A folder of its own with these files in it; returns its path. */
export function folderWith(files: Readonly<Record<string, string | Buffer>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'forefoot-'));
  for (const [name, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), content);
  }
  return folder;
}

/** A note with one visit of the right foot. */
export const note = (...lines: string[]): string =>
  [
    'forefoot 1',
    'patient KM-207  born 1971',
    'scales drawer 0-4',
    '',
    'visit 2026-03-09 first right',
    ...lines,
    '',
  ].join('\n');
