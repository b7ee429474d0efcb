/** The entry of a table for a word that somebody typed; `constructor` is a word too, and no entry of any table. */
export const own = <T>(table: Readonly<Record<string, T>>, word: string): T | undefined =>
  Object.hasOwn(table, word) ? table[word] : undefined;
