import type { Section } from './entry.ts';

export * from './distancing-words.ts';

/** Words of the language that are not findings. Each class has one reading rule; the rule stands in `reader/`. */

/** A strong section word ends the statement before it; a weak one is also a common word and opens a section only at a statement's start. */
export const SECTION_WORDS: Readonly<Record<string, { section: Section; strong: boolean }>> = {
  history: { section: 'history', strong: true },
  hx: { section: 'history', strong: true },
  pmh: { section: 'history', strong: true },
  pmhx: { section: 'history', strong: true },
  'past medical history': { section: 'history', strong: true },
  background: { section: 'history', strong: true },
  'drug history': { section: 'history', strong: true },
  dh: { section: 'history', strong: false },
  dhx: { section: 'history', strong: true },
  sh: { section: 'history', strong: false },
  shx: { section: 'history', strong: true },
  'social history': { section: 'history', strong: true },
  pain: { section: 'pain', strong: false },
  tried: { section: 'tried', strong: true },
  'treatment so far': { section: 'tried', strong: true },
  stand: { section: 'stand', strong: false },
  standing: { section: 'stand', strong: false },
  exam: { section: 'exam', strong: false },
  'o/e': { section: 'exam', strong: true },
  xray: { section: 'xray', strong: true },
  'x-ray': { section: 'xray', strong: true },
  xr: { section: 'xray', strong: true },
  radiograph: { section: 'xray', strong: true },
  us: { section: 'us', strong: false },
  ultrasound: { section: 'us', strong: true },
  mri: { section: 'mri', strong: true },
  ct: { section: 'ct', strong: true },
  lab: { section: 'lab', strong: true },
  labs: { section: 'lab', strong: true },
  laboratory: { section: 'lab', strong: true },
  bloods: { section: 'lab', strong: true },
  'operation done': { section: 'operation', strong: true },
  operation: { section: 'operation', strong: false },
  imp: { section: 'impression', strong: true },
  impression: { section: 'impression', strong: false },
  dx: { section: 'impression', strong: false },
  plan: { section: 'plan', strong: true },
  orders: { section: 'plan', strong: true },
  scores: { section: 'exam', strong: false },
};
/** Words that open a section only as a heading: alone on their line, before a colon. `images` are each named by their own line. */
export const HEADING_WORDS: Readonly<Record<string, Section | 'images'>> = {
  'presenting complaint': 'history',
  pc: 'history',
  hpc: 'history',
  hpi: 'history',
  'history of presenting complaint': 'history',
  'past history': 'history',
  social: 'history',
  medications: 'history',
  drugs: 'history',
  'treatment to date': 'tried',
  'previous treatment': 'tried',
  examination: 'exam',
  'on examination': 'exam',
  'physical exam': 'exam',
  imaging: 'images',
  investigations: 'images',
  ix: 'images',
  procedure: 'operation',
  procedures: 'operation',
  assessment: 'impression',
  diagnosis: 'impression',
  management: 'plan',
  'treatment plan': 'plan',
  'post op plan': 'plan',
  'postop plan': 'plan',
  'post op orders': 'plan',
  'postop orders': 'plan',
  'post op instructions': 'plan',
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
  ct: 'ct',
  lab: 'lab',
  operation: 'operation',
  // Shorter than the column of a line's first word.
  impression: 'imp',
  plan: 'plan',
};

/** Section words that say more than their section: the formatter leaves them. */
const KEPT_SECTION_WORDS: readonly string[] = ['orders', 'scores', 'operation done'];
/** The word that the formatter writes in place of a typed section word. */
export function sectionWord(typed: string, section: Section): string {
  const word = typed.toLowerCase().replace(/\s+/g, ' ');
  return KEPT_SECTION_WORDS.includes(word) ? word : SECTION_WORD[section];
}

/**
 * Sections that are told in free words. A segment with so many unread words is a story: kept as typed on purpose, and its words are
 * not reported one by one. What is unclear beside them stays unclear; a red-flag word is still reported.
 */
