import { CARRIED, type Carried } from './carried.ts';
import { ORD } from './phrases/phrase.ts';
import type { SaidWord } from './said-words.ts';

/** Stands where what follows has no ray of what was said before it. */
export const APART = '¶';

const NTH = '(?:[2-5](?:nd|rd|th)(?:-[2-5](?:nd|rd|th))?|second|third|fourth|fifth)';
const WEB_NTH = '(?:[1-4](?:st|nd|rd|th)|first|second|third|fourth)';
const JOINT =
  '(?: (?:mtp joints?|metatarsal heads?|met heads?|toe joints?|toes?|mtps?|rays?|joints?|ones?|plates?|heads?))?';
const WEB = '(?: (?:web spaces?|webs?|interspaces?|spaces?))?';
const REST =
  '(?:others|rest|elsewhere|other (?:toes|rays|joints|mtps|ones|spaces|webs)|remaining (?:toes|rays|joints))';
const AT = '(?:(?<at>on|at|in|of|for|over|under|underneath|beneath) )?';
const HEAD = `${AT}(?:the )?(?:(?<side>right|left) )?(?:the )?`;
const ON_SIDE = '(?: on the (?<on>right|left))?';
const listOf = (each: string): string => `${each}(?:(?: and| to)?(?: the)? ${each})*`;
/** Where a ray is named by its bare number, a word says so. */
const NUMBERS = '[2-5](?: (?:and|to) [2-5])*(?! (?:mm|days?|weeks?|months?|degrees|plus|out))';
/** No ray: the second time, the third injection. */
const NO_RAY =
  '(?! (?:time|opinion|injection|operation|surgery|steroid|cortisone|visit|week|month|day|one in|course|attempt|degree))';
const placeOf = ({ of, counted }: Carried): string =>
  of === 'web'
    ? `${HEAD}(?:(?<nth>${listOf(WEB_NTH)})(?! (?:toe|mtp|ray))|webs? (?<num>[1-4])|(?<rest>${REST}))${WEB}${ON_SIDE}`
    : `${HEAD}(?:(?<nth>${listOf(NTH)})|(?<num>${counted ? `(?<=(?:on|at|in) )${NUMBERS}` : NUMBERS})|(?<rest>${REST})|(?<=(?:right|left) )(?<every>all(?: of them)?))${JOINT}${ON_SIDE}${NO_RAY}`;
/** What may stand between a finding, its place and its value. */
const SMALL =
  "(?:(?:is|are|feels|looks|it's|it is|they're|also|now|still|today|both|all|each|a|an|about a|at|the|i'd say|i would say|i'd call it|i'd make it|i make it|call it|definitely|clearly|really|of) )*";
const SEP = /(?: (?<broken>[,;]))?(?: and| but| then| now)? /y;
const BROKEN = /$| [,;|\n]/y;
/** What takes back, or goes on with, a list. */
const GOES_ON =
  / (?:or|sorry|wait|actually|maybe|perhaps|scratch|i mean|if|was|no (?:sorry|wait|actually|make|\d))(?![^ ])/y;

interface Item {
  readonly start: number;
  readonly end: number;
  readonly side: string | undefined;
  readonly rays: readonly number[];
  readonly under: string;
  readonly value: string;
  readonly quality: string;
  /** The finding is named in it. */
  readonly named: boolean;
  /** A word before its place, or a break after it, keeps the place from what follows. */
  readonly closed: boolean;
}
type Shape = 'placeFirst' | 'valueFirst';
interface Ready {
  readonly carried: Carried;
  readonly name: RegExp;
  readonly placeFirst: RegExp;
  readonly valueFirst: RegExp;
  readonly place: RegExp;
  readonly value: RegExp;
  readonly first: RegExp;
}
let ready: readonly Ready[] | undefined;
const sticky = (source: string): RegExp => new RegExp(`(?:${source})(?![^ ])`, 'y');

