import { VISIT_SIDE_BY_FORM } from '../lexicon/header-words.ts';
import { EVENT_BY_FORM, isInitials, SIGNER_ROLES } from '../lexicon/lifecycle-words.ts';
import type { HeaderNode, Signing } from '../syntax.ts';
import { isRay, type Ray, type Side, type Span } from '../values.ts';
import { type HeaderReader, lower } from './header-reader.ts';
import type { Item } from './items.ts';

/** Who it is; `undefined` for a word that is neither initials nor a role. */
export function signerOf(item: Item | undefined): string | undefined {
  if (item?.is !== 'word') return undefined;
  if (SIGNER_ROLES.includes(lower(item))) return lower(item);
  return isInitials(item.text) ? item.text : undefined;
}

/** A date within the next three items, or nothing but the word itself; `signed off by phone` is no signature. */
const isDated = ({ items }: HeaderReader): boolean =>
  items.slice(1, 4).some(({ is }) => is === 'date' || is === 'bad date') ||
  items.slice(1).every(({ is }) => is === 'comment');

/** The words of the line, without its comment. */
function wordsOf({ items, line }: HeaderReader): Span {
  const last = items.findLast(({ is }) => is !== 'comment');
  return { start: items[0]?.start ?? 0, end: last?.end ?? line.length };
}

/** Date, time and signer; `from` is the first item that belongs to something else. */
function signing(reader: HeaderReader, from = reader.items.length): Signing {
  let read: Signing = {};
  const refused: Item[] = [];
  reader.each((item, i) => {
    if (i >= from) return true;
    const by = read.by ? undefined : signerOf(item);
    if (item.is === 'date' && item.date.day && !read.date) read = { ...read, date: item.date };
    else if (item.is === 'clock' && !read.clock) read = { ...read, clock: { hour: item.hour, minute: item.minute } };
    else if (['by', 'at'].includes(lower(item))) return filler(reader, item);
    else if (by) read = { ...read, by };
    else {
      refused.push(item);
      return reader.refuse(item);
    }
    reader.role('value', item);
    return true;
  });
  reportSigning(reader, read, refused);
  return read;
}

function filler(reader: HeaderReader, at: Span): true {
  reader.role('filler', at);
  return true;
}

/** One report for what was refused, else for what is missing. */
function reportSigning({ items, line, problems }: HeaderReader, { date, by }: Signing, refused: readonly Item[]): void {
  const [first, last, keyword] = [refused[0], refused.at(-1), items[0]];
  const add = (code: 'bad-header' | 'bad-signer' | 'ambiguous-date', { start, end }: Span) =>
    problems.push({ code, text: line.slice(start, end), start, end });
  if (first && last) {
    const code = first.is === 'bad date' && !date ? 'ambiguous-date' : by ? 'bad-header' : 'bad-signer';
    add(code, { start: first.start, end: code === 'ambiguous-date' ? first.end : last.end });
  } else if (keyword && !date) add('bad-header', keyword);
  else if (keyword && !by) add('bad-signer', keyword);
}

function signed(reader: HeaderReader): HeaderNode {
  const { items, line } = reader;
  const at = items.findIndex((item) => lower(item) === 'seal');
  const first = items[at + 1];
  let next = at + 2;
  while (next < items.length && items[next]?.start === items[next - 1]?.end && items[next]?.is !== 'comment') next++;
  const seal =
    at > 0 && first && first.is !== 'comment'
      ? { start: first.start, end: items[next - 1]?.end ?? first.end }
      : undefined;
  if (!seal) return { is: 'signed', ...signing(reader), at: wordsOf(reader) };
  reader.role('keyword', items[at] as Item);
  reader.role('value', seal);
  const read = signing(reader, at);
  for (const item of items.slice(next)) if (item.is !== 'comment') reader.bad(item);
  return { is: 'signed', ...read, seal: { ...seal, text: line.slice(seal.start, seal.end) }, at: wordsOf(reader) };
}

const addendum = (reader: HeaderReader): HeaderNode => ({ is: 'addendum', ...signing(reader), at: wordsOf(reader) });

function event(reader: HeaderReader): HeaderNode | undefined {
  const kind = reader.formAt(1, EVENT_BY_FORM);
  if (!kind) return undefined;
  reader.take(1, kind.next, kind.value);
  let clock: Extract<HeaderNode, { is: 'event' }>['clock'];
  let side: Side | undefined;
  const rays: Ray[] = [];
  reader.each((item) => {
    const named = item.is === 'word' ? VISIT_SIDE_BY_FORM.get(lower(item)) : undefined;
    if (lower(item) === 'at') return filler(reader, item);
    if (item.is === 'clock' && !clock) clock = { hour: item.hour, minute: item.minute };
    else if (item.is === 'ordinal') rays.push(...raysFrom(item.low, item.high));
    else if (item.is === 'sided' && isRay(item.ray) && (!side || side === item.side)) {
      side = item.side;
      rays.push(item.ray);
    } else if (named && named !== 'both' && !side) side = named;
    else return false;
    reader.role(item.is === 'ordinal' || item.is === 'sided' ? 'subject' : 'value', item);
    return true;
  });
  return {
    is: 'event',
    event: kind.value,
    ...(clock ? { clock } : {}),
    rays,
    ...(side ? { side } : {}),
    at: wordsOf(reader),
  };
}

const raysFrom = (low: number, high: number): Ray[] =>
  Array.from({ length: Math.max(0, high - low + 1) }, (_, step) => low + step).filter(isRay);

/** The lines of the lifecycle, by their first word. What they can't take is kept as typed. */
export const LIFECYCLE = {
  signed: { read: signed, opens: isDated, keeps: true },
  addendum: { read: addendum, opens: isDated, keeps: true },
  event: { read: event, opens: (reader: HeaderReader) => reader.formAt(1, EVENT_BY_FORM) !== undefined, keeps: true },
} as const;
