import { NUM, type Phrase, remark, TIME } from './phrase.ts';

export const HISTORY: readonly Phrase[] = [
  ['plantar plantar', 'plantar'],
  ['(?<=onset [^,;]*|ago )without (?:any )?(?:injury|trauma)', '| no injury |'],
  ['pain (?:is )?(?:felt|located|localised|mainly|mostly) (?=plantar|dorsal)', 'pain '],
  ['worse (?:in|with) (?:thin soled|thin|tight|narrow|hard|flat) shoes', 'worse shoes'],
  [
    'pain (?:is |was )?(\\d+/10) (after (?:a |the |her |his )?[a-z]+(?: day)?) ,? ?(?:and |but )?(\\d+)(?:/10)? at rest',
    (m) => `| pain ${m[1]} ${remark(m[2] ?? '')} | pain ${m[3]}/10 rest |`,
  ],
  [
    'pain (?:has |is )?(?:gone |come |dropped |went |fallen |improved )?(?:(?:down )?from|down) (\\d+)(?:/10)? (?:down )?to (\\d+)(?:/10)?',
    '| pain $2/10 was $1/10 |',
  ],
  ['pain (?:is )?(?:now )?(\\d+)(?:/10)? (?:now )?(?:down|improved) from (\\d+)(?:/10)?', '| pain $1/10 was $2/10 |'],
  [
    '(?:it |this |the toe )?(?:hurts|is sore|is painful) (?:at|on|with|when) (?=push|running|walking|barefoot|standing)',
    '| pain ',
  ],
  ['eased by (?:taking|having) (?:the |her |his )?shoes? off', '| history eased by shoes off'],
  [`burning pain (?=web|in (?:the )?web|(?:right |left )?web)`, 'burning '],
  ['no redness or swelling', '| no redness | no swelling'],
  ['no swelling or redness', '| no swelling | no redness'],
  ['~?(\\d+) out of (?:10|ten)', '$1/10'],
  ['(?:last|latest|most recent) (?=(?:crp|esr|urate|hba1c)(?: |$))', ''],
  ['(?:past|previous) (?:medical )?history(?= )(?! of)', 'history'],
  ['medical history(?= )(?! of)', 'history'],
  ['(crp|esr|urate|hba1c) (?:was|is|of|came back at|at)(?: about)? (?=\\d)', '$1 '],
  [
    `no (?:known |personal |past |previous )?history of (?=(?:inflammatory|rheumatoid|gout|diabetes|psoriasis|clots?|dvt|injury|trauma))`,
    'no ',
  ],
  ['worse (?:at|by|towards) the end of (?:a|the|her|his) (?:shift|day|working day|long day)', 'worse end of day'],
  ['(?:mainly|mostly|especially|particularly) (?=plantar|dorsal)', ''],
  ['(?:mostly |mainly )?on (?:the )?top of the toe', 'dorsal'],
  [
    `(?:who )?(?:presents with|presenting with|comes (?:in )?with|is here with|who has had|has had|complains of|complaining of|reports|with(?= ~?\\d+ ${TIME} of)) (?=(?:~?\\d+ ${TIME} of )?(?:right |left )?(?:pain|soreness|forefoot pain)(?: |$))`,
    '| ',
  ],
  ['worse (?:in|with|on) bare feet', 'worse barefoot'],
  [
    '(?<=worse [^,;|]*?)(?:and )?(?:when )?(?:going |walking |climbing )?(?:up and down|up|down|on)(?: the)? (?:stairs|steps|hills)',
    'stairs',
  ],
  [
    `(?:it |this |pain )?(?:came on|started|began)(?: (suddenly|gradually))? (after (?:she |he )?(?:stubb\\w+|twist\\w+|hyperextend\\w+|fall\\w*|fell|tripp\\w*|kick\\w+|land\\w+|jump\\w+)(?: (?!no |and |she |he )[a-z]+){0,5}?)(?= ,| ;|$| no| and| she| he| \\|)`,
    (m) => `| onset ${m[1] === 'gradually' ? 'gradual' : 'sudden'} | injury ${remark(m[2] ?? '')} |`,
  ],
  [
    '(?:visual analogue (?:scale|score)|v a s|vas)(?: (?:is|of|score))* (\\d+)(?:/10)?(?: ,)?( (?:and )?\\d+(?:/10)? at (?:its )?worst)?(?! (?:was|now))',
    (m) => `| pain ${m[1]}/10${m[2] ? ` ${remark(m[2].trim())}` : ''} |`,
  ],
  ['(?:a (?:bit|little) )?stiff (?:first thing|in the mornings?|on waking)', '| stiff in the mornings |'],
  [
    `(?:she|he)(?:'s| has) had (?:this|it|these|the pain|this pain|the problem|this problem|symptoms|trouble)(?: (?:on and off|coming and going))?(?: now)? for (~?\\d+(?:-\\d+)? ${TIME})`,
    '| history symptoms for $1 |',
  ],
  [
    `(?:she|he)(?:'s| has)?(?: had| been having)? (?:trouble|problems|symptoms|issues|bother) (?:with|in|from) (?:the |her |his |that )?(?:(right|left)(?: foot)?|foot|toe|forefoot) for (~?\\d+ ${TIME})`,
    '| history $1 symptoms for $2 |',
  ],
  [`(?:it's |it is |this has |it has |has )?been going(?: on)? for (~?\\d+ ${TIME})`, '| history symptoms for $1 |'],
  ['(?:it |that |this )?burns(?= (?:web|between|in|at|when))', 'burning'],
  ['burning between(?= web)', 'burning'],
  [
    '(?:and )?(?:she |he |\\| )?(?:takes?|taking|has to take) (?:her|his|the) shoes? off(?: and rubs?(?: it)?| and rubbing(?: it)?)?(?: and (?:it|that) (?:goes|settles|eases|helps)| helps| eases it| relieves it)?',
    '| history eased by shoes off |',
  ],
  [
    '(?<![^,;|\n] )(?:it is |(?:the )?toe is )?(?:sore|painful|aching|achy)(?= (?:plantar|head|dorsal|right|left))',
    'pain',
  ],
  [`(?:it |this |the pain |pain |symptoms |problems )?(?:started|began|came on) (~?\\d+ ${TIME}) ago`, 'onset $1 ago'],
  ['(?:she |he )?(?:rates|scores|puts) (?:it|the pain|her pain|his pain) (?:at |as )?(\\d+/10)', 'pain $1'],
  ['pain (?:score |level )?(?:is |of )?(\\d+/10) at (?:its |the )?worst', (m) => `pain ${m[1]} ${remark('at worst')}`],
  [
    'no pain at rest ,? ?(?:and |but )?(?:it is |pain )?(\\d)(?:/10)? (?:on|with|when|after) (standing|walking)',
    '| no rest pain | pain $1/10 $2 |',
  ],
  [
    '(?<=pain (?:[^ ,;]+ ){1,3}),? ?(?:and |but )?(\\d(?:-\\d)?)(?:/10)? after (?:a )?(?:long )?(walk|walking|run|running)',
    (m) =>
      `| pain ${m[1]}/10 ${/walk/.test(m[2] ?? '') ? 'walking' : 'running'} ${remark(m[0].replace(/^.*?after/, 'after'))} |`,
  ],
  [
    "(?:pain |vas |score )(?:was|had been) (\\d+)(?:/10)? ,? ?(?:and |but )?(?:it is |is |it's )?(?:now|today) (\\d+)(?: (?:to|-) (\\d+))?(?:/10)?",
    (m) => `| pain ${m[2]}${m[3] ? `-${m[3]}` : ''}/10 was ${m[1]}/10 |`,
  ],
  [
    'pain (?:is |it is |was |has come )?(?:now |still |down to |back to |at |about |only )+(\\d+)(?:/10)?(?= (?:,|;|and|but|at|with|after|on|no|told|she|he|drawer|swelling|paper|\\||still)|$)',
    '| pain $1/10',
  ],
  [
    'pain before (\\d+/10) ,? ?(\\d+ minutes) (?:after|later|afterwards)(?: it was| was)? (\\d+/10)',
    (m) => `| pain ${m[3]} ${remark(`${m[2]} after`)} was ${m[1]} |`,
  ],
  [
    'pain (?:is |of )?(\\d+/10) (?:at|by|towards) the end of (?:a|the) (?:school |working |work |busy |long )?(?:day|shift)( and \\d+(?:/10)? in the mornings?)?',
    (m) => `pain ${m[1]} end of day${m[2] ? ` ${remark(m[2].trim())}` : ''}`,
  ],
  ['no pain at (rest|night)', 'no $1 pain'],
  ['(?:is |now |completely |entirely )pain free(?: now)?', 'no pain'],
  [`(~?(?:[2-9]|\\d\\d)) (day|week|month|year)`, '$1 $2s'],
  [
    `(?:it |this |that |symptoms |pain )?(?:came on|started|began|has come on) (?:very )?(gradually|slowly|insidiously|suddenly|overnight|acutely)`,
    (m) => `onset ${/^(?:grad|slow|insid)/.test(m[1] ?? '') ? 'gradual' : 'sudden'}`,
  ],
  ['(gradual|sudden|insidious) onset', 'onset $1'],
  [`(?:an? )?(${NUM} ${TIME}) history of (pain|sore|soreness)([^,;\\n]*)`, '$2$3 for $1'],
  [`(?:an? )?history of (pain)([^,;\\n]*? for ${NUM} ${TIME})`, '$1$2'],
  [`(?:for|over) the (?:last|past) (${NUM} ${TIME})`, 'for $1'],
  [`(?<=pain (?:[^ ,;|\\n]+ ){0,5})(?<! for )(${NUM} ${TIME})`, 'for $1'],
  [
    '(?:denies|denied) (?:any )?(?=(?:injury|trauma|fever|fevers|numbness|tingling|burning|diabetes|smoking|night pain|rest pain|locking|swelling|redness))',
    'no ',
  ],
  [
    'no (?:known |specific |particular |obvious |history of |recollection of |recalled )?(?:injury|trauma)(?: to (?:it|the foot|the toe))?',
    'no injury',
  ],
  ['no fevers', 'no fever'],
  ['no (?:temperature|temperatures)', 'no fever'],
  ['no (?:warmth|heat)', 'no heat'],
  [
    "worse (?:when |on |with |for |if )?(?:she's |he's |she is |he is |she |he )?(?:walking |being |going |walks |goes |is )?barefoot(?: on (?:the |a )?(?:(?:kitchen|bathroom|wooden|tiled|hard|stone) )?(?:tiles?|floors?|floorboards|wood|ground))?",
    'worse barefoot',
  ],
  ['worse (?:with |on |when |for |at )?(?:pushing off|push off|toe off)', 'worse push-off'],
  ['worse (?:with |on |when |for )?(?:walking)', 'worse walking'],
  ['worse (?:with |on |when |for )?(?:running)', 'worse running'],
  ['worse (?:at the end of the day|by evening|in the evenings?)', 'worse end of day'],
  ['worse (?:at night)', 'worse night'],
  ['(?<=pain [^,;\n]*)(?:when|on|while|with) (?=barefoot|walking|running|push)', ''],
  ['(?:pushing off|push off)', 'push-off'],
  ['(?<=pain[^,;\n]*) (?:especially|particularly|mainly|mostly) (?=barefoot|walking|running|push)', ' '],
  ['early morning stiffness (?:of |for |lasting )?(?:about )?an hour and a half', 'early morning stiffness 1.5 hours'],
  ['(?:early )?morning stiffness (?:of |for |lasting )?(?:about )?(?:an|one|1) hour', 'early morning stiffness 1 hour'],
  ['(?:early )?morning stiffness (?:of |for |lasting )?(?:about )?half an hour', 'early morning stiffness 30 minutes'],
];

