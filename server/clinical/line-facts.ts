import type { SubjectKind } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { NONE, orNone } from '../../grammar/none.ts';
import { Recent } from '../../grammar/recent.ts';
import type {
  FindingNode,
  HeadingNode,
  LineSyntax,
  SlotNode,
  StatementNode,
  SubjectNode,
  VerbatimNode,
} from '../../grammar/syntax.ts';
import { LESSER_RAYS, type Ray, type Side, type Span, type Value } from '../../grammar/values.ts';
import type {
  AnyFact,
  Carried,
  FactCause,
  HeaderFacts,
  Place,
  Subject,
  Unclear,
  Verbatim,
  VisitFacts,
} from './facts.ts';
import { PANELS } from './panels.ts';
import type { Settings } from './settings.ts';
import { writtenRuns } from './written-runs.ts';

/** What one line of a visit says. */
export type LineFacts = Pick<VisitFacts, 'facts' | 'verbatim' | 'unclear'>;

/** What holds for a line from above it: its visit, the heading, who examines. */
interface Above {
  readonly visitSide: Side | 'both' | undefined;
  /** The visit is the operation itself, and what stands under `operation` alone was done in it. */
  readonly operating: boolean;
  readonly drawerScale: HeaderFacts['drawerScale'];
  readonly panels: Settings['panels'];
  readonly heading: HeadingNode;
  /** In a bilateral visit: the side in force is that of a heading on an earlier line. */
  readonly headed: boolean;
  readonly examiner?: string | undefined;
  readonly turned?: Turned | undefined;
}
/** Words of another line that move what this one says to another time, person or foot, or take it back. */
export interface Turned {
  readonly text: string;
  readonly at: 'above' | 'below';
}
export interface InForce extends Above {
  /** Equal where all but the panels is. */
  readonly key: string;
}
/** The heading where none stands above. */
export const NO_HEADING: HeadingNode = {};
export const inForce = (above: Above): InForce => {
  const { visitSide, operating, drawerScale, heading, headed, examiner, turned } = above;
  // Nearly all visits have neither; what they have is enough to tell them apart.
  const plain = heading === NO_HEADING && examiner === undefined && turned === undefined;
  const key = plain
    ? `${visitSide} ${operating} ${drawerScale}`
    : JSON.stringify([visitSide, operating, drawerScale, heading, headed, examiner, turned]);
  return { ...above, key };
};

interface Kept {
  readonly at: number;
  readonly force: InForce;
  /** The rays that the visit names, where `others` stands in the line. */
  readonly named?: string;
  readonly facts: LineFacts;
}
/**
 * Lines whose facts are kept, from the second time that they are asked: most lines stand in one visit, and facts that are held for
 * nobody cost more to collect than to read.
 */
const KEPT = 2_000;
/** Places and headings under which a line's facts are kept; the same words seldom stand on many. */
const PLACES = 8;
const SEEN: readonly Kept[] = [];
const kept = new Recent<LineSyntax, readonly Kept[]>(KEPT);

/**
 * The facts of one line that stands `at` so many lines below its visit's first. They depend on nothing else, so that a line
 * which stands in many visits, or an unchanged line beside an edited one, is asked once and shares its facts.
 * @param named the rays that the visit names: `others` are the rest
 */
export function lineFacts(line: LineSyntax, at: number, force: InForce, named: () => ReadonlySet<Ray>): LineFacts {
  const before = kept.get(line);
  if (!before) {
    kept.set(line, SEEN);
    return new FactReader(line, at, force, named);
  }
  const same = before.find((each) => isSame(each, at, force, named));
  if (same) return same.facts;
  let asked: ReadonlySet<Ray> | undefined;
  const { facts, verbatim, unclear } = new FactReader(line, at, force, () => {
    asked = named();
    return asked;
  });
  const found: Kept = { at, force, facts: { facts, verbatim, unclear }, ...(asked ? { named: listed(asked) } : {}) };
  kept.set(line, [found, ...before.slice(0, PLACES - 1)]);
  return found.facts;
}

/** Of a proposal only what was said is known, word for word, until somebody confirms it. */
export function proposedWords(
  { statements }: LineSyntax,
  { said, place, text }: Carried,
  force: InForce,
  named: () => ReadonlySet<Ray>,
): Verbatim {
  const words = said ?? { place, text };
  const [first] = statements;
  const finding = first?.findings.find(({ subject }) => subject);
  const under = onlyUnder(finding?.subject ?? force.heading.subject, finding?.side, force, named);
  return {
    ...words,
    whole: { ...words, text: oneLine(words.text) },
    section: first?.section ?? 'exam',
    quote: false,
    ...under,
  };
}

