import { describe, expect, test } from 'vitest';
import { textOf } from '../../server/documents/sentence.ts';
import { dateWords } from '../../server/documents/values.ts';
import { filedSentences, writeNote } from './read-note.ts';

/** The filed sentences of one visit, without the line that says its side. */
function prose(lines: string, visit = 'visit 2026-03-09 first right', header = 'scales drawer 0-4'): string[] {
  const [written] = writeNote([header, visit, lines].join('\n'));
  return filedSentences(written!.note)
    .filter(({ runs }) => runs.some(({ from }) => from.length > 0))
    .map(textOf);
}

describe('a toe that is named as such', () => {
  test('keeps its name, and is no joint', () => {
    expect(prose('2nd toe white, cap refill 2 s')).toEqual([
      'The second toe was white.',
      'Capillary refill of the second toe was 2 s.',
    ]);
    expect(prose('2nd toe pink\n2nd straight')).toEqual(['The second toe was straight and pink.']);
    expect(prose('2nd toe corn')).toEqual(['At the second toe there was a corn.']);
    expect(prose('toe 2 corn')).toEqual(['At the second toe there was a corn.']);
    expect(prose('xray 2nd toe fracture')).toEqual(['On the radiograph, there was a fracture at the second toe.']);
    expect(prose('pain 2nd toe 6/10')).toEqual(['At the second toe there was pain of 6/10.']);
    expect(prose('2nd toe drawer 2')).toEqual(['The second MTP joint showed drawer grade 2 on the 0-4 scale.']);
    expect(prose('2nd ray corn')).toEqual(['At the second ray there was a corn.']);
    expect(prose('2nd mtp corn')).toEqual(['At the second MTP joint there was a corn.']);
    expect(prose('2nd mtp medial 12°')).toEqual(['The second toe was deviated medially by 12°.']);
  });
});

describe('equal facts of several places', () => {
  test('join in one sentence', () => {
    expect(prose('4th tender none\n5th tender none')).toEqual([
      'There was no tenderness at the fourth and fifth rays.',
    ]);
    expect(prose('2nd-4th straight')).toEqual(['The second to fourth toes were straight.']);
    expect(prose('webs 2-3 click none')).toEqual(['There was no click in the second and third web spaces.']);
  });

  test('stay apart where one says more', () => {
    expect(prose('4th tender none, no swelling\n5th tender none')).toEqual([
      'There was no swelling or tenderness at the fourth ray.',
      'There was no tenderness at the fifth ray.',
    ]);
  });

  test('do not share a quote that belongs to one of them', () => {
    expect(prose('2nd tender "ouch"\n3rd tender')).toEqual([
      'At the second ray there was tenderness ("ouch").',
      'At the third ray there was tenderness.',
    ]);
    expect(prose('2nd drawer unable "too sore"\n3rd drawer unable')).toEqual([
      'The drawer test at the second ray could not be done ("too sore").',
      'The drawer test at the third ray could not be done.',
    ]);
  });

  test('of both feet name both', () => {
    const both = 'visit 2026-03-09 first both';
    expect(prose('R2 straight\nL2 straight', both)).toEqual(['The second toes of both feet were straight.']);
    expect(prose('R2 straight\nL3 straight\nL4 straight', both)).toEqual([
      'The right second toe and the left third and fourth toes were straight.',
    ]);
    expect(prose('both hot none', both)).toEqual(['There was no heat in either foot.']);
  });
});

describe('quoted words', () => {
  test.each([
    ['2nd paper holds "just"', 'The second toe held the paper ("just").'],
    [
      'us 2nd tear full distal "in the report"',
      'On ultrasound, there was a full tear of the plantar plate (distal; "in the report") at the second ray.',
    ],
    [
      '4th normal "as on the left"',
      'The fourth ray was recorded as normal (no swelling, no tenderness, straight, not overlapping; "as on the left").',
    ],
  ])('stand beside what they were said of: %s', (line, sentence) => {
    expect(prose(line)).toEqual([sentence]);
  });
});

