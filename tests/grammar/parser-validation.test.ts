import { EmbeddedActionsParser, Lexer } from 'chevrotain';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { OutlineParser } from '../../grammar/reader/outline.ts';
import { SHAPES } from '../../grammar/reader/tokens.ts';

/** Chevrotain 13 validates with `Object.groupBy`, which Node 20 lacks; the product skips validation and needs none. */
function groupBy<T>(items: Iterable<T>, keyOf: (item: T, index: number) => PropertyKey): Record<PropertyKey, T[]> {
  const groups: Record<PropertyKey, T[]> = {};
  let index = 0;
  for (const item of items) {
    const key = keyOf(item, index++);
    groups[key] = [...(groups[key] ?? []), item];
  }
  return groups;
}

const native = Object.getOwnPropertyDescriptor(Object, 'groupBy');
beforeAll(() => {
  if (!native) Object.defineProperty(Object, 'groupBy', { value: groupBy, configurable: true, writable: true });
});
afterAll(() => {
  if (!native) Reflect.deleteProperty(Object, 'groupBy');
});

test('the outline parser has no ambiguity, left recursion or unreachable alternative', () => {
  expect(() => new OutlineParser(false)).not.toThrow();
});

test('validation does report an ambiguous parser', () => {
  const token = SHAPES[1]!;
  class Ambiguous extends EmbeddedActionsParser {
    constructor() {
      super(SHAPES, { skipValidations: false });
      this.RULE('twice', () => this.OR([{ ALT: () => this.CONSUME(token) }, { ALT: () => this.CONSUME1(token) }]));
      this.performSelfAnalysis();
    }
  }
  expect(() => new Ambiguous()).toThrow(/[Aa]mbiguous/);
});

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
