import { describe, expect, it } from 'vitest';
import { codesOf, lastVisit, rayOf, stageOf, wrap } from './note.ts';

// What a surgeon would be blamed for, found by reading every sentence against the facts; common practice but where said.
const TWO = '2nd tender plate, drawer 2, medial';
const TORN = 'mri 2nd tear full';
const planned = (review: string, date = '2026-03-02'): string =>
  `${wrap(`${TWO}\nplan tape 2nd 8 weeks; stiff-insert`, 'scales drawer 0-4', 'visit 2026-01-05 first right')}
visit ${date} review right
${review}
`;

describe('a course of which the note says how long it ran', () => {
  it('is as long as it is said to be, not as long ago as it was planned', () => {
    const said = (weeks: number) => rayOf(planned(`tried tape 2nd ${weeks} weeks no-relief\n${TWO}\n${TORN}`)).next.row;
    expect([said(4), said(8)]).toEqual(['course running', 'escalate']);
  });
  it('that was only planned is not called a course that has run', () => {
    const { next } = rayOf(planned(TWO));
    expect(next.row).toBe('response not stated');
    expect(next.why).toMatch(/planned or has run/);
    expect(rayOf(planned(TWO, '2026-01-26')).next.why).toMatch(/planned or begun/);
  });
});

describe('a course that failed', () => {
  const failed = (kept: string) => rayOf(`tried tape 2nd 14 weeks${kept} no-relief\n${TWO}\n${TORN}`).next;
  it('is called adequate only with the assumption shown, where nobody said how it was kept', () => {
    expect(failed('')).toMatchObject({
      row: 'discuss operation',
      why: expect.stringMatching(/How it was kept is not stated/),
    });
    expect(failed(' well kept').why).not.toMatch(/not stated/);
    expect(failed(' poorly kept').row).toBe('poorly kept');
  });
  it('is not said to have failed where the deformity progresses under relief', () => {
    const { next } = rayOf(
      `${wrap(`2nd tender plate, drawer 1\nplan tape 2nd`, 'scales drawer 0-4', 'visit 2026-01-05 first right')}
visit 2026-03-09 review right
tried tape 2nd 9 weeks better
${TWO}
`,
    );
    expect(next.row).toBe('failed, image first');
    expect(next.why).toMatch(/or the deformity progresses/);
  });
});

describe('a deformity that progresses under six weeks of a course', () => {
  it('is reviewed sooner than the course was to be', () => {
    const { next } = rayOf(
      `${wrap(`2nd tender plate, drawer 1\nplan tape 2nd`, 'scales drawer 0-4', 'visit 2026-01-05 first right')}
visit 2026-01-26 review right
tried tape 2nd 3 weeks
${TWO}
`,
    );
    expect(next.row).toBe('course running, progressing');
    expect(next.review).toMatch(/sooner/);
    expect(rayOf(`tried tape 2nd 3 weeks\n${TWO}`).next.row).toBe('course running');
  });
});

describe('tape against a risk that the visit states', () => {
  it.each(['history allergy tape', 'sense monofilament 0/10', 'pulses absent'])(
    '%s: it is not offered as a plan',
    (risk) => {
      const { next } = rayOf(`${risk}\n2nd tender plate, drawer 1, straight`);
      expect(next.plan ?? '').not.toMatch(/tape/);
    },
  );
  it('the rest of the course is', () => {
    const { next } = rayOf('history allergy tape\n2nd tender plate, drawer 1, straight');
    expect(next).toMatchObject({ row: 'first course', plan: 'stiff-insert; met-pad; xray; review in 6-8 weeks' });
    expect(next.step).toMatch(/No tape here: a tape allergy is stated/);
  });
  it('no splint is advised over skin that cannot feel or is poorly supplied', () => {
    const message = (risk: string) =>
      lastVisit(`${risk}\n2nd tender plate, drawer 1\nplan tape 2nd 8 weeks`)
        .reports.filter(({ code }) => code === 'tape-risk')
        .map((report) => report.message)
        .join();
    expect(message('history allergy tape')).toMatch(/stiff sole/);
    for (const risk of ['sense monofilament 0/10', 'pulses absent']) expect(message(risk)).not.toMatch(/splint/);
  });
});

describe('an injury whose age may lie on either side of six weeks', () => {
  const injured = (when: string) => `history trigger injury ${when}\n2nd tender plate, drawer 2`;
  it.each(['2026-02', '5-7 weeks ago'])('%s: it is staged with that assumption, never silently as old', (when) => {
    const ray = rayOf(wrap(injured(when), 'scales drawer 0-4', 'visit 2026-03-20 first right'));
    expect(ray.outcome).toEqual({ is: 'staged', stage: 2 });
    expect(ray.assumptions.join()).toMatch(/injury .*taken as over six weeks/);
  });
  it('certain ages stay certain', () => {
    expect(stageOf(injured('3 weeks ago'))).toBe('not applicable');
    expect(rayOf(injured('9 weeks ago')).assumptions.join()).not.toMatch(/injury/);
  });
});

it('the three months since a steroid say that they are from memory', () => {
  const { next } = rayOf(
    `tried tape 2nd 14 weeks no-relief; steroid web 2 2026-02\n${TWO}\n${TORN}\npulses palpable\nplan operation 2nd plate repair`,
  );
  expect(next.row).toBe('settle safety first');
  expect(next.wouldChange).toMatch(/three months since a steroid \(from memory\)/);
});

it('an operation soon after a steroid says how the risk is known', () => {
  const { reports } = lastVisit(
    `tried steroid web 2 2026-02\n${TWO}\n${TORN}\npulses palpable\nplan operation 2nd plate repair`,
  );
  const told = reports.find(({ code }) => code === 'steroid-before-operation');
  expect(told?.message).toMatch(/infection may be more likely \(from memory\)/);
});

it('a neuropathic foot at risk is referred at once where the limb is threatened', () => {
  const { reports } = lastVisit('sense monofilament 0/10\n2nd wound open');
  expect(codesOf('sense monofilament 0/10\n2nd wound open')).toContain('red-flag');
  expect(reports.map(({ message }) => message).join()).toMatch(/within one working day, at once/);
});
