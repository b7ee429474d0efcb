import { readLine } from './read-line.ts';
import { Recent } from './recent.ts';
import type { LineSyntax, SectionHeading } from './syntax.ts';

/** Reads a line under the section heading that reaches it from above. */
export type LineReader = (text: string, under?: SectionHeading) => LineSyntax;

/** A key of a line and the section heading above it; no line holds a line end. */
export const placed = (text: string, under: SectionHeading | undefined): string => (under ? `${text}\n${under}` : text);

/**
 * A reader that remembers lines by their text, since reading is pure and notes repeat themselves. Open documents keep what
 * they hold. Each letter typed is a new line of text, so that a larger memory would mostly hold what nobody reads again.
 */
export function rememberingReader(limit = 1_000, read: LineReader = readLine): LineReader {
  const lines = new Recent<string, LineSyntax>(limit);
  return (text, under) => {
    const key = placed(text, under);
    const known = lines.get(key);
    if (known) return known;
    const syntax = read(text, under);
    lines.set(key, syntax);
    return syntax;
  };
}
