import { CONDITIONS } from '../lexicon/closed-words.ts';
import { type Entry, joinWords, type Section, type SubjectKind } from '../lexicon/entry.ts';
import type { FindingId } from '../lexicon/index.ts';
import { NONE, orNone } from '../none.ts';
import type { Cause, CauseKind, FindingNode, Role, RoleKind, SlotNode, SubjectNode, VerbatimNode } from '../syntax.ts';
import type { Making, Side, Span, Status, Value } from '../values.ts';
import type { SideMention } from './sides.ts';

/** A finding while its line is being read. */
export interface Draft {
  readonly id: FindingId | 'panel';
  readonly entry: Entry | undefined;
  readonly section: Section;
  readonly word: Span;
  readonly segment: number;
  start: number;
  end: number;
  subject?: SubjectNode;
  /** Said of all toes by its own word. */
  whole?: true;
  side?: Side | 'both';
  /** The line names a subject of another kind. */
  apart?: true;
  /** Sides that the line names beside a finding without side. */
  beside?: readonly SideMention[];
  status: Status;
  /** A status word, or a word that denies by itself, has been read. */
  statusGiven: boolean;
  /** Denied by a `no` before it. */
  denied: boolean;
  /** Denied by a word after it (`swelling none`). */
  deniedBy?: Span;
  /** Slots that the leading word itself gave: `no fracture` denies that fracture, it has no value beside the denial. */
  led?: readonly string[];
  /** Opened by a direction alone (`lateral`). */
  bareDirection?: boolean;
  /** A value of its own starts with `no` (`no pain`): what follows may belong to that denial. */
  deniesPart?: boolean;
  doubted?: Span | undefined;
  /** The other side, whose own value of the finding follows (`abi right 0.9 left 1.0`). */
  awaits?: Side;
  /** Its side stands after its value (`4/10 R 6/10 L`). */
  trailing?: Side;
  /** Said in one breath with the finding before it, of the other side. */
  twinOf?: Draft;
  slots: Record<string, { value: Value; causes: readonly Cause[]; start: number; end: number }>;
  quotes: (Span & { text: string })[];
  causes: Cause[];
  /** Slots that still take values; a comma, a status or a new finding closes them. */
  open: boolean;
}

/** A finding as it starts, of which nothing but its word has been read. */
export const newDraft = (
  id: Draft['id'],
  entry: Entry | undefined,
  { start, end }: Span,
  { section, segment }: { readonly section: Section; readonly segment: number },
): Draft => ({
  id,
  entry,
  section,
  word: { start, end },
  segment,
  start,
  end,
  status: 'present',
  statusGiven: false,
  denied: false,
  slots: {},
  quotes: [],
  causes: [],
  open: true,
});

/** A word that waits for the finding after it. */
export interface Pending<T> extends Span {
  readonly value: T;
  /** An adjective has stood between. */
  adjective?: boolean;
}

/** What a statement holds, in order, for the rules of reach. */
export type Element =
  | { readonly is: 'finding'; readonly draft: Draft }
  | { readonly is: 'unread'; readonly cause: Cause }
  | { readonly is: 'distancing'; readonly cause: Cause }
  | { readonly is: 'subject'; readonly subject: SubjectNode }
  | { readonly is: 'list end' }
  /** A subject that starts a statement within a segment breaks it too. */
  | { readonly is: 'break'; readonly by: 'punctuation' | 'subject' };

export interface StatementDraft {
  readonly section: Section;
  /** Opened by `operation` alone, which doesn't say that it was done. */
  unsaid?: true;
  start: number;
  end: number;
  readonly elements: Element[];
  readonly verbatim: VerbatimNode[];
}

/** The findings among some elements, in order. */
export function findingsIn(elements: readonly Element[]): Draft[] {
  const drafts: Draft[] = [];
  for (const element of elements) if (element.is === 'finding') drafts.push(element.draft);
  return drafts;
}

export const causeOf = (why: CauseKind, at: Span, line: string): Cause => ({
  why,
  text: line.slice(at.start, at.end),
  start: at.start,
  end: at.end,
});

export const kindOfSubject = (subject: SubjectNode): SubjectKind => (subject.at === 'webs' ? 'web' : 'ray');
export const kindsOf = (id: Draft['id'], entry: Entry | undefined): readonly SubjectKind[] =>
  id === 'panel' ? ['ray', 'web'] : (entry?.subjects ?? []);

/** Has the finding a value of its own, other than a place? */
export const hasValue = (draft: Draft): boolean =>
  Object.keys(draft.slots).some((slot) => !draft.entry?.slots[slot]?.locating);

/** How many places it names (`tender plantar dorsal`). */
export const placesOf = ({ entry, slots }: Draft): number =>
  Math.max(
    0,
    ...Object.entries(slots).map(([slot, { value }]) =>
      value.is === 'word' && entry?.slots[slot]?.locating ? value.words.length : 0,
    ),
  );
