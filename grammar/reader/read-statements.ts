import type { Section, Slot } from '../lexicon/entry.ts';
import { entryOf } from '../lexicon/index.ts';
import { NONE, orNone } from '../none.ts';
import { heard, pauses, spokenPair, typedItem, typedQuantity } from '../spoken/as-typed.ts';
import { readCorrection } from '../spoken/corrections.ts';
import type { HeadingNode, LineSyntax, Role, SectionHeading, StatementNode } from '../syntax.ts';
import type { Making } from '../values.ts';
import { stopReach } from './after-a-stop.ts';
import { readAhead, readCount, readMeasureAhead } from './ahead.ts';
import { readCleanAndDry, readEarlier, readImagesHeading, readOpHeading } from './asides.ts';
import { Binder } from './binder.ts';
import { readComparison } from './comparisons.ts';
import { causeOf, findingsIn, finished } from './draft.ts';
import { matchesAt } from './forms.ts';
import { keepPlus, readNextAngle, readNextOf, readNextScore, readScoreOf, shareResponse } from './go-on.ts';
import type { Item } from './items.ts';
import { OF_IMAGE } from './meant-finding.ts';
import { mayStop } from './neighbours.ts';
import { normalReach } from './normal-of-what.ts';
import { operationReach } from './operation-values.ts';
import { outline } from './outline.ts';
import { partsPair } from './pairs.ts';
import { fitItem, fitQuantity, quantityAt } from './quantities.ts';
import { applyReach, pairReach } from './reach.ts';
import { isDoubtedHeading, readPair, readSubject, subjectText } from './read-subjects.ts';
import { readWords, saidValue } from './read-words.ts';
import { withRedFlags } from './red-flags.ts';
import { isOtherHeading, ofNoImage, pastListMark, readSectionHeading } from './section-heading.ts';
import { readGradeOfScale, readMinus, readNotOf, readTenGrams, readTimeSince } from './short-answers.ts';
import { sideReach } from './sides.ts';
import { readTwoSizes, sutureSize } from './sizes.ts';
import { mayBeSubject, subjectAt } from './subjects.ts';
import { tailReach } from './tails.ts';
import { turningOf } from './turning-lines.ts';
import { keepUnused } from './unused-subjects.ts';
import { webReach } from './web-or-ray.ts';
import { whenReach } from './when-meant.ts';
import { adviceReach, doneReach } from './whether-done.ts';
import { overlapReach } from './which-toe.ts';

type Body = Pick<LineSyntax, 'statements' | 'roles' | 'problems' | 'heading' | 'opens' | 'turning'>;

/**
 * Reads the statements of a line from its text, the section heading above it and the lexicon alone, from an item on. Never
 * throws; what it can't read it keeps and reports. After a prefix no heading stands.
 */
export function readStatements(
  line: string,
  items: readonly Item[] = outline(line),
  from = 0,
  under?: SectionHeading,
): Body {
  const binder = new Binder(line, items, under);
  const opens = from === 0 ? readSectionHeading(binder, under) : undefined;
  if (opens) return { statements: NONE, roles: binder.roles, problems: NONE, opens };
  const mark = from === 0 && under ? listMark(binder) : from;
  const { heading, next }: ReturnType<typeof readHeading> = mark > 0 ? { next: mark } : readHeading(binder);
  for (let i = next; i < items.length; ) i = step(binder, i);
  binder.closeSegment();
  for (const statement of binder.statements) shareResponse(statement, line);
  applyReach(binder.statements, binder.line);
  sideReach(binder.statements, binder.sides, line);
  const ofEach = binder.statements.map(({ elements }) => findingsIn(elements));
  const drafts = ofEach.flat();
  pairReach(drafts);
  tailReach(drafts, items, line, binder.roles);
  webReach(drafts, items);
  if (under === 'images') ofNoImage(drafts, line);
  normalReach(binder.statements, line);
  stopReach(binder.statements, line);
  adviceReach(binder.statements, line);
  doneReach(binder.statements, line);
  overlapReach(drafts, line);
  whenReach(drafts, line);
  operationReach(binder.statements, line);
  const kept = keepUnused(binder, binder.roles, heading?.subject);
  const statements: StatementNode[] = [];
  binder.statements.forEach(({ section, start, end, verbatim, unsaid }, i) => {
    const findings = (ofEach[i] ?? []).map((draft) => finished(draft, line));
    const statement = { section, start, end, findings, verbatim: orNone(verbatim) };
    if (findings.length + verbatim.length > 0) statements.push(unsaid ? { ...statement, unsaid } : statement);
  });
  const roles = inOrder([...kept.roles, ...pauses(line, items)]);
  const problems = withRedFlags(line, items, statements, [...binder.problems, ...kept.problems, ...heard(line, items)]);
  const body = headed(statements, heading);
  const turning = turningOf(line, body);
  const ends = under !== undefined && from === 0 && !heading && isOtherHeading(line, statements);
  const read: Making<Body> = { statements: body.statements, roles, problems };
  if (body.heading) read.heading = body.heading;
  if (turning) read.turning = turning;
  if (ends) read.opens = 'none';
  return read;
}

