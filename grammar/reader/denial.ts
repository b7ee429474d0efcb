import * as closed from '../lexicon/closed-words.ts';
import type { Section } from '../lexicon/entry.ts';
import type { Cause } from '../syntax.ts';
import { causeOf, type Draft, type Element, isBare, lacksResult, type StatementDraft } from './draft.ts';

const DENYING = new Set<string>([...closed.NO, ...closed.NOT, ...closed.ABSENT, ...closed.AVOID, ...closed.DENYING]);
const HOLDING = new Set<string>(closed.HOLDING);
const SOURCES = new Set<string>(closed.SOURCES);
const textOf = ({ text }: Cause): string => text.toLowerCase();

/** What denies or distances the findings that come next: a denied finding, or words that no finding has taken. */
type Denier = { readonly by: Draft } | { readonly by: Cause };

/**
 * After a denied finding the next bare ones are unclear until the statement ends, a subject, or a value of their own
 * (`no redness, fever`); a closing `or` denies the whole list (`no click, squeeze or numbness`). The same holds after a
 * denial that was not read (`no bruising, swelling`) and after a distancing word before its finding (`was red, swollen`).
 * `no swelling, TTP plantar` denies no tenderness: an adjective with a place of its own, after a comma, goes on with no list of nouns.
 * A condition or another person holds for the rest of the statement (`if no better, operation`).
 */
export function deny({ elements, section }: StatementDraft, line: string): void {
  const list = new DeniedList(elements, line);
  let leading = true;
  let held: Cause | undefined;
  let allergic: Draft | undefined;
  let consent: Draft | undefined;
  for (const element of elements) {
    if (element.is === 'break') leading = true;
    else if (element.is === 'list end') list.closed = true;
    else if (element.is === 'subject') list.settle();
    else if (element.is === 'unread') {
      if (DENYING.has(textOf(element.cause))) list.settle({ by: element.cause });
    } else if (element.is === 'distancing') {
      if (!leading) continue;
      const text = textOf(element.cause);
      if (HOLDING.has(text) && !(section === 'plan' && SOURCES.has(text))) held ??= element.cause;
      list.settle({ by: element.cause });
    } else {
      leading = false;
      if (held) addOnce(element.draft, held);
      if (consent && mayBeRisk(element.draft, consent, line))
        addOnce(element.draft, causeOf('distancing word', consent.word, line));
      if (element.draft.id === 'consent' && section !== 'plan') consent = element.draft;
      list.take(element.draft);
      if (held === undefined && listsDrugs(element.draft)) allergic = element.draft;
      else if (allergic && isNamedDrug(element.draft, allergic))
        addOnce(element.draft, { ...reach(allergic), why: 'either neighbour' });
      else allergic = undefined;
      // `family history gout, diabetes`: the rest of the statement may still be of the family.
      const { word } = element.draft;
      if (HELD_AFTER.includes(element.draft.id) || isConsent(element.draft, section, line))
        held ??= { why: 'distancing word', text: line.slice(word.start, word.end), start: word.start, end: word.end };
    }
  }
  list.settle();
}

/** In an operation note what was agreed is not what was done; elsewhere a consent without a result opens a list of risks (`consent: infection, numbness`, `consented infection, numbness`). */
const isConsent = (draft: Draft, section: Section, line: string): boolean =>
  draft.id === 'consent' &&
  (section === 'operation' ||
    lacksResult(draft) ||
    /^\s*:|^ (?!(?:comma|period|full|stop|semicolon|new|today)\b)[a-z]/.test(line.slice(draft.end)));

/** `consented, infection, stiffness`, `consent signed, infection`: a risk that was named, and nothing that was found. */
const mayBeRisk = (draft: Draft, { word }: Draft, line: string): boolean =>
  draft.status === 'present' &&
  isBare(draft) &&
  (draft.id === 'complication' || /^consented$/i.test(line.slice(word.start, word.end)));

/** What follows is of the family, or wished for. */
const HELD_AFTER: readonly string[] = ['family-history', 'goal'];

/** `allergic to codeine, aspirin`, `hold aspirin, diclofenac`: a drug named after a comma may still be of it; `meds aspirin` is not. */
const listsDrugs = ({ id, status }: Draft): boolean => (id === 'allergy' && status !== 'absent') || id === 'drug-plan';
const isNamedDrug = (draft: Draft, after: Draft): boolean =>
  (draft.led !== undefined || after.id === 'drug-plan') && (isDrug(draft) || draft.id === 'anti-inflammatory');
export const isDrug = ({ id }: Draft): boolean => DRUGS.includes(id);
const DRUGS: readonly string[] = [
  'medicine',
  'anticoagulant',
  'antiplatelet',
  'antirheumatic',
  'biologic',
  'bisphosphonate',
  'steroid-tablets',
];

/** The bare findings after a denial, until it is known whether an `or` closes the list. */
class DeniedList {
  closed = false;
  private run: Draft[] = [];
  private denier: Denier | undefined;
  private readonly elements: readonly Element[];
  private readonly line: string;

  constructor(elements: readonly Element[], line: string) {
    this.elements = elements;
    this.line = line;
  }

  take(draft: Draft): void {
    if (draft.denied || draft.deniesPart) this.settle({ by: draft });
    else if (this.standsAlone(draft)) this.settle();
    else if (this.denier && isBare(draft)) {
      if (this.closed && this.run.length > 0 && this.isClosedBefore(draft)) this.settle(this.denier);
      this.run.push(draft);
    } else {
      // `no redness or pale`: what an `or` joins to a denial is never asserted.
      if (this.denier && this.closed && !draft.statusGiven && !this.isClosedBefore(draft))
        draft.causes.push(reach(draft));
      this.settle();
    }
  }

  settle(next?: Denier): void {
    const by = this.denier?.by;
    for (const draft of this.run) {
      if (by && 'why' in by) addOnce(draft, by);
      else if (this.closed) {
        draft.status = by?.status ?? 'absent';
        draft.statusGiven = true;
      } else draft.causes.push(reach(draft));
    }
    this.run = [];
    this.denier = next;
    this.closed = false;
  }

  /** Only right after one denied finding, in a statement without `or`. */
  private standsAlone({ id, word, slots, segment }: Draft): boolean {
    const by = this.denier?.by;
    if (!by || 'why' in by || this.run.length > 0 || by.segment === segment || by.id === id) return false;
    if (!ADJECTIVES.has(this.line.slice(word.start, word.end).toLowerCase())) return false;
    const place = slots.place;
    return place !== undefined && place.start >= word.end && !this.elements.some(({ is }) => is === 'list end');
  }

  /** Has the list already been closed by an `or` and one finding after it? */
  private isClosedBefore(draft: Draft): boolean {
    const at = this.elements.findIndex((element) => element.is === 'finding' && element.draft === draft);
    const before = this.elements.slice(0, at);
    const last = before.findLastIndex((element) => element.is === 'list end');
    return before.slice(last).some((element) => element.is === 'finding');
  }
}

/** What no `no` denies: nobody says `no tender`. */
const ADJECTIVES: ReadonlySet<string> = new Set(['tender', 'ttp']);

const reach = ({ word }: Draft): Cause => ({ why: 'reach of no', text: 'no', start: word.start, end: word.end });

function addOnce(draft: Draft, cause: Cause): void {
  if (!draft.causes.includes(cause)) draft.causes.push(cause);
}
