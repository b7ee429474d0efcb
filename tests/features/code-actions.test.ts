import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { clinicNoteOf } from '../../server/features/clinic-note.ts';
import { codeActions } from '../../server/features/code-actions.ts';
import { stageAtCursor } from '../../server/features/stage-at-cursor.ts';
import { applied, noteWithCursor, settled } from './fixture.ts';

function actionsAt(fixture: string, only?: string[]) {
  const { note, position } = noteWithCursor(fixture);
  return { note, actions: codeActions(note, { start: position, end: position }, [], only) };
}

/** Applies the one action whose title matches, and looks at the document after it. */
function checkAction(fixture: string, title: RegExp, after: string): void {
  const { note, actions } = actionsAt(fixture);
  const found = actions.filter((each) => title.test(each.title));
  expect(actions.map((each) => each.title).join('\n')).toMatch(title);
  expect(found).toHaveLength(1);
  expect(applied(note, found[0]!.edit!.changes![note.uri]!)).toBe(after);
}
const titles = (fixture: string): string[] => actionsAt(fixture).actions.map(({ title }) => title);

const staged = '2nd      swelling moderate, drawer 2, straight, paper weak, pip flexible';

describe('quick fixes', () => {
  test('apply what a report proposes', () => {
    checkAction(
      'visit 2026-03-09 first right\n2nd drawer 2, |blorp',
      /Keep "blorp"/,
      'visit 2026-03-09 first right\n2nd drawer 2, "blorp"',
    );
  });

  test('are offered once, for every report that they mend', () => {
    const text = readFileSync('samples/faulty.forefoot', 'utf8');
    const note = settled(text);
    for (let line = 0; line < note.lineCount; line++) {
      const at = { line, character: 0 };
      const edits = codeActions(note, { start: at, end: at }).map(({ edit }) => JSON.stringify(edit));
      expect(edits, text.split('\n')[line]).toEqual([...new Set(edits)]);
    }
    const { note: two, position } = noteWithCursor('visit 2026-03-09 first right\n2nd drawer 2, blo|rp');
    const range = { start: { line: 1, character: 14 }, end: { line: 1, character: 19 } };
    const given = ['unknown-word', 'unclear-finding'].map((code) => ({ range, code, message: '' }));
    const actions = codeActions(two, { start: position, end: position }, given);
    expect(actions.filter(({ title }) => title.includes('quoted'))).toHaveLength(1);
  });

  test('write a header line where it belongs', () => {
    checkAction(
      'forefoot 1\nvisit 2026-03-09 first right\n2nd drawer |2',
      /scales drawer 0-4/,
      'forefoot 1\nscales drawer 0-4\nvisit 2026-03-09 first right\n2nd drawer 2',
    );
  });

  test('turn a planned steroid at an unstable joint into one to be avoided, wherever it was to go', () => {
    const before = 'scales drawer 0-4\nvisit 2026-03-09 first right\n2nd tender plantar, drawer 2\n';
    checkAction(`${before}plan ste|roid web 2`, /^Write "no steroid"/m, `${before}plan no steroid web 2`);
    checkAction(`${before}plan ste|roid 2nd`, /^Write "no steroid"/m, `${before}plan no steroid 2nd`);
    expect(
      settled(`${before}plan no steroid web 2`)
        .visit(1)
        ?.analysis.reports.map(({ code }) => code),
    ).not.toContain('steroid-unstable');
  });

  test('are given for the line of the cursor only', () => {
    expect(titles('visit 2026-03-09 first right\n2nd blorp\n|3rd tender').join()).not.toContain('blorp');
  });

  test('carry the diagnostic that they mend', () => {
    const { note, position } = noteWithCursor('visit 2026-03-09 first right\n2nd drawer 2, blo|rp');
    const range = { start: { line: 1, character: 14 }, end: { line: 1, character: 19 } };
    const given = [{ range, code: 'unknown-word', message: '' }];
    const actions = codeActions(note, { start: position, end: position }, given);
    const action = actions.find(({ title }) => title.includes('blorp'));
    expect(action!.diagnostics).toEqual(given);
  });

  test('are not offered where only another kind is asked for', () => {
    expect(actionsAt('visit 2026-03-09 first right\n2nd blo|rp', ['refactor']).actions).toEqual([]);
  });

  test('fix all takes no fix that needs review', () => {
    const { actions } = actionsAt('scales drawer 0-4\nvisit 2026-03-09 first right\n2nd blo|rp', ['source.fixAll']);
    expect(JSON.stringify(actions)).not.toContain('blorp');
  });
});

describe('accepting a computed next step', () => {
  const accept = /^Accept the next step for 2nd right as my plan/m;
  const visit = 'scales drawer 0-4\nvisit 2026-03-09 first right\n2nd tender plantar, drawer |2';

  test('writes it as a plan at the end of the visit, marked', () => {
    checkAction(
      visit,
      accept,
      'scales drawer 0-4\nvisit 2026-03-09 first right\n2nd tender plantar, drawer 2\n' +
        'plan     tape 2nd; stiff-insert; met-pad; xray; review in 6-8 weeks // accepted from the computed next step',
    );
  });

  test('is not offered for what is planned already', () => {
    const planned = 'plan tape 2nd; stiff-insert; met-pad; xray; review in 6 weeks';
    expect(titles(`${visit}\n${planned}`).filter((title) => accept.test(title))).toEqual([]);
  });

  test('is not offered where the step is no plan', () => {
    expect(titles('scales drawer 0-4\nvisit 2026-03-09 first right\n2nd tender plan|tar').join()).not.toMatch(accept);
  });

  test('puts it into the filed note only once it is accepted', () => {
    const { note, actions } = actionsAt(visit);
    const [action] = actions.filter(({ title }) => accept.test(title));
    const text = applied(note, action!.edit!.changes![note.uri]!);
    expect(clinicNoteOf(note, { line: 2, computed: false })?.text).not.toMatch(/Taping/);
    expect(clinicNoteOf(settled(text), { line: 2, computed: false })?.text).toMatch(
      /Taping of the second toe is planned/,
    );
  });
});

