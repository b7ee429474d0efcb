import { describe, expect, it } from 'vitest';
import { readLine } from '../../grammar/read-line.ts';
import { analyseHeader } from '../../server/clinical/analyse.ts';
import { codesOf, lastVisit, rayOf, stageOf, whyOf, wrap } from './note.ts';

// Notes as a surgeon types them in clinic; what must follow from each is common practice.
const TWO = '2nd tender plantar, drawer 2';
const cautions = (note: string): string => rayOf(note).next.cautions.join(' ');

describe('an overlap of which nobody says which toe lies on which', () => {
  it('of several rays is kept as typed and sets no stage', () => {
    const note = '2nd tender plantar, drawer 1, medial\n3rd not tender, drawer 0, straight\n2nd to 3rd overlap';
    expect([stageOf(note), stageOf(note, 3)]).not.toContain('3');
    expect(codesOf(note)).toContain('unclear-finding');
    const [report] = lastVisit(note).reports.filter(({ code }) => code === 'unclear-finding');
    expect(report?.message).toMatch(/which toe lies on which/);
  });
  it('denied of several rays is clear', () => {
    expect(codesOf('2nd-5th no overlap')).not.toContain('unclear-finding');
    expect(codesOf('2nd-4th overlap none')).not.toContain('unclear-finding');
  });
  it('of the third ray alone leaves the hallux open, and asks', () => {
    const note = '3rd tender plantar, drawer 1, medial, overlap';
    expect(stageOf(note, 3)).toBe('1-3');
    expect(rayOf(note, 3).missing.map(({ finding }) => finding)).toEqual(['overlap']);
  });
  it('of the second ray alone is the hallux', () => {
    expect(stageOf('2nd tender plantar, drawer 2, overlap')).toBe('3');
  });
});

describe('both pulses, in a visit of one foot', () => {
  const unclear = (note: string) => lastVisit(note).reports.filter(({ code }) => code === 'unclear-finding');
  it('may be those of one foot or of both: nobody knows', () => {
    expect(unclear('pulses both palpable')[0]?.message).toMatch(/both pulses of this foot, or both feet/);
    expect(unclear('dp both palpable')).toHaveLength(1);
  });
  it('are clear where the feet or the pulses are named', () => {
    expect(unclear('pulses palpable both feet')).toEqual([]);
    expect(unclear('dp and pt both palpable')).toEqual([]);
  });
});

describe('what nobody may pass over', () => {
  const reported = (note: string, code: string) => lastVisit(note).reports.filter((each) => each.code === code);
  it('is a red flag that is only proposed', () => {
    expect(reported('proposed 2nd dislocated  // second toe dislocated', 'unread-red-flag')).toHaveLength(1);
    expect(reported('proposed no fever  // no fever', 'unread-red-flag')).toEqual([]);
    expect(reported('proposed 2nd drawer 2  // drawer two', 'unread-red-flag')).toEqual([]);
  });
  it('is a sign of a ray that is called normal', () => {
    expect(reported('2nd normal, tender', 'stated-twice')[0]?.message).toMatch(/"normal" beside it contradict/);
    expect(reported('2nd normal\n3rd tender', 'stated-twice')).toEqual([]);
    expect(reported('2nd normal, not tender', 'stated-twice')).toEqual([]);
    expect(reported('2nd normal, drawer 2', 'stated-twice')).toEqual([]);
  });
  it('is a treatment beside `tried none`, or what stood beside an exam that was not done', () => {
    const told = (note: string) => reported(note, 'stated-twice').map(({ message }) => message);
    expect(told('tried tape; none')).toEqual([
      '"tried none" and "tape" contradict each other. Keep the one that is right.',
    ]);
    expect(told('tried none\ntried steroid web 2 2026-01')).toHaveLength(1);
    expect(told('stand not done; gait antalgic')).toEqual([
      '"stand not done" and "gait" contradict each other. Keep the one that is right.',
    ]);
    expect(told('tried none\nplan tape')).toEqual([]);
    expect(told('tried none; no steroid')).toEqual([]);
    expect(told('stand not done\n2nd tender')).toEqual([]);
  });
  it('is a signature above every visit', () => {
    const { reports } = analyseHeader([readLine('forefoot 1'), readLine('signed 2026-01-02 AB')]);
    expect(reports.map(({ code, place }) => [code, place.line])).toEqual([['word-out-of-place', 1]]);
  });
});

