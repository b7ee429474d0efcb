import { saidNeighbours } from '../spoken/spoken-neighbours.ts';
import type { SubjectNode } from '../syntax.ts';
import { isRay, isWeb, type Ray, type Web } from '../values.ts';
import { matchesAt, type WordClass } from './forms.ts';
import type { Item } from './items.ts';
import { quantityAt } from './quantities.ts';

export type SubjectRead =
  | { readonly subject: SubjectNode; readonly next: number }
  | { readonly problem: 'ambiguous web' | 'unread subject'; readonly next: number };

interface At {
  readonly items: readonly Item[];
  readonly start: number;
  /** A comma may join ordinals only where no finding stands before them (`drawer 2 2nd, 3rd drawer 1` is no list). */
  readonly commaJoins: boolean;
  /** Side by side only where no finding stands directly before them (`tender 2nd 3rd swollen` is no list). */
  readonly adjoins: boolean;
  /** Does a joint word here open a finding instead (`2nd mtp rigid`)? */
  readonly opensFinding: (index: number) => boolean;
}

/** Cheap enough to ask of every item: most are words of no subject. */
export const mayBeSubject = (items: readonly Item[], start: number): boolean =>
  items[start]?.is !== 'word' || matchesAt(items, start).some(({ form }) => form.opensSubject);

/** The subject that starts at `start`, or `undefined` where none does. A list is read whole or not at all. */
export function subjectAt(at: At): SubjectRead | undefined {
  const item = at.items[at.start];
  if (item?.is === 'ordinal') return counts(at.items, at.start) ? undefined : ordinals(at);
  if (item?.is === 'sided') return sided(at);
  if (item?.is === 'slashed') return slashedWeb(at);
  if (item?.is !== 'word') return undefined;
  for (const { form, next } of matchesAt(at.items, at.start)) {
    const { start } = item;
    if (form.classes.has('others')) return { subject: { at: 'others', start, end: endBefore(at.items, next) }, next };
    if (form.classes.has('web word')) return sidedWeb(at, next) ?? numbered(at, next, 'web');
    if (form.classes.has('ray word')) return numbered(at, next, 'ray');
  }
  return undefined;
}

/** `2nd opinion`, `3rd episode`, `tried 2nd steroid`: which of several, and no ray. */
const COUNTED: ReadonlySet<string> = new Set([
  ...[
    'opinion',
    'visit',
    'time',
    'day',
    'week',
    'month',
    'year',
    'attempt',
    'try',
    'look',
    'episode',
    'pregnancy',
    'examiner',
  ],
  ...['mri', 'ct', 'scan', 'steroid', 'injection', 'cortisone', 'dose', 'line', 'operation'],
]);
const counts = (items: readonly Item[], at: number): boolean => {
  const after = items[at + 1];
  return after?.is === 'word' && COUNTED.has(after.text.toLowerCase());
};

const endBefore = (items: readonly Item[], next: number): number => items[next - 1]?.end ?? 0;
const classAt = (items: readonly Item[], index: number, name: WordClass): number | undefined =>
  matchesAt(items, index).find(({ form }) => form.classes.has(name))?.next;
const wordIs = (item: Item | undefined, ...texts: string[]): boolean =>
  (item?.is === 'word' || item?.is === 'other') && texts.includes(item.text.toLowerCase());

function range(low: number, high: number): number[] {
  const numbers: number[] = [];
  for (let number = low; number <= high; number++) numbers.push(number);
  return numbers;
}

function ordinals(at: At): SubjectRead {
  const first = at.items[at.start] as Extract<Item, { is: 'ordinal' }>;
  const rays = range(first.low, first.high);
  let next = at.start + 1;
  let unjoined = first.high > first.low;
  for (;;) {
    const joiner = at.items[next];
    const after = at.items[next + 1];
    if (joiner?.is === 'ordinal' && at.adjoins) {
      rays.push(...range(joiner.low, joiner.high));
      unjoined = true;
      next += 1;
      continue;
    }
    if (after?.is !== 'ordinal') break;
    if (wordIs(joiner, '/') && touches(at.items, next)) {
      unjoined = true;
      rays.push(...range(after.low, after.high));
    } else if (wordIs(joiner, 'to')) {
      unjoined = true;
      rays.push(...range((rays.at(-1) ?? 0) + 1, after.high));
    } else if (wordIs(joiner, 'and', '&', '+') || (joiner?.is === 'break' && joiner.of === 'segment' && at.commaJoins))
      rays.push(...range(after.low, after.high));
    else break;
    next += 2;
  }
  const web = classAt(at.items, next, 'web word');
  // `2nd-3rd web`, `2nd/3rd web` and `2nd 3rd web` may be the space between them, or both spaces.
  const between = unjoined && web !== undefined && !/s$/i.test(textBetween(at, web));
  if (web !== undefined) return between ? { problem: 'ambiguous web', next: web } : webs(at, rays, web);
  const joint = at.opensFinding(next) ? undefined : (classAt(at.items, next, 'joint word') ?? joints(at, next, rays));
  if (joint === undefined && isMetatarsal(at.items, next)) return raySubject(at, rays, next + 1, 'metatarsal');
  return raySubject(at, rays, joint ?? next, joint === undefined ? undefined : partNamed(textBetween(at, joint)));
}

