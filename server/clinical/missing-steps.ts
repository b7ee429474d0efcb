import type { ExamStep, Stage, StageOutcome } from './analysis.ts';
import { decide } from './decide.ts';
import { STEPS } from './deciding.ts';
import type { Possible } from './staging-rows.ts';

type Step = keyof typeof STEPS;

/** The smallest set of exam steps that narrows the outcome whatever it shows, by search; where none does, one step that may. */
export function missingSteps(possible: Possible): ExamStep[] {
  const decided = decide(possible);
  // Without a drawer nothing else is asked for: whatever it shows, it says what to ask next (common practice).
  if (decided.rows.includes('no drawer') && !decided.rows.includes('dislocated')) return [STEPS.drawer];
  if (possible.dislocated.length > 1 || (possible.drawer.includes(4) && possible.drawer.length > 1))
    return [POSSIBLE_DISLOCATION];
  const atRest = possible.dislocated[0] === 'undated' || (possible.drawer[0] === 4 && possible.dislocated[0] !== 'old');
  if (atRest) return [STEPS.dislocated];
  const open = (Object.keys(STEPS) as Step[]).filter((key) => isOpen(possible, key));
  const width = widthOf(decided.outcome);
  if (width === 0) return [];
  for (let size = 1; size <= open.length; size++) {
    const best = subsets(open, size).find((keys) => narrows(possible, keys, width, 'every'));
    if (best) return best.map((key) => STEPS[key]);
  }
  const may = open.find((key) => narrows(possible, [key], width, 'some'));
  return may ? [STEPS[may]] : [];
}
const POSSIBLE_DISLOCATION: ExamStep = {
  finding: 'film-joint',
  ask: 'take a film and say whether the joint is dislocated and, if so, since when',
};
const isOpen = (possible: Possible, key: Step): boolean =>
  possible[key].length > 1 ||
  (key === 'drawer' && possible.drawer[0] === 'not done') ||
  (key === 'dislocated' && possible.dislocated[0] === 'undated');

/** What an exam step may show; a step that was left open may show anything that it measures. */
export const SHOWN: Readonly<Partial<Record<Step, readonly unknown[]>>> = {
  drawer: [0, 1, 2, 3],
  dislocated: ['old', 'no'],
};

/** Do some steps leave fewer ways, for each thing that they may show or for any? Stops at the first that decides it. */
function narrows(possible: Possible, keys: readonly Step[], width: number, whatever: 'every' | 'some'): boolean {
  const shown = keys.map(
    (key) => (possible[key].length > 1 ? possible[key] : (SHOWN[key] ?? possible[key])) as readonly unknown[],
  );
  return combinations(shown)[whatever]((values) => {
    const known = Object.fromEntries(keys.map((key, i) => [key, [values[i]]]));
    return widthOf(decide({ ...possible, ...known }).outcome) < width;
  });
}
/** How many ways the path may go on: stages 1 and 2 go the same way, so nothing is asked to tell them apart (common practice). */
const widthOf = (outcome: StageOutcome): number => {
  if (outcome.is === 'cannot stage') return 10;
  return outcome.is === 'span' ? wayOf(outcome.high) - wayOf(outcome.low) : 0;
};
const wayOf = (stage: Stage): number => (stage < 2 ? stage : stage - 1);
function subsets<T>(list: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return list.flatMap((first, i) => subsets(list.slice(i + 1), size - 1).map((rest) => [first, ...rest]));
}
const combinations = (lists: readonly (readonly unknown[])[]): unknown[][] =>
  lists.reduce<unknown[][]>((all, list) => all.flatMap((each) => list.map((value) => [...each, value])), [[]]);
