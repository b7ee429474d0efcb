import { checkRules } from './rules.ts';

// Expected values: the reading rules of the language ("Sources of meaning").
checkRules({
  'a sign alone means present': [
    ['2nd tender', '2 tenderness'],
    ['2nd swollen', '2 swelling'],
    ['2nd swelling', '2 swelling'],
    ['2nd lifted', '2 lifted'],
    ['web 2 click', 'web 2 click'],
  ],
  'a test without its result is incomplete, never present': [
    ['2nd drawer', 'unclear: drawer'],
    ['2nd paper', 'unclear: paper'],
    ['2nd pip', 'unclear: pip'],
    ['compression', 'unclear: compression'],
    ['dp', 'unclear: dp'],
    ['2nd stage', 'unclear: stage'],
    ['plan review', 'unclear: review'],
    ['2nd drawer, tender', 'unclear: drawer; 2 tenderness'],
    ['2nd drawer, paper holds', 'unclear: drawer; 2 paper result=holds'],
  ],
  'abbreviations and spoken forms mean the same finding': [
    ['2nd ttp', '2 tenderness'],
    ['2nd TTP', '2 tenderness'],
    ['2nd NT', '2 no tenderness'],
    ['2nd Lachman 2', '2 drawer grade=2'],
    ['2nd vertical stress test 2', '2 drawer grade=2'],
    ['web 2 Mulder', 'web 2 click'],
    ['hv mild', 'hallux-valgus degree=mild'],
    ['2nd erythema', '2 redness'],
  ],
  'a section selects the legal findings': [
    ['xray wb', 'xray/view load=weight-bearing'],
    ['xray hva 22°, ima 12°', 'xray/hva angle=22°; xray/ima angle=12°'],
    ['us 2nd tear partial distal lateral 40%', 'us/2 tear extent=partial place=distal,lateral share=40%'],
    ['mri 2nd tear full', 'mri/2 tear extent=full'],
    ['pain 2nd plantar 6/10 push-off', 'pain/2 pain place=plantar score=6/10 character=push-off'],
    ['tried met-pad 4 weeks no-relief', 'tried/pad for=4weeks response=no-relief'],
    ['tried steroid web 2 2026-01', 'tried/web 2 steroid on=2026-1'],
    ['stand 2nd lifted 3 mm; gap 2-3', 'stand/2 lifted by=3mm; stand/gap between=2-3'],
  ],
  'a finding of another section is reported, not read': [
    ['xray drawer 2', '', 'word-out-of-place number-without-place'],
    ['2nd hva 22°', '', 'word-out-of-place number-without-place'],
    ['exam tape', '', 'word-out-of-place'],
    ['tried drawer 2', '', 'word-out-of-place number-without-place'],
  ],
  'a statement ends at a semicolon or a stop': [
    ['2nd drawer 2; 3rd drawer 1', '2 drawer grade=2; 3 drawer grade=1'],
    ['2nd drawer 2. 3rd drawer 1.', '2 drawer grade=2; 3 drawer grade=1'],
    ['2nd tender; swelling', '2 tenderness; 2 swelling'],
    ['stand 2nd lifted 3.5 mm. gap 2-3', 'stand/2 lifted by=3.5mm; stand/gap between=2-3'],
  ],
  'a statement ends at a spoken line command': [
    ['2nd drawer 2 new line 3rd drawer 1', '2 drawer grade=2; 3 drawer grade=1'],
    ['2nd tender new line 3rd swollen', '2 tenderness; 3 swelling'],
    ['2nd no redness next line 3rd redness', '2 no redness; 3 redness'],
  ],
  'a statement ends at a strong section word': [
    ['2nd drawer 2 plan stiff-insert', '2 drawer grade=2; plan/insert'],
    ['2nd drawer 2 xray hva 22', '2 drawer grade=2; xray/hva angle=22°'],
    ['hva 22 xray', '', 'word-out-of-place number-without-place'],
  ],
  'a section word that is also a common word opens a section only at the start of a statement': [
    ['us 2nd tear', 'us/2 tear'],
    ['2nd tender. us 2nd tear', '2 tenderness; us/2 tear'],
    ['2nd tender; pain 2nd 6/10', '2 tenderness; pain/2 pain score=6/10'],
    ['standing 2nd lifted', 'stand/2 lifted'],
  ],
  'a statement ends at a subject that no open slot takes': [
    ['2nd drawer 2 3rd drawer 1', '2 drawer grade=2; 3 drawer grade=1'],
    ['2nd tender plantar 3rd tender none', '2 tenderness place=plantar; 3 no tenderness'],
    ['2nd paper weak 3rd paper holds web 2 click', '2 paper result=weak; 3 paper result=holds; web 2 click'],
  ],
  'a quote belongs to its finding and never crosses the line end': [
    ['pain 2nd 6/10 "worst barefoot on tile"', 'pain/2 pain score=6/10 "worst barefoot on tile"'],
    ['2nd tender "drawer 2, 3rd swollen"', '2 tenderness "drawer 2, 3rd swollen"'],
    ['2nd tender, "drawer 3 previously"', '2 tenderness'],
    ['2nd tender, "worst in the', '2 tenderness', 'open-quote'],
    ['2nd tender "worst; drawer 2', '2 tenderness "worst; drawer 2"', 'open-quote'],
  ],
  'a comment starts with two slashes': [
    ['2nd tender // drawer 2', '2 tenderness'],
    ['// 2nd tender', ''],
    ['2nd tender //drawer 2', '2 tenderness'],
    ['2nd tender // zzq', '2 tenderness'],
  ],
  'a number sign means fracture and never starts a comment': [
    ['2nd tender # drawer 2', 'unclear: tenderness; unclear: drawer', 'word-out-of-place'],
    ['# 2nd tender', 'unclear: tenderness', 'word-out-of-place'],
  ],
  'no slot has a default value': [
    ['2nd swollen', '2 swelling'],
    ['2nd deviated', '2 deviation'],
    ['us 2nd tear', 'us/2 tear'],
    ['tried tape', 'tried/tape'],
  ],
});
