import { describe, expect, it } from 'vitest';
import { codesOf, lastVisit, questioning, rayOf, spelled, stageOf, whyOf, wrap } from './note.ts';

// Gates before staging: common practice.
const TWO = '2nd tender plate, drawer 2, medial';

describe('an operated joint', () => {
  const operated = wrap('operation 2nd weil', 'scales drawer 0-4', 'visit 2025-10-01 operation right');
  const later = `${operated}\nvisit 2026-03-09 review right\n${TWO}\n3rd tender plate, drawer 1\n`;
  it('closes its own ray only, and speaks of residual instability', () => {
    expect(stageOf(later)).toBe('not applicable');
    expect(whyOf(later)).toMatch(/residual instability/);
    expect(stageOf(later, 3)).toBe('1');
  });
  it('closes its own ray only on the day of the operation too', () => {
    const day = 'operation done 2nd weil\n2nd tender plate, drawer 2\n3rd tender plate, drawer 1';
    expect([stageOf(day), stageOf(day, 3)]).toEqual(['not applicable', '1']);
  });
  it('does not close the same ray of the other foot', () => {
    const left = later.replace('review right', 'review left');
    expect(stageOf(left, 2, 'left')).toBe('2');
  });
  it('is closed by earlier surgery told in the history, of its own ray', () => {
    const told = `history previous surgery 2nd weil 2019\n${TWO}\n3rd tender plate, drawer 1`;
    expect([stageOf(told), stageOf(told, 3)]).toEqual(['not applicable', '1']);
    expect(stageOf(`history no previous surgery\n${TWO}`)).toBe('2');
  });
  it('that is only planned is no operation', () => {
    const planned = wrap('plan operation 2nd weil', 'scales drawer 0-4', 'visit 2025-10-01 first right');
    expect(stageOf(`${planned}\nvisit 2026-03-09 review right\n${TWO}\n`)).toBe('2');
  });
});

describe('an acute injury', () => {
  it('is what the diagnosis calls acute, unless something dates it', () => {
    expect(whyOf('2nd drawer 3, tender\ndx acute plantar plate tear 2nd')).toMatch(
      /acute injury by the working diagnosis/,
    );
    expect(whyOf('2nd drawer 3, tender\ndx plantar plate tear 2nd')).not.toMatch(/acute injury/);
    expect(whyOf('2nd drawer 3, tender\ndx acute gout')).not.toMatch(/acute injury/);
    expect(whyOf('history onset sudden 8 months\n2nd drawer 3, tender\ndx acute plantar plate tear 2nd')).not.toMatch(
      /acute injury/,
    );
  });
  it.each([
    `history onset sudden 3 weeks\n${TWO}`,
    `history injury; duration 3 weeks\n${TWO}`,
    `history onset sudden 10 days; injury\n${TWO}`,
    `history onset sudden on 2026-03-01\n${TWO}`,
    `history injury 5 days ago\n${TWO}`,
    `history injury 12 days\n${TWO}`,
    `history trauma on 2026-02-20\n${TWO}`,
    `history onset gradual 2 years; injury 3 weeks ago\n${TWO}`,
    `history injury 2 years ago; sudden onset 10 days\n${TWO}`,
  ])('%s: not staged', (note) => {
    expect(stageOf(note)).toBe('not applicable');
    expect(whyOf(note)).toMatch(/acute injury/);
  });
  it.each([
    `history onset sudden 8 weeks\n${TWO}`,
    `history onset sudden on 2025-11-02\n${TWO}`,
    `history onset gradual 3 weeks\n${TWO}`,
    `history injury; duration 5 months\n${TWO}`,
    `history injury 2 years ago; onset gradual 3 weeks\n${TWO}`,
    `history trigger running 3 weeks\n${TWO}`,
  ])('%s: staged', (note) => expect(stageOf(note)).toBe('2'));
  it('of a time that nobody states is staged with that assumption', () => {
    const note = `history injury\n${TWO}`;
    expect(stageOf(note)).toBe('2');
    expect(rayOf(note).assumptions.join()).toMatch(/the injury may be under six weeks old, taken as over six weeks/);
  });
});

