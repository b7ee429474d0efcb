import assert from 'node:assert/strict';
import { eventually, focusFile, openFile, runCommand, typeAtEnd, webviewText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  prose: [/The second MTP joint showed drawer grade 2 on the 0-4 scale/, /moderate swelling/],
  typed: '3rd      tender none, drawer 1, straight\n',
  added: /The third toe was straight/,
};

export const name = 'the clinic note beside the editor follows the typing';
export const fixture = 'clinic';

async function showsAll(page, patterns) {
  const text = await webviewText(page);
  for (const pattern of patterns) assert.match(text, pattern);
}

export async function run({ page, screenshot }) {
  const { file, command, prose, typed, added } = expected;
  await openFile(page, file);
  await runCommand(page, command);
  await eventually(() => showsAll(page, prose));
  assert.doesNotMatch(await webviewText(page), added, 'what is typed later is not there yet');

  await focusFile(page, file);
  await typeAtEnd(page, typed);
  await eventually(() => showsAll(page, [...prose, added]));
  await screenshot('note-view');
}
