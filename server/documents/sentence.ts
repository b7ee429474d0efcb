import type { AnyFact, Place, StatementId } from '../clinical/facts.ts';

/** A statement of the note and where it stands, lines counted from the visit's first line. */
export interface Origin {
  readonly statement: StatementId;
  readonly place: Place;
}

/** A stretch of prose with the statements that it came from; words that only join have none. */
export interface Run {
  readonly text: string;
  readonly from: readonly Origin[];
}

/** Who speaks: the clinician's statement, the computation, a caution, a step that is missing, or the note's own text. */
export type Says = 'stated' | 'computed' | 'caution' | 'gap' | 'verbatim';

export interface Sentence {
  readonly runs: readonly Run[];
  readonly says: Says;
  /** Sentences of one paragraph follow each other and carry the same key. */
  readonly paragraph: string;
}

/** What the builder joins: bare words, a run, or several of them. */
export type Part = string | Run | readonly Part[];

export const originOf = ({ statement, origin }: Pick<AnyFact, 'statement' | 'origin'>): Origin => ({
  statement,
  place: origin.place,
});

/** A run traced to the facts that it tells; equal statements are named once. */
export function told(text: string, facts: readonly Pick<AnyFact, 'statement' | 'origin'>[]): Run {
  const from = new Map(facts.map((fact) => [fact.statement, originOf(fact)]));
  return { text, from: [...from.values()] };
}

/** Joins parts as a list: `a`, `a and b`, `a, b and c`. */
export function list(parts: readonly Part[], last = ' and ', between = ', '): Part {
  return parts.map((part, at) => (at === 0 ? part : [at === parts.length - 1 ? last : between, part]));
}
export const words = (texts: readonly string[], last = ' and '): string => plain(list(texts, last));

const flat = (part: Part): Run[] =>
  typeof part === 'string' ? [{ text: part, from: [] }] : isRun(part) ? [part] : part.flatMap(flat);
const isRun = (part: Part): part is Run => typeof part === 'object' && 'text' in part;

export const plain = (part: Part): string =>
  flat(part)
    .map(({ text }) => text)
    .join('');
export const textOf = ({ runs }: Pick<Sentence, 'runs'>): string => plain(runs);

/** Makes a sentence: joining words grow together, the first letter is a capital, one full stop ends it. */
export function sentence(says: Says, paragraph: string, ...parts: readonly Part[]): Sentence {
  const runs: Run[] = [];
  for (const run of flat(parts)) {
    const last = runs.at(-1);
    if (run.text === '') continue;
    if (last && last.from.length === 0 && run.from.length === 0)
      runs[runs.length - 1] = { text: last.text + run.text, from: [] };
    else runs.push(run);
  }
  const [first] = runs;
  if (first) runs[0] = { ...first, text: first.text.charAt(0).toUpperCase() + first.text.slice(1) };
  const end = runs.at(-1);
  if (end && !/[.!?]["”]?$/.test(end.text)) runs.push({ text: '.', from: [] });
  return { runs, says, paragraph };
}
