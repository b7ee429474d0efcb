import type { Section } from '../lexicon/entry.ts';
import { entryOf } from '../lexicon/index.ts';
import type { SubjectNode } from '../syntax.ts';
import { isWeb, ordinalOf } from '../values.ts';
import type { Binder } from './binder.ts';
import { causeOf, type Draft, kindOfSubject, kindsOf } from './draft.ts';
import { type Match, matchesAt } from './forms.ts';
import { lower } from './header-reader.ts';
import type { Item } from './items.ts';
import { fitQuantity } from './quantities.ts';
import { mayBeSubject, subjectAt } from './subjects.ts';

export function readPair(binder: Binder, item: Extract<Item, { is: 'ordinal' }>, i: number): number | undefined {
  const open = binder.openSlots().find(([, shape]) => shape.kind === 'pair');
  if (!open) return undefined;
  const next = slashedPair(binder.items, i) ?? i + 1;
  const last = binder.items[next - 1];
  const high = last?.is === 'ordinal' ? last.high : item.high;
  if (high !== item.low + 1 || item.low > 4) return undefined;
  const fitted = fitQuantity({ ...item, high, range: true, plus: false, next }, [open]);
  if (fitted) binder.setValue(fitted.slot, fitted.value, binder.span(i, next));
  return fitted ? next : undefined;
}

/** `gap 2nd/3rd` */
function slashedPair(items: readonly Item[], i: number): number | undefined {
  const [first, slash, second] = [items[i], items[i + 1], items[i + 2]];
  const joined = slash?.is === 'other' && slash.text === '/' && first?.end === slash.start;
  return joined && second?.is === 'ordinal' && second.start === slash.end ? i + 3 : undefined;
}

export function readSubject(binder: Binder, i: number): number | undefined {
  if (!mayBeSubject(binder.items, i)) return undefined;
  const read = subjectAt({
    items: binder.items,
    start: i,
    commaJoins: binder.statement.elements.length === 0 || closesWithList(binder, i),
    adjoins: binder.last()?.is !== 'finding' && binder.before.length === 0,
    opensFinding: (index) => opensValuedFinding(binder, index),
  });
  if (!read) return undefined;
  const at = binder.span(i, read.next);
  if ('problem' in read) {
    const web = read.problem === 'ambiguous web';
    binder.unreadSubject = at;
    binder.unread(at, web ? 'ambiguous web' : 'number without place', web ? 'ambiguous-web' : 'number-without-place');
    return read.next;
  }
  const doubted = doubtedTo(binder, i, read.next);
  if (doubted !== undefined) return doubted;
  const side = binder.side?.value;
  if (read.subject.side) binder.sides.push({ value: read.subject.side, segment: binder.segment, ...at });
  const named = ofWebs(binder, read.subject);
  const subject: SubjectNode = side ? { ...named, side } : named;
  binder.side = undefined;
  binder.segmentSide = undefined;
  binder.unreadSubject = undefined;
  binder.flush();
  bindSubject(binder, subject, read.next);
  binder.role(
    'subject',
    at,
    touchesNext(binder, read.next) || !hasShortForm(read.subject) ? {} : { canonical: subjectText(read.subject) },
  );
  return read.next;
}

/** `3rd?`, `?3rd` alone: of a ray that is doubted nothing is said, and what follows is of none. The item after it. */
function doubtedTo(binder: Binder, i: number, next: number): number | undefined {
  const { items } = binder;
  const [before, after] = [items[i - 1], items[next]];
  const trails = after?.is === 'question' && after.touches === 'previous';
  const alone = after === undefined || after.is === 'break' || after.is === 'comment';
  if (!trails && !(before?.is === 'question' && before.touches === 'next' && alone)) return undefined;
  const end = trails ? next + 1 : next;
  const at = binder.span(i, end);
  binder.question = undefined;
  binder.flush();
  binder.unreadSubject = at;
  binder.subject = undefined;
  binder.unread(at, 'doubt', 'word-out-of-place');
  return end;
}
/** A side or ray that is doubted, and nothing else on its line: what stands below is not of the one above either. */
export function isDoubtedHeading(items: readonly Item[]): boolean {
  const said = items.filter(({ is }) => is !== 'question' && is !== 'comment' && is !== 'keeper');
  if (said.length === 0 || said.length > 2 || !items.some(({ is }) => is === 'question')) return false;
  const side = matchesAt(said, 0).find(({ form }) => form.side);
  const from = side?.next ?? 0;
  if (from >= said.length) return true;
  const read = mayBeSubject(said, from)
    ? subjectAt({ items: said, start: from, commaJoins: true, adjoins: true, opensFinding: () => false })
    : undefined;
  return read !== undefined && 'subject' in read && read.next >= said.length;
}

