import { NUM, type Phrase, RAY } from './phrase.ts';

const BACK =
  '(?:,? ?(?:no sorry|sorry no|sorry|no wait|wait no|i mean|i meant|make that|correction|no scratch that|scratch that|no make that|or rather|no))';
const UNIT = '(?:mm|millimetres?|millimeters?|°|degrees|weeks?|months?|years?|days?|%|ml)';
/** What a speaker takes back at once, word for word: the last one is meant. */
export const CORRECTED: readonly Phrase[] = [
  [`(?:${NUM})(?: ${UNIT})?${BACK} (${NUM}) (${UNIT})`, '$1 $2'],
  [`(thigh|calf|ankle)${BACK} (thigh|calf|ankle)(?= tourniquet| cuff)`, '$2'],
  [
    `(right|left) (${RAY})(?: (?:metatarsal|toe|mtp|met|ray))? [;,]? ?(?:sorry|no sorry|correction|i mean|make that) (?:the |it's the |that's the )?(right|left) (${RAY})`,
    '$3 $4',
  ],
];