/** `2nd 3rd 4th MTPs`, and no list of its own (`2nd MTPs 3-4`). */
function joints(at: At, next: number, rays: readonly number[]): number | undefined {
  const end = rays.length > 1 ? classAt(at.items, next, 'joints word') : undefined;
  return end === undefined || at.items[end]?.is === 'number' || at.items[end]?.is === 'slashed' ? undefined : end;
}

function sided(at: At): SubjectRead {
  const item = at.items[at.start] as Extract<Item, { is: 'sided' }>;
  const rays: number[] = [item.ray];
  let next = at.start + 1;
  for (;;) {
    const [joiner, after] = [at.items[next], at.items[next + 1]];
    const comma = joiner?.is === 'break' && joiner.of === 'segment' && at.commaJoins;
    if (after?.is !== 'sided' || after.side !== item.side || !(comma || wordIs(joiner, 'and', '&', '+'))) break;
    rays.push(after.ray);
    next += 2;
  }
  const joint = at.opensFinding(next)
    ? undefined
    : classAt(at.items, next, rays.length > 1 ? 'joints word' : 'joint word');
  const part = joint === undefined ? undefined : partNamed(textBetween(at, joint));
  const node = raySubject(at, rays, joint ?? next, part);
  return 'subject' in node ? { ...node, subject: { ...node.subject, side: item.side } as SubjectNode } : node;
}

/** `2/3 web` is the space between the second and third rays. */
function slashedWeb(at: At): SubjectRead | undefined {
  const item = at.items[at.start] as Extract<Item, { is: 'slashed' }>;
  const next = classAt(at.items, at.start + 1, 'web word');
  if (next === undefined || item.second !== item.first + 1 || !isWhole(item)) return undefined;
  return webs(at, [item.first], next);
}

type Part = NonNullable<Extract<SubjectNode, { at: 'rays' }>['part']>;
const METATARSAL = /^(?:mt|met|metatarsal)s?$/i;
/** `2nd MTP` is the joint and `2nd toe` the toe; `2nd ray` is no more than `2nd`. */
function partNamed(word: string): Part | undefined {
  if (/^rays?$/i.test(word)) return undefined;
  return /^toes?$/i.test(word) ? 'toe' : METATARSAL.test(word) ? 'metatarsal' : 'joint';
}
function raySubject(at: At, numbers: readonly number[], next: number, part?: Part): SubjectRead {
  const rays = numbers.filter(isRay) as Ray[];
  if (rays.length === 0 || rays.length !== numbers.length) return { problem: 'unread subject', next };
  const { start } = at.items[at.start] as Item;
  const unique = rays.length === 1 ? rays : [...new Set(rays)].sort((a, b) => a - b);
  return {
    subject: { at: 'rays', rays: unique, ...(part ? { part } : {}), start, end: endBefore(at.items, next) },
    next,
  };
}

function webs(at: At, numbers: readonly number[], next: number): SubjectRead {
  const spaces = numbers.filter(isWeb) as Web[];
  if (spaces.length === 0 || spaces.length !== numbers.length) return { problem: 'unread subject', next };
  const { start } = at.items[at.start] as Item;
  return { subject: { at: 'webs', webs: spaces, start, end: endBefore(at.items, next) }, next };
}

/** `2nd metatarsal tender`, and no longer phrase (`2nd metatarsal head`), which is a place. */
function isMetatarsal(items: readonly Item[], index: number): boolean {
  const item = items[index];
  return item?.is === 'word' && METATARSAL.test(item.text) && matchesAt(items, index)[0]?.next === index + 1;
}

