import { describe, expect, it } from 'vitest';
import { codesOf, questioning, rayOf, stageOf, whyOf, wrap } from './note.ts';

// Conflicts beside a row: common practice. Where the published table (COUGH11, from memory) differs, both are named.
const TWO = '2nd tender plate, drawer 2, medial';
const asks = (text: string): string[] => rayOf(text).missing.map(({ ask }) => ask);
const questions = (text: string): string =>
  rayOf(text)
    .evidence.filter(({ role }) => role === 'questions')
    .map(({ finding, why }) => `${finding}: ${why}`)
    .join('; ');
const described = (text: string): string =>
  rayOf(text)
    .evidence.filter(({ role }) => role === 'describes')
    .map(({ finding, why }) => `${finding}: ${why}`)
    .join('; ');
const both = (body: string) => wrap(body, 'scales drawer 0-4', 'visit 2026-03-09 first both');

describe('a dislocation', () => {
  it('on a film without weight, or of unknown load, asks for confirmation', () => {
    expect(rayOf('xray nwb 2nd dislocated\n2nd tender plate').assumptions.join()).toMatch(
      /film.*without weight.*confirm/,
    );
    expect(rayOf('xray 2nd dislocated\n2nd tender plate').assumptions.join()).toMatch(
      /load of the film.*not stated.*confirm/,
    );
    expect(rayOf('xray wb 2nd dislocated\n2nd tender plate').assumptions.join()).not.toMatch(/film/);
    expect(rayOf('xray nwb 2nd dislocated\n2nd dislocated old').assumptions.join()).not.toMatch(/film/);
  });
  it('of unknown age asks since when, whether exam or film shows it', () => {
    expect(asks('xray wb 2nd dislocated')).toEqual([expect.stringMatching(/since when/)]);
    expect(asks('2nd tender plate, drawer 3-4')).toEqual([expect.stringMatching(/film/)]);
  });
});

describe('an overlap now and then', () => {
  it('beside a joint that dislocates is 3: the drawer alone would say so', () => {
    expect(stageOf('2nd overlap sometimes, tender plate, drawer 3')).toBe('3');
    expect(stageOf('2nd overlap sometimes, tender plate, drawer 2')).toBe('2-3');
  });
  it('beside a low drawer is of low certainty', () => {
    expect(rayOf('2nd overlap sometimes, tender plate, drawer 0').labels).toContain('low certainty');
  });
});

describe('a straight toe', () => {
  it('with drawer 3 asks for a second examiner, and names the published table', () => {
    expect(questions('2nd tender plate, drawer 3, straight')).toMatch(/second examiner.*COUGH11, from memory/);
  });
  it.each([1, 2])('with drawer %i names the published table', (grade) => {
    expect(questions(`2nd tender plate, drawer ${grade}, straight`)).toMatch(/straight.*COUGH11, from memory/);
  });
});

describe('where the published table differs, both are named', () => {
  it.each([
    ['a fixed PIP joint', `${TWO}, pip fixed`, /pip: .*COUGH11, from memory.*stage 4/],
    ['a marked deviation with drawer 1', '2nd tender plate, drawer 1, medial marked', /deviation: .*COUGH11.*stage 3/],
    ['a normal purchase', `${TWO}, paper holds`, /paper: .*COUGH11, from memory/],
    [
      'a drawer 0 in a toe out of line',
      '2nd tender plate, swelling, drawer 0, medial mild',
      /drawer: .*repeat.*guarding.*stage 1/,
    ],
  ])('%s', (_, note, says) => {
    expect(questions(note)).toMatch(says);
  });
});