/** The patterns of each finding, made once. */
function patterns(): readonly Ready[] {
  ready ??= CARRIED.map((carried): Ready => {
    const name = `(?<name>(?:the )?(?:${carried.name}))`;
    const place = placeOf(carried);
    const value = `(?<value>${carried.values.map(([said]) => said).join('|')}|(?:the )?same)`;
    const quality = `(?<quality>${carried.qualities.map(([said]) => said).join('|') || '(?!)'})?`;
    return {
      carried,
      name: sticky(name),
      placeFirst: sticky(`${place}(?: ${name})? ${SMALL}${value}${quality}`),
      valueFirst: sticky(`${SMALL}${value}${quality}(?: ${name})? ${place}`),
      place: sticky(place),
      value: sticky(value),
      first: sticky(`${value}${quality}`),
    };
  });
  return ready;
}
function at(find: RegExp, line: string, from: number): RegExpExecArray | undefined {
  find.lastIndex = from;
  return find.exec(line) ?? undefined;
}

/**
 * The words with each list from ray to ray written out: `drawer second two third one` is a grade for each of them. Only a list whose places and
 * values alternate to its end, in one order, and with which nothing goes on; else the words are left as they were said.
 */
export function spread(words: readonly SaidWord[]): readonly SaidWord[] {
  return patterns().reduce<readonly SaidWord[]>(spreadOne, words);
}

function spreadOne(words: readonly SaidWord[], own: Ready): readonly SaidWord[] {
  const line = words.map(({ text }) => text).join(' ');
  const starts = startsOf(words);
  if (!starts.some((start) => at(own.name, line, start))) return words;
  const list: SaidWord[] = [];
  const lists = Math.max(0, ...words.map((word) => word.list ?? 0));
  let next = 0;
  for (let i = 0; i < words.length; i++) {
    const found = listAt(line, starts[i] ?? 0, own);
    if (!found) continue;
    const until = starts.findIndex((start) => start >= found.end);
    const end = until < 0 ? words.length : until;
    list.push(
      ...words.slice(next, i),
      ...found.items.flatMap((item) =>
        written(item, own.carried, words, starts).map((word) => ({ ...word, list: lists + i + 1 })),
      ),
    );
    list.push(...marks(found.apart ? ['|', APART, '|'] : ['|'], words[end - 1]));
    next = end;
    i = end - 1;
  }
  return next === 0 ? words : [...list, ...words.slice(next)];
}
const marks = (texts: readonly string[], word: SaidWord | undefined): SaidWord[] =>
  texts.map((text) => ({ text, start: word?.end ?? 0, end: word?.end ?? 0 }));
function startsOf(words: readonly SaidWord[]): number[] {
  let next = 0;
  return words.map(({ text }) => {
    const start = next;
    next += text.length + 1;
    return start;
  });
}

interface List {
  readonly items: readonly Item[];
  readonly end: number;
  /** The ray of its last item is not that of what follows. */
  readonly apart: boolean;
}
/** A list that starts at a place: after the name of its finding, or with a first item that names it. */
function listAt(line: string, from: number, own: Ready): List | undefined {
  const name = at(own.name, line, from);
  if (name) {
    const small = at(new RegExp(` ${SMALL}`, 'y'), line, from + name[0].length);
    const start = from + name[0].length + (small?.[0].length ?? 0);
    const items = small && (itemsAt(line, start, own, 'placeFirst') ?? itemsAt(line, start, own, 'valueFirst'));
    const [first, ...rest] = items ?? (small ? afterValue(line, start, own) : undefined) ?? [];
    return first ? finished(line, [{ ...first, start: from, named: true }, ...rest], own, true) : undefined;
  }
  // `weak in the second | click positive`: a place after a word of place is of what stands before it.
  const before = line.slice(0, from);
  if (AFTER_PLACE.test(before)) return undefined;
  for (const shape of ['placeFirst', 'valueFirst'] as const) {
    const groups = at(own[shape], line, from)?.groups;
    if (!groups?.name || (shape === 'placeFirst' && groups.at !== undefined && !OPENED.test(before))) continue;
    const items = itemsAt(line, from, own, shape);
    if (items) return finished(line, items, own, shape === 'valueFirst' || !items.at(-1)?.named);
  }
  return undefined;
}

