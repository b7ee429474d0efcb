import type { TextEdit } from 'vscode-languageserver-types';
import type { Range } from '../workspace/blocks.ts';
import { formattedLine } from '../workspace/format-note.ts';
import type { Note } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';

/** The edits that format a note, or the lines that a range touches; none for a line that is formatted already. */
export function formatting(note: Note, range?: Range): TextEdit[] {
  const first = Math.max(0, range?.start.line ?? 0);
  const last = Math.min(note.lineCount - 1, range ? lastLineOf(range) : note.lineCount - 1);
  const edits: TextEdit[] = [];
  for (let line = first; line <= last; line++) {
    const text = note.line(line)?.text;
    const newText = formattedLine(note, line);
    if (text !== undefined && newText !== text) edits.push(smallest(line, text, newText));
  }
  return edits;
}

/** A selection that ends at the start of a line does not hold that line. */
const lastLineOf = ({ start, end }: Range): number =>
  end.character === 0 && end.line > start.line ? end.line - 1 : end.line;

/** Leaves out what the line has in common at its start and its end, so that marks and cursors stay in place. */
function smallest(line: number, old: string, text: string): TextEdit {
  const shorter = Math.min(old.length, text.length);
  let start = 0;
  while (start < shorter && old[start] === text[start]) start++;
  let end = 0;
  while (end < shorter - start && old.at(-1 - end) === text.at(-1 - end)) end++;
  return { range: spanOn(line, start, old.length - end), newText: text.slice(start, text.length - end) };
}
