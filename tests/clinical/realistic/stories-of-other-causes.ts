import { footLines, type Pen, rayLine } from './writing.ts';

/** A web neuroma beside stable joints: shoe, image, an injection, sometimes an excision. */
export function web(pen: Pen): void {
  const { chance } = pen;
  const space = chance.pick([3, 3, 2]);
  const rays = [space, space + 1];
  const stable = rays.map((ray) =>
    rayLine(chance, ray, { tender: 'none', swollen: 'none', drawer: 0, drift: 'straight', paper: 'holds' }, 0.15),
  );
  pen.visit(0, 'first', [
    `history  onset gradual ${chance.whole(3, 24)} months; trigger shoes`,
    `pain     web ${space} ${chance.whole(4, 8)}/10 ${chance.pick(['burning', 'sharp'])}`,
    chance.pick(['tried    insoles 2 months no-relief', 'tried    none', '']),
    ...stable,
    `web ${space}    click ${chance.pick(['painful', 'present'])}, squeeze painful${chance.maybe(0.5, ', numbness mild')}`,
    chance.maybe(0.7, 'compression painless'),
    chance.maybe(0.7, 'sense normal'),
    chance.maybe(0.7, 'pulses palpable'),
    'plan     "wide shoe"; met-pad; review in 3 months',
  ]);
  pen.visit(13, 'review', [
    'tried    met-pad 3 months some relief',
    `pain     web ${space} ${chance.whole(3, 6)}/10 burning`,
    ...stable,
    `web ${space}    click painful`,
    `us       web ${space} neuroma ${chance.whole(5, 10)} mm`,
    `plan     ${chance.pick([`steroid web ${space}`, `block web ${space}`, `steroid web ${space} us-guided`])}; review in 6 weeks`,
  ]);
  pen.visit(6, 'review', [
    `tried    steroid web ${space} ${pen.month(-20)} ${chance.pick(['better', 'some relief', 'no-relief'])}`,
    `pain     web ${space} ${chance.whole(1, 5)}/10`,
    ...stable,
    `web ${space}    click ${chance.pick(['painful', 'painless'])}`,
    `plan     review in 3 months`,
  ]);
  if (chance.likely(0.4))
    pen.visit(chance.pick([8, 16]), 'preop', [
      `pain     web ${space} 6/10 burning`,
      ...stable,
      `web ${space}    click painful`,
      chance.maybe(0.8, 'sense normal'),
      'pulses   palpable',
      `plan     operation web ${space} neuroma excision`,
    ]);
}

/** Web signs beside an unstable joint. */
export function webAndPlate(pen: Pen): void {
  const { chance } = pen;
  const joint = { tender: 'plantar', swollen: 'mild', drawer: 2, drift: 'medial', paper: 'weak' } as const;
  pen.visit(0, 'first', [
    `history  onset gradual ${chance.whole(3, 12)} months`,
    'pain     2nd plantar 6/10; pain web 2 4/10 burning',
    `tried    steroid web 2 ${pen.month(-120)} ${chance.pick(['some relief', 'no-relief'])}`,
    rayLine(chance, 2, joint),
    rayLine(chance, 3, { tender: 'none', drawer: 0, drift: 'straight' }),
    'web 2    click painful, squeeze painful',
    ...footLines(chance, 0.3).slice(1),
    `us       2nd tear partial; web 2 ${chance.pick(['thickening 6 mm', 'neuroma 7 mm', 'bursitis'])}`,
    'plan     tape 2nd 8 weeks; block web 2; no steroid; review in 8 weeks',
  ]);
  pen.visit(8, 'review', [
    `tried    tape 2nd 8 weeks daily ${chance.pick(['better', 'some relief'])}; block web 2 relief ${chance.whole(0, 40)}%`,
    'pain     2nd plantar 3/10',
    rayLine(chance, 2, joint),
    'web 2    click painless',
    'plan     tape 2nd 4 weeks; review in 6 weeks',
  ]);
}

/** Inflammatory arthritis of both feet. */
export function inflammatory(pen: Pen): void {
  const { chance } = pen;
  pen.visit(
    0,
    'first',
    [
      `history  onset gradual ${chance.whole(2, 8)} months; morning-stiffness ${chance.pick([45, 60, 90])} minutes${chance.maybe(0.5, '; no fever')}`,
      'right',
      `pain     plantar ${chance.whole(4, 7)}/10 aching rest`,
      `2nd-4th  swollen ${chance.pick(['mild', 'moderate'])}, tender plantar, drawer ${chance.pick([0, 0, 1])}, straight`,
      'left',
      '2nd-3rd  swollen mild, tender plantar, drawer 0, straight',
      'both',
      'compression sore',
      'sense    normal',
      'pulses   palpable',
      'plan     bloods; "rheumatology this month"; no operation; review in 6 weeks',
    ],
    'both',
  );
  pen.visit(
    6,
    'review',
    [
      `lab      crp ${chance.whole(12, 40)} mg/L; anti-ccp ${chance.pick(['positive', 'negative'])}`,
      'history  methotrexate',
      'both',
      'compression sore',
      'plan     stiff-insert; review in 3 months',
    ],
    'both',
  );
  pen.visit(13, 'review', [
    'history  methotrexate; no morning-stiffness',
    'pain     none',
    '2nd-4th  swelling none, NT, drawer 0, straight',
    'plan     review in 6 months',
  ]);
}

