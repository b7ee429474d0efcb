import { describe, expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { type Passage, passagesOf, score } from './passages.ts';

/*
 * Sixty passages in the plain sentences of several speakers (first visits, reviews, before, at and after operations, emergencies, by phone), with the
 * facts that they meant, by a hand that knows the language; learnt from. None may say what nobody meant.
 */
const passages = passagesOf('spoken');
const asIs = ({ dictated }: Passage): string => dictated;
const whole = ({ visit, dictated }: Passage): string => confirmed(convertedText(visit, dictated));

describe.each([
  ['as said', asIs],
  ['converted and confirmed', whole],
])('a spoken passage, %s, says nothing that nobody meant', (_, textOf) => {
  test.each(passages)('$name', (passage) => {
    expect(score(passage, textOf(passage)).wrong).toEqual([]);
  });
});

test('every fact that was meant can be typed', () => {
  const unclear = passages.filter(
    ({ visit, typed }) => score({ name: '', visit, dictated: '', typed }, typed).placed.length === 0,
  );
  expect(unclear).toEqual([]);
  expect(passages).toHaveLength(60);
});
