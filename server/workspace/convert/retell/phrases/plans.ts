import { NUM, OF, type Phrase, RAY, RAYS, remark, THE, TIME } from './phrase.ts';
import { MEASURE } from './tried.ts';

const PROCEDURE =
  '(?:weil osteotom(?:y|ies)|weils?|(?:direct |dorsal )?(?:plantar )?plate repair|pip fusion|toe fusion|flexor tenotomy|flexor transfer|tendon transfer|extensor lengthening|bunion (?:correction|surgery)|hallux valgus correction|neuroma excision|neurectomy|scarf osteotomy|scarf|akin)';
const named = (found: string): string => found.replace(/^(?:direct|dorsal) /, '').replace(/osteotomies|weils/, 'weil');
/** Each procedure with its own ray, or that of the one before it. */
function procedures(first: string, list: string): string {
  let ray = first;
  return [...list.matchAll(new RegExp(`(?:(${RAYS}) )?(?:toe |metatarsal )?(${PROCEDURE})`, 'g'))]
    .map((m) => {
      ray = m[1] ?? ray;
      return `| plan ${named(m[2] ?? '')} ${ray}`;
    })
    .join(' ');
}
const SCAN =
  '(?:(?:weight bearing |repeat |new |urgent |wb |standing )*(?:mri|ultrasound|x-rays?|xrays?|films?|radiographs?|ct)(?: scan)?)';
const scan = (found: string): string => {
  const by = /mri/.test(found) ? 'mri' : /ultra/.test(found) ? 'ultrasound' : /ct(?: |$)/.test(found) ? 'ct' : 'xray';
  const urgent = /urgent/.test(found) ? ` ${remark('urgent')}` : '';
  return `${/weight|wb|standing/.test(found) && by === 'xray' ? 'wb ' : ''}${by}${urgent}`;
};
const I_WILL =
  "(?:so |and |then |now )*(?:i'll|i will|we'll|we will|i'd like to|i would like to|i want to|we want to|i'd like|we'd like to|i've asked (?:her|him) to|i have asked (?:her|him) to|let's|lets|i'm going to|i am going to|we're going to|we are going to|we are to|i plan to|we plan to|plan is|plan is to|plan will be to|my plan is to|the plan is to|plan to|plan for today is|i would|i'd|we would|we'd)";
const VERB =
  '(?:tape|strap|review|see|refer|request|order|arrange|book|get|start|stop|use|put|keep|continue|carry on|try|trial|give|fit|inject|list|organi[sz]e|send|repeat|do|add|have|wean|stay|go)';
const HER = '(?: her| him| them| the patient| you)?';
const A = '(?: an?| the| her| his| some| on an?| on the)?';

