import { JOINT, METAL, NUM, ORD, ordinal, type Phrase, RAY, RAYS, THE } from './phrase.ts';

/** Words as a recogniser mishears them in this trade. */
export const MISHEARD: readonly Phrase[] = [
  [`(${NUM}) degrees?`, '$1°'],
  [`(${NUM}) millimet(?:re|er)s?`, '$1 mm'],
  ['planter', 'plantar'],
  ['(?:the |an? )?m r (?=of|shows|showed|today|this)', 'mri '],
  ['type (?:to|too) (?=diabet)', 'type 2 '],
  ['(?<=(?:tourniquet|cuff) (?:at |to |on )?)2 (50|20|80)', '2$1'],
  ['toe grip', 'toe purchase'],
  ['on the (?:bottom|underside|underneath)(?: of the foot)?', 'plantar'],
  ['discomfort', 'pain'],
  ['(?:hv|h v) angle', 'hva'],
  ['angle of (?=\\d)', ''],
  ['intermetatarsal angle', 'ima'],
  ['hallux valgus angle', 'hva'],
  ['lachmans?|lachman.s', 'drawer'],
  ['both (?:the )?(second|third|fourth) (?:mtp )?(?:joints|toes|mtps)', (m) => `both ${ORD[m[1] ?? '']}`],
  ['both (?:the )?([1-5](?:nd|rd|th)) (?:mtp )?(?:joints|toes|mtps)', 'both $1'],
  ['mtp joints', 'mtps'],
  ['buddy (?:strap|strapped|taped|tape it|strapping)', 'buddy tape'],
  ['over the counter |off the shelf ', ''],
  ['metatarso ?phalangeal(?: joint)?', 'mtp'],
  ['proximal inter ?phalangeal(?: joint)?|p i p', 'pip'],
  ['(?:distal|terminal) inter ?phalangeal(?: joint)?', 'dip'],
  ['anterior drawer(?: test)?|draw test', 'drawer'],
  ['gastrocs?|gastroc soleus', 'gastrocnemius'],
  ['thyroxine', 'levothyroxine'],
  ['cephalexin', 'cefalexin'],
  [
    "(drawer|toe|gap|plate|joint|feeling|sensation|squeeze|click|purchase|skin|hallux|swelling|second|third|fourth|mtp|pip|callus|wound)'s(?= (?!(?:dorsal|plantar|medial|lateral) (?:side|aspect)))",
    '$1 is',
  ],
  [`(\\d) or (\\d) (mm|millimet(?:re|er)s?|degrees|weeks|months)`, '$1-$2 $3'],
  [
    '(?:is |are |has )?(?:looks?|appears?|remains?|stays|feels) (?=(?:very |quite |a bit |slightly |mildly |more or less )?(?:swollen|tender|straight|normal|intact|fine|stable|flexible|healed|congruent|thickened|torn|pink|clean|dry|tight|thin|good|ok|okay|unremarkable))',
    'is ',
  ],
  ['(?:door|draw|drawers|doors)(?= (?:test|sign|grade|\\d))', 'drawer'],
  ['draw(?! (?:up|blood|a|an|the|attention|out|in|her|his|it|on|back)(?: |$))', 'drawer'],
  ['(?<=grade \\d )draw(?= (?:on|in) )', 'drawer'],
  ["(?:molders|moulders|mullers|mulder's|mulder)(?: (?:click|sign|test))?", 'mulders'],
  ['free ?bergs?|freibergs|freebergs', 'freiberg'],
  ["(?:mortons|morton's|morton) neuroma", 'neuroma'],
  ['(?:wild|while|vile|whale|wheel|vial) (osteotom(?:y|ies))', 'weil $1'],
  ['dorsi flexion', 'dorsiflexion'],
  ['plantar flexion', 'plantarflexion'],
  ['(?:callous|callouses|callosities|callosity|calluses)', 'callus'],
  ['(?:bunion deformity|bunions)', 'bunion'],
  ['anesthetic', 'anaesthetic'],
  ['i m angle|im angle|inter metatarsal angle', 'ima'],
  ['h v angle', 'hva'],
  ['footy|soccer', 'football'],
  ['hammered toe', 'hammer toe'],
  ['k wires?|kirschner wires?', 'k-wire'],
];

const NOT_A_RAY =
  '(?! (?:of (?!the)|time|opinion|injection|operation|surgery|steroid|cortisone|visit|week|month|day|one|course|attempt|line|person|degree|and a half|into|half))';
