import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { isConcerned } from '../../server/clinical/rules/define-rule.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { wrap } from './note.ts';
import { realisticNotes } from './realistic/notes.ts';

const FOLDER = new URL('./corpus/', import.meta.url);
const LONG = [
  ...readdirSync(FOLDER).map((name) => readFileSync(new URL(name, FOLDER), 'utf8')),
  ...realisticNotes().map(({ text }) => text),
];
const EXAMPLES = RULES.flatMap(({ examples }) => Object.values(examples)).map((text) => wrap(text));

/** A note as it is, and without each of its lines in turn: what a rule needs is missing in one of them. */
const withoutOne = (text: string): string[] => {
  const lines = text.split('\n');
  return [text, ...lines.map((_, at) => lines.filter((_, index) => index !== at).join('\n'))];
};

/** Each visit with the reports of every rule, asked though it may not be concerned. */
const visits = [...LONG, ...EXAMPLES.flatMap(withoutOne)].flatMap((text) => {
  const { visits, header } = analyseNote(text, '2026-03-09');
  return visits.map(({ analysis, syntax }) => {
    const { facts: visit, rays, redFlags, before } = analysis;
    const view = { visit, rays, redFlags, before, context: { today: '2026-03-09', header }, lines: syntax };
    return { text, visit, says: new Set(RULES.filter((rule) => [...rule.check(view)].length > 0)) };
  });
});

test.each(RULES.filter(({ needs }) => needs).map((rule) => [rule.code, rule] as const))(
  '%s says nothing of a visit without what it needs, and something of one with it',
  (_, rule) => {
    const lost = visits.filter(({ visit, says }) => says.has(rule) && !isConcerned(rule, visit));
    expect(lost.map(({ text }) => text)).toEqual([]);
    expect(visits.some(({ says }) => says.has(rule))).toBe(true);
    expect(visits.some(({ visit }) => !isConcerned(rule, visit))).toBe(true);
  },
);
