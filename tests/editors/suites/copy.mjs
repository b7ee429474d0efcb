import assert from 'node:assert/strict';
import { eventually, focusFile, goTo, openFile, runCommand, webview, webviewText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  line: 10,
  stated: /drawer/i,
  computed: /computed/i,
};

export const name = 'what is computed shows when it is asked for, and is copied only then';
export const fixture = 'follow-up';

async function copied(page, file) {
  await webview(page).getByRole('button', { name: 'Copy' }).click();
  await eventually(async () => assert.match(await webview(page).getByRole('status').textContent(), /^Copied/));
  await focusFile(page, file); // Only a page in focus may read the clipboard.
  return page.evaluate(() => navigator.clipboard.readText());
}

export async function run({ page, url, screenshot }) {
  const { file, command, line, stated, computed } = expected;
  const origin = new URL(url).origin;
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write'], { origin });
  await openFile(page, file);
  await focusFile(page, file);
  await goTo(page, line);
  await runCommand(page, command);
  const note = webview(page).locator('#note');
  await eventually(async () => assert.match(await note.textContent(), stated));
  assert.doesNotMatch(await note.textContent(), computed);
  const filed = await copied(page, file);
  assert.match(filed, stated);
  assert.doesNotMatch(filed, computed);

  const box = webview(page).getByRole('checkbox', { name: 'Show computed stage and next step' });
  await box.focus();
  await page.keyboard.press('Space');
  await eventually(async () => assert.match(await note.textContent(), computed));
  await screenshot('copy-computed');
  await eventually(async () => assert.match(await copied(page, file), computed));
  assert.match(await webviewText(page), /with what is computed/);
}
