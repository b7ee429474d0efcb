import type { Report } from '../clinical/analysis.ts';
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
 * The reports of a note: every danger, then those nearest to a line, up to a limit. An editor shows a few hundred at most,
 * and what is sent on each keystroke must not grow with the file.
 */
export function collectReports(note: Note, near: number, limit: number): Collected {
  const visits: number[] = [];
  let total = 0;
  for (let index = 0; index < note.blockCount; index++) {
    const { length } = note.reports(index);
    if (length > 0) visits.push(index);
    total += length;
  }
  const placed = (index: number, chosen: (report: Report) => boolean): PlacedReport[] => {
    const firstLine = note.firstLine(index);
    return note.reports(index).flatMap((report) => (chosen(report) ? [{ report, firstLine }] : []));
  };
  if (total <= limit) return { reports: visits.flatMap((index) => placed(index, () => true)), left: 0 };
  const reports = visits
    .filter((index) => note.dangers(index) > 0)
    .flatMap((index) => placed(index, ({ severity }) => severity === 'danger'))
    .slice(0, limit);
  for (const index of outward(visits, note.indexAt(near))) {
    if (reports.length >= limit) break;
    reports.push(...placed(index, ({ severity }) => severity !== 'danger').slice(0, limit - reports.length));
  }
  return { reports: reports.sort(byPlace), left: total - reports.length };
}

const lineOf = ({ report, firstLine }: PlacedReport): number => firstLine + report.place.line;
const byPlace = (a: PlacedReport, b: PlacedReport): number =>
  lineOf(a) - lineOf(b) || a.report.place.start - b.report.place.start;

/** Sorted numbers in the order of their distance from a centre. */
function* outward(sorted: readonly number[], centre: number): Iterable<number> {
  let above = sorted.findIndex((each) => each >= centre);
  if (above < 0) above = sorted.length;
  let below = above - 1;
  while (below >= 0 || above < sorted.length) {
    const [low, high] = [sorted[below], sorted[above]];
    if (high !== undefined && (low === undefined || high - centre <= centre - low)) {
      yield high;
      above++;
    } else if (low !== undefined) {
      yield low;
      below--;
    }
  }
}
