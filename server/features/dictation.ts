import type { CodeAction, Diagnostic, TextEdit } from 'vscode-languageserver-types';
import { RED_FLAG_WORDS } from '../../grammar/lexicon/closed-words.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { touchesSigned } from '../clinical/lifecycle.ts';
import { openersFor } from '../clinical/named-cures.ts';
import type { Range } from '../workspace/blocks.ts';
import { convertEdits } from '../workspace/convert/convert-edits.ts';
import type { Note } from '../workspace/note.ts';
import { suggestionsFor } from '../workspace/suggest/suggestions.ts';
import { spanOn } from '../workspace/text-edits.ts';
import { CONVERT_LINES, CONVERT_VISIT, wants } from './protocol-numbers.ts';

/** Lines of the file, both included. */
export interface ConvertDictationParams {
  readonly uri: string;
  readonly firstLine: number;
  readonly lastLine: number;
}

/**
 * What is offered for dictated text and for misheard words: words of the language that are spelt or sound like an unread one, the
 * dictated lines of a range as typed lines, and those of its visit.
 */
export function dictationActions(
  note: Note,
  range: Range,
  given: readonly Diagnostic[] = [],
  only?: readonly string[],
): CodeAction[] {
  const wanted = (kind: string) => wants(only, kind);
  return [
    ...(wanted('quickfix') ? misheard(note, range, given) : []),
    ...(wanted(CONVERT_LINES) ? conversions(note, range) : []),
    ...(only !== undefined && wanted(CONVERT_VISIT) ? ofVisit(note, range) : []),
  ];
}

const UNREAD: readonly string[] = ['unknown-word', 'word-out-of-place'];
function misheard(note: Note, range: Range, given: readonly Diagnostic[]): CodeAction[] {
  const actions: CodeAction[] = [];
  for (let at = range.start.line; at <= range.end.line; at++) {
    const line = note.line(at);
    const touched = (line?.problems ?? []).filter(
      ({ code, start, end }) => UNREAD.includes(code) && touches(at, start, end, range),
    );
    for (const problem of line ? touched : []) {
      // What opens a line is a cure of its own.
      if (line && openersFor(line, { line: at, start: problem.start, end: problem.end }).length > 0) continue;
      for (const { text, start, end, fits } of suggestionsFor(line as LineSyntax, problem)) {
        if (isSigned(note, at, start, end)) continue;
        const edit = { range: spanOn(at, start, end), newText: text };
        // Two unread words side by side may be one misheard word.
        if (actions.some((each) => JSON.stringify(each.edit?.changes?.[note.uri]) === JSON.stringify([edit]))) continue;
        const fixed = given.filter(
          ({ range: { start: from } }) => from.line === at && from.character === problem.start,
        );
        actions.push({
          title: `Replace "${line?.text.slice(start, end)}" with "${text}"`,
          kind: 'quickfix',
          ...(fixed.length > 0 ? { diagnostics: fixed } : {}),
          ...(fits && actions.length === 0 && mayBePreferred(line, start, text) ? { isPreferred: true } : {}),
          edit: { changes: { [note.uri]: [edit] } },
        });
      }
    }
  }
  return actions;
}
/** Signed words are not changed. */
function isSigned(note: Note, at: number, start: number, end: number): boolean {
  const visit = note.visitAt(at);
  if (!visit) return false;
  const place = { line: at - visit.firstLine, start, end };
  return touchesSigned(visit.analysis.facts, [{ edit: 'replace', place, text: '' }]);
}
/** A red flag is nothing to be taken by the way, and what opens a line may be one of its own words. */
const mayBePreferred = (line: LineSyntax | undefined, start: number, text: string): boolean =>
  !RED_FLAG_WORDS.includes(text) && (line?.text.slice(0, start).trim() ?? '') !== '';

/** A bare cursor asks for its whole line. */
function touches(line: number, from: number, to: number, { start, end }: Range): boolean {
  if (start.line === end.line && start.character === end.character) return true;
  const first = line === start.line ? start.character : 0;
  const last = line === end.line ? end.character : Number.POSITIVE_INFINITY;
  return from <= last && first <= to;
}

function conversions(note: Note, { start, end }: Range): CodeAction[] {
  const last = end.character === 0 && end.line > start.line ? end.line - 1 : end.line;
  const edits = convertEdits(note, start.line, last);
  if (edits.length === 0) return [];
  const plain = action(note, 'Convert dictation to typed lines', CONVERT_LINES, edits);
  const remembering = convertEdits(note, start.line, last, true);
  if (remembering.every(({ newText }, i) => newText === edits[i]?.newText)) return [plain];
  const title = 'Convert dictation, and keep what was taken back in a comment';
  return [plain, action(note, title, CONVERT_LINES, remembering)];
}
function ofVisit(note: Note, { start }: Range): CodeAction[] {
  const visit = note.visitAt(start.line);
  const edits = visit ? convertEdits(note, visit.firstLine, visit.lastLine) : [];
  return edits.length === 0 ? [] : [action(note, 'Convert the dictation of this visit', CONVERT_VISIT, edits)];
}
const action = (note: Note, title: string, kind: string, edits: TextEdit[]): CodeAction => ({
  title,
  kind,
  edit: { changes: { [note.uri]: edits } },
});
