import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { jsonFault } from '../../server/clinical/json-place.ts';
import { readSettings } from '../../server/clinical/read-settings.ts';
import type { Settings } from '../../server/clinical/settings.ts';
import { settingsSchema } from '../../server/clinical/settings-schema.ts';

const problems = (json: unknown): readonly string[] => {
  const read = readSettings(typeof json === 'string' ? json : JSON.stringify(json));
  return 'problems' in read ? read.problems : [];
};
const settings = (json: object): Settings => {
  const read = readSettings(JSON.stringify(json));
  if ('problems' in read) throw new Error(read.problems.join('\n'));
  return read.settings;
};
const analysed = (body: string, json: object = {}) =>
  analyseNote(`forefoot 1\n\nvisit 2026-03-09 first right\n${body}\n`, '2026-03-09', settings(json)).visits[0]!
    .analysis;

describe('a settings file that cannot be used says where and what is expected', () => {
  test.each<[unknown, string]>([
    [[], 'expected an object { … }, not []'],
    [
      { panel: {} },
      'panel: unknown key; expected "$schema", "panels", "scales", "windows", "limits", "severity" or "wording"',
    ],
    [{ scales: 4 }, 'scales: expected an object { … }, not 4'],
    [{ scales: { drawer: '0-5' } }, 'scales.drawer: expected "0-4", "0-3" or "1-3", not "0-5"'],
    [
      { severity: { drawr: 'off' } },
      'severity.drawr: unknown code; expected a code that forefoot check prints in brackets',
    ],
    [
      { severity: { 'unknown-word': 'loud' } },
      'severity.unknown-word: expected "danger", "contradiction", "missing", "style" or "off", not "loud"',
    ],
    [
      { severity: { 'red-flag': 'off' } },
      'severity.red-flag: a danger is never lowered or turned off; expected "danger", not "off"',
    ],
    [
      { severity: { 'unread-red-flag': 'style' } },
      'severity.unread-red-flag: a danger is never lowered or turned off; expected "danger", not "style"',
    ],
    [{ wording: { words: 'short' } }, 'wording.words: expected "canonical" or "as-written", not "short"'],
    [{ windows: { hba1c: 8 } }, 'windows.hba1c: unknown key; expected "course-review"'],
    [{ limits: { 'hba1c-percent': '8' } }, 'limits.hba1c-percent: expected a number from 4 to 20, not "8"'],
    [{ limits: { 'hba1c-percent': 64 } }, 'limits.hba1c-percent: expected a number from 4 to 20, not 64'],
    [
      { windows: { 'course-review': 6 } },
      'windows.course-review: expected a time with its unit such as "6-8 weeks", not 6',
    ],
    [
      { windows: { 'course-review': '8-6 weeks' } },
      'windows.course-review: expected a time with its unit such as "6-8 weeks", not "8-6 weeks"',
    ],
    [
      { panels: { ray: ['drawer 2'], 'includes-stability': true } },
      'panels.ray[0]: "drawer 2" is no normal result; expected what normal may stand for such as "swelling none"',
    ],
    [
      { panels: { ray: ['swelling none', 'tender plantar'] } },
      'panels.ray[1]: "tender plantar" is no normal result; expected what normal may stand for such as "swelling none"',
    ],
    [
      { panels: { web: ['click'] } },
      'panels.web[0]: "click" is no normal result; expected what normal may stand for such as "click none"',
    ],
    [
      { panels: { ray: ['swelling'] } },
      'panels.ray[0]: "swelling" is no normal result; expected what normal may stand for such as "swelling none"',
    ],
    [
      { panels: { ray: ['paper pulls-out'], 'includes-stability': true } },
      'panels.ray[0]: "paper pulls-out" is no normal result; expected what normal may stand for such as "swelling none"',
    ],
    [
      { windows: { 'course-review': '0 weeks' } },
      'windows.course-review: expected a time with its unit such as "6-8 weeks", not "0 weeks"',
    ],
    [{ panels: { ray: 'none' } }, 'panels.ray: expected a list of findings such as ["swelling none"], not "none"'],
    [
      { panels: { ray: ['swellng none'] } },
      'panels.ray[0]: expected one finding of a ray with its result such as "swelling none", not "swellng none"',
    ],
    [
      { panels: { web: ['click none', 'drawer 0'] } },
      'panels.web[1]: expected one finding of a web with its result such as "click none", not "drawer 0"',
    ],
    [
      { panels: { ray: ['drawer 0'] } },
      'panels.ray[0]: "drawer 0" says that the joint is stable; expected it only with "includes-stability": true',
    ],
    [
      { panels: { ray: ['swelling none', 'no swelling'] } },
      'panels.ray: swelling stands twice; expected each finding once',
    ],
  ])('%j', (json, problem) => {
    expect(problems(json)).toEqual([problem]);
  });

  test('is told all of its problems, each in one line, and is not used in part', () => {
    const found = problems({ scales: { drawer: '0-3' }, windows: 6, wording: { words: 1 } });
    expect(found).toHaveLength(2);
  });
  test('that is no JSON', () => {
    expect(problems('{ "scales": ')).toHaveLength(1);
    expect(problems('{ "scales": ')[0]).toMatch(/^not JSON: [^\n]+$/);
  });
  test('may start with a byte order mark', () => {
    expect(problems('\ufeff{}')).toEqual([]);
  });
});

