import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { RULES } from '../../server/clinical/rules/index.ts';

/** A bundle with every escape undone that a minifier may write, so that texts compare as they are read. */
const bundle = (name: string): string =>
  readFileSync(new URL(`../../dist/${name}.js`, import.meta.url), 'utf8')
    .replace(/\\u([\da-f]{4})/gi, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/\\x([\da-f]{2})/gi, (_, code) => String.fromCodePoint(Number.parseInt(code, 16)))
    .replace(/\\n/g, '\n')
    .replace(/\\(['"`])/g, '$1');

const finding = LEXICON.flatMap(({ technique, meaning }) => [technique, meaning]);
const rule = RULES.flatMap(({ what, why, instead, examples }) => [what, why, instead, ...Object.values(examples)]);

test('the server carries no text that only explains', () => {
  const server = bundle('server');
  expect([...finding, ...rule].filter((text) => text.length > 30 && server.includes(text))).toEqual([]);
});

test('the bundle that answers questions carries the text of every finding', () => {
  const asked = bundle('asked');
  expect(finding.filter((text) => !asked.includes(text))).toEqual([]);
});
