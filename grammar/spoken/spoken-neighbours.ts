import type { Item } from '../reader/items.ts';

/** `webs two three`: said one after the other, two neighbours may be the space between them, or two spaces. The index after both. */
export function saidNeighbours(items: readonly Item[], start: number): number | undefined {
  const [first, second] = [items[start], items[start + 1]];
  if (first?.is !== 'number' || second?.is !== 'number' || !first.said || !second.said) return undefined;
  return second.low === first.low + 1 && !second.unit ? start + 2 : undefined;
}
