import { describe, expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { type Passage, passagesOf, score } from './passages.ts';

/*
 * Twenty passages in a surgeon's own words, first written without a look at the lexicon, by the hand that also wrote the language: no blind
 * evidence any more, but what the reader is developed on. Its first figures stand in natural/README.md. None may say what nobody meant.
 */
const passages = passagesOf('natural');
const asIs = ({ dictated }: Passage): string => dictated;
const whole = ({ visit, dictated }: Passage): string => confirmed(convertedText(visit, dictated));

describe.each([
  ['as said', asIs],
  ['converted and confirmed', whole],
])('a passage in natural speech, %s, says nothing that nobody meant', (_, textOf) => {
  test.each(passages)('$name', (passage) => {
    expect(score(passage, textOf(passage)).wrong).toEqual([]);
  });
});

test('no fewer facts are placed than last time', () => {
  const placed = (textOf: (passage: Passage) => string): number =>
    passages.reduce((sum, each) => sum + score(each, textOf(each)).placed.length, 0);
  expect(passages).toHaveLength(20);
  expect(placed(asIs)).toBeGreaterThanOrEqual(44);
  expect(placed(whole)).toBeGreaterThanOrEqual(90);
});
