import { footLines, listed, ordinal, other, type Pen, rayLine } from './writing.ts';

const months = (pen: Pen) => `${pen.chance.whole(2, 18)} months`;
const onset = (pen: Pen): string =>
  `history  ${listed(
    [
      `onset ${pen.chance.pick(['gradual', 'insidious'])} ${months(pen)}`,
      pen.chance.maybe(0.5, `trigger ${pen.chance.pick(['running', 'walking', 'heels', 'shoes', 'barefoot'])}`),
      pen.chance.maybe(0.4, pen.chance.pick(['non smoker', 'ex smoker', 'smoker 10/day', 'never smoked'])),
      pen.chance.maybe(0.3, pen.chance.pick(['no diabetes', 'nkda', 'no anticoagulant', 'hypothyroid "on tablets"'])),
      pen.chance.maybe(
        0.3,
        pen.chance.pick(['"works as a teacher, on her feet all day"', '"keen walker"', '"seen by podiatry twice"']),
      ),
    ],
    '; ',
  )}`;
const pain = (pen: Pen, ray: number, score: number): string =>
  `pain     ${ordinal(ray)} ${pen.chance.pick(['plantar', 'plantar', 'head'])} ${score}/10${pen.chance.maybe(0.4, ` ${pen.chance.pick(['push-off', 'barefoot', 'aching'])}`)}`;
const quietNeighbour = (pen: Pen, ray: number): string =>
  rayLine(pen.chance, ray, { tender: 'none', swollen: 'none', drawer: 0, drift: 'straight', paper: 'holds' }, 0.2);

/** Stage 1 that settles with tape. */
export function settles(pen: Pen): void {
  const { chance } = pen;
  const ray = chance.pick([2, 2, 2, 3]);
  const next = ray + 1;
  pen.visit(0, 'first', [
    onset(pen),
    pain(pen, ray, chance.whole(4, 7)),
    chance.pick(['tried    met-pad 4 weeks no-relief', 'tried    none', 'tried    insoles 3 months some relief', '']),
    `stand    ${chance.pick(['gap 2-3', 'hv mild', 'no hv'])}`,
    rayLine(chance, ray, {
      swollen: 'mild',
      tender: 'plantar',
      drawer: 1,
      drift: 'straight',
      paper: 'weak',
      pip: 'flexible',
    }),
    quietNeighbour(pen, next),
    chance.maybe(0.5, '4th-5th normal'),
    ...footLines(chance),
    chance.maybe(0.6, `xray wb  hva ${chance.whole(12, 20)}°, ima ${chance.whole(7, 10)}°`),
    chance.maybe(0.4, `stage    ${ordinal(ray)} 1`),
    `plan     tape ${ordinal(ray)} 8 weeks; ${chance.pick(['stiff-insert', 'stiff sole', 'carbon insert'])}; met-pad; ${chance.pick(['rv 8/52', 'review in 8 weeks', 'f/u 8/52'])}`,
  ]);
  pen.visit(8, 'review', [
    `tried    tape ${ordinal(ray)} 8 weeks daily ${chance.pick(['better', 'much better', 'improved'])}; stiff-insert 8 weeks kept`,
    pain(pen, ray, chance.whole(1, 3)),
    rayLine(chance, ray, { swollen: 'none', tender: 'plantar', drawer: 1, drift: 'straight', paper: 'weak' }),
    quietNeighbour(pen, next),
    `plan     tape ${ordinal(ray)} 4 weeks; ${chance.pick(['review in 6 weeks', 'rv 6/52'])} "wean after that"`,
  ]);
  if (chance.likely(0.6))
    pen.visit(6, chance.pick(['review', 'phone']), [
      'pain     none',
      'plan     stiff-insert; "come back if it returns"',
    ]);
}

