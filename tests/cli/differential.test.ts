import { describe, expect, test } from 'vitest';
import type { DifferentialRecord } from '../../server/cli/differential-records.ts';
import { expectGolden } from './golden.ts';
import { folderWith, forefoot, note } from './run.ts';

const today = ['--today', '2026-11-01'];
const records = (input: string): DifferentialRecord[] =>
  JSON.parse(forefoot(['differential', '-', '--format', 'json'], { input }).out);

describe('a record', () => {
  test('names the visit, its red flags, and each site with its conditions', () => {
    const [record] = records(note('2nd  tender plate, drawer 2', 'web 2  squeeze painful'));
    expect(record).toMatchObject({ file: '<stdin>', date: '2026-03-09', kind: 'first', redFlags: [] });
    expect(record?.sites.map(({ side, site }) => `${side} ${site}`)).toEqual(['right 2nd', 'right web 2']);
    const plate = record?.sites[0]?.conditions.find(({ condition }) => condition === 'plantar plate tear');
    expect(plate).toMatchObject({ neverMiss: false, for: 2, against: 0 });
    expect(plate?.arguments[0]).toEqual({
      finding: 'drawer',
      role: 'for',
      why: expect.stringContaining('unstable'),
      words: [{ words: 'drawer 2', line: 6, of: '2nd' }],
      source: 'NERY15',
      mark: 'read',
    });
    expect(plate?.separate).toEqual({
      ask: expect.stringContaining('blocks of joint and web'),
      source: 'HEALIO15',
      mark: 'secondary',
    });
  });

  test('says what is open, and why', () => {
    const [record] = records(note('2nd  tender plate, drawer not 2, paper not done'));
    const plate = record?.sites[0]?.conditions.find(({ condition }) => condition === 'plantar plate tear');
    expect(plate?.open.map(({ finding, because }) => [finding, because])).toEqual([
      ['drawer', 'unread'],
      ['swelling', 'not mentioned'],
      ['paper', 'not done'],
      ['lifted', 'not mentioned'],
    ]);
  });

  test('of a visit without complaint keeps its red flags', () => {
    expect(records(note('calf  swollen tender'))).toEqual([
      expect.objectContaining({ sites: [], redFlags: [expect.objectContaining({ flag: 'clot' })] }),
    ]);
  });
});

describe('which visit', () => {
  const visits = '\nvisit 2026-05-04 review right\n3rd  tender plate\n';
  const two = `${note('2nd  tender plate')}${visits}`;
  const sites = (...args: string[]): string[] =>
    (
      JSON.parse(
        forefoot(['differential', '-', '--format', 'json', ...args], { input: two }).out,
      ) as DifferentialRecord[]
    )
      .flatMap((record) => record.sites)
      .map(({ site }) => site);

  test('is the newest, or the one that is asked for', () => {
    expect(sites()).toEqual(['3rd']);
    expect(sites('--visit', '2026-03-09')).toEqual(['2nd']);
  });

  test('a note without such a visit is complained of, and the others are weighed', () => {
    const cwd = folderWith({ 'a.forefoot': two, 'b.forefoot': note('2nd  tender plate') });
    const { code, out, err } = forefoot(['differential', '.', '--visit', '2026-05-04'], { cwd });
    expect(code).toBe(2);
    expect(err).toBe('forefoot: b.forefoot: no visit on 2026-05-04; this note has 2026-03-09\n');
    expect(out).toContain('right 3rd');
  });
});

test('a note without a visit gives nothing, and 0', () => {
  const input = 'forefoot 1\n';
  expect(forefoot(['differential', '-', '--format', 'json'], { input })).toEqual({ code: 0, out: '[]\n', err: '' });
});

describe('text', () => {
  const text = (...lines: string[]): string =>
    forefoot(['differential', '-'], { input: note(...lines) }).out.replaceAll(/\s+/g, ' ');

  test('has the red flag first, and says that it comes before the rest', () => {
    const out = text('2nd  hot, tender plate, drawer 2', 'history  fever');
    expect(out).toMatch(/RED FLAG infection, before everything below: a hot or red joint with fever\. .* right 2nd/);
  });

  test('warns of words that may be a red flag and were not understood', () => {
    expect(text('2nd  tender plate, oozy pus thing')).toMatch(
      /RED FLAG\? Words that may be a red flag were not understood/,
    );
  });

  test('counts plainly, and says that no count is a probability', () => {
    const out = text('2nd  tender plate, drawer 2, paper holds');
    expect(out).toContain('plantar plate tear: argued for by 2, against by 1');
    expect(out).toContain('no count is a probability');
    expect(out).toContain('Local protocol and a licensed clinician decide.');
  });

  test('names the neighbour that words are said of', () => {
    expect(text('2nd  tender plate', 'webs 1-2  no click', 'web 2  squeeze painful')).toMatch(/web 2 squeeze painful/);
  });

  test('does not tell at a web again what it told at the ray', () => {
    const out = text('2nd  tender plate, drawer 2', 'web 2  squeeze painful');
    expect(out).toContain('plantar plate tear: argued for by 2, against by 0, as at the 2nd');
  });

  test('puts rays together of which the same is said', () => {
    const out = text('3rd-4th  drawer 1', 'webs 2-4  no click');
    expect(out).toContain('right 3rd, 4th: ');
  });

  test('keeps to the width', () => {
    const { out } = forefoot(['differential', 'samples/second-ray.forefoot', ...today], { env: { COLUMNS: '72' } });
    expect(Math.max(...out.split('\n').map(({ length }) => length))).toBeLessThanOrEqual(72);
  });

  test('for people, as it is printed', () => {
    for (const name of ['web-pain', 'second-ray', 'inflammatory'])
      expectGolden(`differential-${name}`, forefoot(['differential', `samples/${name}.forefoot`, ...today]).out);
  });
});
