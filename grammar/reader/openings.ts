import * as closed from '../lexicon/closed-words.ts';
import type { Section } from '../lexicon/entry.ts';
import type { Cause } from '../syntax.ts';
import type { Span } from '../values.ts';
import { isDrug } from './denial.ts';
import { causeOf, type Element, findingsIn, isBare } from './draft.ts';

/** What is planned, done or given is told item by item; elsewhere a sentence may open with who found it, or when. */
const BY_ITEM: readonly Section[] = ['plan', 'operation', 'tried'];
const YEAR = /^(?:19|20)\d\d$/;

/** A joint that is not what it was, and results that say nothing. */
const NOT_NATIVE: readonly string[] = ['amputated', 'fused', 'pinned', 'arthrodesed'];
/** In a plan they stop, doubt or put off, and so what is only named after them. */
const STOPPERS: readonly string[] = [
  'd/c',
  'dc',
  'stop',
  'hold',
  'pause',
  'suspend',
  'discontinue',
  'wean',
  'finish',
  'cease',
  'cancel',
  'out',
  'unable',
  'cannot',
  "can't",
  'forgot',
  'return',
  'poss',
  'allergic',
  'once',
  'failing',
];

/** What is weighed, lessened or waited for is not yet ordered, and neither is what its list goes on with. */
export const WEIGHS =
  /^(?:consider(?:ing)?|contemplate|discuss(?:ion)?|d\/w|options?|offer|explore|explain|talk|wean(?:ing)?|taper|halve|reduce|decrease|lessen|cut|await(?:ing|s)?|pending|defer|postpone)$/i;
/** `wean tape, boot 2/52`, `discuss surgery, steroid`: such a verb holds for each treatment down to what is none. */
function weighedReach(elements: readonly Element[]): void {
  let opens: Cause | undefined;
  let held: Cause | undefined;
  for (const element of elements) {
    if (element.is === 'break') opens = undefined;
    else if (element.is === 'unread' && WEIGHS.test(element.cause.text)) opens = element.cause;
    else if (element.is === 'finding') {
      const { draft } = element;
      const { entry, id, causes } = draft;
      const named = entry?.kind === 'treatment' || id === 'image' || id === 'operation' || isDrug(draft);
      if (opens) held = opens;
      else if (!named) held = undefined;
      if (held && named && !causes.includes(held)) causes.push(held);
    }
  }
}

/**
 * `gp found 2nd tender, drawer 2`, `in 2024 2nd tender, drawer 1`: unread words that open a sentence may say who found it, or when, of all
 * that the sentence goes on with; so do words that move it, doubt it or say how often, before its first comma (`sometimes, 2nd overlaps`). A known
 * word out of its place, or a number other than a year, reaches no further than its segment.
 */
export function openingReach(elements: readonly Element[], section: Section, line: string): void {
  if (section === 'plan') weighedReach(elements);
  const from = elements.findIndex(({ is }) => is === 'break');
  if (from < 0) return;
  const ahead = elements.slice(0, from);
  const cause = BY_ITEM.includes(section) ? nothingIn(ahead, section) : (openerIn(ahead) ?? oldImage(ahead, section));
  coveredReach(ahead, elements.slice(from), line);
  if (cause) {
    for (const { causes } of findingsIn(elements.slice(from))) causes.push(cause);
    return;
  }
  const [first] = ahead;
  if (section !== 'plan' || first?.is !== 'unread' || !STOPPERS.includes(first.cause.text.toLowerCase())) return;
  for (const draft of findingsIn(elements.slice(from))) {
    if (!isBare(draft)) return;
    draft.causes.push(first.cause);
  }
}

/** `tried nothing, tape 6 weeks`: tape comes now, or is all that was tried. */
function nothingIn([first]: readonly Element[], section: Section): Cause | undefined {
  const says = section === 'tried' && first?.is === 'unread' && /^(?:nothing|none|nil|no)$/i.test(first.cause.text);
  return says ? first.cause : undefined;
}

const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];
/** `xr old, hva 20`: an image of another day. */
function oldImage(ahead: readonly Element[], section: Section): Cause | undefined {
  const [old] = ahead.filter(({ is }) => is !== 'subject');
  const says = old?.is === 'unread' && /^(?:old|older|outdated)$/i.test(old.cause.text);
  return IMAGES.includes(section) && says ? old.cause : undefined;
}

const COVER = /^(?:boot|cast|dressings?|bandages?|splint|shoes?|strapping|socks?|plaster)$/i;
const INSIDE = /\b(?:in|through|under|inside)\s+(?:(?:a|the|his|her|its)\s+)?$/i;
/** `in boot, 2nd straight`: how the toe stands, seen in what covers it, or the patient comes in it? */
function coveredReach(ahead: readonly Element[], rest: readonly Element[], line: string): void {
  const covers = ({ start, end }: Span) => COVER.test(line.slice(start, end)) && INSIDE.test(line.slice(0, start));
  const found = ahead.find(
    (each) => (each.is === 'unread' && covers(each.cause)) || (each.is === 'finding' && covers(each.draft.word)),
  );
  const cover = found?.is === 'unread' ? found.cause : found?.is === 'finding' ? found.draft.word : undefined;
  if (!cover) return;
  for (const { entry, causes } of findingsIn(rest))
    if (entry?.subjects.includes('ray') && entry.sections.includes('stand'))
      causes.push(causeOf('word out of place', cover, line));
}

function openerIn(ahead: readonly Element[]): Cause | undefined {
  const [first] = ahead;
  const told = ahead.some(({ is }) => is === 'finding');
  if (told) return first?.is === 'unread' && first.cause.why === 'unknown word' ? first.cause : timeOf(first);
  for (const element of ahead) {
    if (element.is === 'distancing') return element.cause;
    if (element.is !== 'unread') continue;
    const text = element.cause.text.toLowerCase();
    const doubts = element.cause.why === 'doubt' || closed.EQUIVOCAL.includes(text);
    if (NOT_NATIVE.includes(text) || (doubts && ahead.length === 1)) return element.cause;
  }
  return ahead.map(timeOf).find((each) => each);
}
const timeOf = (first: Element | undefined): Cause | undefined =>
  first?.is === 'unread' && (first.cause.why === 'ambiguous date' || YEAR.test(first.cause.text))
    ? first.cause
    : undefined;
