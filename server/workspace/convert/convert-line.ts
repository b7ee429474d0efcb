import { SECTION_WORDS } from '../../../grammar/lexicon/closed-words.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import { type AnyFact, subjectKey, type VisitFacts } from '../../clinical/facts.ts';
import { wholePhrases } from './cut-phrases.ts';
import { type Cut, cutsOf } from './cuts.ts';
import { type Desk, newDesk } from './desk.ts';
import { partFindings } from './part-findings.ts';
import { type Piece, piecesOf } from './pieces.ts';
import { keepsPlaces } from './places-said.ts';
import { type Home, type Proposal, retell } from './retell/retell.ts';
import { type Joining, type Written, writeLines } from './write-lines.ts';

/** The lines of a visit, the line among them that is converted, and how the visit is read. */
export interface Dictation {
  readonly lines: readonly LineSyntax[];
  readonly at: number;
  readonly read: (lines: readonly LineSyntax[]) => VisitFacts;
  /** Keeps what was taken back in a comment. */
  readonly remember?: boolean;
}

/** How a line may be written, the first way that changes nothing: with breaks for the eye. */
interface Way {
  /** What stays is left as it was said. */
  readonly asSaid?: true;
  readonly joining: Joining;
  readonly part: boolean;
}
const WAYS: readonly Way[] = (['none', 'labels', 'all'] as const).flatMap((joining) =>
  [true, false].map((part) => ({ joining, part })),
);
/** For a line that can't be written in the words of the language without a change: what is proposed stands beside what was said. */
const AS_SAID: Way = { asSaid: true, joining: 'all', part: false };
/** Enough to see whether a cut changes anything. */
const PLAIN_WAYS = [...WAYS.filter(({ joining, part }) => joining === 'none' && !part), AS_SAID];

/**
 * A dictated line as the lines that would have been typed. The clear facts of the visit are the same before and after; what more the words may
 * mean stands on lines that are `proposed`, each with the words that were said, and counts for nothing until it is confirmed. What was not
 * read keeps its words. `undefined` where no such lines are found.
 */
export function convertLine(dictation: Dictation): string[] | undefined {
  const { lines, at, read, remember = false } = dictation;
  const line = lines[at];
  const desk = newDesk(line?.under);
  // What is copied from an earlier visit, is proposed already, or names who examined, is left as its writer put it.
  if (line?.kind !== 'statements' || line.carried || line.examiner) return undefined;
  const before = read(lines);
  const place = placeOf(lines, at);
  // A heading has named the section, which a proposal could only guess.
  const proposals = place && !line.under ? retell(line, place).filter((each) => !isSectionWord(line, each)) : [];
  const keysOf = (text: string) => clearFacts(read([...lines.slice(0, 1), desk.read(text)])).map(looseKey);
  const here = clearFacts(before).filter(({ origin }) => origin.place.line === at);
  const known = here.map((fact) => ({ key: looseKey(fact), open: fact.unclear.length > 0, ...fact.origin.place }));
  const found = cutsOf(proposals, known, saidElsewhere(lines, at, before, keysOf), keysOf);
  const cuts = wholePhrases(found, desk.words(line));
  const tell = (own: readonly Cut[], ways: readonly Way[]): string[] | undefined => {
    const pieces = piecesOf(desk, line, own);
    if (!pieces.every((piece) => piece.is === 'proposed' || keepsPlaces(line, piece))) return undefined;
    for (const way of ways) {
      const written = pieces.flatMap((piece) => tellPiece(desk, piece, way, remember));
      if (written.length === 0) continue;
      const typed = written.map((text) => desk.read(text));
      // A heading would hold for what is written below it later.
      if (typed.some(({ heading }) => heading && !heading.inline && !line.heading)) continue;
      const after = read([...lines.slice(0, at), ...typed, ...lines.slice(at + 1)]);
      if (sameClear(before, after) && keepsWords(line, written)) return written;
    }
    return undefined;
  };
  const parted = withStaying(cuts, (own) => tell(own, PLAIN_WAYS) !== undefined);
  return tell(parted, cuts.length > 0 ? [...WAYS, AS_SAID] : WAYS);
}

/**
 * The cuts whose words can be taken out of what was said without a change of what is clear; the words of the others stay, and their proposals
 * follow them.
 */
