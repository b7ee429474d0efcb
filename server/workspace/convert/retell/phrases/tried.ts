import { type Phrase, remark, TIME } from './phrase.ts';

/** Measures as they are named in speech. */
export const MEASURE =
  '(?:taping|tape|strapping|(?:foot )?orthotics?|orthoses|insoles?|inserts?|arch supports?|physio|physiotherapy|physical therapy|steroid injections?|cortisone injections?|steroid|cortisone|injections?|met(?:atarsal)? (?:dome|pad)s?|gel pads?|stiffer shoes?|stiff soles?|soft insoles?|domes?|pads?|padding|metatarsal bar|carbon (?:fibre )?(?:plate|insert|insole)s?|gel insoles?|new (?:trainers|shoes|runners)|rest|stiff (?:insole|insert|shoe|sole)s?|stiff soled shoes?|rocker(?: soled?)?(?: shoes?)?|(?:walking |moon |air |walker )?boot|ibuprofen|naproxen|diclofenac|paracetamol|anti inflammatories|wider shoes|wide shoes|calf stretches|stretches|stretching|exercises|toe (?:spacer|prop|splint)s?|budin splint|splint|crutches)';
const NEXT = '(?= ,| ;|$| and (?:has|hasn|she|he|no|not|does|is)| or | nor | \\|)';
const SHE = "(?:(?:she|he|patient|they)(?: has|'s|'ve| have)? )?";

/** What a measure did, in the words of the language; the words are of this patient up to the next break or clause. */
const RESPONSES: readonly [string, string][] = [
  [
    '(?:helped|helps|improved things|eased it|made a difference)(?: quite)? (?:a bit|a little|somewhat|slightly|partially|partly|for a while|for a bit|initially|at first|to start with|to begin with)',
    'helped a bit',
  ],
  ['(?:takes|took) the edge off(?: it)?', 'helped a bit'],
  ['(?:helped|helps)(?: (?:a lot|a great deal|most|the most|nicely|well))?', 'helped'],
  [
    "(?:(?:did|does|do|has|have)(?: not|n't)|didnt|doesnt|don't)(?: really)?(?: help(?:ed)?| work(?:ed)?| do (?:much|anything)| make (?:much|any) difference| make a difference)?(?: at all| much| either)?",
    'no relief',
  ],
  [
    '(?:did|does|made|gave|has made|have made|was|were|of) (?:nothing|no difference|no relief|no help|no benefit|little difference|no real difference|useless)(?: at all)?',
    'no relief',
  ],
  ['(?:has been|have been|was|were|is|are) (?:very |really |quite |most )?(?:helpful|useful|beneficial)', 'helped'],
  ['(?:has been|was|were|is) (?:unhelpful|no use|no good|not (?:very )?helpful)', 'no relief'],
  ['(?:gave|with|provided|no) (?:no help|no relief|help|no benefit)(?: at all)?', 'no relief'],
  ['made it worse|made things worse|aggravated it', 'made worse'],
];
const PERIOD = `(?:about |only about |only )?~?\\d+(?:-\\d+)? ${TIME}`;