describe('the other side', () => {
  it('with the same drawer 2 is 1-2, stated or not whether the toes are straight', () => {
    expect(stageOf(both('R2 tender plate, drawer 2\nL2 drawer 2'))).toBe('1-2');
    expect(stageOf(both('R2 tender plate, drawer 2, medial\nL2 drawer 2'))).toBe('2');
    expect(stageOf(both('R2 tender plate, drawer 2\nL2 drawer 1'))).toBe('2');
    expect(stageOf(both('R2 tender plate, drawer 2\nL3 drawer 2'))).toBe('2');
  });
  it('stands in the evidence', () => {
    const { evidence } = rayOf(both('R2 tender plate, drawer 2\nL2 drawer 2'));
    expect(evidence.map(({ why }) => why)).toContain('the other side is alike');
    expect(questions(both('R2 tender plate, drawer 1\nL2 drawer 1'))).toMatch(/the other side gives the same/);
  });
});

describe('general laxity', () => {
  it('lowers the certainty of an unstable joint until the other foot is compared', () => {
    expect(rayOf(`history hypermobility\n${TWO}`).labels).toContain('low certainty');
    expect(questions(`history hypermobility\n${TWO}`)).toMatch(/compare with the other foot/);
    expect(rayOf(both('history hypermobility\nR2 tender plate, drawer 2, medial\nL2 drawer 0')).labels).toEqual([]);
    expect(rayOf(`history no laxity\n${TWO}`).labels).toEqual([]);
    expect(stageOf(`history hypermobility\n${TWO}`)).toBe('2');
  });
  it('told at an earlier visit still counts', () => {
    const text = `${wrap('history hypermobility', 'scales drawer 0-4', 'visit 2026-01-05 first right')}\nvisit 2026-03-09 review right\n${TWO}\n`;
    expect(rayOf(text).labels).toContain('low certainty');
  });
});

describe('how the drawer was tested', () => {
  it('a stable drawer with guarding is of low certainty, a positive one is recordable', () => {
    const stable = '2nd tender plate, swelling, drawer 0 guarding, straight';
    expect(stageOf(stable)).toBe('0');
    expect(rayOf(stable).labels).toContain('low certainty');
    expect(questions(stable)).toMatch(/guarding can hide/);
    expect(rayOf(`${TWO} guarding`).labels).not.toContain('low certainty');
    expect(stageOf('2nd tender plate, drawer 2 guarding, medial')).toBe('2');
  });
  it('under a block it is staged, and guarding hides nothing', () => {
    const note = '2nd tender plate, drawer 2 under block, medial';
    expect(stageOf(note)).toBe('2');
    expect(
      rayOf(note)
        .evidence.map(({ why }) => why)
        .join(),
    ).toMatch(/under a block/);
  });
  it('two examiners may differ without contradiction; both grades count', () => {
    const differ = '2nd tender plate, drawer 2 first examiner, medial\n2nd drawer 3 other examiner';
    expect(stageOf(differ)).toBe('2-3');
    expect(rayOf(differ).assumptions.join()).toMatch(/two examiners differ/);
    expect(codesOf(differ)).not.toContain('stated-twice');
    const agree = '2nd tender plate, drawer 2, medial\n2nd drawer 2 other examiner';
    expect(stageOf(agree)).toBe('2');
    expect(rayOf(agree).assumptions.join()).not.toMatch(/examiner|twice/);
    expect(codesOf('2nd tender plate, drawer 2\n2nd drawer 3')).toContain('stated-twice');
  });
  it('negative without a scale says what was assumed', () => {
    const note = wrap('2nd tender plate, swelling, drawer neg, straight', '');
    expect(stageOf(note)).toBe('0');
    expect(rayOf(note).assumptions.join()).toMatch(/scale not stated.*negative/);
  });
});

describe('a missing step', () => {
  it('is asked for only where it could change the path: 1 or 2 lead the same way', () => {
    expect(asks('2nd tender plate, drawer 1-2, medial')).toEqual([]);
    expect(asks('2nd tender plate, drawer half, medial')).toEqual([]);
    expect(asks('2nd tender plate, drawer positive, medial')).toHaveLength(1);
    expect(asks('2nd tender plate, drawer 2-3, medial')).toHaveLength(1);
  });
});

