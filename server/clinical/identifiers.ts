import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Place } from './facts.ts';

export interface Identifier {
  readonly what: string;
  readonly start: number;
  readonly end: number;
}

/**
 * What looks like an identifier of the classes of 45 CFR 164.514(b)(2)(i) that a text can show: names with a title (A), a day of
 * birth and ages over 89 (C), telephone (D), e-mail (F), social security and record numbers (G to K), web addresses (N).
 * Only dates that belong to the person: dates of visits are what a note is about.
 */
const SHAPES: readonly (readonly [what: string, shape: RegExp])[] = [
  ['an e-mail address', /[\w.+-]+@[\w-]+\.[a-z]{2,}/gi],
  ['a web address', /\b(?:https?:\/\/|www\.)\S+/gi],
  ['a social security number', /(?<![\d-])\d{3}-\d{2}-\d{4}(?![\d-])/g],
  ['a day of birth', /\b(?:born|dob|d\.o\.b\.?|date of birth)[:\s]+\d{1,4}[-/.]\d{1,2}[-/.]\d{1,4}/gi],
  [
    'a record number',
    /\b(?:mrn|nhs|hospital|record|chart|policy|account|insurance)(?:\s*(?:no\.?|number|id|#))?[:\s]+[A-Z]{0,3}\d(?:[ -]?\d){4,}/gi,
  ],
  ['a telephone number', /(?<![\d.,/-])(?:\+\d{1,3}|0\d)(?:[ ()-]{0,2}\d){7,12}(?![\d.,/-]*\d)/g],
  ['a name', /\b(?:Mr|Mrs|Ms|Miss)\.?\s+[A-Z][\p{L}'-]+(?:\s+[A-Z][\p{L}'-]+)*/gu],
  ['an age over 89', /\b(?:9\d|1[0-2]\d)[\s-]*(?:years?[\s-]+old|y\/?o\b|yrs?\s+old)/gi],
];
/** Most lines can't hold one: an upper-case title, an at sign, a cue word or a long run of digits is needed. */
const MAY_HOLD =
  /@|https?:|www\.|\bM(?:r|rs|s|iss)\b|\d{3}-\d\d-|\+\d|\b0\d|\b(?:born|dob|d\.o\.b|date of birth|mrn|nhs|hospital|record|chart|policy|account|insurance)\b|\b(?:9\d|1[0-2]\d)[\s-]*y/i;

const known = new WeakMap<LineSyntax, readonly Identifier[]>();
const NONE: readonly Identifier[] = [];

/** The identifiers of a line, comments included; kept with the line. A signature names its examiner and is none. */
export function identifiersOf(line: LineSyntax): readonly Identifier[] {
  const before = known.get(line);
  if (before) return before;
  const skip = line.kind === 'blank' || (line.kind === 'header' && line.header?.is !== 'patient');
  const found = skip || !MAY_HOLD.test(line.text) ? NONE : search(line.text);
  known.set(line, found);
  return found;
}

function search(text: string): Identifier[] {
  const found: Identifier[] = [];
  for (const [what, shape] of SHAPES)
    for (const { index, 0: words } of text.matchAll(shape)) {
      const end = index + words.trimEnd().length;
      if (!found.some((other) => index < other.end && other.start < end)) found.push({ what, start: index, end });
    }
  return found.sort((a, b) => a.start - b.start);
}

export const identifierMessage = (what: string): string =>
  `This looks like ${what}: the file is to hold nothing that names the person. Take it out.`;
export const placeOf = (line: number, { start, end }: Identifier): Place => ({ line, start, end });
