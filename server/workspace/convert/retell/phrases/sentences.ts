import { distances, holds } from '../turning.ts';
import { type Phrase, RAY, RAYS, remark, THE } from './phrase.ts';
import { MEASURE } from './tried.ts';

const DAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
const ENDS = '(?= ,| ;|$| \\|| \\n)';
/** Findings that are asked for one by one, and answered with yes or no. */
const ASKED =
  '(?:tender|tenderness|swelling|swollen|redness|bruising|numbness|tingling|click|callus|warmth|diabetes|diabetic)';
const PLACE = '(?: (?:plantar|dorsal|medial|lateral))';
const RESPONSE: readonly (readonly [said: string, is: string])[] = [
  ['good (?:relief|benefit|effect|help)', 'good relief'],
  ['(?:some|partial|a little|a bit of) (?:relief|benefit|effect|help|improvement)', 'some relief'],
  ['(?:no (?:relief|benefit|effect|help|good|use|difference|improvement)|useless|not? helpful|unhelpful)', 'no relief'],
];

/** Is the last pain that was named of another part? */
const isElsewhere = ({ input = '', index = 0 }: RegExpMatchArray): boolean =>
  /(?<![^ ])(?:knee|hip|back|shoulder|hand|wrist|ankle|heel|calf|leg|neck|head|other)(?![^ ])/.test(
    input.slice(Math.max(0, input.lastIndexOf('pain', index) - BEFORE_PAIN), index),
  );
/** So many letters before a pain may name its part. */
const BEFORE_PAIN = 20;

