import type { Slot } from '../lexicon/entry.ts';
import { entryOf, type FindingId } from '../lexicon/index.ts';
import type { SubjectNode } from '../syntax.ts';
import type { Value } from '../values.ts';
import type { Binder } from './binder.ts';
import { type Draft, type Element, findingsIn, type StatementDraft } from './draft.ts';
import { type Form, matchesAt } from './forms.ts';
import { endsSegment } from './items.ts';
import { fitItem, fitQuantity, type Quantity, quantityAt } from './quantities.ts';

/** What stands alone between two breaks, and can be of nothing but the finding before the comma. */

const JOINERS: readonly string[] = ['and', '&'];
const isJoiner = ({ parts: [word = '', ...more] }: Form): boolean => more.length === 0 && JOINERS.includes(word);

/** Nothing has denied, doubted or turned it. */
export const isPlain = ({ status, denied, deniesPart, doubted, causes }: Draft): boolean =>
  status === 'present' && !denied && !deniesPart && !doubted && causes.length === 0;

/**
 * `skin thin, dry`: words alone after a comma go on with the values of the finding before, where it has one of the same slot
 * and takes several. A word that would be a finding of its own here (`calf soft, red`) is that.
 */
export function goOn(binder: Binder, index: number): void {
  const { closed } = binder;
  if (!closed?.entry || !closed.open || binder.last()?.is !== 'break' || !binder.atSegmentStart() || !isPlain(closed))
    return;
  let i = index;
  for (;;) {
    const value = matchesAt(binder.items, i).find(
      ({ form }) => isMore(binder, closed, form) || isResponse(binder, closed, form),
    );
    if (!value) return;
    i = value.next;
    if (endsSegment(binder.items[i])) break;
    i = matchesAt(binder.items, i).find(({ form }) => isJoiner(form))?.next ?? i;
  }
  binder.current = closed;
}

/** `tape 6 weeks, no relief`: what the one treatment of a statement did. */
const RESPONSES: readonly string[] = ['response', 'kept'];
function isResponse({ statement, section }: Binder, draft: Draft, form: Form): boolean {
  if (draft.entry?.kind !== 'treatment' || section === 'plan') return false;
  const only = statement.elements.filter((each) => each.is === 'finding' || each.is === 'unread').length === 1;
  const claims = form.values.get(draft.id as FindingId) ?? [];
  if (isShared(statement.elements, draft) && claims.some(({ value }) => value === SHARED)) return true;
  return only && claims.some(({ slot }) => RESPONSES.includes(slot) && !draft.slots[slot]);
}

const SHARED = 'no-relief';
/** Treatments that `and` joins in one segment, each only named. */
function isShared(elements: readonly Element[], last: Draft): boolean {
  const named = elements.filter(({ is }) => is !== 'break');
  return (
    named.length > 1 &&
    named.every(
      (each) =>
        each.is === 'finding' &&
        each.draft.entry?.kind === 'treatment' &&
        each.draft.segment === last.segment &&
        isPlain(each.draft) &&
        isNamed(each.draft),
    )
  );
}
/** Only named, if by one of its kinds. */
const isNamed = ({ slots, led }: Draft): boolean => Object.keys(slots).every((slot) => led?.includes(slot));
/**
 * `tried tape and boot, no relief`: what gave no relief together gave none by itself. Of a relief nobody knows which it was, and it is not read.
 */
export function shareResponse({ elements, section }: StatementDraft, line: string): void {
  const drafts = findingsIn(elements);
  const last = drafts.at(-1);
  const response = last?.slots.response;
  if (section !== 'tried' || !last || drafts.length < 2 || response?.value.is !== 'word') return;
  if (!response.value.words.includes(SHARED) || !line.slice(last.word.end, response.start).includes(',')) return;
  const others = drafts.slice(0, -1);
  const same = others.every((draft) => draft.segment === last.segment && isNamed(draft));
  if (same && elements.every(({ is }) => is === 'finding' || is === 'break'))
    for (const draft of others) draft.slots.response = response;
}

/** Said of a wound after its size (`ulcer 8 x 6 mm, probes to bone`). */
const ALSO_FIRST: readonly string[] = ['bone'];

