import { expect, test } from 'vitest';
import { codeActions, convertEdits, dictationActions } from '../../server/features/asked.ts';
import { alike } from '../../server/workspace/suggest/sound-index.ts';
import { applied, noteWithCursor, settled } from './fixture.ts';

const VISIT = 'forefoot 1\nscales drawer 0-4\n\nvisit 2026-03-09 first right\n';
const offered = async (fixture: string, only?: readonly string[]) => {
  const { note, position } = noteWithCursor(VISIT + fixture);
  const range = { start: position, end: position };
  const list = [...dictationActions(note, range, [], only), ...codeActions(note, range, [], only)];
  return { note, list, titles: list.map(({ title }) => title) };
};
const taken = ({ note, list }: Awaited<ReturnType<typeof offered>>, title: string): string => {
  const chosen = list.find((each) => each.title === title);
  return applied(note, chosen?.edit?.changes?.[note.uri] ?? []).slice(VISIT.length);
};

test.each([
  ['2nd tender |planter', 'planter', 'plantar'],
  ['2nd |draw 2', 'draw', 'drawer'],
  ['2nd paper |pools out', 'pools out', 'pulls out'],
  ['|hall ux valgus mild', 'hall ux', 'hallux'],
  ['web 2 |clique none', 'clique', 'click'],
  ['plan |met add', 'met add', 'met pad'],
  ['2nd swelling |modrate', 'modrate', 'moderate'],
  ['us 2nd |tare partial', 'tare', 'tear'],
  ['2nd |dorsi flexion 40°', 'dorsi flexion', 'dorsiflexion'],
  ['|monofilment 9/10', 'monofilment', 'monofilament'],
])('a misheard word is offered as a word of the language that fits: %s', async (fixture, heard, meant) => {
  const found = await offered(fixture, ['quickfix']);
  const title = `Replace "${heard}" with "${meant}"`;
  expect(found.titles).toContain(title);
  expect(taken(found, title)).toBe(fixture.replace('|', '').replace(heard, meant));
});

test('the word that fits best comes first and is one key away; nothing is offered for what is like nothing', async () => {
  const { list } = await offered('2nd tender |planter', ['quickfix']);
  expect(list[0]).toMatchObject({ title: 'Replace "planter" with "plantar"', isPreferred: true });
  expect(
    (await offered('2nd tender |zzq', ['quickfix'])).titles.filter((title) => title.startsWith('Replace')),
  ).toEqual([]);
});

test.each([
  ['2nd swelling |milld', ['mild']],
  ['3rd |fevr', ['fever']],
  ['2nd toe |drifting, drawer 2', []],
  ['the drawer test is |hard to do as she is guarding', []],
  ['the drawer test is hard |to do as she is guarding', []],
  ['2nd |looks fine under the head', []],
  ['3rd callus |under', []],
  ['2nd wound, |hold', []],
  ['2nd drwaer| 2', ['drawer']],
  ['2nd |rawer 2', ['drawer']],
])('what is far off or a word in its own right is taken for no other: %s', async (fixture, meant) => {
  const { titles } = await offered(fixture, ['quickfix']);
  const words = titles.flatMap((title) => /^Replace ".+" with "(.+)"$/.exec(title)?.[1] ?? []);
  expect(words).toEqual(meant);
});

test('a red flag is never one key away, and two words of one meaning are offered once', async () => {
  const { list } = await offered('3rd |fevr', ['quickfix']);
  expect(list.filter(({ isPreferred }) => isPreferred)).toEqual([]);
  const { titles } = await offered('2nd swelling |moderat', ['quickfix']);
  expect(titles.filter((title) => title.startsWith('Replace'))).toEqual(['Replace "moderat" with "moderate"']);
});

test('a word that only joins, denies or doubts is never proposed', async () => {
  for (const word of ['nott', 'noo', 'maybee', 'previosly', 'wos'])
    expect(alike(word).map(({ text }) => text)).not.toEqual(
      expect.arrayContaining(['not', 'no', 'maybe', 'previously', 'was']),
    );
});

test('words that sound the same are found whatever their letters', async () => {
  expect(alike('kallus')[0]).toMatchObject({ text: 'callus', sound: true });
});

test('a dictated line is offered as typed lines, and with what was taken back in a comment', async () => {
  const found = await offered('second ray drawer grade one no sorry grade two full stop |third ray drawer zero', [
    'refactor.rewrite',
  ]);
  expect(found.titles).toEqual([
    'Convert dictation to typed lines',
    'Convert dictation, and keep what was taken back in a comment',
  ]);
  expect(taken(found, 'Convert dictation to typed lines')).toBe('2nd      drawer 2\n3rd      drawer 0');
  expect(taken(found, found.titles[1] ?? '')).toBe('2nd      drawer 2  // said first: grade one\n3rd      drawer 0');
});

test('a comment for what was taken back is offered only where the conversion would drop it', async () => {
  const corrected = '|second ray swelling mild comma drawer grade one no sorry grade two and it reproduces her pain';
  expect((await offered(corrected, ['refactor.rewrite'])).titles).toEqual(['Convert dictation to typed lines']);
});

test('the line above its proposals keeps what was dictated, to the letter', async () => {
  const dictated = 'second ray  swelling mild comma drawer two and it reproduces her pain // seen by AB';
  const found = await offered(`|${dictated}`, ['refactor.rewrite']);
  expect(taken(found, 'Convert dictation to typed lines').split('\n')).toEqual([
    `// dictated: ${dictated}`,
    '2nd      swelling mild',
    'proposed 2nd drawer 2 painful  // drawer two and it reproduces her pain',
    '// seen by AB',
  ]);
});

test('a typed line is offered no conversion', async () => {
  expect((await offered('2nd drawer 2, |tender plantar', ['refactor.rewrite'])).titles).toEqual([]);
});

test('the dictation of a visit is converted at once, where somebody asks for it', async () => {
  const visit = 'second ray drawer two stop\n2nd tender plantar\n|plan tape second ray eight weeks';
  expect((await offered(visit)).titles).not.toContain('Convert the dictation of this visit');
  const found = await offered(visit, ['source.convertDictation']);
  expect(taken(found, 'Convert the dictation of this visit')).toBe(
    '2nd      drawer 2\n2nd tender plantar\nplan     tape 2nd 8 weeks',
  );
});

test('a line whose conversion would change another line of its visit is left as it is', async () => {
  const note = settled(`${VISIT}second ray full stop\npaper holds`);
  const edits = convertEdits(note, 0, note.lineCount - 1);
  const lines = applied(note, edits).split('\n');
  expect(lines.at(-1)).toBe('paper holds');
  const before = note.visit(1)?.analysis.facts.facts.map(({ subject, clarity }) => [subject, clarity]);
  const after = settled(lines.join('\n'))
    .visit(1)
    ?.analysis.facts.facts.map(({ subject, clarity }) => [subject, clarity]);
  expect(after).toEqual(before);
});

test('signed words, findings carried over and a named examiner are left as they were written', async () => {
  const said = 'second ray drawer two comma tender';
  for (const body of [`${said}\nsigned 2026-03-09 by AB`, `carried 2026-02-01 ${said}`, `examiner AB: ${said}`]) {
    const note = settled(`${VISIT}${body}\n`);
    expect(convertEdits(note, 0, note.lineCount - 1)).toEqual([]);
  }
});

test('nothing is converted in the header, in a comment, or past the end', async () => {
  const note = settled('// drawer two comma\nforefoot 1\n');
  expect(convertEdits(note, 0, 99)).toEqual([]);
});