/** What is planned, said as an order or a promise. */
export const PLANS: readonly Phrase[] = [
  [`(?<!not )${I_WILL} (?=${VERB}(?: |$))(?!not|rather|see if)`, '| plan '],
  [`(?<!not )${I_WILL}(?: her to| him to| to)? (?=(?:an? )?(?:${MEASURE}|${SCAN})(?: |$))`, '| plan '],
  ['plan (?:to|is to|is|for|will be|will be to|would be to)(?= )', 'plan'],
  [
    `(?:and |so )?(?:i )?(?:told|advised|asked) (?:him|her) to (?=carry on|continue|keep|stop taping|use|wear|tape|start)`,
    '| plan ',
  ],
  // Images.
  [`(${SCAN}) (?:requested|ordered|arranged|booked)(?= ,| ;|$| and| \\|)`, (m) => `| plan ${scan(m[1] ?? '')} |`],
  ['(?:taping|strapping) (?:shown|taught|demonstrated|applied)(?: today)?', '| plan tape |'],
  [
    `(?:plan )?(?:(?:get|order|request|arrange|book|organi[sz]e|send(?:${HER}) for|do|needs?|have)(?: her| him)? )?(?:an? |for an? )?(?<=(?:plan|get|order|request|arrange|book|organise|organize|for|needs|need|do|have|an|a) )(${SCAN}) and (?:an? )?(${SCAN})(?: ${OF} ${THE}(${RAYS})(?: mtp| toe| joint)*)?(?! shows?| result)`,
    (m) => `| plan ${scan(m[1] ?? '')} | plan ${scan(m[2] ?? '')} ${m[3] ?? ''} |`.replace(/ +/g, ' '),
  ],
  [
    `(?:plan )?(?:(?:get|order|request|arrange|book|organi[sz]e|send(?:${HER}) for|do|repeat)(?: her| him)? )(?:an? |for an? |the )?(${SCAN})(?: ${OF} ${THE}(${RAYS})(?: mtp| toe| joint)*)?(?: to (?:look at|check|assess|confirm)(?: ${THE}(?:plantar )?plate)?)?(?: (?:in|at) (${NUM} ${TIME}))?(?! if| only| unless)(?=(?: |$))`,
    (m) =>
      `| plan ${/repeat/.test(m[0]) && !/repeat/.test(m[1] ?? '') ? 'repeat ' : ''}${scan(m[1] ?? '')} ${m[2] ?? ''}${m[3] ? ` in ${m[3]}` : ''} |`
        .replace(/ +/g, ' ')
        .replace('repeat ultrasound', 'repeat us'),
  ],
  [
    `(${SCAN})(?: ${OF} ${THE}(${RAYS}))? (?:please|urgently|this week|next week|within the week)(?! show)`,
    (m) =>
      `| plan ${scan(m[1] ?? '')} ${m[2] ?? ''}${/please/.test(m[0]) ? '' : ` ${remark(/\S+(?: week)?$/.exec(m[0])?.[0] ?? '')}`} |`.replace(
        / +/g,
        ' ',
      ),
  ],
  [`(mri|ultrasound|xray|ct) urgent`, (m) => `| plan ${m[1]} ${remark('urgent')} |`],
  [
    `(?<=plan [^;|]*?)(?<!plan )(?:and |, )?(?:an? )?(${SCAN})(?= ,| ;|$| and| to look)(?: to (?:look at|check|assess) ${THE}(?:plantar )?plate)?`,
    (m) => `| plan ${scan(m[1] ?? '')} |`,
  ],
  [`plan (${SCAN})(?= ,| ;|$| and)`, (m) => `plan ${scan(m[1] ?? '')}`],
  ['urgent (mri|ultrasound|xray|ct)(?! show| from)', (m) => `| plan ${m[1]} ${remark('urgent')}`],
  // Measures.
  [
    '(?:back to|return to) (running|cycling|swimming|walking|dancing|football|sport) (now|straight away|today)',
    (m) => `| plan return to ${m[1]} ${remark(m[2] ?? '')} |`,
  ],
  [
    `(?<=plan return to [^;]*\\| ?(?:and )?)(running|sport|impact|dancing|football) (?:at|from|after) (${NUM} ${TIME})`,
    '| plan return to $1 from $2 |',
  ],
  ['(?<!plan )keep (?:it |the wound |the dressing )?dry', '| plan keep dry |'],
  [
    `(?<!plan |operation |continue )heel weight bearing(?: for)?( ${NUM} ${TIME})?(?= ,| ;|$| stitches| sutures| \\|)`,
    (m) => `| plan heel weight bearing${m[1] ? ` for${m[1]}` : ''} |`,
  ],
  [
    "(?:and |i'll )?see (?:him|her) once (?:it's|it is|that's|that is) (?:done|back|through|reported)",
    '| plan review with results |',
  ],
  [
    'stop smoking advice|advice to stop smoking|(?:advised|asked) to stop smoking(?= ,| ;|$)|smoking cessation(?: advice)?',
    '| plan smoking cessation |',
  ],
  [`(?:keep|leave) (?:the |her |his )?(tape|taping|strapping|boot|pad|splint) on`, '| plan $1 |'],
  ['(\\d+) more (weeks|months)', '$1 $2'],
  [
    `(?:i said|i've said|i advised|advised|told (?:her|him)|i told (?:her|him))(?: to have)? (?=no (?:running|sport|dancing|impact|heels|high heels|football|jumping))`,
    '',
  ],
  [
    `(?:so )?discharge(?:d)?(?: (?:her|him))? with advice on (?:calf )?stretch(?:es|ing)`,
    '| plan discharge | plan calf stretches |',
  ],
  [
    '(?<!(?:since|after|following|from|post|last|previous|earlier|first|for|of|had|with|no|not|tried) )(?:so |and )?(?:ultrasound guided |us guided )?(steroid|cortisone)(?: injection)?(?: to| into| in)?(?: the)? (web [1-4]|[2-5](?:nd|rd|th)(?: mtp)?)(?= ,| ;|$| then| and| review| wide)(?<!tried [^;]*)',
    (m) => `| plan steroid ${m[2]}${/guided/.test(m[0]) ? ' us-guided' : ''} |`,
  ],
  [
    `(?:plan )?(?:keep|carry on|continue|keep on) (?:taping|strapping)(?: (at night|at weekends|on weekends|for sport))?(?: for (?:another )?(${NUM} ${TIME}|1 month|month))?`,
    (m) => `| plan tape ${m[2] ? `for ${m[2] === 'month' ? '1 month' : m[2]} ` : ''}${m[1] ? remark(m[1]) : ''} |`,
  ],
  ['(?:refer|referred|send) back to (rheumatology|podiatry|physiotherapy|vascular|orthotics)', '| plan refer $1 |'],
  [
    "(?:she|he)(?:'ll| will) go on (?:the|our) waiting list|(?:put|add)(?: her| him)? on (?:the|our) waiting list|goes? on the waiting list",
    '| plan listed |',
  ],
  [
    `(?:she|he) can go (?:in(?:to)? |back in(?:to)? )(?:an? )?(?:wide |normal |ordinary |his |her )*(?:trainers?|shoes?|runners|sneakers?)`,
    '| plan trainers |',
  ],
  ['start (?:passive and active |active and passive |passive |active )?(?:toe )?exercises', '| plan toe exercises |'],
  ['(buddy tape) and (?:an? )?stiff (insole|shoe|sole)', '| plan $1 | plan stiff $2 |'],
  ['(buddy tape) and (?:an? )?stiff soled shoe', '| plan $1 | plan stiff sole |'],
  ['fracture clinic(?: (?:next week|in a week|follow up|review))?(?= |$)', '| plan refer fracture clinic |'],
  [
    `(?:with )?(?:plan )?vitamin d(?: level)?(?: check)?(?= ,| ;|$| and| please)(?<=(?:plan|boot|check|and|,|bloods) [^;]*)`,
    '| plan vitamin d |',
  ],
  [
    `plan (?:is )?(?:for )?(?:an? )?bunion correction(?: and ([2-5](?:nd|rd|th)) toe correction)?`,
    '| plan bunion correction |',
  ],
  [
    `(${RAYS}) (?:plantar )?plate repair (?:and|with) weil (?:is |are )?planned`,
    '| plan plate repair $1 | plan weil $1 |',
  ],
  [
    `(?:plan )?(?:treat(?:ed)? with|try|trial(?: of)?|start(?:${HER})(?: on)?|put(?:${HER})? (?:in(?:to)?|on)|fit(?:${HER})(?: with)?|give(?:${HER})|add|go (?:in|into|to)|get(?:${HER}) (?:in(?:to)?|on))${A} (?=${MEASURE}(?: |$))`,
    '| plan ',
  ],
  [
    `(?:plan )?(?:carry on|continue|keep on|keep going|persist|stay|remain|keep|stick)(?: with| in| on| using| wearing)?${A} (?=${MEASURE}(?: |$))`,
    '| plan continue ',
  ],
  [
    `(?:plan )?(?:stop|lose|ditch|come out of|out of|finish|no more|get rid of|drop)${A} (?:wearing |using )?(taping|tape|strapping|boot|insoles?|pad|crutches|carbon plate|post op shoe)(?= ,| ;|$| and| but| now| see| keep| review| she| he| no)`,
    (m) =>
      `| plan no ${m[1]} ${remark(/stop|lose|ditch|out of|finish|no more|get rid of|drop/.exec(m[0])?.[0] ?? '')} |`,
  ],
  [`told (?:her|him) (?:she can (?:come )?|he can (?:come )?|to (?:come )?)?(?=\\| plan no )`, ''],
  [
    `(?<=\\| plan no [^;]*)no (running|heels|high heels|dancing|sport|football|impact|barefoot) (until (?:january|february|march|april|may|june|july|august|september|october|november|december)|until (?:she|he) [a-z ]+)`,
    (m) => `| plan no ${m[1]} ${remark(m[2] ?? '')} |`,
  ],
  [
    `(?:plan )?(?:to )?(?:tape|strap) (?:it|the toe|the second|the 2nd|2nd|the second toe|the 2nd toe|them)(?: down| in plantarflexion| in flexion)*(?: for(?: another)? (${NUM} ${TIME}))?`,
    (m) =>
      `| plan tape ${/2nd|second/.test(m[0]) ? '2nd ' : ''}${/flexion/.test(m[0]) ? 'in plantarflexion ' : ''}${m[1] ? `for ${m[1]}` : ''}`,
  ],
  ['(?:in )?(?:the )?post ?op (?:shoe|sandal)', 'post op shoe'],
  ['(?:plan )?(?:stay|remain) in (?=post op shoe)', '| plan '],
  [`(?<=plan [^;|]*)heel weight bearing for (\\d+) more (weeks)`, '| plan heel weight bearing for $1 $2'],
  [
    `(?:plan )?(?:no (?:more|further|repeat|additional)|avoid (?:any )?(?:more|further)) (steroids?|injections?|cortisone|steroid injections?)(?: into (?:that|the|this) (?:joint|toe|space))?`,
    '| plan no $1',
  ],
  [
    `(?:plan )?no (running|dancing|jumping|football|sport|sports|impact|tennis|high heels|heels|barefoot walking|barefoot)(?: for)? (${NUM} ${TIME})`,
    '| plan no $1 for $2',
  ],
  [
    `(?:plan )?(?:back to|return to|resume|can start|restart)(?: gentle| light| easy)? (running|sport|dancing|football|cycling|swimming|impact)(?: from| at| in| after)? (?:week (\\d+)|(${NUM} ${TIME}))`,
    (m) => `| plan return to ${m[1]} ${m[2] ? `from ${m[2]} weeks` : `from ${m[3]}`} |`,
  ],
  [
    `(?:i've said |i have said |i said |i've told (?:her |him )|told (?:her |him ))?(?:that )?(?:she|he) (?:can|may) (?:start|go back to|return to|resume|get back to|restart)(?: gentle| light| easy)? (running|jogging|sport|dancing|football|cycling|swimming|impact) (?:from |at |in |after )?(?:week (\\d+)|(${NUM} ${TIME}))`,
    (m) => `| plan return to ${m[1]} ${m[2] ? `from ${m[2]} weeks` : `from ${m[3]}`} |`,
  ],
  [
    `(?:plan )?(?:carry on|continue|keep|start)(?: with)?(?: the)? (?=(?:heel weight bearing|heel walking|non weight bearing|partial weight bearing|full weight bearing)(?: |$))`,
    '| plan ',
  ],
  [
    `(?<=plan (?:heel|non|partial|full) weight bearing )(?:in|with) (?:an? |the )?(?=post op shoe|boot|walker)`,
    '| plan ',
  ],
  [`(?<=plan (?:post op shoe|boot) )(until (?:\\d+ ${TIME}|week \\d+))`, (m) => remark(m[1] ?? '')],
  [
    `(?:plan )?discharged?(?: (?:her|him|back))? to (?:the )?(physio|physiotherapy|gp|podiatry|orthotics)(?= |$)`,
    '| plan discharge to $1 |',
  ],
  [
    `no (?:surgery|operation) (for now|at this stage|at present|yet|at the moment)`,
    (m) => `| plan no surgery ${remark(m[1] ?? '')} |`,
  ],
  ["(?:she|he)(?:'s| is)? (?:happy|keen|content) to (?=keep|carry on|continue)", ''],
  // Operations.
  [
    `(?:i've |we've |i have )?(?:book|list|booked|listed)(?:${HER})(?: for)? (?:an? )?(${PROCEDURE}) and (?:an? )?(${PROCEDURE}) (?:of|on|to) ${THE}(${RAYS})`,
    (m) => `| plan listed | plan ${named(m[1] ?? '')} ${m[3]} | plan ${named(m[2] ?? '')} ${m[3]} |`,
  ],
  [
    `(?:i've |we've |i have )?(?:listed(?:${HER})|list(?:${HER})|booked(?:${HER})|booking|book(?:${HER})|add(?:ed)?(?:${HER}) to the list) for (?:an? )?(?=${PROCEDURE})`,
    '| plan listed | plan ',
  ],
  [
    `(?:plan )?(?:listed|list(?:${HER})|booked|booking|book(?:${HER})|add(?:ed)?(?:${HER}) to the list)(?: for)? (?:an? )?(?:(?:right|left) )?(?:(${RAYS}) )(?:toe |metatarsal |mtp )?(${PROCEDURE})((?:(?:,| and| with| plus)+ (?:an? )?(?:(?:${RAYS}) )?(?:toe |metatarsal )?${PROCEDURE})*)`,
    (m) => `| plan listed ${procedures(m[1] ?? '', `${m[2]}${m[3] ?? ''}`)} |`,
  ],
  [
    `(?<=plan [^;\\n]*?)(?:and |, |; , and |; and )?(?:an? |the )?(${PROCEDURE})(?: ${OF})? ${THE}(${RAYS})(?: metatarsals?| mets?| toes?| mtps?| heads?)*(?: (only))?(?= ,| ;|$| and (?![1-5](?:st|nd|rd|th))| with| day case|\\|| \\|)`,
    (m) => `| plan ${named(m[1] ?? '')} ${m[2]} ${m[3] ? remark('only') : ''} |`.replace(/ +/g, ' '),
  ],
  [
    `(?<=plan (?:${PROCEDURE}) (${RAYS})(?: "only")? \\|?) ?(?:and|with|plus) (?:an? )?(${PROCEDURE})(?= |$)`,
    (m) => ` | plan ${named(m[2] ?? '')} ${m[1]} |`,
  ],
  ['(?:as (?:a |an )?)day case', '| plan day case |'],
  // Reviews.
  [
    `(?<!(?:wound|dressing) )(?:and |then )?(?:plan )?(?:to )?(?:i'll |we'll |i will )?(?:review|see|follow up|come back|back|recheck|return|rebook|book|check)(?: (?:her|him|them|the patient|again|back|me|here|in clinic|in for clinic|for clinic|for review|on|to clinic|to me))* (?:in|at) (${NUM} ${TIME}|1 (?:week|month|year))(?: (?:with|for) (?:the |an? |her |his |repeat |new )*(mri|ultrasound|scan|results?|bloods|xray|x-rays?|films?)(?: results?)?)?`,
    (m) =>
      `| plan review in ${m[1]}${m[2] ? ` with ${/scan|result/.test(m[2]) ? 'results' : /film|x-?ray/.test(m[2]) ? 'film' : m[2]}` : ''} |`,
  ],
  [
    `(?:and |then )?(?:plan )?(?:i'll |we'll )?(?:review|see|back|come back)(?: (?:her|him|them|again|back|me|here|next week))*(?: after| with| once we have)(?: the| her| his)? (mri|ultrasound|scan|results?|bloods)(?: results?)?`,
    (m) =>
      `| plan review ${/next week/.test(m[0]) ? 'in 1 week ' : ''}with ${/scan|result/.test(m[1] ?? '') ? 'results' : m[1]} |`,
  ],
  [
    `(?:and |then )?(?:plan )?(?:i'll |we'll )?(?:review|see|back|come back)(?: (?:her|him|them|again|back|me|here))* next week`,
    '| plan review in 1 week |',
  ],
  [
    '(?:and )?(?:plan )?(?:ring|call|come back|return|phone|contact us)(?: me| us| again| back| here)* if (?:it is |it gets |things get |any |there are any |there is any )?(?:worse|problems?|trouble|concerns?|needed|it flares(?: up)?|flares(?: up)?|recurs)(?= ,| ;|$| \\|)',
    '| plan review if needed |',
  ],
  [`(?:plan )?(?:review|follow up) (?:as needed|if needed|prn|open)`, '| plan review if needed |'],
  [
    `(?:and )?(?:plan )?(?:refer|referral)(?: her| him| them)?(?: on)?(?: to| for)?(?: the| an?)? (rheumatology|podiatry|podiatrist|physiotherapy|physio|orthotics|orthotist|vascular|pain clinic|dietitian)(?= |$)`,
    (m) => (/pain|diet/.test(m[1] ?? '') ? undefined : `| plan refer ${m[1]} |`),
  ],
  [
    `(?<=plan [^;|]*)(\\d+) (weeks|months|days) ([^;|]*?(?:for|in)) (\\d+)(?= (?:,|;|and|review|see|back|\\|)|$)`,
    '$1 $2 $3 $4 $2',
  ],
  [
    `(?<=(?:^|[,;|\\n] |(?:boot|tape|taping|insoles?|pad|crutches) (?:and |, )?))((?:walker |walking )?boot|taping|tape|stiff insole|crutches|met pad|insoles?)(?: and| ,)? (?=(?:(?:crutches|stiff insole|taping|met pad) (?:and )?)*\\| plan)`,
    '| plan $1 ',
  ],
  [
    `(?<=(?:^|[,;|\\n] |(?:boot|tape|taping|insoles?|pad|crutches) (?:and |, )?))((?:walker |walking )?boot|taping|tape|stiff insole|crutches|met pad|insoles?)(?: and| ,)? (?=(?:(?:crutches|stiff insole|taping|met pad) (?:and )?)*\\| plan)`,
    '| plan $1 ',
  ],
  [`(?:tape|strapping) on for (${NUM} ${TIME})`, '| plan tape for $1'],
  ['\\| plan \\| plan', '| plan'],
  [`(?<=plan [^;|]*)(${RAY}) (taping|tape)`, '$2 $1'],
  [
    `(?<=impression [^|;]*\\| |plan [^|;]*\\| )(?:and )?(?:an? )?(${MEASURE})(?= ,| ;|$| and| ultrasound| mri| wider| \\||$)`,
    '| plan $1 |',
  ],
  [
    `(?<=plan (?:${MEASURE}) \\| )(?:and |, )?(?:an? )?(${MEASURE})(?= ,| ;|$| and| ultrasound| mri| \\||$)`,
    '| plan $1 |',
  ],
  [
    '(?<=plan [^|;]*\\| )(?:and )?(?:an? )?(ultrasound|mri) and review after(?:wards)?',
    '| plan $1 | plan review with results |',
  ],
];
