import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { AdvisedRay, NextStep } from '../../server/clinical/analysis.ts';
import type { Place } from '../../server/clinical/facts.ts';
import { clinicNote, renderHtml, renderText, URGENT_TITLE } from '../../server/documents/clinic-note.ts';
import { textOf } from '../../server/documents/sentence.ts';
import { NOTE_NAMES, noteText, writeNote } from './read-note.ts';

const update = process.env.UPDATE_GOLDEN === '1';

/** Compares with the golden file; `UPDATE_GOLDEN=1` writes it, to be read in the diff. */
function expectGolden(name: string, actual: string): void {
  const file = new URL(`./golden/${name}.txt`, import.meta.url);
  if (update) writeFileSync(file, actual);
  expect(existsSync(file), `golden/${name}.txt is missing: run with UPDATE_GOLDEN=1`).toBe(true);
  expect(actual).toBe(readFileSync(file, 'utf8'));
}

const practice = { source: 'common practice', mark: 'common practice' } as const;

/** Rays made by hand, so that this file doesn't change with the staging rules. */
function handMadeRays(statement: string, place: Place): AdvisedRay[] {
  const next: NextStep = {
    ...practice,
    row: 'first course',
    step: 'Tape and a stiff sole.',
    why: 'No course yet.',
    wouldChange: 'A course already done.',
    cautions: ['No tape over fragile skin.', 'No steroid into an unstable joint (REIS89, from memory).'],
    review: 'at six to eight weeks',
    urgent: false,
    statements: [statement],
  };
  const ray: AdvisedRay = {
    side: 'right',
    ray: 2,
    outcome: { is: 'span', low: 1, high: 2 },
    source: 'COUGH11',
    mark: 'read',
    redFlags: [],
    labels: ['low certainty'],
    stated: { low: 2, high: 2, statement, place },
    evidence: [
      { statement, place, finding: 'drawer', role: 'decides', why: 'over half of the head is uncovered' },
      { statement, place, finding: 'swelling', role: 'supports', why: 'the joint is swollen' },
      { statement, place, finding: 'paper', role: 'supports', why: 'purchase is lost' },
      { statement, place, finding: 'deviation', role: 'questions', why: 'the toe is straight' },
    ],
    missing: [{ finding: 'overlap', ask: 'look at the toe at rest, standing' }],
    assumptions: ['no operation on this ray is recorded', 'fever not asked'],
    next,
    statements: [statement],
  };
  const memory = { source: 'from memory', mark: 'from memory, to be verified' } as const;
  const outcome = { is: 'cannot stage', why: 'the drawer is missing' } as const;
  const bare = { ray: 3, outcome, labels: [], evidence: [], missing: [], assumptions: [], ...memory } as const;
  const urgent = { ...next, row: 'ischaemia', step: 'Call the vascular team.', why: 'The toe is cold.', urgent: true };
  const { stated, ...unstated } = ray;
  return [ray, { ...unstated, ...bare }, { ...unstated, ...bare, ray: 5, next: urgent }];
}

describe('the clinic note that may be filed', () => {
  test.each(NOTE_NAMES)('%s', (name) => {
    const visits = writeNote(noteText(name)).map(({ note }) => renderText(note, { computed: false }));
    expectGolden(name, visits.join('\n'));
  });
});

describe('what is computed', () => {
  test('stands apart, marked, with its evidence in words and what the clinician states beside it', () => {
    const [visit] = writeNote(noteText('second-ray'));
    const { statement, origin } = visit!.analysis.facts.facts.find(({ finding }) => finding === 'drawer')!;
    const analysis = { ...visit!.analysis, rays: handMadeRays(statement, origin.place) };
    expectGolden('computed', renderText(clinicNote(analysis, { version: 1, allowances: [] }), { computed: true }));
  });

  test('stays out of the filed note', () => {
    for (const name of NOTE_NAMES)
      for (const { note } of writeNote(noteText(name)))
        expect(renderText(note, { computed: false })).not.toMatch(/computed|decision support|next step/i);
  });

  test('gives each caution once for the whole note', () => {
    const [visit] = writeNote(noteText('second-ray'));
    const cautions = visit!.note.sections
      .flatMap(({ sentences }) => sentences)
      .filter(({ says }) => says === 'caution');
    const texts = cautions.map(({ runs }) => runs.map(({ text }) => text).join(''));
    expect(new Set(texts).size).toBe(texts.length);
    expect(texts.at(-1)).toMatch(/decision support.*local protocol.*clinician/);
  });

  test('puts urgent advice before the history', () => {
    const [visit] = writeNote(noteText('acute-dislocation'));
    expect(visit!.note.sections.map(({ title }) => title).slice(0, 2)).toEqual([
      'Red flags and urgent advice (computed)',
      'History',
    ]);
  });
});

describe('the note as HTML', () => {
  test('carries the place of each traced run, and who speaks', () => {
    const [visit] = writeNote('visit 2026-03-09 first right\n2nd swelling moderate');
    expect(renderHtml(visit!.note, { computed: false })).toMatch(
      /<span class="stated"><span.*> there was <span data-line="1" data-start="\d+" data-end="21" data-places="1:\d+-21">moderate swelling<\/span>\.<\/span>/,
    );
  });

  test('escapes what the note says', () => {
    const [visit] = writeNote('patient <KM&1>\nvisit 2026-03-09 first right\nplan <script>alert("x")</script>');
    const html = renderHtml(visit!.note, { computed: true });
    expect(html).toContain('&lt;script&gt;');
    expect(html).not.toContain('<script>');
    expect(html).not.toContain('<KM');
  });

  test('says the same words as the text', () => {
    for (const name of NOTE_NAMES)
      for (const { note } of writeNote(noteText(name))) {
        const words = (text: string) => text.split(/\s+/).filter((word) => word !== '');
        const html = renderHtml(note, { computed: true })
          .replace(/<[^>]+>/g, '')
          .replaceAll('&lt;', '<')
          .replaceAll('&gt;', '>')
          .replaceAll('&quot;', '"')
          .replaceAll('&#39;', "'")
          .replaceAll('&amp;', '&');
        expect(words(html)).toEqual(words(renderText(note, { computed: true })));
      }
  });
});

describe('a red flag of a visit', () => {
  test.each([
    ['that examines no ray', 'wound pus', /the wound shows pus/],
    ['of the great toe', '1st colour white', /cold, pale, white or blue/],
  ])('%s leads the note', (_, body, why) => {
    const { visits, header } = analyseNote(`forefoot 1\n\nvisit 2026-03-09 first right\n${body}\n`, '2026-03-09');
    const [visit] = visits;
    if (!visit) throw new Error('no visit');
    const [first] = clinicNote(visit.analysis, header).sections;
    expect(first?.title).toBe(URGENT_TITLE);
    expect(first?.sentences.map(textOf).join(' ')).toMatch(why);
  });
});
