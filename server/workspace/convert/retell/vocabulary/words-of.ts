/** Each noun with each verb after it. */
export const each = (nouns: readonly string[], ...verbs: readonly string[]): string[] =>
  nouns.flatMap((noun) => verbs.map((verb) => `${noun} ${verb}`));
/** Each verb before each noun. */
export const orders = (verbs: readonly string[], ...nouns: readonly string[]): string[] =>
  // `with tape` is said of how a test was done.
  nouns.flatMap((noun) => verbs.map((verb) => `${verb} ${noun}`)).filter((phrase) => !/ with tape$/.test(phrase));
/** The wire that holds a toe, by its names. */
export const WIRES = ['pin', 'wire', 'k wire', 'pins', 'wires', 'k wires'] as const;
