import { sectionWord } from '../lexicon/closed-words.ts';
import { type Entry, type Lead, type Section, type Slot, type SubjectKind, wordValue } from '../lexicon/entry.ts';
import { entryOf, type FindingId, slotsOf } from '../lexicon/index.ts';
import type { CauseKind, ReadingProblem, Role, RoleKind, SectionHeading, SubjectNode } from '../syntax.ts';
import type { Side, Span, Status, Value } from '../values.ts';
import {
  causeOf,
  type Draft,
  type Element,
  hasValue,
  kindOfSubject,
  kindsOf,
  leadIn,
  newDraft,
  type Pending,
  roleOf,
  type StatementDraft,
  setSlot,
  type ToldRole,
} from './draft.ts';
import { beforeClaim, type Form, type Match, matchesAt, OF_FOOT } from './forms.ts';
import { heldSide, leavesRay, sectionBelow } from './inherited.ts';
import type { Item } from './items.ts';
import type { SideMention } from './sides.ts';
import { tell } from './story.ts';
import { type LoneSubject, losesSubject, noteLone } from './unused-subjects.ts';

type Before = Span & { readonly form: Form };

/** The state of reading one line from left to right, and the few moves that change it. */
export class Binder {
  readonly line: string;
  readonly items: readonly Item[];
  readonly roles: Role[] = [];
  readonly problems: ReadingProblem[] = [];
  readonly statements: StatementDraft[] = [];
  readonly sides: SideMention[] = [];
  /** The section of a line that opens none. */
  private readonly above: Section;
  /** The heading above says that the operation was done. */
  private readonly done: boolean;
  section: Section;
  /** A word of the line, or a heading above it, has opened the section. */
  sectionNamed: boolean;
  /** An operation that the line, or the heading above it, has opened is not said to be done. */
  unsaid: boolean;
  sectionSide: Side | 'both' | undefined;
  sidesOpen = false;
  statement: StatementDraft;
  segment = 0;
  /** Where the segment, or its section, starts. */
  segmentStart = 0;
  subject: SubjectNode | undefined;
  /** The finding whose slots are open. */
  current: Draft | undefined;
  /** The finding with which the segment before ended: what stands alone after the comma may go on with it. */
  closed: Draft | undefined;
  before: Before[] = [];
  /** How long or how often, said before its finding. */
  ahead: (Span & { readonly slot: string; readonly value: Value; readonly plus?: string }) | undefined;
  no: Pending<Status> | undefined;
  not: Pending<Status> | undefined;
  side: (Pending<Side | 'both'> & { readonly opens?: boolean }) | undefined;
  /** The side with which the segment opened, of all its findings (`L boggy TTP`). */
  segmentSide: Side | 'both' | undefined;
  question: Span | undefined;
  /** The segment has named the foot as such (`right foot hot, swollen`). */
  footNamed = false;
  between: SubjectNode | undefined;
  /** A subject that was typed but could not be read: what would inherit it is unclear. */
  unreadSubject: Span | undefined;

  constructor(line: string, items: readonly Item[], under?: SectionHeading) {
    this.line = line;
    this.items = items;
    this.above = sectionBelow(under);
    this.done = under === 'operation done';
    this.unsaid = !this.done;
    this.section = this.above;
    this.sectionNamed = this.above !== 'exam';
    this.statement = this.open(0);
  }

  readonly lone: LoneSubject[] = [];
  private open(start: number): StatementDraft {
    const { section, unsaid } = this;
    const statement: StatementDraft = { section, start, end: start, elements: [], verbatim: [] };
    if (section === 'operation' && unsaid) statement.unsaid = true;
    this.statements.push(statement);
    return statement;
  }

  role(kind: RoleKind, { start, end }: Span, more?: ToldRole): void {
    this.roles.push(roleOf(kind, start, end, more));
    if (kind !== 'comment' && kind !== 'punctuation') this.statement.end = Math.max(this.statement.end, end);
  }
  span(start: number, next: number): Span {
    return { start: this.items[start]?.start ?? 0, end: this.items[next - 1]?.end ?? 0 };
  }
  push(element: Element): void {
    this.statement.elements.push(element);
  }
  last(): Element | undefined {
    return this.statement.elements.at(-1);
  }
  atStart(): boolean {
    return this.statement.elements.length === 0 && this.before.length === 0 && !this.no && !this.not && !this.side;
  }

