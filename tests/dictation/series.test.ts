import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/* A finding that is named once and goes on from ray to ray, or from web to web: what is a list, and what only looks like one. */
const understood = (said: string, visit = 'first right'): string[] => {
  const line = `visit 2026-03-09 ${visit}`;
  return [...new Set([...factsOf(line, said), ...factsOf(line, confirmed(convertedText(line, said)))])].sort();
};
const typed = (text: string, visit = 'first right'): string[] => factsOf(`visit 2026-03-09 ${visit}`, text).sort();

test.each([
  ['drawer second two third one fourth and fifth zero', '2nd drawer 2\n3rd drawer 1\n4th-5th drawer 0'],
  ['drawer grade two on the second grade one on the third', '2nd drawer 2\n3rd drawer 1'],
  ['second toe drawer two third one others zero', '2nd drawer 2\n3rd drawer 1\n4th-5th drawer 0'],
  ['drawer second two sore third one not sore', '2nd drawer 2 painful\n3rd drawer 1 painless'],
  [
    'the drawer is grade two in the second and grade one in the third and both are sore',
    '2nd drawer 2 painful\n3rd drawer 1 painful',
  ],
  ['drawer second two third one fourth not tested', '2nd drawer 2\n3rd drawer 1\n4th drawer not done'],
  ['paper pulls out on the second holds on the third and fourth', '2nd paper pulls-out\n3rd-4th paper holds'],
  [
    'toe purchase absent second comma weak third comma normal four and five',
    '2nd purchase lost\n3rd purchase weak\n4th-5th purchase good',
  ],
  ['purchase on the second reduced rest good', '2nd purchase weak\n3rd-5th purchase good'],
  [
    'marked tenderness under the second comma mild under the third comma none elsewhere',
    '2nd marked tender plantar\n3rd mild tender plantar\n4th-5th tender none',
  ],
  [
    'second web click positive and painful third negative fourth negative',
    'web 2 click positive painful\nwebs 3-4 click negative',
  ],
])('each ray has its own: %s', (said, lines) => {
  expect(understood(said)).toEqual(typed(lines));
});

test('a side goes on through its list, and another one opens the next', () => {
  expect(
    understood('right foot drawer second two third one left foot drawer second one rest zero', 'first both'),
  ).toEqual(typed('right 2nd drawer 2\nright 3rd drawer 1\nleft 2nd drawer 1\nleft 3rd-5th drawer 0', 'first both'));
});

test('what follows a list is of none of its rays', () => {
  expect(understood('drawer second two third one fourth zero tender plantar')).toEqual(
    typed('2nd drawer 2\n3rd drawer 1\n4th drawer 0'),
  );
});

test('what is not sure of one ray is sure of the one before', () => {
  expect(understood('drawer second grade two third not sure')).toEqual(typed('2nd drawer 2'));
});

test.each([
  'drawer second two third toe',
  'drawer second two third one or maybe two',
  'drawer second maybe two third perhaps one',
  'drawer second two third one no wait second one',
  'drawer second two third one sorry that was the left',
  'no drawer second two third one',
  'last time drawer second two third one',
  'if drawer second two third one then operate',
  'her sister had drawer second two third one',
  'drawer second two weeks third three weeks',
  'drawer second two or three third one',
  'drawer second was two third was one',
  'paper holds second time third time fails',
  'paper fails on the second and third visit',
  'purchase reduced since the second injection good before',
  'purchase weak second opinion good',
  'drawer second two third one before the injection',
  'drawer second two third one under block',
  'the letter says drawer second two third one',
  'in march drawer second two third one',
  'drawer not second two third one',
  'click second positive third opinion negative',
  'drawer second two third two millimetres',
  'swelling none second day mild third day',
  'swelling mild second week none third week',
  'tender second day mild third day',
  'squeeze positive second time negative third time',
  'drawer was second two third one',
  'drawer used to be second two third one',
  'drawer second two third one according to the referral',
  'drawer second two third one compared with one and zero last time',
  'we expect drawer second zero third zero after surgery',
  'drawer second two third one on the scan',
  'drawer two second one third zero fourth one',
  'grade two drawer third toe grade one second toe',
])('no list, and nothing is understood: %s', (said) => {
  expect(understood(said)).toEqual([]);
});
