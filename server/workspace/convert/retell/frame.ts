import * as closed from '../../../../grammar/lexicon/closed-words.ts';
import type { Lead, Slot } from '../../../../grammar/lexicon/entry.ts';
import { entryOf, type FindingId } from '../../../../grammar/lexicon/index.ts';
import { type Form, formIndex, formOf, partsOfForm } from '../../../../grammar/reader/forms.ts';
import { CONNECTIVES, EMPHASIS } from '../../../../grammar/spoken/spoken-words.ts';
import { VOCABULARY } from './vocabulary/index.ts';

/*
 * A clause whose words stand in another order than the language reads, or that says a thing by another word (`purchase lost second`, `puffy dorsum
 * second`): its one finding, what that finding takes, one subject, one denial, and words that say nothing, in the order of the language. Every word
 * has to be of one of these kinds, so that no word that turns a finding is ever passed over; the reader then has to read what was written.
 */

/** A phrase that names a finding, or a value of one, and how the language writes it. */
interface Named {
  readonly parts: readonly string[];
  readonly id: FindingId;
  readonly as: 'finding' | 'value' | 'label';
  readonly written: string;
  readonly lead?: Lead;
}

/** A clause as the language would write it, and the findings that it has to be. */
export interface Frame {
  readonly text: string;
  readonly findings: readonly { readonly id: FindingId; readonly absent: boolean }[];
  /** Its place was said after the finding, or by an ordinal alone: what stands beside it may have that place too. */
  readonly leans: boolean;
}

let named: ReadonlyMap<string, readonly Named[]> | undefined;
/** Every phrase by its first word, longest first: the forms of the lexicon, and what is only said. */
function namedWords(): ReadonlyMap<string, readonly Named[]> {
  if (named) return named;
  const found = new Map<string, Named[]>();
  const add = (each: Named): void => {
    const first = each.parts[0] ?? '';
    const same = found.get(first);
    if (same) same.push(each);
    else found.set(first, [each]);
  };
  for (const forms of formIndex().values()) for (const form of forms) ofForm(form).forEach(add);
  for (const { id, as, written, said } of VOCABULARY)
    for (const phrase of said) add({ parts: partsOfForm(phrase), id, as, written });
  for (const list of found.values()) list.sort((a, b) => b.parts.length - a.parts.length);
  named = found;
  return found;
}
function ofForm({ parts, findings, values, labels }: Form): Named[] {
  const written = parts.join(' ');
  return [
    ...findings.map(({ id, lead }): Named => ({ parts, id, as: 'finding', written, ...(lead ? { lead } : {}) })),
    ...[...values.keys()].map((id): Named => ({ parts, id, as: 'value', written })),
    ...[...labels.keys()].map((id): Named => ({ parts, id, as: 'label', written })),
  ];
}

/** May a clause open with this word, or go on with it, that no table of the reader knows? */
export const isSpoken = (word: string): boolean => spokenWords().has(word);
/** May it open a clause? */
export const opensFrame = (word: string): boolean => spokenStarts().has(word);
let words: ReadonlySet<string> | undefined;
let starts: ReadonlySet<string> | undefined;
function spokenWords(): ReadonlySet<string> {
  words ??= new Set(VOCABULARY.flatMap(({ said }) => said.flatMap(partsOfForm)));
  return words;
}
function spokenStarts(): ReadonlySet<string> {
  starts ??= new Set(
    VOCABULARY.filter(({ as }) => as === 'finding').flatMap(({ said }) =>
      said.map((each) => partsOfForm(each)[0] ?? ''),
    ),
  );
  return starts;
}

/** More words than this are more than one finding. */
const LONGEST = 12;
const spells = (tokens: readonly string[], at: number, parts: readonly string[]): boolean =>
  parts.every((part, i) => tokens[at + i] === part);

