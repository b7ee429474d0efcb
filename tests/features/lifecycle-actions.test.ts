import { describe, expect, test } from 'vitest';
import { codeActions } from '../../server/features/code-actions.ts';
import { applied, noteWithCursor, settled } from './fixture.ts';

const VISIT = 'visit 2026-05-04 review right';

function actionsAt(fixture: string, only?: string[]) {
  const { note, position } = noteWithCursor(fixture);
  const actions = codeActions(note, { start: position, end: position }, [], only);
  const titles = actions.map(({ title }) => title);
  const after = (title: RegExp): string => {
    const found = actions.filter((each) => title.test(each.title));
    expect(found, titles.join('\n')).toHaveLength(1);
    return applied(note, found[0]!.edit!.changes![note.uri]!);
  };
  return { titles, after };
}
const codes = (text: string): string[] => {
  const note = settled(text);
  return Array.from({ length: note.blockCount }, (_, index) => note.reports(index).map(({ code }) => code)).flat();
};
const signing = ['source.signVisit'];

describe('signing', () => {
  test('writes the day, the signer that the note knows, and a seal that holds until a word is changed', () => {
    const text = `visit 2026-03-09 first right\n2nd straight\nsigned 2026-03-09 AB\n\n${VISIT}\n2nd straigh|t\n`;
    const signed = actionsAt(text, signing).after(/^Sign this visit as AB$/);
    expect(signed).toMatch(/\n2nd straight\nsigned {3}2026-05-04 AB seal [0-9a-z]{4}-[0-9a-z]{2}\n$/);
    expect(codes(signed)).toEqual([]);
    expect(codes(signed.replace('2nd straight\nsigned   ', '2nd medial\nsigned   '))).toEqual(['signed-words-changed']);
  });
  test('asks for initials where the note knows nobody', () => {
    const signed = actionsAt(`${VISIT}\n2nd straigh|t`, signing).after(/add your initials/);
    expect(codes(signed)).toEqual(['bad-signer']);
    expect(codes(signed.replace(' seal', ' AB seal'))).toEqual([]);
  });
  test('seals a signature that has none, and never one that has', () => {
    const sealed = actionsAt(`${VISIT}\n2nd straight\nsigned 2026-05-04 A|B // at home`, signing).after(/^Seal/);
    expect(sealed).toMatch(/AB seal \S+ \/\/ at home$/);
    expect(codes(sealed)).toEqual([]);
    expect(actionsAt(sealed.replace('straight', 'medial|'), signing).titles).toEqual([]);
  });
  test('of an addendum signs the addendum', () => {
    const text = `${VISIT}\n2nd straight\nsigned 2026-05-04 AB\naddendum 2026-05-04 CD\n3rd straigh|t`;
    const signed = actionsAt(text, signing).after(/addendum as CD/);
    expect(codes(signed)).toEqual([]);
    expect(codes(signed.replace('2nd straight', '2nd medial'))).toEqual([]);
  });
});

describe('signed words', () => {
  test('are changed by no action, and what is accepted waits for an addendum', () => {
    const body = 'scales drawer 0-4\nvisit 2026-03-09 first right\n2nd tender plantar, drawer 2, blo|rp\n';
    expect(actionsAt(body).titles.join()).toContain('Accept stage 2');
    expect(actionsAt(`${body}signed 2026-03-09 AB`).titles).toEqual([]);
    const added = `${body}signed 2026-03-09 AB\naddendum 2026-03-10 AB`;
    expect(actionsAt(added).after(/^Accept stage 2/)).toMatch(/AB\nstage {4}2nd 2 .*$/);
  });
  test('that come late get an addendum above them', () => {
    const text = `${VISIT}\n2nd straight\nsigned 2026-05-04 AB\n3rd straigh|t`;
    expect(actionsAt(text).after(/^Open an addendum/)).toBe(
      text.replace('AB\n3rd straigh|t', 'AB\naddendum 2026-05-04\n3rd straight'),
    );
  });
});

