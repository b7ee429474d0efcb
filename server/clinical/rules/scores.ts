import { clearFacts } from '../answers.ts';
import { AOFAS_POINTS, AOFAS_TOTALS, type AofasItem } from '../scores.ts';
import { defineRule, type Finding } from './define-rule.ts';

const ITEMS = Object.entries(AOFAS_POINTS) as [AofasItem, readonly number[]][];

/** The points of the items are from memory: the messages ask, and say so. */
export const scoreUnreachable = defineRule({
  source: 'KIT94',
  mark: 'from memory, to be verified',
  code: 'score-unreachable',
  name: 'Score that the scale cannot give',
  severity: 'contradiction',
  scope: 'statement',
  reads: ['aofas'],
  needs: ['aofas'],
  what: 'An AOFAS total or item that no choice of answers gives, or a total that is not the sum of its items.',
  why: 'A slip of a key turns one score into another, and a comparison over time then says something that did not happen.',
  instead: 'Check the sheet. A mean of several patients may take any value, but it is no score of this patient.',
  examples: { invalid: 'aofas 41', valid: 'aofas 40', nearMiss: 'moxfq pain 41' },
  *check({ visit }) {
    for (const fact of clearFacts(visit.facts, 'aofas')) {
      const { slots, place } = fact.origin;
      const at = (slot: string) => slots[slot] ?? place;
      const { total } = fact.values;
      const exact = total && total.low === total.high && !total.bound ? total.low : undefined;
      const items = ITEMS.flatMap(([item, points]): { item: AofasItem; value: number; points: readonly number[] }[] => {
        const value = fact.values[item];
        return value ? [{ item, value: value.low, points }] : [];
      });
      const wrong = items.filter(({ value, points }) => !points.includes(value));
      for (const { item, points } of wrong) {
        const message = `The AOFAS item ${item} gives ${points.join(', ')} (points from memory). Check the sheet.`;
        yield { place: at(item), message } satisfies Finding;
      }
      if (exact === undefined || wrong.length > 0) continue;
      const sum = items.reduce((all, { value }) => all + value, 0);
      if (!AOFAS_TOTALS.has(exact))
        yield {
          place: at('total'),
          message: `No choice of items gives an AOFAS total of ${exact} (points from memory). Check the sheet.`,
        };
      else if (items.length === ITEMS.length && sum !== exact)
        yield {
          place: at('total'),
          message: `The items add up to ${sum}, not ${exact}. Correct the total or an item.`,
        };
    }
  },
});
