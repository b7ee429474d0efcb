import type { Side } from '../../grammar/values.ts';
import type { Subject } from '../clinical/facts.ts';
import { words } from './sentence.ts';
import { ORDINALS } from './values.ts';

/** Where a fact stands: its subject and its side. */
export interface Site {
  readonly subject: Subject;
  readonly side?: Side;
}

/** The visit's side is said once, at the start of the examination; any other side, and several sides, are named. */
export interface Place {
  /** With its article; empty for the patient, and for the one foot that the visit is about. */
  readonly text: string;
  readonly plural: boolean;
}

const numberOf = ({ subject }: Site): number =>
  subject.at === 'ray' ? subject.ray : subject.at === 'web' ? subject.web : 0;

/** `second`, `second and third`, `second to fifth`. */
function ordinals(numbers: readonly number[], noun: string): string {
  const sorted = [...new Set(numbers)].sort((a, b) => a - b);
  const named = sorted.map((each) => (noun === 'toe' && each === 1 ? 'great' : (ORDINALS[each] ?? `${each}`)));
  const run = sorted.length > 2 && sorted.every((each, at) => at === 0 || each === (sorted[at - 1] ?? 0) + 1);
  return run ? `${named[0]} to ${named.at(-1)}` : words(named);
}

const sidesOf = (sites: readonly Site[]): Side[] =>
  (['right', 'left'] as const).filter((side) => sites.some((site) => site.side === side));

/** Names the sites by a noun: `the second and third toes`, `the right second toe and the left third toe`, `both feet`. */
export function placeOf(sites: readonly Site[], noun: string, visitSide: Side | 'both' | undefined): Place {
  const [first] = sites;
  if (!first || first.subject.at === 'patient') return { text: '', plural: false };
  const sides = sidesOf(sites);
  const shown = sides.length > 1 || sides[0] !== visitSide;
  if (first.subject.at === 'foot') {
    if (sides.length > 1) return { text: 'both feet', plural: true };
    return { text: shown && sides[0] ? `the ${sides[0]} foot` : '', plural: false };
  }
  const numbers = (side?: Side) =>
    [...new Set(sites.filter((site) => !side || site.side === side).map(numberOf))].sort();
  const named = (some: readonly number[]) => `${ordinals(some, noun)} ${noun}${some.length > 1 ? 's' : ''}`;
  const [right, left] = [numbers('right'), numbers('left')];
  if (sides.length > 1) {
    if (right.join() === left.join())
      return { text: `the ${ordinals(right, noun)} ${noun}s of both feet`, plural: true };
    return { text: `the right ${named(right)} and the left ${named(left)}`, plural: true };
  }
  const all = numbers();
  return { text: `the ${shown && sides[0] ? `${sides[0]} ` : ''}${named(all)}`, plural: all.length > 1 };
}

/** What a site is called where a finding does not say its own noun. */
export function nounOf({ subject }: Site): string {
  if (subject.at === 'web') return 'web space';
  if (subject.at === 'ray' && subject.part) return subject.part === 'joint' ? 'MTP joint' : subject.part;
  return subject.at === 'ray' ? 'ray' : 'foot';
}
