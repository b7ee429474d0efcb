import assert from 'node:assert/strict';
import { eventually, focusFile, goTo, openFile, runCommand, statusBar, webview, webviewText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  first: { line: 10, title: /2026-03-09|9 March 2026/ },
  review: { line: 19, title: /2026-05-04|4 May 2026/ },
};

export const name = 'the clinic note and the shorthand lead to each other by keyboard';
export const fixture = 'follow-up';

async function showsVisit(page, { line, title }) {
  await goTo(page, line);
  await eventually(async () => assert.match(await webviewText(page), title));
  const marked = webview(page).locator('[aria-current]');
  await eventually(async () => {
    const lines = await marked.evaluateAll((runs) => runs.map(({ dataset }) => Number(dataset.line) + 1));
    assert.ok(lines.length > 0 && lines.every((one) => one === line), `line ${line} is marked, not ${lines.join()}`);
  });
}

export async function run({ page, screenshot }) {
  const { file, command, first, review } = expected;
  await openFile(page, file);
  await runCommand(page, command);
  await focusFile(page, file);
  await showsVisit(page, first);
  await showsVisit(page, review);
  await screenshot('trace-review');
  await showsVisit(page, first);
  await screenshot('trace-first');

  const traced = webview(page).locator('[data-line]').last();
  const line = Number(await traced.getAttribute('data-line')) + 1;
  const length = Number(await traced.getAttribute('data-end')) - Number(await traced.getAttribute('data-start'));
  await traced.focus();
  await page.keyboard.press('Enter');
  await eventually(async () => {
    const texts = await statusBar(page);
    assert.ok(
      texts.some((text) => text.startsWith(`Ln ${line}, `) && text.includes(`(${length} selected)`)),
      `the statement on line ${line} is selected, the bar says: ${texts.join(' | ')}`,
    );
  });
  await screenshot('trace-selected');
}
