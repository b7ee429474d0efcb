import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { headingLines } from '../../client/heading-lines.ts';
import { RULE_PAGES } from '../../server/documents/rule-pages.ts';

const page = readFileSync('server/RULES.md', 'utf8');

test('every code has a line of its own in the reference of the rules', () => {
  const lines = headingLines(page);
  const text = page.split('\n');
  for (const { code } of RULE_PAGES) expect([code, text[(lines.get(code) ?? 0) - 1]]).toEqual([code, `## ${code}`]);
});
