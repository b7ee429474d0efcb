import { eventsOf, isBefore } from '../after-image.ts';
import { ageOf, dayFrom, daysBefore, isoOf } from '../dates.ts';
import type { PlateImage } from '../episode.ts';
import type { AnyFact } from '../facts.ts';
import { clear, type View } from './view.ts';

/** The day of an image as its section states it; a report without it may be of any day before the visit. */
export function takenOn(view: View, by: PlateImage['by']): { text: string; latest?: string } {
  const { visit } = view;
  const [dated] = clear(view, 'image-date').filter(({ section, values }) => section === by && values.on);
  const on = dated?.values.on;
  const age = on && ageOf(on, visit);
  if (!age || !visit.date) return { text: 'day of the image not stated' };
  const latest = isoOf(daysBefore(dayFrom(visit.date), Math.floor(age.least)));
  return { text: `taken ${latest}${age.most > age.least ? ' at the latest' : ''}`, latest };
}

/** The injury or the injection that surely came after the image. */
export function newerEvent(view: View, latest: string | undefined): string | undefined {
  return latest === undefined ? undefined : eventsOf(view, view.side).find(({ day }) => isBefore(latest, day))?.name;
}

/** Was the image of a fact taken, as its section states, before an injury or an injection of this foot? */
export function isOutdated({ section }: AnyFact, view: View): boolean {
  if (section !== 'us' && section !== 'mri') return false;
  return newerEvent(view, takenOn(view, section).latest) !== undefined;
}
