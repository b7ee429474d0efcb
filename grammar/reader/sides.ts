import type { Side, Span } from '../values.ts';
import { causeOf, type Draft, type StatementDraft } from './draft.ts';

/** A side that the line has named, and the segment that it stands in. */
export interface SideMention extends Span {
  readonly value: Side | 'both';
  readonly segment: number;
}

/**
 * Once a line has named the other side, what would inherit a side is unclear (`2nd L tender. R drawer 0, NT`: of which foot?).
 * A finding that has a side of its own is not touched; one without any remembers the sides beside it, for the visit to judge.
 */
export function sideReach(statements: readonly StatementDraft[], mentions: readonly SideMention[], line: string): void {
  if (mentions.length === 0) return;
  const named = new Named(mentions);
  for (const { elements } of statements)
    for (const element of elements) {
      if (element.is !== 'finding') continue;
      const { draft } = element;
      footReach(draft, mentions, line);
      if (!draft.side) draft.beside = named.beside(draft);
      else if (draft.subject?.side === draft.side) {
        const other = named.between(draft.subject.end, draft.start, draft.side);
        if (other) draft.causes.push(causeOf('subject between', other, line));
      }
    }
}

/** `second toe drawer 2, left foot fine`: what a foot shows is of no ray that was named before it; only a test of a ray goes on with that ray. `left: nad` is of all of that foot. */
function footReach(
  { id, subject, segment, word, entry, causes }: Draft,
  mentions: readonly SideMention[],
  line: string,
): void {
  if (!subject || entry?.bare === 'incomplete') return;
  const foot = mentions.find(
    (each) =>
      each.segment === segment &&
      each.start >= subject.end &&
      each.end <= word.start &&
      (id === 'unremarkable' || FOOT.test(line.slice(each.start, each.end))),
  );
  if (foot) causes.push(causeOf('wrong subject', foot, line));
}
const FOOT = /foot$/i;

/** The mentions of a line, asked from left to right: each is passed once. */
class Named {
  private readonly mentions: readonly SideMention[];
  private readonly inSegment = new Map<string, SideMention>();
  private readonly first = new Map<string, SideMention>();
  private readonly last = new Map<string, SideMention>();
  private passed = 0;

  constructor(mentions: readonly SideMention[]) {
    this.mentions = mentions;
    for (const each of mentions) this.inSegment.set(`${each.segment} ${each.value}`, each);
  }

  private pass(end: number): void {
    for (; ; this.passed++) {
      const each = this.mentions[this.passed];
      if (!each || each.start >= end) return;
      if (!this.first.has(each.value)) this.first.set(each.value, each);
      this.last.set(each.value, each);
    }
  }

  /** Named before the finding, or anywhere in its segment. */
  beside({ start, segment }: Draft): SideMention[] {
    this.pass(start);
    return ['right', 'left'].flatMap((side) => this.first.get(side) ?? this.inSegment.get(`${segment} ${side}`) ?? []);
  }
  between(from: number, to: number, side: Side | 'both'): SideMention | undefined {
    this.pass(to);
    return [...this.last.values()].find(({ value, start }) => value !== side && start >= from);
  }
}
