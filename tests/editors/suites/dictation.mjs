import assert from 'node:assert/strict';
import { eventually, focusFile, openFile, runCommand, typeAtEnd, visibleText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Convert dictation on the selected lines to typed lines',
  dictated: 'third ray drawer grade one no sorry grade two comma tender plantar',
  typed: /^3rd {6}drawer 2, tender plantar$/m,
  left: 'fourth ray drawer zero full stop fifth ray straight',
  moved: 'second web click negative full stop third ray paper holds',
  onMove: [/^3rd {6}paper holds$/m],
  onEnter: [/^4th {6}drawer 0$/m, /^5th {6}straight$/m],
};

export const name =
  'a dictated line becomes typed lines by a command, by Enter or the cursor where the setting asks for it, and Undo brings it back';
export const settings = { 'forefoot.convertDictation': true };

export async function run({ page, screenshot }) {
  const { file, command, dictated, typed, left, onEnter, moved, onMove } = expected;
  const shows = (pattern) => eventually(async () => assert.match(await visibleText(page, file), pattern));
  await openFile(page, file);
  await focusFile(page, file);
  await typeAtEnd(page, dictated);
  await page.keyboard.press('Escape');
  await runCommand(page, command);
  await shows(typed);
  await page.keyboard.press('Control+Z');
  await shows(new RegExp(dictated));
  await runCommand(page, command);
  await shows(typed);

  await page.keyboard.press('Control+End');
  await page.keyboard.press('Enter');
  await typeAtEnd(page, left);
  await page.keyboard.press('Escape');
  await page.keyboard.press('Enter');
  for (const line of onEnter) await shows(line);

  await typeAtEnd(page, moved);
  await page.keyboard.press('Escape');
  await page.keyboard.press('ArrowUp');
  for (const line of onMove) await shows(line);
  await page.keyboard.press('Control+Z');
  await shows(new RegExp(moved));
  // What was undone stays undone when the line is left again.
  await page.keyboard.press('Control+End');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await shows(new RegExp(moved));
  await screenshot('dictation');
}
