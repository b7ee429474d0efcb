import { expect, test } from 'vitest';
import { foldNote } from '../../server/clinical/analyse-note.ts';
import type { Report } from '../../server/clinical/analysis.ts';
import { NO_SETTINGS } from '../../server/clinical/settings.ts';
import { TODAY } from './note.ts';

function messages(text: string): string[] {
  const reports: Report[] = [];
  const { headerReports } = foldNote(text, { today: TODAY, settings: NO_SETTINGS }, ({ analysis }) =>
    reports.push(...analysis.reports),
  );
  return [...headerReports, ...reports].map(({ message }) => message);
}

test.each([
  ['forefoot 2', /^"2" isn't understood on this line\. The language has version 1: write forefoot 1\.$/m],
  ['patient John Smith', /^"Smith" isn't understood.* one pseudonym, such as KM-207, never a name/m],
  ['visit 2026-03-09 first rihgt', /^"rihgt" isn't understood on this line\. Check the word or the date\.$/m],
])('%s: the message of a header line says what may stand there', (text, said) => {
  expect(messages(text).join('\n')).toMatch(said);
});

test.each([
  ['4th tender none\n4th tender plantar', /^"tender" of right ray 4 is stated twice, differently\./m],
  ['history no heart failure\nhistory heart failure', /^"heart-failure" is stated twice, differently\./m],
])('a finding is named by its word, and only of what has a place: %s', (body, said) => {
  expect(messages(`visit 2026-03-09 first right\n${body}`).join('\n')).toMatch(said);
});

test.each([
  ['tried steroid web 1-2', /"web 1-2" may be one space or two: write web 1, or webs 1-2\./],
  ['tried steroid web 1-3', /"web 1-3" may be one space or two: write webs 1-3\./],
  ['us 2026-13-09 2nd tear', /"2026-13-09" is no day of the calendar: correct it\./],
  ['us 31/02/26 2nd tear', /"31\/02\/26" is no day of the calendar: correct it\./],
  ['us 13/07/26 2nd tear', /"13\/07\/26" isn't written with its year first/],
  ['us 03/07/26 2nd tear', /"03\/07\/26" may be read as two dates/],
])('the reason is that of these numbers: %s', (body, said) => {
  expect(messages(`visit 2026-03-09 first right\n${body}`).join('\n')).toMatch(said);
});

test('a visit that only proposes its plan is asked to be complete at the plan, not inside the comment', () => {
  const reports: Report[] = [];
  const text = 'visit 2026-03-09 review right\nproposed plan boot // boot';
  foldNote(text, { today: TODAY, settings: NO_SETTINGS }, ({ analysis }) => reports.push(...analysis.reports));
  expect(reports.find(({ code }) => code === 'incomplete-visit')?.place).toMatchObject({ line: 1, start: 9, end: 13 });
});
