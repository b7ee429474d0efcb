import type { Slot } from '../lexicon/entry.ts';
import { causeOf, type Draft, findingsIn, type StatementDraft } from './draft.ts';

/** `2nd sensation reduced, 3rd normal`: all of the third toe, or its sensation? Unclear where the finding just before may itself be normal. */
export function normalReach(statements: readonly StatementDraft[], line: string): void {
  for (const { elements } of statements) {
    let before: Draft | undefined;
    for (const draft of findingsIn(elements)) {
      if (draft.id === 'panel' && before?.subject && mayBeNormal(before) && draft.subject !== before.subject)
        draft.causes.push(causeOf('either neighbour', draft.word, line));
      before = draft;
    }
  }
}
const mayBeNormal = ({ id, entry, slots }: Draft): boolean => {
  const own: readonly [string, Slot][] = id === 'panel' || !entry ? [] : Object.entries(entry.slots);
  return own.some(
    ([name, slot]) => slots[name] && slot.kind === 'words' && Object.entries(slot.values).flat(2).includes('normal'),
  );
};
