import * as closed from '../lexicon/closed-words.ts';
import { formsOf, HEADER_WORDS, SEX_WORDS, VISIT_SIDES, VISIT_WORDS } from '../lexicon/header-words.ts';
import { DRAWER_SCALES } from '../values.ts';
import { CONTEXTS, LINE, SECTIONS } from './contexts.ts';
import { LETTER, phrases } from './phrases.ts';
import { contextRules, longerIn, sectionRule } from './textmate-contexts.ts';
import { LIFECYCLE_RULES } from './textmate-lifecycle.ts';
import { anyCase, captures, match, type Rule, type Rules, SCOPES } from './textmate-rules.ts';
import { SHAPES } from './textmate-shapes.ts';

/** The highlighting grammar of the language, made from the lexicon and the closed words. Pure. */
export function textmate(): object {
  const included = [
    ...HEADER_WORDS.map((word) => `header-${word}`),
    ...Object.keys(LIFECYCLE_RULES),
    ...SECTIONS.map((section) => `section-${section}`),
    'heading',
    LINE.section,
  ];
  const repository: Rules = Object.assign(
    {},
    headerRules(),
    LIFECYCLE_RULES,
    { heading: heading() },
    ...SECTIONS.map(sectionRule),
    ...CONTEXTS.map(contextRules),
    SHAPES,
  );
  return {
    name: 'Forefoot Notes',
    scopeName: 'source.forefoot',
    fileTypes: ['forefoot'],
    patterns: included.map((name) => ({ include: `#${name}` })),
    repository,
  };
}

/** `R:`, or a side alone on its line. */
const heading = (): Rule => ({
  match: anyCase(String.raw`^\s*(${phrases(Object.keys(closed.SIDES))})(?=\s*(?:[:=]|//|$))`),
  captures: captures(SCOPES.heading),
});

/** What stands after each header word. */
const AFTER: Readonly<Record<(typeof HEADER_WORDS)[number], readonly Rule[]>> = {
  forefoot: [{ include: '#numbers' }],
  patient: [
    { match: String.raw`\G\s+((?:(?!//)\S)+)`, captures: captures(SCOPES.name) },
    match(SCOPES.header, phrases(['born'])),
    match(SCOPES.value, phrases(formsOf(SEX_WORDS))),
    { include: '#numbers' },
  ],
  scales: [
    match(SCOPES.finding, phrases(['drawer'])),
    match(SCOPES.value, `(?<![0-9])(?:${DRAWER_SCALES.join('|')})(?![0-9])`),
  ],
  visit: [match(SCOPES.value, phrases([...formsOf(VISIT_WORDS), ...formsOf(VISIT_SIDES)])), { include: '#numbers' }],
  allow: [
    { match: String.raw`\G\s+(${LETTER}+(?:-${LETTER}+)*)`, captures: captures(SCOPES.code) },
    { match: String.raw`(?:(?!//)\S)(?:(?!//).)*`, name: SCOPES.reason },
  ],
};

function headerRules(): Rules {
  const rules = HEADER_WORDS.map((word): [string, Rule] => [
    `header-${word}`,
    {
      begin: anyCase(String.raw`^\s*(${phrases([word], longerIn(LINE))})`),
      beginCaptures: captures(SCOPES.header),
      end: '$',
      patterns: [{ include: '#comment' }, ...AFTER[word], { include: '#punctuation' }],
    },
  ]);
  return Object.fromEntries(rules);
}
