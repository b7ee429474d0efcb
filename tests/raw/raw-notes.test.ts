import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse.ts';
import { clearFactsOf, type Shares, settled, sharesOf, total } from './measure.ts';
import { NOTES, TODAY } from './notes.ts';
import { keyOf, updated, verdictsOf, writeVerdicts } from './record.ts';

const UPDATE = process.env.UPDATE_RAW === '1';
const HOW = 'Run UPDATE_RAW=1 npx vitest run tests/raw, then read each entry "to judge" against its line.';
const FIGURES = new URL('./figures.json', import.meta.url);

const read = NOTES.map(({ name, text }) => ({ name, note: analyseNote(text, TODAY) }));

describe('every clear fact of a raw note is what its writer meant', () => {
  test.each(read)('$name', ({ name, note }) => {
    const facts = clearFactsOf(note);
    if (UPDATE) writeVerdicts(name, updated(verdictsOf(name), facts));
    const verdicts = verdictsOf(name);
    const judged = (verdict: string) => verdicts.filter((each) => each.verdict === verdict);
    const now = new Map(facts.map((each) => [keyOf(each), `${keyOf(each)} <- ${each.text}`]));
    const right = new Set(judged('right').map(keyOf));
    const wrong = judged('wrong').map(keyOf);
    expect(
      wrong.filter((key) => now.has(key)),
      'says what nobody meant',
    ).toEqual([]);
    const fresh = [...now].filter(([key]) => !right.has(key)).map(([, text]) => text);
    expect(fresh, `new: somebody must judge it. ${HOW}`).toEqual([]);
    expect(
      [...right].filter((key) => !now.has(key)),
      `was right, and is not read any more. ${HOW}`,
    ).toEqual([]);
    expect(
      judged('now unread')
        .filter(({ why }) => !why)
        .map(keyOf),
      'not read any more: say why',
    ).toEqual([]);
  });

  test('fewer than a thousand words would measure nothing', () => {
    expect(NOTES.filter(({ name }) => name.startsWith('blind'))).toHaveLength(20);
    expect(NOTES).toHaveLength(30);
    expect(total(read.map(({ note }) => sharesOf(note))).words).toBeGreaterThan(4000);
  });
});

describe('the shares of words that are understood, quoted, unclear and unknown', () => {
  const rounded = (shares: Shares) => ({ ...shares, settled: Math.round(settled(shares) * 1000) / 1000 });
  test('are as recorded', () => {
    const shares = read.map(({ name, note }) => ({ name, shares: sharesOf(note) }));
    const group = (prefix: string) =>
      rounded(total(shares.filter(({ name }) => name.startsWith(prefix)).map((each) => each.shares)));
    const figures = {
      'as typed': { all: group(''), blind: group('blind'), own: group('own') },
      notes: Object.fromEntries(shares.map((each) => [each.name, rounded(each.shares)])),
    };
    if (UPDATE) writeFileSync(FIGURES, `${JSON.stringify(figures, null, 2)}\n`);
    expect(figures, 'run UPDATE_RAW=1 npx vitest run tests/raw').toEqual(JSON.parse(readFileSync(FIGURES, 'utf8')));
  });
});
