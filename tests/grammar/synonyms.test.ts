import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Entry } from '../../grammar/lexicon/entry.ts';
import { type FindingId, LEXICON } from '../../grammar/lexicon/index.ts';
import { PHRASES } from '../../server/documents/phrases/index.ts';

/**
 * Every alias of the lexicon, judged by hand (common practice): `same` means what its canonical word means; `open` is narrower or another
 * thing, and is still written as the canonical word. None may be added to `open`.
 */
interface Judged {
  readonly same: readonly string[];
  readonly open: readonly string[];
}
const JUDGED = JSON.parse(readFileSync(new URL('./synonyms.json', import.meta.url), 'utf8')) as Judged;

const ENTRIES: readonly Entry[] = LEXICON;
/** `finding: alias = canonical`, and `finding.slot: alias = value`. */
const ALIASES: readonly string[] = ENTRIES.flatMap(({ id, word, forms, slots }) => [
  ...forms.map((form) => `${id}: ${form} = ${word}`),
  ...Object.entries(slots).flatMap(([slot, shape]) =>
    shape.kind === 'words'
      ? Object.entries(shape.values).flatMap(([value, others]) =>
          others.map((each) => `${id}.${slot}: ${each} = ${value}`),
        )
      : [],
  ),
]);

describe('an alias', () => {
  test('has been judged: is it the same thing, in every note?', () => {
    const judged = new Set([...JUDGED.same, ...JUDGED.open]);
    expect(ALIASES.filter((alias) => !judged.has(alias))).toEqual([]);
  });
  test('is judged once, and only while it stands', () => {
    const all = new Set(ALIASES);
    const judged = [...JUDGED.same, ...JUDGED.open];
    expect(judged.filter((alias) => !all.has(alias))).toEqual([]);
    expect(new Set(judged).size).toBe(judged.length);
  });
  test('that is known to be another thing is one fewer each time', () => {
    expect(JUDGED.open.length).toBeLessThanOrEqual(OPEN);
  });
});
/** Counted when all were judged, 196; since then nearly each has got a value of its own, and none may be added. */
const OPEN = 9;

/** Each value that counts as a wider one. */
const NARROW = ENTRIES.flatMap(({ id, slots }) =>
  Object.entries(slots).flatMap(([slot, shape]) =>
    shape.kind === 'words'
      ? Object.entries(shape.wider ?? {}).map(([value, wide]) => [id as FindingId, slot, value, wide, shape] as const)
      : [],
  ),
);
test.each(NARROW)(
  '%s %s: %s counts as %s, a value of its own that counts as nothing wider',
  (id, slot, value, wide, shape) => {
    expect(Object.keys(shape.values)).toEqual(expect.arrayContaining([value, wide]));
    expect(shape.wider?.[wide]).toBeUndefined();
    const wording = PHRASES[id].wording as Readonly<Record<string, Readonly<Record<string, string>>>>;
    expect(wording[slot]?.[value]).not.toBe(wording[slot]?.[wide]);
  },
);
