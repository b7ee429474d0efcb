import assert from 'node:assert/strict';
import { eventually, focusFile, openFile, runCommand, webview, webviewText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  prose: /drawer/i,
  computed: /computed clinical stage 2/i,
};

export const name = 'the clinic note comes back as it was when the window is reloaded';
export const fixture = 'clinic';

export async function run({ page, screenshot }) {
  const { file, command, prose, computed } = expected;
  await openFile(page, file);
  await focusFile(page, file);
  await runCommand(page, command);
  await eventually(async () => assert.match(await webviewText(page), prose));
  await webview(page).getByRole('checkbox').check();
  await eventually(async () => assert.match(await webviewText(page), computed));

  await Promise.all([page.waitForEvent('load'), runCommand(page, 'Developer: Reload Window')]);
  await eventually(async () => assert.match(await webviewText(page), computed));
  assert.equal(await webview(page).getByRole('checkbox').isChecked(), true);
  await screenshot('reload');
}
