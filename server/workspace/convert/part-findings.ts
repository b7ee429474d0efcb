import { FILLERS, LIST_ENDERS } from '../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../grammar/lexicon/entry.ts';
import { subjectText } from '../../../grammar/reader/read-subjects.ts';
import type { LineReader } from '../../../grammar/remembering-reader.ts';
import { CONNECTIVES, EMPHASIS } from '../../../grammar/spoken/spoken-words.ts';
import type { LineSyntax, Role } from '../../../grammar/syntax.ts';

const JOINING: readonly string[] = [...FILLERS, ...LIST_ENDERS, ...CONNECTIVES, ...EMPHASIS];
const TREATED: readonly Section[] = ['tried', 'plan', 'operation'];

/** The line with a break between clear findings that follow each other (`swelling mild drawer 2`), for the eye, wherever it changes no finding. */
export function partFindings(line: LineSyntax, read: LineReader): LineSyntax {
  return parted(line, breaksFor(line), read);
}

interface Break {
  readonly at: number;
  readonly mark: string;
}
/** All of them at once, or else each half by itself. */
function parted(line: LineSyntax, breaks: readonly Break[], read: LineReader): LineSyntax {
  if (breaks.length === 0) return line;
  const put = (text: string, { at, mark }: Break) => `${text.slice(0, at)}${mark} ${text.slice(at)}`;
  const tried = read(breaks.reduceRight(put, line.text));
  if (meaningOf(tried) === meaningOf(line)) return tried;
  if (breaks.length === 1) return line;
  const half = breaks.length >> 1;
  return parted(parted(line, breaks.slice(half), read), breaks.slice(0, half), read);
}
const meaningOf = ({ statements }: LineSyntax): string =>
  JSON.stringify(
    statements.flatMap(({ findings }) =>
      findings.map(({ id, section, status, side, subject, slots, causes }) => [
        id,
        section,
        status,
        side,
        subject && subjectText(subject),
        Object.entries(slots).map(([slot, each]) => [slot, each.value, each.causes.length]),
        causes.length,
      ]),
    ),
  );

function breaksFor(line: LineSyntax): Break[] {
  const found = line.statements.flatMap(({ findings }) => findings);
  return found.flatMap((right, i): Break[] => {
    const left = found[i - 1];
    if (!left || left.segment !== right.segment || left.causes.length > 0 || right.causes.length > 0) return [];
    const between = line.roles.filter(({ start, end }) => start >= left.word.end && end <= right.start);
    if (between.some(({ kind }) => kind === 'reported' || kind === 'punctuation' || kind === 'keyword')) return [];
    const { subject } = right;
    const leads = subject && subject.start < right.start && subject.start > left.word.end;
    const at = startBefore(line, leads ? subject.start : right.start);
    return [{ at, mark: TREATED.includes(right.section) ? ';' : ',' }];
  });
}

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
const textOf = ({ text }: LineSyntax, role: Role): string => text.slice(role.start, role.end).toLowerCase();
