import type { Item } from '../reader/items.ts';

/** The lower-case text of a word, and nothing for any other item. */
export const wordAt = (items: readonly Item[], index: number): string => {
  const item = items[index];
  return item?.is === 'word' ? item.text.toLowerCase() : '';
};

/** Finds the longest phrase of a list at a place. Built once from the list. */
export interface Phrases {
  /** The phrase and the index after it. */
  at(items: readonly Item[], index: number): { readonly phrase: string; readonly next: number } | undefined;
}

/** Phrases that a recogniser may break by a comma are found across it where `overCommas` is set. */
export function phrases(list: readonly string[], overCommas = false): Phrases {
  const byFirst = new Map<string, string[][]>();
  for (const phrase of list) {
    const words = phrase.split(' ');
    const first = words[0] ?? '';
    byFirst.set(
      first,
      [...(byFirst.get(first) ?? []), words].sort((a, b) => b.length - a.length),
    );
  }
  const isComma = (item: Item | undefined) => item?.is === 'break' && item.of === 'segment';
  return {
    at(items, index) {
      for (const words of byFirst.get(wordAt(items, index)) ?? []) {
        let next = index;
        const spelled = words.every((word, i) => {
          if (overCommas && i > 0 && isComma(items[next])) next++;
          return wordAt(items, next) === word && ++next > 0;
        });
        if (spelled) return { phrase: words.join(' '), next };
      }
      return undefined;
    },
  };
}

/** From the start of one item to the end of another. */
export const spanOf = (items: readonly Item[], index: number, next: number): { start: number; end: number } => ({
  start: items[index]?.start ?? 0,
  end: items[next - 1]?.end ?? 0,
});
