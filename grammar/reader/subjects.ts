import type { SubjectNode } from '../syntax.ts';
import { isRay, isWeb, type Ray, type Web } from '../values.ts';
import { matchesAt, type WordClass } from './forms.ts';
import type { Item } from './items.ts';

export type SubjectRead =
  | { readonly subject: SubjectNode; readonly next: number }
  | { readonly problem: 'ambiguous web' | 'unread subject'; readonly next: number };

interface At {
  readonly items: readonly Item[];
  readonly start: number;
  /** A comma may join ordinals only where no finding stands before them (`drawer 2 2nd, 3rd drawer 1` is no list). */
  readonly commaJoins: boolean;
  /** Does a joint word here open a finding instead (`2nd mtp rigid`)? */
  readonly opensFinding: (index: number) => boolean;
}

/** The subject that starts at `start`, or `undefined` where none does. A list is read whole or not at all. */
export function subjectAt(at: At): SubjectRead | undefined {
  const item = at.items[at.start];
  if (item?.is === 'ordinal') return ordinals(at);
  if (item?.is === 'sided') return sided(at);
  if (item?.is === 'slashed') return slashedWeb(at);
  if (item?.is !== 'word') return undefined;
  for (const { form, next } of matchesAt(at.items, at.start)) {
    const { start } = item;
    if (form.classes.has('others')) return { subject: { at: 'others', start, end: endBefore(at.items, next) }, next };
    if (form.classes.has('web word')) return numbered(at, next, 'web');
    if (form.classes.has('ray word')) return numbered(at, next, 'ray');
  }
  return undefined;
}

const endBefore = (items: readonly Item[], next: number): number => items[next - 1]?.end ?? 0;
const classAt = (items: readonly Item[], index: number, name: WordClass): number | undefined =>
  matchesAt(items, index).find(({ form }) => form.classes.has(name))?.next;
const wordIs = (item: Item | undefined, ...texts: string[]): boolean =>
  (item?.is === 'word' || item?.is === 'other') && texts.includes(item.text.toLowerCase());

function range(low: number, high: number): number[] {
  return high < low ? [] : Array.from({ length: high - low + 1 }, (_, i) => low + i);
}

function ordinals(at: At): SubjectRead {
  const first = at.items[at.start] as Extract<Item, { is: 'ordinal' }>;
  const rays = range(first.low, first.high);
  let next = at.start + 1;
  for (;;) {
    const joiner = at.items[next];
    const after = at.items[next + 1];
    if (after?.is !== 'ordinal') break;
    if (wordIs(joiner, 'to')) rays.push(...range((rays.at(-1) ?? 0) + 1, after.high));
    else if (wordIs(joiner, 'and', '&', '+') || (joiner?.is === 'break' && joiner.of === 'segment' && at.commaJoins))
      rays.push(...range(after.low, after.high));
    else break;
    next += 2;
  }
  const web = classAt(at.items, next, 'web word');
  if (web !== undefined) return webs(at, rays, web);
  const joint = at.opensFinding(next) ? undefined : classAt(at.items, next, 'joint word');
  if (joint === undefined && isMetatarsal(at.items, next)) return raySubject(at, rays, next + 1, 'metatarsal');
  return raySubject(at, rays, joint ?? next, joint === undefined ? undefined : 'joint');
}

function sided(at: At): SubjectRead {
  const item = at.items[at.start] as Extract<Item, { is: 'sided' }>;
  const node = raySubject(at, [item.ray], at.start + 1);
  return 'subject' in node ? { ...node, subject: { ...node.subject, side: item.side } as SubjectNode } : node;
}

/** `2/3 web` is the space between the second and third rays. */
function slashedWeb(at: At): SubjectRead | undefined {
  const item = at.items[at.start] as Extract<Item, { is: 'slashed' }>;
  const next = classAt(at.items, at.start + 1, 'web word');
  if (next === undefined || item.second !== item.first + 1) return undefined;
  return webs(at, [item.first], next);
}

function raySubject(at: At, numbers: readonly number[], next: number, part?: 'joint' | 'metatarsal'): SubjectRead {
  const rays = numbers.filter(isRay) as Ray[];
  if (rays.length === 0 || rays.length !== numbers.length) return { problem: 'unread subject', next };
  const { start } = at.items[at.start] as Item;
  const unique = [...new Set(rays)].sort((a, b) => a - b);
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

const METATARSAL = /^mts?$|^metatarsals?$/i;
/** `2nd metatarsal tender`, and no longer phrase (`2nd metatarsal head`), which is a place. */
function isMetatarsal(items: readonly Item[], index: number): boolean {
  const item = items[index];
  return item?.is === 'word' && METATARSAL.test(item.text) && matchesAt(items, index)[0]?.next === index + 1;
}

/** `web 2`, `webs 2-3`, `toe 2`, `MTPs 2,3,5`; without a number the word is no subject. */
function numbered(at: At, from: number, kind: 'ray' | 'web'): SubjectRead | undefined {
  const numbers: number[] = [];
  let next = from;
  let ranged = false;
  for (;;) {
    const item = at.items[next];
    if (item?.is !== 'number' || item.unit !== undefined || item.bound !== undefined || item.plus) break;
    numbers.push(...range(item.low, item.high));
    ranged ||= item.range;
    next++;
    const joiner = at.items[next];
    const joins =
      wordIs(joiner, 'and', '&') || (joiner?.is === 'break' && joiner.of === 'segment' && touches(at.items, next));
    if (!joins || at.items[next + 1]?.is !== 'number') break;
    next++;
  }
  const opening = at.items[at.start];
  if (numbers.length === 0 && kind === 'web' && /s$/i.test(textBetween(at, from))) return webs(at, [1, 2, 3, 4], from);
  if (numbers.length === 0) return undefined;
  const text = opening?.is === 'word' ? opening.text : '';
  if (kind === 'web') {
    if (ranged && !/s$/i.test(textBetween(at, from))) return { problem: 'ambiguous web', next };
    return webs(at, numbers, next);
  }
  return raySubject(at, numbers, next, METATARSAL.test(text) ? 'metatarsal' : /^mtp/i.test(text) ? 'joint' : undefined);
}

const textBetween = (at: At, next: number): string => {
  const last = at.items[next - 1];
  return last?.is === 'word' ? last.text : '';
};
/** `MTPs 2,3,5`: only a comma that touches its numbers joins them. */
function touches(items: readonly Item[], comma: number): boolean {
  const [before, here, after] = [items[comma - 1], items[comma], items[comma + 1]];
  return before?.end === here?.start && here?.end === after?.start;
}
