// What a person sees and does in the workbench. Every function takes the page first.
import assert from 'node:assert/strict';
import { setTimeout as pause } from 'node:timers/promises';

const patience = 20_000;

/** Repeats an assertion until it holds; after 20 s throws its last failure. */
export async function eventually(check, limit = patience) {
  for (const until = Date.now() + limit; ; await pause(50)) {
    try {
      return await check();
    } catch (error) {
      if (Date.now() > until) throw error;
    }
  }
}

/** Opens the workbench and waits until its explorer lists files. */
export async function openWorkbench(page, url) {
  await page.goto(url);
  await page.locator('.explorer-folders-view .monaco-list-row').first().waitFor();
}

/** The text of a place as it is laid out, empty when the place isn't there. */
const shownText = async (place) => (await place.allInnerTexts()).join('\n');

const editor = (page, file) => page.locator(`.editor-instance .monaco-editor[data-uri$="/${file}"]`);

/** Opens a file at the top of the workspace by a double click, and waits for its text. */
export async function openFile(page, file) {
  await page.locator('.explorer-folders-view .monaco-list-row', { hasText: file }).dblclick();
  await editor(page, file).locator('.view-line').first().waitFor();
}

/** Puts the keyboard into an open file's text. */
export async function focusFile(page, file) {
  await editor(page, file)
    .locator('.view-lines')
    .click({ position: { x: 2, y: 2 } });
}

/** The lines of an open file that are on the screen. */
export async function visibleText(page, file) {
  const text = await shownText(editor(page, file).locator('.view-lines'));
  return text.replaceAll('\u00a0', ' ');
}

/** The number of squiggles in an open file; `kind` is `error`, `warning`, `info` or `hint`. */
export function squiggles(page, file, kind) {
  return editor(page, file).locator(`.squiggly-${kind}`).count();
}

/** The rows of the Problems panel, which is opened if need be: first the file, then its messages. */
export async function problems(page) {
  const panel = page.locator('.markers-panel');
  if (!(await panel.isVisible())) {
    await page.keyboard.press('Control+Shift+M');
    await panel.waitFor();
  }
  return panel.locator('.monaco-list-row').allInnerTexts();
}

/** Puts the cursor of the focused editor on a line and column, both from 1. */
export async function goTo(page, line, column = 1) {
  const input = page.locator('.quick-input-widget .quick-input-box input');
  await page.keyboard.press('Control+G');
  await input.fill(`:${line}:${column}`);
  await page.keyboard.press('Enter');
  await input.waitFor({ state: 'hidden' });
}

/** Shows the hover at a line and column of the focused editor and returns its text. */
export async function hoverAt(page, line, column) {
  await goTo(page, line, column);
  await page.keyboard.press('Control+K');
  await page.keyboard.press('Control+I');
  const hover = page.locator('.monaco-hover:not(.hidden)').first();
  return eventually(async () => {
    const text = await shownText(hover);
    assert.ok(text.trim() !== '' && !/^Loading/.test(text), 'the hover shows no text');
    return text;
  });
}

/** Types at the end of the focused file, key by key. */
export async function typeAtEnd(page, text) {
  await page.keyboard.press('Control+End');
  await page.keyboard.type(text, { delay: 15 });
}

/** Takes a line out of the focused file with the keyboard, whatever it says. */
export async function eraseLine(page, line) {
  await goTo(page, line);
  await page.keyboard.press('Shift+End');
  await page.keyboard.press('Backspace');
  await page.keyboard.press('Backspace');
}

/** Runs a command by its full title in the palette. */
export async function runCommand(page, title) {
  const input = page.locator('.quick-input-widget .quick-input-box input');
  await page.keyboard.press('F1');
  await input.fill(`>${title}`);
  const rows = page.locator('.quick-input-list .monaco-list-row');
  await rows.getByText(title, { exact: true }).first().click();
  await input.waitFor({ state: 'hidden' });
}

/** The document inside the only open webview. */
export function webview(page) {
  return page.locator('iframe.webview.ready').contentFrame().frameLocator('iframe#active-frame');
}

/** The text of the only open webview as it is read. */
export function webviewText(page) {
  return shownText(webview(page).locator('body'));
}

/** The texts of the status bar. */
export async function statusBar(page) {
  const texts = await page.locator('.statusbar .statusbar-item').allInnerTexts();
  return texts.map((text) => text.trim()).filter((text) => text !== '');
}
