import { type Phrase, remark, TIME } from './phrase.ts';
import { ENDS, NOT_THEN } from './rays-said.ts';

/** Measures that have a name here: an injection without its agent has none that says enough. */
const KNOWN =
  '(?:(?:custom |foot |soft )*(?:orthotics?|orthoses|insoles?)|shoe inserts|taping|tape|strapping|met(?:atarsal)? (?:pad|dome)s?|gel pads?|pads|stiff (?:insole|insert|shoe|sole)s?|carbon (?:plate|insole)s?|rocker(?: soled?)?(?: shoes?)?|(?:walking |walker |air )?boot|physio(?:therapy)?|physical therapy|wide(?:r)? shoes|(?:calf )?stretch(?:es|ing)|toe (?:spacer|prop|splint)s?|budin splint|splint|ibuprofen|naproxen|diclofenac|(?:steroid|cortisone)(?: injections?| shots?)?)';
/** What follows a measure and its time where it was tried, and is not planned. */
const OUTCOME =
  '(?= (?:[,;] )?(?:pain|pains|no pain|tenderness (?:gone|less)|swelling (?:down|gone|less)|no (?:better|help|relief|benefit|effect|difference|use|change)|some (?:help|relief|better)|better|worse|helped|much|walking|settled|symptoms|\\d+% )(?= |$))';
const TIMES = `~?\\d+(?:-\\d+)? ${TIME}`;
/** How they answered, in the words of the language. */
const ANSWERS: readonly (readonly [said: string, is: string])[] = [
  [
    '(?:no|not much|not any|without(?: any)?|of no) (?:use|help|good|benefit|relief|effect|difference|joy|improvement)|no better|useless|unhelpful|did nothing|does nothing',
    'no relief',
  ],
  ['(?:some|a bit of|a little|partial|slight|limited) (?:use|help|benefit|relief|effect|improvement)', 'some relief'],
  ['(?:good|great|excellent|real) (?:help|benefit|relief|effect)', 'good relief'],
  ['help(?:s|ed)? (?:a bit|a little|somewhat|slightly|a touch)', 'helped a bit'],
  ['(?:helps|helped)', 'helped'],
];
/** An answer may be of one thing only: of the rest of its phrase then. */
const OF_ONE_THING =
  '(?! (?:of|for|to|in|on|at|after|with|if|when|than|until|during|from|or|as|but|though|once|while|because|whether|left|right|the|her|his|him|my|me|them|people|other|an?|she|he|it|this|that|expected|hoped|likely)(?: |$))';
const WORN = '(?: (?:worn|used|tried|done|daily))?';
const FROM = '(?: (from (?:the|a) (?:chemist|pharmacy|shop|gp|podiatrist|internet)|online|off the shelf))?';
const SINCE = `(?: (since [a-z]+|on and off|most days)| (?:for )?(${TIMES}))?`;
const NOT_OURS =
  '(?<!(?:no|not|never|if|that|when|any|plan|tried|met|stiff|gel|night|ankle|wrist|knee|without|whether|until|than|of|from|for|consider|try|more|other|old|heard|says|told|the other|continue|with|and|or) )';

/** The words of this sentence before a match. */
const before = ({ input = '', index = 0 }: RegExpMatchArray): string =>
  input.slice(Math.max(input.lastIndexOf(';', index), input.lastIndexOf('\n', index)) + 1, index);
const isPlanned = (m: RegExpMatchArray): boolean =>
  /(?<![^ ])(?:plan|will|should|would|could|try|trial|consider|advise\w*|recommend\w*|next|then|start|give|not|if)(?![^ ])/.test(
    before(m),
  );
const tried = (measure: string, rest: string): string => `| tried ${named(measure)} ${rest}`;
/** The names that the language has for a measure. */
const named = (measure: string): string =>
  measure
    .replace(/^(?:custom |foot |soft )*(?:orthotics?|orthoses|shoe inserts)$/, 'insoles')
    .replace(/^(?:taping|strapping)$/, 'tape')
    .replace(/^(steroid|cortisone) shots?$/, '$1 injection')
    .replace(/^rocker(?! shoe).*$/, 'rocker sole')
    .replace(/^wide shoes$/, 'wide shoes');

/** One of several that failed, with its number and its year. */
function failed(list: string): string | undefined {
  const each = list.split(/ (?:, and|, or|,|and|or|plus) /);
  const found = each.map((item) =>
    new RegExp(`^(?:an? |the )?(?:(\\d|one|two|three|an?) )?(${KNOWN})( last year| this year)?$`).exec(item.trim()),
  );
  if (found.some((one) => one === null)) return undefined;
  return found
    .map((one) => {
      const [, count = '', measure = '', year] = one ?? [];
      const number = COUNTS[count] ?? (/^\d$/.test(count) ? count : undefined);
      const times = number !== undefined && /^(?:steroid|cortisone)/.test(measure) ? `times ${number} ` : '';
      return tried(measure, `${times}no relief${year ? ` ${remark(year.trim())}` : ''}`);
    })
    .join(' ');
}
/** Blood tests as they are called. */
const BLOOD = 'rheumatoid factor|rf|crp|esr|anti-?ccp|ccp|urate|hba1c';
const COUNTS: Readonly<Record<string, string>> = { one: '1', two: '2', three: '3' };
const ITEM = `(?:an? |the )?(?:(?:\\d|one|two|three) )?${KNOWN}(?: last year| this year)?`;
const ITEMS = `${ITEM}(?:(?: ,)?(?: and| or| plus| ,)? ${ITEM})*`;

