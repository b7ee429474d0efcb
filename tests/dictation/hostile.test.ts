import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { factsOf } from './passages.ts';

/*
 * What a speaker may say that a careless reader would take for a finding: denials, doubts, other people, other times and feet, conditions,
 * corrections, lists of what was only spoken of. The facts are those that are clear as said, or once every proposal is confirmed.
 */
const VISIT = 'visit 2026-03-09 first right';
function understood(said: string): string[] {
  const facts = [...factsOf(VISIT, said), ...factsOf(VISIT, confirmed(convertedText(VISIT, said)))];
  return [...new Set(facts)].sort();
}

test.each([
  'her mother has diabetes and gout second toe drawer grade two',
  'his sister had a bunion comma hammer toe comma drawer two',
  'she had swelling of the second toe last year which has gone',
  'the second toe was swollen last week',
  'second toe used to be swollen comma tender under the joint',
  'denies numbness comma burning comma night pain',

  'we talked about tape for six weeks and a stiff insole',
  'risks discussed comma infection comma stiffness comma floating toe comma recurrence',
  'she is worried about infection comma fever comma a clot',
  'watch for pus comma redness comma a cold toe',
  'return if fever comma chest pain comma calf swelling',
  'she would like surgery but i would rather tape the second toe',
  'second toe drawer grade two comma i mean the third toe',
  'second toe swollen scratch that third toe',
  'the other foot is swollen comma drawer two',
  'second toe drawer two on the other side',
  'second toe hardly swollen comma drawer barely one',
  "i can't feel a drawer second toe",
  'could not find any swelling second toe',
  'second toe drawer maybe two comma perhaps three',
  'possible swelling second toe comma query drawer two',
  'second toe more swollen than the third',
  'worse than last time comma drawer two',
  'second toe swelling has gone down comma tenderness resolved',
  'pain was under the second toe joint before the injection',
  'came on gradually after her last operation comma then resolved',
  'she has not tried taping for six weeks',
  "doesn't smoke ten a day any more",
  'smoker until last year',
  'allergic to nothing comma penicillin is fine',
  'grade two drawer third toe grade one second toe',
  'drawer two second toe third toe',
  'ultrasound full thickness tear of the second plate cannot be excluded',
  'second toe dislocated last night comma reduced in casualty',
  'plan if no better in six weeks operation second toe weil osteotomy',
  'review in six weeks or sooner if worse',
  'i did not plan an operation second toe weil',
  'she stopped taping after six weeks comma no relief',
  'cannot hold the paper because of a stroke',
  'paper holds comma no it pulls out',
  'ankle dorsiflexion ten degrees second toe',
  'heel pain for six months',
  'stage two breast cancer',
  'one in five risk of a floating toe',
  'if the second toe is swollen comma drawer two comma plan operation',
  'if no better in six weeks comma plan operation second toe weil osteotomy',
  'she never had physio',
  'her mother had physio for two months which helped',
  'she had taping booked but did not attend',
  'taping helped her sister',
  'if taping helped carry on',
  'we did not tape the toe',
  'we decided not to list for surgery',
  'she was told to avoid heels',
  'does not need an mri',
  'she needs an mri but declines',
  'the other toes are not stable',
  'third mtp is not stable',
  'pain was seven out of ten at its worst',
  'pain started two weeks ago but settled',
  'she does not rate it six out of ten',
  'rates it six out of ten before the injection',
  'paper slips out on the left only',
  'no redness or discharge was seen last time',
  'pin still in place on the x-ray from march',
  'she cannot do a single heel raise',
  'not able to do a single heel raise',
  'wound not well healed',
  'no high grade tear of the second plantar plate',
  'high grade tear of the second plantar plate excluded',
  'get an mri only if worse',
  "i don't think we need to get an mri",
  'follow up six weeks was missed',
  'refer to physiotherapy was declined',
  'has been wearing orthotics since childhood no relief from new ones',
  'there is no swelling and there never was',
  'she has had no cortisone',
  'had a cortisone injection into the other foot two months ago',
  'second third and fourth are not all stable',
  'on the left second toe drawer two on the right normal',
])('nothing is understood of: %s', (said) => {
  expect(understood(said)).toEqual([]);
});

test.each([
  [
    'second toe tender under the joint but not swollen',
    ['exam right ray 2: swelling absent', 'exam right ray 2: tenderness present place words=[plantar]'],
  ],
  ['second toe is not really tender under the joint', ['exam right ray 2: tenderness absent place words=[plantar]']],
  [
    'not diabetic comma not on metformin',
    ['exam patient: diabetes absent', 'exam patient: medicine absent name words=[metformin]'],
  ],
  [
    'numbness in the second and fourth toes',
    ['exam right ray 2: numbness present', 'exam right ray 4: numbness present'],
  ],
  ['denies any injury swelling', ['exam right foot: trigger absent what words=[injury]']],
  ['stop taping comma start stretching', ['plan right foot: stretching present']],
  [
    'tender in the third web space not the second',
    ['exam right web 2: tenderness absent', 'exam right web 3: tenderness present'],
  ],
  [
    'drawer grade two full stop scratch that full stop third toe drawer grade one',
    ['exam right ray 3: drawer present grade low=1 high=1 scale=0-4'],
  ],
  ['knee swollen comma second toe straight', ['exam right ray 2: deviation absent']],
  ['no click in the second web space comma click in the third', ['exam right web 2: click absent']],
  [
    'the door test on the second is grade two and it reproduces her pain',
    ['exam right ray 2: drawer present grade low=2 high=2 scale=0-4 pain words=[painful]'],
  ],
])('no more is understood than what was said: %s', (said, facts) => {
  expect(understood(said)).toEqual(facts);
});