/** Stress injury of a metatarsal. */
export function stress(pen: Pen): void {
  const { chance } = pen;
  const ray = chance.pick([2, 3]);
  const name = ray === 2 ? '2nd' : '3rd';
  pen.visit(0, 'first', [
    `history  onset gradual ${chance.whole(2, 5)} weeks; trigger load-rise; activity running`,
    `pain     ${name} ${chance.whole(5, 8)}/10`,
    rayLine(chance, ray, { tender: 'shaft', swollen: 'mild', drawer: 0, drift: 'straight', paper: 'holds' }),
    ...footLines(chance, 0.3),
    'xray wb  "no fracture line yet"',
    `plan     boot 4 weeks; mri ${name}; review in 3 weeks${chance.maybe(0.4, ' "no falls, no clot before"')}`,
  ]);
  pen.visit(3, 'review', [
    `tried    boot 3 weeks daily better`,
    `pain     ${name} 2/10`,
    rayLine(chance, ray, { tender: 'shaft', swollen: 'none' }),
    `mri      ${name} stress reaction`,
    'plan     boot 3 weeks; bloods vitamin d; review in 4 weeks',
  ]);
  pen.visit(1, 'phone', ['lab      vitamin d 31 nmol/L', 'plan     "vitamin d by the GP"; review in 3 weeks']);
  pen.visit(3, 'review', ['pain     none', `${name}      NT, no swelling`, 'plan     "graded return to running"']);
}

/** A sudden injury, seen early and again. */
export function injured(pen: Pen): void {
  const { chance } = pen;
  const ago = chance.whole(3, 14);
  pen.visit(0, chance.pick(['first', 'emergency']), [
    `history  injury ${pen.date(-ago)} "${chance.pick(['pushed off at football', 'stubbed on a step', 'landed on the forefoot'])}"`,
    `pain     2nd plantar ${chance.whole(6, 9)}/10`,
    rayLine(chance, 2, { swollen: 'moderate', tender: 'plate', drawer: 2, drift: 'medial' }),
    rayLine(chance, 3, { tender: 'none', drawer: 0, drift: 'straight' }),
    'toe-colour 2nd pink',
    chance.maybe(0.7, 'sense normal'),
    chance.maybe(0.8, 'pulses palpable'),
    'xray wb  2nd congruent "no fracture"',
    'plan     tape 2nd; postop-shoe; mri 2nd; review in 2 weeks',
  ]);
  pen.visit(2, 'review', [
    `mri      taken ${pen.date(7)}; 2nd tear full`,
    'tried    tape 2nd 2 weeks daily',
    'pain     2nd plantar 5/10',
    rayLine(chance, 2, { swollen: 'mild', tender: 'plate', drawer: 2, drift: 'medial', paper: 'weak' }),
    chance.pick(['pulses   palpable', 'pulses   dp 2, pt 2']),
    `plan     ${chance.pick(['operation 2nd plate repair', 'patient prefers to wait; tape 2nd 6 weeks; review in 6 weeks'])}`,
  ]);
}

/** A dislocation in the emergency room, reduced. */
export function dislocated(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'emergency', [
    `history  injury "fell from a ladder" at ${chance.whole(8, 18)}:${chance.pick(['10', '30', '45'])}`,
    `2nd      dislocated ${chance.pick(['acute 2 hours', 'at 14:30', 'acute 3 hours'])}, toe-colour pink, cap refill 2 s`,
    'sense    normal',
    'pulses   dp 2, pt 2',
    'xray     2nd dislocated',
    'plan     "reduced under block, pink and warm after"; tape 2nd; mri 2nd; review in 1 week',
  ]);
  pen.visit(1, 'review', [
    'mri      2nd tear full',
    '2nd      tender plate, swelling moderate, drawer 3, straight, toe-colour pink',
    'plan     operation 2nd plate repair; review in 1 week',
  ]);
}

