import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { missingSteps, NEEDED } from '../../server/clinical/completeness.ts';
import { LATER_STEPS, ON_REQUEST } from '../../server/clinical/completeness-on-request.ts';
import * as examSteps from '../../server/clinical/exam-steps.ts';
import { diagnostics } from '../../server/features/diagnostics.ts';
import { openNote } from '../workspace/open-note.ts';
import { TODAY } from './note.ts';

const visitOf = (kind: string, lines: readonly string[], settings = {}) =>
  analyseNote(`forefoot 1\nscales drawer 0-4\n\nvisit 2026-03-09 ${kind}\n${lines.join('\n')}\n`, TODAY, settings)
    .visits[0]!.analysis;
const hints = (kind: string, lines: readonly string[], settings = {}) =>
  visitOf(kind, lines, settings).reports.filter(({ code }) => code === 'incomplete-visit');
const STEPS = { ...examSteps, ...LATER_STEPS };
type StepId = keyof typeof STEPS;
const idOf = (step: unknown) => (Object.keys(STEPS) as StepId[]).find((id) => STEPS[id] === step)!;
const missing = (kind: string, ...lines: string[]) => missingSteps(visitOf(kind, lines).facts).map(idOf);
const missingOnRequest = (kind: string, ...lines: string[]) =>
  missingSteps(visitOf(kind, lines).facts, undefined, ON_REQUEST).map(idOf);

const FULL: Readonly<Record<StepId, string>> = {
  onset: 'history onset gradual 5 months',
  pain: 'pain 2nd plantar 6/10',
  tried: 'tried tape 2nd 8 weeks no-relief',
  stand: 'stand 2nd lifted 3 mm',
  wound: '2nd no wound',
  swelling: '2nd swelling mild',
  tenderness: '2nd tender plantar',
  drawer: '2nd drawer 2',
  alignment: '2nd straight',
  paper: '2nd paper weak',
  webs: 'webs 2-3 click none, squeeze none',
  sensation: 'sense monofilament 10/10',
  circulation: 'pulses dp 2, pt 2',
  smoking: 'history smoker',
  diabetes: 'history no diabetes',
  anticoagulant: 'history no anticoagulant',
  allergy: 'history no allergy',
  procedure: 'operation 2nd weil',
  approach: 'operation 2nd dorsal approach',
  pin: 'operation 2nd no pin',
  load: 'operation heel weight bearing 2 weeks',
  colour: '2nd toe pink',
  clot: 'no calf pain',
};
/** How each step says that it was not done; none of it is normal. */
const UNDONE: Readonly<Record<StepId, readonly string[]>> = {
  onset: ['history onset not done'],
  pain: ['pain not done', 'pain none'],
  tried: ['tried none', 'tried nil', 'tried nothing', 'tried not done', 'nothing tried', 'no treatment so far'],
  stand: ['stand not done', 'stand nd', 'stand unable "in a wheelchair"'],
  wound: ['wound not done'],
  swelling: ['2nd swelling nd'],
  tenderness: ['2nd tender not done'],
  drawer: ['2nd drawer not done'],
  alignment: ['2nd deviated not done'],
  paper: ['2nd paper not done'],
  webs: ['webs 2-3 click not done'],
  sensation: ['sense not done'],
  circulation: ['pulses not examined'],
  smoking: ['history smoking not done'],
  diabetes: ['history diabetes not done'],
  anticoagulant: ['history anticoagulant not done'],
  allergy: ['history allergy not done'],
  procedure: ['operation procedure not done'],
  approach: ['operation approach not done'],
  pin: ['operation 2nd no pin'],
  load: ['operation weight-bearing not done'],
  colour: ['2nd colour not done'],
  clot: ['calf not done'],
};
const kinds = Object.entries(NEEDED).map(([kind, steps]) => [kind, steps.map(idOf)] as const);
const requested = Object.entries(ON_REQUEST.needed).map(([kind, steps]) => [kind, steps.map(idOf)] as const);

describe('what the purpose of a visit needs (common practice)', () => {
  test.each(kinds)('a %s visit with every step has none missing, and without any all', (kind, steps) => {
    expect(missing(`${kind} right`, ...steps.map((id) => FULL[id]))).toEqual([]);
    expect(missing(`${kind} right`)).toEqual(steps);
  });
  test.each(kinds.flatMap(([kind, steps]) => steps.map((id) => [kind, id] as const)))(
    'a %s visit without %s misses just that',
    (kind, id) => {
      const rest = kinds.find(([each]) => each === kind)![1].filter((each) => each !== id);
      expect(missing(`${kind} right`, ...rest.map((each) => FULL[each]))).toEqual([id]);
    },
  );
  test.each(['phone right', 'operation right', 'right'])('nothing is asked of a visit that is %s', (kind) => {
    expect(missing(kind)).toEqual([]);
  });
  test.each(requested)(
    'on request, a %s visit with every step has none missing, and without any all',
    (kind, steps) => {
      expect(missingOnRequest(`${kind} right`, ...steps.map((id) => FULL[id]))).toEqual([]);
      expect(missingOnRequest(`${kind} right`)).toEqual(steps);
    },
  );
  test.each(requested.flatMap(([kind, steps]) => steps.map((id) => [kind, id] as const)))(
    'on request, a %s visit without %s misses just that',
    (kind, id) => {
      const rest = requested.find(([each]) => each === kind)![1].filter((each) => each !== id);
      expect(missingOnRequest(`${kind} right`, ...rest.map((each) => FULL[each]))).toEqual([id]);
    },
  );
  test.each(Object.entries(UNDONE).flatMap(([id, lines]) => lines.map((line) => [line, id] as const)))(
    '%s answers the step %s',
    (line, id) => {
      const kind = [...kinds, ...requested].find(([, steps]) => steps.includes(id as StepId))![0];
      expect(missingOnRequest(`${kind} right`)).toContain(id);
      expect(missingOnRequest(`${kind} right`, line)).not.toContain(id);
      expect(visitOf(`${kind} right`, [line]).facts.verbatim).toEqual([]);
    },
  );
  test('a step that was not done, or could not be, is mentioned', () => {
    expect(missing('review right', '2nd drawer not done')).not.toContain('drawer');
    expect(missing('review right', '2nd drawer unable "too sore"')).not.toContain('drawer');
  });
  test('what normal says counts, and what it does not say stays missing', () => {
    expect(missing('review right', '2nd normal')).toEqual(['pain', 'tried', 'drawer', 'paper']);
  });
  test('unread words under tried are an answer, kept as typed', () => {
    expect(missing('first right', 'tried "nothing so far"')).not.toContain('tried');
  });
  test('a plan is no finding', () => {
    expect(missing('first right', 'plan tape 2nd')).toContain('tried');
  });
});

