import { causeOf, type Draft, doubtSlot } from './draft.ts';

/** What is taken up again, and then goes on. */
const BEGINS: readonly string[] = ['full-weight-bearing', 'back at work', 'drives', 'may drive'];
const LATER: readonly string[] = ['work', 'medicine', 'driving', 'activity', 'ordinary-shoes'];
const BEGUN = /\b(?:at|from|in|by|after|until|since)\s+$/i;
const FOR_SO_LONG = /\bfor\s+$/i;
const SINCE = /\b(?:since|from)\s+$/i;
const NOW = /^\s+(now|currently|today|at present|at the moment)\b/i;

/** Durations and days that may be when something begins or ends, and not how long it lasts, or when it was. */
export function whenReach(drafts: readonly Draft[], line: string): void {
  for (const draft of drafts) {
    overReach(draft, line);
    if (draft.section === 'plan' || draft.section === 'operation') orderedWhen(draft, line);
    else toldWhen(draft, line);
  }
}

/** `drawer over 2`, `pain over 5/10`: more than it says. */
function overReach(draft: Draft, line: string): void {
  for (const [slot, { start, value }] of Object.entries(draft.slots))
    if (value.is !== 'word' && value.is !== 'duration' && OVER.test(line.slice(draft.start, start)))
      doubtSlot(draft, slot, line);
}
const OVER = /\bover\s+$/i;

/** `boot from 6 weeks`, `fwb 6/52`, `steroid web 2 in 2 weeks`, `tape since 3 weeks`: without its time the order would stand for today. */
function orderedWhen(draft: Draft, line: string): void {
  const { id, section, slots, causes, start } = draft;
  const lasts = slots.for;
  const on = slots.on;
  if (on && /\bsince\s+$/i.test(line.slice(start, on.start))) causes.push(causeOf('when or how long', on, line));
  if (!lasts) return;
  const ahead = line.slice(start, lasts.start);
  const words = Object.values(slots).flatMap(({ value }) => (value.is === 'word' ? value.words : []));
  const begins = words.some((word) => BEGINS.includes(word)) || (id === 'driving' && words.length === 0);
  const begun = section === 'plan' && (begins || id === 'steroid') && !FOR_SO_LONG.test(ahead);
  if (begun || BEGUN.test(ahead)) causes.push(causeOf('when or how long', lasts, line));
}

function toldWhen(draft: Draft, line: string): void {
  const { id, section, status, slots, entry, start, end } = draft;
  // `back to work at 8 weeks`, `antibiotics in 2 weeks`: from then on, and not so long.
  if (slots.for && LATER.includes(id) && /\b(?:at|in|by|until)\s+$/i.test(line.slice(start, slots.for.start)))
    draft.causes.push(causeOf('when or how long', slots.for, line));
  // `steroid 3/52 relief`: an injection takes no weeks; when it was, or how long it helped?
  if (id === 'steroid' && slots.for) doubtSlot(draft, 'for', line);
  // `tape since 2026-01-12`: worn from then on, and not on that day; until another day it is a time.
  if (entry?.kind === 'treatment' && slots.on && !slots.stop && SINCE.test(line.slice(start, slots.on.start)))
    doubtSlot(draft, 'on', line);
  // `history gout none now`: it has been there.
  const now = section === 'history' && status === 'absent' ? NOW.exec(line.slice(end)) : undefined;
  if (now)
    draft.causes.push(
      causeOf(
        'distancing word',
        { start: end + now[0].length - (now[1]?.length ?? 0), end: end + now[0].length },
        line,
      ),
    );
}
