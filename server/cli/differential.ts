import { analyseNote } from '../clinical/analyse-note.ts';
import { Refusal, type Run } from './command.ts';
import { differentialRecord } from './differential-records.ts';
import { differentialText } from './differential-text.ts';
import { JsonList } from './json-list.ts';
import { wrapped } from './layout.ts';
import { NoteSettings } from './note-settings.ts';
import { eachNote } from './read-note.ts';
import { isoDate, type Visit } from './stage-records.ts';

const CLOSING =
  'Computed from the notes, as decision support; findings are counted, not weighed: no count is a probability. Local protocol and a licensed clinician decide.';

/** `forefoot differential`: what may explain each complaint of a visit, the newest of each note if none is named. */
export const differential: Run = async (invocation, terminal) => {
  const { paths, format, today, visit } = invocation;
  const settings = new NoteSettings(invocation, terminal);
  const list = new JsonList(terminal);
  const width = terminal.width ?? 100;
  let sites = 0;
  const failed = await eachNote(paths, terminal, async ({ file, text }) => {
    const { visits } = analyseNote(text, today, settings.of(file));
    const records = asked(file, visits, visit).map((each) => differentialRecord(file, each));
    sites += records.reduce(
      (sum, record) => sum + record.sites.length + record.redFlags.length + (record.caution ? 1 : 0),
      0,
    );
    if (format === 'json') await list.add(records);
    else for (const record of records) await terminal.write(`${differentialText(record, width)}\n`);
  });
  if (format === 'json') await list.end();
  else if (sites > 0) await terminal.write(`${wrapped(CLOSING, width)}\n`);
  return failed + settings.broken === 0 ? 0 : 2;
};

/** The newest visit of a note, or all of the day that is asked for; none of a note without a visit. */
function asked(file: string, visits: readonly Visit[], day: string | undefined): readonly Visit[] {
  const dates = visits.flatMap(({ analysis }) => isoDate(analysis.facts.date) ?? []).sort();
  const wanted = day ?? dates.at(-1) ?? null;
  const found = visits.filter(({ analysis }) => isoDate(analysis.facts.date) === wanted);
  if (day && found.length === 0)
    throw new Refusal(`${file}: no visit on ${day}; this note has ${dates.length > 0 ? dates.join(', ') : 'no dates'}`);
  return day ? found : found.slice(-1);
}
