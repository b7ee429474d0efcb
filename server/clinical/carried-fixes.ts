import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Fix, Report, SyntaxEdit } from './analysis.ts';
import type { Carried, VisitFacts } from './facts.ts';
import { isolatedFinding } from './isolated-finding.ts';
import { isSigned } from './lifecycle.ts';
import { replace } from './rules/define-rule.ts';

const fix = (title: string, edits: readonly SyntaxEdit[]): Fix => ({ title, safety: 'needs review', edits });

/**
 * What may be done with carried words, one finding at a time: confirm them as found today, drop them, or part a line of
 * several first. Signed words are left as they are.
 */
export function carriedFixes(lines: readonly LineSyntax[], visit: VisitFacts): (report: Report) => readonly Fix[] {
  return ({ code, place }) => {
    const carried = visit.lifecycle?.carried.find((each) => each.place.line === place.line);
    const line = lines[place.line];
    if (code === 'proposed-unconfirmed' && carried && !isSigned(visit, place.line))
      return proposedFixes(visit, carried);
    if (code !== 'carried-unconfirmed' || !carried || !line || isSigned(visit, place.line)) return [];
    const drop = fix('Drop it: it was not found again', [{ edit: 'remove line', line: place.line }]);
    const count = line.statements.reduce((sum, { findings }) => sum + findings.length, 0);
    if (count > 1) return [...parted(line, carried), drop];
    const between = lines.slice(carried.prefix.line, place.line).some(({ heading }) => heading !== undefined);
    return between ? [drop] : [fix('Confirm as found today', confirmed(carried)), drop];
  };
}

/** Confirm one proposal as what was meant, or all of the visit. */
function proposedFixes(visit: VisitFacts, own: Carried): Fix[] {
  if (!isFinding(own)) return [];
  const open = (visit.lifecycle?.carried ?? []).filter(
    (each) => each.proposed && isFinding(each) && !isSigned(visit, each.place.line),
  );
  const all =
    open.length > 1
      ? [fix(`Confirm all ${open.length} proposals of this visit as what was meant`, open.flatMap(confirmed))]
      : [];
  return [fix('Confirm as what was meant', confirmed(own)), ...all];
}

/** Would the words say a finding if they stood alone? What signs, heads or opens something is not confirmed, nor what says nothing. */
function isFinding({ text }: Carried): boolean {
  const { kind, heading, opens, carried, examiner, statements } = readLine(text);
  const says = statements.some(({ findings }) => findings.length > 0);
  const isPlain = !heading || heading.inline === true;
  return kind === 'statements' && says && isPlain && !opens && !carried && !examiner;
}

/** The words alone on their line; a line of a block moves above it. */
function confirmed({ prefix, place, text }: Carried): SyntaxEdit[] {
  if (prefix.line === place.line) return [replace(prefix, '')];
  return [
    { edit: 'insert line', afterLine: prefix.line - 1, text },
    { edit: 'remove line', line: place.line },
  ];
}

/** Each finding on a line of its own, still carried, where every word of the line goes with one. */
function parted(line: LineSyntax, { prefix, place }: Carried): Fix[] {
  const own = line.statements.flatMap((statement) =>
    statement.findings.map((node) => isolatedFinding(line, statement, node)),
  );
  if (line.statements.some(({ verbatim }) => verbatim.length > 0) || own.some((each) => each === undefined)) return [];
  const before = prefix.line === place.line ? line.text.slice(prefix.start, prefix.end) : '';
  const [first = '', ...rest] = own.map((each) => `${before}${each}`);
  const whole = { line: place.line, start: Math.min(place.start, before ? prefix.start : place.start), end: place.end };
  const edits: SyntaxEdit[] = [
    replace(whole, first),
    ...rest.toReversed().map((text) => ({ edit: 'insert line' as const, afterLine: place.line, text })),
  ];
  return [fix('Part it: each finding on a line of its own', edits)];
}
