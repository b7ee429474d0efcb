import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { ask, clearFacts, isStated } from '../../server/clinical/answers.ts';
import { circulationStated, pulsesFelt } from '../../server/clinical/circulation.ts';
import { decidingFindings } from '../../server/clinical/deciding.ts';
import { readDrawer } from '../../server/clinical/drawer.ts';
import { type AnyFact, subjectKey } from '../../server/clinical/facts.ts';
import { isStatedPainless } from '../../server/clinical/gates.ts';
import { NOTHING_KNOWN } from '../../server/clinical/known.ts';
import { PANELS } from '../../server/clinical/panels.ts';
import { footSensation } from '../../server/clinical/sensation.ts';
import { codesOf, lastVisit, wrap } from './note.ts';

const both = (body: string) => wrap(body, 'scales drawer 0-4', 'visit 2026-03-09 first both');
const said = (text: string): string[] =>
  lastVisit(text).facts.facts.map(
    ({ subject, side, finding, status, clarity }) =>
      `${subjectKey(subject, side)} ${finding} ${status}${clarity === 'clear' ? '' : ', unclear'}`,
  );
const drawerOf = (text: string) => clearFacts(lastVisit(text).facts.facts, 'drawer')[0];

describe('sides', () => {
  it('come from the visit where a statement has none', () => {
    expect(said('2nd drawer 1')).toEqual(['right ray 2 drawer present']);
  });
  it('come from a heading down to the next one', () => {
    expect(said(both('R:\n2nd drawer 1\nL:\n2nd drawer 0\n3rd drawer 1'))).toEqual([
      'right ray 2 drawer present',
      'left ray 2 drawer present',
      'left ray 3 drawer present',
    ]);
  });
  it('that came with a subject hold for its statement and line, never for the next line', () => {
    expect(said(both('R2 tender none; drawer 1\n3rd drawer 1'))).toEqual([
      'right ray 2 tenderness absent',
      'right ray 2 drawer present',
      'ray 3 drawer present, unclear',
    ]);
  });
  it('`both` gives a fact of each foot', () => {
    expect(said(both('both 2nd drawer 1'))).toEqual(['right ray 2 drawer present', 'left ray 2 drawer present']);
  });
  it('that a bilateral visit lacks make the statement an error, and nothing is staged', () => {
    const { rays, facts } = lastVisit(both('2nd drawer 2'));
    expect(rays).toEqual([]);
    expect(facts.facts.map(({ clarity }) => clarity)).toEqual(['unclear']);
    expect(codesOf(both('2nd drawer 2'))).toContain('wrong-side');
  });
  it('of a heading above are no side of what is to be avoided', () => {
    expect(said(both('L:\n2nd drawer 1\nplan no steroid')).at(-1)).toBe('patient steroid avoid');
    expect(said(both('L:\n2nd drawer 1\nplan left no steroid')).at(-1)).toBe('left foot steroid avoid');
    expect(said(both('L:\n2nd drawer 1\nplan no operation')).at(-1)).toBe('left foot operation avoid');
  });
  it('do not belong to the patient', () => {
    expect(said(both('fever'))).toEqual(['patient fever present']);
  });
});

