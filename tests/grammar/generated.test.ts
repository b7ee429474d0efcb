import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { outputs, staleOutputs } from '../../grammar/generate/outputs.ts';
import configuration from '../../grammar/language-configuration.json';
import * as closed from '../../grammar/lexicon/closed-words.ts';
import { formsOf, HEADER_WORDS, SEX_WORDS, VISIT_SIDES, VISIT_WORDS } from '../../grammar/lexicon/header-words.ts';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';
import { SOURCES } from '../../grammar/sources.ts';
import { DRAWER_SCALES } from '../../grammar/values.ts';
import { settingsSchema } from '../../server/clinical/settings-schema.ts';
import { settingsRows } from '../../server/documents/settings-text.ts';

const onDisk = (path: string): string | undefined => (existsSync(path) ? readFileSync(path, 'utf8') : undefined);

const all = outputs(settingsRows());

describe('generated files', () => {
  test.each(all)('$path is what the lexicon gives; else run npm run generate', ({ path, text }) => {
    expect(onDisk(path)).toBe(text);
  });

  test('a changed or a missing file is stale', () => {
    expect(staleOutputs(all, () => undefined)).toEqual(all);
    expect(staleOutputs(all, (path) => `${all.find((each) => each.path === path)?.text}\n`)).toEqual(all);
    expect(staleOutputs(all, (path) => all.find((each) => each.path === path)?.text)).toEqual([]);
  });
});

