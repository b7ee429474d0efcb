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
test.each([
  ['L2 drawer 2', 'Write "R2"', 'R2 drawer 2'],
  ['left 2nd drawer 2', 'Write "right"', 'right 2nd drawer 2'],
  ['plan operation lt 2nd plate repair', 'Write "rt"', 'plan operation rt 2nd plate repair'],
])('wrong side: %s is corrected in the word itself', (line, title, mended) => {
  const text = wrap(line);
  const [{ firstLine, report } = { firstLine: 0, report: undefined }] = reported(text, 'wrong-side');
  const fix = report?.fixes.find((each) => each.title === title);
  expect(applied(text, firstLine, fix?.edits ?? [])).toBe(wrap(mended));
});
test('wrong side: the visit may be of both feet', () => {
  const heads = (line: string, head: string) => {
    const text = `forefoot 1\nscales drawer 0-4\n\n${head}\n${line}\n`;
    return reported(text, 'wrong-side').flatMap(({ firstLine, report }) =>
      report.fixes.map(({ edits }) => applied(text, firstLine, edits).split('\n')[3]),
    );
  };
  expect(heads('L2 drawer 2', 'visit 2026-03-09 first right')).toContain('visit 2026-03-09 first both');
});
test('wrong side: a line that names it twice offers no word to correct', () => {
  const [found] = reported(wrap('L2 drawer 2, left 3rd drawer 1'), 'wrong-side');
  expect(found?.report.fixes.map(({ title }) => title)).toEqual([
    'Make the visit one of both feet: what names no side is not staged then',
  ]);
});
test.each([
  ['history warfarin\nplan naproxen', 'Write "no naproxen"', 'history warfarin\nplan no naproxen'],
  ['history allergy tape\nplan taping 2nd', 'Write "no taping"', 'history allergy tape\nplan no taping 2nd'],
])('what is refused keeps its name: %s', (body, title, mended) => {
  const text = wrap(body);
  const all = analyseNote(text, TODAY).visits.flatMap(({ firstLine, analysis }) =>
    analysis.reports.flatMap(({ fixes }) => fixes.map((fix) => ({ firstLine, fix }))),
  );
  const found = all.find(({ fix }) => fix.title === title);
  expect(applied(text, found?.firstLine ?? 0, found?.fix.edits ?? [])).toBe(wrap(mended));
});
test('many rules offer one', () => {
  expect(new Set(FIXED.map(([code]) => code)).size).toBeGreaterThanOrEqual(8);
});
