import { causeOf, type Draft, doubtSlot, findingsIn, type StatementDraft } from './draft.ts';

/** What one value of an operation note may say of another part of it. */
export function operationReach(statements: readonly StatementDraft[], line: string): void {
  for (const { section, elements } of statements) {
    if (section !== 'operation') continue;
    const drafts = findingsIn(elements);
    drafts.forEach((draft, i) => {
      sizeOfNext(draft, drafts[i + 1], line);
      sizeOrCount(draft, line);
      partsOfPlate(draft, line);
    });
    rayAtEnd(drafts, line);
  }
}

const wordsOf = ({ slots }: Draft, slot: string): readonly string[] => {
  const value = slots[slot]?.value;
  return value?.is === 'word' ? value.words : [];
};
const isPin = (draft: Draft): boolean => draft.id === 'procedure' && wordsOf(draft, 'what').includes('pin');

/** What shortens the bone; of a repair or a release so many millimetres say something else. */
const SHORTENS: readonly string[] = ['weil osteotomy', 'pip resection', 'pip fusion'];

/** `weil 2.7 mm screw`, `plate repair 2 mm`: the size of what holds it, or a shortening? A pin has a thickness. */
function sizeOfNext(draft: Draft, next: Draft | undefined, line: string): void {
  const { shortening } = draft.slots;
  if (draft.id !== 'procedure' || !shortening) return;
  const ahead = line.slice(draft.word.end, shortening.start);
  const named = /\bshorten\w*/i;
  if (named.test(ahead) || /^\s*(?:of )?shorten/i.test(line.slice(shortening.end))) return;
  const held = next !== undefined && (next.id === 'fixation' || isPin(next));
  const touches = held && /^\s*$/.test(line.slice(shortening.end, next.word.start));
  const shortens = wordsOf(draft, 'what').some((what) => SHORTENS.includes(what));
  if (touches || !shortens) doubtSlot(draft, 'shortening', line);
}

/** `screw 2.0`, `anchor 2.5`, `suture 2`: a size in mm, a gauge, or how many? A count is whole, and stands before a suture or after `x`. */
function sizeOrCount(draft: Draft, line: string): void {
  const { count } = draft.slots;
  if (draft.id !== 'fixation' || !count) return;
  const gauge = /\bsuture[\s:=]*\d$/i.test(line.slice(0, count.start + 1));
  if (gauge || line.slice(count.start, count.end).includes('.')) doubtSlot(draft, 'count', line);
}

/** `plate medial intact, lateral torn`: which state is that of which part? */
function partsOfPlate(draft: Draft, line: string): void {
  const { state } = draft.slots;
  const states = draft.id === 'plate-found' ? wordsOf(draft, 'state') : [];
  if (!state || states.length < 2) return;
  if (states.includes('intact') || wordsOf(draft, 'place').length > 1)
    draft.causes.push(causeOf('either neighbour', state, line));
}

/** `weil + plate repair 2nd`: a ray at the end may be that of all that was done before it. */
function rayAtEnd(drafts: readonly Draft[], line: string): void {
  let ahead: Draft[] = [];
  for (const draft of drafts) {
    const { id, subject, word, causes } = draft;
    if (id !== 'procedure') continue;
    if (!subject) {
      if (!wordsOf(draft, 'what').includes('hallux valgus correction') && causes.length === 0) ahead.push(draft);
      continue;
    }
    if (subject.start > word.start && subject.at === 'rays')
      for (const each of ahead) each.causes.push(causeOf('subject between', subject, line));
    ahead = [];
  }
}
