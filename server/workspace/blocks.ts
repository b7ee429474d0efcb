import { opensVisit } from '../../grammar/read-line.ts';
import { reachesBelow, readBelow } from '../../grammar/reader/section-heading.ts';
import { type LineReader, placed } from '../../grammar/remembering-reader.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';

/** Zero-based; characters are UTF-16 units, as in the protocol. */
export interface Position {
  readonly line: number;
  readonly character: number;
}
export interface Range {
  readonly start: Position;
  readonly end: Position;
}

/** The lines of the header, or of one visit. Never altered: a changed block is a new one, so identity is a key. */
export type Block = readonly LineSyntax[];

/** Which blocks an edit replaced. */
export interface BlockChange {
  readonly at: number;
  readonly removed: number;
  readonly inserted: number;
}

/** A document's text ends lines with `\n`, `\r\n` or `\r`; each is one line end. */
export const splitLines = (text: string): string[] => text.split(/\r\n|\n|\r/);

/**
 * The text of a note as blocks of lines: block 0 is the header (possibly empty), then one block a visit. An edit costs
 * what the blocks that it touches cost, and one sum a block after it; the text is never one string.
 */
export class Blocks {
  private blocks: Block[];
  private firsts: Int32Array;
  private readonly read: LineReader;

  constructor(text: string, read: LineReader) {
    this.read = read;
    const lines = sharing(splitLines(text), read);
    this.blocks = cut(lines, (index) => opensVisit(lines[index]?.text ?? ''), true);
    this.firsts = new Int32Array(this.blocks.length + 1);
    this.sumFrom(0);
  }

  get count(): number {
    return this.blocks.length;
  }
  get lineCount(): number {
    return this.firsts[this.blocks.length] ?? 0;
  }
  block(index: number): Block {
    return this.blocks[index] ?? [];
  }
  firstLine(index: number): number {
    return this.firsts[index] ?? this.lineCount;
  }
  /** The block that holds a line; the last block for a line beyond the end. */
  indexAt(line: number): number {
    let low = 0;
    let high = this.blocks.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.firstLine(middle) <= line) low = middle;
      else high = middle - 1;
    }
    return low;
  }
  line(line: number): LineSyntax | undefined {
    const index = this.indexAt(line);
    return this.block(index)[line - this.firstLine(index)];
  }
  text(lineEnd: string): string {
    return this.blocks.flatMap((block) => block.map(({ text }) => text)).join(lineEnd);
  }

  /** Replaces a range by text. Positions outside the text are moved to its nearest place. */
  splice(range: Range, text: string): BlockChange {
    const [start, end] = ordered(this.within(range.start), this.within(range.end));
    const first = this.indexAt(start.line);
    const last = this.indexAt(end.line);
    const above = this.block(first).slice(0, start.line - this.firstLine(first));
    const rest = this.block(last).slice(end.line - this.firstLine(last) + 1);
    const before = this.line(start.line)?.text.slice(0, start.character) ?? '';
    const after = this.line(end.line)?.text.slice(end.character) ?? '';
    const line = start.line > 0 ? this.line(start.line - 1) : undefined;
    const fresh = readBelow(splitLines(before + text + after), this.read, line);
    const below = this.underAgain(rest, fresh.at(-1));
    const opens = above.length > 0 ? first > 0 : opensVisit(fresh[0]?.text ?? '');
    const joins = first > 0 && !opens;
    const at = joins ? first - 1 : first;
    const kept = joins ? this.block(at).concat(above) : above;
    const blocks = cut(
      kept.concat(fresh, below),
      (index) =>
        index < kept.length
          ? index === 0 && at > 0
          : index < kept.length + fresh.length && opensVisit(fresh[index - kept.length]?.text ?? ''),
      at === 0,
    );
    const removed = last - at + 1;
    this.blocks = replaced(this.blocks, at, removed, blocks);
    this.sumFrom(at, removed === blocks.length ? at + removed : undefined);
    return { at, removed, inserted: blocks.length };
  }

  /** The lines below an edit, read again as far as another section heading reaches them than did. */
  private underAgain(lines: readonly LineSyntax[], above: LineSyntax | undefined): readonly LineSyntax[] {
    const changed: LineSyntax[] = [];
    for (const line of lines) {
      const under = reachesBelow(changed.at(-1) ?? above);
      if (line.under === under) break;
      changed.push(this.read(line.text, under));
    }
    return changed.length > 0 ? changed.concat(lines.slice(changed.length)) : lines;
  }

  private within({ line, character }: Position): Position {
    if (line < 0) return { line: 0, character: 0 };
    const last = this.lineCount - 1;
    if (line > last) return { line: last, character: this.line(last)?.text.length ?? 0 };
    return { line, character: Math.max(0, Math.min(character, this.line(line)?.text.length ?? 0)) };
  }

  /** Blocks from `same` on are those that were there: once one starts where it did, so do all after it. */
  private sumFrom(at: number, same = Number.POSITIVE_INFINITY): void {
    const { blocks } = this;
    if (this.firsts.length < blocks.length + 1) {
      const longer = new Int32Array((blocks.length + 1) * 2);
      longer.set(this.firsts);
      this.firsts = longer;
    }
    for (let index = at; index < blocks.length; index++) {
      const next = (this.firsts[index] ?? 0) + this.block(index).length;
      if (index + 1 >= same && next === this.firsts[index + 1]) return;
      this.firsts[index + 1] = next;
    }
  }
}

/** Equal lines of a text are read once. Unlike the reader's memory, this one needs no limit: the blocks hold every line anyway. */
function sharing(texts: readonly string[], read: LineReader): LineSyntax[] {
  const known = new Map<string, LineSyntax>();
  return readBelow(texts, (text, under) => {
    const key = placed(text, under);
    const syntax = known.get(key) ?? read(text, under);
    known.set(key, syntax);
    return syntax;
  });
}

/** Cuts lines before each one that opens a visit. With a header, the first piece holds what stands before any visit. */
function cut(lines: readonly LineSyntax[], opens: (index: number) => boolean, header: boolean): Block[] {
  const blocks: Block[] = [];
  let from = 0;
  for (let index = 0; index < lines.length; index++) {
    if (!opens(index) || (index === 0 && !header)) continue;
    blocks.push(lines.slice(from, index));
    from = index;
  }
  blocks.push(lines.slice(from));
  return blocks;
}

/** A list with some items replaced; in place where the count stays, so that the usual edit moves nothing. */
export function replaced<T>(list: T[], at: number, removed: number, items: readonly T[]): T[] {
  if (items.length !== removed) return list.slice(0, at).concat(items, list.slice(at + removed));
  for (const [index, item] of items.entries()) list[at + index] = item;
  return list;
}

const ordered = (a: Position, b: Position): [Position, Position] =>
  a.line < b.line || (a.line === b.line && a.character <= b.character) ? [a, b] : [b, a];
