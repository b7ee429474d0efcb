import assert from 'node:assert/strict';
import { eraseLine, eventually, focusFile, openFile, problems, squiggles, visibleText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  mistake: { line: 7, text: 'drawer 9' },
  message: /drawer/i,
};

export const name = 'a mistake is underlined, explained in Problems, and cleared as it is mended';
export const fixture = 'slip';

export async function run({ page, screenshot }) {
  const { file, mistake, message } = expected;
  await openFile(page, file);
  assert.ok((await visibleText(page, file)).includes(mistake.text), 'the note shows the mistake');
  await eventually(async () => assert.equal(await squiggles(page, file, 'error'), 1, 'one error is underlined'));
  await eventually(async () => {
    const rows = await problems(page);
    assert.ok(
      rows.some((row) => message.test(row)),
      `Problems explains it, it shows: ${rows.join(' | ')}`,
    );
  });
  await screenshot('typing-mistake');

  await focusFile(page, file);
  await eraseLine(page, mistake.line);
  assert.ok(!(await visibleText(page, file)).includes(mistake.text), 'the mistake is erased');
  await eventually(async () => assert.equal(await squiggles(page, file, 'error'), 0, 'no error is underlined'));
  await eventually(async () => {
    const rows = await problems(page);
    assert.ok(!rows.some((row) => message.test(row)), `Problems is clear of it, it shows: ${rows.join(' | ')}`);
  });
  await screenshot('typing-mended');
}