/** The frames that a clause may be put into; empty where a word of it is of no kind. */
export function framesOf(said: readonly string[]): Frame[] {
  const all = said.flatMap((word) => (word.startsWith('"') ? [word] : partsOfForm(word)));
  if (all.length > LONGEST) return [];
  const { section, tokens } = sectionIn(all);
  const single = framed(tokens);
  const found = single.length > 0 ? single.map((each) => [each]) : pairsOf(tokens);
  return found.map((list) => ({
    text:
      section +
      [list.find(({ place }) => place !== '')?.place, list.map(({ text }) => text).join(', ')]
        .filter(Boolean)
        .join(' '),
    findings: list,
    leans: list.some(({ leans }) => leans),
  }));
}
/** A strong section word opens a clause; that of an image may stand anywhere in it (`plate intact on the mri`). */
function sectionIn(all: readonly string[]): { section: string; tokens: readonly string[] } {
  const at = all.findIndex((word, i) => {
    const named = closed.SECTION_WORDS[word];
    return named?.strong && (i === 0 || (IMAGES.has(named.section) && i > 1));
  });
  return at < 0 ? { section: '', tokens: all } : { section: `${all[at]} `, tokens: all.filter((_, i) => i !== at) };
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
  readonly place: string;
  readonly text: string;
  readonly id: FindingId;
  readonly absent: boolean;
  readonly leans: boolean;
}
const framed = (tokens: readonly string[]): Framed[] =>
  tokens.flatMap((word, at) =>
    (namedWords().get(word) ?? []).flatMap((head) =>
      head.as === 'finding' && spells(tokens, at, head.parts) ? (framedAt(tokens, at, head) ?? []) : [],
    ),
  );

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
    const end = i < at ? at : tokens.length;
    const next = taken(tokens, i, end, i < at, head, filled);
    if (next === undefined) return undefined;
    i = next;
  }
  const absent = filled.no || (filled.status !== undefined && ABSENT.has(filled.status)) || head.lead?.absent === true;
  // A test that is denied may not have been done.
  if (filled.no && (filled.status !== undefined || filled.and || entryOf(head.id).bare === 'incomplete'))
    return undefined;
  const written = filled.no
    ? ['no', ...filled.before, head.written, ...filled.after]
    : [head.written, ...filled.before, ...filled.after, filled.status];
  return {
    place: [filled.side, filled.subject].filter(Boolean).join(' '),
    text: written.filter(Boolean).join(' '),
    id: head.id,
    absent,
    leans: filled.bare || filled.last !== 'other',
  };
}

/** Takes what stands at a place for what it is; the place after it, or `undefined` where it is nothing that the finding takes. */
function taken(
  tokens: readonly string[],
  at: number,
  end: number,
  ahead: boolean,
  head: Named,
  filled: Filled,
): number | undefined {
  const word = tokens[at] ?? '';
  const subject = subjectAt(tokens, at, end, head.id);
  if (subject) {
    if (filled.subject !== undefined) return undefined;
    filled.subject = subject.text;
    filled.bare = subject.bare;
    filled.last = 'subject';
    return subject.next;
  }
  const part = JOINTS[word];
  if (part && filled.subject !== undefined && /^\d\w\w$/.test(filled.subject) && tokens[at - 1] === 'the') {
    filled.subject += ` ${part}`;
    return JOINTS[tokens[at + 1] ?? ''] === undefined ? at + 1 : at + 2;
  }
  const value = (namedWords().get(word) ?? []).find(
    ({ id, as, parts }) => id === head.id && as !== 'finding' && at + parts.length <= end && spells(tokens, at, parts),
  );
  if (value) {
    filled.last = isQuality(head.id, value) ? 'quality' : 'other';
    (ahead ? filled.before : filled.after).push(value.written);
    return at + value.parts.length;
  }
  // A bare number is of what it follows.
  if (
    (MEASURED.test(word) && !(ahead && /^[\d.]+$/.test(word) && !UNITS.has(tokens[at + 1] ?? ''))) ||
    word.startsWith('"')
  ) {
    (ahead ? filled.before : filled.after).push(word);
    return at + 1;
  }
  if (UNITS.has(word) && MEASURED.test(tokens[at - 1] ?? '')) {
    (ahead ? filled.before : filled.after).push(word);
    return at + 1;
  }
  if (word === 'right' || word === 'left') {
    if (filled.side !== undefined) return undefined;
    filled.side = word;
    return at + 1;
  }
  if (DENIES.has(word) && ahead) {
    if (filled.no || filled.status !== undefined) return undefined;
    filled.no = true;
    return at + 1;
  }
  const status = STATUSES.find((parts) => at + parts.length <= end && spells(tokens, at, parts));
  if (status && !ahead) {
    if (filled.status !== undefined) return undefined;
    filled.status = status.join(' ');
    return at + status.length;
  }
  if (word === 'and') {
    filled.and = true;
    return at + 1;
  }
  return NOTHING_SAID.has(word) ? at + 1 : undefined;
}

/** May a value stand before its finding, so that it may be of the next one? */
const isQuality = (id: FindingId, { written }: Named): boolean =>
  formOf(written)
    ?.values.get(id)
    ?.some(({ slot }) => {
      const { before, locating } = (entryOf(id).slots as Readonly<Record<string, Slot>>)[slot] ?? {};
      return before === true || locating === true;
    }) ?? false;

const ABSENT: ReadonlySet<string> = new Set(closed.ABSENT);
const STATUSES: readonly (readonly string[])[] = [
  ...closed.ABSENT,
  ...closed.NOT_DONE,
  ...closed.PRESENT,
  ...closed.POSITIVE,
  ...closed.EQUIVOCAL,
]
  .map(partsOfForm)
  .sort((a, b) => b.length - a.length);
