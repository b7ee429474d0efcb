import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { codeActions } from '../../server/features/code-actions.ts';
import type { OpenNote } from '../../server/workspace/note.ts';
import { applied, settled } from './fixture.ts';

const NOTES = 'tests/raw/notes';
/** Fixes that quote, part or read words: none of them is asked to change what was clear. */
const KEEPING = /^(?:Keep|Split|Read the findings|Close the quote)/;

/** What is read with certainty, without where it stands. */
const clear = (note: OpenNote): string[] =>
  Array.from({ length: note.blockCount }, (_, index) => note.visit(index)?.analysis.facts.facts ?? [])
    .flatMap((facts, index) =>
      facts
        .filter(({ clarity }) => clarity === 'clear')
        .map((fact) => JSON.stringify([index, fact.finding, fact.status, fact.side, fact.subject, fact.section])),
    )
    .sort();

test.each(readdirSync(NOTES).filter((_, at) => at % 3 === 0))(
  'no fix of %s that keeps, parts or reads words takes a clear finding away',
  (file) => {
    const note = settled(readFileSync(`${NOTES}/${file}`, 'utf8'));
    const before = clear(note);
    for (let line = 0; line < note.lineCount; line++) {
      const at = { line, character: 0 };
      for (const { title, edit } of codeActions(note, { start: at, end: at })) {
        if (!KEEPING.test(title)) continue;
        const after = clear(settled(applied(note, edit?.changes?.[note.uri] ?? [])));
        expect(missing(before, after), `${title}: ${note.line(line)?.text}`).toEqual([]);
      }
    }
  },
);

/** Of two sorted lists, what the second lacks. */
function missing(before: readonly string[], after: readonly string[]): string[] {
  const left = [...after];
  return before.filter((each) => {
    const at = left.indexOf(each);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}
