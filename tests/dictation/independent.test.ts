import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { subjectKey, type VisitFacts } from '../../server/clinical/facts.ts';
import { readHeaderFacts, readVisitFacts } from '../../server/clinical/read-facts.ts';
import { convertLine } from '../../server/workspace/convert/convert-line.ts';

/*
 * Forty passages as a recogniser prints them, by a writer who never saw the language; each with what its speaker meant, in plain words. The
 * record holds every fact that is clear as it was said or once it was converted, with a verdict against those words.
 */
const RECORD = new URL('./independent/verdicts.json', import.meta.url);
type Verdict = 'right' | 'wrong' | 'to judge';
type Record_ = Readonly<Record<string, Readonly<Record<string, Verdict>>>>;
interface Passages {
  /** What the visit line says, which the speaker would have opened: kind and side. */
  readonly visits: Readonly<Record<string, string>>;
  readonly verdicts: Record_;
}
const record = JSON.parse(readFileSync(RECORD, 'utf8')) as Passages;
const header = readHeaderFacts([readLine('forefoot 1'), readLine('scales drawer 0-4')]);
const read = (lines: readonly LineSyntax[]): VisitFacts => readVisitFacts(lines, header);

const said = (lines: readonly LineSyntax[]): string[] =>
  read(lines)
    .facts.filter(({ clarity }) => clarity === 'clear')
    .map(({ section, subject, side, finding, status, values }) =>
      `${section} ${subjectKey(subject, side)} ${finding} ${status} ${valuesText(values)}`.trim(),
    );
const valuesText = (values: object): string =>
  Object.entries(values)
    .map(([slot, value]) => `${slot}=${JSON.stringify(value).replaceAll('"', '').slice(1, -1)}`)
    .join(' ');

function factsOf(set: 'dev' | 'held', file: string): string[] {
  const [dictated = ''] = readFileSync(new URL(`./independent/${set}/${file}`, import.meta.url), 'utf8').split('\n');
  const visit = readLine(`visit 2026-03-09 ${record.visits[file.slice(0, 3)]}`);
  const line = readLine(dictated);
  const converted = convertLine({ lines: [visit, line], at: 1, read })?.map((text) => readLine(text)) ?? [line];
  return [...new Set([...said([visit, line]), ...said([visit, ...converted])])];
}
const SETS = (['dev', 'held'] as const).flatMap((set) =>
  readdirSync(new URL(`./independent/${set}/`, import.meta.url)).map((file) => [set, file] as const),
);

if (process.env.UPDATE_VERDICTS === '1') {
  const verdicts = SETS.map(([set, file]) => {
    const before = record.verdicts[file.slice(0, 3)] ?? {};
    return [file.slice(0, 3), Object.fromEntries(factsOf(set, file).map((fact) => [fact, before[fact] ?? 'to judge']))];
  });
  writeFileSync(RECORD, `${JSON.stringify({ ...record, verdicts: Object.fromEntries(verdicts) }, null, 2)}\n`);
}

test.each(SETS)('%s/%s: every clear fact was judged, none is wrong, and none that was right is lost', (set, file) => {
  const judged = record.verdicts[file.slice(0, 3)] ?? {};
  expect(factsOf(set, file).sort()).toEqual(Object.keys(judged).sort());
  expect(Object.entries(judged).filter(([, verdict]) => verdict !== 'right')).toEqual([]);
});
