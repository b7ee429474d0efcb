import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { ClearFact } from './measure.ts';

/**
 * What somebody who read the line as the surgeon who wrote it says of a fact: meant, or not meant; `now unread` was meant and is
 * no longer read, with the reason. `to judge` is written by the update switch and fails until a person has read it.
 */
export interface Verdict extends ClearFact {
  readonly verdict: 'right' | 'wrong' | 'now unread' | 'to judge';
  readonly why?: string;
}
/** The facts as typed, and those that one pass of quick fixes adds. */
export type Reading = 'verdicts' | 'verdicts-after-fixes';
const fileOf = (note: string, reading: Reading): URL => new URL(`./${reading}/${note}.json`, import.meta.url);
export const keyOf = ({ line, fact }: ClearFact): string => `${line}| ${fact}`;

export function verdictsOf(note: string, reading: Reading = 'verdicts'): readonly Verdict[] {
  const file = fileOf(note, reading);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Verdict[]) : [];
}

/** Adds what is new, to be judged, and what was right and is not read any more, without its reason. */
export function updated(known: readonly Verdict[], facts: readonly ClearFact[]): Verdict[] {
  const now = new Set(facts.map(keyOf));
  const seen = new Set(known.filter(({ verdict }) => verdict !== 'now unread').map(keyOf));
  const kept = known
    .filter((each) => each.verdict !== 'now unread' || !now.has(keyOf(each)))
    .filter((each) => each.verdict !== 'to judge' || now.has(keyOf(each)))
    .map(
      (each): Verdict =>
        each.verdict === 'right' && !now.has(keyOf(each)) ? { ...each, verdict: 'now unread' } : each,
    );
  const added = facts
    .filter((each) => !seen.has(keyOf(each)))
    .map((each): Verdict => ({ ...each, verdict: 'to judge' }));
  return [...kept, ...added].sort((a, b) => a.line - b.line);
}

/** Of the facts that a fix adds, those that are still there, and those for which its line is kept as typed. */
export function updatedAdded(known: readonly Verdict[], facts: readonly ClearFact[]): Verdict[] {
  const now = new Set(facts.map(keyOf));
  return updated(
    known.filter((each) => each.verdict === 'wrong' || now.has(keyOf(each))),
    facts,
  );
}

export function writeVerdicts(note: string, verdicts: readonly Verdict[], reading: Reading = 'verdicts'): void {
  writeFileSync(fileOf(note, reading), `${JSON.stringify(verdicts, null, 2)}\n`);
}