/** The one subject and side that unread words stand under, where there is one. */
function onlyUnder(
  node: SubjectNode | undefined,
  own: Side | 'both' | undefined,
  { heading, visitSide }: InForce,
  named: () => ReadonlySet<Ray>,
): Pick<Verbatim, 'subject' | 'side'> {
  const [subject, more] = node ? expanded(node, named) : [];
  const side = own ?? heading.side ?? visitSide;
  return { ...(subject && !more ? { subject } : {}), ...(side && side !== 'both' ? { side } : {}) };
}

function expanded(subject: SubjectNode, named: () => ReadonlySet<Ray>): Subject[] {
  if (subject.at === 'webs') return subject.webs.map((web) => ({ at: 'web', web }));
  if (subject.at === 'others') return LESSER_RAYS.filter((ray) => !named().has(ray)).map((ray) => ({ at: 'ray', ray }));
  const part = subject.part ? { part: subject.part } : {};
  return subject.rays.map((ray) => ({ at: 'ray', ray, ...part }));
}

const isSame = (kept: Kept, at: number, force: InForce, named: () => ReadonlySet<Ray>): boolean =>
  kept.at === at &&
  (kept.force === force || (kept.force.key === force.key && kept.force.panels === force.panels)) &&
  (kept.named === undefined || kept.named === listed(named()));
const listed = (rays: ReadonlySet<Ray>): string => [...rays].sort().join();

class FactReader {
  readonly facts: AnyFact[] = [];
  readonly verbatim: Verbatim[] = [];
  readonly unclear: Unclear[] = [];
  /** What is unclear of a word for a cause is told once. */
  private known: Set<string> | undefined;
  private readonly line: number;
  private readonly read: LineSyntax;
  private readonly force: InForce;
  private readonly named: () => ReadonlySet<Ray>;

  constructor(line: LineSyntax, at: number, force: InForce, named: () => ReadonlySet<Ray>) {
    this.line = at;
    this.read = line;
    this.force = force;
    this.named = named;
    line.statements.forEach((statement, index) => {
      this.statement(statement, `${at}:${index}`);
    });
  }

  private statement(statement: StatementNode, id: string): void {
    const unread: (FindingNode | VerbatimNode)[] = [...statement.verbatim];
    statement.findings.forEach((node, index) => {
      if (!this.finding(node, `${id}:${index}`, statement)) unread.push(node);
    });
    this.keepVerbatim(statement, unread);
  }
  private at({ start, end }: Span): Place {
    return { line: this.line, start, end };
  }

  /** Adds the facts of one finding; false where any of it has to be written as typed. */
  private finding(node: FindingNode, id: string, { unsaid }: StatementNode): boolean {
    const subjects = this.subjects(node);
    const sides = this.sides(node, subjects);
    const causes: FactCause[] = [...node.causes];
    const other = otherSide(node, sides);
    if (other) causes.push(other);
    if (isThanItself(node, sides)) causes.push({ why: 'comparison', text: '', ...spanOf(node.word) });
    if (subjects.length === 0) causes.push({ why: 'no subject', text: '', ...spanOf(node.word) });
    if (sides.length === 0) causes.push({ why: 'no side', text: '', ...spanOf(node.word) });
    if (mayBeOfWeb(node, this.force.heading)) causes.push({ why: 'toe or web', text: '', ...spanOf(node.word) });
    if (overlapsWhich(node, subjects)) causes.push({ why: 'which toe', text: '', ...spanOf(node.word) });
    if (unsaid && node.id !== 'consent' && !this.force.operating)
      causes.push({ why: 'done or planned', text: '', ...spanOf(node.word) });
    const { turned } = this.force;
    if (turned !== undefined) causes.push({ why: 'distancing word', text: turned.text, ...spanOf(node.word) });
    for (const cause of causes) this.report(node, cause);
    const slots: Record<string, Place> = {};
    let clear = causes.length === 0;
    for (const slot of Object.keys(node.slots)) {
      const read = node.slots[slot];
      if (!read) continue;
      slots[slot] = this.at(read);
      if (read.causes.length > 0) clear = false;
      for (const cause of read.causes) this.report(node, cause, slot);
    }
    const { examiner, headed } = this.force;
    const quotes = node.quotes.length > 0 ? node.quotes.map(({ text }) => text) : NONE;
    const base: Base = { statement: id, section: node.section, quotes, causes: orNone(causes), examiner };
    const { values, unclear } = this.values(node);
    const stated: AnyFact['origin'] = { kind: 'stated', place: this.at(node), word: this.at(node.word), slots };
    const inherited = headed && !node.side ? { ...stated, ...HEADED } : stated;
    for (const subject of subjects.length > 0 ? subjects : ONLY_FOOT)
      for (const side of sides.length > 0 ? sides : NO_SIDE) {
        const where = { subject, side: subject.at === 'patient' ? undefined : side };
        const origin = where.side ? inherited : stated;
        if (node.id === 'panel') this.panel({ ...base, ...where }, stated);
        else this.facts.push(factOf(base, where, { finding: node.id, status: node.status, values, unclear }, origin));
      }
    return clear;
  }

