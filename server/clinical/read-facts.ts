import type { SubjectKind } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import type {
  FindingNode,
  HeadingNode,
  LineSyntax,
  StatementNode,
  SubjectNode,
  VerbatimNode,
} from '../../grammar/syntax.ts';
import { LESSER_RAYS, type Ray, type Side, type Span, type Value } from '../../grammar/values.ts';
import { dividedFacts } from './events.ts';
import type {
  Allowance,
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
import { readLifecycle } from './lifecycle.ts';
import { once } from './once.ts';
import { PANELS } from './panels.ts';
import { NO_SETTINGS, type Settings } from './settings.ts';

/** Reads the lines before the first visit. A missing version line means version 1, for ever. */
export function readHeaderFacts(lines: readonly LineSyntax[]): HeaderFacts {
  let facts: HeaderFacts = { version: 1, allowances: [] };
  for (const { header } of lines) {
    if (header?.is === 'version') facts = { ...facts, version: header.version };
    if (header?.is === 'scales') facts = { ...facts, drawerScale: header.drawer };
    if (header?.is === 'patient') {
      const { name, born, sex } = header;
      facts = { ...facts, patient: { name, ...(born ? { born } : {}), ...(sex ? { sex } : {}) } };
    }
  }
  return { ...facts, allowances: allowancesOf(lines) };
}

function allowancesOf(lines: readonly LineSyntax[]): Allowance[] {
  return lines.flatMap(({ header }, line) =>
    header?.is === 'allow' ? [{ code: header.code, reason: header.reason, place: { line, ...header.at } }] : [],
  );
}

/**
 * The facts of one visit. Side and subject come from the statement, then from the heading in force, then (side only) from
 * the visit; what is left open makes the fact unclear. `others` are the lesser rays that no statement of the visit names.
 */
export function readVisitFacts(
  lines: readonly LineSyntax[],
  header: HeaderFacts,
  settings: Settings = NO_SETTINGS,
): VisitFacts {
  const visit = lines[0]?.header;
  const known = visit?.is === 'visit' ? visit : undefined;
  const drawerScale = header.drawerScale ?? settings.drawerScale;
  const lifecycle = readLifecycle(lines);
  const carried = new Map(lifecycle?.carried.map((each) => [each.place.line, each] as const));
  const reader = new FactReader(
    known?.side,
    drawerScale,
    once(() => namedRays(lines, carried)),
    settings.panels,
  );
  let heading: HeadingNode = {};
  let examiner: string | undefined;
  lines.forEach((line, at) => {
    if (line.examiner?.alone) examiner = line.examiner.by;
    reader.examiner = line.examiner?.by ?? examiner;
    if (line.heading)
      heading = { ...(line.heading.subject ? (heading.side ? { side: heading.side } : {}) : {}), ...line.heading };
    reader.carried = known?.side === 'both' && (heading.side ?? 'both') !== 'both' && !line.heading?.side;
    const unconfirmed = carried.get(at);
    if (unconfirmed) {
      if (unconfirmed.proposed) reader.proposed(line, unconfirmed, heading);
      return;
    }
    for (const [index, statement] of line.statements.entries())
      reader.statement(line.text, statement, heading, `${at}:${index}`, at);
  });
  const date = known?.date;
  return {
    ...(date?.month && date.day ? { date: { year: date.year, month: date.month, day: date.day } } : {}),
    ...(known?.kind ? { kind: known.kind } : {}),
    ...(known?.side ? { side: known.side } : {}),
    ...(drawerScale ? { drawerScale } : {}),
    facts: reader.facts,
    verbatim: reader.verbatim,
    unclear: reader.unclear,
    allowances: allowancesOf(lines),
    ...(lifecycle ? dividedFacts(reader.facts, lifecycle) : {}),
  };
}

/** The rays that any statement or heading of the visit names, with or without side. */
function namedRays(lines: readonly LineSyntax[], carried: ReadonlyMap<number, unknown>): ReadonlySet<Ray> {
  const named = new Set<Ray>();
  const add = (subject: SubjectNode | undefined) => {
    if (subject?.at === 'rays') for (const ray of subject.rays) named.add(ray);
  };
  for (const [at, line] of lines.entries()) {
    add(line.heading?.subject);
    if (carried.has(at)) continue;
    for (const { findings } of line.statements)
      for (const finding of findings)
        if (finding.section === 'exam' || finding.section === 'stand') add(finding.subject);
  }
  return named;
}

class FactReader {
  readonly facts: AnyFact[] = [];
  readonly verbatim: Verbatim[] = [];
  readonly unclear: Unclear[] = [];
  /** In a bilateral visit: the side in force is that of a heading on an earlier line. */
  carried = false;
  examiner: string | undefined;
  private readonly visitSide: Side | 'both' | undefined;
  private readonly scale: HeaderFacts['drawerScale'];
  private readonly named: () => ReadonlySet<Ray>;
  private readonly panels: Settings['panels'];

  constructor(
    visitSide: Side | 'both' | undefined,
    scale: HeaderFacts['drawerScale'],
    named: () => ReadonlySet<Ray>,
    panels: Settings['panels'],
  ) {
    this.visitSide = visitSide;
    this.scale = scale;
    this.named = named;
    this.panels = panels;
  }

  statement(text: string, statement: StatementNode, heading: HeadingNode, id: string, line: number): void {
    const unread: (FindingNode | VerbatimNode)[] = [...statement.verbatim];
    statement.findings.forEach((node, index) => {
      const at = (span: { start: number; end: number }): Place => ({ line, start: span.start, end: span.end });
      if (!this.finding(node, heading, `${id}:${index}`, at)) unread.push(node);
    });
    this.keepVerbatim(text, statement, unread, heading, line);
  }

  /** Of a proposal only what was said is known, word for word, until somebody confirms it. */
  proposed({ statements }: LineSyntax, { said, place, text }: Carried, heading: HeadingNode): void {
    const words = said ?? { place, text };
    const [first] = statements;
    const finding = first?.findings.find(({ subject }) => subject);
    this.verbatim.push({
      ...words,
      section: first?.section ?? 'exam',
      quote: false,
      ...this.only(finding?.subject ?? heading.subject, finding?.side, heading),
    });
  }

  /** Adds the facts of one finding; false where any of it has to be written as typed. */
  private finding(
    node: FindingNode,
    heading: HeadingNode,
    statement: string,
    at: (span: { start: number; end: number }) => Place,
  ): boolean {
    const subjects = this.subjects(node, heading);
    const sides = this.sides(node, heading, subjects);
    const causes: FactCause[] = [...node.causes, ...otherSide(node, sides)];
    if (subjects.length === 0) causes.push({ why: 'no subject', text: '', ...spanOf(node.word) });
    if (sides.length === 0) causes.push({ why: 'no side', text: '', ...spanOf(node.word) });
    if (overlapsWhich(node, subjects)) causes.push({ why: 'which toe', text: '', ...spanOf(node.word) });
    for (const cause of causes) this.report(node, cause, at);
    const slots: Record<string, Place> = {};
    let clear = causes.length === 0;
    for (const slot of Object.keys(node.slots)) {
      const read = node.slots[slot];
      if (!read) continue;
      slots[slot] = at(read);
      if (read.causes.length > 0) clear = false;
      for (const cause of read.causes) this.report(node, cause, at, slot);
    }
    const place = { place: at(node), word: at(node.word), slots };
    const base: Base = { statement, section: node.section, quotes: node.quotes.map(({ text }) => text), causes };
    if (this.examiner) Object.assign(base, { examiner: this.examiner });
    const { values, unclear } = this.values(node);
    for (const subject of subjects.length > 0 ? subjects : [FOOT])
      for (const side of sides.length > 0 ? sides : [undefined]) {
        const where = { subject, side: subject.at === 'patient' ? undefined : side };
        if (node.id === 'panel') this.panel({ ...base, ...where }, place);
        else {
          const origin = {
            kind: 'stated',
            ...place,
            ...(this.carried && where.side && !node.side ? HEADED : {}),
          } as const;
          this.facts.push(factOf(base, where, { finding: node.id, status: node.status, values, unclear }, origin));
        }
      }
    return clear;
  }

  private panel(base: Base & Where, place: Omit<AnyFact['origin'], 'kind'>): void {
    const kind = base.subject.at === 'web' ? 'web' : 'ray';
    for (const { finding, status, values = {} } of this.panels?.[kind] ?? PANELS[kind].members) {
      const origin = { kind: 'panel', ...place } as const;
      this.facts.push(factOf(base, base, { finding, status, values: this.scaledAll(values), unclear: [] }, origin));
    }
  }

  private values(node: FindingNode): { values: Record<string, Value>; unclear: string[] } {
    const values: Record<string, Value> = {};
    const unclear: string[] = [];
    const own = node.slots.scale?.value;
    for (const [slot, { value, causes }] of Object.entries(node.slots)) {
      if (causes.length > 0) unclear.push(slot);
      else values[slot] = value.is === 'drawer grade' ? this.scaled(value, own) : value;
    }
    return { values, unclear };
  }
  private scaledAll(values: Readonly<Record<string, Value>>): Record<string, Value> {
    const own = values.scale;
    const scaled = (value: Value) => (value.is === 'drawer grade' ? this.scaled(value, own) : value);
    return Object.fromEntries(Object.entries(values).map(([slot, value]) => [slot, scaled(value)]));
  }
  private scaled(value: Extract<Value, { is: 'drawer grade' }>, own: Value | undefined): Value {
    const scale = own?.is === 'word' ? (own.words[0] as HeaderFacts['drawerScale']) : this.scale;
    return scale ? { ...value, scale } : value;
  }

  private subjects(node: FindingNode, heading: HeadingNode): Subject[] {
    const kinds: readonly SubjectKind[] = node.id === 'panel' ? ['ray', 'web'] : entryOf(node.id).subjects;
    const fits = (subject: SubjectNode | undefined) => subject && kinds.includes(subject.at === 'webs' ? 'web' : 'ray');
    const typed = node.subject ?? (fits(heading.subject) ? heading.subject : undefined);
    if (typed) return this.expand(typed);
    const anySide = node.side ?? heading.side ?? this.visitSide;
    const sided =
      anySide !== undefined && !(anySide === 'both' && this.visitSide === 'both' && !node.side && !heading.side);
    if (kinds.includes('foot') && (sided || !kinds.includes('patient'))) return [FOOT];
    return kinds.includes('patient') ? [{ at: 'patient' }] : [];
  }
  private expand(subject: SubjectNode): Subject[] {
    if (subject.at === 'webs') return subject.webs.map((web) => ({ at: 'web', web }));
    if (subject.at === 'others')
      return LESSER_RAYS.filter((ray) => !this.named().has(ray)).map((ray) => ({ at: 'ray', ray }));
    const part = subject.part ? { part: subject.part } : {};
    return subject.rays.map((ray) => ({ at: 'ray', ray, ...part }));
  }

  /** In a bilateral visit a side is never inherited from the visit line. */
  private sides(node: FindingNode, heading: HeadingNode, subjects: readonly Subject[]): (Side | undefined)[] {
    if (subjects.length > 0 && subjects.every(({ at }) => at === 'patient')) return [undefined];
    const side = node.side ?? heading.side ?? (this.visitSide === 'both' ? undefined : this.visitSide);
    return side === 'both' ? ['right', 'left'] : side ? [side] : [];
  }

  private report(
    node: FindingNode,
    cause: FactCause,
    at: (span: { start: number; end: number }) => Place,
    slot?: string,
  ): void {
    const place = at(cause);
    const same = (other: Unclear) =>
      other.why === cause.why && other.place.line === place.line && other.place.start === place.start;
    if (this.unclear.some((other) => same(other) && other.word.start === node.word.start)) return;
    const where = { place, finding: node.id, section: node.section, word: at(node.word) };
    this.unclear.push({ why: cause.why, text: cause.text, ...where, ...(slot ? { slot } : {}) });
  }

  /** All unread text of a comma-separated segment is kept as one run, from its first to its last unclear word. */
  private keepVerbatim(
    text: string,
    statement: StatementNode,
    unread: readonly (FindingNode | VerbatimNode)[],
    heading: HeadingNode,
    line: number,
  ): void {
    const bySegment = new Map<number, (FindingNode | VerbatimNode)[]>();
    for (const node of unread) bySegment.set(node.segment, [...(bySegment.get(node.segment) ?? []), node]);
    for (const nodes of bySegment.values()) {
      const quote = nodes.every((each) => 'quote' in each && each.quote);
      const inner = {
        start: Math.min(...nodes.map(({ start }) => start)),
        end: Math.max(...nodes.map(({ end }) => end)),
      };
      const { start, end } = quote ? inner : wholeWords(text, inner);
      const node = nodes.find(({ subject }) => subject)?.subject ?? heading.subject;
      this.verbatim.push({
        text: text.slice(start, end),
        place: { line, start, end },
        section: statement.section,
        quote,
        ...this.only(node, node?.side, heading),
      });
    }
  }
  /** The one subject and side that unread words stand under, where there is one. */
  private only(
    node: SubjectNode | undefined,
    own: Side | 'both' | undefined,
    heading: HeadingNode,
  ): Pick<Verbatim, 'subject' | 'side'> {
    const [subject, more] = node ? this.expand(node) : [];
    const side = own ?? heading.side ?? this.visitSide;
    return { ...(subject && !more ? { subject } : {}), ...(side && side !== 'both' ? { side } : {}) };
  }
}

/** Widens a span to the words that it stands in: a `?` or a bracket that touches a word is part of what was written. */
function wholeWords(text: string, span: Span): Span {
  let { start, end } = span;
  while (start > 0 && /[^\s,;.]/.test(text.charAt(start - 1))) start -= 1;
  while (end < text.length && /[^\s,;.]/.test(text.charAt(end))) end += 1;
  return { start, end };
}

type Base = Pick<AnyFact, 'statement' | 'section' | 'quotes' | 'causes' | 'examiner'>;
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
function otherSide({ side, beside = [] }: FindingNode, sides: readonly (Side | undefined)[]): FactCause[] {
  const [only] = sides;
  const other = side || !only || sides.length > 1 ? undefined : beside.find(({ value }) => value !== only);
  return other ? [{ why: 'subject between', text: other.value, start: other.start, end: other.end }] : [];
}

/** `2nd to 3rd overlap`: nobody says which toe lies on which. */
const overlapsWhich = ({ id, status, slots }: FindingNode, subjects: readonly Subject[]): boolean =>
  id === 'overlap' && status !== 'absent' && subjects.length > 1 && !slots.onto;

const HEADED = { sideFrom: 'heading' } as const;
const FOOT: Subject = { at: 'foot' };
const spanOf = ({ start, end }: { start: number; end: number }) => ({ start, end });
