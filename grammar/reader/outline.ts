import { type IToken, Lexer, type TokenType } from 'chevrotain';
import { spokenItems } from '../spoken/spoken-items.ts';
import type { PartialDate } from '../values.ts';
import type { Item, ItemOf } from './items.ts';
import * as t from './tokens.ts';

const end = (token: IToken): number => token.startOffset + token.image.length;
const span = (token: IToken, last: IToken = token) => ({ start: token.startOffset, end: end(last) });

type Read = (token: IToken, tokens: readonly IToken[], at: number) => Item;
/** What each shape of token begins; any other stands for itself. An item that takes more tokens says so by its end. */
const READ: ReadonlyMap<TokenType, Read> = new Map<TokenType, Read>([
  [t.Word, word],
  [t.CodedWord, coded],
  [t.SignWord, word],
  [t.NumberShape, (_, tokens, at) => quantity(numberAt(tokens, at))],
  [t.Bound, bounded],
  [t.Ordinal, ordinals],
  [t.SidedRay, sided],
  [t.Slashed, (token) => slashed(token)],
  [t.IsoDate, isoDate],
  [t.SlashDate, (token) => ({ is: 'bad date', why: 'ambiguous', ...span(token) })],
  [t.Clock, clock],
  [t.Quote, (token) => quote(token, true)],
  [t.OpenQuote, (token) => quote(token, false)],
  [t.Question, (token, tokens, at) => question(token, tokens[at - 1], tokens[at + 1])],
  [t.Comma, (token) => ({ is: 'break', of: 'segment', ...span(token) })],
  [t.Semicolon, (token) => ({ is: 'break', of: 'statement', ...span(token) })],
  [t.Stop, (token) => ({ is: 'break', of: 'statement', ...span(token) })],
  [t.Keeper, (token) => ({ is: 'keeper', ...span(token) })],
  [t.Comment, (token) => ({ is: 'comment', ...span(token) })],
]);

/**
 * Reads the outer structure of one line: breaks, quotes, quantities with ranges and bounds, dates, and words. Every token
 * belongs to exactly one item, so nothing of a line is lost.
 */
function itemsOf(tokens: readonly IToken[]): Item[] {
  const items: Item[] = [];
  let from = 0;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at] as IToken;
    if (token.startOffset < from) continue;
    const item = (READ.get(token.tokenType) ?? other)(token, tokens, at);
    items.push(item);
    from = item.end;
  }
  return items;
}

/** `>50 %`, `<3/52`; a bound before anything but a number stands for itself. */
function bounded(bound: IToken, tokens: readonly IToken[], at: number): Item {
  const next = tokens[at + 1];
  if (next?.tokenType === t.Slashed) return slashed(next, bound);
  return next?.tokenType === t.NumberShape ? quantity({ bound, ...numberAt(tokens, at + 1) }) : other(bound);
}

/** `2`, `10-15°`, `50 %`, `2+`; the unit sign may stand off the number. */
function numberAt(tokens: readonly IToken[], at: number): QuantityTokens {
  const first = tokens[at] as IToken;
  const dash = tokens[at + 1];
  const number = tokens[at + 2];
  const joined = touches(first, dash) && touches(dash, number);
  const second = joined && dash?.tokenType === t.Dash && number?.tokenType === t.NumberShape ? number : undefined;
  const after = second ? at + 3 : at + 1;
  const sign = tokens[after]?.tokenType === t.Unit ? tokens[after] : undefined;
  const last = tokens[sign ? after + 1 : after];
  const plus =
    last?.tokenType === t.Other && last.image === '+' && touches(sign ?? second ?? first, last) ? last : undefined;
  return { first, second, sign, plus };
}

/** `2nd`, `2nd-4th`. */
function ordinals(first: IToken, tokens: readonly IToken[], at: number): Item {
  const dash = tokens[at + 1];
  const second = tokens[at + 2];
  const last = dash?.tokenType === t.Dash && second?.tokenType === t.Ordinal ? second : first;
  return { is: 'ordinal', low: Number(first.image[0]), high: Number(last.image[0]), ...span(first, last) };
}

const touches = (left: IToken | undefined, right: IToken | undefined): boolean =>
  left !== undefined && right !== undefined && end(left) === right.startOffset;

