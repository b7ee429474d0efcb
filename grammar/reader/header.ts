import { SEX_BY_FORM, VISIT_KIND_BY_FORM, VISIT_SIDE_BY_FORM } from '../lexicon/header-words.ts';
import { own } from '../own.ts';
import type { HeaderNode, ReadingProblem, Role, StatementNode, VisitKind } from '../syntax.ts';
import { DRAWER_SCALES, type Side } from '../values.ts';
import { matchesAt } from './forms.ts';
import { HeaderReader, lower as text } from './header-reader.ts';
import type { Item } from './items.ts';
import { LIFECYCLE } from './lifecycle.ts';
import { withRedFlags } from './red-flags.ts';

/** What a header line gives back; words that it can't take are kept and reported. */
interface HeaderRead {
  readonly header: HeaderNode | undefined;
  readonly roles: Role[];
  readonly problems: readonly ReadingProblem[];
  /** What a line of the lifecycle could not take, kept as typed. */
  readonly statements: readonly StatementNode[];
}

function version(reader: HeaderReader): HeaderNode | undefined {
  let found: number | undefined;
  reader.each((item) => {
    if (item.is !== 'number' || found !== undefined || item.low !== 1 || item.range) return false;
    found = item.low;
    reader.role('value', item);
    return true;
  });
  return found === undefined ? undefined : { is: 'version', version: found };
}

/** `patient has diabetes` is dictated; who it is stands in capitals or with a number, alone, or with a year or a sex. */
function isNamed({ items }: HeaderReader): boolean {
  const [, second] = items;
  const plain = second?.is === 'word' && /^[a-z]+$/.test(second.text) && items.length > 2;
  return !plain || items.some((item) => text(item) === 'born' || SEX_BY_FORM.has(text(item)));
}

/** A pseudonym may hold letters, digits and hyphens: all items that touch each other are one. */
function patient(reader: HeaderReader): HeaderNode {
  const { items } = reader;
  const separates = (item: Item | undefined): boolean => item?.is === 'keeper' || item?.is === 'break';
  const first = separates(items[1]) ? 2 : 1;
  let next = first;
  while (
    items[next] &&
    items[next]?.is !== 'comment' &&
    !separates(items[next]) &&
    (next === first || items[next - 1]?.end === items[next]?.start)
  )
    next++;
  const start = items[first]?.start ?? 0;
  const end = next > first ? (items[next - 1]?.end ?? 0) : start;
  const name = reader.line.slice(start, end);
  if (name) reader.role('value', { start, end });
  else reader.bad(items[0] as Item);
  let born: number | undefined;
  let sex: 'female' | 'male' | 'other' | undefined;
  reader.each((item, i) => {
    if (i >= first && i < next) return true;
    if (text(item) === 'born' && items[i + 1]?.is === 'number') {
      reader.role('keyword', item);
      return true;
    }
    if (item.is === 'number' && text(items[i - 1]) === 'born' && item.low >= 1900 && item.low <= 2100) {
      born = item.low;
      reader.role('value', item);
      return true;
    }
    const known = SEX_BY_FORM.get(text(item));
    if (!known || sex) return false;
    sex = known;
    reader.role('value', item, known);
    return true;
  });
  reader.roles.sort((a, b) => a.start - b.start);
  return { is: 'patient', name, ...(born ? { born } : {}), ...(sex ? { sex } : {}) };
}

function scales(reader: HeaderReader): HeaderNode | undefined {
  let drawer: (typeof DRAWER_SCALES)[number] | undefined;
  reader.each((item, i) => {
    if (text(item) === 'drawer') {
      reader.role('finding', item);
      return true;
    }
    if (item.is !== 'number' || text(reader.items[i - 1]) !== 'drawer') return false;
    drawer = DRAWER_SCALES.find((scale) => scale === `${item.low}-${item.high}`);
    if (drawer) reader.role('value', item);
    return drawer !== undefined;
  });
  return drawer ? { is: 'scales', drawer } : undefined;
}

