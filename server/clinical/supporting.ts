import type { Ray, Side } from '../../grammar/values.ts';
import type { Evidence } from './analysis.ts';
import { clearFacts, straightToe } from './answers.ts';
import type { AnyFact, VisitFacts } from './facts.ts';

/** Where the table of the stages and the practice of these rows differ, both are named. */
export const TABLE = 'the published table (COUGH11, from memory)';
const normalPurchase = (low: number): string =>
  low >= 1 ? `purchase is normal; ${TABLE} has none normal from stage 1 up` : 'purchase is normal: stage 0 is doubtful';

/** What a supporting or questioning finding says of a stage. It never moves the number. */
export function supporting(visit: VisitFacts, side: Side, ray: Ray, stages: readonly number[]): Evidence[] {
  const about = { side, ray };
  const { facts } = visit;
  const list: Evidence[] = [];
  const add = (fact: AnyFact, role: Evidence['role'], why: string) =>
    list.push({ statement: fact.statement, place: fact.origin.word, finding: fact.finding, role, why });
  const low = Math.min(...stages);
  const high = Math.max(...stages);
  for (const fact of clearFacts(facts, 'paper', about)) {
    const holds = fact.values.result?.words.includes('holds');
    if (fact.values.result)
      add(fact, holds ? 'questions' : 'supports', holds ? normalPurchase(low) : 'purchase is reduced');
  }
  for (const fact of clearFacts(facts, 'lifted', about))
    if (fact.status === 'present') add(fact, 'supports', 'the toe has lost ground contact');
  for (const fact of clearFacts(facts, 'rotation', about))
    if (fact.status === 'present' && fact.values.direction?.words.includes('supinated'))
      add(fact, 'supports', 'the toe is supinated');
  for (const fact of clearFacts(facts, 'swelling', about))
    if (fact.status === 'present' && high <= 2) add(fact, 'supports', 'the joint is swollen');
  for (const fact of clearFacts(facts, 'gap', { side }))
    if (fact.status === 'present' && (fact.values.between?.web === ray || fact.values.between?.web === ray - 1))
      add(fact, 'supports', 'the space beside the toe is widened');
  for (const fact of straightToe(facts, about))
    if (low >= 1)
      add(
        fact,
        'questions',
        `the toe is straight${low >= 3 ? ': verify with a second examiner' : ''}; ${TABLE} has it out of line`,
      );
  for (const fact of clearFacts(facts, 'pip', about))
    if (fact.values.rigidity?.words.includes('fixed') && high <= 3)
      add(fact, 'questions', `${TABLE} has a fixed PIP joint at stage 4 only; alone it moves no stage`);
  for (const finding of ['deviation', 'extension'] as const)
    for (const fact of clearFacts(facts, finding, about) as AnyFact[])
      if (fact.status === 'present' && low >= 1)
        add(fact, 'supports', finding === 'extension' ? 'the toe is extended' : 'the toe deviates');
  for (const fact of clearFacts(facts, 'tear', about))
    if (fact.status === 'present' || fact.status === 'absent')
      add(
        fact,
        (fact.status === 'present') === high >= 1 ? 'supports' : 'questions',
        `imaging reports ${fact.status === 'present' ? 'a tear' : 'no tear'}`,
      );
  for (const fact of clearFacts(facts, 'drawer', about))
    if (fact.values.guarding)
      add(
        fact,
        'questions',
        isStable(fact) ? 'guarding can hide instability: repeat it, under a block if need be' : 'the test met guarding',
      );
  return list;
}

/** A drawer that showed nothing to move. */
export const isStable = ({ status, values }: Extract<AnyFact, { finding: 'drawer' }>): boolean =>
  status === 'absent' || values.grade?.high === 0;
