import type { VisitEvent, VisitFacts, VisitPart } from '../clinical/facts.ts';
import {
  addendumSentence,
  addendumTitle,
  carriedSentence,
  eventSentence,
  eventTitle,
  signatureSentence,
} from './lifecycle.ts';
import { type Lines, NOTE_SECTIONS, type NoteSection, sectionSentences } from './sections.ts';
import type { Sentence } from './sentence.ts';

export interface FiledSection {
  readonly title: string;
  readonly sentences: readonly Sentence[];
}

export const CARRIED_TITLE = 'Carried from earlier, not confirmed';
export const LATE_TITLE = 'Written after the signature, in no addendum';
/** What differs before and after an event. The other sections are told whole. */
const DIVIDED: ReadonlySet<NoteSection> = new Set(['Pain', 'Examination', 'Imaging']);

/**
 * The filed sections of a visit in their order: its own text, with what was found after each event apart; what was carried
 * over and not confirmed; who signed it; then each addendum with its own signature, and what was written after one.
 */
export function filedSections(visit: VisitFacts): FiledSection[] {
  const [own, ...addenda] = visit.lifecycle?.parts ?? [{ from: 0 }];
  if (!visit.lifecycle || !own)
    return NOTE_SECTIONS.map((title) => ({ title, sentences: sectionSentences(visit, title) }));
  const end = (part: VisitPart): number =>
    visit.lifecycle?.parts.find(({ from }) => from > part.from)?.from ?? Number.POSITIVE_INFINITY;
  return [
    ...ownSections(visit, own, end(own)),
    {
      title: CARRIED_TITLE,
      sentences: visit.lifecycle.carried.filter(({ proposed }) => !proposed).map(carriedSentence),
    },
    { title: 'Signature', sentences: own.signature ? [signatureSentence(own.signature)] : [] },
    lateSection(visit, own, end(own)),
    ...addenda.flatMap((part) => [addendumSection(visit, part, end(part)), lateSection(visit, part, end(part))]),
  ];
}

const closingOf = ({ signature }: VisitPart, end: number): number => signature?.place.line ?? end;
const between =
  (from: number, to: number): Lines =>
  (line) =>
    from <= line && line < to;

function ownSections(visit: VisitFacts, part: VisitPart, end: number): FiledSection[] {
  const to = closingOf(part, end);
  const events = eventsIn(visit, part.from, to);
  const before = between(part.from, events[0]?.place.line ?? to);
  const whole = between(part.from, to);
  return NOTE_SECTIONS.flatMap((title) => {
    const sentences = sectionSentences(visit, title, DIVIDED.has(title) ? before : whole);
    const section = { title, sentences };
    return title === 'Imaging' ? [section, ...afterEvents(visit, events, to)] : [section];
  });
}

const eventsIn = ({ lifecycle }: VisitFacts, from: number, to: number): VisitEvent[] =>
  (lifecycle?.events ?? []).filter(({ place }) => from <= place.line && place.line < to);

function afterEvents(visit: VisitFacts, events: readonly VisitEvent[], to: number): FiledSection[] {
  return events.map((event, index) => {
    const lines = between(event.place.line, events[index + 1]?.place.line ?? to);
    const found = NOTE_SECTIONS.filter((title) => DIVIDED.has(title)).flatMap((title) =>
      sectionSentences(visit, title, lines),
    );
    return { title: eventTitle(event), sentences: [eventSentence(event, visit), ...found] };
  });
}

/** All that some lines say, section after section, events as they stand among them. */
function everything(visit: VisitFacts, from: number, to: number): Sentence[] {
  const events = eventsIn(visit, from, to);
  const lines = between(from, to);
  const undivided = events.length === 0 ? lines : between(from, events[0]?.place.line ?? to);
  return [
    ...NOTE_SECTIONS.flatMap((title) => sectionSentences(visit, title, DIVIDED.has(title) ? undivided : lines)),
    ...afterEvents(visit, events, to).flatMap(({ sentences }) => sentences),
  ];
}

function addendumSection(visit: VisitFacts, part: VisitPart, end: number): FiledSection {
  const { addendum, signature } = part;
  const said = everything(visit, part.from, closingOf(part, end));
  return {
    title: addendumTitle(addendum ?? {}),
    sentences: [
      ...(addendum ? [addendumSentence(addendum)] : []),
      ...said,
      ...(signature ? [signatureSentence(signature)] : []),
    ],
  };
}

const lateSection = (visit: VisitFacts, part: VisitPart, end: number): FiledSection => ({
  title: LATE_TITLE,
  sentences: part.signature ? everything(visit, part.signature.place.line, end) : [],
});
