import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseNote, type NoteAnalysis } from '../../server/clinical/analyse-note.ts';
import type { AdvisedRay, Report, StageOutcome } from '../../server/clinical/analysis.ts';
import { dayFrom, isoOf } from '../../server/clinical/dates.ts';
import { READING_MESSAGES } from '../../server/clinical/reading-reports.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { clinicNote, renderText } from '../../server/documents/clinic-note.ts';
import { formattedText } from '../../server/workspace/format-note.ts';
import { settled } from '../features/fixture.ts';

const today = '2026-11-01';
const names = readdirSync('samples')
  .filter((name) => name.endsWith('.forefoot'))
  .map((name) => name.replace('.forefoot', ''));
const textOf = (name: string): string => readFileSync(`samples/${name}.forefoot`, 'utf8');
const read = (name: string): NoteAnalysis => analyseNote(textOf(name), today);

const dateOf = ({ analysis: { facts } }: NoteAnalysis['visits'][number]): string =>
  facts.date ? isoOf(dayFrom(facts.date)) : 'undated';

/** `line severity code`, lines counted from 1, in the order of the file. */
function reported({ headerReports, visits }: NoteAnalysis): string[] {
  const at = (firstLine: number) => (report: Report) => ({ ...report, line: firstLine + report.place.line + 1 });
  return [...headerReports.map(at(0)), ...visits.flatMap((v) => v.analysis.reports.map(at(v.firstLine)))]
    .sort((a, b) => a.line - b.line || a.place.start - b.place.start)
    .map(({ line, severity, code }) => `${line} ${severity} ${code}`);
}

/** Reports of a good sample that are there on purpose. */
const EXPLAINED: Readonly<Record<string, string[]>> = {
  // The patient came with an injection that somebody gave in the web beside a joint that is now unstable.
  'second-ray': ['9 contradiction steroid-unstable', '33 missing boot-unasked'],
  // Visits that plan and leave a step of the exam unsaid, as visits do: one quiet hint each.
  'acute-dislocation': [
    '9 danger red-flag',
    '21 missing incomplete-visit',
    '31 missing incomplete-visit',
    '31 missing boot-unasked',
  ],
  bilateral: ['25 missing incomplete-visit'],
  'early-stage': ['18 missing incomplete-visit'],
  inflammatory: ['20 missing incomplete-visit'],
  operated: [
    '9 missing boot-unasked',
    '16 missing boot-unasked',
    '16 missing incomplete-visit',
    '28 missing transfer-tenderness',
    '29 missing incomplete-visit',
  ],
  'overlapping-toe': ['30 missing incomplete-visit', '40 missing incomplete-visit'],
};

const shortOutcome = (outcome: StageOutcome): string =>
  outcome.is === 'staged'
    ? `stage ${outcome.stage}`
    : outcome.is === 'span'
      ? `stage ${outcome.low}-${outcome.high}`
      : outcome.is;

/** What each sample was written to show: visit, ray, outcome, row of the path. */
const INTENDED: readonly [sample: string, date: string, ray: string, outcome: string, row: string][] = [
  ['second-ray', '2026-03-09', 'right 2', 'stage 2', 'first course'],
  ['second-ray', '2026-03-09', 'right 3', 'not applicable', 'lax'],
  ['second-ray', '2026-05-04', 'right 2', 'stage 2', 'escalate'],
  ['early-stage', '2026-04-13', 'left 2', 'stage 0', 'first course'],
  ['web-pain', '2026-05-18', 'right 3', 'not applicable', 'web, joint stable'],
  ['web-pain', '2026-05-18', 'right 4', 'not applicable', 'web, joint stable'],
  ['inflammatory', '2026-06-01', 'right 2', 'not applicable', 'systemic'],
  ['inflammatory', '2026-06-01', 'left 3', 'not applicable', 'systemic'],
  ['overlapping-toe', '2026-02-02', 'left 2', 'stage 3', 'stage 3'],
  ['overlapping-toe', '2026-03-30', 'left 2', 'stage 3', 'stage 3, image agrees'],
  ['overlapping-toe', '2026-04-27', 'left 2', 'stage 3', 'stage 3, image agrees'],
  ['acute-dislocation', '2026-07-11', 'right 2', 'not applicable', 'acute dislocation'],
  ['acute-dislocation', '2026-07-16', 'right 2', 'not applicable', 'acute rupture, image agrees'],
  ['operated', '2026-02-17', 'right 2', 'not applicable', 'operated, on track'],
  ['operated', '2026-05-12', 'right 2', 'not applicable', 'operated, on track'],
  ['bilateral', '2026-08-24', 'right 2', 'stage 1', 'first course'],
  ['bilateral', '2026-08-24', 'left 2', 'stage 0', 'first course'],
];

const good = names.filter((name) => name !== 'faulty');