export const PLACES: readonly Phrase[] = [
  [
    `(?:gap|spreading|splaying|space) between ${THE}(second|third|fourth|${RAY}) and ${THE}(third|fourth|fifth|${RAY})(?: toes?)?`,
    (m) => `stand gap ${(ORD[m[1] ?? ''] ?? m[1])?.[0]}-${(ORD[m[2] ?? ''] ?? m[2])?.[0]}`,
  ],
  [
    `(${RAY}|second|third|fourth|fifth) (mtp|pip)(?: joint)? is (stable|unstable|stiff|fixed|flexible|supple)`,
    (m) => `${ORD[m[1] ?? ''] ?? m[1]} ${m[2]} ${m[3]}`,
  ],
  [
    `(?<!${METAL} (?:in|of|through|across|at|for) (?:the )?)((?:${RAY}|second|third|fourth|fifth)(?:(?: and | to | )(?:${RAY}|second|third|fourth|fifth))*)(?: toes?| joints?| mtps?)? (?:is|are) (?:all )?stable`,
    (m) => `${(m[1] ?? '').replace(/second|third|fourth|fifth/g, (each) => ORD[each] ?? each)} mtp stable`,
  ],
  // `second and third both tender`
  [
    `((?:${RAY}|second|third|fourth|fifth)(?: toe| mtp)? and (?:the )?(?:${RAY}|third|fourth|fifth))(?: toes?| mtps?| joints?| rays?)? (?:are |is )?both`,
    (m) => (m[1] ?? '').replace(/second|third|fourth|fifth/g, (each) => ORD[each] ?? each),
  ],
  ['(?:the )?(?:other|remaining) (?:toes|joints|mtps|rays) (?:are )?(?:all )?stable', 'others mtp stable'],
  [
    `between (?:the )?(?:(right|left) )?(second|third|fourth|${RAY}) and (?:the )?(third|fourth|fifth|${RAY})(?: toes| metatarsals| met heads| rays| heads)?`,
    (m) => {
      const [low = 0, high = 0] = [m[2], m[3]].map((each) => Number((ORD[each ?? ''] ?? each ?? '')[0]));
      return high === low + 1 ? `${m[1] ? `${m[1]} ` : ''}web ${low}` : undefined;
    },
  ],
  [
    '(?:second|third)(?= and (?:third|fourth|3rd|4th) (?:plantar plates|plates|mtps|joints|toes|mets|metatarsals|heads|weil|weils))',
    ordinal,
  ],
  [
    `(?<=${RAY} and )(?:third|fourth)(?= (?:plantar plates|plates|mtps|joints|toes|mets|metatarsals|heads|weil|weils))`,
    ordinal,
  ],
  // `second toe drawer right grade three`, `third toe right grade one`
  [
    `(second|third|fourth|fifth|${RAY})(?: toe| mtp| ray)? drawer(?: test)? (?:on (?:the )?)?(right|left) (?:is )?(?:grade )?(\\d)`,
    (m) => `${m[2]} ${ORD[m[1] ?? ''] ?? m[1]} drawer ${m[3]}`,
  ],
  [`(${RAY})(?: toe| mtp| ray)? (right|left) (?:grade )?(\\d)(?! (?:mm|degrees|weeks|months))`, '$2 $1 grade $3'],
  [
    '(?:second|third|fourth|fifth|first)(?= (?:plantar plate|plate|head|met|mets|metatarsal|weil|web|space|interspace|toe|ray|mtp|drawer|hammer))',
    ordinal,
  ],
  [`(?<=(?:on|of|under|right|left|${RAY}|${RAY} and) )(?:second|third|fourth|fifth)${NOT_A_RAY}`, ordinal],
  [`(?<=(?:on|of|under|right|left|${RAY}|${RAY} and) )(?:second|third|fourth|fifth)${NOT_A_RAY}`, ordinal],
  [`(?<=(?:on|of|under|right|left|${RAY}|${RAY} and) )(?:second|third|fourth|fifth)${NOT_A_RAY}`, ordinal],
  [
    '(?<!(?:an?|one|per|\\d+|split|every|his|her|their|for|tried|injection|operation) )(?:second|third|fourth|fifth)(?= (?:is|are|does|has|sits|looks|feels|just|only|touches|crosses|drifts|deviates|deviated|straight|swollen|tender|fine|stable|ok|okay|quiet|a bit (?:loose|swollen|tender|sore)|slightly|lifted|floats|floating|hammer|claw)(?: |$))',
    ordinal,
  ],
  ['(?<=(?:in|of) the )(?:second|third)(?= (?:and|or) (?:third|fourth|web|3rd|4th))', ordinal],
  [`(?<=(?:on|of|under|right|left|${RAY}|${RAY} and) (?:the )?)(?:second|third|fourth|fifth)${NOT_A_RAY}`, ordinal],
  ['(?<=of the )first(?= (?:,|;|\n)|$)', ordinal],
  [`(${RAY}) (?:inter ?space|inter ?metatarsal space|webspace|web space|space|web)`, (m) => `web ${m[1]?.[0]}`],
  // Two numbers after `webs` are one space or two.
  [
    'webs? [1-5] [1-5](?! (?:days?|weeks?|months?|years?|mm|degrees|injections?|steroids?|cortisone|shots?|operations?))',
    'webs_unsure',
  ],
  [`(${RAY}) (?:and|or) (${RAY}|web [1-4]) (?:web )?spaces?`, (m) => `webs ${m[1]?.[0]}-${m[2]?.replace(/\D/g, '')}`],
  [
    `(${RAY}) (?:and|or) web ([1-4])`,
    (m) => (Number(m[2]) === Number(m[1]?.[0]) + 1 ? `webs ${m[1]?.[0]}-${m[2]}` : undefined),
  ],
  // `on the right the second toe`, `the second toe on the right`
  [`(?:on|in) the (right|left)(?: (?:foot|side))?(?= (?:the )?(?:${RAY}|web))`, '$1'],
  [`(${RAYS})(?: toes?| mtp joints?| mtps?| rays?)? on the (right|left)(?: (?:foot|side))?`, '$2 $1'],
  [`(?:on|in) the (right|left)(?: (?:foot|side))?`, '$1'],
  [`(?:the )?(right|left) foot`, '$1'],
  // A place under the foot.
  [
    `(?:just |right |directly )?(?:under|underneath|beneath|below) ${THE}(?:(right|left) )?(${RAY})(?: ${JOINT}| toe joint)*`,
    (m) => (/head/.test(m[0]) ? `head ${m[1] ?? ''} ${m[2]}` : `plantar ${m[1] ?? ''} ${m[2]}`),
  ],
  [`(?<=callus (?:plantar|head) )(?:(right|left) )?(${RAYS}) heads?`, '$1 $2'],
  [
    '(?:just |right |directly )?(?:under|underneath|beneath|below) (?:the |her |his )?(?:toe joint|mtp joint|joint|toe|ball of the foot|forefoot)',
    'plantar',
  ],
  ['(?:just )?(?:under|underneath|at|in) the ball of (?:the )?(right|left)(?: foot)?', 'plantar $1'],
  ['underneath', 'plantar'],
  ['(?:on|at|over) the (?:plantar|under) (?:side|aspect|surface)', 'plantar'],
  ['(?:on|at|over) the sole', 'plantar'],
  ['(?:on|at|over|in) the ball of the foot', 'plantar'],
  [`(${RAYS}) (?:met|metatarsal) heads?`, '$1 head'],
  [`(${RAY}) toe joint`, '$1 mtp'],
];

