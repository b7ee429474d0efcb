import { EmbeddedActionsParser, type IOrAlt, type IToken, Lexer } from 'chevrotain';
import { spokenItems } from '../spoken/spoken-items.ts';
import type { PartialDate } from '../values.ts';
import type { Item, ItemOf } from './items.ts';
import * as t from './tokens.ts';

const end = (token: IToken): number => token.startOffset + token.image.length;
const span = (token: IToken, last: IToken = token) => ({ start: token.startOffset, end: end(last) });

/**
 * Reads the outer structure of one line: breaks, quotes, quantities with ranges and bounds, dates, and words.
 * Every token belongs to exactly one item, so nothing of a line is lost.
 */
export class OutlineParser extends EmbeddedActionsParser {
  constructor(skipValidations = true) {
    super(t.SHAPES, { skipValidations, recoveryEnabled: false, maxLookahead: 3 });
    this.performSelfAnalysis();
  }

  /** Kept once made: made anew at every item, they would be a third of what reading a line allocates. */
  private alternatives: IOrAlt<Item>[] | undefined;

  /** One choice an item, and one token decides it: a choice that needs two is ten times as slow. */
  readonly line = this.RULE('line', (): Item[] => {
    const items: Item[] = [];
    this.alternatives ??= [
      { ALT: () => word(this.CONSUME(t.Word)) },
      { ALT: () => coded(this.CONSUME(t.CodedWord)) },
      { ALT: () => word(this.CONSUME(t.SignWord)) },
      {
        ALT: () => {
          const tokens = this.SUBRULE(this.number);
          return this.ACTION(() => quantity(tokens));
        },
      },
      { ALT: () => this.SUBRULE(this.bounded) },
      { ALT: () => this.SUBRULE(this.ordinals) },
      { ALT: () => sided(this.CONSUME(t.SidedRay)) },
      { ALT: () => slashed(this.CONSUME(t.Slashed)) },
      { ALT: () => isoDate(this.CONSUME(t.IsoDate)) },
      { ALT: (): Item => ({ is: 'bad date', why: 'ambiguous', ...span(this.CONSUME(t.SlashDate)) }) },
      { ALT: () => clock(this.CONSUME(t.Clock)) },
      { ALT: () => quote(this.CONSUME(t.Quote), true) },
      { ALT: () => quote(this.CONSUME(t.OpenQuote), false) },
      { ALT: () => question(this.CONSUME(t.Question), this.LA(-1), this.LA(1)) },
      { ALT: (): Item => ({ is: 'break', of: 'segment', ...span(this.CONSUME(t.Comma)) }) },
      { ALT: (): Item => ({ is: 'break', of: 'statement', ...span(this.CONSUME(t.Semicolon)) }) },
      { ALT: (): Item => ({ is: 'break', of: 'statement', ...span(this.CONSUME(t.Stop)) }) },
      { ALT: (): Item => ({ is: 'keeper', ...span(this.CONSUME(t.Keeper)) }) },
      { ALT: (): Item => ({ is: 'comment', ...span(this.CONSUME(t.Comment)) }) },
      { ALT: () => other(this.CONSUME(t.Pluses)) },
      { ALT: () => other(this.CONSUME(t.Arrow)) },
      { ALT: () => other(this.CONSUME(t.Dash)) },
      { ALT: () => other(this.CONSUME(t.Unit)) },
      { ALT: () => other(this.CONSUME(t.Other)) },
    ];
    const alternatives = this.alternatives;
    this.MANY(() => {
      const item = this.OR(alternatives);
      this.ACTION(() => items.push(item));
    });
    return items;
  });

  /** `>50 %`; a bound before anything but a number stands for itself. */
  private readonly bounded = this.RULE('bounded', (): Item => {
    const bound = this.CONSUME(t.Bound);
    const fraction = this.OPTION1(() => this.CONSUME(t.Slashed));
    const tokens = this.OPTION({
      GATE: () => !fraction && this.LA(1).tokenType === t.NumberShape,
      DEF: () => this.SUBRULE(this.number),
    });
    return this.ACTION(() => {
      if (fraction) return slashed(fraction, bound);
      return tokens ? quantity({ bound, ...tokens }) : other(bound);
    });
  });