function listMark(binder: Binder): number {
  const next = pastListMark(binder);
  if (next > 0) binder.role('punctuation', binder.span(0, next));
  return next;
}

const inOrder = (roles: Role[]): Role[] =>
  roles.every(({ start }, i) => start >= (roles[i - 1]?.start ?? 0)) ? roles : roles.sort((a, b) => a.start - b.start);

/** A heading's side ends with its line where the line names another side too (`R: 2nd drawer 2; L: 2nd drawer 1`). */
function headed(statements: StatementNode[], heading: HeadingNode | undefined): Pick<Body, 'statements' | 'heading'> {
  const side = heading?.side;
  const mixed = statements.some(({ findings }) => findings.some((each) => each.side && side && each.side !== side));
  if (!mixed || !side) return { statements, ...(heading ? { heading } : {}) };
  const sided = statements.map((statement) => ({
    ...statement,
    findings: statement.findings.map((finding) => (finding.side ? finding : { ...finding, side })),
  }));
  return { statements: sided, heading: {} };
}

/** `R:`, `2nd:`, or a side or subject alone on its line. */
function readHeading(binder: Binder): { heading?: HeadingNode; next: number } {
  const { items } = binder;
  if (isDoubtedHeading(items)) return { heading: {}, next: 0 };
  let next = 0;
  const side = matchesAt(items, 0).find(({ form }) => form.side);
  if (side) next = side.next;
  const read = mayBeSubject(items, next)
    ? subjectAt({ items, start: next, commaJoins: true, adjoins: true, opensFinding: () => false })
    : undefined;
  const subject = read && 'subject' in read ? read.subject : undefined;
  const first = items[0];
  const named = (first?.is === 'sided' ? first.side : undefined) ?? side?.form.side ?? subject?.side;
  const own = named ? { side: named } : {};
  if (read && subject) next = read.next;
  if (next === 0) return { next: 0 };
  const after = items[next];
  if (after !== undefined && after.is !== 'keeper' && after.is !== 'comment') return { next: 0 };
  if (side) binder.role('keyword', binder.span(0, side.next));
  if (subject) {
    binder.role('subject', subject, { canonical: subjectText(subject) });
    binder.subject = subject;
    binder.push({ is: 'subject', subject });
  }
  const inline = items.slice(next).some(({ is }) => is !== 'keeper' && is !== 'comment');
  return { heading: { ...own, ...(subject ? { subject } : {}), ...(inline ? { inline } : {}) }, next };
}

