import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import { readHeaderFacts, readVisitFacts } from '../../server/clinical/read-facts.ts';
import { convertLine } from '../../server/workspace/convert/convert-line.ts';
import { type Passage, passagesOf, score } from './passages.ts';

/*
 * Twenty passages in a surgeon's own words, written before any look at the lexicon and read for the first time when the reader was
 * done. Then 40 of their 93 facts were placed once converted, 53 kept as said, and one passage (b09, `webs two three`) said two facts
 * that nobody meant; that was mended. What is recorded here is after the mending, and not to be tuned to.
 */
const passages = passagesOf('blind');
const header = readHeaderFacts([readLine('forefoot 1'), readLine('scales drawer 0-4')]);
const asIs = ({ dictated }: Passage): string => dictated;
const converted = ({ visit, dictated }: Passage): string => {
  const lines = [readLine(visit), readLine(dictated)];
  return convertLine({ lines, at: 1, read: (all) => readVisitFacts(all, header) })?.join('\n') ?? dictated;
};

describe.each([
  ['as said', asIs],
  ['converted', converted],
])('a passage that was written blind, %s, says nothing that nobody meant', (_, textOf) => {
  test.each(passages)('$name', (passage) => {
    expect(score(passage, textOf(passage)).wrong).toEqual([]);
  });
});

test('no fewer facts are placed than after the mending, and words of the language that come later may place more', () => {
  const placed = (textOf: (passage: Passage) => string): number =>
    passages.reduce((sum, each) => sum + score(each, textOf(each)).placed.length, 0);
  expect(passages).toHaveLength(20);
  expect(placed(asIs)).toBeGreaterThanOrEqual(41);
  expect(placed(converted)).toBeGreaterThanOrEqual(41);
});
