import { checkRules } from './rules.ts';

checkRules({
  'a test named once, with a value for each ray': [
    ['drawer 2nd 2, 3rd 1', '2 drawer grade=2; 3 drawer grade=1'],
    ['2nd drawer 2, 3rd 1', '2 drawer grade=2; 3 drawer grade=1'],
    ['stage 2nd 2, 3rd 1', '2 stage stage=2; 3 stage stage=1'],
    ['drawer R2 2, R3 1, R4 0', 'right 2 drawer grade=2; right 3 drawer grade=1; right 4 drawer grade=0'],
    ['drawer R 2nd 2, L 2nd 1', 'right 2 drawer grade=2; left 2 drawer grade=1'],
    // More in the one, the same ray again, something between, doubt, or a value of something else.
    ['2nd drawer 2 painful, 3rd 1', '2 drawer grade=2 pain=painful', 'number-without-place'],
    ['drawer 2nd 2 scale 0-3, 3rd 1', '2 drawer grade=2 scale=0-3', 'number-without-place'],
    ['drawer 2nd 2, 2nd 1', '2 drawer grade=2', 'number-without-place'],
    ['2nd drawer 2, tender, 3rd 1', '2 drawer grade=2; 2 tenderness', 'number-without-place'],
    ['drawer 2nd 2; 3rd 1', '2 drawer grade=2', 'number-without-place'],
    ['drawer 2nd 2, ?3rd 1', '2 drawer grade=2', 'number-without-place'],
    ['drawer 2nd 2, 3rd 5', '2 drawer grade=2', 'number-without-place'],
    ['drawer 2nd 2, 3rd 1 mm lifted', '2 drawer grade=2; 3 lifted by=1mm'],
    ['2nd lifted 3 mm, 3rd 1 mm', '2 lifted by=3mm', 'number-without-place unknown-word'],
    ['pain 2nd 6/10, 3rd 2', 'pain/2 pain score=6/10', 'number-without-place'],
  ],
  'a finding named once, with a value for each side, across a comma': [
    ['hv R mild, L moderate', 'right hallux-valgus degree=mild; left hallux-valgus degree=moderate'],
    ['crt 2 R, 4 L', 'right capillary-refill time=2s; left capillary-refill time=4s'],
    ['pulses R ok, L absent', 'right pulses felt=palpable; left no pulses'],
    ['monofilament 4/10 R, 6/10 L', 'right sensation monofilament=4/10; left sensation monofilament=6/10'],
    ['calf R soft, L swollen', 'right calf state=soft; left calf state=swollen'],
    ['hv R mild, L foot swollen', 'right hallux-valgus degree=mild; left foot-swelling'],
    ['hv R mild, 2nd tender', 'right hallux-valgus degree=mild; 2 tenderness'],
    ['crt 2 R, 4 L 3', 'right capillary-refill time=2s', 'number-without-place word-out-of-place number-without-place'],
    ['crt R 2, L 4', 'unclear: capillary-refill', 'word-out-of-place word-out-of-place number-without-place'],
    ['hv R mild; L moderate', 'right hallux-valgus degree=mild', 'word-out-of-place word-out-of-place'],
  ],
  'rays with a side take a joint word and make a list of one side': [
    ['R2 toe 3 mm lifted', 'right 2 lifted by=3mm'],
    ['R2 mtp tender', 'right 2 tenderness'],
    ['R2 mtp stiff', 'right 2 mtp rigidity=stiff'],
    ['R2, R3 tender', 'right 2,3 tenderness'],
    ['R2 and R3 tender', 'right 2,3 tenderness'],
    ['R2, L3 tender', 'unclear: tenderness', 'word-out-of-place'],
    ['R2 tender, R3 drawer 2', 'right 2 tenderness; right 3 drawer grade=2'],
  ],
  'rays at the end of what was only named are all of it': [
    ['plan weil R2, R3', 'plan/right 2,3 operation procedure=weil osteotomy'],
    ['plan weil 2nd, 3rd', 'plan/2,3 operation procedure=weil osteotomy'],
    [
      'operation weil 2nd, 3rd; plate repair 2nd',
      'operation/2,3 procedure what=weil osteotomy; operation/2 procedure what=plate repair',
    ],
    [
      'plan weil 2nd, 3rd plate repair',
      'plan/2 operation procedure=weil osteotomy; plan/3 operation procedure=plate repair',
    ],
    [
      'plan weil 2nd, 3rd, plate repair',
      'plan/2 operation procedure=weil osteotomy; plan/3 operation procedure=plate repair',
    ],
    ['plan no weil 2nd, 3rd', 'unclear: operation', 'word-out-of-place'],
    ['tender 2nd, 3rd', '2,3 tenderness'],
    ['plan tape 2nd, 3rd', 'plan/2,3 tape'],
  ],
  'a side may stand between the word for the spaces and its numbers': [
    ['webs R 2-3 click', 'right web 2,3 click'],
    ['web R 2 tender', 'right web 2 tenderness'],
    ['web R 2-3 tender', 'unclear: tenderness', 'word-out-of-place word-out-of-place number-without-place'],
    ['webs R 2, 3 click', 'unclear: click', 'number-without-place number-without-place'],
    ['webs R 2/3 click', 'unclear: click', 'number-without-place'],
  ],
});
