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
  [
    'tingling fourth toe on long walks',
    ['exam right ray 4: nerve-symptom present what words=[tingling] "on long walks"'],
  ],
  ['standing long hours fourth toe tingles', []],
  // What is advised is planned, and not taken.
  [
    'advised elevation comma paracetamol',
    [
      'plan patient: medicine present name words=[paracetamol] "advised"',
      'plan right foot: rest-and-cold present what words=[elevation] "advised"',
    ],
  ],
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
  // An ordinal that is no ray, and rays that pair in more than one way.
  ['second injection third web gave relief', []],
  ['mulder negative third visit', []],
  ['mulder negative second and third time', []],
  ['lateral third torn', []],
  ['drawer second was two', []],
  ['drawer second two third toe', []],
  ['second third', []],
  // Numbers that are no rays.
  ['joints stable two to five months ago', []],
  ['drawer two three four weeks negative', []],
  ['heads two to four tender last year', []],
  ['if joints stable two to five', []],
  ['joints not stable two to five', []],
  // Another time, foot, part or aim.
  ['drawer second grade two previously', []],
  ['sensation third toe was dull', []],
  ['light touch reduced second toe last time', []],
  ['sensation third toe reduced compared with the left', []],
  ['sensation third toe normal apart from the tip', []],
  ['big toe was numb', []],
  ['the others hold the paper better on the left', []],
  ['webs clear of callus', []],
  ['second free of pain', []],
  ['drawer second firm end feel', []],
  ['callus starting to settle', []],
  ['second toe in line for surgery', []],
  ['new pain under the second toe nail', []],
  ['pulses strong on the left', ['exam left foot: pulses present felt words=[palpable]']],
  ['no numb third and fourth toes', ['exam right ray 3: numbness absent', 'exam right ray 4: numbness absent']],
  ["fifth tailor's bunion tender", ['exam right ray 5: tenderness present']],
  ['no new ache under the third head', []],
  ['m r i query partial tear second plate', []],
  ['m r i no marrow oedema second shaft', []],
  ['m r i last year full thickness tear lateral half second plate', []],
  ['x ray clean in march', []],
  ['if x ray clean', []],
  // What is agreed to is only spoken of.
  [
    'second toe tender full stop consented floating toe comma stiffness comma recurrence',
    ['exam patient: consent present state words=[given]', 'exam right ray 2: tenderness present'],
  ],
  // A place stands before its noun.
  [
    'gradual forefoot pain five weeks dorsal swelling third metatarsal neck tender',
    [
      'exam right foot: foot-swelling present "dorsal"',
      'history right foot: onset present manner words=[gradual]',
      'history right foot: pain present place words=[forefoot] for low=5 high=5 unit=weeks',
    ],
  ],
])('no more is understood than what was said: %s', (said, facts) => {
  expect(understood(said).filter((fact) => !fact.endsWith('by panel'))).toEqual(facts);
});
