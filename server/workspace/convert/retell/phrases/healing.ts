import { COMPLETE_MARK, type Phrase, remark } from './phrase.ts';
import { ENDS, NTH, rays } from './rays-said.ts';

const AMOUNT = '(?:(slightly|mildly|a bit|a little|moderately|markedly|very) )?';
const DEGREE: Readonly<Record<string, string>> = {
  slightly: 'slight',
  mildly: 'mild',
  'a bit': 'slight',
  'a little': 'slight',
  moderately: 'moderate',
  markedly: 'marked',
  very: 'marked',
};
const whole = (text: string): string => `${COMPLETE_MARK}${text.replaceAll(' ', '\u200b')}`;
/** Weeks since the operation that the note opens with, against those of an event: was it before today? */
function isBefore({ input = '', index = 0 }: RegExpMatchArray, count: string, unit: string): boolean {
  const now = /(?<![^ ])(\d+) (days?|weeks?|months?|years?) (?:ago|after|out|post|from|since)(?![^ ])/.exec(
    input.slice(0, index),
  );
  const days = (number = '', word = '') =>
    Number(number) * (word.startsWith('day') ? 1 : word.startsWith('week') ? 7 : word.startsWith('month') ? 30 : 365);
  return now !== null && days(now[1], now[2]) > days(count, unit);
}

/** The operated foot on its way, clipped. */
export const HEALING: readonly Phrase[] = [
  [
    `(?:the )?wound (?:edges?|margins?) (?:is |are |look )?${AMOUNT}(?:red|pink|reddened|erythematous)`,
    (m) => `| redness ${DEGREE[m[1] ?? ''] ?? ''} ${remark('wound edges')} |`,
  ],
  [
    '(?:the )?scar (?:is )?(?:soft|supple|mature|settled|flat|well healed)(?: and)? (?:not|non) tender',
    whole('scar not tender').replace('not', 'un'),
  ],
  ['(?:k-wires?|wires?|pins?) (?:is |are )?(?:still )?in(?= ,| ;|$| and| pin site| no| wound)', 'pin in situ'],
  [
    `(?:k-wires?|wires?|pins?) (?:was |were )?(?:came |taken |removed |pulled )?out (?:at|after) (\\d+) (days|weeks|months)(?! (?:from now|time|if))`,
    (m) => (isBefore(m, m[1] ?? '', m[2] ?? '') ? `| exam pin-out ${remark(`at ${m[1]} ${m[2]}`)} |` : undefined),
  ],
  [
    `(?:big|great) toe (?:is )?(still )?numb(?= ,| ;|$| second| no| and|\\n| 2nd| calf| wound)(?! (?:before|at first|until))`,
    (m) => `| 1st numbness ${m[1] ? remark('still') : ''} |`,
  ],
  [
    'dressings? (?:is |are )?(?:still )?(dry|intact|clean|clean and dry|dry and intact)',
    (m) => `| exam dressing ${remark(m[1] ?? '')} |`,
  ],
  [
    `(${NTH})(?: toe)? (?:is |now |sits |lies )*in line(?= ,| ;|$| and| no| not| with the others)`,
    (m) => `| ${rays(m[1] ?? '')} aligned |`,
  ],
  [
    '(?<!not )(?:sits|is|rests|down) on the (?:ground|floor)(?= ,| ;|$| and| push| no| still| drawer)',
    'touches ground',
  ],
  [
    `(?:motion |range )?(${NTH})(?: (?:toe|mtp(?: joint)?))?( stiff)?(?: ,)? (?:motion )?(\\d+)°? up (?:, )?(?:and )?(\\d+)°? down(?! (?:painful|painless|pain|with pain))`,
    (m) => {
      const ray = rays(m[1] ?? '');
      return `${m[2] ? `| ${ray} mtp stiff ` : ''}| ${ray} mtp dorsiflexion ${m[3]}° | ${ray} plantarflexion ${m[4]}° |`;
    },
  ],
  [
    "(?<!(?:not|never|no) )(?:is |she is |he is |she's |he's )?(?:now )?back (hiking|running|dancing|cycling|swimming|walking|jogging|playing football)(?= ,| ;|$| and| discharged| no| pain|\\n)",
    (m) => `| history activity ${(m[1] ?? '').replace('playing ', '')} ${remark('back')} |`,
  ],
  [
    `in (normal|ordinary|own|regular) (?:shoes|trainers) (since (?:week \\d+|[a-z]+))${ENDS}`,
    (m) => `| exam normal shoes ${remark(m[2] ?? '')} |`,
  ],
  [
    '(?<=(?:wound|pus|redness|red|discharge)(?: "[^"]*")?(?: \\|)? (?:, )?(?:[a-z]+ )?)not (?:warm|hot)(?= ,| ;|$| calf| toe| and| no| swollen)',
    'no heat',
  ],
  ['(?:the )?toes? (?:still )?(?:taped|strapped) (?:down|in plantarflexion)', whole('taped')],
  ['no (?:bleeding|ooze|strike ?through)(?= ,| ;|$| taking| no| calf| told| wound|\\n)', whole('bleeding')],
  [
    '(?<=(?:^|[,;|\\n] |and |now |today |dry |clean |healed |out ))(?:k-wires?|wires?|pins?) (?:was |were )?(?:pulled|taken out|extracted)(?: today)?(?= ,| ;|$|\\n| \\|| no| without| and)',
    '| exam pin-out |',
  ],
  [
    '(?<!(?:not|cannot) )(?:walks|wears|is) (?:in )?(normal shoes|ordinary shoes|own shoes|regular shoes|trainers|sneakers|runners)(?= ,| ;|$|\\n| \\|| no| and)',
    '| exam normal shoes |',
  ],
  [
    `(?<!(?:no|not|any) )transfer (?:pain|metatarsalgia) (?:under |at |of )?(?:the )?(${NTH})(?: (?:head|met head|metatarsal(?: head)?))?(?= ,| ;|$|\\n| \\|| drawer| callus| no)`,
    (m) => `| ${rays(m[1] ?? '')} transfer-pain |`,
  ],
  [
    `numb(?:ness)? (?:at |of )?(?:the )?tip (?:of )?(?:the )?(${NTH})(?: toe)?(?= ,| ;|$|\\n| \\|)|(?:tip of (?:the )?(${NTH})(?: toe)?|(${NTH}) toe tip) (?:still )?numb(?= ,| ;|$|\\n| \\|)`,
    (m) => `| ${rays(m[1] ?? m[2] ?? m[3] ?? '')} numb ${remark('tip')} |`,
  ],
  [
    'steri ?strips?(?: applied| on| in place)?|(?:small |tiny )?scab(?: (?:distal|proximal|distally|proximally))?(?= ,| ;|$|\\n)',
    whole('strips'),
  ],
  ['(?<=^)(?:post ?op(?:erative(?:ly)?)? )?week \\d+(?= ,| ;|$)', whole('postop')],
];
