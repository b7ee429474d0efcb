import type { Section } from '../lexicon/entry.ts';
import { entryOf, type FindingId } from '../lexicon/index.ts';
import type { Binder } from './binder.ts';
import { type Draft, findingsIn, setSlot } from './draft.ts';
import { type Form, matchesAt } from './forms.ts';
import { isPlain } from './go-on.ts';
import { endsSegment } from './items.ts';

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

/** `2nd tender, 3rd not`: the same sign, and nothing else, of another ray or space. */
export function readNotOf(binder: Binder, index: number): number | undefined {
  const { closed: first, items, current, statement } = binder;
  const item = items[index];
  const here = binder.last();
  if (item?.is !== 'word' || !NOT_OF.includes(item.text.toLowerCase()) || !endsSegment(items[index + 1]))
    return undefined;
  if (first?.entry?.bare !== 'present' || first.entry.kind !== 'sign' || !isPlain(first) || current) return undefined;
  if (here?.is !== 'subject' || binder.side || binder.question || binder.before.length > 0) return undefined;
  const alone =
    findingsIn(statement.elements).length === 1 && statement.elements.every(({ is }) => STANDS.includes(is));
  const said = Object.keys(first.slots).length + first.quotes.length;
  if (!alone || said > 0 || !isAnother(first.subject, here.subject)) return undefined;
  const at = binder.span(index, index + 1);
  binder.startFinding({ id: first.id as FindingId }, at);
  binder.roles.pop();
  binder.giveStatus('absent', at);
  binder.role('modifier', at, { finding: first.id as FindingId });
  return index + 1;
}
const NOT_OF: readonly string[] = ['not', 'no', 'none', 'neg', 'negative'];
const STANDS: readonly string[] = ['finding', 'subject', 'break'];
function isAnother(first: Draft['subject'], here: NonNullable<Draft['subject']>): boolean {
  if (first?.at === 'rays' && here.at === 'rays') return !here.rays.some((ray) => first.rays.includes(ray));
  return first?.at === 'webs' && here.at === 'webs' && !here.webs.some((web) => first.webs.includes(web));
}

/** `drawer 2/4`: the grade and the last of its scale. Only 0-4 has a 4, and `3/4` may be from three to four. */
export function readGradeOfScale(binder: Binder, index: number): number | undefined {
  const { current, items } = binder;
  const item = items[index];
  if (item?.is !== 'slashed' || current?.id !== 'drawer' || binder.no || binder.not) return undefined;
  const whole = item.from === undefined && !item.bound && item.second === 4 && OF_FOUR.includes(item.first);
  if (!whole || !binder.isOpen('grade') || current.slots.scale) return undefined;
  const grade = { is: 'drawer grade', low: item.first, high: item.first } as const;
  binder.setValue('grade', grade, item, undefined, `${item.first} scale 0-4`);
  setSlot(current, 'scale', { is: 'word', words: ['0-4'] }, item);
  return index + 1;
}
const OF_FOUR: readonly number[] = [0, 1, 2, 4];

/** `10 g monofilament 9/10`: the weight is part of the name. */
export function readTenGrams(binder: Binder, index: number): number | undefined {
  const { items, line } = binder;
  const word = items.findIndex((each, i) => i > index && each.is === 'word' && /^mono/i.test(each.text));
  const end = items[word]?.start;
  if (end === undefined || word > index + 2 || !/^10 ?g +$/i.test(line.slice(items[index]?.start, end)))
    return undefined;
  const fits = binder.findingAt(word)?.id === 'sensation' || binder.current?.id === 'sensation';
  if (!fits) return undefined;
  binder.role('filler', binder.span(index, word));
  return word;
}

/** `click +, squeeze -`: a stroke after a sign is its answer where another of the sentence is answered by a sign too. */
export function readMinus(binder: Binder, index: number): number | undefined {
  const { current, items } = binder;
  const item = items[index];
  const last = binder.last();
  if (item?.is !== 'other' || (item.text !== '-' && item.text !== '–') || !endsSegment(items[index + 1]))
    return undefined;
  if (!current || last?.is !== 'finding' || last.draft !== current || !isPlain(current) || current.statusGiven)
    return undefined;
  const { kind, slots } = current.entry ?? {};
  const waits = binder.no || binder.not || binder.before.length > 0 || binder.question;
  if (kind !== 'sign' || waits || Object.keys(current.slots).length > 0 || slots?.result) return undefined;
  if (!answeredBySign(binder, index)) return undefined;
  const at = binder.span(index, index + 1);
  binder.giveStatus('absent', at);
  current.deniedBy = at;
  current.open = false;
  binder.role('modifier', at, { finding: current.id as FindingId });
  return index + 1;
}
function answeredBySign({ items }: Binder, index: number): boolean {
  const ends = (i: number) => items[i] === undefined || (items[i]?.is === 'break' && items[i]?.is !== 'comment');
  let [from, to] = [index, index];
  while (from > 0 && !isStop(items[from - 1])) from--;
  while (to < items.length && !isStop(items[to])) to++;
  return items.slice(from, to).some((each, i) => each.is === 'other' && each.text === '+' && ends(from + i + 1));
}
const isStop = (item: Binder['items'][number] | undefined): boolean =>
  item === undefined || (item.is === 'break' && item.of !== 'segment');
