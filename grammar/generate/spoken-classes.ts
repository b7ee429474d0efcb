import * as spoken from '../spoken/spoken-words.ts';
import type { WordClass } from './word-classes.ts';

/** How dictated text is read: the same reader takes it, with these words. */
export const SPOKEN_CLASSES: readonly WordClass[] = [
  {
    name: 'Dictated numbers and dates',
    words: [...spoken.NUMBER_WORDS.keys()],
    rule: 'Numbers may be said: with `hundred`, `point`, `and a half`, `percent`, `plus`, `out of`. `to` makes a range where a unit follows or `grade` stands before. A date names its month and its year; without the year, or after `last`, it is reported and not read. Letters spell a word of the language.',
    examples: [
      '2nd lifted two and a half mm',
      '2nd medial ten to fifteen degrees',
      'pain 2nd six out of ten',
      'mri taken third of june twenty twenty six',
      'tried tape last january',
      'second m t p tender',
    ],
  },
  {
    name: 'Dictated rays',
    words: [...spoken.ORDINAL_WORDS.keys()].slice(0, 5),
    rule: 'Name rays before a word for rays or webs, and from the second on before a sign or a measure that a ray can have. Anywhere else they are unread.',
    examples: ['second to fourth toes tender', 'second no swelling', 'first noticed tender', 'tried second steroid'],
  },
  {
    name: 'Spoken bounds',
    words: Object.keys(spoken.SPOKEN_BOUNDS),
    rule: 'Before a number they are `~`, `<` or `>`.',
    examples: ['2nd lifted about three mm', 'capillary refill less than two seconds'],
  },
  {
    name: 'Words that sound like a number',
    words: Object.keys(spoken.HEARD_AS),
    rule: 'Read as a number after `grade`, or before a unit of measure, where nothing but a number fits; always marked by a hint, with the digit one key away.',
    examples: ['2nd drawer grade to', '2nd medial for degrees', 'tried tape for weeks'],
  },
  {
    name: 'Spoken punctuation',
    words: [...Object.keys(spoken.SPOKEN_BREAKS), spoken.OPEN_QUOTE[0] ?? '', spoken.CLOSE_QUOTE[0] ?? ''],
    rule: 'Says what the mark or the line end says. A bare `stop` is a mark only where what follows can not be stopped; before a treatment it may be an order, and is unread.',
    examples: [
      'second ray drawer two comma tender stop third ray drawer one',
      'plan met pad new line second ray tender',
      'plan met pad stop ibuprofen',
      '2nd paper unable quote too sore unquote',
    ],
  },
  {
    name: 'Hesitations',
    words: spoken.HESITATIONS,
    rule: 'Are passed over wherever they stand, within a phrase too.',
    examples: ['um second ray uh drawer grade two'],
  },
  {
    name: 'Words that only join',
    words: spoken.CONNECTIVES,
    rule: 'Are passed over.',
    examples: ['the second toe is swollen and it is tender'],
  },
  {
    name: 'Emphasis',
    words: spoken.EMPHASIS,
    rule: 'Is passed over directly before a sign that is present by its name alone; anywhere else it is unread.',
    examples: ['2nd very tender', '2nd not very tender'],
  },
  {
    name: 'Corrections',
    words: spoken.CORRECTIONS,
    rule: 'The last word wins where the same value, status, side, subject or finding is said again. Where that is not certain they are distancing words, and one of the first four reaches all that its statement has said, or the statement before.',
    examples: [
      '2nd drawer grade one no sorry grade two',
      '2nd tender plantar correction dorsal',
      'third ray no sorry second ray drawer two',
      '2nd drawer two, tender, scratch that',
    ],
  },
];
