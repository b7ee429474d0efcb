import { wordValue } from '../lexicon/entry.ts';
import { entryOf, type FindingId } from '../lexicon/index.ts';
import type { Span } from '../values.ts';
import type { Binder } from './binder.ts';
import { type Form, formOf } from './forms.ts';
import { endsSegment, type Item } from './items.ts';

interface Part extends Span {
  readonly form: Form;
}

/**
 * Words joined by a stroke where a list of them can mean only one thing: all of them denied after one `no`
 * (`no numbness/burning`), or all of them values of a slot that takes several (`physio intrinsic/rom`). Anywhere else `a/b` may
 * be one or the other, and stays unread.
 */
export function readSlashList(binder: Binder, item: Item): boolean {
  // What was spelled aloud is longer on the line than the word that it makes.
  if (item.is !== 'word' || !item.text.includes('/') || item.end - item.start !== item.text.length) return false;
  const parts = partsOf(item.text, item.start);
  if (!parts) return false;
  return binder.no ? deniesAll(binder, parts) : valuesAll(binder, parts) || triedAll(binder, parts);
}

function partsOf(text: string, start: number): Part[] | undefined {
  const parts: Part[] = [];
  let at = start;
  for (const word of text.split('/')) {
    const form = formOf(word);
    if (!form) return undefined;
    parts.push({ form, start: at, end: at + word.length });
    at += word.length + 1;
  }
  return parts;
}

function deniesAll(binder: Binder, parts: readonly Part[]): boolean {
  if (binder.before.length > 0 || binder.current) return false;
  const claims = parts.map(({ form }) => (form.classes.size > 0 ? undefined : binder.findingIn(form)));
  const denied = claims.every(
    (claim) =>
      claim && (claim.lead ? claim.lead.noun || claim.id === 'nerve-symptom' : entryOf(claim.id).bare === 'present'),
  );
  if (!denied) return false;
  parts.forEach((part, i) => {
    const claim = claims[i];
    if (!claim) return;
    if (i > 0) {
      binder.role('punctuation', { start: part.start - 1, end: part.start });
      binder.push({ is: 'list end' });
    }
    binder.startFinding(claim, { start: part.start, end: part.end });
  });
  return true;
}

/** `tried tape/boot`: both were tried; with more to say (`6 weeks`) nobody knows of which. */
function triedAll(binder: Binder, parts: readonly Part[]): boolean {
  const { section, items } = binder;
  const last = parts.at(-1);
  const after = items.find(({ start }) => last && start >= last.end);
  if (section !== 'tried' || !binder.atSegmentStart() || !endsSegment(after)) return false;
  const claims = parts.map(({ form }) => (form.classes.size > 0 ? undefined : binder.findingIn(form)));
  if (!claims.every((claim) => claim && (!claim.lead || claim.lead.noun) && entryOf(claim.id).kind === 'treatment'))
    return false;
  parts.forEach(({ start, end }, i) => {
    const claim = claims[i];
    if (i > 0) binder.role('punctuation', { start: start - 1, end: start });
    if (claim) binder.startFinding(claim, { start, end });
  });
  return true;
}

function valuesAll(binder: Binder, parts: readonly Part[]): boolean {
  const draft = binder.current;
  if (!draft?.entry || draft.id === 'panel' || binder.not || binder.before.length > 0) return false;
  const open = new Map(binder.openSlots());
  const claims = parts.map(({ form }) =>
    form.values.get(draft.id as FindingId)?.find(({ slot }) => {
      const shape = open.get(slot);
      return shape?.kind === 'words' && shape.many === true;
    }),
  );
  const [first] = claims;
  if (!first || !claims.every((claim) => claim?.slot === first.slot)) return false;
  const shape = open.get(first.slot);
  parts.forEach((part, i) => {
    if (i > 0) binder.role('punctuation', { start: part.start - 1, end: part.start });
    const value = claims[i]?.value;
    if (value) binder.setValue(first.slot, wordValue(shape, value), { start: part.start, end: part.end });
  });
  return true;
}
