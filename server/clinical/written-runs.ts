import type {
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
  const clear = statement.findings.filter((each) => !unread.includes(each));
  const runs = segmentsOf(unread).map((nodes): WrittenRun => {
    const quote = nodes.every((each) => 'quote' in each && each.quote);
    const start = Math.min(...nodes.map((each) => each.start));
    const end = Math.max(...nodes.map((each) => each.end));
    const { subject } = nodes.find((each) => each.subject) ?? {};
    const { side } = nodes.find((each) => each.side) ?? {};
    if (quote) return { start, end, quote, subject, side, whole: { start, end } };
    const whole = wholeWords(text, widened({ start, end }, statement, clear, roles, text));
    return { ...wholeWords(text, { start, end }), quote, subject, side, whole };
  });
  return joined(runs, clear, roles);
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
function widened(inner: Span, of: Span, clear: readonly Span[], roles: readonly Role[], text: string): Span {
  const span = { ...inner };
  const first = roles.findIndex(({ start }) => start >= inner.start);
  for (let i = (first < 0 ? roles.length : first) - 1; i >= 0; i--) {
    const role = roles[i];
    if (!role || role.start < of.start || !AHEAD.has(role.kind) || touches(role, clear)) break;
    span.start = role.start;
  }
  for (const role of roles) {
    if (role.end <= span.end) continue;
    const brackets = /[()]/.test(text.slice(role.start, role.end));
    if (role.end > of.end || (ENDS.has(role.kind) && !brackets) || touches(role, clear)) break;
    span.end = role.end;
  }
  return span;
}
const AHEAD: ReadonlySet<RoleKind> = new Set(['filler', 'modifier', 'reported', 'subject']);
const ENDS: ReadonlySet<RoleKind> = new Set(['punctuation', 'keyword', 'comment']);
const touches = ({ start, end }: Span, clear: readonly Span[]): boolean =>
  clear.some((each) => end > each.start && start < each.end);

/** A `?` or a bracket that touches a word is part of what was written. */
function wholeWords(text: string, span: Span): Span {
  let { start, end } = span;
  while (start > 0 && /[^\s,;.]/.test(text.charAt(start - 1))) start -= 1;
  while (end < text.length && /[^\s,;.]/.test(text.charAt(end))) end += 1;
  return { start, end };
}

/** Runs that follow one another share their whole. */
function joined(runs: readonly WrittenRun[], clear: readonly Span[], roles: readonly Role[]): readonly WrittenRun[] {
  const list: WrittenRun[][] = [];
  for (const run of runs.toSorted((a, b) => a.start - b.start)) {
    const last = list.at(-1)?.at(-1);
    if (last && goesOn(last, run, clear, roles)) list.at(-1)?.push(run);
    else list.push([run]);
  }
  return list.flatMap((same) => {
    const whole = { start: same[0]?.whole.start ?? 0, end: same.at(-1)?.whole.end ?? 0 };
    return same.map((run) => ({ ...run, whole }));
  });
}
function goesOn(last: WrittenRun, run: WrittenRun, clear: readonly Span[], roles: readonly Role[]): boolean {
  if (last.quote || run.quote || last.subject !== run.subject) return false;
  const between = [{ start: last.whole.end, end: run.whole.start }];
  return (
    !clear.some((each) => touches(each, between)) &&
    roles.every((role) => role.kind === 'punctuation' || !touches(role, between))
  );
}
