import * as closed from '../lexicon/closed-words.ts';
import type { FindingId } from '../lexicon/index.ts';
import { takenBackReach } from '../spoken/taken-back.ts';
import type { Cause } from '../syntax.ts';
import { calfReach } from './calf.ts';
import { deny } from './denial.ts';
import { causeOf, type Draft, type Element, findingsIn, lacksResult, type StatementDraft } from './draft.ts';
import { formOf } from './forms.ts';
import { neighbourReach } from './neighbours.ts';
import { openingReach } from './openings.ts';

/**
 * What an unread, negating or distancing word does to the findings near it: better unread than misread.
 * Each rule adds causes to the findings that it reaches and removes nothing.
 */
export function applyReach(statements: readonly StatementDraft[], line: string): void {
  let before: Draft | undefined;
  let trailing: Cause | undefined;
  let unused: Cause | undefined;
  let unread: Cause | undefined;
  let part: Cause | undefined;
  let calf: Draft | undefined;
  for (const statement of statements) {
    const { elements, section } = statement;
    let last: Element | undefined;
    deny(statement, line);
    webReach(elements, line);
    openingReach(elements, section, line);
    neighbourReach(statement, line);
    calf = calfReach(elements, calf);
    for (const { by, elements: segment } of segments(elements)) {
      unreadReach(segment, before);
      partReach(segment);
      farPartReach(segment, before);
      directionReach(segment, before, line);
      spotReach(segment, before, line);
      if (unread) painReach(segment, unread);
      if (part) feltReach(segment, part);
      unread = unreadAlone(segment);
      part = partAlone(segment);
      placeReach(segment);
      distancingReach(segment, before);
      const drafts = findingsIn(segment);
      if (unused && segment[0]?.is === 'subject') drafts[0]?.causes.push(unused);
      if (segment.length > 0) unused = unusedSubject(segment);
      for (const draft of drafts) if (trailing && draft.subject?.start === trailing.start) draft.causes.push(trailing);
      const listed = goesOnWithRay(segment, last) ? before : undefined;
      trailing = loneSubjects(segment, by === 'subject' ? before : listed) ?? trailing;
      before = drafts.at(-1) ?? before;
      last = segment.at(-1);
    }
    // `tender 3rd, 4th`: a subject that closes the statement may belong to the list of the finding before it.
    if (unused && before?.subject && before.subject.start > before.word.end) before.causes.push(unused);
    unused = undefined;
  }
  takenBackReach(statements);
}

/** `mulder neg, sensation normal`: of the web, where the nerve ends, or of the foot? */
function webReach(elements: readonly Element[], line: string): void {
  let web: Draft['subject'];
  for (const draft of findingsIn(elements)) {
    if (draft.id === 'sensation' && web && draft.apart) draft.causes.push(causeOf('wrong subject', web, line));
    web = draft.subject?.at === 'webs' ? draft.subject : undefined;
  }
}