  /** `2`, `10-15°`, `50 %`, `2+`; the unit sign may stand off the number. */
  private readonly number = this.RULE('number', (): QuantityTokens => {
    const first = this.CONSUME1(t.NumberShape);
    const second = this.OPTION1({
      GATE: () =>
        this.LA(2).tokenType === t.NumberShape && touches(this.LA(0), this.LA(1)) && touches(this.LA(1), this.LA(2)),
      DEF: () => {
        this.CONSUME(t.Dash);
        return this.CONSUME2(t.NumberShape);
      },
    });
    const sign = this.OPTION2(() => this.CONSUME(t.Unit));
    const plus = this.OPTION3({
      GATE: () => this.LA(1).image === '+' && touches(this.LA(0), this.LA(1)),
      DEF: () => this.CONSUME(t.Other),
    });
    return { first, second, sign, plus };
  });

  /** `2nd`, `2nd-4th`. */
  private readonly ordinals = this.RULE('ordinals', (): Item => {
    const first = this.CONSUME(t.Ordinal);
    const last = this.OPTION({
      GATE: () => this.LA(2).tokenType === t.Ordinal,
      DEF: () => {
        this.CONSUME(t.Dash);
        return this.CONSUME1(t.Ordinal);
      },
    });
    return this.ACTION(() => ({
      is: 'ordinal',
      low: Number(first.image[0]),
      high: Number((last ?? first).image[0]),
      ...span(first, last ?? first),
    }));
  });
}

const touches = (left: IToken | undefined, right: IToken | undefined): boolean =>
  left !== undefined && right !== undefined && end(left) === right.startOffset;

/** Written out, as most of a line is words: a spread costs more than the rest of the item. */
const word = (token: IToken): ItemOf<'word'> => ({
  is: 'word',
  text: token.image,
  parts: partsOf(token.image),
  start: token.startOffset,
  end: end(token),
});
const coded = (token: IToken): Item => ({
  ...word(token),
  parts: token.image.toLowerCase().split(/[ -]/),
});
const other = (token: IToken): Item => ({ is: 'other', text: token.image, ...span(token) });
const partsOf = (image: string): string[] => {
  const lower = image.toLowerCase().replaceAll('’', "'");
  return lower.includes('-') && /^\p{L}.*-/u.test(lower) ? lower.split('-') : [lower];
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
  return {
    is: 'number',
    low,
    high,
    range: second !== undefined,
    ...(bound ? { bound: boundOf(bound.image) } : {}),
    ...(sign ? { unit: sign.image } : {}),
    ...(plus ? { plus: true } : {}),
    ...span(bound ?? first, plus ?? sign ?? second ?? first),
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
  if (day < 1 || day > new Date(Date.UTC(year, month, 0)).getUTCDate()) return undefined;
  return { year, month, day };
}
const quote = (token: IToken, closed: boolean): Item => ({
  is: 'quote',
  text: closed ? token.image.slice(1, -1) : token.image.slice(1),
  closed,
  ...span(token),
});
function question(token: IToken, previous: IToken | undefined, next: IToken | undefined): Item {
  const after = next && /^[\p{L}\d~<>]/u.test(next.image) && touches(token, next);
  const before = previous && !Number.isNaN(previous.startOffset) && touches(previous, token);
  const either = after && before;
  return {
    is: 'question',
    touches: either ? 'nothing' : after ? 'next' : before ? 'previous' : 'nothing',
    ...span(token),
  };
}

interface Engine {
  lexer: Lexer;
  parser: OutlineParser;
}
let engine: Engine | undefined;
/** One lexer and one parser, built at the first line: building costs more than reading a thousand lines. */
function ready(): Engine {
  engine ??= {
    lexer: new Lexer(t.SHAPES, { positionTracking: 'onlyOffset', ensureOptimizations: true, skipValidations: true }),
    parser: new OutlineParser(),
  };
  return engine;
}

/** The items of a line, in order, covering every character that is neither white space nor a spoken hesitation. Never throws. */
export function outline(text: string): Item[] {
  const { lexer, parser } = ready();
  parser.input = lexer.tokenize(text).tokens;
  return spokenItems(parser.line(), text);
}

/** Does a line hold what is said and not typed: numbers in words, spoken marks, hesitations, spelled words? */
export function isDictated(text: string): boolean {
  const { lexer, parser } = ready();
  parser.input = lexer.tokenize(text).tokens;
  const items = parser.line();
  const spoken = spokenItems(items, text);
  return spoken.length !== items.length || spoken.some((item, i) => item !== items[i]);
}
