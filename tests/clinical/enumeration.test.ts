import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide } from '../../server/clinical/decide.ts';
import type { PathInputs } from '../../server/clinical/path-inputs.ts';
import { PATH_ROWS, pathRow } from '../../server/clinical/path-rows.ts';
import { type Possible, STAGING_ROWS, type Verdict, type World, worlds } from '../../server/clinical/staging-rows.ts';
import { rayOf, spelled } from './note.ts';

const EVERY: Possible = {
  dislocated: ['no', 'old', 'undated'],
  overlap: ['no', 'sometimes', 'rest'],
  drawer: [0, 1, 2, 3, 4, 'not done'],
  alignment: ['straight', 'not stated', 'deviated', 'marked'],
  gap: [false, true],
  tender: [false, true],
  swollen: [false, true],
  purchase: ['normal', 'reduced'],
  sameOtherSide: [false, true],
};
const verdict = (world: World): Verdict | undefined => STAGING_ROWS.find(({ when }) => when(world))?.verdict(world);
const single = (world: World): Possible =>
  Object.fromEntries(Object.entries(world).map(([key, value]) => [key, [value]])) as unknown as Possible;

describe('every world of deciding findings', () => {
  const all = worlds(EVERY);
  it('is enumerated once', () => {
    expect(all).toHaveLength(3 * 3 * 6 * 4 * 2 ** 5);
    expect(new Set(all.map((world) => JSON.stringify(world))).size).toBe(all.length);
  });
  it('has a verdict, and stages in it follow each other', () => {
    for (const world of all) {
      const found = verdict(world);
      expect(found).toBeDefined();
      if (typeof found !== 'string')
        for (const [i, stage] of (found ?? []).entries()) expect(stage).toBe((found?.[0] ?? 0) + i);
    }
  });
  it('reaches every row', () => {
    const reached = new Set(all.map((world) => STAGING_ROWS.find(({ when }) => when(world))?.id));
    expect([...reached].sort()).toEqual(STAGING_ROWS.map(({ id }) => id).sort());
  });
  it('a single world is staged by the decision as by its row', () => {
    for (const world of all) {
      const found = verdict(world);
      const { outcome } = decide(single(world));
      if (found === 'cannot' || found === 'acute until shown otherwise') expect(outcome.is).toBe('cannot stage');
      else if (found === 'no instability') expect(outcome.is).toBe('not applicable');
      else expect(spelled(outcome)).toBe([...new Set([found?.at(0), found?.at(-1)])].join('-'));
    }
  });
  it('a higher drawer never gives a lower stage where all else is equal', () => {
    for (const world of worlds({ ...EVERY, drawer: [0] })) {
      let before = [-1, -1];
      for (const drawer of [0, 1, 2, 3] as const) {
        const found = verdict({ ...world, drawer });
        // The other foot can only share drawer 2, and that widens the span downwards.
        if (typeof found === 'string' || !found || world.sameOtherSide) continue;
        const now = [found[0] as number, found.at(-1) as number];
        expect(now[0]).toBeGreaterThanOrEqual(before[0] as number);
        expect(now[1]).toBeGreaterThanOrEqual(before[1] as number);
        before = now;
      }
    }
  });
  /** Lowest and highest stage of a world; nothing where it has none. */
  const bounds = (world: World): readonly [number, number] | undefined => {
    const found = verdict(world);
    return typeof found === 'string' || !found ? undefined : [found[0] as number, found.at(-1) as number];
  };
  // Crossover is at least stage 3, and a fixed dislocation is stage 4 alone (trends of the published table, from memory).
  it('an overlap that grows from none to now and then to rest never lowers a stage where all else is equal', () => {
    for (const world of worlds({ ...EVERY, overlap: ['no'] })) {
      let before = bounds(world);
      for (const overlap of ['sometimes', 'rest'] as const) {
        const now = bounds({ ...world, overlap });
        if (before) {
          expect(now?.[0]).toBeGreaterThanOrEqual(before[0]);
          expect(now?.[1]).toBeGreaterThanOrEqual(before[1]);
        }
        before = now ?? before;
      }
    }
  });
  it('a toe that overlaps at rest is at least stage 3 wherever it has a stage', () => {
    for (const world of worlds({ ...EVERY, overlap: ['rest'] }))
      expect(bounds(world)?.[0] ?? 3).toBeGreaterThanOrEqual(3);
  });
  it('an old dislocation never lowers a stage, and none is above it', () => {
    for (const world of worlds({ ...EVERY, dislocated: ['no'] })) {
      const before = bounds(world);
      const now = bounds({ ...world, dislocated: 'old' });
      expect(now).toEqual([4, 4]);
      expect(before?.[1] ?? 0).toBeLessThanOrEqual(4);
    }
  });
  it('a drawer that may be higher never gives a lower span', () => {
    const base = worlds({ ...EVERY, drawer: [0], dislocated: ['no'], sameOtherSide: [false] });
    for (const world of base)
      for (const [low, high] of [
        [[1], [1, 2]],
        [[1, 2], [2]],
        [
          [1, 2],
          [2, 3],
        ],
        [[2, 3], [3]],
      ] as const) {
        const [a, b] = [low, high].map((drawer) => decide({ ...single(world), drawer }).outcome);
        const ends = (outcome: typeof a) =>
          outcome?.is === 'span'
            ? [outcome.low, outcome.high]
            : outcome?.is === 'staged'
              ? [outcome.stage, outcome.stage]
              : [];
        const [from, to] = [ends(a), ends(b)];
        expect(to[0]).toBeGreaterThanOrEqual(from[0] ?? 9);
        expect(to[1]).toBeGreaterThanOrEqual(from[1] ?? 9);
      }
  });
  it('only an old dislocation is stage 4', () => {
    for (const world of all) {
      const found = verdict(world);
      expect(typeof found !== 'string' && found?.includes(4)).toBe(world.dislocated === 'old');
    }
  });
  it('an undated dislocation is never staged, whatever else is found', () => {
    for (const world of all.filter(({ dislocated }) => dislocated === 'undated'))
      expect(verdict(world)).toBe('acute until shown otherwise');
  });
  it('an outcome over several worlds holds the outcome of each of them', () => {
    const pairs = worlds({ ...EVERY, dislocated: ['no'], drawer: [0, 1, 2, 3], gap: [false], sameOtherSide: [false] });
    for (const world of pairs) {
      const wide = decide({ ...single(world), swollen: [false, true], purchase: ['normal', 'reduced'] }).outcome;
      const narrow = decide(single(world)).outcome;
      if (wide.is === 'staged' || wide.is === 'span') expect(spelled(wide)).toBe(spelled(narrow));
      if (wide.is === 'not applicable') expect(narrow.is).toBe('not applicable');
    }
  });
});

