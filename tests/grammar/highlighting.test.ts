import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';
import { openersOf } from '../../grammar/generate/contexts.ts';
import * as closed from '../../grammar/lexicon/closed-words.ts';
import type { Entry, Section } from '../../grammar/lexicon/entry.ts';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';

const path = 'grammar/generated/forefoot.tmLanguage.json';
const wasm = readFileSync(createRequire(import.meta.url).resolve('vscode-oniguruma/release/onig.wasm'));
await oniguruma.loadWASM(wasm);
const registry = new textmate.Registry({
  onigLib: Promise.resolve({
    createOnigScanner: (patterns) => new oniguruma.OnigScanner(patterns),
    createOnigString: (text) => new oniguruma.OnigString(text),
  }),
  loadGrammar: async () => textmate.parseRawGrammar(readFileSync(path, 'utf8'), path),
});
const grammar = (await registry.loadGrammar('source.forefoot'))!;

interface Token {
  start: number;
  end: number;
  scope: string;
}
/** The innermost scope of each token of a line; no line depends on another. */
function tokens(line: string): Token[] {
  const { tokens: found, ruleStack } = grammar.tokenizeLine(line, textmate.INITIAL);
  expect(ruleStack.depth, `${line} stays open at its end`).toBe(1);
  return found.map(({ startIndex, endIndex, scopes }) => ({
    start: startIndex,
    end: endIndex,
    scope: scopes.at(-1)!.replace(/\.forefoot$/, ''),
  }));
}
const scopesAt = (line: string, start: number, end: number): string[] => [
  ...new Set(tokens(line).flatMap((token) => (token.start < end && token.end > start ? [token.scope] : []))),
];

/** `^^^ scope` under a line: all of the text above the marks has that scope, or one under it; `plain` is none. */
function checkScopes(fixture: string): void {
  let line = '';
  for (const row of fixture.split('\n')) {
    const marks = /^( *)(\^+) (\S+)$/.exec(row);
    if (!marks) {
      line = row;
      tokens(line);
      continue;
    }
    const [, indent = '', carets = '', scope = ''] = marks;
    const [start, end] = [indent.length, indent.length + carets.length];
    const found = scopesAt(line, start, end).map((each) => (each === 'source' ? 'plain' : each));
    const fits = found.length === 1 && (found[0] === scope || found[0]!.startsWith(`${scope}.`));
    expect(fits ? scope : found.join(' + '), `${line}\n${row}`).toBe(scope);
  }
}

test('the life of a visit', () => {
  checkScopes(`signed   2026-03-09 AB seal k3f9-2p // home
^^^^^^ keyword.control.header
         ^^^^^^^^^^ constant.numeric.date
                    ^^ constant.other.name
                       ^^^^ keyword.control.header
                            ^^^^^^^ constant.other.code
                                    ^^^^^^^ comment.line.double-slash
addendum 2026-03-10 registrar
^^^^^^^^ keyword.control.header
                    ^^^^^^^^^ constant.other.name
event    reduction 14:30 R2
^^^^^ keyword.control.header
         ^^^^^^^^^ constant.language
                   ^^^^^ constant.numeric
                         ^^ entity.name.tag
carried  2026-03-09 2nd drawer 2
^^^^^^^ keyword.control.header
         ^^^^^^^^^^ constant.numeric.date
                    ^^^ entity.name.tag
                        ^^^^^^ entity.name.function
examiner AB: 2nd drawer 2
^^^^^^^^ keyword.control.header
         ^^ constant.other.name
                 ^^^^^^ entity.name.function
signed off by phone
^^^^^^ plain`);
});

