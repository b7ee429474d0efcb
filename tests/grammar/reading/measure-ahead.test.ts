import { checkRules } from './rules.ts';

checkRules({
  'a measure with its unit, or a called grade, directly before its finding': [
    ['2nd 3 mm lifted, 12° medial', '2 lifted by=3mm; 2 deviation angle=12° direction=medial'],
    ['2nd drawer 2, 3 mm lifted', '2 drawer grade=2; 2 lifted by=3mm'],
    ['2nd ~10-15° medial', '2 deviation angle=~10-15° direction=medial'],
    ['2nd 12 degrees of medial deviation', '2 deviation direction=medial angle=12°'],
    ['2nd grade 2 drawer', '2 drawer grade=2'],
    ['2nd gr 2 drawer', '2 drawer grade=2'],
    ['2nd two plus drawer', '2 drawer grade=2'],
    ['2nd three millimetres lifted', '2 lifted by=3mm'],
    ['3rd 2+ drawer painful', '3 drawer grade=2 pain=painful'],
    ['xray 2nd 4 mm longer', 'xray/2 protrusion by=4mm than=longer'],
    ['us web 3 6 mm neuroma', 'us/web 3 web-lesion size=6mm what=neuroma'],
    ['mri 2nd 6 mm tear full', 'mri/2 tear size=6mm extent=full'],
  ],
  'and near misses: a bare number, a denial, a second value, a finding that takes none': [
    ['2nd 2 drawer', 'unclear: drawer', 'number-without-place'],
    ['2nd no 3 mm lifted', 'unclear: lifted', 'word-out-of-place number-without-place unknown-word'],
    ['2nd 3 mm lifted 4 mm', 'unclear: lifted', 'number-without-place unknown-word'],
    ['2nd 3 mm tender', 'unclear: tenderness', 'number-without-place unknown-word'],
    ['2nd 3 mm', '', 'number-without-place unknown-word'],
    ['grade 2 2nd drawer', 'unclear: drawer', 'word-out-of-place number-without-place'],
    ['mri grade 2 tear 2nd', 'unclear: tear', 'word-out-of-place number-without-place'],
    ['2nd tender 3 mm lifted', 'unclear: tenderness; unclear: lifted', 'number-without-place unknown-word'],
  ],
  'what the one treatment of a statement did, after a comma': [
    ['tried tape 6 weeks, no relief', 'tried/tape for=6weeks response=no-relief'],
    ['tried tape 6 weeks well kept, helped', 'tried/tape for=6weeks kept=well kept response=better'],
    ['block web 2 1 ml lidocaine, complete relief', 'web 2 block volume=1ml agent=lidocaine response=complete'],
    [
      'tried tape 6 weeks, pad 4 weeks, no relief',
      'tried/tape for=6weeks; unclear: pad',
      'word-out-of-place word-out-of-place',
    ],
    ['tried blorp tape, helped', 'unclear: tape', 'unknown-word word-out-of-place'],
    ['plan tape 6 weeks, daily', 'plan/tape for=6weeks', 'word-out-of-place'],
  ],
  'the day of an image beside its view and its reader': [
    [
      'xray R wb 2026-03-01 hva 20',
      'xray/right view load=weight-bearing; xray/image-date on=2026-3-1; xray/right hva angle=20°',
    ],
    [
      'mri read by radiologist 2026-02-01: 2nd tear full',
      'mri/image-reader by=radiologist; mri/image-date on=2026-2-1; mri/2 tear extent=full',
    ],
    ['mri 2nd tear full 2025-12-01', 'unclear: tear', 'number-without-place'],
  ],
  'the rest of the exam in the words of the trade': [
    ['stand heel valgus 5', 'stand/hindfoot alignment=valgus angle=5°'],
    ['stand hindfoot neutral', 'stand/hindfoot alignment=neutral'],
    ['no heel varus', 'no hindfoot alignment=varus'],
    ['callus under 2nd and 3rd heads', '2,3 callus place=head'],
    ['2nd pf strength 4/5', '2 toe-strength muscle=flexors grade=4/5'],
    ['2nd flexor strength reduced', '2 toe-strength muscle=flexors state=weak'],
    ['history nka', 'history/no allergy to=any drug'],
    ['history progressive', 'history/course direction=worse'],
    ['history previous surgery 2nd fusion 2015', 'history/2 earlier-surgery what=fusion on=2015'],
    ['heel tender', 'unclear: tenderness', 'word-out-of-place'],
  ],
});
