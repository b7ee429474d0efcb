import { describe, expect, test } from 'vitest';
import { codeActions } from '../../server/features/code-actions.ts';
import { applied, noteWithCursor } from './fixture.ts';

const VISIT = 'visit 2026-03-09 first right';
/** The fixes at the cursor, and the note after the one whose title matches. */
function fixesAt(fixture: string) {
  const { note, position } = noteWithCursor(`${VISIT}\n${fixture}`);
  const actions = codeActions(note, { start: position, end: position });
  const titles = actions.map(({ title }) => title);
  const after = (title: RegExp): string => {
    const found = actions.filter((each) => title.test(each.title));
    expect(
      found.map((each) => each.title),
      titles.join('\n'),
    ).toHaveLength(1);
    return applied(note, found[0]!.edit!.changes![note.uri]!).slice(VISIT.length + 1);
  };
  return { titles, after };
}

describe('a line that is not all understood', () => {
  test('keeps its unread words as remarks, and the rest as read', () => {
    expect(fixesAt('2nd drawer 2, zzq| blorp, swollen').after(/as a quoted remark/)).toBe(
      '2nd drawer 2, "zzq blorp", swollen',
    );
  });
  test.each([
    ['2nd zzq| TTP', '2nd "zzq" TTP'],
    ['2nd TTP plate base of blorp|, drawer 2', '2nd TTP plate "base of blorp", drawer 2'],
    ['2nd swollen zzq| 3, tender blorp', '2nd "swollen zzq 3", tender "blorp"'],
    ['2nd zzq| 3, tender blorp', '2nd "zzq 3", tender "blorp"'],
  ])('reads its findings, and keeps the other words: %s', (typed, read) =>
    expect(fixesAt(typed).after(/Read the findings/)).toBe(read),
  );
  test.each([
    '2nd not zzq| tender', // what denies
    '2nd tender shaft| zzq drawer', // a test without its result
    '3rd shaft| mild TTP', // a place
    '2nd swollen left| zzq', // a side
    '2nd doesnt| blorp tender', // what denies, in a word of no list
    '2nd was| zzq tender', // what distances
    '2nd ? swollen zzq|', // doubt
    'cartilage| blorp ok', // of what is it said?
    '2nd drawer 2 zzq| 3', // a number
    'swollen zzq|', // no ray
    '2nd zzq| blorp', // nothing to read
  ])('and not where a word could turn them: %s', (typed) =>
    expect(fixesAt(typed).titles.join('\n')).not.toContain('Read the findings'),
  );
  test('keeps a ray with its words where nothing else was read of it', () => {
    expect(fixesAt('drawer R 2nd 1, L 2nd zzq|').after(/as quoted remarks/)).toBe('drawer R 2nd 1, "L 2nd zzq"');
  });
  test('is kept as history with its comment where it was', () => {
    expect(fixesAt('she felt a pop| // ask').after(/as history/)).toBe('history "she felt a pop" // ask');
    expect(fixesAt('history zzq| blorp').after(/as history/)).toBe('history "zzq blorp"');
  });
  test('keeps the quotes that it holds', () => {
    expect(fixesAt('2nd zzq| "walks on glass" blorp').after(/as history/)).toBe(
      'history “2nd zzq "walks on glass" blorp”',
    );
  });
  test('is no history where it is a plan or an image', () => {
    expect(fixesAt('plan zzq| blorp').titles.join()).not.toContain('as history');
    expect(fixesAt('xray zzq| blorp').titles.join()).not.toContain('as history');
  });
  test('offers each fix of the line once', () => {
    const { titles } = fixesAt('2nd zzq| blorp, drawer 2 blarp');
    expect(titles.filter((each) => each.includes('quoted remarks'))).toHaveLength(1);
  });
  test('that is understood offers none', () => {
    expect(fixesAt('2nd drawer 2|, swollen').titles.join()).not.toMatch(/quoted remarks|as history/);
  });
});

