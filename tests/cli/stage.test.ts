import { describe, expect, test } from 'vitest';
import type { StageRecord } from '../../server/cli/stage-records.ts';
import { expectGolden } from './golden.ts';
import { forefoot, note } from './run.ts';

const today = ['--today', '2026-11-01'];
const staged = (input: string): StageRecord[] =>
  JSON.parse(forefoot(['stage', '-', '--format', 'json'], { input }).out);

describe('a record', () => {
  test('names visit, side and ray, with the stage as a number and its evidence by line', () => {
    const [record] = staged(note('2nd  tender plantar, drawer 2, medial', 'stage 2nd 2'));
    expect(record).toMatchObject({
      file: '<stdin>',
      date: '2026-03-09',
      side: 'right',
      ray: 2,
      status: 'staged',
      stage: 2,
      stageLow: 2,
      stageHigh: 2,
      why: null,
      stated: 2,
    });
    expect(record?.evidence).toContainEqual(
      expect.objectContaining({ finding: 'drawer', role: 'decides', words: 'drawer 2', line: 6 }),
    );
  });

  test('has the next step with its reason, cautions and review', () => {
    const [record] = staged(note('2nd  tender plantar, drawer 2'));
    expect(record?.next).toEqual({
      step: expect.stringMatching(/^[A-Z].*\.$/),
      why: expect.any(String),
      cautions: expect.arrayContaining([expect.any(String)]),
      review: expect.any(String),
      urgent: false,
      row: 'first course',
      source: expect.any(String),
      mark: expect.any(String),
    });
    expect(record?.mark).toEqual(expect.any(String));
    expect(record?.assumptions).toContainEqual(expect.stringContaining('overlap'));
  });

  test('of a span has no single stage, and names what is missing', () => {
    const [record] = staged(note('2nd  tender plantar, medial marked'));
    expect(record).toMatchObject({ status: 'span', stage: null, stageLow: 1, stageHigh: 3 });
    expect(record?.missing).toHaveLength(1);
    expect(record?.missing[0]).toContain('drawer');
  });

  test('that cannot be staged says why', () => {
    const [record] = staged(note('2nd  tender plantar, straight'));
    expect(record).toMatchObject({ status: 'cannot', stage: null, stageLow: null, stageHigh: null, stated: null });
    expect(record?.why).toContain('drawer');
  });

  test('where staging does not apply says why', () => {
    const [record] = staged(note('5th  tender plantar, drawer 2'));
    expect(record).toMatchObject({ ray: 5, status: 'notApplicable', stage: null });
    expect(record?.why).toContain('fifth ray');
  });

  test('keeps a stated range as text', () => {
    expect(staged(note('2nd  tender plantar, drawer 2', 'stage 2nd 1-2'))[0]?.stated).toBe('1-2');
  });
});

test('visits stand in the order of the note, right before left, rays in order', () => {
  const records = JSON.parse(forefoot(['stage', 'samples', '--format', 'json', ...today]).out) as StageRecord[];
  const bilateral = records.filter(({ file }) => file.includes('bilateral'));
  expect(bilateral.map(({ side, ray }) => `${side} ${ray}`)).toEqual(
    ['right', 'left'].flatMap((side) => [2, 3, 4, 5].map((ray) => `${side} ${ray}`)),
  );
  const second = records.filter(({ file }) => file.includes('second-ray')).map(({ date }) => date);
  expect(second).toEqual([...second].sort());
});

test('a note without an exam gives no record, and 0', () => {
  const input = 'forefoot 1\n';
  expect(forefoot(['stage', '-', '--format', 'json'], { input })).toEqual({ code: 0, out: '[]\n', err: '' });
  expect(forefoot(['stage', '-'], { input }).out).toBe('<stdin>\n  no lesser ray is examined in this note\n\n');
});

test('text puts the urgent ray first and each caution once', () => {
  const { out } = forefoot(['stage', '-'], { input: note('2nd  tender plantar, drawer 2', '3rd  toe-colour blue') });
  expect(out.indexOf('right 3rd')).toBeLessThan(out.indexOf('right 2nd'));
  expect(out).toContain('URGENT');
  expect(out.match(/No tape over numb/g)).toHaveLength(1);
});

test('text says that it is computed and keeps to the width', () => {
  const { out } = forefoot(['stage', 'samples/second-ray.forefoot', ...today], { env: { COLUMNS: '72' } });
  expect(out).toContain('right 2nd: computed stage 2, stated 2');
  expect(out.replaceAll(/\s+/g, ' ')).toContain('local protocol and a licensed clinician decide.');
  expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(72);
});

