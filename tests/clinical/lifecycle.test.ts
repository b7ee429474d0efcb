import { describe, expect, it } from 'vitest';
import { hasUnreadRedFlag } from '../../server/clinical/reading-reports.ts';
import { sealOf } from '../../server/clinical/seal.ts';
import { lastVisit, rayOf, stageOf } from './note.ts';

const facts = (text: string) => lastVisit(text).facts;
const finds = (text: string): string[] =>
  facts(text).facts.map(({ finding, status }) => (status === 'present' ? finding : `${status} ${finding}`));

describe('a visit that is signed', () => {
  it('knows when and by whom', () => {
    const [part] = facts('2nd drawer 2\nsigned 2026-03-09 14:30 AB').lifecycle?.parts ?? [];
    expect(part?.signature).toMatchObject({
      date: { year: 2026, month: 3, day: 9 },
      clock: { hour: 14, minute: 30 },
      by: 'AB',
    });
  });
  it('makes no claim about its words without a seal', () => {
    const [part] = facts('2nd drawer 2\nsigned 2026-03-09 AB').lifecycle?.parts ?? [];
    expect(part?.signature).not.toHaveProperty('seal');
  });
  it('is still read and computed with, addenda too', () => {
    expect(stageOf('2nd tender plantar, drawer 2\nsigned 2026-03-09 AB')).toBe('2');
    expect(stageOf('2nd tender plantar\nsigned 2026-03-09 AB\naddendum 2026-03-10 CD\n2nd drawer 2')).toBe('2');
  });
  it('counts its relative dates from its own day', () => {
    const left = (added: string, visit = '') =>
      lastVisit(`${visit || '2nd drawer 2'}\nsigned 2026-03-09 AB\naddendum 2026-04-20 CD\n${added}`).after;
    expect(left('tried steroid web 2 2 weeks ago').steroid).toEqual({ right: '2026-04-06' });
    expect(left('plan review in 6 weeks', 'plan review in 6 weeks').watch.review).toBe('2026-06-01');
    expect(left('plan tape 2nd 8 weeks').course).toEqual({ right: '2026-04-20' });
    expect(left('operation done 2nd pin 6 weeks').watch['pin right ray 2']).toBe('2026-06-01');
    expect(left('plan ordinary shoes from 2 weeks').watch['shoes right']).toBe('2026-05-04');
  });
  it('has parts, each with its own signature', () => {
    const { parts = [] } =
      facts('2nd drawer 2\nsigned 2026-03-09 AB\naddendum 2026-03-10 CD\n3rd drawer 1\nsigned 2026-03-10 CD')
        .lifecycle ?? {};
    expect(parts.map(({ from, addendum, signature }) => [from, addendum?.by, signature?.by])).toEqual([
      [0, undefined, 'AB'],
      [3, 'CD', 'CD'],
    ]);
  });
});

