import { IT, OF, OPENS, ORD, type Phrase, RAY, RAYS, remark, THE } from './phrase.ts';

/** `drawer second two third toe`: a ray that dangles may be that of the grade before it. */
export const NO_PAIR = `(?!(?: ,)? (?:${RAY}|second|third|fourth|fifth)(?: (?:toe|mtp|joint|ray))?(?: ,| ;|$))`;

/** Drawer and paper, and what is said of the pain that they give. */
export const EXAM: readonly Phrase[] = [
  [
    `drawer( positive)?(?: grade)? (\\d) ((?:right |left )?${RAY}(?: mtp| toe| ray| joint)*) (?:and )?(with pain|painful|sore|no pain|without pain|painless|not painful|not sore)`,
    (m) =>
      `| drawer${m[1] ?? ''} ${m[2]} ${/^(?:with p|painful|sore)/.test(m[4] ?? '') ? 'painful' : 'painless'} ${m[3]} |`,
  ],
  ['(?:a )?(\\d)\\+ drawer(?: test| sign)?', 'drawer $1'],
  [
    `(?:drawer|lachman|vertical stress)(?: test| sign)? (?:is |was )?(?:grade )?(\\d)\\+? (?:at|of|on|in) ${THE}(${RAY})(?: mtp| toe| ray)?`,
    '$2 drawer $1',
  ],
  ['(?<=drawer [^,;\n]*?)(?:and|but) (stable|unstable)', (m) => remark(m[1] ?? '')],
  [`fixed flexion(?: deformity)? (?:of|at|in) (?:the )?(${RAY} )?pip(?: joint)?`, '$1pip fixed'],
  [
    `drawer (?:test )?(?:on|of) (?:the )?(${RAY}) (?:i can |it )(?:dislocates?|dislocate) (?:it )?so (?:it's |it is |a |grade )*(\\d)`,
    (m) => `${m[1]} drawer ${m[2]} ${remark('dislocatable')}`,
  ],
  ['(?:a )?grade (\\d) (?:positive )?(?:anterior |dorsal |vertical |positive )?drawer(?: test| sign)?', 'drawer $1'],
  [`${OPENS}(?:a )?(?:positive|\\+ve) drawer(?: test| sign)?`, 'drawer positive'],
  [`${OPENS}(?:a )?negative drawer(?: test| sign)?`, 'drawer negative'],
  ['drawer (?:test |sign )?(?:is |was )?(?:stage|level)(?= \\d)', 'drawer'],
  [
    `drawer (?:test |sign )?${OF} ${THE}(${RAYS})(?: toes?| joints?| mtps?)?(?: (?:is|are|all|was|equals|grade))* (\\d)(?! (?:mm|weeks|months|days|degrees))`,
    '$1 drawer $2',
  ],
  [
    `drawer (?:test |sign )?(${RAYS})(?: (?:toes?|joints?|mtps?|rays?))? (?:(?:is|are|all|grade) )*(\\d)(?! (?:mm|weeks|months|days|degrees))${NO_PAIR}`,
    '$1 drawer $2',
  ],
  [
    "(?:i )?(?:can't|cannot|can not|could not|couldn't|unable to) (?:do|assess|test|examine|perform) (?:the |a )?drawer(?: test)?",
    'drawer unable',
  ],
  [
    'drawer (?:test )?(?:is |was )?(?:difficult|hard|impossible|unable) to (?:assess|test|do|examine|perform)',
    'drawer unable',
  ],
  [
    '(?<=drawer [^,;\n]*?)(?:less|under|<) ?(?:than )?(?:50 ?%|half)(?: (?:way|the joint|subluxation))?',
    () => remark('less than 50%'),
  ],
  [
    '(?<=drawer [^,;\n]*?)(?:more|over|>) ?(?:than )?(?:50 ?%|half)(?: (?:way|the joint|subluxation))?',
    () => remark('more than 50%'),
  ],
  ['(?<=drawer [^,;\n]*?)<50%', () => remark('less than 50%')],
  ['(?<=drawer [^,;\n]*?)>50%', () => remark('more than 50%')],
  [
    "(?<=drawer (?:3|4|[^;\n]*? [34])(?: ,)? )(?:and )?(?:so )?(?:it's |it is |i can )?(?:dislocatable|fully dislocatable|dislocate it|dislocates)",
    () => remark('dislocatable'),
  ],
  [
    `(?<=drawer [^,;\n]*?)(?:and |which |but )?(?:${IT} |really |does |also )*(?:reproduces?|recreates?|reproducing|gives?|brings? on|brings back|causes?) (?:her|his|the|their|some)? ?(?:usual |typical |exact |familiar )?(?:pain|symptoms)`,
    'painful',
  ],
  [
    `(?<=drawer [^,;\n]*?)(?:and )?(?:${IT} )(?:really |does |also )*(?:hurts?|is (?:very |quite )?(?:sore|painful))(?: (?:her|him|a lot|when i do it|when i do that|to do))?`,
    'painful',
  ],
  ['(?<=drawer [^,;\n]*?)(?:and |very |is |also )*(?:sore|painful)', 'painful'],
  ['(?<=(?:drawer|mulders|click|squeeze) [^,;\n]*?)pain yes', 'painful'],
  ['(?:paper )?(?:pull out|pull-out)(?: test)? (?:is )?(?:lost|failed|fails)', 'paper pulls-out'],
  [
    'paper (?:just |easily )?(?:slides|slips|comes|falls|pulls|pulled) (?:straight )?out(?: easily)?',
    'paper pulls-out',
  ],
  [
    "(?:and )?(?:meaning )?(?:she |he )?(?:cannot|can't|cant|can not|could not|couldn't|unable to|is unable to|fails to) (?:hold|grip|grab|keep) (?:on to )?(?:the |a |onto the )?paper(?: (?:with it|at all|with the toe))?",
    'paper pulls-out',
  ],
  [
    '(?:she |he )?(?:holds|grips|can hold|can grip|can hold on to|held) (?:on to )?(?:the )?paper(?: (?:fine|well|ok|okay|normally|with it|easily))*',
    'paper holds',
  ],
  ['paper(?: test)? (?:is )?(?:fine|held|held well)', 'paper holds'],
  ['(?:toe )?purchase (?:is )?(?:slightly|a bit|a little|mildly|somewhat) (?=reduced|weak)', 'purchase '],
  [`${OPENS}(?:reduced|weak) (?:toe )?purchase`, 'purchase reduced'],
  [`${OPENS}(?:good|normal) (?:toe )?purchase`, 'purchase normal'],
  [`${OPENS}(?:lost|absent) (?:toe )?purchase`, 'purchase lost'],
  ['not done (?:because )?(?:it is |it was )?too (?:painful|sore|tender)', () => `not done ${remark('too painful')}`],
  ['(?<=drawer unable )because of (?:the )?pain', () => remark('because of pain')],
  [
    'paper(?: test)? (?:is |was )?unable (?:because )?(?:the )?patient could not cooperate',
    () => `paper unable ${remark('patient could not cooperate')}`,
  ],
  [
    `${OPENS}(flexible|fixed|rigid|supple|correctable|semi-rigid) (hammer|claw|mallet)(?: ?toe)?(?: deformity)?`,
    '$2 $1',
  ],
  ['pip(?: joint)? (?:is )?fixed (?:at|in) (~?\\d+)(?:°| degrees)?(?: of flexion)?', 'pip fixed | fixed flexion $1°'],
  ['pip(?: joint)? (?:is )?(fixed|flexible|stiff|supple|correctable)', 'pip $1'],
  [`${OPENS}(fixed|flexible) pip(?: joint)?`, 'pip $1'],
];

