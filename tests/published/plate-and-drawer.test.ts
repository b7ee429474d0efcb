import { describe, expect, it } from 'vitest';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { CAUTIONS } from '../../server/clinical/cautions.ts';
import { readDrawer } from '../../server/clinical/drawer.ts';
import { PATH_ROWS } from '../../server/clinical/path-rows.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { STAGING_ROWS } from '../../server/clinical/staging-rows.ts';
import { codesOf, lastVisit, questioning, rayOf, stageOf, wrap } from '../clinical/note.ts';

/** Every text that the core can show to a clinician. */
const TEXTS: readonly string[] = [
  ...LEXICON.flatMap(({ technique, meaning }) => [technique, meaning]),
  ...PATH_ROWS.flatMap(({ step, why, wouldChange, review }) => [step, why, wouldChange, review]),
  ...Object.values(CAUTIONS),
  ...RULES.flatMap(({ what, why, instead }) => [what, why, instead]),
];
const meaningOf = (id: string): string => LEXICON.find((entry) => entry.id === id)?.meaning ?? '';

describe('GREGG06 (read): 75 of 160 plates without symptoms looked torn on ultrasound', () => {
  it('is what the caution beside every image says', () => {
    const [, torn = Number.NaN, all = Number.NaN] =
      /(\d+) of (\d+) plates without symptoms/.exec(CAUTIONS['image alone']) ?? [];
    expect(Math.round((Number(torn) / Number(all)) * 100)).toBe(47);
    expect([torn, all]).toEqual(['75', '160']);
  });
  it('so a tear alone stages nothing and stands beside no operation', () => {
    expect(stageOf('2nd tender plate\nus 2nd tear full')).toBe('cannot stage');
    expect(stageOf('pain 2nd none\n2nd tender none, drawer 1\nmri 2nd tear full')).toBe('not applicable');
    expect(codesOf('2nd tender none, drawer 0, straight\nus 2nd tear full\nplan operation 2nd plate repair')).toContain(
      'invasive-unconfirmed',
    );
  });
});

describe('NERY-RF (read): before operation over 97 % of 35 joints with anatomical grade 0 or I had drawer 1, none was stable', () => {
  it('so an intact plate never makes a joint stable, with or without a drawer', () => {
    for (const scan of ['us', 'mri']) {
      expect(stageOf(`2nd tender plate, deviation medial\n${scan} 2nd plate intact`)).toBe('1-3');
      expect(stageOf(`2nd tender plate, drawer 1\n${scan} 2nd plate intact`)).toBe('1');
      expect(rayOf(`2nd tender plate\n${scan} 2nd plate intact`).outcome.is).toBe('cannot stage');
    }
  });
  it('and a negative image is discordant with an unstable joint, not its end', () => {
    const { next } = rayOf(
      'tried tape 2nd 14 weeks no-relief\n2nd tender plate, drawer 2, medial\nmri 2nd plate intact',
    );
    expect(next.row).toBe('failed, image first');
    expect(next.cautions).toContain(CAUTIONS['negative image']);
  });
});

describe('NERY15 (read): which findings track the anatomical grade of 100 joints', () => {
  const alone = rayOf('2nd tender plate, drawer 2');
  const roles = (sign: string) =>
    rayOf(`2nd tender plate, drawer 2\n${sign}`)
      .evidence.filter(({ statement }) => !alone.evidence.some((each) => each.statement === statement))
      .map(({ role }) => role);
  it.each(['stand 2nd lifted 3 mm', '2nd paper pulls-out', '2nd supinated', 'stand gap 2-3'])('%s supports', (sign) => {
    expect(roles(sign)).toEqual(['supports']);
  });
  it.each([
    '2nd pronated',
    'web 2 click painful',
    'pain 2nd head 6/10',
    'history trigger heels',
    'history trigger sport',
  ])('%s is no evidence', (sign) => {
    expect(roles(sign)).toEqual([]);
    expect(stageOf(`2nd tender plate, drawer 2\n${sign}`)).toBe('2');
  });
  it('the drawer decides first: it alone gives a stage, deviation in one plane never does', () => {
    expect(['1', '2', '3'].map((grade) => stageOf(`2nd tender plate, drawer ${grade}`))).toEqual(['1', '2', '3']);
    for (const sign of ['deviation medial', 'medial marked', 'lateral 20°', 'extended', 'extended marked'])
      expect(stageOf(`2nd tender plate, ${sign}`)).toBe('1-3');
    expect(rayOf('2nd tender plate, deviation medial').missing.map(({ finding }) => finding)).toEqual(['drawer']);
  });
});

// 150, 108, 21 and 12 toes make 291; 52, 37, 7 and 4 %.
describe('PECK12 (read): 291 toes by grade 1 to 3, dislocation counted apart', () => {
  it('so no grade of that scale is a stable joint or a dislocation, and its words are not guessed', () => {
    for (const grade of [1, 2, 3]) {
      const [fact] = lastVisit(wrap(`2nd drawer ${grade}`, 'scales drawer 1-3')).facts.facts;
      if (fact?.finding !== 'drawer') throw new Error('the drawer was not read');
      expect(readDrawer({ is: 'stated', fact }).steps).toEqual([1, 2, 3]);
    }
  });
});

describe('LACH18 (read) cuts plates in millimetres; no source gives millimetres for a drawer grade', () => {
  it.each(['2 mm', '4 mm', '6 mm'])('a drawer of %s is reported and never becomes a grade', (length) => {
    const note = `2nd tender plate, drawer ${length}, medial`;
    expect(codesOf(note)).toEqual(['wrong-unit']);
    expect(stageOf(note)).toBe('1-3');
  });
});

describe('KAZ07 (read): of 169 crossover toes 112 had a positive drawer', () => {
  it('so a crossover without one is doubted, not denied', () => {
    const note = '2nd overlap hallux at rest, drawer 0, tender plate';
    expect(stageOf(note)).toBe('3');
    expect(questioning(note)).toContain('drawer');
    expect(lastVisit(note).reports.filter(({ severity }) => severity !== 'missing')).toEqual([]);
  });
  it('and metatarsal length, on which KAZ07 and PROT disagree, moves nothing', () => {
    for (const by of ['3 mm', '6 mm', '9 mm'])
      expect(stageOf(`2nd tender plate, drawer 1\nxray wb; 2nd longer ${by}`)).toBe('1');
    expect(meaningOf('protrusion')).toMatch(/PROT and FLEI17 for, KAZ07 against/);
  });
});

// 99.8 % can't come from the nine intact plates that the 88.9 % of the same paper (8 of 9) implies.
describe('KLEIN13E and FLEI14 (read) disagree on the specificity of the drawer: 99.8 % against 22 %', () => {
  it('so no text of the core quotes either, nor a sensitivity of the drawer', () => {
    for (const text of TEXTS) expect(text).not.toMatch(/99[.,]8|\b22 ?%|91[.,]5|80[.,]6/);
    expect(meaningOf('drawer')).not.toMatch(/%|sensitiv|specific/i);
  });
});

describe('COUGH11 (read that stages and grades are two systems; the table itself from memory)', () => {
  it('a stage says that its table is from memory', () => {
    expect(rayOf('2nd tender plate, drawer 2').mark).toBe('from memory, to be verified');
    for (const { source, mark } of STAGING_ROWS)
      expect([source, mark]).toEqual(
        source === 'COUGH11' ? [source, 'from memory, to be verified'] : ['common practice', 'common practice'],
      );
  });
});
