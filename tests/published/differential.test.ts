import { describe, expect, it } from 'vitest';
import { CONDITIONS } from '../../server/clinical/differential/conditions.ts';
import { by, counts, leading, siteOf, weighed } from '../clinical/differential.ts';

const why = (text: string, condition: string, finding: string, site?: string): string =>
  weighed(text, condition, site).arguments.find((argument) => argument.finding === finding)?.why ?? '';

describe('UMANS14 (read): of 36 second-MTP tears 35 had a second-space change and none a definite neuroma', () => {
  const torn = '2nd tender plate, drawer 2\nweb 2 squeeze painful\nmri web 2 fibrosis 6 mm';
  it('so a change in the space beside an unstable joint is no proof, and the figures stand beside it', () => {
    expect(by('no proof', torn, 'interdigital neuroma')).toEqual(['web-lesion']);
    expect(why(torn, 'interdigital neuroma', 'web-lesion')).toMatch(/none of 36 .* 35 had a change/);
  });
});

describe('MAHA15 (read): 53 of 54 feet were positive on ultrasound', () => {
  const space = (findings: string) => `2nd tender plate\nweb 2 ${findings}`;
  it('squeeze 96 % sensitive: painless, it argues against; its specificity is not quoted', () => {
    expect(by('against', space('no squeeze'), 'interdigital neuroma')).toEqual(['squeeze']);
    expect(why(space('no squeeze'), 'interdigital neuroma', 'squeeze')).toContain(`${Math.round((51 / 53) * 100)} %`);
    expect(why(space('squeeze painful'), 'interdigital neuroma', 'squeeze')).toMatch(/cannot say how specific/);
  });
  it('click 61 % and light touch 26 % sensitive: their absence argues nothing', () => {
    const quiet = space('no click\nweb 2 no numbness');
    expect(by('no proof', quiet, 'interdigital neuroma')).toEqual(['click', 'numbness']);
    expect(why(quiet, 'interdigital neuroma', 'click')).toContain(`${100 - 61} %`);
    expect(why(quiet, 'interdigital neuroma', 'numbness')).toContain('26 %');
  });
});

describe('PAST12 (read): the space was tender in all 43 neuromas', () => {
  it('so a space that is not tender argues against one', () => {
    const note = 'web 3 tender none, click painful';
    expect(by('against', note, 'interdigital neuroma', 'right web 3')).toEqual(['tenderness']);
    expect(why(note, 'interdigital neuroma', 'tenderness', 'right web 3')).toContain('43');
  });
});

describe('ZAN97 (read): presumed neuromas of 3 to 7 mm in 30 % of people without symptoms, relevant from 5 mm', () => {
  const image = (size: string) => `2nd-3rd tender none, drawer 0\nweb 2 squeeze painful\nmri web 2 ${size}`;
  it('so one under 5 mm proves nothing, and one of 5 mm argues', () => {
    expect(by('no proof', image('neuroma 4 mm'), 'interdigital neuroma', 'right web 2')).toContain('web-lesion');
    expect(by('for', image('neuroma 5 mm'), 'interdigital neuroma', 'right web 2')).toContain('web-lesion');
  });
  it('fluid of up to 3 mm in a bursa is physiological', () => {
    expect(by('no proof', image('bursitis 3 mm'), 'intermetatarsal bursitis', 'right web 2')).toContain('web-lesion');
    expect(by('for', image('bursitis 4 mm'), 'intermetatarsal bursitis', 'right web 2')).toContain('web-lesion');
  });
});

describe('LARS25 (read): symptoms of neuroma and bursitis hardly differ', () => {
  it('so a sore space argues for both, and an ultrasound is what separates them', () => {
    const note = 'web 3 squeeze painful';
    expect(leading(note, 'right web 3')).toEqual(['interdigital neuroma', 'intermetatarsal bursitis']);
    expect(weighed(note, 'intermetatarsal bursitis', 'right web 3').condition.separate.ask).toMatch(/ultrasound/);
  });
});

