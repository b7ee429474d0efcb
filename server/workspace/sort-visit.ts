import { EXAM_ORDER } from '../../grammar/lexicon/closed-words.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import type { LineSyntax, StatementNode } from '../../grammar/syntax.ts';
import type { VisitFacts } from '../clinical/facts.ts';
import { eventsBefore, partAt } from '../clinical/lifecycle.ts';

/**
 * The lines of a visit in exam sequence; `undefined` where they are so already, or where another order would say
 * something else. The first line stays. Whole lines move, comments and unread lines with the line that they belong to.
 * Lines under a heading stay under it; none crosses an operation or an event, since before and after it are different
 * findings, nor the line of an addendum. Signed words stay where they were signed.
 */
export function sortedVisit(
  lines: readonly LineSyntax[],
  read: (lines: readonly LineSyntax[]) => VisitFacts,
): readonly LineSyntax[] | undefined {
  const [visit, ...rest] = lines;
  if (!visit || lines.some(stays)) return undefined;
  const end = rest.findLastIndex(({ kind }) => kind === 'statements' || kind === 'header') + 1;
  const sorted = [visit, ...stretches(rest.slice(0, end)).flatMap(sortedStretch), ...rest.slice(end)];
  if (sorted.every((line, index) => line === lines[index])) return undefined;
  return said(read(sorted), sorted) === said(read(lines), lines) ? sorted : undefined;
}

/** Lines between headings and operations, each of which starts a stretch of its own. */
function stretches(lines: readonly LineSyntax[]): LineSyntax[][] {
  const all: LineSyntax[][] = [[]];
  for (const line of lines) {
    if (line.heading || divides(line) || line.statements.some(({ section }) => section === 'operation'))
      all.push([line], []);
    else all.at(-1)?.push(line);
  }
  return all;
}

/** Lines whose place says something of the lines below them. */
const divides = ({ header, examiner }: LineSyntax): boolean =>
  header?.is === 'addendum' || header?.is === 'event' || examiner?.alone === true;
/** Words that stay in their place: signed, under a section heading, or carried as a block that ends where a blank line stands. */
const stays = ({ header, carried, opens }: LineSyntax): boolean =>
  header?.is === 'signed' ||
  opens !== undefined ||
  (carried !== undefined && carried.words.end === carried.words.start);

interface Group {
  readonly lines: LineSyntax[];
  readonly key: readonly number[];
}

function sortedStretch(lines: readonly LineSyntax[]): LineSyntax[] {
  const groups: Group[] = [];
  let leading: LineSyntax[] = [];
  for (const line of lines) {
    const key = keyOf(line);
    if (key) {
      groups.push({ lines: [...leading, line], key });
      leading = [];
    } else if (line.kind === 'statements') {
      // Nobody knows where an unread line belongs, so it stays with what it was written under.
      const above = groups.at(-1);
      if (above) above.lines.push(...leading, line);
      else groups.push({ lines: [...leading, line], key: [-1] });
      leading = [];
    } else leading.push(line);
  }
  const sorted = groups.toSorted((a, b) => compared(a.key, b.key));
  return [...sorted.flatMap((group) => group.lines), ...leading];
}

/** Where a line belongs; nothing for a line without a finding. Allowances come first. */
function keyOf({ header, statements }: LineSyntax): readonly number[] | undefined {
  if (header) return [-1];
  const [first] = statements;
  if (!first) return undefined;
  const [finding] = first.findings;
  if (!finding) return undefined;
  const isStage = first.findings.every(({ id }) => id === 'stage');
  if (isStage) return [EXAM_ORDER.indexOf('plan') - 0.5];
  return [EXAM_ORDER.indexOf(first.section), ...(first.section === 'exam' ? placeInExam(first) : [])];
}

/** Rays from the hallux outward, then webs, then the foot by the sequence of its findings. */
function placeInExam({ findings }: StatementNode): readonly number[] {
  const subject = findings.find((finding) => finding.subject)?.subject;
  if (subject?.at === 'rays') return [0, Math.min(...subject.rays)];
  if (subject?.at === 'others') return [0, 6];
  if (subject?.at === 'webs') return [1, Math.min(...subject.webs)];
  const orders = findings.flatMap(({ id }) => (id === 'panel' ? [] : [entryOf(id).order]));
  return [2, Math.min(...orders)];
}

function compared(a: readonly number[], b: readonly number[]): number {
  for (let index = 0; index < Math.max(a.length, b.length); index++) {
    const difference = (a[index] ?? 0) - (b[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

/** What a visit says, wherever it says it: its facts and its unread words as a set, each with the line that it stands on. */
function said(visit: VisitFacts, lines: readonly LineSyntax[]): string {
  const { facts, verbatim, unclear, allowances, lifecycle } = visit;
  const { passed = [], carried = [] } = lifecycle ?? {};
  const where = ({ line }: { line: number }) => [partAt(visit, line)?.addendum, eventsBefore(visit, line)];
  const lineOf = (place: { line: number }): string => lines[place.line]?.text ?? '';
  const all = [
    ...[...facts, ...passed].map(({ statement: _, origin, ...fact }) => [
      fact,
      origin.kind,
      origin.sideFrom,
      where(origin.place),
      lineOf(origin.place),
    ]),
    ...verbatim.map(({ place, whole, ...text }) => [text, whole.text, where(place), lineOf(place)]),
    ...carried.map(({ text, date }) => [text, date]),
    ...unclear.map(({ place, word: _, ...text }) => [text, lineOf(place)]),
    ...allowances.map(({ code, reason }) => [code, reason]),
  ];
  return all
    .map((each) => JSON.stringify(each))
    .sort()
    .join('\n');
}