/** Is the joint named with its motion, or no more than one operated? */
const ofOne = ({ input = '', index = 0 }: RegExpMatchArray): boolean => {
  if (/(?:[1-5](?:st|nd|rd|th)(?: mtp| toe| joint)*|mtp) $/.test(input.slice(0, index))) return true;
  const operated = [
    ...input.matchAll(/previous surgery (?:(?:right|left) )?((?:[1-5](?:st|nd|rd|th)(?: and | to |-)?)+)/g),
  ];
  return new Set(operated.flatMap((each) => each[1]?.match(/\d/g) ?? [])).size < 2;
};

export const SHAPE: readonly Phrase[] = [
  [
    '(?:drifts|drifting|deviates|deviated|deviating) (medially|laterally) (a little|slightly|a bit|mildly)',
    'deviation $2 $1',
  ],
  [
    '(?:single |double )?(?:leg )?heel (?:raise|rise) (?:is )?(?:possible|done|performed|fine|normal)',
    'heel rise able',
  ],
  [
    `(${RAY}(?: toe)?) ([^,;\\n]*?(?:lifted|floats|floating|off the (?:ground|floor))[^,;\\n]*?) (?:when|on|while) standing`,
    'stand $1 $2',
  ],
  [
    '(?:is )?(?:crossing over|crosses over|crossed over|crossing|crosses|sits over|sitting over|lies over|lying over|sitting on|overrides|overriding|overlies|across|on top of|overlapping|overlaps) (?:on to |onto |over )?(?:the )?(?:big toe|great toe|hallux|1st toe|first toe)',
    'overlap hallux',
  ],
  [
    `(?:is )?(?:drifting|drifts|drifted|deviates|deviating|deviated|leans|leaning)((?: (?:slightly|a bit|a little|mildly|moderately|markedly))?) (medially|laterally|medial|lateral)`,
    'deviation$1 $2',
  ],
  [`${OPENS}(slight|mild|moderate|marked|severe) (medial|lateral) (?:deviation|drift)`, 'deviation $1 $2'],
  ['toe (?=just |still |now )', ''],
  [
    "(?:toe )?(?:doesn't|doesnt|does not|not|isn't|is not) (?:touch|touching|reach|reaching) (?:the )?(?:ground|floor)",
    'lifted',
  ],
  ['(?:just |still |now )?(?:touches|touching|reaches) (?:the )?(?:ground|floor)', 'touches the ground'],
  [
    `(?:floats|floating|lifts|sits|sitting|is|lifted|stands|standing)? ?(?:up )?(?:by )?(~?\\d+(?:\\.\\d)? (?:mm|millimetres?|millimeters?)) (?:off|above|clear of) the (?:ground|floor)`,
    'lifted $1',
  ],
  [
    'lifted off the (?:ground|floor) (?:by )?(~?\\d+(?:\\.\\d)? (?:mm|millimetres?|millimeters?))(?: (?:when|on|while) standing)?',
    'lifted $1',
  ],
  ['(?:is )?(?:floating|floats|lifts|lifted)(?: up)?(?: (?:off|above|clear of) the (?:ground|floor))', 'lifted'],
  [
    '(?:range|rom|moves|motion|range of motion)(?: is| from)? (\\d+)(?:°| degrees)? up (?:and |, )?(\\d+)(?:°| degrees)? down',
    (m) => (ofOne(m) ? `dorsiflexion ${m[1]}° | plantarflexion ${m[2]}°` : undefined),
  ],
  ['(?:lifts|lifted) (?:up )?(?:a little|a bit|slightly)', 'lifted'],
  ['gastrocnemius(?: is)? tight|tight gastroc|gastroc(?:s)? tight', 'tight gastrocnemius'],
  [`${OPENS}(moderate|mild|severe|marked) (?:hallux valgus|bunion)`, 'hallux-valgus $1'],
  [
    'callus (head|plantar)((?: (?:right|left))?) ([^,;\n]*?) ?(?:which |that )?is (tender|painful|sore)',
    'callus $1$2 $3 painful',
  ],
  [
    '(?<=(?:swollen|swelling|puffy|red|joint|mtp|toe)(?: is| feels)?(?: ,)?(?: and| but)? )warm(?! (?:and|but|,)? ?(?:pink|well|perfused))',
    'warm joint',
  ],
  ['warm (?=(?:and|but) (?:swollen|red))', 'warm joint '],
];