  /** Nothing has been read since the last comma. */
  atSegmentStart(): boolean {
    return !this.waits() && (this.last()?.is ?? 'break') === 'break';
  }
  /** Has something been read that waits for a finding? */
  private waits(): boolean {
    const { no, not, side, question, ahead } = this;
    return (no ?? not ?? side ?? question ?? ahead) !== undefined || this.before.length > 0;
  }

  /** A word or number that nothing takes: kept as typed, reported, and it reaches its neighbours. */
  unread(at: Span, why: CauseKind, code?: ReadingProblem['code']): void {
    this.flush();
    const cause = causeOf(why, at, this.line);
    this.push({ is: 'unread', cause });
    this.keep(at, false);
    this.report(at);
    if (code) this.problems.push({ code, text: cause.text, section: this.section, start: at.start, end: at.end });
  }
  /** Roles stand in order, so that a word which has one already is near the end. */
  private report(at: Span): void {
    let i = this.roles.length - 1;
    while (i >= 0 && (this.roles[i]?.start ?? 0) > at.start) i--;
    if (this.roles[i]?.start === at.start) this.roles.splice(i, 1);
    else i++;
    this.role('reported', at);
    const last = this.roles.pop();
    if (last) this.roles.splice(i, 0, last);
  }
  keep(at: Span, quote: boolean): void {
    const text = this.line.slice(at.start, at.end);
    const subject = this.subject ? { subject: this.subject } : {};
    this.statement.verbatim.push({ text, quote, segment: this.segment, ...at, ...subject, ...heldSide(this) });
  }

  /** Words that wait for a finding and did not get one are unread. */
  flush(): void {
    if (!this.waits()) return;
    const waiting = [this.no, this.not, this.side, this.ahead, ...this.before].filter((each) => each !== undefined);
    this.ahead = undefined;
    this.no = undefined;
    this.not = undefined;
    this.side = undefined;
    this.before = [];
    for (const each of waiting.sort((a, b) => a.start - b.start))
      this.unread(each, 'word out of place', 'word-out-of-place');
    const { question } = this;
    this.question = undefined;
    if (question) this.doubt(question);
  }
  /** A question mark that belongs to no finding, value or status makes its neighbours unclear. */
  doubt(at: Span): void {
    this.push({ is: 'unread', cause: causeOf('doubt', at, this.line) });
  }

  closeSegment(): void {
    if (this.no && !this.no.adjective && this.before.length === 0) this.denyBack(this.no);
    this.flush();
    tell(this);
    noteLone(this);
    if (this.subject && losesSubject(this.subject, this.statement))
      [this.unreadSubject, this.subject] = [this.subject, undefined];
    const last = this.last();
    const ended = last === undefined || last.is === 'break' || (last.is === 'finding' && last.draft === this.current);
    this.closed = ended ? this.current : undefined;
    this.current = undefined;
    this.segmentSide = undefined;
    this.between = undefined;
    this.footNamed = false;
    this.segment++;
    this.push({ is: 'break', by: 'punctuation' });
  }
  /** `swelling no`, with nothing after it (`sense no monofilament`), denies the bare finding before. */
  private denyBack(no: Span): void {
    const draft = this.current;
    if (!draft || hasValue(draft) || draft.statusGiven || this.last()?.is !== 'finding' || this.label()) return;
    this.no = undefined;
    this.giveStatus('absent', no);
  }
  closeStatement(start: number): void {
    this.closeSegment();
    this.sectionSide = undefined;
    this.statement = this.open(start);
  }

  /** A spoken line command ends what a line end does. */
  closeLine(start: number): void {
    this.flush();
    this.section = this.above;
    this.unsaid = !this.done;
    this.sectionNamed = this.above !== 'exam';
    this.subject = undefined;
    this.unreadSubject = undefined;
    this.closeStatement(start);
    this.closed = undefined;
  }

  openSection(section: Section, at: Span): void {
    this.flush();
    // The free words of an impression are its own, and no condition of what follows.
    const told = this.section === 'impression';
    const before = leadIn(this.statement.elements, section).filter(({ is }) => !told || is === 'distancing');
    if (!this.atStart()) this.closeStatement(at.start);
    if (leavesRay(this.section, section)) this.subject = undefined;
    const word = sectionWord(this.line.slice(at.start, at.end), section);
    this.section = section;
    this.sectionNamed = true;
    this.unsaid = word === 'operation';
    this.closed = undefined;
    this.sectionSide = undefined;
    this.statements.pop();
    this.statement = this.open(at.start);
    for (const element of before) this.push(element);
    this.role('keyword', at, { canonical: word });
    this.segmentStart = at.end;
  }

