import { SECTION_WORD } from '../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../grammar/lexicon/entry.ts';
import { subjectText } from '../../../grammar/reader/read-subjects.ts';
import type { FindingNode, LineSyntax, SubjectNode, VerbatimNode } from '../../../grammar/syntax.ts';
import type { Side, Span } from '../../../grammar/values.ts';

/** The section, side and subject that words of a line stand under. */
interface Under {
  readonly section: Section;
  readonly side: Side | 'both' | undefined;
  readonly subject: SubjectNode | undefined;
}

type Node = FindingNode | VerbatimNode;
const startOf = (node: Node): number => ('word' in node ? node.word.start : node.start);

/** What the words at a place stand under: those that were kept as typed, else a finding; `undefined` where they are neither. */
function underAt({ statements }: LineSyntax, at: number): Under | undefined {
  for (const { section, verbatim, findings } of statements) {
    const holds = (node: Node) => node.start <= at && at < node.end;
    const unread = verbatim.find(holds);
    const node = unread ?? findings.find(holds);
    if (node) return { section, side: node.side, subject: node.subject ?? (unread && subjectWith(unread, findings)) };
  }
  return undefined;
}

/** Words that were not read are told with what is unclear of a subject before them, up to a break. */
const subjectWith = ({ segment, start }: VerbatimNode, findings: readonly FindingNode[]): SubjectNode | undefined =>
  findings.findLast(
    ({ segment: own, causes, subject }) => own === segment && causes.length > 0 && subject && subject.end <= start,
  )?.subject;

/** Where a line first says something, read or not. */
function firstSaid({ statements }: LineSyntax): number | undefined {
  const starts = statements.flatMap(({ findings, verbatim }) => [...findings, ...verbatim].map(startOf));
  return starts.length === 0 ? undefined : Math.min(...starts);
}

/**
 * What has to be written before a stretch of a line, so that its words stand alone under the section, side and subject under which they were
 * said; nothing where they do so already. `alone` is the stretch as a line of its own.
 */
export function placeBefore(line: LineSyntax, alone: LineSyntax, { start }: Span): string {
  const first = firstSaid(alone);
  const was = first === undefined ? undefined : underAt(line, start + first);
  if (!was || first === undefined) return '';
  const isBefore = was.subject && was.subject.start < start;
  return written({ ...was, subject: isBefore ? was.subject : undefined }, underAt(alone, first));
}

/** The same for words that stand under what is proposed for them, where nothing else tells where they were said. */
export function placeOf(proposal: LineSyntax, alone: LineSyntax): string {
  const proposed = firstSaid(proposal);
  const first = firstSaid(alone);
  const was = proposed === undefined ? undefined : underAt(proposal, proposed);
  return was ? written(was, first === undefined ? undefined : underAt(alone, first)) : '';
}

/** The words that name a place, where others do not stand under it already. */
function written(was: Under, is: Under | undefined): string {
  const side = was.side === 'both' || was.side === is?.side ? undefined : was.side;
  const subject = textOf(was.subject) === textOf(is?.subject) ? undefined : textOf(was.subject, was.side !== undefined);
  const section = was.section === (is?.section ?? 'exam') || was.section === 'exam' ? undefined : was.section;
  return [section && SECTION_WORD[section], side, subject].map((part) => (part ? `${part} ` : '')).join('');
}
const textOf = (subject: SubjectNode | undefined, sided = true): string | undefined =>
  subject && subjectText(sided ? ({ ...subject, side: undefined } as SubjectNode) : subject);

/** A stretch of a line as a line of its own, with what was written before it. */
export interface Alone {
  readonly line: LineSyntax;
  /** Where the stretch starts in the line that it is of. */
  readonly start: number;
  /** How many characters were written before it. */
  readonly before: number;
}
/** Does every unread word of a stretch stand under what it stood under before? */
export function keepsPlaces(line: LineSyntax, { line: alone, start, before }: Alone): boolean {
  return alone.roles.every((role) => {
    if (role.kind !== 'reported' || role.start < before) return true;
    const was = underAt(line, start + role.start - before);
    const is = underAt(alone, role.start);
    return !was || !is || key(was) === key(is);
  });
}
const key = ({ section, side, subject }: Under): string => `${section} ${side} ${textOf(subject)}`;
