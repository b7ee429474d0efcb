import { analyseNote } from '../clinical/analyse-note.ts';
import { type ClinicNote, COMPUTED_TITLE, clinicNote, renderText, URGENT_TITLE } from '../documents/clinic-note.ts';
import { Refusal, type Run } from './command.ts';
import { wrapped } from './layout.ts';
import { NoteSettings } from './note-settings.ts';
import { findNotes } from './paths.ts';
import { eachNote } from './read-note.ts';
import { isoDate, type Visit } from './stage-records.ts';

const RULE = '-'.repeat(72);

/** `forefoot write`: the clinic note of one visit; what is computed stands apart, above and below a line. */
export const write: Run = async (invocation, terminal) => {
  const { paths, today, visit, filed } = invocation;
  const settings = new NoteSettings(invocation, terminal);
  oneNoteOnly(paths);
  const failed = await eachNote(paths, terminal, async ({ file, text }) => {
    const { header, visits } = analyseNote(text, today, settings.of(file));
    const notes = visitsOf(file, visits, visit).map(({ analysis }) => clinicNote(analysis, header));
    const texts = notes.map((note) => (filed ? renderText(note, { computed: false }) : apart(note)));
    const { width } = terminal;
    const prose = texts.join(`\n${RULE}\n\n`);
    await terminal.write(
      width
        ? prose
            .split('\n')
            .map((line) => wrapped(line, width))
            .join('\n')
        : prose,
    );
  });
  return failed + settings.broken === 0 ? 0 : 2;
};

function oneNoteOnly(paths: readonly string[]): void {
  const found = findNotes(paths);
  found.next();
  if (!found.next().done) throw new Refusal(`write takes one note, and ${paths.join(' ')} names several`);
}

/** The newest visit, or all of the day that is asked for. */
function visitsOf(file: string, visits: readonly Visit[], asked: string | undefined): Visit[] {
  const dates = visits.flatMap(({ analysis }) => isoDate(analysis.facts.date) ?? []);
  if (visits.length === 0) throw new Refusal(`${file}: no visit in this note`);
  const wanted = asked ?? [...dates].sort().at(-1);
  const found = visits.filter(({ analysis }) => isoDate(analysis.facts.date) === (wanted ?? null));
  if (found.length > 0) return asked ? found : found.slice(-1);
  throw new Refusal(`${file}: no visit on ${asked}; this note has ${dates.length > 0 ? dates.join(', ') : 'no dates'}`);
}

/** Red flags come before anything else, even before what is filed. */
function apart(note: ClinicNote): string {
  const only = (title: string): string => {
    const sections = note.sections.filter((section) => section.title === title);
    return sections.length === 0 ? '' : renderText({ title: '', sections }, { computed: true }).trimStart();
  };
  const urgent = only(URGENT_TITLE);
  const computed = only(COMPUTED_TITLE);
  return [
    ...(urgent ? [urgent, `${RULE}\n`] : []),
    renderText(note, { computed: false }),
    ...(computed ? [`${RULE}\n`, computed] : []),
  ].join('\n');
}