describe('COUGH02 (read): 24 of 121 neuroma patients had an unstable second MTP joint', () => {
  it('so both may be true, and neither removes the other', () => {
    const plate = '2nd tender plate, drawer 2';
    const both = `${plate}\nweb 2 squeeze painful`;
    expect(counts(both, 'plantar plate tear')).toEqual(counts(plate, 'plantar plate tear'));
    expect(siteOf(both).remarks[0]?.text).toMatch(/121 .* 24 had an unstable second MTP joint/);
  });
});

describe('GREGG06 (read): 75 of 160 plates without symptoms looked torn on ultrasound', () => {
  it('so a tear on an image is one argument of several, and says so', () => {
    const note = '2nd pain 3/10\nus 2nd tear';
    expect(counts(note, 'plantar plate tear')).toEqual([1, 0]);
    expect(why(note, 'plantar plate tear', 'tear')).toMatch(/does not diagnose, since 75 of 160/);
  });
});

describe('NERY-RF (read): none of 35 joints with anatomical grade 0 or I was stable', () => {
  it('so a stable drawer argues against a torn plate, at any ray, and a low one does not', () => {
    expect(by('against', '2nd tender plate, drawer 0', 'plantar plate tear')).toEqual(['drawer']);
    expect(by('for', '2nd tender plate, drawer 1', 'plantar plate tear')).toContain('drawer');
  });
});

describe('contradictions of the literature are shown, never computed with', () => {
  it('onset: gradual in 93 % of tears (KLEIN13E), acute pain goes with the grade (NERY15)', () => {
    for (const onset of ['gradual', 'sudden'])
      expect(by('no proof', `history onset ${onset} 3 months\n2nd tender plate`, 'plantar plate tear')).toEqual([
        'onset',
      ]);
  });
  it('metatarsal length: PROT for, KAZ07 against', () => {
    expect(by('no proof', '2nd tender plate\nxray 2nd longer 6 mm', 'plantar plate tear')).toEqual(['protrusion']);
  });
  it('KLEIN13E: specificity 99.8 % cannot come from 9 intact plates, so no figure of that table is quoted', () => {
    const texts = CONDITIONS.flatMap(({ criteria }) => criteria.flatMap(({ claims }) => claims))
      .filter(({ source }) => source === 'KLEIN13E')
      .map(({ why: text }) => text);
    expect(texts.length).toBeGreaterThan(2);
    expect(texts.filter((text) => /\d+(\.\d+)? %/.test(text))).toEqual([]);
  });
  it('WALD01 (read): fat pad thickness had no relation to pain, so none is asked for', () => {
    const { condition } = weighed('3rd pain 4/10 barefoot', 'fat pad atrophy', 'right ray 3');
    expect(condition.separate.ask).toMatch(/no relation to pain in 100 feet/);
  });
});

describe('BOSCH15 and VANDIJK (read): compression of the MTP joints', () => {
  it('sore in both feet argues for arthritis, in one foot also for bursitis, painless only weakly against', () => {
    const both =
      'forefoot 1\nscales drawer 0-4\n\nvisit 2026-03-09 first both\nright 2nd swollen\nboth\ncompression sore\n';
    const arthritis = 'synovitis or inflammatory arthritis';
    expect(why(both, arthritis, 'compression')).toMatch(/both feet/);
    expect(why('2nd swollen\ncompression sore', arthritis, 'compression')).toMatch(/synovitis or bursitis/);
    expect(by('for', '2nd swollen\ncompression sore', 'intermetatarsal bursitis')).toEqual(['compression']);
    expect(by('for', '2nd swollen\ncompression sore', 'interdigital neuroma')).toEqual([]);
    expect(why('2nd swollen\ncompression painless', arthritis, 'compression')).toMatch(/weakly/);
  });
});
