import { describe, expect, test } from 'vitest';
import { CompletionItemKind, DiagnosticSeverity, SymbolKind } from 'vscode-languageserver-types';
import { foldingRanges } from '../../server/features/folding.ts';
import { COMPLETION, SEVERITY, SYMBOL } from '../../server/features/protocol-numbers.ts';
import { LEGEND, semanticTokens } from '../../server/features/semantic-tokens.ts';
import { documentSymbols } from '../../server/features/symbols.ts';
import { settled } from './fixture.ts';

const note = settled(`forefoot 1

visit 2026-03-09 first right
2nd drawer 2, tender plantar
plan tape 2nd 8 weeks
// remark

visit 2026-05-04 review
odd words
`);

describe('the outline of a note', () => {
  test('is its visits, each with its lines', () => {
    const outline = documentSymbols(note).map(({ name, children }) => [name, children!.map((each) => each.name)]);
    expect(outline).toEqual([
      ['2026-03-09 first right', ['2nd', 'plan']],
      ['2026-05-04 review', ['statement']],
    ]);
  });

  test('tells of each line its findings, by their words and values, and of an unread one its text', () => {
    const details = (text: string) =>
      documentSymbols(settled(`visit 2026-03-09 right\n${text}`))[0]!.children!.map(({ name, detail }) => [
        name,
        detail,
      ]);
    expect(
      details(
        '2nd mtpj  TTP plantar, lachman 2 // ask\nplan: tape 2nd 8 weeks, no steroid\nodd words\npain\nhistory "a long story"',
      ),
    ).toEqual([
      ['2nd MTP', 'tender plantar, drawer 2'],
      ['plan', 'tape 2nd 8 weeks, no steroid'],
      ['statement', 'odd words'],
      ['pain', undefined],
      ['history', '"a long story"'],
    ]);
  });

  test('holds each selection in its range, and each child in its visit', () => {
    const inside = (inner: { start: { line: number }; end: { line: number } }, outer: typeof inner) =>
      inner.start.line >= outer.start.line && inner.end.line <= outer.end.line;
    for (const visit of documentSymbols(note)) {
      expect(inside(visit.selectionRange, visit.range)).toBe(true);
      for (const child of visit.children!) expect(inside(child.range, visit.range)).toBe(true);
    }
  });

  test('shows where a visit is divided, signed and added to', () => {
    const [visit] = documentSymbols(
      settled(
        'visit 2026-03-09 right\n2nd drawer 2\nevent reduction 14:30\nsigned 2026-03-09 AB\naddendum 2026-03-10 CD',
      ),
    );
    expect(visit!.children!.map(({ name, detail }) => `${name} ${detail}`)).toEqual([
      '2nd drawer 2',
      'event reduction 14:30',
      'signed 2026-03-09 AB',
      'addendum 2026-03-10 CD',
    ]);
  });

  test('names a visit that has no date yet', () => {
    expect(documentSymbols(settled('visit')).map(({ name }) => name)).toEqual(['visit without date']);
  });

  test('folds each visit to its last line that is not blank', () => {
    expect(foldingRanges(note)).toEqual([
      { startLine: 2, endLine: 5 },
      { startLine: 7, endLine: 8 },
    ]);
  });
});

describe('semantic tokens', () => {
  test('colour words by what they were read as', () => {
    expect(tokens('2nd drawer 2, no click blorp // remark')).toEqual([
      ['2nd', 'class'],
      ['drawer', 'property'],
      ['2', 'number'],
      ['no', 'operator'],
      ['click', 'property'],
      ['// remark', 'comment'],
    ]);
  });

  test('of a range are those of its lines', () => {
    const range = { start: { line: 3, character: 0 }, end: { line: 3, character: 5 } };
    const full = semanticTokens(note).data;
    const part = semanticTokens(note, range).data;
    expect(part.length).toBeGreaterThan(0);
    expect(part[0]).toBe(3);
    expect(full.join(' ')).toContain(part.slice(1).join(' '));
  });
});

function tokens(text: string): string[][] {
  const { data } = semanticTokens(settled(text));
  const found: string[][] = [];
  let at = 0;
  for (let index = 0; index < data.length; index += 5) {
    at += data[index + 1]!;
    found.push([text.slice(at, at + data[index + 2]!), LEGEND.tokenTypes[data[index + 3]!]!]);
  }
  return found;
}

test('the numbers of the protocol are those of its library', () => {
  const capital = (name: string): string => name[0]!.toUpperCase() + name.slice(1);
  const named = (numbers: object) => Object.entries(numbers).map(([name, number]) => [capital(name), number]);
  expect(named(SYMBOL)).toEqual(named(SYMBOL).map(([name]) => [name, SymbolKind[name as 'Event']]));
  expect(named(COMPLETION)).toEqual(named(COMPLETION).map(([name]) => [name, CompletionItemKind[name as 'Class']]));
  expect(named(SEVERITY)).toEqual(named(SEVERITY).map(([name]) => [name, DiagnosticSeverity[name as 'Error']]));
});
