import { FRESH, NUM, type Phrase, RAY, RAYS, remark, UNVALUED } from './phrase.ts';

/** What films, scans and the laboratory show, in clipped phrases. */
const IMAGE = '(?:xray|x-ray|x ray|film|mri|ultrasound|us|ct)';
const PART = '(lateral|medial|central|dorsal)(?: (half|third|2 thirds|side|part|portion|aspect|edge|insertion))?';
const FULL = '((?:high|low)[- ]grade partial|full|partial|complete|high[- ]grade|low[- ]grade)(?:[- ]thickness)?';
const END = '(?= ,| ;|$| \\||\n)';
const FITS =
  '(?:fits|fitting|consistent with|in keeping with|suggesting|suggestive of|likely|compatible with|typical of)';
/** A part of the plate: its side is a value, its share a remark. */
const partOf = (side = '', share = ''): string =>
  share === '' || /^(?:half|side|part|portion|aspect|edge|insertion)$/.test(share)
    ? ` ${side}`
    : ` ${side} ${remark(share)}`;
const extentOf = (said = ''): string =>
  /grade$/.test(said) ? ` ${remark(said.replace('-', ' '))}` : said === '' ? '' : ` ${said}`;
const LAB =
  '(?:rheumatoid factor|rf|crp|c r p|esr|e s r|urate|uric acid|anti ccp|anti-ccp|ccp|c c p|hba1c|vitamin d|full blood count|fbc|f b c|blood count)';
const labs = (said: string): string =>
  said.replace(/\b([a-z]) ([a-z]) ([a-z])\b/g, '$1$2$3').replace(/ (?:and|,) /g, ' ');

