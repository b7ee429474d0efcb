import type { Mark } from '../../grammar/lexicon/entry.ts';
import { type LineReader, rememberingReader } from '../../grammar/remembering-reader.ts';
import type { SourceKey } from '../../grammar/sources.ts';
import { foldNote } from '../clinical/analyse-note.ts';
import type { Report } from '../clinical/analysis.ts';
import { isRedFlagReport } from '../clinical/red-flag-reports.ts';
import { RULES } from '../clinical/rules/index.ts';
import type { Settings } from '../clinical/settings.ts';
import type { Run } from './command.ts';
import { JsonList } from './json-list.ts';
import { NoteSettings } from './note-settings.ts';
import { eachNote } from './read-note.ts';

/** One report as programs get it; lines and columns count from 1. */
interface Checked {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly severity: 'error' | 'warning' | 'hint';
  readonly code: string;
  readonly message: string;
  /** Of the rule; a report of the reader itself has none. */
  readonly source?: SourceKey;
  readonly mark?: Mark;
}

const SEVERITY: Readonly<Record<Report['severity'], Checked['severity']>> = {
  danger: 'error',
  contradiction: 'warning',
  missing: 'hint',
  style: 'hint',
};

const SOURCED = new Map(RULES.map(({ code, source, mark }) => [code, { source, mark }]));

type Counts = Record<'notes' | 'error' | 'warning' | 'hint', number>;

/** `forefoot check`: every report of every note, red flags first. */
export const check: Run = async (invocation, terminal) => {
  const { paths, format, today } = invocation;
  const settings = new NoteSettings(invocation, terminal);
  const list = new JsonList(terminal);
  const read = rememberingReader(REMEMBERED);
  const counts: Counts = { notes: 0, error: 0, warning: 0, hint: 0 };
  const failed = await eachNote(paths, terminal, async ({ file, text }) => {
    const reports = checkedReports(file, text, { today, settings: settings.of(file), read });
    counts.notes++;
    for (const { severity } of reports) counts[severity]++;
    if (format === 'json') await list.add(reports);
    else if (reports.length > 0) await terminal.write(`${textOf(file, reports)}\n`);
  });
  if (format === 'json') await list.end();
  else await terminal.write(`${summary(counts, failed)}\n${hasReports(counts) ? EXPLAINED : ''}`);
  if (failed + settings.broken > 0) return 2;
  return counts.error + counts.warning > 0 ? 1 : 0;
};

/** Lines that are remembered over all the notes of one run. */
const REMEMBERED = 8_000;

interface How {
  readonly today: string;
  readonly settings: Settings;
  readonly read: LineReader;
}
function checkedReports(file: string, text: string, how: How): Checked[] {
  const reports: Checked[] = [];
  const add = (firstLine: number, list: readonly Report[]) => {
    for (const report of list) reports.push(checkedReport(file, firstLine, report));
  };
  const { headerReports } = foldNote(text, how, ({ firstLine, analysis }) => add(firstLine, analysis.reports));
  add(0, headerReports);
  return reports.sort((a, b) => rank(a) - rank(b) || a.line - b.line || a.column - b.column);
}

/** Red flags come before everything else of a file. */
const rank = (report: Checked): number => (isRedFlagReport(report) ? 0 : 1);

function checkedReport(file: string, firstLine: number, { place, severity, code, message }: Report): Checked {
  const line = firstLine + place.line + 1;
  return {
    file,
    line,
    column: place.start + 1,
    endLine: line,
    endColumn: place.end + 1,
    severity: SEVERITY[severity],
    code,
    message,
    ...SOURCED.get(code),
  };
}

function textOf(file: string, reports: readonly Checked[]): string {
  const places = reports.map(({ line, column }) => `${line}:${column}`);
  const width = Math.max(...places.map(({ length }) => length));
  const rows = reports.map(
    ({ severity, message, code }, at) =>
      `  ${places[at]?.padStart(width)}  ${severity.padEnd(7)}  ${message}  [${code}]`,
  );
  return [file, ...rows, ''].join('\n');
}

function summary({ notes, error, warning, hint }: Counts, failed: number): string {
  const found = [some(error, 'error'), some(warning, 'warning'), some(hint, 'hint')].join(', ');
  const clean = failed === 0 ? 'nothing to report' : 'nothing to report in them';
  const checked = `${some(notes, 'note')} checked: ${error + warning + hint > 0 ? found : clean}`;
  if (failed === 0) return checked;
  return `${notes > 0 ? `${checked}; ` : ''}${failed} could not be read`;
}

const hasReports = ({ error, warning, hint }: Counts): boolean => error + warning + hint > 0;
const EXPLAINED = 'What a code in brackets means: forefoot rule CODE\n';

const some = (count: number, noun: string): string => `${count} ${noun}${count === 1 ? '' : 's'}`;
