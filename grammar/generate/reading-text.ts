import { entryOf } from '../lexicon/index.ts';
import { readLine } from '../read-line.ts';
import type { FindingNode, SlotNode } from '../syntax.ts';
import type { Duration, PartialDate, Value } from '../values.ts';

/** What the reader makes of an example, in one line of plain words: the reference shows it beside the example. */
export function readingText(line: string): string {
  const { statements, heading } = readLine(line);
  const parts = statements.flatMap(({ findings, verbatim }) => [
    ...findings.map(findingText),
    ...verbatim.filter(({ quote }) => !quote).map(({ text }) => `“${text}” kept as typed`),
  ]);
  return [...(heading ? ['a heading'] : []), ...parts].join('; ');
}

function findingText(finding: FindingNode): string {
  const word = finding.id === 'panel' ? 'normal panel' : entryOf(finding.id).word;
  if (finding.causes.length > 0) return `${word} unclear`;
  const slots = Object.values(finding.slots).map(slotText);
  const said = finding.id === 'panel' || slots.length > 0 ? [] : ['present'];
  const status = finding.status === 'present' ? said : [finding.status === 'avoid' ? 'to be avoided' : finding.status];
  const quotes = finding.quotes.map(({ text }) => `“${text}”`);
  return [...subjectText(finding), word, ...status, ...slots, ...quotes].join(' ');
}

function subjectText({ subject, side }: FindingNode): string[] {
  const sided = side ? [side] : [];
  if (!subject) return sided;
  if (subject.at === 'others') return [...sided, 'other rays'];
  const numbers = subject.at === 'rays' ? subject.rays : subject.webs;
  const name = subject.at === 'rays' ? (subject.part === 'metatarsal' ? 'metatarsal' : 'ray') : 'web';
  return [...sided, `${name}${numbers.length > 1 ? 's' : ''} ${numbers.join(', ')}:`];
}

const slotText = ({ value, causes }: SlotNode): string =>
  causes.length > 0 ? `(${valueText(value)} unclear)` : valueText(value);

const SIGNS = { about: '~', over: '>', under: '<' } as const;
const range = (low: number, high: number): string => (low === high ? String(low) : `${low}-${high}`);
const length = ({ low, high, unit, bound }: Duration): string =>
  `${bound ? SIGNS[bound] : ''}${range(low, high)} ${unit}`;
const dateText = ({ year, month, day }: PartialDate): string =>
  [year, month, day].flatMap((part) => (part === undefined ? [] : [String(part).padStart(2, '0')])).join('-');

function valueText(value: Value): string {
  switch (value.is) {
    case 'word':
      return (value.said ?? value.words).join(' and ');
    case 'number': {
      const unit = value.wrongUnit ?? value.unit;
      const sign = value.bound ? SIGNS[value.bound] : '';
      return sign + range(value.low, value.high) + (/^\w/.test(unit) ? ` ${unit}` : unit);
    }
    case 'fraction':
      return `${value.part} of ${value.whole}`;
    case 'drawer grade':
    case 'anatomical grade':
    case 'pulse grade':
      return `grade ${range(value.low, value.high)}`;
    case 'stage':
      return range(value.low, value.high);
    case 'duration':
      return length(value);
    case 'date':
      return dateText(value.date);
    case 'ago':
      return `${length(value.ago)} before the visit`;
    case 'clock':
      return `${value.hour}:${String(value.minute).padStart(2, '0')}`;
    case 'pair':
      return `${value.web}-${value.web + 1}`;
  }
}
