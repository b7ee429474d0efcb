/** Lines of a visit, its blank line included. */
export const VISIT_LINES = 20;
/** Where the line of the second ray stands in a visit; the scripted editor types there. */
export const RAY_LINE = 7;
/** Lines before the first visit. */
export const HEADER_LINES = 4;
/** Visits that hold a slip, whatever the size of the note. */
const SLIPS = 40;

const FIRST_DAY = Date.UTC(1998, 0, 5);
const DAY = 86_400_000;

/** A small seeded generator of numbers in [0, 1): the same seed gives the same note on every machine. */
export function random(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

/** Each slip gives one report or two. */
const SLIP = [
  (lines) => change(lines, RAY_LINE, /drawer \d/, 'drawer 9'),
  (lines) => change(lines, RAY_LINE, /medial (\d+)°/, 'medial $1 mm'),
  (lines) => change(lines, RAY_LINE, /swelling \w+/, 'swelling wobbly'),
  (lines) => change(lines, RAY_LINE + 1, /drawer (\d)/, 'drawer not $1'),
  (lines) => change(lines, 18, /no steroid/, 'steroid web 2'),
  (lines) => change(lines, 10, /webs/, 'web'),
  (lines) => change(lines, 15, /hva (\d+)°/, 'hva $1 mm'),
  (lines) => change(lines, 3, /"([^"]*)"/, '"$1'),
];
function change(lines, at, pattern, text) {
  lines[at] = lines[at].replace(pattern, text);
}

/** One patient's visits as plain records: what the shorthand says, and what the peers are given as JSON and YAML. */
export function visits(count, seed = 7) {
  const next = random(seed);
  const pick = (list) => list[Math.floor(next() * list.length)];
  const whole = (low, high) => low + Math.floor(next() * (high - low + 1));
  return Array.from({ length: count }, (_, index) => {
    const drawer = pick([1, 2, 2, 3]);
    return {
      date: new Date(FIRST_DAY + index * DAY).toISOString().slice(0, 10),
      kind: index === 0 ? 'first' : pick(['review', 'review', 'review', 'phone']),
      side: 'right',
      onset: { manner: pick(['gradual', 'sudden']), months: whole(3, 30) },
      trigger: pick(['running', 'walking', 'stairs', 'dancing', 'heels']),
      stiffness: whole(5, 20),
      pain: {
        ray: 2,
        score: whole(1, 9),
        character: pick(['push-off', 'aching', 'sharp', 'barefoot']),
        quote: remark(pick),
      },
      tried: { padWeeks: whole(3, 16), tapeWeeks: whole(2, 12), response: pick(['no-relief', 'partial', 'better']) },
      stand: { lifted: whole(1, 9), hallux: pick(['mild', 'moderate']), between: '2-3' },
      second: {
        swelling: pick(['mild', 'moderate']),
        tender: pick(['plantar', 'plate']),
        drawer,
        pain: pick(['painful', 'painless']),
        medial: whole(3, 25),
        paper: pick(['holds', 'weak', 'pulls-out']),
        pip: pick(['flexible', 'semi-rigid']),
      },
      third: { drawer: pick([0, 1]), paper: pick(['holds', 'weak']) },
      webs: { click: pick(['none', 'painless']), numbness: 'none' },
      sense: whole(8, 10),
      pulses: { dp: pick([1, 2, 3]), pt: pick([1, 2]) },
      xray: { hva: whole(8, 32), ima: whole(6, 16), longer: whole(1, 6) },
      us: { extent: pick(['partial', 'full']), place: pick(['distal', 'midsubstance']), share: whole(20, 80) },
      stage: drawer === 1 ? 1 : drawer,
      plan: { tape: whole(4, 12), review: whole(4, 12) },
    };
  });
}
const REMARKS = {
  what: ['worst', 'bad', 'easier', 'tolerable', 'like a pebble', 'like a bruise'],
  where: ['barefoot', 'in heels', 'in the garden', 'at work', 'on the stairs', 'in the new trainers'],
  when: ['on tile', 'after an hour', 'in the morning', 'by the evening', 'on slopes', 'all week'],
};
const remark = (pick) => `${pick(REMARKS.what)} ${pick(REMARKS.where)} ${pick(REMARKS.when)}`;

/** The lines of one visit in the shorthand. */
export function visitLines(v) {
  const lines = [
    `visit ${v.date} ${v.kind} ${v.side}`,
    `history  onset ${v.onset.manner} ${v.onset.months} months; trigger ${v.trigger}`,
    `history  morning-stiffness ${v.stiffness} minutes; no fever`,
    `pain     2nd plantar ${v.pain.score}/10 ${v.pain.character} "${v.pain.quote}"`,
    `tried    met-pad ${v.tried.padWeeks} weeks ${v.tried.response}`,
    `tried    2nd tape ${v.tried.tapeWeeks} weeks well kept ${v.tried.response}`,
    `stand    2nd lifted ${v.stand.lifted} mm; gap ${v.stand.between}; hallux-valgus ${v.stand.hallux}`,
    `2nd      swelling ${v.second.swelling}, tender ${v.second.tender}, drawer ${v.second.drawer} ${v.second.pain}, ` +
      `medial ${v.second.medial}°, paper ${v.second.paper}, pip ${v.second.pip}`,
    `3rd      tender none, drawer ${v.third.drawer}, straight, paper ${v.third.paper}`,
    '4th-5th  normal',
    `webs 2-3 click ${v.webs.click === 'none' ? 'none' : v.webs.click}, squeeze none`,
    `web 2    numbness ${v.webs.numbness}`,
    'compression painless',
    `sense    monofilament ${v.sense}/10`,
    `pulses   dp ${v.pulses.dp}, pt ${v.pulses.pt}`,
    `xray wb  hva ${v.xray.hva}°, ima ${v.xray.ima}°, 2nd longer ${v.xray.longer} mm`,
    `us       2nd tear ${v.us.extent} ${v.us.place} lateral ${v.us.share}%`,
    `stage    2nd ${v.stage}`,
    `plan     tape 2nd ${v.plan.tape} weeks; stiff-insert; met-pad; no steroid; review in ${v.plan.review} weeks`,
    '',
  ];
  if (lines.length !== VISIT_LINES) throw new Error(`a visit has ${lines.length} lines, not ${VISIT_LINES}`);
  return lines;
}

/** A whole note of so many visits as lines; the first visits of a long note are those of a short one, but for the slips. */
export function noteLines(count, seed = 7) {
  const every = Math.max(1, Math.floor(count / SLIPS));
  const body = visits(count, seed).flatMap((visit, index) => {
    const lines = visitLines(visit);
    const slip = Math.floor(index / every);
    if (index % every === every - 2 && slip < SLIPS) SLIP[slip % SLIP.length](lines);
    return lines;
  });
  return ['forefoot 1', 'patient KM-207  born 1951  female', 'scales drawer 0-4', '', ...body];
}

/** The number of the line on which the second ray of a visit stands. */
export const rayLine = (visit) => HEADER_LINES + visit * VISIT_LINES + RAY_LINE;
