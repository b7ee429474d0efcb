import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as closed from '../../../grammar/lexicon/closed-words.ts';
import type { Lead } from '../../../grammar/lexicon/entry.ts';
import { LEXICON } from '../../../grammar/lexicon/index.ts';
import { readLine } from '../../../grammar/read-line.ts';
import type { FindingNode, LineSyntax, SectionHeading } from '../../../grammar/syntax.ts';

const CLOSED = Object.values(closed).flatMap((list) => (Array.isArray(list) ? list : Object.keys(list))) as string[];
const OPEN = LEXICON.flatMap(({ word, forms, leads, slots }) => [
  word,
  ...forms,
  ...Object.keys(leads),
  ...Object.values(slots).flatMap((slot) => ('values' in slot ? Object.entries(slot.values).flat(2) : [])),
]);
const MARKS = [',', ';', '.', ':', '=', '?', '(', ')', '"', '“', '//', '-', '->', '→', '+', '+/-', '#', '/', '°', '%'];
const FIGURES = [
  '2',
  '2nd',
  '3rd',
  '2nd-4th',
  'R2',
  'L3',
  'MT2',
  '0-2',
  '1-2',
  '~10-15°',
  '3/52',
  '04/05/26',
  '2026-01',
  '9',
  '14:30',
  '7/10',
];
const ODD = ['zzq', 'constructor', 'é', 'ß', '😀', '\u00a0', '\u200b', '١٢', '\ud800', 'ﬁ', '\t'];
const token = fc.oneof(
  fc.constantFrom(...OPEN),
  fc.constantFrom(...CLOSED),
  fc.constantFrom(...MARKS),
  fc.constantFrom(...FIGURES),
  fc.constantFrom(...ODD),
);
const NOTES = [
  'pain     2nd plantar 6/10 push-off "worst barefoot on tile"',
  'tried    met-pad 4 weeks no-relief; steroid web 2 2026-01',
  '2nd      swelling moderate, tender plantar, drawer 2 painful, medial 12°, extended, paper pulls-out, pip flexible',
  'visit 2026-03-09 first right',
  'patient KM-207  born 1971  female',
  'us       2nd tear partial distal lateral 40%',
  'plan     tape 2nd 8 weeks; stiff-insert; met-pad; no steroid; review in 8 weeks',
  'allow CODE because the clinic says so // note',
];
const mutated = fc
  .tuple(fc.constantFrom(...NOTES), fc.array(fc.tuple(fc.nat(130), fc.nat(6), token), { maxLength: 4 }))
  .map(([note, edits]) =>
    edits.reduce((text, [at, length, insert]) => text.slice(0, at) + insert + text.slice(at + length), note),
  );
const joined = fc
  .tuple(fc.array(token, { maxLength: 14 }), fc.constantFrom(' ', '', ' ', '  '))
  .map(([tokens, gap]) => tokens.join(gap));
const lines = fc
  .oneof(joined, mutated, fc.string({ unit: 'binary', maxLength: 60 }), fc.string({ unit: 'grapheme', maxLength: 60 }))
  .map((text) => text.replaceAll(/[\r\n]/g, ' '));
const headings = fc.constantFrom<(SectionHeading | undefined)[]>(undefined, undefined, 'plan', 'history', 'images');
/** `under` is the section heading above the line. */
const check = (holds: (text: string, under: SectionHeading | undefined) => void, numRuns = 1500) =>
  fc.assert(fc.property(lines, headings, holds), { numRuns });

const findingsOf = ({ statements }: LineSyntax): FindingNode[] => statements.flatMap(({ findings }) => findings);

