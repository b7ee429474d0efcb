import type { CodeAction } from 'vscode-languageserver-types';
import { readLine } from '../../grammar/read-line.ts';
import { advised } from '../clinical/advise.ts';
import type { AdvisedRay } from '../clinical/analysis.ts';
import { isClosed } from '../clinical/lifecycle.ts';
import { readVisitFacts } from '../clinical/read-facts.ts';
import type { Range } from '../workspace/blocks.ts';
import { formatLine } from '../workspace/format-line.ts';
import type { Note, Visit } from '../workspace/note.ts';
import { textEdits } from '../workspace/text-edits.ts';
import { linesOf } from './code-actions.ts';
import { rayName } from './describe.ts';
import { raysOn } from './word-at.ts';

const MARK = '// accepted from the computed next step';

/** Offers to write a computed next step into the visit as the clinician's own plan, where the step is one that a plan can say. */
export function planAcceptances(note: Note, range: Range): CodeAction[] {
  const visit = note.visitAt(range.start.line);
  if (!visit) return [];
  const { rays } = advised(visit.analysis, note);
  return raysOn(rays, note.line(range.start.line)).flatMap((ray) => acceptance(note, visit, ray));
}

function acceptance(note: Note, visit: Visit, ray: AdvisedRay): CodeAction[] {
  if (!ray.next.plan || visit.analysis.facts.side === 'both' || isClosed(visit.analysis.facts)) return [];
  const text = `${formatLine(readLine(`plan ${ray.next.plan}`))} ${MARK}`;
  const afterLine = visit.lines.findLastIndex(({ kind }) => kind !== 'blank');
  if (!addsOnlyPlans(note, visit, text, afterLine)) return [];
  const edit = { edit: 'insert line', afterLine, text } as const;
  return [
    {
      title: `Accept the next step for ${rayName(ray)} as my plan (review)`,
      kind: 'quickfix',
      edit: { changes: { [note.uri]: textEdits([edit], visit.firstLine, linesOf(note)) } },
    },
  ];
}

/** Is the line read as plans, whole, and is one of them new to the visit? */
function addsOnlyPlans(
  note: Note,
  { lines, analysis: { facts: before } }: Visit,
  text: string,
  afterLine: number,
): boolean {
  const { facts, unclear, verbatim } = readVisitFacts(
    [...lines.slice(0, afterLine + 1), readLine(text), ...lines.slice(afterLine + 1)],
    note.header,
    note.settings,
  );
  const planned = new Set(before.facts.filter(({ section }) => section === 'plan').map(({ finding }) => finding));
  const added = facts.filter(({ origin }) => origin.place.line === afterLine + 1);
  const read = unclear.length === before.unclear.length && verbatim.length === before.verbatim.length;
  return read && added.every(({ section }) => section === 'plan') && added.some(({ finding }) => !planned.has(finding));
}