describe('a joint that is not staged is still described', () => {
  const later = (body: string, procedure = 'weil', gap = '\n') =>
    `${wrap(`operation 2nd ${procedure}`, 'scales drawer 0-4', 'visit 2025-10-01 operation right')}${gap}visit 2026-03-09 review right\n${body}\n`;
  it('an operated one as residual instability', () => {
    expect(whyOf(later('2nd tender plate, drawer 2 painful, medial 10°'))).toBe(
      'the joint has been operated on: residual instability, over half subluxable',
    );
    expect(described(later('2nd tender plate, drawer 2 painful, medial 10°'))).toMatch(/drawer: .*deviation: /);
    expect(whyOf(later('2nd drawer 0'))).toBe('the joint has been operated on: stable');
    expect(whyOf(later('2nd tender plate'))).toMatch(/describe residual instability/);
  });
  it('a floating toe after an osteotomy is no sign of instability', () => {
    expect(described(later('stand 2nd lifted 4 mm\n2nd extended'))).toMatch(
      /lifted: .*after an osteotomy.*extension: /,
    );
    expect(described(later('stand 2nd lifted 4 mm', 'pip fusion'))).not.toMatch(/osteotomy/);
  });
  it('a fused PIP joint is no fixed hammer toe', () => {
    expect(described(later('2nd pip fixed', 'pip fusion'))).toMatch(/pip: .*fused.*no fixed hammer toe/);
    expect(described(later('2nd pip fixed', 'weil'))).not.toMatch(/fused/);
  });
  it('purchase is lost by design after a flexor transfer', () => {
    expect(described(later('2nd paper pulls-out', 'flexor transfer'))).toMatch(/paper: .*by design/);
    expect(described(later('2nd paper holds', 'flexor transfer'))).toBe('');
  });
  it.each([
    ['acute', `history injury 5 days ago\n${TWO}`],
    ['neuropathic', `${TWO}\nsense lost`],
    ['systemic', `${TWO}\n3rd tender plate\n4th tender plate`],
    ['with a red flag', `${TWO}, hot\nfever`],
    ['lax', 'pain 2nd none\n2nd tender none, drawer 2, medial'],
  ])('one that is %s by drawer and deformity', (_, note) => {
    expect(stageOf(note)).toBe('not applicable');
    expect(described(note)).toMatch(/drawer: over half subluxable.*deviation: /);
  });
  it('a quiet joint is not described', () => {
    expect(described('5th tender none, drawer 0, straight, paper holds\n2nd drawer 0, tender none, straight')).toBe('');
  });
});

describe('an open growth plate', () => {
  it('closes staging, of its own ray or of the foot', () => {
    expect(stageOf(`${TWO}\nxray growth plates open`)).toBe('not applicable');
    expect(stageOf(`${TWO}\nxray 2nd growth plate open`)).toBe('not applicable');
    expect(rayOf(`${TWO}\nxray growth plates open`).next.row).toBe('growing');
    expect(stageOf(`${TWO}\nxray 3rd growth plate open`)).toBe('2');
    expect(stageOf(`${TWO}\nxray growth plates closed`)).toBe('2');
  });
});

describe('a joint disease', () => {
  it.each([
    ['rheumatoid arthritis in a swollen joint', `history rheumatoid arthritis\n${TWO}, swelling`],
    ['gout in a hot, swollen joint', `history gout\n${TWO}, swelling, hot`],
    ['an erosion on a film', `${TWO}\nxray 2nd erosion`],
  ])('%s comes before the plate', (_, note) => {
    expect(stageOf(note)).toBe('not applicable');
    expect(rayOf(note).next.row).toBe('systemic');
  });
  it('that is quiet in this joint leaves the stage, and says so', () => {
    const quiet = `history rheumatoid arthritis\n${TWO}`;
    expect(stageOf(quiet)).toBe('2');
    expect(rayOf(quiet).assumptions.join()).toMatch(/inflammatory arthritis is stated/);
    expect(stageOf(`history gout\n${TWO}, swelling`)).toBe('2');
    expect(stageOf(`history no rheumatoid arthritis\n${TWO}, swelling`)).toBe('2');
    expect(stageOf(`${TWO}\nxray 3rd erosion`)).toBe('2');
  });
});

