import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { type ClearFact, clearFactsOf, type Shares, settled, sharesOf, total } from './measure.ts';
import { NOTES, TODAY } from './notes.ts';
import { afterOnePass } from './one-pass.ts';
import { keyOf, updated, updatedAdded, verdictsOf, writeVerdicts } from './record.ts';

const UPDATE = process.env.UPDATE_RAW === '1';
const HOW = 'Run UPDATE_RAW=1 npx vitest run tests/raw, then read each entry "to judge" against its line.';
const FIGURES = new URL('./figures.json', import.meta.url);

const read = NOTES.map(({ name, text }) => {
  const note = analyseNote(text, TODAY);
  const declined = new Set(
    verdictsOf(name, 'verdicts-after-fixes').flatMap(({ verdict, line }) => (verdict === 'wrong' ? [line] : [])),
  );
  const mended = analyseNote(afterOnePass(note, declined), TODAY);
  const typed = new Set(clearFactsOf(note).map(unquoted));
  const added = clearFactsOf(mended)
    .filter((fact) => !typed.has(unquoted(fact)))
    .map((fact) => ({ ...fact, text: note.lines[fact.line - 1] ?? '' }));
  return { name, note, mended, added };
});

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

test('one pass of quick fixes loses no fact', () => {
  const lost = read.flatMap(({ name, note, mended }) => {
    const after = new Set(clearFactsOf(mended).map(unquoted));
    return clearFactsOf(note).flatMap((fact) => (after.has(unquoted(fact)) ? [] : [`${name} ${keyOf(fact)}`]));
  });
  expect(lost).toEqual([]);
});

/*
 * A fix that reads a line asks the clinician whether it says what was meant. Where a fact that it adds is judged wrong, the line is
 * kept as typed instead, so that the fact is not there.
 */
describe('every fact that one pass of quick fixes adds is what its writer meant', () => {
  test.each(read)('$name', ({ name, added }) => {
    if (UPDATE)
      writeVerdicts(name, updatedAdded(verdictsOf(name, 'verdicts-after-fixes'), added), 'verdicts-after-fixes');
    const verdicts = verdictsOf(name, 'verdicts-after-fixes');
    const right = new Set(verdicts.filter(({ verdict }) => verdict === 'right').map(keyOf));
    const fresh = added.filter((fact) => !right.has(keyOf(fact))).map((fact) => `${keyOf(fact)} <- ${fact.text}`);
    expect(fresh, `new: somebody must judge it. ${HOW}`).toEqual([]);
  });
});
/** The key of a fact without the remarks that a fix has put beside it. */
function unquoted(fact: ClearFact): string {
  return keyOf(fact).replace(/ ".*$/, '');
}

describe('the shares of words that are understood, quoted, unclear and unknown', () => {
  const thousandths = (share: number): number => Math.round(share * 1000) / 1000;
  const rounded = (shares: Shares) => ({
    ...shares,
    'understood of all': thousandths(shares.understood / shares.words),
    'understood or quoted of all': thousandths(settled(shares)),
  });
  test('are as recorded', () => {
    const group = (which: 'note' | 'mended', prefix = '') =>
      rounded(total(read.filter(({ name }) => name.startsWith(prefix)).map((each) => sharesOf(each[which]))));
    const groups = (which: 'note' | 'mended') => ({
      all: group(which),
      blind: group(which, 'blind'),
      own: group(which, 'own'),
    });
    const figures = {
      'as typed': groups('note'),
      'after one pass of quick fixes': groups('mended'),
      notes: Object.fromEntries(read.map(({ name, note }) => [name, rounded(sharesOf(note))])),
    };
    if (UPDATE) writeFileSync(FIGURES, `${JSON.stringify(figures, null, 2)}\n`);
    expect(figures, 'run UPDATE_RAW=1 npx vitest run tests/raw').toEqual(JSON.parse(readFileSync(FIGURES, 'utf8')));
  });
});
