import { describe, expect, test } from 'vitest';
import { collisions, twiceInOneEntry } from './claims.ts';
import { readingOf } from './findings.ts';
import {
  beside,
  COURSES,
  declined,
  fixedJoint,
  HEELS,
  impression,
  ofFoot,
  ofTheFamily,
  ordered,
  POSITIVE_RESULTS,
  pain,
  partNow,
  placeOrPart,
  planned,
  positiveOf,
  type Resolution,
  rayOrJoint,
  raysOrJoints,
  requested,
  requestedValue,
  sometimes,
  untilEvent,
  WHOSE,
} from './resolutions.ts';

const RESOLUTIONS: Readonly<Record<string, Resolution>> = {
  ...HEELS,
  'operation/skin': {
    claims: 'class foreign part, lead closure',
    winner: 'in an operation what closed the skin, where its size or material follows; else a part',
    shown: [
      ['operation skin 4-0 nylon', 'operation/closure layer=to skin size=4-0 material=nylon'],
      ['operation skin fragile', ''],
    ],
  },
  'any/ray': rayOrJoint('ray 2 tender', '2nd ray tender'),
  'any/rays': raysOrJoints('rays'),
  'any/toes': raysOrJoints('toes'),
  'any/mtps': raysOrJoints('mtps'),
  'any/mtpjs': raysOrJoints('mtpjs'),
  'any/mpjs': raysOrJoints('mpjs'),
  'any/mpj': rayOrJoint('mpj 2 tender', '2nd mpj tender'),
  'exam/mpj': fixedJoint('mpj', 'class joint word, class ray word, finding mtp'),
  'any/mtp': rayOrJoint('mtp 2 tender', '2nd mtp tender'),
  'any/mtpj': rayOrJoint('mtpj 2 tender', '2nd mtpj tender'),
  'history/pain': { ...pain, shown: [['history 2nd pain', 'history/2 pain']] },
  'pain/pain': {
    ...pain,
    shown: [
      ['pain 2nd 6/10', 'pain/2 pain score=6/10'],
      ['pain 2nd plantar, pain 3rd dorsal', 'pain/2 pain place=plantar; pain/3 pain place=dorsal'],
    ],
  },
  'exam/pain': { ...pain, shown: [['2nd drawer 2, pain plantar', '2 drawer grade=2; 2 pain place=plantar']] },
  'exam/mtp': fixedJoint('mtp', 'class joint word, class ray word, finding mtp'),
  'exam/mtpj': fixedJoint('mtpj', 'class joint word, class ray word, finding mtp'),
  'exam/mtps': {
    ...fixedJoint('mtps', 'class joints word, class ray word, finding mtp'),
    shown: [
      ['2nd mtps fixed', '2 mtp rigidity=fixed'],
      ['mtps 2-4 nt', '2,3,4 no tenderness'],
    ],
  },
  'exam/mtpjs': {
    ...fixedJoint('mtpjs', 'class joints word, class ray word, finding mtp'),
    shown: [
      ['2nd mtpjs fixed', '2 mtp rigidity=fixed'],
      ['mtpjs 2-4 nt', '2,3,4 no tenderness'],
    ],
  },
  'exam/mpjs': {
    ...fixedJoint('mpjs', 'class joints word, class ray word, finding mtp'),
    shown: [
      ['2nd mpjs fixed', '2 mtp rigidity=fixed'],
      ['mpjs 2-4 nt', '2,3,4 no tenderness'],
    ],
  },
  'exam/mtp joint': fixedJoint('mtp joint', 'class joint word, finding mtp'),
  'xray/joint': {
    claims: 'class joint word, finding film-joint',
    winner: 'the finding where its value follows, else the subject',
    shown: [
      ['xray 2nd joint narrowed', 'xray/2 film-joint state=narrowed'],
      ['xray 2nd joint dislocated', 'xray/2 film-joint state=dislocated'],
    ],
  },
  'plan/xray': requested('xray', 'xray'),
  'plan/x ray': requested('x-ray', 'xray'),
  'plan/us': requested('us', 'us'),
  'plan/ultrasound': requested('ultrasound', 'us'),
  'plan/mri': requested('mri', 'mri'),
  'plan/xr': requested('xr', 'xray'),
  'plan/ct': {
    ...requested('ct', 'ct'),
    shown: [
      ['plan ct 2nd', 'plan/2 image by=ct'],
      ['ct 2nd union united', 'ct/2 union state=united'],
    ],
  },
  'plan/operation': {
    claims: 'finding operation, section word',
    winner: 'in a plan it is planned, at the start of a line it was done',
    shown: [
      ['plan operation 2nd weil', 'plan/2 operation procedure=weil osteotomy'],
      ['operation weil 2nd', 'operation/2 procedure what=weil osteotomy'],
    ],
  },
  'any/positive': positiveOf(
    'positive',
    'class positive, value anti-ccp.result, value compression.pain, value drawer.result, value hop-test.result, value lab-other.result, value lisfranc.result, value nerve-stretch.result, value percussion.result, value rheumatoid-factor.result, value silfverskiold.result, value tinel.result, value tuning-fork.result',
  ),
  'any/pos': positiveOf('pos', POSITIVE_RESULTS),
  'any/+ve': positiveOf('+ve', POSITIVE_RESULTS),
  'any/present': {
    claims: 'class present, value dp.felt, value pt.felt, value pulses.felt',
    winner: 'the open slot, else the status',
    shown: [
      ['dp present', 'dp felt=palpable'],
      ['2nd swelling present', '2 swelling'],
    ],
  },
  'any/after': {
    claims:
      'class distancing, label ordinary-shoes.from, label pin-out.at, label review.in, label sport-return.from, label sutures.at, label weight-bearing.from',
    winner: 'the label of an open slot, else it distances',
    shown: [
      ['plan review after 8 weeks', 'plan/review in=8weeks'],
      ['operation 2nd pin out after 6 weeks', 'operation/2 pin-out at=6weeks'],
      ['2nd tender after running', 'unclear: tenderness'],
    ],
  },
  'any/reduced': {
    claims:
      'class distancing, value dp.felt, value mtp-motion.extent, value paper.result, value pt.felt, value pulses.felt, value sensation.state, value toe-strength.state, value vibration.state',
    winner: 'the open slot, else it distances',
    shown: [
      ['2nd paper reduced', '2 paper result=weak'],
      ['sense reduced', 'sensation state=reduced'],
      ['2nd dislocated, reduced', 'unclear: dislocated'],
    ],
  },
  'any/healed': {
    claims: 'class distancing, value wound.state',
    winner: 'the open slot, else it distances',
    shown: [
      ['2nd wound healed', '2 wound state=healed'],
      ['xray 2nd fracture healed', 'unclear: image-other'],
    ],
  },
  'any/ankle': placeOrPart('ankle'),
  'any/midfoot': placeOrPart('midfoot'),
  'exam/puffy': ofFoot('puffy'),
  'exam/swelling': ofFoot('swelling'),
  'exam/swollen': ofFoot('swollen'),
  'any/declined': declined('declined'),
  'any/refused': declined('refused'),
  'any/with': beside('with'),
  'any/w': beside('w'),
  'any/bloods': {
    claims: 'section word, value review.with',
    winner: 'the open slot, at the start of a line the section',
    shown: [
      ['plan review 6 weeks with bloods', 'plan/review in=6weeks with=bloods'],
      ['bloods crp 4', 'lab/crp plain=4'],
    ],
  },
  'any/sometimes': sometimes('sometimes'),
  'any/intermittently': sometimes('intermittently'),
  'any/intermittent': {
    claims: `class distancing, ${[...COURSES.map((id) => `${id}.kept`), 'overlap.when']
      .map((slot) => `value ${slot}`)
      .sort()
      .join(', ')}`,
    winner: 'the open slot, else it distances',
    shown: [
      ['tried tape intermittent', 'tried/tape kept=poorly kept'],
      ['2nd tender intermittent', 'unclear: tenderness'],
    ],
  },
  'any/at': {
    claims:
      'class filler, label dislocated.at, label image.in, label ordinary-shoes.from, label pin-out.at, label sport-return.from, label sutures.at, label weight-bearing.from',
    winner: 'the same: a label is passed over, too',
    shown: [
      ['2nd dislocated at 14:30', '2 dislocated at=14:30'],
      ['2nd drawer at 14:30', 'unclear: drawer'],
    ],
  },
  'any/over': {
    claims: 'class filler, label onset.for',
    winner: 'the same: a label is passed over, too',
    shown: [
      ['history onset over 5 months', 'history/onset for=5months'],
      ['2nd tender over plate', '2 tenderness place=plate'],
    ],
  },
  'any/on': {
    claims: `class filler, ${[
      ...COURSES,
      'complication',
      'consent',
      'dislocated',
      'drug-plan',
      'onset',
      'operation',
      'ordinary-shoes',
      'pin-out',
      'review',
      'sutures',
      'trigger',
    ]
      .map((id) => `label ${id}.on`)
      .sort()
      .join(', ')}`,
    winner: 'the same: a label is passed over, too',
    shown: [
      ['plan review on 2026-05-01', 'plan/review on=2026-5-1'],
      ['2nd drawer on 2', '2 drawer grade=2'],
    ],
  },
  'any/in': {
    claims: `class filler, ${[
      ...COURSES.map((id) => `${id}.on`),
      'dislocated.on',
      'image.in',
      'ordinary-shoes.from',
      'pin-out.at',
      'referral.in',
      'review.in',
      'sport-return.from',
      'sutures.at',
    ]
      .map((slot) => `label ${slot}`)
      .sort()
      .join(', ')}`,
    winner: 'the same: a label is passed over, too',
    shown: [
      ['plan review in 4 weeks', 'plan/review in=4weeks'],
      ['tried steroid web 2 in 2025', 'tried/web 2 steroid on=2025'],
    ],
  },
  'any/palpable': {
    claims: 'class adjective, value dp.felt, value pt.felt, value pulses.felt',
    winner: 'the open slot, else the adjective of a denial',
    shown: [
      ['dp palpable', 'dp felt=palpable'],
      ['2nd no palpable swelling', '2 no swelling'],
    ],
  },
  'any/normal': {
    claims:
      'class panel, value arch.height, value capillary-refill.state, value crp.level, value dp.felt, value esr.level, value fat-pad.state, value film-joint.state, value gait.kind, value lab-other.level, value mtp-motion.extent, value paper.result, value pt.felt, value pulses.felt, value ray-mobility.amount, value sensation.state, value toe-strength.state, value urate.level, value vibration.state, value vitamin-d.level, value white-cells.level',
    winner: 'the open slot, alone after a subject the panel',
    shown: [
      ['2nd paper normal', '2 paper result=holds'],
      ['2nd normal', '2 panel'],
      ['sense normal', 'sensation state=normal'],
    ],
  },
  'any/toe': {
    claims: 'class joint word, class ray word, value pain.place',
    winner: 'part of the subject after an ordinal or before a number, else the open slot',
    shown: [
      ['pain 2nd toe', 'pain/2 pain'],
      ['pain toe 2', 'pain/2 pain'],
      ['2nd pain toe', '2 pain place=toe'],
    ],
  },
  'any/mtp joint': {
    claims: 'class joint word, value pain.place',
    winner: 'part of the subject after an ordinal, else the open slot',
    shown: [
      ['pain 2nd mtp joint', 'pain/2 pain'],
      ['2nd pain mtp joint', '2 pain place=joint'],
    ],
  },
  'any/joint': {
    claims: 'class joint word, value pain.place',
    winner: 'part of the subject after an ordinal, else the open slot',
    shown: [
      ['pain 2nd joint', 'pain/2 pain'],
      ['2nd pain joint', '2 pain place=joint'],
    ],
  },
  'any/pain': {
    claims: 'label aofas.pain, label ffi.pain, label moxfq.pain, section word',
    winner: 'the part of an open score, else as everywhere',
    shown: [
      ['aofas pain 30', 'aofas pain=30'],
      ['pain 2nd 6/10', 'pain/2 pain score=6/10'],
    ],
  },
  'any/stopped': {
    claims: `class distancing, ${COURSES.map((id) => `label ${id}.stop`).join(', ')}, value drug-plan.what`,
    winner: 'the open slot, the label of one where its date follows, else it distances',
    shown: [
      ['plan drug-plan warfarin stopped', 'plan/drug-plan drug=warfarin what=stopped'],
      ['tried tape stopped 2026-02', 'tried/tape stop=2026-2'],
      ['tried tape stopped', 'unclear: tape'],
    ],
  },
  'any/till': untilEvent([
    ['plan boot till 2026-05-01', 'plan/boot stop=2026-5-1'],
    ['plan boot till pin out', 'unclear: boot; unclear: pin-out'],
  ]),
  'any/until': untilEvent([
    ['tried tape until 2026-02', 'tried/tape stop=2026-2'],
    ['tried tape until 4 weeks', 'unclear: tape'],
  ]),
  'any/standing': {
    claims: 'section word, value pain.character, value trigger.what, value worse-with.what',
    winner: 'the open slot, at the start of a statement the section',
    shown: [
      ['history trigger standing', 'history/trigger what=standing'],
      ['standing 2nd lifted', 'stand/2 lifted'],
    ],
  },
  'any/was': {
    claims: 'class distancing, label pain.earlier',
    winner: 'the earlier score only directly after the score of today and at the end of its segment, else it distances',
    shown: [
      ['pain 4/10 (was 7)', 'pain/pain score=4/10 earlier=7/10'],
      ['pain was 7', 'unclear: pain'],
    ],
  },
  'any/mother': ofTheFamily('mother'),
  'any/mum': ofTheFamily('mum', 'mother'),
  'any/dad': ofTheFamily('dad', 'father'),
  'any/father': ofTheFamily('father'),
  'any/sister': ofTheFamily('sister'),
  'any/brother': ofTheFamily('brother'),
  'any/never': {
    claims: 'class distancing, value smoking.status',
    winner: 'the open slot, else it distances',
    shown: [
      ['history smoking never', 'history/smoking status=never'],
      ['2nd tender never', 'unclear: tenderness'],
    ],
  },
  'exam/arch': partNow('arch', 'height=flat', 'sore'),
  'stand/arch': { ...partNow('arch', 'height=flat', 'sore'), shown: [['stand arch high', 'stand/arch height=high']] },
  'exam/calf': {
    ...partNow('calf', 'state=soft', ''),
    shown: [
      ['calf tender', 'calf state=tender'],
      ['2nd tender, calf twinge', '2 tenderness; unclear: calf'],
    ],
  },
  'history/calf': {
    ...partNow('calf', 'state=soft', ''),
    shown: [['history calf swollen', 'history/calf state=swollen']],
  },
  'exam/skin': partNow('skin', 'condition=dry', 'sore'),
  'stand/skin': {
    ...partNow('skin', 'condition=dry', 'sore'),
    shown: [['stand skin dry', 'stand/skin condition=dry']],
  },
  'exam/dx': impression('dx'),
  'exam/impression': impression('impression'),
  'plan/dx': planned('dx'),
  'plan/impression': planned('impression'),
  'impression/dx': planned('dx'),
  'impression/impression': planned('impression'),
  'plan/bloods': ordered('bloods'),
  'plan/labs': ordered('labs'),
  ...WHOSE,
  'any/xray': requestedValue('xray', 'xray'),
  'any/x ray': requestedValue('x-ray', 'xray'),
  'any/radiograph': requestedValue('radiograph', 'xray'),
  'any/us': requestedValue('us', 'us'),
  'any/ultrasound': requestedValue('ultrasound', 'us'),
  'any/mri': requestedValue('mri', 'mri'),
  'any/xr': requestedValue('xr', 'xray'),
  'any/ct': requestedValue('ct', 'ct'),
};

test('every form that two meanings could claim has a row that says who wins', () => {
  const found = collisions().map(({ form, section, claims }) => [`${section}/${form}`, claims.join(', ')]);
  const stated = Object.entries(RESOLUTIONS).map(([key, { claims }]) => [key, claims]);
  expect(found.map((pair) => pair.join(': ')).sort()).toEqual(stated.map((pair) => pair.join(': ')).sort());
});

test('no form is a value of two slots of one finding', () => {
  expect(twiceInOneEntry()).toEqual([]);
});

describe.each(Object.entries(RESOLUTIONS))('%s', (_, { winner, shown }) => {
  test.each(shown)(`${winner}: %s`, (text, findings) => {
    expect(readingOf(text).findings).toBe(findings);
  });
});
