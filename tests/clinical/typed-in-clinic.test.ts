import { describe, expect, it } from 'vitest';
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
  it('counts a mass', () => {
    expect(codesOf(`web 2 mass firm\n${TWO}`)).toContain('unread-red-flag');
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
