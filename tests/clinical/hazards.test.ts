import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { READING_MESSAGES } from '../../server/clinical/reading-reports.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { analyses, rayOf } from './note.ts';

/** Every report of a note, its last visit included, by code. */
const codesOf = (note: string): string[] => analyses(note).flatMap(({ reports }) => reports.map(({ code }) => code));
const visits = (...bodies: readonly string[]): string =>
  `forefoot 1\npatient AB-100  born 1968  female\nscales drawer 0-4\n\n${bodies.join('\n\n')}\n`;
const OPERATED = 'visit 2026-01-12 operation right\noperation 2nd weil, plate repair; 2nd pin 4 weeks';
const READY = '2nd tender plate, drawer 2, medial\npulses palpable\nmri 2nd tear full\nplan operation 2nd plate repair';

/** What harms patients in a forefoot clinic, as a specialist lists it (common practice), and the report that catches it. */
const HAZARDS: readonly (readonly [hazard: string, note: string, code: string])[] = [
  ['wrong side', 'L2 drawer 2', 'wrong-side'],
  [
    'wrong side of a plan in a bilateral visit',
    'forefoot 1\n\nvisit 2026-03-09 first both\nL:\n2nd tender plantar\nplan steroid web 2',
    'side-from-heading',
  ],
  ['an anti-inflammatory in ischaemic heart disease', 'history ihd\nplan naproxen', 'anti-inflammatory-risk'],
  [
    'an ulcer that "no gi bleed" takes back',
    visits(
      'visit 2026-01-05 first right\nhistory duodenal ulcer',
      'visit 2026-03-09 review right\nhistory no gi bleed\nplan naproxen',
    ),
    'anti-inflammatory-risk',
  ],
  [
    'an anticoagulant that "no warfarin" takes back',
    visits(
      'visit 2026-01-05 first right\nhistory apixaban',
      'visit 2026-03-09 review right\nhistory no warfarin\nplan naproxen',
    ),
    'anti-inflammatory-risk',
  ],
  [
    'an anti-inflammatory after a reaction to ibuprofen',
    'history allergy ibuprofen\nplan naproxen',
    'anti-inflammatory-risk',
  ],
  [
    'a boot with a thrombophilia and no protection',
    'history thrombophilia; no falls\nplan boot 6 weeks',
    'boot-unasked',
  ],
  ['a sore calf with a thrombophilia', 'history thrombophilia\ncalf tender', 'red-flag'],
  ['a tape over skin allergic to adhesive', 'history allergy adhesive\nplan tape 2nd 8 weeks', 'tape-risk'],
  ['a warm joint with fever', '2nd warm joint, tender plantar\nfever', 'red-flag'],
  ['a dusky toe', '2nd dusky', 'red-flag'],
  ['a calf that is warm and painful', 'calf warm painful', 'red-flag'],
  ['a dehisced wound with fever', '2nd wound dehisced\nfever', 'red-flag'],
  ['a deep infection by its own name', '2nd deep infection', 'red-flag'],
  ['a clot in the lung by its own name', 'complication pulmonary embolism', 'red-flag'],
  ['wrong ray', '2nd tender plate, drawer 2\nplan tape 4th', 'wrong-ray'],
  ['wrong web', '2nd tender plate, drawer 0\n3rd NT, drawer 0\nplan steroid web 4', 'wrong-ray'],
  ['"drawer not 2" read as 2', '2nd drawer not 2', 'unclear-finding'],
  [
    'a planned course counted as done',
    visits(
      'visit 2026-01-05 first right\n2nd tender plate, drawer 2\nplan tape 2nd 8 weeks',
      `visit 2026-03-09 preop right\n${READY}`,
    ),
    'course-unreported',
  ],
  ['steroid planned at an unstable joint', '2nd tender plate, drawer 2\nplan steroid 2nd', 'steroid-unstable'],
  ['steroid planned in the web beside one', '2nd tender plate, drawer 2\nplan steroid web 1', 'steroid-unstable'],
  ['steroid given there', 'tried steroid web 2 2025-12\n2nd tender plate, drawer 2', 'steroid-unstable'],
  [
    'drift after an injection',
    visits(
      'visit 2025-12-01 first right\ntried steroid 2nd 2025-11\n2nd straight, drawer 0',
      'visit 2026-03-09 review right\n2nd medial',
    ),
    'drift-after-steroid',
  ],
  ['a third injection', 'tried steroid web 3 count 2\n3rd-4th NT, drawer 0\nplan steroid web 3', 'steroid-repeated'],
  [
    'steroid within three months before an operation',
    `tried steroid 4th 2026-01-20\n${READY}`,
    'steroid-before-operation',
  ],
  [
    'steroid and operation planned together',
    `3rd-4th NT, drawer 0\n${READY}; steroid web 3`,
    'steroid-before-operation',
  ],
  [
    'invasive plan without concordant imaging',
    '2nd tender plate, drawer 2\npulses 2\nplan operation 2nd plate repair',
    'invasive-unconfirmed',
  ],
  ['operation with absent pulses', READY.replace('palpable', 'absent'), 'operation-unsafe'],
  ['operation with pulses not examined', READY.replace('pulses palpable\n', ''), 'operation-unsettled'],
  ['operation with HbA1c above the limit', `history diabetes; hba1c 8.1%\n${READY}`, 'operation-unsettled'],
  ['operation with an ulcer', `2nd wound open\n${READY}`, 'operation-unsafe'],
  ['operation on a smoker, unaddressed', `history smoker 10/day\n${READY}`, 'operation-unsettled'],
  ['operation under an anticoagulant without a plan', `history warfarin\n${READY}`, 'operation-unsettled'],
  ['operation in pregnancy', `history pregnant\n${READY}`, 'operation-unsafe'],
  ...[
    'history stomach ulcer',
    'history kidney disease',
    'history heart failure',
    'history apixaban',
    'history pregnant',
  ].map((risk) => [`anti-inflammatory against "${risk}"`, `${risk}\nplan naproxen`, 'anti-inflammatory-risk'] as const),
  [
    'anti-inflammatory against a risk of an earlier visit',
    visits('visit 2026-01-05 first right\nhistory warfarin', 'visit 2026-03-09 review right\nplan naproxen'),
    'anti-inflammatory-risk',
  ],
  ['anti-inflammatory, risks never asked', '2nd tender plate\nplan naproxen', 'anti-inflammatory-unasked'],
  ['tape over numb skin', 'sense lost\n2nd drawer 1\nplan tape 2nd', 'tape-risk'],
  ['tape over ischaemic skin', 'pulses absent\n2nd drawer 1\nplan tape 2nd', 'tape-risk'],
  ['tape over fragile skin', 'skin fragile\n2nd drawer 1\nplan tape 2nd', 'tape-risk'],
  ['tape against an allergy', 'history allergy tape\n2nd drawer 1\nplan tape 2nd', 'tape-risk'],
  [
    'tape against an allergy of an earlier visit',
    visits(
      'visit 2026-01-05 first right\nhistory allergy tape',
      'visit 2026-03-09 review right\n2nd drawer 1\nplan tape 2nd',
    ),
    'tape-risk',
  ],
  ['boot without a thought of falls and of a clot', '2nd drawer 1\nplan boot', 'boot-unasked'],
  ['dislocation without time and circulation', '2nd dislocated', 'acute-dislocation-incomplete'],
  ['fever not asked at a hot joint', '2nd hot', 'fever-unasked'],
  ['neuropathic painless swelling', 'sense lost\n2nd swelling mild', 'neuropathic-swelling'],
  ['pin past its stated date', visits(OPERATED, 'visit 2026-03-09 postop right\n2nd wound healed'), 'pin-overdue'],
  ['pin and shoe', visits(OPERATED, 'visit 2026-02-02 postop right\nordinary-shoes'), 'pin-and-shoe'],
  ['pin and motion', visits(OPERATED, 'visit 2026-02-02 postop right\n2nd mtp-dorsiflexion 20°'), 'pin-and-motion'],
  [
    'pin and passive motion, in words',
    visits(OPERATED, 'visit 2026-02-02 postop right\nplan "passive mobilisation of the 2nd by physio"'),
    'pin-and-motion',
  ],
  [
    'shoe before its window',
    visits('visit 2026-01-12 operation right\noperation 2nd weil', 'visit 2026-02-02 postop right\nordinary-shoes'),
    'shoe-before-window',
  ],
  [
    'impact before its window',
    visits(
      'visit 2026-01-12 operation right\noperation 2nd weil',
      'visit 2026-02-23 postop right\nhistory activity running',
    ),
    'impact-before-window',
  ],
  [
    'new tenderness of the neighbour after an osteotomy',
    visits('visit 2026-01-12 operation right\noperation 2nd weil', 'visit 2026-04-20 postop right\n3rd tender head'),
    'transfer-tenderness',
  ],
  [
    'floating toe called instability',
    visits(
      'visit 2026-01-12 operation right\noperation 2nd weil',
      'visit 2026-04-20 review right\n2nd floating, diagnosis crossover toe',
    ),
    'floating-toe',
  ],
  [
    'fused PIP called fixed hammer',
    visits(
      'visit 2026-01-12 operation right\noperation 2nd pip fusion',
      'visit 2026-04-20 review right\n2nd diagnosis hammer toe',
    ),
    'fused-pip',
  ],
  ['stage of the hallux', '1st tender plantar\nstage 1st 2', 'stage-elsewhere'],
  ['stage of the fifth toe', '5th drawer 1\nstage 5th 1', 'stage-elsewhere'],
  ['stage that the findings do not support', '2nd tender plate, drawer 1\nstage 2nd 3', 'stage-unsupported'],
  [
    'stage of an operated joint',
    visits(
      'visit 2026-01-12 operation right\noperation 2nd weil',
      'visit 2026-04-20 review right\n2nd lifted\nstage 2nd 2',
    ),
    'stage-unsupported',
  ],
  [
    'anatomical grade written as the stage',
    '2nd drawer 1, tender plate\nmri 2nd anatomical-grade 3\nstage 2nd 3',
    'grade-as-stage',
  ],
  ['drawer number without scale', 'forefoot 1\n\nvisit 2026-03-09 first right\n2nd drawer 2', 'drawer-scale'],
  ['compression and squeeze mixed up', 'web 2 compression sore', 'squeeze-or-compression'],
  [
    'web change beside an unstable joint read as neuroma',
    '2nd tender plate, drawer 2\nus web 2 neuroma 6 mm',
    'web-change-unstable',
  ],
  [
    'web operation beside an unstable joint',
    '2nd tender plate, drawer 2\npulses 2\nus web 2 neuroma 6 mm\nplan operation web 2',
    'invasive-unconfirmed',
  ],
  [
    'hyperkeratosis, fat pad, bursa forgotten',
    '2nd tender head, drawer 0, no swelling, straight, paper holds\nplan met-pad',
    'other-causes-unasked',
  ],
  ['image older than the injury', 'history injury 2026-02-01\nmri taken 2025-12-01; 2nd tear full', 'image-older'],
  [
    'image older than the injection',
    'tried steroid web 3 2026-02\n2nd drawer 0\nmri taken 2025-12-01; 2nd tear partial',
    'image-older',
  ],
  ['side of the image against the visit', 'mri left 2nd tear full', 'wrong-side'],
  ['two sides in one image of a one-sided visit', 'us R 2nd tear, left 2nd plate intact', 'wrong-side'],
  ['score total that the scale cannot take', 'aofas 41', 'score-unreachable'],
  ['ambiguous date', 'history 04/05/26', 'ambiguous-date'],
  [
    'age against the birth year',
    visits('visit 2026-03-09 first right\nhistory "44 years old"'),
    'age-against-birth-year',
  ],
  [
    'overdue review',
    visits('visit 2025-11-03 first right\nplan review in 4 weeks', 'visit 2026-03-09 review right\npain none'),
    'review-overdue',
  ],
  ['decision of the patient ignored', `${READY}; patient declines operation`, 'decision-ignored'],
  [
    'decision of an earlier visit ignored',
    visits('visit 2026-01-05 review right\nplan patient prefers to wait', `visit 2026-03-09 preop right\n${READY}`),
    'decision-ignored',
  ],
  ['identifier in the text', 'history "NHS number 943 476 5919"', 'identifier'],
  ['red flag', '2nd hot; fever', 'red-flag'],
];

