import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { textOf } from '../../server/documents/sentence.ts';
import {
  filedSentences,
  flawsOf,
  NOTE_NAMES,
  noteText,
  statementsOf,
  type WrittenVisit,
  writeNote,
} from './read-note.ts';

/** Each clear fact in one sentence, unclear facts and unread text only as they were written. */
function expectNothingLost({ analysis: { facts }, note }: WrittenVisit): void {
  const sentences = filedSentences(note);
  const stated = sentences.filter(({ says }) => says === 'stated');
  const verbatim = sentences.filter(({ says }) => says === 'verbatim');
  const { passed = [], carried = [] } = facts.lifecycle ?? {};
  for (const fact of [...facts.facts, ...passed]) {
    const tracing = stated.filter((sentence) => statementsOf(sentence).has(fact.statement));
    const told = `${fact.statement} ${fact.finding}`;
    const many = [...facts.facts, ...passed].filter(
      ({ statement, clarity }) => statement === fact.statement && clarity === 'clear',
    ).length;
    if (fact.clarity === 'unclear' && many === 0) expect(tracing.map(textOf), told).toEqual([]);
    if (fact.clarity === 'clear') expect(tracing.length, told).toBeGreaterThan(0);
    if (fact.clarity === 'clear' && many === 1) expect(tracing.map(textOf), told).toHaveLength(1);
    if (fact.clarity === 'unclear')
      expect(
        verbatim.some((sentence) => statementsOf(sentence).has(fact.statement)),
        told,
      ).toBe(true);
    for (const quote of fact.clarity === 'clear' ? fact.quotes : [])
      expect(tracing.map(textOf).join(' '), told).toContain(`"${quote}"`);
  }
  const wholes = new Set(facts.verbatim.map(({ whole: { place } }) => `${place.line}:${place.start}`));
  expect(verbatim.length).toBe(wholes.size + carried.length);
  for (const { text } of [...facts.verbatim, ...carried])
    expect(verbatim.map(textOf).join('\n')).toContain(text.trim().replace(/\s+/g, ' '));
  for (const sentence of sentences) expect(flawsOf(sentence)).toEqual([]);
}

const LINES = NOTE_NAMES.flatMap((name) =>
  noteText(name)
    .split('\n')
    .filter((line) => line !== '' && !/^(forefoot|patient|scales|visit)/.test(line)),
);
const WORDS = [...new Set(LINES.flatMap((line) => line.split(/\s+/)))];

describe('nothing is lost between the note and its prose', () => {
  test.each(NOTE_NAMES)('%s', (name) => {
    for (const visit of writeNote(noteText(name))) expectNothingLost(visit);
  });

  test('in notes put together from any lines', () => {
    const lines = fc.array(fc.constantFrom(...LINES), { minLength: 1, maxLength: 12 });
    const visit = fc.constantFrom('visit 2026-03-09 first right', 'visit 2026-03-09 review both', 'visit');
    fc.assert(
      fc.property(visit, lines, (head, body) => {
        for (const written of writeNote([head, ...body].join('\n'))) expectNothingLost(written);
      }),
      { numRuns: 60 },
    );
  });

  test('in a run that can only be told together with the one before it', () => {
    const [written] = writeNote(
      ['visit 2026-03-09 first right', 'swelling, medial 2nd-4th dislocated history'].join('\n'),
    );
    expect(filedSentences(written!.note).map(textOf).join(' ')).toContain('"swelling, medial 2nd-4th dislocated"');
  });
  test('in lines put together from any words', () => {
    const line = fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 9 }).map((some) => some.join(' '));
    fc.assert(
      fc.property(fc.array(line, { maxLength: 6 }), (body) => {
        for (const written of writeNote(['visit 2026-03-09 first right', ...body].join('\n')))
          expectNothingLost(written);
      }),
      { numRuns: 120 },
    );
  });
});
