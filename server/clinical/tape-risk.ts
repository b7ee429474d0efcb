import type { Ray, Side } from '../../grammar/values.ts';
import { clearFacts } from './answers.ts';
import { pulsesFelt } from './circulation.ts';
import type { EpisodeState } from './episode.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { isOpenWound } from './open-wound.ts';
import { footSensation } from './sensation.ts';
import { isRisk } from './watch.ts';

interface TapeView {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
}
/** The toe that is to be taped, as far as it is named. */
interface Toe {
  readonly side?: Side | undefined;
  readonly ray?: Ray | undefined;
}

/** What this visit, or an earlier one that it doesn't correct, states against tape on a toe (common practice). */
export interface AgainstTape {
  /** `a tape allergy`, `no feeling`, `an absent pulse`, and so on; empty where nothing is stated. */
  readonly reasons: readonly string[];
  readonly allergies: readonly AnyFact[];
  /** The skin is numb, poorly supplied or broken: then a splint presses too. */
  readonly skinAtRisk: boolean;
}

export function againstTape({ visit, before: { watch, known } }: TapeView, toe: Toe): AgainstTape {
  const allergies: AnyFact[] = clearFacts(visit.facts, 'allergy').filter(
    ({ status, values }) => status === 'present' && values.to?.words.includes('tape'),
  );
  const told = clearFacts(visit.facts, 'allergy').length === 0 && isRisk(watch, 'allergy tape');
  const sides: readonly Side[] = toe.side ? [toe.side] : ['right', 'left'];
  const numb = sides.some((side) => (footSensation(visit, side) ?? known.feeling[side]?.is) === 'lost');
  const pulseless = sides.some((side) => {
    const pulses = pulsesFelt(visit, side);
    return (pulses === 'not examined' ? watch[`pulses ${side}`] : pulses) === 'absent';
  });
  const skin = [...(numb ? ['no feeling'] : []), ...(pulseless ? ['an absent pulse'] : []), ...poorSkin(visit, toe)];
  const allergic = allergies.length > 0 || told;
  const rash = allergies.length > 0 && allergies.every((fact) => saysRash(fact));
  const reason = rash ? 'a rash from tape' : 'a tape allergy';
  return { reasons: [...(allergic ? [reason] : []), ...skin], allergies, skinAtRisk: skin.length > 0 };
}

const saysRash = (fact: AnyFact): boolean =>
  fact.finding === 'allergy' && (fact.values.reaction?.words.includes('rash on contact') ?? false);

const FRAGILE: readonly string[] = ['fragile', 'macerated', 'blistered'];
const POOR: readonly string[] = ['pale', 'white', 'blue', 'cold'];
/** Of the taped toe or its foot: fragile skin, an open wound, a toe that is poorly supplied; the first of them. */
function poorSkin({ facts }: VisitFacts, toe: Toe): string[] {
  const near = ({ subject, side, status }: AnyFact): boolean =>
    status === 'present' &&
    (!side || !toe.side || side === toe.side) &&
    (subject.at !== 'ray' || toe.ray === undefined || subject.ray === toe.ray);
  if (
    clearFacts(facts, 'skin').some(
      (fact) => near(fact) && fact.values.condition?.words.some((word) => FRAGILE.includes(word)),
    )
  )
    return ['skin that is fragile or broken'];
  if (clearFacts(facts, 'wound').some((fact) => near(fact) && isOpenWound(fact))) return ['an open wound'];
  const pale = clearFacts(facts, 'perfusion').some(
    (fact) => near(fact) && fact.values.state?.words.some((word) => POOR.includes(word)),
  );
  return pale ? ['a toe that is poorly supplied'] : [];
}
