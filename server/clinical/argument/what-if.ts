import type { ExamStep } from '../analysis.ts';
import { decide } from '../decide.ts';
import { STEPS } from '../deciding.ts';
import { SHOWN } from '../missing-steps.ts';
import type { Possible } from '../staging-rows.ts';
import { capital, listed, outcomePhrase, SHOWING } from './phrases.ts';

type Step = keyof typeof STEPS;

/** What the stage would be with each thing that the missing steps may show, by the same decision list. Empty where they say nothing. */
export function whatWouldChange(possible: Possible, steps: readonly ExamStep[]): string {
  const keys = steps.flatMap((step) => keyOf(step) ?? []);
  const [only] = keys;
  if (keys.length === 1 && only) return oneStep(possible, only);
  const worlds = keys.reduce<Possible[]>(
    (all, key) => all.flatMap((each) => worldsOf(each, key).map(([, one]) => one)),
    [possible],
  );
  const ends = [...new Set(worlds.map((world) => outcomePhrase(decide(world).outcome)))];
  return ends.length > 1 ? `Together they decide whether it is ${listed(ends, 'or')}.` : '';
}

const keyOf = ({ finding }: ExamStep): Step | undefined =>
  finding === 'film-joint'
    ? 'dislocated'
    : (Object.keys(STEPS) as Step[]).find((key) => STEPS[key].finding === finding);

function oneStep(possible: Possible, key: Step): string {
  const groups = new Map<string, string[]>();
  for (const [value, world] of worldsOf(possible, key)) {
    const end = outcomePhrase(decide(world).outcome);
    groups.set(end, [...(groups.get(end) ?? []), SHOWING[key](value)]);
  }
  const clauses = [...groups].map(([end, values]) => `with ${listed(values, 'or')} it would be ${end}`);
  return clauses.length > 0 ? `${capital(clauses.join('; '))}.` : '';
}

/** The worlds that one step may leave. */
function worldsOf(possible: Possible, key: Step): [unknown, Possible][] {
  const open: readonly unknown[] = possible[key].length > 1 ? possible[key] : (SHOWN[key] ?? possible[key]);
  // A doubtful dislocation may turn out to be an old one, which no world of the doubt holds.
  const values = key === 'dislocated' ? [...new Set(['no', 'old', ...open])] : open;
  return values.map((value) => [value, { ...possible, [key]: [value] }]);
}