describe('a systemic cause', () => {
  it('closes where three MTP joints are tender or swollen, over both feet', () => {
    expect(stageOf('2nd-4th tender plate, swelling, drawer 1')).toBe('not applicable');
    expect(whyOf('2nd-4th tender plate, swelling, drawer 1')).toMatch(/inflammatory arthritis/);
    const both = wrap(
      'R2 tender plate, drawer 2\nL2 swelling\nL3 tender plate',
      'scales drawer 0-4',
      'visit 2026-03-09 first both',
    );
    expect(stageOf(both)).toBe('not applicable');
    expect(stageOf(both.replace('L3 tender plate', 'L3 tender none'))).toBe('2');
  });
  it('does not count a tender shaft, nor two joints', () => {
    expect(stageOf('2nd tender plate, drawer 2\n3rd tender plate\n4th tender shaft')).toBe('2');
  });
  it('closes where compression is sore in both feet, not in one', () => {
    const sore = (which: string) =>
      wrap(`R2 tender plate, drawer 2\n${which}`, 'scales drawer 0-4', 'visit 2026-03-09 first both');
    expect(stageOf(sore('compression sore both feet'))).toBe('not applicable');
    expect(stageOf(`${TWO}\ncompression sore`)).toBe('2');
  });
});

describe('a neuropathic foot', () => {
  // 4-practice C row 5: neuropathy with a warm swollen foot; the foot as such swells, not one joint (common practice).
  it('that is hot and swollen as a whole is a red flag, and one that is only hot is not', () => {
    const flags = (text: string) => lastVisit(text).redFlags.map(({ flag }) => flag);
    expect(flags('sense lost\nright foot hot and swollen')).toEqual(['neuropathic hot foot']);
    expect(flags('mf 2/10\nfoot swollen, hot')).toEqual(['neuropathic hot foot']);
    expect(flags('neuropathic foot, warm cf L')).toEqual(['neuropathic hot foot']);
    expect(flags('sense lost\nwarmer than other side')).toEqual(['neuropathic hot foot']);
    expect(flags('2nd hot\ntemp 38.5')).toEqual(['infection']);
    expect(flags('2nd hot\ntemp 101')).toEqual(['infection']);
    expect(flags('2nd hot\ntemp 37.2')).toEqual([]);
    expect(flags('wound clean, dry\nfever')).toEqual([]);
    // Warm against itself, warm alone, or a foot that feels.
    expect(flags('neuropathic foot, warm cf R')).toEqual([]);
    expect(flags('sense lost\nhot')).toEqual([]);
    expect(flags('sense normal\nwarm cf L')).toEqual([]);
    expect(flags('sense lost\nfoot hot')).toEqual([]);
    expect(flags('sense normal\nfoot swollen, hot')).toEqual([]);
    expect(codesOf('sense lost\nfoot swollen')).toContain('neuropathic-swelling');
  });
  it('without protective sensation is not staged', () => {
    expect(stageOf(`${TWO}\nsense lost`)).toBe('not applicable');
    expect(stageOf(`${TWO}\nsense monofilament 0/10`)).toBe('not applicable');
  });
  it('with reduced feeling is staged with the assumption that asks to confirm it', () => {
    expect(stageOf(`${TWO}\nsense monofilament 7/10`)).toBe('2');
    expect(rayOf(`${TWO}\nsense monofilament 7/10`).assumptions.join()).toMatch(/feeling is reduced/);
    expect(rayOf(`${TWO}\nsense monofilament 10/10`).assumptions.join()).not.toMatch(/feeling/);
  });
  it('of the other side closes nothing here', () => {
    const both = wrap('R2 tender plate, drawer 2\nleft sense lost', 'scales drawer 0-4', 'visit 2026-03-09 first both');
    expect(stageOf(both)).toBe('2');
  });
});

