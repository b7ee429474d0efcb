import type { PartialDate, Value } from '../../grammar/values.ts';
import { words } from './sentence.ts';

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;
/** Ray numbers as ordinals; the first toe is the great toe. */
export const ORDINALS = ['', 'first', 'second', 'third', 'fourth', 'fifth'] as const;

/** A date as precise as it was written: `9 March 2026`, `January 2026`, `2026`. */
export function dateWords({ year, month, day }: PartialDate): string {
  return [day, month === undefined ? undefined : MONTHS[month - 1], year]
    .filter((part) => part !== undefined)
    .join(' ');
}

const spread = (low: number, high: number): string => (low === high ? `${low}` : `${low} to ${high}`);
const bounded = (bound: string | undefined, text: string): string => (bound ? `${bound} ${text}` : text);
const SINGULAR: Readonly<Record<string, string>> = {
  minutes: 'minute',
  hours: 'hour',
  days: 'day',
  weeks: 'week',
  months: 'month',
  years: 'year',
  miles: 'mile',
  yards: 'yard',
  blocks: 'block',
};

function quantity({ low, high, unit, bound }: { low: number; high: number; unit: string; bound?: string }): string {
  const joined = unit === '' || unit === '°' || unit === '%' || unit.startsWith('/');
  const name = low === 1 && high === 1 ? (SINGULAR[unit] ?? unit) : unit;
  return bounded(bound, `${spread(low, high)}${joined ? '' : ' '}${name}`);
}

/** The words of one value, with its unit, bound and scale. A date or a time brings its preposition: `in January 2026`. */
export function valueWords(value: Value): string {
  switch (value.is) {
    case 'word':
      return words(value.said ?? value.words);
    case 'number':
    case 'duration':
      return quantity(value);
    case 'fraction':
      return `${value.part} of ${value.whole}`;
    case 'drawer grade': {
      const scale = value.scale ? `on the ${value.scale} scale` : '(scale not stated)';
      return `drawer grade ${spread(value.low, value.high)} ${scale}`;
    }
    case 'stage':
      return `clinical stage ${spread(value.low, value.high)}`;
    case 'anatomical grade':
      return `anatomical grade ${spread(value.low, value.high)}`;
    case 'pulse grade':
      return `grade ${spread(value.low, value.high)}`;
    case 'date':
      return `${value.date.day ? 'on' : 'in'} ${dateWords(value.date)}`;
    case 'ago':
      return `${quantity(value.ago)} before the visit`;
    case 'clock':
      return `at ${String(value.hour).padStart(2, '0')}:${String(value.minute).padStart(2, '0')}`;
    case 'pair':
      return `between the ${value.web === 1 ? 'great' : ORDINALS[value.web]} and ${ORDINALS[value.web + 1]} toes`;
  }
}