  giveStatus(status: Status, at: Span): void {
    const draft = this.current;
    if (!draft) return;
    if (draft.statusGiven) draft.causes.push(causeOf('two statuses', at, this.line));
    if (this.question) draft.causes.push(causeOf('doubt', this.question, this.line));
    this.question = undefined;
    draft.status = status;
    draft.statusGiven = true;
    draft.end = Math.max(draft.end, at.end);
  }

  /** Slots of the current finding that still take a value; the one that was just announced first. */
  openSlots(): (readonly [string, Slot])[] {
    const open = this.current?.entry ? slotsOf(this.current.entry).filter(([slot]) => this.isOpen(slot)) : [];
    const label = open.length > 1 ? this.label() : undefined;
    return label === undefined ? open : open.sort(([a], [b]) => Number(b === label) - Number(a === label));
  }
  isOpen(slot: string): boolean {
    const shape = this.unfilled(slot);
    return shape !== undefined && (!shape.labelled || slot === this.label());
  }
  private unfilled(slot: string): Slot | undefined {
    const draft = this.current;
    const shape = draft?.open ? draft.entry?.slots[slot] : undefined;
    return shape && (!draft?.slots[slot] || (shape.kind === 'words' && shape.many)) ? shape : undefined;
  }
  /** The slot of the current finding that the word just read has announced. */
  private label(): string | undefined {
    const role = this.roles.findLast(({ kind }) => kind !== 'punctuation');
    return role?.kind === 'filler' && role.finding === this.current?.id ? role.slot : undefined;
  }
  /** May a label of the slot stand here? One that also distances (`until`) only where its date follows. */
  takesLabel(slot: string, form: Form, next: number): boolean {
    const shape = this.unfilled(slot);
    const after = this.items[next];
    const dated = after?.is === 'date' || (after?.is === 'number' && after.low >= 1900 && !after.unit);
    return shape !== undefined && (!shape.labelled || !form.classes.has('distancing') || dated);
  }

  /** `canonical` is what the language writes for a value that was said in words. */
  setValue(slot: string, value: Value, at: Span, why?: CauseKind, canonical?: string): void {
    const draft = this.current;
    if (!draft) return;
    const causes = why ? [causeOf(why, at, this.line)] : [];
    if (this.question) causes.push(causeOf('doubt', this.question, this.line));
    this.question = undefined;
    if (this.no || this.not) draft.deniesPart = true;
    if (this.not) {
      draft.causes.push(causeOf('misplaced not', this.not, this.line));
      this.not = undefined;
    }
    if (this.no) draft.causes.push(causeOf('reach of no', this.no, this.line));
    this.no = undefined;
    setSlot(draft, slot, value, at, causes);
    const typed = canonical === undefined ? {} : { canonical };
    this.role('value', at, draft.id === 'panel' ? typed : { finding: draft.id, slot, ...typed });
  }

  canHold(id: FindingId): boolean {
    return entryOf(id).sections.includes(this.section);
  }
  /** The finding that a form may open here: plain words before leads, and the section decides. */
  findingIn(form: Form): { id: FindingId; lead?: Lead } | undefined {
    const may = ({ id, lead }: Form['findings'][number]) =>
      this.canHold(id) && (lead?.sections?.includes(this.section) ?? true);
    const ofFoot = this.footNamed && !this.subject && form.findings.find((each) => may(each) && OF_FOOT.has(each.id));
    return ofFoot || form.findings.find(may);
  }

  startFinding(claim: { id: FindingId; lead?: Lead }, at: Span): void {
    const entry = entryOf(claim.id);
    const draft = this.draft(claim.id, entry, at);
    const word = (this.before.length > 0 && entry.noun) || entry.word;
    this.denyBareBefore();
    this.attach(draft, entry);
    if (claim.lead?.absent) {
      if (draft.statusGiven) draft.causes.push(causeOf('two statuses', at, this.line));
      draft.status = 'absent';
      draft.statusGiven = true;
    }
    if (claim.lead?.whole) Object.assign(draft, { whole: true, subject: undefined, causes: [] });
    if (claim.id === 'deviation' && claim.lead?.gives) draft.bareDirection = true;
    if (claim.lead?.noun) draft.led = Object.keys(claim.lead.gives ?? {});
    const doubted = this.section === 'impression' ? draft.doubted : undefined;
    if (doubted) draft.doubted = undefined;
    const doubts = doubted ? [causeOf('doubt', doubted, this.line)] : [];
    for (const [slot, value] of Object.entries(claim.lead?.gives ?? {}))
      setSlot(draft, slot, wordValue(entry.slots[slot], value), at, doubts);
    this.current = draft;
    this.push({ is: 'finding', draft });
    const canonical = claim.lead || draft.denied ? {} : { canonical: word };
    this.role('finding', at, { finding: claim.id, ...canonical });
  }

