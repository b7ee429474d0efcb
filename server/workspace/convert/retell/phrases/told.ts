import { COMPLETE_MARK, type Phrase, remark, TIME } from './phrase.ts';
import { ENDS, NOT_THEN, NTH } from './rays-said.ts';

const SHOES = '(?:tight shoes|narrow shoes|high heels|heels|shoes)';
const ACTIVITIES = '(?:running|walking|standing|stairs|hills|dancing|jumping|barefoot walking)';
/** Shoes for one purpose: the language has shoes, and keeps which in a remark. */
const SPECIAL =
  '(?:(?:ski|work|safety|football|walking|cowboy|riding|army) boots|(?:pointe|cycling|climbing|dress|court|pointed|smart|work) shoes|boots|stilettos|loafers)';
const JOBS =
  '(?:(?:staff |night |district |school |practice )?nurse|driver|postal worker|postwoman|waiter|bartender|cook|baker|carer|midwife|security guard|engineer|accountant|solicitor|lawyer|student|dancer teacher|labourer|surgeon|dentist|pharmacist|housewife|paramedic|firefighter|flight attendant|butcher|sales assistant|cashier|barista)';
const ON_FEET =
  '(?:long shifts|on (?:her|his) feet(?: all day| all shift)?|on feet(?: all day)?|stands all day|standing all day|always standing)';
const LUMP =
  '(?:pebbles?|marbles?|stones?|lump|golf ball|ball|rolled up sock|bunched (?:up )?sock|sock (?:bunched|rolled) up)(?: (?:in|under|inside) (?:the |her |his )?(?:shoe|foot|sock|ball of (?:the )?foot|forefoot))?';
/** Drugs that a plan around an operation may stop. */
const STOPPED =
  '(?:aspirin|clopidogrel|warfarin|apixaban|rivaroxaban|edoxaban|dabigatran|blood thinners?|methotrexate|adalimumab|etanercept|rituximab|tocilizumab|metformin)';
const RISK =
  '(?:infection|wound (?:infection|problems|breakdown)|bleeding|stiffness|stiff toe|floating toe|recurrence|recurrent deformity|numbness|nerve (?:injury|damage)|stump neuroma|transfer (?:pain|metatarsalgia|lesions?)|non ?union|delayed union|malunion|clots?|dvt|pe|(?:persistent |ongoing |residual )?(?:swelling|pain)|scar(?:ring)?(?: pain)?|tender scar|further surgery|revision(?: surgery)?|failure|avascular necrosis|avn|crps|(?:loss of (?:the )?)toe|toe loss|amputation|short toe|metalwork problems|anaesthetic risks?|need for (?:further|more) surgery|under ?correction|over ?correction)';
const RISKS = `${RISK}(?:(?: ,)?(?: and| or)? ${RISK})*`;
const DAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';