test('a realistic note', () => {
  checkScopes(`forefoot 1
^^^^^^^^ keyword.control.header
         ^ constant.numeric
patient KM-207  born 1971  female
^^^^^^^ keyword.control.header
        ^^^^^^ constant.other.name
                ^^^^ keyword.control.header
                     ^^^^ constant.numeric
                           ^^^^^^ constant.language
scales drawer 0-4
^^^^^^ keyword.control.header
       ^^^^^^ entity.name.function
              ^^^ constant.language

// referred as a neuroma
^^^^^^^^^^^^^^^^^^^^^^^^ comment.line.double-slash
visit 2026-03-09 first right
^^^^^ keyword.control.header
      ^^^^^^^^^^ constant.numeric.date
                 ^^^^^ constant.language
                       ^^^^^ constant.language
history  onset gradual 5 months; trigger running
^^^^^^^ keyword.control.section
         ^^^^^ entity.name.function
               ^^^^^^^ constant.language
                       ^^^^^^^^ constant.numeric.quantity
                               ^ punctuation.separator
                                 ^^^^^^^ entity.name.function
                                         ^^^^^^^ constant.language
pain     2nd plantar 6/10 push-off "worst barefoot on tile"
^^^^ keyword.control.section
         ^^^ entity.name.tag
             ^^^^^^^ constant.language
                     ^^^^ constant.numeric
                          ^^^^^^^^ constant.language
                                   ^^^^^^^^^^^^^^^^^^^^^^^^ string.quoted
tried    met-pad 4 weeks no-relief; steroid web 2 2026-01
^^^^^ keyword.control.section
         ^^^^^^^ entity.name.function
                 ^^^^^^^ constant.numeric
                         ^^^^^^^^^ constant.language
                                    ^^^^^^^ entity.name.function
                                            ^^^^^ entity.name.tag
                                                  ^^^^^^^ constant.numeric.date
stand    2nd lifted 3 mm; gap 2-3; hallux-valgus mild
^^^^^ keyword.control.section
         ^^^ entity.name.tag
             ^^^^^^ entity.name.function
                    ^^^^ constant.numeric
                          ^^^ entity.name.function
                              ^^^ constant.numeric
                                   ^^^^^^^^^^^^^ entity.name.function
                                                 ^^^^ constant.language
2nd      swelling moderate, no plantar tenderness, drawer 2 painful, medial 12°, straight
^^^ entity.name.tag
         ^^^^^^^^ entity.name.function
                  ^^^^^^^^ constant.language
                            ^^ keyword.operator.negation
                               ^^^^^^^ constant.language
                                       ^^^^^^^^^^ entity.name.function
                                                   ^^^^^^ entity.name.function
                                                          ^ constant.numeric
                                                            ^^^^^^^ constant.language
                                                                     ^^^^^^ entity.name.function
                                                                            ^^^ constant.numeric
                                                                                 ^^^^^^^^ entity.name.function
3rd      tender none, drawer ?1, paper not done, swelling previously // check
         ^^^^^^ entity.name.function
                ^^^^ keyword.operator.status
                             ^ keyword.operator.doubt
                              ^ constant.numeric
                                       ^^^^^^^^ keyword.operator.status
                                                          ^^^^^^^^^^ keyword.operator.distancing
                                                                     ^^^^^^^^ comment
4th-5th  normal
^^^^^^^ entity.name.tag
         ^^^^^^ constant.language
webs 2-3 click none, squeeze none
^^^^^^^^ entity.name.tag
         ^^^^^ entity.name.function
R2 tender, L MTPs 2,3,5 tender
^^ entity.name.tag
           ^ keyword.operator.side
             ^^^^^^^^^^ entity.name.tag
xray wb  hva 22°, 2nd longer 4 mm; us 2nd tear partial 40%
^^^^ keyword.control.section
     ^^ entity.name.function
         ^^^ entity.name.function
             ^^^ constant.numeric
                      ^^^^^^ entity.name.function
                                   ^^ keyword.control.section
                                          ^^^^ entity.name.function
                                               ^^^^^^^ constant.language
                                                       ^^^ constant.numeric
plan     tape 2nd 8 weeks; mri 2nd; no steroid; review in 8 weeks
^^^^ keyword.control.section
         ^^^^ entity.name.function
              ^^^ entity.name.tag
                  ^^^^^^^ constant.numeric
                           ^^^ entity.name.function
                                    ^^ keyword.operator.negation
                                                       ^^ plain
                                                          ^^^^^^^ constant.numeric
allow staging-gap seen elsewhere
^^^^^ keyword.control.header
      ^^^^^^^^^^^ constant.other.code
                  ^^^^^^^^^^^^^^ string.unquoted`);
});

test('a word keeps its meaning by where it stands', () => {
  checkScopes(`history pain 3/10; trigger standing; history of gout
^^^^^^^ keyword.control.section
        ^^^^ entity.name.function
                           ^^^^^^^^ constant.language
                                     ^^^^^^^^^^ keyword.operator.distancing
standing 2nd lifted
^^^^^^^^ keyword.control.section
compression tender
            ^^^^^^ constant.language
2nd mtp rigid, 3rd mtp drawer 2
^^^ entity.name.tag
    ^^^ entity.name.function
        ^^^^^ constant.language
               ^^^^^^^ entity.name.tag
                       ^^^^^^ entity.name.function
plan us 2nd; operation weil
     ^^ entity.name.function
             ^^^^^^^^^ entity.name.function
                       ^^^^ constant.language
us 2nd tear
^^ keyword.control.section
R: pain 2nd
^ keyword.control.heading
   ^^^^ keyword.control.section
right
^^^^^ keyword.control.heading
steroid
^^^^^^^ plain`);
});

