import type { Sourced } from '../../grammar/lexicon/entry.ts';

/** What stands before the first row of a wrapped text, and before each further one. */
interface Margins {
  readonly first: string;
  readonly rest: string;
}

/** Breaks a text between words so that its rows fit `width`. A word is never broken. */
export function wrapped(text: string, width: number, { first, rest }: Margins = { first: '', rest: '' }): string {
  const [start = '', ...words] = text.split(' ');
  const rows: string[] = [];
  let row = first + start;
  for (const word of words) {
    const longer = `${row} ${word}`;
    if (longer.length <= width) row = longer;
    else {
      rows.push(row);
      row = rest + word;
    }
  }
  return [...rows, row].join('\n');
}

const LABEL = 12;

/** One row of a table for people: a label in its column, then text that stays in its own. */
export function labelled(label: string, text: string, { left, width }: { left: number; width: number }): string {
  const first = ' '.repeat(left) + label.padEnd(LABEL);
  return wrapped(text, width, { first, rest: ' '.repeat(left + LABEL) });
}

/** `NERY15, read`; what is practice or memory says only that. */
export const markText = ({ source, mark }: Sourced): string =>
  source === mark || source === 'from memory' ? mark : `${source}, ${mark}`;
