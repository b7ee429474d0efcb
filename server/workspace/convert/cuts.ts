import type { Span } from '../../../grammar/values.ts';
import type { Proposal } from './retell/retell.ts';

/** A stretch of a dictated line that is told by proposed lines; what is clear in it as it was said stays where it is. */
export interface Cut extends Span {
  readonly texts: readonly string[];
  /** Something in it is clear as it was said: the words stay, and the proposals follow them. */
  readonly stays: boolean;
}
/** A fact that is clear as it was said, and where. */
export interface Clear extends Span {
  readonly key: string;
  /** A value of it is not clear: a proposal may say it. */
  readonly open: boolean;
}

/**
 * The proposals that say something that is not clear already, those of the same words together. What was clear as it was said outranks them: a
 * proposal over its words that says it differently is dropped.
 */
export function cutsOf(
  proposals: readonly Proposal[],
  known: readonly Clear[],
  elsewhere: ReadonlySet<string>,
  keysOf: (text: string) => readonly string[],
): Cut[] {
  const isKnown = (key: string) => elsewhere.has(key) || known.some((each) => each.key === key);
  const apart = proposals.flatMap((each) => {
    const keys = keysOf(each.text);
    return keys.some(isKnown) && !keys.every(isKnown) && each.parts.length > 0 ? each.parts : [each];
  });
  return grouped(apart).flatMap((group): Cut[] => {
    const span = spanOf(group);
    const own = known.filter(({ start, end }) => start < span.end && span.start < end);
    const said = group.map(({ text }) => ({ text, keys: keysOf(text) }));
    const all = said.flatMap(({ keys }) => keys);
    if (said.some(({ keys }) => keys.length === 0) || own.some(({ key, open }) => !open && !all.includes(key)))
      return [];
    const fresh = said.filter(({ keys }) => !keys.some(isKnown));
    if (fresh.length === 0) return [];
    return [{ ...span, texts: fresh.map(({ text }) => text), stays: own.length > 0 || fresh.length < said.length }];
  });
}

const spanOf = (group: readonly Span[]): Span => ({
  start: Math.min(...group.map(({ start }) => start)),
  end: Math.max(...group.map(({ end }) => end)),
});

function grouped(proposals: readonly Proposal[]): Proposal[][] {
  const groups: Proposal[][] = [];
  for (const each of [...proposals].sort((a, b) => a.start - b.start)) {
    const last = groups.at(-1);
    if (last && spanOf(last).end > each.start) last.push(each);
    else groups.push([each]);
  }
  return groups;
}
