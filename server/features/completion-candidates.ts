import { NOT_DONE, SECTION_WORD } from '../../grammar/lexicon/closed-words.ts';
import type { Entry, Lead, Section, Slot, SubjectKind } from '../../grammar/lexicon/entry.ts';
import { entryOf, type FindingId, LEXICON } from '../../grammar/lexicon/index.ts';
import { LIFECYCLE_WORDS, PREFIX_WORDS, SIGNER_ROLES } from '../../grammar/lexicon/lifecycle-words.ts';
import { own } from '../../grammar/own.ts';
import { readLine } from '../../grammar/read-line.ts';
import type { RoleKind } from '../../grammar/syntax.ts';
import { NEEDED } from '../clinical/completeness.ts';
import type { CompletionContext } from './completion-context.ts';
import { SECTION_DETAIL } from './describe-language.ts';
import { HEADER_WORDS } from './header-words.ts';

export interface Candidate {
  readonly label: string;
  readonly text: string;
  readonly kind: 'section' | 'header' | 'subject' | 'finding' | 'value' | 'status';
  readonly detail: string;
  /** The finding that explains it. */
  readonly about?: FindingId;
  /** Other forms in which the same is written. */
  readonly forms: readonly string[];
}

const plain = (kind: Candidate['kind'], label: string, detail: string): Candidate => ({
  label,
  text: label,
  kind,
  detail,
  forms: [],
});

/** The words that fit, best first: the reader itself rejects those that it would not take here. */
export function candidates(context: CompletionContext): Candidate[] {
  const all = context.header === undefined ? statementWords(context) : headerWords(context.header, context);
  return all.filter((candidate) => isTaken(candidate, context));
}

const ROLES: Readonly<Record<Candidate['kind'], readonly RoleKind[]>> = {
  section: ['keyword', 'finding'],
  header: ['keyword', 'value', 'finding'],
  subject: ['subject'],
  finding: ['finding'],
  value: ['value'],
  status: ['modifier'],
};
/** Would the reader take the word at this place, in the role that it is offered in? */
function isTaken({ text, kind }: Candidate, context: CompletionContext): boolean {
  const { before, under, header, lineStart, prefix, behindPrefix } = context;
  // A header word alone still lacks what it names, as does a ray of what was carried; a code is whatever the rules call themselves.
  if (header === 'allow' || (kind === 'header' && lineStart)) return true;
  if (kind === 'subject' && (prefix || behindPrefix)) return true;
  const { roles, problems } = readLine(before + text, under);
  const role = roles.find(({ end }) => end > before.length);
  const spoiled = kind !== 'header' && problems.some(({ end }) => end > before.length);
  return role !== undefined && role.start >= before.length && ROLES[kind].includes(role.kind) && !spoiled;
}

function headerWords(word: string, { before, today, codes }: CompletionContext): Candidate[] {
  const written = before.toLowerCase().split(/\s+/);
  if (SIGNING.includes(word) && /\d{4}-\d{2}-\d{2}/.test(before))
    return written.some((each) => SIGNER_ROLES.includes(each)) ? [] : signers('who signs');
  if (word === 'allow') return codes.map((code) => plain('value', code, 'a report of this visit'));
  return (own(HEADER_WORDS, word)?.after(today) ?? [])
    .filter((each) => !written.includes(each))
    .map((each) => plain('header', each, each === today ? 'today' : `after ${word}`));
}

const SIGNING: readonly string[] = ['signed', 'addendum'];
const signers = (detail: string): Candidate[] => SIGNER_ROLES.map((role) => plain('header', role, detail));

function statementWords(context: CompletionContext): Candidate[] {
  const { lineStart, inHeader, finding, segmentStart, prefix, earlier, behindPrefix } = context;
  if (lineStart && inHeader) return headerStarts(['forefoot', 'patient', 'scales', 'visit', 'allow']);
  if (prefix === 'examiner') return signers('who examined');
  const opens = lineStart || behindPrefix;
  return [
    ...earlier.map((date) => plain('header', date, 'an earlier visit')),
    ...(finding ? slotWords(entryOf(finding.id), finding.filled, context) : []),
    ...(opens || prefix ? [...subjects(), ...sections()] : []),
    ...(context.section === 'tried' && context.stated.size === 0 ? [NOTHING_TRIED] : []),
    ...findings(context),
    ...(segmentStart && !opens && !prefix && !context.subject ? subjects() : []),
    ...(lineStart ? headerStarts(IN_VISIT) : []),
  ];
}

const NOTHING_TRIED: Candidate = {
  ...plain('finding', 'none', 'nothing was tried'),
  about: 'earlier-treatment',
};

/** The lines that may start within a visit. */
const IN_VISIT: readonly string[] = ['visit', ...LIFECYCLE_WORDS, ...PREFIX_WORDS, 'allow'];