describe('a ray of its own line under the heading of a foot', () => {
  it('leaves that foot in force for the plan below', () => {
    const { facts } = lastVisit('visit 2026-03-09 first both\nleft:\nweb 2: click none\nplan met-pad').facts;
    expect(facts.map(({ finding, side }) => [finding, side])).toEqual([
      ['click', 'left'],
      ['pad', 'left'],
    ]);
  });
});

describe('an injury whose words cannot be read', () => {
  it('is named beside the stage, and never called not mentioned', () => {
    const assumptions = rayOf(`history injury zzq 5 days\n${TWO}`).assumptions.join();
    expect(assumptions).toMatch(/an injury or onset is written that cannot be read/);
    expect(assumptions).not.toMatch(/onset and injury not mentioned/);
  });
  it('is named in a later visit too', () => {
    const first = wrap(`history onset gradual 1 year\n${TWO}`);
    const later = `${first}\nvisit 2026-03-20 review right\nhistory fall zzq injury 2 days\n${TWO}\n`;
    expect(rayOf(later).assumptions.join()).toMatch(/cannot be read/);
  });
});

describe('pain in words that cannot be read', () => {
  it('is not called not denied', () => {
    const note = 'pain 2nd none zzq\n2nd not tender, drawer 2';
    expect(rayOf(note).assumptions.join()).toMatch(/what is written of the pain cannot be read, taken as symptomatic/);
  });
});

describe('statements that stand beside each other without contradiction', () => {
  it.each([
    'history trigger walking, no injury',
    '2nd toe white, cold, cap refill 6 s',
    'xray no fracture, effusion',
    '2nd tender plantar, no dorsal tenderness',
  ])('%s', (note) => expect(codesOf(note)).not.toContain('stated-twice'));
  it.each(['history trigger injury, no injury', '2nd tender dorsal, no dorsal tenderness', '2nd tender plantar, nt'])(
    '%s contradicts itself',
    (note) => expect(codesOf(note)).toContain('stated-twice'),
  );
  it('two colours of one toe both state its circulation, and the worse one counts', () => {
    const note = '2nd toe white, cold, dislocated acute 3 hours';
    expect(codesOf(note)).not.toContain('acute-dislocation-incomplete');
    expect(whyOf('2nd pink, white')).toMatch(/red flag/);
  });
});

describe('a red-flag word that could not be read', () => {
  const operated = wrap('operation 3rd plate repair', 'scales drawer 0-4', 'visit 2026-03-02 operation right');
  it('leads the cautions of every next step', () => {
    const note = `${operated}\nvisit 2026-03-16 postop right\nhistory calf pain 2 days, breathless\n3rd wound clean, pink\n`;
    expect(rayOf(note, 3).next.cautions[0]).toMatch(/may be a red flag/);
    expect(rayOf(note, 3).next.why).not.toMatch(/nothing recorded/);
  });
  it('is no caution where there is none, or where it was read', () => {
    expect(cautions(TWO)).not.toMatch(/may be a red flag/);
    expect(cautions(`history no fever\n${TWO}, pink`)).not.toMatch(/may be a red flag/);
  });
  it('counts a mass, which is a red flag by itself where it was read', () => {
    expect(codesOf(`web 2 masses\n2nd mass wobbly\n${TWO}`)).toContain('unread-red-flag');
    expect(codesOf(`web 2 mass firm\n${TWO}`)).toContain('red-flag');
  });
});

