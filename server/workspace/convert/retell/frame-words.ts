import * as closed from '../../../../grammar/lexicon/closed-words.ts';
import type { Lead, Slot } from '../../../../grammar/lexicon/entry.ts';
import { entryOf, type FindingId } from '../../../../grammar/lexicon/index.ts';
import { type Form, formIndex, formOf, partsOfForm } from '../../../../grammar/reader/forms.ts';
import { CONNECTIVES, EMPHASIS } from '../../../../grammar/spoken/spoken-words.ts';
import { VOCABULARY } from './vocabulary/index.ts';

/* The words of which a clause may be made that is put into the order of the language: see `frame.ts`. */

/** A phrase that names a finding, or a value of one, and how the language writes it. */
export interface Named {
  readonly parts: readonly string[];
  readonly id: FindingId;
  readonly as: 'finding' | 'value' | 'label';
  /** The word of a section that what is written opens with, and the rest. */
  readonly section: string;
  readonly written: string;
  /** It denies its finding by itself (`straight`). */
  readonly absent: boolean;
  /** A noun that a denial denies by itself (`no fracture`). */
  readonly noun: boolean;
}

let named: ReadonlyMap<string, readonly Named[]> | undefined;
/** Every phrase by its first word, longest first: the forms of the lexicon, and what is only said. */
export function namedWords(): ReadonlyMap<string, readonly Named[]> {
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
    for (const phrase of said) add({ parts: partsOfForm(phrase), id, as, ...writtenAs(id, written) });
  for (const list of found.values()) list.sort((a, b) => b.parts.length - a.parts.length);
  named = found;
  return found;
}
function ofForm({ parts, findings, values, labels }: Form): Named[] {
  const written = parts.join(' ');
  const plain = { parts, section: '', written, absent: false, noun: false };
  return [
    ...findings.map(({ id, lead }): Named => ({ ...plain, id, as: 'finding', ...denied(lead) })),
    ...[...values.keys()].map((id): Named => ({ ...plain, id, as: 'value' })),
    ...[...labels.keys()].map((id): Named => ({ ...plain, id, as: 'label' })),
  ];
}
const denied = (lead: Lead | undefined) => ({ absent: lead?.absent === true, noun: lead?.noun === true });
function writtenAs(id: FindingId, text: string): Pick<Named, 'section' | 'written' | 'absent' | 'noun'> {
  const [first = '', ...more] = text.split(' ');
  const opens = closed.SECTION_WORDS[first]?.strong === true && more.length > 0;
  const written = opens ? more.join(' ') : text;
  const { absent, noun } = denied(formOf(written)?.findings.find((each) => each.id === id)?.lead);
  return { section: opens ? first : '', written, absent: absent || /^no /.test(written), noun };
}
export const spells = (tokens: readonly string[], at: number, parts: readonly string[]): boolean =>
  parts.every((part, i) => tokens[at + i] === part);

let spoken: ReadonlySet<string> | undefined;
/** May a clause go on with this word, though no table of the reader knows it? */
export function isSpoken(word: string): boolean {
  spoken ??= new Set([
    ...VOCABULARY.flatMap(({ said }) => said.flatMap(partsOfForm)),
    ...NOTHING_SAID,
    ...Object.keys(NTH),
    ...ORDERS,
  ]);
  return spoken.has(word);
}
let starts: ReadonlyMap<string, readonly (readonly string[])[]> | undefined;
/** May a clause open at this place with words that no table of the reader knows? */
export function opensFrame(texts: readonly string[], at: number): boolean {
  if (!starts) {
    const found = new Map<string, (readonly string[])[]>();
    for (const { as, said } of VOCABULARY)
      for (const phrase of as === 'finding' ? said : []) {
        const parts = partsOfForm(phrase);
        found.set(parts[0] ?? '', [...(found.get(parts[0] ?? '') ?? []), parts]);
      }
    starts = found;
  }
  return starts.get(texts[at] ?? '')?.some((parts) => spells(texts, at, parts)) ?? false;
}

export const ABSENT: ReadonlySet<string> = new Set(closed.ABSENT);
export const STATUSES: readonly (readonly string[])[] = [
  ...closed.ABSENT,
  ...closed.NOT_DONE,
  ...closed.PRESENT,
  ...closed.POSITIVE,
  ...closed.EQUIVOCAL,
]
  .map(partsOfForm)
  .sort((a, b) => b.length - a.length);
export const DENIES: ReadonlySet<string> = new Set(['no', 'without', 'nil', 'not']);
export const MEASURED = /^[~<>]?\d+(?:\.\d+)?(?:-\d+)?(?:°|%|\+|\/\d+)?$/;
export const UNITS: ReadonlySet<string> = new Set([
  ...['mm', 'cm', 'ml', 'mg', 'degrees', 'degree', 'percent', 'millimetres', 'millimetre', 'millimeters'],
  ...['days', 'day', 'weeks', 'week', 'months', 'month', 'years', 'year', 'hours', 'hour', 'minutes', 'minute'],
]);
/** Before a measure they say what it measures: only where they announce it to the finding. */
export const ANNOUNCES: ReadonlySet<string> = new Set(
  'at in on after before from by for to until till since within over under past per'.split(' '),
);
/** Words that join or stress, and say nothing of their own beside a finding. */
export const NOTHING_SAID: ReadonlySet<string> = new Set(
  [
    ...closed.FILLERS,
    ...closed.HARMLESS,
    ...CONNECTIVES,
    ...EMPHASIS.filter((each) => !each.includes(' ')),
    ...'clearly definitely definite certainly obviously also there nicely nice easily well please'.split(' '),
    ...'shows showed shown reveals revealed demonstrates seen noted remains remained looks looking appears'.split(' '),
    ...'complains complaining reports describes sitting fully completely soundly'.split(' '),
  ].filter((each) => !each.includes(' ') && each !== 'yet'),
);
/** Who orders a treatment plans it. */
export const ORDERS: ReadonlySet<string> = new Set(
  'start begin commence try fit provide prescribe supply issue arrange book order request give'.split(' '),
);

