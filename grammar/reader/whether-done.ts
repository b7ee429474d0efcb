import type { Section } from '../lexicon/entry.ts';
import type { Cause } from '../syntax.ts';
import type { Span } from '../values.ts';
import type { Binder } from './binder.ts';
import { causeOf, type Draft, type Element, findingsIn, type StatementDraft } from './draft.ts';

/** What is told or planned may be an operation, which is none of today. */
const TOLD: readonly Section[] = ['history', 'tried'];

/**
 * Is the operation that a section word names one of the plan, or one that was told (`history operation 2nd weil`)? `operation done` in a
 * sentence of its own is not told.
 */
export function isElsewhere(binder: Binder, done: boolean): boolean {
  const { section, sectionNamed, roles, line } = binder;
  if (!sectionNamed) return false;
  if (section === 'plan') return true;
  const before = roles.at(-1);
  // `pmh: operation done 2nd weil` is told as well.
  const ended = before?.kind === 'punctuation' && !/[:=]/.test(line.slice(before.start, before.end));
  const ownSentence = done && binder.atStart() && ended;
  return TOLD.includes(section) && !ownSentence;
}

/** Puts an operation off, wherever it stands; not `as planned`, nor an aside (`weil 2 mm (planned 3)`). */
const PUT_OFF = /^(?:list(?:ed|ing)?|planned|booked|scheduled|proposed|awaiting|waiting list|wait list|tci)\b/i;
const AN_ASIDE = /(?:\bas|\bthan|\()\s*$/i;
/** The same said of all of it: alone between commas, or in a sentence of its own. */
const SAID_ALONE =
  /^(?:(?:is|was|are|now|to be|being|been|has been|already) )*(?:plans?|recommended|suggested|offered|discussed|considered|agreed|awaited|waiting|on (?:the )?(?:waiting )?list|pre-?op|deferred|postponed|cancelled|canceled|abandoned|refused|declined)\b/i;

/**
 * `operation 2nd weil, consent signed`, `operation 2nd weil; listed`, `operation 2nd weil 3 months`: an operation that is agreed or listed has not
 * been done, and only a pin has weeks of its own. What `operation done` says, only a duration unsays.
 */
export function doneReach(statements: readonly StatementDraft[], line: string): void {
  statements.forEach((statement, i) => {
    if (statement.section !== 'operation') return;
    const { elements, unsaid } = statement;
    const at =
      lasting(elements) ?? (unsaid ? (consentIn(elements) ?? toCome(statement, statements[i + 1], line)) : undefined);
    if (!at) return;
    for (const draft of findingsIn(elements))
      if (draft.id !== 'consent') draft.causes.push({ ...causeOf('done or planned', at, line) });
  });
}

/** The duration of a procedure that is no pin. */
function lasting(elements: readonly Element[]): Span | undefined {
  for (const { id, slots } of findingsIn(elements)) {
    const pinned = slots.what?.value.is === 'word' && slots.what.value.words.includes('pin');
    if (id === 'procedure' && slots.for && !pinned) return slots.for;
  }
  return undefined;
}
const consentIn = (elements: readonly Element[]): Span | undefined =>
  findingsIn(elements).find(({ id }: Draft) => id === 'consent')?.word;

function toCome({ elements }: StatementDraft, next: StatementDraft | undefined, line: string): Span | undefined {
  const own = segmentsOf(elements);
  const after = next?.section === 'operation' ? segmentsOf(next.elements).slice(0, 1) : [];
  const alone = [...own, ...after].filter((segment) => findingsIn(segment).length === 0);
  const puts = (at: Cause) => PUT_OFF.test(line.slice(at.start)) && !AN_ASIDE.test(line.slice(0, at.start));
  return (
    own.flatMap(causesIn).find(puts) ??
    alone.flatMap(causesIn).find(puts) ??
    alone.flatMap((each) => causesIn(each).slice(0, 1)).find(({ start }) => SAID_ALONE.test(line.slice(start)))
  );
}
const causesIn = (elements: readonly Element[]): Cause[] =>
  elements.flatMap((each) => (each.is === 'unread' || each.is === 'distancing' ? [each.cause] : []));
function segmentsOf(elements: readonly Element[]): Element[][] {
  const list: Element[][] = [[]];
  for (const element of elements) {
    if (element.is === 'break' && element.by === 'punctuation') list.push([]);
    else list.at(-1)?.push(element);
  }
  return list;
}

const ADVISED = /\b(?:advised?|recommend(?:ed|s)?|suggest(?:ed|s)?|encouraged|told to)\b/i;
/** `advised elevation, paracetamol`: a drug in a list of what was advised is not yet one that is taken. */
export function adviceReach(statements: readonly StatementDraft[], line: string): void {
  for (const { start, end, section, elements } of statements) {
    const found = section === 'plan' ? undefined : ADVISED.exec(line.slice(start, end));
    if (!found) continue;
    const at = { start: start + found.index, end: start + found.index + found[0].length };
    for (const { id, word, causes } of findingsIn(elements))
      if (id === 'medicine' && word.start > at.start) causes.push(causeOf('done or planned', at, line));
  }
}
