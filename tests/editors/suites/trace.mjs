import assert from 'node:assert/strict';
import { eventually, focusFile, goTo, openFile, runCommand, statusBar, webview, webviewText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  first: { line: 10, title: /9 March 2026, first visit/ },
  review: { line: 19, title: /4 May 2026, review/ },
  last: { line: 15, statement: 'review in 8 weeks' },
};

export const name = 'the clinic note and the shorthand lead to each other by keyboard';
export const fixture = 'follow-up';

async function showsVisit(page, { line, title }) {
  await goTo(page, line);
  await eventually(async () => assert.match(await webviewText(page), title));
  const marked = webview(page).locator('[aria-current]');
  await eventually(async () => {
    const titles = await marked.evaluateAll((runs) => runs.map((run) => run.title));
    assert.ok(titles.length > 0 && titles.every((one) => one === `Line ${line}`), `marked: ${titles.join()}`);
  });
}

export async function run({ page, screenshot }) {
  const { file, command, first, review, last } = expected;
  await openFile(page, file);
  await runCommand(page, command);
  await eventually(async () => assert.match(await webviewText(page), review.title));
  await focusFile(page, file);
  await showsVisit(page, first);
  await showsVisit(page, review);
  await screenshot('trace-review');
  await showsVisit(page, first);
  await screenshot('trace-first');

  await webview(page).locator('[data-line]').last().focus();
  await page.keyboard.press('Enter');
  await eventually(async () => {
    const texts = await statusBar(page);
    const { line, statement } = last;
    assert.ok(
      texts.some((text) => text.startsWith(`Ln ${line}, `) && text.includes(`(${statement.length} selected)`)),
      `"${statement}" on line ${line} is selected, the bar says: ${texts.join(' | ')}`,
    );
  });
  await screenshot('trace-selected');
}