/** Treatments that are named first, with how long they were kept and what they did. */
export const COURSES: readonly Phrase[] = [
  // A note that opens with a measure, its time, and what came of it.
  [
    `(?<=^)(${TIMES})(?: of| in| with)?(?: an?| the)? (${KNOWN})(?: and (?:an? )?(${KNOWN}))?${OUTCOME}`,
    (m) => `${[m[2], m[3]].flatMap((each) => (each ? [tried(each, `for ${m[1]}`)] : [])).join(' ')}`,
  ],
  [
    `(?<=^)(${KNOWN})(?: and (?:an? )?(${KNOWN}))?(?: worn| for)? (${TIMES})${OUTCOME}`,
    (m) => `${[m[1], m[2]].flatMap((each) => (each ? [tried(each, `for ${m[3]}`)] : [])).join(' ')}`,
  ],
  [
    `(?<=(?:^|[,;|\\n] ))(?:(?:she|he) (?:has )?)?(${TIMES})(?: of)? (?:taped|strapped|been taping)(?= |$)(?! (?:from|until|before|after|then))`,
    (m) => (isPlanned(m) ? undefined : tried('tape', `for ${m[1]}`)),
  ],
  [
    `(?<=(?:^|[,;|\\n] ))(?:has )?(?:taped|strapped)(?: it| the toe)? (?:for )?(${TIMES})(?= |$)`,
    (m) => (isPlanned(m) ? undefined : tried('tape', `for ${m[1]}`)),
  ],
  // What failed.
  [
    `(?:has |have |had )?failed (${ITEMS})(?! (?:to|because|if))`,
    (m) => (/(?<![^ ])(?:if|not|never|until|once|when)(?![^ ])/.test(before(m)) ? undefined : failed(m[1] ?? '')),
  ],
  [
    `(?<=(?:^|[,;|\\n] ))(${ITEMS}) (?:have |has |had |all |both )*failed${ENDS}`,
    (m) => (isPlanned(m) ? undefined : failed(m[1] ?? '')),
  ],
  [
    `(?<=injections and )(${KNOWN}) (?:have |has |all |both )*failed`,
    (m) => (isPlanned(m) ? undefined : tried(m[1] ?? '', 'no relief |')),
  ],
  [
    `(?:not|no) better (?:despite|in spite of) (${ITEMS})${ENDS}`,
    (m) => (/(?<![^ ])(?:if|when|until|once)(?![^ ])/.test(before(m)) ? undefined : failed(m[1] ?? '')),
  ],
  // What a measure did.
  ...ANSWERS.map(
    ([said, is]): Phrase => [
      `${NOT_OURS}(?:the |an? )?(${KNOWN})${FROM}${WORN}${SINCE}(?: ,)? (?:${said})${OF_ONE_THING}`,
      (m) => {
        const [, measure = '', from, since, time] = m;
        const told = [from, since].flatMap((each) => (each ? [remark(each)] : []));
        return isPlanned(m)
          ? undefined
          : `${[tried(measure, ''), ...(time ? [`for ${time}`] : []), ...told, is].join(' ')} |`.replace(/ +/g, ' ');
      },
    ],
  ),
  [
    `(${TIMES}) (?:after|since|following|post|from) (?:the |her |his |an? )?(?:(last|first|second) )?(steroid|cortisone)(?: injections?| shot)?(?: (?:in|into|to|of))?(?: the)? (web [1-4]|[2-5](?:nd|rd|th)(?: mtp)?)(?= ,| ;|$| pain| no| mulders| still| click| swelling)`,
    (m) => `| tried ${m[3]} ${m[4]} ${m[1]} ago${m[2] ? ` ${remark(m[2])}` : ''} |`,
  ],
  [
    `((?:${BLOOD})(?:(?: ,| and)* (?:${BLOOD}))*) (?:sent|taken|drawn|sent off|done today)(?! (?:last|elsewhere|back))`,
    (m) => `| lab bloods sent ${(m[1] ?? '').replaceAll(/ (?:,|and)(?= )/g, '')} |`,
  ],
  [
    `(?<!(?:if|not|until|when|once|felt|no|any) )(no )?(?:better|relief|benefit|help|improvement) (?:with|from|by) (?:the |her |his |an? )?(${KNOWN})(?= ,| ;|$|\\n| \\|| and| but| no)`,
    (m) =>
      isPlanned(m) || (!m[1] && !/^better with/.test(m[0]))
        ? undefined
        : `${tried(m[2] ?? '', m[1] ? 'no relief' : 'helped')} |`,
  ],
  [
    `(?<!(?:no|not|never|declined|refused|plan|offered|second|repeat|for|if|after|since) )(?:an? )?(steroid|cortisone)(?: injections?| shot)?(?: (?:in|into|to))?(?: the)? (web [1-4]|[2-5](?:nd|rd|th)(?: mtp)?(?: joint)?)(?: ((?:in|last) (?:january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter)|${TIMES} ago))?(?: ,)? (?:helped|lasted|gave relief|worked)(?: for)? (${TIMES})(?! (?:ago|at))`,
    (m) => {
      const when = m[3] ? (/ago$/.test(m[3]) ? m[3] : remark(m[3])) : '';
      return isPlanned(m)
        ? undefined
        : `| tried ${m[1]} ${m[2]} ${when} helped ${remark(`for ${m[4]}`)} |`.replace(/ +/g, ' ');
    },
  ],
  [
    `${NOT_OURS}(?:the |her |his )?(${KNOWN}) (rubs?|rubbing|(?:is |are )?(?:very )?(?:un)?comfortable|not worn|(?:does not|doesn't) fit)(?= ,| ;|$|\\n| \\|)`,
    (m) =>
      isPlanned(m)
        ? undefined
        : `${tried(m[1] ?? '', /not worn/.test(m[2] ?? '') ? 'not kept' : remark(m[2] ?? ''))} |`,
  ],
  [
    `(?<=(?:^|[,;|\\n] ))(taping|tape|insoles|orthotics|splint|boot|physio) stopped (${TIMES} ago)(?= ,| ;|$|\\n| \\|)`,
    (m) => `${tried(m[1] ?? '', remark(`stopped ${m[2]}`))} |`,
  ],
  [
    `(?<!(?:not|no longer|if|never|start|stop|try|for|by|from|of|when|while) )(?:(?:she|he) is |she's |he's )?(?:wearing|using)(?: the| her| his| an?)? (${KNOWN}) (now|daily|every day|at work)(?= ,| ;|$|\\n| \\|)`,
    (m) =>
      isPlanned(m) ? undefined : `${tried(m[1] ?? '', /day|daily/.test(m[2] ?? '') ? 'daily' : remark(m[2] ?? ''))} |`,
  ],
  // What is kept up.
  [
    `(?:(?:she|he|who) )?(?:tapes|straps)(?: it| the toe)?(?: up| down)? (daily|every day)${NOT_THEN}`,
    (m) => (isPlanned(m) ? undefined : `${tried('tape', 'daily')} |`),
  ],
  [
    `(?:(?:she|he|who) )?(?:wears|uses)(?: the| her| his| an?)? (${KNOWN}) (daily|every day|most days|at work|all the time)`,
    (m) =>
      isPlanned(m)
        ? undefined
        : `${tried(m[1] ?? '', /^(?:daily|every day)$/.test(m[2] ?? '') ? 'daily' : remark(m[2] ?? ''))} |`,
  ],
  [
    `(?:is |she's |he's )?still (?:(?:wearing|using|in|doing)(?: the| her| his| an?)? )?(taping|insoles|met pad|pads|toe spacer|splint)${ENDS}`,
    (m) => (isPlanned(m) ? undefined : `${tried(m[1] ?? '', remark('still'))} |`),
  ],
  // What was never tried, or did not agree.
  [
    `no (injections?|steroid(?: injections?)?|cortisone|physio(?:therapy)?|orthotics?|insoles?|tape|taping|treatment injections) (?:so far|to date|before now|as yet)${NOT_THEN}`,
    (m) => `| tried no ${named(m[1] ?? '')} |`,
  ],
  [
    `(?:stopped|gave up|abandoned)(?: the| her| his)? (${KNOWN}) (?:because of|due to|for|with)(?: an?| the)? (?:skin )?(rash|blisters|irritation|reaction)`,
    (m) => `${tried(m[1] ?? '', `stopped because of ${/^(?:irr|rea)/.test(m[2] ?? '') ? 'skin ' : ''}${m[2]}`)} |`,
  ],
  [
    `(?<=(?:^|[,;|\\n] ))(tape|taping|insoles|orthotics|splint|boot) not tolerated${ENDS}`,
    (m) => `${tried(m[1] ?? '', 'stopped because of intolerance')} |`,
  ],
  [
    '(alcohol|steroid|cortisone|injection|injections)(?: injections?)? (declined|refused)(?! (?:by|to|because))',
    (m) => `| plan no ${/^(?:ster|cort)/.test(m[1] ?? '') ? 'steroid' : 'injection'} ${remark(m[0])} |`,
  ],
  [
    `(?:(?:second|third|repeat|another) )?(?:(?:steroid|cortisone) )?injection (?:given|done)?(?: today)?(?: (?:in|into|to))?(?: the)? (web [1-4]|[2-5](?:nd|rd|th)(?: mtp)?)(?: today)? (?:with )?(?:local|local anaesthetic|la|lidocaine) (?:plus|and|with) (?:steroid|cortisone)`,
    (m) => (/given|done|today/.test(m[0]) ? `| tried steroid ${m[1]} la ${remark('given today')} |` : undefined),
  ],
];
