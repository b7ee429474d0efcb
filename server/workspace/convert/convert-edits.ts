import { readLine } from '../../../grammar/read-line.ts';
import { isDictated } from '../../../grammar/reader/outline.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import { readVisitFacts } from '../../clinical/read-facts.ts';
import { isSignedLine } from '../format-note.ts';
import type { Note, Visit } from '../note.ts';
import { spanOn, type TextEdit } from '../text-edits.ts';
import { convertLine } from './convert-line.ts';
import { isConverted, withDictated } from './dictated.ts';

export const linesOf = (first: number, last: number): number[] =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);

/** Was a line said? By a spoken number or mark; else by unread words among the small ones of a sentence, without the marks of typed text. */
export const isSaid = (line: LineSyntax): boolean => isDictated(line.text) || isSentence(line);
function isSentence({ text, roles }: LineSyntax): boolean {
  if (MARKS.test(text) || !roles.some(({ kind }) => kind === 'reported')) return false;
  return (
    text
      .trim()
      .split(/\s+/)
      .filter((word) => SMALL_WORDS.has(word.toLowerCase())).length >= SMALL_ENOUGH
  );
}
const MARKS = /[,;:="“/]/;
const SMALL_WORDS: ReadonlySet<string> = new Set([
  'a',
  'an',
  'the',
  'and',
  'is',
  'are',
  'it',
  'she',
  'he',
  'her',
  'his',
  'there',
  'has',
  'of',
  'on',
]);
const SMALL_ENOUGH = 2;

/** One edit for each dictated line between two lines of the file that can be written as typed lines without a change of what is said. */
export function convertEdits(note: Note, first: number, last: number, remember = false): TextEdit[] {
  const edits: TextEdit[] = [];
  const done = new Map<number, VisitLines>();
  for (const at of linesOf(first, Math.min(last, note.lineCount - 1))) {
    const line = note.line(at);
    const visit = note.visitAt(at);
    if (!line || !visit || isSignedLine(note, at) || !isSaid(line)) continue;
    const state = done.get(visit.index) ?? { lines: [...visit.lines], moved: 0 };
    done.set(visit.index, state);
    const own = at - visit.firstLine + state.moved;
    if (isConverted(state.lines, own)) continue;
    const read = (lines: readonly LineSyntax[]) => readVisitFacts(lines, note.header, note.settings);
    const written = convertLine({ lines: state.lines, at: own, read, remember });
    if (!written || written.join('\n') === line.text) continue;
    const converted = withDictated(line, written);
    state.lines.splice(own, 1, ...converted.map((text) => readLine(text, line.under)));
    state.moved += converted.length - 1;
    edits.push({ range: spanOn(at, 0, line.text.length), newText: converted.join(note.lineEnd) });
  }
  return edits;
}
interface VisitLines {
  /** The lines of a visit with those before already converted. */
  readonly lines: Visit['lines'][number][];
  moved: number;
}