test('what cannot be read exits with 2, and the rest is staged', () => {
  const { code, out, err } = forefoot(['stage', 'nowhere', 'samples/early-stage.forefoot', ...today]);
  expect(code).toBe(2);
  expect(err).toBe('forefoot: nowhere: no such file or folder\n');
  expect(out).toContain('left 2nd: computed stage 0');
});

test('text for people, as it is printed', () => {
  for (const name of ['second-ray', 'acute-dislocation'])
    expectGolden(`stage-${name}`, forefoot(['stage', `samples/${name}.forefoot`, ...today]).out);
});

describe('a red flag that no examined ray leads with', () => {
  test.each([
    ['of a foot whose rays nobody examined', ['wound pus'], /pus/],
    ['of the great toe', ['1st colour white', '2nd tender plate, drawer 2'], /cold, pale, white or blue/],
    ['that comes second at a ray', ['2nd hot, drawer 2', 'fever', 'calf swollen and tender'], /calf/],
  ])('%s leads its visit in text and has a record of its own', (_, body, why) => {
    const input = note(...body);
    const { out } = forefoot(['stage', '-', ...today], { input });
    const [, , first] = out.split('\n');
    expect(first).toMatch(/^ {4}RED FLAG: /);
    expect(first).toMatch(why);
    expect(out).toMatch(/URGENT/);
    const [record] = staged(input);
    expect(record).toMatchObject({ status: 'redFlag', side: null, ray: null, next: { urgent: true } });
    expect(record?.why).toMatch(why);
    expect(record?.evidence.length).toBeGreaterThan(0);
  });
  test('is not said twice where a ray leads with it', () => {
    const records = staged(note('2nd hot, drawer 2', 'fever'));
    expect(records.map(({ status }) => status)).toEqual(['notApplicable']);
    expect(records[0]?.redFlags).toHaveLength(1);
  });
});

describe('--why', () => {
  test('tells the argument in sentences, for people', () => {
    expectGolden('stage-why-second-ray', forefoot(['stage', '--why', 'samples/second-ray.forefoot', ...today]).out);
    const input = note('2nd  tender plantar, deviation medial, wobblish', '3rd  tender plate, drawer 0, straight');
    expectGolden('stage-why-open', forefoot(['stage', '--why', '-', ...today], { input }).out);
  });

  test('gives programs the same sentences with their sources', () => {
    const input = note('2nd  tender plantar, drawer 2');
    const [record] = JSON.parse(forefoot(['stage', '--why', '-', '--format', 'json'], { input }).out) as StageRecord[];
    expect(record?.argument).toContainEqual({
      about: 'decides',
      text: expect.stringContaining('"drawer 2" (line 6)'),
      source: 'COUGH11',
      mark: 'from memory, to be verified',
    });
    expect(staged(input)[0]?.argument).toBeUndefined();
  });

  test('keeps to the width', () => {
    const { out } = forefoot(['stage', '--why', 'samples/second-ray.forefoot', ...today], { env: { COLUMNS: '60' } });
    expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(60);
  });
});

describe('--scales', () => {
  const text = note('2nd  tender plantar, drawer 1, medial mild, no overlap', 'mri 2nd anatomical-grade 2');
  test('adds the other scales, each with its source and mark, and never unasked', () => {
    const { out } = forefoot(['stage', '-', '--scales', '--format', 'json'], { input: text });
    const [record] = JSON.parse(out) as StageRecord[];
    expect(record?.stage).toBe(1);
    expect(record?.scales?.map(({ scale, outcome, source, mark }) => [scale, outcome.is, source, mark])).toEqual([
      ['predislocation stage', 'cannot be told', 'YU02', 'secondary'],
      ['crossover grade by displacement', 'told', 'HADD99', 'from memory, to be verified'],
      ['crossover grade by drawer and overlap', 'told', 'common practice', 'common practice'],
    ]);
    expect(staged(text)[0]?.scales).toBeUndefined();
  });
  test('say in one row that none is applied where the stage is kept away', () => {
    const input = note('2nd  drawer 2, medial mild', 'operation done 2nd weil');
    const { out } = forefoot(['stage', '-', '--scales', ...today], { input });
    expect(out).toMatch(/scales +none is applied, for the reason that keeps the stage away\n/);
    expect(out).not.toContain('crossover');
  });
  test('and the plate as seen stand in rows of their own', () => {
    const { out } = forefoot(['stage', '-', '--scales', ...today], { input: text });
    expect(out).toMatch(/computed stage 1 \[/);
    expect(out).toMatch(/plate seen +anatomical grade 2, /);
    expect(out).toMatch(/scales +predislocation stage: cannot be told/);
    expect(out).toMatch(/crossover grade by displacement: 1 \(/);
  });
});
