import { describe, expect, it } from 'vitest';
import { CAUTIONS } from '../../server/clinical/cautions.ts';
import { PATH_ROWS } from '../../server/clinical/path-rows.ts';
import { analyses, rayOf, wrap } from './note.ts';

// The path: common practice. Each row has a note that reaches it and, where it matters, one that nearly does.
const TWO = '2nd tender plate, drawer 2, medial';
const rowOf = (text: string): string => rayOf(text, text.startsWith('5th') ? 5 : 2).next.row;
const TORN = 'mri 2nd tear full';
/** A first visit that plans tape, and the review some weeks later. */
const course = (date: string, review: string): string =>
  `${wrap(`${TWO}\nplan tape 2nd 8 weeks; stiff-insert`, 'scales drawer 0-4', 'visit 2026-01-05 first right')}
visit ${date} review right
${review}
`;

const CASES: Readonly<Record<string, { reaches: readonly string[]; not: readonly string[] }>> = {
  infection: {
    reaches: [
      '2nd hot, tender plate, drawer 2\nfever',
      '2nd red\nfever 38.6°C',
      `${TWO}\nwound pus`,
      `${TWO}\nwound spreading`,
      `${TWO}\npin-site spreading redness`,
      `${TWO}\n2nd pin-site red discharging`,
      `${TWO}\n2nd pin-site red\nfever`,
      `${TWO}\n2nd wound open, red`,
      `${TWO}\n2nd wound open\nfever`,
      `${TWO}\ncomplication wound infection`,
    ],
    not: [
      `${TWO}\n2nd pin-site red`,
      `${TWO}\n2nd pin-site discharging`,
      `${TWO}\n2nd wound open`,
      `${TWO}\nno complications`,
      `${TWO}\n3rd pin-site red\nfever`,
      '2nd hot, tender plate, drawer 2',
      `${TWO}\nfever`,
      `${TWO}\nwound clean`,
      '2nd hot, drawer 2\nafebrile',
    ],
  },
  ischaemia: {
    reaches: [
      '2nd colour white',
      '2nd colour blue, dislocated old',
      '2nd cold, tender plate, drawer 2',
      `${TWO}\npain out of proportion`,
      wrap(`2nd cap refill delayed`, 'scales drawer 0-4', 'visit 2026-03-09 postop right'),
      '2nd dislocated old, cap refill delayed',
    ],
    not: [`${TWO}, cap refill delayed`, '2nd colour pink, tender plate, drawer 2', `${TWO}\n3rd colour white`],
  },
  clot: {
    reaches: [
      `${TWO}\ncalf swollen and tender`,
      `${TWO}\ncalf swollen\ncalf tender`,
      `history chest pain\n${TWO}`,
      `history breathless\n${TWO}`,
      `${TWO}\ncalf tender\nplan boot`,
      wrap(`${TWO}\ncalf swollen`, 'scales drawer 0-4', 'visit 2026-03-09 postop right'),
    ],
    not: [
      `${TWO}\ncalf tender`,
      `${TWO}\ncalf soft\nplan boot`,
      `${TWO}\nno calf swelling\nplan boot`,
      `history no chest pain\n${TWO}`,
      `${TWO}\ncalf tightness\nplan boot`,
    ],
  },
  'open injury': {
    reaches: [
      `history injury 2 days ago\n${TWO}\nwound open`,
      `history injury 2 days ago\n${TWO}, wound`,
      '2nd dislocated 2 hours, wound open',
    ],
    not: [
      `history injury 2 days ago\n${TWO}\nwound clean`,
      `history injury 2 days ago\n${TWO}\nwound none`,
      `history injury 2 years ago\n${TWO}\n2nd wound open`,
      '2nd dislocated old, wound open',
      `history injury 2 days ago\n${TWO}\n3rd wound open`,
      wrap(`history injury 5 weeks ago\n${TWO}\n2nd wound`, 'scales drawer 0-4', 'visit 2026-03-09 postop right'),
    ],
  },
  fracture: {
    reaches: [`history injury 2 days ago\n${TWO}\nxray 2nd fracture`],
    not: [
      `history injury 2 days ago\n${TWO}\nxray 2nd stress fracture`,
      `history injury 2 years ago\n${TWO}\nxray 2nd fracture`,
      `${TWO}\nxray 2nd fracture`,
      `history injury 2 days ago\n${TWO}\nxray 3rd fracture`,
    ],
  },
  'acute injury elsewhere': {
    reaches: [`history injury 5 days ago\n2nd tender none, drawer not done\n3rd drawer 2, tender plate`],
    not: [
      `history injury 5 days ago\n${TWO}`,
      'history injury 5 days ago\n2nd tender none, drawer 2',
      'history injury 5 days ago\n2nd tender none, swelling',
      'history injury 5 days ago\n2nd no plantar tenderness',
      'history injury 2 years ago\n2nd tender none, drawer not done',
    ],
  },
  wound: {
    reaches: [`${TWO}, wound open`, '2nd ulcer, tender plate'],
    not: [`${TWO}, wound healed`, `${TWO}, wound clean`, `${TWO}\n3rd wound open`, `${TWO}\nwound open`],
  },
  tumour: {
    reaches: [
      `${TWO}\n2nd mass firm`,
      `${TWO}\nweb 2 mass 12 mm`,
      `pain 2nd night\nhistory previous cancer\n${TWO}`,
      `pain 2nd night\nhistory weight loss\n${TWO}`,
      `mri web 2 mass 14 mm\n${TWO}`,
    ],
    not: [
      `${TWO}\n2nd no mass`,
      `${TWO}\n3rd mass`,
      `pain 2nd night\n${TWO}`,
      `history previous cancer\n${TWO}`,
      `pain 2nd night\nhistory no weight loss\n${TWO}`,
    ],
  },
  'acute dislocation': {
    reaches: [
      '2nd dislocated',
      '2nd dislocated acute 2 hours, colour pink',
      '2nd tender plate, drawer 4',
      'xray wb; 2nd dislocated',
      '2nd dislocated since 2026-03-08',
    ],
    not: [
      '2nd dislocated old irreducible, tender plantar',
      '2nd no dislocation, drawer 2',
      'xray wb; 2nd subluxed\n2nd drawer 2',
    ],
  },
  'neuropathic hot foot': {
    reaches: ['2nd hot, swelling, tender none\nsense lost', '2nd wound open\nsense monofilament 3/10'],
    not: [
      '2nd hot, swelling, tender none\nsense normal',
      '2nd wound healed\nsense reduced',
      '2nd swelling, drawer 2\nsense reduced',
    ],
  },
  growing: {
    reaches: [wrap(TWO, 'patient QA-2 born 2011\nscales drawer 0-4')],
    not: [wrap(TWO, 'patient QA-2 born 2000\nscales drawer 0-4'), TWO],
  },
  bone: {
    reaches: ['history trigger load-rise\n2nd tender shaft', `${TWO}\nxray wb; 2nd fracture`],
    not: ['2nd tender shaft', `history trigger load-rise\n${TWO}`, `${TWO}\nxray wb; 3rd fracture`],
  },
  systemic: {
    reaches: ['2nd-4th tender plate, swelling', `${TWO}\ncompression sore both feet`],
    not: ['2nd-3rd tender plate, swelling', `${TWO}\ncompression sore`],
  },
  'operated, off track': {
    reaches: [
      `${wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd drawer 3`,
      `${wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd tender none, wound open`,
    ],
    not: [
      `${wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n3rd drawer 3\n2nd tender none`,
    ],
  },
  'operated, on track': {
    reaches: [
      `${wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd swelling mild, wound healed`,
      'operation done 2nd weil',
    ],
    not: ['2nd swelling mild', 'plan operation 2nd weil\n2nd drawer 1'],
  },
  'acute rupture, image agrees': {
    reaches: [
      `history onset sudden 2 weeks\n${TWO}\nmri 2nd tear full`,
      `history injury 10 days ago\n${TWO}\nus 2nd tear`,
    ],
    not: [
      `history onset sudden 2 weeks\n${TWO}\nmri 2nd plate intact`,
      `history onset sudden 2 weeks\n${TWO}`,
      `history onset gradual 2 years\n${TWO}\nmri 2nd tear full`,
    ],
  },
  transfer: {
    reaches: [
      `${wrap('operation 3rd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd tender head, drawer 0, straight`,
      `${wrap('operation 3rd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd tender head`,
    ],
    not: [
      '2nd tender head, drawer 0, straight, no swelling, paper holds',
      `${wrap('operation 3rd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation left')}visit 2026-03-09 review right\n2nd tender head`,
      `${wrap('operation 3rd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd not tender, drawer 0, straight`,
      `${wrap('operation 3rd weil', 'scales drawer 0-4', 'visit 2025-11-01 operation right')}visit 2026-03-09 postop right\n2nd tender head, drawer 2`,
    ],
  },
  'acute rupture': {
    reaches: [`history onset sudden 2 weeks\n${TWO}`, `history injury; duration 10 days\n2nd drawer 3`],
    not: [
      `history onset sudden 8 weeks\n${TWO}`,
      'history onset sudden 2 weeks\n2nd drawer 1',
      'history onset sudden 2 weeks\n2nd tender plate',
    ],
  },
  'acute injury': {
    reaches: [
      'history onset sudden 2 weeks\n2nd drawer 1, tender plate',
      'history onset sudden 2 weeks\n2nd tender plate',
    ],
    not: [`history onset sudden 2 weeks\n${TWO}`, 'history onset gradual 2 weeks\n2nd tender plate, drawer 1'],
  },
  'web, joint stable': {
    reaches: ['2nd tender none, drawer 0, straight\nweb 2 click painful', '3rd drawer 0\n2nd drawer 0\nweb 2 numbness'],
    not: [
      '2nd drawer 0, tender none\nweb 4 click',
      '2nd drawer 0, tender none\nwebs 1-4 click none',
      '2nd overlap hallux at rest, drawer 0\nweb 2 click',
    ],
  },
  'web, joint unstable': {
    reaches: [`${TWO}\nweb 2 squeeze painful`, `${TWO}\nweb 1 click`, '2nd overlap hallux at rest\nweb 2 click'],
    not: [TWO, `${TWO}\nweb 3 click`, '2nd tender plate\nweb 2 click'],
  },
  lax: {
    reaches: ['pain 2nd none\n2nd tender none, drawer 1'],
    not: ['2nd tender none, drawer 1', 'pain 2nd none\n2nd drawer 1'],
  },
  'cannot stage': { reaches: ['2nd tender plate', '2nd tender plate, drawer unable'], not: [TWO] },
  'quiet ray': {
    reaches: [
      '2nd normal',
      '2nd tender none, swelling none, straight',
      'pain 3rd 6/10\n2nd normal\n2nd drawer not done',
    ],
    not: [
      '2nd tender none, straight',
      '2nd tender none, swelling none, straight, drawer unable',
      'pain 2nd 6/10\n2nd normal',
      '2nd normal\n2nd ?dislocated',
      '2nd normal\n2nd drawer 1',
      '2nd normal\n2nd hot',
      '2nd normal\nstand 2nd lifted 3 mm',
    ],
  },
  'no instability': {
    reaches: ['2nd pain push-off, tender none, swelling none, drawer 0, straight'],
    not: ['2nd tender none, swelling none, drawer 0, straight', '2nd tender plate, swelling, drawer 0, straight'],
  },
  'not staged': { reaches: ['5th tender plate, drawer 2'], not: [TWO, `${TWO}\nsense lost`] },
  'neuropathic foot': { reaches: [`${TWO}\nsense lost`], not: [TWO, `${TWO}\nsense reduced`] },
  'first course': {
    reaches: [
      TWO,
      `tried met-pad 4 weeks no-relief\n${TWO}`,
      '2nd swelling, tender plate, drawer 0',
      `plan tape 2nd\n${TWO}`,
    ],
    not: [`tried tape 2nd 3 weeks\n${TWO}`, '2nd tender plate, drawer 3', 'tried tape 2nd 3 weeks\n2nd drawer 1'],
  },
  'course of unknown length': { reaches: [`tried tape 2nd\n${TWO}`], not: [`tried tape 2nd 3 weeks\n${TWO}`] },
  'course running, progressing': {
    reaches: [
      course('2026-02-02', `tried tape 2nd worse\n${TWO}`),
      `${wrap('2nd tender plate, drawer 1\nplan tape 2nd', 'scales drawer 0-4', 'visit 2026-01-05 first right')}
visit 2026-01-26 review right
${TWO}
`,
    ],
    not: [course('2026-02-02', TWO), course('2026-03-02', `tried tape 2nd worse\n${TWO}`)],
  },
  'course running': {
    reaches: [`tried tape 2nd 3 weeks\n${TWO}`, course('2026-02-02', TWO), `tried tape 2nd 5 weeks no-relief\n${TWO}`],
    not: [course('2026-02-20', TWO)],
  },
  better: {
    reaches: [`tried tape 2nd 8 weeks better\n${TWO}`, course('2026-03-09', `tried tape 2nd better\n${TWO}`)],
    not: [
      `tried tape 2nd 8 weeks partial\n${TWO}`,
      course('2026-03-09', 'tried tape 2nd better\n2nd tender plate, drawer 3'),
    ],
  },
  'response not stated': {
    reaches: [`tried tape 2nd 8 weeks\n${TWO}`, course('2026-03-09', TWO)],
    not: [`tried tape 2nd 2 weeks\n${TWO}`],
  },
  'poorly kept': {
    reaches: [`tried tape 2nd 8 weeks irregular no-relief\n${TWO}`],
    not: [`tried tape 2nd 8 weeks daily no-relief\n${TWO}`],
  },
  'failed, stage 0': {
    reaches: ['tried tape 2nd 8 weeks no-relief\n2nd swelling, tender plate, drawer 0, straight'],
    not: ['tried tape 2nd 8 weeks no-relief\n2nd tender plate, drawer 1'],
  },
  'failed, image first': {
    reaches: [
      `tried tape 2nd 8 weeks no-relief\n${TWO}`,
      `tried tape 2nd 14 weeks no-relief\n${TWO}\nmri 2nd plate intact`,
    ],
    not: [`tried tape 2nd 8 weeks no-relief\n${TWO}\n${TORN}`],
  },
  escalate: {
    reaches: [`tried tape 2nd 8 weeks no-relief\n${TWO}\n${TORN}`],
    not: [`tried tape 2nd 14 weeks no-relief\n${TWO}\n${TORN}`, `tried tape 2nd 8 weeks worse\n${TWO}\n${TORN}`],
  },
  'discuss operation': {
    reaches: [`tried tape 2nd 14 weeks no-relief\n${TWO}\n${TORN}`, `tried tape 2nd 8 weeks worse\n${TWO}\n${TORN}`],
    not: [`tried tape 2nd 14 weeks no-relief\n${TWO}`],
  },
  'settle safety first': {
    reaches: [
      `tried tape 2nd 14 weeks no-relief\n${TWO}\n${TORN}\nplan operation 2nd plate repair`,
      `${TWO}, overlap hallux at rest\nplan operation 2nd\ndp absent, pt 2`,
      `${TWO}, overlap hallux at rest\npulses 2\ntried steroid web 2 2026-02\nplan operation 2nd`,
      `${TWO}, overlap hallux at rest\npulses 2\ntried steroid 2nd\nplan operation 2nd`,
      `${TWO}, overlap hallux at rest\npulses 2\nwound open\nplan operation 2nd`,
      ...[
        'pregnant',
        'warfarin',
        'smoker 10 a day',
        'diabetes type 2',
        // CANC17: infection rose above 7.5 %.
        'diabetes type 2, hba1c 7.6%',
      ].map((told) => `history ${told}\n${TWO}, overlap hallux at rest\npulses 2\nplan operation 2nd`),
    ],
    not: [
      `${TWO}, overlap hallux at rest\npulses 2\nplan operation 2nd`,
      ...['not pregnant', 'no anticoagulant', 'ex-smoker', 'diabetes type 2, hba1c 7.5%', 'no diabetes'].map(
        (told) => `history ${told}\n${TWO}, overlap hallux at rest\npulses 2\nplan operation 2nd`,
      ),
      `${TWO}, overlap hallux at rest\npulses 2\ntried steroid web 2 2025-06\nplan operation 2nd`,
      `${TWO}, overlap hallux at rest\nplan no operation`,
    ],
  },
  accommodate: {
    reaches: [
      'pain 2nd none\n2nd overlap hallux at rest, tender none',
      '2nd tender plate, drawer 3\ndp absent, pt absent',
    ],
    not: ['2nd overlap hallux at rest, tender none', '2nd tender plate, drawer 3\npulses 2'],
  },
  'stage 3, image agrees': {
    reaches: ['2nd tender plate, drawer 3\nmri 2nd tear full'],
    not: ['2nd tender plate, drawer 3', '2nd tender plate, drawer 3\nmri 2nd tear none'],
  },
  'stage 3': {
    reaches: ['2nd tender plate, drawer 3', '2nd tender plate, overlap hallux sometimes, drawer 2'],
    not: [TWO, '2nd tender plate, drawer positive'],
  },
  'stage 4': { reaches: ['2nd dislocated old irreducible, tender plantar'], not: ['2nd tender plate, drawer 3'] },
};

