import type { Section } from '../lexicon/entry.ts';
import { entryOf, type FindingId } from '../lexicon/index.ts';
import { typedQuantity } from '../spoken/as-typed.ts';
import type { Span } from '../values.ts';
import { findingPast } from './adjectives.ts';
import type { Binder } from './binder.ts';
import { matchesAt } from './forms.ts';
import { isPlain } from './go-on.ts';
import { endsSegment } from './items.ts';
import { fitQuantity, quantityAt } from './quantities.ts';

/** Of these a duration before the word says how long they have lasted; of a stiffness in the morning it would say how long it takes. */
const LASTING: readonly FindingId[] = [
  'pain',
  'nerve-symptom',
  'course',
  'weight-loss',
  'malaise',
  'diabetes',
  'inflammatory-arthritis',
  'mass',
  'pregnancy',
];
/** A treatment that was kept up for so long (`tried 6/52 boot`); an injection, that long ago, is none. */
const isKeptUp = (id: FindingId): boolean => id !== 'steroid' && 'kept' in entryOf(id).slots;

/**
 * A duration at the start of a segment: before what has lasted (`history 3/52 dorsal forefoot pain`), alone after the pain
 * (`pain of the forefoot, 3/12`), or alone at the start of a history. Anywhere else nothing takes it.
 */
export function readAhead(binder: Binder, index: number): number | undefined {
  const { items, section } = binder;
  if (!binder.atSegmentStart() || (section !== 'history' && section !== 'tried')) return undefined;
  const quantity = quantityAt(items, index);
  const fitted = quantity && fitQuantity(quantity, [['for', { kind: 'duration', least: 'days' }]]);
  if (!quantity || fitted?.value.is !== 'duration' || fitted.cause) return undefined;
  const { next } = quantity;
  const at = binder.span(index, next);
  const of = matchesAt(items, next).find(({ form }) => form.parts.join(' ') === 'of');
  const after = findingPast(binder, of?.next ?? next);
  if (after && (section === 'history' ? LASTING.includes(after.id) : isKeptUp(after.id))) {
    binder.ahead = { ...at, slot: 'for', value: fitted.value };
    binder.role('value', at, { finding: after.id, slot: 'for' });
    return next;
  }
  if (section !== 'history' || !endsSegment(items[next]) || !lastsAlone(binder, at)) return undefined;
  binder.setValue('for', fitted.value, at);
  return next;
}

const GRADE: readonly string[] = ['grade', 'gr'];
/**
 * `2nd 3 mm lifted`, `12° medial`, `grade 2 drawer`: a measure with its unit, or a grade that is called one, at the start of what is said of a
 * subject and directly before the finding that it is of. A bare number is nothing.
 */
export function readMeasureAhead(binder: Binder, index: number): number | undefined {
  const { items } = binder;
  const word = items[index];
  const called = word?.is === 'word' && GRADE.includes(word.text.toLowerCase());
  const starts =
    binder.atSegmentStart() || (binder.last()?.is === 'subject' && !binder.ahead && binder.before.length === 0);
  if (!starts || binder.no || binder.not || binder.question) return undefined;
  const quantity = quantityAt(items, called ? index + 1 : index);
  if (!quantity) return undefined;
  const { next } = quantity;
  const of = matchesAt(items, next).find(({ form }) => form.parts.join(' ') === 'of');
  const after = findingPast(binder, of?.next ?? next);
  const graded = called || quantity.plus;
  if (!after || !(graded || quantity.unit)) return undefined;
  const open = Object.entries(entryOf(after.id).slots).filter(([, { kind }]) => kind === (graded ? 'grade' : 'number'));
  const fits = open.flatMap((slot) => fitQuantity(quantity, [slot]) ?? []);
  const fitted = fits.find(({ slot }) => slot === 'size') ?? fits[0];
  if (!fitted || (fits.length > 1 && fitted.slot !== 'size') || fitted.cause) return undefined;
  const at = binder.span(index, next);
  const plus = quantity.plus && after.id === 'drawer' ? { plus: binder.line.slice(at.start, at.end) } : {};
  binder.ahead = { ...at, slot: fitted.slot, value: fitted.value, ...plus };
  const number = items[called ? index + 1 : index];
  const typed = number && typedQuantity(number, quantity);
  const said =
    typed === undefined ? {} : { canonical: called ? `grade ${typed}` : `${typed}${quantity.plus ? '+' : ''}` };
  binder.role('value', at, { finding: after.id, slot: fitted.slot, ...said });
  return next;
}

const COUNTED: Readonly<Partial<Record<Section, FindingId>>> = { tried: 'steroid', operation: 'fixation' };
/** `tried 2 steroid injections`, `1x steroid`, `2 sutures`: how many, before what is counted. */
export function readCount(binder: Binder, index: number): number | undefined {
  const item = binder.items[index];
  const counts = COUNTED[binder.section];
  if (!counts || item?.is !== 'number' || !binder.atSegmentStart()) return undefined;
  const plain = !item.range && !item.unit && !item.plus && !item.bound && Number.isInteger(item.low);
  const times = binder.items[index + 1];
  const touches = times?.is === 'word' && times.text.toLowerCase() === 'x' && times.start === item.end;
  const next = index + (touches ? 2 : 1);
  const found = binder.findingAt(next);
  const last = binder.items[(found?.next ?? 0) - 1];
  const counted = touches || item.low === 1 || (last?.is === 'word' && /s$/i.test(last.text));
  if (!plain || found?.id !== counts || !counted || item.low < 1 || item.low > 20) return undefined;
  const at = binder.span(index, next);
  binder.ahead = { ...at, slot: 'count', value: { is: 'number', low: item.low, high: item.low, unit: '' } };
  binder.role('value', at, { finding: counts, slot: 'count' });
  return next;
}

const COMPLAINTS: readonly string[] = ['pain', 'nerve-symptom'];
/** Makes the finding current that the duration is of: the complaint before the comma, or the duration of symptoms. */
function lastsAlone(binder: Binder, at: Span): boolean {
  const { closed, statement } = binder;
  if (statement.elements.length === 0 && binder.sectionNamed) {
    const draft = binder.draft('duration', entryOf('duration'), at);
    binder.current = draft;
    binder.push({ is: 'finding', draft });
    return true;
  }
  const complaint = closed && COMPLAINTS.includes(closed.id) && isPlain(closed) && !closed.slots.for;
  if (complaint) binder.current = closed;
  return complaint ?? false;
}
