import { describe, expect, it } from 'vitest';
import { decide } from '../../server/clinical/decide.ts';
import { STEPS } from '../../server/clinical/deciding.ts';
import { missingSteps } from '../../server/clinical/missing-steps.ts';
import type { Possible, World } from '../../server/clinical/staging-rows.ts';

/** What a visit may leave open of each deciding finding, as the facts give it. */
const OPEN = {
  dislocated: [['no'], ['old'], ['undated'], ['no', 'undated']],
  overlap: [['no'], ['sometimes'], ['rest'], ['no', 'rest']],
  drawer: [[0], [1], [2], [3], [4], ['not done'], [0, 1], [1, 2], [2, 3], [1, 2, 3], [3, 4]],
  alignment: [['straight'], ['not stated'], ['deviated'], ['marked'], ['straight', 'deviated']],
  gap: [[false], [true]],
  tender: [[true], [false], [true, false]],
  swollen: [[true], [false], [true, false]],
  purchase: [['normal'], ['reduced'], ['normal', 'reduced']],
  sameOtherSide: [[false], [true]],
} as const satisfies { readonly [K in keyof World]: readonly (readonly World[K][])[] };

function* everything(): Generator<Possible> {
  let all: Record<string, readonly unknown[]>[] = [{}];
  for (const [key, choices] of Object.entries(OPEN))
    all = all.flatMap((each) => choices.map((values) => ({ ...each, [key]: values })));
  yield* all as unknown as Possible[];
}

type Step = keyof typeof STEPS;
const KEYS = Object.keys(STEPS) as Step[];
/** What examining a step may show: what was left open, or anything that an undone step measures. */
function answers(possible: Possible, key: Step): readonly unknown[] {
  if (key === 'drawer' && possible.drawer[0] === 'not done') return [0, 1, 2, 3];
  if (key === 'dislocated' && possible.dislocated[0] === 'undated') return ['old', 'no'];
  return possible[key];
}
/** Stages 1 and 2 go one way, so that nothing is asked to tell them apart (common practice). */
const WAY = [0, 1, 1, 2, 3];
function ways(possible: Possible): number {
  const { outcome } = decide(possible);
  if (outcome.is === 'cannot stage') return 99;
  return outcome.is === 'span' ? WAY[outcome.high]! - WAY[outcome.low]! : 0;
}
/** Does examining these steps leave fewer ways, whatever they show? */
function narrows(possible: Possible, steps: readonly Step[], before: number): boolean {
  let worlds: Possible[] = [possible];
  for (const step of steps)
    worlds = worlds.flatMap((world) => answers(possible, step).map((value) => ({ ...world, [step]: [value] })));
  return worlds.every((world) => ways(world) < before);
}
/** The size of the smallest narrowing set, by trying every set of steps there is. */
function smallest(possible: Possible, before: number): number | undefined {
  let best: number | undefined;
  for (let mask = 1; mask < 1 << KEYS.length; mask++) {
    const steps = KEYS.filter((_, at) => mask & (1 << at));
    if (steps.length < (best ?? 99) && narrows(possible, steps, before)) best = steps.length;
  }
  return best;
}
const keysOf = (possible: Possible): Step[] =>
  missingSteps(possible).map((step) => KEYS.find((key) => STEPS[key] === step) ?? 'dislocated');
const isDislocationFirst = ({ dislocated, drawer }: Possible): boolean =>
  dislocated.length > 1 ||
  (dislocated[0] !== 'old' && drawer.some((step) => step === 4)) ||
  dislocated[0] === 'undated';

describe('the missing steps', () => {
  const all = [...everything()];
  const open = all.filter((possible) => {
    const { is } = decide(possible).outcome;
    return is === 'span' || is === 'cannot stage';
  });
  const [dislocation, others] = [open.filter(isDislocationFirst), open.filter((each) => !isDislocationFirst(each))];
  const searched = others.filter(({ drawer }) => drawer[0] !== 'not done');
  // An overlap now and then speaks before a drawer that was not done.
  const [undone, sometimes] = [
    others.filter(({ drawer, overlap }) => drawer[0] === 'not done' && overlap[0] !== 'sometimes'),
    others.filter(({ drawer, overlap }) => drawer[0] === 'not done' && overlap[0] === 'sometimes'),
  ];

  const sizes = new Map([...searched, ...sometimes].map((each) => [each, smallest(each, ways(each))]));

  it('of every open combination are counted here', () => {
    expect(all).toHaveLength(4 * 4 * 11 * 5 * 2 * 3 ** 3 * 2);
    expect([dislocation, undone, searched].every(({ length }) => length > 500)).toBe(true);
  });

  it('are the smallest set that narrows, whatever it shows: trying every set finds none smaller', () => {
    let certain = 0;
    for (const [possible, size] of sizes) {
      const keys = keysOf(possible);
      const before = ways(possible);
      const says = JSON.stringify(possible);
      if (size === undefined) continue;
      certain++;
      expect([says, keys.length, narrows(possible, keys, before)]).toEqual([says, size, true]);
    }
    expect(certain).toBeGreaterThan(500);
  });

  it('where none narrows for certain, are one that may, if there is one', () => {
    let uncertain = 0;
    for (const [possible, size] of sizes) {
      const before = ways(possible);
      if (size !== undefined) continue;
      const may = KEYS.some((key) =>
        answers(possible, key).some((value) => ways({ ...possible, [key]: [value] }) < before),
      );
      expect([JSON.stringify(possible), keysOf(possible).length]).toEqual([JSON.stringify(possible), may ? 1 : 0]);
      if (may) uncertain++;
    }
    expect(uncertain).toBeGreaterThan(0);
  });

  it('never ask for what is known, nor to tell stage 1 from stage 2', () => {
    for (const possible of searched)
      for (const key of keysOf(possible)) expect([key, possible[key].length > 1]).toEqual([key, true]);
    for (const possible of searched.filter((each) => ways(each) === 0)) expect(missingSteps(possible)).toEqual([]);
  });

  // The order of asking is common practice: a dislocation first, then the drawer, then the rest.
  it('are the drawer alone where none was done, which narrows the stages for at least one result', () => {
    for (const possible of undone) {
      expect(keysOf(possible)).toEqual(['drawer']);
      const before = ways(possible);
      expect([1, 2, 3].some((step) => ways({ ...possible, drawer: [step as 1] }) < before)).toBe(true);
    }
  });
  it('are the dislocation alone where one is possible or of unknown age', () => {
    for (const possible of dislocation)
      expect(missingSteps(possible).map(({ finding }) => finding)).toEqual([
        expect.stringMatching(/^(dislocated|film-joint)$/),
      ]);
  });
});
