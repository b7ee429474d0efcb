import { expect, test } from 'vitest';
import { readLine } from '../../../grammar/read-line.ts';
import { checkRules } from './rules.ts';

// Expected values: the reading rules of the language ("Kept verbatim, never guessed").
checkRules({
  'a comparison between sides, rays or dates is kept verbatim': [
    ['R worse', '', 'word-out-of-place word-out-of-place'],
    ['2nd worse than 3rd', ''],
    ['2nd drawer 2 -> 1', 'unclear: drawer', 'word-out-of-place number-without-place'],
    ['2nd drawer 2->1', 'unclear: drawer', 'word-out-of-place number-without-place'],
    ['2nd drawer 2 → 1', 'unclear: drawer', 'word-out-of-place number-without-place'],
    ['2nd drawer 2 vs 1', 'unclear: drawer', 'number-without-place'],
    ['2nd tender more than 3rd', 'unclear: tenderness'],
    ['2nd swollen compared to left', 'unclear: swelling', 'unknown-word word-out-of-place'],
    ['2nd drawer 2 L > R', 'unclear: drawer', 'word-out-of-place unknown-word word-out-of-place'],
  ],
  'a conditional is kept verbatim': [
    ['2nd tender if walking', 'unclear: tenderness', 'word-out-of-place'],
    ['2nd tender when barefoot', 'unclear: tenderness', 'word-out-of-place'],
    ['plan operation if no better', 'unclear: operation', 'word-out-of-place word-out-of-place'],
    ['plan steroid web 2 unless settled', 'unclear: steroid'],
  ],
  'an ellipsis is kept verbatim': [
    ['2nd drawer 2; 3rd 1', '2 drawer grade=2', 'number-without-place'],
    ['2nd drawer 2 3rd 1', 'unclear: drawer', 'number-without-place'],
  ],
  'intermittence is a value of its finding or kept verbatim': [
    ['2nd overlap hallux sometimes', '2 overlap onto=hallux when=sometimes'],
    ['2nd overlaps intermittently', '2 overlap when=sometimes'],
    ['2nd tender sometimes', 'unclear: tenderness'],
    ['2nd sometimes tender', 'unclear: tenderness'],
    ['2nd swelling on and off', 'unclear: swelling'],
  ],
  'before and after on one day is kept verbatim': [
    ['2nd dislocated, now reduced', 'unclear: dislocated', 'unread-red-flag'],
    ['2nd dislocated now reduced', 'unclear: dislocated', 'unread-red-flag'],
    ['2nd drawer 3 before, 1 after', 'unclear: drawer', 'number-without-place'],
  ],
});

test.each([
  ['history fell off a ladder', 'fell off a ladder'],
  ['2nd drawer 2, zzq yyq', 'zzq yyq'],
  ['R worse', 'R worse'],
  ['2nd tender, "as if on a stone"', '"as if on a stone"'],
  ['2nd hva 22°', 'hva 22°'],
  ['plan risks discussed', 'risks discussed'],
])('every word that was not read is kept as typed: %s', (text, kept) => {
  const { roles, statements } = readLine(text);
  const verbatim = statements.flatMap((statement) => statement.verbatim);
  const covered = (at: number): boolean => verbatim.some(({ start, end }) => start <= at && at < end);
  const from = text.indexOf(kept);
  const letters = [...kept].flatMap((letter, at) => (letter.trim() ? [from + at] : []));
  expect(
    letters.filter(
      (at) =>
        !covered(at) &&
        !roles.some((r) => (r.kind === 'subject' || r.kind === 'filler') && r.start <= at && at < r.end),
    ),
  ).toEqual([]);
  for (const node of verbatim)
    expect(node.quote ? text.slice(node.start, node.end) : node.text).toBe(text.slice(node.start, node.end));
});
