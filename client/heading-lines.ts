/** The line of each heading of a page, by its text; the editor opens a line, not a heading. */
export function headingLines(page: string): ReadonlyMap<string, number> {
  const lines = page.split('\n').map((text, index) => [/^## (.+)$/.exec(text)?.[1], index + 1] as const);
  return new Map(lines.flatMap(([heading, line]) => (heading === undefined ? [] : [[heading, line] as const])));
}
