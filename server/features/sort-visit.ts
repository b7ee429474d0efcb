import type { CodeAction } from 'vscode-languageserver-types';
import { readVisitFacts } from '../clinical/read-facts.ts';
import type { Range } from '../workspace/blocks.ts';
import type { Note } from '../workspace/note.ts';
import { sortedVisit } from '../workspace/sort-visit.ts';
import { spanOn } from '../workspace/text-edits.ts';

/** Offers to put the lines of the visit in which a range starts into the order of the exam, where that changes nothing that is said. */
export function sortVisit(note: Note, { start }: Range): CodeAction[] {
  const visit = note.visitAt(start.line);
  if (!visit) return [];
  const sorted = sortedVisit(visit.lines, (lines) => readVisitFacts(lines, note.header, note.settings));
  if (!sorted) return [];
  const first = sorted.findIndex((line, index) => line !== visit.lines[index]);
  const last = sorted.findLastIndex((line, index) => line !== visit.lines[index]);
  const newText = sorted
    .slice(first, last + 1)
    .map(({ text }) => text)
    .join(note.lineEnd);
  const end = visit.lines[last]?.text.length ?? 0;
  const range = {
    start: spanOn(visit.firstLine + first, 0, 0).start,
    end: spanOn(visit.firstLine + last, end, end).end,
  };
  const edit = { changes: { [note.uri]: [{ range, newText }] } };
  return [{ title: 'Sort this visit into exam sequence', kind: 'source.sortVisit', edit }];
}
