import { entryOf } from '../lexicon/index.ts';
import { type Draft, kindOfSubject } from './draft.ts';
import { matchesAt } from './forms.ts';
import type { Item } from './items.ts';

/**
 * `webs 2nd both full, no numbness`, `Mulder 3rd, numb`: where a line speaks of web spaces, an ordinal beside a numbness may be
 * the space and not the toe.
 */
export function webReach(drafts: readonly Draft[], items: readonly Item[]): void {
  const numb = drafts.filter(({ id, subject }) => id === 'numbness' && subject && kindOfSubject(subject) === 'ray');
  if (numb.length === 0 || !(drafts.some(isOfWebs) || items.some((_, i) => namesWeb(items, i)))) return;
  for (const { causes, subject } of numb)
    if (subject) causes.push({ why: 'toe or web', text: '', start: subject.start, end: subject.end });
}

const isOfWebs = ({ id, subject }: Draft): boolean =>
  (subject !== undefined && kindOfSubject(subject) === 'web') ||
  (id !== 'panel' && entryOf(id).subjects.every((kind) => kind === 'web'));
const namesWeb = (items: readonly Item[], index: number): boolean =>
  matchesAt(items, index).some(({ form }) => form.classes.has('web word'));
