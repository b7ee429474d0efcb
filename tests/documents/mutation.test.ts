import { describe, expect, test } from 'vitest';
import { entryOf } from '../../grammar/lexicon/index.ts';
import type { AnyFact, Place } from '../../server/clinical/facts.ts';
import { type Sentence, textOf } from '../../server/documents/sentence.ts';
import { filedSentences, NOTE_NAMES, noteText, statementsOf, writeNote } from './read-note.ts';

/** One visit as text to meaning and prose; statements are named by the place of their word, which a mutation keeps. */
interface Written {
  readonly means: ReadonlyMap<string, string>;
  readonly sentences: readonly { readonly text: string; readonly from: ReadonlySet<string> }[];
}

const keyOf = ({ line, start }: Place): string => `${line}:${start}`;

function written(text: string, visit: number): Written {
  const { analysis, note } = writeNote(text)[visit]!;
  const { facts, verbatim } = analysis.facts;
  const keys = new Map(facts.map((fact) => [fact.statement, keyOf(fact.origin.word)]));
  const means = new Map<string, string>();
  const add = (key: string, meaning: unknown) => means.set(key, `${means.get(key) ?? ''}${JSON.stringify(meaning)}`);
  for (const fact of facts) add(keyOf(fact.origin.word), meaningOf(fact));
  for (const { text: words, section, side, subject, place } of verbatim)
    add(`text ${keyOf(place)}`, [words, section, side, subject]);
  const traced = (sentence: Sentence) =>
    new Set(
      sentence.runs.flatMap(({ from }) =>
        from.map(({ statement, place }) => keys.get(statement) ?? `text ${keyOf(place)}`),
      ),
    );
  // A seal is broken by whatever changes above it.
  const signature = (sentence: Sentence) => [...statementsOf(sentence)].some((id) => id.endsWith(':signature'));
  const sentences = filedSentences(note)
    .filter((each) => !signature(each))
    .map((sentence) => ({ text: textOf(sentence), from: traced(sentence) }));
  return { means, sentences: sentences.filter(({ from }) => from.size > 0) };
}
const meaningOf = ({ finding, status, section, side, subject, values, unclear, quotes, clarity }: AnyFact) => [
  finding,
  status,
  section,
  side,
  subject,
  values,
  unclear,
  quotes,
  clarity,
];

interface Mutation {
  readonly what: string;
  readonly target: string;
  readonly text: string;
}

/** Replaces a place of a visit, without moving what stands before it. */
function replaced(lines: readonly string[], firstLine: number, { line, start, end }: Place, by: string): string {
  return lines
    .map((text, at) => (at === firstLine + line ? text.slice(0, start) + by + text.slice(end) : text))
    .join('\n');
}

/** Another value for a slot: the next word of the lexicon, or the next number. */
function otherValue(fact: AnyFact, slot: string, typed: string): string | undefined {
  const kind = entryOf(fact.finding).slots[slot]!;
  const value = (fact.values as Readonly<Record<string, { is: string; words?: readonly string[] }>>)[slot];
  if (kind.kind === 'words') return Object.keys(kind.values).find((word) => !value?.words?.includes(word));
  return typed.replace(/\d+/, (digits) => `${Number(digits) > 1 ? Number(digits) - 1 : Number(digits) + 1}`);
}

const holds = (outer: Place, inner: Place): boolean =>
  outer.line === inner.line && outer.start <= inner.start && inner.end <= outer.end;

const own = ({ origin }: AnyFact): boolean => origin.kind === 'stated';