describe('a growing foot', () => {
  const born = (year: number) => wrap(TWO, `patient QA-1 born ${year}\nscales drawer 0-4`);
  it('is not staged under 18 by the year of birth', () => {
    expect(stageOf(born(2010))).toBe('not applicable');
    expect(stageOf(born(2009))).toBe('not applicable');
    expect(whyOf(born(2010))).toMatch(/under 18/);
  });
  it('in the year of the eighteenth birthday is staged with a doubt', () => {
    expect(stageOf(born(2008))).toBe('2');
    expect(rayOf(born(2008)).assumptions.join()).toMatch(/may be 17/);
    expect(rayOf(born(2007)).assumptions.join()).not.toMatch(/17|adult/);
  });
  it('of unknown age is taken as an adult, and says so', () => {
    expect(rayOf(TWO).assumptions.join()).toMatch(/taken as an adult/);
  });
});

describe('rays', () => {
  it('ray 4 is staged and labelled as extrapolated', () => {
    expect(stageOf('4th tender plate, drawer 2', 4)).toBe('2');
    expect(rayOf('4th tender plate, drawer 2', 4).labels.join()).toMatch(/extrapolated/);
    expect(rayOf('3rd tender plate, drawer 2', 3).labels).toEqual([]);
  });
  it('ray 5 is not staged', () => {
    expect(stageOf('5th tender plate, drawer 2', 5)).toBe('not applicable');
  });
  it('the great toe is never staged', () => {
    expect(lastVisit('1st tender plantar, swelling').rays).toEqual([]);
  });
});

describe('a joint without symptoms', () => {
  it('with drawer 1 or more is lax and not staged', () => {
    const note = 'pain 2nd none\n2nd tender none, drawer 1';
    expect(stageOf(note)).toBe('not applicable');
    expect(whyOf(note)).toMatch(/lax/);
  });
  it.each([
    ['pain is not denied', '2nd tender none, drawer 2'],
    ['tenderness is not denied', 'pain 2nd none\n2nd drawer 2'],
    ['only swelling is denied', '2nd swelling none, drawer 2'],
    ['only one place is not tender', 'pain 2nd none\n2nd no dorsal tenderness, drawer 2'],
    ['the drawer hurts', 'pain 2nd none\n2nd tender none, drawer 2 painful'],
    ['the ray hurts, whatever is said of the foot', 'pain none\npain 2nd 6/10\n2nd tender none, drawer 2'],
    ['what was written of the pain was not understood', 'pain none; 2nd 6/10\n2nd tender none, drawer 2'],
  ])('is symptomatic while %s', (_, note) => expect(stageOf(note)).toBe('2'));
  it('that overlaps or is dislocated is still staged, as painless', () => {
    const overlap = 'pain 2nd none\n2nd overlap hallux at rest, tender none';
    expect(stageOf(overlap)).toBe('3');
    expect(rayOf(overlap).labels).toContain('painless');
    const dislocated = 'pain 2nd none\n2nd dislocated old irreducible, tender none';
    expect(stageOf(dislocated)).toBe('4');
    expect(rayOf(dislocated).labels).toContain('painless');
    expect(rayOf('2nd dislocated old irreducible, tender plantar').labels).not.toContain('painless');
  });
  it('counts as painless only where feeling is kept', () => {
    expect(stageOf('pain 2nd none\n2nd tender none, drawer 2\nsense reduced')).toBe('2');
  });
});

