import type { DocumentSymbol } from 'vscode-languageserver-types';
import type { LineSyntax } from '../../grammar/syntax.ts';
import { canonicalText } from '../workspace/format-line.ts';
import type { Note } from '../workspace/note.ts';
import { spanOn } from '../workspace/text-edits.ts';
import { SYMBOL } from './protocol-numbers.ts';

/** The visits of a note, each with its rays and sections. */
export function documentSymbols(note: Note): DocumentSymbol[] {
  const symbols: DocumentSymbol[] = [];
  for (let index = 1; index < note.blockCount; index++) symbols.push(visitSymbol(note, index));
  return symbols;
}

function visitSymbol(note: Note, index: number): DocumentSymbol {
  const lines = note.block(index);
  const firstLine = note.firstLine(index);
  const last = Math.max(
    0,
    lines.findLastIndex(({ kind }) => kind !== 'blank'),
  );
  const opening = lines[0];
  return {
    name: titleOf(opening),
    kind: SYMBOL.event,
    range: {
      start: { line: firstLine, character: 0 },
      end: { line: firstLine + last, character: lines[last]?.text.length ?? 0 },
    },
    selectionRange: spanOn(firstLine, 0, opening?.text.length ?? 0),
    children: lines.flatMap((line, at) => lineSymbol(line, firstLine + at)),
  };
}

/** `2026-03-09 first right`: what the visit line says after its keyword. */
function titleOf(line: LineSyntax | undefined): string {
  const words = line?.roles.flatMap(({ kind, start, end }) => (kind === 'value' ? [line.text.slice(start, end)] : []));
  return words && words.length > 0 ? words.join(' ') : 'visit without date';
}

function lineSymbol(line: LineSyntax, at: number): DocumentSymbol[] {
  const [head] = line.roles;
  const divides = line.header !== undefined && line.header.is !== 'visit' && line.header.is !== 'allow';
  if (!(line.kind === 'statements' || divides) || !head) return [];
  const own = head.kind === 'subject' || head.kind === 'keyword' || head.kind === 'finding';
  const name = own ? (head.canonical ?? line.text.slice(head.start, head.end)) : 'statement';
  const detail = detailOf(line, own);
  return [
    {
      name,
      ...(detail ? { detail } : {}),
      kind: head.kind === 'subject' ? SYMBOL.object : head.kind === 'keyword' ? SYMBOL.namespace : SYMBOL.property,
      range: spanOn(at, 0, line.text.length),
      selectionRange: spanOn(at, head.start, head.end),
    },
  ];
}

/** What the line says behind its first word, in the words of the language, without its comment. */
function detailOf(line: LineSyntax, own: boolean): string {
  const { text, roles, kind } = line;
  const [head] = roles;
  const comment = roles.find((role) => role.kind === 'comment');
  const remark = comment ? text.length - comment.start : 0;
  const written = kind === 'statements' ? canonicalText(line) : text;
  const typed = text.slice(head?.start, head?.end);
  const first = own ? [head?.canonical ?? typed, typed].find((each) => written.trimStart().startsWith(each)) : '';
  const said = written.trimStart().slice(first?.length);
  return said
    .slice(0, said.length - remark)
    .replace(/^[\s:]+/, '')
    .trim();
}
