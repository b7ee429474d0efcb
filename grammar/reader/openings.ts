import type { Section } from '../lexicon/entry.ts';
import type { Cause } from '../syntax.ts';
import type { Element } from './draft.ts';

/** What is planned, done or given is told item by item; elsewhere a sentence may open with who found it, or when. */
const BY_ITEM: readonly Section[] = ['plan', 'operation', 'tried'];
const YEAR = /^(?:19|20)\d\d$/;

/**
 * `gp found 2nd tender, drawer 2`, `in 2024 2nd tender, drawer 1`: unread words that open a sentence may say who found it, or when, of all
 * that the sentence goes on with. A known word out of its place, or a number other than a year, reaches no further than its segment.
 */
export function openingReach(elements: readonly Element[], section: Section): void {
  const [first] = elements;
  if (first?.is !== 'unread' || BY_ITEM.includes(section) || !opens(first.cause)) return;
  const from = elements.findIndex(({ is }) => is === 'break');
  const ahead = elements.slice(0, Math.max(from, 0));
  const told = ahead.some(({ is }) => is === 'finding');
  if (!told && !isTime(first.cause)) return;
  for (const element of elements.slice(from)) if (element.is === 'finding') element.draft.causes.push(first.cause);
}

const isTime = ({ why, text }: Cause): boolean => why === 'ambiguous date' || YEAR.test(text);
const opens = (cause: Cause): boolean => cause.why === 'unknown word' || isTime(cause);