export const BACKGROUND: readonly Phrase[] = [
  // What is taken already is no plan.
  ['(?<=plan [^\\n]*)(?:she |he )?(?:takes|taking|is on) (?=[a-z]+)', '| history '],
  [
    `(?:(?:he|she) )?(?:smokes|smoker|smoking)(?: about| around)? (~?\\d+)(?: cigarettes)?(?: a day| per day| daily)`,
    'smoker $1/day',
  ],
  ["(?:doesn't|does not|doesnt|don't) smoke|non smoker|never smoked|never smoker", 'non smoker'],
  ['(?:gave up|has given up|quit) smoking', 'ex smoker'],
  [
    '(?:she |he )?(?:takes|taking|is on|on) ([a-z]+)(?: and nothing else| only)(?= ,| ;|$| no| and| she| he| now| pin| wire)',
    (m) => `| ${m[1]} ${remark('nothing else')} |`,
  ],
  [
    '(?:on|takes|taking) (?=levothyroxine|ramipril|amlodipine|omeprazole|atorvastatin|simvastatin|a statin|perindopril|lisinopril|losartan|bisoprolol|sertraline|allopurinol|amitriptyline|gabapentin|pregabalin|hrt|metformin|insulin|aspirin|warfarin|apixaban|rivaroxaban|methotrexate|prednisolone|clopidogrel)',
    '',
  ],
  ['no thyroid (?:trouble|problems?)', 'no thyroid disease'],
  [
    "(?:(?:has )?not had|never had|no|hasn't had|has never had) (?:any )?(?:previous )?(?:surgery|operations?|foot surgery)(?: (?:on|to) (?:that|this|the|her|his) foot)",
    'no previous surgery',
  ],
  ['no previous (?:surgery|operations?)(?: (?:on|to) (?:that|this|the|her|his) foot)?', 'no previous surgery'],
  [
    'no (?:known )?(?:drug )?allergies(?: ,)? (?:except|apart from|other than|but|bar)(?: for| to)? (?=(?:penicillin|latex|iodine|nickel|metal|tape|plasters?|elastoplast|codeine|morphine)(?: |$))',
    'allergic to ',
  ],
  ['elastoplast|band ?aids?|sticky plasters?', 'plaster'],
  [
    'no (?:previous |past |history of )?(?:clots?|dvts?|blood clots?|thrombosis|vte)(?= ,| ;|$| no| and| or)',
    'no previous clot',
  ],
  ['no (?:known )?(?:drug )?allergies(?: to anything)?', 'no allergies'],
  ['no (?:d ?v ?t|deep vein thrombosis|clots?)', 'no blood clot'],
  ['hba1c (?:is |of |was )?(\\d{1,2}\\.\\d)(?! ?%)', 'hba1c $1%'],
];