describe('each hazard of the clinic is caught', () => {
  test.each(HAZARDS)('%s', (_, note, code) => {
    expect(codesOf(note)).toContain(code);
  });
  test('by a code that exists', () => {
    const known = new Set([...RULES.map(({ code }) => code), ...Object.keys(READING_MESSAGES)]);
    expect(HAZARDS.map(([, , code]) => code).filter((code) => !known.has(code))).toEqual([]);
  });
});

test('an identifier is found in the header and in a comment too, and a signature names its examiner freely', () => {
  const note = (header: string, line: string) => `forefoot 1\n${header}\n\nvisit 2026-03-09 first right\n${line}\n`;
  const found = (text: string) => {
    const { headerReports, visits: read } = analyseNote(text, '2026-03-09');
    return [...headerReports, ...read.flatMap(({ analysis }) => analysis.reports)].filter(
      ({ code }) => code === 'identifier',
    ).length;
  };
  expect(found(note('patient AB-100 born 1960-05-04', '2nd drawer 0'))).toBe(1);
  expect(found(note('patient AB-100 born 1960', '2nd drawer 0 // ring ada@example.org'))).toBe(1);
  expect(found(note('patient AB-100 born 1960', '2nd drawer 0\nsigned 2026-03-09 Mr Example'))).toBe(0);
});