function step(binder: Binder, i: number): number {
  const item = binder.items[i] as Item;
  const corrected = readCorrection(binder, i);
  if (corrected !== undefined) return corrected;
  switch (item.is) {
    case 'comment':
      binder.role('comment', item);
      return i + 1;
    case 'break':
      binder.role('punctuation', item);
      if (item.of === 'segment' && partsPair(binder, i)) return i + 1;
      if (item.of === 'statement') mayStop(binder, item);
      if (item.of === 'segment') binder.closeSegment();
      else if (item.of === 'line') binder.closeLine(item.end);
      else binder.closeStatement(item.end);
      return i + 1;
    case 'keeper': {
      const compared = readComparison(binder, i);
      if (compared !== undefined) return compared;
      binder.role('punctuation', item);
      // `xray wb both: R hva 22`: what is seen on it begins.
      if (binder.current && OF_IMAGE.includes(binder.current.id) && binder.line[item.start] === ':')
        binder.closeSegment();
      return i + 1;
    }
    case 'quote':
      return quoted(binder, item, i);
    case 'question':
      return questioned(binder, item, i);
    case 'bad date':
      binder.unread(item, 'ambiguous date', 'ambiguous-date');
      return i + 1;
    case 'other':
      return readMinus(binder, i) ?? readSigned(binder, item, i) ?? readSubject(binder, i) ?? readWords(binder, i);
    case 'word':
      return (
        readCleanAndDry(binder, i) ??
        readImagesHeading(binder, i) ??
        readOpHeading(binder, i) ??
        readEarlier(binder, i) ??
        readNotOf(binder, i) ??
        readSubject(binder, i) ??
        readMeasureAhead(binder, i) ??
        readWords(binder, i)
      );
    case 'ordinal':
      return readPair(binder, item, i) ?? readSubject(binder, i) ?? lone(binder, i);
    case 'sided':
      return readSubject(binder, i) ?? lone(binder, i);
    default:
      return (
        saidValue(binder, i) ??
        readTimeSince(binder, i) ??
        readGradeOfScale(binder, i) ??
        readTenGrams(binder, i) ??
        readNextScore(binder, i) ??
        readNextOf(binder, i) ??
        readNextAngle(binder, i) ??
        readScoreOf(binder, i) ??
        readQuantity(binder, i) ??
        readAhead(binder, i) ??
        readMeasureAhead(binder, i) ??
        readCount(binder, i) ??
        readSubject(binder, i) ??
        lone(binder, i)
      );
  }
}

function lone(binder: Binder, i: number): number {
  binder.unread(binder.span(i, i + 1), 'number without place', 'number-without-place');
  return i + 1;
}

