import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readFromPage, readPageState } from '../../client/note-messages.ts';
import { newNonce, notePage } from '../../client/note-page.ts';

const page = notePage({ source: 'https://page.example', style: 'note.css', script: 'note.js', nonce: 'abc' });

describe('the page of the clinic note', () => {
  test('allows its own style and its one script, and nothing else', () => {
    expect(page).toContain(`content="default-src 'none'; style-src https://page.example; script-src 'nonce-abc'"`);
    expect(page.match(/<script/g)).toHaveLength(1);
    expect(page).not.toMatch(/<style|style=|\son\w+=/);
  });

  test('names its language, its heading and a polite status', () => {
    expect(page).toContain('<html lang="en">');
    expect(page.match(/<h1/g)).toHaveLength(1);
    expect(page).toContain('role="status" aria-live="polite"');
  });

  test('is styled with the colours of the theme only', () => {
    const style = readFileSync('client/media/note.css', 'utf8');
    expect(style).toContain('var(--vscode-editor-foreground)');
    expect(style).not.toMatch(/#[0-9a-f]{3,8}\b(?!\s*\{)|\b(rgb|hsl|oklch)a?\(/i);
  });

  test('gets a secret of its own each time', () => {
    expect(newNonce()).toMatch(/^[0-9a-f]{32}$/);
    expect(newNonce()).not.toBe(newNonce());
  });
});

describe('a message of the page', () => {
  test.each([
    { is: 'ready' },
    { is: 'copy' },
    { is: 'computed', wanted: true },
    { is: 'select', line: 5, start: 0, end: 9, version: 3 },
  ])('is read: %o', (message) => {
    expect(readFromPage(message)).toEqual(message);
  });

  test.each([
    undefined,
    null,
    'copy',
    { is: 'run' },
    { is: 'computed', wanted: 'yes' },
    { is: 'select', line: -1, start: 0, end: 9, version: 3 },
    { is: 'select', line: 1.5, start: 0, end: 9, version: 3 },
    { is: 'select', line: 1, start: 0, end: Number.NaN, version: 3 },
  ])('is refused: %o', (message) => {
    expect(readFromPage(message)).toBeUndefined();
  });

  test('kept over a reload is checked too', () => {
    const state = { uri: 'file:///clinic/KM-207.forefoot', line: 5, computed: true };
    expect(readPageState(state)).toEqual(state);
    expect(readPageState({ ...state, line: '5' })).toBeUndefined();
    expect(readPageState(undefined)).toBeUndefined();
  });
});
