import { readLine } from './read-line.ts';
import type { LineSyntax } from './syntax.ts';

export type LineReader = (text: string) => LineSyntax;

/**
 * A reader that remembers lines by their text, since reading is pure and notes repeat themselves. At `limit` lines the
 * older half is forgotten; open documents keep what they hold. Each letter typed is a new line of text, so that a larger
 * memory would mostly hold what nobody reads again.
 */
export function rememberingReader(limit = 1_000, read: LineReader = readLine): LineReader {
  let recent = new Map<string, LineSyntax>();
  let older = new Map<string, LineSyntax>();
  return (text) => {
    const known = recent.get(text) ?? older.get(text);
    const syntax = known ?? read(text);
    if (known && recent.has(text)) return known;
    if (recent.size >= limit / 2) {
      older = recent;
      recent = new Map();
    }
    recent.set(text, syntax);
    return syntax;
  };
}
