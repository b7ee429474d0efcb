import type { ReadingProblem, Role, SubjectNode } from '../syntax.ts';
import type { Binder } from './binder.ts';
import { causeOf, type Draft, endsUnread, kindOfSubject, kindsOf, type StatementDraft } from './draft.ts';

/** Subjects alone in their segment. */
export interface LoneSubject {
  /** The first and the last of them: `1st over 2nd`. */
  readonly subject: SubjectNode;
  readonly last: SubjectNode;
  readonly segment: number;
  readonly statement: StatementDraft;
  /** The finding before them in their statement. */
  readonly before: Draft | undefined;
}

/**
 * `2nd, not 3rd, drawer 2`, `2nd over 1st, tender`: a segment that only sets rays beside each other, or turns the one that it ends with, says of
 * none what follows. `others` go with the unread words before them.
 */
export function losesSubject(subject: SubjectNode, statement: StatementDraft): boolean {
  if (subject.at === 'others') return endsUnread(statement);
  const { elements } = statement;
  const segment = elements.slice(
    elements.findLastIndex((each) => each.is === 'break' && each.by === 'punctuation') + 1,
  );
  if (segment.some(({ is }) => is === 'finding')) return false;
  const named = segment.filter(({ is }) => is === 'subject').length;
  const turned = segment.some(
    (each) =>
      each.is === 'distancing' || each.is === 'list end' || (each.is === 'unread' && each.cause.why !== 'unknown word'),
  );
  return named > 1 || (named === 1 && turned && segment.at(-1)?.is === 'subject');
}

/** Called where a segment ends. */
export function noteLone({ lone, statement, segment }: Binder): void {
  const { elements } = statement;
  const from = elements.findLastIndex((each) => each.is !== 'subject') + 1;
  const ahead = elements[from - 1];
  const [first, last] = [elements[from], elements.at(-1)];
  if (first?.is !== 'subject' || last?.is !== 'subject') return;
  if (ahead && (ahead.is !== 'break' || ahead.by !== 'punctuation')) return;
  const before = elements.findLast((each) => each.is === 'finding')?.draft;
  lone.push({ subject: first.subject, last: last.subject, segment, statement, before });
}

/**
 * `2nd tender, 3rd`: a subject that no finding has taken is kept as typed and reported; a finding before it that names none, and could be
 * of it, is unclear (`pain 6/10, 2nd`).
 */
export function keepUnused(
  { lone, statements, line }: Binder,
  roles: readonly Role[],
  heading: SubjectNode | undefined,
): { roles: readonly Role[]; problems: ReadingProblem[] } {
  if (lone.length === 0) return { roles, problems: [] };
  const taken = new Set(
    statements.flatMap(({ elements }) =>
      elements.flatMap((each) => (each.is === 'finding' && each.draft.subject ? [each.draft.subject.start] : [])),
    ),
  );
  const quoted = new Set(
    statements.flatMap(({ verbatim }) => verbatim.flatMap((each) => (each.quote ? [each.segment] : []))),
  );
  // `2nd "looks fine"`: the quotation is of the ray.
  const unused = lone.filter(
    ({ subject, last, segment, before }) =>
      last !== heading && (before || !quoted.has(segment)) && !taken.has(subject.start) && !taken.has(last.start),
  );
  for (const { subject, last, segment, statement, before } of unused) {
    const { start } = subject;
    const { end } = last;
    const fits = before && !before.subject && kindsOf(before.id, before.entry).includes(kindOfSubject(subject));
    if (!quoted.has(segment) && fits) before.causes.push(causeOf('subject between', subject, line));
    statement.verbatim.push({ text: line.slice(start, end), quote: false, segment, start, end, subject });
  }
  const isUnused = (at: number) => unused.some(({ subject, last }) => subject.start <= at && at <= last.start);
  return {
    roles: roles.map((role) =>
      role.kind === 'subject' && isUnused(role.start) ? { kind: 'reported', start: role.start, end: role.end } : role,
    ),
    problems: unused.map(({ subject: { start }, last: { end } }) => {
      return { code: 'word-out-of-place', text: line.slice(start, end), start, end };
    }),
  };
}
