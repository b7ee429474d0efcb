import type { ReadingProblem, Role, SubjectNode } from '../syntax.ts';
import type { Binder } from './binder.ts';
import { causeOf, type Draft, endsUnread, kindOfSubject, kindsOf, type StatementDraft } from './draft.ts';

/** A subject alone in its segment, in a statement that has said something. */
export interface LoneSubject {
  readonly subject: SubjectNode;
  readonly segment: number;
  readonly statement: StatementDraft;
  readonly before: Draft;
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
  const [ahead, last] = elements.slice(-2);
  if (last?.is !== 'subject' || ahead?.is !== 'break' || ahead.by !== 'punctuation') return;
  const before = elements.findLast((each) => each.is === 'finding')?.draft;
  if (before) lone.push({ subject: last.subject, segment, statement, before });
}

/**
 * `2nd tender, 3rd`: a subject that no finding has taken is kept as typed and reported; a finding before it that names none, and could be
 * of it, is unclear (`pain 6/10, 2nd`).
 */
export function keepUnused(
  { lone, statements, line }: Binder,
  roles: readonly Role[],
): { roles: readonly Role[]; problems: ReadingProblem[] } {
  if (lone.length === 0) return { roles, problems: [] };
  const taken = new Set(
    statements.flatMap(({ elements }) =>
      elements.flatMap((each) => (each.is === 'finding' && each.draft.subject ? [each.draft.subject.start] : [])),
    ),
  );
  const unused = lone.filter(({ subject }) => !taken.has(subject.start));
  const quoted = new Set(
    statements.flatMap(({ verbatim }) => verbatim.flatMap((each) => (each.quote ? [each.segment] : []))),
  );
  for (const { subject, segment, statement, before } of unused) {
    const { start, end } = subject;
    if (!quoted.has(segment) && !before.subject && kindsOf(before.id, before.entry).includes(kindOfSubject(subject)))
      before.causes.push(causeOf('subject between', subject, line));
    statement.verbatim.push({ text: line.slice(start, end), quote: false, segment, start, end, subject });
  }
  const starts = new Set(unused.map(({ subject }) => subject.start));
  return {
    roles: roles.map((role) =>
      role.kind === 'subject' && starts.has(role.start) ? { kind: 'reported', start: role.start, end: role.end } : role,
    ),
    problems: unused.map(({ subject: { start, end } }) => {
      return { code: 'word-out-of-place', text: line.slice(start, end), start, end };
    }),
  };
}
