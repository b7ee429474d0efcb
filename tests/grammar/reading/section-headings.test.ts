import { expect, test } from 'vitest';
import { readLine } from '../../../grammar/read-line.ts';
import { readBelow } from '../../../grammar/reader/section-heading.ts';
import type { SectionHeading } from '../../../grammar/syntax.ts';
import { findingText, readingOf } from './findings.ts';

// Expected values: common practice (a heading of a clinic note stands on a line of its own and reaches to the next).

/** What each line says, one row a line that says anything; `...` where something is left unread. */
const said = (...lines: string[]): string[] =>
  readBelow(lines, readLine).flatMap(({ statements, problems }) => {
    const found = statements.flatMap(({ findings }) => findings.map(findingText)).join('; ');
    return found || problems.length > 0 ? [[found, ...(problems.length > 0 ? ['...'] : [])].join(' ').trim()] : [];
  });
const opens = (line: string, under?: SectionHeading) => readLine(line, under).opens;

test('a section word and a colon alone on a line open the section for the lines below', () => {
  expect(said('plan:', 'tape 2nd 8 weeks', 'no steroid', 'mri')).toEqual([
    'plan/2 tape for=8weeks',
    'plan/avoid steroid',
    'plan/image by=mri',
  ]);
  expect(said('PMH:', '8 months', 'T2DM')).toEqual(['history/duration for=8months', 'history/diabetes type=type 2']);
  expect(said('Operation:', 'weil 2nd 3 mm', 'no pin')).toEqual([
    'operation/2 procedure what=weil osteotomy shortening=3mm',
    'operation/no procedure what=pin',
  ]);
});

test('it ends at a blank line, a header line, another heading, or a heading of which nothing is read', () => {
  const ends = ['', 'visit 2026-03-09 first right', 'O/E:', 'o/e', 'Notes:', 'CLOSURE', 'visit'];
  for (const end of ends) expect([end, said('plan:', end, '2nd straight').at(-1)]).toEqual([end, '2 no deviation']);
  for (const not of ['// later', '2nd:', 'R:', 'pain 4/10', 'Tape', 'zzq'])
    expect([not, said('plan:', not, 'tape 8 weeks').at(-1)?.includes('plan/')]).toEqual([not, true]);
});

test('what the section cannot hold is left unread below its heading', () => {
  expect(said('plan:', '2nd drawer 2')).toEqual(['...']);
  expect(said('history:', '2nd paper pulls out')).toEqual(['...']);
});

test('a line opens its own section as ever, and the heading goes on below it', () => {
  expect(said('History:', 'T2DM', 'plan tape 2nd', 'nkda')).toEqual([
    'history/diabetes type=type 2',
    'plan/2 tape',
    'history/no allergy to=any drug',
  ]);
});

test('a section word without its colon opens nothing, except under a heading', () => {
  expect(said('plan', '2nd straight')).toEqual(['2 no deviation']);
  expect(said('operation:', 'plan', 'tape 2nd')).toEqual(['plan/2 tape']);
  expect(opens('plan')).toBeUndefined();
  expect(opens('plan', 'operation')).toBe('plan');
  for (const line of ['plan: tape', 'R:', '2nd:', 'plan =', 'last visit:', 'R plan:'])
    expect([line, opens(line)]).toEqual([line, undefined]);
});

test('below a heading of images each line names its own', () => {
  expect(said('Imaging:', 'xr wb: hva 20', '2nd straight')).toEqual([
    'xray/view load=weight-bearing; xray/hva angle=20°',
    'unclear: deviation',
  ]);
});

test('the mark of a list says nothing under a heading', () => {
  for (const mark of ['-', '*', '•', '–', '1.', '2)', '12.'])
    expect([mark, readingOf(`${mark} tape 2nd`, 'plan')]).toEqual([mark, { findings: 'plan/2 tape', problems: '' }]);
  for (const text of ['-tape', '1.5 tape', '1', '- ', '0. tape', '1-2. tape'])
    expect([text, readLine(text, 'plan').roles[0]?.kind]).not.toEqual([text, 'punctuation']);
  expect(readingOf('- tape 2nd').problems).not.toBe('');
});

test('a spoken line end goes back to the section of the heading', () => {
  expect(readingOf('pain 4/10 new line tape 2nd', 'plan').findings).toMatch(/plan\/2 tape$/);
});
