import { own } from '../own.ts';
import type { Item, ItemOf } from '../reader/items.ts';
import { phrases, spanOf, wordAt } from './spoken-phrases.ts';
import { FRACTIONS, HEARD_AS, NUMBER_WORDS, SPOKEN_BOUNDS } from './spoken-words.ts';

/** A number as said or typed, and the index after it. `said` are its words. */
export interface SpokenNumber {
  readonly value: number;
  readonly next: number;
  readonly said: readonly string[];
  /** `°` or `%` typed at it. */
  readonly unit?: string;
}

const fractions = phrases(Object.keys(FRACTIONS));
const bounds = phrases(Object.keys(SPOKEN_BOUNDS));

/** Words of one number each: `twenty-two` and `twenty two` are the same. */
const partsAt = (items: readonly Item[], index: number): readonly string[] => {
  const item = items[index];
  return item?.is === 'word' && item.parts.every((part) => NUMBER_WORDS.has(part)) ? item.parts : [];
};

/** A whole number below a hundred: `seven`, `seventeen`, `seventy seven`. */
function belowHundred(items: readonly Item[], start: number): SpokenNumber | undefined {
  const first = partsAt(items, start);
  const value = NUMBER_WORDS.get(first[0] ?? '');
  if (value === undefined || first.length > 2) return undefined;
  const tens = value >= 20;
  if (first.length === 2) {
    const unit = NUMBER_WORDS.get(first[1] ?? '') ?? 0;
    return tens && unit > 0 && unit < 10 ? { value: value + unit, next: start + 1, said: first } : undefined;
  }
  const second = partsAt(items, start + 1);
  const unit = second.length === 1 ? (NUMBER_WORDS.get(second[0] ?? '') ?? 0) : 0;
  if (tens && unit > 0 && unit < 10) return { value: value + unit, next: start + 2, said: [...first, ...second] };
  return { value, next: start + 1, said: first };
}

const SCALES: Readonly<Record<string, number>> = { hundred: 100, thousand: 1000 };
/** `two thousand twenty six`, `a hundred and five`: the words after the count of hundreds or thousands. */
function withHundreds(items: readonly Item[], first: SpokenNumber): SpokenNumber {
  const scale = own(SCALES, wordAt(items, first.next));
  if (!scale || first.value < 1 || first.value > 9) return first;
  let next = first.next + 1;
  const said = [...first.said, wordAt(items, first.next)];
  const last = belowHundred(items, wordAt(items, next) === 'and' ? next + 1 : next);
  const rest = last && scale === 1000 ? withHundreds(items, last) : last;
  if (!rest) return { value: first.value * scale, next, said };
  next = rest.next;
  return { value: first.value * scale + rest.value, next, said: [...said, ...rest.said] };
}

const NOUGHTS: readonly string[] = ['oh', 'o'];
function isDigit(items: readonly Item[], index: number): boolean {
  const item = items[index];
  return (item?.is === 'number' && item.low < 10) || (belowHundred(items, index)?.value ?? 10) < 10;
}
/** The digits after `point`: `point five`, `point two five`, `point twenty five`. */
function decimals(items: readonly Item[], start: number): { digits: string; next: number } | undefined {
  if (wordAt(items, start) !== 'point') return undefined;
  let digits = '';
  let next = start + 1;
  for (;;) {
    const item = items[next];
    const found = belowHundred(items, next);
    if (item?.is === 'number' && !item.range && !item.bound && Number.isInteger(item.low)) {
      digits += item.low;
      next++;
    } else if (NOUGHTS.includes(wordAt(items, next)) && isDigit(items, next + 1)) {
      // `one point oh two`
      digits += '0';
      next++;
    } else if (found && (digits === '' || found.value < 10)) {
      digits += found.value;
      next = found.next;
    } else break;
  }
  return digits === '' ? undefined : { digits, next };
}

/** A plain number, typed or said, with its fraction: `two`, `nought point five`, `two and a half`, `2 and a half`. */
export function numberAt(items: readonly Item[], start: number): SpokenNumber | undefined {
  const item = items[start];
  const typed = item?.is === 'number' && !item.range && !item.bound && !item.unit && !item.plus;
  const whole = typed ? { value: item.low, next: start + 1, said: [String(item.low)] } : belowHundred(items, start);
  const first = whole && !typed ? withHundreds(items, whole) : whole;
  const decimal = decimals(items, first?.next ?? start);
  if (decimal) {
    const said = [...(first?.said ?? []), 'point', decimal.digits];
    return { value: Number(`${first?.value ?? 0}.${decimal.digits}`), next: decimal.next, said };
  }
  if (!first) return undefined;
  const half = fractions.at(items, first.next);
  if (!half || !Number.isInteger(first.value)) return first;
  const said = [...first.said, ...half.phrase.split(' ')];
  return { value: first.value + (FRACTIONS[half.phrase] ?? 0), next: half.next, said };
}

