import { NUM, type Phrase, remark, TIME } from './phrase.ts';

/** Words that say that something was tried, or is planned: the section that the language writes for them. */
export const TREATMENT: readonly Phrase[] = [
  ['(?:foot )?orthotics?|orthoses|shoe inserts', 'insoles'],
  [
    "(?<!not )(?<!never )(?:(?:she|he)(?:'s| has)? )?had (?:(?:a|an|one|some) )?(?=(?:physio|physiotherapy|taping|strapping|insoles?|steroid|cortisone|met dome|met pad)(?: |$))",
    'tried ',
  ],
  ["(?:(?:she|he)(?:'s| has)? )been (?:wearing|using) (?=(?:insoles?|met|pads?|a met|a pad|tape|taping))", 'tried '],
  [
    '(?<!tried )(taping|tape|insoles|met dome|met pad|pads|ibuprofen|physio|physiotherapy) (?:has |have )?(helped a bit|helped a little|helped a lot|helped|did not help|made no difference|did nothing)',
    (m) =>
      `tried ${m[1]} ${/not|no/.test(m[2] ?? '') ? 'no relief' : /bit|little/.test(m[2] ?? '') ? 'helped a bit' : 'helped'}`,
  ],
  ['(?:tape|strap) (?:the|her|his) (?:toe|second toe|2nd toe|2nd)(?: down)?', 'plan tape'],
  ['avoid (high heels|heels|running|impact|barefoot walking|barefoot|jumping)', 'plan avoid $1'],
  [`(?:keep |stay )?off (running|football|sport|impact)(?: for)? (${NUM} ${TIME})`, 'plan no $1 for $2'],
  ['(?:get|do|send for|needs?) (?:an? )?(mri|ultrasound|xray|ct)(?: scan)?', 'plan $1'],
  ['(?:list|add)(?: her| him)? (?:for|to the list for) (?:surgery|theatre|operation)', 'plan listed for surgery'],
  [
    `(tape|taping|strapping|insole|stiff insole|boot|met pad|pad)(?: and| then)? review (?:in )?(${NUM} ${TIME})`,
    '| plan $1 | plan review in $2',
  ],
  ["(?:so far )?(?:she|he)(?:'s| has)? (?:been (?=taping))", 'tried '],
  ["(?:she|he)(?:'s| has)? (?:also |already )?(?:tried|been using|been wearing|used)(?= (?!to))", 'tried'],
  ["(?:she|he)(?:'s| has)? (?:been |was )?(?:doing|done) (?=(?:calf |the )?stretch|exercises|physio)", 'tried '],
  [
    "(?<=tried [^,;\n]*)(?:and )?(?:she |he )?(?:reckons|feels|says|thinks|estimates) (?:it is |it's )?(~?50%|half|about half|a third|two thirds|[0-9]+%) better",
    (m) => remark(`${m[1]} better`),
  ],
  ['without (?:any )?(?:relief|benefit|improvement|help|effect)', 'no relief'],
  ['with (?=(?:no|some|partial|good) (?:relief|benefit|effect))', ''],
  [
    "(?<=tried [^,;\n]*)(?:which |that |but |and )?(?:it |they )?(?:didn't help|did not help|hasn't helped|did nothing|made no difference|no difference)",
    'no relief',
  ],
  [
    '(?<=tried [^,;\n]*)(?:which |that |and )?(?:it |they )?(?:has |have )?helped (?:a bit|a little|somewhat|slightly)',
    'helped a bit',
  ],
  ['(?<=tried [^,;\n]*)(?:which |that |and )(?:it |they )?(?:has |have )?helped', 'helped'],
  ['(?:met(?:atarsal)? )?(?:dome|domes|dome pad)', 'met dome'],
  ['(?:so |and |okay |ok )?(?:the )?(?:plan is|plan will be|plan to|plan for)(?: to)?', 'plan'],
  [
    '(?:so |and )?(?:carry on|continue|keep on|keep|keep going|persist)(?: with)?(?: the| her| his)? (?=(?:taping|tape|strapping|pad|pads|met|metatarsal|insole|insoles|insert|boot|stretch|exercises|physio))',
    'plan ',
  ],
  [
    "(?:so |and )?(?:i'll|i will|we'll|we will|i'd like to|let's|lets|i am going to|i'm going to|we're going to) (?=(?:tape|taping|strap|review|see|refer|request|order|arrange|book|get|start|stop|use))",
    'plan ',
  ],
  [
    '(?:and )?(?:start|begin|commence) (?=(?:toe exercises|taping|tape|strapping|range of motion|stretch|exercises|physio))',
    'plan ',
  ],
  ['plan range of motion(?: exercises)?', 'plan exercises range of motion'],
  ['plan (?:taping|tape|strapping|to tape)(?: the)?', 'plan tape'],
  [
    `(?:and )?(?:plan )?(?:to )?(?:review|see|follow up|come back|back|recheck)(?: (?:her|him|them|the patient|again|back|me|here|in clinic|on))* in (${NUM} ${TIME})`,
    'plan review in $1',
  ],
  [`(?:and )?(?:plan )?(?:to )?(?:review|recheck|follow up) (${NUM} ${TIME})`, 'plan review in $1'],
  [
    'plan (?:request|order|arrange|book|get|organise|organize) (?:an? |for an? )?(?=(?:weight bearing )?(?:mri|ultrasound|x-rays?|xray|film|ct))',
    'plan ',
  ],
  [
    '(?<!plan )(?:request|order|arrange|book|organise|organize) (?:an? )?(?=(?:urgent )?(?:mri|ultrasound|x-rays?|xray|ct))',
    'plan ',
  ],
  ['(?:so |and )?bloods (?:for|including)', 'plan bloods'],
  ['anti ccp|anti c c p', 'anti-ccp'],
  ['(?<=plan bloods [^;\n]*) ,', ''],
  [`no (running|jumping|football|sport|impact)(?: for)? (${NUM} ${TIME})`, 'plan no $1 for $2'],
  ['(?<=plan [^,;\n]*)in (?:a |an )?(?:trainers?|sneakers?|runners|normal shoes?|ordinary shoes?)', '| plan trainers'],
  ['stiff soled? shoes?|stiff sole', 'stiff sole'],
  ['stiff shoes?', 'stiff shoe'],
  [
    '(?:go to|go into|into|back into|move to|change to|wear) (?:an? )?(?:sneakers?|trainers?|runners|normal shoes?|ordinary shoes?)',
    'plan trainers',
  ],
  [
    "(?:i'll |i will |to |and )?refer(?:ral)?(?: her| him| them)?(?: to(?: the)?)? (rheumatology|podiatry|physiotherapy|orthotics|vascular)",
    'plan refer $1',
  ],
  ['plan(?: \\|)? plan', 'plan'],
  ['(?:start|begin|do|some) strengthening(?: exercises| work)?', 'plan physiotherapy strengthening'],
  ['(?:and|then) plan', '| plan'],
];
