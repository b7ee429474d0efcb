import { NUM, type Phrase, RAY, RAYS, remark, THE } from './phrase.ts';

export const IMAGES: readonly Phrase[] = [
  [`(${RAY}) (?:met|metatarsal)(?: is)? (${NUM} mm) longer(?: than (?:the )?(?:1st|first))?`, '$1 longer $2'],
  [
    `(?:an? )?(high|low)[- ]grade (?:partial )?tear (?:of|in|to) ${THE}(${RAY})(?: mtp)?(?: plantar)?(?: plate)?`,
    (m) => `${m[2]} tear ${remark(`${m[1]} grade`)}`,
  ],
  ['(?<=tear [^,;\n]*?)(lateral|medial)ly', '$1'],
  [
    `(?:an? )?(synovitis|effusion|tear) (?:of|in|at) ${THE}(${RAY})(?: mtp)?(?: joint)? on (?:the )?(ultrasound|mri)`,
    '$3 $2 $1',
  ],
  [
    '(mri|ultrasound|xray|ct) (?:is |was )?(?:from|dated|taken|done)(?: on)? (?:the )?(\\d{4}-\\d{2}(?:-\\d{2})?)',
    '$1 taken $2',
  ],
  [
    '(pins?|wires?|k-wire) (?:was |were |are |is )?(?:removed|taken out|out)(?: (?:in (?:the )?clinic|today|here))*',
    'pin removed',
  ],
  [
    '(?:x-rays?|xrays?|plain films?|films?|radiographs?)(?= (?:today|show|shows|showed|of|result|from|,|weight|hva|hallux|:|no))',
    'xray',
  ],
  ['(?<=xray )(?:result|today|shows?|showed|from today)', ''],
  ['(?<=xray )(?:today |of )?(?:show|shows|showed)', ''],
  [
    '(?<=(?:ultrasound|mri|us) )(?:scan |report |result )?(?:of )?(?:the )?(right|left)(?: foot)? (?:shows?|showed|confirms?|confirmed|reports?|reported|demonstrates)(?: as)?',
    '$1',
  ],
  [
    '(?<=(?:ultrasound|mri|us) )(?:scan |report |result )?(?:shows?|showed|confirms?|confirmed|reports?|reported|demonstrates)(?: as)?',
    '',
  ],
  [
    `(?:an? )?(?:high[- ]grade )?(partial|full|complete)(?:[- ]thickness)? tear (?:of|in|to) ${THE}(${RAY})(?: mtp)?(?: plantar)?(?: plate)?`,
    '$2 tear $1',
  ],
  [`(?:an? )?tear (?:of|in|to) ${THE}(${RAY})(?: mtp)?(?: plantar)?(?: plate)?`, '$1 tear'],
  [
    `(${RAY})(?: mtp)?(?: joint)? (?:plantar )?plate (?:shows? |has )?(?:an? )?(partial|full|complete)(?:[- ]thickness)? (?:tear|torn)`,
    '$1 tear $2',
  ],
  [`(?:an? )?(partial|full|complete)(?:[- ]thickness)? tear of ${THE}(?:plantar )?plate`, 'tear $1'],
  [`(${RAYS}) (?:plantar )?plates? (?:is |are )?(?:otherwise )?(?:intact|normal|ok|okay|fine)`, '$1 plate intact'],
  ['(?:at|near) the ((?:distal |lateral |medial |central )+)(?:insertion|attachment)', '$1'],
  ['(?:on the )?(lateral|medial) side(?= (?:,|;|measuring)|$)', '$1'],
  [`(${NUM} (?:mm|millimetres?|millimeters?)) neuroma((?: in)? (?:the )?web [1-4])`, '$2 neuroma $1'],
  [`neuroma (?:seen )?(?:in |of |at )?(?:the )?web ([1-4])`, 'web $1 neuroma'],
  [`(?:inter ?metatarsal )?bursitis (?:seen )?(?:in |of |at )?(?:the )?web ([1-4])`, 'web $1 bursitis'],
  [`no neuroma (?:seen )?(?:in |of |at )?(?:the )?webs ([1-4]-[1-4])`, 'webs $1 no neuroma'],
  [
    `(${RAY}) (?:mt|met|metatarsal|metatarsal head)?(?: is)? ?(?:long|longer)(?: than (?:the )?(?:1st|first))? by (${NUM} (?:mm|millimetres?|millimeters?))`,
    '$1 longer $2',
  ],
  [
    `(${RAY}) (?:met|metatarsal) longer than (?:the )?(?:1st|first) by (${NUM} (?:mm|millimetres?|millimeters?))`,
    '$1 longer $2',
  ],
  ['no arthritis', 'no osteoarthritis'],
  [
    `(?<=xray )(?:the )?(${RAYS})? ?(?:the )?(weil|pip fusion|osteotomy|osteotomies|fusion) (?:has |have |is |are )?(?:healed|united|fully united|fully healed)(?: (?:well|nicely|in (?:a )?good position))?`,
    (m) => `${m[1] ?? ''} union ${/fusion/.test(m[2] ?? '') ? 'pip fusion' : 'weil'} united`,
  ],
];
