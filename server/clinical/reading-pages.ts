import type { READING_MESSAGES } from './reading-reports.ts';
import type { Examples } from './rules/define-rule.ts';

/** What explains a report of the reader, as a rule explains its own. */
export interface ReadingPage {
  readonly name: string;
  readonly what: string;
  readonly why: string;
  readonly instead: string;
  readonly examples: Examples;
}

const note = (header: string, body: string): string =>
  `forefoot 1\nscales drawer 0-4\n${header}\nvisit 2026-03-09 first right\n${body}\n`;

/** A new report of the reader doesn't compile without its page. */
export const READING_PAGES: Readonly<Record<keyof typeof READING_MESSAGES, ReadingPage>> = {
  'unknown-word': {
    name: 'Word that is not understood',
    what: 'A word is not part of the language here, and no finding stands beside it.',
    why: 'It is kept as typed; nothing is computed from it, and a program that guessed would misread it one day.',
    instead: 'Put a remark in quotes, or use a word of the language.',
    examples: { invalid: '2nd drawer 2; zzq', valid: '2nd drawer 2; "zzq"', nearMiss: '2nd drawer 2 // zzq' },
  },
  'word-out-of-place': {
    name: 'Word out of place',
    what: 'A word of the language stands where it says nothing.',
    why: 'It may belong to another finding or section, so it is kept as typed and not used.',
    instead: 'Put it beside its finding, or in its section.',
    examples: { invalid: '2nd drawer 2; worse', valid: '2nd drawer 2', nearMiss: '2nd drawer 2 painful' },
  },
  'number-without-place': {
    name: 'Number without a finding',
    what: 'A number stands where no finding waits for it.',
    why: 'A number alone could be a grade, a length or a ray: it is kept as typed.',
    instead: 'Name the finding before the number.',
    examples: {
      invalid: '2nd swelling mild, 7',
      valid: '2nd drawer 2, lifted 7 mm',
      nearMiss: '2nd drawer 2, medial 7',
    },
  },
  'unread-red-flag': {
    name: 'Red-flag word that is not understood',
    what: 'A word that may be a red flag stands in text that could not be read.',
    why: 'It may be the most urgent word of the note, and nothing was computed from it. No "allow" hides it.',
    instead: 'Say it as a finding, or act on it.',
    examples: {
      invalid: '2nd foot somewhat dusky',
      valid: '2nd colour pink',
      nearMiss: '2nd drawer 2 // dusky at first',
    },
  },
  'open-quote': {
    name: 'Quote without an end',
    what: 'A quotation mark opens a remark that its line does not close.',
    why: 'A quote never crosses a line, so all that follows on the line is kept as typed.',
    instead: 'Close it with a quotation mark.',
    examples: { invalid: '2nd drawer 2 "sore', valid: '2nd drawer 2 "sore"', nearMiss: '2nd drawer 2 // "sore' },
  },
  'ambiguous-date': {
    name: 'Date that may be read as two days',
    what: 'Day and month may be confused, or the day does not exist.',
    why: 'A wrong date moves every window that counts from it.',
    instead: 'Write the year first, such as 2026-05-31.',
    examples: {
      invalid: 'forefoot 1\n\nvisit 04/05/26 first right\n2nd swollen',
      valid: 'forefoot 1\n\nvisit 2026-05-04 first right\n2nd swollen',
      nearMiss: 'tried tape 2nd 3/52',
    },
  },
  'ambiguous-web': {
    name: 'Web that may be one space or two',
    what: '"web 2-3" may mean the space between the second and third toes, or the second and the third space.',
    why: 'The wrong web reaches the needle.',
    instead: 'Write web 2 for one space, webs 2-3 for two.',
    examples: { invalid: 'web 2-3', valid: 'web 2 click none', nearMiss: 'webs 2-3 click none' },
  },
  'heard-number': {
    name: 'Word heard in place of a number',
    what: 'A word that only sounds like a number stands where only a number fits.',
    why: 'Dictation prints "to" or "for" for two and four; the number is taken, and shown, so that a wrong one is seen.',
    instead: 'Write the digit if that is right.',
    examples: { invalid: '2nd drawer grade to', valid: '2nd drawer grade 2', nearMiss: '2nd drawer grade two' },
  },
  'bad-header': {
    name: 'Header line that is not understood',
    what: 'A word or a date of a header or visit line is not understood.',
    why: 'The side, the date and the scale of everything below stand there.',
    instead: 'Check the word or the date.',
    examples: {
      invalid: 'forefoot 1\n\nvisit 2026-03-09 first rihgt\nR2 drawer 2 scale 0-4',
      valid: 'forefoot 1\n\nvisit 2026-03-09 first right\n2nd drawer 2 scale 0-4',
      nearMiss: 'forefoot 1\npatient KM-207 born 1971\n\nvisit 2026-03-09 first right\n2nd drawer 2 scale 0-4',
    },
  },
  'bad-signer': {
    name: 'Signature without a signer',
    what: 'A signature or an addendum does not say who signs in initials or by role.',
    why: 'A visit that is closed by nobody can be answered for by nobody; a full name does not belong in a note.',
    instead: 'Write initials in capitals, or a role such as surgeon.',
    examples: {
      invalid: '2nd drawer 2\nsigned 2026-03-09 ab',
      valid: '2nd drawer 2\nsigned 2026-03-09 AB',
      nearMiss: '2nd drawer 2\nsigned 2026-03-09 surgeon',
    },
  },
  'unknown-code': {
    name: 'Allowance of a code that no report has',
    what: 'An "allow" line names a code that does not exist.',
    why: 'It hides nothing, though the note looks as if it did.',
    instead: 'Check its spelling; every code has a page here.',
    examples: {
      invalid: note('allow stated-thrice two examiners\n', '2nd drawer 2'),
      valid: note('', '2nd drawer 2'),
      nearMiss: note('allow stated-twice two examiners\n', '2nd drawer 2\n2nd drawer 3'),
    },
  },
  'unused-allow': {
    name: 'Allowance that hides nothing',
    what: 'An "allow" line hides no report.',
    why: 'Left there, it would hide the next one that nobody has looked at. A danger is never hidden.',
    instead: 'Remove the line.',
    examples: {
      invalid: note('allow stated-twice two examiners\n', '2nd drawer 2'),
      valid: note('', '2nd drawer 2'),
      nearMiss: note('allow stated-twice two examiners\n', '2nd drawer 2\n2nd drawer 3'),
    },
  },
  'allow-without-reason': {
    name: 'Allowance without a reason',
    what: 'An "allow" line gives no reason after its code.',
    why: 'Without a reason it hides nothing: the next reader could not tell a decision from a slip.',
    instead: 'Write the reason after the code.',
    examples: {
      invalid: note('allow stated-twice\n', '2nd drawer 2\n2nd drawer 3'),
      valid: note('allow stated-twice two examiners\n', '2nd drawer 2\n2nd drawer 3'),
      nearMiss: note('', '2nd drawer 2\n2nd drawer 3'),
    },
  },
};

/** What an editor says of itself rather than of the note. */
export const NOTICE_PAGES: Readonly<
  Record<'settings-not-used' | 'more-reports' | 'visit-unchecked', Omit<ReadingPage, 'examples'>>
> = {
  'settings-not-used': {
    name: "Settings of the clinic that can't be used",
    what: 'The settings file near the note has a fault.',
    why: 'Half of a file would be neither the built-in nor the local rule, so the built-in settings hold.',
    instead: 'Mend the line that the message names.',
  },
  'more-reports': {
    name: 'More reports than are shown',
    what: 'A long note has more reports than an editor lists at once.',
    why: 'Every danger is shown, then those nearest to the cursor.',
    instead: 'Run "forefoot check" for all of them.',
  },
  'visit-unchecked': {
    name: 'Visit that could not be checked',
    what: 'The program failed on one visit.',
    why: 'That visit is neither checked nor staged; the others are.',
    instead: 'Read that visit yourself, and report the fault.',
  },
};
