import { expect, test } from 'vitest';
import { codeActions } from '../../server/features/code-actions.ts';
import { dictationActions } from '../../server/features/dictation.ts';
import { applied, noteWithCursor } from './fixture.ts';

/** What each fix at the cursor makes of the note, by its title. */
function fixesAt(fixture: string): Record<string, string> {
  const { note, position } = noteWithCursor(fixture);
  const range = { start: position, end: position };
  const actions = [...codeActions(note, range), ...dictationActions(note, range)];
  return Object.fromEntries(
    actions.map(({ title, edit }) => [title, applied(note, edit!.changes![note.uri]!)] as const),
  );
}
const VISIT = 'visit 2026-03-09 first right';

test.each([
  ['web| 2-3 click', { 'Write "web 2"': 'web 2 click', 'Write "webs 2-3"': 'webs 2-3 click' }],
  ['web| 1-3 click', { 'Write "webs 1-3"': 'webs 1-3 click' }],
  ['pain "worst| barefoot', { 'Close the quote at the end of the line': 'pain "worst barefoot"' }],
  ['pain “worst| barefoot', { 'Close the quote at the end of the line': 'pain “worst barefoot”' }],
  [
    'us 03/07/26| 2nd tear partial',
    {
      'Write 2026-07-03 (day first)': 'us 2026-07-03 2nd tear partial',
      'Write 2026-03-07 (month first)': 'us 2026-03-07 2nd tear partial',
    },
  ],
  ['us 13.7.2026| 2nd tear partial', { 'Write 2026-07-13 (day first)': 'us 2026-07-13 2nd tear partial' }],
  ['us 07/07/26| 2nd tear partial', { 'Write 2026-07-07': 'us 2026-07-07 2nd tear partial' }],
  [
    'allow stage-unsuported| seen',
    { 'Replace "stage-unsuported" with "stage-unsupported"': 'allow stage-unsupported seen' },
  ],
])('%s: the message names the cure, and a fix does it', (line, cures) => {
  const fixes = fixesAt(`${VISIT}\n${line}`);
  for (const [title, after] of Object.entries(cures))
    expect(fixes[title], Object.keys(fixes).join('\n')).toBe(`${VISIT}\n${after}`);
});

test('a day that does not exist, or a date without its year, is no date to write', () => {
  for (const date of ['2026-02-30', '31/31/26', '03/07'])
    expect(Object.keys(fixesAt(`${VISIT}\nus ${date}| 2nd tear partial`)).join('\n')).not.toMatch(/^Write \d/m);
});

test.each([
  ['visit 2026-03-09 frist| right', 'Replace "frist" with "first"', 'visit 2026-03-09 first right'],
  ['visit 2026-03-09 first rihgt|', 'Replace "rihgt" with "right"', 'visit 2026-03-09 first right'],
  ['patient KM-207 born 1971 femal|', 'Replace "femal" with "female"', 'patient KM-207 born 1971 female'],
  ['patient KM-207 bron| 1971', 'Replace "bron" with "born"', 'patient KM-207 born 1971'],
  ['scales draw| 0-4', 'Replace "draw" with "drawer"', 'scales drawer 0-4'],
  ['scales drawer 04|', 'Replace "04" with "0-4"', 'scales drawer 0-4'],
  ['scals| drawer 0-4', 'Replace "scals" with "scales"', 'scales drawer 0-4'],
  ['visti| 2026-03-09 first right', 'Replace "visti" with "visit"', 'visit 2026-03-09 first right'],
])('%s: a misspelt word of the header', (line, title, after) => {
  const fixes = fixesAt(line);
  expect(fixes[title], Object.keys(fixes).join('\n')).toBe(after);
});

test.each([
  ['propsed| 2nd straight  // s', 'Replace "propsed" with "proposed"', 'proposed 2nd straight  // s'],
  ['caried| 2026-02-01 2nd drawer 2', 'Replace "caried" with "carried"', 'carried 2026-02-01 2nd drawer 2'],
  ['exminer| AB', 'Replace "exminer" with "examiner"', 'examiner AB'],
  ['patinet| KM', 'Replace "patinet" with "patient"', 'patient KM'],
  ['evnt| reduction', 'Replace "evnt" with "event"', 'event reduction'],
  ['adendum| 2026-03-04 AB: 2nd drawer 1', 'Replace "adendum" with "addendum"', 'addendum 2026-03-04 AB: 2nd drawer 1'],
  ['visti| 2026-04-02 review left', 'Replace "visti" with "visit"', 'visit 2026-04-02 review left'],
  ['signd| 2026-03-09 AB', 'Replace "signd" with "signed"', 'signed 2026-03-09 AB'],
  ['signed 2026-3-9| AB', 'Write 2026-03-09', 'signed 2026-03-09 AB'],
])('%s: a misspelt word of the life of a visit', (line, title, after) => {
  const fixes = fixesAt(`${VISIT}\n${line}`);
  expect(fixes[title], Object.keys(fixes).join('\n')).toBe(`${VISIT}\n${after}`);
  expect(Object.keys(fixes)[0]).toBe(title);
  expect(Object.keys(fixes).join('\n')).not.toContain('Read the findings');
});

