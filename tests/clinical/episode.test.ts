import { describe, expect, it } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { courseOf, PROTECTING } from '../../server/clinical/course.ts';
import { foldVisit, NO_EPISODE } from '../../server/clinical/episode.ts';
import { lastVisit, rayOf, TODAY } from './note.ts';

const TWO = '2nd tender plate, drawer 2, medial';
const visit = (date: string, kind: string, body: string, side = 'right') =>
  `\nvisit ${date} ${kind} ${side}\n${body}\n`;
const note = (...visits: string[]) => `forefoot 1\nscales drawer 0-4\n${visits.join('')}`;
const course = (text: string) => {
  const { facts, before } = lastVisit(text);
  return courseOf(facts, before, facts.side === 'left' ? 'left' : 'right');
};
const states = (text: string) => analyseNote(text, TODAY).visits.map(({ analysis }) => analysis.after);

describe('a course without operation', () => {
  const planned = visit('2026-01-05', 'first', `${TWO}\nplan tape 2nd; stiff-insert`);
  it.each([
    ['2026-02-15', 'under six weeks'],
    ['2026-02-16', 'six to twelve weeks'],
    ['2026-03-29', 'six to twelve weeks'],
    ['2026-03-30', 'twelve weeks or more'],
  ])('planned on 5 January is by %s: %s', (date, length) => {
    expect(course(note(planned, visit(date, 'review', TWO))).length).toBe(length);
  });
  it('that is planned today has not begun: a plan is no treatment done', () => {
    expect(course(note(planned)).length).toBe('none');
  });
  it('counts from its first plan, whatever later visits plan', () => {
    const again = visit('2026-02-20', 'review', `${TWO}\nplan tape 2nd; boot`);
    expect(course(note(planned, again, visit('2026-04-01', 'review', TWO))).length).toBe('twelve weeks or more');
  });
  it('of one foot is none of the other', () => {
    expect(course(note(planned, visit('2026-04-01', 'review', TWO, 'left'))).length).toBe('none');
  });
  it('is not made by a pad, which unloads and does not protect', () => {
    expect(PROTECTING).not.toContain('pad');
    expect(course(note(visit('2026-03-09', 'first', `tried met-pad 14 weeks no-relief\n${TWO}`))).length).toBe('none');
  });
  it('takes its length from what was stated where nothing was planned', () => {
    const tried = (time: string) => course(note(visit('2026-03-09', 'first', `tried tape 2nd ${time}\n${TWO}`))).length;
    expect(tried('5 weeks')).toBe('under six weeks');
    expect(tried('6 weeks')).toBe('six to twelve weeks');
    expect(tried('3 months')).toBe('twelve weeks or more');
    expect(tried('')).toBe('unknown');
  });
  it('takes the shorter end of a range', () => {
    expect(course(note(visit('2026-03-09', 'first', `tried tape 2nd 4-8 weeks\n${TWO}`))).length).toBe(
      'under six weeks',
    );
  });
  it('says how it was kept and what it did only where that is stated', () => {
    const silent = course(note(visit('2026-03-09', 'first', `tried tape 2nd 8 weeks\n${TWO}`)));
    expect([silent.response, silent.kept]).toEqual(['not stated', 'not stated']);
    const told = course(note(visit('2026-03-09', 'first', `tried tape 2nd 8 weeks daily partial\n${TWO}`)));
    expect([told.response, told.kept]).toEqual(['not better', 'well']);
  });
  describe('that an earlier visit told of', () => {
    const failed = visit('2026-01-05', 'review', `tried tape 2nd 12 weeks daily no-relief\n${TWO}\nplan mri 2nd`);
    const scan = `${TWO}\nmri 2nd tear full`;
    it('has still failed at the next visit, which brings the image', () => {
      const later = course(note(failed, visit('2026-02-05', 'review', scan)));
      expect([later.length, later.response, later.kept, later.toldOn]).toEqual([
        'twelve weeks or more',
        'not better',
        'well',
        '2026-01-05',
      ]);
      const { next } = rayOf(note(failed, visit('2026-02-05', 'review', scan)));
      expect(next.row).toBe('discuss operation');
      expect(next.why).toContain('The course is as the visit of 2026-01-05 told it.');
    });
    it('is overtaken by what this visit says', () => {
      const later = course(
        note(failed, visit('2026-02-05', 'review', `tried boot 4 weeks poorly-kept better\n${scan}`)),
      );
      expect([later.length, later.response, later.kept]).toEqual(['under six weeks', 'better', 'poorly']);
      expect(later.toldOn).toBeUndefined();
    });
    it('is open again once a measure is planned anew', () => {
      const again = visit('2026-01-05', 'review', `tried tape 2nd 6 weeks partial\n${TWO}\nplan tape 2nd; boot`);
      expect(course(note(planned, again, visit('2026-03-30', 'review', TWO)))).toMatchObject({
        length: 'twelve weeks or more',
        response: 'not stated',
      });
    });
    it('and that helped is asked about again', () => {
      const helped = visit('2026-01-05', 'review', `tried tape 2nd 12 weeks better\n${TWO}`);
      expect(course(note(helped, visit('2026-09-05', 'review', TWO))).response).toBe('not stated');
    });
    it('starts its clock again when what is planned follows one that was poorly kept, or one that had helped', () => {
      const start = (...body: [string, string, string][]) =>
        states(note(...body.map(([day, kind, text]) => visit(day, kind, text)))).at(-1)?.course;
      const first: [string, string, string] = ['2026-01-05', 'first', `${TWO}\nplan tape 2nd`];
      const again = `${TWO}\nplan tape 2nd`;
      expect(start(first, ['2026-03-05', 'review', `tried tape 2nd poorly-kept\n${again}`])).toEqual({
        right: '2026-03-05',
      });
      expect(start(first, ['2026-03-05', 'review', `tried tape 2nd daily partial\n${again}`])).toEqual({
        right: '2026-01-05',
      });
      const relapse: [string, string, string] = ['2026-09-05', 'review', again];
      expect(start(first, ['2026-04-05', 'review', `tried tape 2nd better\n${TWO}`], relapse)).toEqual({
        right: '2026-09-05',
      });
    });
    it('is forgotten with an operation', () => {
      const operated = visit('2026-03-05', 'operation', 'operation 2nd plate repair');
      expect(states(note(failed, operated)).at(-1)?.told).toEqual({});
    });
  });
  it('that was refused or avoided is none', () => {
    expect(course(note(visit('2026-03-09', 'first', `tried no tape\n${TWO}`))).length).toBe('none');
    const avoided = visit('2026-01-05', 'first', `${TWO}\nplan no tape`);
    expect(course(note(avoided, visit('2026-04-01', 'review', TWO))).length).toBe('none');
  });
  it('ends with an operation on its foot', () => {
    const operated = visit('2026-03-01', 'operation', 'operation 2nd plate repair');
    const [, after] = states(note(planned, operated));
    expect(after?.course).toEqual({});
    expect(after?.operated).toEqual({ 'right ray 2': '2026-03-01' });
  });
});