/** Nothing that is said of the patient has a side. */
export const isOfPatient = ({ entry }: Draft): boolean => entry?.subjects.every((kind) => kind === 'patient') === true;

/** Only named, if by one of its kinds (`erosion`): neither a status nor a value beyond its own name. */
export const isBare = (draft: Draft): boolean =>
  !draft.statusGiven &&
  Object.keys(draft.slots).every((slot) => draft.led?.includes(slot) || draft.entry?.slots[slot]?.locating);

/** The words that stand as values of slots are the lexicon's, and each value is one object, whatever the notes. */
const words = new Map<string, Value>();
function shared(value: Value): Value {
  const word = value.is === 'word' && value.words.length === 1 && !value.said ? value.words[0] : undefined;
  if (word === undefined) return value;
  const known = words.get(word) ?? value;
  words.set(word, known);
  return known;
}

export function setSlot(draft: Draft, slot: string, value: Value, at: Span, causes: readonly Cause[] = NONE): void {
  const present = draft.slots[slot];
  if (present && present.value.is === 'word' && value.is === 'word') {
    present.value = joinWords([present.value, value]);
    present.causes = orNone([...present.causes, ...causes]);
    present.end = Math.max(present.end, at.end);
  } else draft.slots[slot] = { value: shared(value), causes: orNone(causes), start: at.start, end: at.end };
  draft.start = Math.min(draft.start, at.start);
  draft.end = Math.max(draft.end, at.end);
}

/** A test without its result says nothing, with a question mark or without. */
export const lacksResult = (draft: Draft): boolean =>
  draft.entry?.bare === 'incomplete' && !hasValue(draft) && !draft.statusGiven;

/** A grade is judged on the scale that stands beside it: 4 is no grade of the scale 0-3. */
function checkScale({ slots: { grade, scale } }: Draft, line: string): void {
  if (grade?.value.is !== 'drawer grade' || scale?.value.is !== 'word') return;
  const [min = 0, max = 4] = (scale.value.words[0] ?? '').split('-').map(Number);
  if (grade.value.low < min || grade.value.high > max)
    grade.causes = [...grade.causes, causeOf('out of range', grade, line)];
}

/** A bare number after a word of place could name the ray. */
const followsPlace = ({ start, end }: Span, { word }: Draft, line: string): boolean =>
  start > word.end &&
  /^\d+$/.test(line.slice(start, end)) &&
  /\b(?:at|in|on|over|around)\s+$/i.test(line.slice(0, start));
export function doubtSlot({ slots }: Draft, slot: string, line: string): void {
  const read = slots[slot];
  if (read) slots[slot] = { ...read, causes: [...read.causes, causeOf('either neighbour', read, line)] };
}

/** Tests that are denied by their result only: `no crt`, `no monofilament` may not have been done. */
const TESTS: readonly string[] = ['capillary-refill', 'temperature', 'abi', 'mtp-motion', 'pip', 'gait', 'calf'];
const isUntold = ({ id, denied, slots, word }: Draft, line: string): boolean =>
  denied === true &&
  Object.keys(slots).length === 0 &&
  (TESTS.includes(id) || /^(?:.*filament|colou?r)$/i.test(line.slice(word.start, word.end)));
const LIGHT_TOUCH = /\bsens\w*\b[^;,.]*\blt\b/i;
const OF_SO_MANY = /^\d+\s+(?:out\s+)?of\s+(?:the\s+(?:last|past)\s+)?\d/i;

