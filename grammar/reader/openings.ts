import * as closed from '../lexicon/closed-words.ts';
import type { Section } from '../lexicon/entry.ts';
import type { Cause } from '../syntax.ts';
import { type Element, findingsIn, isBare } from './draft.ts';

/** What is planned, done or given is told item by item; elsewhere a sentence may open with who found it, or when. */
const BY_ITEM: readonly Section[] = ['plan', 'operation', 'tried'];
const YEAR = /^(?:19|20)\d\d$/;

/** A joint that is not what it was, and results that say nothing. */
const NOT_NATIVE: readonly string[] = ['amputated', 'fused', 'pinned', 'arthrodesed'];
/** In a plan they stop, doubt or put off, and so what is only named after them. */
const STOPPERS: readonly string[] = [
  'd/c',
  'stop',
  'wean',
  'finish',
  'cease',
  'cancel',
  'out',
  'unable',
  'cannot',
  "can't",
  'forgot',
  'return',
  'poss',
  'allergic',
  'once',
  'failing',
];

/**
 * `gp found 2nd tender, drawer 2`, `in 2024 2nd tender, drawer 1`: unread words that open a sentence may say who found it, or when, of all
 * that the sentence goes on with; so do words that move it, doubt it or say how often, before its first comma (`sometimes, 2nd overlaps`). A known
 * word out of its place, or a number other than a year, reaches no further than its segment.
 */
export function openingReach(elements: readonly Element[], section: Section): void {
  const from = elements.findIndex(({ is }) => is === 'break');
  if (from < 0) return;
  const ahead = elements.slice(0, from);
  const cause = BY_ITEM.includes(section) ? undefined : openerIn(ahead);
  if (cause) {
    for (const { causes } of findingsIn(elements.slice(from))) causes.push(cause);
    return;
  }
  const [first] = ahead;
  if (section !== 'plan' || first?.is !== 'unread' || !STOPPERS.includes(first.cause.text.toLowerCase())) return;
  for (const draft of findingsIn(elements.slice(from))) {
    if (!isBare(draft)) return;
    draft.causes.push(first.cause);
  }
}

function openerIn(ahead: readonly Element[]): Cause | undefined {
  const [first] = ahead;
  const told = ahead.some(({ is }) => is === 'finding');
  if (told) return first?.is === 'unread' && first.cause.why === 'unknown word' ? first.cause : timeOf(first);
  for (const element of ahead) {
    if (element.is === 'distancing') return element.cause;
    if (element.is !== 'unread') continue;
    const text = element.cause.text.toLowerCase();
    const doubts = element.cause.why === 'doubt' || closed.EQUIVOCAL.includes(text);
    if (NOT_NATIVE.includes(text) || (doubts && ahead.length === 1)) return element.cause;
  }
  return ahead.map(timeOf).find((each) => each);
}
const timeOf = (first: Element | undefined): Cause | undefined =>
  first?.is === 'unread' && (first.cause.why === 'ambiguous date' || YEAR.test(first.cause.text))
    ? first.cause
    : undefined;
