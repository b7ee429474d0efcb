import { type Phrase, RAY, RAYS, remark, THE } from './phrase.ts';
import { MEASURE } from './tried.ts';

const DAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
const ENDS = '(?= ,| ;|$| \\||\\n)';
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
  /(?<![^ ])(?:knee|hip|back|shoulder|hand|wrist|ankle|heel|calf|leg|neck|other)(?![^ ])/.test(
    input.slice(input.lastIndexOf('pain', index), index),
  );

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
    `(?<=drawer (?:[^;|]* )?\\d )(?:, )?with (?:a )?reproduction of (?:her|his|the) (?:usual )?(?:pain|symptoms)`,
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