function quoted(binder: Binder, item: Extract<Item, { is: 'quote' }>, i: number): number {
  const last = binder.last();
  const draft = binder.current ?? (last?.is === 'finding' ? last.draft : undefined);
  const waits = binder.no || binder.not || binder.before.length > 0;
  if (draft && !waits) {
    draft.quotes.push({ text: item.text, start: item.start, end: item.end });
    draft.end = Math.max(draft.end, item.end);
  } else binder.keep(item, true);
  const spoken = !/^["“]/.test(binder.line.slice(item.start));
  binder.role('verbatim', item, spoken ? { canonical: quotedText(item.text) } : {});
  if (!item.closed) binder.problems.push({ code: 'open-quote', text: item.text, start: item.start, end: item.end });
  return i + 1;
}

/** A quote that was said, in marks that its text does not hold. */
const quotedText = (text: string): string => (text.includes('"') ? `“${text}”` : `"${text}"`);

function questioned(binder: Binder, item: Extract<Item, { is: 'question' }>, i: number): number {
  if (item.touches === 'nothing') {
    binder.unread(item, 'doubt');
    return i + 1;
  }
  binder.role('modifier', item);
  if (item.touches === 'next') {
    binder.question = item;
    return i + 1;
  }
  const draft = binder.current;
  if (!draft) {
    binder.doubt(item);
    return i + 1;
  }
  const slot = Object.values(draft.slots).find(({ end }) => end === item.start);
  // `history ra?`: the word that is doubted names the finding too.
  if (slot && slot.start !== draft.word.start) slot.causes = [...slot.causes, causeOf('doubt', item, binder.line)];
  else draft.doubted = item;
  return i + 1;
}

function readQuantity(binder: Binder, i: number): number | undefined {
  const item = binder.items[i] as Item;
  const open = binder.openSlots();
  const scale = scaleAt(binder, item, open);
  if (scale) return scale(i);
  const sized = sutureSize(binder, i) ?? readTwoSizes(binder, i);
  if (sized !== undefined) return sized;
  if (item.is === 'date' && datesImage(binder)) return imageDate(binder, item, i);
  const pair = spokenPair(binder.items, i, open);
  if (pair) {
    const at = binder.span(i, i + 2);
    binder.setValue(pair.slot, pair.value, at, undefined, pair.typed);
    return i + 2;
  }
  const direct = fitItem(item, open);
  if (direct) {
    binder.setValue(direct.slot, direct.value, item, direct.cause, typedItem(item));
    return i + 1;
  }
  const quantity = quantityAt(binder.items, i);
  if (!quantity) return undefined;
  const isAge = matchesAt(binder.items, quantity.next).some(({ form }) => form.parts.join(' ') === 'ago');
  const dated = isAge ? open.find(([, shape]) => shape.kind === 'date') : undefined;
  if (dated) {
    const fitted = fitQuantity(quantity, [[dated[0], { kind: 'duration' }]]);
    if (fitted?.value.is !== 'duration') return undefined;
    const { is: _, ...age } = fitted.value;
    const typed = typedQuantity(item, quantity);
    const ago = typed === undefined ? undefined : `${typed} ago`;
    binder.setValue(dated[0], { is: 'ago', ago: age }, binder.span(i, quantity.next + 1), undefined, ago);
    return quantity.next + 1;
  }
  const fitted = fitQuantity(quantity, open);
  if (!fitted) return undefined;
  // `relief 3 months`: how long it was used, or how long it helped.
  const afterResponse = fitted.value.is === 'duration' && binder.current?.slots.response !== undefined;
  const why = afterResponse ? 'either neighbour' : fitted.cause;
  binder.setValue(fitted.slot, fitted.value, quantity, why, typedQuantity(item, quantity));
  keepPlus(binder, quantity, fitted.value);
  return quantity.next;
}

/** `ankle df -5`: a sign off the word and at its number, where a slot goes below zero. */
function readSigned(binder: Binder, item: Extract<Item, { is: 'other' }>, i: number): number | undefined {
  const [before, number] = [binder.items[i - 1], binder.items[i + 1]];
  const touches = number?.is === 'number' && number.start === item.end && before?.end !== item.start;
  if (!touches || !['-', '–', '+'].includes(item.text)) return undefined;
  const open = binder
    .openSlots()
    .flatMap(([slot, shape]) => (shape.kind === 'number' && shape.min < 0 ? [{ slot, shape }] : []));
  const [only] = open;
  const quantity = quantityAt(binder.items, i + 1);
  if (!only || !quantity || quantity.range || quantity.plus || quantity.bound) return undefined;
  const low = item.text === '+' ? quantity.low : -quantity.low;
  const fitted = fitQuantity({ ...quantity, low, high: low, start: item.start }, [[only.slot, only.shape]]);
  if (!fitted) return undefined;
  binder.setValue(fitted.slot, fitted.value, binder.span(i, quantity.next), fitted.cause);
  return quantity.next;
}

const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];
/** `mri 2026-06-03: 2nd tear full`: a day directly after the word for the image is that of the image. */
const datesImage = (binder: Binder): boolean =>
  IMAGES.includes(binder.section) &&
  binder.statement === binder.statements.findLast(({ section }) => section === binder.section) &&
  binder.statement.elements.every((each) => each.is === 'finding' && OF_IMAGE.includes(each.draft.id)) &&
  !(binder.current && binder.openSlots().some(([, { kind }]) => kind === 'date'));
function imageDate(binder: Binder, item: Extract<Item, { is: 'date' }>, i: number): number {
  const draft = binder.draft('image-date', entryOf('image-date'), item);
  binder.current = draft;
  binder.push({ is: 'finding', draft });
  binder.setValue('on', { is: 'date', date: item.date }, item, undefined, typedItem(item));
  return i + 1;
}

/** `scale 0-3` names the drawer scale of this statement. */
function scaleAt(
  binder: Binder,
  item: Item,
  open: readonly (readonly [string, Slot])[],
): ((i: number) => number) | undefined {
  if (item.is !== 'number' || !item.range) return undefined;
  const previous = binder.roles.at(-1);
  // `drawer 2 0-4`: a grade is there already.
  if (previous?.slot !== 'scale' && previous?.slot !== 'grade') return undefined;
  const shape = open.find(([slot]) => slot === 'scale')?.[1];
  const text = `${item.low}-${item.high}`;
  if (shape?.kind !== 'words' || !(text in shape.values)) return undefined;
  return (i) => {
    binder.setValue('scale', { is: 'word', words: [text] }, item);
    return i + 1;
  };
}
