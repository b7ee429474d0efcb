import { describe, expect, it, test } from 'vitest';
import { exampleNote } from '../../server/clinical/rules/example-note.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { pageOf, RULE_PAGES } from '../../server/documents/rule-pages.ts';
import { fixesOf, reportsOf, rulePageText } from '../../server/documents/rule-reference.ts';
import { wrap } from '../clinical/note.ts';

test('an example stands in the same note here as in the tests of the rules', () => {
  for (const { examples } of RULES)
    for (const text of Object.values(examples)) expect(exampleNote(text)).toBe(wrap(text));
});

describe.each(RULE_PAGES.filter(({ examples }) => examples).map((page) => [page.code, page] as const))(
  '%s',
  (code, page) => {
    it('reports its invalid example, and neither of the others', () => {
      const { invalid = '', valid = '', nearMiss = '' } = page.examples ?? {};
      expect(reportsOf(invalid, code).length).toBeGreaterThan(0);
      expect(reportsOf(valid, code)).toEqual([]);
      expect(reportsOf(nearMiss, code)).toEqual([]);
      expect(new Set([invalid, valid, nearMiss]).size).toBe(3);
    });
    it('says what, why and what to do, and shows what it reports and offers', () => {
      const text = rulePageText(page, ({ source, mark }) => `${source}, ${mark}`);
      for (const part of [page.name, page.what, page.why, page.instead]) expect(text).toContain(part);
      for (const { message } of reportsOf(page.examples?.invalid ?? '', code)) expect(text).toContain(`> ${message}`);
      for (const { title } of fixesOf(page)) expect(text).toContain(`- ${title} (`);
      expect(text).not.toMatch(/undefined|\[object/);
    });
  },
);

test('no code has two pages', () => {
  expect(new Set(RULE_PAGES.map(({ code }) => code)).size).toBe(RULE_PAGES.length);
  expect(pageOf('no-such-code')).toBeUndefined();
});
