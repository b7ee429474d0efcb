import type { Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import type { VisitFacts } from './facts.ts';

export type Feeling = 'normal' | 'reduced' | 'lost';

/** What the visit says of feeling in the foot. */
export function footSensation(visit: VisitFacts, side: Side): Feeling | undefined {
  const words: string[] = [];
  for (const fact of clearFacts(visit.facts, 'sensation', { side })) {
    if (fact.subject.at !== 'foot') continue;
    words.push(...(fact.values.state?.words ?? []));
    const felt = fact.values.monofilament;
    if (felt) words.push(felt.part === 0 ? 'lost' : felt.part < felt.whole ? 'reduced' : 'normal');
    if (fact.status === 'absent') words.push('lost');
  }
  return (['lost', 'reduced', 'normal'] as const).find((word) => words.includes(word));
}