  private panel(base: Base & Where, { place, word, slots }: AnyFact['origin']): void {
    const kind = base.subject.at === 'web' ? 'web' : 'ray';
    for (const { finding, status, values = {} } of this.force.panels?.[kind] ?? PANELS[kind].members) {
      const origin = { kind: 'panel', place, word, slots } as const;
      this.facts.push(factOf(base, base, { finding, status, values: this.scaledAll(values), unclear: NONE }, origin));
    }
  }

  private values(node: FindingNode): { values: Record<string, Value>; unclear: readonly string[] } {
    const values: Record<string, Value> = {};
    const unclear: string[] = [];
    const own = node.slots.scale?.value;
    for (const slot of Object.keys(node.slots)) {
      const { value, causes } = node.slots[slot] as SlotNode;
      if (causes.length > 0) unclear.push(slot);
      else values[slot] = value.is === 'drawer grade' ? this.scaled(value, own) : value;
    }
    return { values, unclear: orNone(unclear) };
  }
  private scaledAll(values: Readonly<Record<string, Value>>): Record<string, Value> {
    const own = values.scale;
    const scaled = (value: Value) => (value.is === 'drawer grade' ? this.scaled(value, own) : value);
    return Object.fromEntries(Object.entries(values).map(([slot, value]) => [slot, scaled(value)]));
  }
  private scaled(value: Extract<Value, { is: 'drawer grade' }>, own: Value | undefined): Value {
    const scale = own?.is === 'word' ? (own.words[0] as HeaderFacts['drawerScale']) : this.force.drawerScale;
    return scale ? { ...value, scale } : value;
  }

  private subjects(node: FindingNode): readonly Subject[] {
    if (node.whole) return ONLY_FOOT;
    const { heading, visitSide } = this.force;
    const kinds: readonly SubjectKind[] = node.id === 'panel' ? ['ray', 'web'] : entryOf(node.id).subjects;
    const fits = (subject: SubjectNode | undefined) => subject && kinds.includes(subject.at === 'webs' ? 'web' : 'ray');
    const typed = node.subject ?? (takesHeading(node, kinds) && fits(heading.subject) ? heading.subject : undefined);
    if (typed) return expanded(typed, this.named);
    // `no steroid` under `L:` in a visit of both feet is meant for neither foot alone.
    if (node.status === 'avoid' && !node.side && this.force.headed && kinds.includes('patient')) return ONLY_PATIENT;
    const anySide = node.side ?? heading.side ?? visitSide;
    const sided = anySide !== undefined && !(anySide === 'both' && visitSide === 'both' && !node.side && !heading.side);
    if (kinds.includes('foot') && (sided || !kinds.includes('patient'))) return ONLY_FOOT;
    return kinds.includes('patient') ? ONLY_PATIENT : NONE;
  }
  /** In a bilateral visit a side is never inherited from the visit line. */
  private sides(node: FindingNode, subjects: readonly Subject[]): readonly (Side | undefined)[] {
    if (subjects.length > 0 && subjects.every(({ at }) => at === 'patient')) return NO_SIDE;
    const { heading, visitSide } = this.force;
    const side = node.side ?? heading.side ?? (visitSide === 'both' ? avoidedAnywhere(node) : visitSide);
    return side ? SIDES_OF[side] : NONE;
  }

  private report(node: FindingNode, cause: FactCause, slot?: string): void {
    const place = this.at(cause);
    const key = `${cause.why} ${place.start} ${node.word.start}`;
    this.known ??= new Set();
    if (this.known.has(key)) return;
    this.known.add(key);
    const where = { place, finding: node.id, section: node.section, word: this.at(node.word) };
    this.unclear.push({ why: cause.why, text: cause.text, ...where, ...(slot ? { slot } : {}) });
  }

  /** With the words of the line that turns it: without them it would say something else. */
  private turned(text: string): string {
    const { turned } = this.force;
    if (!turned) return text;
    return turned.at === 'above' ? `${turned.text} / ${text}` : `${text} / ${turned.text}`;
  }

