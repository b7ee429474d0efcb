import type { SemanticTokens, SemanticTokensLegend, SemanticTokenTypes } from 'vscode-languageserver-types';
import type { RoleKind } from '../../grammar/syntax.ts';
import type { Range } from '../workspace/blocks.ts';
import type { Note } from '../workspace/note.ts';

/** The standard token type of each role; what is reported or only joins words has none. */
const TYPES: Readonly<Partial<Record<RoleKind, `${SemanticTokenTypes}`>>> = {
  keyword: 'keyword',
  subject: 'class',
  finding: 'property',
  value: 'number',
  modifier: 'operator',
  verbatim: 'string',
  comment: 'comment',
};
export const LEGEND: SemanticTokensLegend = { tokenTypes: Object.values(TYPES), tokenModifiers: [] };
const INDEX = new Map(Object.entries(TYPES).map(([kind], index) => [kind as RoleKind, index]));

/** The tokens of a note, or of the lines that a range touches, in the protocol's relative encoding. */
export function semanticTokens(note: Note, range?: Range): SemanticTokens {
  const data: number[] = [];
  const last = Math.min(note.lineCount - 1, range?.end.line ?? note.lineCount - 1);
  let previous = 0;
  for (let line = Math.max(0, range?.start.line ?? 0); line <= last; line++) {
    let from = 0;
    for (const { kind, start, end } of note.line(line)?.roles ?? []) {
      const type = INDEX.get(kind);
      if (type === undefined || end <= start) continue;
      data.push(line - previous, line === previous ? start - from : start, end - start, type, 0);
      previous = line;
      from = start;
    }
  }
  return { data };
}
