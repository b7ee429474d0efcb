import type { Binder } from './binder.ts';
import { matchesAt } from './forms.ts';
import { endsSegment } from './items.ts';
import { mayBeSubject, subjectAt } from './subjects.ts';

/**
 * `2nd drawer 2 = L`, `2nd tender = 3rd`: like another side, ray or web. What was found keeps its own place, with the comparison as a remark; beside
 * nothing that was found it is kept as typed. A side with its own value (`abi = R 0.9`) is none.
 */
export function readComparison(binder: Binder, index: number): number | undefined {
  const { items, line } = binder;
  const sign = items[index];
  if (sign?.is !== 'keeper' || line[sign.start] !== '=') return undefined;
  const start = index + 1;
  const side = matchesAt(items, start).find(({ form }) => form.side)?.next;
  const read = mayBeSubject(items, side ?? start)
    ? subjectAt({ items, start: side ?? start, commaJoins: false, adjoins: true, opensFinding: () => false })
    : undefined;
  const next = read?.next ?? side;
  const last = binder.last();
  const ofTwo = last?.is === 'subject' && read !== undefined;
  if (next === undefined || !(ofTwo || endsSegment(items[next]))) return undefined;
  const at = binder.span(index, next);
  const draft = last?.is === 'finding' ? last.draft : undefined;
  if (!draft || binder.no || binder.not || binder.side || binder.ahead || binder.before.length > 0) {
    binder.unread(at, 'comparison', 'word-out-of-place');
    return next;
  }
  draft.quotes.push({ text: line.slice(at.start, at.end), ...at });
  draft.end = Math.max(draft.end, at.end);
  binder.role('verbatim', at);
  return next;
}
