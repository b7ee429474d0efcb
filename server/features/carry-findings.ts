import type { CodeAction } from 'vscode-languageserver-types';
import { entryOf } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';
import type { FindingNode, LineSyntax, StatementNode } from '../../grammar/syntax.ts';
import { dayFrom, isoOf } from '../clinical/dates.ts';
import { type AnyFact, subjectKey, type VisitFacts } from '../clinical/facts.ts';
import { isolatedFinding } from '../clinical/isolated-finding.ts';
import { readVisitFacts } from '../clinical/read-facts.ts';
import type { Range } from '../workspace/blocks.ts';
import type { Note, Visit } from '../workspace/note.ts';
import { textEdits } from '../workspace/text-edits.ts';
import { linesOf } from './code-actions.ts';

/** Offers to carry the exam findings of the visit before into this one: one a line, none of them confirmed. */
export function carryFindings(note: Note, { start }: Range): CodeAction[] {
  const visit = note.visitAt(start.line);
  const before = visit && note.visit(visit.index - 1);
  const date = before?.analysis.facts.date;
  if (!visit || !before || !date || visit.analysis.facts.lifecycle?.parts.some(({ signature }) => signature)) return [];
  const known = new Set(visit.analysis.facts.facts.map(keyOf));
  const written = new Set(visit.analysis.facts.lifecycle?.carried.map(({ text }) => text));
  const lines = findingsOf(before).flatMap((found) => {
    const text = found.facts.some((fact) => known.has(keyOf(fact))) ? undefined : textFor(note, visit, found);
    return text && !written.has(text) ? [`carried  ${isoOf(dayFrom(date))} ${text}`] : [];
  });
  if (lines.length === 0) return [];
  const edit = { edit: 'insert line', afterLine: 0, text: lines.join(note.lineEnd) } as const;
  const changes = { [note.uri]: textEdits([edit], visit.firstLine, linesOf(note)) };
  return [
    { title: 'Carry findings from the last visit, to be confirmed', kind: 'source.carryFindings', edit: { changes } },
  ];
}

const keyOf = (fact: AnyFact): string => `${fact.section} ${subjectKey(fact.subject, fact.side)} ${fact.finding}`;

interface Found {
  readonly line: LineSyntax;
  readonly statement: StatementNode;
  readonly node: FindingNode;
  readonly facts: readonly AnyFact[];
}

/** What was seen and felt in a visit, as it held at its end; no stage, no plan, nothing that a panel stood for. */
function findingsOf({ lines, analysis: { facts } }: Visit): Found[] {
  const groups = new Map<string, AnyFact[]>();
  for (const fact of facts.facts)
    if (isCarried(fact)) groups.set(fact.statement, [...(groups.get(fact.statement) ?? []), fact]);
  return [...groups].flatMap(([id, some]): Found[] => {
    const [at = 0, index = 0, finding = 0] = id.split(':').map(Number);
    const line = lines[at];
    const statement = line?.statements[index];
    const node = statement?.findings[finding];
    return line && statement && node ? [{ line, statement, node, facts: some }] : [];
  });
}

const isCarried = ({ clarity, origin, section, finding }: AnyFact): boolean =>
  clarity === 'clear' &&
  origin.kind === 'stated' &&
  (section === 'exam' || section === 'stand') &&
  finding !== 'stage' &&
  ['sign', 'measure'].includes(entryOf(finding).kind);

/** The finding in words that say the same in the new visit, with its side where the visit line alone does not give it. */
function textFor(note: Note, { lines }: Visit, { line, statement, node, facts }: Found): string | undefined {
  const alone = isolatedFinding(line, statement, node);
  const [opening] = lines;
  if (!alone || !opening) return undefined;
  const [side] = facts.flatMap((fact) => fact.side ?? []);
  const texts = side ? [alone, `${side} ${alone}`] : [alone];
  return texts.find(
    (text) => said(readVisitFacts([opening, readLine(text)], note.header, note.settings)) === saidBy(facts),
  );
}

const said = ({ facts, verbatim }: VisitFacts): string => (verbatim.length > 0 ? '' : saidBy(facts));
const saidBy = (facts: readonly AnyFact[]): string =>
  JSON.stringify(
    facts.map(({ finding, status, section, subject, side, values, quotes, clarity }) => [
      finding,
      status,
      section,
      subject,
      side,
      values,
      quotes,
      clarity,
    ]),
  );