/** Written out, as most of a line is words: a spread costs more than the rest of the item. */
function word(token: IToken): ItemOf<'word'> {
  const text = token.image;
  return { is: 'word', text, parts: partsOf(text), start: token.startOffset, end: end(token) };
}
function coded(token: IToken): Item {
  return { ...word(token), parts: token.image.toLowerCase().split(/[ -]/) };
}
function other(token: IToken): Item {
  return { is: 'other', text: token.image, ...span(token) };
}
/** Made once: the bundles build a pattern with classes of letters anew where it is used. */
const HYPHENED = /^\p{L}.*-/u;
const partsOf = (image: string): string[] => {
  const lower = image.toLowerCase();
  const word = lower.includes('’') ? lower.replaceAll('’', "'") : lower;
  return word.includes('-') && HYPHENED.test(word) ? word.split('-') : [word];
};

interface QuantityTokens {
  bound?: IToken | undefined;
  first: IToken;
  second?: IToken | undefined;
  sign?: IToken | undefined;
  plus?: IToken | undefined;
}
function quantity({ bound, first, second, sign, plus }: QuantityTokens): Item {
  const low = Number(first.image);
  const high = second ? Number(second.image) : low;
  const { start, end } = span(bound ?? first, plus ?? sign ?? second ?? first);
  const range = second !== undefined;
  if (!bound && !sign && !plus) return { is: 'number', low, high, range, start, end };
  return {
    is: 'number',
    low,
    high,
    range,
    ...(bound ? { bound: boundOf(bound.image) } : {}),
    ...(sign ? { unit: sign.image } : {}),
    ...(plus ? { plus: true } : {}),
    start,
    end,
  };
}
const boundOf = (image: string): '~' | '<' | '>' =>
  image === '<' || image === '≤' ? '<' : image === '>' || image === '≥' ? '>' : '~';

function slashed(token: IToken, bound?: IToken): Item {
  const [range = '', second = ''] = token.image.split('/');
  const [first = '', last] = range.split('-');
  return {
    is: 'slashed',
    first: Number(last ?? first),
    second: Number(second),
    ...(last === undefined ? {} : { from: Number(first) }),
    ...(bound ? { bound: boundOf(bound.image) } : {}),
    ...span(bound ?? token, token),
  };
}
function sided(token: IToken): Item {
  const right = token.image[0]?.toLowerCase() === 'r';
  return { is: 'sided', side: right ? 'right' : 'left', ray: Number(token.image[1]), ...span(token) };
}
function clock(token: IToken): Item {
  const [hour = 0, minute = 0] = token.image.split(':').map(Number);
  if (hour > 23 || minute > 59) return { is: 'bad date', why: 'impossible', ...span(token) };
  return { is: 'clock', hour, minute, ...span(token) };
}
function isoDate(token: IToken): Item {
  const date = partialDate(token.image);
  return date ? { is: 'date', date, ...span(token) } : { is: 'bad date', why: 'impossible', ...span(token) };
}
/** Reads `2026-03-09` or `2026-03`; `undefined` where the calendar has no such day. */
export function partialDate(text: string): PartialDate | undefined {
  const [year = 0, month = 0, day] = text.split('-').map(Number);
  if (month < 1 || month > 12) return undefined;
  if (day === undefined) return { year, month };
  if (day < 1 || (day > 28 && day > new Date(Date.UTC(year, month, 0)).getUTCDate())) return undefined;
  return { year, month, day };
}
const quote = (token: IToken, closed: boolean): Item => ({
  is: 'quote',
  text: closed ? token.image.slice(1, -1) : token.image.slice(1),
  closed,
  ...span(token),
});
const OPENS_WORD = /^[\p{L}\d~<>]/u;
function question(token: IToken, previous: IToken | undefined, next: IToken | undefined): Item {
  const after = next && OPENS_WORD.test(next.image) && touches(token, next);
  const before = previous && !Number.isNaN(previous.startOffset) && touches(previous, token);
  const either = after && before;
  return {
    is: 'question',
    touches: either ? 'nothing' : after ? 'next' : before ? 'previous' : 'nothing',
    ...span(token),
  };
}

let lexer: Lexer | undefined;
/** One lexer, built at the first line: building costs more than reading a hundred lines. */
function tokensOf(text: string): IToken[] {
  lexer ??= new Lexer(t.SHAPES, { positionTracking: 'onlyOffset', ensureOptimizations: true, skipValidations: true });
  return lexer.tokenize(text).tokens;
}

/** The items of a line, in order, covering every character that is neither white space nor a spoken hesitation. Never throws. */
export function outline(text: string): Item[] {
  return spokenItems(itemsOf(tokensOf(text)), text);
}

/** Does a line hold what is said and not typed: numbers in words, spoken marks, hesitations, spelled words? */
export function isDictated(text: string): boolean {
  const items = itemsOf(tokensOf(text));
  const spoken = spokenItems(items, text);
  return spoken.length !== items.length || spoken.some((item, i) => item !== items[i]);
}