describe('a seal', () => {
  const words = ['visit 2026-03-09 first right', '2nd drawer 2'];
  const sealed = `2nd drawer 2\nsigned 2026-03-09 AB seal ${sealOf(words)}`;
  const changed = (text: string) => lastVisit(text).reports.some(({ code }) => code === 'signed-words-changed');
  /** Written down once: a seal of today is checked in years to come. */
  it.each([
    [[], 'b0zw-kn'],
    [['visit 2026-03-09 first right', '2nd drawer 2'], 'yzps-yt'],
    [['2nd medial 12°', 'pain "née 😀"'], '62r1-ma'],
  ])('of %j is for ever %s', (lines, seal) => {
    expect(sealOf(lines)).toBe(seal);
  });
  it('holds whatever happens to white space, blank lines, comments and allowances', () => {
    expect(changed(sealed)).toBe(false);
    for (const text of [
      '  2nd   drawer 2 ',
      '\n2nd drawer 2\n',
      '2nd drawer 2 // seen',
      '// seen\n2nd drawer 2',
      'allow drawer-scale as agreed\n2nd drawer 2',
    ])
      expect(changed(sealed.replace('2nd drawer 2', text)), text).toBe(false);
  });
  it('breaks with any word, sign or line that is changed, moved, added or removed', () => {
    const two = ['visit 2026-03-09 first right', '2nd drawer 2', '3rd drawer 1'];
    const note = (...lines: string[]) => `${lines.join('\n')}\nsigned 2026-03-09 AB seal ${sealOf(two)}`;
    expect(changed(note('2nd drawer 2', '3rd drawer 1'))).toBe(false);
    for (const lines of [
      ['2nd drawer 3', '3rd drawer 1'],
      ['3rd drawer 1', '2nd drawer 2'],
      ['2nd drawer 2'],
      ['2nd drawer 2', '3rd drawer 1', 'plan boot'],
      ['2nd drawer 2 3rd drawer 1'],
      ['2nd Drawer 2', '3rd drawer 1'],
      ['2nd drawer 2;', '3rd drawer 1'],
    ])
      expect(changed(note(...lines)), lines.join()).toBe(true);
  });
  it('is not hidden by an allowance', () => {
    expect(
      changed('allow signed-words-changed a slip of the pen\n2nd drawer 1\nsigned 2026-03-09 AB seal 0000-00'),
    ).toBe(true);
  });
  it('of an addendum covers the addendum alone', () => {
    const own = sealOf(['addendum 2026-03-10 CD', '3rd drawer 1']);
    const text = `2nd drawer 2\nsigned 2026-03-09 AB\naddendum 2026-03-10 CD\n3rd drawer 1\nsigned 2026-03-10 CD seal ${own}`;
    expect(changed(text)).toBe(false);
    expect(changed(text.replace('2nd drawer 2', '2nd drawer 3'))).toBe(false);
    expect(changed(text.replace('3rd drawer 1', '3rd drawer 2'))).toBe(true);
  });
});

describe('carried findings', () => {
  it('are no facts, whichever form carries them', () => {
    for (const text of [
      'carried 2026-03-09 2nd drawer 2, medial 12°',
      'carried from 2026-03-09: 2nd drawer 2, medial 12°',
      'carried 2nd drawer 2, medial 12°',
      'carried 09/03/26 2nd drawer 2, medial 12°',
      'carried 2026-03-09\n2nd drawer 2, medial 12°',
      'carried 2026-03-09 // copied\n2nd drawer 2\n// still\n2nd medial 12°',
    ]) {
      expect(finds(text), text).toEqual([]);
      expect(lastVisit(text).rays, text).toEqual([]);
      expect(
        facts(text)
          .lifecycle?.carried.map((each) => each.text)
          .join(' '),
        text,
      ).toContain('medial 12°');
    }
  });
  it('of a block end at a blank line, and what follows is of today', () => {
    expect(finds('carried 2026-03-09\n2nd drawer 2\n\n3rd drawer 1')).toEqual(['drawer']);
  });
  it('say nothing of which rays were named', () => {
    const named = facts('carried 2026-03-09 2nd drawer 2\nothers tender none').facts.map(({ subject }) =>
      subject.at === 'ray' ? subject.ray : undefined,
    );
    expect(named).toEqual([2, 3, 4, 5]);
  });
});

const REDUCED = `history onset sudden 2 hours; injury
2nd dislocated acute 2 hours, toe-colour pale, sensation normal
pulses dp 2, pt 2
xray nwb 2nd dislocated
event reduction 14:30
2nd no dislocation, toe-colour pink, sensation normal, drawer 2
xray nwb 2nd congruent`;

