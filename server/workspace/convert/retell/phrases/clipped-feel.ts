import { BIG, STILL } from './clipped.ts';
import { FRESH, ORD, type Phrase, RAY, RAYS, remark, UNVALUED } from './phrase.ts';

/** What is pressed, seen and felt, in clipped phrases. */
const SIDE_OF_TOE =
  '(?:(?:medial|lateral|inner|outer|dorsal|plantar) (?:border|side|aspect|half|surface|edge)|tip|pulp|dorsum|dorsally|medially|laterally|plantarly)';
const DULL = '(?:reduced|dull|blunt|blunted|diminished|decreased|impaired|altered|down|poor)';
const LOST = '(?:absent|lost|gone|nil|insensate)';
const FELT = '(?:normal|intact|fine|good|full|preserved)';
/** How feeling is, in the words of the language; what nobody can grade is kept as said. */
const feeling = (said: string): string =>
  new RegExp(`^${LOST}$`).test(said) ? 'lost' : new RegExp(`^${FELT}$`).test(said) ? 'normal' : 'reduced';
const feltAt = (ray: string | undefined, said = '', ...more: readonly (string | undefined)[]): string => {
  const aside = more.flatMap((each) => (each ? [each.trim()] : [])).join(' ');
  return `| ${ray} sense ${feeling(said)}${aside === '' ? '' : ` ${remark(aside)}`} |`;
};
const eachRay = (said = ''): string[] => said.match(new RegExp(RAY, 'g')) ?? [];