describe('an image', () => {
  const torn = visit('2026-01-05', 'first', `${TWO}\nus 2nd tear full`);
  const imaging = (text: string) => states(text).at(-1)?.plate['right ray 2'];
  it('stays known in later visits, by its day', () => {
    expect(imaging(note(torn, visit('2026-03-09', 'review', TWO)))).toEqual({
      tear: 'present',
      by: 'us',
      day: '2026-01-05',
    });
  });
  it('gives way to a newer one', () => {
    const mri = visit('2026-03-09', 'review', `${TWO}\nmri 2nd plate intact`);
    expect(imaging(note(torn, mri))).toEqual({ tear: 'absent', by: 'mri', day: '2026-03-09' });
  });
  it('that contradicts another of the same day agrees with nothing', () => {
    const text = note(
      visit('2026-03-09', 'first', `tried tape 2nd 14 weeks no-relief\n${TWO}\nus 2nd tear full\nmri 2nd plate intact`),
    );
    expect(imaging(text)?.tear).toBe('equivocal');
    expect(rayOf(text).next.row).toBe('failed, image first');
  });
});

describe('an injection', () => {
  const steroid = (body: string) => states(note(visit('2026-03-09', 'first', `${TWO}\n${body}`))).at(-1)?.steroid;
  it('is known by the latest day that its date may mean', () => {
    expect(steroid('tried steroid web 2 2026-01-10')).toEqual({ right: '2026-01-10' });
    expect(steroid('tried steroid web 2 2026-01')).toEqual({ right: '2026-01-31' });
    expect(steroid('tried steroid web 2 2025')).toEqual({ right: '2025-12-31' });
  });
  it('that is planned or avoided was not given', () => {
    expect(steroid('plan steroid web 2')).toEqual({});
    expect(steroid('plan no steroid')).toEqual({});
  });
});

