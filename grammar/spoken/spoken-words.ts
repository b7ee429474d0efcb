import type { Section } from '../lexicon/entry.ts';

/** Words of dictated text, as recognisers print it. Each list has one reading rule; the rules stand beside it in this folder. */

const UNITS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const TEENS = [
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
];
const TENS = ['twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

/** Whole numbers below a hundred that are one word. */
export const NUMBER_WORDS: ReadonlyMap<string, number> = new Map([
  ['zero', 0],
  ['nought', 0],
  ['naught', 0],
  ...UNITS.map((word, i): [string, number] => [word, i + 1]),
  ...TEENS.map((word, i): [string, number] => [word, i + 10]),
  ...TENS.map((word, i): [string, number] => [word, (i + 2) * 10]),
]);

const DAY_WORDS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
  'eighteenth',
  'nineteenth',
  'twentieth',
];
/** Ordinals that are one word; the first five may name rays. */
export const ORDINAL_WORDS: ReadonlyMap<string, number> = new Map([
  ...DAY_WORDS.map((word, i): [string, number] => [word, i + 1]),
  ['thirtieth', 30],
]);

const MONTH_NAMES = [
  'january',
  'february',
  'march',
  'april',
  'may',
  'june',
  'july',
  'august',
  'september',
  'october',
  'november',
  'december',
];
export const MONTHS: ReadonlyMap<string, number> = new Map([
  ...MONTH_NAMES.flatMap((name, i): [string, number][] => [
    [name, i + 1],
    [name.slice(0, 3), i + 1],
  ]),
  ['sept', 9],
]);
/** Before a month they make it a date without a year, which is reported. */
export const BEFORE_MONTH: readonly string[] = ['last', 'this', 'next', 'in', 'since', 'from', 'until', 'on'];

/** Sounds that a recogniser prints as a small word; read as a number only where nothing but a number fits. */
export const HEARD_AS: Readonly<Record<string, number>> = { to: 2, too: 2, for: 4, won: 1, ate: 8 };

export const FRACTIONS: Readonly<Record<string, number>> = {
  'and a half': 0.5,
  'and a quarter': 0.25,
  'and three quarters': 0.75,
};

/** Phrases that bound the number after them. */
export const SPOKEN_BOUNDS: Readonly<Record<string, '~' | '<' | '>'>> = {
  'less than': '<',
  under: '<',
  below: '<',
  'more than': '>',
  'greater than': '>',
  above: '>',
  over: '>',
  about: '~',
  around: '~',
  approximately: '~',
  roughly: '~',
};

/** Punctuation that is spoken. `line` does what a new line does; `stop` has a rule of its own. */
export const SPOKEN_BREAKS: Readonly<Record<string, 'statement' | 'segment' | 'line'>> = {
  'new line': 'line',
  newline: 'line',
  'next line': 'line',
  'new paragraph': 'line',
  'full stop': 'statement',
  semicolon: 'statement',
  'semi colon': 'statement',
  period: 'statement',
  stop: 'statement',
  comma: 'segment',
};
/** After these, `stop` and `period` are words of the sentence. */
export const NO_BREAK_AFTER: readonly string[] = [
  'to',
  'not',
  'will',
  'must',
  'should',
  'can',
  'cannot',
  'please',
  'did',
  'does',
  'then',
  'non',
  'a',
  'the',
  'this',
  'that',
  'for',
];
/** Events that nobody stops; before any other treatment or event a bare `stop` may be an order (`stop tape`). */
export const NEVER_STOPPED: readonly string[] = [
  'onset',
  'duration',
  'trigger',
  'course',
  'diabetes',
  'allergy',
  'family-history',
  'gout',
  'neuropathy',
  'inflammatory-arthritis',
  'review',
  'goal',
  'constraint',
  'procedure',
  'diagnosis',
  'bloods',
];

export const OPEN_QUOTE: readonly string[] = ['quote', 'open quote', 'open quotes', 'begin quote'];
export const CLOSE_QUOTE: readonly string[] = ['unquote', 'end quote', 'close quote', 'close quotes', 'end of quote'];

/** What a speaker says while thinking. They are passed over wherever they stand, within a phrase too. */
export const HESITATIONS: readonly string[] = [
  'um',
  'umm',
  'uh',
  'uhm',
  'er',
  'erm',
  'ah',
  'eh',
  'hmm',
  'you know',
  'let me see',
  'let us see',
  "let's see",
  'okay so',
  'ok so',
  'all right so',
];
/** Passed over only at the start of a clause: at its end (`pain ok now`) they say how it is. */
export const OPENINGS: readonly string[] = ['okay now', 'ok now', 'okay then', 'okay', 'alright'];

/** Words that only join a sentence. None of them denies, doubts, compares, or moves a finding in time. */
export const CONNECTIVES: readonly string[] = [
  'it',
  "it's",
  'its',
  'he',
  'she',
  "he's",
  "she's",
  'they',
  'we',
  'i',
  'you',
  'his',
  'her',
  'patient',
  'the patient',
  "there's",
  'theres',
  'this',
  'the toe',
  'this toe',
  'the joint',
  'this joint',
  'shows',
  'showing',
  'showed',
  'reveals',
  'demonstrates',
  'measures',
  'measuring',
  'measured',
  'found',
  'find',
  'also',
  'so',
  'by',
  'have',
];

/** Before a sign that is present they say how strongly, in no grade of the language; anywhere else they are unread. */
export const EMPHASIS: readonly string[] = [
  'very',
  'quite',
  'really',
  'some',
  'a bit',
  'a bit of',
  'a little bit',
  'a little bit of',
  'definitely',
  'clearly',
  'obviously',
];

/** They take back as much as the speaker has in mind. */
export const ERASING: readonly string[] = [
  'scratch that',
  'delete that',
  'cancel that',
  'strike that',
  'forget that',
  'ignore that',
  'wrong foot',
  'wrong toe',
  'wrong side',
];
/** They take back what was just said. */
export const CORRECTIONS: readonly string[] = [
  ...ERASING,
  'correction',
  'no sorry',
  'sorry',
  'sorry no',
  'i mean',
  'i meant',
  'make that',
  'no wait',
  'no i mean',
  'no make that',
  'or rather',
];

/** Spelled by letter and digit, or with a space, and written as one word. Runs of single letters need no row. */
export const SPELLED: Readonly<Record<string, string>> = {
  'x ray': 'xray',
  'x rays': 'xray',
  'h b a one c': 'hba1c',
  'hb a one c': 'hba1c',
  'hba one c': 'hba1c',
  'a one c': 'a1c',
  'type one': 'type 1',
  'type two': 'type 2',
};

/** Sections in which an ordinal before a sign names a ray without the word. */
export const RAY_SECTIONS: readonly Section[] = ['exam', 'stand', 'xray', 'us', 'mri', 'ct'];
