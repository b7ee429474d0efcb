import type { LineSyntax, Role, SubjectNode } from '../../grammar/syntax.ts';
import type { Side } from '../../grammar/values.ts';
import type { RayAnalysis } from '../clinical/analysis.ts';
import type { Position, Range } from '../workspace/blocks.ts';
import type { Note } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';

export interface WordAt {
  readonly line: LineSyntax;
  readonly role: Role;
  readonly text: string;
  readonly range: Range;
}

/** The word of the language at a position; a position at its end counts as in it. */
export function wordAt(note: Note, { line, character }: Position): WordAt | undefined {
  const syntax = note.line(line);
  const touching = syntax?.roles.filter(({ start, end }) => start <= character && character <= end) ?? [];
  const role = touching.find(({ end }) => character < end) ?? touching[0];
  if (!syntax || !role) return undefined;
  const text = syntax.text.slice(role.start, role.end);
  return { line: syntax, role, text, range: spanOn(line, role.start, role.end) };
}

/** The subject that a word names, as a finding or a heading of its line holds it. */
export function subjectAt({ line, role }: WordAt): SubjectNode | undefined {
  if (role.kind !== 'subject') return undefined;
  return subjectsOf(line).find(({ start, end }) => start <= role.start && role.start < end);
}

function subjectsOf({ heading, statements }: LineSyntax): SubjectNode[] {
  const nodes = statements.flatMap(({ findings, verbatim }) => [...findings, ...verbatim]);
  return [heading?.subject, ...nodes.map(({ subject }) => subject)].filter((each) => each !== undefined);
}

/** The rays of a visit that a line names, computed; all of them for a line that names none. */
export function raysOn<R extends RayAnalysis>(rays: readonly R[], line: LineSyntax | undefined): readonly R[] {
  const named = line ? subjectsOf(line).filter(({ at }) => at !== 'webs') : [];
  return named.length === 0 ? rays : rays.filter((ray) => named.some((subject) => isOf(ray, subject)));
}

/** Is the computed ray one that the subject names? */
export const isOf = (analysis: RayAnalysis, subject: SubjectNode): boolean =>
  subject.at === 'rays' && subject.rays.includes(analysis.ray) && sideFits(analysis.side, subject.side);

const sideFits = (side: Side, named: Side | 'both' | undefined): boolean =>
  named === undefined || named === 'both' || named === side;
