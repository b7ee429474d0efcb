import { describe, expect, test } from 'vitest';
import { FINDERS, redFlags } from '../../server/clinical/red-flags.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { wholeVisit } from '../../server/clinical/whole-visit.ts';
import { analyses } from './note.ts';
import { realisticNotes } from './realistic/notes.ts';

/** Signs of every flag, alone and in pairs, in a visit that holds nothing else. */
const SIGNS = [
  'wound pus',
  'wound open',
  'wound discharging',
  '2nd hot',
  '2nd redness',
  'history fever',
  'perfusion white',
  '2nd toe cold',
  'pain 2nd night 6/10',
  'history cancer-history',
  'history weight-loss',
  'mass',
  'calf swollen, tender',
  'chest-pain',
  '2nd dislocated',
  '2nd drawer 4',
  'xray 2nd dislocated',
  'xray 2nd fracture',
  'history trigger injury; onset sudden 2 days',
  'sense monofilament 0/10',
  '2nd swelling moderate',
  'complication infection',
  'pin-site discharging',
];
const pairs = SIGNS.flatMap((one) => SIGNS.map((two) => `${one}\n${two}`));
const visits = ['first', 'postop'].flatMap((kind) => pairs.map((pair) => `visit 2026-03-09 ${kind} right\n${pair}`));
const header = { version: 1, allowances: [] };

describe('what a red flag needs', () => {
  test('loses none that a search of every ray would find', () => {
    const examples = RULES.flatMap(({ examples }) => Object.values(examples)).map((text) =>
      text.startsWith('forefoot') ? text : `visit 2026-03-09 first right\n${text}`,
    );
    const notes = [...visits, ...examples, ...realisticNotes().map(({ text }) => text)];
    const seen = new Set<string>();
    for (const text of notes)
      for (const { facts: visit, before } of analyses(text)) {
        const { feet, flags } = wholeVisit(visit, before, header);
        const searched = redFlags({ visit, before, feet }, FINDERS);
        expect(flags.all, text).toEqual(searched.all);
        for (const { flag } of searched.all) seen.add(flag);
      }
    expect([...seen].sort()).toEqual(FINDERS.map(({ flag }) => flag).sort());
  });
});
