import type { Section } from '../../grammar/lexicon/entry.ts';
import type { FindingId, ValuesOf } from '../../grammar/lexicon/index.ts';
import type { Cause, CauseKind, EventKind, Signing, VisitKind } from '../../grammar/syntax.ts';
import type { ClockTime, DrawerScale, PartialDate, Ray, Side, Span, Status, Web } from '../../grammar/values.ts';

/** A place in a visit: the line counts from the visit's first line, the offsets from the line's start. */
export interface Place extends Span {
  readonly line: number;
}

/** Names the statement in its visit (`line:index`); traces and evidence carry it. */
export type StatementId = string;

export type Subject =
  | { readonly at: 'ray'; readonly ray: Ray; readonly part?: 'joint' | 'metatarsal' | 'toe' }
  | { readonly at: 'web'; readonly web: Web }
  | { readonly at: 'foot' }
  | { readonly at: 'patient' };

/** Why a fact is unclear: what the reader found, or what the visit lacks. */
export type FactCause = Cause | (Span & { readonly why: 'no side'; readonly text: string });

/** One statement about one subject. A finding that nobody mentioned has no fact. */
export interface Fact<F extends FindingId = FindingId> {
  readonly finding: F;
  readonly statement: StatementId;
  readonly section: Section;
  /** Missing for what is said of the patient, and where the visit leaves it open. */
  readonly side?: Side;
  readonly subject: Subject;
  readonly status: Status;
  readonly clarity: 'clear' | 'unclear';
  /** The clear values only. */
  readonly values: ValuesOf<F>;
  /** Slots whose value is written but unclear. */
  readonly unclear: readonly string[];
  readonly quotes: readonly string[];
  readonly causes: readonly FactCause[];
  /** Initials or role of the one who examined, where two did. */
  readonly examiner?: string;
  readonly origin: {
    readonly kind: 'stated' | 'panel';
    readonly place: Place;
    readonly word: Place;
    /** Where each value stands. */
    readonly slots: Readonly<Record<string, Place>>;
    /** The side is only that of a heading on an earlier line of a bilateral visit. */
    readonly sideFrom?: 'heading';
  };
}
/** A fact of any one finding; narrowing `finding` narrows the values. */
export type AnyFact = { [F in FindingId]: Fact<F> }[FindingId];

/** Text that is written as typed, with the reason that a reader may want. */
export interface Verbatim {
  readonly text: string;
  readonly place: Place;
  /** With the words around it that it can't be read without; several texts may share them. */
  readonly whole: { readonly text: string; readonly place: Place };
  readonly section: Section;
  readonly quote: boolean;
  readonly subject?: Subject;
  readonly side?: Side;
}

/** An unclear finding or value, to be reported where no other report says it. */
export interface Unclear {
  readonly why: FactCause['why'];
  readonly text: string;
  readonly place: Place;
  readonly finding: FindingId | 'panel';
  readonly section: Section;
  readonly word: Place;
  /** The value only is unclear, not the finding. */
  readonly slot?: string;
}

export interface Allowance {
  readonly code: string;
  readonly reason: string;
  readonly place: Place;
}

export interface HeaderFacts {
  readonly version: number;
  readonly patient?: { readonly name: string; readonly born?: number; readonly sex?: 'female' | 'male' | 'other' };
  readonly drawerScale?: DrawerScale;
  readonly allowances: readonly Allowance[];
}

/** A part of a visit: its own text, or one addendum. Lines after its signature belong to it and were not signed. */
export interface VisitPart {
  /** The part's first line. */
  readonly from: number;
  readonly addendum?: Signing & { readonly place: Place };
  readonly signature?: Signature;
}
export interface Signature extends Signing {
  readonly place: Place;
  /** `holds`: the words are those that were sealed. */
  readonly seal?: { readonly text: string; readonly place: Place; readonly holds: boolean };
}
/** What lies below its line, down to the next event, is after it. */
export interface VisitEvent {
  readonly place: Place;
  readonly event: EventKind;
  readonly clock?: ClockTime;
  readonly rays: readonly Ray[];
  readonly side?: Side;
}
/** Words copied from an earlier visit, or proposed for what was dictated, and not confirmed: nothing is known from them of today. */
export interface Carried {
  readonly text: string;
  readonly place: Place;
  /** Of the visit that they come from. */
  readonly date?: PartialDate;
  /** The word before them (`carried`, `proposed`), on their line or on the line of a heading above. */
  readonly prefix: Place;
  /** Proposed by a conversion, not copied. */
  readonly proposed?: true;
  /** The words that were dictated, where a comment on the line of a proposal keeps them. */
  readonly said?: { readonly text: string; readonly place: Place };
}
export interface Lifecycle {
  readonly parts: readonly VisitPart[];
  readonly events: readonly VisitEvent[];
  readonly carried: readonly Carried[];
  /** Stated, and not the state of today: before an event and restated after it, or felt under a block. */
  readonly passed: readonly AnyFact[];
}

export interface VisitFacts {
  readonly date?: PartialDate & { readonly month: number; readonly day: number };
  readonly kind?: VisitKind;
  readonly side?: Side | 'both';
  /** The scale that the file or a setting names for every drawer of the visit. */
  readonly drawerScale?: DrawerScale;
  /** What holds at the end of the visit; what an event has changed is in `lifecycle.passed`. */
  readonly facts: readonly AnyFact[];
  readonly verbatim: readonly Verbatim[];
  readonly unclear: readonly Unclear[];
  readonly allowances: readonly Allowance[];
  /** Missing in a visit that is neither signed nor divided and carries nothing over. */
  readonly lifecycle?: Lifecycle;
}

export type UnclearKind = CauseKind | 'no side';

/** A number for a subject with its side, where many facts are sorted by few subjects: quicker than its text. */
export function subjectNumber({ subject, side }: Pick<AnyFact, 'subject' | 'side'>): number {
  const one =
    subject.at === 'ray' ? subject.ray : subject.at === 'web' ? subject.web + 8 : subject.at === 'foot' ? 14 : 15;
  return one + (side === 'left' ? 32 : side ? 16 : 0);
}

/** One text for a subject with its side, for keys and for people alike. */
export function subjectKey(subject: Subject, side?: Side): string {
  const prefix = side ? `${side} ` : '';
  if (subject.at === 'ray') return `${prefix}ray ${subject.ray}`;
  if (subject.at === 'web') return `${prefix}web ${subject.web}`;
  return subject.at === 'foot' ? `${prefix}foot` : 'patient';
}