describe('subjects', () => {
  it('a heading ray holds down to the next heading', () => {
    expect(said('2nd:\ntender plate\ndrawer 2\n3rd:\ndrawer 1')).toEqual([
      'right ray 2 tenderness present',
      'right ray 2 drawer present',
      'right ray 3 drawer present',
    ]);
  });
  it('a ray before words of its line holds for that line alone, with its side', () => {
    expect(said('2nd: tender plate\ndrawer 2')).toEqual([
      'right ray 2 tenderness present',
      'right foot drawer present, unclear',
    ]);
    expect(said('1st: hypermobile; calf tight\nplan met-pad; no steroid').slice(-2)).toEqual([
      'right foot pad present',
      'right foot steroid avoid',
    ]);
    expect(said(both('R:\nL2: drawer 1\n3rd drawer 1')).at(-1)).toBe('right ray 3 drawer present');
    expect(said(both('left 2nd: drawer 1\n3rd drawer 1')).at(-1)).toMatch(/unclear$/);
    expect(said(both('left 2nd: drawer 1'))).toEqual(['left ray 2 drawer present']);
  });
  it('a heading ray gives itself to no treatment, and to nothing whose line names another subject', () => {
    expect(said('2nd:\ntender plate\nplan tape 8 weeks; no steroid').slice(1)).toEqual([
      'right foot tape present',
      'right foot steroid avoid',
    ]);
    expect(said('2nd:\nwebs 2-3 click none, callus').at(-1)).toBe('right foot callus present');
    expect(said('webs 2-3 click none, sensation normal').at(-1)).toBe('right foot sensation present, unclear');
    expect(said('webs 2-3 click none; calf tight; sensation normal').at(-1)).toBe('right foot sensation present');
  });
  it('a plan that only says to continue is kept as typed', () => {
    expect(lastVisit('2nd tender\nplan continue').facts.verbatim.map(({ text }) => text)).toEqual(['continue']);
    expect(lastVisit('2nd tender\nplan continue tape').facts.verbatim).toEqual([]);
  });
  it('a ray finding without ray is unclear', () => expect(said('drawer 2')[0]).toMatch(/unclear$/));
  it('a range gives each ray its fact, in one statement', () => {
    const { facts } = lastVisit('2nd-4th drawer 1').facts;
    expect(facts.map(({ subject }) => subjectKey(subject))).toEqual(['ray 2', 'ray 3', 'ray 4']);
    expect(new Set(facts.map(({ statement }) => statement)).size).toBe(1);
  });
  it('others are the lesser rays that no statement of the visit names', () => {
    expect(said('2nd drawer 1\nothers drawer 0').slice(1)).toEqual([
      'right ray 3 drawer present',
      'right ray 4 drawer present',
      'right ray 5 drawer present',
    ]);
    expect(said('others drawer 0\n2nd drawer 1\n5th tender none').slice(0, 2)).toEqual([
      'right ray 3 drawer present',
      'right ray 4 drawer present',
    ]);
  });
});

describe('normal', () => {
  it('gives the members of the panel, each marked by its origin', () => {
    const { facts } = lastVisit('4th normal').facts;
    expect(facts.map(({ finding, status }) => ({ finding, status }))).toEqual(PANELS.ray.members);
    expect(new Set(facts.map(({ origin }) => origin.kind))).toEqual(new Set(['panel']));
  });
  it('never says anything of stability, purchase, feeling, or dislocation', () => {
    const named = Object.values(PANELS).flatMap(({ members }) => members.map(({ finding }) => finding));
    for (const finding of ['drawer', 'paper', 'dislocated', 'sensation', 'pulses', 'stage'])
      expect(named).not.toContain(finding);
  });
  it('ok and quiet are kept as unremarkable, and nothing is computed from them', () => {
    expect(said('4th ok')).toEqual(['right ray 4 unremarkable present']);
    expect(decidingFindings(lastVisit('4th ok').facts, NOTHING_KNOWN, 'right', 4).possible).toMatchObject({
      tender: [true, false],
      swollen: [true, false],
      drawer: ['not done'],
    });
  });
});

describe('statements', () => {
  it('have an id of their own in the visit', () => {
    const ids = lastVisit('2nd tender plate, drawer 1; swelling\n3rd drawer 1').facts.facts.map(
      ({ statement }) => statement,
    );
    expect(new Set(ids).size).toBe(4);
  });
  it('stand at the words that made them', () => {
    const note = '2nd tender plate, drawer 1';
    const { place, word } = (drawerOf(note) as AnyFact).origin;
    expect(note.slice(place.start, place.end)).toBe('drawer 1');
    expect(note.slice(word.start, word.end)).toBe('drawer');
    expect(place.line).toBe(1);
  });
});

