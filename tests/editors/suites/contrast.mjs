import assert from 'node:assert/strict';
import { eventually, focusFile, goTo, openFile, runCommand, webview, webviewText } from '../workbench.mjs';

const expected = {
  file: 'KM-207.forefoot',
  command: 'Forefoot Notes: Show the clinic note beside the editor',
  prose: /drawer/i,
  computed: /computed clinical stage 2/i,
  // WCAG 2.2, success criterion 1.4.6 (enhanced contrast).
  contrast: 7,
};

export const name = 'the clinic note can be read and its focus seen in a high-contrast theme';
export const fixture = 'follow-up';
export const settings = { 'workbench.colorTheme': 'Default High Contrast' };

/** Runs in the page: the lowest contrast of any text with what it stands on, by the formula of WCAG 2.2. */
function lowestContrast(root) {
  const channels = (colour) => (colour.match(/[\d.]+/g) ?? []).map(Number);
  const isClear = (colour) => colour === 'transparent' || channels(colour)[3] === 0;
  const light = (colour) => {
    const [red, green, blue] = channels(colour).map((value) => {
      const part = value / 255;
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const behind = (element) => {
    for (let at = element; at; at = at.parentElement) {
      const { backgroundColor } = getComputedStyle(at);
      if (!isClear(backgroundColor)) return backgroundColor;
    }
    return 'rgb(0, 0, 0)';
  };
  const ratios = [...root.querySelectorAll('h1, h2, p, li, span, button')]
    .filter((element) => [...element.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== ''))
    .map((element) => [light(getComputedStyle(element).color), light(behind(element))].sort((a, b) => b - a))
    .map(([brighter, darker]) => (brighter + 0.05) / (darker + 0.05));
  return { texts: ratios.length, lowest: Math.min(...ratios) };
}

export async function run({ page, screenshot }) {
  const { file, command, prose, computed, contrast } = expected;
  await openFile(page, file);
  await focusFile(page, file);
  await goTo(page, 10);
  await runCommand(page, command);
  await eventually(async () => assert.match(await webviewText(page), prose));
  await webview(page).getByRole('checkbox').check();
  await eventually(async () => assert.match(await webviewText(page), computed));
  const { texts, lowest } = await webview(page).locator('body').evaluate(lowestContrast);
  assert.ok(texts > 5, `there is text to read, in ${texts} places`);
  assert.ok(lowest >= contrast, `the lowest contrast is ${lowest.toFixed(2)}`);

  await webview(page).getByRole('button', { name: 'Copy' }).focus();
  await page.keyboard.press('Tab');
  const focused = webview(page).locator('[data-line]:focus');
  const ring = await focused.evaluate((run) => getComputedStyle(run).outline);
  assert.match(ring, /solid/);
  await screenshot('contrast');
}
