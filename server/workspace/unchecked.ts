import type { VisitAnalysis } from '../clinical/analysis.ts';
import type { Analyser } from './episode.ts';

/**
 * An analysis that goes on where one fails: the visit is reported as unchecked, with the failure, and the other visits are
 * served. Without this a single fault would silence every danger of the note.
 */
export const isolated =
  (analyse: Analyser['visit']): Analyser['visit'] =>
  (lines, before, context) => {
    try {
      return analyse(lines, before, context);
    } catch (error) {
      return unchecked(before, lines[0]?.text.length ?? 0, error);
    }
  };

function unchecked(before: VisitAnalysis['before'], end: number, error: unknown): VisitAnalysis {
  const reason = error instanceof Error ? error.message : String(error);
  return {
    facts: { facts: [], verbatim: [], unclear: [], allowances: [] },
    rays: [],
    redFlags: [],
    reports: [
      {
        code: 'visit-unchecked',
        severity: 'danger',
        place: { line: 0, start: 0, end },
        message: `This visit could not be checked or staged, through a fault of the program (${reason}). Nothing below is verified. Please report it.`,
        related: [],
        fixes: [],
      },
    ],
    hidden: [],
    before,
    after: before,
  };
}
