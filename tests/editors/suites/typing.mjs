import assert from 'node:assert/strict';
import { eraseLine, eventually, focusFile, openFile, problems, squiggles, visibleText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  mistake: { line: 7, text: 'drawer 9' },
  message: /9 is outside the range of drawer/,
};

export const name = 'a mistake is underlined, explained in Problems, and cleared as it is mended';
export const fixture = 'slip';

export async function run({ page, screenshot }) {
  const { file, mistake, message } = expected;
  await openFile(page, file);
  assert.ok((await visibleText(page, file)).includes(mistake.text), 'the note shows the mistake');
  await eventually(async () => assert.equal(await squiggles(page, file, 'warning'), 1, 'one warning is underlined'));
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
  await eventually(async () => assert.equal(await squiggles(page, file, 'warning'), 0, 'no warning is underlined'));
  await eventually(async () => {
    const rows = await problems(page);
    assert.ok(!rows.some((row) => message.test(row)), `Problems is clear of it, it shows: ${rows.join(' | ')}`);
  });
  await screenshot('typing-mended');
}
