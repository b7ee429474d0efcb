import { Lexer } from 'chevrotain';
import { expect, test } from 'vitest';
import { outline } from '../../grammar/reader/outline.ts';
import { SHAPES } from '../../grammar/reader/tokens.ts';

test('the lexer has no unreachable, empty or unsupported pattern, and is optimised', () => {
  const lexer = new Lexer(SHAPES, { positionTracking: 'onlyOffset', ensureOptimizations: true });
  expect(lexer.lexerDefinitionErrors).toEqual([]);
});

test('the lexer takes every character: none is an error', () => {
  const lexer = new Lexer(SHAPES, { positionTracking: 'onlyOffset', ensureOptimizations: true, skipValidations: true });
  const every = Array.from({ length: 0x3000 }, (_, code) => String.fromCharCode(code)).join(' ');
  expect(lexer.tokenize(every).errors).toEqual([]);
  expect(lexer.tokenize('\ud83d\ude00 \ufffd \ufeff \ud800').errors).toEqual([]);
});

test.each([
  ['10-15°', { is: 'number', low: 10, high: 15, range: true, unit: '°' }],
  ['10 -15', { is: 'number', low: 10, high: 10, range: false }],
  ['50 %', { is: 'number', low: 50, high: 50, range: false, unit: '%' }],
  ['2+', { is: 'number', low: 2, high: 2, range: false, plus: true }],
  ['2 +', { is: 'number', low: 2, high: 2, range: false }],
  ['>50 %', { is: 'number', low: 50, high: 50, range: false, bound: '>', unit: '%' }],
  ['~ zzq', { is: 'other', text: '~' }],
  ['2nd-4th', { is: 'ordinal', low: 2, high: 4 }],
  ['2nd - zzq', { is: 'ordinal', low: 2, high: 2 }],
])('%s begins with an item of its tokens, and of no more', (text, item) => {
  expect(outline(text)[0]).toMatchObject(item);
  expect(outline(text).at(-1)?.end).toBe(text.length);
});
