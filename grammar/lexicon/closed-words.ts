import type { Section, TimeUnit, Unit } from './entry.ts';

/** Words of the language that are not findings. Each class has one reading rule; the rule stands in `reader/`. */

/** A strong section word ends the statement before it; a weak one is also a common word and opens a section only at a statement's start. */
export const SECTION_WORDS: Readonly<Record<string, { section: Section; strong: boolean }>> = {
  history: { section: 'history', strong: true },
  hx: { section: 'history', strong: true },
  pain: { section: 'pain', strong: false },
  tried: { section: 'tried', strong: true },
  'treatment so far': { section: 'tried', strong: true },
  stand: { section: 'stand', strong: false },
  standing: { section: 'stand', strong: false },
  exam: { section: 'exam', strong: false },
  'o/e': { section: 'exam', strong: true },
  xray: { section: 'xray', strong: true },
  'x-ray': { section: 'xray', strong: true },
  radiograph: { section: 'xray', strong: true },
  us: { section: 'us', strong: false },
  ultrasound: { section: 'us', strong: true },
  mri: { section: 'mri', strong: true },
  'operation done': { section: 'operation', strong: true },
  operation: { section: 'operation', strong: false },
  plan: { section: 'plan', strong: true },
};
/** The word that the formatter writes for a section. */
export const SECTION_WORD: Readonly<Record<Section, string>> = {
  history: 'history',
  pain: 'pain',
  tried: 'tried',
  stand: 'stand',
  exam: 'exam',
  xray: 'xray',
  us: 'us',
  mri: 'mri',
  operation: 'operation',
  plan: 'plan',
};

/** Words that move a statement away from the patient, today, or fact. Their whole segment becomes unclear. */
export const DISTANCING: readonly string[] = [
  'was',
  'were',
  'had',
  'has been',
  'used to',
  'previously',
  'previous',
  'prior',
  'formerly',
  'resolved',
  'resolving',
  'settled',
  'gone',
  'if',
  'unless',
  'until',
  'except',
  'but',
  'only',
  'ago',
  'now reduced',
  'now gone',
  'last time',
  'last visit',
  'before',
  'earlier',
  'mother',
  'father',
  'sister',
  'brother',
  'family',
  'other side',
  'other foot',
  'opposite side',
  'contralateral',
  'history of',
  'h/o',
  'possible',
  'possibly',
  'probable',
  'probably',
  'likely',
  'maybe',
  'perhaps',
  'suspected',
  'denies',
  'ruled out',
  'no longer',
  'rather than',
  'instead',
  'when',
  'would',
  'could',
  'should',
  'may',
  'might',
  'worse than',
  'better than',
  'compared',
  'versus',
  'vs',
  'less',
  'more',
  'than',
  'like',
  'without',
  'never',
  'refused',
  'declined',
  'stopped',
  'not sure',
  'unsure',
  'doubtful',
  'questionable',
  'almost',
  'nearly',
  'hardly',
  'barely',
];
/** They assert and change nothing. */
export const HARMLESS: readonly string[] = ['still', 'now', 'today', 'currently', 'again'];
/** Grammar words between a finding and its values. */
export const FILLERS: readonly string[] = [
  'a',
  'an',
  'the',
  'of',
  'at',
  'is',
  'are',
  'and',
  'with',
  'over',
  'on',
  'in',
  'there',
  'has',
  '&',
  'test',
  'sign',
];
/** `no A, B or C` denies all three. */
export const LIST_ENDERS: readonly string[] = ['or', 'nor'];
export const NO: readonly string[] = ['no', 'nil'];
/** In a plan `no` and these mean: to be avoided. */
export const AVOID: readonly string[] = ['avoid'];
export const NOT: readonly string[] = ['not'];
/** Adjectives that may stand between `no` and its finding without changing it. */
export const HARMLESS_ADJECTIVES: readonly string[] = [
  'obvious',
  'significant',
  'visible',
  'palpable',
  'real',
  'any',
  'evidence of',
];
/** They bind to the finding before them and never look ahead. */
export const ABSENT: readonly string[] = ['none', 'neg', 'negative', 'absent', '-ve', 'not present', 'not felt'];
export const NOT_DONE: readonly string[] = ['not done', 'nd', 'not tested', 'not examined', 'not assessed'];
export const UNABLE: readonly string[] = ['unable', 'not possible', 'impossible'];
export const EQUIVOCAL: readonly string[] = ['equivocal', '+/-', 'borderline', 'uncertain'];
/** Of a test whose results have names, `positive` says nothing and is reported. */
export const POSITIVE: readonly string[] = ['positive', 'pos', '+ve', '+'];
export const PRESENT: readonly string[] = ['present', 'yes', 'noted'];
export const PANEL: readonly string[] = ['normal'];
export const OTHERS: readonly string[] = ['others', 'other rays', 'rest', 'remaining rays'];

