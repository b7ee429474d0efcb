import { checkRules } from './rules.ts';

checkRules({
  'what is like another side or ray is of its own place, with the comparison as a remark': [
    ['2nd drawer 2 = L', '2 drawer grade=2 "= L"'],
    ['2nd swelling mild =left, tender', '2 swelling degree=mild "=left"; 2 tenderness'],
    ['pulses palpable = left', 'pulses felt=palpable "= left"'],
    ['R2 swelling = L2', 'right 2 swelling "= L2"'],
    ['2nd tender = 3rd', '2 tenderness "= 3rd"'],
    ['operation done 2nd weil 3 mm = 3rd', 'operation/2 procedure what=weil osteotomy shortening=3mm "= 3rd"'],
    ['2nd drawer = L', 'unclear: drawer'],
    ['abi = R 0.9 L 1.0', 'right abi index=0.9; left abi index=1'],
    ['2nd drawer = 2', '2 drawer grade=2'],
  ],
  'rays and webs that no finding takes are kept as typed': [
    ['1st over 2nd', '', 'word-out-of-place'],
    ['2nd = 1st', '', 'word-out-of-place'],
    ['xray 2nd = 1st', '', 'word-out-of-place'],
    ['web 2 = web 3', '', 'word-out-of-place'],
    ['2nd toe = 3rd toe length', '', 'word-out-of-place unknown-word'],
    ['2nd drawer 2; 3rd', '2 drawer grade=2', 'word-out-of-place'],
    ['mri 2nd tear; 3rd', 'mri/2 tear', 'word-out-of-place'],
    ['R2,3 L2 tender', 'unclear: tenderness', 'number-without-place word-out-of-place'],
    ['2nd, 3rd', ''],
    ['2nd "looks fine"', ''],
    ['second toe. drawer two', '2 drawer grade=2'],
    ['2nd, drawer 2', '2 drawer grade=2'],
  ],
  'a plus after a drawer grade is a remark; a pulse is written with it': [
    ['2nd drawer 1+', '2 drawer grade=1 "1+"'],
    ['2nd 2+ drawer', '2 drawer grade=2 "2+"'],
    ['dp 2+', 'dp grade=2'],
  ],
  'a side of what has none, and today in a plan, are kept': [
    ['plan antibiotics L', 'plan/medicine name=an antibiotic "L"'],
    ['plan review 6 weeks L', 'plan/review in=6weeks "L"'],
    ['plan k-wire out today', 'plan/pin-out "today"'],
    ['plan steroid web 2 today', 'plan/web 2 steroid "today"'],
    ['plan steroid L web 2', 'plan/left web 2 steroid'],
    ['2nd tender today', '2 tenderness'],
  ],
});
