import { CONVERTED, UNIT_WORDS } from '../lexicon/unit-words.ts';
import { own } from '../own.ts';
import { matchesAt } from '../reader/forms.ts';
import { endsSegment, type Item } from '../reader/items.ts';
import { spokenBreak, spokenQuote } from './spoken-breaks.ts';
import { spokenDate } from './spoken-dates.ts';
import { heardNumber, spokenQuantity } from './spoken-numbers.ts';
import { phrases, wordAt } from './spoken-phrases.ts';
import { spokenRays } from './spoken-rays.ts';
import { isPlaceNoun, spelledWord } from './spoken-spelling.ts';
import * as spoken from './spoken-words.ts';

const hesitations = phrases(spoken.HESITATIONS);
const openings = phrases(spoken.OPENINGS);

/** Every word with which dictated text may start what typed text writes otherwise; a line without one is left as it is. */
const STARTS: ReadonlySet<string> = new Set(
  [
    spoken.NUMBER_WORDS.keys(),
    spoken.ORDINAL_WORDS.keys(),
    spoken.MONTHS.keys(),
    Object.keys(spoken.HEARD_AS),
    Object.keys(spoken.SPOKEN_BOUNDS),
    Object.keys(spoken.SPOKEN_BREAKS),
    Object.keys(spoken.SPELLED),
    spoken.HESITATIONS,
    spoken.OPENINGS,
    spoken.OPEN_QUOTE,
    ['point', 'percent', 'per', 'plus', 'out', 'side', 'aspect', 'surface', 'half'],
  ].flatMap((list) => [...list].map((phrase) => phrase.split(' ')[0] ?? '')),
);
/** Of the words that hyphens join only numbers are looked at one by one: `semi-rigid` starts no `semi colon`. */
const mayBeSpoken = (item: Item): boolean =>
  item.is === 'word' &&
  (item.text.length === 1 ||
    (item.parts.length === 1
      ? STARTS.has(item.parts[0] ?? '')
      : item.parts.every((part) => STARTS.has(part)) || STARTS.has(item.text.toLowerCase())));

const isUnit = (items: readonly Item[], index: number): boolean => {
  const word = wordAt(items, index);
  return Object.hasOwn(UNIT_WORDS, word) || Object.hasOwn(CONVERTED, word) || word === 'percent' || word === 'per';
};
const isMeasure = (items: readonly Item[], index: number): boolean => {
  const unit = own(UNIT_WORDS, wordAt(items, index));
  return wordAt(items, index).length > 1 && (unit === 'mm' || unit === '°' || unit === '%');
};

/**
 * The items of a line with what was dictated put as what would have been typed: numbers, dates, rays, spelled words, breaks and
 * quotes. Hesitations are left out; every other character stays in exactly one item. Typed text comes back as it went in.
 */
export function spokenItems(items: Item[], line: string): Item[] {
  if (!items.some(mayBeSpoken)) return items;
  const said = pass(items, (list, i) => quietAt(list, i) ?? one(spokenQuote(list, i, line)));
  const spelled = pass(said, (list, i) => one(spelledWord(list, i)));
  const counted = pass(spelled, (list, i) => one(spokenDate(list, i)) ?? spokenRays(list, i));
  const numbered = pass(counted, (list, i) => one(spokenQuantity(list, i, { isUnit, isMeasure })));
  const broken = pass(numbered, (list, i) => one(spokenBreak(list, i)));
  return pass(broken, (list, i) => one(heardAt(list, i)));
}

type Taker = (
  items: readonly Item[],
  index: number,
) => { readonly items: readonly Item[]; readonly next: number } | undefined;
function pass(items: readonly Item[], take: Taker): Item[] {
  const list: Item[] = [];
  for (let i = 0; i < items.length; ) {
    const taken = take(items, i);
    if (taken) list.push(...taken.items);
    else list.push(items[i] as Item);
    i = taken?.next ?? i + 1;
  }
  return list;
}
const one = (taken: { item: Item; next: number } | undefined) => taken && { items: [taken.item], next: taken.next };

const startsClause = (items: readonly Item[], index: number): boolean =>
  index === 0 || items[index - 1]?.is === 'break' || spokenBreak(items, index - 1) !== undefined;

function quietAt(items: readonly Item[], index: number): { items: readonly Item[]; next: number } | undefined {
  const found = hesitations.at(items, index);
  if (found) return { items: [], next: found.next };
  const opened = startsClause(items, index) ? openings.at(items, index) : undefined;
  if (opened && !endsSegment(items[opened.next])) return { items: [], next: opened.next };
  return isPlaceNoun(items, index) ? { items: [], next: index + 1 } : undefined;
}

const heardAt: (items: readonly Item[], index: number) => { item: Item; next: number } | undefined = (items, index) =>
  heardNumber(items, index, {
    isMeasure,
    isKnown: (next) => items[next]?.is !== 'word' || matchesAt(items, next).length > 0,
  });
