import * as closed from '../lexicon/closed-words.ts';
import type { Entry } from '../lexicon/entry.ts';
import { CONVERTED, UNIT_WORDS } from '../lexicon/unit-words.ts';
import { CLOSED_FORMS, type Context, entriesIn, openersOf, valueForms } from './contexts.ts';
import { keyOf, LETTER, phrases, words } from './phrases.ts';
import { match, type Rule, type Rules, SCOPES } from './textmate-rules.ts';

/** Rules that look the same in every section: comments, quotes, numbers, dates, subjects, closed words. */

const DASH = '[-–—]';
const ALONE = '(?<![0-9A-Za-zÀ-ɏ])';
const NUMBER = String.raw`\d+(?:\.\d+)?`;
const UNITS = words([...Object.keys(UNIT_WORDS), ...Object.keys(CONVERTED)]);
const QUANTITY = String.raw`(?<![0-9])(?:[~≈<>≤≥]\s*)?${NUMBER}(?:${DASH}${NUMBER})?(?:\s*${UNITS})?\+?`;

/** `3 months ago`, where a finding takes a date. */
export const AGO: Rule = match(SCOPES.date, String.raw`${QUANTITY}\s+ago(?!${LETTER})`);

const ORDINAL = `${ALONE}[1-9](?:st|nd|rd|th)(?![A-Za-z0-9])`;
const ORDINALS = String.raw`${ORDINAL}(?:(?:\s*(?:${DASH}|to|and|&|\+)\s*|/)${ORDINAL})*`;
/** Two neighbouring rays as the value of a finding (`gap 2nd-3rd`). */
export const PAIR: Rule = match(SCOPES.quantity, `${ORDINAL}(?:${DASH}|/)${ORDINAL}`);

const FEW = String.raw`[1-5](?:${DASH}[1-5])?(?![0-9°%+]|[./:]\d)`;
const NUMBERED = String.raw`\s*${FEW}(?:(?:,|\s*(?:and|&)\s*)${FEW})*`;

/** `2nd`, `2nd-4th`, `2nd MTP`, `R2`, `ray 2`, `web 2`, `2/3 web`. */
export function subjects(context: Context): Rule[] {
  const part = String.raw`(?:\s+(?:${[phrases(closed.WEB_WORDS), ...jointWords(context), phrases(closed.JOINTS_WORDS)].join('|')}))?`;
  return [
    match(SCOPES.subject, ORDINALS + part),
    match(SCOPES.subject, `${ALONE}[RL][1-5](?![A-Za-z0-9])`),
    match(SCOPES.subject, phrases([...closed.RAY_WORDS, ...closed.WEB_WORDS]) + NUMBERED),
    match(SCOPES.subject, String.raw`(?<![0-9])[1-4]/[2-5]\s+${phrases(closed.WEB_WORDS)}`),
    match(SCOPES.subject, String.raw`${phrases(closed.JOINTS_WORDS)}\s*(?:2/3|3/4)(?![\w/])`),
  ];
}

/** A joint word after an ordinal belongs to the subject, unless it is a finding here and its result follows. */
function jointWords({ section }: Context): string[] {
  const results = (entry: Entry) => phrases([...valueForms(entry), ...closed.ABSENT, ...closed.NOT_DONE]);
  return closed.JOINT_WORDS.map((word) => {
    const entry = entriesIn(section).find((each) => openersOf(each, section).map(keyOf).includes(keyOf(word)));
    return phrases([word], closed.JOINT_WORDS) + (entry ? String.raw`(?!\s+${results(entry)})` : '');
  });
}

const listed = (name: string, forms: readonly string[]): Rule => match(name, phrases(forms, CLOSED_FORMS));

/** The repository entries that every context includes. */
export const SHAPES: Rules = {
  verbatim: { patterns: [{ include: '#comment' }, { include: '#quote' }] },
  rest: { patterns: [{ include: '#numbers' }, { include: '#closed' }, { include: '#punctuation' }] },
  comment: { match: '//.*', name: SCOPES.comment },
  /** A quote never crosses a line end. */
  quote: {
    patterns: [
      { match: '"[^"]*(?:"|$)', name: SCOPES.quote },
      { match: '“[^”]*(?:”|$)', name: SCOPES.quote },
    ],
  },
  numbers: {
    patterns: [
      match(SCOPES.date, String.raw`(?<![0-9])\d{4}-\d{2}(?:-\d{2})?(?![\w-])`),
      // `04/05/26` is not read as a date, so it does not look like one.
      { match: String.raw`(?<![0-9])\d{1,2}[/.]\d{1,2}[/.](?:\d{4}|\d{2})(?![\w/])` },
      match(SCOPES.quantity, String.raw`(?<![0-9])\d{1,2}:\d{2}(?!\d)`),
      match(SCOPES.quantity, String.raw`(?<![0-9])\d{1,3}/\d{1,3}(?![\w/])`),
      match(SCOPES.quantity, QUANTITY),
    ],
  },
  closed: {
    patterns: [
      listed(SCOPES.subject, closed.OTHERS),
      listed(SCOPES.value, closed.PANEL),
      listed(SCOPES.negation, [...closed.NO, ...closed.NOT]),
      listed(SCOPES.status, [
        ...[closed.ABSENT, closed.NOT_DONE, closed.UNABLE, closed.EQUIVOCAL].flat(),
        ...[closed.POSITIVE, closed.PRESENT, closed.MUCH].flat(),
      ]),
      listed(SCOPES.distancing, closed.DISTANCING),
      listed(SCOPES.side, Object.keys(closed.SIDES)),
      { match: String.raw`\?`, name: SCOPES.doubt },
    ],
  },
  punctuation: {
    patterns: [
      { match: '[,;:=]', name: SCOPES.separator },
      { match: '[()]', name: SCOPES.bracket },
    ],
  },
};
