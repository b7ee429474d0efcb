import { NO_PAIR } from './exam.ts';
import { FRESH, METAL, ORD, type Phrase, RAY, RAYS, remark, UNVALUED } from './phrase.ts';

/** An exam in clipped phrases, as surgeons dictate it: the finding, its ray and its result with few words between. */
const JOINT = '(?: (?:toe|toes|mtp joint|mtp|mtps|joint|joints|ray|rays))?';
export const STILL = '(?: (?:is|are|still|now|again|today|remains|remaining|stays))*';
const SAME =
  '(?:as before|unchanged|no change|the same|same|same as (?:before|last time|last visit)|as last time|as at last visit|static|stationary)';
const EXPECTED = '(?:as (?:expected|intended|planned|hoped|anticipated)|by design)';
export const BIG = '(?:hallux|big toe|great toe|1st toe)';
export const END = '(?= ,| ;|$| \\||\\n)';
const PURCHASE: Readonly<Record<string, string>> = {
  absent: 'lost',
  none: 'lost',
  nil: 'lost',
  gone: 'lost',
  poor: 'weak',
  reduced: 'weak',
  strong: 'good',
  normal: 'good',
  present: 'good',
  fine: 'good',
  intact: 'good',
};

/** The drawer, the paper and what is said of them beside the ray. */
const TESTS: readonly Phrase[] = [
  [
    `drawer (right|left) (${RAY}) grade (\\d)(?:,| and)? (right|left) (?:grade )?(\\d)(?! (?:mm|weeks|months))`,
    (m) => (m[1] === m[4] ? undefined : `| ${m[1]} ${m[2]} drawer ${m[3]} | ${m[4]} ${m[2]} drawer ${m[5]} |`),
  ],

  [
    `drawer(?: test)?((?: (?:and )?(?:${RAY}|second|third|fourth|fifth)(?: toe| mtp)? (?:right|left) (?:grade )?\\d(?:,| and)? (?:right|left) (?:grade )?\\d(?! (?:mm|weeks|months)))+)`,
    (m) => ofBothFeet(m[1]),
  ],

  [
    `(?<=(?:drawer (?:grade )?\\d|\\d drawer) ), (painful|sore|painless|not painful|pain ?free)${END}`,
    (m) => (/^(?:painful|sore)/.test(m[1] ?? '') ? 'painful' : 'painless'),
  ],
  [
    `drawers? (?:test )?(?:are |is )?(?:all(?: rays| round| joints| toes| lesser joints)?|throughout) (negative|stable|normal)`,
    (m) => (m[1] === 'stable' ? '| 2nd-5th mtp stable |' : '| 2nd-5th drawer negative |'),
  ],
  [
    `${FRESH}drawer(?: test)? (stable|negative) (${RAY}(?: (?:and|to) ${RAY}|-${RAY})+)${UNVALUED}(?! drawer)`,
    (m) => `| ${rangeOf(m[2])} ${m[1] === 'stable' ? 'mtp stable' : 'drawer negative'} |`,
  ],
  [
    `(?<=drawer (?:grade )?\\d\\+?(?: (?:painful|painless))? )(?:with (?:an? )?)?((?:stable|solid|spongy) end ?point)`,
    (m) => remark(m[1] ?? ''),
  ],
  [`(?<=purchase (?:weak|reduced) )(?:but |and )?(improving|improved|better than before)`, (m) => remark(m[1] ?? '')],

  [
    `(drawer|lachman)(?: test)? (${RAYS})${JOINT}${STILL} (?:at )?(?:an? )?(?:grade )?(\\d)(?! (?:mm|weeks|months|days|degrees|to|or))${NO_PAIR}`,
    '$2 drawer $3',
  ],
  [`(drawer|lachman)(?: test)? (${RAYS})${JOINT}${STILL} (negative|nil|absent)`, '| $2 drawer negative'],
  [
    `(drawer|lachman)(?: test)? (${RAYS})${JOINT}${STILL} (stable|firm|tight)(?! (?:end|squeeze))`,
    (m) => `| ${m[2]} mtp stable ${remark(`drawer ${m[3]}`)}`,
  ],
  [
    `(${RAYS})${JOINT} drawer(?: test)?${STILL} (firm|tight|solid)(?! (?:end|squeeze))`,
    (m) => `| ${m[1]} mtp stable ${remark(`drawer ${m[2]}`)}`,
  ],
  [`drawer(?: test)? (firm|tight|solid)(?! (?:end|squeeze))`, (m) => `mtp stable ${remark(`drawer ${m[1]}`)}`],
  [
    `drawer(?: (${RAYS})${JOINT})? (?:has |is )?(?:gone|up|progressed|increased|worse|worsened|risen|improved|better|down) from (?:grade |an? )?(\\d) to (?:grade |an? )?(\\d)`,
    (m) => `${m[1] ? `| ${m[1]} ` : ''}drawer ${m[3]} ${remark(`was ${m[2]}`)}`,
  ],
  [
    `drawer (?:is |now )*(?:grade )?(\\d) (?:up from|down from|from|was|previously) (?:grade |an? )?(\\d)${END}`,
    (m) => `drawer ${m[1]} ${remark(`was ${m[2]}`)}`,
  ],
  [
    `(?<=(?:drawer (?:grade )?\\d(?: painful| painless)?|\\d drawer) )(?:, )?${SAME}`,
    (m) => remark(m[0].replace(/^, /, '')),
  ],
  [
    `(?<=drawer (?:grade )?\\d(?: (?:painful|painless))? )(?:with (?:an? )?)?((?:soft|firm|hard|good|no) end ?point)`,
    (m) => remark(m[1] ?? ''),
  ],
  [
    `(?:toe )?(?:purchase|grip) (${RAYS})${JOINT}${STILL} (absent|none|nil|gone|lost|weak|reduced|poor|good|strong|normal|present|fine|intact)`,
    (m) => `| ${m[1]} purchase ${PURCHASE[m[2] ?? ''] ?? m[2]} |`,
  ],
  [
    `(${RAYS})${JOINT} (?:toe )?(?:purchase|grip)${STILL} (absent|none|nil|gone|poor|present|fine|intact)`,
    (m) => `| ${m[1]} purchase ${PURCHASE[m[2] ?? '']} |`,
  ],
  [`${BIG} (no|absent) (?:toe )?(?:purchase|grip)`, '| 1st purchase lost |'],
  [
    `${BIG} (?:toe )?(?:purchase|grip)${STILL} (absent|none|nil|gone|lost|weak|reduced|poor|good|strong|normal|present|fine|intact)`,
    (m) => `| 1st purchase ${PURCHASE[m[1] ?? ''] ?? m[1]} |`,
  ],
  [
    `(?:the )?(?:others|other toes|other ones|rest|remaining toes|neighbours)(?: all| both)? (?:hold|holds|grip|grips|keep|retain)(?: on to| onto)? (?:the )?paper`,
    '| others paper holds |',
  ],
  [`(${RAYS}) (?:toes? )?(?:can hold|holds|hold|grips?|keeps?)(?: on to| onto)? (?:the )?paper`, '| $1 paper holds |'],
  [
    `(${RAYS}) (?:toes? )?(?:drops?|loses?|lets go of|fails to hold|cannot hold|can't hold) (?:the )?paper`,
    '| $1 paper pulls-out |',
  ],
  [
    `(?<=${RAY}${JOINT} (?:swollen|tender|sore|painful|warm)(?: [a-z]+)? )(?:too|as well)(?: and| but)? (?=stable|unstable)`,
    '',
  ],
  [
    `(${RAY})${JOINT} (swollen|tender|sore|painful|boggy|warm)(?: (?:too|as well))?(?: ,)?(?: and| but)? (stable|unstable)`,
    (m) => `| ${m[1]} ${m[2]} | ${m[1]} mtp ${m[3]} |`,
  ],
  [
    `(?<!${METAL} (?:in|of|through|across|at|for) (?:the )?)(${RAYS})(?: (?:toe|toes|joint|joints|ray|rays))?(?: (?:is|are|both|all|still|now))* (stable|unstable)`,
    '| $1 mtp $2 |',
  ],
  [
    `(?:the )?(?:rest|others|other joints|other mtps|remaining joints|all others|neighbours) (?:are |is |all )*stable`,
    '| others mtp stable |',
  ],
];

