import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import { readHeaderFacts, readVisitFacts } from '../../server/clinical/read-facts.ts';
import { sortedVisit } from '../../server/workspace/sort-visit.ts';

const header = readHeaderFacts([]);
const read = (lines: readonly ReturnType<typeof readLine>[]) => readVisitFacts(lines, header);
const sorted = (...lines: string[]): string[] | undefined =>
  sortedVisit(
    lines.map((text) => readLine(text)),
    read,
  )?.map(({ text }) => text);
const visit = 'visit 2026-03-09 first right';

describe('a visit in exam sequence', () => {
  test('goes from history to plan, ray by ray, comments with the line under them', () => {
    expect(
      sorted(
        visit,
        'plan     tape 2nd 8 weeks',
        'stage    2nd 2',
        '3rd      drawer 1',
        '// the worst one',
        '2nd      drawer 2',
        'webs 2-3 click none',
        'pain     2nd plantar 4/10',
        '',
      ),
    ).toEqual([
      visit,
      'pain     2nd plantar 4/10',
      '// the worst one',
      '2nd      drawer 2',
      '3rd      drawer 1',
      'webs 2-3 click none',
      'stage    2nd 2',
      'plan     tape 2nd 8 weeks',
      '',
    ]);
  });
  test('has its laboratory, images and impression between the exam and the plan', () => {
    const rows = [
      'pain 2nd plantar 4/10',
      '2nd drawer 2',
      'us 2nd tear',
      'ct 2nd erosion',
      'lab crp 4',
      'imp plate tear',
      'plan tape 2nd',
    ];
    expect(sorted(visit, ...rows.toReversed())).toEqual([visit, ...rows]);
  });
  test('is left alone where it is sorted already', () => {
    expect(sorted(visit, 'pain 2nd plantar 4/10', '2nd drawer 2', 'plan tape 2nd')).toBeUndefined();
  });
  test('keeps the lines of a heading under it', () => {
    expect(sorted('visit 2026-03-09 first both', 'R:', '3rd drawer 1', '2nd drawer 2', 'L:', '2nd drawer 0')).toEqual([
      'visit 2026-03-09 first both',
      'R:',
      '2nd drawer 2',
      '3rd drawer 1',
      'L:',
      '2nd drawer 0',
    ]);
  });
  test('never moves a finding across an operation', () => {
    expect(
      sorted(visit, '2nd drawer 3', 'operation done 2nd plate repair', 'pain 2nd 2/10', '2nd drawer 0'),
    ).toBeUndefined();
  });
  test('never moves a finding across an event or into an addendum, and signed words not at all', () => {
    const lines = ['plan tape 2nd', '2nd drawer 2'];
    for (const line of ['event reduction', 'addendum 2026-03-10 AB', 'examiner AB'])
      expect(sorted(visit, '2nd no dislocation', line, ...lines)).toEqual([
        visit,
        '2nd no dislocation',
        line,
        ...lines.toReversed(),
      ]);
    expect(sorted(visit, ...lines, 'signed 2026-03-09 AB')).toBeUndefined();
    expect(sorted(visit, 'carried 2026-01-05', ...lines)).toBeUndefined();
  });
  test('keeps an unread line under the line that it was written under', () => {
    expect(sorted(visit, '3rd drawer 1', 'blorp fnord', '2nd drawer 2')).toEqual([
      visit,
      '2nd drawer 2',
      '3rd drawer 1',
      'blorp fnord',
    ]);
  });
});

describe('sorting any visit', () => {
  const line = fc.constantFrom(
    'allow unknown-word the clinic says so',
    'history onset gradual 5 months',
    'pain 2nd plantar 6/10 "barefoot"',
    'tried met-pad 4 weeks no-relief',
    'stand 2nd lifted 3 mm',
    '2nd drawer 2, paper weak',
    '2nd drawer not 2',
    '3rd normal; plan tape 3rd',
    'others normal',
    'webs 2-3 click none',
    'pulses dp 2',
    'us 2nd tear partial',
    'stage 2nd 2',
    'plan tape 2nd 8 weeks',
    'operation done 2nd plate repair',
    'event reduction',
    'addendum 2026-03-10 AB',
    'signed 2026-03-09 AB',
    'carried 2026-01-05 2nd drawer 1',
    'carried 2026-01-05',
    'examiner AB',
    'R:',
    'left',
    '2nd:',
    'drawer 1',
    'blorp',
    '// a comment',
    '',
  );
  const opening = fc.constantFrom(visit, 'visit 2026-05-04 review both', 'visit');
  const facts = (lines: readonly string[]) =>
    read(lines.map((text) => readLine(text)))
      .facts.map(({ statement: _, origin, ...fact }) => JSON.stringify([fact, origin.kind]))
      .sort();

  test('keeps every line and every fact, and is done in one go', () => {
    let moved = 0;
    fc.assert(
      fc.property(opening, fc.array(line, { maxLength: 10 }), (first, rest) => {
        const lines = [first, ...rest];
        const result = sorted(...lines);
        if (!result) return;
        moved++;
        expect([...result].sort()).toEqual([...lines].sort());
        expect(facts(result)).toEqual(facts(lines));
        expect(sorted(...result)).toBeUndefined();
      }),
      { numRuns: 500 },
    );
    expect(moved).toBeGreaterThan(100);
  });
});
