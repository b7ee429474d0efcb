import { type Draft, type Element, findingsIn, isBare } from './draft.ts';

/** What a leg shows as well as a foot. */
const SIGNS: readonly string[] = ['hot', 'redness', 'swelling', 'tenderness', 'pain', 'bruising', 'numbness'];

/**
 * `calf swollen, hot, red`, `calf soft, no redness or heat`: what goes on from the calf without a place of its own may still be of the calf, until
 * another place or finding is named; so is a sentence that only names signs after it (`calf swollen; hot; red`).
 * `before` is the calf of the sentence before; returns the calf that what comes next may still be of.
 */
export function calfReach(elements: readonly Element[], before: Draft | undefined): Draft | undefined {
  let calf = before && onlySigns(elements, before) ? before : undefined;
  for (const element of elements) {
    if (element.is === 'subject') calf = undefined;
    if (element.is !== 'finding') continue;
    const { draft } = element;
    if (draft.id === 'calf') calf = draft;
    else if (calf && SIGNS.includes(draft.id) && !hasOwnPlace(draft, calf)) reach(draft, calf);
    else calf = undefined;
  }
  return calf;
}

const onlySigns = (elements: readonly Element[], { section }: Draft): boolean =>
  findingsIn(elements).every((draft) => draft.section === section && SIGNS.includes(draft.id) && isBare(draft));

/** A ray that was named after the calf, or the foot by its side. */
const hasOwnPlace = ({ subject }: Draft, calf: Draft): boolean =>
  subject !== undefined && subject.start > calf.word.start;

function reach({ causes }: Draft, { word }: Draft): void {
  if (causes.some(({ why }) => why === 'foreign part')) return;
  causes.push({ why: 'foreign part', text: '', start: word.start, end: word.end });
}
