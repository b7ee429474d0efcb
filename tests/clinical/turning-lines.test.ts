import { describe, expect, it } from 'vitest';
import { lastVisit, wrap } from './note.ts';

const clear = (...lines: string[]): string[] =>
  lastVisit(lines.join('\n')).facts.facts.flatMap(({ clarity, finding }) => (clarity === 'clear' ? [finding] : []));

describe('a line of which nothing is read, and which speaks of its neighbours', () => {
  it.each([
    ['last visit:', '2nd drawer 3, tender'],
    ['other foot:', '2nd drawer 1'],
    ['and on the left', '2nd tender'],
    ['left foot for comparison:', '2nd tender'],
    ['declined:', 'plan steroid web 2'],
    ['options:', 'plan tape', 'plan steroid web 2'],
    ['if no better at 8/52:', 'plan operation 2nd weil'],
    ['mum:', 'history gout'],
    ['fh:', 'history diabetes'],
    ['pre-op:', '2nd drawer 3'],
    ['2024:', '2nd drawer 3'],
    ['gp letter:', '2nd drawer 3'],
    ['not done today:', '2nd drawer 1'],
  ])('%s turns the lines below it', (...lines) => expect(clear(...lines)).toEqual([]));

  it.each([
    ['plan steroid web 2', 'declined'],
    ['operation done weil 2nd', 'cancelled'],
    ['operation weil 2nd', 'planned 2026-05-01'],
    ['tried steroid web 2', 'not given in the end'],
    ['2nd tender', 'resolved'],
    ['history gout', 'in mother'],
    ['plan operation 2nd weil', 'if hba1c < 58'],
    ['2nd drawer 3, tender', 'last visit'],
  ])('%s is turned by the line below it: %s', (...lines) => expect(clear(...lines)).toEqual([]));

  it('reaches to the next blank line or heading, and no further up than one line', () => {
    expect(clear('last visit:', '2nd drawer 3', '', '3rd tender')).toEqual(['tenderness']);
    expect(clear('last visit:', '2nd drawer 3', 'right:', '3rd tender')).toEqual(['tenderness']);
    expect(clear('other foot:', '2nd drawer 1', 'plan tape 8 weeks')).toEqual(['tape']);
    expect(clear('last visit:', '2nd drawer 1', 'plan tape 8 weeks')).toEqual([]);
    expect(clear('3rd tender', 'plan steroid web 2', 'declined')).toEqual(['tenderness']);
  });

  it.each(['findings:', 'seen with daughter', 'exam:', 'on examination', 'old notes reviewed', 'right:'])(
    '%s turns nothing',
    (line) => expect(clear(line, '2nd tender')).toEqual(['tenderness']),
  );

  it('is quoted with what it turns', () => {
    const { facts } = lastVisit('last visit:\n2nd drawer 3, tender');
    expect(facts.verbatim.map(({ whole }) => whole.text)).toContain('last visit: / 2nd drawer 3, tender');
  });
});

describe('a side with words of its own on its line', () => {
  const both = (...lines: string[]) =>
    lastVisit(wrap(lines.join('\n'), 'scales drawer 0-4', 'visit 2026-03-09 first both')).facts.facts.map(
      ({ finding, side, clarity }) => `${finding} ${side} ${clarity}`,
    );
  it('goes on where it has examined something, for what is examined', () => {
    expect(both('R: 2nd drawer 2', '3rd drawer 1')).toEqual(['drawer right clear', 'drawer right clear']);
    expect(both('R: 2nd drawer 2', 'plan tape 8 weeks')).toEqual(['drawer right clear', 'tape undefined clear']);
    expect(both('R: better, L same', '2nd drawer 1')).toContain('drawer undefined unclear');
    expect(both('right', '2nd drawer 1')).toEqual(['drawer right clear']);
  });
});