test.each(['propsed| 2nd straight  // s', 'caried| 2026-02-01 2nd drawer 2', 'examiner| smith: 2nd drawer 1'])(
  '%s: what opens the line is no remark, so that the rest does not count as it stands',
  (line) =>
    expect(Object.keys(fixesAt(`${VISIT}\n${line}`)).join('\n')).not.toMatch(/^Keep "\w+" as|Read the findings/m),
);

test.each([
  ['web 3/4| click', { 'Write "web 3"': 'web 3 click', 'Write "webs 3-4"': 'webs 3-4 click' }],
  ['webs 2/3| click', { 'Write "webs 2-3"': 'webs 2-3 click' }],
  ['signed 2026-03-09 surgoen|', { 'Replace "surgoen" with "surgeon"': 'signed 2026-03-09 surgeon' }],
  ['examiner| nurs: 2nd drawer 1', { 'Replace "nurs" with "nurse"': 'examiner nurse: 2nd drawer 1' }],
  [
    'signed 09/03/26| AB',
    {
      'Write 2026-03-09 (day first)': 'signed 2026-03-09 AB',
      'Write 2026-09-03 (month first)': 'signed 2026-09-03 AB',
    },
  ],
])('%s: what was meant is offered', (line, cures) => {
  const fixes = fixesAt(`${VISIT}\n${line}`);
  for (const [title, after] of Object.entries(cures))
    expect(fixes[title], Object.keys(fixes).join('\n')).toBe(`${VISIT}\n${after}`);
  expect(Object.keys(fixes).filter((title) => title.startsWith('Write "web'))).toEqual(
    Object.keys(cures).filter((title) => title.startsWith('Write "web')),
  );
});

test('a date without its zeros is written with them, and no sign of it is taken for a side', () => {
  const fixes = fixesAt('visit 2026-4-5| review right');
  expect(fixes).toEqual({ 'Write 2026-04-05': 'visit 2026-04-05 review right' });
});

test('what opens a line is never replaced by a preferred word of a finding, and signed words are never spelt anew', () => {
  const { note, position } = noteWithCursor('forefoot 1\nscale| drawer 0-4');
  const range = { start: position, end: position };
  expect(dictationActions(note, range).filter(({ isPreferred }) => isPreferred)).toEqual([]);
  const signed = noteWithCursor(`${VISIT}\n2nd drwaer| 2\nsigned 2026-03-09 AB`);
  expect(dictationActions(signed.note, { start: signed.position, end: signed.position })).toEqual([]);
});

test('a word that is like none of the header is left alone', () => {
  expect(fixesAt('visit 2026-03-09 zzqxy| right')).toEqual({});
});

test('an allowance that hides nothing is removed with its line', () => {
  const cure = 'Remove this line, which hides nothing';
  expect(fixesAt(`${VISIT}\nallow| stage-unsupported seen\n2nd tender`)[cure]).toBe(`${VISIT}\n2nd tender`);
  expect(fixesAt(`allow| stage-unsupported seen\n${VISIT}`)[cure]).toBe(VISIT);
  expect(fixesAt(`${VISIT}\nallow| stage-unsupported seen // ask`)).not.toHaveProperty([cure]);
});

test.each([
  ['plan tape| 2nd', 'plan left tape 2nd'],
  ['plan tape| 2nd 8 weeks; steroid web 2', 'plan left tape 2nd 8 weeks; left steroid web 2'],
  ['plan tape| 2nd, insole; review in 6 weeks', 'plan left tape 2nd, left insole; review in 6 weeks'],
])('a plan takes the side of its heading: %s', (line, after) => {
  const before = 'forefoot 1\n\nvisit 2026-03-09 first both\nL:\n2nd tender plantar\n';
  expect(fixesAt(before + line)['Write "left" with what is planned here']).toBe(before + after);
});

test('a plan takes the side of its heading where it was read, and nowhere else', () => {
  const before = 'forefoot 1\n\nvisit 2026-03-09 first both\nL:\n2nd tender plantar\n';
  const cure = 'Write "left" with what is planned here';
  expect(fixesAt(`${before}plan tape| 2nd; boot L2`)[cure]).toBe(`${before}plan left tape 2nd; boot L2`);
});

test('a visit without side takes one, and a misspelt side is mended', () => {
  expect(fixesAt('visit 2026-03-09 first // new\n2nd drawer| 2')).toMatchObject({
    'Write "right" on the visit line': 'visit 2026-03-09 first right // new\n2nd drawer 2',
    'Write "left" on the visit line': 'visit 2026-03-09 first left // new\n2nd drawer 2',
  });
  const fixes = fixesAt('visit 2026-03-09 frist rigth\n2nd drawer| 2');
  expect(fixes['Replace "rigth" with "right"']).toBe('visit 2026-03-09 frist right\n2nd drawer 2');
  expect(Object.keys(fixes).join()).not.toContain('on the visit line');
});
