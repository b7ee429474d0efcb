import { analyseNote } from '../clinical/analyse-note.ts';
import { overdue } from '../clinical/overdue.ts';
import type { Run } from './command.ts';
import { JsonList } from './json-list.ts';
import { wrapped } from './layout.ts';
import { NoteSettings } from './note-settings.ts';
import { eachNote } from './read-note.ts';
import { type Shown, stageRecords, type Visit } from './stage-records.ts';
import { newestFirst, noteText } from './stage-text.ts';

const CLOSING =
  'Everything above is computed from the notes, as decision support; local protocol and a licensed clinician decide.';

/** `forefoot stage`: stage and next step of each lesser ray. JSON keeps the order of the note; text puts the newest visit first. */
export const stage: Run = async (invocation, terminal) => {
  const { paths, format, today, why, scales = false } = invocation;
  const settings = new NoteSettings(invocation, terminal);
  const list = new JsonList(terminal);
  const width = terminal.width ?? 100;
  let rays = 0;
  const failed = await eachNote(paths, terminal, async ({ file, text }) => {
    const { header, visits } = analyseNote(text, today, settings.of(file));
    rays += visits.reduce((sum, { analysis }) => sum + analysis.rays.length, 0);
    const newest = newestOf(visits);
    const shownOf = (visit: Visit): Shown => ({
      scales,
      ...(why ? { why: header } : {}),
      ...(visit === newest ? { overdue: overdue(visit.analysis, today) } : {}),
    });
    if (format === 'json') await list.add(visits.flatMap((visit) => stageRecords(file, visit, shownOf(visit))));
    else await terminal.write(noteText(file, visits, width, shownOf));
  });
  if (format === 'json') await list.end();
  else if (rays > 0) await terminal.write(`${wrapped(CLOSING, width)}\n`);
  return failed + settings.broken === 0 ? 0 : 2;
};

/** Without a date nobody knows what was planned for when. */
const newestOf = (visits: readonly Visit[]): Visit | undefined => newestFirst(visits)[0];