const AFTER_PLACE = /(?:^| )(?:on|at|in|of|for|over|under|underneath|beneath)(?: the)? $/;
const OPENED = /(?:^|[,;|\n] |(?:^| )(?:and|but|then) )$/;
/** A ray is named in the last words before a place. */
const RAY_BEFORE = /(?:^| )(?:second|third|fourth|fifth|[2-5](?:nd|rd|th))(?: [^ ,;|]+){0,9} $/;
/** `second toe drawer two third one`: the first value is of the ray that was said before its finding. */
function afterValue(line: string, from: number, own: Ready): Item[] | undefined {
  const named = RAY_BEFORE.test(line.slice(0, from));
  const match = own.carried.counted && named ? at(own.first, line, from) : undefined;
  if (!match) return undefined;
  const { value = '', quality = '' } = match.groups ?? {};
  const end = from + match[0].length;
  const sep = at(SEP, line, end);
  if (!sep || sep.groups?.broken || /same$/.test(value)) return undefined;
  const first: Item = {
    start: from,
    end,
    side: undefined,
    rays: [],
    under: '',
    value: canonical(own.carried.values, value),
    quality: canonical(own.carried.qualities, quality),
    named: true,
    closed: true,
  };
  const items = itemsAt(line, end + sep[0].length, own, 'placeFirst', 1);
  return items?.every(({ value: own }) => own !== 'not done') ? [first, ...items] : undefined;
}

/** Two items or more from a place on, none that may go on with something else. */
function itemsAt(line: string, from: number, own: Ready, shape: Shape, least = 2): Item[] | undefined {
  const items: Item[] = [];
  let broken = false;
  for (let next: number | undefined = from; next !== undefined; ) {
    const match = at(own[shape], line, next);
    const item = match && itemOf(match, own.carried, items);
    if (!item) break;
    if (broken && !at(BROKEN, line, item.end) && !follows(line, item.end, own, shape)) break;
    items.push(item);
    const sep: RegExpExecArray | undefined = at(SEP, line, item.end);
    broken = sep?.groups?.broken !== undefined;
    next = sep ? item.end + sep[0].length : undefined;
  }
  const end = items.at(-1)?.end ?? from;
  const dangling = at(SEP, line, end);
  const after = dangling && !dangling.groups?.broken ? end + dangling[0].length : undefined;
  const opened = after === undefined ? undefined : at(shape === 'placeFirst' ? own.place : own.value, line, after);
  // A place or a value alone after the list: its items may pair the other way.
  if (opened && after !== undefined && (shape === 'valueFirst' || at(BROKEN, line, after + opened[0].length)))
    return undefined;
  // `drawer two third one fourth`: without a word before its place, a value may be of the ray before it.
  if (shape === 'valueFirst' && !items.every(({ closed }) => closed)) return undefined;
  return items.length < least || at(GOES_ON, line, end) ? undefined : items;
}
const follows = (line: string, from: number, own: Ready, shape: Shape): boolean => {
  const sep = at(SEP, line, from);
  return sep !== undefined && at(own[shape], line, from + sep[0].length) !== undefined;
};

