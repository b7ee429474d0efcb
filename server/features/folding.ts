import type { FoldingRange } from 'vscode-languageserver-types';
import type { Note } from '../workspace/note.ts';

/** Each visit folds from its first line to its last one that is not blank. */
export function foldingRanges(note: Note): FoldingRange[] {
  const ranges: FoldingRange[] = [];
  for (let index = 1; index < note.blockCount; index++) {
    const startLine = note.firstLine(index);
    const endLine = startLine + note.block(index).findLastIndex(({ kind }) => kind !== 'blank');
    if (endLine > startLine) ranges.push({ startLine, endLine });
  }
  return ranges;
}
