// Compiled by `npm run types`: each line below an expectation must be refused, and each other line must compile.
import type { ValuesOf } from '../../grammar/lexicon/index.ts';
import type { ValueOf } from '../../grammar/values.ts';
import type { AdvisedRay, Stage, StageOutcome } from '../../server/clinical/analysis.ts';
import { type Answer, ask } from '../../server/clinical/answers.ts';
import { type DrawerStep, readDrawer } from '../../server/clinical/drawer.ts';
import type { AnyFact, Fact, Subject } from '../../server/clinical/facts.ts';
import type { PathInputs, PathRow } from '../../server/clinical/path-inputs.ts';
import { defineRule, type Rule } from '../../server/clinical/rules/define-rule.ts';
import type { PlateSeen } from '../../server/clinical/scales/anatomical.ts';
import type { ScaleOutcome } from '../../server/clinical/scales/scale.ts';

declare const drawer: ValuesOf<'drawer'>;
declare const stage: ValuesOf<'stage'>;
declare const grade: ValueOf<'drawer grade'>;
declare const step: DrawerStep;
declare const facts: readonly AnyFact[];
declare const rule: Rule;
declare const row: PathRow;
declare const seen: PlateSeen;
declare const other: Extract<ScaleOutcome, { is: 'told' }>;

/** A grade, a stage and a number are three things. */
export const asGrade: ValueOf<'drawer grade'> | undefined = drawer.grade;
// @ts-expect-error a stated stage is no drawer grade
export const stageAsGrade: ValueOf<'drawer grade'> | undefined = stage.stage;
// @ts-expect-error a drawer grade is no clinical stage
export const gradeAsStage: ValueOf<'stage'> | undefined = drawer.grade;
// @ts-expect-error a grade is never a bare number
export const gradeAsNumber: number = grade;
// @ts-expect-error a drawer step may be `not done`, so it is no stage
export const stepAsStage: Stage = step;
// @ts-expect-error there is no stage 5
export const noStage: Stage = 5;
// @ts-expect-error a grade of the torn plate is no clinical stage
export const seenAsStage: ValueOf<'stage'> | undefined = seen.grade;
// @ts-expect-error nor a drawer grade
export const seenAsGrade: ValueOf<'drawer grade'> | undefined = seen.grade;
// @ts-expect-error a stage or grade of another scale is a name of that scale alone
export const otherAsStage: Stage = other.name;
// @ts-expect-error a scale that does not exist
export const noScale: ValueOf<'drawer grade'> = { is: 'drawer grade', low: 1, high: 1, scale: '0-5' };

/** Values are typed by their finding. */
export const direction = (fact: Fact<'deviation'>) => fact.values.direction?.words.includes('medial');
// @ts-expect-error a deviation has no grade
export const noGrade = (fact: Fact<'deviation'>) => fact.values.grade;
// @ts-expect-error `upwards` is no direction of the lexicon
export const noDirection = (fact: Fact<'deviation'>) => fact.values.direction?.words.includes('upwards');
// @ts-expect-error no such finding
export const noFinding: Fact<'wobble'> | undefined = undefined;

/** Silence has to be dealt with before a fact is reached. */
// @ts-expect-error an answer may be `not mentioned`, which holds no fact
export const fact = (answer: Answer<'drawer'>) => answer.fact;
export const dealtWith = (answer: Answer<'drawer'>) => (answer.is === 'stated' ? answer.fact.status : undefined);
// @ts-expect-error the drawer is not read from the answer for another finding
readDrawer(ask(facts, 'paper', {}));
// @ts-expect-error a status is never missing, and `normal` is none
export const noStatus: AnyFact['status'] = 'normal';

/** Rays, webs and sides are not strings or any number. */
// @ts-expect-error there is no sixth ray
export const noRay: Subject = { at: 'ray', ray: 6 };
// @ts-expect-error there is no fifth web space
export const noWeb: Subject = { at: 'web', web: 5 };
// @ts-expect-error a side is right or left
ask(facts, 'drawer', { side: 'dexter' });

/** An outcome without a stage says why, and one with a stage holds it. */
// @ts-expect-error `cannot stage` needs its reason
export const noReason: StageOutcome = { is: 'cannot stage' };
// @ts-expect-error a span is no single stage
export const spanAsStage: StageOutcome = { is: 'span', stage: 2 };
// @ts-expect-error what is computed always has a next step
export const noNext: AdvisedRay = { side: 'right', ray: 2, outcome: { is: 'staged', stage: 2 } };

/** A clinical rule or row without its source and mark does not compile. */
const { mark: _mark, ...unmarked } = rule;
// @ts-expect-error a rule needs a mark
defineRule(unmarked);
const { source: _source, ...unsourced } = row;
// @ts-expect-error a path row needs a source
export const noSource: PathRow = unsourced;
// @ts-expect-error `probably read` is no mark
export const noMark: Rule = { ...rule, mark: 'probably read' };
// @ts-expect-error a caution that has no text
export const noCaution: PathRow = { ...row, cautions: ['be careful'] };
// @ts-expect-error a path input outside its closed set
export const noInput: Pick<PathInputs, 'joint'> = { joint: 'wobbly' };
