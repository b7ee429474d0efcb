import { SAID_OF_WHOLE } from '../lexicon/whole-sections.ts';
import type { Binder } from './binder.ts';

/** A remark may give the reason (`stand unable "wheelchair"`). */
const ENDS: readonly string[] = ['comment', 'quote', 'statement', 'line'];

/**
 * `tried none`, `stand not done`, `nothing tried so far`: said of the section as a whole, where it is all that its statement says.
 * Gives the index after it, or nothing where the words say something else or more.
 */
export function readWholeSection(binder: Binder, i: number): number | undefined {
  const { items, line } = binder;
  const { no, not, before, ahead, question, subject, statement } = binder;
  if (statement.elements.length + before.length > 0 || (no ?? not ?? ahead ?? question ?? subject)) return undefined;
  let next = i;
  while (items[next]?.is === 'word') next++;
  const after = items[next];
  if (after && !ENDS.includes(after.is === 'break' ? after.of : after.is)) return undefined;
  const at = binder.span(i, next);
  const text = `${binder.section} ${line.slice(at.start, at.end).toLowerCase().replace(/\s+/g, ' ')}`;
  const found = SAID_OF_WHOLE.find(([, , said]) => said.test(text));
  if (!found) return undefined;
  binder.startFinding({ id: found[0], lead: {} }, at);
  binder.giveStatus(found[1], at);
  return next;
}