/** A side has a short form with one ray alone (`R2`). */
const hasShortForm = (subject: SubjectNode): boolean =>
  !subject.side || (subject.at === 'rays' && subject.rays.length === 1 && subject.part === undefined);

/** `plan weil 2nd, 3rd`, `callus 2nd, 3rd`: rays to the end of the statement, after what was only named. */
function closesWithList(binder: Binder, start: number): boolean {
  const { current, items, section } = binder;
  const last = binder.last();
  const named = last?.is === 'finding' && last.draft === current && !current.subject && current.status === 'present';
  if (!named || !isListed(current, section)) return false;
  for (let i = start; ; i += 2) {
    const [ray, joiner] = [items[i], items[i + 1]];
    const isRay = ray?.is === items[start]?.is && (ray?.is === 'ordinal' || ray?.is === 'sided');
    if (!isRay) return i > start && section === 'plan' && takesNoRay(binder, i);
    if (joiner === undefined || joiner.is === 'comment' || (joiner.is === 'break' && joiner.of !== 'segment'))
      return true;
    if (joiner.is !== 'break') return false;
  }
}
/** `tape 2nd, 3rd, review 6/52` */
const takesNoRay = (binder: Binder, index: number): boolean => {
  const after = binder.findingAt(index);
  return after !== undefined && !entryOf(after.id).subjects.includes('ray');
};
/** A treatment or a sign with no value of its own, alone in its statement so far. */
const isListed = (draft: Draft, section: Section): boolean =>
  section === 'plan' || section === 'operation'
    ? draft.entry?.kind === 'treatment' || draft.id === 'operation' || draft.id === 'procedure'
    : (draft.id === 'pain' || draft.entry?.kind === 'sign') && draft.entry?.bare === 'present' && !draft.statusGiven;

/**
 * `webs 2nd click, 3rd nt`: after the word for the spaces an ordinal is a space, there and in the rest of the statement. A toe or a
 * joint that is named as such (`2nd MTP`) is none.
 */
function ofWebs(binder: Binder, subject: SubjectNode): SubjectNode {
  const { elements } = binder.statement;
  const [first] = elements;
  if (subject.at !== 'rays' || subject.part || subject.side || !subject.rays.every(isWeb)) return subject;
  if (first?.is !== 'subject' || first.subject.at !== 'webs') return subject;
  const { start, end, side } = first.subject;
  const text = binder.line.slice(start, end);
  const follows = elements.length === 1 && BARE_WEBS.test(text);
  if (!follows && !isOrdinals(text)) return subject;
  const webs: SubjectNode = { at: 'webs', webs: subject.rays, start: subject.start, end: subject.end };
  if (!follows) return webs;
  elements.pop();
  const i = binder.roles.findIndex((role) => role.start === start);
  if (binder.roles[i]) binder.roles[i] = { kind: 'subject', start, end: binder.roles[i].end };
  return side ? { ...webs, side } : webs;
}
const BARE_WEBS = /^web ?(?:space)?s\b(?:\s+[a-z]+)?$/i;
/** Ordinals without the word: a subject that was made a web by this rule. */
const isOrdinals = (text: string): boolean => /^\d(?:st|nd|rd|th)\b/i.test(text) && !/web|space/i.test(text);

/** What touches a subject (`2nd 3rd?zzq`) may be kept as typed with the end of it. */
function touchesNext({ items }: Binder, next: number): boolean {
  const last = items[next - 1];
  const after = items[next];
  return after !== undefined && last?.end === after.start && !['break', 'keeper', 'comment'].includes(after.is);
}

