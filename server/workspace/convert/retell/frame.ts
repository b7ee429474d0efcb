import * as closed from '../../../../grammar/lexicon/closed-words.ts';
import type { Slot } from '../../../../grammar/lexicon/entry.ts';
import { entryOf, type FindingId } from '../../../../grammar/lexicon/index.ts';
import { formOf, partsOfForm } from '../../../../grammar/reader/forms.ts';
import {
  ABSENT,
  ANNOUNCES,
  DENIES,
  JOINTS,
  MEASURED,
  type Named,
  NOTHING_SAID,
  namedWords,
  ORDERS,
  STATUSES,
  spells,
  subjectAt,
  UNITS,
} from './frame-words.ts';

/*
 * A clause whose words stand in another order than the language reads, or that says a thing by another word (`purchase lost second`, `puffy dorsum
 * second`): its one finding, what that finding takes, one subject, one denial, and words that say nothing, in the order of the language. Every word
 * has to be of one of these kinds, so that no word that turns a finding is ever passed over; the reader then has to read what was written.
 */

/** A clause as the language would write it, and the findings that it has to be. */
export interface Frame {
  readonly text: string;
  /** The word of the section that it names; empty for none. */
  readonly section: string;
  readonly findings: readonly { readonly id: FindingId; readonly absent: boolean }[];
  /** Its place was said after the finding, or by an ordinal alone: what stands beside it may have that place too. */
  readonly leans: boolean;
  /** The finding was said first, and no side. */
  readonly plain: boolean;
}

/** More words than this are more than one finding. */
const LONGEST = 12;

/** The frames that a clause may be put into; empty where a word of it is of no kind. */
export function framesOf(said: readonly string[]): Frame[] {
  const all = said.flatMap((word) => (word.startsWith('"') ? [word] : partsOfForm(word)));
  if (all.length > LONGEST) return [];
  const { section, tokens } = sectionIn(all);
  const single = framed(tokens);
  const found = single.length > 0 ? single.map((each) => [each]) : pairsOf(tokens);
  return found.flatMap((list) => inSection(list, section) ?? []);
}
function inSection(list: readonly Framed[], said: string): Frame | undefined {
  const own = list.find((each) => each.section !== '')?.section ?? '';
  if (own !== '' && said !== '' && closed.SECTION_WORDS[own]?.section !== closed.SECTION_WORDS[said]?.section)
    return undefined;
  const section = said || own;
  const place = list.find((each) => each.place !== '')?.place;
  return {
    text: [section, place, list.map(({ text }) => text).join(', ')].filter(Boolean).join(' '),
    section,
    findings: list,
    leans: list.some(({ leans }) => leans),
    plain: list.every(({ plain }) => plain),
  };
}

/** A strong section word opens a clause; that of an image may stand anywhere in it (`plate intact on the mri`). Who orders, plans. */
function sectionIn(all: readonly string[]): { section: string; tokens: readonly string[] } {
  if (ORDERS.has(all[0] ?? '') && !all.includes('ago')) return { section: 'plan', tokens: all.slice(1) };
  const at = all.findIndex((word, i) => {
    const named = closed.SECTION_WORDS[word];
    return named?.strong && (i === 0 || (IMAGES.has(named.section) && i > 1));
  });
  return at < 0 ? { section: '', tokens: all } : { section: all[at] ?? '', tokens: all.filter((_, i) => i !== at) };
}
const IMAGES: ReadonlySet<string> = new Set(['xray', 'us', 'mri', 'ct']);

/** `puffy and tender second`: two findings of one place, neither denied. */
function pairsOf(tokens: readonly string[]): Framed[][] {
  const and = tokens.lastIndexOf('and');
  if (and < 1) return [];
  const second = framed(tokens.slice(and + 1));
  return framed(tokens.slice(0, and)).flatMap((one) =>
    second.flatMap((other) =>
      one.absent || other.absent || (one.place !== '' && other.place !== '') || one.id === other.id
        ? []
        : [[one, other]],
    ),
  );
}

/** One finding: its side and subject, and the rest as the language writes it. */
interface Framed {
  readonly section: string;
  readonly place: string;
  readonly text: string;
  readonly id: FindingId;
  readonly absent: boolean;
  readonly leans: boolean;
  readonly plain: boolean;
}
const framed = (tokens: readonly string[]): Framed[] =>
  tokens.flatMap((word, at) =>
    (namedWords().get(word) ?? []).flatMap((head) =>
      head.as === 'finding' && spells(tokens, at, head.parts) ? (framedAt(tokens, at, head) ?? []) : [],
    ),
  );

/** What was taken so far for a finding. */
interface Filled {
  readonly before: string[];
  readonly after: string[];
  side: string | undefined;
  subject: string | undefined;
  /** An ordinal alone named it. */
  bare: boolean;
  /** What was taken last: a subject or a quality may be of what follows. */
  last: 'subject' | 'quality' | 'other';
  /** A denial before the finding, or after it as it was said. */
  no: boolean;
  status: string | undefined;
  and: boolean;
}

