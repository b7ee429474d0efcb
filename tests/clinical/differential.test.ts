import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { CONDITIONS } from '../../server/clinical/differential/conditions.ts';
import { differentialOf } from '../../server/clinical/differential/differential.ts';
import { by, counts, everyArgument, leading, open, siteOf, sitesOf, weighed } from './differential.ts';
import { lastVisit } from './note.ts';

// Which finding points to which condition: common practice, unless the claim names a publication.

/** The first condition that is argued for, a note in which it leads, and a near miss in which it does not. */
const LEADS: readonly [condition: string, site: string, leads: string, nearMiss: string][] = [
  ['hallux rigidus', 'right great toe', '1st tender dorsal, df limited', '1st tender, df full'],
  ['sesamoid pain', 'right great toe', '1st tender plantar', '1st tender dorsal'],
  [
    'infection',
    'right ray 2',
    '2nd hot, red, tender plantar\nhistory fever',
    '2nd tender plantar, no heat, no redness',
  ],
  [
    'fracture or stress fracture',
    'right ray 3',
    'history trigger load-rise\n3rd tender shaft, drawer 0',
    'history trigger running\n3rd tender plate, drawer 0',
  ],
  ['tumour', 'right web 2', 'web 2 mass, squeeze painful', 'web 2 no mass, squeeze painful'],
  [
    'plantar plate tear',
    'right ray 2',
    '2nd tender plate, drawer 2, paper pulls-out, medial, swollen',
    '2nd red, tender none, drawer 0, paper holds, straight, no swelling',
  ],
  [
    'interdigital neuroma',
    'right web 3',
    'web 3 click painful, squeeze painful, numb, tender',
    'web 3 no click, no squeeze, no numbness, tender none\nstand gap 3-4\npain web 3 1/10',
  ],
  [
    'intermetatarsal bursitis',
    'right web 2',
    'stand gap 2-3\nweb 2 squeeze painful\nus web 2 bursitis 8 mm',
    'web 2 squeeze painful, numb',
  ],
  [
    'synovitis or inflammatory arthritis',
    'right ray 2',
    'history morning-stiffness 60 minutes\n2nd-4th swollen, tender plantar, drawer 0\ncompression sore',
    'history no morning-stiffness\n2nd no swelling, tender plate, drawer 2\ncompression painless',
  ],
  [
    'gout',
    'right ray 2',
    'history gout; onset sudden 2 days\n2nd tender dorsal, no heat\nlab urate high',
    'history onset gradual 3 months\n2nd tender dorsal',
  ],
  [
    'Freiberg disease',
    'right ray 2',
    '2nd tender dorsal, dorsiflexion limited painful\nxray 2nd freiberg',
    '2nd tender dorsal, dorsiflexion full, drawer 2, paper pulls-out\nxray 2nd no freiberg',
  ],
  ['painful callus', 'right ray 3', '3rd callus under head painful', '3rd tender plate, no callus'],
  [
    'fat pad atrophy',
    'right foot',
    'pain 4/10 barefoot\nhistory trigger barefoot\ntried steroid 2025-01',
    'pain 4/10 aching',
  ],
  [
    'tarsal tunnel syndrome',
    'right foot',
    'pain 5/10 burning\ntinel positive behind malleolus\nwebs 2-3 numb',
    'pain 5/10\ntinel negative',
  ],
];

describe('each condition leads where its findings are, and not in a near miss', () => {
  test.each(LEADS)('%s at %s', (condition, site, leads, nearMiss) => {
    expect(leading(leads, site)[0]).toBe(condition);
    expect(leading(nearMiss, site)[0]).not.toBe(condition);
  });
  it('and every condition has such a case', () => {
    expect([...new Set(LEADS.map(([condition]) => condition))].sort()).toEqual(CONDITIONS.map(({ id }) => id).sort());
  });
});

describe('what must not be missed comes first', () => {
  it('before a condition that many more findings argue for', () => {
    const note = '2nd tender plate, drawer 2, paper pulls-out, medial, hot\nhistory trigger load-rise; previous cancer';
    expect(leading(note).slice(0, 4)).toEqual([
      'infection',
      'fracture or stress fracture',
      'tumour',
      'plantar plate tear',
    ]);
  });
  it('and is listed with what was not asked even where nothing argues for it', () => {
    const ids = siteOf('2nd tender plate, drawer 2').conditions.map(({ condition }) => condition.id);
    expect(ids.slice(0, 3)).toEqual(['infection', 'fracture or stress fracture', 'tumour']);
    expect(open('2nd tender plate, drawer 2', 'infection')).toEqual([
      'hot: not mentioned',
      'redness: not mentioned',
      'fever: not mentioned',
    ]);
  });
  it('a red flag stands above every site, also of a visit that opens none', () => {
    expect(differentialOf(lastVisit('2nd hot, tender plantar\nhistory fever')).flags.map(({ flag }) => flag)).toEqual([
      'infection',
    ]);
    expect(differentialOf(lastVisit('calf swollen tender')).flags).toHaveLength(1);
    expect(sitesOf('calf swollen tender')).toEqual([]);
  });
  it('a sign of infection opens its site and argues, a tuning fork decides nothing alone', () => {
    expect(leading('2nd cellulitis')[0]).toBe('infection');
    expect(
      by('no proof', '3rd tender shaft, tuning-fork negative', 'fracture or stress fracture', 'right ray 3'),
    ).toEqual(['tuning-fork']);
  });
  it('no fever excludes nothing', () => {
    expect(by('no proof', '2nd hot, tender plantar\nhistory no fever', 'infection')).toEqual(['fever']);
  });
});

