import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/*
 * Turns of phrase of the trade, said after a sentence about the second toe: what each is proposed to mean, and nothing before it is confirmed.
 */
const VISIT = 'visit 2026-03-09 first right';
const BEFORE = 'second toe straight full stop ';

test.each<[string, string[]]>([
  [
    'sore under the second toe joint for about three months',
    ['pain right ray 2: pain present place words=[plantar] for low=3 high=3 unit=months bound=about'],
  ],
  [
    'six months of pain under the second metatarsal head',
    ['history right ray 2: pain present for low=6 high=6 unit=months place words=[head]'],
  ],
  [
    'started about four months ago',
    ['history right foot: onset present on ago={low:4,high:4,unit:months,bound:about}'],
  ],
  ['no history of trauma', ['exam right foot: trigger absent what words=[injury]']],
  ['pain is seven out of ten at its worst', ['pain right foot: pain present score low=7 high=7 unit=/10 "at worst"']],
  ['she rates it six out of ten', ['pain right foot: pain present score low=6 high=6 unit=/10']],
  [
    'she has tried insoles and a met dome without benefit',
    [
      'tried right foot: insert present kind words=[insole]',
      'tried right foot: pad present kind words=[dome] response words=[no-relief]',
    ],
  ],
  [
    "she's had physio for two months which helped a bit",
    [
      'tried right foot: physiotherapy present for low=2 high=2 unit=months response words=[partial] said=[a little better]',
    ],
  ],
  [
    'he has been wearing orthotics for three months with some relief',
    ['tried right foot: insert present kind words=[insole] for low=3 high=3 unit=months response words=[partial]'],
  ],
  ['taping helped', ['tried right foot: tape present response words=[better]']],
  [
    'ibuprofen made no difference',
    ['tried patient: anti-inflammatory present name words=[ibuprofen] response words=[no-relief]'],
  ],
  [
    "there's a moderate effusion of the second mtp joint",
    ['exam right ray 2: swelling present degree words=[moderate] feel words=[effusion]'],
  ],
  ['tender over the plantar plate of the second', ['exam right ray 2: tenderness present place words=[plate]']],
  [
    'exquisitely tender under the second met head',
    ['exam right ray 2: tenderness present degree words=[marked] said=[exquisite] place words=[head]'],
  ],
  ['mildly tender under the third', ['exam right ray 3: tenderness present degree words=[mild] place words=[plantar]']],
  ['tender dorsally as well', ['exam right ray 2: tenderness present place words=[dorsal]']],
  [
    'second mtp drawer grade three and unstable',
    ['exam right ray 2: drawer present grade low=3 high=3 scale=0-4 "unstable"'],
  ],
  ['vertical stress test grade one on the third', ['exam right ray 3: drawer present grade low=1 high=1 scale=0-4']],
  ['third mtp is stable', ['exam right ray 3: mtp present stability words=[stable]']],
  ['the drawer is painful but stable', ['exam right ray 2: drawer present pain words=[painful] "stable"']],
  [
    'positive drawer test of the second mtp joint grade two',
    ['exam right ray 2: drawer present result words=[positive] grade low=2 high=2 scale=0-4'],
  ],
  [
    'third fourth and fifth are stable',
    [
      'exam right ray 3: mtp present stability words=[stable]',
      'exam right ray 4: mtp present stability words=[stable]',
      'exam right ray 5: mtp present stability words=[stable]',
    ],
  ],
  [
    'the other toes are stable',
    [
      'exam right ray 3: mtp present stability words=[stable]',
      'exam right ray 4: mtp present stability words=[stable]',
      'exam right ray 5: mtp present stability words=[stable]',
    ],
  ],
  [
    'second toe deviates medially by fifteen degrees',
    ['exam right ray 2: deviation present direction words=[medial] angle low=15 high=15 unit=°'],
  ],
  ['second toe is drifting laterally', ['exam right ray 2: deviation present direction words=[lateral]']],
  ['fixed flexion deformity of the second pip joint', ['exam right ray 2: pip present rigidity words=[fixed]']],
  [
    'flexible hammer toe of the second',
    ['exam right ray 2: toe-shape present shape words=[hammer] rigidity words=[flexible]'],
  ],
  ['good toe purchase', ['exam right ray 2: paper present result words=[holds]']],
  ['no toe purchase on the second', ['exam right ray 2: paper present result words=[no purchase]']],
  ["she can't hold the paper", ['exam right ray 2: paper present result words=[pulls-out]']],
  ['paper slips out easily', ['exam right ray 2: paper present result words=[pulls-out]']],
  ['paper pull out test failed', ['exam right ray 2: paper present result words=[pulls-out]']],
  [
    'callus under the second and third heads',
    [
      'exam right ray 2: callus present place words=[plantar]',
      'exam right ray 3: callus present place words=[plantar]',
    ],
  ],
  [
    'painful callus under the second metatarsal head',
    ['exam right ray 2: callus present pain words=[painful] place words=[head]'],
  ],
  ['soft corn between the fourth and fifth toes', ['exam right web 4: corn present kind words=[soft]']],
  ['sensation intact to light touch', ['exam right foot: sensation present state words=[normal]']],
  ['good pulses', ['exam right foot: pulses present felt words=[palpable]']],
  [
    'dorsalis pedis and posterior tibial palpable',
    ['exam right foot: dp present felt words=[palpable]', 'exam right foot: pt present felt words=[palpable]'],
  ],
  ['gastrocnemius contracture', ['exam right foot: calf-tightness present']],
  ['arches are flat', ['exam right foot: arch present height words=[flat]']],
  ['she can do a single heel raise', ['exam right foot: heel-rise present result words=[able]']],
  ['walks with a limp', ['exam right foot: gait present kind words=[limping]']],
  ['k wire still in place', ['exam right foot: pin-in-place present']],
  [
    'mtp moves forty degrees up and ten degrees down',
    [
      'exam right ray 2: mtp-dorsiflexion present angle low=40 high=40 unit=°',
      'exam right ray 2: mtp-plantarflexion present angle low=10 high=10 unit=°',
    ],
  ],
  [
    'weight bearing films show a long second metatarsal',
    [
      'xray right foot: view present load words=[weight-bearing]',
      'xray right ray 2 metatarsal: protrusion present than words=[long]',
    ],
  ],
  [
    'second metatarsal three millimetres longer than the first',
    ['xray right ray 2: protrusion present than words=[longer] by low=3 high=3 unit=mm'],
  ],
  ['joint congruent', ['xray right ray 2: film-joint present state words=[congruent]']],
  ['x-ray shows no arthritis', ['xray right foot: image-other absent what words=[osteoarthritis]']],
  [
    'mri shows a partial tear of the second plantar plate laterally',
    ['mri right ray 2: tear present extent words=[partial] place words=[lateral]'],
  ],
  [
    'mri shows a complete tear of the plantar plate at the second mtp joint',
    ['mri right ray 2: tear present extent words=[full]'],
  ],
  ['m r i confirms a high grade tear of the second plantar plate', ['mri right ray 2: tear present "high grade"']],
  [
    'ultrasound shows a five millimetre neuroma in the third web space',
    ['us right web 3: web-lesion present what words=[neuroma] size low=5 high=5 unit=mm'],
  ],
  ['synovitis of the second mtp joint on ultrasound', ['us right ray 2: image-other present what words=[synovitis]']],
  [
    'plan is taping the second toe in plantar flexion for eight weeks',
    ['plan right ray 2: tape present kind words=[plantarflexed] for low=8 high=8 unit=weeks'],
  ],
  ['tape the toe down for six weeks', ['plan right foot: tape present for low=6 high=6 unit=weeks']],
  [
    'plan to tape for six weeks and a stiff soled shoe',
    [
      'plan right foot: tape present for low=6 high=6 unit=weeks',
      'plan right foot: insert present kind words=[stiff sole]',
    ],
  ],
  ['avoid heels', ['plan patient: restriction present from words=[heels]']],
  ['off running for six weeks', ['plan patient: restriction present from words=[running] for low=6 high=6 unit=weeks']],
  ['refer to physiotherapy', ['plan patient: referral present to words=[physiotherapy]']],
  ['get an m r i', ['plan right foot: image present by words=[mri]']],
  ['request an ultrasound of the second mtp joint', ['plan right ray 2: image present by words=[us]']],
  ['review in clinic in eight weeks', ['plan patient: review present in low=8 high=8 unit=weeks']],
  ['see her back in three months', ['plan patient: review present in low=3 high=3 unit=months']],
  ['follow up six weeks', ['plan patient: review present in low=6 high=6 unit=weeks']],
  ['list for surgery', ['plan patient: listing present']],
  ['start toe exercises', ['plan right foot: physiotherapy present']],
])('%s', (said, facts) => {
  const known = [...factsOf(VISIT, BEFORE + said), ...factsOf(VISIT, BEFORE)];
  const text = convertedText(VISIT, BEFORE + said);
  expect(factsOf(VISIT, text).sort()).toEqual(factsOf(VISIT, BEFORE + said).sort());
  expect(factsOf(VISIT, confirmed(text)).filter((fact) => !known.includes(fact))).toEqual(facts);
});
