import { checkRules } from './rules.ts';

checkRules({
  'what goes on from the calf after a semicolon may still be of the calf': [
    ['calf swollen; hot; red', 'calf state=swollen; unclear: hot; unclear: redness', 'unread-red-flag unread-red-flag'],
    ['calf swollen; 2nd hot; red', 'calf state=swollen; 2 hot; 2 redness'],
    ['calf soft; pain 2/10', 'calf state=soft; pain/pain score=2/10'],
    ['calf soft; 2nd swelling mild', 'calf state=soft; 2 swelling degree=mild'],
  ],
  'a smoker is not denied by what was denied before': [
    ['history no diabetes smoker', 'history/no diabetes; history/smoking status=current'],
    ['history no diabetes or smoker', 'history/no diabetes; unclear: smoking'],
    ['history no diabetes, gout, smoker', 'history/no diabetes; unclear: gout; history/smoking status=current'],
  ],
  'what is said of a foot by its side is of no ray that was named before': [
    ['second toe drawer two left foot fine', '2 drawer grade=2; unclear: unremarkable'],
    ['2nd drawer 2, left foot tender', '2 drawer grade=2; unclear: tenderness'],
    ['2nd left foot tender', 'left 2 tenderness'],
    ['left foot 2nd tender', 'left 2 tenderness'],
    ['2nd tender left foot', 'left 2 tenderness'],
    ['2nd tender, left side drawer 1', '2 tenderness; left 2 drawer grade=1'],
  ],
  'pain after an image is of no ray that was seen on it': [
    [
      'mri 2nd tear partial, third normal; pain 6/10',
      'mri/2 tear extent=partial; mri/3 unremarkable; pain/pain score=6/10',
    ],
    ['xray 2nd longer 3 mm; pain 2nd 4/10', 'xray/2 protrusion than=longer by=3mm; pain/2 pain score=4/10'],
    ['2nd drawer 2; pain 6/10', '2 drawer grade=2; pain/2 pain score=6/10'],
  ],
  'tender and not tender of one joint is put right, or nobody knows': [
    ['2nd nt tender', 'unclear: tenderness; unclear: tenderness'],
    ['2nd tender nt', 'unclear: tenderness; unclear: tenderness'],
    ['2nd tender plantar, nt dorsal', '2 tenderness place=plantar; 2 no tenderness place=dorsal'],
    ['2nd tender, 3rd nt', '2 tenderness; 3 no tenderness'],
  ],
});