function isMore(binder: Binder, draft: Draft, form: Form): boolean {
  if (form.classes.size > 0 || form.side || form.section) return false;
  const claim = binder.findingIn(form);
  if (claim && saysMore(claim)) return false;
  return (form.values.get(draft.id as FindingId) ?? []).some(({ slot }) => {
    const shape = draft.entry?.slots[slot];
    const filled = draft.slots[slot];
    if (ALSO_FIRST.includes(slot)) return !filled;
    return shape?.kind === 'words' && shape.many === true && filled?.causes.length === 0;
  });
}

/** Is the word alone a finding of its own? A test without its result (`sent vit d, pth`) is none. */
function saysMore({ id, lead }: NonNullable<ReturnType<Binder['findingIn']>>): boolean {
  const { bare, slots } = entryOf(id);
  return (
    bare === 'present' || lead?.absent === true || Object.keys(lead?.gives ?? {}).some((slot) => !slots[slot]?.locating)
  );
}

/**
 * `pain 6/10 walking, 2/10 at rest`: another score with its own moment is a pain of its own, where each score stands before its
 * moment. A bare number before a plural (`3 nights`) counts nights.
 */
export function readNextScore(binder: Binder, index: number): number | undefined {
  const starts = binder.atSegmentStart();
  const first = starts ? binder.closed : binder.current;
  if (binder.section !== 'pain' || first?.id !== 'pain' || !isPlain(first)) return undefined;
  if (first.awaits || first.trailing || first.twinOf) return undefined;
  const { score, character } = first.slots;
  const leads = score
    ? score.causes.length === 0 && (character ? score.start < character.start : starts)
    : starts && !character;
  const last = binder.last();
  const follows = starts || (last?.is === 'finding' && last.draft === first && !binder.no && !binder.not);
  if (!leads || !follows || binder.before.length > 0) return undefined;
  const value = scoreAt(binder, index);
  if (!value || !onlyMoments(binder, value.next)) return undefined;
  const at = binder.span(index, value.next);
  const next: Draft = { ...binder.draft('pain', first.entry, at), ...(first.side ? { side: first.side } : {}) };
  binder.current = next;
  binder.push({ is: 'finding', draft: next });
  binder.setValue('score', value.value, at);
  return value.next;
}

/** `drawer 2+`: how much more than the grade is kept as a remark; of a pulse it is how grades are written. */
export function keepPlus({ current, line }: Binder, { plus, start, end }: Quantity, { is }: Value): void {
  if (plus && is === 'drawer grade') current?.quotes.push({ text: line.slice(start, end), start, end });
}

/**
 * `drawer 2nd 2, 3rd 1`: after one test of one subject and nothing else, another subject with nothing but another value is of the same test.
 * What has more to say (a scale, a pain in the test) is not carried over.
 */
export function readNextOf(binder: Binder, index: number): number | undefined {
  const { closed: first, items, current } = binder;
  const here = binder.last();
  if (first?.entry?.bare !== 'incomplete' || !isPlain(first) || current || here?.is !== 'subject') return undefined;
  const [slot, more] = Object.keys(first.slots);
  const shape = slot === undefined ? undefined : first.entry?.slots[slot];
  const quantity = quantityAt(items, index);
  const fitted = slot && shape && quantity && fitQuantity(quantity, [[slot, shape]]);
  if (!quantity || !fitted || fitted.cause || more || first.slots[slot]?.causes.length !== 0) return undefined;
  if (!isAloneBefore(binder, first) || !isAnother(first.subject, here.subject) || !endsSegment(items[quantity.next]))
    return undefined;
  const at = binder.span(index, quantity.next);
  binder.startFinding({ id: first.id as FindingId }, at);
  binder.roles.pop();
  binder.setValue(slot, fitted.value, at);
  keepPlus(binder, quantity, fitted.value);
  return quantity.next;
}

/** Only the finding, with its subject, in its segment; only a subject since. */
function isAloneBefore({ statement: { elements }, no, not, before, side, question }: Binder, first: Draft): boolean {
  if (no || not || side || question || before.length > 0 || first.quotes.some(({ text }) => !text.endsWith('+')))
    return false;
  const [finding, comma] = elements.slice(-3);
  if (finding?.is !== 'finding' || finding.draft !== first || comma?.is !== 'break') return false;
  const segment = elements.slice(
    elements.findLastIndex(({ is }, i) => is === 'break' && i < elements.length - 3) + 1,
    -3,
  );
  return segment.every(({ is }) => is === 'subject') && segment.length <= 1;
}
/** Other rays, or the same of the other side: the same again would put the first right. */
export function isAnother(first: Draft['subject'], here: SubjectNode): boolean {
  if (first?.at === 'webs' && here.at === 'webs') return !here.webs.some((web) => first.webs.includes(web));
  if (first?.at !== 'rays' || here.at !== 'rays') return false;
  const sides = first.side && here.side && first.side !== here.side;
  return Boolean(sides) || !here.rays.some((ray) => first.rays.includes(ray));
}