describe('the hint', () => {
  test('comes only when the visit plans, stages, or is asked', () => {
    expect(hints('first right', ['2nd drawer 2'])).toEqual([]);
    expect(hints('first right', ['2nd drawer 2', 'plan tape 2nd'])).toHaveLength(1);
    expect(hints('first right', ['2nd drawer 2', 'stage 2nd 2'])).toHaveLength(1);
    expect(hints('first right', ['2nd drawer 2'], { complete: ON_REQUEST })).toHaveLength(1);
  });
  test.each(['plan', 'plan:', 'plan "call back"', 'plan zorp', 'plan: zorp'])(
    'comes at %s, of which nothing is read',
    (plan) => {
      expect(hints('first right', ['2nd drawer 2', plan])).toHaveLength(1);
    },
  );
  test('asks of an operation or a call only on request', () => {
    expect(hints('operation right', ['operation 2nd weil', 'plan nwb 2 weeks'])).toEqual([]);
    const [hint] = hints('operation right', ['operation 2nd weil', 'plan nwb 2 weeks'], { complete: ON_REQUEST });
    expect(hint!.message).toContain('approach; pin, or no pin; weight-bearing (and 1 more)');
    expect(hints('phone right', [], { complete: ON_REQUEST })[0]!.message).toContain('toe colour; wound; calf, chest.');
  });
  test('says on request that the visit has no purpose', () => {
    const [hint, ...more] = hints('right', ['2nd drawer 2', 'plan tape 2nd'], { complete: ON_REQUEST });
    expect(more).toEqual([]);
    expect(hint).toMatchObject({ severity: 'missing', place: { line: 0, start: 0, end: 5 } });
    expect(hint!.message).toContain('does not say what it is for');
    expect(hints('right', ['2nd drawer 2', 'plan tape 2nd'])).toEqual([]);
  });
  test('is quiet, stands at the plan, and names three steps at most', () => {
    const [hint] = hints('first right', ['2nd drawer 2', 'plan tape 2nd']);
    expect(hint).toMatchObject({ severity: 'missing', place: { line: 2, start: 5, end: 9 } });
    expect(hint!.message).toBe(
      'Not mentioned in this first visit: history onset, duration; pain; tried, with its response (and 8 more). Write it, or that it was not done.',
    );
  });
  test('asks for each foot that is examined, one after the other', () => {
    const lines = ['right 2nd drawer 2', 'left 2nd drawer 1, tender plantar', 'plan right tape 2nd'];
    const messages = hints('review both', lines).map(({ message }) => message);
    expect(messages).toHaveLength(1);
    expect(messages[0]).toContain('of the right foot');
    const right = [
      'right 2nd swelling none, tender none, straight, paper holds',
      'pain right 2nd 2/10',
      'tried right tape 2nd',
    ];
    const then = hints('review both', [...right, ...lines]).map(({ message }) => message);
    expect(then).toHaveLength(1);
    expect(then[0]).toContain('of the left foot');
  });
  test('asks for a visit of both feet as a whole where neither is examined', () => {
    const [hint] = hints('first both', ['plan boot both']).filter(({ code }) => code === 'incomplete-visit');
    expect(hint?.message).toMatch(/^Not mentioned in this first visit: history onset/);
  });
  test('gives way to what is urgent', () => {
    const lines = ['2nd hot, red', 'history fever 39 °C', 'plan tape 2nd'];
    expect(hints('first right', lines)).toEqual([]);
    expect(visitOf('first right', lines).rays.some(({ next }) => next.urgent)).toBe(true);
  });
  test('is hidden by an allowance with a reason', () => {
    expect(hints('first right', ['allow incomplete-visit seen at home', '2nd drawer 2', 'plan tape 2nd'])).toEqual([]);
  });
  test('waits while its line is typed', () => {
    const note = openNote('visit 2026-03-09 first right\n2nd drawer 2\nplan tape 2nd');
    note.settle();
    const codes = (typing?: { line: number; shown: [] }) =>
      diagnostics(note, 0, typing).diagnostics.map(({ code }) => code);
    expect(codes()).toContain('incomplete-visit');
    expect(codes({ line: 2, shown: [] })).not.toContain('incomplete-visit');
  });
});
