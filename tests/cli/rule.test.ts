import { describe, expect, test } from 'vitest';
import { RULE_PAGES } from '../../server/documents/rule-pages.ts';
import { forefoot } from './run.ts';

describe('forefoot rule', () => {
  test('prints the page of a code: what, why, what to do instead, examples, fix, source', () => {
    const { code, out, err } = forefoot(['rule', 'steroid-unstable']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    for (const part of [
      '## steroid-unstable',
      '*What.*',
      '*Why.*',
      '*Instead.*',
      'Reported:',
      '- Write "no steroid" (needs review',
      'Not reported:',
      'Looks alike, and is not reported:',
      '*Source.* REIS89, from memory, to be verified.',
      'REIS89: Reis ND',
    ])
      expect(out).toContain(part);
  });
  test('without a code lists every code', () => {
    const { code, out } = forefoot(['rule']);
    expect(code).toBe(0);
    expect(
      out
        .trimEnd()
        .split('\n')
        .map((line) => line.split(' ')[0]),
    ).toEqual(RULE_PAGES.map((page) => page.code));
  });
  test('as JSON gives the source, its mark and its citation', () => {
    const [record] = JSON.parse(forefoot(['rule', 'invasive-unconfirmed', '--format', 'json']).out);
    expect(record).toMatchObject({ code: 'invasive-unconfirmed', source: 'GREGG06', mark: 'read', fixes: [] });
    expect(record.citation).toMatch(/^Gregg J.*doi:10\.1007/);
    expect(JSON.parse(forefoot(['rule', '--format', 'json']).out)).toHaveLength(RULE_PAGES.length);
  });
  test.each([
    [['rule', 'steroid'], 'no report has the code "steroid"; forefoot rule lists every code'],
    [['rule', 'red-flag', 'tape-risk'], 'rule takes one code; see forefoot help rule'],
  ])('%j is refused in one line', (args, line) => {
    expect(forefoot(args)).toEqual({ code: 2, out: '', err: `forefoot: ${line}\n` });
  });
});

test('check names the command that explains a code, and gives the source of each rule as JSON', () => {
  expect(forefoot(['check', 'samples/faulty.forefoot']).out).toMatch(/forefoot rule CODE\n$/);
  const reports = JSON.parse(forefoot(['check', 'samples/faulty.forefoot', '--format', 'json']).out) as {
    code: string;
    source?: string;
    mark?: string;
  }[];
  const of = (code: string) => reports.find((each) => each.code === code);
  expect(of('steroid-unstable')).toMatchObject({ source: 'REIS89', mark: 'from memory, to be verified' });
  expect(of('bad-header')).not.toHaveProperty('source');
});
