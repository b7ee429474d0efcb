import assert from 'node:assert/strict';
import { eventually, focusFile, hoverAt, openFile, squiggles, visibleText } from '../workbench.mjs';

const expected = { file: 'KM-207.forefoot', at: { line: 7, column: 17 }, page: 'RULES.md', code: 'value-out-of-range' };

export const name = 'the code of a report leads to its page';
export const fixture = 'slip';

export async function run({ page, screenshot }) {
  const { file, at, page: rules, code } = expected;
  await openFile(page, file);
  await eventually(async () => assert.equal(await squiggles(page, file, 'warning'), 1, 'one warning is underlined'));
  await focusFile(page, file);
  const hover = page.locator('.monaco-hover:not(.hidden)').first();
  const link = page.locator('.monaco-hover a.code-link', { hasText: code }).first();
  // The report itself is there first; what explains it follows, and its link is aimed once the page of the rules is read.
  await eventually(async () => {
    await hoverAt(page, at.line, at.column);
    assert.match(await hover.textContent(), /Value out of range[\s\S]*Instead/);
    assert.match((await link.getAttribute('href')) ?? '', /server\/RULES\.md#L\d+$/);
  });
  await screenshot('rule-link');
  await link.click();
  await eventually(async () =>
    assert.ok((await visibleText(page, rules)).includes(`## ${code}`), 'the page of the code is on the screen'),
  );
}
