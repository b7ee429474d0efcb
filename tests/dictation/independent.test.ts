import { writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { filesOf, RECORD, record, type Set_, toldIn } from './independent.ts';

const SETS = (['dev', 'held', 'third', 'fourth', 'fifth', 'sixth', 'seventh'] as const).flatMap((set) =>
  filesOf(set).map((file) => [set, file] as const),
);
const factsOf = (set: Set_, file: string): string[] => {
  const { said, confirmed } = toldIn(set, file);
  return [...new Set([...said, ...confirmed])];
};

if (process.env.UPDATE_VERDICTS === '1') {
  const verdicts = SETS.map(([set, file]) => {
    const before = record.verdicts[file.slice(0, 3)] ?? {};
    return [file.slice(0, 3), Object.fromEntries(factsOf(set, file).map((fact) => [fact, before[fact] ?? 'to judge']))];
  });
  writeFileSync(RECORD, `${JSON.stringify({ ...record, verdicts: Object.fromEntries(verdicts) }, null, 2)}\n`);
}

test.each(SETS)('%s/%s: no fact is wrong, none that was right is lost, and every one was judged', (set, file) => {
  const judged = record.verdicts[file.slice(0, 3)] ?? {};
  expect(factsOf(set, file).sort()).toEqual(Object.keys(judged).sort());
  expect(Object.entries(judged).filter(([, verdict]) => verdict !== 'right')).toEqual([]);
});
