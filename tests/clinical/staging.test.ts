import { describe, expect, it } from 'vitest';
import { codesOf, lastVisit, questioning, rayOf, stageOf, whyOf, wrap } from './note.ts';

// Rows and their conflicts: common practice. Stage rows: from memory of the published table (COUGH11).

describe('row 1: dislocated at rest', () => {
  it('is stage 4 where the dislocation is stated as old, and says whether it reduces', () => {
    expect(stageOf('2nd dislocated chronic irreducible, tender plantar')).toBe('4');
    expect(rayOf('2nd dislocated chronic irreducible, tender plantar').labels).toContain('irreducible');
    expect(rayOf('2nd dislocated chronic reducible, tender plantar').labels).toContain('reducible');
    expect(rayOf('2nd dislocated chronic reducible, tender plantar').labels).not.toContain('irreducible');
  });
  it('has no stage while its onset is not stated: acute until shown otherwise, a red flag', () => {
    const note = '2nd dislocated, tender plantar, drawer 3';
    expect(stageOf(note)).toBe('cannot stage');
    expect(whyOf(note)).toMatch(/acute until shown otherwise/i);
    expect(rayOf(note).missing.map(({ finding }) => finding)).toEqual(['dislocated']);
    expect(rayOf(note).next.urgent).toBe(true);
    expect(lastVisit(note).reports.some(({ severity }) => severity === 'danger')).toBe(true);
  });
  it('counts six weeks or more as old and less as acute', () => {
    expect(stageOf('2nd dislocated 2 years, tender plantar')).toBe('4');
    expect(stageOf('2nd dislocated 8 weeks, tender plantar')).toBe('4');
    expect(stageOf('2nd dislocated since 2024-03, tender plantar')).toBe('4');
    expect(stageOf('2nd dislocated since 2026-02, tender plantar')).toBe('not applicable');
    // Some day of January lies less than six weeks before the visit: not surely old.
    expect(stageOf('2nd dislocated since 2026-01, tender plantar')).toBe('not applicable');
    expect(stageOf('2nd dislocated since 2025-12, tender plantar')).toBe('4');
    expect(stageOf('2nd dislocated 2 weeks, tender plantar')).toBe('not applicable');
    expect(stageOf('2nd dislocated acute, tender plantar')).toBe('not applicable');
  });
  it('does not ask for the drawer', () => {
    expect(
      rayOf('2nd dislocated chronic irreducible, tender plantar').missing.map(({ finding }) => finding),
    ).not.toContain('drawer');
  });
  it('keeps stage 4 against a lower drawer, and reports the contradiction', () => {
    const note = '2nd dislocated chronic irreducible, tender plantar, drawer 1';
    expect(stageOf(note)).toBe('4');
    expect(questioning(note)).toContain('drawer');
    expect(lastVisit(note).reports.some(({ severity }) => severity === 'contradiction')).toBe(true);
  });
  it('takes a weight-bearing film, with the age of the dislocation from the exam', () => {
    expect(stageOf('xray wb, 2nd dislocated\n2nd tender plantar, drawer 2')).toBe('cannot stage');
    expect(stageOf('2nd dislocated old irreducible, tender plantar\nxray wb; 2nd dislocated')).toBe('4');
  });
  it('that is doubtful has no stage, and asks for a film', () => {
    expect(stageOf('2nd ?dislocated, drawer 2')).toBe('cannot stage');
    expect(rayOf('2nd ?dislocated, drawer 2').missing.map(({ finding }) => finding)).toEqual(['film-joint']);
  });
  it('a dislocation denied is none', () => {
    expect(stageOf('2nd no dislocation, tender plate, drawer 2')).toBe('2');
  });
});

describe('row 2: the toe overlaps the hallux', () => {
  it('is stage 3', () => {
    expect(stageOf('stand 2nd overlap hallux constant\n2nd tender plate, drawer 2')).toBe('3');
    expect(stageOf('2nd overlap hallux at rest, tender plate')).toBe('3');
  });
  it('with drawer 0 or 1 is 3 with low certainty and the drawer in question', () => {
    for (const grade of [0, 1]) {
      const note = `2nd overlap hallux at rest, tender plate, drawer ${grade}`;
      expect(stageOf(note)).toBe('3');
      expect(rayOf(note).labels).toContain('low certainty');
      expect(questioning(note)).toContain('drawer');
    }
    expect(rayOf('2nd overlap hallux at rest, tender plate, drawer 2').labels).not.toContain('low certainty');
  });
  it('that overlaps sometimes is 2-3', () => {
    expect(stageOf('2nd overlap hallux sometimes, tender plate, drawer 2')).toBe('2-3');
  });
  it('onto the third toe does not set stage 3', () => {
    expect(stageOf('2nd overlap third, tender plate, drawer 2')).toBe('2');
  });
});

