import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { DrawerScale } from '../../grammar/values.ts';
import { readVisitFacts } from '../../server/clinical/read-facts.ts';
import type { Settings } from '../../server/clinical/settings.ts';

const OPENINGS = ['first right', 'review left', 'review both', 'phone', 'operation right'].map(
  (end) => `visit 2026-03-09 ${end}`,
);
const LINES = [
  '2nd drawer 2, tender plantar',
  'R2 drawer 1; L3 tender none',
  'others normal',
  '4th normal',
  'drawer 1 painful, wobbly tender',
  'overlap',
  'web 2 click',
  'plan tape 2nd 8 weeks; others stiff-insert',
  'R:',
  'L:',
  '2nd:',
  'others:',
  'both:',
  'examiner AB',
  'examiner CD drawer 3',
  'carried 2026-01-05 3rd drawer 2',
  'sense lost',
  'operation 2nd weil',
  'last visit:',
  'declined',
  '',
];
const SCALES: readonly (DrawerScale | undefined)[] = [undefined, '0-4', '0-3'];
const PANELS: readonly Settings['panels'][] = [undefined, { ray: [{ finding: 'tenderness', status: 'absent' }] }];

const visit = fc.record({
  opening: fc.constantFrom(...OPENINGS),
  lines: fc.array(fc.constantFrom(...LINES), { minLength: 1, maxLength: 8 }),
  scale: fc.constantFrom(...SCALES),
  panels: fc.constantFrom(...PANELS),
});
const shared = new Map<string, LineSyntax>([...OPENINGS, ...LINES].map((text) => [text, readLine(text)]));
const kept = (text: string): LineSyntax => shared.get(text) as LineSyntax;

describe('facts of a line are kept with it', () => {
  test('and are those of a line that nobody has asked before, whatever stands above or around it', () => {
    fc.assert(
      fc.property(visit, ({ opening, lines, scale, panels }) => {
        const read = (reader: (text: string) => LineSyntax) =>
          readVisitFacts(
            [opening, ...lines].map(reader),
            { version: 1, allowances: [], ...(scale ? { drawerScale: scale } : {}) },
            panels ? { panels } : {},
          );
        expect(read(kept)).toEqual(read((text) => readLine(text)));
      }),
      { numRuns: 1_500 },
    );
  });

  test('and shared by visits in which it stands in one place, from the second on', () => {
    const header = { version: 1, allowances: [] };
    const [line, other] = ['2nd drawer 2', '3rd drawer 1'].map((text) => readLine(text)) as [LineSyntax, LineSyntax];
    const facts = (...lines: LineSyntax[]) => readVisitFacts([kept(OPENINGS[0] as string), ...lines], header).facts;
    const [first, second] = [facts(line)[0], facts(line)[0]];
    expect(second).not.toBe(first);
    expect(facts(line, other)[0]).toBe(second);
    expect(facts(other, line)[1]).not.toBe(facts(line)[0]);
  });
});

test('what is unclear on a line is collected in time that follows its length', () => {
  const header = { version: 1, allowances: [] };
  const opening = readLine(OPENINGS[0]!);
  const time = (count: number) => {
    const line = readLine(`2nd ${'zq tender no '.repeat(count)}`);
    const began = performance.now();
    expect(readVisitFacts([opening, line], header).unclear.length).toBeGreaterThan(count);
    return performance.now() - began;
  };
  time(2_000);
  const ratios = [0, 1, 2].map(() => time(16_000) / time(2_000));
  // Eight times the words take about eight times the time, and 64 times where each looks through all the others.
  expect(Math.min(...ratios)).toBeLessThan(24);
});
