import { describe, expect, it } from 'vitest';
import { changeWords } from '../../server/clinical/change.ts';
import { rayOf } from './note.ts';

// What became of a ray since its last visit: common practice. A span is ranked only where it doesn't meet the other.
const note = (then: string, now: string, header = 'scales drawer 0-4'): string =>
  `forefoot 1\n${header}\n\nvisit 2026-01-05 first right\n${then}\n\nvisit 2026-03-09 review right\n${now}\n`;
const change = (then: string, now: string, header?: string) => rayOf(note(then, now, header)).change;

describe('a stage then and now', () => {
  it.each([
    ['drawer 2, medial', 'drawer 3, medial', 'worse', ['drawer: over half subluxable, now dislocatable']],
    ['drawer 2, medial', 'drawer 1, medial', 'better', ['drawer: over half subluxable, now under half subluxable']],
    ['drawer 2, medial', 'drawer 2, straight', 'same', ['alignment: out of line, now straight']],
    ['drawer 2, medial', 'drawer 2, medial', 'same', []],
    ['drawer 2, no overlap', 'drawer 2, overlap at rest', 'worse', ['overlap: no overlap, now overlaps at rest']],
    ['swelling, drawer 0, straight', 'drawer 1, straight', 'worse', ['drawer: stable, now under half subluxable']],
    ['paper holds, swelling none, drawer 0', 'drawer 1', 'worse', ['drawer: stable, now under half subluxable']],
    ['drawer 1', 'paper holds, swelling none, drawer 0', 'better', ['drawer: under half subluxable, now stable']],
  ] as const)('%s, then %s: %s', (then, now, is, findings) => {
    const found = change(`2nd tender plate, ${then}`, `2nd tender plate, ${now}`);
    expect(found).toMatchObject({ is, since: '2026-01-05', findings });
  });
  it.each([
    ['a span that meets the other', 'drawer 1-2, medial', 'drawer 2, medial', /overlap/],
    ['no stage then', 'straight', 'drawer 2', /not staged then: the drawer is missing/],
    ['no stage now', 'drawer 2', 'straight', /not staged now: the drawer is missing/],
    ['another scale', 'drawer 2 scale 0-3', 'drawer 2 scale 0-4', /another scale \(0-3 then, 0-4 now\)/],
    ['a scale that only one visit names', 'drawer 2', 'drawer 3 scale 0-4', /another scale \(not stated then/],
  ])('with %s is not comparable', (_, then, now, why) => {
    const found = change(`2nd tender plate, ${then}`, `2nd tender plate, ${now}`, 'patient KM-1 born 1970');
    expect(found?.is).toBe('not comparable');
    expect(found?.why).toMatch(why);
  });
  it('on another scale is still worse where the toe overlaps now', () => {
    expect(change('2nd drawer 2 scale 0-4', '2nd drawer 1 scale 0-3, overlap at rest')?.is).toBe('worse');
    expect(change('2nd drawer 2 scale 0-4', '2nd drawer 1 scale 0-3, overlap at rest')?.findings.join()).not.toMatch(
      /drawer/,
    );
  });
  it('ends with an operation: that visit is not comparable, later ones are compared with it no more', () => {
    const operated = note('2nd tender plate, drawer 2', 'operation done 2nd weil');
    expect(rayOf(operated).change?.why).toMatch(/not staged now: the joint has been operated on/);
    expect(rayOf(`${operated}\nvisit 2026-05-09 review right\n2nd drawer 1\n`).change).toBeUndefined();
  });
  it('is compared with the newest visit that examined the ray', () => {
    const between = note('2nd tender plate, drawer 1', '2nd tender plate, drawer 2').replace(
      '\nvisit 2026-03-09',
      '\nvisit 2026-02-01 phone right\nhistory "asks about shoes"\n\nvisit 2026-03-09',
    );
    expect(rayOf(between).change).toMatchObject({ is: 'worse', since: '2026-01-05' });
  });
  it('is silent at the first visit, for the other foot, and where neither was ever staged', () => {
    expect(rayOf('2nd tender plate, drawer 2').change).toBeUndefined();
    expect(change('3rd tender plate, drawer 2', '2nd tender plate, drawer 2')).toBeUndefined();
    expect(
      change('5th drawer 2\n2nd tender none, drawer 0, straight', '2nd tender none, drawer 0, straight'),
    ).toBeUndefined();
  });
  it('in words names both stages and the findings', () => {
    const found = change('2nd tender plate, drawer 2, medial', '2nd tender plate, drawer 3, medial');
    expect(found && changeWords(found)).toBe(
      'worse, since 2026-01-05: stage 2 then, stage 3 now; drawer: over half subluxable, now dislocatable',
    );
  });
});