describe('before and after an event of one day', () => {
  it('the dislocation before a reduction and the drawer after it are no contradiction', () => {
    const { reports, rays } = lastVisit(REDUCED);
    expect(reports.map(({ code }) => code)).toEqual([]);
    expect(rays[0]?.outcome).toMatchObject({ is: 'not applicable', by: 'acute injury' });
  });
  it('without the event they contradict each other, as ever', () => {
    expect(lastVisit(REDUCED.replace(/event.*\n/, '')).reports.map(({ code }) => code)).toContain('stated-twice');
  });
  it('a joint that nobody describes after the reduction is still dislocated', () => {
    const { rays } = lastVisit(
      '2nd dislocated acute 2 hours, toe-colour pink\nevent reduction 14:30\n2nd toe-colour pink',
    );
    expect(rays[0]?.next.row).toBe('acute dislocation');
  });
  it('a reduced joint is an acute injury, though only its dislocation was timed', () => {
    const text =
      '2nd dislocated acute, toe-colour pink\nevent reduction\n2nd drawer 2, tender plantar, toe-colour pink';
    expect(rayOf(text).outcome).toMatchObject({ is: 'not applicable', by: 'acute injury' });
    const later = `forefoot 1\nscales drawer 0-4\n\nvisit 2026-03-09 emergency right\n${text}\n\nvisit 2026-03-20 review right\n2nd drawer 2, tender plantar`;
    expect(rayOf(later).outcome).toMatchObject({ is: 'not applicable', by: 'acute injury' });
  });
  it('an old dislocation that was reduced is none', () => {
    const text = '2nd dislocated old, toe-colour pink\nevent reduction\n2nd drawer 3, tender plantar, toe-colour pink';
    expect(stageOf(text)).toBe('3');
  });
  it('a pale toe that is pink after the reduction is no red flag any more, one that nobody looked at again is', () => {
    const before = '2nd toe-colour pale, drawer 1\nevent reduction 14:30\n';
    expect(rayOf(`${before}2nd toe-colour pink`).next.row).not.toBe('ischaemia');
    expect(rayOf(`${before}2nd drawer 2`).next.row).toBe('ischaemia');
    expect(rayOf(`${before}2nd toe-colour not done`).next.row).toBe('ischaemia');
  });
  it('what is felt under a block says nothing of the joint', () => {
    const text =
      '2nd drawer 1, tender plantar\npain 2nd 6/10\nevent block 14:00\n2nd not tender, sensation lost\nsense lost\npain none';
    expect(stageOf(text)).toBe('1');
    expect(facts(text).lifecycle?.passed.map(({ finding }) => finding)).toEqual([
      'tenderness',
      'sensation',
      'sensation',
      'pain',
    ]);
  });
  it('the drawer under a block is the one that counts', () => {
    expect(stageOf('2nd drawer 1 guarding, tender plantar\nevent block\n2nd drawer 2')).toBe('2');
  });
});

it('two examiners may differ without contradiction', () => {
  const text = 'examiner AB: 2nd drawer 2, tender plantar\nexaminer CD: 2nd drawer 3';
  expect(lastVisit(text).reports.map(({ code }) => code)).toEqual([]);
  expect(stageOf(text)).toBe('2-3');
  expect(lastVisit('examiner AB\n2nd drawer 2\nexaminer CD\n2nd drawer 3').reports).toEqual([]);
  expect(lastVisit('examiner AB\n2nd drawer 2\n2nd drawer 3').reports.map(({ code }) => code)).toEqual([
    'stated-twice',
  ]);
});

it('a clot in the words of the clinician is a red flag', () => {
  expect(rayOf('2nd drawer 1, tender plantar\nclot').next.row).toBe('clot');
  expect(rayOf('2nd drawer 1, tender plantar\nno clot').next.row).not.toBe('clot');
});

describe('a proposal of a conversion', () => {
  const PROPOSED = 'proposed 2nd drawer 2 painful  // drawer two and it reproduces her pain';
  it('is no fact and stages nothing, and its words are told as they were said', () => {
    expect(finds(PROPOSED)).toEqual([]);
    expect(lastVisit(PROPOSED).rays).toEqual([]);
    expect(facts(PROPOSED).verbatim).toMatchObject([
      { text: 'drawer two and it reproduces her pain', section: 'exam', subject: { at: 'ray', ray: 2 } },
    ]);
  });
  it('without the words that were said is told as it stands', () => {
    expect(facts('proposed: plan boot').verbatim).toMatchObject([{ text: 'plan boot', section: 'plan' }]);
  });
  it('stands as an assumption beside the stage of its ray', () => {
    const { assumptions } = rayOf(`2nd tender plantar, drawer 1\n${PROPOSED}`, 2) ?? {};
    expect(assumptions?.join()).toContain('drawer two and it reproduces her pain');
  });
  it('says nothing of the lines below it', () => {
    expect(finds('proposed\n2nd drawer 2')).toEqual(['drawer']);
  });
  it('counts once it is confirmed', () => {
    expect(finds(PROPOSED.replace('proposed ', ''))).toEqual(['drawer']);
  });
  it('still alarms by the words that were said', () => {
    expect(hasUnreadRedFlag(facts('proposed 2nd wound discharging  // wound with pus coming out'))).toBe(true);
  });
});
