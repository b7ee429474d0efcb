import { expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { SyntaxEdit } from '../../server/clinical/analysis.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { TODAY, wrap } from './note.ts';

function applied(text: string, firstLine: number, edits: readonly SyntaxEdit[]): string {
  const lines = text.split('\n');
  for (const edit of edits.toReversed()) {
    if (edit.edit === 'replace') {
      const at = firstLine + edit.place.line;
      const line = lines[at]!;
      lines[at] = line.slice(0, edit.place.start) + edit.text + line.slice(edit.place.end);
    } else if (edit.edit === 'insert line') lines.splice(firstLine + edit.afterLine + 1, 0, edit.text);
    else if (edit.edit === 'remove line') lines.splice(firstLine + edit.line, 1);
    else lines.splice(1, 0, edit.text);
  }
  return lines.join('\n');
}
const reported = (text: string, code: string) =>
  analyseNote(text, TODAY).visits.flatMap(({ firstLine, analysis }) =>
    analysis.reports.filter((report) => report.code === code).map((report) => ({ firstLine, report })),
  );

const FIXED = RULES.flatMap(({ code, examples }) => {
  const text = wrap(examples.invalid);
  return reported(text, code).flatMap(({ firstLine, report }) =>
    report.fixes.map((fix) => [code, fix.title, { text, firstLine, fix }] as const),
  );
});

test.each(FIXED)('%s: "%s" takes its report away and waits for review', (code, _, { text, firstLine, fix }) => {
  expect(fix.safety).toBe('needs review');
  expect(reported(applied(text, firstLine, fix.edits), code)).toEqual([]);
});
test('many rules offer one', () => {
  expect(new Set(FIXED.map(([code]) => code)).size).toBeGreaterThanOrEqual(8);
});