/** Words that only open or join, and adverbs that are no degree of the language. */
export const SMALL: readonly Phrase[] = [
  [
    '(?:now )?(?:looking at|coming to|moving on to|turning to|examining) (?:the |her |his )?(?:foot|toes?|forefoot|feet)',
    '| exam',
  ],
  ['(?:on|in) (?:examination|exam|palpation|inspection)', 'exam'],
  ['examination', 'exam'],
  [
    '(?:really|quite|fairly|pretty|extremely|definitely|certainly|obviously|clearly|rather(?! than))(?= (?!a bit|a little))',
    '',
  ],
  ['but (?=(?:it|she|he|there|the|no|not|still|now) )', 'and '],
  ['as well|too(?= ,| ;|$)', ''],
  [
    '(?:i can |we |i )?(?:see|feel|find|found|note|noted)(?= (?:a|an|some|no|that|swelling|mild|moderate|marked|tenderness|drawer))',
    '',
  ],
  ["(?:she|he)(?: has|'s)? got", ''],
  [
    "(?:and )?(?:there's|there is|there are|she's|he's|she is|he is|she has|he has)(?= (?!been|had|not|no longer|on|in|at|to|for|stopped|tried|never))",
    '|',
  ],
  ["(?:it's|it is)(?= (?!been|had|not|no longer|on|in|at|to|for|stopped|tried|never))", ''],
  [
    "(?:the|this|that|her|his)? ?toe(?= (?:is|sits|drifts|deviates|deviated|drifting|touches|floats|lifts|lifted|crosses|overlaps|straight|doesn't|does not|was|purchase))",
    (m) => (m[0].endsWith('toe') ? '' : undefined),
  ],
  ['toe toe', 'toe'],
];