const headerStarts = (words: readonly string[]): Candidate[] =>
  words.map((word) => plain('header', HEADER_WORDS[word]?.form ?? word, 'header line'));

const sections = (): Candidate[] =>
  Object.entries(SECTION_DETAIL).map(([section, detail]) => plain('section', SECTION_WORD[section as Section], detail));

const subjects = (): Candidate[] => [
  ...['1st', '2nd', '3rd', '4th', '5th', '2nd-4th'].map((ray) => plain('subject', ray, 'ray')),
  ...['web 2', 'web 3', 'webs 2-3'].map((web) => plain('subject', web, 'web space')),
];

/** Where the exam of a first visit asks for a finding; what no step asks for comes after. */
const ASKED: ReadonlyMap<string, number> = new Map(
  (NEEDED.first ?? []).flatMap(({ findings }) => findings).map((finding, at) => [finding, at] as const),
);
/** Of a web, what only webs have comes first. */
function asked({ id, sections, subjects }: Entry, { section, subject }: CompletionContext): number {
  const at = sections[0] === section ? ASKED.get(id) : undefined;
  if (at === undefined) return ASKED.size;
  return subject === 'web' && !subjects.includes('ray') ? at - ASKED.size : at;
}

/** Findings of the section that may be said of the subject, its own first, those that the exam asks for before others, in exam order; what the line has stated stands apart. */
function findings(context: CompletionContext): Candidate[] {
  const { section, subject, stated } = context;
  const fits = (kinds: readonly SubjectKind[]) => subject === undefined || kinds.includes(subject);
  return (LEXICON as readonly Entry[])
    .filter(({ id, sections, subjects, many }) => {
      const repeated = !many && [...stated].some((each) => each === id);
      return sections.includes(section) && fits(subjects) && !repeated;
    })
    .toSorted(
      (a, b) => rank(a, section) - rank(b, section) || asked(a, context) - asked(b, context) || a.order - b.order,
    )
    .flatMap((entry) => [
      { ...plain('finding', entry.word, KINDS[entry.kind]), about: entry.id as FindingId, forms: entry.forms },
      ...leads(entry, section),
    ]);
}

/** What the section is for comes before what it may hold as well: treatments in a plan and in what was tried, elsewhere the findings whose own section it is. */
function rank({ kind, sections }: Entry, section: Section): number {
  const own = sections[0] === section ? 0 : 1;
  if (section !== 'plan' && section !== 'tried') return own;
  return (kind === 'treatment' || kind === 'procedure') && sections[0] !== 'exam' ? 0 : own + 1;
}

/** The words that open a finding and say more than its own word: `medial`, `straight`, `plate repair`. */
function leads(entry: Entry, section: Section): Candidate[] {
  const fitting = Object.entries(entry.leads).filter(([, { sections }]) => !sections || sections.includes(section));
  const said = (gives: Lead['gives'], absent?: true) => JSON.stringify([gives ?? {}, absent ?? false]);
  const firsts = new Map<string, string[]>();
  for (const [text, { gives, absent }] of fitting) {
    const key = said(gives, absent);
    firsts.set(key, [...(firsts.get(key) ?? []), text]);
  }
  return [...firsts.values()].flatMap(([first = '', ...others]) =>
    first === '' ? [] : [{ ...plain('finding', first, entry.word), about: entry.id as FindingId, forms: others }],
  );
}
const KINDS: Readonly<Record<Entry['kind'], string>> = {
  sign: 'sign',
  measure: 'test, needs its result',
  treatment: 'treatment',
  procedure: 'procedure',
  event: 'event',
};

function slotWords(entry: Entry, filled: ReadonlySet<string>, context: CompletionContext): Candidate[] {
  const open = Object.entries(entry.slots).filter(([name]) => !filled.has(name));
  const statuses = filled.size > 0 ? [] : ['none', NOT_DONE[0] ?? 'not done', 'unable'];
  return [
    ...open.flatMap(([name, slot]) => valuesOf(entry, name, slot, context)),
    ...statuses.map((status) => plain('status', status, `${entry.word}: ${STATUS[status] ?? status}`)),
  ];
}
const STATUS: Readonly<Record<string, string>> = { none: 'absent', unable: 'could not be tested; quote the reason' };

function valuesOf(entry: Entry, name: string, slot: Slot, { scale }: CompletionContext): Candidate[] {
  const detail = `${entry.word}: ${name}`;
  if (slot.kind === 'words')
    return Object.entries(slot.values).map(([value, forms]) => ({ ...plain('value', value, detail), forms }));
  if (slot.kind !== 'grade') return [];
  const [low = slot.min, high = slot.max] = slot.of === 'drawer' && scale ? scale.split('-').map(Number) : [];
  const on = slot.of === 'drawer' ? `, scale ${scale ?? 'not stated'}` : '';
  return Array.from({ length: high - low + 1 }, (_, step) => plain('value', String(low + step), `${detail}${on}`));
}
