import { CARRIED_FILLERS } from '../lexicon/lifecycle-words.ts';
import type { LineSyntax, ReadingProblem, Role } from '../syntax.ts';
import type { PartialDate, Span } from '../values.ts';
import { lower } from './header-reader.ts';
import type { Item } from './items.ts';
import { signerOf } from './lifecycle.ts';

/** What stands before the statements of a line, and the item at which they start. */
export interface LinePrefix extends Pick<LineSyntax, 'carried' | 'examiner'> {
  readonly next: number;
  readonly roles: readonly Role[];
  readonly problems: readonly ReadingProblem[];
}

/** Reads `carried DATE`, `proposed` or `examiner BY` at the start of a line; `undefined` where none stands there. */
export function readPrefix(line: string, items: readonly Item[]): LinePrefix | undefined {
  const word = lower(items[0]);
  if (word === 'carried' || word === 'proposed') return carried(line, items, word === 'proposed');
  return word === 'examiner' ? examiner(items) : undefined;
}

const role = (kind: Role['kind'], { start, end }: Span): Role => ({ kind, start, end });

/**
 * Without a date the words are carried all the same: of an earlier visit nothing is taken as today's, whichever it was. What
 * then stands before the findings stays part of the words.
 */
function carried(line: string, items: readonly Item[], proposed: boolean): LinePrefix {
  const [first] = items as readonly [Item, ...Item[]];
  const dated = CARRIED_FILLERS.includes(lower(items[1])) ? 2 : 1;
  const found = items[dated];
  const roles = [role('keyword', first)];
  const problems: ReadingProblem[] = [];
  let next = 1;
  let date: PartialDate | undefined;
  if (!proposed && (found?.is === 'date' || found?.is === 'bad date')) {
    if (dated === 2) roles.push(role('filler', items[1] as Item));
    roles.push(role(found.is === 'date' ? 'value' : 'reported', found));
    if (found.is === 'date') date = found.date;
    else
      problems.push({
        code: 'ambiguous-date',
        text: line.slice(found.start, found.end),
        start: found.start,
        end: found.end,
      });
    next = dated + 1;
  }
  const start = items[next - 1]?.end ?? 0;
  while (items[next]?.is === 'keeper' || items[next]?.is === 'break')
    roles.push(role('punctuation', items[next++] as Item));
  const after = items[next]?.is === 'comment' ? undefined : items[next];
  const last = items.findLast(({ is }) => is !== 'comment');
  const from = after?.start ?? start;
  const words = { start: from, end: after ? Math.max(last?.end ?? 0, from) : from };
  return {
    next,
    roles,
    problems,
    carried: {
      prefix: { start: first.start, end: words.start },
      words,
      ...(date ? { date } : {}),
      ...(proposed ? { proposed } : {}),
    },
  };
}

function examiner(items: readonly Item[]): LinePrefix | undefined {
  const by = signerOf(items[1]);
  if (!by) return undefined;
  const roles = [role('keyword', items[0] as Item), role('value', items[1] as Item)];
  let next = 2;
  while (items[next]?.is === 'keeper' || items[next]?.is === 'break')
    roles.push(role('punctuation', items[next++] as Item));
  const alone = items.slice(next).every(({ is }) => is === 'comment');
  return { next, roles, problems: [], examiner: { by, alone } };
}
