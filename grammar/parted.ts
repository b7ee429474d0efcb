/** Words that stand in one text, as a list. */
export const parted = (words: string): string[] => words.split('|');
