import { expectTypeOf, test } from 'vitest';
import type { ValuesOf } from '../../../grammar/lexicon/index.ts';
import { checkRules } from './rules.ts';

checkRules({
  'an operation tells approach, findings, procedures and fixation, each with its place': [
    ['operation 2nd dorsal approach', 'operation/2 approach from=dorsal'],
    ['operation 2nd dorsal longitudinal incision', 'operation/2 approach from=dorsal'],
    [
      'operation thigh tourniquet 250 mmHg 45 minutes',
      'operation/tourniquet site=at thigh pressure=250mmHg for=45minutes',
    ],
    ['operation calf tourniquet', 'operation/tourniquet site=at calf'],
    ['operation no tourniquet', 'operation/no tourniquet'],
    [
      'operation 2nd plate avulsed distal 60% of the width, collateral repair, fixation drill holes',
      'operation/2 plate-found state=torn place=distal share=60%; operation/2 procedure what=collateral repair; operation/2 fixation with=drill holes',
    ],
    ['operation from below 2nd', 'operation/2 approach from=plantar'],
    [
      'operation 2nd dorsal plate repair, weil 3 mm, screw',
      'operation/2 approach from=dorsal; operation/2 procedure what=plate repair; operation/2 procedure what=weil osteotomy shortening=3mm; operation/2 fixation with=screw',
    ],
    [
      'operation 2nd plate torn distal lateral 60% grade 3',
      'operation/2 plate-found state=torn place=distal,lateral share=60% grade=3',
    ],
    ['operation 2nd plate torn, grade 3', 'operation/2 plate-found state=torn; operation/2 anatomical-grade grade=3'],
    ['operation 2nd drawer grade 2', 'unclear: anatomical-grade', 'word-out-of-place'],
    ['mri 2nd tear, grade 2', 'mri/2 tear', 'word-out-of-place number-without-place'],
    ['operation 2nd plate intact', 'operation/2 plate-found state=intact'],
    ['operation 2nd plate', 'unclear: plate-found'],
    ['operation 2nd plate repair', 'operation/2 procedure what=plate repair'],
    ['operation 2nd plate grade 5', 'operation/2 plate-found grade=?5'],
    ['operation 2nd plate grade 1-2', 'operation/2 plate-found grade=1-2'],
    ['operation 2nd plate grade 1-3', 'operation/2 plate-found grade=?1-3'],
    ['operation 2nd anatomical grade 3', 'operation/2 anatomical-grade grade=3'],
    ['mri 2nd anatomical grade 2', 'mri/2 anatomical-grade grade=2'],
    ['mri 2nd tear full', 'mri/2 tear extent=full'],
    ['2nd anatomical grade 3', '', 'word-out-of-place number-without-place'],
    ['operation 2nd drawer 2', '', 'word-out-of-place number-without-place'],
    [
      'operation 2nd extensor lengthening, collateral release',
      'operation/2 procedure what=extensor lengthening; operation/2 procedure what=collateral release',
    ],
    ['operation 2nd dorsal release', 'unclear: approach', 'unknown-word'],
    ['operation 2nd no pin', 'operation/2 no procedure what=pin'],
    ['operation 2nd screw 2.4 mm x 2', 'operation/2 fixation with=screw size=2.4mm count=2'],
    ['plan operation 2nd capsulotomy', 'plan/2 operation procedure=joint release'],
  ],
  'the orders of the operation are its own, with their time': [
    ['operation heel only 4 weeks', 'operation/weight-bearing load=heel only for=4weeks'],
    ['operation nwb 2/52', 'operation/weight-bearing load=non-weight-bearing for=2weeks'],
    ['operation 2nd pin 6 weeks', 'operation/2 procedure what=pin for=6weeks'],
    ['operation 2nd pin out at 6 weeks', 'operation/2 pin-out at=6weeks'],
    [
      'operation boot 6 weeks; ordinary shoes from 12 weeks',
      'operation/boot for=6weeks; operation/ordinary-shoes from=12weeks',
    ],
    ['operation postop shoe 4 weeks', 'operation/postop-shoe for=4weeks'],
    ['plan wbat', 'plan/weight-bearing load=weight-bearing-as-tolerated'],
    ['plan weight bearing as tolerated', 'plan/weight-bearing load=weight-bearing-as-tolerated'],
    ['plan fwb', 'plan/weight-bearing load=full-weight-bearing'],
    ['plan pwb until review', 'unclear: weight-bearing; unclear: review'],
    ['2nd pin removed', '2 pin-out'],
    ['2nd pin out today', '2 pin-out'],
    ['plan pin out 2026-05-01', 'plan/pin-out on=2026-5-1'],
    ['2nd pin not removed', '', 'word-out-of-place word-out-of-place word-out-of-place'],
    ['xray wb hva 22', 'xray/view load=weight-bearing; xray/hva angle=22°'],
  ],
});

test('an anatomical grade is neither a drawer grade nor a clinical stage, in types too', () => {
  type Anatomical = NonNullable<ValuesOf<'plate-found'>['grade']>;
  type Drawer = NonNullable<ValuesOf<'drawer'>['grade']>;
  type Stage = NonNullable<ValuesOf<'stage'>['stage']>;
  expectTypeOf<Anatomical['is']>().toEqualTypeOf<'anatomical grade'>();
  expectTypeOf<Anatomical>().not.toExtend<Drawer>();
  expectTypeOf<Anatomical>().not.toExtend<Stage>();
});