/** What the patient tells, clipped. */
export const TOLD: readonly Phrase[] = [
  // What sets it off and what eases it.
  [
    `(?<!(?:no longer|not|old|new|if|than) )(${SHOES}|${ACTIVITIES}) (?:sets?|bring|brings)(?: it| this| the pain| things)? (?:off|on)${NOT_THEN}`,
    '| history trigger $1 |',
  ],
  [
    `(?<!(?:no longer|not|old|new|if|than) )(${SHOES}|${ACTIVITIES}) (?:makes?|making) (?:it|this|the pain|things) worse`,
    '| history worse $1 |',
  ],
  [`worse (?:in|with|wearing) (${SPECIAL})`, (m) => `| history worse shoes ${remark(m[1] ?? '')} |`],
  [
    'better (?:when )?(?:barefoot|out of (?:her |his |the )?shoes)',
    (m) => `| history eased by shoes off ${remark(m[0])} |`,
  ],
  [
    '(?:better|eases|eased|settles|relieved) (?:with|by|on|when) (?:resting|rest|sitting)(?! days?)',
    '| history eased by rest |',
  ],
  [
    '(?:settles|eases|goes|stops|better) (?:when|once|as soon as|if) (?:the |her |his )?shoes? (?:is |are |comes? |come )?off',
    '| history eased by shoes off |',
  ],
  [
    '(?<!(?:no|not|without|any) )(?:(?:sudden|recent|big) )?(?:jump|increase|rise|step up) in (?:her |his |the )?(mileage|training)|(?<!(?:no|not|without|any) )(?:ramped up|upped|increased|doubled) (?:her |his |the )?(mileage|training)(?= ,| ;|$| and)',
    (m) => `| history trigger ${(m[1] ?? m[2]) === 'mileage' ? 'mileage' : 'more training'} ${remark(m[0])} |`,
  ],
  // What the operation may bring: spoken of, and not found.
  [
    `(consented|consent (?:given|taken|signed|obtained)|consents)(?: (?:for|to|with|including|understands))?(?: ,)?(?: (?:the )?risks?(?: of)?)?(?: ,)? (${RISKS})(?: (?:discussed|explained|understood|accepted)|(?= ;|$| \\n| \\|| day case| plan))`,
    (m) => `| consent given ${remark((m[2] ?? '').replaceAll(' ,', ','))} |`,
  ],
  [
    `(?:risks?|complications|warned)(?: (?:of|about|include|including|discussed|explained))*(?: ,)? (${RISKS})(?: (?:all )?(?:discussed|explained|understood|accepted)|(?= ;|$| \\n| she | he | patient ))`,
    () => `${COMPLETE_MARK}spoken`,
  ],
  // What else follows a consent is of it.
  ['consented(?! (?:;|today|\\||\\n)|$)', 'consenting'],
  // A quality before a sign that follows a time is of the sign, and a place before a test that is named again is of the second.
  [
    `(?<=\\d ${TIME} )(?=(?:dorsal|plantar|marked|mild|slight|moderate) (?:swelling|tenderness|redness|callus|bruising)(?: |$))`,
    '|',
  ],
  [
    `(?:click|mulders)(?: (?!no |not |web )[a-z\\d]+){1,3} (?=(?:web [1-4]|${NTH}) (?:click|mulders)(?: |$))`,
    (m) => `${m[0]}| `,
  ],
  // How it feels, and what is over.
  [
    `(?<=pain (?:[^ ,;|]+ ){0,6})(?:it )?(feels? (?:just )?like (?:(?:she is |he is |she's |he's )?(?:walking|standing|stepping|treading) on )?(?:an? )?${LUMP})`,
    (m) => remark(m[1] ?? ''),
  ],
  [
    `(?:it |she |he )?feels? (?:just )?(?:like )?(?:(?:she is |he is |she's |he's )?(?:walking|standing|stepping|treading) on )?(?:an? )?${LUMP}`,
    () => `${COMPLETE_MARK}felt`,
  ],
  [
    `(?<!(?:not|never|until|once|if|when|no|nearly|almost) )(burning|numbness|tingling|swelling|redness|bruising|night pain|rest pain|shooting pain) (?:has |have |is |are |now |all |completely )*(?:gone|resolved|disappeared|gone away)(?= ,| ;|$|\\n)`,
    'no $1',
  ],
  [
    '(?:more|a bit more) (sore|painful|swollen|stiff) (?:since|since then|since yesterday)(?= ,| ;|$)',
    (m) => `| history course worse ${remark(m[0])} |`,
  ],
  ['on (?:long|longer|short) (?:walks?|runs?|hikes?|drives?|days?)', (m) => remark(m[0])],
  [
    'pain (?:is |still )?(?:much |about |just )?(?:the same|unchanged|no different)(?: as before)?(?= ,| ;|$|\\n| \\|)',
    (m) => `| history course unchanged ${remark(m[0])} |`,
  ],
  [
    '(?:pain )?(worse|better) since (?:the |her |his )?((?:last )?(?:injection|visit|operation|surgery|review|fall)|then|christmas|last week|last month)(?= ,| ;|$|\\n| \\|)(?<!(?:not|no|if|any|was) (?:worse|better) since .*)',
    (m) => `| history course ${m[1]} ${remark(`since ${m[2]}`)} |`,
  ],
  [
    "(?<=(?:^|[,;|\\n] ))(?:not keen on|does not want|doesn't want|would rather avoid) (?:surgery|an operation|any surgery)(?= ,| ;|$|\\n| \\|)",
    '| declines surgery |',
  ],
  [
    '(?<!(?:not|never|cannot|could|only) )(?:can )?walks? (\\d+) ?(?:k|km|kilometres)(?= ,| ;|$|\\n| \\|| no| without| pain)(?! (?:before|until))',
    '| history walking distance $1 km |',
  ],
  [
    '(?:told|advised|asked) to (?:keep (?:it|the foot) (?:up|elevated)|elevate(?: it| the foot)?)(?= ,| ;|$|\\n| and| \\|)',
    '| plan elevation |',
  ],
  [
    'antibiotics? started(?: (by (?:her |his |the )?gp|yesterday|today))?(?= ,| ;|$|\\n| \\|)',
    (m) => `| history antibiotic ${remark(m[1] ? `started ${m[1]}` : 'started')} |`,
  ],
  [
    '(?:may|can) drive (from (?:week \\d+|\\d+ weeks|next week)|after \\d+ weeks|once out of (?:the )?boot)',
    (m) => `| plan may drive ${remark(m[1] ?? '')} |`,
  ],
  [
    '(?<!not )back (?:at|to) work (since (?:[a-z]+)|\\d+ (?:days|weeks|months) ago)(?= ,| ;|$|\\n| \\|)',
    (m) => `| history back at work ${remark(m[1] ?? '')} |`,
  ],
  [
    "(?:(?:she is|he is|she's|he's|very|really|quite) )*(?:satisfied|happy|pleased|delighted)(?: with (?:the |her |his )?(?:result|outcome|toe|foot|progress))?(?= ,| ;|$|\\n)|would do it again",
    () => `${COMPLETE_MARK}well`,
  ],
  // Advice and days that the language has no place for.
  [
    `(?:told|explained|reassured)(?: (?:her|him))?(?: that)?(?: the)? (?:block|numbness|swelling|bruising|stiffness|scar) (?:can|may|will|often|takes?|take) (?:linger|last|persist|settle|improve|soften|go down|time|weeks|months|a while)(?: (?:slowly|for (?:a while|weeks|months|some time)|up to \\d+ (?:weeks|months)))?`,
    () => `${COMPLETE_MARK}advice`,
  ],
  [
    `(?:surgery |operation |theatre )?date (?:is |set |booked |given |agreed )*(?:for |in |on )?(?:the |early |late |mid )?(?:spring|summer|autumn|winter|january|february|march|april|may|june|july|august|september|october|november|december|next month|new year)(?! (?:if|only|unless|was|cancelled))`,
    () => `${COMPLETE_MARK}date`,
  ],
  [`keeps? (?:the |her |his )?(?:${DAY}|next|follow up|clinic) appointment`, () => `${COMPLETE_MARK}appointment`],
  [
    `(?:taking|takes|on) (ibuprofen|naproxen|diclofenac) ((?:which is |is |and that is )?enough|which holds it|with good effect)(?= ,| ;|$|\\n| told| no| \\||\u00a7| ${COMPLETE_MARK})`,
    (m) => `| tried ${m[1]} ${remark(m[2] ?? '')} |`,
  ],
  // Work.
  [
    `(?<=(?:^|[;\\n] ))(?:(?:works as|is|occupation|job)(?: an?)? |an? )?(${JOBS})(?: ,)?(?: (${ON_FEET}))?(?= ,| ;|$| gradual| pain| with| \\n| \\d| forefoot| left| right)`,
    (m) => (m[2] ? `| history work on feet ${remark(`${m[1]}, ${m[2]}`)} |` : `| history work ${remark(m[1] ?? '')} |`),
  ],
  [`(?:works as|working as) (?:an? )?(${JOBS})`, (m) => `| history work ${remark(m[1] ?? '')} |`],
  ['(?:has an? )?(?:desk|office) (?:job|work|based)', '| history work sitting |'],
  // Smoking, and the pill.
  [
    '(?<=smok(?:er|es|ing)[^;\\n]*?)(?:, )?(?:and )?(?:told|advised|asked|urged|counselled|must|needs|encouraged)(?: her| him)? to (?:stop|quit|give up)(?: smoking)?',
    '| plan smoking cessation |',
  ],
  ['not (?:on|taking) the (?:contraceptive )?pill', '| history no contraceptive pill |'],
  [
    `(?<!(?:not|off|no longer|stopped|was|previously|came|never) )(?:she is |she's |is )?(?:on|takes|taking) the (?:combined |contraceptive |oral contraceptive )?pill(?! (?:until|before|when|in the past))`,
    '| history contraceptive pill |',
  ],
  // A knock.
  [
    `(?<!(?:not|no|never|nearly|denies|didn't|if|almost) )(?:(?:she|he) )?(?:took a (?:knock|bang)|knocked (?:it|the toe|her toe|his toe)|banged (?:it|the toe)|stubbed (?:it|the toe|her toe|his toe|the ${NTH} toe))(?: (?:on|against|into) (?:the|a|her|his) [a-z]+)?(?: (?:last night|yesterday|this morning|on ${DAY}|last week|\\d+ (?:days|weeks|months) ago))?(?= ,| ;|$| more| pain| and| no| since)`,
    (m) => `| history injury ${remark(m[0].replace(/^(?:she|he) /, ''))} |`,
  ],
  [
    `(${STOPPED}) (?:was )?(?:stopped|held|paused) (\\d+ (?:days|weeks) (?:ago|before)|yesterday|on ${DAY}|last week)(?! (?:restart|re|last|previous))`,
    (m) => `| plan stop ${m[1]} ${remark(`stopped ${m[2]}`)} |`,
  ],
  [
    'stop smoking (?:for )?((?:\\d+ weeks )?(?:before|prior to)(?: (?:surgery|operation))?)(?= ,| ;|$|\\n| \\|)',
    (m) => `| plan smoking cessation ${remark(m[1] ?? '')} |`,
  ],
  [
    `(?:she |he |patient )?(?:wants|prefers|would like|would rather|elects|chose) to wait(?: and see)?${ENDS}`,
    '| patient wants to wait |',
  ],
];
