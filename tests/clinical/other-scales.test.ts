import { describe, expect, test } from 'vitest';
import type { Ray } from '../../grammar/values.ts';
import { plateSeenText, platesSeen } from '../../server/clinical/scales/anatomical.ts';
import { scaleOutcomeText } from '../../server/clinical/scales/scale-text.ts';
import { otherScales } from '../../server/clinical/scales/tell.ts';
import { lastVisit, rayOf, stageOf } from './note.ts';

const SCALES = [
  'predislocation stage',
  'crossover grade by displacement',
  'crossover grade by drawer and overlap',
] as const;
type Scale = (typeof SCALES)[number];

function told(body: string, ray: Ray = 2): Record<Scale, string> {
  const visit = lastVisit(body);
  const all = otherScales(visit, rayOf(body, ray)).map((each) => [each.scale.id, scaleOutcomeText(each)]);
  return Object.fromEntries(all) as Record<Scale, string>;
}
const [PREDISLOCATION, DISPLACEMENT, BY_DRAWER] = SCALES;

describe('a description is told where each of its parts is found', () => {
  // YU02 as another page reports it (secondary).
  test.each([
    ['2nd straight, swelling mild, tender plate marked', /^I \(/],
    ['2nd medial mild, swelling moderate, paper pulls-out', /^II \(/],
    ['2nd medial marked, swelling moderate\nxray wb 2nd subluxed', /^III \(/],
  ])('predislocation: %s', (body, expected) => {
    expect(told(body)[PREDISLOCATION]).toMatch(expected);
  });

  // HADD99, from memory, to be verified.
  test.each([
    ['2nd medial mild, drawer 1, no overlap', /^1 \(/],
    ['2nd dorsomedial moderate, drawer 2, no overlap', /^2 \(/],
    ['2nd overlap hallux, drawer 3', /^3 \(/],
    ['2nd dislocated for 8 months, overlap hallux', /^4 \(/],
  ])('crossover by displacement: %s', (body, expected) => {
    expect(told(body)[DISPLACEMENT]).toMatch(expected);
  });

  // Another page reports it; its paper was not read, so that it counts as common practice.
  test.each([
    ['2nd straight, tender plantar, drawer 0', /^1 \(/],
    ['2nd medial slight, tender plantar, drawer 1', /^2 \(/],
    ['2nd extended, overlap hallux sometimes, drawer 2', /^3 \(/],
    ['2nd dislocated for 8 months, overlap hallux', /^4 \(/],
  ])('crossover by drawer and overlap: %s', (body, expected) => {
    expect(told(body)[BY_DRAWER]).toMatch(expected);
  });
});

describe('a description is not told', () => {
  test('from silence: the findings that lack are named', () => {
    const { [PREDISLOCATION]: stage, [DISPLACEMENT]: grade } = told('2nd tender plate');
    expect(stage).toMatch(/^cannot be told \(I or II or III possible\): .*straight.*paper test.*weight-bearing film/);
    expect(grade).toMatch(/^cannot be told \(1 or 2 possible\): .*deviates.*drawer test/);
  });
  test('from a degree that nobody gave, or a weak purchase', () => {
    expect(told('2nd medial, swelling moderate, paper pulls-out')[PREDISLOCATION]).toMatch(
      /^cannot be told \(II or III/,
    );
    expect(told('2nd medial mild, swelling moderate, paper weak')[PREDISLOCATION]).toMatch(
      /^cannot be told \(II possible/,
    );
  });
  test('from exactly half, which no source that was read assigns', () => {
    expect(told('2nd medial moderate, drawer half')[DISPLACEMENT]).toMatch(/^cannot be told \(2 possible\)/);
  });
  test('from unclear words', () => {
    expect(told('2nd drawer not 1, medial mild')[DISPLACEMENT]).toMatch(/^cannot be told/);
  });
  test('where the findings contradict each one, with the parts that they contradict', () => {
    expect(told('2nd straight, drawer 3')[DISPLACEMENT]).toMatch(/^no description fits: 1 asks for mild medial/);
  });
  test.each([
    ['2nd medial mild, drawer 1, pale, cold', 2, /^not applied: red flag/],
    ['2nd medial mild, drawer 1\noperation done 2nd weil', 2, /^not applied: /],
    ['2nd dislocated, overlap hallux', 2, /^not applied: /],
    ['3rd medial mild, drawer 1', 3, /^not applied: it describes the second toe only/],
    ['5th medial mild, drawer 1', 5, /^not applied: /],
  ] as const)('where the stage is kept away, or the toe is another: %s', (body, ray, expected) => {
    expect(told(body, ray)[DISPLACEMENT]).toMatch(expected);
  });
});

describe('no scale is mixed with another', () => {
  const DEVIATIONS = ['', 'straight', 'medial', 'medial mild', 'medial moderate', 'medial marked', 'extended'];
  const DRAWERS = ['', 'drawer 0', 'drawer 1', 'drawer 2', 'drawer 3', 'drawer not done', 'drawer half'];
  const OTHERS = [
    '',
    'overlap hallux',
    'no overlap, tender plate',
    'swelling moderate, paper pulls-out',
    'dislocated for 1 year',
  ];

  test('whatever is found, a scale tells one description or none, and stage and anatomical grade change nothing', () => {
    for (const deviation of DEVIATIONS)
      for (const drawer of DRAWERS)
        for (const other of OTHERS) {
          const line = ['2nd tender', deviation, drawer, other].filter((each) => each !== '').join(', ');
          const alone = told(line);
          const beside = `${line}\nstage 2nd 1\nmri 2nd anatomical-grade 4`;
          expect([line, told(beside)]).toEqual([line, alone]);
          expect([line, stageOf(beside)]).toEqual([line, stageOf(line)]);
          for (const says of Object.values(alone))
            expect(says).toMatch(/^(I{1,3} |[1-4] |cannot be told|no description fits|not applied)/);
        }
  });

  // Of the same joint one crossover grading says 1 and the other no grade 1: numbers of two scales don't compare.
  test('the two crossover gradings differ on the same joint', () => {
    const both = told('2nd straight, tender plantar, drawer 0, no overlap');
    expect(both[BY_DRAWER]).toMatch(/^1 /);
    expect(both[DISPLACEMENT]).toMatch(/^no description fits/);
  });
});

describe('the plate as seen', () => {
  const seen = (body: string) => platesSeen(lastVisit(body).facts, 'right', 2).map(plateSeenText);
  test('has the grade that was stated, with what it means and who saw it', () => {
    expect(seen('mri 2nd anatomical-grade 2')).toEqual([
      'anatomical grade 2, transverse distal or midsubstance tear of over half of the width (MRI)',
    ]);
  });
  test('is never graded from the share of a tear', () => {
    expect(seen('mri 2nd tear 80%')).toEqual([]);
    expect(seen('mri 2nd tear partial 30%')).toEqual([]);
  });
  test('says that no source assigns exactly half, and says so of nothing else', () => {
    expect(seen('mri 2nd tear 50%')).toEqual([
      expect.stringMatching(/^a tear of 50 % .*\(MRI\): exactly 50 % .* no grade/),
    ]);
    expect(seen('mri 2nd tear 50-60%')).toEqual([expect.stringMatching(/^a tear of 50-60 % of the width \(MRI\): /)]);
    expect(seen('us 2nd tear about 50%')).toEqual([expect.stringMatching(/^a tear of about 50 % of the width/)]);
    expect(seen('mri 2nd tear >50%')).toEqual([]);
    expect(seen('mri 2nd tear 50%\nmri 2nd anatomical-grade not 2')).toHaveLength(1);
  });
  test('moves no stage', () => {
    expect(stageOf('2nd tender plate, drawer 1\nmri 2nd anatomical-grade 4')).toBe('1');
  });
});
