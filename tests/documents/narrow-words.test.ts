import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import { textOf } from '../../server/documents/sentence.ts';
import { formatLine } from '../../server/workspace/format-line.ts';
import { filedSentences, writeNote } from './read-note.ts';

/** The filed prose of one line. */
const prose = (line: string): string =>
  writeNote(['scales drawer 0-4', 'visit 2026-03-09 first right', line].join('\n'))
    .flatMap(({ note }) => filedSentences(note))
    .filter(({ runs }) => runs.some(({ from }) => from.length > 0))
    .map(textOf)
    .join(' ');
const formatted = (line: string): string => formatLine(readLine(line));

/** Lines whose words are narrower than a finding's own, or another thing: what `format` writes, and what the note says (common practice). */
const KEPT: readonly (readonly [line: string, written: string, says: string])[] = [
  ['history ihd', 'history  ihd', 'There was ischaemic heart disease.'],
  ['history ccf', 'history  heart-failure', 'There was heart failure.'],
  ['history no heart disease', 'history  no heart disease', 'There was no heart disease.'],
  ['history thrombophilia', 'history  thrombophilia', 'There was thrombophilia.'],
  ['history previous dvt', 'history  previous dvt', 'There was an earlier deep vein thrombosis.'],
  ['history clopidogrel for tia', 'history  clopidogrel for a tia', 'taken for a TIA'],
  ['history warfarin for mechanical valve', 'history  warfarin for a mechanical heart valve', 'mechanical heart valve'],
  ['history tia', 'history  tia', 'There was a TIA.'],
  ['history doac', 'history  doac', 'a direct oral anticoagulant'],
  ['history prednisolone 5 mg', 'history  prednisolone 5 mg', 'prednisolone'],
  ['history ckd3', 'history  ckd3', 'There was chronic kidney disease stage 3.'],
  ['history ckd stage 3', 'history  ckd stage 3', 'There was chronic kidney disease stage 3.'],
  ['history gi bleed', 'history  gi bleed', 'There was a gastrointestinal bleed.'],
  ['history allergy nickel', 'history  allergy nickel', 'an allergy to nickel'],
  ['history allergic to ibuprofen', 'history  allergy ibuprofen', 'an allergy to ibuprofen'],
  ['history simvastatin', 'history  simvastatin', 'Simvastatin was taken.'],
  ['history hypothyroid', 'history  hypothyroid', 'hypothyroidism'],
  ['tried ibuprofen 400 mg 2 weeks', 'tried    ibuprofen 400 mg 2 weeks', 'Ibuprofen was tried'],
  ['plan naproxen 500 mg bd', 'plan     naproxen 500 mg twice a day', 'Naproxen is planned'],
  ['plan no ibuprofen', 'plan     no ibuprofen', 'Anti-inflammatory medication (ibuprofen) is to be avoided.'],
  ['2nd complication delayed union', '2nd      complication delayed union', 'a complication (delayed union)'],
  ['2nd deep infection', '2nd      deep infection', 'a complication (deep infection)'],
  ['2nd prominent screw', '2nd      prominent screw', 'a complication (prominent screw)'],
  ['complication pulmonary embolism', 'complication pulmonary embolism', 'a complication (pulmonary embolism)'],
];

describe('a narrow word keeps its name', () => {
  test.each(KEPT)('%s', (line, written, says) => {
    expect(formatted(line)).toBe(written);
    expect(prose(line)).toContain(says);
  });
});

describe('what is clinically different is never the same', () => {
  test.each([
    ['history ihd', 'heart failure'],
    ['history thrombophilia', 'clot'],
    ['history clopidogrel for tia', 'stroke'],
    ['2nd complication delayed union', 'nonunion'],
  ])('%s: no %s', (line, other) => {
    expect(prose(line)).not.toContain(other);
  });
});
