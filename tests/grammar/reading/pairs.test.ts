import { checkRules } from './rules.ts';

// Expected values: the reading rules of the language ("Subjects, parts, sides").
checkRules({
  'a finding takes each side with its own value': [
    ['abi right 0.9 left 1.0', 'right abi index=0.9; left abi index=1'],
    ['monofilament 4/10 R 6/10 L', 'right sensation monofilament=4/10; left sensation monofilament=6/10'],
    ['pain R 5/10 L 3/10, sharp', 'pain/right pain score=5/10; pain/left pain score=3/10', 'word-out-of-place'],
    ['pain R 7 L 4', 'pain/right pain score=7/10; pain/left pain score=4/10'],
    ['2nd drawer R 2 L 1', 'right 2 drawer grade=2; left 2 drawer grade=1'],
    ['swelling R mild L none', 'right swelling degree=mild; left no swelling'],
    ['sense both R normal L reduced', 'right sensation state=normal; left sensation state=reduced'],
    ['2nd paper R holds L weak // c', 'right 2 paper result=holds; left 2 paper result=weak'],
    ['toe pressure R 52', 'right toe-pressure pressure=52mmHg'],
  ],
  'a bare digit may be a ray where none is named': [
    ['drawer R 2 L 1', 'unclear: drawer', 'word-out-of-place word-out-of-place number-without-place'],
    ['pain R 2 L 3', 'unclear: pain', 'word-out-of-place word-out-of-place number-without-place'],
    ['dp R 2 L 1', 'right dp grade=2; left dp grade=1'],
  ],
  'a pair fills its segment, or is none': [
    ['monofilament 4/10 R 6/10', 'unclear: sensation', 'word-out-of-place number-without-place'],
    ['abi R 0.9 L zzq', 'unclear: abi', 'word-out-of-place word-out-of-place unknown-word'],
    ['abi R 0.9 zzq L 1.0', 'unclear: abi', 'word-out-of-place unknown-word word-out-of-place number-without-place'],
    ['abi R 0.9 R 1.0', 'unclear: abi', 'word-out-of-place word-out-of-place number-without-place'],
    [
      '2nd drawer R 2 L 3 NT',
      'unclear: drawer; unclear: tenderness',
      'word-out-of-place word-out-of-place number-without-place',
    ],
    ['2nd drawer R 2 L 9', 'unclear: drawer', 'word-out-of-place word-out-of-place number-without-place'],
    [
      '2nd drawer R 2 > L 1',
      'unclear: drawer',
      'word-out-of-place unknown-word word-out-of-place number-without-place',
    ],
    ['2nd drawer R ?2 L 1', 'unclear: drawer', 'word-out-of-place word-out-of-place number-without-place'],
    [
      '2nd drawer not R 2 L 1',
      'unclear: drawer',
      'word-out-of-place word-out-of-place word-out-of-place number-without-place',
    ],
    ['2nd drawer was R 2 L 1', 'unclear: drawer', 'word-out-of-place word-out-of-place number-without-place'],
    ['abi R 0.9 L 1.0, absent', 'unclear: abi; unclear: abi', 'word-out-of-place'],
    ['2nd R drawer 2 L 1', 'unclear: drawer', 'word-out-of-place number-without-place'],
  ],
});
