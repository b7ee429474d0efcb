import { expect, test } from 'vitest';
import { keyOf } from '../../grammar/generate/phrases.ts';
import { NEEDS } from '../../grammar/generate/reference-needs.ts';
import { SECTION_WORD } from '../../grammar/lexicon/closed-words.ts';
import type { Entry, Section, Slot } from '../../grammar/lexicon/entry.ts';
import { type FindingId, LEXICON } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';

/*
 * Every name, opening word and value that LANGUAGE.md documents, alone in its place: after its section and a subject, and a value after
 * its finding, with the label where it has to be announced. Whatever is not read whole, and as that finding, has its reason in the list.
 */
const ENTRIES = LEXICON as readonly Entry[];
const WAITS: readonly string[] = ['no result', 'no image'];

/** Where a story or a course is told, a ray before the word would count it (`2nd steroid`) or be lost. */
const WITHOUT_RAY: readonly Section[] = ['history', 'tried', 'plan', 'pain'];
function lineOf({ sections, subjects }: Entry, words: string, own?: readonly Section[]): string {
  const [home = 'exam'] = own ?? sections;
  const section = home === 'pain' && sections.includes('exam') ? 'exam' : home;
  const opened = section === 'exam' ? '' : section === 'operation' ? 'operation done' : SECTION_WORD[section];
  const ray = !WITHOUT_RAY.includes(home) && subjects.includes('ray') && !subjects.includes('foot');
  const subject = ray ? '2nd' : subjects.includes('web') && home === 'exam' ? 'web 2' : '';
  return [opened, subject, words].filter((part) => part !== '').join(' ');
}

interface Case {
  readonly line: string;
  readonly words: string;
  readonly id: FindingId;
  readonly slot?: string;
}
function casesOf(entry: Entry): Case[] {
  const id = entry.id as FindingId;
  const names = [entry.word, ...entry.forms].map((words) => ({ id, words, line: lineOf(entry, words) }));
  const openers = Object.entries(entry.leads).map(([words, { sections }]) => ({
    id,
    words,
    line: lineOf(entry, words, sections),
  }));
  const values = Object.entries(entry.slots).flatMap(([slot, shape]) =>
    wordsOf(shape).map((words) => ({ id, slot, words, line: lineOf(entry, `${entry.word} ${words}`) })),
  );
  return [...names, ...openers, ...values];
}
function wordsOf(slot: Slot): string[] {
  if (slot.kind !== 'words') return [];
  const label = slot.labelled && slot.labels?.[0] ? `${slot.labels[0]} ` : '';
  const all = Object.entries(slot.values as Readonly<Record<string, readonly string[]>>).flat(2);
  return [...new Map(all.map((text) => [keyOf(text), `${label}${text}`])).values()];
}

/** What keeps a documented word from being read as it is documented; nothing where it is read. */
function wrongIn({ line, id, slot }: Case): string | undefined {
  const { statements, problems, kind } = readLine(line);
  const findings = statements.flatMap((each) => each.findings);
  const [finding, ...more] = findings;
  if (kind !== 'statements' || !finding || finding.id !== id || more.length > 0)
    return `${line}: read as ${findings.map((each) => each.id).join(', ') || 'nothing'}`;
  // A test waits for its result, and its red-flag word with it.
  const waits = finding.causes.some(({ why }) => WAITS.includes(why));
  const causes = finding.causes.filter(({ why }) => !WAITS.includes(why));
  const left = problems.filter((each) => !waits || each.code !== 'unread-red-flag');
  if (causes.length + left.length > 0)
    return `${line}: ${[...causes.map(({ why }) => why), ...left.map(({ code }) => code)].join(', ')}`;
  const value = slot === undefined ? undefined : finding.slots[slot];
  if (slot !== undefined && (!value || value.causes.length > 0)) return `${line}: no ${slot}`;
  return undefined;
}

test('every documented word is read alone in its place, or the reference says what it needs', () => {
  const wrong = ENTRIES.flatMap(casesOf).flatMap((each) => {
    const why = wrongIn(each);
    return why === undefined ? [] : [{ ...each, why }];
  });
  const needy = ({ id, words }: Case) => NEEDS[id]?.words.includes(words) ?? false;
  expect(wrong.filter((each) => !needy(each)).map(({ why }) => why)).toEqual([]);
  const listed = Object.entries(NEEDS).flatMap(([id, { words }]) => words.map((each) => `${id} ${each}`));
  const found = new Set(wrong.map(({ id, words }) => `${id} ${words}`));
  expect(listed.filter((each) => !found.has(each))).toEqual([]);
});

test.each(Object.entries(NEEDS))('with what it needs %s is read', (id, { example }) => {
  const read = readLine(example);
  const finding = read.statements.flatMap(({ findings }) => findings).find((each) => each.id === id);
  expect(finding?.causes).toEqual([]);
  expect(read.problems).toEqual([]);
});
