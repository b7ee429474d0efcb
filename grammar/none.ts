/** The empty list that all share: most findings have no quote and no cause, and empty lists of their own were a quarter of what a note keeps. */
export const NONE: readonly never[] = Object.freeze([]);

export const orNone = <T>(list: readonly T[]): readonly T[] => (list.length > 0 ? list : NONE);
