import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/*
 * Near misses of plain sentences: what stands beside a finding (a day, another foot, a condition, a doubt, a comparison, a story) keeps it from being
 * understood, or what is understood is no more than was said. All of it as said, and once every proposal is confirmed.
 */
const VISIT = 'visit 2026-03-09 first right';
const understood = (said: string): string[] =>
  [...new Set([...factsOf(VISIT, said), ...factsOf(VISIT, confirmed(convertedText(VISIT, said)))])].sort();

test.each([
  'negative fourth negative fifth tender plantar third only',
  'second drawer two third was the sore one last time',
  'second toe drawer two third sorry i mean second',
  'second toe drawer two third or fourth maybe',
  'drawer two third toe not assessed',
  'tender plantar third toe cannot be felt',
  'capillary refill two seconds before the tourniquet',
  'second toe drawer two yesterday evening',
  'second toe drawer two previously',
  'second toe drawer two in her last letter',
  'no obvious second toe swelling',
  'no real drawer second toe drawer two',
  'no more swelling second toe tender',
  'the scan was normal second toe tender last year',
  'she says the third toe hurts when she runs second toe drawer two',
  'her sister came along second toe drawer two',
  'better than on the left foot second toe drawer two',
  'compared with the left foot second toe drawer two',
  'on the left foot she had surgery last year second toe drawer two',
  'left second was one third drawer two',
  'left knee replaced second toe drawer two',
  'not like the left foot second toe drawer two',
  'on the left it used to be two second toe drawer two',
  'the left foot was fine in march second toe drawer two',
  'both second and third were tender',
  'second and third both swollen last year',
  'no change second toe drawer two last time',
  'last h b a one c',
  'past history unremarkable she says',
  'i think the left foot is worse second toe drawer two',
  'i think she may have a neuroma second toe drawer two',
  'so i think this was a plate tear',
  'drawer zero at all joints except the second',
  'drawer second two painful in march third one',
  'drawer second two pain at night third one',
  'drawer second two painful before third one',
  'drawer second two comma third comma one sided',
  'drawer second two third one on the left as well',
  'swelling second toe on the left not on the right',
  'taping with some relief in the other foot',
  'she was told taping gives good relief',
  'metatarsal pad no difference in her shoe size',
  'drawer not done because of pain in the other foot',
  'drawer not possible because of her mother',
  'tender no swelling',
  'tender no more',
  'diabetes no longer',
  'the pain was worst at seven out of ten last year',
  'pain in the knee worst seven out of ten',
  'pain before the injection worst seven out of ten',
  "her sister's pain at worst seven out of ten",
  'second toe drifts towards the big toe when she runs',
  'it used to drift towards the big toe',
  'toe sits off the ground in the old photograph',
  'she should avoid heels if it gets worse',
  'she should avoid telling me about running',
  'should she avoid heels',
  'i have given her advice about a rocker shoe',
  'i have given her nothing for pain',
  'we have put her on the list',
  'i have not given her a boot',
  'see her on friday if worse',
  'seen on friday in casualty',
  'she was seen last friday for a wound check',
  'see the report of friday',
  'keep the boot for later',
  'what she has tried is nothing',
  'previous treatment by her sister',
  'plan if no better comma tape the second toe for six weeks',
  'no fracture or dislocation on the film from march',
  'squeeze negative in all webs last time',
])('nothing is understood of: %s', (said) => {
  expect(understood(said)).toEqual([]);
});

test.each([
  ['no swelling third toe puffy', ['exam right ray 3: swelling present']],
  ['second toe drawer two on the left as well', ['exam left ray 2: drawer present grade low=2 high=2 scale=0-4']],
  ['second toe drawer two third toe drawer not two', ['exam right ray 2: drawer present grade low=2 high=2 scale=0-4']],
  ['no change since march second toe drawer two', ['exam right ray 2: drawer present grade low=2 high=2 scale=0-4']],
  ['no problem with the second toe drawer two', ['exam right ray 2: drawer present grade low=2 high=2 scale=0-4']],
  ['the last c r p was ten', ['exam patient: crp present plain low=10 high=10 unit=']],
  ['no bruising', ['exam right foot: bruising absent']],
  [
    'drawer zero at all joints but the second is two',
    ['exam right ray 2: drawer present grade low=2 high=2 scale=0-4'],
  ],
  [
    'second and third both tender on the left foot third drawer two',
    ['exam left ray 3: drawer present grade low=2 high=2 scale=0-4'],
  ],
  [
    'drawer second grade two pain since march third grade one',
    ['exam right ray 2: drawer present grade low=2 high=2 scale=0-4'],
  ],
  ['tender under the second on the left drawer two', ['exam left ray 2: drawer present grade low=2 high=2 scale=0-4']],
  [
    'second toe drawer two on the left third toe drawer one',
    ['exam left ray 3: drawer present grade low=1 high=1 scale=0-4'],
  ],
  ['swelling no redness', ['exam right foot: redness absent']],
  ['no smoking', ['exam patient: smoking absent']],
  [
    'she cannot hold the paper with the second toe on the left',
    ['exam left ray 2: paper present result words=[pulls-out]'],
  ],
  ['hallux valgus comma mild pain', ['exam right foot: hallux-valgus present']],
  ['bunion comma severe asthma', ['exam right foot: hallux-valgus present']],
  [
    'swelling comma mild tenderness under the second',
    ['exam right ray 2: tenderness present degree words=[mild] place words=[plantar]'],
  ],
  [
    'plan not to operate comma tape the second toe for six weeks',
    ['plan right ray 2: tape present for low=6 high=6 unit=weeks'],
  ],
  ['change of plan comma tape the second toe', ['plan right ray 2: tape present']],
])('no more is understood than what was said: %s', (said, facts) => {
  expect(understood(said)).toEqual(facts);
});