describe('the scale of a drawer', () => {
  it.each([
    ['the header', '2nd drawer 2', '0-4'],
    ['the statement, over the header', '2nd drawer 2 scale 0-3', '0-3'],
    ['nothing', wrap('2nd drawer 2', ''), undefined],
  ])('comes from %s', (_, note, scale) => expect(drawerOf(note)?.values.grade?.scale).toBe(scale));
});

describe('silence', () => {
  const nothing = lastVisit('"a remark"').facts;
  it('is an answer of its own for every finding, side and ray', () => {
    for (const { id } of LEXICON) {
      expect(ask(nothing.facts, id, { side: 'right', ray: 2 })).toEqual({ is: 'not mentioned' });
      expect(isStated(nothing.facts, id, 'absent')).toBe(false);
      expect(isStated(nothing.facts, id, 'present')).toBe(false);
      expect(clearFacts(nothing.facts, id)).toEqual([]);
    }
  });
  it('never becomes normal in any answer of the core', () => {
    expect(footSensation(nothing, 'right')).toBeUndefined();
    expect(pulsesFelt(nothing, 'right')).toBe('not examined');
    expect(circulationStated(nothing, 'right', 2)).toBe(false);
    expect(isStatedPainless(nothing, 'right', 2)).toBe(false);
    expect(readDrawer({ is: 'not mentioned' }).steps).toEqual(['not done']);
  });
  it('leaves the deciding signs open, and says where it is taken as none', () => {
    const { possible, assumptions } = decidingFindings(nothing, NOTHING_KNOWN, 'right', 2);
    expect(possible.tender).toHaveLength(2);
    expect(possible.swollen).toHaveLength(2);
    expect(possible.purchase).toHaveLength(2);
    expect(possible.alignment).toEqual(['not stated']);
    expect(assumptions.join()).toMatch(/overlap not mentioned.*dislocation not mentioned/);
  });
  it('adding silence changes nothing: a note says the same with blank lines, comments and remarks between', () => {
    const lines = [
      '2nd tender plate, drawer 2, medial',
      '3rd tender none, drawer 0, straight',
      'sense monofilament 10/10',
    ];
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('', '// a comment', '"a remark"'), { maxLength: 4 }),
        fc.nat(3),
        (quiet, at) => {
          const text = [...lines.slice(0, at), ...quiet, ...lines.slice(at)].join('\n');
          expect(said(text)).toEqual(said(lines.join('\n')));
          expect(lastVisit(text).rays.map(({ outcome }) => outcome)).toEqual(
            lastVisit(lines.join('\n')).rays.map(({ outcome }) => outcome),
          );
        },
      ),
      { numRuns: 60, seed: 7 },
    );
  });
});

describe('an answer', () => {
  const answer = (text: string) => ask(lastVisit(text).facts.facts, 'drawer', { side: 'right', ray: 2 });
  it.each([
    ['stated', '2nd drawer 1'],
    ['stated', '2nd drawer 1\n2nd drawer 1'],
    ['stated', '2nd drawer not done'],
    ['conflicting', '2nd drawer 1\n2nd drawer 2'],
    ['unclear', '2nd drawer not 2'],
    ['not mentioned', '3rd drawer 1'],
    ['not mentioned', both('L2 drawer 1')],
  ])('is %s for: %s', (is, text) => expect(answer(text).is).toBe(is));
  it('not done and unable are stated, and are not negative', () => {
    for (const status of ['not done', 'unable']) {
      const found = answer(`2nd drawer ${status}`);
      expect(found.is === 'stated' && found.fact.status).toBe(status);
      expect(readDrawer(found).steps).toEqual(['not done']);
    }
  });
});

test('texts that are quoted together share one quotation, however long the line is', () => {
  const { verbatim } = lastVisit('blorp, '.repeat(1500)).facts;
  expect(verbatim.length).toBe(1500);
  expect(new Set(verbatim.map(({ whole }) => whole)).size).toBe(1);
  const joined = lastVisit('blorp, fnord, zzq').facts.verbatim;
  expect(joined.map(({ text }) => text)).toEqual(['blorp', 'fnord', 'zzq']);
  expect(new Set(joined.map(({ whole }) => whole)).size).toBe(1);
});
