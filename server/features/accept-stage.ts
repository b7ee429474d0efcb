import type { CodeAction } from 'vscode-languageserver-types';
import { readLine } from '../../grammar/read-line.ts';
import { ordinalOf } from '../../grammar/values.ts';
import type { RayAnalysis, SyntaxEdit } from '../clinical/analysis.ts';
import { ask } from '../clinical/answers.ts';
import { isClosed, touchesSigned } from '../clinical/lifecycle.ts';
import { readVisitFacts } from '../clinical/read-facts.ts';
import type { Range } from '../workspace/blocks.ts';
import { formatLine } from '../workspace/format-line.ts';
import type { Note, Visit } from '../workspace/note.ts';
import { textEdits } from '../workspace/text-edits.ts';
import { linesOf } from './code-actions.ts';
import { rayName } from './describe.ts';
import { raysOn } from './word-at.ts';

/** Offers to write a computed stage into the visit as the clinician's own statement; nothing else makes it one. */
export function acceptances(note: Note, range: Range): CodeAction[] {
  const visit = note.visitAt(range.start.line);
  if (!visit) return [];
  return raysOn(visit.analysis.rays, note.line(range.start.line)).flatMap((ray) => acceptance(note, visit, ray));
}

function acceptance(note: Note, visit: Visit, ray: RayAnalysis): CodeAction[] {
  const { outcome, stated } = ray;
  if (outcome.is !== 'staged' || (stated?.low === outcome.stage && stated.high === outcome.stage)) return [];
  const edit = stated ? replacing(visit, ray, stated.place, outcome.stage) : inserting(note, visit, ray, outcome.stage);
  if (!edit || isClosed(visit.analysis.facts) || touchesSigned(visit.analysis.facts, [edit])) return [];
  const title = stated
    ? `Replace the stated stage: accept stage ${outcome.stage}, ${rayName(ray)} (review)`
    : `Accept stage ${outcome.stage}, ${rayName(ray)}, as my statement (review)`;
  return [
    { title, kind: 'quickfix', edit: { changes: { [note.uri]: textEdits([edit], visit.firstLine, linesOf(note)) } } },
  ];
}

const MARK = '// accepted from the computed stage';

/** Stands before the plan, or at the end of the visit. The side is written where the visit line alone does not give it. */
function inserting(note: Note, visit: Visit, ray: RayAnalysis, stage: number): SyntaxEdit | undefined {
  const { lines } = visit;
  const from = visit.analysis.facts.lifecycle?.parts.at(-1)?.from ?? 0;
  const plan = lines.findIndex(({ statements }, at) => at > from && statements[0]?.section === 'plan');
  const afterLine = (plan > 0 ? plan : lines.findLastIndex(({ kind }) => kind !== 'blank') + 1) - 1;
  for (const side of ['', `${ray.side} `]) {
    const statement = formatLine(readLine(`stage ${side}${ordinalOf(ray.ray)} ${stage}`));
    const text = `${statement} ${MARK}`;
    const after = [...lines.slice(0, afterLine + 1), readLine(text), ...lines.slice(afterLine + 1)];
    if (saysStage(note, after, ray, stage)) return { edit: 'insert line', afterLine, text };
  }
  return undefined;
}

/** Only a stage that is stated of this one ray is replaced. */
function replacing(
  { lines }: Visit,
  { ray, side }: RayAnalysis,
  place: NonNullable<RayAnalysis['stated']>['place'],
  stage: number,
): SyntaxEdit | undefined {
  const node = lines[place.line]?.statements
    .flatMap(({ findings }) => findings)
    .find(({ id, start, end }) => id === 'stage' && start < place.end && place.start < end);
  const value = node?.slots.stage;
  const { subject } = node ?? {};
  const alone =
    subject === undefined || (subject.at === 'rays' && subject.rays.length === 1 && subject.rays[0] === ray);
  if (!value || !alone || (subject?.side !== undefined && subject.side !== side)) return undefined;
  return { edit: 'replace', place: { line: place.line, start: value.start, end: value.end }, text: String(stage) };
}

/** Is the edited visit read as meant? */
function saysStage(note: Note, lines: Visit['lines'], { ray, side }: RayAnalysis, stage: number): boolean {
  const { facts } = readVisitFacts(lines, note.header, note.settings);
  const answer = ask(facts, 'stage', { side, ray });
  if (answer.is !== 'stated' || answer.fact.side !== side) return false;
  const { stage: value } = answer.fact.values;
  return value?.low === stage && value.high === stage;
}
