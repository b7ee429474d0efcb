import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { eraseLine, eventually, focusFile, openFile, squiggles, typeAtEnd, visibleText } from '../workbench.mjs';

const expected = { file: 'KM-207.forefoot', mistake: { line: 7, text: '3rd      drawer 9' } };

export const name = 'a server that dies is restarted; one that keeps dying is left until a person restarts it';
export const fixture = 'slip';

/** The processes of this run's own server: its program lies in the folder of this run. */
function serversUnder(folder) {
  return readdirSync('/proc')
    .filter((pid) => /^\d+$/.test(pid))
    .filter((pid) => {
      try {
        const words = readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0');
        return words.some((word) => word.startsWith(`${folder}/`) && word.endsWith('/dist/server.js'));
      } catch {
        return false; // It has ended meanwhile.
      }
    })
    .map(Number);
}

const underlined = (page, file, count) =>
  eventually(async () =>
    assert.equal(await squiggles(page, file, 'warning'), count, `${count} warnings are underlined`),
  );

function killAll(pids) {
  for (const pid of pids) {
    try {
      process.kill(pid, 'SIGKILL');
    } catch (error) {
      if (error.code !== 'ESRCH') throw error; // It has ended by itself.
    }
  }
}

/** Waits until servers run, and none of the old ones. */
const anotherThan = (old, folder) =>
  eventually(() => {
    const now = serversUnder(folder);
    assert.ok(now.length > 0 && now.every((pid) => !old.includes(pid)), 'another server runs');
    return now;
  });

/** Kills every server as soon as it runs, until the editor says that it gives up. */
async function killUntilLeft(page, folder) {
  const said = page.locator('.notification-toast', { hasText: 'The Forefoot Notes server does not run' });
  for (const until = Date.now() + 40_000; !(await said.isVisible()); await page.waitForTimeout(50)) {
    assert.ok(Date.now() < until, 'the editor gives up');
    killAll(serversUnder(folder));
  }
  return said;
}

export async function run({ page, workspace, screenshot }) {
  const { file, mistake } = expected;
  const folder = dirname(dirname(workspace));
  await openFile(page, file);
  await underlined(page, file, 1);
  const before = serversUnder(folder);
  assert.notEqual(before.length, 0, 'the server is a process of its own');
  killAll(before);
  await anotherThan(before, folder);
  await underlined(page, file, 1);
  await focusFile(page, file);
  await eraseLine(page, mistake.line);
  assert.ok(!(await visibleText(page, file)).includes(mistake.text), 'the mistake is erased');
  await underlined(page, file, 0);
  await typeAtEnd(page, mistake.text);
  await underlined(page, file, 1);
  await screenshot('restart');

  const said = await killUntilLeft(page, folder);
  await underlined(page, file, 0);
  await said.getByRole('button', { name: 'Restart' }).waitFor();
  assert.equal(await page.locator('.notification-toast').count(), 1, 'one message tells it');
  await screenshot('restart-left');
  await said.getByRole('button', { name: 'Restart' }).click();
  await underlined(page, file, 1);
}