const GRADE_LABELS: readonly string[] = ['grade', 'gr'];
/** Does a unit stand here? Ranges without one are read of grades only. */
type IsUnit = (items: readonly Item[], index: number) => boolean;
interface Units {
  readonly isUnit: IsUnit;
  /** Of length, angle or share, and none of time. */
  readonly isMeasure: IsUnit;
}

/** The number, range or `so many of so many` at a place; `undefined` where it is typed as the language writes it. */
export function spokenQuantity(
  items: readonly Item[],
  start: number,
  units: Units,
): { item: Item; next: number } | undefined {
  const bound = bounds.at(items, start);
  const from = bound?.next ?? start;
  const first = numberAt(items, from);
  if (!first) return bound && bound.phrase !== 'over' ? boundBeforeTyped(items, start, bound) : undefined;
  const outOf = wordAt(items, first.next) === 'out' && wordAt(items, first.next + 1) === 'of';
  const whole = outOf && !bound ? numberAt(items, first.next + 2) : undefined;
  if (whole && Number.isInteger(first.value))
    return {
      item: { is: 'slashed', first: first.value, second: whole.value, said: true, ...spanOf(items, start, whole.next) },
      next: whole.next,
    };
  const range = rangeFrom(items, from, first, units.isUnit);
  const last = range ?? first;
  const after = suffix(items, last.next);
  // `gradual over five months` is how long; `over ten degrees` is more than ten.
  if (bound?.phrase === 'over' && !last.unit && !after.unit && !units.isMeasure(items, last.next)) return undefined;
  if (!bound && !range && last.next === start + 1 && items[start]?.is === 'number' && after.next === last.next)
    return undefined;
  return {
    item: {
      is: 'number',
      low: first.value,
      high: last.value,
      range: range !== undefined,
      said: bound || range ? [] : [...first.said, ...after.said],
      ...(bound ? { bound: SPOKEN_BOUNDS[bound.phrase] } : {}),
      ...(last.unit || after.unit ? { unit: last.unit ?? after.unit } : {}),
      ...(after.plus ? { plus: true } : {}),
      ...spanOf(items, start, after.next),
    } as ItemOf<'number'>,
    next: after.next,
  };
}

/** `about 3 mm`, `under 10°`: a typed number that carries its own sign keeps it. */
function boundBeforeTyped(
  items: readonly Item[],
  start: number,
  bound: { phrase: string; next: number },
): { item: Item; next: number } | undefined {
  const typed = items[bound.next];
  const sign = SPOKEN_BOUNDS[bound.phrase];
  if (typed?.is !== 'number' || typed.bound || !sign) return undefined;
  const next = bound.next + 1;
  return { item: { ...typed, bound: sign, said: [], ...spanOf(items, start, next) }, next };
}

function rangeFrom(
  items: readonly Item[],
  start: number,
  first: SpokenNumber,
  isUnit: IsUnit,
): SpokenNumber | undefined {
  if (wordAt(items, first.next) !== 'to') return undefined;
  const last = numberAt(items, first.next + 1) ?? withSign(items, first.next + 1);
  if (!last || last.value <= first.value) return undefined;
  if (last.unit) return last;
  const graded = GRADE_LABELS.includes(wordAt(items, start - 1));
  return graded || isUnit(items, last.next) ? last : undefined;
}

/** `10 to 15°`. */
function withSign(items: readonly Item[], index: number): SpokenNumber | undefined {
  const item = items[index];
  if (item?.is !== 'number' || !item.unit || item.range || item.bound) return undefined;
  return { value: item.low, next: index + 1, said: [], unit: item.unit };
}

/** `percent`, `per cent`, `plus`. A plus before another number joins, and is none of a grade. */
function suffix(
  items: readonly Item[],
  index: number,
): { said: readonly string[]; unit?: string; plus?: true; next: number } {
  const word = wordAt(items, index);
  if (word === 'percent') return { said: ['percent'], unit: '%', next: index + 1 };
  if (word === 'per' && wordAt(items, index + 1) === 'cent') return { said: ['percent'], unit: '%', next: index + 2 };
  if (word === 'plus' && !numberAt(items, index + 1)) return { said: ['plus'], plus: true, next: index + 1 };
  return { said: [], next: index };
}

/** `grade to`, `for degrees`, `ate out of ten`: a small word that can only be a number here. */
export function heardNumber(
  items: readonly Item[],
  index: number,
  around: { readonly isMeasure: IsUnit; readonly isKnown: (index: number) => boolean },
): { item: Item; next: number } | undefined {
  const value = own(HEARD_AS, wordAt(items, index));
  if (value === undefined || numberAt(items, index - 1)) return undefined;
  const graded = GRADE_LABELS.includes(wordAt(items, index - 1)) && around.isKnown(index + 1);
  if (!graded && !around.isMeasure(items, index + 1)) return undefined;
  if (numberAt(items, index + 1)) return undefined;
  const at = spanOf(items, index, index + 1);
  return {
    item: { is: 'number', low: value, high: value, range: false, said: [], heard: true, ...at },
    next: index + 1,
  };
}