/** Diabetes and lost feeling. */
export function neuropathic(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'first', [
    `history  diabetes type 2, on insulin; neuropathy; ${chance.pick(['ex smoker', 'smoker', 'non smoker'])}`,
    `2nd      ${chance.pick(['callus under head', 'callus head painful', 'callus head'])}, drawer ${chance.pick([1, 2])}, extended, pip fixed`,
    chance.pick(['2nd      swelling mild, not hot', '2nd      no swelling', '2nd      swelling moderate']),
    'sense    monofilament 2/10',
    chance.pick(['pulses   dp 1, pt 0', 'pulses   palpable', 'dp 1, pt 1']),
    chance.pick(['lab      hba1c 8.4%', 'lab      hba1c 7.1%', '']),
    'skin     intact, dry',
    'plan     "deep shoe, podiatry"; review in 3 months',
  ]);
  pen.visit(13, 'review', [
    chance.pick(['2nd      wound open', '2nd      callus head, no wound', '2nd      wound healed']),
    chance.maybe(0.7, 'skin intact'),
    chance.maybe(0.6, 'sense monofilament 2/10'),
    'plan     "foot protection team"; review in 4 weeks',
  ]);
}

/** Gout of a lesser joint: hot, fever asked or not. */
export function gout(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, chance.pick(['emergency', 'first']), [
    `history  onset sudden ${chance.whole(1, 4)} days; gout${chance.maybe(0.6, '; no fever')}`,
    'pain     2nd 8/10 rest',
    '2nd      hot, red, swelling moderate, tender dorsal',
    'pulses   palpable',
    chance.maybe(0.6, 'lab crp 24 mg/L; urate 520'),
    `plan     ${chance.pick(['naproxen 1 week', '"aspirate"; bloods', 'ibuprofen 5 days'])}; review in 1 week`,
  ]);
  pen.visit(1, 'review', [
    'pain     none',
    '2nd      swelling mild, NT, no heat, drawer 0, straight',
    'plan     "urate clinic"',
  ]);
}

/** Hammer toe fused with a pin; hallux valgus with it. */
export function fusion(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'preop', [
    `history  ${chance.pick(['non smoker', 'never smoked'])}; no diabetes; ${chance.pick(['no anticoagulant', 'aspirin'])}`,
    'pain     2nd toe 5/10 shoes',
    '2nd      drawer 0, extended, pip fixed, callus pip knuckle painful',
    'stand    hv moderate',
    'sense    normal',
    'pulses   dp 2, pt 2',
    'xray wb  hva 28°, ima 13°, 2nd congruent',
    'plan     operation 2nd pip fusion',
  ]);
  const weeks = chance.pick([4, 6]);
  pen.visit(4, 'operation', [
    `operation 2nd pip fusion; 2nd pin ${weeks} weeks; hallux valgus correction`,
    '2nd      toe-colour pink',
    'plan     postop-shoe 6 weeks; review in 2 weeks',
  ]);
  pen.visit(2, 'postop', [
    'pain     2/10',
    '2nd      wound clean, sutures out, pin-site clean, toe-colour pink',
    `plan     review in ${weeks - 2} weeks`,
  ]);
  pen.visit(weeks - 2, 'postop', [
    'pain     1/10',
    `2nd      ${chance.pick(['pin-out', 'pin-out', 'k-wire removed', 'pin-site clean "wire out today without trouble"'])}, wound healed, straight`,
    'xray     "fused"',
    'plan     stiff shoe 2 weeks; ordinary-shoes from 2 weeks; review in 6 weeks',
  ]);
  pen.visit(6, 'postop', [
    'pain     none',
    `2nd      NT, straight, ${chance.pick(['pip fixed', 'stiff', 'floating'])}`,
    'ordinary-shoes',
    'plan     review in 3 months',
  ]);
}

/** A wound that festers after an operation. */
export function infected(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'operation', [
    'operation 2nd weil shortening 3 mm',
    '2nd      straight, toe-colour pink',
    'plan     postop-shoe 4 weeks; review in 2 weeks',
  ]);
  pen.visit(chance.pick([1, 2]), 'postop', [
    `history  ${chance.pick(['fever 38.4', 'no fever', 'fever'])}`,
    `2nd      ${chance.pick(['wound pus, redness moderate', 'hot, red, wound open, swelling moderate'])}, toe-colour pink`,
    'plan     "admit, cultures, antibiotics after aspiration"',
  ]);
  pen.visit(2, 'postop', [
    'history  no fever',
    '2nd      wound healed, swelling mild, no heat',
    'plan     review in 4 weeks',
  ]);
}