describe('order below that', () => {
  it('is by how many findings argue for, then by how few against', () => {
    const note = '2nd tender plate, drawer 2, swollen\nweb 2 squeeze painful';
    expect(leading(note)).toEqual([
      'plantar plate tear',
      'interdigital neuroma',
      'intermetatarsal bursitis',
      'synovitis or inflammatory arthritis',
    ]);
    expect(counts(note, 'plantar plate tear')).toEqual([3, 0]);
  });
  it('counts a finding once, however often it is stated', () => {
    expect(counts('2nd tender plate\n2nd tender plantar', 'plantar plate tear')).toEqual([1, 0]);
  });
});

describe('silence, doubt and what cannot be read', () => {
  it('silence is never against: it is not examined', () => {
    for (const { conditions } of differentialOf(lastVisit('2nd pain 5/10\nweb 2 pain 5/10\npain 5/10')).sites)
      for (const { arguments: all, open: unknown, condition } of conditions) {
        expect([condition.id, all.filter(({ role }) => role === 'against')]).toEqual([condition.id, []]);
        expect(unknown.map(({ because }) => because).every((because) => because === 'not mentioned')).toBe(true);
      }
  });
  it.each([
    ['2nd tender plate, drawer not done', 'drawer: not done'],
    ['2nd tender plate, drawer unable "guarding"', 'drawer: unable'],
    ['2nd tender plate, ?drawer', 'drawer: unread'],
    ['2nd tender plate, drawer not 2', 'drawer: unread'],
    ['2nd tender plate, drawer 2 previously', 'drawer: unread'],
    ['2nd tender plate, ?swelling', 'swelling: doubtful'],
  ])('%s', (note, reason) => {
    expect(open(note, 'plantar plate tear')).toContain(reason);
    const [finding = ''] = reason.split(':');
    expect(weighed(note, 'plantar plate tear').arguments.map((each) => each.finding)).not.toContain(finding);
  });
  it('tenderness without its place leaves plate, shaft and space as open as silence', () => {
    for (const condition of ['plantar plate tear', 'fracture or stress fracture', 'interdigital neuroma'])
      expect(open('2nd tender', condition)).toContain('tenderness: not mentioned');
  });
  it('two statements of one joint that contradict each other argue neither way', () => {
    const note = '2nd tender plate, drawer 0\n2nd drawer 2';
    expect(by('for', note, 'plantar plate tear')).not.toContain('drawer');
    expect(by('against', note, 'plantar plate tear')).not.toContain('drawer');
    expect(open(note, 'plantar plate tear')).toContain('drawer: contradictory');
  });
  it('an unread word at the ray is listed and not used', () => {
    expect(siteOf('2nd tender plate, wobblish').unread).toEqual(['wobblish']);
  });
  it('what an earlier visit told still argues, until it is denied', () => {
    const later = (line: string) =>
      `forefoot 1\nscales drawer 0-4\n\nvisit 2026-01-05 first right\nhistory gout\n2nd tender plate\n\nvisit 2026-03-09 review right\n2nd tender plate\n${line}`;
    expect(weighed(later(''), 'gout').arguments).toMatchObject([{ role: 'for', grounds: [], earlier: '2026-01-05' }]);
    expect(counts(later('history no gout'), 'gout')).toEqual([0, 0]);
  });
  it('what is planned was not found', () => {
    expect(counts('2nd pain 3/10\nplan block 2nd complete relief', 'plantar plate tear')).toEqual([0, 0]);
  });
});