describe('accepting a computed stage', () => {
  const accept = /^Accept stage \d, 2nd right/;

  test('writes it as a statement before the plan, marked', () => {
    const text = `scales drawer 0-4\nvisit 2026-03-09 first right\n${staged}\nplan     tape 2nd 8 weeks\n`;
    const { text: stage } = stageAtCursor(settled(text), 2);
    const number = /^2nd right: stage (\d)$/.exec(stage)?.[1];
    expect(number, stage).toBeDefined();
    checkAction(
      text.replace('2nd      sw', '2nd      |sw'),
      accept,
      `scales drawer 0-4\nvisit 2026-03-09 first right\n${staged}\nstage    2nd ${number} // accepted from the computed stage\nplan     tape 2nd 8 weeks\n`,
    );
  });

  test('makes the stated and the computed stage agree, and is offered no more', () => {
    const { note, actions } = actionsAt(`visit 2026-03-09 first right\n|${staged}`);
    const action = actions.find(({ title }) => accept.test(title))!;
    const after = settled(applied(note, action.edit!.changes![note.uri]!));
    const [ray] = after.visit(1)!.analysis.rays;
    expect(ray!.outcome).toMatchObject({ is: 'staged', stage: ray!.stated!.low });
    const again = codeActions(after, { start: { line: 1, character: 0 }, end: { line: 1, character: 0 } });
    expect(again.filter(({ title }) => accept.test(title))).toEqual([]);
  });

  test('writes the side where the visit line does not give it', () => {
    const { note, actions } = actionsAt(`visit 2026-03-09 first both\nright ${staged.replace('2nd     ', '2nd')}|`);
    const action = actions.find(({ title }) => accept.test(title));
    expect(applied(note, action!.edit!.changes![note.uri]!)).toContain('stage    right 2nd');
  });

  test('changes a stated stage in place, so that none stands twice', () => {
    const { note, actions } = actionsAt(`visit 2026-03-09 first right\n${staged}\nstage    2nd 4|`);
    const action = actions.find(({ title }) => /^Replace the stated stage/.test(title));
    const after = applied(note, action!.edit!.changes![note.uri]!);
    expect(after).toMatch(/^stage {4}2nd [0-3]$/m);
  });

  test('is not offered for a span, nor where staging does not apply', () => {
    expect(titles('visit 2026-03-09 first right\n2nd swelling moderate|').join()).not.toMatch(/Accept stage/);
    expect(titles('visit 2026-03-09 first right\n5th drawer 2, tender plantar|').join()).not.toMatch(/Accept stage/);
  });
});

describe('the stage at the cursor', () => {
  const text = `scales drawer 0-4\nvisit 2026-03-09 first right\n${staged}\n3rd      drawer 0, tender none\n`;

  test('is that of the ray on the line', () => {
    expect(stageAtCursor(settled(text), 2).rays.map(({ ray, side }) => `${ray} ${side}`)).toEqual(['2 right']);
  });
  test('is that of every ray of the visit elsewhere, and of the newest visit in the header', () => {
    const all = stageAtCursor(settled(text), 1);
    expect(all.rays.map(({ ray }) => ray)).toEqual([2, 3]);
    expect(stageAtCursor(settled(text), 0)).toEqual(all);
  });
  test('is empty in a note without visits', () => {
    expect(stageAtCursor(settled('forefoot 1'), 0)).toEqual({ text: '', rays: [] });
  });
});

describe('the clinic note', () => {
  const text = `forefoot 1\n\nvisit 2026-03-09 first right\n${staged}\n\nvisit 2026-05-04 review right\n2nd      drawer 1\n`;

  test('is that of the visit at the line, and names its lines', () => {
    const answer = clinicNoteOf(settled(text), { line: 3, computed: false })!;
    expect(answer.visit).toEqual({ date: '2026-03-09', firstLine: 2, lastLine: 4 });
    expect(answer.version).toBe(1);
    expect(answer.text).toMatch(/drawer/i);
    expect(answer.html).toContain('data-line="3"');
  });

  test('holds what is computed only when that is asked for', () => {
    const [filed, all] = [false, true].map((computed) => clinicNoteOf(settled(text), { line: 3, computed })!);
    expect(all!.text.length).toBeGreaterThan(filed!.text.length);
    expect(all!.html).toContain('class="computed"');
    expect(filed!.html).not.toContain('class="computed"');
  });

  test('is that of the newest visit in the header, and none without visits', () => {
    expect(clinicNoteOf(settled(text), { line: 0, computed: false })!.visit.date).toBe('2026-05-04');
    expect(clinicNoteOf(settled('forefoot 1'), { line: 0, computed: false })).toBeNull();
  });
});
