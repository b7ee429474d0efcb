import { expect, test } from 'vitest';
import { linked, rulesPageOf } from '../../server/features/rule-link.ts';

const range = { start: { line: 0, character: 0 }, end: { line: 0, character: 1 } };

test('the code of a diagnostic leads to its heading', () => {
  expect(linked([{ range, message: 'x', code: 'red-flag' }], 'file:///x/RULES.md')).toEqual([
    { range, message: 'x', code: 'red-flag', codeDescription: { href: 'file:///x/RULES.md#red-flag' } },
  ]);
});

test.each([
  [{ rulesPage: 'file:///x/RULES.md' }, 'file:///x/RULES.md'],
  [{ rulesPage: 'vscode-remote://host/x/RULES.md' }, 'vscode-remote://host/x/RULES.md'],
  [{ rulesPage: '/x/RULES.md' }, undefined],
  [{ rulesPage: 'file:///x/RULES.md#top' }, undefined],
  [{ rulesPage: 7 }, undefined],
  [{}, undefined],
  [undefined, undefined],
])('of %j the page is %j', (sent, page) => {
  expect(rulesPageOf(sent)).toBe(page);
});