describe('a wound at a ray, and heat without a word of fever', () => {
  it('gates its own ray only; of the foot it is assumed elsewhere', () => {
    expect(stageOf(`${TWO}, wound open\n3rd tender plate, drawer 1`)).toBe('not applicable');
    expect(stageOf(`${TWO}, wound open\n3rd tender plate, drawer 1`, 3)).toBe('1');
    expect(rayOf(`${TWO}\nwound open`).assumptions.join()).toMatch(/wound.*without its ray/);
  });
  it('shows that fever was not asked', () => {
    expect(rayOf(`${TWO}, hot`).assumptions.join()).toMatch(/fever not asked/);
    expect(rayOf(`${TWO}, hot\nno fever`).assumptions.join()).not.toMatch(/fever/);
    expect(rayOf(TWO).assumptions.join()).not.toMatch(/fever/);
  });
});

describe('after a recent injury', () => {
  it('a toe that is stated not tender is left alone', () => {
    const note = `history injury 5 days ago\n${TWO}\n3rd tender none, drawer 0, straight\n4th tender none, drawer not done`;
    expect(rayOf(note, 3).next.row).toBe('quiet ray');
    expect(rayOf(note, 4).next.row).toBe('acute injury elsewhere');
    expect(rayOf(note).next.row).toBe('acute rupture');
  });
});

describe('an operated joint', () => {
  const later = (body: string) =>
    `${wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-10-01 operation right')}\nvisit 2026-03-09 review right\n${body}\n`;
  it.each([
    '2nd drawer 2',
    '2nd pin-site loose',
    '2nd pin-site red',
    '2nd recurrence',
    '2nd complication nonunion',
    'complication broken pin',
    '2nd wound open',
  ])('with %s is off track', (body) => {
    expect(rayOf(later(`${body}\n2nd tender plate`)).next.row).toBe('operated, off track');
  });
  it.each(['2nd drawer 0', '2nd pin-site clean', '2nd no recurrence', 'no complications', '3rd recurrence'])(
    'with %s is on track',
    (body) => {
      expect(rayOf(later(`${body}\n2nd tender none`)).next.row).toBe('operated, on track');
    },
  );
  it('before this file and painful is off track too', () => {
    expect(rayOf(`history previous surgery 2nd weil 2019\n${TWO}`).next.row).toBe('operated, off track');
  });
});

it('several rays at stage 3 or 4 stand with the question of inflammatory arthritis', () => {
  const note = '2nd drawer 3, tender plate\n3rd drawer 3, medial';
  expect(rayOf(note).assumptions.join()).toMatch(/several rays at stage 3 or 4.*inflammatory arthritis not asked/);
  expect(rayOf(`history no morning stiffness\n${note}`).assumptions.join()).not.toMatch(/several rays/);
  expect(questioning(note)).toEqual([]);
});

describe('a drawer that was not done', () => {
  const roles = (text: string) =>
    rayOf(text)
      .evidence.filter(({ finding }) => finding === 'drawer')
      .map(({ role }) => role);
  it('neither contradicts a dislocated joint nor supports an overlapping toe', () => {
    expect(roles('2nd dislocated for 1 year, drawer not done')).not.toContain('questions');
    expect(roles('2nd overlap hallux, drawer not done')).toEqual([]);
  });
  it('while one that was done does', () => {
    expect(roles('2nd dislocated for 1 year, drawer 1')).toContain('questions');
    expect(roles('2nd overlap hallux, drawer 3')).toEqual(['supports']);
    expect(roles('2nd overlap hallux, drawer 1')).toEqual(['questions']);
  });
});