describe('what is read of a line', () => {
  test.each(['pulses dp 2, pt 2, 3|', '2nd drawer 2, zzq| blorp', 'history onset gradual 3 months; 04/05/26|'])(
    'is never made a story of by the way: %s',
    (line) => expect(fixesAt(line).titles.join('\n')).not.toContain('as history'),
  );
  test('is named where it would be quoted with the words that make it unclear', () => {
    const { titles } = fixesAt('stand 2nd lifted 3 mm bananas|');
    expect(titles).toContain("Keep as quoted remarks what isn't certain on this line, lifted with it");
    expect(fixesAt('2nd drawer 2, zzq| blorp').titles).not.toContain('with it');
  });
  test.each([
    'mri taken 3.4|.26',
    'tried steroid web 1|-2',
    'history ckd 4|',
    'plan boot L2|',
    'calf zzq|',
    'pulses zzq|',
  ])('is not split where that only makes new reports: %s', (line) =>
    expect(fixesAt(line).titles.join('\n')).not.toContain('Split before'),
  );
});

describe('a word that only needs its place', () => {
  test('takes the ray that was named last', () => {
    expect(fixesAt('2nd tender\n3rd drawer 1\nswol|len').after(/Name the ray/)).toBe(
      '2nd tender\n3rd drawer 1\n3rd swollen',
    );
  });
  test('takes the web where it is said of webs, and nothing where none was named', () => {
    expect(fixesAt('web 3 click none\n2nd tender\nsquee|ze').after(/Name the web/)).toMatch(/\nweb 3 squeeze$/);
    expect(fixesAt('swol|len').titles.join()).not.toContain('Name the');
  });
  test('takes the section that can hold it', () => {
    expect(fixesAt('hv|a 22°').after(/Name the section: xray/)).toBe('xray hva 22°');
    expect(fixesAt('2nd weil| osteotomy 3 mm; plate repair').after(/Read this line as operation/)).toBe(
      'operation 2nd weil osteotomy 3 mm; plate repair',
    );
    expect(fixesAt('2nd tender hv|a 22°').after(/Name the section: xray/)).toBe('2nd tender; xray hva 22°');
    expect(fixesAt('ta|pe').titles.filter((each) => each.includes('section'))).toEqual([
      'Name the section: tried tape',
      'Name the section: plan tape',
    ]);
  });
  test('is one report with the unread words beside it, and keeps the fixes of each', () => {
    const { titles } = fixesAt('2nd tender; walking fi|ve km');
    expect(titles.filter((each) => each.startsWith('Keep "'))).toEqual(['Keep "walking five km" as a quoted remark']);
    expect(fixesAt('2nd tender; zzq hv|a 22°').after(/Name the section: xray/)).toBe('2nd tender; zzq; xray hva 22°');
  });
  test('is split from the finding before it', () => {
    expect(fixesAt('2nd drawer 2 zz|q').after(/Split before "zzq"/)).toBe('2nd drawer 2, zzq');
    expect(fixesAt('tender 3rd drawer| 2').after(/Split before "3rd"/)).toBe('tender; 3rd drawer 2');
  });
  test('is said of one or the other, where a comma leaves it open', () => {
    const callus = fixesAt('2nd cal|lus, tender');
    expect(callus.after(/Say it of the callus/)).toBe('2nd callus tender');
    expect(callus.after(/Say it of the joint/)).toBe('2nd callus, 2nd tender');
    expect(fixesAt('cal|f soft, nt').after(/Say it of the calf/)).toBe('calf soft nt');
    expect(fixesAt('2nd te|nder plantar, lateral').after(/Say that the toe deviates/)).toBe(
      '2nd tender plantar, deviation lateral',
    );
    expect(fixesAt('2nd no ulcer, cal|lus').after(/Say that there is no callus/)).toBe('2nd no ulcer, no callus');
    expect(fixesAt('2nd no ulcer, cal|lus').after(/Say that there is callus/)).toBe('2nd no ulcer; callus');
    expect(fixesAt('2nd callus|, drawer 2').titles.join()).not.toContain('Say it');
  });
  test('is never changed without review', () => {
    const { note } = noteWithCursor(`scales drawer 0-4\n${VISIT}\nswol|len zzq`);
    const range = { start: { line: 2, character: 3 }, end: { line: 2, character: 3 } };
    expect(codeActions(note, range, [], ['source.fixAll'])).toEqual([]);
    expect(codeActions(note, range).some(({ isPreferred }) => isPreferred)).toBe(false);
  });
});

describe('a word that weighs or lessens what is planned', () => {
  test.each(['plan consider| steroid, tape', 'plan wean| boot, tape', 'plan taper| boot, tape'])(
    'is never taken from it by a fix: %s',
    (typed) => {
      const { titles } = fixesAt(typed);
      expect(titles.filter((title) => /^Keep "|Read the findings|Replace/.test(title))).toEqual([]);
    },
  );
});
