import { NUM, type Phrase, RAY, RAYS, remark, THE } from './phrase.ts';

/** What an image was reported to do. */
const FILMS = '(?:x-rays?|xrays?|x rays?|films?|radiographs?)';
const SHOWS = '(?:shows?|showed|reveals?|revealed|demonstrates?|demonstrated|confirms?|confirmed)';

export const IMAGES: readonly Phrase[] = [
  // What the images are called.
  ['(?:ultra ?sonograph(?:y|ic scan)|ultra sound|sonograph(?:y|ic scan)|sonogram|u s g|usg|u s scan)', 'ultrasound'],
  ['(?:m r scan|mr scan|magnetic resonance(?: imaging)?(?: scan)?|mr imaging|m r imaging|mri scan)', 'mri'],
  ['(?:c t scan|ct scan|computed tomography|cat scan)', 'ct'],
  // One that opens its sentence was taken, and is not asked for.
  [
    `(?<=^|[;\\n] )(?:standing|weight[- ]?bearing|loaded) (?:plain )?${FILMS}(?: today)?(?: ${SHOWS}(?: that)?(?: the)?(?= )|(?= (?:${RAY}|hva|ima)(?: |$)))`,
    '| xray weight bearing | xray',
  ],
  [
    `(?:(?:standing|weight[- ]?bearing|loaded) )?(?:plain )?${FILMS}(?: today)? (?:have |has )?${SHOWS}(?: that)?(?: the)?(?= )`,
    'xray',
  ],
  [`(?<=(?:ultrasound|mri|ct) (?:today )?)(?:has )?${SHOWS}(?: that)?`, ''],
  [
    '(?<=(?:longer|long|shorter|shortened|shortening)(?: (?:by|of|than|the|1st|first|about))* \\d(?:\\.\\d)? )mils?',
    'mm',
  ],
  ['with (?:an? |some )?(?:small |large )?(?:joint )?effusion', '| effusion'],
  ['(?<=xray )healed', 'united'],
  [
    'no neuromas?(?: seen)?(?: in (?:either|any) (?:web )?space)?(?= ,| ;|$| no| and| she| second| third| \\|)',
    '§neuroma',
  ],
  ['post ?(?:op|reduction) (?:film|xray|x-ray)s?(?: shows?)?', '| xray'],
  [
    `(?<=(?:xray|film) [^;]*?)callus (?:around|at|over|on) ${THE}(${RAY}) (?:metatarsal )?(?:shaft|neck)`,
    '$1 callus |',
  ],
  [
    `(web [1-4]) neuroma (?:of|in|on) (?:the )?(right|left)(?: foot)? (?:measuring |of )?(${NUM} mm)`,
    '| $2 $1 neuroma $3 |',
  ],
  ['no (?:plantar )?plate tears?(?= ,| ;|$| and| or)', '§no​plate​tear'],
  ['with (?:the )?((?:[1-5](?:nd|rd|th)) mtp (?:subluxed|dislocated|congruent))', '$1'],
  [
    '(?<=(?:ultrasound|mri|xray|ct|report|scan)[^;]*?)(?:it |which |the report |report )?(?:says|said)(?: that)?(?: there is| there was)?',
    '',
  ],
  ['(?:at|near|off|from) (?:its|the) (distal|proximal|phalangeal) (?:attachment|insertion|end)', 'insertion'],
  [`(${RAY}) plate and (${RAY}) plate (?:are |is |both )*(?:normal|intact|fine|ok|okay)`, '$1 and $2 plate intact'],
  [
    `(?:there is |also |and )*(?:an? )?(?:small |tiny |large )?(?:(neuroma|bursa|bursitis)(?: seen)? (?:in|at|of) (?:the )?(web [1-4])|(web [1-4]) (neuroma|bursa|bursitis)) ,? ?(?:of |measuring |about )?(${NUM} mm)(?! ")`,
    (m) => `| ${m[2] ?? m[3]} ${m[1] ?? m[4]} ${m[5]} |`,
  ],
  ['(?:the )?screws? (?:is|are)? ?(?:still )?in (?:place|situ|good position)', '| screw in place |'],
  [
    'no (fracture|stress fracture|arthritis|erosions|dislocation)(?: seen)? on (?:the |plain )?(?:film|films|x-ray|x-rays|xray|radiograph)s?',
    '| xray no $1 |',
  ],
  [
    '(?<=xray (?:today |of (?:the )?(?:right |left )?(?:foot )?)?)(?:is |are |was |looks? )?normal(?: at this stage| so far| today)?(?= ,| ;|$| drawer| treat| no| and)',
    'unremarkable',
  ],
  [
    `(?:an? )?(?:(high|low)[- ]grade )?(?:(partial|full|complete)(?:[- ]thickness)? )?tear(?: (?:of|in|through|along) the (lateral|medial|central) (?:part|half|side|aspect|edge|border|third))? (?:of|in|to|at|through) ${THE}(?:(right|left) )?(${RAY})(?: mtp| toe)?(?: joint)?(?: plantar)?(?: plate)?(?: (?:on (?:the )?)?(right|left))?`,
    (m) => [m[4] ?? m[6], m[5], 'tear', m[2], m[3], m[1] && remark(`${m[1]} grade`)].filter((each) => each).join(' '),
  ],
  ['(?<=tear [^;|]*?),? ?(?:which |it )?(?:measures|measuring)(?: about)? (?=~?\\d+(?:\\.\\d+)? mm)', ''],
  [
    `(?:plantar )?plate (?:is |was )?(?:torn|tear) (?:at|in|on|through|along) the (lateral|medial|central) (?:half|part|side|third|aspect|edge|border)`,
    'tear $1',
  ],
  [`(?<=tear [^;|]*?)(~?\\d+%) (?:of )?(?:the |its )?width`, '$1'],
  [
    `(?<=tear [^;|]*?)(?:and |with )?(?:an? )?(?:bit of |some |slight |mild |little )?(retraction|retracted)(?: of| by)? ?(${NUM} mm)`,
    (m) => remark(`${m[1]} ${m[2]}`),
  ],
  [
    `(?<=tear [^;|]*?)(?:with|and) ((?:some |surrounding |mild )?(?:hyper(?:a)?emia|fluid|synovitis|oedema|edema|scarring|thickening))(?= |$)`,
    (m) => remark(m[1] ?? ''),
  ],
  [`(?<=tear [^;|]*?)(\\d+(?:\\.\\d)?) by (\\d+(?:\\.\\d)?) mm`, (m) => `${m[1]} mm ${remark(`by ${m[2]} mm`)}`],
  [`(?<=tear [^;|]*?)(?:measur\\w+|about|of|which measures|it measures)(?: about)? (${NUM} mm)`, '$1'],
  [
    `(?:plantar )?plate degeneration (?:without|with no|but no) (?:an? )?tear`,
    (m) => `plate intact ${remark(m[0].replace(/^(?:plantar )?plate /, ''))}`,
  ],
  [
    `(?:an? )?(${NUM} mm) (neuroma|bursa|bursitis)(?: (?:seen|lying))?(?: in| at| of)? (?:the )?(web [1-4])(?: (?:on (?:the )?)?(right|left))?( (?:which|that) i think is incidental)?`,
    (m) => `| ${m[4] ?? ''} ${m[3]} ${m[2]} ${m[1]}${m[5] ? ` ${remark(m[5].trim())}` : ''} |`,
  ],
  [
    `(?:an? )?(?:small |tiny |little )?(neuroma|bursa|bursitis)(?: seen)? (?:in|at|of) (?:the )?(web [1-4]) (?:of |measuring |about )?(${NUM} mm)`,
    '| $2 $1 $3 |',
  ],
  [`(?:in (?:the )?)?(web [1-4]) (?:but )?not an? neuroma`, '| $1 no neuroma |'],
  ['no (?:bone |bony )?stress (?:response|reaction)', 'no stress reaction'],
  ['no (?:bone|bony|marrow|bone marrow) (?:bruising|bruise|oedema|edema)', 'no bone oedema'],
  ['(?<=(?:mri|ultrasound|ct)(?: [^;|]*)? )no (?:bruising|bruise|oedema|edema)', 'no bone oedema'],
  ['(?:some |a little |a bit of |small )?(?:joint )?(?:fluid|effusion) in (?:the )?joint', 'effusion'],
  ['(?:joint is |joint )(?:still )?(?:subluxed)(?: not dislocated)?', 'subluxed'],
  ['(subluxed) (?:but )?not dislocated', (m) => `${m[1]} ${remark('not dislocated')}`],
  ['healing callus(?: seen| visible| present)?', '| callus |'],
  [`(${RAY}) (?:met|metatarsal)(?: is)? (${NUM} mm) longer(?: than (?:the )?(?:1st|first))?`, '| $1 longer $2'],
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
    '(?:x-rays?|xrays?|plain films?|films?|radiographs?)(?= (?:today|show|shows|showed|of|result|from|,|weight|hva|hallux|:|no|right|left|2nd|3rd|is|looks|normal))',
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
    '| $1 longer $2',
  ],
  [
    `(${RAY}) (?:met|metatarsal) longer than (?:the )?(?:1st|first) by (${NUM} (?:mm|millimetres?|millimeters?))`,
    '| $1 longer $2',
  ],
  ['no arthritis', 'no osteoarthritis'],
  [
    `(?<=xray )(?:the )?(${RAYS})? ?(?:the )?(weil|pip fusion|osteotomy|osteotomies|fusion) (?:has |have |is |are )?(?:healed|united|fully united|fully healed)(?: (?:well|nicely|in (?:a )?good position))?`,
    (m) => `${m[1] ?? ''} union ${/fusion/.test(m[2] ?? '') ? 'pip fusion' : 'weil'} united`,
  ],
  [`(${RAY}) tear ((?:partial|full|complete) )?(right|left)(?= (?:lateral|medial|at|,|;|with|\\d)|$)`, '$3 $1 tear $2'],
  ['(?<=tear [^;|]*?), (?=(?:lateral|medial|central|distal|insertion|about|~?\\d+(?:%| mm)))', ''],
  ['(?<=tear [^;|]*?)(lateral|medial|central) (?:side|half|part)', '$1'],
];
