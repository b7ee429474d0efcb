import { describe, expect, it } from 'vitest';
import { lastVisit, rayOf, stageOf, whyOf } from './note.ts';

// What an earlier visit told still gates and warns in later ones: common practice, as the gates and red flags themselves.
const TWO = '2nd tender plate, drawer 2, medial';
const note = (...visits: readonly [date: string, kind: string, body: string][]): string =>
  `forefoot 1\nscales drawer 0-4\n${visits.map(([date, kind, body]) => `\nvisit ${date} ${kind} right\n${body}\n`).join('')}`;
const dangers = (text: string): string[] =>
  lastVisit(text)
    .reports.filter(({ code }) => code === 'red-flag')
    .map(({ message }) => message);

describe('a calf sign in a later visit', () => {
  const calf = `${TWO}\ncalf swollen`;
  it.each([
    ['after an operation of this file', ['2026-02-10', 'operation', 'operation 2nd weil']],
    ['while a boot was ordered', ['2026-02-10', 'review', `${TWO}\nplan boot 6 weeks`]],
    ['while off the foot', ['2026-02-10', 'operation', 'operation nwb 6 weeks']],
  ] as const)('%s is a clot until shown otherwise', (_, earlier) => {
    expect(dangers(note([...earlier], ['2026-03-09', 'review', calf])).join()).toMatch(/clot/);
  });
  it('long after the operation, or beside a boot that was only refused, is one weak sign', () => {
    expect(dangers(note(['2025-10-01', 'operation', 'operation 2nd weil'], ['2026-03-09', 'review', calf]))).toEqual(
      [],
    );
    expect(dangers(note(['2026-02-10', 'first', `${TWO}\nplan no boot`], ['2026-03-09', 'review', calf]))).toEqual([]);
  });
  it('beside an earlier clot is a pair', () => {
    expect(dangers(note(['2026-03-09', 'first', `history previous dvt\n${calf}`])).join()).toMatch(/clot/);
    expect(
      dangers(note(['2026-01-05', 'first', 'history previous dvt'], ['2026-03-09', 'review', calf])).join(),
    ).toMatch(/clot/);
  });
});

describe('an operation before this file', () => {
  it('told at the first visit closes staging at the next', () => {
    const text = note(
      ['2026-01-05', 'first', `history previous surgery 2nd weil 2019\n${TWO}`],
      ['2026-03-09', 'review', TWO],
    );
    expect(stageOf(text)).toBe('not applicable');
    expect(whyOf(text)).toMatch(/residual instability/);
  });
  it('denied once is not assumed away again', () => {
    const denied = note(['2026-01-05', 'first', `history no previous surgery\n${TWO}`], ['2026-03-09', 'review', TWO]);
    expect(rayOf(denied).assumptions.join()).not.toMatch(/operation/);
    expect(rayOf(TWO).assumptions.join()).toMatch(/operation/);
  });
  it('without its ray shows as an assumption at each ray', () => {
    expect(rayOf(`history previous foot surgery 2019\n${TWO}`).assumptions.join()).toMatch(
      /operation.*without its ray/,
    );
  });
});

