/** Phrases that are said for one thing, from a list with commas. */
export const said = (list: string): readonly string[] => list.trim().split(/,\s*/);
