import { describe, expect, test } from 'vitest';
import { readSettings } from '../../server/clinical/read-settings.ts';
import { hover } from '../../server/features/hover.ts';
import { openNote } from '../workspace/open-note.ts';
import { noteWithCursor } from './fixture.ts';

function checkHover(fixture: string, word: string, ...contents: RegExp[]): void {
  const { note, position } = noteWithCursor(fixture);
  const found = hover(note, position);
  expect(found).not.toBeNull();
  const { start, end } = found!.range!;
  expect(note.line(start.line)?.text.slice(start.character, end.character)).toBe(word);
  const { value } = found!.contents as { value: string };
  for (const each of contents) expect(value).toMatch(each);
}
const inVisit = (line: string): string => `visit 2026-03-09 first right\n${line}`;

describe('hover', () => {
  test('explains a finding with its technique, values and source', () => {
    checkHover(
      inVisit('2nd dra|wer 2'),
      'drawer',
      /\*\*drawer\*\* \(test, said of a ray\)/,
      /\*Technique\.\* One hand holds the metatarsal head/,
      /- pain: `painful`, `painless`/,
      /\*Source\.\* NERY15: Nery C.*\(.*read in the publication\)/,
    );
  });

  test('explains another form of a finding as the finding', () => {
    checkHover(inVisit('2nd lach|man 2'), 'lachman', /\*\*drawer\*\*/);
  });

  test.each([
    ['scales drawer 0-3\n', /\*Scale\.\* 0-3, from the `scales` line/],
    ['', /\*Scale\.\* Not stated; read as 0-4/],
  ])('names the scale of a grade (%j)', (header, scale) => {
    checkHover(header + inVisit('2nd drawer |2'), '2', scale);
  });

  test('shows the computed stage on a subject, with its evidence and its caution', () => {
    checkHover(
      inVisit('2n|d swelling moderate, tender plantar, drawer 2, straight, paper weak'),
      '2nd',
      /\*\*2nd right\*\*, computed: \*\*stage/,
      /- decides: `drawer`/,
      /Computed as decision support\. The clinician decides/,
      /\*Source\.\*/,
    );
  });

  test('shows the computed stage beside a stated one', () => {
    checkHover(inVisit('2nd drawer 2, paper weak\nstage 2nd |3'), '3', /Stated: stage 3/, /\*\*stage\*\* \(test/);
  });

  test('leads with words that may be a red flag and were not understood', () => {
    const { note, position } = noteWithCursor(inVisit('2n|d drawer 1\n3rd toe seems bluish'));
    const { value } = hover(note, position)!.contents as { value: string };
    expect(value).toMatch(/^\*\*Red flag\?\*\* Words that may be a red flag/);
    expect(value.match(/may be a red flag/g)).toHaveLength(1);
  });

  test('tells what may explain the great toe, and no stage', () => {
    checkHover(
      inVisit('1s|t tender dorsal, df limited'),
      '1st',
      /\*\*great toe right\*\*/,
      /- \*\*hallux rigidus\*\*: argued for by 2/,
    );
    const { note, position } = noteWithCursor(inVisit('1s|t tender dorsal, drawer 2'));
    expect(JSON.stringify(hover(note, position))).not.toMatch(/stage \d/);
  });

  test('tells the other scales on the word stage only, apart from the stage', () => {
    const line = '2nd drawer 1, medial mild, no overlap\nstage 2nd 1';
    checkHover(
      inVisit(line.replace('stage', 'sta|ge')),
      'stage',
      /\*Other scales\*, 2nd right, computed apart from the stage/,
      /- crossover grade by displacement: 1 \(.*\(HADD99, from memory, to be verified\)/,
      /- predislocation stage: cannot be told .*\(YU02, secondary\)/,
    );
    const { note, position } = noteWithCursor(inVisit(line.replace('2nd', '2n|d')));
    expect(JSON.stringify(hover(note, position))).not.toContain('Other scales');
  });

  test('defines each anatomical grade, and says that half is assigned to none', () => {
    checkHover(
      inVisit('mri 2nd anatomical-gra|de 2'),
      'anatomical-grade',
      /exactly 50 % of the width is assigned to no grade/,
      /- 4: extensive tear with a buttonhole/,
      /from memory, to be verified/,
    );
  });

  test('shows the conditions that lead at a ray, with the test that tells them apart', () => {
    checkHover(
      inVisit('2n|d tender plate, drawer 2\nweb 2 squeeze painful'),
      '2nd',
      /\*What may explain it\*, computed; findings are counted, not weighed/,
      /- \*\*plantar plate tear\*\*: argued for by 2, against by 0\. Not examined: .*paper test.* To tell: .*\(HEALIO15, secondary\)/,
      /- \*\*interdigital neuroma\*\*: argued for by 1/,
      /can both be true/,
    );
  });

  test('shows what must not be missed beside what most findings argue for', () => {
    checkHover(
      inVisit('history trigger load-rise; previous cancer\n2n|d hot, tender plate, drawer 2'),
      '2nd',
      /\*\*infection\*\*, not to be missed.*\n.*\*\*fracture.*\n.*\*\*tumour.*\n.*\*\*plantar plate tear/,
    );
  });

  test('shows the conditions that lead in a web, and nothing where none is argued for', () => {
    checkHover(
      inVisit('we|b 3 squeeze painful'),
      'web 3',
      /\*\*web 3 right\*\*/,
      /\*\*interdigital neuroma\*\*/,
      /Computed as decision support/,
    );
    const { note, position } = noteWithCursor(inVisit('we|b 3 no click'));
    expect(hover(note, position)).toBeNull();
  });

  test('shows what normal says of a ray, built in', () => {
    checkHover(
      inVisit('2nd nor|mal'),
      'normal',
      /\*\*normal\*\* of a ray says: swelling none; tender none; deviation none; overlap none\./,
      /Built in/,
      /what it does not name stays not mentioned/,
    );
    checkHover(inVisit('webs 2-3 nor|mal'), 'normal', /of a web space says: click none; squeeze none; numbness none/);
  });

  test('shows what normal says in this clinic', () => {
    const read = readSettings('{"panels":{"ray":["tender none","numbness none"]}}');
    const settings = 'settings' in read ? read.settings : expect.fail(read.problems.join('\n'));
    const note = openNote(inVisit('2nd normal'), undefined, undefined, settings);
    note.settle();
    const { value } = hover(note, { line: 1, character: 6 })!.contents as { value: string };
    expect(value).toContain('says: tender none; numbness none.');
    expect(value).toContain('From the settings of the clinic');
  });

  test.each([
    ['pl|an tape 2nd', 'plan', /\*\*plan\*\*: what is planned/],
    ['Im|aging:', 'Imaging', /each line names its image/],
    ['xr|ay wb 2nd', 'xray', /\*\*xray\*\*: radiographs/],
    ['x-r|ay: hva 22', 'x-ray', /\*\*xray\*\*: radiographs/],
    ['2nd n|o swelling', 'no', /denies the one finding after it/],
    ['plan n|o steroid', 'no', /to be avoided/],
    ['2nd no|t swollen', 'not', /stands directly before a finding/],
    ['2nd drawer not d|one', 'not done', /not done.*says nothing of the result[\s\S]*\*\*drawer\*\*/],
    ['2nd swelling no|ne', 'none', /denies the finding before it/],
    ['2nd drawer prev|iously 2', 'previously', /is kept as written/],
  ])('explains a word that is no finding: %s', (line, word, about) => checkHover(inVisit(line), word, about));

  test('explains a header word', () => {
    checkHover('sca|les drawer 0-4', 'scales', /Three scales exist/);
  });

  test('explains the rule behind a report, with its source and its page, beside the finding', () => {
    const { note, position } = noteWithCursor(inVisit('2nd tender plantar, drawer 2\nplan st|eroid web 2'));
    const { value } = hover(note, position, 'file:///x/RULES.md')!.contents as { value: string };
    expect(value).toMatch(/\*\*Steroid at an unstable joint\*\* \(`steroid-unstable`\)/);
    expect(value).toMatch(/\*Instead\.\* Protect the joint/);
    expect(value).toMatch(/\*Source\.\* REIS89: Reis.*from memory, to be verified/);
    expect(value).toContain('[Examples and source](file:///x/RULES.md#steroid-unstable)');
    expect(value.indexOf('steroid-unstable')).toBeLessThan(value.indexOf('**steroid** ('));
  });

  test('explains a report of the reader, and where no page is known the command that prints it', () => {
    checkHover(inVisit('2nd dra|aawer'), 'draaawer', /`unknown-word`/, /`forefoot rule unknown-word`/);
  });

  test('explains no rule beside its words', () => {
    const { note, position } = noteWithCursor(inVisit('2nd tender plantar, dra|wer 2\nplan steroid web 2'));
    const { value } = hover(note, position)!.contents as { value: string };
    expect(value).not.toMatch(/steroid-unstable/);
  });

  test.each(['// com|ment', '2nd "qu|ote"', ' |', ''])('says nothing on %j', (line) => {
    const { note, position } = noteWithCursor(inVisit(line.includes('|') ? line : `${line}|`));
    expect(hover(note, position)).toBeNull();
  });

  test('says nothing outside the text', () => {
    const { note } = noteWithCursor('|');
    expect(hover(note, { line: 9, character: 9 })).toBeNull();
  });
});
