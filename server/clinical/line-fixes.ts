import type { Section } from '../../grammar/lexicon/entry.ts';
import { entryOf } from '../../grammar/lexicon/index.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Span } from '../../grammar/values.ts';
import type { Fix, Report, SyntaxEdit } from './analysis.ts';
import type { Place, Verbatim, VisitFacts } from './facts.ts';
import { deniedOrNot, oneOfTwo } from './meaning-fixes.ts';
import { remarksOf } from './remark-fixes.ts';
import { replace } from './rules/define-rule.ts';
import { nameSection, nameSectionOfLine, splitAt, subjectNamer } from './word-fixes.ts';

/** Reports of words that could not be read, or of findings that are unclear by them. */
const UNREAD: ReadonlySet<string> = new Set([
  'unknown-word',
  'word-out-of-place',
  'number-without-place',
  'unread-red-flag',
  'ambiguous-date',
  'ambiguous-web',
  'unclear-finding',
]);
const STORY: ReadonlySet<Section> = new Set(['exam', 'history', 'pain', 'tried', 'stand']);

/**
 * What may be done with unread words, and with their whole line, for each report of a visit. Made when somebody asks, since
 * a note that is being typed has many such words and most are gone a moment later. Every fix needs review.
 */
export function unreadFixes(lines: readonly LineSyntax[], visit: VisitFacts): (report: Report) => readonly Fix[] {
  const whole = new Map<number, Fix[]>();
  const nameSubject = subjectNamer(lines, visit);
  return (report) => {
    const at = report.place.line;
    const line = lines[at];
    if (!UNREAD.has(report.code) || line?.kind !== 'statements') return [];
    const ofLine = whole.get(at) ?? [...nameSectionOfLine(line, at), ...wholeLine(line, at, visit)];
    whole.set(at, ofLine);
    const own = [
      nameSubject(report),
      ...wordsOf(line, report).flatMap((each) => nameSection(line, each)),
      splitAt(line, report),
      ...oneOfTwo(line, report),
      ...deniedOrNot(line, report),
    ];
    return [...own.filter((fix) => fix !== undefined), ...ofLine];
  };
}

/** The words of a run that is reported as one, each as a report of its own. */
function wordsOf({ problems }: LineSyntax, report: Report): Report[] {
  const { line, start, end } = report.place;
  const inside = problems.filter((each) => start <= each.start && each.end <= end && UNREAD.has(each.code));
  if (inside.length < 2) return [report];
  return inside.map((each) => ({ ...report, code: each.code, place: { line, start: each.start, end: each.end } }));
}

export const QUOTE_UNREAD = "Keep what isn't understood on this line as quoted remarks";

/** What can be done with all unread words of a line at once; the reports of the line share these fixes. */
function wholeLine(line: LineSyntax, at: number, visit: VisitFacts): Fix[] {
  const { verbatim, facts } = visit;
  const clear = new Set(
    facts.flatMap(({ clarity, origin: { place } }) => (clarity === 'clear' && place.line === at ? [place.start] : [])),
  );
  const read = line.statements.flatMap(({ findings }) => findings).filter(({ start }) => clear.has(start));
  // A run that holds a clear finding, or the ray of one, would take it with it.
  const holdsFact = ({ start, end }: Place) =>
    read.some((each) => [each, each.subject].some((part) => part && start <= part.start && part.end <= end));
  // So would a run that opens the section of one (`pain 5 sport. no night pain`).
  const opensFor = ({ start, end }: Place) => {
    const opened = line.statements.find((each) => start <= each.start && each.start < end);
    return (
      opened !== undefined &&
      read.some(
        (each) =>
          each.start > end &&
          each.section !== 'exam' &&
          each.section === opened.section &&
          !line.roles.some(({ kind, start: from }) => kind === 'keyword' && end <= from && from < each.start),
      )
    );
  };
  const values = read.flatMap(({ slots }) => Object.values(slots));
  const runs = verbatim
    .filter(({ place, quote }) => place.line === at && !quote && !holdsFact(place) && !opensFor(place))
    .flatMap((run) => around(line.text, run, values));
  const rest = readTheRest(line, at, visit, runs);
  // A line of which something is read stays what it is.
  const story = read.length > 0 ? [] : keepAsHistory(line, at);
  if (runs.length === 0) return [...rest, ...story];
  const edits = runs.map(({ place }) => wholeRun(line, place));
  return [...rest, { title: quoteTitle(line, runs), safety: 'needs review', edits }, ...story];
}

