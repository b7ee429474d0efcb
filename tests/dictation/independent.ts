import { readdirSync, readFileSync } from 'node:fs';
import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { subjectKey } from '../../server/clinical/facts.ts';
import { confirmed, convertedText, readVisit } from './convert-passage.ts';

/** The record of the passages by a writer who never saw the language: a verdict on every fact that is clear as said, or once converted and confirmed. */
export const RECORD = new URL('./independent/verdicts.json', import.meta.url);
export type Verdict = 'right' | 'wrong' | 'to judge';
export interface Passages {
  /** What the visit line says, which the speaker would have opened: kind and side. */
  readonly visits: Readonly<Record<string, string>>;
  readonly verdicts: Readonly<Record<string, Readonly<Record<string, Verdict>>>>;
}
export const record = JSON.parse(readFileSync(RECORD, 'utf8')) as Passages;

export type Set_ = 'dev' | 'held' | 'third' | 'fourth' | 'fifth' | 'sixth' | 'seventh';
export const filesOf = (set: Set_): string[] => readdirSync(new URL(`./independent/${set}/`, import.meta.url));

const clearFacts = (lines: readonly LineSyntax[]): string[] =>
  readVisit(lines)
    .facts.filter(({ clarity }) => clarity === 'clear')
    .map(({ section, subject, side, finding, status, values }) =>
      `${section} ${subjectKey(subject, side)} ${finding} ${status} ${valuesText(values)}`.trim(),
    );
const valuesText = (values: object): string =>
  Object.entries(values)
    .map(([slot, value]) => `${slot}=${JSON.stringify(value).replaceAll('"', '').slice(1, -1)}`)
    .join(' ');

export interface Told {
  readonly name: string;
  /** Has it spoken or typed breaks? */
  readonly breaks: boolean;
  /** How many facts its speaker meant, one a line. */
  readonly meant: number;
  readonly said: readonly string[];
  readonly confirmed: readonly string[];
}
/** The clear facts of a passage, as it was said and once its conversion is confirmed. */
export function toldIn(set: Set_, file: string): Told {
  const text = readFileSync(new URL(`./independent/${set}/${file}`, import.meta.url), 'utf8');
  const [dictated = '', ...rest] = text.split('\n');
  const visit = `visit 2026-03-09 ${record.visits[file.slice(0, 3)]}`;
  const read = (body: string) => clearFacts([visit, ...body.split('\n')].map((line) => readLine(line)));
  return {
    name: file.slice(0, 3),
    breaks: hasBreaks(dictated),
    meant: rest.filter((line) => line.trim() !== '' && line !== '---').length,
    said: read(dictated),
    confirmed: read(confirmed(convertedText(visit, dictated))),
  };
}
export const hasBreaks = (dictated: string): boolean =>
  /\b(?:comma|full stop|period|semicolon|new line|stop)\b/.test(dictated);
