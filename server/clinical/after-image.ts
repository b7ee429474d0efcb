import type { Side } from '../../grammar/values.ts';
import { dayOf, daysBetween } from './dates.ts';
import type { EpisodeState } from './episode.ts';
import type { VisitFacts } from './facts.ts';
import { injuryDays } from './injury.ts';
import { injectionDays } from './watch.ts';

interface Seen {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
}

/** The newest injury and injection of a foot, as early as each may have been. */
export function eventsOf({ visit, before }: Seen, side?: Side): { name: string; day: string }[] {
  const injury = injuryDays(visit);
  const events = (['patient', side ?? 'patient'] as const).flatMap((each) => [
    { name: 'the injury', day: (injury[each] ?? before.injury[each])?.earliest },
    {
      name: 'an injection',
      day: [...(before.watch[`injection ${each}`]?.split(' ') ?? []), ...injectionDays(visit, each)].sort().at(-1),
    },
  ]);
  return events.flatMap(({ name, day }) => (day ? [{ name, day }] : []));
}
/** Is one ISO day surely before another? A day that is not known is before none. */
export const isBefore = (iso: string, other: string): boolean => {
  const [a, b] = [dayOf(iso), dayOf(other)];
  return a !== undefined && b !== undefined && daysBetween(a, b) > 0;
};
