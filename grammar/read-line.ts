import { NONE } from './none.ts';
import { readHeader } from './reader/header.ts';
import type { Item } from './reader/items.ts';
import { readPrefix } from './reader/line-prefix.ts';
import { outline } from './reader/outline.ts';
import { readStatements } from './reader/read-statements.ts';
import { pauses } from './spoken/as-typed.ts';
import type { LineSyntax, SectionHeading } from './syntax.ts';

/**
 * Reads one line from its text, the section heading above it and the lexicon alone; equal lines under equal headings give
 * equal syntax, so a caller may share them. Offsets are relative to the line. Never throws: what it can't read it keeps,
 * marks and reports.
 */
export function readLine(text: string, under?: SectionHeading): LineSyntax {
  const syntax = readText(text, under);
  const reached = under !== undefined && (syntax.kind === 'statements' || syntax.kind === 'comment');
  return reached ? { ...syntax, under } : syntax;
}

function readText(text: string, under: SectionHeading | undefined): LineSyntax {
  const items = outline(text);
  const [first] = items;
  if (!first) return { text, kind: 'blank', statements: NONE, roles: NONE, problems: NONE };
  if (first.is === 'comment') {
    const roles = [{ kind: 'comment' as const, start: first.start, end: first.end }];
    return { text, kind: 'comment', statements: NONE, roles, problems: NONE };
  }
  const header = readHeader(text, items);
  if (!header) return readWithPrefix(text, items, under);
  const { problems, statements } = header;
  // A hesitation is no item, and stands in no role of a header either.
  const free = pauses(text, items).filter(
    ({ start }) => !header.roles.some((role) => role.start <= start && start < role.end),
  );
  const roles = free.length > 0 ? [...header.roles, ...free].sort((a, b) => a.start - b.start) : header.roles;
  return { text, statements, kind: 'header', roles, problems, ...(header.header ? { header: header.header } : {}) };
}

function readWithPrefix(text: string, items: readonly Item[], under: SectionHeading | undefined): LineSyntax {
  const prefix = readPrefix(text, items);
  if (!prefix) return Object.assign(readStatements(text, items, 0, under), { text, kind: 'statements' as const });
  const { next, roles, problems, ...node } = prefix;
  const body = readStatements(text, items, next, under);
  return {
    text,
    kind: 'statements',
    ...node,
    statements: body.statements,
    roles: [...roles, ...body.roles],
    problems: [...problems, ...body.problems],
  };
}

/** Does the line open a visit? Cheap enough to ask of every line of a file. */
export const opensVisit = (text: string): boolean => /^\s*visit(?![A-Za-z\u00c0-\u024f-])/i.test(text);
