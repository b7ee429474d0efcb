import { NONE } from '../../grammar/none.ts';
import type { Span } from '../../grammar/values.ts';
import type { VisitFacts } from '../clinical/facts.ts';
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
function verbatimOn(note: Note, line: number): readonly Span[] {
  const visit = note.visitAt(line);
  return (visit && byLine(visit.analysis.facts).get(line - visit.firstLine)) ?? NONE;
}
const sorted = new WeakMap<VisitFacts, ReadonlyMap<number, readonly Span[]>>();
/** Sorted once a visit: looking through all of them for each line would cost the square of a long visit. */
function byLine(facts: VisitFacts): ReadonlyMap<number, readonly Span[]> {
  const known = sorted.get(facts);
  if (known) return known;
  const found = new Map<number, Span[]>();
  for (const { place } of facts.verbatim) {
    const own = found.get(place.line);
    if (own) own.push(place);
    else found.set(place.line, [place]);
  }
  sorted.set(facts, found);
  return found;
}

/** The text of a whole note, formatted; every line keeps its own line end. `note` is the same text, opened. */
export function formattedText(note: Note, text: string): string {
  const pieces = text.split(/(\r\n|\n|\r)/);
  return pieces.map((piece, index) => (index % 2 === 0 ? formattedLine(note, index / 2) : piece)).join('');
}