/** Plain sentences: what is said around a finding, and answers that are parted from it. */
export const SENTENCES: readonly Phrase[] = [
  // Headings.
  [
    `(?:what (?:she|he)(?:'s| has) tried(?: so far)?|(?:past|previous|earlier) treatments?|treatment to date)(?: (?:for|on) (?:the )?(?:(right|left)(?: foot)?|toe|foot|this))?(?= ,| ;| \\n| has| had| tape| physio| insoles|$)`,
    (m) => `| tried ${m[1] ?? ''}`,
  ],
  // Asked, and answered.
  [`(?<=(?:^|[,;|\\n] ))(${ASKED}) yes(${PLACE}*(?: and${PLACE})?)${ENDS}`, '$1$2'],
  [`(?<=(?:^|[,;|\\n] ))(${ASKED})(${PLACE}*) yes${ENDS}`, '$1$2'],
  [`(?<=(?:^|[,;|\\n] ))(${ASKED})(${PLACE}*) no${ENDS}`, (m) => `no${m[2] ?? ''} ${m[1]}`],
  [
    `(hallux valgus|bunion|swelling|flat foot) , (mild|moderate|marked|severe)(?= ,| ;|$| i'd say)(?: i'd say)?`,
    '$1 $2',
  ],
  // What a measure did, after a comma.
  ...RESPONSE.map(
    ([said, is]): Phrase => [
      `(?<=${MEASURE}(?: for ~?\\d+ (?:days|weeks|months))? )(?:, )?(?:with |and got |but |and )?(?:${said})${ENDS}`,
      is,
    ],
  ),
  // Why a test was not done.
  [
    `(not done|unable|not possible|not tested|not examined)(?: today)? ((?:because of|due to) (?:the |her |his )?(?:pain|skin|swelling|dressing|plaster|wire|pin|wound|bruising)|for obvious reasons)`,
    (m) => `${m[1]} ${remark(m[2] ?? '')}`,
  ],
  [
    `(?<=(?:drawer (?:[^;|]* )?\\d|\\d drawer) )(?:, )?with (?:a )?reproduction of (?:her|his|the) (?:usual )?(?:pain|symptoms)`,
    'painful',
  ],
  [
    `(?<=drawer (?:grade )?\\d )(?:, )?(?:and )?(?:it's |it is |that's |which is )(?:very |quite |really )?(?:sore|painful)(?= ,| ;|$| \\|)`,
    'painful',
  ],
  // The toe.
  [
    `(?:sits|is|lies|stands|rests) (?:just |slightly |a little |a bit )?off the (?:ground|floor)(?: by)?(?: (?:about )?(~?\\d+(?:\\.\\d)? mm))?(?: (?:still|in stance))?`,
    'lifted $1',
  ],
  ['lifted (?:in stance|on standing|when standing|while standing)', 'lifted'],
  [
    `(?:drifts|drifting|deviates|leans|points|angles) (?:over )?(?:to|towards?) (?:the )?(?:big toe|hallux|great toe)(?: by)?(?: (~?\\d+(?:-\\d+)?°))?`,
    'deviation medial $1',
  ],
  [
    `(?:and )?(?:she |he )?(?:can't|cannot|can not|couldn't|unable to) (?:hold|grip|grab) (?:on to )?(?:the |a )?(?:piece of )?paper (?:with|under|between) ${THE}(${RAY})(?: toe)?`,
    '| $1 paper pulls-out |',
  ],
  [
    `(?<=paper [^;\\n]*)(?:the )?(${RAYS})(?: toes?)?(?: both| all)? holds?(?: it)?(?: well| fine| ok)?${ENDS}`,
    '| $1 paper holds |',
  ],
  ['paper(?: pull out)?(?: test)? (?:failed|fails)', 'paper pulls-out'],
  [`toe deviation (medial|lateral)${ENDS}`, 'deviation $1'],
  ['(swelling|tenderness|redness) (?:is )?still (mild|moderate|marked|severe)', '$1 $2'],
  // How much it hurts.
  [
    `(?<=pain [^\\n]*)(?:at )?(?:its |the )?worst (?:is )?(\\d+)/10`,
    (m) => (isElsewhere(m) ? undefined : `| pain ${m[1]}/10 ${remark('at worst')} |`),
  ],
  [
    `(?<=pain [^\\n]*)(?:on )?average (?:is )?(\\d+)(?:/10)?${ENDS}`,
    (m) => (isElsewhere(m) ? undefined : `| pain ${m[1]}/10 ${remark('average')} |`),
  ],
  [
    `(?<=pain [^\\n]*[,;] )(?:and )?(?:at rest (\\d+)|(\\d+) at rest)(?:/10)?${ENDS}`,
    (m) => (isElsewhere(m) ? undefined : `| pain rest ${m[1] ?? m[2]}/10 |`),
  ],
  [
    `(?<=pain (?:[^,;|]+ ){0,4})since ((?:last |about |early |late )?(?:january|february|march|april|may|june|july|august|september|october|november|december|christmas|easter|spring|summer|autumn|winter))${ENDS}`,
    (m) => remark(`since ${m[1]}`),
  ],
  // Images.
  [
    `(?<=(?:mri|ultrasound)[^\\n]*)(${RAY})(?: mtp)? (?:plantar )?plate (full|partial|complete)(?:[- ]thickness)? tear`,
    '| $1 tear $2',
  ],
  [`(?<=tear [^;|]*)(lateral|medial|central) (2 thirds|third|1 third)`, (m) => `${m[1]} ${remark(m[2] ?? '')}`],
  [`(?<=tear [^;|]*)with (~?\\d+(?:\\.\\d)? mm) of retraction`, (m) => `${remark(`${m[1]} of retraction`)} |`],
  ['no fracture (?:line|seen|visible)(?: or [a-z]+)?(?= |$)(?! or)', 'no fracture'],
  [
    'squeeze (?:is |was )?(positive|negative) (?:in )?(?:all (?:4|the webs|webs|spaces|of them|the spaces)|throughout)',
    '| webs 1-4 squeeze $1 |',
  ],
  [
    '(?:mulders|click) (?:is |was )?(positive|negative) (?:in )?(?:all (?:4|the webs|webs|spaces|of them|the spaces)|throughout)',
    '| webs 1-4 click $1 |',
  ],
  [
    `(?:10 gram |ten gram )?monofilament (?:is )?(?:felt at|felt in|picks up|feels|sensed at) (\\d+/10)(?: sites| points)?`,
    'monofilament $1',
  ],
  // What the speaker did, and when to come.
  [
    `(?:i've |i have |we've |we have )(?:given|fitted|issued|prescribed|supplied|put)(?: her| him)?(?: in| into| with| on)?(?: an?| some| the)? (?=${MEASURE}(?: |$))`,
    '| plan ',
  ],
  [
    `(?:and |so )?(?:she|he) (?:should|must|is to|needs to|has to) avoid (heels|high heels|running|impact|barefoot walking|jumping|sport)(?: (?:and|or) (heels|high heels|running|impact|barefoot walking|jumping|sport))?`,
    (m) => `${[m[1], m[2]].flatMap((each) => (each ? [`| plan avoid ${each}`] : [])).join(' ')} |`,
  ],
  [
    `(?:and |i'll |we'll )?(?:review|see)(?: (?:her|him|them))?(?: again| back)? ((?:on |next |this )?${DAY}|tomorrow|in the morning|the day after tomorrow)(?: for (?:an? )?(wound check|stitches|review|dressing change))?`,
    (m) => `| plan review ${remark([m[1], m[2]].filter((each) => each).join(' for '))} |`,
  ],
  [
    `(?:keep|leave) (?:the |her |his )?(post ?op shoe|sandal|boot|splint|dressing)(?: on)?(?= ,| ;|$| heel| and| until| \\|)`,
    '| plan $1',
  ],
];