describe('the samples', () => {
  test.each(good)('%s gives no error, no warning and no hint but the explained ones', (name) => {
    expect(reported(read(name))).toEqual(EXPLAINED[name] ?? []);
  });

  test.each(INTENDED)('%s of %s shows %s as %s, next: %s', (name, date, ray, outcome, row) => {
    const visit = read(name).visits.find((each) => dateOf(each) === date);
    const found = visit?.analysis.rays.find((each: AdvisedRay) => `${each.side} ${each.ray}` === ray);
    expect(found && [shortOutcome(found.outcome), found.next.row]).toEqual([outcome, row]);
  });

  test('every good sample is written to show something', () => {
    expect([...new Set(INTENDED.map(([name]) => name))].sort()).toEqual([...good].sort());
  });

  test.each(names)('%s has visits in order, none in the future, and a pseudonym', (name) => {
    const { header, visits } = read(name);
    const dates = visits.map(dateOf);
    expect(header.patient?.name).toMatch(/^[A-Z]{2}-\d{3}$/);
    expect(dates).toEqual([...dates].sort());
    expect(dates.filter((date) => !/^\d{4}-\d{2}-\d{2}$/.test(date) || date > today)).toEqual([]);
  });

  test('every patient has a pseudonym of their own', () => {
    const patients = names.map((name) => read(name).header.patient?.name);
    expect(new Set(patients).size).toBe(patients.length);
  });

  test.each(good)('%s is written with every one of its quotes', (name) => {
    const { header, visits } = read(name);
    for (const { analysis, syntax } of visits) {
      const prose = renderText(clinicNote(analysis, header), { computed: false });
      const quotes = syntax.flatMap(({ text }) => text.match(/"[^"]+"/g) ?? []);
      expect(quotes.filter((quote) => !prose.includes(quote.slice(1, -1)))).toEqual([]);
    }
  });
});

describe('the faulty sample', () => {
  test('shows exactly these reports, by line', () => {
    expect(reported(read('faulty'))).toEqual([
      '3 contradiction bad-header',
      '4 contradiction unknown-code',
      '5 missing allow-without-reason',
      '8 contradiction ambiguous-date',
      '10 contradiction unclear-finding',
      '11 missing drawer-scale',
      '12 contradiction overlap-straight',
      '14 contradiction value-out-of-range',
      '16 contradiction stated-twice',
      '17 danger wrong-side',
      '18 contradiction ambiguous-web',
      '19 contradiction word-out-of-place',
      '20 contradiction wrong-unit',
      '21 contradiction unknown-word',
      '22 danger steroid-unstable',
      '22 missing incomplete-visit',
      '23 contradiction open-quote',
      '26 style unused-allow',
      '27 contradiction unread-red-flag',
      '28 danger acute-dislocation-incomplete',
      '29 contradiction dislocated-low-drawer',
      '30 danger red-flag',
      '34 contradiction number-without-place',
      '35 contradiction stage-unsupported',
      '36 contradiction invasive-unconfirmed',
      '36 missing incomplete-visit',
      '40 missing several-unstable-rays',
      '45 missing side-from-heading',
      '45 missing incomplete-visit',
      '45 contradiction wrong-ray',
      '46 contradiction score-unreachable',
      '50 danger anti-inflammatory-risk',
      '50 missing incomplete-visit',
      '50 danger drug-allergy',
      '50 danger tape-risk',
      '52 missing review-overdue',
      '53 contradiction identifier',
      '54 contradiction age-against-birth-year',
      '55 contradiction steroid-repeated',
      '56 contradiction fever-unasked',
      '57 contradiction stage-elsewhere',
      '57 missing incomplete-visit',
      '58 contradiction squeeze-or-compression',
      '64 contradiction image-older',
      '65 missing boot-unasked',
      '65 missing incomplete-visit',
      '73 missing incomplete-visit',
      '73 danger operation-unsafe',
      '73 contradiction operation-unsettled',
      '73 contradiction decision-ignored',
      '73 contradiction steroid-before-operation',
      '79 contradiction pin-and-shoe',
      '79 contradiction shoe-before-window',
      '79 contradiction fever-after-operation',
      '80 contradiction pin-and-motion',
      '80 contradiction refill-unjudged',
      '82 contradiction pin-overdue',
      '83 contradiction impact-before-window',
      '84 missing transfer-tenderness',
      '85 contradiction floating-toe',
      '86 contradiction fused-pip',
      '94 contradiction drift-after-steroid',
      '96 contradiction web-change-unstable',
      '97 contradiction grade-as-stage',
      '97 missing incomplete-visit',
      '102 contradiction course-unreported',
      '102 missing incomplete-visit',
      '106 missing other-causes-unasked',
      '107 missing anti-inflammatory-unasked',
      '107 missing incomplete-visit',
      '111 contradiction neuropathic-swelling',
      '112 style heard-number',
      '113 missing proposed-unconfirmed',
      '116 contradiction carried-unconfirmed',
      '117 danger reduction-incomplete',
      '118 contradiction signed-words-changed',
      '119 contradiction after-signature',
      '120 contradiction bad-signer',
      '121 contradiction signed-before-visit',
    ]);
  });

  test('shows every kind of report once', () => {
    const codes = reported(read('faulty')).map((line) => line.split(' ')[2]);
    const known = [...RULES.map(({ code }) => code), ...Object.keys(READING_MESSAGES)];
    // A step that is not mentioned is hinted at in every visit that plans.
    const once = codes.filter((code) => code !== 'incomplete-visit');
    expect([...new Set(codes)].sort()).toEqual([...known].sort());
    expect(new Set(once).size).toBe(once.length);
  });
});

test.each(names)('%s is in the format of the product', (name) => {
  const note = settled(textOf(name));
  expect(formattedText(note, textOf(name))).toBe(textOf(name));
});
