import * as closed from '../lexicon/closed-words.ts';
import { entryOf } from '../lexicon/index.ts';
import { matchesAt } from '../reader/forms.ts';
import type { Item } from '../reader/items.ts';
import { wordAt } from './spoken-phrases.ts';
import { ORDINAL_WORDS } from './spoken-words.ts';

const JOINERS: readonly string[] = ['and', 'to', '&'];
const rayAt = (items: readonly Item[], index: number): number | undefined => {
  const item = items[index];
  if (item?.is === 'ordinal') return item.low;
  const ray = ORDINAL_WORDS.get(wordAt(items, index));
  return ray !== undefined && ray <= 5 ? ray : undefined;
};

/**
 * `second`, `third and fourth`, `second to fifth` as rays: before a word that names rays or webs, and from the second on before a
 * sign or measure that a ray can have. `second steroid`, `first noticed`, `two seconds` name none.
 */
export function spokenRays(items: readonly Item[], start: number): { items: Item[]; next: number } | undefined {
  if (items[start]?.is !== 'word' || rayAt(items, start) === undefined || wordAt(items, start - 1) === 'a')
    return undefined;
  const before = items[start - 1];
  if (before?.is === 'number' && before.said === undefined && !before.unit) return undefined;
  let next = start + 1;
  while (JOINERS.includes(wordAt(items, next)) && rayAt(items, next + 1) !== undefined) next += 2;
  const isList = next > start + 1;
  const named = matchesAt(items, next).some(
    ({ form }) => form.classes.has('ray word') || form.classes.has('joint word') || form.classes.has('web word'),
  );
  if (!named && !standsAlone(items, start, next, isList)) return undefined;
  const list: Item[] = [];
  for (let i = start; i < next; i++) {
    const item = items[i] as Item;
    const ray = (i - start) % 2 === 0 ? rayAt(items, i) : undefined;
    if (ray === undefined || item.is === 'ordinal') list.push(item);
    else list.push({ is: 'ordinal', low: ray, high: ray, start: item.start, end: item.end });
  }
  const last = list.at(-1);
  const plural = items[next];
  if (last?.is !== 'ordinal' || plural?.is !== 'word' || !PLURALS.includes(plural.text.toLowerCase()))
    return { items: list, next };
  list[list.length - 1] = { ...last, end: plural.end };
  return { items: list, next: next + 1 };
}
const PLURALS: readonly string[] = ['rays', 'toes', 'joints', 'mtps'];

/** Without the word `ray`: a list that ends its sentence, or the second to fifth before what only a ray can have. */
function standsAlone(items: readonly Item[], start: number, next: number, isList: boolean): boolean {
  if (rayAt(items, start) === 1) return false;
  const after = items[next];
  if (after === undefined || after.is === 'break' || after.is === 'comment') return isList;
  if (wordAt(items, next) === closed.PANEL[0]) return true;
  return signFollows(items, next);
}

/** There may be a second of them on one toe. */
const COUNTED: readonly string[] = ['wound', 'mass', 'callus', 'corn', 'image-other', 'complication', 'recurrence'];

/** Past words that join or deny and a quality, does a sign or a measure of a ray follow? */
function signFollows(items: readonly Item[], from: number): boolean {
  for (let i = from, steps = 0; steps < 4; steps++) {
    const [match] = matchesAt(items, i);
    if (!match) return false;
    const { form } = match;
    const entries = form.findings.map(({ id }) => entryOf(id));
    const ofRay = entries.some(
      ({ kind, subjects }) => (kind === 'sign' || kind === 'measure') && subjects.includes('ray'),
    );
    if (ofRay) return !entries.some(({ id }) => COUNTED.includes(id));
    const passes = ['filler', 'no', 'not', 'adjective'] as const;
    if (entries.length > 0 || !(passes.some((name) => form.classes.has(name)) || form.values.size > 0)) return false;
    i = match.next;
  }
  return false;
}
