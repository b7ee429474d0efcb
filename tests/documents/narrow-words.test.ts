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
  ['trigger fall', 'trigger  fall', 'A fall was given as the trigger.'],
  ['history trigger stubbed', 'history  trigger stubbing', 'Stubbing the toe was given as the trigger'],
  ['history twisting injury', 'history  twisting injury', 'A twisting injury was given as the trigger'],
  ['history trigger hyperextension injury', 'history  trigger hyperextension', 'A hyperextension injury was given'],
  ['pain 2nd shooting', 'pain     2nd shooting', 'shooting pain'],
  ['pain 2nd dull', 'pain     2nd dull', 'dull pain'],
  ['pain 2nd tight shoes', 'pain     2nd tight shoes', 'pain in tight shoes'],
  ['history eased by massage', 'history  eased-by massage', 'eased by massage'],
  ['2nd tingling', '2nd      tingling', 'tingling'],
  ['2nd floating', '2nd      floating', 'The second toe was floating.'],
  ['2nd floating 3 mm', '2nd      floating 3 mm', 'floating, lifted off the ground by 3 mm'],
  ['2nd no floating', '2nd      no floating', 'The second toe was not floating.'],
  ['2nd warm joint', '2nd      warm joint', 'At the second ray there was warmth.'],
  ['2nd thickened', '2nd      thickened', 'At the second ray there was thickening.'],
  ['pitting oedema', 'pitting oedema', 'There was pitting oedema'],
  ['2nd hyperextended', '2nd      hyperextended', 'hyperextended at the MTP joint'],
  ['2nd pip stiff', '2nd      pip stiff', 'stiff at the PIP joint'],
  ['3rd overlaps lateral neighbour', '3rd      overlap lateral neighbour', 'its lateral neighbour'],
  ['bunion moderate', 'bunion   moderate', 'There was a moderate bunion'],
  ['2nd incision dry', '2nd      incision dry', 'a dry incision'],
  ['2nd wound dehisced', '2nd      wound dehisced', 'a dehisced wound'],
  ['2nd dusky', '2nd      dusky', 'The second toe was dusky.'],
  ['2nd swelling severe', '2nd      swelling severe', 'there was severe swelling'],
  ['2nd exquisite tenderness', '2nd      exquisite tenderness', 'there was exquisite tenderness'],
  ['2nd exquisite ttp', '2nd      exquisite tenderness', 'there was exquisite tenderness'],
  ['tried tape 6 weeks daily', 'tried    tape 6 weeks daily', 'worn daily'],
  ['tried physio 6 weeks daily', 'tried    physiotherapy 6 weeks daily', 'for 6 weeks, daily'],
  ['tried tape intermittent', 'tried    tape intermittent', 'worn intermittently'],
  ['tried tape 6 weeks much better', 'tried    tape 6 weeks much better', 'with much improvement'],
  ['imp rheumatoid arthritis', 'imp      rheumatoid arthritis', 'rheumatoid arthritis (stated by the clinician)'],
  ['imp 2nd capsulitis', 'imp      2nd capsulitis', 'capsulitis (stated by the clinician)'],
  ['imp 2nd stress injury', 'imp      2nd stress injury', 'stress injury (stated by the clinician)'],
  ['us web 2 bursa 4 mm', 'us       web 2 bursa 4 mm', 'a bursa of 4 mm'],
  ['mri 2nd bone bruise', 'mri      2nd bone bruise', 'bone bruise'],
  ['plan 2nd shortening osteotomy', 'plan     2nd shortening osteotomy', 'shortening osteotomy'],
  ['plan 2nd fdl transfer', 'plan     2nd fdl transfer', 'FDL tendon transfer'],
  ['calf warm', 'calf     warm', 'The calf was warm.'],
  ['calf pain', 'calf pain', 'The calf was painful.'],
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
    ['2nd tingling', 'numb'],
    ['2nd warm joint', 'heat'],
    ['tried tape daily', 'kept'],
    ['imp capsulitis', 'synovitis'],
  ])('%s: no %s', (line, other) => {
    expect(prose(line)).not.toContain(other);
  });
});
