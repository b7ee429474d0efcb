import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { formsOf, HEADER_WORDS, SEX_WORDS, VISIT_SIDES, VISIT_WORDS } from '../../grammar/generate/header-words.ts';
import { outputs, staleOutputs } from '../../grammar/generate/outputs.ts';
import configuration from '../../grammar/language-configuration.json';
import { readLine } from '../../grammar/read-line.ts';

const onDisk = (path: string): string | undefined => (existsSync(path) ? readFileSync(path, 'utf8') : undefined);

describe('generated files', () => {
  test.each(outputs())('$path is what the lexicon gives; else run npm run generate', ({ path, text }) => {
    expect(onDisk(path)).toBe(text);
  });

  test('a changed or a missing file is stale', () => {
    const all = outputs();
    expect(staleOutputs(all, () => undefined)).toEqual(all);
    expect(staleOutputs(all, (path) => `${all.find((each) => each.path === path)?.text}\n`)).toEqual(all);
    expect(staleOutputs(all, (path) => all.find((each) => each.path === path)?.text)).toEqual([]);
  });
});

describe('the words of the header lines', () => {
  test.each(HEADER_WORDS)('%s opens a header line', (word) => {
    expect(readLine(`${word} x`).kind).toBe('header');
  });

  test.each(Object.entries(VISIT_WORDS).flatMap(([kind, others]) => [kind, ...others].map((form) => [form, kind])))(
    'visit %s is a %s visit',
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