test('case does not matter, hyphen and space are equal, and parts of words are not words', () => {
  checkScopes(`2ND DRAWER 2, Paper Pulls-Out, paper pulls out
^^^ entity.name.tag
    ^^^^^^ entity.name.function
              ^^^^^ entity.name.function
                    ^^^^^^^^^ constant.language
                                     ^^^^^^^^^ constant.language
top-drawer drawers x-tender tender-free nd2
^^^^^^^^^^ plain
           ^^^^^^^ plain
                   ^^^^^^^^ plain
                            ^^^^^^^^^^^ plain
12nd 04/05/26
     ^^^^^^^^ plain`);
});

test('a quote and a section end with their line', () => {
  checkScopes(`pain 2nd "worst on tile
         ^^^^^^^^^^^^^^ string.quoted
2nd tender
    ^^^^^^ entity.name.function
plan
^^^^ keyword.control.section
pain, xray
^^^^ keyword.control.section
      ^^^^ keyword.control.section`);
});

test('findings, values and subjects of a note look as the reader reads them', () => {
  const scopeOf: Readonly<Record<string, RegExp>> = {
    subject: /^entity\.name\.tag/,
    finding: /^(entity\.name\.function|keyword\.control\.section)/,
    value: /^constant/,
    keyword: /^keyword\.control/,
    comment: /^comment/,
    verbatim: /^string/,
  };
  const note = readFileSync('tests/editors/fixtures/clinic/KM-207.forefoot', 'utf8').split('\n');
  const wrong = note.flatMap((line) =>
    readLine(line).roles.flatMap(({ kind, start, end }) => {
      const found = scopesAt(line, start, end);
      return scopeOf[kind] && !found.every((scope) => scopeOf[kind]?.test(scope))
        ? [`${line.slice(start, end)}: ${kind}, ${found.join(' + ')}`]
        : [];
    }),
  );
  expect(wrong).toEqual([]);
});

describe('over the whole lexicon', () => {
  const entries: readonly Entry[] = LEXICON;
  const places = entries.flatMap((entry) => entry.sections.map((section): [Entry, Section] => [entry, section]));
  const subjectOf = ({ subjects: [kind] }: Entry): string => (kind === 'ray' ? 'R2 ' : kind === 'web' ? 'web 2 ' : '');
  const opening = (section: Section): string[] => [
    ...(section === 'exam' ? [''] : []),
    ...Object.entries(closed.SECTION_WORDS).flatMap(([word, row]) => (row.section === section ? [`${word} `] : [])),
  ];
  /** Lines in which `what`, after `before`, has not the scope. */
  const unlike = (before: string, what: string, scope: string): string[] => {
    const found = scopesAt(before + what, before.length, before.length + what.length);
    return found.length === 1 && found[0]!.startsWith(scope) ? [] : [`${before}[${what}]: ${found.join(' + ')}`];
  };

  test('every section word opens its section', () => {
    const wrong = Object.keys(closed.SECTION_WORDS).flatMap((word) => unlike('', word, 'keyword.control.section'));
    expect(wrong).toEqual([]);
  });

  test('every form of a finding looks like a finding in its sections', () => {
    const wrong = places.flatMap(([entry, section]) =>
      opening(section).flatMap((start) =>
        openersOf(entry, section).flatMap((form) => unlike(start + subjectOf(entry), form, 'entity.name.function')),
      ),
    );
    expect(wrong).toEqual([]);
    // Some hundred findings are compiled by the tokenizer for the first time here: seconds, on a busy machine many.
  }, 90_000);

  test('every form of a value looks like a value after its finding', () => {
    const wrong = places.flatMap(([entry, section]) =>
      Object.values(entry.slots).flatMap((slot) => {
        if (slot.kind !== 'words') return [];
        const forms = Object.entries(slot.values).flatMap(([value, others]) => [value, ...others]);
        const before = `${opening(section)[0] + subjectOf(entry) + entry.word} `;
        return forms.flatMap((form) =>
          unlike(before, form, /^\d/.test(form) ? 'constant.numeric' : 'constant.language'),
        );
      }),
    );
    expect(wrong).toEqual([]);
  }, 90_000);
});
