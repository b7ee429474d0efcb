import { expect, test } from 'vitest';
import { readingOf } from './findings.ts';

/** A line as typed, the findings expected of it, and the codes of the problems expected (none where left out). */
export type Row = readonly [text: string, findings: string, problems?: string];

/** One test a row, named by the rule that the row shows. */
export function checkRules(rules: Readonly<Record<string, readonly Row[]>>): void {
  const rows = Object.entries(rules).flatMap(([rule, table]) =>
    table.map((row): [string, Row] => [`${rule}: ${row[0]}`, row]),
  );
  test.each(rows)('%s', (_, [text, findings, problems = '']) => {
    expect(readingOf(text)).toEqual({ findings, problems });
  });
}
