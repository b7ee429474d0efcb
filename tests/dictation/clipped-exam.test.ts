import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/* Clipped phrases of an exam, as surgeons dictate them, each with the lines that its speaker would have typed: what they mean once confirmed. */
const VISIT = 'visit 2026-03-09 first right';
const confirmedOf = (said: string): string[] =>
  [...new Set(factsOf(VISIT, confirmed(convertedText(VISIT, said))))].sort();
const typed = (text: string): string[] => [...new Set(factsOf(VISIT, text))].sort();

test.each([
  // A ray by its ordinal alone.
  ['third and fourth stable', '3rd-4th mtp stable'],
  ['purchase third weak comma the others hold the paper', '3rd purchase weak\nothers paper holds'],
  ['grip second gone', '2nd purchase lost'],
  ['corn fourth', '4th corn'],
  ['tender second and third', '2nd-3rd tender'],
  ['drawer third still grade one as before', '3rd drawer 1 "as before"'],
  ['second swollen too stable', '2nd swollen; 2nd mtp stable'],
  ['third m t p tender but stable', '3rd tender; 3rd mtp stable'],
  ['drawer second gone from two to one', '2nd drawer 1 "was 2"'],
  ['second drawer firm', '2nd mtp stable "drawer firm"'],
  ['transfer pain third and fourth heads', '3rd-4th transfer-pain'],
  // Rays by their numbers.
  ['callus under three and four', '3rd-4th callus plantar'],
  ['callosity under two to four', '2nd-4th callus plantar'],
  ['m t p joints not tender two to five', '2nd-5th not tender'],
  ['m t p joints stable two to four', '2nd-4th mtp stable'],
  ['toes straight two to five', '2nd-5th straight'],
  ['heads tender two to four', '2nd-4th tender head'],
  ['metatarsal heads two to four tender plantar', '2nd-4th tender head plantar'],
  ['claw toes two to five rigid', '2nd-5th claw rigid'],
  ['drawer two three four negative', '2nd-4th drawer negative'],
  ['lachman three to five negative', '3rd-5th drawer negative'],
  ['ray two drawer grade two ray three stable', '2nd drawer 2\n3rd mtp stable'],
  // Webs.
  ['mulder negative second and third', 'webs 2-3 click negative'],
  ['mulder silent third', 'web 3 click negative'],
  ['mulders doubtful third web', 'web 3 click equivocal'],
  ['squeeze third positive', 'web 3 squeeze positive'],
  ['click second and third negative', 'webs 2-3 click negative'],
  ['webs two three four squeeze free', 'webs 2-4 squeeze negative'],
  ['webs clear', 'webs 1-4 fine'],
  ['cleft two three numb', 'web 2 numb'],
  ['three four cleft numb', 'web 3 numb'],
  // The great toe.
  ['hallux no purchase', '1st purchase lost'],
  ['big toe purchase weak', '1st purchase weak'],
  ['big toe still numb', '1st numb'],
  ['hallux dorsiflexion sixty', '1st mtp dorsiflexion 60°'],
  ['hallux straight motion free', '1st straight; 1st rom full'],
  ['hallux underriding the second toe', '2nd overlap hallux "hallux under"'],
  // Feeling.
  ['sensation third toe dull', '3rd sense reduced'],
  ['light touch reduced second toe lateral border', '2nd sense reduced "lateral border"'],
  ['sensation tip of fourth absent', '4th sense lost "tip"'],
  ['toes two and three dull to light touch', '2nd-3rd sense reduced "to light touch"'],
  [
    'monofilament absent under heads two and three comma felt at four and five',
    '2nd-3rd sense lost "monofilament not felt"\n4th-5th sense normal "monofilament felt"',
  ],
  ['monofilament felt heads one to five', '1st-5th sense normal "monofilament felt"'],
  ['vibration reduced hallux', 'vibration reduced "hallux"'],
  ['sensation tip of second reduced no sorry third toe reduced', '3rd sense reduced'],
  ['tingling fourth toe on long walks', '4th tingling "on long walks"'],
  // Motion.
  [
    'second m t p stiff comma forty up comma ten down',
    '2nd mtp stiff; 2nd mtp dorsiflexion 40°; 2nd mtp plantarflexion 10°',
  ],
  ['motion third thirty up fifteen down painless', '3rd dorsiflexion 30° painless; 3rd plantarflexion 15° painless'],
  [
    'ankle dorsiflexion minus five knee straight comma five knee bent',
    'ankle dorsiflexion -5° knee straight; ankle dorsiflexion 5° knee bent',
  ],
  // Vessels.
  ['pulses both there', 'pulses good'],
  ['tibial pulse not felt through the swelling', 'pt unable "not felt through the swelling"'],
  ['dorsalis pedis not palpable because of oedema', 'dp unable "not palpable because of oedema"'],
  // Pain and callus.
  ['new ache under the third head', 'pain 3rd head "new"'],
  ['callus third head starting', '3rd callus head "starting"'],
  ['tender over the third metatarsal shaft comma not at the joint', '3rd shaft tender "not at the joint"'],
  ['third web pain down eight to two', 'web 3 pain 2/10 was 8/10'],
  // What goes on after a comma, and what is said beside a result.
  [
    'second m t p still swollen comma less than before comma drawer grade one',
    '2nd swelling "less than before"; 2nd drawer 1',
  ],
  ['second toe swollen since march drawer grade two painful', '2nd swelling "since march"; 2nd drawer 2 painful'],
  ['drawer all negative', '2nd-5th drawer negative'],
  ['drawer stable third to fifth', '3rd-5th mtp stable'],
  ['clawing all toes flexible', '2nd-5th claw flexible'],
  ['second toe crossover fixed', '2nd overlap "fixed"'],
  ['second toe not touching floor by two millimetres', '2nd lifted 2 mm'],
  ['callus first and second heads', '1st-2nd callus head'],
  ['third metatarsal neck tender', '3rd metatarsal tender "neck"'],
  ['sesamoid tender medial', '1st tender medial sesamoid'],
  ['lateral forefoot pain burning fourth web numb fifth toe', 'pain forefoot "lateral"\nweb 4 burning\n5th numb'],
  [
    'sensation reduced stocking vibration absent ankles monofilament six of ten',
    'sensation reduced "stocking"; vibration absent to ankles; monofilament 6/10',
  ],
  ['dorsalis pedis two plus comma posterior tib one plus', 'dp 2+; pt 1+'],
  ['erythema and warmth first m t p', '1st redness; 1st warm joint'],
  // Both feet.
  [
    'drawer second right two left zero third right one left zero',
    'right 2nd drawer 2\nleft 2nd drawer 0\nright 3rd drawer 1\nleft 3rd drawer 0',
  ],
  ['drawer second right two left zero', 'right 2nd drawer 2\nleft 2nd drawer 0'],
  ['second third and fourth toes clawed flexible', '2nd 3rd 4th claw flexible'],
  // Images and the laboratory.
  ['x ray hallux valgus angle ten comma m t p joints congruent', 'xray hva 10; 2nd-5th congruent'],
  ['m r i full thickness tear lateral half second plate', 'mri 2nd tear full lateral'],
  ['m r i third plate partial thickness tear lateral', 'mri 3rd tear partial lateral'],
  [
    'ultrasound third web neuroma six by nine millimetres comma second web small bursa only',
    'ultrasound web 3 neuroma 6 mm "by 9 mm"; web 2 bursa "small only"',
  ],
  ['ultrasound today seven millimetre lesion third web fits neuroma', 'ultrasound web 3 lesion 7 mm "fits neuroma"'],
  ['ultrasound synovitis second and third doppler positive', 'ultrasound 2nd-3rd synovitis "doppler positive"'],
  ['m r i marrow oedema second shaft no fracture line', 'mri no fracture; 2nd bone oedema shaft'],
  ['x ray clean', 'xray unremarkable'],
  ['x ray hardware intact no lucency', 'xray hardware in place'],
  ['hallux valgus angle thirty two comma intermetatarsal fourteen', 'xray hva 32°; ima 14°'],
  ['first met short and raised on standing film', 'xray 1st shorter "and raised on standing film"'],
  ['rheumatoid factor and c r p sent', 'lab sent rheumatoid factor crp'],
])('%s', (said, lines) => {
  const plain = (facts: readonly string[]) => facts.map((fact) => fact.replace(/ ".*$/, '')).sort();
  expect(plain(confirmedOf(said))).toEqual(plain(typed(lines)));
});
