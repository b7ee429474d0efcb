import type { Chance } from './chance.ts';

/** What is typed between two patients, right in itself. */
const HURRIED = {
  exam: [
    'others nad',
    'webs quiet',
    'NV ok',
    '4th-5th normal',
    'MTPs 4-5 NT',
    'gait antalgic',
    'calf tightness',
    'no callus',
    'callus under 2nd',
    'skin ok',
    'heel rise ok',
    'no hot joint, afebrile',
    'laxity, beighton 5',
    'pes planus mild',
    '2nd df 40, pf 10',
    'toe strength 4/5',
  ],
  history: [
    'history  getting worse',
    'history  "GP gave insoles"',
    'history  hypertension, otherwise well',
    'history  fh bunions',
    'history  wants to run again',
    'history  no change since last time',
    'history  mother had bunions done',
    'history  on feet all day at work',
  ],
  plan: [
    'plan     physio for calf stretches',
    'plan     letter to GP',
    'plan     d/w patient options',
    'plan     bloods',
    'plan     rv 6/52 with films',
    'plan     continue',
    'plan     see again if worse',
  ],
} as const;

/** What nobody meant, or did not think of. */
const SLIPS: readonly ((side: 'R' | 'L') => string)[] = [
  (side) => `${side === 'R' ? 'L' : 'R'}4 NT`,
  () => 'plan     steroid web 2',
  () => 'plan     ibuprofen 2 weeks',
  () => '2nd drawer 1',
  () => 'xray wb  hva 22 mm',
  () => 'history  warfarin',
  () => 'plan     boot 6 weeks',
  () => '2nd tneder plantar',
  () => 'stage    2nd 3',
  () => 'aofas    41',
  () => 'plan     tape 4th',
  () => 'webs 2-3 click none, compression sore',
  () => 'history  "rings on 01632 960144"',
  () => 'plan     operation 2nd weil',
  () => '2nd drawer ?1',
  () => '3rd drawer was 1',
];

/** Adds, now and then, a hurried line or a slip to the lines of a visit. */
export function inHurry(chance: Chance, side: 'R' | 'L', lines: readonly string[]): string[] {
  const added = [...lines];
  const plan = lines.findIndex((line) => line.startsWith('plan'));
  const beforePlan = (line: string) => added.splice(plan < 0 ? added.length : plan, 0, line);
  if (chance.likely(0.25)) beforePlan(chance.pick(HURRIED.exam));
  if (chance.likely(0.15)) added.unshift(chance.pick(HURRIED.history));
  if (chance.likely(0.12)) added.push(chance.pick(HURRIED.plan));
  if (chance.likely(0.12)) {
    const slip = chance.pick(SLIPS)(side);
    if (slip.startsWith('plan')) added.push(slip);
    else if (slip.startsWith('history')) added.unshift(slip);
    else beforePlan(slip);
  }
  return added;
}
