import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/*
 * History, treatment, orders, operations and what follows them as they are clipped in dictation (common practice). Each file of `clipped/` holds
 * utterances under a visit line, and indented under each all that is understood of it once every proposal is confirmed.
 */
interface Utterance {
  readonly visit: string;
  readonly said: string;
  readonly facts: string[];
}
const FOLDER = new URL('./clipped/', import.meta.url);

function utterancesIn(file: string): Utterance[] {
  const found: Utterance[] = [];
  let visit = '';
  for (const line of readFileSync(new URL(file, FOLDER), 'utf8').split('\n')) {
    if (line.startsWith('visit ')) visit = line.replace('visit', 'visit 2026-03-09');
    else if (line.startsWith('  ')) found.at(-1)?.facts.push(line.trim());
    else if (line !== '' && !line.startsWith('//')) found.push({ visit, said: line, facts: [] });
  }
  return found;
}

describe.each(readdirSync(FOLDER).sort())('%s', (file) => {
  test.each(utterancesIn(file))('$visit: $said', ({ visit, said, facts }) => {
    expect(factsOf(visit, confirmed(convertedText(visit, said))).sort()).toEqual([...facts].sort());
  });
});