  private keepVerbatim(statement: StatementNode, unread: readonly (FindingNode | VerbatimNode)[]): void {
    const written = (span: Span) => ({ text: this.read.text.slice(span.start, span.end), place: this.at(span) });
    let of: Span | undefined;
    let shared: Verbatim['whole'] | undefined;
    for (const { start, end, quote, subject, side, whole } of writtenRuns(statement, unread, this.read)) {
      const node = subject ?? this.force.heading.subject;
      // Texts that are quoted together share the quotation: a copy for each would be as many times as long as the line.
      const told =
        shared && of === whole ? shared : { ...written(whole), text: this.turned(oneLine(written(whole).text)) };
      [of, shared] = [whole, told];
      this.verbatim.push({
        ...written({ start, end }),
        whole: told,
        section: statement.section,
        quote,
        ...onlyUnder(node, node?.side ?? side, this.force, this.named),
      });
    }
  }
}

const oneLine = (text: string): string => text.trim().replace(/\s+/g, ' ');

type Base = Pick<AnyFact, 'statement' | 'section' | 'quotes' | 'causes'> & { readonly examiner: string | undefined };
type Where = { readonly subject: Subject; readonly side: Side | undefined };
type Said = Pick<AnyFact, 'finding' | 'status' | 'values' | 'unclear'>;

/** Written out: copying by spread took most of the time in which a visit's facts are read. */
function factOf(base: Base, { subject, side }: Where, said: Said, origin: AnyFact['origin']): AnyFact {
  const fact = {
    finding: said.finding,
    statement: base.statement,
    section: base.section,
    subject,
    status: said.status,
    clarity: base.causes.length > 0 ? 'unclear' : 'clear',
    values: said.values,
    unclear: said.unclear,
    quotes: base.quotes,
    causes: base.causes,
    origin,
  };
  if (base.examiner) Object.assign(fact, { examiner: base.examiner });
  return (side ? Object.assign(fact, { side }) : fact) as AnyFact;
}

/** A side from the heading or the visit is in doubt where the line has named the other one (`R hva 38 ima 16`). */
function otherSide({ side, beside }: FindingNode, sides: readonly (Side | undefined)[]): FactCause | undefined {
  const [only] = sides;
  const other = side || !only || sides.length > 1 ? undefined : beside?.find(({ value }) => value !== only);
  return other && { why: 'subject between', text: other.value, start: other.start, end: other.end };
}

/** `warm cf L` of a left foot compares it with itself. */
function isThanItself({ slots }: FindingNode, sides: readonly (Side | undefined)[]): boolean {
  const than = slots.than?.value;
  return than?.is === 'word' && (sides.length > 1 || sides.some((side) => side && than.words.includes(`the ${side}`)));
}

/** `no surgery` in a plan that names no side is of both feet. */
const avoidedAnywhere = ({ status, beside }: FindingNode): 'both' | undefined =>
  status === 'avoid' && !beside?.length ? 'both' : undefined;

/** `2nd numb` under the heading `webs` may be of the space. */
const mayBeOfWeb = ({ id, subject }: FindingNode, heading: HeadingNode): boolean =>
  id === 'numbness' && subject?.at === 'rays' && heading.subject?.at === 'webs';

/** `2nd to 3rd overlap`: nobody says which toe lies on which. */
const overlapsWhich = ({ id, status, slots }: FindingNode, subjects: readonly Subject[]): boolean =>
  id === 'overlap' && status !== 'absent' && subjects.length > 1 && !slots.onto;

const HEADED = { sideFrom: 'heading' } as const;
const FOOT: Subject = { at: 'foot' };
const ONLY_FOOT: readonly Subject[] = [FOOT];
const ONLY_PATIENT: readonly Subject[] = [{ at: 'patient' }];
const NO_SIDE: readonly undefined[] = [undefined];
const SIDES_OF: Readonly<Record<Side | 'both', readonly Side[]>> = {
  right: ['right'],
  left: ['left'],
  both: ['right', 'left'],
};
const spanOf = ({ start, end }: { start: number; end: number }) => ({ start, end });

const OF_THE_EXAM: readonly FindingNode['section'][] = ['exam', 'stand', 'pain'];
/** What may be said of the whole foot (`plan no steroid`, `tape`) is of a heading's ray only among the signs below it. */
const takesHeading = ({ apart, section }: FindingNode, kinds: readonly SubjectKind[]): boolean =>
  !apart && (OF_THE_EXAM.includes(section) || !(kinds.includes('foot') || kinds.includes('patient')));