export const NTH: Readonly<Record<string, string>> = {
  first: '1st',
  second: '2nd',
  third: '3rd',
  fourth: '4th',
  fifth: '5th',
};
const RAY = /^[1-5](?:st|nd|rd|th)(?:-[1-5](?:st|nd|rd|th))?$/;
const PART: Readonly<Record<string, string>> = {
  ...{ toe: '', toes: '', ray: '', rays: '', digit: '', digits: '' },
  ...{ metatarsal: 'metatarsal', metatarsals: 'metatarsal', met: 'metatarsal', mets: 'metatarsal' },
  ...{ mtp: 'mtp', mtps: 'mtp', joint: 'mtp', joints: 'mtp', mpj: 'mtp', mtpj: 'mtp', mtpjs: 'mtp' },
  ...{ head: 'head', heads: 'head', shaft: 'shaft', neck: 'neck', plate: 'plate' },
  ...{ pip: 'pip', pipj: 'pip', dip: 'dip', dipj: 'dip' },
};
/** `second toe dislocated at the mtp joint`. */
export const JOINTS: Readonly<Record<string, string>> = { mtp: 'mtp', joint: 'mtp', mtpj: 'mtp' };
/** An ordinal that is said alone may be a turn or a time (`second injection`); of what is seen or done it is a ray. */
const isOfRay = (id: FindingId): boolean => {
  const { kind, subjects } = entryOf(id);
  return kind !== 'treatment' && kind !== 'event' && id !== 'operation' && subjects.includes('ray');
};
const isGraded = (id: FindingId): boolean =>
  Object.values<Slot>(entryOf(id).slots).some(({ kind }) => kind === 'grade');

export interface SubjectSaid {
  readonly text: string;
  readonly next: number;
  /** An ordinal alone. */
  readonly bare: boolean;
}
/** The rays or the web that are named at a place, as the language writes them. */
export function subjectAt(tokens: readonly string[], at: number, end: number, id: FindingId): SubjectSaid | undefined {
  const [word = '', number = ''] = [tokens[at], tokens[at + 1]];
  if (word === 'web' && /^[1-4]$/.test(number)) return { text: `web ${number}`, next: at + 2, bare: false };
  if (word === 'webs' && /^[1-4]-[1-4]$/.test(number)) return { text: `webs ${number}`, next: at + 2, bare: false };
  if (/^(?:toe|ray|mtp|mtpj)$/.test(word) && isRayNumber(tokens, at + 1, end) && !isGraded(id))
    return { text: `${ordinal(number)}${word.startsWith('m') ? ' mtp' : ''}`, next: at + 2, bare: false };
  return raysAt(tokens, at, end, id);
}
const isRayNumber = (tokens: readonly string[], at: number, end: number): boolean =>
  at < end && /^[1-5]$/.test(tokens[at] ?? '') && !UNITS.has(tokens[at + 1] ?? '') && !/^\d/.test(tokens[at + 1] ?? '');
const ordinal = (number: string): string => Object.values(NTH)[Number(number) - 1] ?? number;

function raysAt(tokens: readonly string[], at: number, end: number, id: FindingId): SubjectSaid | undefined {
  const rays: string[] = [];
  let next = at;
  let anyBare = false;
  for (;;) {
    const joined = next > at && (tokens[next] === 'and' || tokens[next] === 'to') ? next + 1 : next;
    const here = tokens[joined] === 'the' && next > at ? joined + 1 : joined;
    const word = here < end ? (tokens[here] ?? '') : '';
    const bare = NTH[word] !== undefined && (word !== 'first' || PART[tokens[here + 1] ?? ''] !== undefined);
    if (!RAY.test(word) && !(bare && isOfRay(id))) break;
    anyBare ||= bare;
    rays.push(next > at && tokens[next] === 'to' ? `to ${NTH[word] ?? word}` : (NTH[word] ?? word));
    next = here + 1;
  }
  if (rays.length === 0) return undefined;
  const part = next < end ? PART[tokens[next] ?? ''] : undefined;
  const twice = part !== undefined && next + 1 < end ? PART[tokens[next + 1] ?? ''] : undefined;
  // `third one`: no number.
  if (anyBare && part === undefined && /^\d/.test(tokens[next] ?? '') && !isGraded(id)) return undefined;
  return {
    text: [listed(rays), twice || part].filter(Boolean).join(' '),
    next: part === undefined ? next : twice === undefined ? next + 1 : next + 2,
    bare: anyBare && part === undefined,
  };
}
const listed = (rays: readonly string[]): string =>
  rays.reduce((text, ray) => (text === '' ? ray : ray.startsWith('to ') ? `${text} ${ray}` : `${text} and ${ray}`), '');
