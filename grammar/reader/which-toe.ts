import { causeOf, type Draft } from './draft.ts';

/**
 * `hallux overlaps 2nd`, `2nd overlap by hallux`, `overlap: hallux on 2nd`: the neighbour named first, or by whom it is done, may be the toe that lies
 * on the other. Only `2nd overlaps hallux` says which.
 */
export function overlapReach(drafts: readonly Draft[], line: string): void {
  for (const draft of drafts) {
    const { onto } = draft.slots;
    if (draft.id !== 'overlap' || !onto) continue;
    const { word, subject, causes } = draft;
    const first = onto.start < word.start;
    const by = /\bby\b/i.test(line.slice(word.end, onto.start));
    const before = subject !== undefined && subject.start > onto.start;
    if (first || by || before) causes.push(causeOf('which toe', onto, line));
  }
}
