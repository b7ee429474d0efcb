import { describe, expect, test } from 'vitest';
import { factsOf, passagesOf, score } from './passages.ts';

const passages = passagesOf('passages');

describe('a dictated passage says, as it stands, what its speaker would have typed, or less', () => {
  test('there are at least sixty, and what was to be typed is read whole', () => {
    expect(passages.length).toBeGreaterThanOrEqual(60);
    for (const { name, visit, typed } of passages) if (typed) expect(factsOf(visit, typed), name).not.toEqual([]);
  });

  test.each(passages)('$name', (passage) => {
    expect(score(passage, passage.dictated).wrong).toEqual([]);
  });
});
