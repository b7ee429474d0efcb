import { COMPLETE_MARK, NUM, type Phrase, remark, TIME } from './phrase.ts';
import { ENDS, NOT_THEN, NTHS, rays, TOE } from './rays-said.ts';
import { MEASURE } from './tried.ts';

const DAY = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
const SCAN = '(?:mri|ultrasound|x-?rays?|films?|ct)(?: scan)?';
const scan = (said: string): string =>
  /mri/.test(said) ? 'mri' : /ultra/.test(said) ? 'ultrasound' : /ct(?: |$)/.test(said) ? 'ct' : 'xray';
/** What keeps a measure going, or starts it: said of what is to come alone. */
const UNTIL =
  '(?:until then|until (?:the )?(?:surgery|operation|theatre|scan|mri|ultrasound|review|next visit|seen)|in the meantime|in the interim|meanwhile|for the time being|from now on|from now|from today|from tomorrow)';
const STAYS = '(?:stays(?: on)?|to stay(?: on)?|to continue|continues|carries on|remains)';
const NOT_OURS =
  '(?<!(?:no|not|never|without|tried|had|was|were|been|from|of|after|before|under|with|used|wore|worn|the other|stop|out of|off|if|than|or) )';
/** The words of this sentence before a match. */
const before = ({ input = '', index = 0 }: RegExpMatchArray): string =>
  input.slice(Math.max(input.lastIndexOf(';', index), input.lastIndexOf('\n', index)) + 1, index);
const isPast = (m: RegExpMatchArray): boolean =>
  /(?<![^ ])(?:tried|had|failed|used|wore|worn|been|was|were|history|previous\w*|if|ago|stopped)(?![^ ])/.test(
    before(m),
  );

/** Conditions on which the patient comes back, each to its end. */
const IF =
  "(?:it |pain |symptoms |swelling |the pain |the swelling |things |this )?(?:(?:does not|doesn't|do not|don't|has not|hasn't|not) (?:settle|settling|settled|improve|improving|improved|gone|resolve|resolved|get better)(?: (?:in|by|within|after) \\d+ (?:days|weeks|months))?|flares?(?: up)?|(?:gets? |is |are )?worse(?:ning)?|worsens|recurs|comes back|returns|needed|necessary|required|problems|any problems|any concerns|concerned|any trouble|no better)";
const COMES =
  '(?:(?:to |she |he |patient |will )*(?:rings?|calls?|phones?|contacts? us|comes? back|returns?|open appointment|open door|back|see|seen|review|follow up|sos)(?: again| back| us| me| in| here)*)';

/** A planned operation as it is called. */
const OPERATION =
  '(?:weil(?: osteotom(?:y|ies))?|weils|(?:plantar )?plate repair|pip fusion|toe fusion|flexor to extensor transfer|flexor transfer|tendon transfer|flexor tenotomy|extensor lengthening|neuroma excision|neurectomy|scarf(?: osteotomy)?|akin(?: osteotomy)?|chevron(?: osteotomy)?|lapidus(?: fusion)?|bunion correction)';
const WITH_RAY = `(?:${NTHS}${TOE} )?${OPERATION}(?: (?:of |on |to )?(?:the )?(?:${NTHS}${TOE}|web [1-4])(?! ${OPERATION}))?`;
const WITH_RAYS = `${WITH_RAY}(?:(?: ,)?(?: and| with| plus|)(?: an?| the)? ${WITH_RAY})*`;
const OF_THE_FOOT = /^(?:scarf|akin|chevron|lapidus|bunion)/;
/** Each operation of a list with its ray; nothing where one has none. */
function planned(list: string, more = ''): string | undefined {
  const found = [
    ...list.matchAll(
      new RegExp(
        `(?:(?<before>${NTHS})${TOE} )?(?<op>${OPERATION})(?:(?: (?:of|on|to))?(?: the)? (?<after>${NTHS}|web [1-4])${TOE}(?! ${OPERATION}))?`,
        'g',
      ),
    ),
  ].map(({ groups: { before: first, op = '', after } = {} }) => ({
    op: op.replace(/weils|weil osteotomies/, 'weil'),
    at: first ?? after,
  }));
  const rayed = found.filter(({ op }) => !OF_THE_FOOT.test(op));
  const [only, other] = [...new Set(rayed.flatMap(({ at }) => at ?? []))];
  if (rayed.length > 0 && (only === undefined || (other !== undefined && rayed.some(({ at }) => at === undefined))))
    return undefined;
  const noted = more === '' ? '' : ` ${remark(more)}`;
  return `${found.map(({ op, at }) => (OF_THE_FOOT.test(op) ? `| plan ${op}` : `| plan ${op} ${rays(at ?? only ?? '')}`) + noted).join(' ')} |`;
}

