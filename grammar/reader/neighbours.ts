import * as closed from '../lexicon/closed-words.ts';
import { entryOf } from '../lexicon/index.ts';
import type { Cause } from '../syntax.ts';
import type { Span } from '../values.ts';
import type { Binder } from './binder.ts';
import { isDrug } from './denial.ts';
import { type Draft, type Element, isBare, placesOf, type StatementDraft } from './draft.ts';

/** Two findings that stand side by side in one segment, each said about the other or about both. */
export function neighbourReach({ elements }: StatementDraft, line: string): void {
  let refused = false;
  for (const [i, element] of elements.entries()) {
    const after = elements[i + 1];
    if (element.is === 'unread' && isListDenial(element.cause, line)) denyBefore(elements, i, element.cause);
    if (element.is !== 'finding') continue;
    if (isDeniedBack(element.draft, line))
      denyBefore(elements, i, element.draft.word, isListedBefore(elements, i, element.draft, line));
    if (!refused && element.draft.id === 'decision' && isAgainst(element.draft)) {
      refused = true;
      againstReach(elements.slice(i + 1), element.draft);
    }
    if (after?.is === 'finding') {
      pairOf(element.draft, after.draft);
      putRight(element.draft, after.draft);
      deniedBetween(elements, i, line);
      deniedPlace(element.draft, after.draft);
      nilBefore(element.draft, after.draft, line);
    }
  }
}

const doubt = (at: Draft, why: Cause['why']): Cause => ({ why, text: '', start: at.word.start, end: at.word.end });

/** A sign and what judges it: each may be meant of the other. */
function pairOf(first: Draft, second: Draft): void {
  // `second toe ok drawer ...`: the joint, or only what is said while thinking?
  if (first.id === 'unremarkable') first.causes.push(doubt(second, 'either neighbour'));
  if (first.status !== 'present' || !isBare(first)) return;
  const sign = first.entry?.kind === 'sign' && first.entry.bare === 'present' && !first.entry.slots.result;
  // `redness ok`, `squeeze nt`: no such finding, or one more?
  const judged = sign && second.id === 'unremarkable';
  const ofWeb = first.entry?.subjects.every((kind) => kind === 'web') === true;
  const eased = ofWeb && second.id === 'tenderness' && second.status === 'absent';
  // `apixaban allergy`
  const reacted = second.id === 'allergy' && isBare(second) && isDrug(first);
  if (!judged && !eased && !reacted) return;
  first.causes.push(doubt(second, 'either neighbour'));
  second.causes.push(doubt(first, 'either neighbour'));
}
/** `tender nt`: put right, or of another joint? */
function putRight(first: Draft, second: Draft): void {
  const same = first.id === second.id && first.subject === second.subject && placesOf(first) + placesOf(second) === 0;
  if (!same || first.denied || second.denied || !(isTold(first) && isTold(second))) return;
  if (first.status === second.status) return;
  first.causes.push(doubt(second, 'two statuses'));
  second.causes.push(doubt(first, 'two statuses'));
}
const isTold = ({ status, slots }: Draft): boolean =>
  (status === 'present' || status === 'absent') && Object.keys(slots).length === 0;
/**
 * `squeeze neg numbness`: said of the sign before it, or, as some write it, of the one after? So are those that stand in a row with it
 * (`squeeze neg click neg numbness`).
 */
function deniedBetween(elements: readonly Element[], at: number, line: string): void {
  const [first, second] = [elements[at], elements[at + 1]];
  if (first?.is !== 'finding' || second?.is !== 'finding') return;
  const by = first.draft.deniedBy;
  const { draft: after } = second;
  if (!by || after.status !== 'present' || after.statusGiven || !isMerelyNamed(after) || by.end > after.start) return;
  const cause: Cause = { why: 'reach of no', text: line.slice(by.start, by.end), start: by.start, end: by.end };
  after.causes.push(cause);
  for (let i = at; i >= 0; i--) {
    const each = elements[i];
    if (each?.is !== 'finding' || !each.draft.deniedBy) return;
    each.draft.causes.push(cause);
  }
}
/** `tender plantar shaft nt`: if the place in doubt is that of the denial, it denies no more than that. */
function deniedPlace(first: Draft, second: Draft): void {
  if (second.status !== 'absent') return;
  const doubted = Object.entries(first.slots).some(
    ([slot, { causes, end }]) =>
      end <= second.word.start &&
      first.entry?.slots[slot]?.locating &&
      causes.some(({ why }) => why === 'either neighbour'),
  );
  if (doubted) second.causes.push(doubt(first, 'either neighbour'));
}
/** `pmh nil dm`: nothing of note, and then this, or none of it? */
function nilBefore(first: Draft, second: Draft, line: string): void {
  if (!/\b(?:nil|none)$/i.test(line.slice(first.word.start, first.word.end))) return;
  first.causes.push(doubt(second, 'reach of no'));
  second.causes.push(doubt(first, 'reach of no'));
}

