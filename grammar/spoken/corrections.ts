import { joinWords, type Slot, wordValue } from '../lexicon/entry.ts';
import type { Binder } from '../reader/binder.ts';
import { type Draft, hasValue } from '../reader/draft.ts';
import { matchesAt, type WordClass } from '../reader/forms.ts';
import { fitItem, fitQuantity, quantityAt } from '../reader/quantities.ts';
import { subjectAt } from '../reader/subjects.ts';
import type { Role, SubjectNode } from '../syntax.ts';
import { phrases } from './spoken-phrases.ts';
import { CORRECTIONS } from './spoken-words.ts';

const corrections = phrases(CORRECTIONS, true);
type Filled = Draft & { readonly id: Exclude<Draft['id'], 'panel'>; readonly entry: NonNullable<Draft['entry']> };

/**
 * Reads a correction at a place: the last word wins where what it replaces is certain, since the same slot, status, side, subject or
 * finding is said again. What was replaced is struck. Returns the index of the new words; `undefined` where the scope is not
 * certain, and the words around it stay unclear.
 */
export function readCorrection(binder: Binder, start: number): number | undefined {
  const { items } = binder;
  const isComma = (index: number): boolean => {
    const item = items[index];
    return item?.is === 'break' && item.of === 'segment';
  };
  const marker = isComma(start) ? start + 1 : start;
  const found = items[marker]?.is === 'word' ? corrections.at(items, marker) : undefined;
  if (!found) return undefined;
  const next = isComma(found.next) ? found.next + 1 : found.next;
  const from = REPLACERS.map((replace) => replace(binder, next)).find((each) => each !== undefined);
  if (from === undefined) return undefined;
  strike(binder, from);
  binder.role('filler', binder.span(start, next), { struck: true });
  return next;
}

/** Undoes what the new words replace; gives the place from which the old words are struck, or `undefined`. */
type Replacer = (binder: Binder, next: number) => number | readonly Role[] | undefined;

function strike(binder: Binder, from: number | readonly Role[]): void {
  const isStruck = (role: Role) => (typeof from === 'number' ? role.start >= from : from.includes(role));
  binder.roles.forEach((role, i) => {
    if (isStruck(role)) binder.roles[i] = { kind: 'filler', start: role.start, end: role.end, struck: true };
  });
  if (typeof from !== 'number') return;
  while ((binder.sides.at(-1)?.start ?? -1) >= from) binder.sides.pop();
}

const waits = ({ no, not, side, before, question }: Binder): boolean =>
  [no, not, side, question].some((each) => each !== undefined) || before.length > 0;
const lastRole = ({ roles }: Binder): Role | undefined =>
  roles.findLast(({ kind, struck }) => kind !== 'filler' && kind !== 'punctuation' && !struck);
const filled = ({ current }: Binder): Filled | undefined =>
  current && current.id !== 'panel' && current.entry ? (current as Filled) : undefined;

/** Past words of these classes and labels of a slot. */
function past(
  binder: Binder,
  from: number,
  classes: readonly WordClass[],
  labelOf?: { id: Filled['id']; slot: string },
): number {
  for (let i = from; ; ) {
    const match = matchesAt(binder.items, i).find(
      ({ form }) =>
        classes.some((name) => form.classes.has(name)) || (labelOf && form.labels.get(labelOf.id) === labelOf.slot),
    );
    if (!match) return i;
    i = match.next;
  }
}

/** `grade one no sorry grade two`, `plantar correction dorsal`. */
const sameSlot: Replacer = (binder, next) => {
  const draft = filled(binder);
  if (!draft || waits(binder)) return undefined;
  const last = lastRole(binder);
  const slots = Object.keys(draft.slots).filter((slot) => {
    const shape = draft.entry.slots[slot];
    const several = shape?.kind === 'words' && shape.many;
    if (!shape || draft.led?.includes(slot) || (several && last?.slot !== slot)) return false;
    return takes(binder, draft, slot, shape, next);
  });
  const slot = slots.includes(last?.slot ?? '') ? last?.slot : slots.length === 1 ? slots[0] : undefined;
  const role = binder.roles.findLast(
    (each) => each.kind === 'value' && each.slot === slot && each.start >= draft.start,
  );
  if (slot === undefined || !role) return undefined;
  empty(draft, slot, role);
  draft.open = true;
  return binder.roles.filter((each) => each === role || isLabelOf(each, role));
};
const isLabelOf = (role: Role, { finding, slot, start }: Role): boolean =>
  role.kind === 'filler' && role.finding === finding && role.slot === slot && role.end <= start;

function takes(binder: Binder, { id }: Filled, slot: string, shape: Slot, next: number): boolean {
  const at = past(binder, next, ['filler'], { id, slot });
  if (shape.kind === 'words')
    return matchesAt(binder.items, at).some(({ form }) => form.values.get(id)?.some((claim) => claim.slot === slot));
  const item = binder.items[at];
  const quantity = quantityAt(binder.items, at);
  const fitted = (item && fitItem(item, [[slot, shape]])) ?? (quantity && fitQuantity(quantity, [[slot, shape]]));
  return fitted !== undefined && fitted.cause !== 'wrong unit';
}