/** Nothing of the plate: callus, fat pad, a worried runner. */
export function nothing(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'first', [
    `history  onset gradual ${chance.whole(1, 12)} months; activity ${chance.pick(['running', 'walking', 'dancing'])}`,
    `pain     ${chance.pick(['2nd', '3rd'])} head ${chance.whole(2, 4)}/10 barefoot`,
    '2nd-5th  NT, no swelling, drawer 0, straight, paper holds',
    chance.pick(['3rd      callus head painful', 'skin     intact', '']),
    ...footLines(chance, 0.2),
    `plan     ${chance.pick(['met-pad', '"soft insole"', 'met-pad; stiff-insert'])}; ${chance.pick(['review in 3 months', '"review if needed"'])}`,
  ]);
  if (chance.likely(0.5)) pen.visit(13, chance.pick(['phone', 'review']), ['pain     none', 'plan     "discharged"']);
}

/** Old and frail: a chronic dislocation that is left alone. */
export function frail(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'first', [
    `history  ${chance.pick(['warfarin', 'apixaban', 'heart failure', 'kidney disease'])}; ${chance.pick(['"lives alone, uses a stick"', '"one fall last winter"'])}`,
    'pain     2nd toe 3/10 shoes',
    'stand    2nd overlap hallux at rest; hv marked',
    `2nd      dislocated ${chance.pick(['old irreducible', 'chronic irreducible', 'longstanding'])}, pip fixed, callus pip knuckle`,
    chance.pick(['skin     fragile', 'skin     thin, intact', 'skin     intact']),
    'sense    normal',
    chance.pick(['pulses   dp 1, pt 0', 'pulses   weak', 'pulses   palpable']),
    'xray wb  2nd dislocated',
    `plan     ${chance.pick(['"wide shoe, toe prop, podiatry"', '"silicone prop"; tape 2nd'])}; no operation; review in 3 months`,
  ]);
  pen.visit(13, 'review', [
    'pain     2nd toe 2/10',
    '2nd      dislocated old, callus pip knuckle',
    'skin     intact',
    'plan     review in 6 months',
  ]);
}

/** Injections elsewhere, and the toe drifts. */
export function injected(pen: Pen): void {
  const { chance } = pen;
  const times = chance.whole(1, 3);
  const given = Array.from({ length: times }, (_, i) => `steroid 2nd ${pen.month(-60 * (i + 2))}`).join('; ');
  pen.visit(0, 'first', [
    `history  onset gradual ${chance.whole(4, 12)} months`,
    'pain     2nd plantar 5/10',
    `tried    ${given}; insoles`,
    rayLine(
      chance,
      2,
      { tender: 'plantar', swollen: 'mild', drawer: chance.pick([0, 1] as const), drift: 'straight', paper: 'weak' },
      0.05,
    ),
    rayLine(chance, 3, { tender: 'none', drawer: 0, drift: 'straight' }),
    ...footLines(chance, 0.3),
    'plan     tape 2nd 8 weeks; stiff-insert; review in 8 weeks',
  ]);
  pen.visit(chance.pick([8, 17]), 'review', [
    'tried    tape 2nd 8 weeks irregular some relief',
    'pain     2nd plantar 5/10',
    rayLine(
      chance,
      2,
      {
        tender: 'plantar',
        swollen: 'mild',
        drawer: 2,
        drift: chance.pick(['medial', 'straight'] as const),
        paper: 'weak',
      },
      0.05,
    ),
    'plan     mri 2nd; tape 2nd 6 weeks; review in 6 weeks',
  ]);
}

/** A recovery in which something is forgotten or done too early. */
export function lapse(pen: Pen): void {
  const { chance } = pen;
  pen.visit(0, 'operation', [
    'operation 2nd weil shortening 3 mm; 2nd pip fusion; 2nd pin 4 weeks',
    'operation ordinary-shoes from 6 weeks',
    '2nd      toe-colour pink',
    'plan     postop-shoe 6 weeks; review in 2 weeks',
  ]);
  pen.visit(2, 'postop', [
    'pain     3/10',
    '2nd      wound clean, toe-colour pink, pin-site clean',
    'plan     review in 4 weeks',
  ]);
  pen.visit(chance.pick([4, 9]), 'postop', [
    chance.pick(['history  activity running', 'history  "walks the dog again"', '']),
    'pain     2/10',
    `2nd      ${chance.pick(['wound healed, straight', 'pin-site clean, wound healed', 'pin-out, wound healed', 'wound healed, drawer 0'])}`,
    chance.pick(['ordinary-shoes', '']),
    'plan     review in 6 weeks',
  ]);
  pen.visit(chance.pick([6, 14]), 'review', [
    'pain     1/10',
    `2nd      straight, ${chance.pick(['floating', 'pip fixed', 'NT'])}${chance.maybe(0.4, ', diagnosis hammer toe')}`,
    `3rd      ${chance.pick(['tender head', 'NT'])}, drawer 0`,
    chance.pick(['plan     met-pad; review in 3 months', 'plan     review in 3 months']),
  ]);
}
