import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { AnyFact } from '../../server/clinical/facts.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { realisticNotes } from './realistic/notes.ts';

const FOLDER = new URL('./corpus/', import.meta.url);
const NOTES = [
  ...readdirSync(FOLDER).map((name) => readFileSync(new URL(name, FOLDER), 'utf8')),
  ...realisticNotes().map(({ text }) => text),
  ...RULES.flatMap(({ examples }) => Object.values(examples).filter((text) => text.startsWith('forefoot'))),
];

/** What a rule may look at in each visit of the notes, with and without the facts that it doesn't name. */
const views = NOTES.flatMap((text) => {
  const { visits, header } = analyseNote(text, '2026-03-09');
  return visits.map(({ analysis, syntax }) => ({
    visit: analysis.facts,
    rays: analysis.rays,
    redFlags: analysis.redFlags,
    before: analysis.before,
    context: { today: '2026-03-09', header },
    lines: syntax,
  }));
});

/** They ask which rays and webs a visit describes at all, whatever it says of them. */
const OF_ANY_SUBJECT = ['wrong-ray', 'squeeze-or-compression', 'incomplete-visit'];

test.each(
  RULES.filter(({ code, reads }) => reads.length > 0 && !OF_ANY_SUBJECT.includes(code)).map(
    (rule) => [rule.code, rule] as const,
  ),
)('%s looks at no finding but those that it names', (_, rule) => {
  // Remarks and the sections that are written at all may be looked at by every rule.
  const named = (fact: AnyFact) =>
    rule.reads.includes(fact.finding) || fact.quotes.length > 0 || fact.section === 'plan' || fact.section === 'tried';
  const differ = views.filter((view) => {
    const all = [...rule.check(view)].map(({ message }) => message);
    const few = [...rule.check({ ...view, visit: { ...view.visit, facts: view.visit.facts.filter(named) } })];
    return all.join('\n') !== few.map(({ message }) => message).join('\n');
  });
  expect(differ.map(({ visit }) => visit.date)).toEqual([]);
});