describe('the reference of the language', () => {
  const text = all.find(({ path }) => path === 'grammar/LANGUAGE.md')?.text ?? '';
  const headings = [...text.matchAll(/^#+ (.*)$/gm)].map(([, heading = '']) => heading);
  const slugs = headings.map((heading) =>
    heading
      .toLowerCase()
      .replace(/[^a-z0-9 -]/g, '')
      .replaceAll(' ', '-'),
  );
  const [rules = '', findings = ''] = text.split(/^## Findings/m, 2);

  test('every finding has its own heading, and no two headings are alike', () => {
    expect(headings).toEqual(expect.arrayContaining(LEXICON.map(({ word }) => word)));
    expect(slugs.filter((slug, i) => slugs.indexOf(slug) !== i)).toEqual([]);
    expect(findings).not.toBe('');
  });

  test('every link leads to a heading', () => {
    const targets = [...text.matchAll(/\]\(#([^)]+)\)/g)].map(([, slug = '']) => slug);
    expect(targets.length).toBeGreaterThan(0);
    expect(targets.filter((slug) => !slugs.includes(slug))).toEqual([]);
  });

  test('every word that is not a finding stands there with its class', () => {
    const words = Object.values(closed).flatMap((list: object) => (Array.isArray(list) ? list : Object.keys(list)));
    expect(words.filter((word) => !rules.includes(`\`${word}\``))).toEqual([]);
  });

  test('every publication that it names is in its list of sources', () => {
    const sources = text.slice(text.indexOf('\n## Sources'));
    const named = Object.keys(SOURCES).filter((key) => /^[A-Z]/.test(key) && text.includes(key));
    expect(named).toContain('NERY15');
    expect(named.filter((key) => !sources.includes(`**${key}**`))).toEqual([]);
  });

  test('drawer grade, clinical stage and anatomical grade are kept apart, and so are the drawer scales', () => {
    expect(rules).toContain('These are three different things.');
    expect(rules).toContain('the same number means different things on them');
    expect(DRAWER_SCALES.filter((scale) => !rules.includes(`| \`${scale}\` |`))).toEqual([]);
  });

  test('its contents lead to every chapter', () => {
    const chapters = [...text.matchAll(/^## (.*)$/gm)].map(([, heading = '']) => heading).slice(1);
    const contents = text.slice(text.indexOf('## Contents'), text.indexOf('## A note'));
    expect(chapters.filter((heading) => !contents.includes(`[${heading}](#`))).toEqual([]);
  });

  test('short forms stand in its index with what they are short for', () => {
    const index = text.slice(text.indexOf('## Abbreviations'));
    for (const row of [
      '| `ttp` | `tender` |',
      '| `rv` | `review` |',
      '| `hx` | section `history` |',
      '| `nd` | `not done` |',
      '| `hva` | `hva` |',
    ])
      expect(index.toLowerCase(), row).toContain(row);
    expect(index).not.toContain('| `sore` |');
  });

  test('it tells how a visit is sorted, and each setting', () => {
    const order = closed.EXAM_ORDER.map((section) => `\`${closed.SECTION_WORD[section]}\``).join(', ');
    expect(order).toBe(
      '`history`, `pain`, `tried`, `stand`, `exam`, `xray`, `us`, `ct`, `mri`, `lab`, `imp`, `operation`, `plan`',
    );
    expect(text.replace(/\s+/g, ' ')).toContain(`into this order: ${order};`);
    for (const [section, { properties }] of Object.entries(
      settingsSchema().properties as Record<string, { properties?: object }>,
    ))
      for (const key of section === 'severity' ? ['CODE'] : Object.keys(properties ?? {}))
        expect(text).toContain(`| \`${section}.${key}\` |`);
  });

  test('no line of words is longer than a screen', () => {
    const lines = text.split('\n').filter((line) => !line.startsWith('|') && line.length > 400);
    expect(lines).toEqual([]);
  });

  test('its sample note is read without a doubt', () => {
    const sample = /```forefoot\n(.*?)\n```/s.exec(text)?.[1]?.split('\n') ?? [];
    expect(sample.length).toBeGreaterThan(5);
    const read = sample.map((text) => readLine(text));
    expect(read.flatMap(({ problems }) => problems)).toEqual([]);
    expect(
      read.flatMap(({ statements }) => statements.flatMap((each) => each.findings.flatMap(({ causes }) => causes))),
    ).toEqual([]);
  });
});

describe('the words of the header lines', () => {
  test.each(HEADER_WORDS)('%s opens a header line', (word) => {
    expect(readLine(`${word} x`).kind).toBe('header');
  });

  test.each(Object.entries(VISIT_WORDS).flatMap(([kind, others]) => [kind, ...others].map((form) => [form, kind])))(
    'visit kind %s: %s',
    (form, kind) => {
      expect(readLine(`visit 2026-03-09 ${form}`)).toMatchObject({ header: { kind }, problems: [] });
    },
  );

  test.each(formsOf(VISIT_SIDES))('visit %s has a side', (form) => {
    const side = Object.entries(VISIT_SIDES).find(([word, others]) => [word, ...others].includes(form))?.[0];
    expect(readLine(`visit 2026-03-09 ${form}`)).toMatchObject({ header: { side }, problems: [] });
  });

  test.each(formsOf(SEX_WORDS))('patient %s', (form) => {
    const sex = Object.entries(SEX_WORDS).find(([word, others]) => [word, ...others].includes(form))?.[0];
    expect(readLine(`patient KM-207 ${form}`)).toMatchObject({ header: { sex }, problems: [] });
  });
});

describe('the language configuration', () => {
  const word = new RegExp(configuration.wordPattern, 'g');

  test('a word is what a double click should take', () => {
    expect('pulls-out 2nd-4th R2 2026-03-09 web 2, 6/10 f/u hallux-valgus 12.5°'.match(word)).toEqual([
      'pulls-out',
      '2nd',
      '4th',
      'R2',
      '2026-03-09',
      'web',
      '2',
      '6',
      '10',
      'f/u',
      'hallux-valgus',
      '12.5',
    ]);
  });

  test('the pattern never matches nothing', () => {
    expect('').not.toMatch(new RegExp(configuration.wordPattern));
    expect(' ,;.()'.match(word)).toBeNull();
  });
});

describe('Enter in a list under a heading', () => {
  const { onEnterRules } = configuration;
  const done = (line: string) => onEnterRules.find(({ beforeText }) => new RegExp(beforeText).test(line))?.action;
  test('goes on with its mark, ends it at an empty mark, and leaves every other line alone', () => {
    for (const mark of ['-', '*', '•']) {
      expect(done(`${mark} tape 2nd`)).toEqual({ indent: 'none', appendText: `${mark} ` });
      expect(done(`${mark} `)).toEqual({ indent: 'none', removeText: 2 });
    }
    for (const line of ['plan     tape', '2nd      - ', '-tape', '// - x', '1. tape', ''])
      expect(done(line)).toBeUndefined();
  });
});