/** What is pressed, seen and felt. */
const TOUCHED: readonly Phrase[] = [
  [
    `(?<=(?:swollen|swelling|tender|tenderness|sore|stiff) )(?:, )?(?:but )?((?:less|better|worse|more) than (?:before|last time|last visit|previously)|less so)`,
    (m) => remark(m[1] ?? ''),
  ],
  [
    `(?<!no )swelling (?:is )?(less|reduced|decreasing|reducing|going down|coming down)(?! (?:than|on|in|at))`,
    (m) => `swelling ${remark(m[1] ?? '')}`,
  ],
  [
    `(?<=(?:swollen|swelling|numb|stiff|tender|red|puffy) )since ((?:last |early |late )?(?:january|february|march|april|may|june|july|august|september|october|november|december|christmas|easter|spring|summer|autumn|winter))`,
    (m) => remark(m[0]),
  ],
  [
    `(?<=pain (?:[^,;|]+ )?)(only (?:when|on|with) (?:running|walking|standing|pushing off|push off|stairs|hills))`,
    (m) => remark(m[1] ?? ''),
  ],
  [`(lateral|medial|central|dorsal) forefoot (?:pain|ache)`, (m) => `pain forefoot ${remark(m[1] ?? '')} |`],
  [
    `(?:redness|erythema) and (?:warmth|heat) (?:of |over |at |around )?(?:the )?(${RAY})(?: (?:mtp|toe|joint))*`,
    '| $1 redness | $1 warm joint |',
  ],
  [
    '(?:(medial|tibial|lateral|fibular) sesamoid (?:is )?tender|sesamoids? tender(?: (medial|lateral|medially|laterally))?)',
    (m) => `| 1st tender ${sesamoid(m[1] ?? m[2])} |`,
  ],
  [`${FRESH}callus(?:es)? (${RAYS}) heads?`, 'callus head $1'],

  [
    `(${RAY}) (?:met|metatarsal|mt) (neck|base) (?:is )?(?:point |focally |very )?tender`,
    (m) => `| ${m[1]} metatarsal tender ${remark(m[2] ?? '')} |`,
  ],
  [
    `(?:point |focal |bony )?(?:tender|tenderness) (?:over|at|on) (?:the )?(${RAY}) (?:met|metatarsal|mt) (neck|base)`,
    (m) => `| ${m[1]} metatarsal tender ${remark(m[2] ?? '')} |`,
  ],
  [
    `(?:(web [1-4]|${RAY}) )?pain (?:is |has come |come |has gone |gone )?down (?:from )?(\\d+)(?:/10)? to (\\d+)(?:/10)?(?! (?:days|weeks|months))`,
    (m) => `| ${m[1] ?? ''} pain ${m[3]}/10 was ${m[2]}/10 |`,
  ],
  [`(?:forefoot|foot) ache(?: for)? (~?\\d+ (?:days|weeks|months|years))`, '| pain forefoot aching for $1 |'],
  [
    `(dorsal|plantar) swelling(?= ,| ;|$| \\||\\n| ${RAY} (?:met|metatarsal) (?:neck|shaft|head) tender)`,
    (m) => `| foot swelling ${remark(m[1] ?? '')} |`,
  ],
  [
    `tender (?:plantar |plantarly )?(?:at|over|on) (?:the )?(?:plantar )?base of (?:the )?(?:proximal )?phalanx`,
    (m) => `tender ${/plantar/.test(m[0]) ? 'plantar ' : ''}phalanx base`,
  ],
  [
    `tender (?:over|at|on|along) (?:the )?(${RAY}) (?:met|metatarsal|mt) shaft(?: ,)? (?:and |but )?not (?:at|over|in) (?:the )?(?:mtp )?joint`,
    (m) => `| ${m[1]} shaft tender ${remark('not at the joint')} |`,
  ],
  [`(?:tender|tenderness) (?:over|at|on|along) (?:the )?(${RAY}) (?:met|metatarsal|mt) shaft`, '| $1 shaft tender'],
  [
    `new (?:ache|soreness|pain|discomfort) (plantar|head) (${RAY})(?: (?:head|met head|metatarsal head))?(?! (?:nail|web|toe|space))`,
    (m) => `| pain ${m[2]} ${/head/.test(m[0]) ? 'head' : 'plantar'} ${remark('new')}`,
  ],
  [
    `(?<!(?:pain|tender|tenderness|callus|sore|no|ache) )(plantar|head) (${RAY})( head)? new (?:ache|soreness|pain|discomfort)`,
    (m) => `| pain ${m[2]} ${m[1] === 'head' || m[3] ? 'head' : 'plantar'} ${remark('new')}`,
  ],
  [`plantar (?:keratosis|callosity|callus) (both|under both|${RAYS})(?: heads?)?`, plantarCallus],
  [
    `callus((?: (?:head|plantar))?(?: ${RAY}(?: head)?)?) (?:is |just )?(starting|forming|beginning|building up|early)(?! to go)`,
    (m) => `callus${m[1] ?? ''} ${remark(m[2] ?? '')}`,
  ],
  [
    `${FRESH}(?<!no )transfer (?:pain|metatarsalgia)(?: (?:under|at|to))?(?: (?:plantar|head))? (${RAYS})(?: (?:heads?|mets?|metatarsals?))?`,
    '| $1 transfer-pain |',
  ],
  [
    `bunion (?:is )?(tender|sore)(?: (medially|medial|dorsally|dorsal|laterally))?`,
    (m) => `| bunion | 1st tender ${remark(['bunion', m[2]].filter((each) => each).join(' '))} |`,
  ],
  [
    `bunion (?:is )?(?:there |present )?(?:but )?(painless|not painful|not tender|pain free|asymptomatic)`,
    (m) => `| bunion ${remark(m[1] ?? '')} |`,
  ],
  [
    `(?:still )?(?:a bit |slightly |a little )?(sausage[ -](?:like|shaped)|fusiform)(?: swelling)?`,
    (m) => `| swelling ${remark(m[0])} |`,
  ],
  [`(?:the )?joint (?:is )?(?:not painful|pain ?free|painless)`, '§joint​painless'],
  [`(${RAYS}) (?:mtp )?(?:is |are )?free(?! (?:of|from|to|and|flap|graft|motion|range|edge|margin))`, '| $1 fine |'],
];
/** So many letters before it the two rays are named. */
const NEAR = 50;
const sesamoid = (side = ''): string =>
  side === '' ? 'sesamoids' : `${/^(?:m|t)/.test(side) ? 'medial' : 'lateral'} sesamoid`;
function plantarCallus({ 1: said = '', input = '', index = 0 }: RegExpMatchArray): string | undefined {
  if (!/both/.test(said)) return `callus plantar ${said}`;
  // Both of the two rays that were named last.
  const rays = [...new Set(eachRay(input.slice(Math.max(0, index - NEAR), index)))];
  return rays.length === 2 ? `| callus plantar ${rays.join(' and ')} |` : undefined;
}

