import type { Mark } from '../../grammar/lexicon/entry.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import type { DrawerScale, ValueOf } from '../../grammar/values.ts';
import type { Answer } from './answers.ts';
import type { AnyFact } from './facts.ts';

/** What the drawer may have shown, in the steps of the 0-4 scale that staging uses; 4 is a joint dislocated at rest. */
export type DrawerStep = 0 | 1 | 2 | 3 | 4 | 'not done';

/** What each step says, in the words of the 0-4 scale (NERY-RF; 2 to 4 from memory). */
export const DRAWER_SHOWS: Readonly<Record<DrawerStep, string>> = {
  0: 'stable',
  1: 'under half subluxable',
  2: 'over half subluxable',
  3: 'dislocatable',
  4: 'dislocated at rest',
  'not done': 'missing',
};

export interface DrawerReading {
  /** On which scale the grade was given; a result without a number counts as of the 0-4 scale. */
  readonly scale: DrawerScale | 'not stated';
  readonly steps: readonly DrawerStep[];
  readonly assumption?: string;
  readonly source: SourceKey;
  readonly mark: Mark;
}

/** Three scales exist whose numbers differ. What a grade of another scale may be on the 0-4 scale; grades of the 1-3 scale have no wording that was read. */
const ON_0_3: readonly (readonly DrawerStep[])[] = [[0], [1, 2], [3], [4]];
const ANY_POSITIVE: readonly DrawerStep[] = [1, 2, 3];

const FOUR: Pick<DrawerReading, 'source' | 'mark' | 'scale'> = {
  scale: '0-4',
  source: 'NERY-RF',
  mark: 'from memory, to be verified',
};

/** Reads the drawer for staging; `scale` is the file's. Unclear, unable, not done and not mentioned all leave it open. */
export function readDrawer(answer: Answer<'drawer'>, scale?: DrawerScale): DrawerReading {
  if (answer.is === 'conflicting') {
    const readings = answer.facts.map((fact) => readDrawer({ is: 'stated', fact }, scale));
    return {
      ...FOUR,
      scale: readings.find((each) => each.scale !== '0-4')?.scale ?? '0-4',
      steps: [...new Set(readings.flatMap(({ steps }) => steps))],
      ...differing(answer.facts, readings),
    };
  }
  if (answer.is !== 'stated') return { ...FOUR, steps: ['not done'] };
  const { status, values, unclear } = answer.fact;
  if (status === 'not done' || status === 'unable' || status === 'avoid') return { ...FOUR, steps: ['not done'] };
  if (status === 'equivocal') return { ...FOUR, steps: [0, 1], assumption: 'the drawer is stated as equivocal' };
  if (status === 'absent') return negative(values.scale?.words[0] ?? scale);
  if (unclear.includes('grade'))
    return { ...FOUR, steps: ['not done'], assumption: 'a drawer grade is written that cannot be read' };
  if (values.result?.words.includes('half'))
    return { ...FOUR, steps: [1, 2], assumption: 'exactly half is not assigned to a grade by any source read' };
  if (!values.grade) return { ...FOUR, steps: values.result ? ANY_POSITIVE : ['not done'] };
  return graded(values.grade);
}

/** Two examiners may differ, and agree, without contradiction; both grades count. */
function differing(
  facts: readonly Extract<AnyFact, { finding: 'drawer' }>[],
  readings: readonly DrawerReading[],
): { assumption?: string } {
  const examiners = new Set(facts.map(({ values }) => values.examiner?.words[0]));
  if (examiners.size < facts.length) return { assumption: 'the drawer is stated twice, differently' };
  const [first] = readings;
  if (new Set(readings.flatMap(({ steps }) => steps)).size > 1)
    return { assumption: 'two examiners differ on the drawer, both grades are used' };
  return first?.assumption ? { assumption: first.assumption } : {};
}

/** Negative is grade 0 only where the scale starts at 0. */
function negative(scale: string | undefined): DrawerReading {
  if (scale === '1-3') return { ...FOUR, steps: ['not done'], assumption: 'negative is no grade of the 1-3 scale' };
  return scale ? { ...FOUR, steps: [0] } : { ...FOUR, steps: [0], assumption: UNSCALED_NEGATIVE };
}
const UNSCALED_NEGATIVE = 'drawer scale not stated, negative read as grade 0';

function graded(grade: ValueOf<'drawer grade'>): DrawerReading {
  const grades = [grade.low, grade.high];
  if (grade.scale === '0-3') {
    const steps = [...new Set(grades.flatMap((each) => ON_0_3[each] ?? ['not done' as const]))];
    return {
      steps,
      scale: '0-3',
      assumption: 'a grade of the 0-3 scale, read on the 0-4 scale',
      source: 'THOMP87',
      mark: 'from memory, to be verified',
    };
  }
  if (grade.scale === '1-3')
    return {
      steps: ANY_POSITIVE,
      scale: '1-3',
      assumption: 'the wording of the 1-3 scale was not read: any positive grade',
      source: 'PECK12',
      mark: 'read',
    };
  const steps = [...new Set(grades)] as DrawerStep[];
  if (grade.scale === '0-4') return { ...FOUR, steps };
  return { ...FOUR, steps, scale: 'not stated', assumption: 'drawer scale not stated, read as 0-4' };
}
