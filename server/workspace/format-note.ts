import type { Span } from '../../grammar/values.ts';
import { formatLine } from './format-line.ts';
import type { Note } from './note.ts';

/** A line of an open note as the formatter writes it, in the words that the clinic's settings ask for. */
export function formattedLine(note: Note, line: number): string {
  const syntax = note.line(line);
  return syntax ? formatLine(syntax, verbatimOn(note, line), note.settings.words) : '';
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