export const STORY_FROM: Readonly<Partial<Record<Section, number>>> = { history: 3, pain: 3, impression: 1 };

/** They assert and change nothing. */
export const HARMLESS: readonly string[] = ['still', 'now', 'today', 'currently', 'again', 'continue'];
/** Grammar words between a finding and its values. */
export const FILLERS: readonly string[] = [
  'yet',
  'a',
  'an',
  'the',
  'of',
  'at',
  'is',
  'are',
  'and',
  'with',
  'w',
  'w /',
  'over',
  'on',
  'in',
  'there',
  'has',
  '&',
  'test',
  'sign',
  'also',
  'patient',
  'reports',
  'describes',
  'seen',
  'clinically',
  'itself',
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
/** After a test that was not done or not possible: why, kept as a remark. */
export const REASONS: readonly string[] = ['too sore', 'too painful'];
export const UNABLE: readonly string[] = ['unable', 'not possible', 'impossible'];
export const EQUIVOCAL: readonly string[] = ['equivocal', '+/-', 'borderline', 'uncertain'];
/** Of a test whose results have names, `positive` says nothing and is reported. */
export const POSITIVE: readonly string[] = ['positive', 'pos', '+ve', '+'];
/** After a sign: present, and how much is kept as typed, for no published cut turns these into words. */
export const MUCH: readonly string[] = ['++', '+++'];
export const PRESENT: readonly string[] = ['present', 'yes', 'noted'];
export const PANEL: readonly string[] = ['normal'];
export const OTHERS: readonly string[] = ['others', 'other rays', 'other toes', 'the rest', 'remaining rays'];

export const SIDES: Readonly<Record<string, 'right' | 'left' | 'both'>> = {
  right: 'right',
  r: 'right',
  rt: 'right',
  left: 'left',
  l: 'left',
  lt: 'left',
  both: 'both',
  bilateral: 'both',
  bilat: 'both',
  'both feet': 'both',
  'both sides': 'both',
  'right side': 'right',
  'left side': 'left',
  'right forefoot': 'right',
  'left forefoot': 'left',
  'right foot': 'right',
  'r foot': 'right',
  'left foot': 'left',
  'l foot': 'left',
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
  'mpj',
  'mpjs',
  'mt',
  'mts',
  'metatarsal',
  'metatarsals',
  'met',
  'mets',
];
export const WEB_WORDS: readonly string[] = ['web', 'webs', 'web space', 'web spaces', 'space', 'webspace'];
/** Joint words after an ordinal: part of the subject (`2nd MTPJ`). */
export const JOINT_WORDS: readonly string[] = ['mtp', 'mtpj', 'mpj', 'mtp joint', 'joint', 'ray', 'toe'];
/** The same after several ordinals (`2nd 3rd 4th MTPs`). */
export const JOINTS_WORDS: readonly string[] = ['mtps', 'mtpjs', 'mpjs', 'mtp joints', 'joints', 'rays', 'toes'];
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

/** Unread text that holds one of these is reported as such, always. It reports, it never computes. */
export const RED_FLAG_WORDS: readonly string[] = [
  'cold',
  'pale',
  'white',
  'blue',
  'bluish',
  'hot',
  'dusky',
  'black',
  'pus',
  'purulent',
  'fever',
  'febrile',
  'feverish',
  'pyrexia',
  'pyrexial',
  'temp',
  'temperature',
  'shivery',
  'shivering',
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
  'neuropathic',
  'insensate',
  'mass',
  'lump',
  'sarcoma',
  'melanoma',
  'dvt',
  'thrombosis',
  'embolism',
  'cellulitis',
  'abscess',
  'osteomyelitis',
];

/** The order of a visit: what is told, seen and felt, then images, the stage, the plan. Common practice. */
export const EXAM_ORDER: readonly Section[] = [
  'history',
  'pain',
  'tried',
  'stand',
  'exam',
  'xray',
  'us',
  'ct',
  'mri',
  'lab',
  'impression',
  'operation',
  'plan',
];