/** `pain L 2nd 7/10; R 2nd 3/10`: a score out of ten directly after a subject can be of nothing but its pain. */
export function readScoreOf(binder: Binder, index: number): number | undefined {
  const { items, section, current } = binder;
  if (section !== 'pain' || current || binder.last()?.is !== 'subject' || items[index]?.is !== 'slashed')
    return undefined;
  const { elements } = binder.statement;
  const segment = elements.slice(
    elements.findLastIndex((each) => each.is === 'break' && each.by === 'punctuation') + 1,
  );
  // `pain 2nd, 3rd 3/10` may be a list.
  const listed = findingsIn(elements).some(({ id, slots }) => id === 'pain' && !slots.score);
  const value =
    listed || findingsIn(segment).some(({ id, slots }) => id !== 'pain' || !slots.score)
      ? undefined
      : scoreAt(binder, index);
  if (!value || binder.no || binder.not || binder.before.length > 0) return undefined;
  const at = binder.span(index, value.next);
  binder.startFinding({ id: 'pain' }, at);
  binder.roles.pop();
  binder.setValue('score', value.value, at);
  return value.next;
}

/** `ankle df 0 knee straight, 12 knee bent`: another angle of the same movement, with its own position of the knee. */
export function readNextAngle(binder: Binder, index: number): number | undefined {
  const { closed, items } = binder;
  if (closed?.id !== 'ankle-dorsiflexion' || !binder.atSegmentStart() || !isPlain(closed)) return undefined;
  const { angle, knee } = closed.slots;
  const quantity = quantityAt(items, index);
  const shape = closed.entry?.slots.angle;
  const fitted = quantity && shape && fitQuantity(quantity, [['angle', shape]]);
  const position = matchesAt(items, quantity?.next ?? items.length).find(({ form }) =>
    form.values.get('ankle-dorsiflexion')?.some(({ slot }) => slot === 'knee'),
  );
  if (!angle || !knee || !fitted || fitted.cause || !position || !endsSegment(items[position.next])) return undefined;
  const at = binder.span(index, quantity.next);
  const next: Draft = { ...binder.draft(closed.id, closed.entry, at), ...(closed.side ? { side: closed.side } : {}) };
  binder.current = next;
  binder.push({ is: 'finding', draft: next });
  binder.setValue('angle', fitted.value, at);
  return quantity.next;
}

/** A score out of ten and the index after it; a number with a unit, or before a plural, is none. */
export function scoreAt({ items }: Binder, index: number): { value: Value; next: number } | undefined {
  const item = items[index];
  const open: [string, Slot][] = Object.entries(entryOf('pain').slots).filter(([slot]) => slot === 'score');
  const slashed = item && fitItem(item, open);
  if (slashed) return slashed.cause ? undefined : { value: slashed.value, next: index + 1 };
  const quantity = quantityAt(items, index);
  if (!quantity || quantity.unit !== undefined || !Number.isInteger(quantity.low)) return undefined;
  const after = items[quantity.next];
  if (after?.is === 'word' && /s$/i.test(after.text)) return undefined;
  const fitted = fitQuantity(quantity, open);
  return fitted && !fitted.cause ? { value: fitted.value, next: quantity.next } : undefined;
}

/** Nothing but moments, and further scores with theirs, up to the end of the segment. */
function onlyMoments(binder: Binder, index: number): boolean {
  let moments = 0;
  for (let i = index; ; ) {
    const moment = matchesAt(binder.items, i).find(({ form }) =>
      form.values.get('pain')?.some(({ slot }) => slot === 'character'),
    );
    if (moment) {
      moments++;
      i = moment.next;
      continue;
    }
    if (moments === 0) return false;
    if (endsSegment(binder.items[i])) return true;
    const score = scoreAt(binder, i);
    const joiner = matchesAt(binder.items, i).find(({ form }) => isJoiner(form));
    if (!score && !joiner) return false;
    if (score) moments = 0;
    i = score?.next ?? joiner?.next ?? i + 1;
  }
}
