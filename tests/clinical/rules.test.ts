import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { SOURCES } from '../../grammar/sources.ts';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { Rule } from '../../server/clinical/rules/define-rule.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { analyses, TODAY } from './note.ts';

const reportsOf = (text: string, rules?: readonly Rule[]) => analyses(text, rules).flatMap(({ reports }) => reports);
const codesIn = (text: string, code: string): number => reportsOf(text).filter((report) => report.code === code).length;

describe.each(RULES.map((rule) => [rule.code, rule] as const))('%s', (code, rule) => {
  it('reports its invalid example once, and neither of the others', () => {
    expect(codesIn(rule.examples.invalid, code)).toBe(1);
    expect(codesIn(rule.examples.valid, code)).toBe(0);
    expect(codesIn(rule.examples.nearMiss, code)).toBe(0);
  });
  it('has examples that differ and are read without a red flag that nobody meant', () => {
    expect(new Set(Object.values(rule.examples)).size).toBe(3);
    for (const text of [rule.examples.valid, rule.examples.nearMiss])
      expect(reportsOf(text).filter(({ severity }) => severity === 'danger')).toEqual([]);
  });
  it('says in one line what is wrong and what to do, on words of the note', () => {
    for (const report of reportsOf(rule.examples.invalid).filter((each) => each.code === code)) {
      expect(report.message).toMatch(/^["A-Z\d]|^[a-z-]+ /);
      expect(report.message).toMatch(/[.]$/);
      expect(report.message).not.toMatch(/\n| {2}|undefined|null|\[object/);
      expect(report.place.end).toBeGreaterThan(report.place.start);
    }
  });
  it('names a code in kebab-case, a source that exists and findings of the lexicon', () => {
    expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(Object.keys(SOURCES)).toContain(rule.source);
    for (const finding of rule.reads) expect(entryOf(finding).id).toBe(finding);
    for (const text of [rule.name, rule.what, rule.why, rule.instead]) expect(text.length).toBeGreaterThan(3);
  });
});

it('no two rules share a code', () => {
  expect(new Set(RULES.map(({ code }) => code)).size).toBe(RULES.length);
});

/** Realistic notes; `// expects CODE` at a line's end names every report of that line. */
const FOLDER = new URL('./corpus/', import.meta.url);
const CORPUS = readdirSync(FOLDER)
  .filter((name) => name.endsWith('.forefoot'))
  .map((name) => ({ name, text: readFileSync(new URL(name, FOLDER), 'utf8') }));
const expected = (text: string): string[] =>
  text
    .split('\n')
    .flatMap((line, i) =>
      (/\/\/ expects (.*)$/.exec(line)?.[1] ?? '').split(', ').flatMap((code) => (code ? [`${i + 1} ${code}`] : [])),
    );
/** Reports by line; what a visit's purpose needs is asked of the note that is about it alone. */
const found = (text: string, rules: readonly Rule[] = RULES): string[] =>
  analyseNote(text, TODAY, {}, rules)
    .visits.flatMap(({ firstLine, analysis }) =>
      analysis.reports.filter(isAsked(text)).map(({ place, code }) => `${firstLine + place.line + 1} ${code}`),
    )
    .sort();

const isAsked =
  (text: string) =>
  ({ code }: { code: string }): boolean =>
    code !== 'incomplete-visit' || text.includes('incomplete-visit');

describe('the corpus', () => {
  it.each(CORPUS.map(({ name, text }) => [name, text]))(
    '%s: reports what its lines expect and nothing else',
    (_, text) => {
      expect(found(text)).toEqual(expected(text).sort());
    },
  );
  it.each(RULES.map(({ code }) => code))('fails without the rule %s', (code) => {
    const without = RULES.filter((rule) => rule.code !== code);
    expect(CORPUS.some(({ text }) => found(text, without).join() !== expected(text).sort().join())).toBe(true);
  });
});

describe('an operation planned in a visit that does not examine its ray', () => {
  const plan = (exam: string) =>
    analyses(`forefoot 1
scales drawer 0-4

visit 2026-01-05 first right
${exam}

visit 2026-03-09 preop right
pulses palpable
plan operation 2nd plate repair
`)
      .at(-1)
      ?.reports.map(({ code }) => code)
      .filter((code) => code !== 'incomplete-visit');
  it('is confirmed by the exam and the image of an earlier visit that agree', () => {
    expect(plan('2nd tender plate, drawer 2, medial\nmri 2nd tear full')).toEqual([]);
  });
  it('and by nothing less', () => {
    expect(plan('2nd tender plate, drawer 2, medial')).toEqual(['invasive-unconfirmed']);
    expect(plan('2nd tender plate, drawer 2, medial\nmri 2nd plate intact')).toEqual(['invasive-unconfirmed']);
    expect(plan('3rd tender plate, drawer 2, medial\nmri 3rd tear full')).toEqual(['invasive-unconfirmed']);
  });
});

describe('allow', () => {
  const header = (allow: string, body: string) =>
    `forefoot 1\nscales drawer 0-4\n${allow}\n\nvisit 2026-03-09 first right\n${body}\n`;
  const note = (allow: string, body: string) => {
    const { visits, headerReports } = analyseNote(header(allow, body), TODAY);
    return {
      visit: visits.flatMap(({ analysis }) => analysis.reports.map(({ code }) => code)),
      header: headerReports.map(({ code }) => code),
    };
  };
  const TWICE = '2nd drawer 2\n2nd drawer 3';
  it('with a reason hides its code in the whole file, or in its visit', () => {
    expect(note('', TWICE).visit).toContain('stated-twice');
    expect(note('allow stated-twice two examiners', TWICE)).toEqual({ visit: [], header: [] });
    expect(note('', `allow stated-twice two examiners\n${TWICE}`)).toEqual({ visit: [], header: [] });
  });
  it('in one visit does not reach the next', () => {
    const text = `${header('', `allow stated-twice two examiners\n${TWICE}`)}\nvisit 2026-04-09 review right\n${TWICE}\n`;
    const visits = analyseNote(text, TODAY).visits.map(({ analysis }) => analysis.reports.map(({ code }) => code));
    expect(visits).toEqual([[], ['stated-twice']]);
  });
  it('hides only its own code', () => {
    expect(note('allow stated-twice two examiners', `${TWICE}\n4th drawer 9`).visit).toEqual(['value-out-of-range']);
  });
  it.each([
    ['red-flag', '2nd hot, tender plate\nfever'],
    ['steroid-unstable', '2nd tender plate, drawer 2\nplan steroid web 2'],
    ['wrong-side', 'L2 drawer 2'],
    ['acute-dislocation-incomplete', '2nd dislocated'],
  ])('never hides danger: %s', (code, body) => {
    const { visit, header } = note(`allow ${code} seen and known`, body);
    expect(visit).toContain(code);
    expect(header).toEqual(['unused-allow']);
  });
  it('never hides a red-flag word that was not understood', () => {
    const { visit } = note('allow unread-red-flag seen and known', '2nd drawer 1, foot somewhat dusky');
    expect(visit).toContain('unread-red-flag');
  });
  it('without a reason hides nothing and asks for one', () => {
    const { visit, header } = note('allow stated-twice', TWICE);
    expect(visit).toContain('stated-twice');
    expect(header).toEqual(['allow-without-reason']);
  });
  it('of an unknown code is reported', () => {
    expect(note('allow stated-thrice as agreed', '2nd drawer 2').header).toEqual(['unknown-code']);
    expect(note('', 'allow stated-thrice as agreed\n2nd drawer 2').visit).toEqual(['unknown-code']);
  });
  it('that hides nothing is reported', () => {
    expect(note('allow stated-twice two examiners', '2nd drawer 2').header).toEqual(['unused-allow']);
    expect(note('', 'allow stated-twice two examiners\n2nd drawer 2').visit).toEqual(['unused-allow']);
  });
});
