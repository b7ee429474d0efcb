import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { clinicNote, renderText, URGENT_TITLE } from '../../server/documents/clinic-note.ts';
import { diagnostics } from '../../server/features/diagnostics.ts';
import { forefoot } from '../cli/run.ts';
import { noteWithCursor } from '../features/fixture.ts';
import { codesOf, lastVisit, TODAY, wrap } from './note.ts';

const UNREAD = '2nd tender plate, drawer 2\n3rd drawer 1, toe seems bluish';

describe('an acute dislocation is reported whatever is recorded of it', () => {
  test.each([
    ['2nd dislocated acute 2 hours, toe-colour pink', ['red-flag']],
    ['2nd dislocated acute', ['acute-dislocation-incomplete']],
    ['2nd drawer 4', ['red-flag']],
    ['2nd dislocated for 9 months, toe-colour pink', []],
  ])('%s', (body, expected) => {
    const flags = codesOf(body).filter((code) => code === 'red-flag' || code === 'acute-dislocation-incomplete');
    expect(flags).toEqual(expected);
  });
  test('and no allowance hides it', () => {
    expect(codesOf('2nd dislocated acute 2 hours, toe-colour pink\nallow red-flag "seen"')).toContain('red-flag');
  });
});

describe('words that may be a red flag lead', () => {
  test('each visit of the stages', () => {
    const { out } = forefoot(['stage', '-'], { input: wrap(UNREAD) });
    expect(out).toMatch(/2026-03-09 first\n +RED FLAG\? +Words that may be a red flag/);
    expect(out.match(/may be a red flag/g)).toHaveLength(1);
  });
  test('the written note, once', () => {
    const { header, visits } = analyseNote(wrap(UNREAD), TODAY);
    const text = renderText(clinicNote(visits[0]!.analysis, header), { computed: true });
    expect(text).toMatch(
      new RegExp(`^.*\\n\\n${URGENT_TITLE.replaceAll(/[()]/g, '.')}\\nWords that may be a red flag`),
    );
    expect(text.match(/may be a red flag/g)).toHaveLength(1);
  });
  test('what an editor gets, however many reports stand before them', () => {
    const many = Array.from({ length: 300 }, () => '2nd drawer 9').join('\n');
    const { note } = noteWithCursor(
      `|visit 2026-03-09 first right\n${many}\n\nvisit 2026-04-09 review right\n${UNREAD}`,
    );
    const [first] = diagnostics(note, 0).diagnostics.filter(({ code }) => code !== 'more-reports');
    expect(first?.code).toBe('unread-red-flag');
  });
});

test('toes called cold together are a red flag of the foot, and pink ones are none', () => {
  expect(codesOf('toes cold')).toContain('red-flag');
  expect(codesOf('toes pink')).not.toContain('red-flag');
});

test('numbness of a toe argues for no nerve of a space', () => {
  const [web] = lastVisit('2nd numb\nwebs 2 click painful').facts.facts.filter(({ finding }) => finding === 'numbness');
  expect(web?.subject).toMatchObject({ at: 'ray', ray: 2 });
  expect(codesOf('webs:\n2nd numb')).toContain('unclear-finding');
});
