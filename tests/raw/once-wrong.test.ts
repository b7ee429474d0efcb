import { expect, test } from 'vitest';
import { codesOf, lastVisit, wrap } from '../clinical/note.ts';

// Each said what nobody meant when the raw notes were first read.
const clear = (body: string, visit?: string): string[] =>
  lastVisit(wrap(body, 'scales drawer 0-4', visit))
    .facts.facts.filter(({ clarity }) => clarity === 'clear')
    .map(({ finding, side, subject, status }) =>
      [side, subject.at === 'ray' ? subject.ray : subject.at, status === 'present' ? '' : status, finding]
        .filter(Boolean)
        .join(' '),
    );
const BOTH = 'visit 2026-03-09 first both';

test.each([
  [
    'a place of the pain is no deviation',
    '2nd TTP plantar lateral, drawer 1',
    ['right 2 tenderness', 'right 2 drawer'],
  ],
  ['a place before it neither', '5th lateral head tender', ['right 5 tenderness']],
  ['degrees make it one', '2nd swollen, medial 12°', ['right 2 swelling', 'right 2 deviation']],
  ['red beside a drawer may be reducible', '2nd drawer 1+ red.', []],
  ['red apart is red', '2nd drawer 1, red', ['right 2 drawer', 'right 2 redness']],
  ['no purchase is no negative paper test', '2nd toe purchase absent', []],
])('%s', (_, note, facts) => expect(clear(note)).toEqual(facts));

test.each([
  [
    'after the other side, a bare finding has none',
    '2nd L TTP plantar. R drawer 0, NT',
    ['left 2 tenderness', 'right 2 drawer'],
  ],
  ['a side beside an unread word counts', '2nd R straight. L pin zzq; drawer not tested', ['right 2 absent deviation']],
  [
    'a heading above does not reach past it',
    'L:\n3rd drawer 0\npulses R dp 2 pt 1',
    ['left 3 drawer', 'right foot dp', 'right foot pt'],
  ],
  ['nor before it in its segment', 'L:\n3rd drawer 0\nxray wb R hva 38', ['left 3 drawer', 'right foot hva']],
  ['a side of its own is kept', '3rd L NT, R NT', ['left 3 absent tenderness', 'right 3 absent tenderness']],
])('sides: %s', (_, note, facts) => expect(clear(note, BOTH)).toEqual(facts));

test('the side of the visit does not reach past the other side, and the reason is said', () => {
  const note = 'xray wb, 2nd long, L hva 29, ima 13';
  expect(clear(note)).toEqual(['right foot view', 'right 2 protrusion', 'left foot hva']);
  expect(codesOf(note)).toContain('unclear-finding');
});

test('a dry wound is called dry, not clean', () => {
  const [wound] = lastVisit(wrap('wound dry, no zzq')).facts.facts;
  expect(wound?.clarity).toBe('clear');
  expect(wound?.values).toMatchObject({ state: { words: ['dry'] } });
});

test.each([
  ['drawer 2, no zzq', ['right 2 drawer']],
  ['drawer 2, no 3', []],
  ['drawer 2, no wait, zzq', []],
  ['drawer 2, no zzq 1', []],
  ['drawer 2, no', []],
])('a no denies the word after it, and takes back what was said where it has none: 2nd %s', (note, facts) =>
  expect(clear(`2nd ${note}`)).toEqual(facts),
);