describe('supporting findings', () => {
  const signs = [
    ['swelling', 'swelling marked', 'swelling none'],
    ['purchase', 'paper holds', 'paper pulls-out'],
    ['ground contact', 'lifted 4 mm', 'not lifted'],
    ['rotation', 'supinated', 'pronated'],
    ['PIP joint', 'pip fixed', 'pip flexible'],
    ['MTP joint', 'mtp fixed', 'mtp flexible'],
  ] as const;
  const cores = [
    '2nd tender plate, drawer 1, medial mild',
    '2nd tender plate, drawer 1, medial marked',
    '2nd tender plate, drawer 2, straight',
    '2nd tender plate, drawer 2, medial',
    '2nd tender plate, drawer 3',
    '2nd tender plate, drawer 2, overlap hallux at rest',
    '2nd tender plate, drawer positive',
    '2nd tender plate, drawer not done, medial',
  ];
  it.each(cores)('never move the stage of: %s', (core) => {
    const alone = spelled(rayOf(core).outcome);
    for (const [name, one, other] of signs)
      for (const sign of [one, other])
        expect([name, sign, spelled(rayOf(`${core}, ${sign}`).outcome)]).toEqual([name, sign, alone]);
    for (const line of ['us 2nd tear full', 'mri 2nd plate intact', 'stand gap 2-3 marked', 'xray wb; 2nd longer 5 mm'])
      expect([line, spelled(rayOf(`${core}\n${line}`).outcome)]).toEqual([line, alone]);
  });
});

const INPUTS = {
  flag: [
    'infection',
    'ischaemia',
    'clot',
    'open injury',
    'acute dislocation',
    'fracture',
    'neuropathic hot foot',
    'tumour',
    'none',
  ],
  growing: [false, true],
  bone: [false, true],
  systemic: [false, true],
  operated: ['no', 'on track', 'off track'],
  acuteRupture: ['no', 'suspected', 'imaged'],
  transfer: [false, true],
  web: [false, true],
  joint: ['stable', 'unstable', 'unknown'],
  stage: [
    'lax',
    'none found',
    'not used',
    'neuropathic',
    'wound',
    'acute injury',
    'injury elsewhere',
    'quiet',
    'cannot',
    0,
    1,
    2,
    3,
    4,
  ],
  course: ['none', 'unknown', 'under six weeks', 'six to twelve weeks', 'twelve weeks or more'],
  response: ['better', 'not better', 'not stated'],
  kept: ['well', 'poorly', 'not stated'],
  imaging: ['concordant', 'discordant', 'absent'],
  progressing: [false, true],
  operation: ['not planned', 'safety clear', 'safety not clear'],
  accommodate: [false, true],
} as const satisfies { [K in keyof PathInputs]: readonly PathInputs[K][] };

