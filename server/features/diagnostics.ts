import type { Diagnostic, DiagnosticSeverity } from 'vscode-languageserver-types';
import type { Report, Severity } from '../clinical/analysis.ts';
import { isRedFlagReport } from '../clinical/red-flag-reports.ts';
import type { Range } from '../workspace/blocks.ts';
import { collectReports, type PlacedReport } from '../workspace/collected-reports.ts';
import type { Note } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';
import { SEVERITY } from './protocol-numbers.ts';

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  danger: SEVERITY.error,
  contradiction: SEVERITY.warning,
  missing: SEVERITY.hint,
  style: SEVERITY.hint,
};
/** Reported at once, these would blink at every letter of a word that is being typed. */
const HALF_TYPED: ReadonlySet<string> = new Set([
  'unknown-word',
  'word-out-of-place',
  'number-without-place',
  'unclear-finding',
  'open-quote',
  'bad-header',
]);
/** As many as anyone reads; the rest is near other visits, and the command line lists all. */
const LIMIT = 250;

/** The line that is being typed, and what was already shown when its typing began. */
export interface Typing {
  readonly line: number;
  readonly shown: readonly Diagnostic[];
}
export interface Shown {
  readonly diagnostics: Diagnostic[];
  /** Something new on the line being typed waits until it is left or rests. */
  readonly held: boolean;
}

/** The reports of a note as diagnostics: red flags first, then in the order of the file. */
export function diagnostics(note: Note, near: number, typing?: Typing): Shown {
  const { reports, left } = collectReports(note, near, LIMIT);
  const known = new Set(typing?.shown.flatMap((each) => (each.range.start.line === typing.line ? [key(each)] : [])));
  const shown: Diagnostic[] = [];
  let held = false;
  for (const placed of [...reports].sort(byRank)) {
    const diagnostic = converted(note.uri, placed);
    const waits = diagnostic.range.start.line === typing?.line && mayWait(placed.report) && !known.has(key(diagnostic));
    if (waits) held = true;
    else shown.push(diagnostic);
  }
  if (left > 0) shown.unshift(leftOut(left));
  if (note.settingsProblems.length > 0) shown.unshift(settingsNotUsed(note.settingsProblems));
  return { diagnostics: shown, held };
}

const byRank = (a: PlacedReport, b: PlacedReport): number =>
  Number(isRedFlagReport(b.report)) - Number(isRedFlagReport(a.report));
const key = ({ code, message }: Diagnostic): string => `${code} ${message}`;
const mayWait = ({ severity, code }: Report): boolean =>
  severity === 'missing' || severity === 'style' || (severity !== 'danger' && HALF_TYPED.has(code));

function converted(uri: string, { report, firstLine }: PlacedReport): Diagnostic {
  const related = report.related.map(({ place, message }) => ({
    location: { uri, range: rangeOf(place, firstLine) },
    message,
  }));
  return {
    range: rangeOf(report.place, firstLine),
    severity: SEVERITIES[report.severity],
    code: report.code,
    source: 'forefoot',
    message: report.message,
    ...(related.length > 0 ? { relatedInformation: related } : {}),
  };
}

const rangeOf = ({ line, start, end }: Report['place'], firstLine: number): Range =>
  spanOn(firstLine + line, start, end);

const settingsNotUsed = ([first = '', ...more]: readonly string[]): Diagnostic => ({
  range: spanOn(0, 0, 0),
  severity: SEVERITY.warning,
  code: 'settings-not-used',
  source: 'forefoot',
  message: `${first}${more.length > 0 ? ` (and ${more.length} more)` : ''}. The built-in settings hold until it is mended.`,
});

const leftOut = (left: number): Diagnostic => ({
  range: spanOn(0, 0, 0),
  severity: SEVERITY.information,
  code: 'more-reports',
  source: 'forefoot',
  message: `${left} more reports stand far from here and are not shown. The command line lists all: forefoot check.`,
});