export const TRIED: readonly Phrase[] = [
  ['(?:cortisone|steroid) (?:jab|shot|inj)(s?)', 'steroid injection$1'],
  ['(?<=(?:no|had|tried|physio|or|of|,) )p t(?= |$)', 'physio'],
  ['(?:custom )?(?:foot )?(?:orthotics?|orthoses|orthosis)|shoe inserts|arch supports?', 'insoles'],
  ['rocker soles?', 'rocker'],
  ['rocker (?:soled? |bottom )?shoes?', 'rocker shoe'],
  ['carbon (?:fibre|fiber) (?:plate|insert|insole)s?', 'carbon plate'],
  // Not tried: only where the measure stands alone.
  [
    `(?:and )?${SHE}(?:not|never) (?:yet )?(?:tried|had|used|worn)(?: any| an?| the)? (${MEASURE})${NEXT}`,
    '| tried no $1',
  ],
  [
    `(?:and )?(?:she |he )?(?:hasn't|has not|hasnt) (?:yet )?(?:tried|had|used|worn)(?: any| an?| the)? (${MEASURE})${NEXT}`,
    '| tried no $1',
  ],
  [`(?:she|he)(?: has|'s) had no (${MEASURE})(?=(?: no | ,| and| or|$))`, '| tried no $1'],
  [`(?<=tried no [^;]* )(?:just|only) (?=${MEASURE})`, ' tried '],
  [
    `(?:she |he |they )?(?:has |have |'s )?failed (?:to respond to |on |with )?(${MEASURE})(?: (?:and|or) (?:an? )?(${MEASURE}))?(?: for (~?\\d+ ${TIME}))?`,
    (m) =>
      [m[1], m[2]]
        .flatMap((each) => (each ? [`| tried ${each}${m[3] ? ` for ${m[3]}` : ''} no relief`] : []))
        .join(' '),
  ],
  [
    `(?:she |he )?(?:has |have |'s )?(?:tried|used|had) (?:an? |the )?(${MEASURE}) (?:and|or) (?:an? |the )?(${MEASURE}) ,? ?(?:but )?(?:neither|none)(?: of (?:which|them))? (?:has |have |really )*(?:helped|worked|made any difference)(?: much| at all)?`,
    '| tried $1 no relief | tried $2 no relief |',
  ],
  [
    `(?:she |he )?takes? (${MEASURE}) (?:with |which (?:gives|has) )(some|good|no|little|partial) (?:benefit|relief|effect)`,
    (m) => `| tried ${m[1]} ${m[2] === 'little' ? 'some' : m[2]} relief`,
  ],
  [
    `((?:steroid|cortisone)(?: injections?)?|injection) (?:in|into|to) (?:the |his |her )?(?:(right|left) )?(web [1-4]|[2-5](?:nd|rd|th))(?: mtp| toe| joint| space)*(?: (~?\\d+ ${TIME}) ago)?`,
    (m) => [m[1], m[2], m[3], m[4] && `${m[4]} ago`].filter((each) => each).join(' '),
  ],
  [
    `(?:the )?(tape|taping|strapping) (?:irritated|upset|blistered|reacted with) (?:her|his|the) skin(?: (?:so|and) (?:she |he )?(?:stopped|gave up|came off)(?: it)?(?: after (~?\\d+ ${TIME}))?)?`,
    (m) => `| tried tape${m[2] ? ` for ${m[2]}` : ''} stopped because of skin irritation |`,
  ],
  [
    `(${MEASURE}) and (${MEASURE}) (?:gave|with|provided|brought) (little|no|some|good) (?:relief|benefit|help)`,
    (m) =>
      [m[1], m[2]]
        .map((each) => `| tried ${each} ${m[3] === 'little' ? remark('little relief') : `${m[3]} relief`}`)
        .join(' '),
  ],
  [
    `(?<!plan |no |tried |had |not )(?:(\\d|an?) )?(steroid|cortisone)(?: injections?)?(?: (?:in|into|to) the (?:joint|toe|space))?(?: (in the community|elsewhere|by (?:her|his|the) gp|privately))? (~?\\d+ ${TIME}) ago(?: ,)?(?: (?:which |that |it )?(?:helped|lasted|worked) for (~?\\d+ ${TIME}))?`,
    (m) =>
      `| tried steroid${/^[2-9]$/.test(m[1] ?? '') ? ` times ${m[1]}` : ''} ${m[4]} ago${m[5] ? ` helped ${remark(`for ${m[5]}`)}` : ''}${m[3] ? ` ${remark(m[3])}` : ''} |`,
  ],
  [
    `(?<!not |never |n't )been (?:taping|wearing|using|doing)(?: the| her| his| a)? (?=every day|daily|most days|it)`,
    '| tried tape ',
  ],
  [
    `(?:she|he)(?: has|'s) had (?:an? )?(${MEASURE}) and (~?\\d+ ${TIME}) of (${MEASURE}) (without (?:benefit|relief|effect|help)|no relief)`,
    '| tried $1 no relief | tried $3 for $2 no relief |',
  ],
  // Tried: the verb, or a measure with what it did.
  [
    `(?:so far )?(?:and )?(?:she|he|who)(?: has|'s)? (?:also |already |only |just )?(?:tried|been trying|been using|been wearing|been doing|been having|used|worn|wore|been given|been put in|was given|bought|has been in|been in|done|did)(?: the| her| his| an?| some)? (?=(?:(?:\\d|both|good|silicone|gel) )?${MEASURE}(?: |$))`,
    '| tried ',
  ],
  [
    `(?<!not )(?<!never )(?:(?:she|he|who)(?: has|'s)? |(?<![^,;|\\n] ))had (?:(?:an?|some|the) )?(?=(?:\\d )?${MEASURE}(?: |$))`,
    '| tried ',
  ],
  [
    `(?:and )?(?:taped|has taped|'s taped|been taping)(?: it| the toe)? for (?:the (?:first|last|past) )?(~?\\d+ ${TIME})`,
    '| tried tape for $1',
  ],
  [`(?<=tried [^;]*)(\\d) (steroid|cortisone)(?: injections?)?`, '$2 times $1'],
  [`(?<=tried [^;]*?)(?:and |, )(?:an? |the )?(?=${MEASURE}(?: |$))`, '| tried '],
  [
    `(?<=tried [^;]*?${MEASURE} )(?:elsewhere )?(?:in|last|back in|around) (?:january|february|march|april|may|june|july|august|september|october|november|december)(?! \\d)`,
    (m) => remark(m[0]),
  ],
  [`(?<=tried [^;]*?)(?:over|for) the (?:first|last|past) (\\d+ ${TIME})`, 'for $1'],
  [
    `(?<=tried [^;]*?) ?,? ?(?:which|that|and|but)? ?(?:it |they |this |that )?(?:has |have )?(?:gave|gives|lasted|helped for|helped her for|helped him for|worked for|good for|got)(?: her| him)? (${PERIOD})(?: of relief| relief| of benefit)?(?= ,| ;|$| and| but| then| \\|)`,
    (m) => ` helped ${remark(`for ${m[1]}`)}`,
  ],
  ...RESPONSES.map(
    ([said, is]): Phrase => [
      `(?<=tried [^;|]*?${MEASURE}[^;|]*?) ?,? ?(?:which|that|and|but)? ?(?:it |they |this |that )?(?:has |have )?(?:really |only |just )?(?:${said})(?= ,| ;|$| and| but| or| then| she| he| \\|| so| no| now)`,
      ` ${is}`,
    ],
  ),
  ...RESPONSES.map(
    ([said, is]): Phrase => [
      `(?<!(?:if|that|tried|no|not|when|any|met|metatarsal|gel|stiff|carbon|toe|soft|budin) )(?:the |an? )?(${MEASURE}) (?:has |have |really )*(?:${said})(?= ,| ;|$| and| but| or| then| she| he| \\|| so| no| now|(?: the)? (?:${MEASURE}))`,
      `| tried $1 ${is}`,
    ],
  ),
  ['tried (?:an? |the |some |her |his )', 'tried '],
  [`(?<=tried [^;]*)and stopped(?: it)? because of (?:an? |the )?rash`, 'stopped because of rash'],
];