describe('the path', () => {
  it('has a case for every row', () => {
    expect(Object.keys(CASES).sort()).toEqual(PATH_ROWS.map(({ id }) => id).sort());
  });
  for (const [row, { reaches, not }] of Object.entries(CASES)) {
    it.each(reaches)(`${row}: %s`, (note) => expect(rowOf(note)).toBe(row));
    it.each(not)(`not ${row}: %s`, (note) => expect(rowOf(note)).not.toBe(row));
  }
});

describe('the notes of these cases', () => {
  it('are read whole, so that none passes by being misread', () => {
    for (const { reaches, not } of Object.values(CASES))
      for (const note of [...reaches, ...not])
        for (const { facts } of analyses(note)) expect([note, facts.unclear, facts.verbatim]).toEqual([note, [], []]);
  });
});

describe('what stands beside a step', () => {
  it('a red flag is urgent, names its signs and comes before the course', () => {
    const { next } = rayOf(`tried tape 2nd 14 weeks no-relief\n2nd hot, tender plate, drawer 2\nfever\n${TORN}`);
    expect(next.urgent).toBe(true);
    expect(next.why).toMatch(/fever/);
    expect(next.statements).toHaveLength(2);
    expect(next.cautions.join()).toMatch(/No steroid into a joint that may be infected/);
  });
  it.each([
    ['tape over fragile skin', TWO, CAUTIONS.tape],
    ['an anti-inflammatory whose risks were not asked', TWO, CAUTIONS['anti-inflammatory']],
    ['a steroid', TWO, CAUTIONS['no steroid at an unstable joint']],
    ['a boot', `tried tape 2nd 8 weeks no-relief\n${TWO}\n${TORN}`, CAUTIONS.boot],
    ['a negative image', `tried tape 2nd 8 weeks no-relief\n${TWO}`, CAUTIONS['negative image']],
    ['an image alone', `tried tape 2nd 8 weeks no-relief\n${TWO}`, CAUTIONS['image alone']],
    ['a web change beside an unstable joint', `${TWO}\nweb 2 click`, CAUTIONS['web change']],
    ['circulation in a dislocation', '2nd dislocated', CAUTIONS['watch circulation']],
    ['an open growth plate', wrap(TWO, 'patient QA-3 born 2012\nscales drawer 0-4'), CAUTIONS.growing],
  ])('warns of %s', (_, note, caution) => expect(rayOf(note).next.cautions).toContain(caution));
  it('a planned operation is never said to be safe or refused', () => {
    for (const { step, why, wouldChange } of PATH_ROWS)
      expect(`${step} ${why} ${wouldChange}`).not.toMatch(/\bis safe\b|must not|contraindicated/i);
  });
  it('no row ranks the approaches, promises an outcome, or says what was discussed', () => {
    for (const row of PATH_ROWS)
      expect(`${row.step} ${row.why}`).not.toMatch(
        /superior|better than|guarantee|was discussed|understood|% of patients/i,
      );
  });
});
