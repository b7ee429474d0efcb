import { readFileSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { isPublished, SOURCES, type SourceKey } from '../../grammar/sources.ts';
import { CAUTIONS } from '../../server/clinical/cautions.ts';
import { PATH_ROWS } from '../../server/clinical/path-rows.ts';
import { PUBLISHED_FACTS } from '../../server/clinical/published-facts.ts';
import { GATE_TEXTS, RED_FLAG_TEXTS } from '../../server/clinical/row-texts.ts';
import { STAGING_ROWS } from '../../server/clinical/staging-rows.ts';
import { RULE_PAGES } from '../../server/documents/rule-pages.ts';
import { rulesDocument } from '../../server/documents/rules-document.ts';

const text = rulesDocument();
const headings = [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading = '']) => heading);
const slug = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^a-z0-9 -]/g, '')
    .replaceAll(' ', '-');
/** The rows of the table below a heading, without its head. */
function rowsUnder(heading: string): string[] {
  const [, after = ''] = text.split(`\n## ${heading}\n`);
  return (after.split(/\n#/)[0] ?? '')
    .split('\n')
    .filter((line) => line.startsWith('|'))
    .slice(2);
}

test('server/RULES.md is what the rules and tables give; else run npm run generate', () => {
  expect(readFileSync('server/RULES.md', 'utf8')).toBe(text);
});

describe('the reference of the rules', () => {
  it('has a heading for every code, no two alike, and every link leads to one', () => {
    expect(headings).toEqual(expect.arrayContaining(RULE_PAGES.map(({ code }) => code)));
    const slugs = headings.map(slug);
    expect(slugs.filter((each, i) => slugs.indexOf(each) !== i)).toEqual([]);
    const targets = [...text.matchAll(/\]\(#([^)]+)\)/g)].map(([, target = '']) => target);
    expect(targets.length).toBeGreaterThan(RULE_PAGES.length);
    expect(targets.filter((target) => !slugs.includes(target))).toEqual([]);
  });
  it.each([
    ['Red flags', Object.keys(RED_FLAG_TEXTS)],
    ['Gates', Object.keys(GATE_TEXTS)],
    ['Stages', STAGING_ROWS.map(({ id }) => id)],
    ['Next steps', PATH_ROWS.map(({ id, urgent }) => (urgent ? `${id} (urgent)` : id))],
    ['Cautions', Object.values(CAUTIONS)],
    ['Published figures and what the engine does with them', Object.values(PUBLISHED_FACTS).map(({ says }) => says)],
  ] as const)('%s: every row once, in order, with a source', (heading, ids) => {
    const rows = rowsUnder(heading);
    expect(rows.map((row) => row.split(' | ')[0]?.slice(2))).toEqual(ids);
    for (const row of rows) expect(row).toMatch(/common practice|from memory, to be verified|read there|another page/);
    expect(rows.filter((row) => / \| {2}\|/.test(row))).toEqual([]);
  });
  it('lists every publication that it names', () => {
    const sources = text.slice(text.indexOf('\n# Sources'));
    for (const key of (Object.keys(SOURCES) as SourceKey[]).filter(isPublished))
      if (text.includes(`[${key}]`)) expect(sources).toContain(`**${key}**`);
  });
  it('marks what rests on memory wherever it stands', () => {
    for (const key of ['REIS89', 'KIT94', 'THOMP87'])
      expect(text.match(new RegExp(`\\[${key}\\]\\(#sources\\), (?!from memory)`, 'g'))).toBeNull();
  });
});
