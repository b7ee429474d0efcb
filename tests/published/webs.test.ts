import { describe, expect, it } from 'vitest';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { CAUTIONS } from '../../server/clinical/cautions.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { lastVisit, rayOf, stageOf } from '../clinical/note.ts';

const meaningOf = (id: string): string => LEXICON.find((entry) => entry.id === id)?.meaning ?? '';
const TWO = '2nd tender plate, drawer 2, medial';

describe('UMANS14 (read): 35 of 36 second-MTP tears had a second-space change, none a definite neuroma', () => {
  it('is what the caution and the finding say', () => {
    expect(CAUTIONS['web change']).toMatch(/none of 36 second-MTP tears had a definite second-space neuroma/);
    expect(meaningOf('web-lesion')).toMatch(
      /of 36 second-MTP tears 35 had a second-space change and none a definite neuroma/,
    );
  });
  it('so an image of the web alone turns no unstable joint into a web problem', () => {
    for (const lesion of ['neuroma 6 mm', 'fibrosis', 'bursitis', 'thickening'])
      expect(rayOf(`${TWO}\nmri web 2 ${lesion}`).next.row).toBe('first course');
    const { next } = rayOf(`${TWO}\nweb 2 click painful\nmri web 2 neuroma 6 mm`);
    expect(next.row).toBe('web, joint unstable');
    expect(next.cautions).toContain(CAUTIONS['web change']);
  });
  it('and a web operation beside an unstable joint is questioned whatever the image shows', () => {
    const messages = (drawer: string) =>
      lastVisit(
        `2nd tender plate, drawer ${drawer}, straight\n3rd tender none, drawer 0\nmri web 2 neuroma 6 mm\nplan operation web 2 neuroma excision`,
      )
        .reports.filter(({ code }) => code === 'invasive-unconfirmed')
        .map(({ message }) => message);
    expect(messages('2').join()).toMatch(/no proof of a neuroma/);
    expect(messages('0')).toEqual([]);
  });
});

describe('MAHA15 (read): one foot of 54 was negative on ultrasound', () => {
  it('so thumb-index squeeze gives a sensitivity, and its specificity is one foot of one', () => {
    // The one table that gives the published figures: 51 true and 2 false negative of 53, 1 of 1 negative (derived).
    expect(meaningOf('squeeze')).toContain(`${Math.round((51 / 53) * 100)} %`);
    expect(meaningOf('squeeze')).toMatch(/gives no specificity/);
    expect(meaningOf('squeeze')).not.toMatch(/100 %/);
  });
  it('the click was 61 % sensitive there, and is called disputed', () => {
    expect(meaningOf('click')).toMatch(/disagrees: 61 % sensitive/);
  });
});

describe('BOSCH15 (read): compression of the MTP joints, sensitivity 54 %, specificity 74 %', () => {
  it('is quoted with both figures', () => {
    const [, sens = '', spec = ''] = /sensitivity (\d+) % and specificity (\d+) %/.exec(meaningOf('compression')) ?? [];
    expect([sens, spec]).toEqual(['54', '74']);
    // The likelihood ratios of the same paper, 2.1 and 0.6.
    expect(Number(sens) / (100 - Number(spec))).toBeCloseTo(2.1, 1);
    expect((100 - Number(sens)) / Number(spec)).toBeCloseTo(0.6, 1);
  });
  it('VANDIJK (read): it is not specific to a neuroma, so it is never a web sign', () => {
    expect(rayOf(`${TWO}\ncompression sore`).next.row).toBe('first course');
    expect(LEXICON.find(({ id }) => id === 'compression')?.subjects).toEqual(['foot']);
    expect(LEXICON.find(({ id }) => id === 'squeeze')?.subjects).toEqual(['web']);
  });
});

describe('PIQ09 (read) and the other schemes of hallux valgus bands disagree', () => {
  it('so no angle changes a stage or a step, and none becomes a word', () => {
    for (const angles of ['hva 10°, ima 8°', 'hva 19°, ima 11°', 'hva 45°, ima 20°']) {
      const ray = rayOf(`${TWO}\nxray wb; ${angles}`);
      expect([stageOf(`${TWO}\nxray wb; ${angles}`), ray.next.row]).toEqual(['2', 'first course']);
    }
    expect(meaningOf('hva')).toMatch(/Normal under 15°.*disagree/);
    expect(meaningOf('ima')).toMatch(/Normal under 9°.*disagree/);
  });
});

describe('REIS89 (from memory): dislocation after repeated local steroid', () => {
  it('is called from memory wherever a caution quotes it', () => {
    expect(CAUTIONS['no steroid at an unstable joint']).toMatch(/REIS89, from memory/);
    expect(meaningOf('steroid')).toMatch(/REIS89, from memory/);
    expect(RULES.find(({ code }) => code === 'steroid-unstable')?.mark).toBe('from memory, to be verified');
  });
});