/** Findings that are unclear go with the words that make them so, and the title names them. */
function quoteTitle({ statements }: LineSyntax, runs: readonly Verbatim[]): string {
  const findings = statements.flatMap((each) => each.findings);
  const lost = findings.filter(({ word }) =>
    runs.some(({ place }) => place.start <= word.start && word.end <= place.end),
  );
  const names = [...new Set(lost.map(({ id }) => (id === 'panel' ? 'normal' : entryOf(id).word)))];
  return names.length === 0
    ? QUOTE_UNREAD
    : `Keep as quoted remarks what isn't certain on this line, ${names.join(', ')} with it`;
}

/** The parts of a run beside the values of what was read (`pain of the left foot for 5 months zzq`). */
function around(text: string, run: Verbatim, values: readonly Span[]): Verbatim[] {
  const inside = values
    .filter(({ start, end }) => run.place.start <= start && end <= run.place.end)
    .sort((a, b) => a.start - b.start);
  if (inside.length === 0) return [run];
  const ends = [...inside.map(({ start }) => start), run.place.end];
  return [run.place.start, ...inside.map(({ end }) => end)].flatMap((from, i): Verbatim[] => {
    const part = text.slice(from, ends[i]);
    const start = from + part.length - part.trimStart().length;
    const end = start + part.trim().length;
    return /[\p{L}\d]/u.test(part) ? [{ ...run, text: part.trim(), place: { ...run.place, start, end } }] : [];
  });
}

function wholeRun(line: LineSyntax, place: Place): SyntaxEdit {
  const start = withSubject(line, place.start);
  return replace({ ...place, start }, quoted(line.text.slice(start, place.end)));
}

/**
 * Where nothing but plain words makes a finding unclear, the words become its remarks and the finding is read: whether it says what was
 * meant is for the clinician to see. What is unclear for another reason is quoted whole.
 */
function readTheRest(line: LineSyntax, at: number, visit: VisitFacts, whole: readonly Verbatim[]): Fix[] {
  const runs = visit.verbatim.filter(({ place, quote }) => place.line === at && !quote);
  const remarks = runs.map(({ place }) => remarksOf(line, place, visit));
  if (remarks.every((each) => each === undefined)) return [];
  const edits = runs.flatMap((run, i): SyntaxEdit[] => {
    const words = remarks[i];
    if (!words) return whole.includes(run) ? [wholeRun(line, run.place)] : [];
    return words.map((span) => replace({ line: at, ...span }, quoted(line.text.slice(span.start, span.end))));
  });
  return [
    { title: 'Read the findings, and keep the other words of this line as remarks', safety: 'needs review', edits },
  ];
}

/** A ray after a comma of which nothing else was read (`drawer R 2nd 1+, L 2nd 0`) is quoted with its words; alone it would be of the finding before. */
function withSubject({ text, roles }: LineSyntax, start: number): number {
  let from = start;
  for (const role of roles.toReversed()) {
    if (role.end > start) continue;
    if (role.kind === 'punctuation') return text.charAt(role.start) === ',' ? from : start;
    if (role.kind !== 'subject' && role.kind !== 'modifier') return start;
    from = role.start;
  }
  return start;
}

/** The line as typed, as a quoted statement of the history; its comment stays where it is. */
function keepAsHistory({ text, statements, roles }: LineSyntax, at: number): Fix[] {
  if (statements.some(({ section }) => !STORY.has(section))) return [];
  const end = text.slice(0, roles.find(({ kind }) => kind === 'comment')?.start).trimEnd().length;
  const [first] = roles;
  const keyword = first?.kind === 'keyword' && first.canonical === 'history' ? first.end : 0;
  const rest = text.slice(keyword);
  const start = keyword + rest.length - rest.trimStart().length;
  if (start >= end) return [];
  const place = { line: at, start, end };
  const edits = [replace(place, `${keyword > 0 ? '' : 'history '}${quoted(text.slice(start, end))}`)];
  return [{ title: 'Keep this line as history, as typed', safety: 'needs review', edits }];
}

/** Quoted so that the quote ends where the text does, whatever marks the text holds. */
function quoted(text: string): string {
  if (!text.includes('"')) return `"${text}"`;
  return text.includes('”') ? `"${text.replaceAll('"', "'")}"` : `“${text}”`;
}
