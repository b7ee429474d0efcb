import { readLine } from './read-line.ts';
import { Recent } from './recent.ts';
import type { LineSyntax } from './syntax.ts';

export type LineReader = (text: string) => LineSyntax;

/**
 * A reader that remembers lines by their text, since reading is pure and notes repeat themselves. Open documents keep what
 * they hold. Each letter typed is a new line of text, so that a larger memory would mostly hold what nobody reads again.
 */
export function rememberingReader(limit = 1_000, read: LineReader = readLine): LineReader {
  const lines = new Recent<string, LineSyntax>(limit);
  return (text) => {
    const known = lines.get(text);
    if (known) return known;
    const syntax = read(text);
    lines.set(text, syntax);
    return syntax;
  };
}