  /** The same finding of the other side; its value follows. */
  twin(of: Draft, side: Side, at: Span, word: Span): Draft {
    const twin = { ...this.draft(of.id, of.entry, at), word: { start: word.start, end: word.end }, twinOf: of };
    if (of.subject) twin.subject = of.subject;
    twin.side = side;
    this.current = twin;
    this.push({ is: 'finding', draft: twin });
    return twin;
  }

  draft(id: Draft['id'], entry: Entry | undefined, at: Span): Draft {
    const draft = newDraft(id, entry, at, this);
    this.giveSubject(draft, kindsOf(id, entry));
    return draft;
  }

  /** A subject that was not read, or is of the wrong kind, is never replaced by one from elsewhere. */
  private giveSubject(draft: Draft, kinds: readonly SubjectKind[]): void {
    const last = this.last();
    const local = kinds.includes('ray') || kinds.includes('web');
    const fits = this.subject && kinds.includes(kindOfSubject(this.subject));
    if (this.subject && !fits) draft.apart = true;
    if (fits) draft.subject = this.subject;
    else if (this.subject && (last?.is === 'subject' || !(kinds.includes('foot') || kinds.includes('patient'))))
      draft.causes.push(causeOf('wrong subject', this.subject, this.line));
    if (this.unreadSubject && local) draft.causes.push(causeOf('subject between', this.unreadSubject, this.line));
  }

  /** A bare finding directly before a `no` that binds forward is unclear with it; so is any before a `nil` (`night pain nil squeeze`). */
  private denyBareBefore(): void {
    const draft = this.current;
    if (!this.no || !draft || this.last()?.is !== 'finding' || draft.statusGiven || draft.denied) return;
    if (Object.keys(draft.slots).length > 0 && !this.line.startsWith('nil', this.no.start)) return;
    draft.causes.push(causeOf('reach of no', this.no, this.line));
    this.no = { ...this.no, adjective: true, value: 'equivocal' };
  }

  /** Gives the new finding what stood before it: `no`, `not`, adjectives, side, question mark. */
  private attach(draft: Draft, entry: Entry): void {
    const denial = this.no ?? this.not;
    if (denial) {
      if (denial.value === 'equivocal') draft.causes.push(causeOf('reach of no', denial, this.line));
      draft.status = denial.value === 'equivocal' ? 'absent' : denial.value;
      draft.statusGiven = true;
      draft.denied = true;
      draft.start = Math.min(draft.start, denial.start);
    }
    this.no = undefined;
    this.not = undefined;
    for (const each of this.before) {
      const claim = beforeClaim(each.form, draft.id as FindingId, entry);
      if (claim) setSlot(draft, claim.slot, wordValue(entry.slots[claim.slot], claim.value), each);
      const finding = draft.id === 'panel' ? {} : { finding: draft.id };
      this.role('value', each, claim ? { slot: claim.slot, ...finding } : finding);
    }
    this.before = [];
    if (this.ahead) setSlot(draft, this.ahead.slot, this.ahead.value, this.ahead);
    if (this.ahead?.plus) draft.quotes.push({ text: this.ahead.plus, start: this.ahead.start, end: this.ahead.end });
    this.ahead = undefined;
    if (this.side?.opens) this.segmentSide = this.side.value;
    const side = this.side?.value ?? this.segmentSide ?? draft.subject?.side ?? this.sectionSide;
    if (side) draft.side = side;
    if (this.side) draft.start = Math.min(draft.start, this.side.start);
    this.side = undefined;
    if (this.question) draft.doubted = this.question;
    this.question = undefined;
    if (this.between) draft.causes.push(causeOf('subject between', this.between, this.line));
    this.between = undefined;
  }

  /** The phrase at an index that would open a finding here, if any. */
  findingAt(index: number): (Match & { readonly id: FindingId }) | undefined {
    for (const match of matchesAt(this.items, index)) {
      const claim = this.findingIn(match.form);
      if (claim) return { form: match.form, next: match.next, id: claim.id };
      if (match.form.classes.size > 0) return undefined;
    }
    return undefined;
  }
}
