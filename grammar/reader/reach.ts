import type { Cause } from '../syntax.ts';
import { type Draft, type Element, hasValue, type StatementDraft } from './draft.ts';

/**
 * What an unread, negating or distancing word does to the findings near it: better unread than misread.
 * Each rule adds causes to the findings that it reaches and removes nothing.
 */
export function applyReach(statements: readonly StatementDraft[]): void {
  let before: Draft | undefined;
  for (const { elements } of statements) {
    deny(elements);
    for (const { by, elements: segment } of segments(elements)) {
      unreadReach(segment);
      distancingReach(segment, before);
      loneSubjects(segment, by === 'subject' ? before : undefined);
      before = findings(segment).at(-1) ?? before;
    }
  }
}

interface Segment {
  readonly by: 'punctuation' | 'subject';
  readonly elements: Element[];
}
function segments(elements: readonly Element[]): Segment[] {
  const list: Segment[] = [{ by: 'punctuation', elements: [] }];
  for (const element of elements) {
    if (element.is === 'break') list.push({ by: element.by, elements: [] });
    else list.at(-1)?.elements.push(element);
  }
  return list;
}
const findings = (elements: readonly Element[]): Draft[] =>
  elements.flatMap((element) => (element.is === 'finding' ? [element.draft] : []));

/** An unread word reaches the findings on both sides of it; at the start of a segment, all that follow. */
function unreadReach(segment: readonly Element[]): void {
  segment.forEach((element, i) => {
    if (element.is !== 'unread') return;
    const left = findings(segment.slice(0, i)).at(-1);
    const right = findings(segment.slice(i + 1));
    for (const draft of left ? [left, ...right.slice(0, 1)] : right) draft.causes.push(element.cause);
  });
}

/** A distancing word reaches its whole segment and, alone in it, the finding before. */
function distancingReach(segment: readonly Element[], before: Draft | undefined): void {
  const causes = segment.flatMap((element): Cause[] => (element.is === 'distancing' ? [element.cause] : []));
  if (causes.length === 0) return;
  const here = findings(segment);
  for (const draft of here.length > 0 ? here : before ? [before] : []) draft.causes.push(...causes);
}

/**
 * A subject that no finding of its segment follows makes its neighbours unclear. Alone between commas it opens a list and
 * is harmless; alone after a finding (`drawer 2 3rd`) it reaches `before`.
 */
function loneSubjects(segment: readonly Element[], before: Draft | undefined): void {
  segment.forEach((element, i) => {
    if (element.is !== 'subject') return;
    const next = segment[i + 1];
    if (next && next.is !== 'subject') return;
    const { start, end } = element.subject;
    const cause: Cause = { why: 'subject without finding', text: '', start, end };
    const left = findings(segment.slice(0, i)).at(-1) ?? (i === 0 ? before : undefined);
    const right = next ? findings(segment.slice(i + 1))[0] : undefined;
    for (const draft of [left, right]) draft?.causes.push(cause);
  });
}

/**
 * After a denied finding the next bare ones are unclear until a break of the statement, a subject or a value of their own
 * (`no redness, fever`); a closing `or` denies the whole list (`no click, squeeze or numbness`).
 */
function deny(elements: readonly Element[]): void {
  let run: Draft[] = [];
  let denier: Draft | undefined;
  let closed = false;
  const settle = () => {
    for (const draft of run) {
      if (closed) {
        draft.status = denier?.status ?? 'absent';
        draft.statusGiven = true;
      } else draft.causes.push({ why: 'reach of no', text: 'no', start: draft.word.start, end: draft.word.end });
    }
    run = [];
    denier = undefined;
    closed = false;
  };
  for (const element of elements) {
    if (element.is === 'break') continue;
    if (element.is === 'list end') {
      closed = true;
      continue;
    }
    if (element.is !== 'finding') {
      settle();
      continue;
    }
    const { draft } = element;
    const bare = !draft.statusGiven && !hasValue(draft);
    if (draft.denied) {
      settle();
      denier = draft;
    } else if (denier && bare && !(closed && run.length > 0 && isClosedBefore(elements, draft))) run.push(draft);
    else settle();
  }
  settle();
}

/** Has the list already been closed by an `or` and one finding after it? */
function isClosedBefore(elements: readonly Element[], draft: Draft): boolean {
  const at = elements.findIndex((element) => element.is === 'finding' && element.draft === draft);
  const enders = elements.slice(0, at).map((element, i) => (element.is === 'list end' ? i : -1));
  const last = Math.max(...enders);
  return findings(elements.slice(last, at)).length > 0;
}
