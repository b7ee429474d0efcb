import type { HeaderNode, LineSyntax } from '../../grammar/syntax.ts';
import type { Span } from '../../grammar/values.ts';
import type { SyntaxEdit } from './analysis.ts';
import { type Day, dayFrom } from './dates.ts';
import type { AnyFact, Carried, Lifecycle, Place, VisitEvent, VisitFacts, VisitPart } from './facts.ts';
import { sealOf } from './seal.ts';

type Node<K extends HeaderNode['is']> = Extract<HeaderNode, { is: K }>;
const placeOn = (line: number, { start, end }: Span): Place => ({ line, start, end });

/** How a visit is divided, signed and added to; `undefined` where nothing of it is. What has passed is found later, from the facts. */
export function readLifecycle(lines: readonly LineSyntax[]): Omit<Lifecycle, 'passed'> | undefined {
  if (!lines.some(belongsToLifecycle)) return undefined;
  const events = lines.flatMap(({ header }, line) => (header?.is === 'event' ? [eventOf(header, line)] : []));
  return { parts: partsOf(lines), events, carried: carriedIn(lines) };
}

const belongsToLifecycle = ({ header, carried }: LineSyntax): boolean =>
  carried !== undefined || header?.is === 'signed' || header?.is === 'addendum' || header?.is === 'event';

function eventOf({ is: _, at, ...event }: Node<'event'>, line: number): VisitEvent {
  return { ...event, place: placeOn(line, at) };
}

function partsOf(lines: readonly LineSyntax[]): VisitPart[] {
  const parts: VisitPart[] = [{ from: 0 }];
  lines.forEach(({ header }, line) => {
    if (header?.is === 'addendum') {
      const { is: _, at, ...signing } = header;
      parts.push({ from: line, addendum: { ...signing, place: placeOn(line, at) } });
    }
    const part = parts.at(-1);
    if (header?.is !== 'signed' || !part || part.signature) return;
    const { is: _, at, seal, ...signing } = header;
    const signature = { ...signing, place: placeOn(line, at) };
    if (!seal) parts[parts.length - 1] = { ...part, signature };
    else {
      const holds = seal.text === sealedPart(lines, part.from, line);
      const sealed = { text: seal.text, place: placeOn(line, seal), holds };
      parts[parts.length - 1] = { ...part, signature: { ...signature, seal: sealed } };
    }
  });
  return parts;
}

/**
 * The seal of the lines of a part, up to its signature. Comments don't count, nor the lines that allow a report: neither says
 * anything of the patient.
 */
export const sealedPart = (lines: readonly LineSyntax[], from: number, to: number): string =>
  sealOf(lines.slice(from, to).flatMap((line) => (line.header?.is === 'allow' ? [] : [withoutComment(line)])));

const withoutComment = ({ text, roles }: LineSyntax): string =>
  text.slice(0, roles.find(({ kind }) => kind === 'comment')?.start);

/** A line that carries its words, or one of the block under a line that says nothing but `carried`. */
function carriedIn(lines: readonly LineSyntax[]): Carried[] {
  const found: Carried[] = [];
  let heading: Omit<Carried, 'text' | 'place'> | undefined;
  lines.forEach((line, at) => {
    const { carried: node, kind, text } = line;
    if (node) {
      const { date, prefix, words, proposed } = node;
      const own = {
        prefix: placeOn(at, prefix),
        ...(date ? { date } : {}),
        ...(proposed ? { proposed } : {}),
      };
      const alone = words.end === words.start;
      heading = alone && !proposed ? own : undefined;
      const said = proposed ? saidOn(line) : undefined;
      if (!alone)
        found.push({
          ...own,
          place: placeOn(at, words),
          text: text.slice(words.start, words.end),
          ...(said ? { said: { place: placeOn(at, said), text: text.slice(said.start, said.end) } } : {}),
        });
    } else if (kind === 'blank' || kind === 'header') heading = undefined;
    else if (heading && line.statements.length > 0) {
      const words = withoutComment(line);
      const start = words.length - words.trimStart().length;
      const end = words.trimEnd().length;
      found.push({ ...heading, place: { line: at, start, end }, text: words.slice(start, end) });
    }
  });
  return found;
}

/** The words of the comment of a line. */
function saidOn({ text, roles }: LineSyntax): Span | undefined {
  const comment = roles.find(({ kind }) => kind === 'comment');
  if (!comment) return undefined;
  const own = text.slice(comment.start, comment.end);
  const start = comment.start + (/^\/+\s*/.exec(own)?.[0].length ?? 0);
  return start < comment.end ? { start, end: comment.start + own.trimEnd().length } : undefined;
}

/** The part in which a line stands; the visit's own text where it is not divided. */
export const partAt = ({ lifecycle }: VisitFacts, line: number): VisitPart | undefined =>
  lifecycle?.parts.findLast(({ from }) => from <= line);

/** The day on which a fact was written: that of its addendum, else of its visit; `undefined` where that is not dated to the day. */
export function writtenOn(visit: VisitFacts, { origin }: Pick<AnyFact, 'origin'>): Day | undefined {
  const date = partAt(visit, origin.place.line)?.addendum?.date ?? visit.date;
  return date?.month && date.day ? dayFrom({ ...date, month: date.month, day: date.day }) : undefined;
}

/** How many events stand above a line. */
export const eventsBefore = ({ lifecycle }: Pick<VisitFacts, 'lifecycle'>, line: number): number =>
  lifecycle?.events.filter(({ place }) => place.line < line).length ?? 0;

/** Is the line after the signature of its part, where nothing may be written any more? */
export function isAfterSignature(visit: VisitFacts, line: number): boolean {
  const signature = partAt(visit, line)?.signature;
  return signature !== undefined && line > signature.place.line;
}

/** Are the words of a line signed? */
export function isSigned(visit: VisitFacts, line: number): boolean {
  const signature = partAt(visit, line)?.signature;
  return signature !== undefined && line <= signature.place.line;
}

/** Is the newest part of the visit signed, so that nothing may be written before an addendum is opened? */
export const isClosed = ({ lifecycle }: VisitFacts): boolean => lifecycle?.parts.at(-1)?.signature !== undefined;

/** Would an edit change signed words? */
export const touchesSigned = (visit: VisitFacts, edits: readonly SyntaxEdit[]): boolean =>
  edits.some(
    (each) =>
      (each.edit === 'replace' && isSigned(visit, each.place.line)) ||
      (each.edit === 'remove line' && isSigned(visit, each.line)) ||
      (each.edit === 'insert line' && isSigned(visit, each.afterLine + 1)),
  );
