import { CORRECTIONS, SPOKEN_BREAKS } from '../../../grammar/spoken/spoken-words.ts';
import type { LineSyntax, Role } from '../../../grammar/syntax.ts';
import type { Span } from '../../../grammar/values.ts';
import { keptSpans } from '../format-line.ts';
import { isTurned } from './turned-section.ts';

/** Which of the words that only join are written: labels (`grade`, `for`) may be needed to read a line the same way. */
export type Joining = 'none' | 'labels' | 'all';
export interface Written {
  readonly text: string;
  /** What was taken back by a correction, as said. */
  readonly struck: readonly string[];
}

/**
 * A dictated line as typed lines: canonical words, marks for spoken punctuation, a line for each section and, in the exam, for each
 * ray or web that opens a statement. What was not read with certainty keeps its words.
 */
export function writeLines(line: LineSyntax, joining: Joining): Written[] {
  const page = new Page();
  const kept = keptSpans(line).map((span) => withFillers(line, span));
  const leading = leadingSubjects(line);
  line.roles.forEach((role, i) => {
    const own = line.text.slice(role.start, role.end);
    const within = kept.find(({ start, end }) => start <= role.start && role.end <= end);
    if (role.kind === 'comment') page.comment = own;
    else if (within) page.keep(line.text, within);
    else if (role.struck) page.strike(own);
    else if (role.kind === 'punctuation') page.mark(markOf(own));
    else if (role.kind !== 'filler' || isWritten(role, own, joining)) {
      const sided = isSide(role) && leading.has(line.roles[i + 1]?.start ?? -1);
      const leads = leading.has(role.start) && !isSide(line.roles[i - 1]);
      const opens = role.kind === 'keyword' && !isTurned(line, i);
      if (opens || ((sided || leads) && !page.isOpening)) page.newLine();
      page.write(role.canonical ?? own, role.kind === 'keyword' || role.kind === 'subject' || isSide(role));
    }
  });
  return page.finish();
}

const isSide = (role: Role | undefined): boolean => role?.kind === 'modifier' && role.finding === undefined;
const isWritten = (role: Role, own: string, joining: Joining): boolean =>
  joining === 'all'
    ? /[\p{L}\d&]/u.test(own)
    : /^n?or$/i.test(own) ||
      (role.slot !== undefined && (joining === 'labels' || PREPOSITIONS.includes(own.toLowerCase())));
/** A time reads better with its preposition. */
const PREPOSITIONS: readonly string[] = ['in', 'on', 'at', 'after', 'since', 'until', 'from'];

/** What could not be read keeps the small words around it too. */
function withFillers({ roles }: LineSyntax, { start, end }: Span): Span {
  let span = { start, end };
  for (const role of roles)
    if (role.start >= span.end && isSmall(role, roles, span.end)) span = { ...span, end: role.end };
  for (const role of roles.toReversed())
    if (role.end <= span.start && isSmall(role, roles, span.start)) span = { ...span, start: role.start };
  return span;
}
/** A filler with nothing but fillers between it and a place. */
const isSmall = (role: Role, roles: readonly Role[], place: number): boolean =>
  role.kind === 'filler' &&
  !role.struck &&
  !roles.some((each) => each !== role && between(each, role, place) && each.kind !== 'filler');
const between = (each: Role, role: Role, place: number): boolean =>
  role.start >= place ? each.start >= place && each.end <= role.start : each.start >= role.end && each.end <= place;

/** Where a subject of the exam stands before the first finding that is said of it. */
function leadingSubjects({ statements }: LineSyntax): Set<number> {
  const found = new Set<number>();
  for (const { findings } of statements)
    for (const { subject, word, section } of findings)
      if (subject && section === 'exam' && subject.start < word.start) found.add(subject.start);
  return found;
}

function markOf(own: string): string {
  const spoken = SPOKEN_BREAKS[own.toLowerCase().replace(/\s+/g, ' ')];
  if (spoken) return { statement: ';', segment: ',', line: '\n' }[spoken];
  return own === '.' ? ';' : own;
}

/** Lines while they are being written. */
class Page {
  comment: string | undefined;
  private readonly lines: Written[] = [];
  private text = '';
  private pending = '';
  private opened = false;
  private struck: string[] = [];
  private keptTo = -1;

  /** Only a section, a side or a subject stands on the line so far. */
  get isOpening(): boolean {
    return this.opened;
  }
  /** `opens` is a section, a side or a subject, after which no mark is needed. */
  write(word: string, opens = false): void {
    this.opened = opens && (this.text === '' || this.opened);
    if (this.text !== '' && !this.text.endsWith('(')) this.text += `${this.pending} `;
    this.text += word;
    this.pending = '';
  }
  /** Text that is written as it was said, once. */
  keep(line: string, { start, end }: Span): void {
    if (start < this.keptTo) return;
    this.write(line.slice(start, end).replace(/\s+/g, ' '));
    this.keptTo = end;
  }
  mark(mark: string): void {
    if (mark === '\n') this.newLine();
    else if (mark === ',' || mark === ';')
      this.pending = this.text === '' || this.opened ? '' : this.pending === ';' ? ';' : mark;
    else if (mark === ')' || mark === ':' || mark === '=') this.text += mark;
    else this.write(mark);
  }
  strike(text: string): void {
    const said = text
      .toLowerCase()
      .replace(/[\s,]+/g, ' ')
      .trim();
    if (!CORRECTIONS.includes(said) && /[\p{L}\d]/u.test(said)) this.struck.push(text);
  }
  newLine(): void {
    if (this.text !== '') this.lines.push({ text: this.text, struck: this.struck });
    this.text = '';
    this.opened = false;
    this.pending = '';
    this.struck = [];
  }
  finish(): Written[] {
    if (this.comment !== undefined) this.text = this.text === '' ? this.comment : `${this.text}  ${this.comment}`;
    const [last] = this.lines.slice(-1);
    if (this.text === '' && last && this.struck.length > 0)
      this.lines[this.lines.length - 1] = { ...last, struck: [...last.struck, ...this.struck] };
    this.newLine();
    return this.lines;
  }
}