const FEEL = "(?:cannot|can't|can not|couldn't|could not|unable to)";
const OFTEN = '(?:(?:\\d|once|twice|to|two) (?:times )?(?:a|per|each) day|daily|every day)';

/** Is a time after the operation later than the one that the note opens with? Else it may tell of what was done. */
function isAhead({ input = '', index = 0, 1: count, 2: unit }: RegExpMatchArray): boolean {
  const now = /(\d+) (days?|weeks?) (?:ago|after|out|post|from|since|on)/.exec(input.slice(0, index));
  const daysOf = (number = '', word = '') => Number(number) * (word.startsWith('week') ? 7 : 1);
  return now !== null && daysOf(now[1], now[2]) < daysOf(count, unit);
}

/** What is said in passing beside a finding, kept as a remark; and things that are named the other way round. */
export const ASIDES: readonly Phrase[] = [
  [
    `(?<=[a-z\\d] )which (?!is (?:tender|painful|sore|fixed|flexible|reducible)|reproduces|hurts|helped|gave|has|made|shows?)([a-z'-]+(?: [a-z'-]+){0,6})(?= ,| ;|$| \\|)`,
    (m) =>
      distances(m[0]) || holds(m[0]) || /(?<![^ ])(?:right|left|second|third|fourth|toe|foot)(?![^ ])/.test(m[0])
        ? undefined
        : remark(m[0]),
  ],
  [
    `(?<=(?:swelling|tender|tenderness|redness|callus|pain)(?: plantar| head)? (?:(?:right|left) )?(?:the )?(?:${RAYS})(?: (?:toe|mtp|head|heads|joint))? )only(?= ,| ;|$| \\|| (?:no|drawer|swelling|tender|paper|purchase|mild|right|left|squeeze|pulses))`,
    () => `${remark('only')} |`,
  ],
  [
    `(?<=drawer (?:grade )?\\d )(?:and )?(?:she|he) ((?:nearly |almost )?(?:jumped|came|went|hit) (?:off the (?:couch|bed|table)|through the roof|the roof))`,
    (m) => remark(m[1] ?? ''),
  ],
  [`(?<=(?:drawer|grade)(?: is| a| grade)* \\d )(without (?:any )?symptoms)`, (m) => remark(m[1] ?? '')],
  [`(stretches|stretching|exercises) (${OFTEN})`, (m) => `${m[1]} ${remark((m[2] ?? '').replace(/^to /, '2 '))}`],
  ['(?:with|under) (?:an? )?(ankle block) (with sedation)', (m) => `| ${m[1]} ${remark(m[2] ?? '')} |`],
  [
    'penicillin allergy (?:gives|causes|with|gave) (?:her |him )?(?:an? )?(rash|hives|swelling)',
    (m) => `| allergic to penicillin ${remark(m[1] ?? '')} |`,
  ],
  [`(tender|tenderness)(?: (?:of|at|over|on))? (?:the )?(${RAYS})(?: mtp)? plantar plates?`, '$1 plantar plate $2'],
  ['(?:the |all the )?mtps (?:are )?(?:all )?(?:not|non) tender', '| 2nd-5th not tender |'],
  // What gives way, and what does not.
  [
    `(?:it |which |the toe |and )?(?:reduces|corrects|comes straight) ((?:when i (?:push|press) (?:it|on it)(?: down)?|by hand|passively|manually|on the push ?up(?: test)?|with (?:gentle )?pressure))`,
    (m) => `| reducible ${remark(m[1] ?? '')} |`,
  ],
  [
    `(?:it |which |and |but )*(?:doesn't|does not|won't|will not) (?:reduce|correct)(?: (by hand|passively|manually))?(?= ,| ;|$| so| and| drawer| \\|)`,
    (m) => `| not reducible ${m[1] ? remark(m[1]) : ''} |`,
  ],
  [`(?:so )?(?:a )?grade (\\d) on (?:the )?drawer(?: test)?`, 'drawer $1'],
  [`<([2-5]) and ([2-5]) (?:met|metatarsal) heads?`, (m) => `head ${ordinalOf(m[1])} and ${ordinalOf(m[2])}`],
  [
    `(?<=callus )under (?:the )?([2-5]) and ([2-5]) (?:met|metatarsal) heads?`,
    (m) => `head ${ordinalOf(m[1])} and ${ordinalOf(m[2])}`,
  ],
  [
    '(purchase|grip) (good|normal|strong|absent|weak|reduced) (?:in |on )?(?:all|the) (?:the |of the )?(?:lesser )?toes',
    '| 2nd-5th purchase $2 |',
  ],
  [
    'squeeze (?:test )?across (?:the )?(?:met heads|metatarsal heads|metatarsals|forefoot|mtps|toes) (?:is |was )?(painful|positive|sore|negative)',
    (m) => `| compression ${m[1] === 'sore' ? 'painful' : m[1]} |`,
  ],
  [
    'squeeze (?:test )?(?:is |was )?(?:positive|reproduces (?:it|this|the pain|her pain|his pain|the symptoms))( with (?:an? )?(?:palpable |painful )?(?:click|mulders))? (?:in|of) (?:the )?(web [1-4])(?! (?:and|or))( with (?:an? )?(?:palpable |painful )?(?:click|mulders))?',
    (m) => `| ${m[2]} squeeze positive |${m[1] || m[3] ? ` ${m[2]} click positive |` : ''}`,
  ],
  // Vessels.
  [
    `(?:i )?${FEEL} (?:feel|palpate|find) (?:the |a |her |his )?(dorsalis pedis|dp|posterior tib(?:ial)?|pt)(?: pulse)?(?= ,| ;|$| \\|| posterior| dorsalis| cap| and| the)`,
    (m) => `| ${/^d/.test(m[1] ?? '') ? 'dp' : 'pt'} not felt |`,
  ],
  ['both pulses (?:are |were )?(palpable|present|good|fine|normal|felt)', 'pulses $1'],
  // After and at an operation.
  [
    `(?:k-wire|wire|pin) (?:in|of|through) (?:the )?(${RAY})(?: toe)? (?:is )?(?:still )?(?:in place|in situ|intact|secure)`,
    '| $1 pin in situ |',
  ],
  [
    `(?:k-wires?|wires?|pins?) (?:to come |comes |coming )?out (?:at|in) (\\d+) (days|weeks)`,
    (m) => (isAhead(m) ? `| plan pin removal in ${m[1]} ${m[2]} |` : undefined),
  ],
  [
    `numb(?:ness)? (?:on|over|along) the (medial|lateral|inner|outer|inside|outside)(?: (?:side|border|edge))? of ${THE}(${RAY})(?: toe)?`,
    (m) => `| ${m[2]} numb ${remark(`${m[1]} side`)} |`,
  ],
  [
    'pin sites? (?:is |are |look |looks )?(?:quiet|fine|good|healthy|settled)',
    (m) => `pin site clean ${remark(m[0].split(' ').at(-1) ?? '')}`,
  ],
  [
    `(?<=(?:after|since|following|post|from) )(?:surgery|operation|procedure) (?:on |to )?(?:the )?(?=(?:right|left)?(?: ?(?:${RAY}|second|third)))`,
    '',
  ],
  [
    'with (?:to|two|2|3|4) ((?:non absorbable|absorbable|braided) )?sutures',
    (m) => `| suture ${m[1] ? remark(m[1].trim()) : ''} |`,
  ],
  ['drawer 0 (afterwards|after repair|after the repair|after that)', (m) => `| drawer 0 ${remark(m[1] ?? '')} |`],
  [
    `pip fusion (?:of |to )?(?:the )?(${RAY})(?: toe)?`,
    (m) =>
      /^(?:\| )?(?:operation|procedure|op note|surgery)/.test(m.input ?? '') ? `| ${m[1]} pip fusion |` : undefined,
  ],
  // Two findings of one place.
  [
    `(?<!(?:no|without|not|any|some) )(swelling|tenderness|redness|bruising|warmth) and (swelling|tenderness|redness|bruising|warmth) (around|over|at|of|in|on|under) (?:the )?(${RAYS})(?: mtp| toe| joint)*`,
    (m) => {
      const place = m[3] === 'under' ? ' plantar' : '';
      return `| ${m[4]} ${m[1]}${place} | ${m[4]} ${m[2]}${place} |`;
    },
  ],
  ['(?:big|great) toe (?:mtp )?(?:joint )?dorsiflexion (?:is |of )?(\\d+)°?', '| 1st mtp dorsiflexion $1° |'],
  [
    '(?<=ankle dorsiflexion (?:is )?)(\\d+)° (?:with the )?knee (?:straight|extended) , (?:and )?(\\d+)°? (?:with the )?knee (?:bent|flexed)',
    '$1° knee straight | ankle dorsiflexion $2° knee bent',
  ],
  ['pain with it (?=right|left|[2-5](?:nd|rd|th))', 'pain '],
  [
    '(?:bone )?marrow (?:oedema|edema) (?:in|of|at) (?:the )?([2-5](?:nd|rd|th))(?: (?:metatarsal|met))?(?: head)?',
    '| $1 bone oedema |',
  ],
  [
    '(?<=pain [^\\n]*)(\\d+/10) when (?:she|he) (pushes off|walks|runs|stands)',
    (m) => (isElsewhere(m) ? undefined : `| pain ${m[1]} ${ACTS[m[2] ?? '']} |`),
  ],
  // Opinions and plans.
  [
    `(?:and )?(?:i've|i have|i'll|i will|we'll|we will|we have) (?:asked|ask|get) (physio|physiotherapy|podiatry|orthotics)(?: to see (?:her|him))?(?: for (${MEASURE}))?(?= ,| ;|$| and| she| he| \\|)`,
    (m) => `| plan ${m[1]} |${m[2] ? ` plan ${m[2]} |` : ''}`,
  ],
  ['(?<=(?:mri|ultrasound|xray|films?|plan [^;|]*) )and (?:some )?bloods(?= ,| ;|$| and| \\|)', '| plan bloods |'],
  ['(?<=(?:shoe|sandal|boot|bearing) )(until then)', (m) => remark(m[1] ?? '')],
  [
    `(?:working|my) diagnosis(?: is)?(?: ,)? (?=(?:an? )?(?:right |left )?(?:${RAYS}|web [1-4]|plantar plate|neuroma|metatarsalgia|freiberg))`,
    '| impression ',
  ],
  [
    `(?<=plan (?:[^;]*[,|] )?)(?:tape|strap) (?:the )?(right|left) (${RAYS})(?: toe)?(?: down)?(?: for (\\d+ (?:weeks|months)))?`,
    (m) => `| plan tape ${m[1]} ${m[2]}${m[3] ? ` for ${m[3]}` : ''} |`,
  ],
];
const ACTS: Readonly<Record<string, string>> = {
  'pushes off': 'push-off',
  walks: 'walking',
  runs: 'running',
  stands: 'standing',
};
const ordinalOf = (ray = ''): string => ['', '', '2nd', '3rd', '4th', '5th'][Number(ray)] ?? '';