describe('feeling', () => {
  it('lost at an earlier visit stays lost until it is found again', () => {
    const lost = ['2026-01-05', 'first', `${TWO}\nsense lost`] as const;
    const text = note([...lost], ['2026-03-09', 'review', TWO]);
    expect(stageOf(text)).toBe('not applicable');
    expect(whyOf(text)).toMatch(/2026-01-05/);
    expect(stageOf(note([...lost], ['2026-03-09', 'review', `${TWO}\nsense mf 10/10`]))).toBe('2');
  });
  it('normal at an earlier visit is named with its day', () => {
    const text = note(['2026-01-05', 'first', `${TWO}\nsense mf 10/10`], ['2026-03-09', 'review', TWO]);
    expect(rayOf(text).assumptions.join()).toMatch(/feeling not examined today, normal on 2026-01-05/);
  });
  it('of a patient with neuropathy is asked for, and closes staging meanwhile', () => {
    expect(stageOf(`history neuropathy\n${TWO}`)).toBe('not applicable');
    expect(whyOf(`history neuropathy\n${TWO}`)).toMatch(/neuropathy is stated/);
    expect(stageOf(`history neuropathy\n${TWO}\nsense mf 10/10`)).toBe('2');
    expect(rayOf(`history neuropathy\n${TWO}\nsense mf 10/10`).assumptions.join()).toMatch(/neuropathy is stated/);
    expect(stageOf(`history no neuropathy\n${TWO}`)).toBe('2');
    expect(stageOf(note(['2026-01-05', 'first', 'history neuropathy'], ['2026-03-09', 'review', TWO]))).toBe(
      'not applicable',
    );
  });
  it('known to be poor makes a hot, swollen foot or a wound a red flag', () => {
    expect(dangers(`history neuropathy\n2nd hot, swelling`).join()).toMatch(/poor feeling/);
    expect(
      dangers(
        note(['2026-01-05', 'first', `${TWO}\nsense lost`], ['2026-03-09', 'review', '2nd hot, swelling']),
      ).join(),
    ).toMatch(/poor feeling/);
    expect(
      dangers(note(['2026-01-05', 'first', 'history neuropathy'], ['2026-03-09', 'review', '2nd ulcer'])).join(),
    ).toMatch(/poor feeling/);
    expect(dangers('2nd hot, swelling')).toEqual([]);
  });
});

describe('a history of cancer', () => {
  it('told earlier makes night pain a red flag later', () => {
    const text = note(
      ['2026-01-05', 'first', `history previous cancer\n${TWO}`],
      ['2026-03-09', 'review', `pain 2nd night\n${TWO}`],
    );
    expect(dangers(text).join()).toMatch(/cancer/);
    expect(dangers(`pain 2nd night\n${TWO}`)).toEqual([]);
  });
});

describe('a dislocation that an earlier visit knew', () => {
  const out = '2nd dislocated irreducible, tender plate';
  it('six weeks or more ago is old, and its stage is 4', () => {
    expect(stageOf(note(['2026-01-05', 'first', `${out}\ndp 2, pt 2`], ['2026-03-09', 'review', out]))).toBe('4');
    expect(
      stageOf(note(['2026-01-05', 'first', '2nd dislocated old, tender plate'], ['2026-01-12', 'review', out])),
    ).toBe('4');
  });
  it('is acute until shown otherwise where it is newer, was reduced, or was not seen in between', () => {
    expect(stageOf(note(['2026-02-20', 'first', out], ['2026-03-09', 'review', out]))).toBe('cannot stage');
    const reduced = note(
      ['2026-01-05', 'first', out],
      ['2026-01-06', 'review', '2nd no dislocation, tender plate'],
      ['2026-03-09', 'review', out],
    );
    expect(stageOf(reduced)).toBe('cannot stage');
    expect(
      stageOf(note(['2026-01-05', 'first', out], ['2026-03-09', 'review', '2nd dislocated acute, tender plate'])),
    ).toBe('not applicable');
  });
});

describe('an injury told earlier with a time that is not exact', () => {
  const later = (told: string, on: string) =>
    `forefoot 1\nscales drawer 0-4\n\nvisit 2026-02-09 first right\nhistory ${told}\n2nd tender plantar, drawer 2\n\nvisit ${on} review right\n2nd tender plantar, drawer 2\n`;
  const MAY_BE = 'the injury may be under six weeks old, taken as over six weeks';
  // Some time in January: 13 to 44 days old on 13 February, 20 to 51 on 20 February, and surely over 42 on 15 March.
  it.each([
    ['injury 2026-01', '2026-02-11', 'acute'],
    ['injury 2026-01', '2026-02-20', 'may be'],
    ['injury 2026-01', '2026-03-15', 'old'],
    ['injury 2026-01-31', '2026-02-20', 'acute'],
    ['injury 2026-01-01', '2026-02-20', 'old'],
    ['injury 3-5 weeks ago', '2026-02-24', 'may be'],
  ])('%s, seen again on %s: %s', (told, on, expected) => {
    const ray = rayOf(later(told, on));
    const why = 'why' in ray.outcome ? ray.outcome.why : '';
    const found = /acute injury/.test(why) ? 'acute' : ray.assumptions.includes(MAY_BE) ? 'may be' : 'old';
    expect(found).toBe(expected);
  });
});