/** Nerves and vessels. */
const FELT_ROWS: readonly Phrase[] = [
  [
    '(?:sensation|feeling) (reduced|diminished|lost|absent|normal) (?:in (?:an? )?)?((?:glove and )?stocking(?: distribution| pattern)?)',
    (m) => `sensation ${feeling(m[1] ?? '')} ${remark(m[2] ?? '')} |`,
  ],
  ['vibration absent (?:at |to |below )?(?:the )?ankles', 'vibration absent to ankles |'],
  ['monofilament (\\d+) (?:of|out of) 10', 'monofilament $1/10'],
  ['webs (?:all |are )*negative', '§webs |'],
  [`(?:posterior tib(?:ial)?|tib post)(?: pulse)? (?=[0-4]\\+?(?: |$))`, 'pt '],
  [`(?<=(?:^|[,;|\\n] |with |and ))numb (${RAY}) toe`, '| $1 numb'],

  ['mulders?(?: click| sign)? (?:with|and) pain', 'mulders positive painful |'],
  [
    '(web [1-4]) (?:mulders? )?click (?:but |with )?(?:no pain|without pain|painless|not painful)',
    '| $1 click positive painless |',
  ],
  [`(?:mulders?|click)(?: click| sign| test)?${STILL} (?:silent|quiet|gone|nil)`, 'mulders negative'],
  [
    `(?:mulders?|click)(?: click| sign| test)?${STILL} (?:doubtful|questionable|equivocal|not convincing|unconvincing)`,
    'mulders equivocal',
  ],
  [
    `(?:mulders?)(?: click| sign| test)?${STILL} (?:strong|loud|clear|obvious|marked|definite|brisk)(?: click)?`,
    'mulders positive',
  ],
  [
    `${FRESH}(mulders?|click|squeeze)(?: click| sign| test)?${STILL} (positive|negative|equivocal|painful)(?: (?:in|at|of))?(?: the)? (${RAYS})(?! (?:toe|mtp|ray|joint|head|met))(?: (?:webs?|spaces?|web spaces?))?${UNVALUED}`,
    (m) => webTest(m[1], m[2], m[3]),
  ],
  [
    `(mulders?|click|squeeze)(?: click| sign| test)? (${RAYS})(?! (?:toe|mtp|ray|joint|head|met))(?: (?:webs?|spaces?|web spaces?))?${STILL} (positive|negative|equivocal|painful)(?! (?:${RAY}|second|third|fourth))`,
    (m) => webTest(m[1], m[3], m[2]),
  ],
  [`squeeze${STILL} (?:free|fine|clear|quiet|unremarkable|pain ?free|painless)(?! (?:of|from))`, 'squeeze negative'],
  [
    '(?:webs|web spaces|interspaces) (?:are |all )*(?:free|clear|quiet|unremarkable|fine|ok|okay|silent)(?! (?:of|from|to|and|with|on|under|apart))',
    '| webs 1-4 fine |',
  ],
  [
    `(?<!(?:web \\d|webs \\d-\\d|right|left|${RAY}) )web squeeze negative(?! (?:in|at|of|web|${RAY}))`,
    ({ input = '' }) => (/web \d|webs \d/.test(input) ? undefined : '| webs 1-4 squeeze negative |'),
  ],
  // Feeling of a toe.
  [
    `(?:sensation|light touch|feeling|sense)(?: of| in| at| on| over)?(?: the)? (?:(${SIDE_OF_TOE}) (?:of )?(?:the )?)?(${RAYS})(?: toes?)?(?: (already|now|still|is|are))? (${DULL}|${LOST}|${FELT})`,
    (m) => feltAt(m[2], m[4], m[1]),
  ],
  [
    `${FRESH}(?:sensation|light touch|feeling|sense) (${DULL}|${LOST})(?: of| in| at| on| over)?(?: the)? (${RAYS})(?: toes?)?(?: (${SIDE_OF_TOE}))?${UNVALUED}`,
    (m) => feltAt(m[2], m[1], m[3]),
  ],
  [
    `${FRESH}(?:sensation|light touch|feeling|sense) (?:is )?(${DULL}|${LOST})(?: of| in| at| on| over)?(?: the)? (${SIDE_OF_TOE})(?: of)?(?: the)? (${RAYS})(?: toes?)?`,
    (m) => feltAt(m[3], m[1], m[2]),
  ],
  [
    `(${RAYS})(?: toes?)? (${DULL}|${LOST}|${FELT}) to (?:light touch|touch|pin ?prick|monofilament)`,
    (m) => feltAt(m[1], m[2], m[0].slice(m[0].indexOf(' to ') + 1)),
  ],
  [
    `${FRESH}monofilament (?:is )?(?:absent|not felt|lost|missed|negative)(?: (?:under|at|over|on|in|plantar))?(?: the)? (${RAYS})(?: heads?)?(?:(?: ,)?(?: and| but)? (?:felt|present|intact|positive)(?: (?:under|at|over|on|in))?(?: the)? (${RAYS}|[1-5](?:(?: and | to )[1-5])?)(?: heads?)?)?`,
    monofilament,
  ],
  [
    `${FRESH}monofilament (?:is )?(?:felt|present|intact)(?: (?:under|at|over|on|in|plantar))?(?: the)? (${RAYS})(?: heads?)?`,
    (m) => `| ${m[1]} sense normal ${remark('monofilament felt')} |`,
  ],
  [
    `vibration(?: sense)? (?:is )?(?:reduced|diminished)(?: at| in| over)?(?: the)? (hallux|big toe|great toe|1st toe|toes)`,
    (m) => `| vibration reduced ${remark(m[1] ?? '')} |`,
  ],
  [`${BIG} (?:is |still |now )*(numb)`, '| 1st $1'],
  [
    `numb (medial|lateral|dorsal|plantar)? ?${BIG}((?: since (?:the )?(?:surgery|operation))?)`,
    (m) => `| 1st numb ${remark([m[1], m[2]?.trim()].filter((each) => each).join(' ') || 'hallux')} |`,
  ],
  [
    `(?<=(?:^|[,;|\\n] |web [1-4] |still |has ))(?:with )?(?:numb|numbness)(?: of| in)?(?: the)? (${RAY}) and (${RAY})(?: toes?)?`,
    '| $1 numb | $2 numb |',
  ],
  [`(${RAY})(?: toe)? (?:dorsal )?tip (?:is |still |now )*numb`, '| $1 numb tip |'],
  [
    `(?<=(?:^|[,;|\\n] |still ))(?:some |occasional |mild |intermittent )?(tingling|burning)(?: in| of| into)?(?: the)? (${RAY})(?: toe)? (on (?:long |longer )?(?:walks|walking|runs|running|standing))`,
    (m) => `| ${m[2]} ${m[1]} ${remark(m[3] ?? '')} |`,
  ],
  ['burning (?:has )?(?:gone|settled|resolved)(?= ,| ;|$)', 'no burning'],
  [
    `(?:the )?rest of (?:the )?(?:sensation|feeling) (?:is )?${FELT}`,
    () => `| sensation normal ${remark('rest of sensation')} |`,
  ],
  // Vessels.
  ['pulses (?:are )?(?:both )?(?:there|strong|full|brisk|equal|easy|easily felt)', 'pulses good'],
  ['(?:foot )?pulses (?:are )?both (?:there|felt|present|palpable)', 'pulses good'],
  ['(?:foot )?pulses (?:are )?both (weak|faint|reduced|absent|not palpable|not felt)', 'pulses $1'],
  [
    '(?<!posterior |peroneal )tibial (?:pulse )?(?:is )?(?=not felt|felt|palpable|good|weak|absent|not palpable)(?!is)',
    'pt ',
  ],
  [
    '(?:pt|posterior tib(?:ial)?)(?: pulse)? (?:is )?(not (?:felt|palpable) (?:through|because of|due to|for|under) (?:the )?(?:swelling|oedema|edema|dressing))',
    (m) => `| pt unable ${remark(m[1] ?? '')} |`,
  ],
  [
    '(?:dp|dorsalis pedis)(?: pulse)? (?:is )?(not (?:felt|palpable) (?:through|because of|due to|for|under) (?:the )?(?:swelling|oedema|edema|dressing))',
    (m) => `| dp unable ${remark(m[1] ?? '')} |`,
  ],
];
function webTest(name = '', said = '', rays = ''): string | undefined {
  const webs = eachRay(rays).map((each) => Number(each[0]));
  const [low = 0, high = 0] = [webs[0], webs.at(-1)];
  if (low > high || high > 4 || high - low !== webs.length - 1) return undefined;
  const test = name === 'squeeze' ? 'squeeze' : 'click';
  const value = said === 'painful' && test === 'click' ? 'positive painful' : said;
  return `| ${low === high ? `web ${low}` : `webs ${low}-${high}`} ${test} ${value} |`;
}
function monofilament(m: RegExpMatchArray): string {
  const felt = (m[2] ?? '').replace(
    /(?<![\dn])[1-5](?![a-z])/g,
    (each) => Object.values(ORD).find((nth) => nth[0] === each) ?? each,
  );
  return `| ${m[1]} sense lost ${remark('monofilament not felt')} |${felt === '' ? '' : ` ${felt} sense normal ${remark('monofilament felt')} |`}`;
}

export const CLIPPED_FEEL: readonly Phrase[] = [...TOUCHED, ...FELT_ROWS];
