import { describe, expect, test } from 'vitest';
import { by, counts, leading, siteOf, sitesOf } from './differential.ts';
import { lastVisit, stageOf } from './note.ts';

// Common practice, but for the thickness of the pad (WALD01, read).
describe('words of the clinic argue', () => {
  const TENDER = '2nd tender plate';
  test.each([
    ['2nd burning', 'interdigital neuroma', 'for', 'nerve-symptom'],
    ['web 2 pins and needles', 'interdigital neuroma', 'for', 'nerve-symptom'],
    ['2nd bruising plantar', 'plantar plate tear', 'for', 'bruising'],
    ['2nd bruising', 'fracture or stress fracture', 'for', 'bruising'],
    ['2nd rom limited', 'Freiberg disease', 'for', 'mtp-motion'],
    ['2nd rom full', 'Freiberg disease', 'against', 'mtp-motion'],
    ['history psoriasis', 'synovitis or inflammatory arthritis', 'for', 'illness'],
    ['history osteoporosis', 'fracture or stress fracture', 'for', 'illness'],
    ['fat pad thin', 'fat pad atrophy', 'for', 'fat-pad'],
    ['fat pad normal', 'fat pad atrophy', 'against', 'fat-pad'],
    ['2nd fat pad 9 mm', 'fat pad atrophy', 'no proof', 'fat-pad'],
  ] as const)('%s: %s, %s', (line, condition, role, finding) => {
    expect(by(role, `${TENDER}\n${line}`, condition)).toContain(finding);
  });
  test.each([
    ['2nd bruising dorsal', 'plantar plate tear', 'bruising'],
    ['history asthma', 'fracture or stress fracture', 'illness'],
    ['history no psoriasis', 'synovitis or inflammatory arthritis', 'illness'],
    ['no fat pad', 'fat pad atrophy', 'fat-pad'],
    ['3rd burning', 'interdigital neuroma', 'nerve-symptom'],
  ] as const)('%s argues nothing of %s', (line, condition, finding) => {
    const all = (['for', 'against'] as const).flatMap((role) => by(role, `${TENDER}\n${line}`, condition));
    expect(all).not.toContain(finding);
  });
});

// Common practice: a joint of its own, told from the lesser rays, and never staged.
describe('the great toe', () => {
  const TOE = 'right great toe';
  test.each([
    ['1st tender dorsal, df limited', 'hallux rigidus'],
    ['1st tender plantar', 'sesamoid pain'],
    ['1st hot, red', 'gout'],
  ])('%s: %s', (line, condition) => {
    const all = leading(line, TOE);
    expect(all.find((id) => !['infection', 'fracture or stress fracture', 'tumour'].includes(id))).toBe(condition);
  });
  test.each([
    ['1st tender dorsal, df full', 'hallux rigidus'],
    ['1st tender dorsal', 'sesamoid pain'],
    ['1st tender plantar, not hot', 'gout'],
  ])('near miss, %s: %s does not lead', (line, condition) => {
    const [forIt, against] = counts(line, condition, TOE);
    expect(forIt <= against).toBe(true);
  });
  test('has what must not be missed first, and no plate, neuroma or Freiberg disease is weighed there', () => {
    const all = siteOf('1st hot, tender plantar, drawer 3, overlap', TOE).conditions.map(
      ({ condition }) => condition.id,
    );
    expect(all.slice(0, 3)).toEqual(['infection', 'fracture or stress fracture', 'tumour']);
    expect(all).not.toEqual(expect.arrayContaining(['plantar plate tear']));
    expect(all.filter((id) => /plate|neuroma|Freiberg/.test(id))).toEqual([]);
  });
  test('is given no stage, whatever is said of it, and changes none beside it', () => {
    const line = '1st tender plantar, drawer 3, overlap, paper pulls-out, swelling moderate';
    expect(lastVisit(line).rays).toEqual([]);
    expect(stageOf(`2nd tender plate, drawer 1\n${line}`)).toBe(stageOf('2nd tender plate, drawer 1'));
    expect(counts(`2nd tender plate, drawer 1\n${line}`, 'plantar plate tear')).toEqual(
      counts('2nd tender plate, drawer 1', 'plantar plate tear'),
    );
  });
  test('opens by its own signs only, not by a test of the lesser joints', () => {
    expect(sitesOf('2nd tender plate')).toEqual(['right ray 2']);
    expect(sitesOf('1st drawer 2')).toEqual([]);
    expect(sitesOf('1st tender')).toEqual([TOE]);
  });
});