export const WEBS: readonly Phrase[] = [
  [
    '(?<=squeeze (?:[^;|,]+ )?(web [1-4]) )(?:and |with )(?:an? )?(?:(?:painful|audible|palpable) )?(?:mulders|click)',
    (m) => `| ${m[1]} click positive |`,
  ],
  [
    'no (mulders|click|numbness|tingling|neuroma|tenderness) (?:in|at|of|over) (?:the )?(webs? [1-4](?:-[1-4])?)',
    '$2 no $1',
  ],
  ['squeeze(?: test)? (?:gives|causes|produces|reproduces|brings on)(?= (?:tingling|numbness))', 'squeeze positive'],
  [
    `tender (?:in |over |at )?(?:the )?web ([1-4]) (?:but |and )?not (?:in |over )?(?:the )?(second|third|fourth|${RAY}|web [1-4])(?: (?:web )?space)?`,
    (m) => {
      const other = (ORD[m[2] ?? ''] ?? m[2] ?? '').replace(/\D/g, '');
      return `web ${other} not tender | web ${m[1]} tender`;
    },
  ],
  [`${OPENS}(?:a )?(positive|negative) (?:mulders|click)`, 'click $1'],
  [`${OPENS}(?:a )?(positive|negative) (?:web )?squeeze(?: test)?`, 'squeeze $1'],
  [
    `(?:with |and |gives? |causing |giving )*(tingling|numbness) (?:in|into|to|down|radiating into|going into) ${THE}(${RAY}) and (${RAY})(?: toes?)?`,
    (m) => (Number(m[3]?.[0]) === Number(m[2]?.[0]) + 1 ? `| web ${m[2]?.[0]} numbness` : undefined),
  ],
  ['between (?:the )?2nd and 3rd (?:toes|metatarsals|met heads)', 'web 2'],
  ['between (?:the )?3rd and 4th (?:toes|metatarsals|met heads)', 'web 3'],
  ['between (?:the )?4th and 5th (?:toes|metatarsals|met heads)', 'web 4'],
];

