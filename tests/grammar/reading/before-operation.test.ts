import { checkRules } from './rules.ts';

checkRules({
  'consent is written as it was given, and in its own words only': [
    ['consent signed', 'consent state=signed'],
    ['consent form signed 2026-01-12', 'consent state=signed on=2026-1-12'],
    ['consented', 'consent state=given'],
    ['plan consent to be signed', 'plan/consent state=to be taken'],
    ['no consent', 'no consent'],
    ['consent "for right 2nd weil, side marked"', 'unclear: consent'],
    ['consent signed previously', 'unclear: consent', ''],
    ['consent', 'unclear: consent'],
  ],
  'a drug around the operation: verb and drug together, or neither': [
    [
      'plan stop warfarin 5 days before surgery',
      'plan/drug-plan what=stopped drug=warfarin for=5days when=before the operation',
    ],
    [
      'plan hold apixaban 48 h pre op',
      'plan/drug-plan what=stopped drug=apixaban for=48hours when=before the operation',
    ],
    ['plan continue aspirin', 'plan/drug-plan what=continued drug=aspirin'],
    ['plan restart warfarin after surgery', 'plan/drug-plan what=restarted drug=warfarin when=after the operation'],
    ['plan bridge warfarin "with the prescriber"', 'plan/drug-plan what=bridged drug=warfarin "with the prescriber"'],
    ['plan do not stop warfarin', 'unclear: drug-plan', 'unknown-word'],
    ['plan ?stop warfarin', 'unclear: drug-plan'],
    ['plan if INR high stop warfarin', 'unclear: drug-plan', 'unknown-word word-out-of-place'],
    ['plan stop tape', 'unclear: tape', 'unknown-word'],
    ['plan stop warfarin, aspirin', 'plan/drug-plan what=stopped drug=warfarin', 'word-out-of-place'],
    ['history stop warfarin', '', 'word-out-of-place'],
  ],
  'smoking is advised against in a plan': [
    ['plan stop smoking', 'plan/smoking-advice'],
    ['plan smoking cessation', 'plan/smoking-advice'],
    ['history stopped smoking', 'history/smoking status=ex'],
  ],
  'why the blood is thinned is kept; a clot is a history of its own': [
    ['history warfarin for AF', 'history/anticoagulant name=warfarin why=atrial fibrillation'],
    ['history aspirin for stroke', 'history/antiplatelet name=aspirin why=a stroke'],
    ['history warfarin for dvt', 'unclear: anticoagulant', 'unread-red-flag'],
  ],
  'a review says what it waits for': [
    ['plan review with mri', 'plan/review with=mri'],
    ['plan review 6 weeks with xray and bloods', 'plan/review in=6weeks with=film; plan/bloods'],
    ['plan review mri', 'unclear: review; unclear: image'],
  ],
  'a laboratory test that was sent for is no result': [
    ['lab hba1c ordered', 'lab/hba1c state=ordered'],
    ['lab crp pending, esr 12 mm/h', 'lab/crp state=pending; lab/esr value=12mm/h'],
  ],
  'a day directly after the word for the image is that of the image': [
    ['mri 2025-12-01: 2nd tear full', 'mri/image-date on=2025-12-1; mri/2 tear extent=full'],
    ['xray 2026-03 wb hva 22°', 'xray/image-date on=2026-3; xray/view load=weight-bearing; xray/hva angle=22°'],
    ['mri 2nd tear full 2025-12-01', 'unclear: tear', 'number-without-place'],
    ['2nd 2025-12-01 tender', 'unclear: tenderness', 'number-without-place'],
  ],
  'a word may say again what its value means': [
    ['operation 2nd weil 3 mm shortening', 'operation/2 procedure what=weil osteotomy shortening=3mm'],
    ['operation 2nd weil shortened 3 mm', 'operation/2 procedure what=weil osteotomy shortening=3mm'],
  ],
  'a word that only asserts is kept where it is all that was said': [
    ['plan continue; review 6 weeks', 'plan/review in=6weeks'],
    ['plan continue tape 2nd', 'plan/2 tape'],
  ],
  'an image that is named after its finding opens no section': [
    ['2nd congruent on xray; drawer 3', '2 drawer grade=3', 'word-out-of-place word-out-of-place'],
    ['xray 2nd dislocated; drawer 3', 'xray/2 film-joint state=dislocated', 'word-out-of-place number-without-place'],
  ],
  'the foot as such may be swollen; a joint has its ray': [
    ['right foot red, hot, swollen', 'right redness; hot; swelling'],
    ['right foot red hot swollen', 'right redness; right hot; right foot-swelling'],
    ['right foot hot and swollen', 'right hot; right foot-swelling'],
    ['right foot no swelling', 'unclear: foot-swelling', 'word-out-of-place'],
    ['foot swollen for 3 days, midfoot swelling', 'foot-swelling for=3days; foot-swelling place=midfoot'],
    ['right foot 2nd swollen', 'right 2 swelling'],
    ['2nd swelling moderate', '2 swelling degree=moderate'],
  ],
  'a toe that touches the ground is not lifted': [
    ['second toe straight and touching the ground', '2 no deviation; 2 no lifted'],
    ['2nd does not touch the ground', '2 lifted'],
  ],
  'stiffness in the morning is told beside the pain, too': [
    ['pain 2nd 6/10, morning stiffness 10 minutes', 'pain/2 pain score=6/10; pain/morning-stiffness for=10minutes'],
    ['2nd stiffness mild', '2 stiffness degree=mild'],
  ],
  'a bit says how much, wherever it stands': [
    ['2nd a bit swollen', '2 swelling degree=slight'],
    ['second toe is still a bit of swelling', '2 swelling degree=slight'],
    ['2nd swelling a bit', '2 swelling degree=slight'],
    ['2nd very swollen', '2 swelling'],
    ['2nd not a bit swollen', 'unclear: swelling', 'word-out-of-place'],
  ],
  'what sums up the findings before it, or names a side for them, makes them unclear': [
    [
      'second toe swollen comma tender comma drawer two comma all on the left',
      'unclear: swelling; unclear: tenderness; unclear: drawer',
      'unknown-word word-out-of-place',
    ],
    ['pulses dp 2, pt 2, both on the left', 'unclear: dp; unclear: pt', 'word-out-of-place word-out-of-place'],
    [
      '2nd cold, pale, neither today',
      'unclear: perfusion; unclear: perfusion',
      'unread-red-flag unread-red-flag unknown-word',
    ],
    ['2nd swollen, tender. All this has settled', 'unclear: swelling; unclear: tenderness', 'unknown-word'],
    ['web 3 click, squeeze, all negative', 'unclear: click; unclear: squeeze', 'unknown-word word-out-of-place'],
    ['2nd drawer 2, left', 'unclear: drawer', 'word-out-of-place'],
    ['2nd drawer 2, painful, medial 12°', '2 drawer grade=2; 2 pain; 2 deviation direction=medial angle=12°'],
    ['both feet tender', 'both tenderness'],
  ],
  'another person, another time or a wish holds for the whole statement': [
    ['history wife breathless, calf swollen', 'unclear: chest; unclear: calf', 'unread-red-flag unread-red-flag'],
    ['history husband smokes, diabetic', 'unclear: smoking; unclear: diabetes'],
    ['previously 2nd tender, drawer 2', 'unclear: tenderness; unclear: drawer'],
    ['wants 2nd straight, no pain', 'unclear: deviation; unclear: pain'],
    ['history avoids aspirin, warfarin', 'unclear: antiplatelet; unclear: anticoagulant'],
    ['history lives with husband, smoker', 'history/home with=with a partner; history/smoking status=current'],
  ],
  'what is to come is not done, and what was taken back is not said': [
    ['sutures out in ten days', 'unclear: sutures'],
    ['sutures out', 'sutures state=removed'],
    ['pin removed', 'pin-out'],
    ['2nd drawer 2, wrong foot', 'unclear: drawer'],
    ['plan no antibiotics', 'plan/avoid medicine name=an antibiotic'],
    ['history allergic to antibiotics', 'history/allergy to=an antibiotic'],
    ['plan stop warfarin 5 days before steroid', 'unclear: drug-plan; unclear: steroid'],
  ],
  'a dictated sentence about the patient is no header line': [
    [
      'patient has diabetes comma type two full stop second toe ulcer',
      'diabetes; 2 wound kind=ulcer',
      'word-out-of-place',
    ],
    ['patient refused surgery full stop plan tape second toe', 'plan/2 tape', 'word-out-of-place'],
  ],
  'a tear has a shape, and the insertion is its distal end': [
    [
      'operation 2nd plate torn transverse at the insertion',
      'operation/2 plate-found state=torn shape=transverse place=distal',
    ],
    ['us 2nd longitudinal tear', 'us/2 tear shape=longitudinal'],
  ],
});