export const SIDES: Readonly<Record<string, 'right' | 'left' | 'both'>> = {
  right: 'right',
  r: 'right',
  rt: 'right',
  left: 'left',
  l: 'left',
  lt: 'left',
  both: 'both',
  bilateral: 'both',
  'both feet': 'both',
  'both sides': 'both',
  'right foot': 'right',
  'left foot': 'left',
};
/** Words that, with a number, name rays (`toe 2`, `MTPs 2-4`). */
export const RAY_WORDS: readonly string[] = [
  'ray',
  'rays',
  'toe',
  'toes',
  'mtp',
  'mtps',
  'mtpj',
  'mtpjs',
  'mt',
  'mts',
  'metatarsal',
  'metatarsals',
];
export const WEB_WORDS: readonly string[] = ['web', 'webs', 'web space', 'web spaces', 'space', 'webspace'];
/** Joint words after an ordinal: part of the subject (`2nd MTPJ`). */
export const JOINT_WORDS: readonly string[] = ['mtp', 'mtpj', 'mtp joint', 'joint', 'ray', 'toe'];
/** Parts that no finding of the lexicon takes as a place: the findings beside them are unclear. */
export const FOREIGN_PARTS: readonly string[] = [
  'calf',
  'heel',
  'ankle',
  'midfoot',
  'arch',
  'nail',
  'knee',
  'leg',
  'back',
  'wrist',
  'hand',
  'skin',
  'tendon',
  'sesamoid',
];

export const UNIT_WORDS: Readonly<Record<string, Unit>> = {
  mm: 'mm',
  millimetres: 'mm',
  millimeters: 'mm',
  '°': '°',
  deg: '°',
  degs: '°',
  degrees: '°',
  degree: '°',
  '%': '%',
  percent: '%',
  '°c': '°C',
  celsius: '°C',
  s: 's',
  sec: 's',
  secs: 's',
  seconds: 's',
  second: 's',
  min: 'minutes',
  mins: 'minutes',
  minutes: 'minutes',
  minute: 'minutes',
  hour: 'hours',
  hours: 'hours',
  h: 'hours',
  hr: 'hours',
  hrs: 'hours',
  day: 'days',
  days: 'days',
  d: 'days',
  week: 'weeks',
  weeks: 'weeks',
  wk: 'weeks',
  wks: 'weeks',
  w: 'weeks',
  month: 'months',
  months: 'months',
  mo: 'months',
  mths: 'months',
  year: 'years',
  years: 'years',
  yr: 'years',
  yrs: 'years',
  y: 'years',
};
/** Units that are converted to the slot's own: factor by which the number is multiplied. */
export const CONVERTED: Readonly<Record<string, { to: Unit; factor: number }>> = {
  cm: { to: 'mm', factor: 10 },
  centimetres: { to: 'mm', factor: 10 },
  centimeters: { to: 'mm', factor: 10 },
};
export const TIME_UNITS: readonly TimeUnit[] = ['minutes', 'hours', 'days', 'weeks', 'months', 'years'];

/** Unread text that holds one of these is reported as such, always. It reports, it never computes. */
export const RED_FLAG_WORDS: readonly string[] = [
  'cold',
  'pale',
  'white',
  'blue',
  'dusky',
  'black',
  'pus',
  'purulent',
  'fever',
  'febrile',
  'rigors',
  'sepsis',
  'septic',
  'infected',
  'infection',
  'calf',
  'chest',
  'breathless',
  'breathlessness',
  'dislocated',
  'dislocation',
  'gangrene',
  'ischaemic',
  'ischemic',
  'necrotic',
  'pulseless',
  'tumour',
  'tumor',
  'cancer',
  'charcot',
];