const DENIES: ReadonlySet<string> = new Set(['no', 'without', 'nil', 'not']);
const MEASURED = /^[~<>]?\d+(?:\.\d+)?(?:-\d+)?(?:°|%|\+|\/\d+)?$/;
const UNITS: ReadonlySet<string> = new Set([
  ...['mm', 'cm', 'ml', 'mg', 'degrees', 'degree', 'percent', 'millimetres', 'millimetre', 'millimeters'],
  ...['days', 'day', 'weeks', 'week', 'months', 'month', 'years', 'year', 'hours', 'hour', 'minutes', 'minute'],
]);
/** Words that join or stress, and say nothing of their own beside a finding. */
const NOTHING_SAID: ReadonlySet<string> = new Set(
  [
    ...closed.FILLERS,
    ...closed.HARMLESS,
    ...CONNECTIVES,
    ...EMPHASIS.filter((each) => !each.includes(' ')),
    ...['clearly', 'definitely', 'definite', 'certainly', 'obviously', 'also', 'there', 'nicely', 'easily'],
    ...['shows', 'showed', 'shown', 'reveals', 'revealed', 'demonstrates', 'seen', 'noted', 'remains', 'looks'],
    ...['complains', 'complaining', 'reports', 'describes'],
  ].filter((each) => !each.includes(' ')),
);

const NTH: Readonly<Record<string, string>> = {
  first: '1st',
  second: '2nd',
  third: '3rd',
  fourth: '4th',
  fifth: '5th',
};
const RAY = /^[1-5](?:st|nd|rd|th)(?:-[1-5](?:st|nd|rd|th))?$/;
const PART: Readonly<Record<string, string>> = {
  toe: '',
  toes: '',
  ray: '',
  rays: '',
  metatarsal: 'metatarsal',
  metatarsals: 'metatarsal',
  mtp: 'mtp',
  mtps: 'mtp',
  joint: 'mtp',
  joints: 'mtp',
  head: 'head',
  heads: 'head',
  shaft: 'shaft',
  neck: 'neck',
  plate: 'plate',
  pip: 'pip',
  dip: 'dip',
};
/** `second toe dislocated at the mtp joint`. */
const JOINTS: Readonly<Record<string, string>> = { mtp: 'mtp', joint: 'mtp' };
/** An ordinal that is said alone may be a turn or a time; only of a sign is it a ray. */
const isOfRay = (id: FindingId): boolean => {
  const { kind, subjects } = entryOf(id);
  return (kind === 'sign' || kind === 'measure') && subjects.includes('ray');
};

function subjectAt(
  tokens: readonly string[],
  at: number,
  end: number,
  id: FindingId,
): { text: string; next: number; bare: boolean } | undefined {
  if (tokens[at] === 'web' && /^[1-4]$/.test(tokens[at + 1] ?? ''))
    return { text: `web ${tokens[at + 1]}`, next: at + 2, bare: false };
  if (tokens[at] === 'webs' && /^[1-4]-[1-4]$/.test(tokens[at + 1] ?? ''))
    return { text: `webs ${tokens[at + 1]}`, next: at + 2, bare: false };
  const rays: string[] = [];
  let next = at;
  let anyBare = false;
  for (;;) {
    const here = next > at && (tokens[next] === 'and' || tokens[next] === 'to') ? next + 1 : next;
    const skip = tokens[here] === 'the' && next > at ? here + 1 : here;
    const word = skip < end ? (tokens[skip] ?? '') : '';
    const bare = NTH[word] !== undefined && (word !== 'first' || PART[tokens[skip + 1] ?? ''] !== undefined);
    if (!RAY.test(word) && !(bare && isOfRay(id))) break;
    anyBare ||= bare;
    rays.push(next > at && tokens[next] === 'to' ? `to ${NTH[word] ?? word}` : (NTH[word] ?? word));
    next = skip + 1;
  }
  if (rays.length === 0) return undefined;
  const part = next < end ? PART[tokens[next] ?? ''] : undefined;
  const twice = part !== undefined && next + 1 < end ? PART[tokens[next + 1] ?? ''] : undefined;
  const skipped = part === undefined ? next : twice === undefined ? next + 1 : next + 2;
  // `third one`: no number.
  if (anyBare && part === undefined && /^\d/.test(tokens[next] ?? '') && !isGraded(id)) return undefined;
  return {
    bare: anyBare && part === undefined,
    text: `${listed(rays)}${twice || part ? ` ${twice || part}` : ''}`,
    next: skipped,
  };
}
const isGraded = (id: FindingId): boolean =>
  Object.values<Slot>(entryOf(id).slots).some(({ kind }) => kind === 'grade');
const listed = (rays: readonly string[]): string =>
  rays.reduce((text, ray) => (text === '' ? ray : ray.startsWith('to ') ? `${text} ${ray}` : `${text} and ${ray}`), '');
