import { expect, test } from 'vitest';
import { codeActions } from '../../server/features/code-actions.ts';
import { applied, noteWithCursor } from './fixture.ts';

function sortAt(fixture: string, only?: string[]) {
  const { note, position } = noteWithCursor(fixture);
  const actions = codeActions(note, { start: position, end: position }, [], only);
  return { note, found: actions.filter(({ kind }) => kind === 'source.sortVisit') };
}
const fixture =
  'visit 2026-03-09 first right\nplan     tape 2nd\n2nd      draw|er 2\n\nvisit 2026-05-04 review right\nplan tape 2nd\n2nd drawer 2';

test('the visit at the cursor is sorted, and no other', () => {
  const { note, found } = sortAt(fixture, ['source']);
  expect(found.map(({ title }) => title)).toEqual(['Sort this visit into exam sequence']);
  expect(applied(note, found[0]!.edit!.changes![note.uri]!)).toBe(
    'visit 2026-03-09 first right\n2nd      drawer 2\nplan     tape 2nd\n\nvisit 2026-05-04 review right\nplan tape 2nd\n2nd drawer 2',
  );
});

test('sorting is offered only where it is asked for, and where there is something to sort', () => {
  expect(sortAt(fixture).found).toEqual([]);
  expect(sortAt('visit 2026-03-09 first right\n2nd draw|er 2\nplan tape 2nd', ['source.sortVisit']).found).toEqual([]);
  expect(sortAt('foref|orefoot 1\n', ['source']).found).toEqual([]);
});
