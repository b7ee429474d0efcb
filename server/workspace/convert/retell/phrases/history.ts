import { NUM, type Phrase, remark, TIME } from './phrase.ts';

export const HISTORY: readonly Phrase[] = [
  [
    '(?<![^,;|\n] )(?:it is |(?:the )?toe is )?(?:sore|painful|aching|achy)(?= (?:plantar|head|dorsal|right|left))',
    'pain',
  ],
  [`(?:it |this |the pain |pain |symptoms |problems )?(?:started|began|came on) (~?\\d+ ${TIME}) ago`, 'onset $1 ago'],
  ['(?:she |he )?(?:rates|scores|puts) (?:it|the pain|her pain|his pain) (?:at |as )?(\\d+/10)', 'pain $1'],
  ['pain (?:score |level )?(?:is |of )?(\\d+/10) at (?:its |the )?worst', (m) => `pain ${m[1]} ${remark('at worst')}`],
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
  [`(?<=pain (?:[^ ,;\\n]+ ){0,5})(?<! for )(${NUM} ${TIME})`, 'for $1'],
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
    "worse (?:when |on |with |for |if )?(?:she's |he's |she is |he is )?(?:walking |being |going )?barefoot(?: on (?:the )?(?:tiles?|hard floors?|floors?|tiled floors?|floorboards|wood))?",
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
  [
    `(?:(?:he|she) )?(?:smokes|smoker|smoking)(?: about| around)? (~?\\d+)(?: cigarettes)?(?: a day| per day| daily)`,
    'smoker $1/day',
  ],
  ["(?:doesn't|does not|doesnt|don't) smoke|non smoker|never smoked|never smoker", 'non smoker'],
  ['(?:gave up|has given up|quit) smoking', 'ex smoker'],
  [
    '(?:on|takes|taking) (?=metformin|insulin|aspirin|warfarin|apixaban|rivaroxaban|methotrexate|prednisolone|clopidogrel)',
    '',
  ],
  ['no thyroid (?:trouble|problems?)', 'no thyroid disease'],
  [
    "(?:(?:has )?not had|never had|no|hasn't had|has never had) (?:any )?(?:previous )?(?:surgery|operations?|foot surgery)(?: (?:on|to) (?:that|this|the|her|his) foot)",
    'no previous surgery',
  ],
  ['no previous (?:surgery|operations?)(?: (?:on|to) (?:that|this|the|her|his) foot)?', 'no previous surgery'],
  ['no (?:known )?(?:drug )?allergies(?: to anything)?', 'no allergies'],
  ['no (?:d ?v ?t|deep vein thrombosis|clots?)', 'no blood clot'],
  ['hba1c (?:is |of |was )?(\\d{1,2}\\.\\d)(?! ?%)', 'hba1c $1%'],
];