const LESSER = [2, 3, 4, 5];
function itemOf(match: RegExpExecArray, carried: Carried, before: readonly Item[]): Item | undefined {
  const { at: under = '', side, on, nth, num, rest, every, name, value = '', quality = '' } = match.groups ?? {};
  const last = before.at(-1);
  const own = side ?? on ?? last?.side;
  const rays = every ? LESSER : rest ? restOf(before, own, carried) : raysOf(nth ?? num ?? '');
  const same = /same$/.test(value);
  if (rays.length === 0 || (same && !last) || (rest && before.length === 0)) return undefined;
  const below = /^(?:under|beneath)/.test(under);
  if (below && carried.word !== 'tender' && carried.word !== 'swelling') return undefined;
  return {
    start: match.index,
    end: match.index + match[0].length,
    side: own,
    rays,
    under: !below ? '' : / heads?(?: |$)/.test(match[0]) ? 'head' : 'plantar',
    value: same ? (last?.value ?? '') : canonical(carried.values, value),
    quality: same ? (last?.quality ?? '') : canonical(carried.qualities, quality),
    named: name !== undefined,
    closed: under !== '' || at(BROKEN, match.input, match.index + match[0].length) !== undefined,
  };
}
const canonical = (rows: Carried['values'], said: string): string => {
  if (said === '') return '';
  const row = rows.find(([find]) => new RegExp(`^(?:${find})$`).test(said));
  return row?.[1] === '' ? (/\d/.exec(said)?.[0] ?? '') : (row?.[1] ?? '');
};
/** The rays between the first and the last of each stretch that was said, in order. */
function raysOf(said: string): number[] {
  const words = said.replaceAll('-', ' to ').match(/[1-5]\w*|first|second|third|fourth|fifth|to/g) ?? [];
  const rays: number[] = [];
  for (const [i, word] of words.entries()) {
    const ray = Number((ORD[word] ?? word)[0]);
    if (word === 'to') continue;
    const last = rays.at(-1);
    if (words[i - 1] === 'to' && last !== undefined) for (let each = last + 1; each < ray; each++) rays.push(each);
    rays.push(ray);
  }
  return rays;
}
/** The lesser rays, or the webs, of a side that the list has not named. */
function restOf(before: readonly Item[], side: string | undefined, { of }: Carried): number[] {
  const named = before.filter((each) => each.side === side).flatMap(({ rays }) => rays);
  return named.length === 0 ? [] : (of === 'web' ? [1, 2, 3, 4] : [2, 3, 4, 5]).filter((ray) => !named.includes(ray));
}

/** What is said of all its items after a list (`and both are sore`). */
const OF_ALL =
  /(?: ,)?(?: and)?(?: they are| they're| these are)? (?<all>both|all|none)(?: of them)?(?: are)?(?: very| quite)? (?<pain>painful|sore|not painful|not sore|painless)(?![^ ])/y;
function finished(line: string, items: readonly Item[], own: Ready, apart: boolean): List {
  const end = items.at(-1)?.end ?? 0;
  const all = own.carried.counted && items.every(({ quality }) => quality === '') ? at(OF_ALL, line, end) : undefined;
  const count = items.reduce((sum, { rays }) => sum + rays.length, 0);
  if (!all || (all.groups?.all === 'both' && count !== 2)) return { items, end, apart };
  const denied = all.groups?.all === 'none' || /^(?:not|painless)/.test(all.groups?.pain ?? '');
  const quality = denied ? 'painless' : 'painful';
  return { items: items.map((each) => ({ ...each, quality })), end: end + all[0].length, apart };
}

/** An item as a clause of its own; each word of it stands for all that was said of the item. */
function written(item: Item, carried: Carried, words: readonly SaidWord[], starts: readonly number[]): SaidWord[] {
  const own = words.filter((_, i) => item.start <= (starts[i] ?? 0) && (starts[i] ?? 0) < item.end);
  const [start, end] = [own[0]?.start ?? 0, own.at(-1)?.end ?? 0];
  const place = placeText(item.rays, carried);
  const under = item.under === '' ? '' : ` ${item.under}`;
  if (carried.counted && item.value === 'stable')
    return clauseOf(`| ${item.side ?? ''} ${place} mtp stable`, start, end);
  const told = item.value === 'no' ? `no${under} ${carried.word}` : toldOf(item, carried, under);
  return clauseOf(`| ${item.side ?? ''} ${place} ${told}`, start, end);
}
const clauseOf = (clause: string, start: number, end: number): SaidWord[] =>
  clause
    .split(' ')
    .filter((text) => text !== '')
    .map((text) => ({ text, start, end }));
/** A degree stands before a tenderness, after anything else. */
const toldOf = ({ value, quality }: Item, { word }: Carried, under: string): string =>
  word === 'tender' ? `${value} ${word}${under}` : `${word}${under} ${value} ${quality}`;
const ORDINAL = ['', '1st', '2nd', '3rd', '4th', '5th'];
function placeText(rays: readonly number[], { of }: Carried): string {
  if (of === 'web') return rays.length > 1 ? `webs ${rays[0]}-${rays.at(-1)}` : `web ${rays[0]}`;
  return rays.map((ray) => ORDINAL[ray]).join(' and ');
}
