import { createToken, Lexer, type TokenType } from 'chevrotain';

/** Characters from one code to another, both included. */
const from = (first: number, last: number): string[] =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCharCode(first + i));
const LETTERS = [...from(0x41, 0x5a), ...from(0x61, 0x7a), ...from(0xc0, 0x24f)];
/** What `\s` matches. */
const SPACES = [
  ...from(0x09, 0x0d),
  ' ',
  '\u00a0',
  '\u1680',
  ...from(0x2000, 0x200a),
  '\u2028',
  '\u2029',
  '\u202f',
  '\u205f',
  '\u3000',
  '\ufeff',
];

/**
 * The dozen shapes that a line is made of. Words carry no meaning here: the lexicon classifies them in context.
 * Order matters: the first pattern that matches wins, so that longer shapes stand first. Each says with which characters it
 * may start, so that no pattern has to be parsed to find that out.
 */
const shape = (name: string, pattern: RegExp, startsWith: string[]): TokenType =>
  createToken({ name, pattern, line_breaks: false, start_chars_hint: startsWith });

const digits = [...'0123456789'];

export const Comment = shape('Comment', /\/\/.*/, ['/']);
export const Quote = shape('Quote', /"[^"]*"|“[^”]*”/, ['"', '“']);
/** A quote never crosses a line end: what is left open runs to the end of the line and is reported. */
export const OpenQuote = shape('OpenQuote', /["“].*/, ['"', '“']);
export const IsoDate = shape('IsoDate', /\d{4}-\d{2}(?:-\d{2})?(?![\w-])/, digits);
export const SlashDate = shape('SlashDate', /\d{1,2}[/.]\d{1,2}[/.](?:\d{4}|\d{2})(?![\w/])/, digits);
export const Clock = shape('Clock', /\d{1,2}:\d{2}(?!\d)/, digits);
/** `3/52`, and `6-8/52` from one to the other. */
export const Slashed = shape('Slashed', /(?:\d{1,3}-)?\d{1,3}\/\d{1,3}(?![\w/])/, digits);
export const Ordinal = shape('Ordinal', /[1-9](?:st|nd|rd|th)(?![A-Za-z0-9])/i, digits);
export const SidedRay = shape('SidedRay', /[RrLl][1-5](?![A-Za-z0-9])/, [...'RrLl']);
export const NumberShape = shape('Number', /\d+(?:\.\d+)?/, digits);
/** Words with a digit in them: laboratory values and types of diabetes. */
export const CodedWord = shape('CodedWord', /(?:hba1c|a1c|t[12]dm|dm[12]|ckd[34]|type[ -][12])(?![\w.])/i, [
  ...'HhAaTtDdCc',
]);
export const Word = shape('Word', /[A-Za-z\u00c0-\u024f]+(?:[-'’/][A-Za-z\u00c0-\u024f]+)*/, LETTERS);
export const Arrow = shape('Arrow', /->|→/, ['-', '→']);
export const SignWord = shape('SignWord', /[+-]ve(?![A-Za-z])|\+\/-/i, ['+', '-']);
/** `TTP++`: how much, in signs; a single plus is positive. */
export const Pluses = shape('Pluses', /\+{2,3}(?!\+)/, ['+']);
export const Unit = shape('Unit', /°[cC]?|%/, ['°', '%']);
export const Dash = shape('Dash', /[-–—]/, ['-', '–', '—']);
export const Bound = shape('Bound', /[~≈<>≤≥]/, [...'~≈<>≤≥']);
export const Question = shape('Question', /\?/, ['?']);
export const Comma = shape('Comma', /,/, [',']);
export const Semicolon = shape('Semicolon', /;/, [';']);
export const Stop = shape('Stop', /\.(?!\S)/, ['.']);
export const Keeper = shape('Keeper', /[:=]/, [':', '=']);
export const Space = createToken({
  name: 'Space',
  pattern: /\s+/,
  group: Lexer.SKIPPED,
  line_breaks: true,
  start_chars_hint: SPACES,
});
/** One character of each bucket in which the lexer groups first characters: any character may start this shape. */
const anyCharacter = [
  ...Array(256).keys(),
  ...Array.from({ length: 257 }, (_, bucket) => Math.min(bucket * 255 + 1, 0xffff)),
];
export const Other = createToken({
  name: 'Other',
  pattern: /[\s\S]/,
  line_breaks: false,
  start_chars_hint: anyCharacter.map((code) => String.fromCharCode(code)),
});

export const SHAPES: TokenType[] = [
  Space,
  Comment,
  Quote,
  OpenQuote,
  IsoDate,
  SlashDate,
  Clock,
  Slashed,
  Ordinal,
  SidedRay,
  NumberShape,
  CodedWord,
  Word,
  Arrow,
  SignWord,
  Pluses,
  Unit,
  Dash,
  Bound,
  Question,
  Comma,
  Semicolon,
  Stop,
  Keeper,
  Other,
];