describe('what is right is left alone', () => {
  test.each([
    ['a refused steroid', '2nd tender plate, drawer 2\nplan no steroid'],
    ['an anaesthetic block beside an unstable joint', '2nd tender plate, drawer 2\nplan block web 2'],
    [
      'a steroid into a stable joint with gout',
      'history gout; no fever\n2nd drawer 0, tender dorsal\nplan steroid 2nd',
    ],
  ])('%s', (_, note) => {
    expect(codesOf(note)).not.toContain('steroid-unstable');
  });
  test('an operation whose risks are settled', () => {
    const settled = `history smoker "cotinine test before"; warfarin "stopped by the clinic"\n${READY}`;
    expect(codesOf(settled).filter((code) => code.startsWith('operation-'))).toEqual([]);
  });
  test('drainage without an image, a film for a toe', () => {
    expect(codesOf('2nd wound pus\nplan operation 2nd washout')).not.toContain('invasive-unconfirmed');
    expect(codesOf('2nd pip fixed\nxray wb; 2nd congruent\nplan operation 2nd pip fusion')).not.toContain(
      'invasive-unconfirmed',
    );
    expect(codesOf('2nd pip fixed\nplan operation 2nd pip fusion')).toContain('invasive-unconfirmed');
  });
  test('a decision to wait is no overdue operation', () => {
    const note = visits(
      'visit 2025-11-03 review right\n2nd tender plate, drawer 2\nplan patient prefers to wait; review in 6 months',
      'visit 2026-04-13 review right\n2nd tender plate, drawer 2, medial',
    );
    expect(codesOf(note)).not.toContain('decision-ignored');
    expect(rayOf(note).next.urgent).toBe(false);
  });
});

describe('what only looks like a hazard', () => {
  test('a comparison of the feet names no wrong side, but another foot does', () => {
    expect(codesOf('2nd drawer R=L')).not.toContain('wrong-side');
    expect(codesOf('L2 drawer R=L, swelling mild; L3 drawer 1')).toContain('wrong-side');
  });

  test('a pin that an event says to be out is out for the days that follow', () => {
    const later = 'visit 2026-02-09 postop right\nevent pin-out 2nd\n\nvisit 2026-02-16 postop right\n2nd drawer 1';
    expect(codesOf(visits(OPERATED, later))).not.toContain('pin-and-motion');
    expect(codesOf(visits(OPERATED, later.replace('pin-out 2nd', 'pin-out 3rd')))).toContain('pin-and-motion');
  });

  test('the day of an addendum is not before its visit', () => {
    const added = (day: string) => codesOf(`2nd drawer 2\nsigned 2026-03-09 AB\naddendum ${day} CD\npulses dp 2`);
    expect(added('2026-03-08')).toContain('signed-before-visit');
    expect(added('2026-03-10')).not.toContain('signed-before-visit');
  });
});
