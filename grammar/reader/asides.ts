import type { Section } from '../lexicon/entry.ts';
import type { Binder } from './binder.ts';
import { type Match, matchesAt } from './forms.ts';
import { isPlain, scoreAt } from './go-on.ts';
import { endsSegment } from './items.ts';
import { subjectAt } from './subjects.ts';

/** `wound clean, dry`: both, where the other stands alone after the comma. */
export function readCleanAndDry(binder: Binder, index: number): number | undefined {
  const { closed, items } = binder;
  const state = closed?.id === 'wound' && isPlain(closed) ? closed.slots.state : undefined;
  const word = items[index];
  if (!closed || state?.value.is !== 'word' || state.causes.length > 0 || word?.is !== 'word') return undefined;
  const [said] = state.value.words;
  const both = [said, word.text.toLowerCase()].sort().join(' ');
  if (both !== 'clean dry' || !binder.atSegmentStart() || !endsSegment(items[index + 1])) return undefined;
  state.value = { is: 'word', words: ['clean and dry'] };
  state.end = word.end;
  closed.end = word.end;
  binder.role('value', word, { finding: 'wound', slot: 'state' });
  return index + 1;
}

const INVESTIGATIONS: readonly string[] = ['ix', 'investigations', 'imaging'];
/** `ix: xr wb, hva 20`: a heading over the images and tests that name themselves after it. */
export function readImagesHeading(binder: Binder, index: number): number | undefined {
  const { items } = binder;
  const word = items[index];
  if (word?.is !== 'word' || !INVESTIGATIONS.includes(word.text.toLowerCase()) || !binder.atStart()) return undefined;
  const next = items[index + 1]?.is === 'keeper' ? index + 2 : index + 1;
  const opens = matchesAt(items, next).some(({ form }) => form.section && IMAGES.includes(form.section.section));
  if (!opens || binder.sectionNamed) return undefined;
  binder.role('keyword', binder.span(index, index + 1));
  return index + 1;
}
const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct', 'lab'];

/** `op L 2nd weil`: what was operated on, at the start of a line that opens no other section; `op site clean` is said of an operation, and is none. */
export function readOpHeading(binder: Binder, index: number): number | undefined {
  const { items } = binder;
  const word = items[index];
  if (word?.is !== 'word' || word.text.toLowerCase() !== 'op' || !binder.atStart()) return undefined;
  if (binder.sectionNamed && binder.section !== 'operation') return undefined;
  const next = items[index + 1]?.is === 'keeper' ? index + 2 : index + 1;
  const from = matchesAt(items, next).find(({ form }) => form.side)?.next ?? next;
  const place = subjectAt({ items, start: from, commaJoins: true, adjoins: true, opensFinding: () => false });
  if (!place || binder.unsaid === false) return undefined;
  binder.openSection('operation', word);
  return index + 1;
}

/** `drawer not done too sore`: why a test was not done, kept as a remark. */
export function takeReason(binder: Binder, { form, next }: Match, index: number): boolean {
  const { current: draft } = binder;
  const undone = draft?.statusGiven && (draft.status === 'not done' || draft.status === 'unable');
  if (!draft || !undone || !form.classes.has('reason') || binder.roles.at(-1)?.kind !== 'modifier') return false;
  const at = binder.span(index, next);
  draft.quotes.push({ text: binder.line.slice(at.start, at.end), ...at });
  draft.end = at.end;
  binder.role('verbatim', at);
  return true;
}

/** `pain 4/10 (was 7)`: the score of today, directly before the one of an earlier day that ends the segment. */
export function readEarlier(binder: Binder, index: number): number | undefined {
  const { current: draft, items } = binder;
  const word = items[index];
  if (word?.is !== 'word' || word.text.toLowerCase() !== 'was') return undefined;
  if (draft?.id !== 'pain' || !isPlain(draft) || draft.slots.earlier) return undefined;
  const read = binder.roles.findLast(({ kind }) => kind !== 'punctuation');
  if (read?.kind !== 'value' || read.slot !== 'score' || draft.slots.score?.causes.length !== 0) return undefined;
  const earlier = scoreAt(binder, index + 1);
  const bracket = earlier && items[earlier.next];
  const closed = earlier && bracket?.is === 'other' && bracket.text === ')' ? earlier.next + 1 : earlier?.next;
  if (!earlier || closed === undefined || !endsSegment(items[closed])) return undefined;
  binder.setValue('earlier', earlier.value, binder.span(index, earlier.next));
  return earlier.next;
}

/** `pain under the 2nd MTPJ`: on the sole of what is named. */
export function takeUnder(binder: Binder, { form, next }: Match, index: number): boolean {
  const draft = binder.current;
  const place = draft?.entry?.slots.place;
  if (!UNDER.includes(form.parts.join(' ')) || !draft || (draft.id !== 'pain' && draft.id !== 'tenderness'))
    return false;
  const the = matchesAt(binder.items, next).find((match) => match.form.parts.join(' ') === 'the');
  const item = binder.items[the?.next ?? next];
  const open = binder.openSlots().some(([slot]) => slot === 'place');
  if (!open || place?.kind !== 'words' || item?.is !== 'ordinal' || binder.no || binder.not) return false;
  binder.setValue('place', { is: 'word', words: ['plantar'] }, binder.span(index, next), undefined, 'plantar');
  return true;
}
const UNDER: readonly string[] = ['under', 'beneath'];