describe('for any text', () => {
  test('every character that is not white space has exactly one role, and roles are sorted', () => {
    check((text, under) => {
      const { roles } = readLine(text, under);
      let end = 0;
      for (const role of roles) {
        expect(role.start).toBeGreaterThanOrEqual(end);
        expect(role.end).toBeGreaterThan(role.start);
        expect(text.slice(end, role.start).trim()).toBe('');
        end = role.end;
      }
      expect(end).toBeLessThanOrEqual(text.length);
      expect(text.slice(end).trim()).toBe('');
    });
  });

  test('findings, slots, quotes, causes, kept text and problems lie inside the line', () => {
    check((text, under) => {
      const read = readLine(text, under);
      const findings = findingsOf(read);
      const slots = findings.flatMap((finding) => Object.values(finding.slots));
      const spans = [
        ...findings,
        ...slots,
        ...findings.flatMap(({ word, quotes, causes }) => [word, ...quotes, ...causes]),
        ...slots.flatMap(({ causes }) => causes),
        ...read.statements.flatMap(({ verbatim }) => verbatim),
        ...read.problems,
      ];
      for (const { start, end } of spans) {
        expect(start).toBeGreaterThanOrEqual(0);
        expect(end).toBeGreaterThan(start);
        expect(end).toBeLessThanOrEqual(text.length);
      }
      for (const { start, end, word } of findings) expect([start <= word.start, word.end <= end]).toEqual([true, true]);
    });
  });

  test('a line read twice is the same', () => {
    check((text, under) => {
      expect(readLine(text, under)).toEqual(readLine(text, under));
    }, 600);
  });

  test('a clear finding is never a test without result, nor an absent finding with a value', () => {
    check((text, under) => {
      for (const { id, status, slots, causes, word } of findingsOf(readLine(text, under))) {
        const entry = LEXICON.find((each) => each.id === id);
        if (causes.length > 0 || !entry) continue;
        const shapes = entry.slots as Readonly<Record<string, { locating?: boolean }>>;
        const valued = Object.keys(slots).some((slot) => !shapes[slot]?.locating);
        // `no avn` denies that one kind: the noun itself names the value, and the finding has none beside it.
        const leads = entry.leads as Readonly<Record<string, Lead>>;
        const noun = leads[text.slice(word.start, word.end).toLowerCase()];
        const named = noun?.noun ? Object.keys(noun.gives ?? {}) : [];
        const beside = Object.keys(slots).some((slot) => !shapes[slot]?.locating && !named.includes(slot));
        if (status === 'absent' || status === 'avoid') expect(beside).toBe(false);
        if (entry.bare === 'incomplete' && status === 'present' && !valued) expect.fail(`${id} present: ${text}`);
      }
    });
  });

  test('a red-flag word is read by a clear finding, reported, or in a comment or header', () => {
    const flagged = fc.tuple(lines, fc.constantFrom(...closed.RED_FLAG_WORDS), lines).map((parts) => parts.join(' '));
    fc.assert(
      fc.property(flagged, headings, (text, under) => {
        const read = readLine(text, under);
        if (read.kind !== 'statements') return;
        const comment = read.roles.find(({ kind }) => kind === 'comment')?.start ?? text.length;
        const clear = findingsOf(read).filter(({ causes }) => causes.length === 0);
        for (const match of text.slice(0, comment).matchAll(/[\p{L}\d]+/gu)) {
          if (!closed.RED_FLAG_WORDS.includes(match[0].toLowerCase())) continue;
          const holds = (span: { start: number; end: number }) =>
            span.start <= match.index && match.index + match[0].length <= span.end;
          const reported = read.problems.some((problem) => problem.code === 'unread-red-flag' && holds(problem));
          expect(reported || clear.some(holds)).toBe(true);
        }
      }),
      { numRuns: 800 },
    );
  });
});

/** Statements of one segment each, clear as they stand. */
const CLEAR = [
  '2nd drawer 2',
  '2nd tender plantar',
  '2nd no swelling',
  'web 2 click none',
  '2nd medial 12°',
  'us 2nd tear partial',
  'tried tape 4 weeks no-relief',
  'plan no steroid',
  'xray hva 22°',
  'history onset gradual 5 months',
  'pain 2nd 6/10',
  '2nd drawer not done',
  '2nd paper holds',
  'fever',
] as const;

