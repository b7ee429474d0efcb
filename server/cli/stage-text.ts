import type { ArgumentPart } from '../clinical/argument/stage-argument.ts';
import { CAUTIONS } from '../clinical/cautions.ts';
import { changeWords } from '../clinical/change.ts';
import { hasUnreadRedFlag } from '../clinical/reading-reports.ts';
import { labelled, markText, wrapped } from './layout.ts';
import { scaleRows } from './scales-text.ts';
import { isoDate, type Shown, type StageRecord, stageRecords, type Visit } from './stage-records.ts';

const ORDINAL = ['', '1st', '2nd', '3rd', '4th', '5th'] as const;
const RAY = { first: ' '.repeat(4), rest: ' '.repeat(6) };

/** What `forefoot stage` shows people of one note: the newest visit first, in it the urgent rays. */
export function noteText(
  file: string,
  visits: readonly Visit[],
  width: number,
  shownOf: (visit: Visit) => Shown,
): string {
  const blocks = newestFirst(visits).flatMap((visit) =>
    visitText(visit, stageRecords(file, visit, shownOf(visit)), width),
  );
  return `${file}\n${blocks.length > 0 ? blocks.join('\n') : '  no lesser ray is examined in this note\n'}\n`;
}

/** By date; a visit without a date comes after the dated ones. */
export function newestFirst(visits: readonly Visit[]): Visit[] {
  const key = ({ analysis: { facts } }: Visit): number =>
    facts.date ? facts.date.year * 10_000 + facts.date.month * 100 + facts.date.day : 0;
  return [...visits].reverse().sort((a, b) => key(b) - key(a));
}

/** The rays of a visit and each caution once; nothing for a visit that examines none. */
function visitText({ analysis: { facts } }: Visit, records: readonly StageRecord[], width: number): string[] {
  const unread = hasUnreadRedFlag(facts)
    ? [labelled('RED FLAG?', CAUTIONS['unread red flag'], { left: 4, width })]
    : [];
  if (records.length + unread.length === 0) return [];
  const flags = records.filter(({ status }) => status === 'redFlag');
  const rays = records.filter(({ status }) => status !== 'redFlag');
  const sorted = rays.sort((a, b) => Number(b.next.urgent) - Number(a.next.urgent));
  const heading = `  ${[isoDate(facts.date) ?? 'undated', facts.kind].filter(Boolean).join(' ')}`;
  const cautions = [...new Set([...flags, ...sorted].flatMap(({ next }) => next.cautions))];
  const overdue = (records[0]?.overdue ?? []).map((each, at) =>
    labelled(at === 0 ? 'overdue' : '', `${each.text} [${markText(each)}]`, { left: 4, width }),
  );
  const others = cautions.filter((caution) => caution !== CAUTIONS['unread red flag']);
  const rows = others.map((caution, at) => labelled(at === 0 ? 'cautions' : '', caution, { left: 4, width }));
  return [
    `${[heading, ...flags.map((flag) => flagText(flag, width)), ...unread, ...overdue, ...raysText(sorted, width), ...rows].join('\n')}\n`,
  ];
}

/** A red flag that no examined ray leads with: what it is, from which words, and what to do first. */
function flagText(record: StageRecord, width: number): string {
  const { next, why } = record;
  const row = (label: string, text: string) => labelled(label, text, { left: 6, width });
  const heading = wrapped(`RED FLAG: ${why} [${markText(next)}]`, width, RAY);
  return [
    heading,
    row('URGENT', next.step),
    row('decided by', evidenceText(record, 'decides')),
    row('review', next.review),
  ].join('\n');
}

/** Rays of one side of which the same is said share its rows. */
function raysText(records: readonly StageRecord[], width: number): string[] {
  const groups = new Map<string, { record: StageRecord; names: string[] }>();
  for (const record of records) {
    const key = JSON.stringify([record.side, outcomeText(record), rowsText(record, width)]);
    const group = groups.get(key) ?? { record, names: [] };
    groups.set(key, { record, names: [...group.names, ORDINAL[record.ray ?? 0] ?? ''] });
  }
  return [...groups.values()].map(({ record, names }) => {
    const outcome = `${record.side} ${names.join(', ')}: ${outcomeText(record)} [${markText(record)}]`;
    return [wrapped(outcome, width, RAY), ...rowsText(record, width)].join('\n');
  });
}