export const CLIPPED_IMAGES: readonly Phrase[] = [
  // The plate.
  [
    `(?<=${IMAGE}(?: [^;\\n]*)? )${FRESH}(?:an? )?${FULL} tear ${PART} (${RAY})(?: plantar)? plate`,
    (m) => `${m[4]} tear${extentOf(m[1])}${partOf(m[2], m[3])}`,
  ],
  [
    `(?<=${IMAGE}(?: [^;\\n]*)? )${FRESH}(?:an? )?${FULL} tear (${RAY})(?: plantar)? plate(?: ${PART})?${UNVALUED}`,
    (m) => `${m[2]} tear${extentOf(m[1])}${m[3] ? partOf(m[3], m[4]) : ''}`,
  ],
  [
    `(?<=${IMAGE}(?: [^;\\n]*)? )(${RAY})(?: plantar)? plate ${FULL} tear(?: ${PART})?`,
    (m) => `${m[1]} tear${extentOf(m[2])}${m[3] ? partOf(m[3], m[4]) : ''}`,
  ],
  [
    `(?<=${IMAGE}(?: [^;\\n]*)? )${FRESH}(?:plantar )?plate tear (${RAY})(?: ${PART})?${UNVALUED}`,
    (m) => `${m[1]} tear${m[2] ? partOf(m[2], m[3]) : ''}`,
  ],
  // Web spaces.
  [
    `(web [1-4]) (neuroma|bursa|bursitis|lesion) (?:of )?(\\d+(?:\\.\\d)?)(?: mm)? (?:by|x) (\\d+(?:\\.\\d)?) mm`,
    (m) => `| ${m[1]} ${m[2]} ${m[3]} mm ${remark(`by ${m[4]} mm`)} |`,
  ],
  [
    `(web [1-4]) (small|tiny|large) (neuroma|bursa|bursitis)( only)?`,
    (m) => `| ${m[1]} ${m[3]} ${remark(`${m[2]}${m[4] ?? ''}`)} |`,
  ],
  [
    `(?:an? )?(${NUM}) mm (lesion|thickening) (web [1-4])( ${FITS} (?:an? )?neuroma)?`,
    (m) => `| ${m[3]} ${m[2]} ${m[1]} mm${m[4] ? ` ${remark(m[4].trim())}` : ''} |`,
  ],
  [
    `(web [1-4] neuroma ${NUM} mm) ((?:likely|probably|possibly|thought to be|looks) (?:incidental|silent))`,
    (m) => `| ${m[1]} ${remark(m[2] ?? '')} |`,
  ],
  // Joint and bone.
  [
    `(?<=${IMAGE}(?: [^;\\n]*)? )${FRESH}(synovitis|effusion) (${RAYS})(?: (?:mtp|mtps|joint|joints))?( doppler (?:positive|negative)| with (?:power )?doppler)?`,
    (m) => `${m[2]} ${m[1]}${m[3] ? ` ${remark(m[3].trim())}` : ''} |`,
  ],
  [
    `(?<=${IMAGE}(?: [^;\\n]*)? )${FRESH}(?:(?:bone )?marrow )?(?:oedema|edema)(?: (?:in|of|at))? (?:the )?(${RAY})(?: (?:met|metatarsal))?(?: (head|shaft|neck|base))?`,
    (m) => `${m[1]} bone oedema${m[2] ? ` ${m[2]}` : ''} |`,
  ],
  [`(?<=bone oedema(?: head)? \\| )(?:, )?(?:with )?(slight|mild|moderate|marked) flattening`, 'flattening $1 |'],
  [
    '(?:bone )?scan clean|(?<=(?:xray|film|films|x-ray) )(?:is |are |was )?(?:clean|clear|unremarkable)',
    'unremarkable |',
  ],
  [
    `(?:hardware|metalwork|metal work|metalware) (?:is |all )?(?:intact|in place|in situ|fine|good|sound|unchanged)`,
    (m) => `| hardware in place ${remark(m[0])} |`,
  ],
  [`(screws?|plate and screws?) (?:is |are )?(?:fine|intact|sound|good|unchanged)`, '| screw in place |'],
  [
    `bridging ((?:most of the way|across most(?: of it)?|nearly complete|almost complete|partly|well advanced|in progress))`,
    (m) => `bridging ${remark(m[1] ?? '')} |`,
  ],
  ['inter ?metatarsal (?:angle )?(?=\\d)', 'ima '],
  [
    `(${RAY}) (?:met|metatarsal) (short|shortened|long)( and (?:raised|elevated|dorsiflexed|plantarflexed))?(?: on (?:the )?(?:(standing|weight[- ]bearing) )?(?:film|films|xray|x-ray|x ray))`,
    (m) =>
      `| xray ${m[1]} ${m[2] === 'long' ? 'longer' : 'shorter'} ${remark(
        [m[3], m[4] && `on ${m[4]} film`]
          .filter((each) => each)
          .join(' ')
          .trim() || 'on film',
      )} |`,
  ],
  ['(?:mtps|mtp joints|joints) (?:are )?(?:all )?congruent', '| 2nd-5th congruent |'],
  // The laboratory.
  [`(${LAB}(?:(?: and | , | )${LAB})*) (?:sent|sent off|taken|bled|drawn)`, (m) => `| lab sent ${labs(m[1] ?? '')} |`],
  [`sent (?:off )?(${LAB}(?:(?: and | , | )${LAB})*)${END}`, (m) => `| lab sent ${labs(m[1] ?? '')} |`],
  // Whole statements that have no place.
  ['no (?:lucency|lucencies|loosening|haloing)(?: around (?:the )?(?:screws?|hardware|metalwork))?', '§lucency |'],
  ['no (?:shift|displacement|migration|loss of position)', '§shift |'],
  ['no neuromas?(?: seen| found)?(?! (?:in|at|of|or|on|but))', '§neuroma |'],
  ['no plate tears?(?: seen| visible| found)?', '§no​plate​tear |'],
  ['early freiberg(?:s)?(?: disease)? (?:likely|probably|possible)', '§freiberg |'],
  ['(?:cartilage|cartridge) (?:fairly |quite |is )*(?:well )?(?:kept|preserved|fine|intact)', '§cartilage |'],
  ['(?:finger|hand|wrist|knee|elbow) joints (?:also )?(?:swollen|stiff|sore)', '§elsewhere |'],
  ['clinically (?:solid|united|fused|firm)', '§solid |'],
  ['no pain on (?:stressing|stress)', '§stressing |'],
  [
    '(?:feels |it feels )?like (?:(?:walking|treading|standing) on )?(?:an? )?(?:pebble|marble|stone|lump|golf ball)',
    '§pebble |',
  ],
];
