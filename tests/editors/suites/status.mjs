import assert from 'node:assert/strict';
import { eventually, openFile, statusBar } from '../workbench.mjs';

const expected = { file: 'KM-207.forefoot', stage: /^2nd right: stage 2$/ };

export const name = 'the status bar shows the stage of the current visit';
export const fixture = 'clinic';

export async function run({ page, screenshot }) {
  const { file, stage } = expected;
  const before = await statusBar(page);
  assert.ok(!before.some((text) => stage.test(text)), 'no stage is shown before a note is open');
  await openFile(page, file);
  await eventually(async () => {
    const texts = await statusBar(page);
    assert.ok(
      texts.some((text) => stage.test(text)),
      `the stage is shown, the bar says: ${texts.join(' | ')}`,
    );
  });
  await screenshot('status');
}
