import { FILLERS, LIST_ENDERS, SECTION_WORD, SECTION_WORDS } from '../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../grammar/lexicon/entry.ts';
import { entryOf } from '../../../grammar/lexicon/index.ts';
import { own } from '../../../grammar/own.ts';
import { readLine } from '../../../grammar/read-line.ts';
import { formIndex } from '../../../grammar/reader/forms.ts';
import { CONNECTIVES, EMPHASIS } from '../../../grammar/spoken/spoken-words.ts';
import type { FindingNode, LineSyntax, Role } from '../../../grammar/syntax.ts';
import { type Insertion, onlySectionOf, subjectsFor } from './propose-places.ts';
import { isTurned } from './turned-section.ts';

/**
 * The line with the breaks that its speaker is likely to have meant, put where they take no clear finding and change none: before a
 * `no` that denies what follows, between two findings that only stand side by side, before a section word and before what belongs to
 * the exam. An unread word is never cut off from its neighbours, since it may change them.
 */
export function proposeBreaks(line: LineSyntax): LineSyntax {
  let best = line;
  const refused = new Set<string>();
  for (let round = 0; round < MOST; round++) {
    const isFresh = (each: Insertion) =>
      isNew(best, each.at, each.text) && !leansOn(best, each) && !refused.has(key(best, each));
    const fresh = insertions(best)
      .map((group) => group.filter(isFresh))
      .find((group) => group.length > 0);
    if (!fresh) return best;
    const places = new Map(fresh.toReversed().map((each) => [each.at, each]));
    for (const each of places.values()) refused.add(key(best, each));
    best = insertKept(
      best,
      [...places.values()].sort((x, y) => x.at - y.at),
    );
  }
  return best;
}
/** A break may show where another belongs; more rounds than this find no more. */
const MOST = 8;
/** Counted from the end of the line, which what is put in before it does not move. */
const key = ({ text }: LineSyntax, { at, text: inserted }: Insertion): string => `${text.length - at}${inserted}`;

/** `has not | tried`, `in the | others`: what stands before a new line would say something of what follows it. */
const leansOn = ({ text }: LineSyntax, { at, text: inserted }: Insertion): boolean =>
  inserted.startsWith(NEW_LINE) && LEANING.test(text.slice(0, at));
