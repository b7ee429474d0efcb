import { readLine } from '../../../grammar/read-line.ts';
import type { FindingNode, SectionHeading, SlotNode, SubjectNode } from '../../../grammar/syntax.ts';
import type { Value } from '../../../grammar/values.ts';

/*
 * How a finding is written in these tables: `[section/][side ][subject ][status ]finding[ slot=value ...]`.
 * - `unclear: drawer`: a finding that may not be computed with; only its name follows, for its details say nothing.
 * - The section is left out in the exam, the status where it is `present`; `absent` is written `no`.
 * - The subject: `2`, `2,3` rays; `MT 2` a metatarsal; `web 2`; `others`. A slot that is unclear alone: `grade=?2`.
 * - A drawer grade with a scale: `2(0-3)`. Findings of a line are joined with `; `, problem codes with a space.
 */
const bounds = { about: '~', over: '>', under: '<' } as const;
const range = ({ low, high }: { low: number; high: number }): string => (low === high ? `${low}` : `${low}-${high}`);

function valueText(value: Value): string {
  switch (value.is) {
    case 'word':
      return value.words.join(',');
    case 'number':
      return `${value.bound ? bounds[value.bound] : ''}${range(value)}${value.wrongUnit ?? value.unit}`;
    case 'fraction':
      return `${value.part}/${value.whole}`;
    case 'drawer grade':
      return `${range(value)}${value.scale ? `(${value.scale})` : ''}`;
    case 'stage':
    case 'anatomical grade':
    case 'pulse grade':
      return range(value);
    case 'duration':
      return `${value.bound ? bounds[value.bound] : ''}${range(value)}${value.unit}`;
    case 'date':
      return [value.date.year, value.date.month, value.date.day].filter((part) => part !== undefined).join('-');
    case 'ago':
      return `${range(value.ago)}${value.ago.unit}-ago`;
    case 'clock':
      return `${value.hour}:${value.minute}`;
    case 'pair':
      return `${value.web}-${value.web + 1}`;
  }
}

const slotText = ([name, slot]: [string, SlotNode]): string =>
  `${name}=${slot.causes.length > 0 ? '?' : ''}${valueText(slot.value)}`;

function subjectText(subject: SubjectNode | undefined): string[] {
  if (!subject) return [];
  if (subject.at === 'others') return ['others'];
  if (subject.at === 'webs') return [`web ${subject.webs.join(',')}`];
  return [`${subject.part === 'metatarsal' ? 'MT ' : ''}${subject.rays.join(',')}`];
}

export function findingText(finding: FindingNode): string {
  if (finding.causes.length > 0) return `unclear: ${finding.id}`;
  const section = finding.section === 'exam' ? '' : `${finding.section}/`;
  const status = finding.status === 'present' ? [] : [finding.status === 'absent' ? 'no' : finding.status];
  const side = finding.side ?? finding.subject?.side;
  const slots = Object.entries(finding.slots).map(slotText);
  const quotes = finding.quotes.map(({ text }) => JSON.stringify(text));
  return (
    section +
    [...(side ? [side] : []), ...subjectText(finding.subject), ...status, finding.id, ...slots, ...quotes].join(' ')
  );
}

/** `under` is the section heading above the line. */
export function findingsOf(text: string, under?: SectionHeading): FindingNode[] {
  return readLine(text, under).statements.flatMap((statement) => statement.findings);
}

export const clearOf = (text: string): string[] =>
  findingsOf(text)
    .filter(({ causes }) => causes.length === 0)
    .map(findingText);

export function readingOf(text: string, under?: SectionHeading): { findings: string; problems: string } {
  const { problems } = readLine(text, under);
  return {
    findings: findingsOf(text, under).map(findingText).join('; '),
    problems: problems.map(({ code }) => code).join(' '),
  };
}
