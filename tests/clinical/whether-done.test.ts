import { describe, expect, it, test } from 'vitest';
import { codesOf, lastVisit, stageOf, whyOf, wrap } from './note.ts';

const SCALE = 'scales drawer 0-4';
const visit = (kind: string, body: string) => wrap(body, SCALE, `visit 2026-03-09 ${kind}`);
const clear = (kind: string, body: string): string[] =>
  lastVisit(visit(kind, body)).facts.facts.flatMap(({ clarity, finding }) => (clarity === 'clear' ? [finding] : []));

describe('an operation that is only named', () => {
  test.each(['first right', 'review right', 'preop right', 'postop right', 'phone right', 'emergency right', 'right'])(
    'is not said to be done in a visit that is %s',
    (kind) => {
      expect(clear(kind, 'operation 2nd weil + plate repair; boot 6 weeks')).toEqual([]);
      expect(codesOf(visit(kind, 'operation: 2nd weil'))).toContain('unclear-finding');
      expect(clear(kind, 'operation done 2nd weil')).toEqual(['procedure']);
    },
  );
  it('is done in the visit of an operation', () =>
    expect(clear('operation right', 'operation 2nd weil')).toEqual(['procedure']));
  it('keeps the consent that it is named with', () =>
    expect(clear('preop right', 'operation 2nd weil, consent signed')).toEqual(['consent']));
  it('says in its report what to write', () => {
    const report = lastVisit(visit('preop right', 'operation 2nd weil')).reports.find(
      ({ code }) => code === 'unclear-finding',
    );
    expect(report?.message).toMatch(/"operation done".*"plan"/);
  });
});

describe('an operation that nobody said was done', () => {
  const later = (kind: string, line: string) =>
    `${wrap(line, SCALE, `visit 2026-01-09 ${kind}`)}\nvisit 2026-03-09 review right\n2nd drawer 3, tender plate, medial 14\n`;
  test.each([
    ['preop right', 'operation 2nd weil, plate repair, consent signed'],
    ['preop right', 'consent signed; operation 2nd weil'],
    ['review right', 'operation 2nd weil'],
    ['postop right', 'history operation 2nd weil'],
    ['operation right', 'operation 2nd weil consented'],
  ])('keeps no later stage away: %s, %s', (kind, line) => expect(stageOf(later(kind, line))).toBe('3'));

  test.each([
    ['operation right', 'operation 2nd weil'],
    ['review right', 'operation done 2nd weil'],
  ])('and one that was said to be does: %s, %s', (kind, line) => {
    expect(stageOf(later(kind, line))).toBe('not applicable');
    expect(whyOf(later(kind, line))).toMatch(/operat/);
  });
});
