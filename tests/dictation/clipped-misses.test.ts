import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/*
 * Near misses of clipped dictation: what stands in a clipped phrase and is of something else. All of it as said, and once every proposal is confirmed.
 */
const understood = (said: string, visit = 'first right'): string[] => {
  const line = `visit 2026-03-09 ${visit}`;
  return [...new Set([...factsOf(line, said), ...factsOf(line, confirmed(convertedText(line, said)))])].sort();
};

test.each([
  // A direction, a length or a number alone is of whatever stands beside it.
  ['second toe lateral two thirds thickened', []],
  ['dorsal m t p capsule released', []],
  ['tingling fourth toe on long walks', []],
  ['standing long hours fourth toe tingles', []],
  // What is advised is not taken.
  ['advised elevation comma paracetamol', []],
  ['advised rest comma ibuprofen comma ice', []],
  // Both pulses of the foot, and not both feet.
  ['pulses both palpable', ['exam right foot: pulses present felt words=[palpable]']],
  ['pulses both weak', ['exam right foot: pulses present felt words=[weak]']],
  // A ray that was named before lends the feeling of the foot nothing.
  [
    'ray four normal ray five sore sensation full cap refill two seconds',
    [
      'exam right foot: capillary-refill present time low=2 high=2 unit=s',
      'exam right foot: sensation present state words=[normal]',
    ],
  ],
])('no more is understood than what was said: %s', (said, facts) => {
  expect(understood(said).filter((fact) => !fact.endsWith('by panel'))).toEqual(facts);
});
