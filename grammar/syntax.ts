import type { Section } from './lexicon/entry.ts';
import type { FindingId } from './lexicon/index.ts';
import type { ClockTime, DrawerScale, PartialDate, Ray, Side, Span, Status, Value, Web } from './values.ts';

/** What a finding is said of, as typed. `others` are the lesser rays without a statement in the visit. */
export type SubjectNode =
  | ({
      readonly at: 'rays';
      readonly rays: readonly Ray[];
      readonly part?: 'joint' | 'metatarsal' | 'toe';
      readonly side?: Side | 'both';
    } & Span)
  | ({ readonly at: 'webs'; readonly webs: readonly Web[]; readonly side?: Side | 'both' } & Span)
  | ({ readonly at: 'others'; readonly side?: Side | 'both' } & Span);

/** Why a finding or a value can't be read with certainty. The span is the smallest offending text. */
export interface Cause extends Span {
  readonly why: CauseKind;
  readonly text: string;
}
export type CauseKind =
  | 'unknown word'
  | 'word out of place'
  | 'number without place'
  | 'distancing word'
  | 'reach of no'
  | 'misplaced not'
  | 'doubt'
  | 'either neighbour'
  | 'subject without finding'
  | 'subject between'
  | 'absent with value'
  | 'no result'
  | 'named result'
  | 'out of range'
  | 'wrong unit'
  | 'wide range'
  | 'ambiguous web'
  | 'ambiguous date'
  | 'foreign part'
  | 'comparison'
  | 'no subject'
  | 'no image'
  | 'wrong subject'
  | 'toe or web'
  | 'toe or foot'
  | 'both of what'
  | 'two statuses'
  | 'done or planned'
  | 'which toe'
  | 'when or how long';

export interface SlotNode extends Span {
  readonly value: Value;
  readonly causes: readonly Cause[];
}

/** One finding of a statement. Unclear (any cause) is written verbatim and never computed with. */
export interface FindingNode extends Span {
  readonly id: FindingId | 'panel';
  readonly section: Section;
  readonly word: Span;
  readonly subject?: SubjectNode;
  /** Said of all toes of the foot by its own word (`toes pink`). */
  readonly whole?: true;
  readonly side?: Side | 'both';
  /** The line names a subject of another kind: no heading gives this one its own. */
  readonly apart?: true;
  /** Sides that the line names beside a finding that has none of its own. */
  readonly beside?: readonly (Span & { readonly value: Side | 'both' })[];
  readonly status: Status;
  readonly slots: Readonly<Record<string, SlotNode>>;
  readonly quotes: readonly (Span & { readonly text: string })[];
  readonly causes: readonly Cause[];
  /** Which comma-separated segment of the line it stands in. */
  readonly segment: number;
}

/** Text that is kept as typed: unread words, loose quotes. */
export interface VerbatimNode extends Span {
  readonly text: string;
  readonly subject?: SubjectNode;
  /** Of its statement or segment. */
  readonly side?: Side | 'both';
  readonly quote: boolean;
  readonly segment: number;
}

export interface StatementNode extends Span {
  readonly section: Section;
  /** Opened by `operation` alone: that it was done is said by the kind of its visit, or by nobody. */
  readonly unsaid?: true;
  readonly findings: readonly FindingNode[];
  readonly verbatim: readonly VerbatimNode[];
}

export type RoleKind =
  | 'keyword'
  | 'subject'
  | 'finding'
  | 'value'
  | 'modifier'
  | 'filler'
  | 'punctuation'
  | 'verbatim'
  | 'comment'
  | 'reported';
/** Every character that is not white space belongs to exactly one role; `canonical` is what the formatter writes. */
export interface Role extends Span {
  readonly kind: RoleKind;
  readonly canonical?: string;
  /** The finding that the text belongs to, for hover. */
  readonly finding?: FindingId;
  readonly slot?: string;
  /** Taken back by a correction that followed, or the words of that correction. */
  readonly struck?: true;
}

/** A report of the reader itself; the other reports come from rules over facts. */
export interface ReadingProblem extends Span {
  readonly code: ReadingCode;
  readonly text: string;
  readonly section?: Section;
}
export type ReadingCode =
  | 'unknown-word'
  | 'word-out-of-place'
  | 'number-without-place'
  | 'unread-red-flag'
  | 'open-quote'
  | 'ambiguous-date'
  | 'ambiguous-web'
  | 'heard-number'
  | 'bad-header'
  | 'bad-signer'
  | 'unknown-code';

export type VisitKind = 'first' | 'review' | 'preop' | 'operation' | 'postop' | 'phone' | 'emergency';
/** What divides a visit into before and after on one day. */
export type EventKind = 'reduction' | 'pin-out' | 'block';
/** When, and by whom: initials or a role, never a name. Each is missing where it was not written. */
export interface Signing {
  readonly date?: PartialDate;
  readonly clock?: ClockTime;
  readonly by?: string;
}
export type HeaderNode =
  | { readonly is: 'version'; readonly version: number }
  | {
      readonly is: 'patient';
      readonly name: string;
      readonly born?: number;
      readonly sex?: 'female' | 'male' | 'other';
    }
  | { readonly is: 'scales'; readonly drawer: DrawerScale }
  | { readonly is: 'visit'; readonly date?: PartialDate; readonly kind?: VisitKind; readonly side?: Side | 'both' }
  | { readonly is: 'allow'; readonly code: string; readonly reason: string; readonly at: Span }
  | ({ readonly is: 'signed'; readonly seal?: Span & { readonly text: string }; readonly at: Span } & Signing)
  | ({ readonly is: 'addendum'; readonly at: Span } & Signing)
  | {
      readonly is: 'event';
      readonly event: EventKind;
      readonly clock?: ClockTime;
      readonly rays: readonly Ray[];
      readonly side?: Side;
      readonly at: Span;
    };

/**
 * Findings of an earlier visit, copied and not confirmed, or proposed by a conversion of what was dictated: until somebody confirms them,
 * the words after the prefix say nothing of today.
 */
export interface CarriedNode {
  readonly prefix: Span;
  readonly words: Span;
  /** Of the visit that they come from. */
  readonly date?: PartialDate;
  /** Proposed, not copied; a comment after the words may hold what was said. */
  readonly proposed?: true;
}

/** A heading's side and subject hold down to the next heading or visit; a subject with words after it on its line holds for that line. */
export interface HeadingNode {
  /** Words follow on its line. */
  readonly inline?: true;
  readonly side?: Side | 'both';
  readonly subject?: SubjectNode;
}

/** What a heading such as `plan:` opens for the lines below it; `images` leaves it to each line to name its image. */
export type SectionHeading = Section | 'images' | 'operation done';

/** A line of which nothing is read, and which speaks of its neighbours (`last visit:`, `declined`). */
export interface TurningNode {
  readonly text: string;
  readonly reaches: 'below' | 'above' | 'both';
}

export interface LineSyntax {
  readonly text: string;
  readonly kind: 'blank' | 'comment' | 'header' | 'statements';
  readonly header?: HeaderNode;
  readonly heading?: HeadingNode;
  /** It is a section heading; `none` ends the one above and opens nothing, since its words are not of the language. */
  readonly opens?: SectionHeading | 'none';
  /** The section heading above, under which it was read. */
  readonly under?: SectionHeading;
  readonly carried?: CarriedNode;
  readonly turning?: TurningNode;
  /** Who examined what the line says; alone on its line, what the lines below say. */
  readonly examiner?: { readonly by: string; readonly alone: boolean };
  readonly statements: readonly StatementNode[];
  readonly roles: readonly Role[];
  readonly problems: readonly ReadingProblem[];
}
