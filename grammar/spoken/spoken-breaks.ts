import { entryOf } from '../lexicon/index.ts';
import { matchesAt, type WordClass } from '../reader/forms.ts';
import type { Item } from '../reader/items.ts';
import { subjectAt } from '../reader/subjects.ts';
import { phrases, spanOf, wordAt } from './spoken-phrases.ts';
import { CLOSE_QUOTE, NEVER_STOPPED, NO_BREAK_AFTER, OPEN_QUOTE, SPOKEN_BREAKS } from './spoken-words.ts';

const breaks = phrases(Object.keys(SPOKEN_BREAKS));
const opening = phrases(OPEN_QUOTE);
const closing = phrases(CLOSE_QUOTE);

/** A dictated break is a break; a bare `stop` only where it can't be an order (`stop tape`). */
export function spokenBreak(items: readonly Item[], start: number): { item: Item; next: number } | undefined {
  const found = breaks.at(items, start);
  const of = found && SPOKEN_BREAKS[found.phrase];
  if (!found || !of) return undefined;
  const isWord = found.phrase === 'stop' || found.phrase === 'period';
  if (isWord && NO_BREAK_AFTER.includes(wordAt(items, start - 1))) return undefined;
  if (found.phrase !== 'comma' && wordAt(items, found.next) === 'of') return undefined;
  if (found.phrase === 'stop' && mayOrder(items, start, found.next)) return undefined;
  return { item: { is: 'break', of, ...spanOf(items, start, found.next) }, next: found.next };
}

/** May what follows be the thing that is to be stopped? A sign, a subject, a section or a denial can't. */
function mayOrder(items: readonly Item[], start: number, next: number): boolean {
  const after = items[next];
  if (after === undefined) return false;
  if (after.is === 'break' || after.is === 'comment' || breaks.at(items, next)) return false;
  if (subjectAt({ items, start: next, commaJoins: false, opensFinding: () => false, adjoins: false })) return false;
  for (let i = next, steps = 0; steps < 3; steps++) {
    const [match] = matchesAt(items, i);
    if (!match) return true;
    const { form } = match;
    if (form.section?.strong || form.side || NEVER.some((name) => form.classes.has(name))) return false;
    if (form.findings.length > 0) return start === 0 || form.findings.some(({ id }) => mayBeStopped(id));
    if (form.values.size === 0 && !form.classes.has('filler')) return true;
    i = match.next;
  }
  return true;
}
/** A denial, or a part of the foot. */
const NEVER: readonly WordClass[] = ['no', 'ray word', 'joint word', 'web word', 'foreign part'];
const mayBeStopped = (id: Parameters<typeof entryOf>[0]): boolean => {
  const { kind } = entryOf(id);
  return kind !== 'sign' && kind !== 'measure' && !NEVER_STOPPED.includes(id);
};

/** `quote … unquote` is a quote; without its end it runs to the end of the line. */
export function spokenQuote(
  items: readonly Item[],
  start: number,
  line: string,
): { item: Item; next: number } | undefined {
  const open = opening.at(items, start);
  if (!open) return undefined;
  for (let i = open.next; i < items.length; i++) {
    if (items[i]?.is === 'comment') break;
    const close = closing.at(items, i);
    if (!close) continue;
    const text = line.slice(items[open.next]?.start ?? 0, items[i]?.start ?? 0).trim();
    return { item: { is: 'quote', text, closed: true, ...spanOf(items, start, close.next) }, next: close.next };
  }
  const comment = items.findIndex(({ is }) => is === 'comment');
  const next = comment < 0 ? items.length : comment;
  if (next <= open.next) return undefined;
  const text = line.slice(items[open.next]?.start ?? 0, items[next - 1]?.end ?? 0);
  return { item: { is: 'quote', text, closed: false, ...spanOf(items, start, next) }, next };
}
