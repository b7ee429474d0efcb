import { formsOf, VISIT_SIDES } from '../lexicon/header-words.ts';
import { CARRIED_FILLERS, EVENT_WORDS, SIGNER_ROLES } from '../lexicon/lifecycle-words.ts';
import { phrases, words } from './phrases.ts';
import { anyCase, captures, match, type Rule, type Rules, SCOPES } from './textmate-rules.ts';

/** The lines that sign, add to and divide a visit, and the words that stand before a statement. */

const DATE = String.raw`\d{4}-\d{2}(?:-\d{2})?(?![\w-])`;
const DATED = String.raw`(?=(?:(?!//).)*(?<![0-9])${DATE}|\s*(?://|$))`;
/** Case counts for initials, and for nothing else. */
const SIGNER = `(?:${phrases(SIGNER_ROLES)}|(?<![A-Za-z])(?-i:[A-Z]{1,4})(?![A-Za-z]))`;

const line = (word: string, ahead: string, patterns: readonly Rule[]): Rule => ({
  begin: anyCase(String.raw`^\s*(${phrases([word])})${ahead}`),
  beginCaptures: captures(SCOPES.header),
  end: '$',
  patterns: [{ include: '#comment' }, ...patterns, { include: '#punctuation' }],
});

const signing: readonly Rule[] = [
  {
    match: anyCase(String.raw`(${phrases(['seal'])})\s+((?:(?!//)\S)+)`),
    captures: captures(SCOPES.header, SCOPES.code),
  },
  { include: '#numbers' },
  { match: phrases(['by']) },
  match(SCOPES.name, SIGNER),
];

/** Repository entries by name; the grammar includes them before any section. */
export const LIFECYCLE_RULES: Rules = {
  'header-signed': line('signed', DATED, signing),
  'header-addendum': line('addendum', DATED, signing),
  'header-event': line('event', String.raw`(?=\s+${words(formsOf(EVENT_WORDS))})`, [
    match(SCOPES.value, phrases(formsOf(EVENT_WORDS))),
    match(SCOPES.subject, '(?<![0-9A-Za-z])(?:[1-9](?:st|nd|rd|th)|[RL][1-5])(?![A-Za-z0-9])'),
    match(SCOPES.side, phrases(formsOf(VISIT_SIDES))),
    { include: '#numbers' },
  ]),
  'prefix-carried': {
    match: anyCase(String.raw`^\s*(${phrases(['carried'])})(?:(?:\s+${words(CARRIED_FILLERS)})?\s+(${DATE}))?`),
    captures: captures(SCOPES.header, SCOPES.date),
  },
  'prefix-proposed': {
    match: anyCase(String.raw`^\s*(${phrases(['proposed'])})`),
    captures: captures(SCOPES.header),
  },
  'prefix-examiner': {
    match: anyCase(String.raw`^\s*(${phrases(['examiner'])})\s+(${SIGNER})`),
    captures: captures(SCOPES.header, SCOPES.name),
  },
};
