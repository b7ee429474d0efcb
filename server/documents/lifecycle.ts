import { SIGNER_ROLES } from '../../grammar/lexicon/lifecycle-words.ts';
import type { Signing } from '../../grammar/syntax.ts';
import type { Carried, Place, VisitEvent, VisitFacts, VisitPart } from '../clinical/facts.ts';
import { placeOf, type Site } from './places.ts';
import { type Part, type Run, type Sentence, sentence } from './sentence.ts';
import { dateWords, valueWords } from './values.ts';

/** Whatever stands on a line of the lifecycle, traced to it. */
const toldOf = (text: string, place: Place, what: string): Run => ({
  text,
  from: [{ statement: `${place.line}:${what}`, place }],
});

const at = (clock: Signing['clock']): string => (clock ? ` ${valueWords({ is: 'clock', ...clock })}` : '');
const on = ({ date, clock }: Signing): string => (date ? ` on ${dateWords(date)}${at(clock)}` : at(clock));
const person = (by: string): string => (SIGNER_ROLES.includes(by) ? `the ${by}` : by);

const EVENTS: Readonly<Record<VisitEvent['event'], string>> = {
  reduction: 'reduction',
  'pin-out': 'pin removal',
  block: 'anaesthetic block',
};
/** Heads what was found after an event. */
export const eventTitle = ({ event, clock }: VisitEvent): string => `After the ${EVENTS[event]}${at(clock)}`;

/** The event itself; how it went is for the findings after it to say. */
export function eventSentence({ event, clock, rays, side, place }: VisitEvent, visit: VisitFacts): Sentence {
  const own = side ?? (visit.side === 'both' ? undefined : visit.side);
  const sites = rays.map((ray): Site => ({ subject: { at: 'ray', ray }, ...(own ? { side: own } : {}) }));
  const where =
    sites.length > 0
      ? ` of ${placeOf(sites, event === 'reduction' ? 'MTP joint' : 'ray', visit.side).text}`
      : side && side !== visit.side
        ? ` of the ${side} foot`
        : '';
  const text = `${EVENTS[event]}${where} was recorded${at(clock)}`;
  return sentence('stated', 'event', toldOf(text, place, 'event'));
}

export const ADDENDUM = 'Addendum';
export const addendumTitle = ({ date }: Signing): string =>
  date ? `${ADDENDUM} of ${dateWords(date)}` : `${ADDENDUM}, date not stated`;

/** Who added it, and when in the day. */
export function addendumSentence(addendum: NonNullable<VisitPart['addendum']>): Sentence {
  const { by, clock, place } = addendum;
  const text = by
    ? `added by ${person(by)}${at(clock)}`
    : `who added it is not stated${clock ? `, recorded${at(clock)}` : ''}`;
  return sentence('stated', 'addendum', toldOf(text, place, 'addendum'));
}

/** Who signed and when. Of words that were changed since, nobody is said to have signed them as they stand. */
export function signatureSentence(signature: NonNullable<VisitPart['signature']>): Sentence {
  const { by, date, seal, place } = signature;
  const parts: Part[] = [
    `signed${on(signature)}`,
    by ? ` by ${person(by)}` : '; by whom is not stated',
    date ? '' : '; the day is not stated',
    seal
      ? seal.holds
        ? `, seal ${seal.text}`
        : `; the words above are not those that were sealed (${seal.text})`
      : '',
  ];
  return sentence('stated', 'signature', toldOf(parts.join(''), place, 'signature'));
}

/** What was copied and not confirmed, word for word: it says nothing of this visit. */
export function carriedSentence({ text, place, date }: Carried): Sentence {
  const from = date ? `the visit of ${dateWords(date)}` : 'an earlier visit';
  const words = text.includes('"') ? `“${text}”` : `"${text}"`;
  const run = toldOf(words.replace(/\s+/g, ' '), place, 'carried');
  return sentence('verbatim', `carried ${place.line}`, `carried from ${from}, not confirmed: `, run);
}