function framedAt(tokens: readonly string[], at: number, head: Named): Framed | undefined {
  const filled: Filled = {
    before: [],
    after: [],
    side: undefined,
    subject: undefined,
    bare: false,
    last: 'other',
    no: false,
    status: undefined,
    and: false,
  };
  for (let i = 0; i < tokens.length; ) {
    if (i === at) {
      i += head.parts.length;
      filled.last = 'other';
      continue;
    }
    const next = taken(tokens, { at: i, end: i < at ? at : tokens.length, ahead: i < at }, head, filled);
    if (next === undefined) return undefined;
    i = next;
  }
  if (!mayBeDenied(head, filled)) return undefined;
  // `hallux overlaps the second`: which of the two lies over the other is told by their order.
  if (head.id === 'overlap' && filled.before.length > 0) return undefined;
  const written = filled.no
    ? ['no', ...filled.before, head.written, ...filled.after]
    : [head.written, ...filled.before, ...filled.after, filled.status];
  return {
    section: head.section,
    place: [filled.side, filled.subject].filter(Boolean).join(' '),
    text: written.filter(Boolean).join(' '),
    id: head.id,
    absent: filled.no || (filled.status !== undefined && ABSENT.has(filled.status)) || head.absent,
    leans: filled.bare || filled.last !== 'other',
    plain: at === 0 && filled.side === undefined,
  };
}

/** A test that is denied may not have been done, and what denies by itself is denied no second time. */
function mayBeDenied(head: Named, { no, status, and }: Filled): boolean {
  if (!no) return !head.absent || status === undefined || !ABSENT.has(status);
  const { kind, bare } = entryOf(head.id);
  return status === undefined && !and && !head.absent && (bare === 'present' || kind === 'sign' || head.noun);
}

interface Place {
  readonly at: number;
  readonly end: number;
  /** Before the finding. */
  readonly ahead: boolean;
}
/** Takes what stands at a place for what it is; the place after it, or `undefined` where it is nothing that the finding takes. */
function taken(tokens: readonly string[], place: Place, head: Named, filled: Filled): number | undefined {
  const { at, end, ahead } = place;
  const [word, next] = [tokens[at] ?? '', tokens[at + 1] ?? ''];
  const subject = subjectAt(tokens, at, end, head.id);
  if (subject) {
    if (filled.subject !== undefined) return undefined;
    Object.assign(filled, { subject: subject.text, bare: subject.bare, last: 'subject' });
    return subject.next;
  }
  const part = JOINTS[word];
  if (part && filled.subject !== undefined && /^\d\w\w$/.test(filled.subject) && tokens[at - 1] === 'the') {
    filled.subject += ` ${part}`;
    return JOINTS[next] === undefined ? at + 1 : at + 2;
  }
  const values = ahead ? filled.before : filled.after;
  const value = (namedWords().get(word) ?? []).find(
    ({ id, as, parts }) =>
      id === head.id &&
      as !== 'finding' &&
      at + parts.length <= end &&
      spells(tokens, at, parts) &&
      (as === 'value' || announces(tokens, at + parts.length, end, head)),
  );
  if (value) {
    // `second toe tender | moves well`: what may be a finding of its own is no value of the next one.
    if (ahead && !isQuality(head.id, value) && namesFinding(tokens, at)) return undefined;
    filled.last = isQuality(head.id, value) ? 'quality' : 'other';
    values.push(value.written);
    return at + value.parts.length;
  }
  if (ANNOUNCES.has(word) && isMeasure(next)) return undefined;
  // A bare number is of what it follows.
  if (isMeasure(word) || word.startsWith('"')) {
    if (ahead && /^[\d.]+$/.test(word) && !UNITS.has(next)) return undefined;
    values.push(word);
    return at + 1;
  }
  const before = tokens[at - 1] ?? '';
  if ((UNITS.has(word) && MEASURED.test(before)) || (word === 'ago' && UNITS.has(before))) {
    values.push(word);
    return at + 1;
  }
  return takenWord(tokens, place, filled);
}

function takenWord(tokens: readonly string[], { at, end, ahead }: Place, filled: Filled): number | undefined {
  const word = tokens[at] ?? '';
  if (word === 'right' || word === 'left') {
    if (filled.side !== undefined) return undefined;
    filled.side = word;
    return at + 1;
  }
  if (DENIES.has(word) && ahead) {
    if (filled.no || filled.status !== undefined) return undefined;
    filled.no = true;
    return word === 'not' && tokens[at + 1] === 'yet' ? at + 2 : at + 1;
  }
  const status = ahead ? undefined : STATUSES.find((parts) => at + parts.length <= end && spells(tokens, at, parts));
  if (status) {
    if (filled.status !== undefined) return undefined;
    filled.status = status.join(' ');
    return at + status.length;
  }
  if (word === 'and') filled.and = true;
  // `that went | well no diabetes`: at the start it is of what stands before.
  return word === 'and' || (NOTHING_SAID.has(word) && (word !== 'well' || at > 0)) ? at + 1 : undefined;
}

const MONTHS = /^(?:january|february|march|april|may|june|july|august|september|october|november|december)$/;
const isMeasure = (word: string): boolean => MEASURED.test(word) || MONTHS.test(word);
/** Does a label stand before what it announces? */
const announces = (tokens: readonly string[], at: number, end: number, { id }: Named): boolean =>
  at < end &&
  (isMeasure(tokens[at] ?? '') ||
    (namedWords().get(tokens[at] ?? '') ?? []).some((each) => each.id === id && each.as === 'value'));

const namesFinding = (tokens: readonly string[], at: number): boolean =>
  (namedWords().get(tokens[at] ?? '') ?? []).some(({ as, parts }) => as === 'finding' && spells(tokens, at, parts));
/** May a value stand before its finding, so that it may be of the next one? */
const isQuality = (id: FindingId, { written }: Named): boolean =>
  formOf(written)
    ?.values.get(id)
    ?.some(({ slot }) => {
      const { before, locating } = (entryOf(id).slots as Readonly<Record<string, Slot>>)[slot] ?? {};
      return before === true || locating === true;
    }) ?? false;
