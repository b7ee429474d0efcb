import { NUM, OF, ORD, type Phrase, RAY, RAYS, remark, THE } from './phrase.ts';

const SIDE = '(?:(?:on|in) (?:the )?)?(right|left)';
const DEGREE =
  '(?:very |really |exquisitely |extremely |quite |a bit |slightly |mildly |moderately |a little |a little bit )?';
const TOE = '(?: toe| toes| mtp joint| mtp| mtps| joint| ray)?';
const GONE = `(?= ,| ;|$| \\||${' '}(?:and|but|third|second|2nd|3rd|4th|fourth|drawer|no|paper|plan|she|he|it|click|sensation|pulses|hallux))`;
const twoDrawers = (side: string | undefined, ...each: readonly (readonly (string | undefined)[])[]): string =>
  each
    .map(([ray = '', grade]) => `| ${side ? `${side} ` : ''}${ORD[ray] ?? ray} drawer ${grade === 'nil' ? '0' : grade}`)
    .join(' ');
const ANGLE = `(?:minus |plus )?(?:-)?${NUM}(?:°| degrees)?`;
const ankle = (angle = '', knee = '', both = ''): string => {
  const sign = /minus|^-/.test(angle) ? '-' : '';
  const bent = knee === '' ? '' : ` knee ${/bent|flexed/.test(knee) ? 'bent' : 'straight'}`;
  return `ankle dorsiflexion ${sign}${angle.replace(/[^\d.]/g, '')}°${bent}${both === '' ? '' : ' both'}`;
};
/** What is said around the drawer, the paper and the toe in an exam. */
export const EXAMINED: readonly Phrase[] = [
  // Pressed.
  [
    `no (tenderness|pain|callus) (?:plantar|head|under|beneath) (?:the )?(${RAY})(?: heads?)?(?! and| or)`,
    '| no $1 plantar $2 |',
  ],
  [
    '(?<=drawer [^;|]*?\\d[^;|]*?), ?(?:which |it |and )?reproduces (?:the|her|his) (?:usual )?(?:pain|symptoms)',
    ' painful',
  ],
  [
    '(?:held|sits|sitting|lies|lying) (?:slightly |a little |a bit )?(?:up|elevated|raised)(?= ,| ;|$| and| \\|)',
    'lifted',
  ],
  ['hammer toe ,? ?(?:is |and )?(fixed|flexible|supple|rigid|correctable)(?: at the pip(?: joint)?)?', 'hammer toe $1'],
  ['(?:with )?(?:an? )?(painful|tender) corn on (?:the )?top', '| corn painful'],
  ['(mulders|click) felt(?= in)', '$1 positive'],
  ['(tender web [1-4]) (not (?:over )?the joints?)', (m) => `${m[1]} ${remark(m[2] ?? '')}`],
  ['drifted over (?:the )?(?:hallux|big toe|great toe)', 'overlap hallux'],
  [
    '(?<=drawer [^;|]*?)(?:and |but )?(less (?:painful|sore)(?: than (?:before|last time))?)',
    (m) => remark(m[1] ?? ''),
  ],
  ['paper(?: test)? (?:is |does )?(?:now|still|again) hold(?:s|ing)?', 'paper holds'],
  ['drawers (?:are |were )?(?:all )?(?:negative|normal)', '| 2nd-5th drawer negative'],
  [
    `(mulders|click) (?:is |was )?(positive|negative)( with pain)? (?:and )?squeeze (?:is |was )?(positive|negative) (?:in |of )?(?:the )?(web [1-4])`,
    (m) => `| ${m[5]} click ${m[2]}${m[3] ? ' painful' : ''} | ${m[5]} squeeze ${m[4]}`,
  ],
  ['(?:floats|sits up) (?:about |by )?(~?\\d+(?:\\.\\d)?) mm', 'lifted $1 mm'],
  [
    'mtp (?:bends|moves|goes|comes) up (\\d+)(?:°)? (?:and |, )?down (\\d+)(?:°)?',
    'mtp dorsiflexion $1° | plantarflexion $2°',
  ],
  ['(?:tender|tenderness) (?:directly |right |just )(?=over|at|on|plantar)', 'tender '],
  [
    `(?<=tender(?:ness)? (?:[^,;|]+ )?) ?, ?(?:and |but )?(?:none|nothing|not) (?:beneath|under|at|over|on) ${THE}(${RAY}|second|third|fourth)${TOE}`,
    (m) => ` | ${ORD[m[1] ?? ''] ?? m[1]} not tender`,
  ],
  [
    `(?:drawer|vertical stress)(?: test)? (?:is |was )?(?:positive|\\+ve) (?:at|on|in|of) ${THE}(${RAY}|second|third|fourth)${TOE} ,? ?(?:about |around |roughly |at about )?(?:a )?grade (\\d)`,
    (m) => `| ${ORD[m[1] ?? ''] ?? m[1]} drawer ${m[2]} positive`,
  ],
  [
    `(?:drawer|vertical stress)(?: test)? (?:is |was )?(?:grossly |very )?unstable (?:at )?grade (\\d)`,
    (m) => `drawer ${m[1]} ${remark('unstable')}`,
  ],
  [
    `(?<=(?:click|mulders|squeeze) [^;]*?(?:web [1-4]) ?), ?(?:and |but )?(positive|negative) (?:in|at) (?:the )?(second|third|fourth|1st|first|${RAY})(?: (?:web )?(?:space)?)?`,
    (m) => ` | web ${(ORD[m[2] ?? ''] ?? m[2])?.[0]} click ${m[1]}`,
  ],
  ['(?:the )?joints (?:are )?(?:all )?stable', '| 2nd-5th mtp stable'],
  ['(?:slightly |a bit |a little |mildly )?elevated(?= ,| ;|$| and| \\|)', 'lifted'],
  [`(?:a )?(?:dorsal )?corn (?:on|over|at) (?:the )?pip(?: joint)?`, 'corn on the pip'],
  ['(?:circulation|perfusion) (?:is )?(?:fine|good|normal|ok|okay)', 'capillary-refill normal'],
  [`(?<!no )(?:a )?crossover (?:toe |deformity)`, 'overlap '],
  [`(?:fixed|rigid) hammer at the pip`, 'hammer fixed'],
  ['(?:and )?(?:only |just )reducible', 'reducible'],
  [
    `(?:mtp|forefoot|metatarsal )?squeeze(?: test)? (?:is |was )?(?:painful|positive|sore) (?:in |on |of )?both(?: feet| sides)?`,
    '| compression positive both |',
  ],
  [
    `(${DEGREE})(?:sore|painful|hurts) (?:to press|to touch|to palpate|on palpation|to palpation|on pressing|when pressed|when i press(?: it| on it| there)?|if pressed)`,
    '$1tender',
  ],
  ['(?:maximum|maximal|maximally|point|focal|localised|exquisite) (?=tender)', ''],
  [
    `tender(?:ness)? (?:is )?(?:at |over |on )?${THE}(plantar )?(lateral |medial )?(plantar )?base of (?:the )?(?:(${RAY}) )?(?:proximal )?phalanx`,
    (m) => `${m[4] ?? ''} tender ${m[1] || m[3] ? 'plantar ' : ''}phalanx base${m[2] ? ` ${remark(m[2].trim())}` : ''}`,
  ],
  [
    `(tender (?:over |at |on )?(?:the )?shaft(?: dorsally)?) ((?:and |but )?not (?:at |over |in )?(?:the )?joint)`,
    (m) => `${m[1]} ${remark(m[2] ?? '')}`,
  ],
  [
    `(tender|tenderness) (?:is )?(?:just )?(?:distal|distally|just distal) to the (?:met |metatarsal )?head`,
    'tender phalanx base',
  ],
  ['(?:tender|tenderness) (?:in|over|at) (?=web [1-4])', 'tender '],
  // The drawer.
  [
    `(?:i'd|i would) (?:say|call it|call that|put it at|make it|grade it)(?: it's| it is| that's)?(?: as)? (?=(?:an? |about an? )?(?:grade )?\\d)`,
    '',
  ],
  [
    `(?:and )?${THE}(?:(right|left) )?(${RAY})${TOE} (?:is |was |feels )?(?:a bit |slightly |a little |quite )?(?:loose|lax|sloppy)(?: as well| too)?(?: ,)? (?:at |about )?(?:an? )?(?:about )?(?:an? )?grade (\\d)`,
    '| $1 $2 drawer $3',
  ],
  [
    `(?:drawer|lachman) (?:on|of|at) ${THE}(?:(right|left) )?(${RAY})${TOE} (?:is |was |feels )?(?:a bit |slightly |a little )?(?:loose|lax)(?: compared with (?:the )?(?:left|right|other side))?(?: ,)? (?:grade )?(\\d)`,
    '| $1 $2 drawer $3',
  ],
  [
    `drawer (?:is |was )?(?:now |still )?(?:grade )?(\\d) ,? ?(?:now )?(?:and |but )?(?:it |which )?(?:previously|was|before it was|down from|it was|from|up from) (?:grade |a )?(\\d)`,
    (m) => `drawer ${m[1]} ${remark(`was ${m[2]}`)}`,
  ],
  [
    `drawer was (?:grade )?(\\d)(?: back)? (in [a-z]+|last time|last visit|before) ,? ?(?:and |but )?(?:it's |it is |is )?(?:now )?(?:grade )?(\\d)(?: again)?(?: today| now)?`,
    (m) => `drawer ${m[3]} ${remark(`was ${m[1]} ${m[2]}`)}`,
  ],
  [`drawer (?:is |was |feels )?stable ,? ?(?:and )?(?:grade )?0`, `drawer 0 ${remark('stable')}`],
  [
    `drawer (?:test )?(?:is |was )?(?:negative|normal|0|grade 0|stable|fine) (?:in |of |on |at |for )?(?:all (?:the |of the )?(?:lesser )?(?:toes|joints|mtps|mtp joints)|all rays|throughout|all of them|all round|everywhere|across the board)(?! ,?(?: ?(?:but|except|apart|bar|other than|save))(?: |$))(?! (?:and|but) (?:the )?(?:second|third|fourth|fifth|[2-5](?:nd|rd|th)))`,
    (m) => `| 2nd-5th drawer ${/0/.test(m[0]) ? '0' : 'negative'} |`,
  ],
  [
    `(?<=drawer (?:[^;|]*? )?\\d )(?:on (?:the )?)?(right|left) ,? ?(?:and )?(?:grade )?(\\d) (?:on (?:the )?)?(right|left)`,
    '$1 | $3 drawer $2',
  ],
  [
    "(?<=drawer [^;|]*?)(?:and |but |with |, )*(?:no pain(?: with it| on it| with that)?(?: now| today)?|not painful|painless|pain free|it doesn’t hurt|doesn't hurt)(?: (?:now|today))?(?! which)",
    'painless',
  ],
  [`(?<=drawer (?:[^;|]*? )?)(?:a |about a )(?=grade|\\d)`, ''],
  ['(?:drawer|lachman) (?:is )?(?:positive|\\+ve)(?: at| to)? (?:a )?grade (\\d)', 'drawer $1 positive'],
  [
    `(${RAYS})${TOE} (?:is |are )?(?:both |all )?(\\d)(?= ,| ;|$| and (?:sore|painful))(?<=drawer [^;]*)`,
    '$1 drawer $2',
  ],
  [`(?<=drawer [^;|]*?\\d )(?:, )?(?:and |but )?(?:it is |it's )?not (?:sore|painful)(?= ,| ;|$| \\|)`, ' painless'],
  [`(?<=drawer [^\\n]*)(${RAY})(?: toe| mtp| ray)? is (?:about )?(?:an? )?(?:about )?grade (\\d)`, '| $1 drawer $2'],
  [
    `(?:(right|left) )?drawer (?:is |was )?(?:grade )?(\\d|nil) (?:at|on|in|for) ${THE}(${RAY}|second|third|fourth)${TOE} ,? ?(?:and |but )?(?:a |grade )?(\\d|nil) (?:at|on|in|for) ${THE}(${RAY}|second|third|fourth)${TOE}`,
    (m) => twoDrawers(m[1], [m[3], m[2]], [m[5], m[4]]),
  ],
  [
    `(?<=drawer [^\\n]*)(right|left) (?:it's |it is |is )?(?:a |grade )?(\\d|nil) (?:at|on|in|for) ${THE}(${RAY}|second|third|fourth)${TOE} ,? ?(?:and |but )?(?:a |grade )?(\\d|nil) (?:at|on|in|for) ${THE}(${RAY}|second|third|fourth)${TOE}`,
    (m) => twoDrawers(m[1], [m[3], m[2]], [m[5], m[4]]),
  ],
  [
    `(hallux.valgus|bunion) (mild|moderate|severe|marked) (?:on (?:the )?)?(right|left) ,? ?(?:and |but )?(mild|moderate|severe|marked) (?:on (?:the )?)?(right|left)`,
    '$1 $2 $3 $4 $5',
  ],
  [
    `(tender|tenderness|sore|painful) (?:is )?(?:under|underneath|beneath) ${THE}(?:met |metatarsal )?heads?(?! of)`,
    '$1 head',
  ],
  // The paper and the ground.
  [
    `(?:the )?paper(?: test| grip| pull out)?(?: test)? (?:is |was )?(?:passes|passed|pass|normal|good|negative|fine|ok|okay)(?: on)?(?: both sides)?`,
    (m) => (/negative/.test(m[0]) ? undefined : /both/.test(m[0]) ? 'paper holds both' : 'paper holds'),
  ],
  [
    `(?:toe )?(?:can't|cannot|can not|couldn't|unable to|won't|will not|does not|doesn't) (?:hold|grip|grab|keep) (?:on to |onto )?(?:the |a )?(?:piece of )?paper`,
    'paper pulls-out',
  ],
  [
    `purchase (?:is )?(?:absent|nil|lost|gone)(?: ${SIDE})?(?: (?:on the )?(${RAY}))?(?: toe)? ,? ?(?:and |but )?present (?:in|on) (?:the )?(?:others|other toes|rest)`,
    '| $1 $2 no purchase | others purchase holds',
  ],
  [`purchase (?:is )?(?:present|there) (?:but|though) (?:weak|reduced|poor)`, 'purchase weak'],
  [`purchase (?:is )?(?:absent|nil)(?: ${SIDE} (${RAY}))?`, '$1 $2 no purchase'],
  [`(${RAY})(?: toe)? (?:is )?down(?: to| on| onto)?(?: the)? ?(?:floor|ground)?${GONE}`, '| $1 touches the ground'],
  [`toe (?:is |comes |gets )?down (?:to|on|onto) (?:the )?(?:floor|ground)`, 'touches the ground'],
  [
    `(?<=(?:lifted|pulls-out|floating) )(?:the )?(?:${RAY}|second|third|fourth) does(?: not)?`,
    (m) =>
      /not/.test(m[0])
        ? undefined
        : `| ${({ second: '2nd', third: '3rd', fourth: '4th' } as Record<string, string>)[/second|third|fourth/.exec(m[0])?.[0] ?? ''] ?? /\d\w+/.exec(m[0])?.[0] ?? ''} touches the ground`,
  ],
  // Shape.
  [
    `(deviation (?:medial|lateral)(?:ly)?)(?: as well)? (not much|only a little|not a lot)`,
    (m) => `${m[1]} ${remark(m[2] ?? '')}`,
  ],
  [`hallux valgus (?:is |looks )?(mild|moderate|severe|marked)`, '| hallux-valgus $1'],
  [`(?:toes|all (?:the )?toes|lesser toes) (?:are |all )*straight`, '2nd-5th straight'],
  [
    `(?<!(?:${RAY}|second|third|fourth|fifth|big|great) )(?:the )?toe (?:is |sits |looks |lies )?(?:nice and |nicely |now )?straight`,
    '| straight',
  ],
  [`(?:sits|lies|stays|looks) (?:nice and |nicely )?straight`, 'straight'],
  [
    `(?:is |are |'s )?riding (?:up )?(?:over|on top of|on)(?: the top of)? (?:the )?(?:big toe|hallux|great toe|1st toe|first toe)`,
    'overlap hallux',
  ],
  [
    `(?:is )?(?:starting to|started to|beginning to|has started|has begun)(?: to)? (?:drift|deviate|drifting)(?: (medially|laterally))?(?: (?:towards|toward) (?:the )?(?:big toe|hallux|great toe))?`,
    (m) => (m[1] || /towards?/.test(m[0]) ? `deviation ${m[1] ?? 'medial'}` : undefined),
  ],
  [
    `(?<=(?:^|[,;|\\n] |(?:^| )(?:is|still|toe|and|[1-5](?:st|nd|rd|th)) ))(slightly|mildly|a bit|a little|moderately|markedly|still slightly) (medial|lateral|medially|laterally)(?= ,| ;|$| \\||${' '}(?:and|drawer|paper|no|but|she|he|third|3rd))`,
    'deviation $1 $2',
  ],
  [
    `(?:it's |it is )?(partly|partially|fully|completely|easily|passively|still) (reducible|correctable)`,
    (m) => `reducible ${remark(m[1] ?? '')}`,
  ],
  ["not reducible (?:well|actually|no|sorry) (?:it's |it is |\\| )?(?=reducible)", ''],
  [`(?:the )?mtp(?: joint)? is (?=reducible)`, ''],
  [
    `(?:i can )?(?:straighten|correct|reduce) (?:it|the toe)(?: out| down)?(?: fully| easily| passively)?(?: so it's flexible| so it is flexible)?${GONE}`,
    'reducible',
  ],
  [
    `(?:a )?(?:big|large|small|obvious|quite a|definite) (?=(?:bunion|callus|corn|hallux|effusion|gap)(?: |$))(?<!no )(?<!any )`,
    '',
  ],
  [`(?:good|definite|obvious|clear|palpable|loud|nice) (?=(?:click|mulders)(?: |$))(?<!no )(?<!any )(?<!a no )`, ''],
  [`(?:a )?thick callus (plantar|head) (${RAYS})(?: heads?)?`, 'callus $1 $2 thick'],
  [`(?:a )?thick callus`, 'callus thick'],
  [
    `(?<=callus [^;]*? )(?:, )?(?:and |but )?(?:none|nothing|no callus) (?:on (?:the )?)?(right|left)(?: (?:side|foot))?`,
    ' | no callus $1',
  ],
  [`(?:fat pad) (?:is |looks )?(?:a bit )?(?:thin|thinned|atrophic|wasted)`, 'fat pad thin'],
  // Web spaces, feeling, vessels.
  [
    '(?:sensation|feeling) and pulses (?:are |were )?(?:both |all )?(?:normal|fine|good|intact|ok|okay)',
    '| sensation normal | pulses good |',
  ],
  [
    '(?:foot )?pulses and (?:sensation|feeling) (?:are |were )?(?:both |all )?(?:normal|fine|good|intact|ok|okay)',
    '| pulses good | sensation normal |',
  ],
  [
    `no transfer (?:pain|metatarsalgia|lesion|symptoms)(?: (?:under|at|beneath|below|of|to|in))? ?(?:plantar |head )?(?:the )?(${RAY}|second|third|fourth)(?: (?:or|and|nor) (?:the )?(${RAY}|second|third|fourth))?(?: heads?)?`,
    (m) => [m[1], m[2]].flatMap((each) => (each ? [`| ${ORD[each] ?? each} no transfer-pain`] : [])).join(' '),
  ],
  ['toe (?:is )?(?:crossing|crosses|crossed) over(?= ,| ;|$| \\|| and| but| still)', 'overlap'],
  [
    'no drawer (?:at|in|on|of) (?:any|either|all)(?: of the)?(?: joint| toe| ray| mtp)?s?',
    '| 2nd-5th drawer negative |',
  ],
  [
    `(?:squeezing it|squeezing (?:the |that )?(?:space|web|foot)) (?:sets it off|reproduces it|brings it on|reproduces (?:her|his|the) pain)`,
    'squeeze positive',
  ],
  [`(?:the )?(?:web )?squeeze(?: test)? (?:is |was )?(?:painful|sore|tender)`, 'squeeze painful'],
  [`monofilament (?:is )?(\\d+/10) ${SIDE} (?:and |, |but )*(\\d+/10) ${SIDE}`, 'monofilament $1 $2 $3 $4'],
  [
    `(?:posterior tib(?:ial)?s?|p t|tib post|tibialis posterior)(?: pulse)? (?:is |are )?(?=present|absent|palpable|felt|not felt|not palpable|good|weak)`,
    'pt ',
  ],
  [
    `(?:dorsalis pedis|d p)(?: pulse)? (?:is |are )?(?=present|absent|palpable|felt|not felt|not palpable|good|weak)`,
    'dp ',
  ],
  ['(?<=(?:dp|pt) )not palpable', 'not felt'],
  [
    `(?:feeling|sensation|light touch)(?: is|'s)? (?:normal|fine|intact|ok|okay|good|full|preserved)(?: ${OF} (?:the )?(?:foot|toes|all toes))?`,
    'sensation normal',
  ],
  [
    `(?:calf|calves|gastrocs?|gastrocnemius)(?: is| are)? (?:quite |very |a bit |really )?tight(?: with (?:the )?knee (?:straight|extended))?`,
    'tight gastrocnemius',
  ],
  [
    `ankle (?:dorsiflexion|comes up to|comes to|gets to|dorsiflexes to)(?: is| of)? (${ANGLE})(?:(?: with)?(?: the)? knee (straight|extended|bent|flexed))?(?: and (${ANGLE})(?: with)?(?: the)? knee (bent|flexed))?((?: (?:on )?both sides)?)`,
    (m) => [ankle(m[1], m[2], m[5]), m[3] ? ` | ${ankle(m[3], m[4], m[5])}` : '', m[5] ? ' |' : ''].join(''),
  ],
  // The other foot, and what is as it should be.
  [
    `(?:the )?(right|left)(?: (?:foot|side|one))? (?:is |was |looks )?(?:completely |absolutely |all |totally |entirely )?(?:fine|ok|okay|no problems?|no symptoms|no trouble|asymptomatic|unremarkable)${GONE}`,
    '| $1 unremarkable |',
  ],
  [`(?:the )?(${RAY})(?: (?:toes|mtps|rays|joints))? (?:are )?both (?:fine|ok|okay|quiet)${GONE}`, '| both $1 fine |'],
  [
    `(?:the )?(${RAYS})(?: (?:toes?|mtps?|rays?|joints?))? (?:(?:is |are )(?:both |all )?(?:ok|okay)|(?:is |are )?(?:both |all )?(?:fine|quiet))${GONE}`,
    '| $1 fine |',
  ],
  [`(?<=both )(?:feet )?(?:web |metatarsal )?squeeze positive`, 'compression positive'],
  [
    `(?:mtp |forefoot |metatarsal )?squeeze(?: test)? (?:is )?positive (?:across|on|in|of) (?:both|the) (?:forefeet|forefoot|feet|mtps)`,
    'compression positive both',
  ],
  [
    `(?:mtp|forefoot|metatarsal|transverse) squeeze(?: test)? (?:is |was )?(positive|negative|painful|sore)`,
    (m) => (m[1] === 'negative' ? 'compression negative' : 'compression positive'),
  ],
];
