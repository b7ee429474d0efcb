import type { Report } from '../clinical/analysis.ts';
import { isNeverLeftOut } from '../clinical/red-flag-reports.ts';
import type { Note } from './note.ts';

export interface PlacedReport {
  readonly report: Report;
  /** The line of the file from which the report's lines count. */
  readonly firstLine: number;
}
export interface Collected {
  readonly reports: readonly PlacedReport[];
  /** How many are left out to keep the answer small. */
  readonly left: number;
}

/**
 * The reports of a note: every danger and unread red flag, then those nearest to a line, up to a limit. An editor shows a few hundred at most,
 * and what is sent on each keystroke must not grow with the file.
 */
export function collectReports(note: Note, near: number, limit: number): Collected {
  const { reports: counts, dangers } = note.counts;
  const total = sum(counts);
  const placed = (index: number): PlacedReport[] => {
    const firstLine = note.firstLine(index);
    return note.reports(index).map((report) => ({ report, firstLine }));
  };
  if (total <= limit) return { reports: indexesOf(counts).flatMap(placed), left: 0 };
  const isDanger = ({ report }: PlacedReport) => isNeverLeftOut(report);
  const reports = indexesOf(dangers).flatMap((index) => placed(index).filter(isDanger));
  for (const index of outward(note.indexAt(near), counts.length)) {
    if (reports.length >= limit) break;
    if (counts[index] === dangers[index]) continue;
    const rest = placed(index).filter((each) => !isDanger(each));
    reports.push(...rest.slice(0, limit - reports.length));
  }
  return { reports: reports.sort(byPlace), left: total - reports.length };
}

function sum(counts: readonly number[]): number {
  let total = 0;
  for (const count of counts) total += count;
  return total;
}

function indexesOf(counts: readonly number[]): number[] {
  const indexes: number[] = [];
  // A walk over every visit at each keystroke: pairs of index and count would be as many records.
  for (let index = 0; index < counts.length; index++) if (counts[index] !== 0) indexes.push(index);
  return indexes;
}

const lineOf = ({ report, firstLine }: PlacedReport): number => firstLine + report.place.line;
const byPlace = (a: PlacedReport, b: PlacedReport): number =>
  lineOf(a) - lineOf(b) || a.report.place.start - b.report.place.start;

/** The indexes below a count in the order of their distance from a centre. */
function* outward(centre: number, count: number): Iterable<number> {
  if (centre < count) yield centre;
  for (let step = 1; step < Math.max(count - centre, centre + 1); step++) {
    if (centre + step < count) yield centre + step;
    if (centre - step >= 0) yield centre - step;
  }
}