describe('a red flag', () => {
  it.each([
    ['infection', '2nd hot, tender plate, drawer 2\nfever'],
    ['a wound with pus', `${TWO}\nwound pus`],
    ['pus that is named by itself', `${TWO}\npus`],
    ['cellulitis', '2nd cellulitis, tender plate, drawer 2'],
    ['tracking redness', `${TWO}\ntracking`],
    ['a discharge with fever', `${TWO}\nwound discharge\nfever`],
    ['a discharging wound that is hot', `${TWO}\nwound discharging\n2nd hot`],
    ['a toe without blood', '2nd colour white, tender plate, drawer 2'],
    ['an acute dislocation', '2nd dislocated acute, tender plate'],
    ['a hot foot without feeling', '2nd hot, swelling, drawer 2\nsense reduced'],
  ])('of %s closes staging', (_, note) => {
    const ray = rayOf(note);
    expect(spelled(ray.outcome)).toBe('not applicable');
    expect(ray.next.urgent).toBe(true);
    expect(questioning(note)).toEqual([]);
  });
  it.each([
    ['heat without fever', '2nd hot, tender plate, drawer 2'],
    ['fever without a hot joint', `${TWO}\nfever`],
    ['fever denied', '2nd hot, tender plate, drawer 2\nno fever'],
    ['pus denied', `${TWO}\nno pus seen, no cellulitis`],
    ['a discharge by itself', `${TWO}\nwound discharge`],
    ['a pink toe', '2nd colour pink, tender plate, drawer 2'],
    ['a hot neighbour', '2nd tender plate, drawer 2\n4th hot\nfever'],
  ])('%s closes nothing', (_, note) => {
    expect(stageOf(note)).toBe('2');
    expect(rayOf(note).next.urgent).toBe(false);
  });
  it('of a foot whose rays nobody examined, or of the great toe, is reported as danger', () => {
    for (const note of ['wound pus', '1st colour white', 'hot\nfever']) {
      const found = lastVisit(note).reports.filter(({ code }) => code === 'red-flag');
      expect(found.map(({ severity }) => severity)).toEqual(['danger']);
    }
  });
});

describe('what was not asked shows beside the stage', () => {
  it('gate by gate', () => {
    const told = rayOf('2nd drawer 2').assumptions.join('; ');
    for (const gate of [
      /operation/,
      /adult/,
      /feeling/,
      /compression/,
      /onset and injury/,
      /pain and tenderness/,
      /overlap/,
      /dislocation/,
    ])
      expect(told).toMatch(gate);
  });
  it('and no longer once it was', () => {
    const full = wrap(
      `history onset gradual 5 months\n${TWO}, overlap none, no dislocation\nsense monofilament 10/10\ncompression painless`,
      'patient QA-1 born 1960\nscales drawer 0-4',
    );
    const told = rayOf(full).assumptions.join('; ');
    for (const gate of [/adult/, /feeling/, /compression/, /onset/, /pain/, /overlap/, /dislocation/])
      expect(told).not.toMatch(gate);
  });
  it('unread words of the exam of that ray stand there, quotes do not', () => {
    const note = '2nd tender plate, drawer 2, wobbly gristly\n3rd tender plate, drawer 1 "as before"';
    expect(rayOf(note).assumptions.join()).toMatch(/wobbly gristly/);
    expect(rayOf(note, 3).assumptions.join()).not.toMatch(/wobbly|as before/);
  });
});

describe('an operation that is written and was not read', () => {
  const TWO = '2nd tender plate, drawer 2, medial';
  const operated = (text: string) => rayOf(text).assumptions.filter((each) => /operation/.test(each));
  it.each([
    'history weil 2nd last spring',
    'history "had her bunion op in 2019"',
    'history toe was fused, fusion elsewhere',
  ])('is named beside the stage: %s', (line) => {
    expect(operated(`${line}\n${TWO}`)).toEqual([
      'what is written of an operation was not read, taken as none on this ray',
    ]);
  });
  it.each(['history onset gradual', 'history no earlier-surgery'])('is not made up: %s', (line) => {
    expect(operated(`${line}\n${TWO}`).join()).not.toMatch(/not read/);
  });
});

describe('an ulcer that reaches bone', () => {
  it('comes before staging, and not once it has healed', () => {
    expect(whyOf('2nd drawer 2, tender, ulcer probes to bone')).toMatch(/reaches bone/);
    expect(whyOf('2nd drawer 2, tender, ulcer healed')).not.toMatch(/bone/);
  });
});

describe('a visit after an operation that the file does not tell of', () => {
  it('stages no ray of that foot', () => {
    const postop = (body: string) => wrap(body, 'scales drawer 0-4', 'visit 2026-03-09 postop right');
    expect(stageOf(postop('2nd drawer 2, tender'))).toBe('not applicable');
    expect(whyOf(postop('2nd drawer 2, tender'))).toMatch(/does not say which ray was operated on/);
    const told = `${wrap('operation done weil 3rd', 'scales drawer 0-4', 'visit 2026-02-01 operation right')}\nvisit 2026-03-09 postop right\n2nd drawer 2, tender\n`;
    expect(stageOf(told)).toBe('2');
  });
});
