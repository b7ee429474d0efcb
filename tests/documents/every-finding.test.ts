import { describe, expect, test } from 'vitest';
import type { Entry, Section, Slot, SubjectKind } from '../../grammar/lexicon/entry.ts';
import { type FindingId, LEXICON } from '../../grammar/lexicon/index.ts';
import type { Status, Value } from '../../grammar/values.ts';
import { NO_EPISODE } from '../../server/clinical/episode.ts';
import type { AnyFact, Subject } from '../../server/clinical/facts.ts';
import { clinicNote } from '../../server/documents/clinic-note.ts';
import { PHRASES } from '../../server/documents/phrases/index.ts';
import { type Sentence, textOf } from '../../server/documents/sentence.ts';
import { valueWords } from '../../server/documents/values.ts';
import { filedSentences, flawsOf } from './read-note.ts';

const STATUSES: readonly Status[] = ['present', 'absent', 'equivocal', 'not done', 'unable', 'avoid'];
const SUBJECTS: Readonly<Record<SubjectKind, Subject>> = {
  ray: { at: 'ray', ray: 2 },
  web: { at: 'web', web: 3 },
  foot: { at: 'foot' },
  patient: { at: 'patient' },
};

interface Case {
  readonly finding: FindingId;
  readonly section: Section;
  readonly subject: Subject;
  readonly status: Status;
  readonly values: Readonly<Record<string, Value>>;
}

/** The sentence that a visit of this one statement gives. */
function sentenceOf({ subject, ...said }: Case): Sentence {
  const place = { line: 1, start: 0, end: 9 };
  const side = subject.at === 'patient' ? {} : { side: 'left' as const };
  const fact = {
    ...said,
    ...side,
    subject,
    statement: '1:0:0',
    clarity: 'clear',
    unclear: [],
    quotes: [],
    causes: [],
    origin: { kind: 'stated', place, word: place, slots: {} },
  } as unknown as AnyFact;
  const facts = { side: 'right' as const, facts: [fact], verbatim: [], unclear: [], allowances: [] };
  const analysis = { facts, rays: [], redFlags: [], reports: [], hidden: [], before: NO_EPISODE, after: NO_EPISODE };
  const sentences = filedSentences(clinicNote(analysis, { version: 1, allowances: [] }));
  const traced = sentences.filter(({ runs }) => runs.some(({ from }) => from.length > 0));
  expect(traced).toHaveLength(1);
  return traced[0]!;
}

/** Every value that a slot of words takes, and several of any other kind. */
function valuesOf(slot: Slot): Value[] {
  switch (slot.kind) {
    case 'words': {
      const words = Object.keys(slot.values);
      const many = slot.many ? [{ is: 'word' as const, words: words.slice(0, 2) }] : [];
      return [...words.map((word) => ({ is: 'word' as const, words: [word] })), ...many];
    }
    case 'number': {
      const { unit } = slot;
      return [
        { is: 'number', low: 3, high: 3, unit },
        { is: 'number', low: 1, high: 2, unit, bound: 'over' },
      ];
    }
    case 'fraction':
      return [{ is: 'fraction', part: 9, whole: 10 }];
    case 'grade':
      if (slot.of === 'stage') return [2, 3].map((low) => ({ is: 'stage', low, high: 3 }));
      if (slot.of === 'anatomical') return [{ is: 'anatomical grade', low: 2, high: 3 }];
      if (slot.of === 'pulse') return [1, 2].map((low) => ({ is: 'pulse grade', low, high: low }));
      return [
        { is: 'drawer grade', low: 2, high: 2, scale: '0-4' },
        { is: 'drawer grade', low: 2, high: 2 },
        { is: 'drawer grade', low: 1, high: 2, scale: '0-3' },
      ];
    case 'duration':
      return [
        { is: 'duration', low: 1, high: 1, unit: 'months' },
        { is: 'duration', low: 6, high: 8, unit: 'weeks', bound: 'about' },
      ];
    case 'date':
      return [
        { is: 'date', date: { year: 2026, month: 1 } },
        { is: 'date', date: { year: 2026, month: 1, day: 5 } },
        { is: 'ago', ago: { low: 3, high: 3, unit: 'days' } },
      ];
    case 'clock':
      return [{ is: 'clock', hour: 9, minute: 5 }];
    case 'pair':
      return [{ is: 'pair', web: 2 }];
  }
}

/** The English of a value: the phrase table's word for a word, else the value with its unit, bound and scale. */
function englishOf(finding: FindingId, slot: string, value: Value): string[] {
  if (value.is !== 'word') return [valueWords(value)];
  const wording = PHRASES[finding].wording as Readonly<Record<string, Readonly<Record<string, string>>>>;
  return value.words.map((word) => wording[slot]![word]!);
}

const ENTRIES: readonly Entry[] = LEXICON;
const placesOf = ({ sections, subjects }: Entry) =>
  sections.flatMap((section) => subjects.map((kind) => ({ section, subject: SUBJECTS[kind] })));

describe.each(ENTRIES.map((entry) => [entry.id as FindingId, entry] as const))('%s', (finding, entry) => {
  test.each(STATUSES)('%s: one whole sentence for each value, with its words', (status) => {
    for (const place of placesOf(entry)) {
      const bare = sentenceOf({ finding, status, ...place, values: {} });
      expect(flawsOf(bare)).toEqual([]);
      for (const [slot, kind] of Object.entries(entry.slots))
        for (const value of valuesOf(kind)) {
          const sentence = sentenceOf({ finding, status, ...place, values: { [slot]: value } });
          expect(flawsOf(sentence)).toEqual([]);
          for (const word of englishOf(finding, slot, value))
            expect(textOf(sentence).toLowerCase()).toContain(word.toLowerCase());
        }
    }
  });

  test('all values at once are in one sentence', () => {
    for (const place of placesOf(entry))
      for (const status of STATUSES) {
        const values = Object.fromEntries(
          Object.entries(entry.slots).map(([slot, kind]) => [slot, valuesOf(kind)[0]!]),
        );
        const sentence = sentenceOf({ finding, status, ...place, values });
        expect(flawsOf(sentence)).toEqual([]);
        for (const [slot, value] of Object.entries(values)) {
          if (slot === 'scale' && values.grade) continue;
          for (const word of englishOf(finding, slot, value))
            expect(textOf(sentence).toLowerCase()).toContain(word.toLowerCase());
        }
      }
  });

  test('no two statuses and no two values read the same', () => {
    for (const place of placesOf(entry)) {
      const statuses = STATUSES.map((status) => textOf(sentenceOf({ finding, status, ...place, values: {} })));
      expect(new Set(statuses).size).toBe(STATUSES.length);
      for (const [slot, kind] of Object.entries(entry.slots)) {
        const all = valuesOf(kind);
        const texts = all.map((value) =>
          textOf(sentenceOf({ finding, status: 'present', ...place, values: { [slot]: value } })),
        );
        expect(new Set([...texts, statuses[0]]).size).toBe(all.length + 1);
      }
    }
  });
});
