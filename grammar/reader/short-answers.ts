import type { Section } from '../lexicon/entry.ts';
import { entryOf, type FindingId } from '../lexicon/index.ts';
import type { Span } from '../values.ts';
import type { Binder } from './binder.ts';
import { type Draft, findingsIn, setSlot } from './draft.ts';
import { type Form, matchesAt } from './forms.ts';
import { isAnother, isPlain } from './go-on.ts';
import { endsSegment } from './items.ts';
import { quantityAt } from './quantities.ts';

/** Answers in a word or a sign that can be of one finding only. */

const EXAMINED: readonly Section[] = ['exam', 'stand', 'pain'];
const ASKED: readonly Section[] = ['history', 'pain'];

/**
 * `no longer tender`, `denies fever`: directly before a sign of today, or what a patient can be asked for, they deny it; the words are kept with it. Before
 * anything else they distance, as ever.
 */
export function deniesNext(binder: Binder, { parts }: Form, next: number): boolean {
  const said = parts.join(' ');
  if (said !== 'no longer' && said !== 'denies') return false;
  const { section, items } = binder;
  const any = matchesAt(items, next).find(({ form }) => form.classes.has('adjective'));
  for (const { form } of matchesAt(items, any?.next ?? next)) {
    const claim = binder.findingIn(form);
    if (!claim) continue;
    const { kind, bare, sections } = entryOf(claim.id);
    const named = claim.lead ? claim.lead.noun === true : bare === 'present';
    const isOfNow = EXAMINED.includes(section) && kind === 'sign';
    return named && (said === 'denies' ? sections.some((each) => ASKED.includes(each)) : isOfNow);
  }
  return false;
}

/** Does nothing wait for a finding, and has nothing of the current one been said but its name? */
const isBareHere = (binder: Binder, draft: Draft | undefined): draft is Draft =>
  draft?.entry?.kind === 'sign' &&
  draft.entry.bare === 'present' &&
  isPlain(draft) &&
  Object.keys(draft.slots).length + draft.quotes.length === 0 &&
  !(binder.no || binder.not || binder.side || binder.question || binder.before.length > 0);

function deny(binder: Binder, { id }: Draft, at: Span): number {
  binder.giveStatus('absent', at);
  binder.role('modifier', at, { finding: id as FindingId });
  return 1;
}

/** `2nd tender, 3rd not`: the same sign, and nothing else, of another ray or space. */
export function readNotOf(binder: Binder, index: number): number | undefined {
  const { closed: first, items, statement } = binder;
  const item = items[index];
  const here = binder.last();
  if (item?.is !== 'word' || !NOT_OF.includes(item.text.toLowerCase()) || !endsSegment(items[index + 1]))
    return undefined;
  if (here?.is !== 'subject' || !isBareHere(binder, first) || !isAnother(first.subject, here.subject)) return undefined;
  const alone =
    findingsIn(statement.elements).length === 1 && statement.elements.every(({ is }) => STANDS.includes(is));
  if (!alone || first.statusGiven) return undefined;
  binder.startFinding({ id: first.id as FindingId }, item);
  binder.roles.pop();
  return index + deny(binder, first, item);
}
const NOT_OF: readonly string[] = ['not', 'no', 'none', 'neg', 'negative'];
const STANDS: readonly string[] = ['finding', 'subject', 'break'];

/** `click +, squeeze -`: a stroke after a sign is its answer where another of the line is answered by a sign too. */
export function readMinus(binder: Binder, index: number): number | undefined {
  const { current, items } = binder;
  const item = items[index];
  const last = binder.last();
  if (item?.is !== 'other' || item.text !== '-' || !endsSegment(items[index + 1])) return undefined;
  if (!isBareHere(binder, current) || last?.is !== 'finding' || last.draft !== current || current.statusGiven)
    return undefined;
  if (current.entry?.slots.result || !items.some((each) => each.is === 'other' && each.text === '+')) return undefined;
  current.open = false;
  current.deniedBy = item;
  return index + deny(binder, current, item);
}

/** `drawer 2/4`: the grade and the last of its scale. Only 0-4 has a 4, and `3/4` may be from three to four. */
export function readGradeOfScale(binder: Binder, index: number): number | undefined {
  const { current, items } = binder;
  const item = items[index];
  if (item?.is !== 'slashed' || current?.id !== 'drawer' || !binder.isOpen('grade') || current.slots.scale)
    return undefined;
  const { first: low, from, bound, second } = item;
  if (second !== 4 || low === 3 || low > 4 || from !== undefined || bound) return undefined;
  binder.setValue('grade', { is: 'drawer grade', low, high: low }, item, undefined, `${low} scale 0-4`);
  setSlot(current, 'scale', { is: 'word', words: ['0-4'] }, item);
  return index + 1;
}

/** `10 g monofilament 9/10`: the weight is part of the name. */
export function readTenGrams(binder: Binder, index: number): number | undefined {
  const item = binder.items[index];
  if (item?.is !== 'number' || !/^10 ?g mono/i.test(binder.line.slice(item.start))) return undefined;
  binder.role('filler', binder.span(index, index + 2));
  return index + 2;
}

/** `6/52 post op, wound clean`, `2/52: wound clean`: how long after the operation, at the start of a line, is kept as typed and is no word of what follows. */
export function readTimeSince(binder: Binder, index: number): number | undefined {
  const { items, line, section } = binder;
  const item = items[index];
  if (index > 0 || item?.is !== 'slashed' || section !== 'exam' || !quantityAt(items, index)) return undefined;
  const since = /^\S+(?:\s+(?:weeks?\s+)?(?:post[ -]?op|p\/o|since op)\b|(?=:))/i.exec(line.slice(item.start));
  const end = item.start + (since?.[0].length ?? 0);
  const next = items.findIndex(({ start }) => start >= end);
  if (!since || next < 0) return undefined;
  const at = { start: item.start, end };
  binder.keep(at, false);
  binder.role('verbatim', at);
  return next;
}
