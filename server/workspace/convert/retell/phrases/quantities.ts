import type { Phrase } from './phrase.ts';

const UNITS = 'day|week|month|year';

/** Lengths of time and amounts as they are said. */
export const QUANTITIES: readonly Phrase[] = [
  [`(?:the )?best part of (?=an? (?:${UNITS})|\\d)`, '~'],
  [
    `(?:nearly|almost|getting on for|just over|a bit over|just under|a good) (?=an? (?:${UNITS})|\\d+ (?:${UNITS}))`,
    '~',
  ],
  ['~ an? ', '~1 '],
  ['~ (\\d)', '~$1'],
  [`an? (${UNITS}) of (?=pain|soreness|trouble|symptoms|burning|swelling)`, '1 $1 of '],
  [`(?<=(?:for|in|after|about|past|last|of|every) )an? (${UNITS})(?! (?:out|back))`, '1 $1'],
  ['(?:for )?about 1 (day|week|month|year)', 'for ~1 $1'],
  ['(?<=(?:for|in|after|of|about) )(?:a fortnight|two weeks time|a couple of weeks)', '2 weeks'],
  ['a couple of (?=days|months|years|mm|millimetres|millimeters)', '2 '],
  [`(\\d+) (${UNITS})s?['’]s?(?= time)`, '$1 $2s'],
  ['(?<=\\d (?:days|weeks|months|years?|week|month) )time(?= |$)', ''],
  [`(\\d+ (?:${UNITS})s?) back(?= ,| ;|$| \\n)`, '$1 ago'],
  ['half a year', '6 months'],
  ['a year and a half|1 and a half years', '18 months'],
  ['a month and a half', '6 weeks'],
  ['a (?:fair |good |little )?(?:amount|bit|touch) of', 'a bit of'],
  ['a touch (?=medial|lateral|swollen|sore|tender|stiff|deviated)', 'slightly '],
  ['(?:a lot of|lots of|loads of|plenty of) (?=swelling|tenderness|callus|redness|bruising)', 'marked '],
  ['(?:ever so|only|just) slightly', 'slightly'],
  ['(\\d+) milligrams?', '$1 mg'],
  ['(?:half a|0.5) (?:mil|ml|cc)(?= of)', '0.5 ml'],
  ['(\\d+(?:\\.\\d+)?) (?:mils?|mls|cc)(?= of)', '$1 ml'],
  ['(\\d) or (\\d)(?= (?:after|out|mm|weeks|months|with))', '$1-$2'],
];
