import { advised } from '../clinical/advise.ts';
import { type ClinicNote, clinicNote, type Run, renderHtml, renderText } from '../documents/clinic-note.ts';
import type { Note } from '../workspace/note.ts';

export interface ClinicNoteParams {
  readonly line: number;
  /** With what was computed, apart from what was stated. */
  readonly computed: boolean;
}
export interface ClinicNoteAnswer {
  readonly html: string;
  readonly text: string;
  readonly visit: { readonly date: string | null; readonly firstLine: number; readonly lastLine: number };
  readonly version: number;
}

/** The clinic note of the visit that holds a line; in the header, of the newest visit. Places in it are lines of the file. */
export function clinicNoteOf(note: Note, { line, computed }: ClinicNoteParams): ClinicNoteAnswer | null {
  const visit = note.visitAt(line) ?? note.visit(note.blockCount - 1);
  if (!visit) return null;
  const { analysis, firstLine, lastLine } = visit;
  const prose = moved(clinicNote(advised(analysis, note), note.header), firstLine);
  const { date } = analysis.facts;
  const options = { computed: computed === true };
  return {
    html: renderHtml(prose, options),
    text: renderText(prose, options),
    visit: { date: date ? iso(date) : null, firstLine, lastLine },
    version: note.version,
  };
}

/** The note with its places counted from the first line of the file. */
function moved(note: ClinicNote, by: number): ClinicNote {
  const run = ({ text, from }: Run): Run => ({
    text,
    from: from.map(({ statement, place }) => ({ statement, place: { ...place, line: place.line + by } })),
  });
  const sections = note.sections.map(({ title, sentences }) => ({
    title,
    sentences: sentences.map((sentence) => ({ ...sentence, runs: sentence.runs.map(run) })),
  }));
  return { ...note, sections };
}

const iso = ({ year, month, day }: { year: number; month: number; day: number }): string =>
  [String(year).padStart(4, '0'), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');
