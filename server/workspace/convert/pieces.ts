import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Span } from '../../../grammar/values.ts';
import type { Cut } from './cuts.ts';
import type { Desk } from './desk.ts';
import { type Alone, placeBefore } from './places-said.ts';
import { isBreak, type SaidWord } from './retell/said-words.ts';
import { isNeutral } from './retell/turning.ts';

/** A stretch of a dictated line: as it was said, or the lines that are proposed for it. */
export type Piece = ({ readonly is: 'said' } & Alone) | { readonly is: 'proposed'; readonly lines: readonly string[] };

/** The line parted at its cuts. What stays keeps its words, after the section, side and ray that were said before it where it has lost them. */
export function piecesOf(desk: Desk, line: LineSyntax, cuts: readonly Cut[]): Piece[] {
  if (cuts.length === 0) return [{ is: 'said', line, start: 0, before: 0 }];
  const ordered = [...cuts].sort((a, b) => a.start - b.start);
  const words = desk.words(line);
  const pieces: Piece[] = [];
  const waiting: Cut[] = [];
  const propose = (span: Span, texts: readonly string[]) =>
    pieces.push({ is: 'proposed', lines: proposedLines(desk, line, trimBreaks(words, span), texts) });
  const keep = (start: number, end: number): boolean => {
    const kept = trimmed(words, { start, end });
    if (kept) pieces.push(saidPiece(desk, line, kept));
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
  if (comment) {
    const own = desk.read(line.text.slice(comment.start, comment.end));
    pieces.push({ is: 'said', line: own, start: comment.start, before: 0 });
  }
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

function saidPiece(desk: Desk, line: LineSyntax, { start, end }: Span): Piece {
  const own = line.text.slice(start, end);
  const place = placeBefore(line, desk.read(own), { start, end });
  return { is: 'said', line: desk.read(`${place}${own}`), start, before: place.length };
}

function proposedLines(desk: Desk, { text }: LineSyntax, { start, end }: Span, texts: readonly string[]): string[] {
  const said = text.slice(start, end).replace(/\s+/g, ' ');
  return texts.map(desk.canonical).map((each, i) => `proposed ${each}${i === 0 ? `  // ${said}` : ''}`);
}