describe('lists', () => {
  test('read one way only', () => {
    expect(prose('stand no gap 2-3; no hv')).toEqual([
      'On standing, there was no hallux valgus or widening of the gap between the second and third toes.',
    ]);
    expect(prose('pain 2nd plantar 6/10 aching rest')).toEqual([
      'At the second ray there was aching plantar pain of 6/10 at rest.',
    ]);
  });
  test('begin again where the verb changes', () => {
    expect(prose('2nd medial 12°, extended, paper weak')).toEqual([
      'The second toe was deviated medially by 12° and extended at the MTP joint, and held the paper weakly.',
    ]);
  });
});

describe('the side', () => {
  test("is not repeated where it is the visit's", () => {
    expect(prose('2nd straight')).toEqual(['The second toe was straight.']);
  });
  test('is named where it is another, and in a visit of both feet', () => {
    expect(prose('L2 straight')).toEqual(['The left second toe was straight.']);
    expect(prose('R2 straight', 'visit 2026-03-09 first both')).toEqual(['The right second toe was straight.']);
  });
});

describe('grades, stages and dates', () => {
  test('a drawer grade always carries its scale, or says that none is stated', () => {
    expect(prose('2nd drawer 2')).toEqual(['The second MTP joint showed drawer grade 2 on the 0-4 scale.']);
    expect(prose('2nd drawer 2', 'visit 2026-03-09 first right', 'forefoot 1')).toEqual([
      'The second MTP joint showed drawer grade 2 (scale not stated).',
    ]);
  });
  test("a stage is the clinician's", () => {
    expect(prose('stage 2nd 2')).toEqual(['The second ray is clinical stage 2 (stated by the clinician).']);
  });
  test('a partial date stays partial', () => {
    expect(dateWords({ year: 2026, month: 1 })).toBe('January 2026');
    expect(dateWords({ year: 2026 })).toBe('2026');
    expect(dateWords({ year: 2026, month: 3, day: 9 })).toBe('9 March 2026');
    expect(prose('tried steroid web 2 2026-01')).toEqual([
      'A steroid injection in the second web space was given in January 2026.',
    ]);
  });
});

describe('silence and doubt', () => {
  test('what is not mentioned is not written', () => {
    expect(prose('2nd swelling mild')).toEqual(['At the second ray there was mild swelling.']);
  });
  test('a panel says what it names and nothing more', () => {
    expect(prose('4th-5th normal')).toEqual([
      'The fourth and fifth rays were recorded as normal (no swelling, no tenderness, straight, not overlapping).',
    ]);
  });
  test('an unclear value leaves its finding without it, and stands as written', () => {
    expect(prose('2nd swollen mild tender')).toEqual([
      'At the second ray there was swelling and tenderness.',
      'As written, not interpreted: "2nd swollen mild".',
    ]);
  });
  test('an unclear finding stands only as written', () => {
    expect(prose('2nd deviated funny')).toEqual(['As written, not interpreted: "2nd deviated funny".']);
  });
  test('a doubt that touches a word is quoted with it', () => {
    expect(prose('4th ?drawer 1')).toEqual(['As written, not interpreted: "4th ?drawer 1".']);
    expect(prose('4th deviated (funny)')).toEqual(['As written, not interpreted: "4th deviated (funny)".']);
  });
  test.each([
    ['2nd drawer nd', 'The drawer test at the second ray was not done.'],
    ['2nd drawer unable', 'The drawer test at the second ray could not be done.'],
    ['2nd drawer equivocal', 'The drawer test at the second ray was equivocal.'],
    ['2nd drawer neg', 'The second MTP joint showed a negative drawer test.'],
    ['plan no steroid', 'A steroid injection is to be avoided.'],
    ['tried no steroid', 'A steroid injection was not given.'],
  ])('%s', (line, sentence) => {
    expect(prose(line)).toEqual([sentence]);
  });
});