function visit(reader: HeaderReader): HeaderNode {
  let date: Extract<Item, { is: 'date' }>['date'] | undefined;
  let kind: VisitKind | undefined;
  let side: Side | 'both' | undefined;
  reader.each((item, i) => {
    if (item.is === 'date' && !date && item.date.day) {
      date = item.date;
      reader.role('value', item);
      return true;
    }
    if (item.is === 'bad date' && !date) {
      reader.role('reported', item);
      const at = { start: item.start, end: item.end };
      reader.problems.push({ code: 'ambiguous-date', text: reader.line.slice(at.start, at.end), ...at });
      return true;
    }
    const knownKind = kind ? undefined : reader.formAt(i, VISIT_KIND_BY_FORM);
    if (knownKind) {
      kind = knownKind.value;
      reader.take(i, knownKind.next, kind);
      return true;
    }
    const knownSide = VISIT_SIDE_BY_FORM.get(text(item));
    if (!knownSide || side) return false;
    side = knownSide;
    reader.role('value', item, knownSide);
    return true;
  });
  if (!date && reader.problems.length === 0) {
    const first = reader.items[0] as Item;
    reader.problems.push({ code: 'bad-header', text: 'visit', start: first.start, end: first.end });
  }
  return { is: 'visit', ...(date ? { date } : {}), ...(kind ? { kind } : {}), ...(side ? { side } : {}) };
}

function allow(reader: HeaderReader): HeaderNode | undefined {
  const [, code] = reader.items;
  const comment = reader.items.find((item) => item.is === 'comment');
  const end = comment?.start ?? reader.line.length;
  if (code?.is !== 'word') {
    reader.each(() => false);
    return undefined;
  }
  reader.role('value', code);
  const reason = reader.line.slice(code.end, end).trim();
  const start = reader.line.indexOf(reason, code.end);
  if (reason) reader.role('verbatim', { start, end: start + reason.length });
  if (comment) reader.role('comment', comment);
  return { is: 'allow', code: code.text.toLowerCase(), reason, at: { start: code.start, end: code.end } };
}

interface HeaderLine {
  readonly read: (reader: HeaderReader) => HeaderNode | undefined;
  /** Where the first word alone does not make the line one of this kind. */
  readonly opens?: (reader: HeaderReader) => boolean;
  /** Words that it can't take are kept as typed. */
  readonly keeps?: true;
}

/** The header lines, by their first word. `visit` opens a visit; `allow` stands in the header or in a visit, the lifecycle in a visit. */
const HEADERS: Readonly<Record<string, HeaderLine>> = {
  forefoot: { read: version },
  patient: { read: patient, opens: isNamed },
  scales: { read: scales },
  visit: { read: visit },
  allow: { read: allow },
  ...LIFECYCLE,
};

/** Reads a header line; `undefined` where its words open none. */
export function readHeader(line: string, items: readonly Item[]): HeaderRead | undefined {
  const first = items[0];
  const kind = first?.is === 'word' ? own(HEADERS, first.text.toLowerCase()) : undefined;
  if (!first || !kind) return undefined;
  // A longer phrase of the lexicon (`forefoot compression`) is a statement.
  if (matchesAt(items, 0).some(({ next }) => next > 1)) return undefined;
  const reader = new HeaderReader(line, items);
  if (kind.opens && !kind.opens(reader)) return undefined;
  reader.role('keyword', first, text(first));
  const header = kind.read(reader);
  if (!header && reader.problems.length === 0) reader.bad(first);
  const statements = kind.keeps ? kept(reader) : [];
  const problems = kind.keeps ? withRedFlags(line, items, statements, reader.problems) : reader.problems;
  return { header, roles: dropOverlaps(reader.roles), problems, statements };
}

/** What was reported of the line as text that is kept as typed. */
function kept({ line, roles }: HeaderReader): StatementNode[] {
  const verbatim = roles
    .filter(({ kind }) => kind === 'reported')
    .map(({ start, end }) => ({ text: line.slice(start, end), quote: false, segment: 0, start, end }));
  const [first, last] = [verbatim[0], verbatim.at(-1)];
  return first && last ? [{ section: 'exam', findings: [], verbatim, start: first.start, end: last.end }] : [];
}

/** In the order of the line; a word that was reported after all has one role only. */
const dropOverlaps = (roles: readonly Role[]): Role[] =>
  roles
    .filter((role, i) => !roles.slice(i + 1).some((later) => later.start === role.start && later.end === role.end))
    .sort((a, b) => a.start - b.start);
