import { SECTION_WORD } from '../../../grammar/lexicon/closed-words.ts';
import { subjectText } from '../../../grammar/reader/read-subjects.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Span } from '../../../grammar/values.ts';
import type { Cut } from './cuts.ts';
import type { Desk } from './desk.ts';
import { isBreak, type SaidWord } from './retell/said-words.ts';
import { isNeutral } from './retell/turning.ts';

/** A stretch of a dictated line: as it was said, or the lines that are proposed for it. */
export type Piece =
  | { readonly is: 'said'; readonly line: LineSyntax }
  | { readonly is: 'proposed'; readonly lines: readonly string[] };

/** The line parted at its cuts. What stays keeps its words; with `withPlace` it is given the section, side and ray that were said before it. */
export function piecesOf(desk: Desk, line: LineSyntax, cuts: readonly Cut[], withPlace: boolean): Piece[] {
  if (cuts.length === 0) return [{ is: 'said', line }];
  const ordered = [...cuts].sort((a, b) => a.start - b.start);
  const words = desk.words(line);
  const pieces: Piece[] = [];
  const waiting: Cut[] = [];
  const propose = (span: Span, texts: readonly string[]) =>
    pieces.push({ is: 'proposed', lines: proposedLines(desk, line, trimBreaks(words, span), texts) });
  const keep = (start: number, end: number): boolean => {
    const kept = trimmed(words, { start, end });
    if (kept) pieces.push(saidPiece(desk, line, kept, withPlace));
    // The words of these stay in the piece, among their neighbours.
    for (const cut of waiting.splice(0)) propose(cut, cut.texts);
    return kept !== undefined;
  };
  let from = 0;
  for (const cut of ordered) {
    if (cut.stays) {
      waiting.push(cut);
      continue;
    }
    // What only names a place, or joins, goes with the words that it stood before.
    const start = keep(from, cut.start) ? cut.start : Math.min(from, cut.start);
    propose({ start, end: cut.end }, cut.texts);
    from = cut.end;
  }
  const comment = line.roles.find(({ kind }) => kind === 'comment');
  keep(from, line.text.length);
  if (comment) pieces.push({ is: 'said', line: desk.read(line.text.slice(comment.start, comment.end)) });
  return pieces;
}

const within = (words: readonly SaidWord[], { start, end }: Span): SaidWord[] =>
  words.filter((word) => start <= word.start && word.end <= end);

/** The span from the first to the last word that is no break. */
function trimBreaks(words: readonly SaidWord[], span: Span): Span {
  const own = within(words, span).filter((word) => !isBreak(word));
  return { start: own[0]?.start ?? span.start, end: own.at(-1)?.end ?? span.end };
}
/** The same; nothing where only words are left that join, or name a place. */
function trimmed(words: readonly SaidWord[], span: Span): Span | undefined {
  const own = within(words, span).filter((word) => !isBreak(word));
  return own.length === 0 || isNeutral(own.map(({ text }) => text)) ? undefined : trimBreaks(words, span);
}

function saidPiece(desk: Desk, line: LineSyntax, { start, end }: Span, withPlace: boolean): Piece {
  const place = withPlace ? placeBefore(line, { start, end }) : '';
  return { is: 'said', line: desk.read(`${place}${line.text.slice(start, end)}`) };
}

/** The section, side and subject that were said before a stretch for the first clear finding in it. */
function placeBefore({ statements, roles }: LineSyntax, { start, end }: Span): string {
  const findings = statements.flatMap((each) => each.findings);
  const first = findings.find((each) => each.start >= start && each.end <= end && each.causes.length === 0);
  if (!first) return '';
  const opened = roles.some((role) => role.kind === 'keyword' && start <= role.start && role.start < first.word.start);
  const sided = roles.some(
    (role) =>
      role.kind === 'modifier' && role.finding === undefined && start <= role.start && role.start < first.word.start,
  );
  const parts = [
    first.section === 'exam' || opened ? '' : SECTION_WORD[first.section],
    first.side && first.side !== 'both' && !sided ? first.side : '',
    first.subject && first.subject.start < start
      ? subjectText({ ...first.subject, ...(first.side ? { side: undefined } : {}) } as typeof first.subject)
      : '',
  ];
  return parts
    .filter((part) => part !== '')
    .map((part) => `${part} `)
    .join('');
}

function proposedLines(desk: Desk, { text }: LineSyntax, { start, end }: Span, texts: readonly string[]): string[] {
  const said = text.slice(start, end).replace(/\s+/g, ' ');
  return texts.map(desk.canonical).map((each, i) => `proposed ${each}${i === 0 ? `  // ${said}` : ''}`);
}
