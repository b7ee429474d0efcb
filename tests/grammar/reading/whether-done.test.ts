import { expect, test } from 'vitest';
import { readLine } from '../../../grammar/read-line.ts';
import { readBelow } from '../../../grammar/reader/section-heading.ts';
import { checkRules } from './rules.ts';

checkRules({
  'what is consented to in the same statement has not been done': [
    ['operation 2nd weil, consent signed', 'unclear: procedure; operation/consent state=signed'],
    ['operation 2nd weil consented', 'unclear: procedure; operation/consent state=given'],
    [
      'operation done 2nd weil, consent signed',
      'operation/2 procedure what=weil osteotomy; operation/consent state=signed',
    ],
    ['operation consent signed; weil 2nd', 'operation/consent state=signed; operation/2 procedure what=weil osteotomy'],
  ],
  'what is listed, planned or called off is not done either': [
    ['operation 2nd weil; listed', 'unclear: procedure', 'word-out-of-place'],
    ['operation 2nd weil, planned', 'unclear: procedure', 'unknown-word'],
    ['operation 2nd weil + plate repair planned', 'unclear: procedure; unclear: procedure', 'unknown-word'],
    ['operation 2nd weil; to be booked', 'unclear: procedure', 'unknown-word unknown-word unknown-word'],
    ['operation 2nd weil; cancelled', 'unclear: procedure', 'unknown-word'],
    [
      'operation done 2nd weil; 3rd weil planned',
      'operation/2 procedure what=weil osteotomy; unclear: procedure',
      'unknown-word',
    ],
    [
      'operation 2nd weil; plate repair abandoned',
      'operation/2 procedure what=weil osteotomy; unclear: procedure',
      'unknown-word',
    ],
  ],
  'only a pin has weeks of its own: of another procedure they may be to come, or gone by': [
    ['operation 2nd weil 3 months', 'unclear: procedure'],
    ['operation done 2nd weil 3/12', 'unclear: procedure'],
    ['operation 2nd weil in 3 months', 'unclear: procedure'],
    ['operation 2nd weil and plate repair in 3 months', 'unclear: procedure; unclear: procedure'],
    [
      'operation 2nd pip fusion + k-wire 6 weeks',
      'operation/2 procedure what=pip fusion; operation/2 procedure what=pin for=6weeks',
    ],
    [
      'operation 2nd weil, pin 6 weeks',
      'operation/2 procedure what=weil osteotomy; operation/2 procedure what=pin for=6weeks',
    ],
    ['operation 2nd weil, boot 6 weeks', 'operation/2 procedure what=weil osteotomy; operation/boot for=6weeks'],
  ],
  'what is told of the past, or was tried, is none of today': [
    ['history operation 2nd weil', '', 'word-out-of-place word-out-of-place'],
    ['history operation done 2nd weil', '', 'word-out-of-place word-out-of-place'],
    ['history gout, operation 2nd weil', 'history/gout', 'word-out-of-place word-out-of-place'],
    ['pmh: operation done 2nd weil', '', 'word-out-of-place word-out-of-place'],
    ['tried operation 2nd weil', '', 'word-out-of-place word-out-of-place'],
    ['tried tape; operation 2nd weil', 'tried/tape', 'word-out-of-place word-out-of-place'],
    ['history previous operation 2nd weil 2019', 'history/2 earlier-surgery what=weil osteotomy on=2019'],
    ['history gout; operation done 2nd weil', 'history/gout; operation/2 procedure what=weil osteotomy'],
    ['plan operation 2nd weil', 'plan/2 operation procedure=weil osteotomy'],
  ],
});

test.each([
  ['operation 2nd weil', [true]],
  ['Operation: 2nd weil; 2nd pin 6 weeks', [true, true]],
  ['operation done 2nd weil; 2nd pin 6 weeks', [false, false]],
  ['operation  done 2nd weil', [false]],
  ['plan operation 2nd weil', [false]],
  ['2nd drawer 2', [false]],
])('%s: is it left unsaid that it was done?', (line, expected) => {
  expect(readLine(line).statements.map(({ unsaid }) => unsaid ?? false)).toEqual(expected);
});

test('a heading says so of the lines below it, if it does', () => {
  const unsaid = (heading: string) => {
    const [, below] = readBelow([heading, '- 2nd weil'], readLine);
    return [below?.statements[0]?.section, below?.statements[0]?.unsaid ?? false];
  };
  expect(unsaid('operation:')).toEqual(['operation', true]);
  expect(unsaid('Procedures:')).toEqual(['operation', true]);
  expect(unsaid('operation done:')).toEqual(['operation', false]);
});
