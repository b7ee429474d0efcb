import { RED_FLAG_WORDS } from '../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../grammar/lexicon/entry.ts';
import { HEARD_AS } from '../../grammar/spoken/spoken-words.ts';
import type { LineSyntax, ReadingCode, ReadingProblem } from '../../grammar/syntax.ts';
import type { Report, Severity } from './analysis.ts';
import { dayOf } from './dates.ts';
import type { Place, VisitFacts } from './facts.ts';

type AllowCode = 'unused-allow' | 'allow-without-reason';

interface Message {
  readonly severity: Severity;
  /** Stories are kept as typed; in these sections that is nothing to warn of. */
  readonly quietIn?: readonly Section[];
  /** `opener` is the first word of the line. */
  readonly text: (words: string, opener: string) => string;
}
const STORIES: readonly Section[] = ['history', 'pain', 'tried', 'plan'];

const HEADER_ADVICE: Readonly<Record<string, string>> = {
  forefoot: 'The language has version 1: write forefoot 1',
  patient: 'After patient stands one pseudonym, such as KM-207, never a name; then born 1971, female or male',
};
/** The spaces that `web 2-3` may be, in its own numbers. */
export function websMeant(words: string): string {
  const [low, high] = words.match(/\d/g) ?? ['2', '3'];
  return `${Number(high) === Number(low) + 1 ? `web ${low}, or ` : ''}webs ${low}-${high}`;
}
/** Why a date is not read, and what to do. */
export function dateFault(words: string): string {
  const numbers = words.match(/\d+/g) ?? [];
  const [low = 0, high = 0] = (numbers[0]?.length === 4 ? numbers.slice(1) : numbers.slice(0, 2))
    .map(Number)
    .sort((a, b) => a - b);
  if (numbers.length < 3) return 'lacks its year: write the whole date, such as 2026-05-31';
  // No year has a thirteenth month; two numbers up to twelve are a day either way.
  const year = numbers.find(({ length }) => length === 4) ?? `20${numbers[2]}`;
  const iso = `${year}-${String(low).padStart(2, '0')}-${String(high).padStart(2, '0')}`;
  return dayOf(iso) === undefined || (numbers[0] === year && Number(numbers[1]) > 12)
    ? 'is no day of the calendar: correct it'
    : `${high > 12 ? "isn't written with its year first" : 'may be read as two dates'}: write it such as 2026-05-31`;
}
/** What the reader itself reports: code, severity and words, in one table. */
export const READING_MESSAGES: Readonly<Record<ReadingCode | AllowCode, Message>> = {
  'unknown-word': {
    severity: 'contradiction',
    quietIn: STORIES,
    text: (words) =>
      `"${words}" isn't understood and is kept as typed. Put it in quotes, or use a word of the language.`,
  },
  'word-out-of-place': {
    severity: 'contradiction',
    quietIn: STORIES,
    text: (words) => `"${words}" has no place here and is kept as typed. Put it beside its finding or in its section.`,
  },
  'number-without-place': {
    severity: 'contradiction',
    quietIn: STORIES,
    text: (words) => `"${words}" belongs to no finding here and is kept as typed. Name the finding before it.`,
  },
  'unread-red-flag': {
    severity: 'contradiction',
    text: (words) => `"${words}" may be a red flag and was not understood here. Say it as a finding, or act on it.`,
  },
  'open-quote': {
    severity: 'contradiction',
    text: () => 'The quote has no end on this line. Close it with a quotation mark.',
  },
  'ambiguous-date': {
    severity: 'contradiction',
    text: (words) => `"${words}" ${dateFault(words)}. It is not read.`,
  },
  'ambiguous-web': {
    severity: 'contradiction',
    text: (words) => `"${words}" may be one space or two. Write ${websMeant(words)}.`,
  },
  'heard-number': {
    severity: 'style',
    text: (words) =>
      `"${words}" is read as the number ${HEARD_AS[words.toLowerCase()]}, since only a number fits here. Write the digit if that is right.`,
  },
  'bad-header': {
    severity: 'contradiction',
    text: (words, opener) =>
      `"${words}" isn't understood on this line. ${HEADER_ADVICE[opener] ?? 'Check the word or the date'}.`,
  },
  'bad-signer': {
    severity: 'contradiction',
    text: (words) =>
      `"${words}" doesn't say who signs: write initials in capitals or a role, such as AB or surgeon. A full name does not belong in a note.`,
  },
  'unknown-code': {
    severity: 'contradiction',
    text: (words) => `No report has the code "${words}". Check its spelling.`,
  },
  'unused-allow': {
    severity: 'style',
    text: (words) => `Nothing is hidden by "allow ${words}" here. Remove the line.`,
  },
  'allow-without-reason': {
    severity: 'missing',
    text: (words) => `"allow ${words}" needs a reason after the code, and hides nothing without one.`,
  },
};

