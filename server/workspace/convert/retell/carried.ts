/** A finding that is named once and goes on from ray to ray, or from web to web. */
export interface Carried {
  readonly word: string;
  /** How it is named, as a pattern over whole words. */
  readonly name: string;
  readonly of: 'ray' | 'web';
  /** Its values are numbers, so that no ray is said as one. */
  readonly counted?: true;
  /** What is said of it, and how the language writes it. A denied finding is written before its name (`no`). */
  readonly values: readonly (readonly [said: string, is: string])[];
  readonly qualities: readonly (readonly [said: string, is: string])[];
}
const NOT_DONE = ['not (?:tested|done|examined|assessed)', 'not done'] as const;
const ALSO = '(?: as well| too)?';
const PAIN: Carried['qualities'] = [
  [
    ` (?:, )?(?:and |but )?(?:it's |it is |is )?(?:not (?:painful|sore)|no pain|painless|pain free|without pain)(?! (?:\\d+(?:/10)?(?= |$)|score|for|since|at|on|when|plantar|under|in|elsewhere|anywhere|otherwise))`,
    'painless',
  ],
  [
    ` (?:, )?(?:and |but )?(?:that's |it's |it is |is |which is |very |quite |really )*(?:(?:painful|sore|(?:with|and) pain)(?! (?:\\d+(?:/10)?(?= |$)|score|for|since|at|on|when|plantar|under|in|is|was|felt|with|from|there))${ALSO}|pain(?: yes)?(?= ,| ;|$| (?:and )?(?:the )?(?:second|third|fourth|fifth|[1-5](?:st|nd|rd|th))))`,
    'painful',
  ],
];
const DEGREES = [
  ['(?:mild|slight|a little|a bit)', 'mild'],
  ['moderate', 'moderate'],
  ['(?:marked|severe)', 'marked'],
] as const;

export const CARRIED: readonly Carried[] = [
  {
    word: 'drawer',
    name: '(?:anterior |dorsal |vertical )?(?:drawers?|vertical stress|stress test|stress)(?: tests?| sign)?',
    of: 'ray',
    counted: true,
    values: [
      ['(?:grade )?([0-4])(?! (?:plus|mm|or|to [0-4]|and a half|days?|weeks?|months?|years?|degrees))', ''],
      ['nil', '0'],
      ['negative', 'negative'],
      ['(?:all )?stable', 'stable'],
      NOT_DONE,
    ],
    qualities: PAIN,
  },
  {
    word: 'paper',
    name: '(?:paper|pull-?out|pull out|paper pull out|paper pull-out)(?: test| grip)?',
    of: 'ray',
    values: [
      ['(?:pulls|pulled|slips|slides|comes|slid|slipped) (?:straight |right )?out|fails|failed|lost|out', 'pulls-out'],
      ['holds(?: it)?(?: well)?|held|hold(?: it)?(?: well)?|strong|good|normal|fine|passes', 'holds'],
      ['weak', 'weak'],
      NOT_DONE,
    ],
    qualities: [],
  },
  {
    word: 'paper',
    name: '(?:toe )?(?:purchase|grip)',
    of: 'ray',
    values: [
      ['absent|none|nil|gone|lost', 'lost'],
      ['reduced|weak|poor', 'weak'],
      ['good|normal|strong|fine|intact', 'good'],
      NOT_DONE,
    ],
    qualities: [],
  },
  {
    word: 'swelling',
    name: 'swelling',
    of: 'ray',
    values: [...DEGREES, ['none|nil', 'no'], ['yes', '']],
    qualities: [],
  },
  {
    word: 'tender',
    name: '(?:tenderness|tender)',
    of: 'ray',
    values: [...DEGREES, ['none|nil', 'no'], ['yes', '']],
    qualities: [],
  },
  {
    word: 'click',
    name: "(?:mulders?|mulder's|click|clicks|web click)(?: click| sign| test)?",
    of: 'web',
    values: [
      ['positive|yes|present', 'positive'],
      ['negative|no|none|absent', 'negative'],
    ],
    qualities: PAIN.slice(1),
  },
  {
    word: 'squeeze',
    name: '(?:web )?squeeze(?: test)?',
    of: 'web',
    values: [
      ['positive', 'positive'],
      ['negative', 'negative'],
      ['painful|sore', 'painful'],
    ],
    qualities: [],
  },
];
