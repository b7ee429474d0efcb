import { checkRules } from './rules.ts';

// Expected values: the reading rules of the language ("Values"); how much `++` is has no published cut.
checkRules({
  'two or three pluses after a sign say that it is there, and are kept': [
    ['2nd TTP++', '2 tenderness "++"'],
    ['2nd shaft TTP+++, swelling+', '2 tenderness place=shaft "+++"; 2 swelling'],
    ['2nd tender plantar++ swollen++', '2 tenderness place=plantar "++"; 2 swelling "++"'],
    ['2nd swollen ++, tender', '2 swelling "++"; 2 tenderness'],
    ['web 3 click++', 'web 3 click "++"'],
  ],
  'they are no grade, and stand beside no other word of how much': [
    ['2nd drawer 2++', 'unclear: drawer', 'word-out-of-place'],
    ['2nd drawer ++', 'unclear: drawer', 'word-out-of-place'],
    ['2nd swelling mild++', 'unclear: swelling', 'word-out-of-place'],
    ['2nd TTP++++', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd swelling ++ tender', 'unclear: swelling; unclear: tenderness', 'word-out-of-place'],
    ['2nd no swelling++', 'unclear: swelling', 'word-out-of-place'],
    ['2nd ?TTP++', 'unclear: tenderness'],
    ['2nd was TTP++', 'unclear: tenderness'],
  ],
  '`w` is with': [
    ['wound w/ pus', 'wound state=pus'],
    ['plan tape 2 w', 'plan/tape for=2weeks'],
    ['2nd swelling w no pain', 'unclear: swelling; unclear: pain'],
  ],
});
