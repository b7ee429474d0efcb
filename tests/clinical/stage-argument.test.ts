import { describe, expect, it, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { GATE_OPEN } from '../../server/clinical/argument/phrases.ts';
import { type ArgumentPart, stageArguments } from '../../server/clinical/argument/stage-argument.ts';
import { GATES } from '../../server/clinical/gates.ts';
import { TODAY, wrap } from './note.ts';

/** The argument for one ray, with `"words"` as quotes. */
function argument(body: string, ray = 2): ArgumentPart[] {
  const text = wrap(body);
  const { header, visits } = analyseNote(text, TODAY);
  const { analysis, syntax } = visits.at(-1)!;
  const all = stageArguments(analysis, header, ({ place }) => {
    const { text: line = '' } = syntax[place.line] ?? {};
    return `"${line.slice(place.start, place.end)}"`;
  });
  return all[analysis.rays.findIndex((each) => each.ray === ray)] ?? [];
}
const about = (part: ArgumentPart['about'], body: string, ray?: number): string =>
  argument(body, ray)
    .filter((each) => each.about === part)
    .map(({ text }) => text)
    .join(' ');

describe('red flags and gates', () => {
  it('a red flag comes first, whatever else is said', () => {
    const [first] = argument('history fever\n2nd hot, tender plate, drawer 2');
    expect(first).toMatchObject({
      about: 'red flag',
      text: expect.stringMatching(/^A red flag comes before any stage/),
    });
    expect(about('red flag', '2nd tender plate, drawer 2')).toBe(
      'Nothing that is stated raises a red flag at this ray.',
    );
  });
  it('words that may be one and were not understood are never passed over', () => {
    expect(about('red flag', '2nd tender plate, drawer 2, oozy pus thing')).toMatch(
      /were not understood in this visit/,
    );
  });
  it('a closed gate is told with its rule and source', () => {
    const parts = argument('history injury 2 weeks ago\n2nd tender plate, drawer 2');
    const gate = parts.find(({ about: of }) => of === 'gates');
    expect(gate).toMatchObject({ text: expect.stringMatching(/^The rule: .*six weeks/), mark: 'common practice' });
    expect(parts.some(({ about: of }) => of === 'decides')).toBe(false);
  });
  it('open gates are told apart from assumed ones', () => {
    const text = about('gates', 'history onset gradual 5 months\n2nd tender plate, drawer 2\nsense monofilament 10/10');
    const [open = '', assumed = ''] = text.split('These were not settled, and are assumed:');
    expect(open).toMatch(/feeling was examined and protects/);
    expect(assumed).toMatch(/no operation on this ray is recorded/);
    expect(assumed).not.toMatch(/feeling/);
  });
  it('every gate that can be open without words has its words', () => {
    const silent = ['ray 5', 'infection'];
    expect(GATES.map(({ id }) => id).filter((id) => !(id in GATE_OPEN))).toEqual(
      expect.arrayContaining(silent.filter((id) => !(id in GATE_OPEN))),
    );
    expect(GATES.map(({ id }) => id).filter((id) => !(id in GATE_OPEN) && !silent.includes(id))).toEqual([]);
  });
});

describe('what decides', () => {
  it('is quoted with what it shows, and the row of the table with its own source and mark', () => {
    const parts = argument('2nd tender plate, drawer 2, paper weak, straight').filter(
      ({ about: of }) => of === 'decides',
    );
    expect(parts[0]?.text).toMatch(/^The stage rests on "drawer".*: over half subluxable/);
    expect(parts[1]).toMatchObject({
      text: expect.stringMatching(/^The table of stages, for drawer 2: stage 2/),
      source: 'COUGH11',
      mark: 'from memory, to be verified',
    });
    expect(parts[0]?.statements.length).toBeGreaterThan(0);
  });
  it('support and doubt are told apart, and never move the number', () => {
    const text = about('weighs', '2nd tender plate, drawer 2, paper weak, straight');
    expect(text).toMatch(/In support: "paper": purchase is reduced/);
    expect(text).toMatch(/In question: "straight": the toe is straight/);
    expect(text).toMatch(/never move the number/);
    expect(about('weighs', '2nd drawer 1, tender plate')).toBe('');
  });
  it('what could not be read is told as left out', () => {
    expect(about('assumed', '2nd tender plate, drawer 2, wobblish')).toMatch(
      /Not understood, and not used: "wobblish"/,
    );
  });
  it('the stage that the clinician states stands beside it, the same or not', () => {
    expect(about('outcome', '2nd tender plate, drawer 2\nstage 2nd 2')).toMatch(/states stage 2, the same/);
    expect(about('outcome', '2nd tender plate, drawer 2\nstage 2nd 3')).toMatch(/states stage 3, which differs/);
    expect(about('outcome', '2nd tender plate, drawer 2')).not.toMatch(/states/);
  });
});

describe('what is missing, and what it would change', () => {
  test.each<[string, string, RegExp[]]>([
    [
      'the drawer of a toe that deviates',
      '2nd tender plate, deviation medial',
      [/do the drawer test/, /a stable drawer it would be between stage 0 and stage 1/, /drawer 3 it would be stage 3/],
    ],
    [
      'the signs of stage 0',
      '2nd tender plate, drawer 0, straight',
      [/swelling .* and do the paper test/, /Together they decide whether it is stage 0 or without a stage/],
    ],
    [
      'a doubtful dislocation',
      '2nd ?dislocated, drawer 2',
      [/take a film/, /no dislocation it would be stage 2/, /one that is old it would be stage 4/],
    ],
    ['nothing', '2nd tender plate, drawer 2, medial', [/^No step of the exam is missing/]],
  ])('%s', (_, note, texts) => {
    for (const text of texts) expect(about('missing', note)).toMatch(text);
  });
  it('agrees with the stage that the step then gives', () => {
    for (const [drawer, stage] of [
      [1, 'stage 1'],
      [2, 'stage 2'],
      [3, 'stage 3'],
    ] as const) {
      expect(about('missing', '2nd tender plate, deviation medial')).toContain(`drawer ${drawer} it would be ${stage}`);
      expect(about('outcome', `2nd tender plate, deviation medial, drawer ${drawer}`)).toContain(`is ${stage}`);
    }
  });
});

it('every part has a source, a mark and whole sentences', () => {
  const notes = [
    '2nd tender plate, deviation medial',
    '2nd hot\nhistory fever',
    '5th tender',
    '2nd no pain, tender none, drawer 1',
  ];
  for (const note of notes)
    for (const { text, source, mark } of argument(note, note.startsWith('5th') ? 5 : 2)) {
      expect(text).toMatch(/^[A-Z].*\.$/s);
      expect([source, mark]).toEqual([expect.any(String), expect.any(String)]);
      expect(text).not.toMatch(/undefined|\[object|\.\.|: \./);
    }
});