describe('settings in use', () => {
  test('a panel replaces what normal says, with its values, and marks each member by its origin', () => {
    const json = {
      panels: { ray: ['swelling none', 'drawer 0'], 'includes-stability': true },
      scales: { drawer: '0-4' },
    };
    const { facts } = analysed('4th normal', json).facts;
    expect(facts.map(({ finding, status, origin }) => [finding, status, origin.kind])).toEqual([
      ['swelling', 'absent', 'panel'],
      ['drawer', 'present', 'panel'],
    ]);
    expect(facts[1]!.values).toMatchObject({ grade: { low: 0, high: 0, scale: '0-4' } });
    expect(analysed('4th normal').facts.facts.map(({ finding }) => finding)).not.toContain('drawer');
  });
  test('a scale holds where neither statement nor file names one', () => {
    const codes = (json: object) => analysed('2nd drawer 2', json).reports.map(({ code }) => code);
    expect(codes({})).toContain('drawer-scale');
    expect(codes({ scales: { drawer: '0-4' } })).not.toContain('drawer-scale');
  });
  test('a severity holds for its code, and off hides it', () => {
    const found = (severity?: string) =>
      analysed('2nd blorp', severity ? { severity: { 'unknown-word': severity } } : {})
        .reports.filter(({ code }) => code === 'unknown-word')
        .map((report) => report.severity);
    expect(found()).toEqual(['contradiction']);
    expect(found('style')).toEqual(['style']);
    expect(found('danger')).toEqual(['danger']);
    expect(found('off')).toEqual([]);
  });
  test('a code that the clinic turned off leaves its allowance used, and one raised to a danger is not hidden', () => {
    const codes = (severity: string) =>
      analysed('allow unknown-word the clinic says so\n2nd blorp', {
        severity: { 'unknown-word': severity },
      }).reports.map(({ code }) => code);
    expect(codes('off')).toEqual([]);
    expect(codes('danger')).toContain('unknown-word');
  });
  test('the review of a course is the clinic’s, says so, and is what an accepted plan writes', () => {
    const body = 'pain 2nd plantar 4/10\n2nd swelling mild, tender plantar, drawer 1, straight, paper weak';
    const scales = { drawer: '0-4' };
    const next = (json: object) => analysed(body, { scales, ...json }).rays[0]!.next;
    expect(next({})).toMatchObject({ row: 'first course', review: 'at six to eight weeks' });
    const own = next({ windows: { 'course-review': '4-6 weeks' } });
    expect(own.review).toBe('at 4-6 weeks (set by the clinic)');
    expect(own.plan).toContain('review in 4-6 weeks');
  });
  test('the limit of HbA1c before an operation is the clinic’s, else that of CANC17 (7.5 %)', () => {
    const body =
      'history diabetes type 2, hba1c 7.6%\n2nd tender plate, overlap hallux at rest\npulses 2\nplan operation 2nd';
    const row = (json: object) => analysed(body, json).rays[0]!.next.row;
    expect(row({})).toBe('settle safety first');
    expect(row({ limits: { 'hba1c-percent': 8 } })).not.toBe('settle safety first');
  });
});

test('the published schema is the one that the tables give', () => {
  const file = readFileSync('grammar/generated/forefoot-settings.schema.json', 'utf8');
  expect(file).toBe(`${JSON.stringify(settingsSchema(), null, 2)}\n`);
});

test('the schema knows the keys and the codes that are read', () => {
  const { properties } = settingsSchema();
  for (const key of Object.keys(properties)) expect(problems({ [key]: key === '$schema' ? 'x' : {} })).toEqual([]);
  for (const code of Object.keys(properties.severity.properties))
    expect(problems({ severity: { [code]: 'danger' } })).toEqual([]);
});

describe('a settings file that is no JSON says where it stops being JSON', () => {
  test.each([
    ['{\n  "scales": x\n}', 'line 2, column 13: expected a value, not x'],
    ['{ "a": 1, }', 'line 1, column 11: expected a key in double quotes, not }'],
    ['{ "a": 01 }', 'line 1, column 8: expected a value, not 01'],
    ['{ "a": [1 2] }', 'line 1, column 11: expected "," or "]", not 2'],
    ['{ "a": "b\n" }', 'line 1, column 8: expected a value, not "'],
    ['{ "a": 1 } b', 'line 1, column 12: expected the end of the file, not b'],
    ['', 'line 1, column 1: expected a value, not the end of the file'],
    ['{ "a"', 'line 1, column 6: expected ":", not the end of the file'],
    ['// x\n{}', 'line 1, column 1: expected a value, not /'],
    ['{ "scales": {}, "scales": {} }', 'line 1, column 17: "scales" stands twice; expected each key once'],
    ['['.repeat(1e5), 'line 1, column 52: nested too deeply'],
  ])('%#', (text, problem) => {
    expect(readSettings(text)).toEqual({ problems: [`not JSON: ${problem}`] });
  });

  test('and whatever the language itself takes for JSON has no fault', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), fc.constantFrom(undefined, 2, '\t'), (value, space) => {
        expect(jsonFault(JSON.stringify(value, null, space))).toBeUndefined();
      }),
    );
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 3 }), fc.nat(), fc.string({ maxLength: 2 }), (value, at, put) => {
        const text = JSON.stringify(value);
        const cut = at % (text.length + 1);
        const broken = text.slice(0, cut) + put + text.slice(cut + 1);
        const parses = () => {
          try {
            return JSON.parse(broken) !== undefined;
          } catch {
            return false;
          }
        };
        const fault = jsonFault(broken);
        if (!fault?.includes('stands twice')) expect(fault === undefined).toBe(parses());
      }),
      { numRuns: 2_000 },
    );
  });
});

test('a time of one week, and results that are normal, are accepted', () => {
  expect(settings({ windows: { 'course-review': '1 week' } })).toMatchObject({ courseReview: '1 week' });
  for (const ray of [['paper holds'], ['no swelling', 'drawer 0'], ['pip flexible', 'sensation normal']])
    expect(settings({ panels: { ray, 'includes-stability': true } })).toHaveProperty('panels');
});
