import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Fix, Report } from '../clinical/analysis.ts';
import { carriedFixes } from '../clinical/carried-fixes.ts';
import type { VisitFacts } from '../clinical/facts.ts';
import { touchesSigned } from '../clinical/lifecycle.ts';
import { QUOTE_UNREAD, unreadFixes } from '../clinical/line-fixes.ts';
import { mayBeRemark, namedCures } from '../clinical/named-cures.ts';
import type { Range } from '../workspace/blocks.ts';
import type { Note } from '../workspace/note.ts';
import { type Lines, type TextEdit, textEdits } from '../workspace/text-edits.ts';
import { planAcceptances } from './accept-plan.ts';
import { acceptances } from './accept-stage.ts';
import { bringBack } from './bring-back.ts';
import { carryFindings } from './carry-findings.ts';
import { wants } from './protocol-numbers.ts';
import { signVisit } from './sign-visit.ts';
import { sortVisit } from './sort-visit.ts';

/** The fixes of what is reported in a range, the acceptance of a computed stage, all safe fixes of the note at once, and its visit in exam sequence. */
export function codeActions(
  note: Note,
  range: Range,
  given: readonly Diagnostic[] = [],
  only?: readonly string[],
): CodeAction[] {
  const wanted = (kind: string) => wants(only, kind);
  return eachOnce([
    ...(wanted('quickfix')
      ? [
          ...quickFixes(note, range, given),
          ...bringBack(note, range, given),
          ...acceptances(note, range),
          ...planAcceptances(note, range),
        ]
      : []),
    ...(only !== undefined && wanted('source.fixAll') ? fixAll(note) : []),
    ...(only !== undefined && wanted('source.sortVisit') ? sortVisit(note, range) : []),
    ...(only !== undefined && wanted('source.signVisit') ? signVisit(note, range) : []),
    ...(only !== undefined && wanted('source.carryFindings') ? carryFindings(note, range) : []),
  ]);
}

/** Of actions that would change the same, the one whose title says most of what it does, for the reports of all of them. */
function eachOnce(actions: readonly CodeAction[]): CodeAction[] {
  const kept = new Map<string, CodeAction>();
  for (const each of actions) {
    const key = JSON.stringify([each.kind, each.edit]);
    const same = kept.get(key);
    const diagnostics = [...new Set([...(same?.diagnostics ?? []), ...(each.diagnostics ?? [])])];
    const [less, more] = same && each.title === QUOTE_UNREAD ? [each, same] : [same, each];
    kept.set(key, { ...less, ...more, ...(diagnostics.length > 0 ? { diagnostics } : {}) });
  }
  return [...kept.values()];
}

function quickFixes(note: Note, range: Range, given: readonly Diagnostic[]): CodeAction[] {
  const [from, to] = [note.indexAt(range.start.line), note.indexAt(range.end.line)];
  const actions: CodeAction[] = [];
  for (let index = from; index <= to; index++) {
    const firstLine = note.firstLine(index);
    const offered = new Set<Fix>();
    const visit = note.visit(index);
    const more = fixesOf(note.block(index), visit?.analysis.facts);
    for (const report of note.reports(index)) {
      const line = firstLine + report.place.line;
      if (line < range.start.line || line > range.end.line || !touches(report.place, line, range)) continue;
      const fixed = given.filter((each) => each.code === report.code && each.range.start.line === line);
      for (const fix of more(report)) {
        if (visit && !ofSignature(note.line(line)) && touchesSigned(visit.analysis.facts, fix.edits)) continue;
        // The reports of a line share the fixes of the whole line.
        if (!offered.has(fix)) actions.push(action(note, fix, firstLine, fixed));
        offered.add(fix);
      }
    }
  }
  return actions;
}

/** A signature that was not read signs nothing for sure: what mends it changes no signed word. */
const ofSignature = (line: LineSyntax | undefined): boolean =>
  (line?.header?.is === 'signed' || line?.header?.is === 'addendum') && line.problems.length > 0;

/** The fixes of a report: what its message names, what it brings itself, and what is made when somebody asks. */
function fixesOf(lines: readonly LineSyntax[], facts?: VisitFacts): (report: Report) => readonly Fix[] {
  const cures = namedCures(lines, facts);
  const ofVisit = facts ? [unreadFixes(lines, facts), carriedFixes(lines, facts)] : [];
  const own = ({ code, place, fixes }: Report): readonly Fix[] => {
    const line = lines[place.line];
    return code === 'unclear-finding' && line && !mayBeRemark(line, place) ? [] : fixes;
  };
  return (report) => [...cures(report), ...own(report), ...ofVisit.flatMap((each) => each(report))];
}

/** On one line, only the reports that the selection touches; a bare cursor asks for its whole line. */
function touches(place: { start: number; end: number }, line: number, { start, end }: Range): boolean {
  if (start.line === end.line && start.character === end.character) return true;
  const from = line === start.line ? start.character : 0;
  const to = line === end.line ? end.character : Number.POSITIVE_INFINITY;
  return place.start <= to && from <= place.end;
}

function action(note: Note, fix: Fix, firstLine: number, diagnostics: Diagnostic[]): CodeAction {
  return {
    title: fix.title,
    kind: 'quickfix',
    ...(diagnostics.length > 0 ? { diagnostics } : {}),
    ...(fix.safety === 'safe' ? { isPreferred: true } : {}),
    edit: { changes: { [note.uri]: textEdits(fix.edits, firstLine, linesOf(note)) } },
  };
}

/** Only fixes that can't change what the note says; of two that overlap, the first. */
function fixAll(note: Note): CodeAction[] {
  const chosen: TextEdit[] = [];
  for (let index = 0; index < note.blockCount; index++)
    for (const { fixes } of note.reports(index)) {
      const [safe] = fixes.filter(({ safety, edits }) => safety === 'safe' && !isSignedIn(note, index, edits));
      const edits = safe ? textEdits(safe.edits, note.firstLine(index), linesOf(note)) : [];
      if (edits.every((edit) => chosen.every((other) => areApart(edit.range, other.range)))) chosen.push(...edits);
    }
  if (chosen.length === 0) return [];
  const title = 'Apply every safe fix of this note';
  return [{ title, kind: 'source.fixAll', edit: { changes: { [note.uri]: chosen } } }];
}

function isSignedIn(note: Note, index: number, edits: Fix['edits']): boolean {
  const visit = note.visit(index);
  return visit !== undefined && touchesSigned(visit.analysis.facts, edits);
}

const areApart = (a: Range, b: Range): boolean => isBefore(a.end, b.start) || isBefore(b.end, a.start);
const isBefore = (a: Range['start'], b: Range['start']): boolean =>
  a.line < b.line || (a.line === b.line && a.character < b.character);

export function linesOf(note: Note): Lines {
  const versionLine = note.block(0).findIndex(({ header }) => header?.is === 'version');
  return {
    lineEnd: note.lineEnd,
    lineCount: note.lineCount,
    lengthOf: (line) => note.line(line)?.text.length ?? 0,
    ...(versionLine >= 0 ? { versionLine } : {}),
  };
}