type Writable<T> = { -readonly [K in keyof T]: T[K] };
const TO_COME: readonly string[] = ['sutures', 'pin-out'];
const KEPT_DENIAL = /^(?:no longer|denies)\b/i;
/** Says what can only be said once the finding is complete, and freezes it. */
export function finished(draft: Draft, line: string): FindingNode {
  const add = (why: CauseKind, at: Span) => draft.causes.push(causeOf(why, at, line));
  const { status } = draft;
  const valued = hasValue(draft);
  const beyondLead = Object.keys(draft.slots).some(
    (slot) => !draft.led?.includes(slot) && !draft.entry?.slots[slot]?.locating,
  );
  if (beyondLead && (status === 'absent' || status === 'avoid')) add('absent with value', draft.word);
  if (Object.keys(draft.slots).length > 0 && (status === 'not done' || status === 'unable'))
    add('absent with value', draft.word);
  if (lacksResult(draft)) add('no result', draft.word);
  checkScale(draft, line);
  if (status === 'equivocal' && valued) add('doubt', draft.word);
  if (draft.doubted) {
    if (valued || draft.statusGiven) add('doubt', draft.doubted);
    else draft.status = 'equivocal';
  }
  const kept = draft.denied ? KEPT_DENIAL.exec(line.slice(draft.start)) : null;
  if (kept) draft.quotes.push({ text: kept[0], start: draft.start, end: draft.start + kept[0].length });
  // `sutures out in ten days` is to come, wherever it is written.
  // `wires out at six weeks` may have been done or be ordered.
  if (
    draft.section === 'exam' &&
    TO_COME.includes(draft.id) &&
    (draft.slots.at || /\bin\s(?!place\b|situ\b)/i.test(line.slice(draft.start, draft.end)))
  )
    add('distancing word', draft.word);
  // `pain under 2`, `pain at 2`: a place, or how much?
  const score = draft.id === 'pain' ? draft.slots.score : undefined;
  if (score?.value.is === 'number' && (score.value.bound || followsPlace(score, draft, line)))
    doubtSlot(draft, 'score', line);
  // `pain 7 of 10 days`: how much, or how often?
  if (score && draft.slots.for && OF_SO_MANY.test(line.slice(score.start, draft.slots.for.end)))
    for (const slot of ['score', 'for']) doubtSlot(draft, slot, line);
  // `pin removed today` in a plan has been done, or is to be.
  const removed =
    (draft.section === 'plan' || draft.section === 'operation') &&
    TO_COME.includes(draft.id) &&
    /\bremoved\b/i.test(line.slice(draft.start, draft.end));
  if (removed) add('distancing word', draft.word);
  // `pain R6 L3`: two scores, or a ray?
  if (score && draft.section === 'pain' && /\b[RL]\d+[\s,]+[RL]\d/i.test(line)) add('either neighbour', score);
  // `sense lt normal`: of light touch, or of the left? Beside `rt` it is a side.
  if (draft.id === 'sensation' && LIGHT_TOUCH.test(line) && !/\brt\b/i.test(line)) add('either neighbour', draft.word);
  // `discharge physio`: to it, or from it?
  const to = draft.id === 'discharge' ? draft.slots.to?.value : undefined;
  if (
    to?.is === 'word' &&
    to.words.includes('physiotherapy') &&
    !/\bto\b/i.test(line.slice(draft.word.start, draft.end))
  )
    doubtSlot(draft, 'to', line);
  // `fh:` opens a list.
  if (draft.id === 'family-history' && isBare(draft) && /^\s*:\s*$/.test(line.slice(draft.end)))
    add('no result', draft.word);
  // `toe purchase absent` has lost its grip; of a paper test it might be said of a good one.
  const { id, section, word, end } = draft;
  // `no drawer`: negative, or not done? `drawer no` answers.
  const untold = (id === 'drawer' && (draft.denied || end === word.end)) || isUntold(draft, line);
  if ((id === 'paper' || untold) && status === 'absent') add('named result', word);
  const { segment, start, subject, whole, side, apart, beside } = draft;
  const quotes = orNone(draft.quotes);
  const causes = orNone(draft.causes);
  const slots: Record<string, SlotNode> = draft.slots;
  // Written out: a spread for each that is missing takes longer than all the rest.
  const node: Writable<FindingNode> = {
    id,
    section,
    word,
    segment,
    start,
    end,
    status: draft.status,
    slots,
    quotes,
    causes,
  };
  if (subject) node.subject = subject;
  if (whole) node.whole = whole;
  if (side) node.side = side;
  if (apart) node.apart = apart;
  if (beside) node.beside = beside;
  return node;
}

/** `present in the others; pip flexible`: a subject at the end of what was not read is of that, and of nothing that follows. */
export function endsUnread({ elements }: StatementDraft): boolean {
  const segment = elements.slice(elements.findLastIndex(({ is }) => is === 'break') + 1);
  return segment.at(-1)?.is === 'subject' && segment.some(({ is }) => is === 'unread');
}

/**
 * Words directly before a section word belong to its statement where no finding stands before them (`if worse plan boot`); a condition of the
 * same sentence is one of its plan (`if drawer 2, plan operation`).
 */
export function leadIn(elements: readonly Element[], section: Section): readonly Element[] {
  const segment = elements.slice(elements.findLastIndex(({ is }) => is === 'break') + 1);
  const found = segment.some(({ is }) => is === 'finding');
  const own = found ? [] : segment.filter(({ is }) => is === 'unread' || is === 'distancing');
  if (section !== 'plan') return own;
  const conditions = elements.filter(
    (each) => each.is === 'distancing' && CONDITIONS.includes(each.cause.text.toLowerCase()) && !own.includes(each),
  );
  return [...conditions, ...own];
}

/** What a role may say of its text. */
export type ToldRole = Omit<Role, 'kind' | 'start' | 'end'>;
export function roleOf(kind: RoleKind, start: number, end: number, more?: ToldRole): Role {
  const role: Making<Role> = { kind, start, end };
  if (more?.canonical !== undefined) role.canonical = more.canonical;
  if (more?.finding) role.finding = more.finding;
  if (more?.slot) role.slot = more.slot;
  if (more?.struck) role.struck = more.struck;
  return role;
}
