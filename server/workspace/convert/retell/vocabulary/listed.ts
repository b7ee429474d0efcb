/** Phrases parted by commas, over as many lines as they need; empty text gives none. */
export const listed = (text: string): string[] =>
  text
    .split(',')
    .map((each) => each.trim().replace(/\s+/g, ' '))
    .filter((each) => each !== '');