describe('a word put into a segment', () => {
  test('the segments are clear without it', () => {
    for (const text of CLEAR)
      expect(findingsOf(readLine(text)).map(({ causes }) => causes)).not.toContainEqual([expect.anything()]);
  });

  const places = CLEAR.flatMap((text) => {
    const words = text.split(' ');
    return Array.from({ length: words.length + 1 }, (_, at) => ({ words, at }));
  });
  const put = (words: string[], at: number, word: string): string =>
    [...words.slice(0, at), word, ...words.slice(at)].join(' ');
  const clearIn = (text: string): string[] =>
    findingsOf(readLine(text))
      .filter(({ causes }) => causes.length === 0)
      .map(({ id }) => `${text}: ${id}`);

  const DENIES = ['no longer', 'denies'];
  const idsIn = (text: string): string[] => clearIn(text).map((each) => each.slice(each.lastIndexOf(' ')));

  test('an unknown word beside a finding makes that finding unclear and is reported', () => {
    for (const unknown of ['zzq', 'Zzq', 'zzq-zzq'])
      for (const { words, at } of places) {
        const text = put(words, at, unknown);
        expect(clearIn(text)).toEqual([]);
        expect(readLine(text).problems.map(({ code }) => code)).toContain('unknown-word');
      }
  });

  test('a distancing word leaves no clear finding in the segment', () => {
    for (const distancing of closed.DISTANCING)
      for (const { words, at } of places) {
        const text = put(words, at, distancing);
        if (isTaken(text, put(words.slice(0, at), at, '').length, distancing)) continue;
        if (/no \w+ possible/.test(text)) continue; // `no drawer possible` is a status
        // Before a sign they deny it, and then say no more than `no` in their place.
        const denied = DENIES.includes(distancing) ? idsIn(put(words, at, 'no')) : [];
        expect(idsIn(text).filter((id) => !denied.includes(id))).toEqual([]);
      }
  });
});

/** A form of the finding's own (`no longer`, `settled`) is its value there, not a distance. */
const isTaken = (text: string, from: number, word: string): boolean =>
  readLine(text).roles.some(
    ({ kind, start, end }) => (kind === 'value' || kind === 'finding') && start <= from && from + word.length <= end,
  );
/** The shortest of many runs, for a busy machine lengthens any of them and shortens none. */
test.each([
  ['a long line', '2nd swelling moderate, tender plantar, drawer 2 painful zzq no redness or heat, R3 drawer 1; ', 30],
  ['a run of unread words', 'zzq ', 400],
  ['a run of subjects', '2nd ', 400],
  ['a run of denials', 'no redness, ', 200],
  ['one long statement', 'tender plantar ', 200],
])('twice the text takes about twice the time: %s', (_, unit, count) => {
  const shortest = (text: string): number => {
    let best = Number.POSITIVE_INFINITY;
    for (let i = 0; i < 60; i++) {
      const from = process.hrtime.bigint();
      readLine(text);
      best = Math.min(best, Number(process.hrtime.bigint() - from));
    }
    return best;
  };
  shortest(unit.repeat(count));
  // A busy machine may lengthen all runs of one of the two texts; it does not do so three times.
  const ratio = () => shortest(unit.repeat(2 * count)) / shortest(unit.repeat(count));
  expect(Math.min(ratio(), ratio(), ratio())).toBeLessThan(3);
});

describe('a word that is the name of something in the machine', () => {
  test.each([
    'WORD worker, standing all day',
    'xray wb hva 22 WORD',
    'pain 2nd 6 WORD',
    'smokes 20 WORD a day',
    '2nd drawer two WORD',
    '2nd drawer WORD, medial',
  ])('is read as any other unknown word: %s', (line) => {
    const told = (word: string): string =>
      JSON.stringify(readLine(line.replace('WORD', word))).replaceAll(word, 'WORD');
    expect(told('constructor')).toEqual(told('qonstructor'));
  });
});
