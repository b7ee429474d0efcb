import type { TextEdit } from 'vscode-languageserver-types';
import type { Position } from '../../server/workspace/blocks.ts';
import type { OpenNote } from '../../server/workspace/note.ts';
import { openNote } from '../workspace/open-note.ts';

/** A note with its cursor, which the fixture marks with `|`. */
export function noteWithCursor(fixture: string): { note: OpenNote; position: Position } {
  const at = fixture.indexOf('|');
  if (at < 0) throw new Error('the fixture has no cursor');
  const before = fixture.slice(0, at).split('\n');
  const note = settled(fixture.slice(0, at) + fixture.slice(at + 1));
  return { note, position: { line: before.length - 1, character: before.at(-1)!.length } };
}

export function settled(text: string): OpenNote {
  const note = openNote(text);
  note.settle();
  return note;
}

/** The text after edits that do not overlap. */
export function applied(note: OpenNote, edits: readonly TextEdit[]): string {
  const lines = note.text().split('\n');
  const offset = ({ line, character }: Position): number =>
    lines.slice(0, line).reduce((sum, each) => sum + each.length + 1, 0) + character;
  return [...edits]
    .sort((a, b) => offset(b.range.start) - offset(a.range.start))
    .reduce(
      (text, { range, newText }) => text.slice(0, offset(range.start)) + newText + text.slice(offset(range.end)),
      note.text(),
    );
}

/** A note, and what the `^^^ code: message` marks under its lines expect; a message may be shortened. */
export function markedNote(fixture: string): { text: string; marks: Mark[] } {
  const lines: string[] = [];
  const marks: Mark[] = [];
  for (const line of fixture.split('\n')) {
    const mark = /^( *)(\^+) ([\w-]+): (.*)$/.exec(line);
    if (!mark) lines.push(line);
    else {
      const [, space = '', carets = '', code = '', message = ''] = mark;
      marks.push({ line: lines.length - 1, start: space.length, end: space.length + carets.length, code, message });
    }
  }
  return { text: lines.join('\n'), marks };
}
export interface Mark {
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly code: string;
  readonly message: string;
}