describe('row 3: drawer 3', () => {
  it('is stage 3', () => expect(stageOf('2nd tender plate, drawer 3, medial moderate')).toBe('3'));
  it('with a straight toe is kept and questioned', () => {
    const note = '2nd tender plate, drawer 3, straight';
    expect(stageOf(note)).toBe('3');
    expect(questioning(note)).toContain('deviation');
  });
});

describe('row 4: drawer 2', () => {
  it('is stage 2', () => expect(stageOf('2nd tender plate, drawer 2, medial mild')).toBe('2'));
  it('with a straight toe is 2 and alignment questions it', () => {
    const note = '2nd tender plate, drawer 2, straight';
    expect(stageOf(note)).toBe('2');
    expect(questioning(note)).toContain('deviation');
  });
  it('with the same grade and a straight toe at both feet is 1-2', () => {
    const note = wrap(
      'R2 tender plate, drawer 2, straight\nL2 tender none, drawer 2, straight',
      'scales drawer 0-4',
      'visit 2026-03-09 first both',
    );
    expect(stageOf(note)).toBe('1-2');
    expect(stageOf(note.replace('L2 tender none, drawer 2', 'L2 tender none, drawer 1'))).toBe('2');
    expect(stageOf(note.replace('R2 tender plate, drawer 2, straight', 'R2 tender plate, drawer 2, medial'))).toBe('2');
    // Same drawer, and nobody says that a toe is out of line: still alike.
    expect(stageOf(note.replace(', straight\n', '\n'))).toBe('1-2');
  });
  it('with a fixed PIP joint is still 2', () => {
    expect(stageOf('2nd tender plate, drawer 2, medial, pip fixed')).toBe('2');
  });
});

describe('row 5: drawer 1', () => {
  it('is stage 1', () => expect(stageOf('2nd tender plate, drawer 1, medial mild')).toBe('1'));
  it('with marked deviation or hyperextension in words is 1-2', () => {
    expect(stageOf('2nd tender plate, drawer 1, medial marked')).toBe('1-2');
    expect(stageOf('2nd tender plate, drawer 1, extended marked')).toBe('1-2');
  });
  it('is never raised by degrees, since no published cut turns them into words', () => {
    expect(stageOf('2nd tender plate, drawer 1, medial 40°')).toBe('1');
  });
  it('with a fixed PIP joint is still 1', () => expect(stageOf('2nd tender plate, drawer 1, pip fixed')).toBe('1'));
});

describe('row 6: drawer 0, straight or alignment not stated', () => {
  it.each([
    '2nd swelling, tender plate, drawer 0, straight',
    '2nd swelling, tender plate, drawer 0',
    '2nd swelling, tender head, drawer 0, straight',
    '2nd tender plantar, paper weak, drawer 0, straight',
    '2nd tender plate, paper pulls-out, drawer 0, straight',
    '2nd swelling, tender plate, drawer neg, straight',
  ])('%s: stage 0', (note) => expect(stageOf(note)).toBe('0'));
  it.each([
    '2nd tender plate, swelling none, paper holds, drawer 0, straight',
    '2nd tender none, swelling, drawer 0, straight',
  ])('%s: no instability found', (note) => {
    expect(stageOf(note)).toBe('not applicable');
    expect(whyOf(note)).toMatch(/no instability found/i);
  });
  it.each(['2nd tender shaft, swelling, drawer 0, straight', '2nd tender dorsal, swelling, drawer 0, straight'])(
    '%s: the plate was not pressed, so it is asked for',
    (note) => {
      expect(stageOf(note)).toBe('cannot stage');
      expect(rayOf(note).missing.map(({ finding }) => finding)).toEqual(['tenderness']);
    },
  );
  it('with normal purchase is doubtful', () => {
    const note = '2nd swelling, tender plate, paper holds, drawer 0, straight';
    expect(stageOf(note)).toBe('0');
    expect(questioning(note)).toContain('paper');
  });
  it('never takes silence about swelling and purchase for their absence', () => {
    const { outcome, missing } = rayOf('2nd tender plate, drawer 0, straight');
    expect(outcome).not.toMatchObject({ is: 'staged', stage: 0 });
    expect(outcome.is === 'not applicable' ? missing.length : 1).toBeGreaterThan(0);
  });
  it('a negative drawer is grade 0 only on a scale that starts at 0', () => {
    const note = wrap('2nd swelling, tender plate, drawer neg, straight', 'scales drawer 1-3');
    expect(stageOf(note)).not.toBe('0');
  });
});

describe('row 7: drawer 0, deviated', () => {
  it('is 0-1 and asks for a recheck', () => {
    expect(stageOf('2nd swelling, tender plate, drawer 0, medial mild')).toBe('0-1');
  });
});

