import { readdirSync, readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Value } from '../../grammar/values.ts';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { AnyFact } from '../../server/clinical/facts.ts';

/**
 * The record of a blind reading: a reader who saw the prose alone, never the note, wrote down every fact that it states
 * (24 November 2026, on the notes of `notes/`; the pain of the third ray in `unread-lines` was added on the 26th, when its line came to be read). None is missing and none is added; what the prose does not say, it can't give back.
 */
interface ReadBack {
  readonly facts: readonly {
    readonly section: string;
    readonly finding: string;
    readonly side: string | null;
    readonly subject: string;
    readonly status: string;
    readonly values: Readonly<Record<string, string>>;
  }[];
}

const bounds = { about: 'about ', over: 'over ', under: 'under ' } as const;
const span = (low: number, high: number): string => (low === high ? `${low}` : `${low}-${high}`);
const two = (n: number): string => `${n}`.padStart(2, '0');

function spelled(value: Value): string {
  switch (value.is) {
    case 'word':
      return [...value.words].sort().join('+');
    case 'number':
      return `${value.bound ? bounds[value.bound] : ''}${span(value.low, value.high)} ${value.unit}`.trim();
    case 'fraction':
      return `${value.part}/${value.whole}`;
    case 'duration':
      return `${value.bound ? bounds[value.bound] : ''}${span(value.low, value.high)} ${value.unit}`;
    case 'date':
      return [value.date.year, value.date.month, value.date.day]
        .filter((n) => n !== undefined)
        .map(two)
        .join('-');
    case 'ago':
      return `${span(value.ago.low, value.ago.high)} ${value.ago.unit} ago`;
    case 'clock':
      return `${value.hour}:${two(value.minute)}`;
    case 'pair':
      return `${value.web}-${value.web + 1}`;
    default:
      return span(value.low, value.high);
  }
}

const key = (
  at: { section: string; finding: string; side: string | null; subject: string; status: string },
  values: [string, string][],
) =>
  [
    at.section,
    at.finding,
    at.side ?? '-',
    at.subject,
    at.status,
    ...values.sort().map(([slot, text]) => `${slot}=${text}`),
  ].join(' | ');

const subjectOf = ({ subject }: AnyFact): string =>
  subject.at === 'ray' ? `ray ${subject.ray}` : subject.at === 'web' ? `web ${subject.web}` : subject.at;

/** What is said of the one foot of a visit, or of the patient with that foot, reads alike. */
const whole = (subject: string): string => (subject === 'foot' || subject === 'patient' ? 'whole' : subject);

function stated(fact: AnyFact): string {
  const values = Object.entries<Value>(fact.values as Record<string, Value>);
  const scale = values.flatMap(([, value]): [string, string][] =>
    value.is === 'drawer grade' && value.scale ? [['scale', value.scale]] : [],
  );
  const spelledValues = values
    .filter(([slot]) => slot !== 'scale')
    .map(([slot, value]): [string, string] => [slot, spelled(value)]);
  const subject = whole(subjectOf(fact));
  const side = subject === 'whole' ? null : (fact.side ?? null);
  return key({ ...fact, subject, side }, [...spelledValues, ...scale]);
}

function readBack(fact: ReadBack['facts'][number]): string {
  const values = Object.entries(fact.values).map(([slot, text]): [string, string] => [
    slot,
    text.includes('+') ? text.split('+').sort().join('+') : text,
  ]);
  const subject = whole(fact.subject);
  return key({ ...fact, subject, side: subject === 'whole' ? null : fact.side }, values);
}

/** Triggers that the prose joins in one sentence are statements of their own. */
const apart = (fact: ReadBack['facts'][number]): ReadBack['facts'] =>
  fact.finding === 'trigger' && fact.values.what
    ? fact.values.what.split('+').map((what) => ({ ...fact, values: { ...fact.values, what } }))
    : [fact];

const folder = 'tests/documents/read-back';
describe('what a blind reader takes from the prose', () => {
  test.each(readdirSync(folder).filter((name) => name.endsWith('.json')))('%s is what the note states', (name) => {
    const [, note = '', date = ''] = /^(.*)-(\d{4}-\d{2}-\d{2})\.json$/.exec(basename(name)) ?? [];
    const { visits } = analyseNote(readFileSync(`tests/documents/notes/${note}.forefoot`, 'utf8'), '2026-11-01');
    const visit = visits.find(
      ({ analysis: { facts } }) =>
        facts.date && `${facts.date.year}-${two(facts.date.month)}-${two(facts.date.day)}` === date,
    );
    const clear = visit?.analysis.facts.facts.filter(({ clarity }) => clarity === 'clear') ?? [];
    const table = JSON.parse(readFileSync(`${folder}/${name}`, 'utf8')) as ReadBack;
    expect(clear.length).toBeGreaterThan(0);
    expect(table.facts.flatMap(apart).map(readBack).sort()).toEqual(clear.map(stated).sort());
  });
});
