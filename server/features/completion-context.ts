import { SECTION_WORDS } from '../../grammar/lexicon/closed-words.ts';
import type { Section, SubjectKind } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import { readLine } from '../../grammar/read-line.ts';
import { sectionBelow } from '../../grammar/reader/inherited.ts';
import type { LineSyntax, Role, SectionHeading, SubjectNode } from '../../grammar/syntax.ts';
import type { DrawerScale } from '../../grammar/values.ts';
import { isoDayOf } from '../clinical/episode.ts';
import type { Note } from '../workspace/note.ts';

/** What stands before the word that is being completed. */
export interface CompletionContext {
  readonly before: string;
  /** The section heading above the line. */
  readonly under?: SectionHeading;
  /** The words of a header line before the cursor; missing in a statement. */
  readonly header?: string;
  readonly inHeader: boolean;
  /** `carried` or `examiner`, where the cursor stands right behind it. */
  readonly prefix?: string | undefined;
  /** Who examined, or from when findings were carried, is said, and no statement yet. */
  readonly behindPrefix: boolean;
  /** The dates of the visits before this one, the last first. */
  readonly earlier: readonly string[];
  readonly lineStart: boolean;
  /** A comma, a semicolon, a subject or a section stands right before. */
  readonly segmentStart: boolean;
  readonly section: Section;
  readonly subject?: SubjectKind;
  /** The finding whose slots are open, and the slots that have their value. */
  readonly finding?: { readonly id: FindingId; readonly filled: ReadonlySet<string> };
  /** Findings that the line has stated already. */
  readonly stated: ReadonlySet<FindingId>;
  readonly scale?: DrawerScale;
  readonly today: string;
  /** The codes reported here, which `allow` may name. */
  readonly codes: readonly string[];
}

/** `undefined` inside a comment or a quote, where nothing is completed. */
export function contextOf(note: Note, line: number, before: string): CompletionContext | undefined {
  const syntax = readLine(before, note.line(line)?.under);
  const last = syntax.roles.at(-1);
  if (last?.kind === 'comment' || isOpenQuote(before, last)) return undefined;
  const index = note.indexAt(line);
  const { drawerScale } = note.header;
  const prefix = /^\s*(carried|proposed|examiner)(?:\s+from)?\s+$/i.exec(before)?.[1]?.toLowerCase();
  return {
    before,
    ...(prefix ? { prefix } : {}),
    behindPrefix: syntax.statements.length === 0 && (syntax.carried ?? syntax.examiner) !== undefined,
    earlier: prefix ? datesBefore(note, index) : [],
    ...(syntax.under ? { under: syntax.under } : {}),
    ...(syntax.kind === 'header' || /^\s*event\s+$/i.test(before)
      ? { header: before.trim().split(/\s+/)[0]?.toLowerCase() ?? '' }
      : {}),
    inHeader: index === 0,
    lineStart: before.trim() === '',
    segmentStart: last === undefined || ['punctuation', 'subject', 'keyword'].includes(last.kind),
    ...statementContext(syntax, note, line),
    ...(drawerScale ? { scale: drawerScale } : {}),
    today: note.today,
    codes: [...new Set(note.reports(index).flatMap(({ code, severity }) => (severity === 'danger' ? [] : [code])))],
  };
}

function datesBefore(note: Note, index: number): string[] {
  const visits = Array.from({ length: index }, (_, each) => note.visit(index - 1 - each)?.analysis.facts);
  const days = visits.flatMap((facts) => (facts?.date ? isoDayOf(facts) : []));
  return [...new Set(days)].slice(0, OFFERED);
}
/** Nobody carries findings over from further back. */
const OFFERED = 5;

const isOpenQuote = (before: string, last: Role | undefined): boolean =>
  last?.kind === 'verbatim' && last.end === before.length && !/["”]$/.test(before.slice(last.start + 1));

function statementContext(
  { roles, text, under }: LineSyntax,
  note: Note,
  line: number,
): Pick<CompletionContext, 'section' | 'subject' | 'finding' | 'stated'> {
  const of = (role: Role) => text.slice(role.start, role.end);
  const keyword = roles.findLast((role) => role.kind === 'keyword' && role.canonical !== undefined);
  const section = (keyword && SECTION_WORDS[keyword.canonical ?? '']?.section) ?? sectionBelow(under);
  const subject =
    kindOf(
      roles.findLast(({ kind }) => kind === 'subject'),
      text,
    ) ?? headingKind(note, line);
  const stated = new Set(roles.flatMap(({ kind, finding }) => (kind === 'finding' && finding ? [finding] : [])));
  const at = roles.findLastIndex(({ kind }) => kind === 'finding');
  const id = roles[at]?.finding;
  const after = roles.slice(at + 1);
  const closed = after.some(
    (role) => (role.kind === 'punctuation' && /[,;.]/.test(of(role))) || role.kind === 'modifier',
  );
  const base = { section, stated, ...(subject ? { subject } : {}) };
  if (!id || closed) return base;
  const filled = new Set(after.flatMap(({ kind, slot }) => (kind === 'value' && slot ? [slot] : [])));
  return { ...base, finding: { id, filled } };
}

function kindOf(role: Role | undefined, text: string): SubjectKind | undefined {
  if (!role) return undefined;
  return /^(web|space)/i.test(role.canonical ?? text.slice(role.start, role.end)) ? 'web' : 'ray';
}

/** A heading's subject holds down to the next heading or visit. */
function headingKind(note: Note, line: number): SubjectKind | undefined {
  const index = note.indexAt(line);
  const lines = note.block(index).slice(0, line - note.firstLine(index));
  const heading = lines.findLast((each) => each.heading)?.heading;
  const subject: SubjectNode | undefined = heading?.inline ? undefined : heading?.subject;
  return subject && (subject.at === 'webs' ? 'web' : 'ray');
}