describe('a quiet neighbour', () => {
  it('with drawer 0, straight and not tender has no pain to explain', () => {
    expect(rayOf('3rd not tender, drawer 0, straight, paper holds', 3).next.row).toBe('quiet ray');
  });
  it.each([
    '3rd not tender, drawer 0, straight\npain 3rd 3/10',
    '3rd not tender, drawer 0, straight, swollen',
    '3rd not tender, drawer 0',
    '3rd drawer 0, straight',
  ])('%s is not quiet', (note) => expect(rayOf(note, 3).next.row).not.toBe('quiet ray'));
});

describe('a plan under the heading of one foot in a bilateral visit', () => {
  const both = (body: string) => wrap(body, 'scales drawer 0-4', 'visit 2026-03-09 first both');
  const EXAM = 'R:\n2nd tender plantar, drawer 2\nL:\n2nd tender plantar, drawer 0, straight';
  const carried = (body: string) =>
    lastVisit(both(`${EXAM}\n${body}`)).reports.filter(({ code }) => code === 'side-from-heading');
  it('says once a line which foot it is read as', () => {
    const [report, ...more] = carried('plan tape 2nd 8 weeks; stiff-insert; review in 8 weeks');
    expect(report).toMatchObject({ severity: 'missing', message: expect.stringMatching(/left.*heading/) });
    expect(more).toEqual([]);
  });
  it('warns where an operation or an injection takes its side so', () => {
    for (const plan of ['plan operation 2nd plate repair', 'plan steroid 2nd'])
      expect(carried(plan)).toMatchObject([{ severity: 'contradiction' }]);
  });
  it.each([
    'plan tape R2 8 weeks; review in 8 weeks',
    'plan left stiff-insert',
    'both:\nplan stiff-insert',
    'L: plan tape 2nd',
    'plan review in 8 weeks',
  ])('is silent on %s', (plan) => expect(carried(plan)).toEqual([]));
  it('is silent in a visit of one foot', () => {
    expect(codesOf('right:\n2nd tender plantar, drawer 2\nplan tape 2nd')).not.toContain('side-from-heading');
  });
});

describe('a stage stated where stages are not used', () => {
  const operated = wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-10-01 operation right');
  it('of an operated joint is reported: a floating toe is no instability', () => {
    const note = `${operated}\nvisit 2026-03-09 review right\n2nd lifted 3 mm, drawer 1\nstage 2nd 2\n`;
    const [report] = lastVisit(note).reports.filter(({ code }) => code === 'stage-unsupported');
    expect(report?.message).toMatch(/operated on/);
  });
  it('of the fifth ray is reported', () =>
    expect(codesOf('5th tender plantar\nstage 5th 2')).toContain('stage-elsewhere'));
  it('above 0 of a joint without instability is reported', () => {
    expect(codesOf('2nd not tender, drawer 0, straight\nstage 2nd 1')).toContain('stage-unsupported');
    expect(codesOf('2nd not tender, drawer 0, straight\nstage 2nd 0')).not.toContain('stage-unsupported');
  });
  it('is left alone where the drawer is missing', () => {
    expect(codesOf('3rd tender plantar\nstage 3rd 2')).not.toContain('stage-unsupported');
  });
});

describe('what the evidence says of an extended toe', () => {
  it('is no more than the clinician said', () => {
    const whys = rayOf('2nd tender plantar, extended 15°').evidence.map(({ why }) => why);
    expect(whys.join()).not.toMatch(/marked/);
    expect(whys.join()).toMatch(/extended/);
  });
});

it('calls pain at two moments no contradiction, and at one moment one', () => {
  expect(codesOf('pain 2nd 6/10 walking, 2/10 at rest')).not.toContain('stated-twice');
  expect(codesOf('pain 2nd 6/10 walking, 2/10 walking')).toContain('stated-twice');
});
