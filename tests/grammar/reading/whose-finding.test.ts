import { checkRules } from './rules.ts';

checkRules({
  'who found it, or when, at the start of a sentence is of all that the sentence goes on with': [
    ['in 2024 2nd tender, drawer 1', 'unclear: tenderness; unclear: drawer', 'number-without-place'],
    ['gp found 2nd tender, drawer 2', 'unclear: tenderness; unclear: drawer', ''],
    ['cortez found 2nd tender, drawer 2', 'unclear: tenderness; unclear: drawer', 'unknown-word'],
    ['history off warfarin, aspirin', 'unclear: anticoagulant; unclear: antiplatelet', 'unknown-word'],
    ['history mum had bunions, smoker', 'unclear: smoking', 'word-out-of-place'],
    ['aim no pain, straight 2nd', 'unclear: pain; unclear: deviation'],
    // What follows a full stop, and the items of a plan, stand for themselves.
    ['gp found 2nd tender. 3rd drawer 2', 'unclear: tenderness; 3 drawer grade=2'],
    ['plan tinned tape 6 weeks, review 6 weeks', 'unclear: tape; plan/review in=6weeks', 'unknown-word'],
    ['looks well, 2nd tender', '2 tenderness', 'unknown-word unknown-word'],
  ],
  'what is told after a finding of its source, its day or its bounds is of that finding': [
    ['2nd drawer 2. according to the gp', 'unclear: drawer', 'unknown-word unknown-word'],
    [
      '2nd tender, drawer 2, on the old film',
      'unclear: tenderness; unclear: drawer',
      'word-out-of-place word-out-of-place',
    ],
    ['2nd tender, drawer 2, at least', '2 tenderness; unclear: drawer', 'unknown-word'],
    ['2nd drawer 2, wait, 3', 'unclear: drawer', 'unknown-word number-without-place'],
    ['2nd drawer 2, 3', 'unclear: drawer', 'number-without-place'],
    ['2nd drawer 2, no wait, 3', '2 drawer grade=3'],
    ['history smoker, in june', 'unclear: smoking', 'ambiguous-date'],
    ['2nd swelling mild, from the boot', '2 swelling degree=mild', 'word-out-of-place word-out-of-place'],
  ],
  'a pain that is denied after a spot or a test may be of that alone': [
    ['callus under 3rd, no pain', '3 callus; unclear: pain'],
    ['2nd drawer 2, not painful', '2 drawer grade=2; unclear: pain'],
    ['2nd drawer 2, no pain', '2 drawer grade=2; 2 no pain'],
    ['gait normal, no pain', 'gait kind=normal; no pain'],
  ],
  'a place at the end of a denied list is of its members, or of the last': [
    ['no pain, swelling or numbness 2nd', 'no pain; unclear: swelling; 2 no numbness'],
    ['no pain or swelling in the 2nd toe', 'unclear: pain; 2 no swelling'],
    ['2nd no pain or swelling', '2 no pain; 2 no swelling'],
  ],
  'a number after a word of place may name the ray; an injection takes no weeks': [
    ['pain at 2', 'pain/pain score=?2/10'],
    ['pain over 3', 'pain/pain score=?3/10'],
    ['pain at 2/10', 'pain/pain score=2/10'],
    ['pain at rest 2', 'pain/pain character=rest score=2/10'],
    ['tried steroid 3/52 relief', 'tried/steroid for=?3weeks response=better'],
    ['tried steroid 3/52 ago', 'tried/steroid on=3weeks-ago'],
  ],
  'what is not done yet is not ruled out': [
    ['plan no steroid yet', 'unclear: steroid', 'word-out-of-place'],
    ['plan no running today', 'unclear: restriction', 'word-out-of-place'],
    ['plan no steroid', 'plan/avoid steroid'],
  ],
  'whom a plan writes to holds for its own item': [
    ['plan letter to gp, tape 6 weeks', 'plan/tape for=6weeks', 'unknown-word'],
    ['plan gp to stop aspirin, review 6 weeks', 'unclear: drug-plan; plan/review in=6weeks', 'unknown-word'],
    ['letter says 2nd tender, drawer 2', 'unclear: tenderness; unclear: drawer'],
    [
      'plan hold adalimumab 2 weeks before surgery',
      'plan/drug-plan what=stopped drug=adalimumab for=2weeks when=before the operation',
    ],
  ],
  'words of a clinic': [
    ['2nd crossover onto hallux', '2 overlap onto=hallux'],
    ['plan tape toe in pf 8/52', 'plan/tape kind=plantarflexed for=8weeks'],
    ['cap refill ok', 'capillary-refill state=normal'],
    ['walking in trainers', 'ordinary-shoes'],
    ['walking in trainers 40 min', 'unclear: ordinary-shoes', 'number-without-place word-out-of-place'],
    ['history better in trainers', 'history/eased-by what=trainers'],
    ['sh retired teacher, non smoker', 'history/work load=retired job=teacher; history/smoking status=non-smoker'],
    ['dh warfarin, metformin', 'history/anticoagulant name=warfarin; history/medicine name=metformin'],
  ],
  'another angle of the ankle has its own position of the knee': [
    [
      'ankle df 0 knee straight, 12 knee bent',
      'ankle-dorsiflexion angle=0° knee=extended; ankle-dorsiflexion angle=12° knee=flexed',
    ],
    ['ankle df 0 knee straight, 12', 'ankle-dorsiflexion angle=0° knee=extended', 'number-without-place'],
    ['2nd df 40, 12 knee bent', '2 mtp-dorsiflexion angle=40°', 'number-without-place word-out-of-place unknown-word'],
  ],
});
