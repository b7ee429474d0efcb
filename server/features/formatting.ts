import type { TextEdit } from 'vscode-languageserver-types';
import type { Range } from '../workspace/blocks.ts';
import { convertEdits, isSaid } from '../workspace/convert/convert-edits.ts';
import { formattedLine } from '../workspace/format-note.ts';
import type { Note, OpenNote } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';
import { wordEdits } from '../workspace/word-edits.ts';

/** The edits that format a note, or the lines that a range touches; none for a line that is formatted already. */
export function formatting(note: Note, range?: Range): TextEdit[] {
  const first = Math.max(0, range?.start.line ?? 0);
  const last = Math.min(note.lineCount - 1, range ? lastLineOf(range) : note.lineCount - 1);
  const edits: TextEdit[] = [];
  for (let line = first; line <= last; line++) {
    const text = note.line(line)?.text;
    const newText = formattedLine(note, line);
    if (text === undefined || newText === text) continue;
    for (const { start, end, text: by } of wordEdits(text, newText))
      edits.push({ range: spanOn(line, start, end), newText: by });
  }
  return edits;
}

/**
 * What Enter does to the line that it finishes: the line is formatted. A dictated one is converted where the setting asks for that, and
 * else stays as it was said.
 */
export function onEnter(note: OpenNote, line: number): TextEdit[] {
  const syntax = note.line(line);
  if (!syntax) return [];
  const converted = note.convertsDictation ? convertEdits(note, line, line) : [];
  if (converted.length > 0 || isSaid(syntax)) return converted;
  const after = { line: line + 1, character: 0 };
  return formatting(note, { start: { line, character: 0 }, end: after });
}

/** A selection that ends at the start of a line does not hold that line. */
const lastLineOf = ({ start, end }: Range): number =>
  end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