describe('row 8: drawer not done, unable, or not mentioned', () => {
  it.each([
    '2nd tender plate, drawer not done, medial 10°',
    '2nd tender plate, drawer unable "too sore", medial mild',
    '2nd tender plate, medial 10°',
    '2nd tender plate, extended',
    'stand gap 2-3\n2nd tender plate',
  ])('%s: 1-3, and asks for the drawer only', (note) => {
    expect(stageOf(note)).toBe('1-3');
    expect(rayOf(note).missing.map(({ finding }) => finding)).toEqual(['drawer']);
  });
  it.each(['2nd tender plate, drawer not done, straight', '2nd tender plate, straight', '2nd tender plate'])(
    '%s: cannot stage, and asks for the drawer only',
    (note) => {
      expect(stageOf(note)).toBe('cannot stage');
      expect(rayOf(note).missing.map(({ finding }) => finding)).toEqual(['drawer']);
    },
  );
  it('a widened gap beside a toe that is straight says nothing of the joint', () => {
    expect(stageOf('stand gap 2-3\n2nd tender plate, straight')).toBe('cannot stage');
  });
});

describe('row 9: a drawer that is not one grade', () => {
  it('positive without grade is 1-3 and asks for the grade', () => {
    expect(stageOf('2nd tender plate, drawer positive, medial')).toBe('1-3');
    expect(rayOf('2nd tender plate, drawer positive, medial').missing.map(({ finding }) => finding)).toContain(
      'drawer',
    );
  });
  it('1-2 is 1-2', () => expect(stageOf('2nd tender plate, drawer 1-2, medial')).toBe('1-2'));
  it('exactly half is 1-2, since no source assigns it', () =>
    expect(stageOf('2nd tender plate, drawer half, medial')).toBe('1-2'));
  it('on the 0-3 scale (THOMP87, from memory) subluxable is 1-2 and dislocatable 3', () => {
    const staged = (drawer: string) => stageOf(wrap(`2nd tender plate, ${drawer}, medial`, 'scales drawer 0-3'));
    expect(staged('drawer 1')).toBe('1-2');
    expect(staged('drawer 2')).toBe('3');
    expect(staged('drawer 3')).toBe('cannot stage');
  });
  it('on the 1-3 scale (PECK12), whose words were not read, never a number that its grades may not mean', () => {
    const staged = (grade: number) =>
      stageOf(wrap(`2nd tender plate, drawer ${grade}, medial`, 'scales drawer 1-3'))
        .split('-')
        .map(Number);
    for (const grade of [1, 2, 3]) {
      const [low = 9, high = low] = staged(grade);
      expect(low).toBeLessThanOrEqual(grade);
      expect(high).toBeGreaterThanOrEqual(grade);
    }
  });
  it('without a scale is staged on 0-4, says so, and is hinted at once', () => {
    const note = wrap('2nd tender plate, drawer 2, medial\n3rd tender plate, drawer 1', '');
    expect(stageOf(note)).toBe('2');
    expect(rayOf(note).assumptions.join(' ')).toMatch(/scale/i);
    expect(codesOf(note).filter((code) => /scale/.test(code))).toHaveLength(1);
    expect(rayOf('2nd tender plate, drawer 2, medial').assumptions.join(' ')).not.toMatch(/scale/i);
  });
  it('a scale at the statement wins over the header', () => {
    expect(stageOf('2nd tender plate, drawer 2 scale 0-3, medial')).toBe('3');
  });
  it.each([
    '2nd tender plate, drawer not 2, medial',
    '2nd tender plate, ?drawer 2, medial',
    '2nd tender plate, drawer was 3, medial',
  ])('%s: an unclear drawer is never computed with', (note) => {
    expect(stageOf(note)).toBe('1-3');
    expect(rayOf(note).missing.map(({ finding }) => finding)).toContain('drawer');
  });
  it('two drawers of one joint that disagree span both and are reported', () => {
    const note = '2nd tender plate, drawer 1, medial\n2nd drawer 3';
    expect(stageOf(note)).toBe('1-3');
    expect(lastVisit(note).reports.some(({ severity }) => severity === 'contradiction')).toBe(true);
  });
});

describe('what never moves the number', () => {
  it('a fixed PIP joint alone is no stage', () => {
    expect(stageOf('2nd tender plate, pip fixed')).toBe('cannot stage');
  });
  it('a tear on imaging alone is no stage (GREGG06: 75 of 160 plates without symptoms looked torn)', () => {
    expect(stageOf('2nd tender plate\nus 2nd tear full')).toBe('cannot stage');
  });
  it('a subluxed joint on a film moves no stage', () => {
    expect(stageOf('2nd tender plate, drawer 1\nxray wb, 2nd subluxed')).toBe('1');
  });
});