describe('progress', () => {
  const first = visit(
    '2026-01-05',
    'first',
    `tried tape 2nd 14 weeks no-relief\n2nd tender plate, drawer 1\nmri 2nd tear full`,
  );
  it('is a stage above all that the last visit allowed', () => {
    const review = (body: string) =>
      rayOf(note(first, visit('2026-03-09', 'review', `tried tape 2nd 8 weeks no-relief\n${body}`))).next.row;
    expect(review(TWO)).toBe('discuss operation');
    expect(review('2nd tender plate, drawer 1')).toBe('escalate');
    expect(review('2nd tender plate, drawer 1-2')).toBe('escalate');
  });
});

describe('an acute injury', () => {
  const injured = visit('2026-03-01', 'first', 'history injury; onset sudden 1 week\n2nd tender plate, drawer 1');
  const review = (date: string, body = TWO, side = 'right') =>
    rayOf(note(injured, visit(date, 'review', body, side)), 2, side === 'left' ? 'left' : 'right').next.row;
  it('stays acute in later visits until six weeks have passed since it', () => {
    expect(review('2026-03-15')).toBe('acute rupture');
    expect(review('2026-04-04')).toBe('acute rupture');
    expect(review('2026-04-05')).toBe('first course');
  });
  it('of one foot does not make the other acute', () => {
    expect(review('2026-03-15', TWO, 'left')).toBe('first course');
  });
  it('gives way to a time that a later visit states', () => {
    expect(review('2026-03-15', `history onset gradual 5 months\n${TWO}`)).toBe('first course');
    expect(review('2026-03-15', `history injury\n${TWO}`)).toBe('acute rupture');
  });
});

describe('the fold over visits', () => {
  it('is pure: the same visit on the same state gives an equal state', () => {
    const { facts, before } = lastVisit(note(visit('2026-01-05', 'first', `${TWO}\nplan tape 2nd`)));
    const once = foldVisit(before, facts, []);
    expect(foldVisit(before, facts, [])).toEqual(once);
    expect(before).toEqual(NO_EPISODE);
  });
  it('stops at once where a visit adds nothing: its state equals the one before', () => {
    const quiet = visit('2026-02-09', 'phone', 'history "a question about shoes"');
    const [before, after] = states(note(visit('2026-01-05', 'first', `${TWO}\nplan tape 2nd`), quiet));
    expect(after).toEqual(before);
  });
  it('an edit that changes no state leaves every later state as it was', () => {
    const later = visit('2026-03-09', 'review', TWO);
    const one = states(note(visit('2026-01-05', 'first', `${TWO}\nplan tape 2nd`), later));
    const other = states(note(visit('2026-01-05', 'first', `${TWO}, pip flexible "new words"\nplan tape 2nd`), later));
    expect(other).toEqual(one);
  });
  it('asks for the drawer scale once a file', () => {
    const text = `forefoot 1\n${visit('2026-01-05', 'first', '2nd drawer 2')}${visit('2026-03-09', 'review', '2nd drawer 2')}`;
    const codes = analyseNote(text, TODAY).visits.map(({ analysis }) => analysis.reports.map(({ code }) => code));
    expect(codes).toEqual([['drawer-scale'], []]);
  });
});
