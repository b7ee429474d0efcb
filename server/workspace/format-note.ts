import type { Span } from '../../grammar/values.ts';
import { isSigned } from '../clinical/lifecycle.ts';
import { formatLine } from './format-line.ts';
import type { Note } from './note.ts';

/** A line of an open note as the formatter writes it, in the words that the clinic's settings ask for. */
export function formattedLine(note: Note, line: number): string {
  const syntax = note.line(line);
  if (!syntax || isSignedLine(note, line)) return syntax?.text ?? '';
  return formatLine(syntax, verbatimOn(note, line), note.settings.words);
}

/** Signed words stay as they were signed, to the letter. */
export function isSignedLine(note: Note, line: number): boolean {
  const visit = note.visitAt(line);
  return visit !== undefined && isSigned(visit.analysis.facts, line - visit.firstLine);
}

/** What the visit keeps as typed on a line, for want of a subject or a side. */
function verbatimOn(note: Note, line: number): Span[] {
  const visit = note.visitAt(line);
  if (!visit) return [];
  const own = line - visit.firstLine;
  return visit.analysis.facts.verbatim.flatMap(({ place }) => (place.line === own ? [place] : []));
}

/** The text of a whole note, formatted; every line keeps its own line end. `note` is the same text, opened. */
export function formattedText(note: Note, text: string): string {
  const pieces = text.split(/(\r\n|\n|\r)/);
  return pieces.map((piece, index) => (index % 2 === 0 ? formattedLine(note, index / 2) : piece)).join('');
}