/** `mtp rigid`, `joint congruent`: a joint word is a finding where its value follows, else part of the subject. */
function opensValuedFinding(binder: Binder, index: number): boolean {
  const match = binder.findingAt(index);
  if (!match) return false;
  // `2nd joint space narrowing`: the word belongs to the finding.
  if (match.next > index + 1 && lower(binder.items[index]) === 'joint') return true;
  return matchesAt(binder.items, match.next).some(
    ({ form }) => form.values.has(match.id) || form.classes.has('absent') || form.classes.has('not done'),
  );
}

function bindSubject(binder: Binder, subject: SubjectNode, next: number): void {
  const last = binder.last();
  const draft = last?.is === 'finding' ? last.draft : undefined;
  const inherits = draft !== undefined && inheritsSubject(binder, draft);
  const fits = draft && !draft.whole && kindsOf(draft.id, draft.entry).includes(kindOfSubject(subject));
  const free = fits && (!draft.subject || inherits);
  if (free && !followedByFinding(binder, next)) {
    if (draft.subject) binder.unreadSubject = subject;
    draft.subject = subject;
    draft.causes = draft.causes.filter(({ why }) => why !== 'wrong subject');
    if (draft.id === draft.section) binder.subject = subject;
    draft.end = Math.max(draft.end, subject.end);
    if (subject.side) draft.side = subject.side;
    return;
  }
  if (free && !inherits) {
    draft.causes.push(causeOf('subject between', subject, binder.line));
    binder.between = subject;
  }
  if (last?.is === 'finding' || last?.is === 'list end') binder.push({ is: 'break', by: 'subject' });
  binder.current = undefined;
  binder.subject = subject;
  binder.push({ is: 'subject', subject });
}

/** Has the finding its subject from an earlier segment, so that one directly after it is its own (`2nd drawer 2, tender 3rd`)? */
function inheritsSubject({ statement: { elements } }: Binder, { subject }: Draft): boolean {
  const segment = elements.slice(elements.findLastIndex(({ is }) => is === 'break') + 1);
  return subject !== undefined && segment.length === 1 && segment[0]?.is === 'finding' && elements.length > 1;
}

/** Does a finding follow, past fillers, denials and adjectives? A value, a status or a break does not count. */
function followedByFinding(binder: Binder, index: number): boolean {
  for (let i = index; ; ) {
    const [match] = matchesAt(binder.items, i);
    if (!match || takesAsValue(binder, match)) return false;
    if (binder.findingAt(i) || match.form.section) return true;
    const passes = ['filler', 'harmless', 'no', 'not', 'adjective'] as const;
    if (!passes.some((name) => match.form.classes.has(name)) && match.form.values.size === 0) return false;
    i = match.next;
  }
}
const takesAsValue = (binder: Binder, { form }: Match): boolean => {
  const draft = binder.current;
  if (!draft || draft.id === 'panel') return false;
  return (
    form.values.has(draft.id) || form.labels.has(draft.id) || form.classes.has('absent') || form.classes.has('not done')
  );
};

/** The canonical words of a subject. */
export function subjectText(subject: SubjectNode): string {
  if (subject.at === 'others') return 'others';
  if (subject.at === 'webs')
    return subject.webs.length === 1 ? `web ${subject.webs[0]}` : `webs ${runText(subject.webs, String)}`;
  if (subject.side && subject.rays.length === 1) return `${subject.side === 'right' ? 'R' : 'L'}${subject.rays[0]}`;
  if (subject.part === 'metatarsal') return `MT ${subject.rays.join(' and ')}`;
  const part =
    subject.part === 'joint' ? ' MTP' : subject.part === 'toe' ? ` toe${subject.rays.length > 1 ? 's' : ''}` : '';
  return runText(subject.rays, ordinalOf) + part;
}
function runText<N extends number>(numbers: readonly N[], text: (n: N) => string): string {
  const [first] = numbers;
  if (first === undefined) return '';
  const last = numbers.at(-1) ?? first;
  const run = last - first === numbers.length - 1;
  return run && numbers.length > 1 ? `${text(first)}-${text(last)}` : numbers.map(text).join(' and ');
}