/** A pair is one statement: what is unclear of one side is of both. */
export function pairReach(drafts: readonly Draft[]): void {
  for (const { twinOf, causes } of drafts) {
    if (!twinOf || causes.length > 0 === twinOf.causes.length > 0) continue;
    if (causes.length > 0) twinOf.causes.push(...causes);
    else causes.push(...twinOf.causes);
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
const BIND_BACK = new Set<string>([
  ...closed.NO,
  ...closed.NOT,
  ...closed.ABSENT,
  ...closed.NOT_DONE,
  ...closed.UNABLE,
  ...closed.EQUIVOCAL,
]);

/**
 * An unread word reaches the findings on both sides of it; at the start of a segment, all that follow. A status word alone
 * between commas (`tender, none`) reaches the finding before it.
 */
function unreadReach(segment: readonly Element[], before: Draft | undefined): void {
  const opener = segment.findIndex(({ is }) => is === 'unread');
  if (opener < 0) return;
  const [first, ...later] = findingsIn(segment);
  const [only, more] = segment;
  // `drawer 2, 3`: put right, or something else?
  if (only?.is === 'unread' && !more && only.cause.why === 'number without place' && before && isGraded(before))
    before.causes.push(only.cause);
  const near = neighbours(segment);
  segment.forEach((element, i) => {
    if (element.is !== 'unread') return;
    const { left, right } = near[i] ?? {};
    if (!first && before && bindsBack(element.cause, segment.slice(0, i), segment.slice(i + 1), before))
      before.causes.push(element.cause);
    for (const draft of [left, right]) draft?.causes.push(element.cause);
    if (i === opener && !left) for (const draft of later) draft.causes.push(element.cause);
  });
}

const isGraded = ({ slots }: Draft): boolean => Object.values(slots).some(({ value }) => value.is === 'drawer grade');

/**
 * A status word alone between commas is of the finding before. One that has a word of its own is not: a `no` the word after it
 * (`boot, no running`), any of them a known word before it (`diabetes no. DVT no`).
 */
function bindsBack({ text }: Cause, ahead: readonly Element[], rest: readonly Element[], before: Draft): boolean {
  const word = text.toLowerCase();
  if (!BIND_BACK.has(word)) return false;
  if (ahead.length > 0 && ahead.every((each) => isKnown(each, before))) return false;
  const isOwn = (each: Element) => isKnown(each, before) || isUnknown(each);
  const [next] = rest;
  const denies = word === 'no' && next !== undefined && isOwn(next);
  return !denies || rest.some((each) => each.is === 'unread' && !isOwn(each));
}
const isUnknown = (element: Element): boolean =>
  element.is === 'unread' && element.cause.why === 'unknown word' && !corrects(element.cause);
/** A word of another finding, or of danger: it can take nothing back of the finding before. */
function isKnown(element: Element, before: Draft): boolean {
  if (element.is !== 'unread') return false;
  const { text } = element.cause;
  if (closed.RED_FLAG_WORDS.includes(text.toLowerCase())) return true;
  const form = element.cause.why === 'word out of place' ? formOf(text) : undefined;
  if (!form || form.side || form.classes.size > 0 || form.labels.size > 0) return false;
  return !form.values.has(before.id as FindingId);
}
/** `drawer 2, no wait, 3`: what was just said is taken back. */
export const corrects = ({ text }: Cause): boolean => CORRECTIONS.includes(text.toLowerCase());
const CORRECTIONS: readonly string[] = [
  'actually',
  'wait',
  'oops',
  'hang',
  'hold',
  'joke',
  'mistake',
  'wrong',
  'longer',
];

/** The nearest finding on each side of every element, in one pass each way. */
function neighbours(segment: readonly Element[]): { left?: Draft; right?: Draft }[] {
  const near: { left?: Draft; right?: Draft }[] = segment.map(() => ({}));
  const fill = (side: 'left' | 'right', order: readonly number[]) => {
    let last: Draft | undefined;
    for (const i of order) {
      const [place, element] = [near[i], segment[i]];
      if (place && last) place[side] = last;
      if (element?.is === 'finding') last = element.draft;
    }
  };
  const indices = [...segment.keys()];
  fill('left', indices);
  fill('right', indices.toReversed());
  return near;
}

/** Findings that name a part of the toe: a sign beside them may be of the part (`pip tender`), not of the joint. */
const PARTS: readonly string[] = ['pip', 'wound', 'calf', 'arch', 'skin', 'callus', 'corn'];
/** Parts away from the joint: a sign that only a comma parts from them may still be theirs (`calf soft, nt`). */
const FAR_PARTS: readonly string[] = ['calf', 'arch', 'skin', 'chest', 'gait'];

/** A sign, and pain beside a part that is away from the joint. */
const mayBeOf = (part: Draft, near: Draft): boolean =>
  // `wound clean no signs of infection`
  !(near.id === 'infection-sign' && near.denied && part.id === 'wound') &&
  (near.entry?.kind === 'sign' || (near.id === 'pain' && FAR_PARTS.includes(part.id)));

/** Skin lesions have a pain of their own. */
const SPOTS: readonly string[] = ['callus', 'corn', 'wound', 'pin-site', 'skin'];
/**
 * `callus under 3rd, no pain`, `callus, tender`, `drawer 2, not painful`: no pain of the spot or in the test, or none at all? What names a pain
 * by its noun after a test is of the joint; what is tender in a place of its own (`callus, tender plantar`) is too.
 */
function spotReach([first]: readonly Element[], before: Draft | undefined, line: string): void {
  if (first?.is !== 'finding' || !before) return;
  const { draft } = first;
  const { start, end } = before.word;
  const own = draft.subject && draft.subject.start > start;
  const felt = draft.id === 'tenderness' && before.status === 'present' && !draft.slots.place;
  if (felt && !own && SPOTS.includes(before.id)) draft.causes.push({ why: 'either neighbour', text: '', start, end });
  if (draft.id !== 'pain' || draft.status !== 'absent') return;
  const tested =
    before.entry?.slots.pain !== undefined && draft.denied && draft.word.end - draft.word.start > 'pain'.length;
  if (!own && (SPOTS.includes(before.id) || tested || WITH_IT.test(line.slice(draft.word.end))))
    draft.causes.push({ why: 'either neighbour', text: '', start, end });
}

/** `weil 2nd, 3rd, plate repair`: a ray alone after one that followed its finding may go on with that, or open what comes next. */
const goesOnWithRay = (segment: readonly Element[], last: Element | undefined): boolean =>
  last?.is === 'finding' &&
  (last.draft.subject?.start ?? 0) > last.draft.word.start &&
  segment.length > 0 &&
  segment.every(({ is }) => is === 'subject');

/** `drawer 1, no pain with it` */
const WITH_IT = /^\s+(?:with|on|in|from|during) (?:it|this|that|testing)\b/i;

/** Words of a segment of which nothing is read. */
const unreadAlone = (segment: readonly Element[]): Cause | undefined => {
  const [first] = segment;
  return first?.is === 'unread' && findingsIn(segment).length === 0 ? first.cause : undefined;
};
const PART_WORDS = /(?:^|\s)(?:shaft|nail|base|scar|tendon|heads?)$/i;
/** `2nd shaft, tender`: a part of which nothing is read, and what may be felt there. */
const partAlone = (segment: readonly Element[]): Cause | undefined => {
  if (findingsIn(segment).length > 0) return undefined;
  for (const element of segment) {
    if (element.is !== 'unread') continue;
    const { why, text } = element.cause;
    if (why === 'foreign part' || PART_WORDS.test(text)) return element.cause;
  }
  return undefined;
};
function feltReach([first]: readonly Element[], part: Cause): void {
  if (first?.is !== 'finding' || !['tenderness', 'pain'].includes(first.draft.id)) return;
  const { subject, causes } = first.draft;
  if (!subject || subject.start < part.start) causes.push(part);
}

/** `big toe moves well, no pain`: of what was not read before it, perhaps. */
function painReach([first]: readonly Element[], unread: Cause): void {
  if (first?.is !== 'finding' || first.draft.id !== 'pain' || first.draft.subject) return;
  if (first.draft.status === 'absent' && first.draft.section === 'exam') first.draft.causes.push(unread);
}

/** `no pain, swelling or numbness in the third web`: the place at the end of a denied list is that of its members, or of the last. */
function placeReach(segment: readonly Element[]): void {
  const end = segment.findLastIndex(({ is }) => is === 'list end');
  const last = end < 0 ? undefined : findingsIn(segment.slice(end)).at(-1);
  const at = last?.subject;
  if (!at || at.start < (last?.word.end ?? 0)) return;
  for (const draft of findingsIn(segment.slice(0, end)))
    if (!draft.subject) draft.causes.push({ why: 'subject between', text: '', start: at.start, end: at.end });
}

/** `calf R tight L soft`: one part, twice. */
const isPair = (a: Draft, b: Draft): boolean => a.twinOf === b || b.twinOf === a;

function farPartReach([first]: readonly Element[], before: Draft | undefined): void {
  if (!before || !FAR_PARTS.includes(before.id) || first?.is !== 'finding') return;
  const { draft } = first;
  const { start, end } = before.word;
  const named = draft.subject && draft.subject.start > start;
  const local = draft.entry?.subjects.every((kind) => kind === 'ray' || kind === 'web');
  if (!named && (draft.subject || local) && mayBeOf(before, draft))
    draft.causes.push({ why: 'foreign part', text: '', start, end });
}

/** Each has its own sign (`dp - pt +`). */
const PULSES: readonly string[] = ['dp', 'pt'];

/** Within a segment a part, or a test without its result, makes its direct neighbours unclear (`drawer tender`). */
function partReach(segment: readonly Element[]): void {
  segment.forEach((element, i) => {
    if (element.is !== 'finding') return;
    const { draft } = element;
    const part = PARTS.includes(draft.id);
    const { start, end } = draft.word;
    const denied =
      draft.status === 'absent' &&
      draft.entry?.bare === 'incomplete' &&
      Object.keys(draft.slots).length === 0 &&
      (draft.denied || !PULSES.includes(draft.id));
    // `no pin tract redness`: the sign is denied, and the site is only where it would be.
    if (denied && segment[i + 1]?.is === 'finding') draft.causes.push({ why: 'no result', text: '', start, end });
    if (!part && !lacksResult(draft)) return;
    const cause: Cause = { why: part ? 'foreign part' : 'no result', text: '', start, end };
    // `no calf tenderness or swelling`: what the list goes on with is still of the part.
    const after = segment[i + 1]?.is === 'list end' ? segment[i + 2] : segment[i + 1];
    for (const near of [segment[i - 1], after]) {
      if (near?.is !== 'finding' || (part && (isPair(draft, near.draft) || !mayBeOf(draft, near.draft)))) continue;
      near.draft.causes.push(cause);
      if (part) draft.causes.push(cause);
    }
  });
}

/**
 * A bare direction beside a sign of the skin or the joint may be the place of that sign (`lateral head tender`, `tender plantar
 * lateral`, `tender, medial`); a toe that deviates has degrees, or stands apart.
 */
function directionReach(segment: readonly Element[], before: Draft | undefined, line: string): void {
  const [only] = segment;
  if (only?.is === 'finding' && before) goesOnWithPlace(only.draft, before, line);
  segment.forEach((element, i) => {
    if (element.is !== 'finding' || !element.draft.bareDirection || hasAngle(element.draft)) return;
    const beside = [segment[i - 1], segment[i + 1]].flatMap((each) => (each?.is === 'finding' ? [each.draft] : []));
    const near = beside.find((each) => isLocal(each) || each.id === 'pain' || each.id === 'rotation');
    const { start, end } = element.draft.word;
    if (near) element.draft.causes.push({ why: 'either neighbour', text: '', start, end });
  });
}
/** After a comma, where nothing else has been named since. */
function goesOnWithPlace(draft: Draft, before: Draft, line: string): void {
  const { bareDirection, subject, word, causes } = draft;
  if (!bareDirection || isMeasured(draft) || !isLocal(before) || before.status === 'absent') return;
  if (subject && subject.start > before.word.end) return;
  if (PLACES.test(line.slice(word.start, word.end)))
    causes.push({ why: 'either neighbour', text: '', start: before.word.start, end: before.word.end });
}
/** With degrees, or with how much after it, as a toe that deviates is described (`medial mild`). */
const isMeasured = ({ slots: { angle, degree }, word }: Draft): boolean =>
  angle !== undefined || (degree !== undefined && degree.start > word.end);
/** Toes lean into varus; nothing is felt there. */
const PLACES = /^(?:dorso)?(?:medial|lateral)(?:ly)?$/i;
const hasAngle = ({ slots }: Draft): boolean => 'angle' in slots;
/** A sign that sits at a spot, other than the stance of the toe. */
const isLocal = ({ entry }: Draft): boolean => entry?.kind === 'sign' && !entry.sections.includes('stand');

const OUT: readonly string[] = ['dislocated', 'subluxed', 'film-joint'];
/** A distancing word reaches its whole segment and, alone in it, the finding before. */
function distancingReach(segment: readonly Element[], before: Draft | undefined): void {
  if (!segment.some(({ is }) => is === 'distancing')) return;
  const causes = segment.flatMap((element): Cause[] => (element.is === 'distancing' ? [element.cause] : []));
  const here = findingsIn(segment);
  const [first] = segment;
  // `dislocated dorsally, reduced under la`
  if (
    first?.is === 'distancing' &&
    /^re(?:duced|located)$/i.test(first.cause.text) &&
    before &&
    OUT.includes(before.id)
  )
    before.causes.push(first.cause);
  for (const draft of here.length > 0 ? here : before ? [before] : []) draft.causes.push(...causes);
}

/** A subject alone between commas opens a list, unless another subject follows: then nothing takes it (`2nd tender, 3rd, 4th swollen`). */
function unusedSubject(segment: readonly Element[]): Cause | undefined {
  const only = segment[0];
  if (only?.is !== 'subject' || segment.length > 1) return undefined;
  return { why: 'subject without finding', text: '', start: only.subject.start, end: only.subject.end };
}

/**
 * A subject that no finding of its segment follows makes its neighbours unclear. Alone between commas it opens a list and
 * is harmless; alone after a finding (`drawer 2 3rd`) it reaches `before`, and is handed back: what inherits it is unclear.
 */
function loneSubjects(segment: readonly Element[], before: Draft | undefined): Cause | undefined {
  if (!segment.some(({ is }) => is === 'subject')) return undefined;
  let trailing: Cause | undefined;
  const near = neighbours(segment);
  segment.forEach((element, i) => {
    if (element.is !== 'subject') return;
    const next = segment[i + 1];
    const right = near[i]?.right;
    if (next && next.is !== 'subject' && right) return;
    const { start, end } = element.subject;
    const cause: Cause = { why: 'subject without finding', text: '', start, end };
    const left = near[i]?.left ?? (i === 0 ? before : undefined);
    for (const draft of [left, right]) draft?.causes.push(cause);
    if (left && !right) trailing = cause;
  });
  return trailing;
}
