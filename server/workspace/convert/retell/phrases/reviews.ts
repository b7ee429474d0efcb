import { type Phrase, remark, TIME } from './phrase.ts';

const SAYS =
  "(?:(?:she|he|patient) (?:reckons|thinks|feels|says|estimates|tells me|told me|would say)(?: that)? )?(?:(?:she's|he's|she is|he is|it's|it is|things are|overall) )?(?:now |overall |about )*";
const TIMES = `~?\\d+(?:-\\d+)? ${TIME}`;
/** How it goes since the last visit, and what was done before this one. */
export const REVIEWS: readonly Phrase[] = [
  [
    `${SAYS}(~?\\d+%) (?:better|improved|improvement)(?: (?:overall|now|with the [a-z]+(?: and the (?:stiff )?[a-z]+)?))?(?: (?:on (?:the )?)?(right|left))?(?: and| ,)?( no (?:change|better|different|improvement) (?:on (?:the )?)?(?:right|left))?(?! (?:than|if|when|at|by|in|with|after|for|or))`,
    (m) =>
      `| history ${m[2] ?? ''} course better ${m[1]} |${m[3] ? ` history ${/right|left/.exec(m[3])?.[0]} course unchanged |` : ''}`,
  ],
  [`${SAYS}(?:half|about half|50 50) better`, '| history course better 50% |'],
  [
    `${SAYS}(?:much|a lot|far|heaps|loads|significantly) (?:better|improved)(?= (?:,|;|and|now|since|overall|with)|$)`,
    '| history course better |',
  ],
  [`${SAYS}no better(?= (?:,|;|and|at|since|pain)|$)`, '| history course no better |'],
  [
    `${SAYS}(?:getting worse|worse than before|a lot worse|much worse)(?= (?:,|;|and|now|since)|$)`,
    '| history course worse |',
  ],
  // What kind of visit this is: no plan.
  ["(?:she is |he is |she's |he's )?otherwise (?:fit and )?well", '§well'],
  ['(?:k-wire|pin|wire) (?:is )?(?:secure|intact|fine|stable|undisturbed)', 'pin in situ'],
  ['(?:good|normal|brisk) (?:capillary|cap) refill', 'capillary-refill normal'],
  ['mtp (\\d+)(?:°)? up (?:and )?(\\d+)(?:°)? down', 'mtp dorsiflexion $1° | plantarflexion $2°'],
  [
    `(?:${SAYS}|(?:she|he) (?:thinks|says|reckons|feels) (?:the toe|it|the foot) is )((?:half|a third|a quarter) as (?:painful|sore|bad) as (?:before|it was|last time))`,
    (m) => `| history course better ${remark(m[1] ?? '')} |`,
  ],
  [`${TIMES} (?:on|out)(?: from| since)? (?:the |her |his )?(?:surgery|operation)`, '§postop'],
  [
    `(?:she's|he's|she is|he is) (?:really |very |so |extremely )(?:delighted|happy|pleased|comfortable)(?: with it| with the toe)?`,
    '§well',
  ],
  ['(?:the )?scar (?:is )?(?:soft|supple|mature|neat|well healed)', '§scar'],
  ['toe alignment (?:is )?(?:unchanged|the same)', '§alignment'],
  ['alternate (?:sutures|stitches) (?:removed|out|taken out)', 'alternate sutures out'],
  ['(?:dressing|bandage)s? (?:taken )?(?:down|off|changed|reduced)', '§dressing'],
  ['(?:k-wire|wire|pin)s? (?:is |are )?(?:still )?in (?:place|situ)', 'pin in situ'],
  [
    'pre ?(?:assessment|admission)(?: clinic| check| visit)?|pre ?op(?:erative)? (?:clinic|check|assessment|visit)|new patient(?: clinic)?|first visit',
    '§visit',
  ],
  ['came back (?:today )?(?:with|for) (?:her|his|the) (?=ultrasound|mri|xray|scan)', '| '],
  ['(mild|slight|minimal|a bit of|some) swelling only', '$1 swelling'],
  ['without (?:any )?(?:problems?|difficulty|complications?|issues?)', ''],
  ['(?:comfortable )?off all (?:the )?(?:painkillers|pain relief|analgesia)', '§comfortable'],
  [
    `(?:she's|he's|she is|he is) (?:delighted|happy|pleased|comfortable|doing well|well)(?: with it| with the toe)?(?= ,| ;|$| no| wound| off| now| in| walking)`,
    '§well',
  ],
  ['(?:toe |2nd |it )?(?:sits|is|lies) in good (?:alignment|position)', 'aligned'],
  ['(?:the )?osteotom(?:y|ies) (?:is |are )?(?:healing|uniting)(?: (?:well|nicely))?', '| xray union weil healing |'],
  [
    `(?<=^(?:[^ ,;|]+ ){0,5})(?:an? )?(?:follow up|review|check|recheck|check up|post ?op|visit)(?: visit| appointment| clinic| check| review)?(?: (?:at|in|after))? (?:about )?${TIMES}(?! (?:from|following|after|since|post))`,
    '§visit',
  ],
  [
    `(?<!(?:in|for|at|after) )(?:an? )?${TIMES} (?:follow up|review|check|check up|recheck|post ?op check|visit|appointment)(?! (?:right|left|2nd|3rd|4th|please))`,
    '§visit',
  ],
  [
    '(?:post ?op(?:eratively)? (?:day|week|month) \\d+|(?:day|week|month) \\d+ (?:post ?op(?:eratively)?|after surgery|following surgery)|\\d+ (?:days?|weeks?|months?) post ?op(?:eratively)?|(?:day|week) \\d+ following surgery)',
    '§postop',
  ],
  // The operated foot on its way.
  [
    '(?:the )?swelling (?:is |still )?(?:has been )?(going down|coming down|settling|improving|reducing)(?: (?:nicely|slowly|well))?',
    (m) => `swelling ${remark(m[1] ?? '')}`,
  ],
  [
    '(?:the )?swelling (?:has |is )?(?:all |completely |now |fully )?(?:gone|resolved)(?= (?:,|;|and|drawer|no|paper|pain|second|third|2nd|3rd|toe|now)|$)',
    'no swelling',
  ],
  [
    '(?<!was )(?<!were )(?:pins?|wires?|k-wires?) (?:came|come|coming) out (last week|yesterday|last month|on (?:mon|tues|wednes|thurs|fri)day)',
    (m) => `pin removed ${remark(m[1] ?? '')}`,
  ],
  ['wound (?:is |has )?(?:dry and closed|closed and dry)', `wound dry ${remark('and closed')}`],
  [
    'wound (?:is |has |looks )?healed (apart from (?:an? )?(?:tiny |small |little )?scab(?: [a-z]+ally)?)',
    (m) => `wound healed ${remark(m[1] ?? '')}`,
  ],
  [
    '(?:the )?wounds? (?:is |are |has |have |looks? )?(?:well |nicely |fully |completely )?healed(?: (?:well|nicely|up|fully))*',
    'wound healed',
  ],
  ['(?:the )?(?:scar|wound) (?:is |looks )?(?:clean and dry|clean dry|dry and clean)', 'wound clean and dry'],
  [
    '(?:walking|now|back|wearing) (?:in(?:to)? )?(?:normal |ordinary |her |his |own |regular )*(shoes|trainers|runners|sneakers)',
    (m) => (m[1] === 'shoes' ? '| normal shoes |' : '| trainers |'),
  ],
  [
    '(a bit of |slight |mild |some |moderate )?swelling (at the end of the day|by (?:the )?(?:evening|end of the day)|in the evenings?|after (?:a long day|walking|standing))',
    (m) => `${m[1] ?? ''}swelling ${remark(m[2] ?? '')}`,
  ],
  ['toe (?:is )?(?:warm and pink|pink and warm|well perfused|pink)', 'toe pink'],
  ['toes (?:are )?(?:all )?(?:warm and pink|pink and warm|pink)', 'toes pink'],
  ['foot (?:is )?warm(?= (?:,|and|toes|;)|$)', '§foot​warm'],
  [
    '(?<!not )(?:walks|walking|runs|running)(?: about)? ((?:up to )?\\d+ ?(?:k|km|kilometres|miles)(?: a day)?) (?:with )?(?:no pain|without pain|pain free)',
    (m) => `| activity ${/run/.test(m[0]) ? 'running' : 'walking'} ${remark(m[0])} |`,
  ],
];
