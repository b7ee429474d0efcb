import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import { readLine } from '../../grammar/read-line.ts';
import type { LineSyntax } from '../../grammar/syntax.ts';
import type { Carried, VisitFacts } from '../clinical/facts.ts';
import { isSigned } from '../clinical/lifecycle.ts';
import { readVisitFacts } from '../clinical/read-facts.ts';
import type { Range } from '../workspace/blocks.ts';
import { convertLine, sameClear } from '../workspace/convert/convert-line.ts';
import { dictatedAbove, dictatedIn, plain } from '../workspace/convert/dictated.ts';
import { placeBefore, placeOf } from '../workspace/convert/places-said.ts';
import type { Note, Visit } from '../workspace/note.ts';

/** Some lines of a visit, the last included, and what stands in their place. */
interface Change {
  readonly title: string;
  readonly from: number;
  readonly to: number;
  readonly texts: readonly string[];
}

/** What was said in place of a proposal, under its section, side and ray, and the whole line as it was dictated where nothing of it was changed. */
export function bringBack(note: Note, { start, end }: Range, given: readonly Diagnostic[]): CodeAction[] {
  const actions: CodeAction[] = [];
  for (let line = start.line; line <= end.line; line++) {
    const visit = note.visitAt(line);
    const at = line - (visit?.firstLine ?? 0);
    if (!visit?.lines[at]?.carried?.proposed || isSigned(visit.analysis.facts, at)) continue;
    const read = (lines: readonly LineSyntax[]) => readVisitFacts(lines, note.header, note.settings);
    const fixed = given.filter((each) => each.code === 'proposed-unconfirmed' && each.range.start.line === line);
    for (const change of [wordsBack(visit, at, read), lineBack(visit.lines, at, read)])
      if (change) actions.push(action(note, visit, change, fixed));
  }
  return actions;
}

/** The words of one proposal, as a line that says no more than they did: where they would be clear alone, a mark stands for what was said before them. */
function wordsBack(visit: Visit, at: number, read: (lines: readonly LineSyntax[]) => VisitFacts): Change | undefined {
  const { lines } = visit;
  const proposed = new Map(visit.analysis.facts.lifecycle?.carried.map((each) => [each.place.line, each]));
  const isMore = (line: number) => proposed.get(line)?.proposed === true && proposed.get(line)?.said === undefined;
  // Of several proposals for the same words the first keeps them.
  let from = at;
  while (isMore(from) && proposed.get(from - 1)?.proposed) from--;
  let to = from;
  while (isMore(to + 1)) to++;
  const own = proposed.get(from);
  if (!own?.said) return undefined;
  const change = { title: 'Bring back what was said', from, to };
  if (standsAbove(lines, from, own.said.text))
    return { ...change, title: `${change.title}: it stands above`, texts: [] };
  const { place, words } = placed(lines, own, own.said.text);
  const before = read(lines);
  const text = [`${place}${words}`, `${place}… ${words}`].find((each) =>
    sameClear(before, read([...lines.slice(0, from), readLine(each), ...lines.slice(to + 1)])),
  );
  return text === undefined ? undefined : { ...change, texts: [text] };
}

/** Do the words of a proposal stand in the line that it follows? */
function standsAbove(lines: readonly LineSyntax[], from: number, said: string): boolean {
  const above = lines.slice(0, from).findLast(({ carried }) => !carried?.proposed);
  return above?.kind === 'statements' && plain(above.text).includes(plain(said));
}

const literal = (word: string): string => word.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');

/** The words as they were dictated, and what they stood under: in the line that a comment keeps, else by what is proposed for them. */
function placed(lines: readonly LineSyntax[], { place }: Carried, said: string): { place: string; words: string } {
  const pattern = new RegExp(said.split(/\s+/).map(literal).join('\\s+'), 'i');
  const above = dictatedAbove(lines, place.line);
  const kept = [...(above === undefined ? [] : [lines[above] as LineSyntax]), ...lines].flatMap(
    (each) => dictatedIn(each) ?? [],
  );
  for (const dictated of kept) {
    const found = pattern.exec(dictated);
    if (!found) continue;
    const [words] = found;
    const span = { start: found.index, end: found.index + words.length };
    return { place: placeBefore(readLine(dictated), readLine(words), span), words };
  }
  return { place: placeOf(lines[place.line] as LineSyntax, readLine(said)), words: said };
}

/** The line as it was dictated in place of all lines that its conversion wrote, where they are still those. */
function lineBack(
  lines: readonly LineSyntax[],
  at: number,
  read: (lines: readonly LineSyntax[]) => VisitFacts,
): Change | undefined {
  const from = dictatedAbove(lines, at);
  const dictated = from === undefined ? undefined : dictatedIn(lines[from] as LineSyntax);
  if (from === undefined || dictated === undefined) return undefined;
  const written = convertLine({ lines: [...lines.slice(0, from), readLine(dictated)], at: from, read });
  const to = from + (written?.length ?? 0);
  const isSame = written?.every((text, i) => plain(text) === plain(lines[from + 1 + i]?.text ?? '')) ?? false;
  if (!isSame || at > to) return undefined;
  return { title: 'Bring back the whole line as it was dictated', from, to, texts: [dictated] };
}

function action(note: Note, visit: Visit, { title, from, to, texts }: Change, diagnostics: Diagnostic[]): CodeAction {
  const first = visit.firstLine + from;
  const last = visit.firstLine + to;
  const lengthOf = (line: number) => note.line(line)?.text.length ?? 0;
  // Where nothing stands in their place, the line end before them goes too.
  const start = texts.length > 0 ? { line: first, character: 0 } : { line: first - 1, character: lengthOf(first - 1) };
  const range = { start, end: { line: last, character: lengthOf(last) } };
  return {
    title,
    kind: 'quickfix',
    ...(diagnostics.length > 0 ? { diagnostics } : {}),
    edit: { changes: { [note.uri]: [{ range, newText: texts.join(note.lineEnd) }] } },
  };
}
