import { SEX_BY_FORM, VISIT_KIND_BY_FORM, VISIT_SIDE_BY_FORM } from '../lexicon/header-words.ts';
import type { HeaderNode, ReadingProblem, Role, VisitKind } from '../syntax.ts';
import { DRAWER_SCALES, type Side, type Span } from '../values.ts';
import { matchesAt } from './forms.ts';
import type { Item } from './items.ts';

/** What a header line gives back; words that it can't take are kept and reported. */
interface HeaderRead {
  readonly header: HeaderNode | undefined;
  readonly roles: Role[];
  readonly problems: ReadingProblem[];
}

class HeaderReader {
  readonly roles: Role[] = [];
  readonly problems: ReadingProblem[] = [];
  readonly line: string;
  readonly items: readonly Item[];

  constructor(line: string, items: readonly Item[]) {
    this.line = line;
    this.items = items;
  }
  role(kind: Role['kind'], at: Span, canonical?: string): void {
    this.roles.push({ kind, start: at.start, end: at.end, ...(canonical ? { canonical } : {}) });
  }
  bad(at: Span): void {
    this.role('reported', at);
    this.problems.push({ code: 'bad-header', text: this.line.slice(at.start, at.end), start: at.start, end: at.end });
  }
  /** Gives each item after the keyword to `take`; what it refuses is reported. */
  each(take: (item: Item, index: number) => boolean): void {
    for (let i = 1; i < this.items.length; i++) {
      const item = this.items[i] as Item;
      if (item.is === 'comment') this.role('comment', item);
      else if (item.is === 'break' || item.is === 'keeper') this.role('punctuation', item);
      else if (!take(item, i)) this.bad(item);
    }
  }
}

const text = (item: Item | undefined): string => (item?.is === 'word' ? item.text.toLowerCase() : '');

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
  reader.each((item) => {
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
    const [knownKind, knownSide] = [VISIT_KIND_BY_FORM.get(text(item)), VISIT_SIDE_BY_FORM.get(text(item))];
    if (knownKind && !kind) kind = knownKind;
    else if (knownSide && !side) side = knownSide;
    else return false;
    reader.role('value', item, knownKind ?? knownSide);
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

/** The header lines, by their first word. `visit` opens a visit; `allow` stands in the header or in a visit. */
const HEADERS: Readonly<Record<string, (reader: HeaderReader) => HeaderNode | undefined>> = {
  forefoot: version,
  patient,
  scales,
  visit,
  allow,
};

/** Reads a header line; `undefined` where the first word opens none. */
export function readHeader(line: string, items: readonly Item[]): HeaderRead | undefined {
  const first = items[0];
  const read = first?.is === 'word' ? HEADERS[first.text.toLowerCase()] : undefined;
  if (!first || !read) return undefined;
  // A longer phrase of the lexicon (`forefoot compression`) is a statement.
  if (matchesAt(items, 0).some(({ next }) => next > 1)) return undefined;
  const reader = new HeaderReader(line, items);
  reader.role('keyword', first, text(first));
  const header = read(reader);
  if (!header && reader.problems.length === 0) reader.bad(first);
  return { header, roles: dropOverlaps(reader.roles), problems: reader.problems };
}

/** In the order of the line; a word that was reported after all has one role only. */
const dropOverlaps = (roles: readonly Role[]): Role[] =>
  roles
    .filter((role, i) => !roles.slice(i + 1).some((later) => later.start === role.start && later.end === role.end))
    .sort((a, b) => a.start - b.start);
