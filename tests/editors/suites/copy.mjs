// With FOREFOOT_PICTURE=1 it also takes the picture for the README.
import assert from 'node:assert/strict';
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { eventually, focusFile, goTo, openFile, runCommand, webview } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  line: 10,
  pictured: 19,
  stated: /The second MTP joint showed drawer grade 2 on the 0-4 scale/,
  computed: /computed clinical stage 2/,
};

export const name = 'what is computed shows when it is asked for, and is copied only then';
export const fixture = 'follow-up';

async function copied(page, file, how) {
  await webview(page).getByRole('button', { name: 'Copy' }).click();
  await eventually(async () => assert.match(await webview(page).getByRole('status').textContent(), how));
  await focusFile(page, file); // Only a page in focus may read the clipboard.
  return page.evaluate(() => navigator.clipboard.readText());
}

async function takePicture(page, { file, pictured }) {
  const path = fileURLToPath(new URL('../../../client/media/note-beside-editor.png', import.meta.url));
  await page.keyboard.press('Control+B');
  await page.locator('.explorer-folders-view').waitFor({ state: 'hidden' });
  await focusFile(page, file);
  await goTo(page, pictured);
  await eventually(async () => assert.match(await webview(page).locator('#note').textContent(), /4 May 2026/));
  await page.screenshot({ path });
  assert.ok(statSync(path).size <= 200_000, 'the picture is small enough for a README');
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
  const filed = await copied(page, file, /^Copied.* without what is computed/);
  assert.match(filed, stated);
  assert.doesNotMatch(filed, computed);

  const box = webview(page).getByRole('checkbox', { name: 'Show computed stage and next step' });
  await box.focus();
  await page.keyboard.press('Space');
  await eventually(async () => assert.match(await note.textContent(), computed));
  await screenshot('copy-computed');
  await focusFile(page, file); // Which puts the cursor into another visit.
  await goTo(page, line);
  const whole = await copied(page, file, /^Copied.* with what is computed/);
  assert.match(whole, stated);
  assert.match(whole, computed);
  if (process.env.FOREFOOT_PICTURE) await takePicture(page, expected);
}
