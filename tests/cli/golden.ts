import { readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

/** Compares with `tests/cli/golden/NAME.txt`; `UPDATE_GOLDEN=1` writes it instead, to be read in the diff. */
export function expectGolden(name: string, text: string): void {
  const path = `tests/cli/golden/${name}.txt`;
  if (process.env.UPDATE_GOLDEN === '1') writeFileSync(path, text);
  expect(text).toBe(readFileSync(path, 'utf8'));
}
