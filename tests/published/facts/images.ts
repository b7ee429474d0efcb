import { expect } from 'vitest';
import { CAUTIONS } from '../../../server/clinical/cautions.ts';
import { codesOf, lastVisit, rayOf, stageOf } from '../../clinical/note.ts';
import { accuracy, cautionSource, meaningOf, percent, textsWith } from './check.ts';

const TWO = '2nd tender plate, drawer 2, medial';

export const IMAGE_CHECKS = {
  'tears without symptoms': () => {
    expect(Math.round(percent(75, 160))).toBe(47);
    expect(CAUTIONS['image alone']).toMatch(/75 of 160 plates without symptoms.*GREGG06/);
    expect(cautionSource('image alone')).toEqual({ source: 'GREGG06', mark: 'read' });
    expect(stageOf('2nd tender plate\nus 2nd tear full')).toBe('cannot stage');
    const planned = (drawer: number) =>
      codesOf(
        `2nd tender plate, drawer ${drawer}, straight\npulses palpable\nus 2nd tear full\nplan operation 2nd plate repair`,
      );
    expect(planned(0)).toContain('invasive-unconfirmed');
    expect(planned(2)).not.toContain('invasive-unconfirmed');
  },
  'swapped MRI counts': () => {
    expect([Math.round(percent(56, 160)), Math.round(percent(142, 160))]).toEqual([35, 89]);
    expect(textsWith(/\b(?:56|142) of 160/)).toEqual([]);
  },
  'specificity of MRI': () => {
    // Likelihood ratios of the second: 5.24 and 0.13; of the first, pooled apart, they don't follow from its own figures.
    expect(0.89 / (1 - 0.83)).toBeCloseTo(5.24, 2);
    expect((1 - 0.89) / 0.83).toBeCloseTo(0.13, 2);
    expect(0.93 / (1 - 0.33)).not.toBeCloseTo(1.2, 1);
    expect(
      textsWith(/(?:MRI|ultrasound|imaging)[^.]*(?:sensitiv|specific)/i).filter((text) => /\btear/.test(text)),
    ).toEqual([]);
    const imaged = (scan: string) => rayOf(`tried tape 2nd 14 weeks no-relief\n${TWO}\nmri 2nd ${scan}`).next.row;
    expect([imaged('tear full'), imaged('plate intact')]).toEqual(['discuss operation', 'failed, image first']);
  },
  'tables that reproduce': () => {
    const sung = accuracy(39, 2, 0, 4);
    expect([Math.round(sung.sens), sung.spec, sung.ppv, Math.round(sung.npv)]).toEqual([95, 100, 100, 67]);
    expect(accuracy(34, 12, 0, 5)).toEqual({ sens: 73.9, spec: 100, ppv: 100, npv: 29.4 });
    expect(accuracy(3, 0, 2, 3)).toEqual({ sens: 100, spec: 60, ppv: 60, npv: 100 });
    expect(accuracy(7, 2, 3, 12)).toEqual({ sens: 77.8, spec: 80, ppv: 70, npv: 85.7 });
    expect(textsWith(/73[.,]9|29[.,]4|77[.,]8|85[.,]7/)).toEqual([]);
  },
  'a table that does not': () => {
    expect([percent(40, 45), percent(41, 45)]).toEqual([88.9, 91.1]);
    expect([1, 2, 3, 4, 5].map((part) => percent(part, 5))).not.toContain(25);
    expect(textsWith(/91[.,]1|88[.,]9/)).toEqual([]);
  },
  'most tears start laterally': () => {
    expect(meaningOf('tear')).toMatch(/start laterally at the distal insertion \(LINK16\)/);
    for (const place of ['distal lateral', 'proximal medial', 'midsubstance'])
      expect(stageOf(`2nd tender plate, drawer 1\nmri 2nd tear ${place} 40%`)).toBe('1');
  },
  'web change beside a tear': () => {
    expect(24 + 9 + 2).toBe(35);
    expect(CAUTIONS['web change']).toMatch(
      /none of 36 second-MTP tears had a definite second-space neuroma \(UMANS14\)/,
    );
    expect(meaningOf('web-lesion')).toMatch(/of 36 second-MTP tears 35 had a second-space change/);
    for (const lesion of ['neuroma 6 mm', 'fibrosis', 'bursitis', 'thickening'])
      expect(rayOf(`${TWO}\nmri web 2 ${lesion}`).next.row).toBe('first course');
    const { reports } = lastVisit(`${TWO}\nmri web 2 neuroma 6 mm\nplan operation web 2 neuroma excision`);
    expect(reports.map(({ message }) => message).join()).toMatch(/no proof of a neuroma \(UMANS14\)/);
  },
  'neuroma without symptoms': () => {
    const image = 'mri web 2 neuroma 7 mm';
    const row = (signs: string) =>
      rayOf(`2nd tender plate, drawer 0, straight, no swelling, paper holds\n${signs}\n${image}`).next.row;
    expect(row('web 2 click none, squeeze none')).toBe('no instability');
    expect(row('web 2 click painful')).toBe('web, joint stable');
  },
  'specificity of MRI for a neuroma': () => {
    expect(textsWith(/neuroma[^.]*\b(?:68|100|85[.,]4|88|93) ?%/)).toEqual([]);
    expect(rayOf('2nd tender plate, drawer 0, straight\nweb 2 click painful').next).toMatchObject({
      row: 'web, joint stable',
      mark: 'common practice',
    });
  },
  'bands of hallux valgus': () => {
    for (const angles of ['hva 10°, ima 8°', 'hva 19°, ima 11°', 'hva 45°, ima 20°'])
      expect([stageOf(`${TWO}\nxray wb; ${angles}`), rayOf(`${TWO}\nxray wb; ${angles}`).next.row]).toEqual([
        '2',
        'first course',
      ]);
    expect(meaningOf('hva')).toMatch(/Normal under 15°.*disagree/);
    expect(meaningOf('ima')).toMatch(/Normal under 9°.*disagree/);
    expect(textsWith(/(?:mild|moderate|severe)[^.]*\b(?:20|21|39|40)°/)).toEqual([]);
  },
  'length of the second metatarsal': () => {
    expect(4.75).toBeGreaterThan(4.11);
    for (const by of ['3 mm', '6 mm', '9 mm'])
      expect(stageOf(`2nd tender plate, drawer 1\nxray wb; 2nd longer ${by}`)).toBe('1');
    expect(meaningOf('protrusion')).toMatch(/disagree.*PROT and FLEI17 for, KAZ07 against/);
    expect(textsWith(/odds ratio|5[.,]47|3[.,]17/i)).toEqual([]);
  },
  'signs of an MTP angle': () => {
    expect(meaningOf('mtp-angle')).toMatch(/KAZ07.*SCHIP23.*only the word tells/);
    const signed = lastVisit('xray wb; 2nd mtp-angle -7°').facts.facts.filter(
      (fact) => fact.finding === 'mtp-angle' && fact.clarity === 'clear' && fact.values.direction,
    );
    expect(signed).toEqual([]);
  },
  'load changes an angle': () => {
    expect(meaningOf('view')).toMatch(/change by a degree or two with load/);
  },
  'dislocation in hallux valgus surgery': () => {
    expect([percent(16, 79), percent(15, 43), percent(1, 36)]).toEqual([20.3, 34.9, 2.8]);
    expect(stageOf('2nd tender plate\nxray wb; hva 45°')).toBe('cannot stage');
    expect(textsWith(/34[.,]9|20[.,]3/)).toEqual([]);
  },
};
