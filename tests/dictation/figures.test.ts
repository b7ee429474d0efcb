import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { confirmed, convertedText } from './convert-passage.ts';
import { filesOf, hasBreaks, record, type Set_, type Told, toldIn } from './independent.ts';
import { type Passage, passagesOf, score } from './passages.ts';

/*
 * How much of what was meant is understood, as it was said and once its conversion is confirmed: the record of every corpus, with and without
 * spoken breaks. All of it has been learnt from by now: how speech fares that nobody has learnt from, only new passages can say.
 */
const FIGURES = new URL('./figures.json', import.meta.url);

interface Share {
  meant: number;
  placed: number;
  wrong: number;
  /** Facts that nobody has judged yet: neither placed nor wrong. */
  unjudged?: number;
}

function ofPassages(passages: readonly Passage[], textOf: (passage: Passage) => string): Share {
  const scores = passages.map((each) => score(each, textOf(each)));
  const placed = scores.reduce((sum, each) => sum + each.placed.length, 0);
  const verbatim = scores.reduce((sum, each) => sum + each.verbatim.length, 0);
  return { meant: placed + verbatim, placed, wrong: scores.reduce((sum, each) => sum + each.wrong.length, 0) };
}
const whole = ({ visit, dictated }: Passage): string => confirmed(convertedText(visit, dictated));

/** A fact of the language may be part of a line of what was meant, or hold two: the count is of facts against lines. */
function ofTold(told: readonly Told[], factsOf: (each: Told) => readonly string[]): Share {
  const verdicts = told.flatMap((each) =>
    [...new Set(factsOf(each))].map((fact) => record.verdicts[each.name]?.[fact]),
  );
  const count = (verdict: string) => verdicts.filter((each) => each === verdict).length;
  const unjudged = count('to judge');
  return {
    meant: told.reduce((sum, each) => sum + each.meant, 0),
    placed: count('right'),
    wrong: count('wrong'),
    ...(unjudged > 0 ? { unjudged } : {}),
  };
}

const parted = <T>(list: readonly T[], broken: (each: T) => boolean, figures: (list: readonly T[]) => unknown) => ({
  'with breaks': figures(list.filter(broken)),
  'without breaks': figures(list.filter((each) => !broken(each))),
});
const corpus = (folder: 'passages' | 'natural' | 'spoken') =>
  parted(
    passagesOf(folder),
    ({ name, dictated }) => (folder === 'passages' ? name.startsWith('breaks') : hasBreaks(dictated)),
    (list) => ({
      'as said': ofPassages(list, ({ dictated }) => dictated),
      'converted and confirmed': ofPassages(list, whole),
    }),
  );
const independent = (set: Set_) =>
  parted(
    filesOf(set).map((file) => toldIn(set, file)),
    ({ breaks }) => breaks,
    (list) => ({
      'as said': ofTold(list, ({ said }) => said),
      'converted and confirmed': ofTold(list, ({ confirmed: facts }) => facts),
    }),
  );

test('the figures are those of the record', () => {
  const figures = {
    'near the language (learnt from)': corpus('passages'),
    'natural (learnt from)': corpus('natural'),
    'spoken (learnt from)': corpus('spoken'),
    'independent dev (learnt from)': independent('dev'),
    'independent held (learnt from since 2026-11-26)': independent('held'),
    'independent third (its wrong facts mended on 2026-11-26)': independent('third'),
    'independent fourth (its wrong facts mended on 2026-11-26)': independent('fourth'),
    'independent fifth (learnt from since 2026-11-26)': independent('fifth'),
    'independent sixth (its wrong facts mended on 2026-11-26)': independent('sixth'),
    'independent seventh (its wrong facts mended on 2026-11-26)': independent('seventh'),
  };
  if (process.env.UPDATE_VERDICTS === '1') writeFileSync(FIGURES, `${JSON.stringify(figures, null, 2)}\n`);
  expect(figures).toEqual(JSON.parse(readFileSync(FIGURES, 'utf8')));
});