function withStaying(cuts: readonly Cut[], changesNothing: (own: readonly Cut[]) => boolean): Cut[] {
  let kept: readonly Cut[] = [];
  const add = (more: readonly Cut[]): void => {
    if (more.length === 0) return;
    if (changesNothing([...kept, ...more])) kept = [...kept, ...more];
    else if (more.length > 1) {
      const half = more.length >> 1;
      add(more.slice(0, half));
      add(more.slice(half));
    }
  };
  add(cuts);
  return cuts.map((cut) => (kept.includes(cut) ? cut : { ...cut, stays: true }));
}

/** What the other lines of the visit say or propose: it is proposed no second time. */
function saidElsewhere(
  lines: readonly LineSyntax[],
  at: number,
  visit: VisitFacts,
  keysOf: (text: string) => string[],
): Set<string> {
  const proposed = lines.flatMap(({ carried, text }) =>
    carried?.proposed ? keysOf(text.slice(carried.words.start, carried.words.end)) : [],
  );
  return new Set([
    ...clearFacts(visit)
      .filter(({ origin }) => origin.place.line !== at)
      .map(looseKey),
    ...proposed,
  ]);
}

/** The section that opens a line says nothing alone that could be confirmed. */
const isSectionWord = ({ roles }: LineSyntax, { start, text }: Proposal): boolean =>
  start === roles[0]?.start && SECTION_WORDS[text.trim().toLowerCase()] !== undefined;

/** The side in force; nothing under the heading of a ray, which would be that of every proposal. */
function placeOf(lines: readonly LineSyntax[], at: number): Home | undefined {
  const visit = lines[0]?.header;
  let side = visit?.is === 'visit' ? visit.side : undefined;
  for (const { heading } of lines.slice(1, at)) {
    if (heading?.subject) return undefined;
    if (heading?.side) side = heading.side;
  }
  return { side: side === 'both' ? undefined : side, operation: visit?.is === 'visit' && visit.kind === 'operation' };
}

function tellPiece(desk: Desk, piece: Piece, { joining, part, asSaid }: Way, remember: boolean): string[] {
  if (piece.is === 'proposed') return piece.lines.map(desk.format);
  if (asSaid) return [piece.line.text];
  return writeLines(part ? partFindings(piece.line, desk.read) : piece.line, joining).map((each) =>
    formatted(desk, each, remember),
  );
}

function formatted(desk: Desk, { text, struck }: Written, remember: boolean): string {
  const note =
    remember && struck.length > 0 ? `${text.includes('//') ? ';' : '  //'} said first: ${struck.join(' ')}` : '';
  return desk.format(`${text}${note}`);
}

const keyOf = ({
  section,
  subject,
  side,
  finding,
  status,
  values,
  unclear,
  quotes,
  origin,
  examiner,
}: AnyFact): string =>
  JSON.stringify([
    section,
    subjectKey(subject, side),
    partOf(subject),
    finding,
    status,
    sorted(values),
    unclear,
    quotes,
    origin.kind,
    examiner,
  ]);
/** `second toe`, `2nd MTP` and `2nd` are the same ray. */
const looseKey = (fact: AnyFact): string =>
  keyOf(
    fact.subject.at === 'ray' && fact.subject.part !== 'metatarsal'
      ? { ...fact, subject: { at: 'ray', ray: fact.subject.ray } }
      : fact,
  );
const partOf = (subject: AnyFact['subject']): unknown => ('part' in subject ? subject.part : undefined);
const sorted = (values: object): unknown => Object.entries(values).sort(([a], [b]) => (a < b ? -1 : 1));
const clearFacts = ({ facts }: VisitFacts): AnyFact[] => facts.filter(({ clarity }) => clarity === 'clear');
const clear = (facts: VisitFacts): string[] => clearFacts(facts).map(keyOf);

function contains(after: VisitFacts, before: VisitFacts): boolean {
  const said = clear(after);
  return clear(before).every((each) => {
    const at = said.indexOf(each);
    if (at >= 0) said.splice(at, 1);
    return at >= 0;
  });
}
/** Are the clear facts of a visit the same before and after? */
export const sameClear = (before: VisitFacts, after: VisitFacts): boolean =>
  contains(after, before) && contains(before, after);

/** Is every word that was not read with certainty still there? */
function keepsWords(line: LineSyntax, written: readonly string[]): boolean {
  const there = written.join(' ').toLowerCase();
  return line.roles.every(
    ({ kind, start, end }) =>
      kind !== 'reported' || there.includes(line.text.slice(start, end).toLowerCase().replace(/\s+/g, ' ')),
  );
}
