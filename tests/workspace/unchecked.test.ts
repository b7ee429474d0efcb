import { expect, test } from 'vitest';
import { isolated } from '../../server/workspace/unchecked.ts';
import { workshop } from '../../server/workspace/workshop.ts';
import { openNote } from './open-note.ts';

test('a fault in one visit is reported on it and leaves the others checked', () => {
  const own = workshop();
  const visit = isolated((lines, before, context) => {
    if (lines.some(({ text }) => text.includes('drawer 3'))) throw new Error('the rule fell over');
    return own.analyser.visit(lines, before, context);
  });
  const note = openNote('visit 2026-03-09 right\n2nd drawer 3\nvisit 2026-04-09 right\n2nd blorp', {
    ...own,
    analyser: { ...own.analyser, visit },
  });
  note.settle();
  expect(note.reports(1)).toMatchObject([
    { code: 'visit-unchecked', severity: 'danger', place: { line: 0, start: 0, end: 22 } },
  ]);
  expect(note.reports(1)[0]!.message).toContain('the rule fell over');
  expect(note.reports(2).map(({ code }) => code)).toContain('unknown-word');
});