/** What is only seen at the operation: the condition is of the step that it stands beside. */
const IF_SEEN =
  '(?:if|provided) (?:the )?(?:tissue|tissues|plate|joint|toe) [a-z]+(?: [a-z]+){0,3}?(?= ,| ;|$|\\n| \\|)';

/** `carry on taping another six weeks, review then`: the time of the order before it. */
const timeOf = ({ input = '', index = 0 }: RegExpMatchArray): string => {
  const [, time] = [...input.slice(0, index).matchAll(/plan [^;|]*?for (\d+ (?:weeks|months))/g)].at(-1) ?? [];
  return time ? `in ${time} ` : '';
};
/** Orders as they are clipped in dictation. */
export const ORDERS: readonly Phrase[] = [
  // Operations.
  [
    `(?<=^(?:(?:right|left) )?)(?:here |in |admitted |admission |scheduled |comes in |today )?for ((?:${WITH_RAYS}))(?= ,| ;|$| \\||\\n| under| consent| marked| today| tomorrow)`,
    (m) => planned(m[1] ?? ''),
  ],
  [
    `(${WITH_RAYS}) (?:discussed|offered) (?:, )?(?:and )?(?:she|he|patient) (?:agrees|is keen|agreed|wants to (?:proceed|go ahead)|would like to (?:proceed|go ahead)|accepts|happy to (?:proceed|go ahead))`,
    (m) => planned(m[1] ?? '', 'discussed, agrees'),
  ],
  [
    `(?<!not )(?:offered|discussed) (surgery|operation|excision|${OPERATION})(?: (?:of |on |to )?(?:the )?(?:${NTHS}|web [1-4]))?(?: ,)?(?: and| but)? (?:she|he|patient) (?:wants|prefers|would like|would rather) to wait`,
    (m) => `| patient wants to wait ${remark(`${m[1]} offered`)} |`,
  ],
  [
    `(?:surgery|operation) (?:declined|refused)(?: (?:for now|today|at present))?${ENDS}|(?:declines|declined|refuses|refused) (?:surgery|operation)(?: (?:for now|today|at present))?${ENDS}`,
    '| declines surgery |',
  ],
  [
    'no (surgery|operation|injections?|steroid) (wanted|planned|needed|indicated|required|at present|for the moment|today)',
    (m) => `| plan no ${m[1]} ${remark(m[2] ?? '')} |`,
  ],
  [
    `(?:plan )?no (injections?|steroids?|cortisone|surgery|operation|running) (until (?:[a-z]+ ){0,5}?[a-z]+|with (?:the|a) tear)${ENDS}`,
    (m) => `| plan no ${m[1]} ${remark(m[2] ?? '')} |`,
  ],
  [
    '(?:as (?:an? )?)?day case,? (?:under|with) (?:an? )?(ankle block|general anaesthetic|local anaesthetic|spinal|popliteal block)',
    '| plan day case | plan $1 |',
  ],
  [
    '(?:heparin|low molecular weight heparin|lmwh) (after (?:surgery|operation)|post ?op(?:eratively)?)',
    (m) => `| plan clot prevention ${/molec|lmwh/.test(m[0]) ? 'lmwh ' : ''}${remark(m[0])} |`,
  ],
  [
    `plan (${WITH_RAYS}|(?:${WITH_RAYS})(?: ,(?: and)? ${WITH_RAYS})+)(?= , (?:possible |possibly )?${OPERATION} ${IF_SEEN})`,
    (m) => planned((m[1] ?? '').replaceAll(' ,', '')),
  ],
  [`(?:possible |possibly )?${OPERATION}(?: (?:${NTHS}))? ${IF_SEEN}`, () => `${COMPLETE_MARK}possible`],
  [
    `trial of (?:an? )?(insoles?|orthotics?|stiff insole|rocker|boot|met pad)((?: with (?:an? )?[a-z\\d]+(?: [a-z]+){0,2}?)? before (?:any |considering )?(?:osteotomy|surgery|operation))${NOT_THEN}`,
    (m) => `| plan ${/orth/.test(m[1] ?? '') ? 'insoles' : m[1]} ${remark((m[2] ?? '').trim())} |`,
  ],
  [
    `(${SCAN}) (?:requested|ordered|booked|arranged)(?: ,)? (query (?:plate |plantar plate )?(?:tear|neuroma|stress fracture|freiberg|recurrence)|to look (?:for|at) [a-z ]{3,20}?)(?= ,| ;|$|\\n)`,
    (m) => `| plan ${scan(m[1] ?? '')} ${remark(m[2] ?? '')} |`,
  ],
  // A measure that goes on, or starts.
  [
    `${NOT_OURS}(?:the |an? )?(${MEASURE}|post ?op (?:shoe|sandal)|surgical shoe) (${UNTIL}|${STAYS})(?= ,| ;|$|\\n| \\|| no| and| back| review| mri| xray| x-ray| crutches)`,
    (m) => (isPast(m) ? undefined : `| plan ${m[1]} ${remark(m[2] ?? '')} |`),
  ],
  [
    `${NOT_OURS}(normal shoes|ordinary shoes|own shoes|regular shoes|trainers|sneakers|runners) (from now on|from now|from today|from tomorrow|now allowed)`,
    (m) =>
      isPast(m)
        ? undefined
        : `| plan ${/runners|sneak/.test(m[1] ?? '') ? 'trainers' : /ordinary/.test(m[1] ?? '') ? 'normal shoes' : m[1]} ${remark(m[2] ?? '')} |`,
  ],
  [
    `(?:carry on|continue|keep on|keep|keep going|persist)(?: with)?(?: the| her| his)? (taping|tape|strapping|boot|insoles?|orthotics?|met pad|pads|physio|stretches|toe spacer|splint) (?:for )?(?:another|a further) (${NUM} ${TIME})`,
    (m) => `| plan continue ${m[1]} for ${m[2]} |`,
  ],
  [
    `(physio|physiotherapy|exercises|stretches|stretching|toe exercises) ((?:once|twice|\\d times) (?:a|per) (?:day|week)|weekly|daily)`,
    (m) => `${m[1]} ${remark(m[2] ?? '')}`,
  ],
  [
    `(?:start|begin|commence) (?:passive |active |gentle )*(?:toe )?(?:plantarflexion|plantar flexion|toe bending) (?:exercises|stretches|stretching)`,
    (m) => `| plan plantarflexion exercises ${remark(m[0].replace(/ .*$/, ''))} |`,
  ],
  [
    `(?<!plan )passive (?:toe )?plantarflexion (?:exercises|stretching) (?:from now|daily|\\d times a day)`,
    (m) => `| plan plantarflexion exercises ${remark(m[0])} |`,
  ],
  [
    `boot off (?:and )?(?:into )?(?=(?:an? )?(?:rocker|stiff|trainers?|normal|wide|post op shoe|carbon)(?: (?:soled? )?(?:shoes?|soles?|insoles?|insert|plate))?(?![^ ])${NOT_THEN})`,
    `| plan no boot ${remark('off')} | plan `,
  ],
  [
    `(?:switch|change|move|swap)(?: over)? (?:to|from (?:tape|taping) to) (?:an? )?(?:silicone |toe )*(splint|spacer|prop)${NOT_THEN}`,
    (m) => `| plan ${m[1]} ${remark(m[0])} |`,
  ],
  [
    `(?<!(?:was|been|were|not|never|gp|physio|against|nurse|had) )(?:advised|recommended|recommend|advise) ((?:elevation|ice|paracetamol|ibuprofen|naproxen|wide shoes|calf stretches|stretches|${MEASURE})(?:(?: ,| and| ,? and)+ (?:elevation|ice|paracetamol|ibuprofen|naproxen|wide shoes|calf stretches|stretches|${MEASURE}))*)(?= ,| ;|$|\\n| \\|)`,
    (m) =>
      `${(m[1] ?? '')
        .split(/ (?:, and|,|and) /)
        .map((each) => `| plan ${each} ${remark('advised')}`)
        .join(' ')} |`,
  ],
  // Where the load goes, the pin and the sutures.
  [
    `(?<!(?:plan|operation|continue|no|not|was|been) )(non weight bearing|partial weight bearing|full weight bearing|heel weight bearing)(?: for)?( ${NUM} ${TIME})${ENDS}`,
    (m) => (isPast(m) || isOperation(m) ? undefined : `| plan ${m[1]} for${m[2]} |`),
  ],
  [
    `(?:(plantar|dorsal) )?(?:sutures|stitches) (?:to )?(?:stay|stay in|remain|in|stay put)?(?: for)? ?(\\d+ (?:days|weeks))(?= ,| ;|$|\\n| \\|| non| heel| weight| partial| boot| wires?| pins?| no| review| then)`,
    (m) => `| plan sutures out at ${m[2]}${m[1] ? ` ${remark(m[1])}` : ''} |`,
  ],
  [
    `(?<!(?:most|some|half|alternate|other|should|must|if) )(?:sutures|stitches) (?:to )?(?:stay|remain|left)(?: in)?(?= ,| ;|$| check| review| wound| no| another)(?! another)`,
    () => `| exam sutures in place ${remark('stay in')} |`,
  ],
  [
    `(?:k-wires?|wires?|pins?) (?:to )?(?:stay|stays|remain|remains)(?: in)?(?: for)? (\\d+ (?:days|weeks))${NOT_THEN}`,
    (m) => `| plan pin-out at ${m[1]} ${remark('stays')} |`,
  ],
  [`(?:plan )?(?:wound|dressing) check (?:in|at) (${NUM} ${TIME})`, '| plan wound check in $1 |'],
  [
    `(?:plan )?dressing change (tomorrow|on ${DAY}|${DAY}|next week)`,
    (m) => `| plan dressing change ${remark(m[1] ?? '')} |`,
  ],
  [
    `keep (?:it |the foot |foot )?elevated(?: (?:for )?(\\d+ (?:hours|days|weeks)))?(?= ,| ;|$|\\n| \\|| heel| non| and| weight)`,
    (m) => `| plan elevation ${m[1] ? remark(m[1]) : ''} |`,
  ],
  [
    `(?<!plan )(?:k-wires?|wires?|pins?) (?:to come )?out (?:at |in |after )?(?:week (\\d+)|(\\d+) weeks)${NOT_THEN}`,
    (m) => (isOrdered(m) ? `| plan pin-out at ${m[1] ?? m[2]} weeks |` : undefined),
  ],
  [
    `(?<!plan )(?:sutures|stitches) (?:to come )?out (?:at |in |after )?(?:week (\\d+)|(\\d+ (?:weeks|days)))${NOT_THEN}`,
    (m) => (isOrdered(m) ? `| plan sutures out at ${m[1] ? `${m[1]} weeks` : m[2]} |` : undefined),
  ],
  [
    `(?<=(?:shoe|boot|weeks|bearing|hours|dressing|plan) )(x-?ray|films?) (?:in|at) (\\d+ weeks)(?= ,| ;|$|\\n| \\|| review| no)`,
    (m) => (isOrdered(m) ? `| plan xray in ${m[2]} |` : undefined),
  ],
  [
    `(${SCAN}) (?:ordered|requested|booked)(?: ,)?(?: and)? (?:review|see|back) (?:after(?:wards)?|with (?:the )?results?|then)(?= ,| ;|$|\\n| \\|)`,
    (m) => `| plan ${scan(m[1] ?? '')} | plan review with results |`,
  ],
  // When to come.
  [
    `(?:plan )?no (?:further |more |routine )?(?:follow up|review)(?: (?:booked|arranged|needed|required|planned|appointment|made|necessary))?(?= ,| ;|$|\\n| \\|| rings?| calls?| back)`,
    (m) =>
      `| plan no follow up ${/booked|arranged|needed|required|planned|made|necessary/.exec(m[0])?.[0] ? remark(/booked|arranged|needed|required|planned|made|necessary/.exec(m[0])?.[0] ?? '') : ''} |`,
  ],
  [
    `(?:and )?${COMES}(?: only)? if ${IF}(?= ,| ;|$|\\n| \\|| keeps| \u00a7)`,
    (m) => `| plan review sos ${remark(m[0].replace(/^(?:and |to )+/, ''))} |`,
  ],
  [
    `(?:come|comes|to come|coming|bring her|bring him)(?: back)? in (tomorrow|on ${DAY}|today) (?:for|with) (?:an? )?(?:new |repeat )*(${SCAN})${NOT_THEN}`,
    (m) =>
      `| plan ${scan(m[2] ?? '')} ${remark(m[1] ?? '')} |${m[1] === 'tomorrow' ? ` plan review in 1 day ${remark('come in')} |` : ''}`,
  ],
  [
    `(?:review|see|back) then with (?:an? |new |repeat |weight bearing |standing |wb )*(${SCAN})`,
    (m) =>
      `| plan review ${timeOf(m)}with ${scan(m[1] ?? '') === 'xray' ? 'film' : scan(m[1] ?? '')} ${remark(m[0])} |`,
  ],
  [
    `(?:review|see|back)(?: (?:her|him))? (?:then|at that (?:point|stage|time)|after that)(?= ,| ;|$|\\n| \\|)`,
    (m) => {
      const time = timeOf(m);
      return time === '' ? undefined : `| plan review ${time}|`;
    },
  ],
  [
    `(${SCAN}) (?:of |to )?(?:the )?(web [1-4])(?: and (?:the )?(?:plantar )?plate)? (?:, )?(?:and )?then (?:decide|review|see)`,
    (m) => `| plan ${scan(m[1] ?? '')} ${m[2]} |`,
  ],
  [
    `(?:control|check|repeat|further|follow up) (x-?ray|mri|ultrasound|films?) (?:in|at) (${NUM} ${TIME})`,
    (m) => `| plan ${scan(m[1] ?? '')} in ${m[2]} |`,
  ],
  [
    `(?<=(?:^|[,;|] |now |and ))(x-?ray|mri|ultrasound|films?) in (${NUM} ${TIME})(?= ,| ;|$|\\n| \\|| and| review| no| physio)`,
    (m) => `| plan ${scan(m[1] ?? '')} in ${m[2]} |`,
  ],
  [
    `(?:so )?discharged(?: (?:from (?:clinic|follow up|care|my care)|today))?(?= ,| ;|$|\\n| \\|| back| with| rings)(?<!(?:was|been|is|got|wound|pus|not|be|when) discharged(?: from clinic| today)?)`,
    '| plan discharge |',
  ],
  [
    `(?:referred|refer) to (rheumatology|podiatry|vascular|orthotics)(?= |$)(?<!(?:was|been|not|had) (?:referred|refer) to [a-z]+)`,
    '| plan refer $1 |',
  ],
];
/** What goes on with a list of orders, once the orders are written. */
export const ORDER_LISTS: readonly Phrase[] = [
  // A speciality in a list of orders.
  [
    `(?<=(?:plan|refer) [^;\\n]*[,|] )(podiatry|rheumatology|vascular|physiotherapy|physio)(?: referral)?(?= ,| ;|$|\\n)`,
    (m) => (/physio/.test(m[1] ?? '') ? '| plan physio |' : `| plan refer ${m[1]} |`),
  ],
  // After what is not done, said to its end, stands what is.
  [
    `(?<=plan no [a-z]+ "[^"]*" \\| (?:, )?)(?:an? )?(?:padded |soft |new )?(${MEASURE}|stiff soled? shoe)(?= ,| ;|$|\\n| and| \\|)`,
    (m) => `| plan ${(m[1] ?? '').replace(/^stiff sole.*$/, 'stiff sole')} |`,
  ],
];
/** Is an order meant, and nothing that has been done: by its section, or in the note of an operation that names no time since. */
const isOrdered = (m: RegExpMatchArray): boolean => {
  const sofar = (m.input ?? '').slice(0, m.index);
  return (
    !isPast(m) &&
    (/(?<![^ ])plan(?![^ ])/.test(before(m)) ||
      (isOperation(m) && !/(?<![^ ])(?:ago|after|since|post)(?![^ ])/.test(sofar)))
  );
};
/** In the note of an operation its orders are read as they stand. */
const isOperation = ({ input = '' }: RegExpMatchArray): boolean =>
  /(?<![^ ])(?:operation|tourniquet|approach|incision|closed|closure)(?![^ ])/.test(input);