describe('which site looks where', () => {
  it('a site opens by its own complaint or sign, not by a test that was done', () => {
    expect(sitesOf('2nd tender none, drawer 0, paper holds\nwebs 2-3 no click')).toEqual([]);
    expect(sitesOf('3rd drawer 2\nweb 1 squeeze painful')).toEqual(['right ray 3', 'right web 1']);
  });
  it('a lax joint that is stated painless opens none', () => {
    expect(sitesOf('3rd no pain, tender none, drawer 1, straight')).toEqual([]);
  });
  it('a neighbour counts for what it shares with the site only', () => {
    expect(by('for', '2nd tender plate\nweb 2 squeeze painful', 'interdigital neuroma')).toEqual(['squeeze']);
    expect(by('for', '2nd tender plate\nweb 3 squeeze painful', 'interdigital neuroma')).toEqual([]);
    expect(by('for', '2nd tender plate\n3rd drawer 3', 'plantar plate tear')).toEqual(['tenderness']);
  });
  it('a sign in one neighbouring space is not undone by its absence in the other', () => {
    const note = '2nd tender plate\nweb 1 no squeeze\nweb 2 squeeze painful';
    expect(by('for', note, 'interdigital neuroma')).toEqual(['squeeze']);
    expect(by('against', note, 'interdigital neuroma')).toEqual([]);
  });
  it('the other foot argues nothing', () => {
    const both =
      'forefoot 1\nscales drawer 0-4\n\nvisit 2026-03-09 first both\nright 2nd tender plate\nleft 2nd drawer 3\n';
    expect(by('for', both, 'plantar plate tear')).toEqual(['tenderness']);
  });
});

describe('plate and nerve', () => {
  const note = '2nd tender plate, drawer 2\nweb 2 click painful, squeeze painful';
  it('can both be true, which is said', () => {
    expect(leading(note)).toEqual(expect.arrayContaining(['plantar plate tear', 'interdigital neuroma']));
    expect(siteOf(note).remarks.map(({ source }) => source)).toEqual(['COUGH02']);
    expect(siteOf('2nd tender plate, drawer 2').remarks).toEqual([]);
  });
  it('a block of the joint and a block of the web tell them apart', () => {
    const blocks = `${note}\n2nd block complete relief\nweb 2 block no relief`;
    expect(by('for', blocks, 'plantar plate tear')).toContain('block');
    expect(by('against', blocks, 'interdigital neuroma')).toContain('block');
  });
  it.each(['neuroma 8 mm', 'thickening', 'fibrosis'])(
    'an image of %s beside an unstable joint proves nothing',
    (lesion) => {
      expect(by('no proof', `${note}\nus web 2 ${lesion}`, 'interdigital neuroma', 'right web 2')).toContain(
        'web-lesion',
      );
      expect(by('no proof', `${note}\nus web 2 ${lesion}`, 'interdigital neuroma')).toContain('web-lesion');
    },
  );
  it('a neuroma on an image beside stable joints argues for it, thickening alone does not', () => {
    const stable = '2nd-3rd tender none, drawer 0\nweb 2 squeeze painful\nus web 2';
    expect(by('for', `${stable} neuroma 8 mm`, 'interdigital neuroma', 'right web 2')).toContain('web-lesion');
    expect(by('for', `${stable} thickening`, 'interdigital neuroma', 'right web 2')).not.toContain('web-lesion');
  });
  it('overlap and dislocation count as unstable without a drawer', () => {
    const crossed = '2nd overlap hallux at rest\nweb 2 squeeze painful\nus web 2 neuroma 8 mm';
    expect(by('no proof', crossed, 'interdigital neuroma', 'right web 2')).toContain('web-lesion');
  });
});

describe('after an operation', () => {
  it('a floating toe and lost purchase are no sign of a torn plate', () => {
    const note = 'history earlier-surgery 2nd weil\n2nd tender plantar, lifted 3 mm, paper pulls-out, extended';
    expect(by('for', note, 'plantar plate tear')).toEqual(['tenderness']);
    expect(by('no proof', note, 'plantar plate tear')).toEqual(['paper', 'lifted', 'extension']);
  });
});