/** Every value changed, every status changed, every named side changed, every statement deleted: one at a time. */
function mutationsOf(text: string, visit: number): Mutation[] {
  const { analysis, firstLine } = writeNote(text)[visit]!;
  const lines = text.split('\n');
  const line = (place: Place) => lines[firstLine + place.line]!;
  const { facts, verbatim } = analysis.facts;
  return facts.filter(own).flatMap((fact): Mutation[] => {
    const { word, place, slots } = fact.origin;
    const target = keyOf(word);
    const change = (what: string, at: Place, by: string): Mutation => ({
      what: `${what} of ${fact.finding}: ${line(at).slice(at.start, at.end)} -> ${by.trim()}`,
      target,
      text: replaced(lines, firstLine, at, by),
    });
    const values = Object.entries(slots).flatMap(([slot, at]) => {
      const other = otherValue(fact, slot, line(at).slice(at.start, at.end));
      // An unclear value is told by the text that holds it, not by the finding.
      const kept = fact.unclear.includes(slot) && verbatim.find(({ place }) => holds(place, at));
      const mutation = other && change('value', at, other);
      return mutation ? [{ ...mutation, target: kept ? `text ${keyOf(kept.place)}` : target }] : [];
    });
    const result = { ...place, start: word.start };
    const became = fact.status === 'not done' ? 'unable' : 'not done';
    const status = change('status', result, `${line(word).slice(word.start, word.end)} ${became}`);
    const named = /\b[RL](?=\d)|\b(?:right|left)\b/.exec(line(place).slice(place.start, place.end));
    const sideAt = named && {
      line: place.line,
      start: place.start + named.index,
      end: place.start + named.index + named[0].length,
    };
    const other = named && ({ R: 'L', L: 'R', right: 'left ', left: 'right' } as const)[named[0] as 'R'];
    return [
      ...values,
      status,
      ...(sideAt && other && sideAt.end <= word.start ? [change('side', sideAt, other)] : []),
      {
        ...change('deletion', result, ' '.repeat(result.end - result.start)),
        what: `deletion of ${fact.finding} ${target}`,
      },
    ];
  });
}

const differs = (a: Written, b: Written): Set<string> =>
  new Set([...a.means.keys(), ...b.means.keys()].filter((key) => a.means.get(key) !== b.means.get(key)));
const meets = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean => [...a].some((each) => b.has(each));
const within = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean => [...a].every((each) => b.has(each));

/** Sentences of `a` that don't stand in `b` word for word, though none of their statements changed and none was joined with one that did. */
function strays(a: Written, b: Written, changed: ReadonlySet<string>): string[] {
  const texts = new Set(b.sentences.map(({ text }) => text));
  return a.sentences
    .filter(({ text, from }) => !texts.has(text) && !meets(from, changed))
    .filter(({ from }) => !b.sentences.some((other) => within(from, other.from) && meets(other.from, changed)))
    .map(({ text }) => text);
}

const CASES = NOTE_NAMES.flatMap((name) => writeNote(noteText(name)).map((_, visit) => [name, visit] as const));

describe.each(CASES)('%s, visit %i', (name, visit) => {
  const text = noteText(name);
  const before = written(text, visit);
  const mutations = mutationsOf(text, visit);

  test('a changed statement changes its own sentences and no other', () => {
    expect(mutations.length).toBeGreaterThan(5);
    for (const { what, target, text: mutated } of mutations) {
      const after = written(mutated, visit);
      const changed = differs(before, after);
      expect(changed.has(target), what).toBe(true);
      const tracing = before.sentences.filter(({ from }) => from.has(target));
      expect(tracing.length, what).toBeGreaterThan(0);
      const texts = new Set(after.sentences.map((sentence) => sentence.text));
      expect(
        tracing.filter((sentence) => texts.has(sentence.text)),
        what,
      ).toEqual([]);
      expect(strays(before, after, changed), what).toEqual([]);
      expect(strays(after, before, changed), what).toEqual([]);
    }
  });

  test('a deleted statement leaves nothing behind', () => {
    for (const { what, target, text: mutated } of mutations.filter(({ what }) => what.startsWith('deletion'))) {
      const after = written(mutated, visit);
      expect(after.means.has(target), what).toBe(false);
      expect(
        after.sentences.filter(({ from }) => from.has(target)),
        what,
      ).toEqual([]);
    }
  });
});
