import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import { completion } from '../../server/features/completion.ts';
import { applied, noteWithCursor } from './fixture.ts';

const labelsAt = (fixture: string): string[] => {
  const { note, position } = noteWithCursor(fixture);
  return completion(note, position).map(({ label }) => label);
};

/** Accepts one item and looks at the document after the edit. */
function checkCompletion(fixture: string, label: string, after: string): void {
  const { note, position } = noteWithCursor(fixture);
  const item = completion(note, position).find((each) => each.label === label);
  expect(item, `${label} among ${labelsAt(fixture)}`).toBeDefined();
  const edit = item!.textEdit as { range: { start: { line: number; character: number } }; newText: string };
  expect(applied(note, [edit as never])).toBe(after);
  const { start } = edit.range;
  const typed = note.line(position.line)!.text.slice(start.character, position.character).toLowerCase();
  expect(item!.filterText!.toLowerCase().startsWith(typed), `an editor keeps ${item!.filterText} for ${typed}`).toBe(
    true,
  );
}
const inVisit = (line: string): string => `visit 2026-03-09 first right\n${line}`;

describe('completion', () => {
  test('after a subject offers its findings in the order of the exam', () => {
    const labels = labelsAt(inVisit('2nd |'));
    const exam = ['swelling', 'tender', 'drawer', 'extended', 'paper', 'pip', 'stage'];
    expect(labels.filter((label) => exam.includes(label))).toEqual(exam);
    expect(labels).not.toContain('dp');
    expect(labels).not.toContain('click');
  });

  test('starts with the exam of the ray, in the order of the exam, and keeps what is told of it for later', () => {
    const labels = labelsAt(inVisit('2nd |'));
    expect(labels[0]).toBe('swelling');
    for (const common of ['drawer', 'straight', 'paper'])
      for (const rare of ['pain-out-of-proportion', 'callus', 'ipk', 'corn'])
        expect(labels.indexOf(common), `${common}, ${rare}`).toBeLessThan(labels.indexOf(rare));
    expect(labelsAt(inVisit('2nd swelling mild, |'))[0]).toBe('tender');
    expect(labelsAt(inVisit('web 2 |')).slice(0, 2)).toEqual(['click', 'squeeze']);
    for (const told of ['trigger', 'pain', 'lifted', 'earlier-surgery', 'dressing'])
      expect(labels.indexOf(told), told).toBeGreaterThan(labels.indexOf('stage'));
  });

  test('starts a plan with its treatments', () => {
    const labels = labelsAt(inVisit('plan |'));
    expect(labels.slice(0, 2)).toEqual(['ice', 'elevate']);
    for (const first of ['tape', 'steroid', 'operation', 'review'])
      for (const later of ['work', 'home', 'driving', 'sutures'])
        expect(labels.indexOf(first), `${first}, ${later}`).toBeLessThan(labels.indexOf(later));
  });

  test('starts what was tried with treatments, and offers that nothing was', () => {
    const labels = labelsAt(inVisit('tried |'));
    expect(labels).toContain('none');
    for (const first of ['tape', 'met-pad', 'steroid', 'none'])
      expect(labels.indexOf(first), first).toBeLessThan(labels.indexOf('earlier-treatment'));
    expect(labelsAt(inVisit('tried tape 6 weeks; |'))).not.toContain('none');
  });

  test('offers who examined or signed, and from which visit findings were carried', () => {
    expect(labelsAt(inVisit('examiner |')).slice(0, 3)).toEqual(['surgeon', 'consultant', 'registrar']);
    expect(labelsAt(inVisit('examiner |'))).not.toContain('drawer');
    expect(labelsAt(inVisit('examiner surgeon |'))).toContain('drawer');
    expect(labelsAt(inVisit('signed 2026-05-04 |')).slice(0, 2)).toEqual(['surgeon', 'consultant']);
    expect(labelsAt(inVisit('signed 2026-05-04 surgeon |'))).toEqual([]);
    const visits = 'visit 2026-01-12 first right\n2nd drawer 1\nvisit 2026-02-16 review right\n';
    expect(labelsAt(`${visits}${inVisit('carried |')}`).slice(0, 2)).toEqual(['2026-02-16', '2026-01-12']);
    expect(labelsAt(`${visits}${inVisit('carried 2026-02-16 |')}`)).toContain('2nd');
    expect(labelsAt(inVisit('carried |'))).toContain('2nd');
  });

  test('after a web space offers its findings', () => {
    const labels = labelsAt(inVisit('webs 2-3 |'));
    expect(labels).toContain('click');
    expect(labels).not.toContain('drawer');
  });

  test('under the heading of a ray needs no subject', () => {
    const labels = labelsAt(inVisit('2nd:\n|'));
    expect(labels).toContain('drawer');
  });

  test('after a finding offers its values first', () => {
    expect(labelsAt(inVisit('2nd drawer |')).slice(0, 5)).toEqual(['0', '1', '2', '3', '4']);
    expect(labelsAt(inVisit('2nd paper |')).slice(0, 3)).toEqual(['holds', 'weak', 'pulls-out']);
  });

  test('offers the grades of the scale in force', () => {
    expect(labelsAt(`scales drawer 1-3\n${inVisit('2nd drawer |')}`).slice(0, 3)).toEqual(['1', '2', '3']);
  });

  test('does not offer a finding that the line has stated', () => {
    expect(labelsAt(inVisit('2nd drawer 2, |'))).not.toContain('drawer');
  });

  test('offers a section its own findings', () => {
    expect(labelsAt(inVisit('plan |'))).toContain('met-pad');
    expect(labelsAt(inVisit('plan |'))).not.toContain('drawer');
    expect(labelsAt(inVisit('xray |'))).toContain('hva');
  });

  test('at the start of a line offers sections and subjects', () => {
    const labels = labelsAt(inVisit('|'));
    for (const each of ['history', 'plan', 'xray', '2nd', 'webs 2-3', 'visit']) expect(labels).toContain(each);
  });

  test('completes what has been typed of a word', () => {
    checkCompletion(inVisit('2nd dr|'), 'drawer', inVisit('2nd drawer'));
    checkCompletion(inVisit('pl|'), 'plan', inVisit('plan'));
  });

  test('completes a word with a hyphen from behind the hyphen', () => {
    checkCompletion(inVisit('plan met-p|'), 'met-pad', inVisit('plan met-pad'));
    checkCompletion(inVisit('2nd paper pulls-|'), 'pulls-out', inVisit('2nd paper pulls-out'));
  });

  test('completes a phrase from its second word', () => {
    checkCompletion(inVisit('operation 2nd plate re|'), 'plate repair', inVisit('operation 2nd plate repair'));
  });

  test('offers the words that say a result at once', () => {
    checkCompletion(inVisit('2nd drawer 2, st|'), 'straight', inVisit('2nd drawer 2, straight'));
    checkCompletion(inVisit('2nd med|'), 'medial', inVisit('2nd medial'));
  });

  test('completes another form to the canonical word', () => {
    checkCompletion(inVisit('2nd lach|'), 'drawer', inVisit('2nd drawer'));
    checkCompletion(inVisit('plan 2nd tap|'), 'tape', inVisit('plan 2nd tape'));
  });

  test('completes the header', () => {
    expect(labelsAt('|')).toEqual(['forefoot 1', 'patient', 'scales drawer', 'visit', 'allow']);
    expect(labelsAt('scales drawer |')).toEqual(['0-4', '0-3', '1-3']);
    checkCompletion('scales drawer 0|', '0-4', 'scales drawer 0-4');
    expect(labelsAt('visit |')[0]).toBe('2026-05-04');
    expect(labelsAt('visit 2026-05-04 first |')).toEqual(['right', 'left', 'both']);
  });

  test('offers the lines of a visit what they may hold', () => {
    expect(labelsAt(inVisit('event |'))).toEqual(['reduction', 'pin-out', 'block']);
    expect(labelsAt(inVisit('signed |'))).toEqual(['2026-05-04']);
    expect(labelsAt(inVisit('carried 2026-03-09 2nd dra|'))).toContain('drawer');
    expect(labelsAt(inVisit('sig|'))).toContain('signed');
  });

  test('offers allow the codes that are reported here', () => {
    expect(labelsAt(inVisit('2nd drawer 2, blorp\nallow |'))).toContain('unknown-word');
  });

  test.each(['// 2nd |', '2nd "dra|', '2nd "drawer" // |'])('offers nothing in %j', (line) => {
    expect(labelsAt(inVisit(line))).toEqual([]);
  });

  /** Words that say nothing before what follows them. */
  const INCOMPLETE = ['visit', 'allow', 'signed', 'addendum', 'event', 'examiner'];
  test.each([
    '',
    '2nd ',
    '2nd drawer ',
    '2nd drawer 2 ',
    '2nd tender ',
    'webs 2-3 ',
    'plan ',
    'plan tape ',
    'tried steroid ',
    'us 2nd tear ',
    'stand ',
    'history onset ',
    'no ',
  ])('offers after %j only what the reader takes there', (before) => {
    const labels = labelsAt(inVisit(`${before}|`)).filter((label) => !INCOMPLETE.includes(label));
    expect(labels.length).toBeGreaterThan(0);
    const spoiled = labels.filter((label) => {
      const { roles, problems } = readLine(before + label);
      return problems.length > 0 || roles.some(({ kind }) => kind === 'reported');
    });
    expect(spoiled).toEqual([]);
  });
});