function empty(draft: Draft, slot: string, { canonical, start, end }: Role): void {
  const present = draft.slots[slot];
  const said = present?.value.is === 'word' ? (present.value.said ?? present.value.words) : [];
  const rest = said.filter((word) => word !== canonical);
  if (!present || rest.length === 0) delete draft.slots[slot];
  else {
    present.value = joinWords(rest.map((word) => wordValue(draft.entry?.slots[slot], word)));
    present.causes = present.causes.filter((cause) => cause.start < start || cause.end > end);
  }
}

/** `lifted two make that three millimetres`: the first number has no place yet, since its unit was not said. */
const sameNumber: Replacer = (binder, next) => {
  const draft = filled(binder);
  const last = binder.last();
  const role = lastRole(binder);
  if (!draft || waits(binder) || last?.is !== 'unread' || role?.kind !== 'reported') return undefined;
  const isNumber = binder.items.some((item) => item.is === 'number' && item.start === role.start);
  const quantity = quantityAt(binder.items, next);
  if (!isNumber || last.cause.start !== role.start || !quantity || !fitQuantity(quantity, binder.openSlots()))
    return undefined;
  binder.statement.elements.pop();
  binder.statement.verbatim.pop();
  binder.problems.pop();
  return [role];
};

const STATUS: readonly WordClass[] = ['absent', 'not done', 'unable', 'equivocal', 'positive', 'present'];
/** `click present no sorry absent`. */
const sameStatus: Replacer = (binder, next) => {
  const draft = filled(binder);
  const role = lastRole(binder);
  if (!draft?.statusGiven || draft.denied || waits(binder)) return undefined;
  if (role?.kind !== 'modifier' || role.finding !== draft.id) return undefined;
  const again = matchesAt(binder.items, next).some(({ form }) => STATUS.some((name) => form.classes.has(name)));
  if (!again || draft.causes.length > 0) return undefined;
  draft.status = 'present';
  draft.statusGiven = false;
  draft.open = true;
  return [role];
};

/** `left no sorry right`. */
const sameSide: Replacer = (binder, next) => {
  const { side } = binder;
  if (!side || !matchesAt(binder.items, next).some(({ form }) => form.side)) return undefined;
  binder.side = undefined;
  return side.start;
};

const BEFORE_FINDING: readonly WordClass[] = ['filler', 'no', 'not', 'adjective', 'emphasis'];
/** The finding that the new words open, past a denial and qualities; by its own name, or by one of its values. */
function findingFrom(binder: Binder, from: number): { id: string; named: boolean } | undefined {
  for (let i = past(binder, from, BEFORE_FINDING), steps = 0; steps < 4; steps++) {
    const found = binder.findingAt(i);
    if (found) return { id: found.id, named: binder.findingIn(found.form)?.lead === undefined };
    const quality = matchesAt(binder.items, i).find(({ form }) => form.values.size > 0);
    if (!quality) return undefined;
    i = past(binder, quality.next, BEFORE_FINDING);
  }
  return undefined;
}

/** `drawer one I mean drawer two`: the finding is said again. */
const sameFinding: Replacer = (binder, next) => {
  const last = binder.last();
  const again = findingFrom(binder, next);
  if (waits(binder) || last?.is !== 'finding' || again?.id !== last.draft.id) return undefined;
  // `onset, sorry, gradual` goes on, and takes nothing back.
  if (!again.named && !last.draft.statusGiven && !hasValue(last.draft)) return undefined;
  binder.statement.elements.pop();
  binder.current = undefined;
  return last.draft.start;
};

/** The subject that the new words name, with a side before it, and the index after it. */
function subjectFrom(binder: Binder, from: number): { subject: SubjectNode; next: number } | undefined {
  const start = past(binder, from, ['filler']);
  const side = matchesAt(binder.items, start).find(({ form }) => form.side);
  const read = subjectAt({
    items: binder.items,
    start: side?.next ?? start,
    commaJoins: true,
    adjoins: false,
    opensFinding: () => false,
  });
  return read && 'subject' in read ? read : undefined;
}

/** `third ray no sorry second ray`, and with the same finding said again `third ray tender scratch that second ray tender`. */
const sameSubject: Replacer = (binder, next) => {
  const { elements } = binder.statement;
  const at = elements.findLastIndex(({ is }) => is === 'subject');
  const old = elements[at];
  const said = subjectFrom(binder, next);
  if (old?.is !== 'subject' || !said || said.subject.at !== old.subject.at || waits(binder)) return undefined;
  const since = elements.slice(at + 1);
  const [first] = since;
  if (since.some(({ is }) => is !== 'finding')) return undefined;
  if (first?.is === 'finding' && findingFrom(binder, said.next)?.id !== first.draft.id) return undefined;
  elements.splice(at);
  binder.current = undefined;
  binder.subject = undefined;
  const role = binder.roles.findLastIndex(({ kind, start }) => kind === 'subject' && start <= old.subject.start);
  const before = binder.roles[role - 1];
  const sided = old.subject.side && before?.kind === 'modifier' ? before.start : old.subject.start;
  return Math.min(sided, old.subject.start);
};

const REPLACERS: readonly Replacer[] = [sameSide, sameSlot, sameNumber, sameStatus, sameFinding, sameSubject];