const NEW_LINE = 'new line ';
const LEANING =
  /(?:\b(?:an?|the|in|of|on|at|to|for|with|from|under|over|behind|by|and|or|not|no|never|without|has|have|had|is|are|was|were|be|been|her|his|their|my)|n['’]?t)\s+$/i;

/** Puts in as many as leave every clear finding as it was: all at once, or else each half by itself. A section that nobody said has to make a finding clear. */
function insertKept(line: LineSyntax, list: readonly Insertion[]): LineSyntax {
  if (list.length === 0) return line;
  const text = list.reduceRight((put, { at, text }) => put.slice(0, at) + text + put.slice(at), line.text);
  const tried = readLine(text);
  const owed = list.filter(({ text }) => text.startsWith(NEW_LINE) && text !== NEW_LINE).length;
  if (keepsClear(line, tried) && clearOf(tried).length >= clearOf(line).length + owed) return tried;
  if (list.length === 1) return line;
  const half = list.length >> 1;
  return insertKept(insertKept(line, list.slice(half)), list.slice(0, half));
}

const isNew = (line: LineSyntax, at: number, text: string): boolean =>
  !line.text.slice(0, at).trimEnd().endsWith(text.trim());

/** Sections first, since they decide what else has its place. */
function insertions(line: LineSyntax): Insertion[][] {
  return [
    sectionStarts(line),
    ownSections(line),
    [...examStarts(line), ...denials(line), ...neighbours(line), ...lists(line)],
    subjectsFor(line),
  ];
}

const textOf = ({ text }: LineSyntax, role: Role): string => text.slice(role.start, role.end).toLowerCase();
const findingsOf = ({ statements }: LineSyntax): FindingNode[] => statements.flatMap(({ findings }) => findings);
const isSaid = ({ kind, struck }: Role): boolean => kind !== 'filler' && !struck;

/** A section word in the line, and a weak one that could not be read where it stands (`trigger running exam second ray`). */
function sectionStarts(line: LineSyntax): Insertion[] {
  return line.roles.flatMap((role, i) => {
    const section = own(SECTION_WORDS, textOf(line, role));
    const opens = role.kind === 'keyword' || (role.kind === 'reported' && section && !section.strong);
    return i > 0 && opens && section && !isTurned(line, i) ? [{ at: role.start, text: NEW_LINE }] : [];
  });
}

/** `history … second ray tender`: a sign or a measure of the exam, after its ray, in a section that can't hold it. */
function examStarts(line: LineSyntax): Insertion[] {
  return line.problems.flatMap(({ code, start, text, section }) => {
    if (code !== 'word-out-of-place' || section === undefined || !isOfExam(text, section)) return [];
    if (isListed(line, start)) return [];
    const at = startOfStatement(line, start);
    return at === undefined ? [] : [{ at, text: NEW_LINE }];
  });
}
/** `hva twenty degrees` is a film's alone, `review in six weeks` a plan's; no section takes a treatment by guess. */
function ownSections(line: LineSyntax): Insertion[] {
  return line.problems.flatMap(({ code, start, text, section }) => {
    if (code !== 'word-out-of-place' || section !== 'exam' || isListed(line, start)) return [];
    const own = onlySectionOf(text);
    const at = own && (startOfStatement(line, start) ?? afterValue(line, start));
    return own === undefined || at === undefined ? [] : [{ at, text: `${NEW_LINE}${SECTION_WORD[own]} ` }];
  });
}
/** `risks discussed including stiffness comma infection`: one of a list whose beginning was not read says what that beginning says. */
function isListed({ roles, text }: LineSyntax, start: number): boolean {
  let listed = false;
  for (const { kind, start: from, end } of roles.toReversed()) {
    if (end > start) continue;
    if (kind === 'reported') return listed;
    if (kind === 'keyword') return false;
    if (kind !== 'punctuation') continue;
    if (!/^(?:,|comma)$/i.test(text.slice(from, end))) return false;
    listed = true;
  }
  return false;
}
const CLOSING: ReadonlySet<Role['kind']> = new Set(['finding', 'value', 'modifier'] satisfies Role['kind'][]);
/** The place itself where a finding, its value or its status closes what was said before. */
function afterValue({ roles }: LineSyntax, start: number): number | undefined {
  const before = roles.findLast(({ end, kind }) => end <= start && kind !== 'filler');
  return before === undefined || CLOSING.has(before.kind) ? start : undefined;
}
function isOfExam(text: string, section: Section): boolean {
  const parts = text.toLowerCase().split(/[\s-]+/);
  const form = formIndex()
    .get(parts[0] ?? '')
    ?.find((each) => each.parts.join(' ') === parts.join(' '));
  return (form?.findings ?? []).some(({ id }) => {
    const { kind, sections } = entryOf(id);
    return (kind === 'sign' || kind === 'measure') && sections.includes('exam') && !sections.includes(section);
  });
}
/** The side or subject that opens what is said at a place, or the place itself right after a break. */
function startOfStatement({ roles }: LineSyntax, start: number): number | undefined {
  const before = roles.filter((role) => role.end <= start && role.kind !== 'filler');
  let at: number | undefined;
  for (const role of before.toReversed()) {
    if (role.kind === 'punctuation') return at ?? start;
    if (role.kind !== 'subject' && role.kind !== 'modifier') return at;
    if (role.kind === 'subject' || at !== undefined) at = role.start;
  }
  return undefined;
}

/** `stiff insert no steroid`: in speech a `no` denies what follows. A line that also ends a statement with `no` says it the other way. */
function denials(line: LineSyntax): Insertion[] {
  const roles = line.roles.filter(isSaid);
  const isNo = (role: Role | undefined) => role?.kind === 'modifier' && ['no', 'not'].includes(textOf(line, role));
  const trailing = roles.some(
    (role, i) => textOf(line, role) === 'no' && (roles[i + 1]?.kind ?? 'punctuation') === 'punctuation',
  );
  if (trailing) return [];
  const denials = new Map(findingsOf(line).map((each) => [each.word.start, each]));
  return roles.flatMap((role, i) => {
    const before = roles[i - 1];
    const denied = denials.get(roles[i + 1]?.start ?? -1);
    const opens = isNo(role) && (before?.kind === 'finding' || before?.kind === 'value');
    return opens && denied?.causes.some(({ why }) => why === 'reach of no') ? [{ at: role.start, text: ', ' }] : [];
  });
}

/** `arch flat calf tight`: two findings that each have their own value and are unclear only since they stand side by side. */
function neighbours(line: LineSyntax): Insertion[] {
  const found = findingsOf(line);
  return found.flatMap((right, i) => {
    const left = found[i - 1];
    if (!left || left.segment !== right.segment || right.id === 'panel' || left.id === 'panel') return [];
    const touching = [...left.causes, ...right.causes];
    const only = touching.length > 0 && touching.every(({ why }) => why === 'foreign part' || why === 'no result');
    const own = saysItself(left) && (saysItself(right) || entryOf(right.id).kind === 'measure');
    return only && own ? [{ at: right.start, text: ', ' }] : [];
  });
}
/** `swelling mild drawer 2 painful`: two clear findings, each after the other, with nothing unread between. */
function lists(line: LineSyntax): Insertion[] {
  const found = findingsOf(line);
  return found.flatMap((right, i) => {
    const left = found[i - 1];
    const between = line.roles.filter(({ start, end }) => left && start >= left.word.end && end <= right.start);
    if (!left || left.segment !== right.segment || left.causes.length > 0 || right.causes.length > 0) return [];
    if (between.some(({ kind }) => kind === 'reported' || kind === 'punctuation' || kind === 'keyword')) return [];
    const lead = right.subject && right.subject.start < right.start && right.subject.start > left.word.end;
    const at = startBefore(line, lead ? Math.min(right.subject?.start ?? right.start, right.start) : right.start);
    return [{ at, text: TREATED.includes(right.section) ? '; ' : ', ' }];
  });
}
const JOINING: readonly string[] = [...FILLERS, ...LIST_ENDERS, ...CONNECTIVES, ...EMPHASIS];
const TREATED: readonly Section[] = ['tried', 'plan', 'operation'];
/** A side, or words that only join, directly before a place belong to what follows it. */
function startBefore(line: LineSyntax, place: number): number {
  let at = place;
  for (const role of line.roles.toReversed()) {
    if (role.end > at) continue;
    const joins =
      role.kind === 'filler' && role.slot === undefined && !role.struck && JOINING.includes(textOf(line, role));
    const isSide = role.kind === 'modifier' && role.finding === undefined;
    if (!joins && !isSide) break;
    at = role.start;
  }
  return at;
}

const saysItself = ({ slots, status }: FindingNode): boolean => Object.keys(slots).length > 0 || status !== 'present';

/** Are all findings that were clear still there, each saying the same? One that has no subject may be given one. */
function keepsClear(before: LineSyntax, after: LineSyntax): boolean {
  const said = clearOf(after);
  return clearOf(before).every(({ says, of }) => {
    const at = said.findIndex((each) => each.says === says && (of === undefined || each.of === of));
    if (at >= 0) said.splice(at, 1);
    return at >= 0;
  });
}
interface Clear {
  readonly says: string;
  readonly of: string | undefined;
}
const clearOf = (line: LineSyntax): Clear[] =>
  findingsOf(line)
    .filter(({ causes }) => causes.length === 0)
    .map(({ id, section, subject, side, status, slots }) => {
      const values = Object.entries(slots).map(([slot, { value, causes }]) => [slot, value, causes.length]);
      const own = id !== 'panel' && entryOf(id).subjects.every((each) => each === 'ray' || each === 'web');
      const of = subject || !own ? JSON.stringify({ ...subject, start: 0, end: 0 }) : undefined;
      return { says: JSON.stringify([id, section, status, side, values]), of };
    });