describe('carried findings', () => {
  const before = `scales drawer 0-4\nvisit 2026-03-09 first right
pain 2nd 5/10
stand 2nd lifted 3 mm
2nd swelling mild, drawer 2 painful, no overlap, not straight blorp
4th normal
plan tape 2nd
stage 2nd 2
`;
  test('come from the visit before, one a line, none of them believed', () => {
    const carried = actionsAt(`${before}\n${VISIT}\n2nd drawer 1|`, ['source.carryFindings']).after(/^Carry/);
    expect(carried.split('\n').filter((line) => line.startsWith('carried'))).toEqual([
      'carried  2026-03-09 stand 2nd lifted 3 mm',
      'carried  2026-03-09 2nd swelling mild',
      'carried  2026-03-09 2nd no overlap',
    ]);
    const note = settled(carried);
    expect(note.visit(2)!.analysis.facts.facts.map(({ finding }) => finding)).toEqual(['drawer']);
    expect(actionsAt(`${carried}|`, ['source.carryFindings']).titles).toEqual([]);
  });
  test('of a visit of both feet bring their side', () => {
    const both = 'visit 2026-03-09 first both\nL:\n2nd swelling mild\n';
    const carried = actionsAt(`${both}\nvisit 2026-05-04 review both\n|`, ['source.carryFindings']).after(/^Carry/);
    expect(carried).toContain('carried  2026-03-09 left 2nd swelling mild');
  });
  test('are confirmed or dropped one by one', () => {
    const text = `${VISIT}\ncarried 2026-03-09 2nd drawer 2|\n3rd straight`;
    expect(actionsAt(text).after(/^Confirm/)).toBe(`${VISIT}\n2nd drawer 2\n3rd straight`);
    expect(actionsAt(text).after(/^Drop/)).toBe(`${VISIT}\n3rd straight`);
    expect(actionsAt(`${VISIT}\ncarried 2026-03-09 2nd drawer 2|`).after(/^Drop/)).toBe(VISIT);
  });
  test('of a block leave it when they are confirmed', () => {
    const text = `${VISIT}\ncarried 2026-03-09\n2nd drawer 2|\n3rd straight`;
    expect(actionsAt(text).after(/^Confirm/)).toBe(`${VISIT}\n2nd drawer 2\ncarried 2026-03-09\n3rd straight`);
  });
  test('that share a line are parted first', () => {
    const text = `${VISIT}\ncarried 2026-03-09 2nd drawer 2|, medial 12°; stand 2nd lifted 3 mm // copied`;
    expect(actionsAt(text).titles.join()).not.toContain('Confirm');
    expect(actionsAt(text).after(/^Part it/)).toBe(
      `${VISIT}\ncarried 2026-03-09 2nd drawer 2 // copied\ncarried 2026-03-09 2nd medial 12°\ncarried 2026-03-09 stand 2nd lifted 3 mm`,
    );
  });
});

describe('proposals of a conversion', () => {
  const one = 'proposed 2nd drawer 2 painful  // drawer two and it reproduces her pain';
  const two = 'proposed 2nd tender plantar  // sore just under the joint';
  test('are confirmed one by one or all at once, and what was said is brought back', () => {
    const own = actionsAt(`${VISIT}\n${one}|\n${two}`, ['quickfix']);
    expect(own.after(/^Confirm as/)).toContain('\n2nd drawer 2 painful  // drawer two');
    expect(own.after(/^Bring/)).toContain('\n2nd drawer two and it reproduces her pain\nproposed');
    expect(own.after(/^Confirm all 2 proposals/)).not.toContain('proposed');
  });
  test('that hold no finding are confirmed by nobody, alone or with others', () => {
    const none = ['proposed', 'proposed banana', 'proposed signed 2026-05-04 AB', 'proposed left:'];
    const all = actionsAt(`${VISIT}\n${one}|\n${none.join('\n')}\n${two}`, ['quickfix']);
    expect(all.after(/^Confirm all 2 proposals/)).toContain(`\n${none.join('\n')}\n`);
    for (const line of none)
      expect(actionsAt(`${VISIT}\n${line}|`, ['quickfix']).titles.filter((title) => /^Confirm/.test(title))).toEqual(
        [],
      );
  });
  test('are left as they are once they are signed', () => {
    expect(actionsAt(`${VISIT}\n${one}|\nsigned 2026-03-09 AB`, ['quickfix']).titles).not.toContain(
      'Confirm as what was meant',
    );
  });
});