/** All combinations of the inputs, or of some with the others at their first value. */
function* combinations(open: readonly (keyof PathInputs)[], base: PathInputs): Generator<PathInputs> {
  const [key, ...rest] = open;
  if (!key) yield base;
  else for (const value of INPUTS[key]) yield* combinations(rest, { ...base, [key]: value } as PathInputs);
}
const QUIET: PathInputs = {
  flag: 'none',
  growing: false,
  bone: false,
  systemic: false,
  operated: 'no',
  acuteRupture: 'no',
  transfer: false,
  web: false,
  joint: 'unknown',
  stage: 1,
  course: 'none',
  response: 'not stated',
  kept: 'not stated',
  imaging: 'absent',
  progressing: false,
  operation: 'not planned',
  accommodate: false,
};
const GATES = [
  'flag',
  'growing',
  'bone',
  'systemic',
  'operated',
  'acuteRupture',
  'transfer',
  'web',
  'joint',
  'stage',
] as const;
const COURSE = ['stage', 'course', 'response', 'kept', 'imaging', 'progressing', 'operation', 'accommodate'] as const;
/** The rows of the course without operation, common practice for stages 0 to 2 only. */
const EARLY = [
  'first course',
  'course of unknown length',
  'course running',
  'better',
  'response not stated',
  'poorly kept',
  'failed, stage 0',
  'failed, image first',
  'escalate',
  'discuss operation',
];
const URGENT = INPUTS.flag.filter((flag) => flag !== 'none');

describe('every combination of path inputs', () => {
  const reached = new Map<string, number>();
  let count = 0;
  // No row reads both a gate and the course but for the stage, which is in both halves.
  for (const inputs of [...combinations(GATES, QUIET), ...combinations(COURSE, QUIET)]) {
    const { id } = pathRow(inputs);
    reached.set(id, (reached.get(id) ?? 0) + 1);
    count++;
  }
  it('has one row, and every row is reached', () => {
    const size = (keys: readonly (keyof PathInputs)[]) => keys.reduce((n, key) => n * INPUTS[key].length, 1);
    expect(count).toBe(size(GATES) + size(COURSE));
    expect(count).toBeGreaterThan(30_000);
    expect([...reached.keys()].sort()).toEqual(PATH_ROWS.map(({ id }) => id).sort());
    expect(new Set(PATH_ROWS.map(({ id }) => id)).size).toBe(PATH_ROWS.length);
  });
  it('a red flag outranks everything else, and only its rows are urgent', () => {
    for (const inputs of combinations(GATES, QUIET)) {
      const row = pathRow(inputs);
      if (inputs.flag !== 'none') expect(row.id).toBe(inputs.flag);
      expect(row.urgent ?? false).toBe(inputs.flag !== 'none');
    }
    expect(
      PATH_ROWS.filter(({ urgent }) => urgent)
        .map(({ id }) => id)
        .sort(),
    ).toEqual([...URGENT].sort());
  });
  it('a course without operation is for stages 0 to 2 only', () => {
    for (const inputs of combinations(COURSE, QUIET))
      if (EARLY.includes(pathRow(inputs).id)) expect([0, 1, 2]).toContain(inputs.stage);
  });
  it('no operation is discussed at stages 0 to 2 without an image that agrees', () => {
    for (const inputs of combinations(COURSE, QUIET))
      if (pathRow(inputs).id === 'discuss operation') {
        expect(inputs.imaging).toBe('concordant');
        expect(['six to twelve weeks', 'twelve weeks or more']).toContain(inputs.course);
        expect(inputs.operation).not.toBe('safety not clear');
      }
  });
  it('a joint that is not staged is never offered an operation', () => {
    for (const inputs of combinations(COURSE, QUIET))
      if (typeof inputs.stage === 'string') expect(pathRow(inputs).step).not.toMatch(/discuss|shortening/i);
  });
  it('a row that speaks of an injection carries a caution', () => {
    const rows = PATH_ROWS.filter(({ step }) => /inject|steroid|block/i.test(step));
    expect(rows.length).toBeGreaterThan(0);
    for (const { cautions } of rows) expect(cautions.length).toBeGreaterThan(0);
  });
  it('what a gate decides stands whatever the course is, so the two halves cover the whole', () => {
    const any = fc.record(
      Object.fromEntries(Object.entries(INPUTS).map(([key, values]) => [key, fc.constantFrom(...values)])),
    ) as unknown as fc.Arbitrary<PathInputs>;
    const picked = (from: PathInputs, keys: readonly (keyof PathInputs)[]) =>
      Object.fromEntries(keys.map((key) => [key, from[key]]));
    fc.assert(
      fc.property(any, (inputs) => {
        const gate = pathRow({ ...QUIET, ...picked(inputs, GATES) }).id;
        const course = pathRow({ ...QUIET, ...picked(inputs, COURSE) }).id;
        const first = PATH_ROWS.findIndex(({ id }) => id === 'first course');
        const decides = PATH_ROWS.findIndex(({ id }) => id === gate) < first;
        expect(pathRow(inputs).id).toBe(decides ? gate : course);
      }),
      { numRuns: 5_000, seed: 4 },
    );
  });
  it('every row says what to do, why, what would change it, and when to look again', () => {
    for (const row of PATH_ROWS)
      for (const text of [row.step, row.why, row.wouldChange, row.review])
        expect(text.trim().length).toBeGreaterThan(2);
  });
});
