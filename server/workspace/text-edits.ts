import type { SyntaxEdit } from '../clinical/analysis.ts';
import type { Range } from './blocks.ts';

export interface TextEdit {
  readonly range: Range;
  readonly newText: string;
}

/** What the edits need to know of the lines that they change. */
export interface Lines {
  readonly lineEnd: string;
  readonly lineCount: number;
  readonly lengthOf: (line: number) => number;
  /** Where the language version stands, if anywhere. */
  readonly versionLine?: number;
}

/** Turns edits in the language's own terms into edits of the file. `firstLine` is the line from which places count. */
export const textEdits = (edits: readonly SyntaxEdit[], firstLine: number, lines: Lines): TextEdit[] =>
  edits.map((edit) => textEdit(edit, firstLine, lines));

function textEdit(edit: SyntaxEdit, firstLine: number, lines: Lines): TextEdit {
  switch (edit.edit) {
    case 'replace':
      return {
        range: spanOn(firstLine + edit.place.line, edit.place.start, edit.place.end),
        newText: edit.text,
      };
    case 'insert line':
      return insertedAfter(firstLine + edit.afterLine, edit.text, lines);
    case 'remove line':
      return removed(firstLine + edit.line, lines);
    case 'insert header':
      return insertedHeader(edit.text, lines);
  }
}

export const spanOn = (line: number, start: number, end: number): Range => ({
  start: { line, character: start },
  end: { line, character: end },
});

/** A new line after an existing one, whether or not the file ends there. */
function insertedAfter(line: number, text: string, { lineEnd, lengthOf, lineCount }: Lines): TextEdit {
  const after = Math.min(line, lineCount - 1);
  if (after < 0) return { range: spanOn(0, 0, 0), newText: `${text}${lineEnd}` };
  const end = lengthOf(after);
  return { range: spanOn(after, end, end), newText: `${lineEnd}${text}` };
}

/** A whole line with one of its line ends, so that none stays behind empty. */
function removed(line: number, { lengthOf, lineCount }: Lines): TextEdit {
  if (line + 1 < lineCount)
    return { range: { start: { line, character: 0 }, end: { line: line + 1, character: 0 } }, newText: '' };
  const start = line > 0 ? { line: line - 1, character: lengthOf(line - 1) } : { line: 0, character: 0 };
  return { range: { start, end: { line, character: lengthOf(line) } }, newText: '' };
}

/** A version line stands first; every other header line stands right after it, or first where there is none. */
function insertedHeader(text: string, lines: Lines): TextEdit {
  const { versionLine, lineEnd } = lines;
  if (versionLine === undefined) return { range: spanOn(0, 0, 0), newText: `${text}${lineEnd}` };
  return insertedAfter(versionLine, text, lines);
}