function rowsText(record: StageRecord, width: number): string[] {
  const { next, missing, assumptions, plate } = record;
  const row = (label: string, text: string): string[] =>
    text === '' ? [] : [labelled(label, text, { left: 6, width })];
  const scales = scaleRows(record.scales ?? [], record.assumptions, width);
  if (record.argument)
    return [...argumentRows(record.argument, width), ...row('plate seen', plateText(plate)), ...scales];
  return [
    ...row(next.urgent ? 'URGENT' : 'next', `${next.step} [${markText(next)}]`),
    ...row('why', next.why),
    ...row('RED FLAG', record.redFlags.slice(1).join('; ')),
    ...row('review', next.review),
    ...row('change', record.change ? changeWords(record.change) : ''),
    ...row('decided by', evidenceText(record, 'decides')),
    ...row('supported', evidenceText(record, 'supports')),
    ...row('questioned', evidenceText(record, 'questions')),
    ...row('described', evidenceText(record, 'describes')),
    ...row('missing', missing.join('; ')),
    ...row('assumed', assumptions.join('; ')),
    ...row('plate seen', plateText(plate)),
    ...scales,
  ];
}

const plateText = (plate: StageRecord['plate']): string =>
  plate
    .map(({ says, line, source, mark }) => {
      const known = source && mark ? ` [${markText({ source, mark })}]` : '';
      return `${says} (line ${line})${known}`;
    })
    .join('; ');

/** Which parts of an argument are read together. */
const PARAGRAPH: Readonly<Record<ArgumentPart['about'], number>> = {
  'red flag': 0,
  outcome: 0,
  gates: 1,
  assumed: 1,
  decides: 2,
  weighs: 2,
  missing: 3,
  next: 4,
};

/** Paragraphs to be read aloud; a source stands behind the last sentence that rests on it. */
function argumentRows(parts: NonNullable<StageRecord['argument']>, width: number): string[] {
  const paragraphs: string[] = [];
  for (const [at, part] of parts.entries()) {
    const following = parts[at + 1];
    const together = following !== undefined && PARAGRAPH[following.about] === PARAGRAPH[part.about];
    const same = together && markText(following) === markText(part);
    const text = same ? part.text : `${part.text} [${markText(part)}]`;
    const before = parts[at - 1];
    const joined = before !== undefined && PARAGRAPH[before.about] === PARAGRAPH[part.about];
    paragraphs.push(joined ? `${paragraphs.pop()} ${text}` : text);
  }
  return paragraphs.map((text) => wrapped(`      ${text}`, width, { first: '', rest: '      ' }));
}

/** The clinician's own stage stands beside the computed one. */
function outcomeText({ status, stageLow, stageHigh, why, stated, labels }: StageRecord): string {
  const computed = {
    redFlag: `red flag: ${why}`,
    staged: `computed stage ${stageLow}`,
    span: `computed stage ${stageLow} to ${stageHigh}`,
    cannot: `cannot be staged: ${why}`,
    notApplicable: `not staged: ${why}`,
  }[status];
  return [computed, ...labels, ...(stated === null ? [] : [`stated ${stated}`])].join(', ');
}

/** Reasons that the words as typed don't tell. */
const SAID_BESIDE = /^(the other side|tested under)|after an osteotomy|by design|fused/;

/** The words as typed say what was found; only a doubt needs its reason. */
const evidenceText = ({ evidence }: StageRecord, role: StageRecord['evidence'][number]['role']): string =>
  evidence
    .filter((each) => each.role === role)
    .map(
      ({ words, why, line }) =>
        `${words} (line ${line})${role === 'questions' ? `, but ${why}` : SAID_BESIDE.test(why) ? `: ${why}` : ''}`,
    )
    .join('; ');