/** Stage 2: the course fails, an image agrees, an operation and its recovery. */
export function operated(pen: Pen): void {
  const { chance } = pen;
  const ray = 2;
  const drift = { drift: chance.pick(['medial', 'dorsomedial'] as const), degrees: chance.whole(8, 18) };
  const bad = { tender: 'plate', drawer: 2, paper: 'pulls out', pip: 'flexible', extended: true, ...drift } as const;
  pen.visit(0, 'first', [
    onset(pen),
    pain(pen, ray, chance.whole(5, 8)),
    `tried    ${chance.pick(['met-pad 2 months no-relief', 'insoles 3 months no relief', `met-pad 6/52 no-relief; steroid web 2 ${pen.month(-90)}`])}`,
    `stand    2nd lifted ${chance.whole(2, 5)} mm; gap 2-3; hv ${chance.pick(['mild', 'moderate'])}`,
    rayLine(chance, ray, { ...bad, swollen: 'moderate' }),
    rayLine(chance, 3, { tender: 'none', drawer: 1, drift: 'straight', paper: 'holds' }),
    ...footLines(chance),
    `xray wb  hva ${chance.whole(18, 30)}°, ima ${chance.whole(9, 13)}°, 2nd longer ${chance.whole(2, 5)} mm`,
    `plan     tape 2nd 12 weeks; stiff-insert; ${chance.maybe(0.4, 'no steroid; ')}review in 12 weeks`,
  ]);
  pen.visit(12, 'review', [
    'tried    tape 2nd 12 weeks daily no-relief; stiff-insert 12 weeks daily',
    pain(pen, ray, chance.whole(5, 7)),
    rayLine(chance, ray, { ...bad, swollen: 'mild' }),
    `${chance.pick(['mri', 'us'])} 2nd tear ${chance.pick(['full', 'partial distal lateral 60%', 'complete distal'])}`,
    `stage    2nd 2`,
    `plan     ${chance.pick(['wants surgery; ', 'patient wants operation; ', ''])}review in 4 weeks`,
  ]);
  if (chance.likely(0.5)) {
    pen.visit(4, 'preop', [
      `history  ${chance.pick(['non smoker', 'ex smoker', 'smoker 5/day "stops six weeks before, cotinine test booked"', 'no diabetes, no anticoagulant'])}`,
      rayLine(chance, ray, bad),
      chance.maybe(0.7, 'sense normal'),
      chance.maybe(0.8, 'pulses palpable'),
      'plan     operation 2nd weil and plate repair',
    ]);
  }
  recovery(pen, chance.pick(['dorsal', 'plantar']));
}

function recovery(pen: Pen, approach: string): void {
  const { chance } = pen;
  const pin = chance.likely(0.3);
  const shoes = approach === 'dorsal' ? 6 : 12;
  pen.visit(5, 'operation', [
    `operation ${approach} approach; 2nd weil shortening ${chance.whole(2, 4)} mm; 2nd plate repair${pin ? '; 2nd pin 4 weeks' : ''}`,
    `operation 2nd plate torn, grade ${chance.whole(2, 3)}`,
    '2nd      straight, toe-colour pink, cap refill 2 s',
    `operation ${approach === 'dorsal' ? 'heel only' : 'nwb'} ${approach === 'dorsal' ? 4 : 2} weeks; ordinary-shoes from ${shoes} weeks`,
    'plan     postop-shoe 6 weeks; review in 2 weeks',
  ]);
  pen.visit(2, 'postop', [
    `pain     2nd ${chance.whole(1, 4)}/10`,
    `2nd      wound ${chance.pick(['clean', 'clean and dry', 'healed'])}, sutures out, toe-colour pink, swelling ${chance.pick(['mild', 'moderate'])}, straight`,
    pin ? '2nd      pin-site clean' : '',
    chance.maybe(0.6, 'history  no fever'),
    chance.maybe(0.6, 'calf     soft'),
    'plan     postop-shoe 4 weeks; review in 4 weeks',
  ]);
  pen.visit(4, 'postop', [
    pain(pen, 2, chance.whole(0, 3)),
    `2nd      ${pin ? 'pin-out, ' : ''}wound healed, toe-colour pink, swelling mild, straight, ${chance.pick(['lifted 2 mm', 'floating', 'paper weak'])}`,
    rayLine(chance, 3, { tender: 'none', drawer: 1, drift: 'straight' }, 0.3),
    'xray wb  2nd congruent',
    `plan     tape 2nd 6 weeks; ${shoes === 6 ? 'ordinary-shoes' : 'stiff shoe'}; review in 6 weeks`,
  ]);
  pen.visit(7, 'postop', [
    chance.pick(['pain     none', 'pain     2nd 1/10']),
    `2nd      NT, swelling ${chance.pick(['none', 'mild'])}, drawer ${chance.pick([0, 0, 1])}, straight, paper weak`,
    `3rd      ${chance.pick(['NT', 'NT', 'tender head'])}, drawer 1, straight`,
    'ordinary-shoes',
    `plan     ${chance.pick(['stiff-insert; review in 3 months', 'review in 3 months'])}`,
  ]);
  if (chance.likely(0.5))
    pen.visit(13, 'review', [
      `history  ${chance.pick(['activity running', 'activity walking', '"back at work"'])}`,
      'pain     none',
      rayLine(chance, 2, { tender: 'none', swollen: 'none', drawer: 0, drift: 'straight', paper: 'weak' }, 0.2),
      'plan     "discharged"',
    ]);
}

