import { LIFECYCLE_WORDS } from '../../grammar/lexicon/lifecycle-words.ts';
import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax, Role, StatementNode } from '../../grammar/syntax.ts';
import type { Span } from '../../grammar/values.ts';
import type { Settings } from '../clinical/settings.ts';
import { sameStructure } from './same-structure.ts';

export type Words = NonNullable<Settings['words']>;

/** The column at which a line's findings start: its first word is padded to this width. */
const COLUMN = 9;

/**
 * The line as the formatter writes it: canonical words, single spaces, the first word as a column except under a section heading. Comments, quotes and
 * whatever was not read with certainty keep their text; `verbatim` are spans that only the whole visit shows to be unread. A line whose meaning would change is returned as it is.
 */
export function formatLine(line: LineSyntax, verbatim: readonly Span[] = [], words: Words = 'canonical'): string {
  if (line.kind === 'comment' || line.roles.length === 0) return line.kind === 'blank' ? '' : line.text;
  const written = write(line, [...keptSpans(line), ...verbatim], words);
  if (written === line.text) return written;
  return sameMeaning(line, readLine(written, line.under)) ? written : line.text;
}

/** The line in canonical words, for a reader and not for the file: nobody has checked that it would be read back the same. */
export const canonicalText = (line: LineSyntax): string => write(line, keptSpans(line), 'canonical');

function write(line: LineSyntax, kept: readonly Span[], words: Words): string {
  let text = '';
  line.roles.forEach((role, index) => {
    const previous = line.roles[index - 1];
    if (previous) text += gap(line, previous, role, text.length, kept);
    text += words === 'canonical' ? wordOf(line, role, kept) : line.text.slice(role.start, role.end);
  });
  return text;
}

function wordOf(line: LineSyntax, role: Role, kept: readonly Span[]): string {
  const own = line.text.slice(role.start, role.end);
  // A ray of a line that was not read with certainty may be meant with the words that were not.
  const open = role.kind === 'subject' && kept.length > 0;
  return role.canonical === undefined || open || inside(role, kept) ? own : role.canonical;
}

/** Lines of a visit that stand in its column. */
const LIFECYCLE_KINDS: ReadonlySet<string | undefined> = new Set(LIFECYCLE_WORDS);

/** The white space between two roles; `width` is the length of the text so far. */
function gap(line: LineSyntax, left: Role, right: Role, width: number, kept: readonly Span[]): string {
  const typed = line.text.slice(left.end, right.start);
  if (right.kind === 'comment' || kept.some(({ start, end }) => start < left.end && right.start < end)) return typed;
  const [before, after] = [line.text.slice(left.start, left.end), line.text.slice(right.start, right.end)];
  // After words that were not read, what is told together with them keeps its spaces too.
  if (after === ',' || after === ';')
    return kept.some(({ start, end }) => start < left.end && left.end <= end) ? typed : '';
  const column = (line.kind === 'statements' && !line.under) || LIFECYCLE_KINDS.has(line.header?.is);
  if (column && left === line.roles[0] && left.kind !== 'punctuation' && typed !== '')
    return ' '.repeat(Math.max(1, COLUMN - width));
  if (before === ',' || before === ';') return ' ';
  if (typed === '') return '';
  return line.header?.is === 'patient' && left.kind !== 'keyword' ? '  ' : ' ';
}

/** The parts of a line that are written as typed: from the first to the last unread word of each segment. */
export function keptSpans(line: LineSyntax): Span[] {
  return line.statements.flatMap(keptOf);
}
function keptOf({ findings, verbatim }: StatementNode): Span[] {
  const unread = [
    ...verbatim,
    ...findings.filter(
      ({ causes, slots }) => causes.length > 0 || Object.values(slots).some((slot) => slot.causes.length > 0),
    ),
  ];
  return [...new Set(unread.map(({ segment }) => segment))].map((segment) => {
    const nodes = unread.filter((node) => node.segment === segment);
    return { start: Math.min(...nodes.map(({ start }) => start)), end: Math.max(...nodes.map(({ end }) => end)) };
  });
}
/** In a part that is kept, or of one word with it (`2nd2nd 3rd`): what it touches would be read as another word. */
const inside = (role: Span, spans: readonly Span[]): boolean =>
  spans.some(({ start, end }) => (start <= role.start && role.end <= end) || role.start === end || role.end === start);

/** Do two lines say the same, wherever in the line they say it? */
const sameMeaning = (a: LineSyntax, b: LineSyntax): boolean => sameStructure(meaning(a), meaning(b));

/** All but its spelling, and the heading that it stands under. */
const meaning = ({ text: _text, roles: _roles, under: _under, problems, ...said }: LineSyntax): unknown =>
  withoutPlaces({ ...said, problems: problems.map(({ code, text }) => ({ code, text })) });

/** A copy without offsets. */
function withoutPlaces(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutPlaces);
  if (typeof value !== 'object' || value === null) return value;
  const rest = Object.entries(value).filter(([key]) => key !== 'start' && key !== 'end');
  return Object.fromEntries(rest.map(([key, each]) => [key, withoutPlaces(each)]));
}
