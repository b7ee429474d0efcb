import { EXAM_ORDER, SECTION_WORD } from '../lexicon/closed-words.ts';
import { code, list, paragraphs, table } from './markdown.ts';

/** What the tools do with a note, and what a clinic may set. `settings` are the rows of its table. */
export const toolsReference = (settings: readonly (readonly string[])[]): string =>
  paragraphs(
    '## Formatting',
    'The editor and `forefoot format` write a note in one form; what it says never changes.',
    list([
      'Words of the language in their canonical form, or as written where `wording.words` is `as-written`; the first word of a line is a column, except under a section heading; one space elsewhere, two between the parts of the patient line.',
      'Comments, quotes, signed words, and whatever was not read with certainty keep their text, with the ray or side that it stands beside. A line that would be read another way is left as it is.',
      '`forefoot format --check` only names the notes that would change; lines keep their own line ends.',
    ]),
    '## Sorting',
    `*Sort this visit into exam sequence* moves whole lines into this order: ${EXAM_ORDER.map((section) => code(SECTION_WORD[section])).join(', ')}; within the exam by the order of the findings below. It is offered only where nothing that is said changes.`,
    list([
      'Comments and unread lines move with the line that they belong to; lines under a heading stay under it.',
      'No line crosses an operation, an event or an addendum; signed visits, section headings and blocks of carried lines stay as they are.',
    ]),
    '## Settings of a clinic',
    'The nearest `.forefoot.json` in the folder of a note or above it holds for every editor and the command line. It is used whole or not at all; where it is broken, the built-in settings hold and one report says why.',
    table(['Key', 'Sets', 'Values'], settings),
  );
