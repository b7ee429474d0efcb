import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { eraseLine, eventually, focusFile, openFile, squiggles, typeAtEnd, visibleText } from '../workbench.mjs';

const expected = { file: 'KM-207.forefoot', mistake: { line: 7, text: '3rd      drawer 9' } };

export const name = 'a server that dies is restarted, and goes on checking';
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

export async function run({ page, workspace, screenshot }) {
  const { file, mistake } = expected;
  const folder = dirname(dirname(workspace));
  await openFile(page, file);
  await underlined(page, file, 1);
  const before = serversUnder(folder);
  assert.notEqual(before.length, 0, 'the server is a process of its own');
  for (const pid of before) process.kill(pid, 'SIGKILL');

  await eventually(() => {
    const now = serversUnder(folder);
    assert.ok(now.length > 0 && now.every((pid) => !before.includes(pid)), 'another server runs');
  });
  await underlined(page, file, 1);
  await focusFile(page, file);
  await eraseLine(page, mistake.line);
  assert.ok(!(await visibleText(page, file)).includes(mistake.text), 'the mistake is erased');
  await underlined(page, file, 0);
  await typeAtEnd(page, mistake.text);
  await underlined(page, file, 1);
  await screenshot('restart');
}