/** `webs R 2-3`: the side between the word and its numbers. */
function sidedWeb(at: At, from: number): SubjectRead | undefined {
  const word = at.items[from];
  const side = matchesAt(at.items, from).find(({ form }) => form.side && form.parts.length === 1);
  const number = at.items[side?.next ?? from];
  if (word?.is !== 'word' || !side?.form.side || side.form.side === 'both' || number?.is !== 'number') return undefined;
  const low = number.low;
  const whole = number.range ? isPlural(at, from) : true;
  if (!whole || number.unit !== undefined || number.bound !== undefined || number.plus) return undefined;
  if (!isAlone(at.items[side.next + 1])) return undefined;
  const read = webs(at, range(low, number.high), side.next + 1);
  return 'subject' in read ? { ...read, subject: { ...read.subject, side: side.form.side } as SubjectNode } : read;
}
/** No list goes on after it, and no unit or share. */
const isAlone = (item: Item | undefined): boolean =>
  item === undefined || item.is === 'word' || item.is === 'comment' || item.is === 'keeper';

/** `web 2`, `webs 2-3`, `toe 2`, `MTPs 2,3,5`; without a number the word is no subject. */
function numbered(at: At, from: number, kind: 'ray' | 'web'): SubjectRead | undefined {
  const pairSaid = kind === 'web' ? saidNeighbours(at.items, from) : undefined;
  if (pairSaid !== undefined) return { problem: 'ambiguous web', next: pairSaid };
  const numbers: number[] = [];
  let next = from;
  let ranged = false;
  for (;;) {
    const item = at.items[next];
    if (item?.is !== 'number' || item.unit !== undefined || item.bound !== undefined || item.plus) break;
    numbers.push(...range(item.low, item.high));
    ranged ||= item.range;
    next++;
    const following = joined(at, next, numbers.at(-1) ?? 0, from);
    if (following === undefined) break;
    next = following;
  }
  // After a finding, `toes 2 3` may be two toes, or a toe and a value.
  if (!at.adjoins && numbers.length === 1 && isPlural(at, from) && isBare(at.items, next))
    return { problem: 'unread subject', next: next + 1 };
  const pair = numbers.length === 0 && kind === 'ray' && isPlural(at, from) ? slashedRays(at.items[next]) : undefined;
  const opening = at.items[at.start];
  const text = opening?.is === 'word' ? opening.text : '';
  if (pair) return raySubject(at, pair, next + 1, partNamed(text));
  if (numbers.length === 0 && kind === 'web' && /s$/i.test(textBetween(at, from))) return webs(at, [1, 2, 3, 4], from);
  if (numbers.length === 0) return undefined;
  if (kind === 'web') {
    if (ranged && !/s$/i.test(textBetween(at, from))) return { problem: 'ambiguous web', next };
    return webs(at, numbers, next);
  }
  return raySubject(at, numbers, next, partNamed(text));
}

/** The index of the next number of a list, if one follows: after `and`, a comma that touches, and, of several, side by side or after any comma. */
function joined(at: At, next: number, last: number, from: number): number | undefined {
  const joiner = at.items[next];
  const comma = joiner?.is === 'break' && joiner.of === 'segment';
  if (wordIs(joiner, 'and', '&') || (comma && touches(at.items, next)))
    return at.items[next + 1]?.is === 'number' ? next + 1 : undefined;
  const index = comma && at.commaJoins ? next + 1 : next;
  if (!isPlural(at, from) || !at.adjoins) return undefined;
  const item = at.items[index];
  return item?.is === 'number' && item.low > last && isBare(at.items, index) ? index : undefined;
}
/** The number of a ray: no unit, bound or sign. */
function isBare(items: readonly Item[], index: number): boolean {
  const quantity = items[index]?.is === 'number' ? quantityAt(items, index) : undefined;
  return quantity !== undefined && !quantity.unit && !quantity.plus && !quantity.bound && quantity.high <= 5;
}
/** `toes 3/4`: neighbours, and no fraction that means something else (`toes 4/5` is their strength). */
function slashedRays(item: Item | undefined): number[] | undefined {
  if (item?.is !== 'slashed' || item.first < 2 || item.second > 4 || !isWhole(item)) return undefined;
  return item.second === item.first + 1 ? [item.first, item.second] : undefined;
}
/** Two numbers and nothing about them (`2-3/4`, `~2/3`). */
const isWhole = ({ from, bound }: Extract<Item, { is: 'slashed' }>): boolean => from === undefined && !bound;
const isPlural = (at: At, from: number): boolean => /s$/i.test(textBetween(at, from));
const textBetween = (at: At, next: number): string => {
  const last = at.items[next - 1];
  return last?.is === 'word' ? last.text : '';
};
/** `MTPs 2,3,5`: only a comma that touches its numbers joins them. */
function touches(items: readonly Item[], comma: number): boolean {
  const [before, here, after] = [items[comma - 1], items[comma], items[comma + 1]];
  return before?.end === here?.start && here?.end === after?.start;
}
