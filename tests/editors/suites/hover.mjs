import assert from 'node:assert/strict';
import { focusFile, hoverAt, openFile } from '../workbench.mjs';

const expected = { file: 'KM-207.forefoot', at: { line: 6, column: 45 }, text: /plantar plate[\s\S]*Technique/ };

export const name = 'the hover over a finding explains it';
export const fixture = 'clinic';

export async function run({ page, screenshot }) {
  const { file, at, text } = expected;
  await openFile(page, file);
  await focusFile(page, file);
  assert.match(await hoverAt(page, at.line, at.column), text);
  await screenshot('hover');
}
