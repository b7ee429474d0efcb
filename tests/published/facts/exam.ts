import { expect } from 'vitest';
import { readDrawer } from '../../../server/clinical/drawer.ts';
import { codesOf, lastVisit, questioning, rayOf, stageOf, wrap } from '../../clinical/note.ts';
import { meaningOf, percent, textsWith } from './check.ts';

const stepsOn = (scale: string, grade: number) => {
  const [fact] = lastVisit(wrap(`2nd drawer ${grade}`, `scales drawer ${scale}`)).facts.facts;
  if (fact?.finding !== 'drawer') throw new Error('the drawer was not read');
  return readDrawer({ is: 'stated', fact }).steps;
};

export const EXAM_CHECKS = {
  'three drawer scales': () => {
    expect(['0-4', '0-3', '1-3'].map((scale) => stepsOn(scale, 2))).toEqual([[2], [3], [1, 2, 3]]);
    expect(['0-4', '0-3', '1-3'].map((scale) => stepsOn(scale, 3))).toEqual([[3], [4], [1, 2, 3]]);
    expect(codesOf(wrap('2nd drawer 2', ''))).toContain('drawer-scale');
  },
  'half is unassigned': () => {
    expect(stageOf('2nd tender plate, drawer half')).toBe('1-2');
    expect(rayOf('2nd tender plate, drawer half').assumptions.join()).toMatch(/exactly half is not assigned/);
  },
  'no millimetres for a grade': () => {
    expect(percent(12, 18)).toBe(66.7);
    for (const length of ['2 mm', '4 mm', '6 mm']) {
      const note = `2nd tender plate, drawer ${length}, medial`;
      expect(codesOf(note)).toEqual(['wrong-unit']);
      expect(stageOf(note)).toBe('1-3');
    }
  },
  'grades of 291 toes': () => {
    const toes = [150, 108, 21, 12];
    const all = toes.reduce((sum, each) => sum + each, 0);
    expect(all).toBe(291);
    expect(toes.map((each) => Math.round((each / all) * 100))).toEqual([52, 37, 7, 4]);
    for (const grade of [1, 2, 3]) expect(stepsOn('1-3', grade)).toEqual([1, 2, 3]);
  },
  'stable clinical stage 0 against anatomical grade 0': () => {
    expect([percent(34, 35), percent(33, 35)]).toEqual([97.1, 94.3]);
    expect(stageOf('2nd tender plate, swelling mild, drawer 0, straight')).toBe('0');
    expect(stageOf('2nd tender plate, swelling mild\nmri 2nd plate intact')).toBe('cannot stage');
    expect(stageOf('2nd tender plate, swelling mild, drawer 1\nmri 2nd plate intact')).toBe('1');
  },
  'stages and grades are two systems': () => {
    for (const grade of [0, 1, 2, 3, 4]) {
      expect(stageOf(`2nd tender plate, drawer 1\nmri 2nd anatomical-grade ${grade}`)).toBe('1');
      expect(stageOf(`2nd tender plate\nmri 2nd anatomical-grade ${grade}`)).toBe('cannot stage');
    }
  },
  'stage and grade correlate': () => {
    expect(textsWith(/grade (?:0|1|2|3|4|I{1,3}|IV) (?:is|means|equals) (?:a )?(?:clinical )?stage/i)).toEqual([]);
    expect(meaningOf('anatomical-grade')).toMatch(/neither the clinical stage nor the drawer grade/);
    expect(meaningOf('stage')).toMatch(/neither a drawer grade nor an anatomical grade/);
  },
  'what tracks the anatomical grade': () => {
    const alone = rayOf('2nd tender plate, drawer 2');
    const roles = (sign: string) =>
      rayOf(`2nd tender plate, drawer 2\n${sign}`)
        .evidence.filter(({ statement }) => !alone.evidence.some((each) => each.statement === statement))
        .map(({ role }) => role);
    for (const sign of ['stand 2nd lifted 3 mm', '2nd paper pulls-out', '2nd supinated', 'stand gap 2-3'])
      expect([sign, roles(sign)]).toEqual([sign, ['supports']]);
    for (const sign of ['2nd pronated', 'web 2 click painful', 'pain 2nd head 6/10', 'history trigger heels'])
      expect([sign, roles(sign), stageOf(`2nd tender plate, drawer 2\n${sign}`)]).toEqual([sign, [], '2']);
  },
  'crossover without a positive drawer': () => {
    expect(Math.round(percent(112, 169))).toBe(66);
    const note = '2nd overlap hallux at rest, drawer 0, tender plate';
    expect([stageOf(note), questioning(note)]).toEqual(['3', ['drawer']]);
    expect(rayOf(note).labels).toContain('low certainty');
  },
  'specificity of the drawer': () => {
    // Eight of nine; with nine intact plates a specificity moves in steps of 11.1 %.
    expect(percent(8, 9)).toBe(88.9);
    expect([7, 8, 9].map((part) => percent(part, 9))).not.toContain(99.8);
    // 80.6 % with 99.8 % would be a likelihood ratio of 403, not the published odds ratio of 1.389.
    expect(0.806 / (1 - 0.998)).toBeGreaterThan(400);
    expect(0.915 / (1 - 0.22)).toBeCloseTo(1.17, 2);
    expect(textsWith(/99[.,]8|\b22 ?%|91[.,]5|80[.,]6/)).toEqual([]);
    expect(meaningOf('drawer')).not.toMatch(/%|sensitiv|specific/i);
  },
  'gradual or acute onset': () => {
    const at = (onset: string) => stageOf(`history onset ${onset}\n2nd tender plate, drawer 2`);
    expect([at('gradual 5 months'), at('sudden 5 months')]).toEqual(['2', '2']);
    expect([at('gradual 3 weeks'), at('sudden 3 weeks')]).toEqual(['2', 'not applicable']);
    expect(textsWith(/93 ?%/)).toEqual([]);
  },
  'neuroma and instability together': () => {
    expect(Math.round(percent(24, 121))).toBe(20);
    const { next } = rayOf('2nd tender plate, drawer 2, medial\nweb 2 click painful');
    expect(next.row).toBe('web, joint unstable');
    expect(next.step).toMatch(/instability first/);
    expect(textsWith(/\b(?:20|5) ?% .*neuroma/)).toEqual([]);
  },
  'click of the web': () => {
    expect(meaningOf('click')).toMatch(/disagrees: 61 %.*MAHA15.*most sensitive.*PAST12/);
    expect(rayOf('2nd tender plate, drawer 0, straight\nweb 2 click none, squeeze painful').next.row).toBe(
      'web, joint stable',
    );
  },
  'thumb-index squeeze': () => {
    const { sens, spec } = accuracyOfSqueeze();
    expect([Math.round(sens), spec]).toEqual([96, 100]);
    expect(meaningOf('squeeze')).toMatch(/96 %.*one negative foot.*no specificity/);
    expect(meaningOf('squeeze')).not.toMatch(/100 %/);
  },
  'dorsal percussion': () => {
    // Of 54 feet 53 were positive: 33 % found alone gives an accuracy of over 32 %.
    expect(percent(53 * 0.33, 54)).toBeGreaterThan(32);
    expect(meaningOf('percussion')).toMatch(/37 %/);
    expect(meaningOf('percussion')).not.toMatch(/33 %|26 %|36 %/);
  },
  'compression of the MTP joints': () => {
    const [, sens = '', spec = ''] = /sensitivity (\d+) % and specificity (\d+) %/.exec(meaningOf('compression')) ?? [];
    expect([sens, spec]).toEqual(['54', '74']);
    expect(Number(sens) / (100 - Number(spec))).toBeCloseTo(2.1, 1);
    expect((100 - Number(sens)) / Number(spec)).toBeCloseTo(0.6, 1);
  },
  'compression is no web sign': () => {
    expect(rayOf('2nd tender plate, drawer 2, medial\ncompression sore').next.row).toBe('first course');
    expect(rayOf('2nd tender plate, drawer 2, medial\nweb 2 squeeze painful').next.row).toBe('web, joint unstable');
  },
  'cutting the plate and the collaterals': () => {
    expect(rayOf('2nd tender plate, drawer 2, medial\nmri 2nd plate intact').outcome).toEqual({
      is: 'staged',
      stage: 2,
    });
    expect(textsWith(/newton|\b30 ?% of the force|\bN\b of force/i)).toEqual([]);
  },
};

const accuracyOfSqueeze = () => ({ sens: percent(51, 53), spec: percent(1, 1) });