export const VESSELS: readonly Phrase[] = [
  // Both pulses, or both feet: true of this foot either way.
  ['pulses (?:are |were )?both (present|palpable|good|fine|normal|felt)(?! (?:sides|feet))', 'pulses $1'],
  [
    '(?:dorsalis pedis|dp) and (?:posterior tibial|pt)(?: pulses?)? (?:are |is )?(?:both )?(palpable|normal|present|good|strong|felt)',
    'dp palpable | pt palpable',
  ],
  ['(?<=sensation (?:is )?(?:intact|normal) )to light touch', ''],
  ['(?:arches are flat|flat arches|flat feet)', 'arch flat'],
  ['(?:can |able to |manages to )(?:do |perform )?(?:a )?single (?:leg )?heel (?:raise|rise)', 'heel rise able'],
  ['walks with (?:a )?limp', 'gait limp'],
  ['wound (?:is |has )?(?:well|nicely|fully) healed', 'wound healed'],
  ['(?:k-wire|wire|pin) (?:is |are )?still (?:in place|in situ|in)', 'pin in situ'],
  ['no redness or discharge', 'no redness | no discharge'],
  ['(?:gastrocnemius|gastroc) contracture', 'tight gastrocnemius'],
  [
    '(?:foot |pedal )?pulses (?:are |all )*(?:fine|good|strong|normal|present|intact|easily felt|easily palpable|well felt)',
    'pulses good',
  ],
  [`${OPENS}(?:good|strong|normal|palpable) (?:foot |pedal )?pulses`, 'pulses good'],
  ['(?:cap|capillary) refill (?:is )?(?:good|normal|brisk|fine)', 'capillary-refill normal'],
  ['(?:neuro ?vascularly|neurovascular status) (?:is )?(intact|fine|ok|normal)', 'neurovascular intact'],
  ['(?:sensation|feeling) (?:is )?(?:fine|full|preserved)', 'sensation normal'],
  ['skin (?:is |looks )?(?:normal|fine|healthy|good|ok|okay)', 'skin intact'],
];