/** Where a toe stands and how it moves. */
const POSTURE: readonly Phrase[] = [
  [
    `(?:the )?(?:crossover|crossover toe|overlap) (?:is )?(fixed|rigid|not reducible)`,
    (m) => `overlap ${remark(m[1] ?? '')}`,
  ],
  [
    `(?:claw|clawing|hammering|hammer toes?) (?:of )?all (?:the )?(?:lesser )?toes((?: (?:flexible|fixed|rigid|correctable))?)`,
    (m) => `| 2nd-5th ${/^h/.test(m[0]) ? 'hammer' : 'claw'}${m[1]} |`,
  ],
  [
    `(?<!${RAY} )mtp (?:joint )?(?=(?:extension|extended|hyperextension|hyperextended|subluxed|dislocated|swollen|tender|puffy|boggy|warm|red)(?: |$))`,
    '',
  ],
  [`(?:slightly |mildly |a bit )?dorsally elevated`, 'lifted'],
  [
    `(?:sits |lies |stays |is |floats )?(?:lifted )?(?:not touching|off|clear of) (?:the )?(?:floor|ground) (?:by )?(?:about )?(~?\\d+(?:\\.\\d)? mm)`,
    'lifted $1',
  ],
  [`pip (?:is )?straight (?:and )?fused|pip (?:is )?fused (?:and )?straight`, 'pip fused'],
  [
    `(?:(${RAY}) (?:mtp )?)?(?:motion|range|rom)(?: (${RAY}))?(?: mtp)? (?:is )?(?:restricted|limited|reduced) (\\d+)°? up (?:and |, )?(\\d+)°? down( painful| with pain| pain ?free| painless)?`,
    motion,
  ],

  ['semi rigid', 'semi-rigid'],
  [
    `${BIG} (?:is )?(?:under ?riding|underriding|under riding|lies under|sits under|under) (?:the )?(${RAY})(?: toe)?`,
    (m) => `| ${m[1]} overlap hallux ${remark('hallux under')} |`,
  ],
  [
    `(?:slight|mild|moderate|marked|severe) (?:hyper)?extension (?:posture )?(?:at|of|in) (?:the )?(?:${RAY} )?mtp(?: joint)?`,
    (m) => {
      const [degree = ''] = m[0].split(' ');
      const ray = new RegExp(RAY).exec(m[0])?.[0] ?? '';
      return `${ray} ${/hyper/.test(m[0]) ? 'hyperextension' : 'extension'} ${degree}`;
    },
  ],
  [
    `(?<=(?:${RAY}(?: toe)?|toe) )(?:is |now |sits |lies |nicely |well )*(?:in line|well aligned|in good alignment|in good position)(?! (?:with|for))`,
    'straight',
  ],
  [`(?<=(?:${RAY}(?: toe)?) )(?:sits|rests|lies|flat) on the (?:ground|floor)`, 'touches the ground'],
  [`(?<=${RAY}(?: toe)? straight )(?:and )?(?:sits|rests|lies|flat) on the (?:ground|floor)`, '| touches the ground |'],
  [`toe (?:has |is )?not (?:moved|drifted|shifted|deviated)(?: over| further| any further)?${END}`, 'no drift'],
  [`floating toe (?:um |uh |er )?(mild|slight|moderate|marked|severe)`, (m) => `floating toe ${remark(m[1] ?? '')}`],
  [`(?:flat|low) (?:medial )?arch(?:es)?`, 'arch flat'],
  [`high (?:medial )?arch(?:es)?`, 'arch high'],
  [`single (?:leg |limb )?heel (?:rise|raise) (?:is )?(?:ok|okay|good|normal|achieved|managed)`, 'heel rise able'],
  // Motion.
  [
    `${BIG} (?:mtp )?(?:joint )?(dorsiflexion|plantarflexion|extension) (?:is |of |to )?(\\d+)°?`,
    (m) => `| 1st mtp ${m[1] === 'extension' ? 'dorsiflexion' : m[1]} ${m[2]}° |`,
  ],
  [`${BIG} (?:is )?straight`, '| 1st straight |'],
  [
    `(?:(${RAY}) (?:mtp )?)?(?:motion|range|rom)(?: (${RAY}))?(?: mtp)? (?:is )?(\\d+)°? up (?:and |, )?(\\d+)°? down( painful| with pain| pain ?free| painless)?`,
    motion,
  ],
  [
    `(?<=${RAY} mtp (?:stiff|limited|moves|painful|swollen)(?: ,)? )(\\d+)°? up ,? ?(?:and )?(\\d+)°? down`,
    '| dorsiflexion $1° | plantarflexion $2° |',
  ],
  [`(?<=1st mtp dorsiflexion \\d+° (?:\\| )?)no (?:crepitus|grind|grinding)`, '| 1st no grind |'],
  [`(?<=${BIG} (?:straight|1st straight) (?:\\| )?)motion (?:is )?(?:free|full|good|normal)`, '| 1st rom full |'],
  [`(?<=1st straight \\| )motion (?:is )?(?:free|full|good|normal)`, '1st rom full |'],
  [
    `no hallux rigidus(?: ,)?(?: and)? (?:motion|range|rom) (\\d+)°?`,
    (m) => `| 1st rom ${m[1]}° ${remark('no hallux rigidus')} |`,
  ],
  [
    `(?<=ankle dorsiflexion (?:is )?)(minus |-)?(\\d+)°? (?:with )?(?:the )?knee (straight|extended)(?: ,)? (?:and )?(minus |-)?(\\d+)°? (?:with )?(?:the )?knee (bent|flexed)`,
    (m) => `${m[1] ? '-' : ''}${m[2]}° knee straight | ankle dorsiflexion ${m[4] ? '-' : ''}${m[5]}° knee bent |`,
  ],
  [`(?<=(?:stiff|stiffness|numb|numbness|straight|swollen|swelling|fused|fixed) )(?:${EXPECTED})`, (m) => remark(m[0])],
];
/** `second right two left zero`: a grade for each foot. */
function ofBothFeet(said = ''): string {
  const rays = said.matchAll(
    /(\d(?:st|nd|rd|th)|second|third|fourth|fifth)\D*? (right|left)\D* (\d)\D*? (right|left)\D* (\d)/g,
  );
  const each = [...rays].flatMap(([, ray = '', first, one, other, two]) =>
    first === other ? [] : [`| ${first} ${ORD[ray] ?? ray} drawer ${one} | ${other} ${ORD[ray] ?? ray} drawer ${two}`],
  );
  return `${each.join(' ')} |`;
}
/** `3rd to 5th` as the reader writes it. */
const rangeOf = (said = ''): string => said.replace(/ to /g, '-');
function motion(m: RegExpMatchArray): string | undefined {
  const ray = m[1] ?? m[2];
  if (ray === undefined) return undefined;
  const pain = m[5] === undefined ? '' : /free|less/.test(m[5]) ? ' painless' : ' painful';
  return `| ${ray} dorsiflexion ${m[3]}°${pain} | ${ray} plantarflexion ${m[4]}°${pain} |`;
}

export const CLIPPED: readonly Phrase[] = [...TESTS, ...POSTURE];