export function readingReport(
  code: ReadingCode | AllowCode,
  words: string,
  place: Place,
  section?: Section,
  opener = '',
): Report {
  const { severity, quietIn, text } = READING_MESSAGES[code];
  const quiet = section !== undefined && quietIn?.includes(section);
  return {
    code,
    severity: quiet ? 'missing' : severity,
    place,
    message: text(words, opener),
    related: [],
    fixes: [],
  };
}

/**
 * The reports of the reader for the lines of a visit or of the header. A word that makes a finding unclear is reported
 * there, with the finding that it costs, and not a second time.
 */
export function readingReports(lines: readonly LineSyntax[], visit?: VisitFacts): Report[] {
  const told = new Set((visit?.unclear ?? []).map(({ place }) => `${place.line}:${place.start}`));
  const reports: Report[] = [];
  lines.forEach((each, line) => {
    if (each.problems.length === 0) return;
    const own = each.problems.filter(({ code, start }) => code === 'unread-red-flag' || !told.has(`${line}:${start}`));
    for (const { code, text, section, ...at } of inRuns(each, own))
      reports.push(readingReport(code, text, { line, ...span(at) }, section, each.roles[0]?.canonical));
  });
  return reports;
}

/** Words that nothing takes. Side by side they are one remark to the reader, and one report. */
const UNREAD: ReadonlySet<string> = new Set(['unknown-word', 'word-out-of-place', 'number-without-place']);
function inRuns({ text: line }: LineSyntax, problems: readonly ReadingProblem[]): ReadingProblem[] {
  const runs: ReadingProblem[] = [];
  for (const problem of problems) {
    const last = runs.at(-1);
    const joins = last && UNREAD.has(last.code) && UNREAD.has(problem.code);
    if (!joins || line.slice(last.end, problem.start).trim() !== '') runs.push(problem);
    else {
      const { start } = last;
      const { end } = problem;
      runs[runs.length - 1] = { ...last, code: 'unknown-word', text: line.slice(start, end), start, end };
    }
  }
  return runs;
}
const span = ({ start, end }: { start: number; end: number }) => ({ start, end });

const RED_FLAG = new RegExp(`(?<![\\p{L}\\d])(?:${RED_FLAG_WORDS.join('|')})(?![\\p{L}\\d])`, 'giu');

/** Does the visit hold a red-flag word that is kept as typed? A quoted remark is the clinician's own and is none. */
export const hasUnreadRedFlag = ({ verbatim }: VisitFacts): boolean =>
  verbatim.some(({ quote, text }) => !quote && text.search(RED_FLAG) >= 0);

/**
 * A red-flag word in a finding that the line reads and the visit leaves without subject or side is unread as well; so is one that is only proposed,
 * unless it is denied.
 */
export function unreadRedFlags(visit: VisitFacts, lines: readonly LineSyntax[]): Report[] {
  const found = new Map<string, Report>();
  for (const { place, proposed } of visit.lifecycle?.carried ?? []) {
    const read = lines[place.line];
    if (!proposed || !read) continue;
    for (const { status, causes, start, end } of read.statements.flatMap(({ findings }) => findings)) {
      if (status === 'absent' && causes.length === 0) continue;
      for (const match of read.text.slice(start, end).matchAll(RED_FLAG)) {
        const from = start + match.index;
        const at = { line: place.line, start: from, end: from + match[0].length };
        const known = read.problems.some((problem) => problem.code === 'unread-red-flag' && problem.start === from);
        if (!known) found.set(`${place.line}:${from}`, readingReport('unread-red-flag', match[0], at));
      }
    }
  }
  for (const { causes, origin } of visit.facts) {
    if (causes.length === 0 || !causes.some(({ why }) => why === 'no subject' || why === 'no side')) continue;
    const { line, start, end } = origin.place;
    for (const match of (lines[line]?.text.slice(start, end) ?? '').matchAll(RED_FLAG)) {
      const from = start + match.index;
      const at = { line, start: from, end: from + match[0].length };
      const read = lines[line]?.problems.some(
        (problem) => problem.code === 'unread-red-flag' && problem.start === from,
      );
      if (!read) found.set(`${line}:${from}`, readingReport('unread-red-flag', match[0], at));
    }
  }
  return [...found.values()];
}