describe('imaging against the exam', () => {
  const images = (text: string, name?: string) => siteOf(text, name).images.map(({ verdict }) => verdict);
  it.each([
    ['2nd tender plate, drawer 2\nmri 2nd tear', 'agrees'],
    ['2nd tender plate, drawer 2\nmri 2nd no tear', 'disagrees'],
    ['2nd tender plate, drawer 0\nmri 2nd tear', 'disagrees'],
    ['2nd tender plate, straight\nmri 2nd tear', 'open'],
    ['2nd tender plate, drawer 2\nmri 2nd ?tear', 'open'],
  ])('%s: %s', (note, verdict) => {
    expect(images(note)).toEqual([verdict]);
  });
  it('is nothing where no image is reported', () => {
    expect(images('2nd tender plate, drawer 2')).toEqual([]);
  });
  it('is older than an injury or an injection that came later', () => {
    const body = '2nd tender plate, drawer 2\nmri taken 2026-01-05; 2nd tear';
    expect(images(`${body}\nhistory injury 2 weeks ago`)).toEqual(['older']);
    expect(images(`${body}\ntried steroid web 2 2026-02`)).toEqual(['older']);
    expect(images(`${body}\ntried steroid web 2 2025-11`)).toEqual(['agrees']);
  });
  it('and then proves nothing', () => {
    const note =
      '2nd tender plate, drawer 2\nmri taken 2026-01-05; 2nd tear; web 2 bursitis 9 mm\ntried steroid web 2 2026-02';
    expect(by('no proof', note, 'plantar plate tear')).toContain('tear');
    expect(by('no proof', note, 'intermetatarsal bursitis')).toContain('web-lesion');
    expect(by('for', note.replace('2026-02', '2025-11'), 'plantar plate tear')).toContain('tear');
  });
  it('of an earlier visit still counts, and grows old', () => {
    const visits = (later: string) =>
      `forefoot 1\nscales drawer 0-4\n\nvisit 2026-01-05 first right\n2nd tender plate, drawer 2\nus 2nd tear\n\nvisit 2026-03-09 review right\n2nd tender plate, drawer 2\n${later}`;
    expect(images(visits(''))).toEqual(['agrees']);
    expect(images(visits('tried steroid 2nd 2026-02\n'))).toEqual(['older']);
    expect(siteOf(visits('')).images[0]?.text).toMatch(/reported on 2026-01-05/);
  });
  it('of a space is held against the signs of the space', () => {
    expect(images('web 3 squeeze painful\nus web 3 neuroma 8 mm', 'right web 3')).toEqual(['agrees']);
    expect(images('web 3 squeeze painful\nus web 3 no neuroma', 'right web 3')).toEqual(['disagrees']);
    expect(images('web 3 mass\nus web 3 neuroma 8 mm', 'right web 3')).toEqual(['open']);
  });
});

/** Statements of one foot that may stand together; none of them changes what another one means. */
const LINES = [
  '2nd tender plate',
  '2nd drawer 2',
  '2nd swelling mild',
  '2nd paper weak',
  '2nd medial 12°',
  '2nd hot',
  '2nd redness',
  '2nd dorsiflexion limited',
  '3rd tender shaft',
  '4th drawer 0',
  '3rd callus under head painful',
  'web 2 squeeze painful',
  'web 2 no click',
  'web 3 numb',
  'compression sore',
  'tinel negative',
  'stand gap 2-3',
  'history fever',
  'history morning-stiffness 30 minutes',
  'history gout',
  'history trigger load-rise',
  'history onset gradual 3 months',
  'history previous cancer',
  'pain 2nd plantar 6/10 night',
  'xray 2nd longer 4 mm',
  'mri 2nd tear',
  'lab urate high',
  'lab crp raised',
  'plan tape 2nd; review in 6 weeks',
  'sense monofilament 10/10',
  'stand hallux-valgus mild',
];

describe('an unrelated fact', () => {
  it('never removes an argument', () => {
    fc.assert(
      fc.property(fc.subarray(LINES, { minLength: 1, maxLength: 8 }), fc.constantFrom(...LINES), (lines, more) => {
        const [before, after] = [everyArgument(lines.join('\n')), everyArgument([...lines, more].join('\n'))];
        expect(before.filter((argument) => !after.includes(argument))).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
  it('in another order argues the same', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(LINES, { maxLength: 12 }), (lines) => {
        expect(everyArgument(lines.join('\n')).sort()).toEqual(everyArgument([...lines].sort().join('\n')).sort());
      }),
      { numRuns: 20 },
    );
  });
});

describe('the differential', () => {
  it('is computed once for an analysis, and is not part of it', () => {
    const analysis = lastVisit('2nd tender plate');
    expect(differentialOf(analysis)).toBe(differentialOf(analysis));
    expect(JSON.stringify(analysis)).not.toContain('plantar plate tear:');
  });
  it('gives each argument its grounds, source and mark', () => {
    const { sites } = differentialOf(lastVisit(LINES.join('\n')));
    const all = sites.flatMap(({ conditions }) => conditions.flatMap((each) => each.arguments));
    expect(all.length).toBeGreaterThan(30);
    for (const { grounds, source, mark, why } of all) {
      expect(grounds.length).toBeGreaterThan(0);
      expect([source, mark, why]).toEqual([expect.any(String), expect.any(String), expect.any(String)]);
    }
  });
  it('names no probability', () => {
    const texts = CONDITIONS.flatMap(({ criteria, separate }) => [
      separate.ask,
      ...criteria.flatMap(({ claims, ask }) => [ask ?? '', ...claims.map(({ why }) => why)]),
    ]);
    expect(texts.filter((text) => /probab|likel|odds|risk of \d|%.*chance/i.test(text))).toEqual([]);
  });
});