/** Denied by a word after it (`tenderness nil`). */
const isDeniedBack = ({ status, statusGiven, denied, word, end }: Draft, line: string): boolean =>
  status === 'absent' && statusGiven && !denied && /\S/.test(line.slice(word.end, end));

/** What stands before a place, white space left out. */
function charBefore(line: string, place: number): string | undefined {
  let at = place - 1;
  while (at >= 0 && /\s/.test(line[at] ?? '')) at--;
  return line[at];
}
const DENIALS = new Set<string>([...closed.NO, ...closed.ABSENT]);
const isListDenial = ({ text, start }: Cause, line: string): boolean =>
  DENIALS.has(text.toLowerCase()) && charBefore(line, start) === ':';

/** `swelling & tenderness nil`, `fever, calf pain, sob: nil`: a denial at the end may be of all that is joined to it; after a colon, of the list. */
function denyBefore(elements: readonly Element[], end: number, at: Span, listed = true): void {
  if (!listed) return;
  for (let i = end - 1; i >= 0; i--) {
    const each = elements[i];
    if (each?.is === 'break') continue;
    if (each?.is !== 'finding') return;
    const { draft } = each;
    if (draft.status !== 'present' || (draft.statusGiven && !draft.deniesPart) || !isMerelyNamed(draft)) return;
    draft.causes.push({ why: 'reach of no', text: '', start: at.start, end: at.end });
  }
}
/** Named, if with a state that its own words gave (`calf pain`). */
const isMerelyNamed = (draft: Draft): boolean =>
  isBare(draft) || Object.values(draft.slots).every(({ end }) => end <= draft.word.end);

/** Does a denial close a list: after a colon, or where it is joined to a neighbour in its segment? */
function isListedBefore(elements: readonly Element[], at: number, draft: Draft, line: string): boolean {
  const joined = elements[at - 1]?.is === 'finding';
  return joined || /^\s*:/.test(line.slice(draft.word.end, draft.end));
}

const AGAINST: readonly string[] = ['declines operation', 'prefers no operation', 'prefers to wait', 'undecided'];
const isAgainst = ({ slots }: Draft): boolean =>
  Object.values(slots).some(({ value }) => value.is === 'word' && value.words.some((word) => AGAINST.includes(word)));
/** `declines surgery and steroid`, `declines surgery, mri`: what is joined to a refusal, or only named after it, may be refused too. */
function againstReach(after: readonly Element[], decision: Draft): void {
  let joined = true;
  for (const element of after) {
    if (element.is === 'break') joined = false;
    if (element.is !== 'finding') continue;
    const { draft } = element;
    const named = isBare(draft) && draft.id !== 'review' && entryKind(draft) !== undefined;
    if (joined || named) draft.causes.push(doubt(decision, 'distancing word'));
  }
}
const entryKind = ({ id }: Draft): string | undefined => {
  const kind = id === 'panel' ? undefined : entryOf(id).kind;
  return kind === 'treatment' || kind === 'procedure' || id === 'image' || id === 'operation' ? kind : undefined;
};

/** `plan nsaid stop`: the spoken end of the sentence, or of the treatment? */
export function mayStop({ current, line }: Binder, { start, end }: Span): void {
  const taken = current && (current.entry?.kind === 'treatment' || isDrug(current));
  if (taken && isBare(current) && /^stop$/i.test(line.slice(start, end)))
    current.causes.push({ why: 'either neighbour', text: 'stop', start, end });
}
