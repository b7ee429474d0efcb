import { NUM, type Phrase, RAY } from './phrase.ts';

const BACK =
  '(?:,? ?(?:no sorry|sorry no|sorry|no wait|wait no|i mean|i meant|make that|correction|no scratch that|scratch that|no make that|or rather|no))';
const UNIT = '(?:mm|millimetres?|millimeters?|°|degrees|weeks?|months?|years?|days?|%|ml)';
/** Without the bare `no`, which may deny what follows. */
const SORRY =
  '(?:,? ?(?:no sorry|sorry no|sorry|no wait|wait no|i mean|i meant|make that|correction|no scratch that|scratch that|no make that))';
const NTH = `(?:${RAY}|second|third|fourth|fifth)`;
const IMAGE = '(?:bone scan|x ray|xray|x-ray|ultrasound|m r i|mri|c t|ct)';
/** What a speaker takes back at once, word for word: the last one is meant. */
export const CORRECTED: readonly Phrase[] = [
  [`(?:${NUM})(?: ${UNIT})?${BACK} (${NUM}) (${UNIT})`, '$1 $2'],
  // Said again with its denial, or with another image, word for word.
  [
    `((?:on|takes|has|had) (?:the |an? )?[a-z]+) (?:scratch that|no sorry|sorry|correction|i mean) (not|no) \\1`,
    '$2 $1',
  ],
  [
    `(?:bone scan|mri|ultrasound|xray|x-ray|ct)(?: scan)? (?:no |um )*(?:scratch that|sorry|i mean|correction)(?: no)? (?=(?:mri|ultrasound|xray|x-ray|ct)(?: |$))`,
    '',
  ],
  [`(thigh|calf|ankle)${BACK} (thigh|calf|ankle)(?= tourniquet| cuff)`, '$2'],
  [
    `(right|left) (${RAY})(?: (?:metatarsal|toe|mtp|met|ray))? [;,]? ?(?:sorry|no sorry|correction|i mean|make that) (?:the |it's the |that's the )?(right|left) (${RAY})`,
    '$3 $4',
  ],
  // The same said again of another ray: `second reduced no sorry third reduced`.
  [`${NTH}( (?:toe|mtp|web))? ([a-z]+(?: \\d)?)${SORRY} (?:the )?(${NTH}(?: (?:toe|mtp|web))?) \\2`, '$3 $2'],
  [`${IMAGE}${SORRY} (?:the |an? )?(${IMAGE})`, '$1'],
];
