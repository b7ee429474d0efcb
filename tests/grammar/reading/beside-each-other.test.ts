import { checkRules } from './rules.ts';

checkRules({
  'a side before a colon, or at the start of a statement after one that began with a side, is of all that follows': [
    [
      'L: 2nd tender, drawer 1; R: nt, drawer 0',
      'left 2 tenderness; left 2 drawer grade=1; right 2 no tenderness; right 2 drawer grade=0',
    ],
    ['R: dp 2, pt 2; L: dp absent, pt absent', 'right dp grade=2; right pt grade=2; left no dp; left no pt'],
    ['L 2nd tender, drawer 2; R: nt', 'left 2 tenderness; left 2 drawer grade=2; right 2 no tenderness'],
    [
      'xray R hva 22, ima 12; L hva 30, ima 15',
      'xray/right hva angle=22°; xray/right ima angle=12°; xray/left hva angle=30°; xray/left ima angle=15°',
    ],
    ['plan R: tape 2nd; L: boot, no tape', 'plan/right 2 tape; plan/left boot; plan/left avoid tape'],
    ['2nd L tender. R drawer 0, NT', 'left 2 tenderness; right 2 drawer grade=0; unclear: tenderness'],
  ],
  'what was agreed is not what was done': [
    [
      'operation consented weil 2nd, plate repair',
      'operation/consent state=given; unclear: procedure; unclear: procedure',
    ],
    ['operation consent signed; weil 2nd', 'operation/consent state=signed; operation/2 procedure what=weil osteotomy'],
  ],
  'a refusal reaches what is joined to it, or only named after it': [
    ['plan declines surgery and steroid', 'plan/decision what=declines operation; unclear: steroid'],
    ['plan declines surgery, mri', 'plan/decision what=declines operation; unclear: image'],
    ['plan declines tape, boot', 'unclear: tape; unclear: boot'],
    ['plan declines surgery, review 3 months', 'plan/decision what=declines operation; plan/review in=3months'],
    ['plan declines surgery, tape 8 weeks', 'plan/decision what=declines operation; plan/tape for=8weeks'],
  ],
  'what is stopped is not planned': [
    ['plan d/c tape', 'unclear: tape', 'word-out-of-place'],
    ['plan d/c', 'plan/discharge'],
    ['plan nsaid stop', 'unclear: anti-inflammatory'],
    ['plan tape 6 weeks stop review 6 weeks', 'plan/tape for=6weeks; plan/review in=6weeks'],
    ['2nd drawer two stop third tender', '2 drawer grade=2; 3 tenderness'],
  ],
  'how it is now judges the sign before it; while thinking it opens a clause': [
    ['fever ok now', 'unclear: fever; unclear: unremarkable', 'unread-red-flag'],
    ['pain okay', 'unclear: pain', 'unknown-word'],
    ['2nd redness ok', 'unclear: redness; unclear: unremarkable'],
    ['web 2 squeeze nt', 'unclear: squeeze; unclear: tenderness'],
    ['okay now second drawer two', '2 drawer grade=2'],
    ['second tender comma okay third drawer one', '2 tenderness; 3 drawer grade=1'],
    ['2nd drawer 1, ok', '2 drawer grade=1; 2 unremarkable'],
    ['pain 2nd 6/10 now and again', 'unclear: pain'],
  ],
  'a denial at the end of what is joined is of the last, or of all; after a colon, of the list': [
    ['2nd swelling & tenderness nil', 'unclear: swelling; 2 no tenderness'],
    ['2nd swelling, tenderness and redness absent', 'unclear: swelling; unclear: tenderness; 2 no redness'],
    ['history gout and diabetes: none', 'unclear: gout; history/no diabetes'],
    [
      'fever, calf pain, sob: nil',
      'unclear: fever; unclear: calf; unclear: chest',
      'unread-red-flag unread-red-flag word-out-of-place',
    ],
    ['2nd swelling, tender none', '2 swelling; 2 no tenderness'],
    ['2nd swelling mild and tender none', '2 swelling degree=mild; 2 no tenderness'],
  ],
  'when it begins is not how long it lasts': [
    ['plan boot from 6 weeks', 'unclear: boot'],
    ['plan can drive at 6/52', 'unclear: driving'],
    ['plan fwb at 6 weeks', 'plan/weight-bearing load=full-weight-bearing from=6weeks'],
    ['plan boot for 6 weeks', 'plan/boot for=6weeks'],
    ['plan pin removed today', 'unclear: pin-out'],
    ['plan pin out 4 weeks', 'plan/pin-out at=4weeks'],
  ],
  'a drug that is reacted to is not taken': [
    ['history apixaban allergy', 'unclear: anticoagulant; unclear: allergy'],
    ['history warfarin allergy', 'history/allergy to=warfarin'],
    ['history apixaban', 'history/anticoagulant name=apixaban'],
  ],
  'with or without: neither of the two is certain': [
    ['plan us +/- steroid', 'unclear: image; unclear: steroid'],
    ['operation done 2nd weil +/- plate repair', 'unclear: procedure; unclear: procedure'],
    ['click +/-', 'equivocal click'],
  ],
  'a value of something else': [
    [
      'operation weil 2nd, k-wire 1.6 mm',
      'operation/2 procedure what=weil osteotomy; operation/procedure what=pin shortening=?1.6mm',
    ],
    ['pain R6 L3', 'unclear: pain'],
  ],
  'both feet and each of them': [
    [
      'xray wb both: R hva 22, ima 11; L hva 30, ima 14',
      'xray/both view load=weight-bearing; xray/right hva angle=22°; xray/right ima angle=11°; xray/left hva angle=30°; xray/left ima angle=14°',
    ],
    ['sense both 10/10', 'both sensation monofilament=10/10'],
    [
      'pain L 2nd 7/10 walking; R 2nd 3/10',
      'pain/left 2 pain score=7/10 character=walking; pain/right 2 pain score=3/10',
    ],
    ['pain 2nd 6/10, 3rd 3/10', 'pain/2 pain score=6/10; pain/3 pain score=3/10'],
    ['2nd 3/10', '', 'number-without-place'],
    ['pain 2nd not 3/10', 'unclear: pain', 'word-out-of-place'],
  ],
});
