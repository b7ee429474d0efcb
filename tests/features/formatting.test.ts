import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import { readHeaderFacts, readVisitFacts } from '../../server/clinical/read-facts.ts';
import { formatting } from '../../server/features/formatting.ts';
import { formatLine } from '../../server/workspace/format-line.ts';
import { applied, settled } from './fixture.ts';

const formatted = (text: string): string => {
  const note = settled(text);
  return applied(note, formatting(note));
};

describe('formatting', () => {
  test.each([
    ['2nd swelling Mod ,tender plantar', '2nd      swelling moderate, tender plantar'],
    ['history   onset gradual', 'history  onset gradual'],
    ['webs 2-3 click none,squeeze none', 'webs 2-3 click none, squeeze none'],
    // What is quoted in the note together with unread words keeps its spaces.
    ['2nd was red , swollen', '2nd      was red , swollen'],
    ['2nd tender , drawer 2', '2nd      tender, drawer 2'],
    ['stage 2nd 2', 'stage    2nd 2'],
    ['2nd-4th   drawer 1', '2nd-4th  drawer 1'],
    ['plan tape 2nd 8 weeks ;stiff insole', 'plan     tape 2nd 8 weeks; stiff-insert'],
    ['2nd drawer 2   // as last  time', '2nd      drawer 2   // as last  time'],
    ['//  2nd   drawer 2', '//  2nd   drawer 2'],
    ['pain 2nd 6/10 "worst   barefoot"', 'pain     2nd 6/10 "worst   barefoot"'],
    ['2nd  blorp   ok, drawer   2', '2nd      blorp   ok, drawer 2'],
    // A ray beside words that were not read may have been meant with them.
    ['2nd 3rd 4th MTPs drawer 0 / zq', '2nd 3rd 4th MTPs drawer 0 / zq'],
    ['2nd 2nd zq tender', '2nd 2nd  zq tender'],
    ['MT2 zorp', 'MT2      zorp'],
    ['2nd mtpj zorp, drawer 2', '2nd mtpj zorp, drawer 2'],
    ['2nd mtpj TTP plantar', '2nd MTP  tender plantar'],
    ['imp capsulitis 2nd', 'imp      capsulitis 2nd'],
    ['impression capsulitis 2nd', 'imp      capsulitis 2nd'],
    ['   ', ''],
    ['patient KM-207 born 1971 female', 'patient KM-207  born 1971  female'],
    ['visit   2026-03-09  new r', 'visit 2026-03-09 first right'],
    ['scales   drawer 0-4', 'scales drawer 0-4'],
  ])('%j becomes %j', (line, expected) => {
    expect(formatted(line)).toBe(expected);
  });

  test('leaves a formatted note alone', () => {
    expect(formatting(settled('visit 2026-03-09 first right\n2nd      drawer 2, paper holds\n'))).toEqual([]);
  });

  test('edits the differing words only', () => {
    const [edit, ...others] = formatting(settled('2nd      swelling Mod, tender plantar'));
    expect(others).toEqual([]);
    expect(edit!.range.start.character).toBeGreaterThanOrEqual(18);
    expect(edit!.range.end.character).toBeLessThanOrEqual(21);
  });

  test('keeps a subject that is one word with unread text', () => {
    const note = settled('visit 2026-03-09 first right\n2nd2nd  3rd');
    expect(applied(note, formatting(note))).toBe('visit 2026-03-09 first right\n2nd2nd  3rd');
  });

  test('formats the lines of a range only', () => {
    const note = settled('2nd drawer 2\n3rd drawer 2\n4th drawer 2');
    const edits = formatting(note, { start: { line: 1, character: 3 }, end: { line: 2, character: 0 } });
    expect(applied(note, edits)).toBe('2nd drawer 2\n3rd      drawer 2\n4th drawer 2');
  });

  const word = fc.constantFrom(
    ...[
      '2nd',
      '3rd',
      'R2',
      'web 2',
      'drawer',
      'lachman',
      '2',
      '1-2',
      '?2',
      'Mod',
      'swollen',
      'tender',
      'plantar',
      'no',
      'not',
    ],
    ...[
      'none',
      'was',
      'blorp',
      'paper',
      'pulls out',
      ',',
      ';',
      '.',
      ':',
      '?',
      '"a  b"',
      '"open',
      '// note',
      '°',
      '12°',
      '12 °',
    ],
    ...[
      'plan',
      'tape',
      '8 weeks',
      '8wks',
      'stiff sole',
      'xray',
      'wb',
      'hva',
      'normal',
      'others',
      'right',
      'visit',
      '2026-03-09',
    ],
    ...[
      'patient',
      'KM-207',
      'born',
      '1971',
      'f',
      'scales',
      '0-3',
      '(',
      ')',
      '->',
      'Stage',
      'steroid',
      '2/12',
      'x',
      '-',
      '%',
    ],
  );
  const line = fc
    .array(fc.tuple(word, fc.constantFrom('', ' ', ' ', '  ', '\t')), { maxLength: 9 })
    .map((words) => words.map(([each, space]) => each + space).join(''));

  test('never changes what a note says', () => {
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 4 }), (body) => {
        const lines = ['visit 2026-03-09 first right', ...body];
        expect(facts(formatted(lines.join('\n')).split('\n'))).toEqual(facts(lines));
      }),
      { numRuns: 500 },
    );
  });

  test('leaves a line as typed whose words turn what its neighbours say', () => {
    for (const text of ['not,:', 'last visit:', 'declined', 'not 2nd 12 ° 2nd 2nd 2nd:'])
      expect(formatted(`visit 2026-03-09 right\n${text}\n2nd tender`)).toBe(
        `visit 2026-03-09 right\n${text}\n2nd      tender`,
      );
  });

  test('never changes a signed line, and formats what stands after the signature', () => {
    const signed = ['visit 2026-03-09 first right', '2nd   sore,drawer  2', 'signed  2026-03-09 AB'];
    const text = [...signed, 'addendum  2026-03-10   CD', '3rd   drawer  1'].join('\n');
    expect(formatted(text)).toBe([...signed, 'addendum 2026-03-10 CD', '3rd      drawer 1'].join('\n'));
    expect(formatted('visit 2026-03-09 right\ncarried  2026-01-05   2nd drawer 2')).toBe(
      'visit 2026-03-09 right\ncarried  2026-01-05 2nd drawer 2',
    );
  });

  test('leaves the words that say more than their section', () => {
    expect(formatted('visit 2026-03-09 right\norders boot 6 weeks\nscores aofas 85')).toBe(
      'visit 2026-03-09 right\norders   boot 6 weeks\nscores   aofas 85',
    );
  });

  test('formats once for all', () => {
    fc.assert(
      fc.property(line, (text) => {
        const once = formatted(`visit 2026-03-09 first right\n${text}`);
        expect(formatted(once)).toBe(once);
      }),
      { numRuns: 800 },
    );
  });

  test('keeps every comment and quote to the letter', () => {
    fc.assert(
      fc.property(line, (text) => {
        const kept = /"[^"]*("|$)|\/\/.*/g;
        expect(formatLine(readLine(text)).match(kept)).toEqual(text.match(kept));
      }),
      { numRuns: 500 },
    );
  });
});

/** What is read from lines, wherever in its line it stands. */
function facts(lines: readonly string[]): unknown {
  const syntax = lines.map((text) => readLine(text));
  return JSON.parse(
    JSON.stringify(
      { header: readHeaderFacts(syntax), visit: readVisitFacts(syntax, readHeaderFacts([])) },
      // The stretch that is quoted holds commas, which may get a space.
      (key, value) => (['start', 'end', 'whole'].includes(key) ? undefined : value),
    ),
  );
}