/** Stage 3, crossover with hallux valgus, older; decides to wait or declines. */
export function crossover(pen: Pen): void {
  const { chance } = pen;
  const bad = {
    tender: 'plate',
    drawer: 3,
    drift: 'dorsomedial',
    paper: 'pulls out',
    pip: chance.pick(['flexible', 'semi-rigid', 'fixed'] as const),
  } as const;
  const anticoagulant = chance.likely(0.3);
  pen.visit(0, 'first', [
    `history  onset gradual ${chance.whole(1, 6)} years; trigger shoes${anticoagulant ? '; apixaban' : ''}`,
    pain(pen, 2, chance.whole(3, 7)),
    'tried    met-pad 6 months no relief; wide shoes',
    `stand    2nd overlap hallux ${chance.pick(['constant', 'at rest'])}; hv ${chance.pick(['moderate', 'marked'])}`,
    rayLine(chance, 2, bad),
    rayLine(chance, 3, {
      tender: chance.pick(['head', 'none'] as const),
      drawer: 1,
      drift: 'straight',
      paper: 'holds',
    }),
    '4th-5th  NT, drawer 0, straight',
    ...footLines(chance),
    `xray wb  hva ${chance.whole(26, 40)}°, ima ${chance.whole(12, 17)}°, 2nd subluxed`,
    'stage    2nd 3',
    `plan     mri 2nd; tape 2nd; stiff-insert; review in 6 weeks`,
  ]);
  const decides = chance.pick(['prefers to wait', 'declines operation', 'wants operation'] as const);
  pen.visit(6, 'review', [
    'tried    tape 2nd 6 weeks daily no-relief',
    pain(pen, 2, chance.whole(3, 7)),
    'stand    2nd overlap hallux at rest',
    rayLine(chance, 2, bad),
    'mri      2nd tear full',
    `plan     patient ${decides}; review in ${chance.pick(['3 months', '8 weeks'])}`,
  ]);
  if (decides === 'wants operation')
    pen.visit(9, 'preop', [
      'stand    2nd overlap hallux at rest',
      rayLine(chance, 2, bad),
      anticoagulant ? 'history  apixaban "stopped two days before, agreed with the prescriber"' : '',
      chance.maybe(0.7, 'pulses   dp 2, pt 2'),
      'plan     operation 2nd weil and plate repair and pip fusion; operation hallux valgus correction',
    ]);
  else
    pen.visit(13, 'review', [
      pain(pen, 2, chance.whole(2, 5)),
      'stand    2nd overlap hallux at rest',
      rayLine(chance, 2, bad, 0.2),
      'skin     intact',
      'plan     "wide shoe, toe prop"; review in 6 months',
    ]);
}

/** The other foot hurts too; both are seen in one visit. */
export function bilateral(pen: Pen): void {
  const { chance, side } = pen;
  const foot = (at: string, drawer: 0 | 1 | 2) => [
    at,
    rayLine(chance, 2, {
      swollen: 'mild',
      tender: 'plantar',
      drawer,
      drift: drawer === 2 ? 'medial' : 'straight',
      paper: 'weak',
    }),
    rayLine(chance, 3, { tender: 'none', drawer: 0, drift: 'straight' }),
  ];
  pen.visit(
    0,
    'first',
    [
      onset(pen),
      ...foot(side, 2),
      `pain     2nd plantar ${chance.whole(4, 7)}/10`,
      ...foot(other(side), chance.pick([0, 1] as const)),
      `pain     2nd plantar ${chance.whole(2, 4)}/10`,
      'both',
      'compression painless',
      'sense    normal',
      'pulses   palpable',
      `plan     tape ${side === 'right' ? 'R2' : 'L2'} 8 weeks; stiff-insert; review in 8 weeks`,
    ],
    'both',
  );
  pen.visit(8, 'review', [
    `tried    tape 2nd 8 weeks ${chance.pick(['daily better', 'irregular some relief'])}`,
    pain(pen, 2, chance.whole(2, 5)),
    rayLine(chance, 2, { tender: 'plantar', swollen: 'mild', drawer: 2, drift: 'medial', paper: 'weak' }),
    'plan     tape 2nd 6 weeks; review in 6 weeks',
  ]);
}
