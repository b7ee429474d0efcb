/** The day of the visit in which an example stands. */
export const EXAMPLE_DAY = '2026-03-09';

/** An example of a rule as a whole note: a visit body stands in one first visit of the right foot, on the 0-4 drawer scale. */
export const exampleNote = (example: string): string =>
  /^forefoot\b/.test(example)
    ? example
    : `forefoot 1\nscales drawer 0-4\n\nvisit ${EXAMPLE_DAY} first right\n${example}\n`;
