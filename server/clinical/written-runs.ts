import type {
  Cause,
  FindingNode,
  LineSyntax,
  Role,
  RoleKind,
  StatementNode,
  SubjectNode,
  VerbatimNode,
} from '../../grammar/syntax.ts';
import type { Side, Span } from '../../grammar/values.ts';

type Node = FindingNode | VerbatimNode;
/** Unread text of one segment. */
export interface WrittenRun extends Span {
  /** It stood in quotation marks. */
  readonly quote: boolean;
  readonly subject: SubjectNode | undefined;
  readonly side: Side | 'both' | undefined;
  /** What is quoted with it. */
  readonly whole: Span;
}

/**
 * What of a statement has to be quoted: of each comma-separated segment from its first unclear word to its last. The whole of it takes in the
 * small words around them, and the segments beside it that stand under the same subject and are unread, too.
 */
export function writtenRuns(
  statement: StatementNode,
  unread: readonly Node[],
  { text, roles }: LineSyntax,
): readonly WrittenRun[] {
  if (unread.length === 0) return [];
  const known = new Set(unread);
  const here = new Roles(
    roles,
    statement.findings.filter((each) => !known.has(each)),
  );
  const runs = segmentsOf(unread).map((nodes): WrittenRun => {
    const quote = nodes.every((each) => 'quote' in each && each.quote);
    const start = Math.min(...nodes.map((each) => each.start));
    const end = Math.max(...nodes.map((each) => each.end));
    const { subject } = nodes.find((each) => each.subject) ?? {};
    const { side } = nodes.find((each) => each.side) ?? {};
    if (quote) return { start, end, quote, subject, side, whole: { start, end } };
    const whole = wholeWords(
      text,
      widened({ start: Math.max(statement.start, withPart(nodes, start)), end }, statement, here, text),
    );
    return { ...wholeWords(text, { start, end }), quote, subject, side, whole };
  });
  return joined(runs, here);
}

/** `calf not swollen, tender`: what may be felt there is quoted with the part or sign that it may be of. */
function withPart(nodes: readonly Node[], start: number): number {
  const parts = nodes.flatMap((each) => ('causes' in each ? each.causes.filter(({ text }) => text === '') : []));
  return Math.min(start, ...parts.filter(({ why }) => PART.has(why)).map((part) => part.start));
}
const PART: ReadonlySet<Cause['why']> = new Set(['foreign part', 'either neighbour']);

/** The roles of a line in order, each passed over a few times however long the line is. */
class Roles {
  readonly list: readonly Role[];
  /** Those that belong to a finding which is clear. */
  private readonly clear = new Set<Role>();

  constructor(list: readonly Role[], clear: readonly Span[]) {
    this.list = list;
    for (const { start, end } of clear)
      for (let i = this.endingAfter(start); (list[i]?.start ?? end) < end; i++) this.clear.add(list[i] as Role);
  }
  isClear(role: Role): boolean {
    return this.clear.has(role);
  }
  /** The index of the first role that ends after a place. */
  endingAfter(place: number): number {
    let [low, high] = [0, this.list.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.list[middle]?.end ?? 0) > place) high = middle;
      else low = middle + 1;
    }
    return low;
  }
}

function segmentsOf(nodes: readonly Node[]): Node[][] {
  const segments = new Map<number, Node[]>();
  for (const node of nodes) {
    const same = segments.get(node.segment);
    if (same) same.push(node);
    else segments.set(node.segment, [node]);
  }
  return [...segments.values()];
}

/**
 * With what stands in the segment before and after, up to a finding that is clear: `in 2024` and not `2024`, `L 2nd` before what is said of it,
 * `pain under 2nd not 3rd` to its end.
 */
function widened(inner: Span, of: Span, roles: Roles, text: string): Span {
  const span = { ...inner };
  for (let i = roles.endingAfter(inner.start) - 1; i >= 0; i--) {
    const role = roles.list[i];
    if (!role || role.start < of.start || !AHEAD.has(role.kind) || roles.isClear(role)) break;
    span.start = role.start;
  }
  for (let i = roles.endingAfter(inner.end); i < roles.list.length; i++) {
    const role = roles.list[i] as Role;
    const brackets = /[()]/.test(text.slice(role.start, role.end));
    if (role.end > of.end || (ENDS.has(role.kind) && !brackets) || roles.isClear(role)) break;
    span.end = role.end;
  }
  return span;
}
const AHEAD: ReadonlySet<RoleKind> = new Set(['filler', 'modifier', 'reported', 'subject']);
const ENDS: ReadonlySet<RoleKind> = new Set(['punctuation', 'keyword', 'comment']);

/** A `?` or a bracket that touches a word is part of what was written. */
function wholeWords(text: string, span: Span): Span {
  let { start, end } = span;
  while (start > 0 && /[^\s,;.]/.test(text.charAt(start - 1))) start -= 1;
  while (end < text.length && /[^\s,;.]/.test(text.charAt(end))) end += 1;
  return { start, end };
}

/** Runs that follow one another share their whole, as one object. */
function joined(runs: readonly WrittenRun[], roles: Roles): readonly WrittenRun[] {
  const list: WrittenRun[][] = [];
  for (const run of runs.toSorted((a, b) => a.start - b.start)) {
    const same = list.at(-1);
    const last = same?.at(-1);
    if (last && goesOn(last, run, roles)) same?.push(run);
    else list.push([run]);
  }
  return list.flatMap((same) => {
    const wholes = same.map((run) => run.whole);
    const whole = {
      start: Math.min(...wholes.map(({ start }) => start)),
      end: Math.max(...wholes.map(({ end }) => end)),
    };
    return same.map((run) => ({ ...run, whole }));
  });
}
function goesOn(last: WrittenRun, run: WrittenRun, roles: Roles): boolean {
  if (last.quote || run.quote) return false;
  // One that cannot be read without the other is told with it.
  if (run.whole.start < last.whole.end) return true;
  if (last.subject !== run.subject) return false;
  for (
    let i = roles.endingAfter(last.whole.end);
    (roles.list[i]?.start ?? Number.POSITIVE_INFINITY) < run.whole.start;
    i++
  )
    if (roles.list[i]?.kind !== 'punctuation') return false;
  return true;
}
