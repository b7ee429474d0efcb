import type { Section } from '../../grammar/lexicon/entry.ts';
import type { HeadingNode, LineSyntax, SubjectNode } from '../../grammar/syntax.ts';
import type { Ray } from '../../grammar/values.ts';
import { dividedFacts } from './events.ts';
import type { Allowance, AnyFact, HeaderFacts, Unclear, Verbatim, VisitFacts } from './facts.ts';
import { readLifecycle } from './lifecycle.ts';
import { inForce, lineFacts, NO_HEADING, proposedWords, type Turned } from './line-facts.ts';
import { once } from './once.ts';
import { NO_SETTINGS, type Settings } from './settings.ts';

/** Reads the lines before the first visit. A missing version line means version 1, for ever. */
export function readHeaderFacts(lines: readonly LineSyntax[]): HeaderFacts {
  let facts: HeaderFacts = { version: 1, allowances: [] };
  for (const { header } of lines) {
    if (header?.is === 'version') facts = { ...facts, version: header.version };
    if (header?.is === 'scales') facts = { ...facts, drawerScale: header.drawer };
    if (header?.is === 'patient') {
      const { name, born, sex } = header;
      facts = { ...facts, patient: { name, ...(born ? { born } : {}), ...(sex ? { sex } : {}) } };
    }
  }
  return { ...facts, allowances: allowancesOf(lines) };
}

function allowancesOf(lines: readonly LineSyntax[]): Allowance[] {
  const found: Allowance[] = [];
  lines.forEach(({ header }, line) => {
    if (header?.is === 'allow') found.push({ code: header.code, reason: header.reason, place: { line, ...header.at } });
  });
  return found;
}

/**
 * The facts of one visit. Side and subject come from the statement, then from the heading in force, then (side only) from
 * the visit; what is left open makes the fact unclear. `others` are the lesser rays that no statement of the visit names.
 */
export function readVisitFacts(
  lines: readonly LineSyntax[],
  header: HeaderFacts,
  settings: Settings = NO_SETTINGS,
): VisitFacts {
  const visit = lines[0]?.header;
  const known = visit?.is === 'visit' ? visit : undefined;
  const drawerScale = header.drawerScale ?? settings.drawerScale;
  const lifecycle = readLifecycle(lines);
  const carried = new Map(lifecycle?.carried.map((each) => [each.place.line, each] as const));
  const named = once(() => namedRays(lines, carried));
  const everywhere = {
    visitSide: known?.side,
    operating: known?.kind === 'operation',
    drawerScale,
    panels: settings.panels,
  };
  const facts: AnyFact[] = [];
  const verbatim: Verbatim[] = [];
  const unclear: Unclear[] = [];
  let heading: HeadingNode = NO_HEADING;
  let inline = false;
  let examiner: string | undefined;
  const turnedAt = turnings(lines);
  let force = inForce({ ...everywhere, heading, headed: false });
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at] as LineSyntax;
    if (line.examiner?.alone) examiner = line.examiner.by;
    const here = line.heading ? headingOf(line.heading, heading) : inline && isElsewhere(line) ? NO_HEADING : heading;
    // What came with a subject before words of its own line is of that line; a side holds on where the line has examined something.
    if (line.heading) {
      heading = headingAfter(line, line.heading, here, heading);
      // `web 2: click none` under `left:` says nothing of the side that holds.
      if (!line.heading.inline || line.heading.side) inline = line.heading.inline === true;
    }
    const unconfirmed = carried.get(at);
    if (unconfirmed ? !unconfirmed.proposed : line.statements.length === 0) continue;
    const by = line.examiner?.by ?? examiner;
    const headed = known?.side === 'both' && (here.side ?? 'both') !== 'both' && !line.heading?.side;
    const turned = turnedAt?.[at];
    if (force.heading !== here || force.examiner !== by || force.headed !== headed || force.turned !== turned)
      force = inForce({ ...everywhere, heading: here, headed, examiner: by, turned });
    if (unconfirmed) {
      verbatim.push(proposedWords(line, unconfirmed, force, named));
      continue;
    }
    const found = lineFacts(line, at, force, named);
    facts.push(...found.facts);
    if (found.verbatim.length > 0) verbatim.push(...found.verbatim);
    if (found.unclear.length > 0) unclear.push(...found.unclear);
  }
  const date = known?.date;
  return {
    ...(date?.month && date.day ? { date: { year: date.year, month: date.month, day: date.day } } : {}),
    ...(known?.kind ? { kind: known.kind } : {}),
    ...(known?.side ? { side: known.side } : {}),
    ...(drawerScale ? { drawerScale } : {}),
    facts,
    verbatim,
    unclear,
    allowances: allowancesOf(lines),
    ...(lifecycle ? dividedFacts(facts, lifecycle) : {}),
  };
}

/** `other foot:` is of its examination, and not of what is then planned. */
const OF_A_FOOT = /\b(?:other|opposite|contralateral|unaffected|left|right)\b/i;
const ENDS_A_FOOT: readonly (Section | undefined)[] = ['plan', 'impression'];

/**
 * For each line the words of another that turn what it says; nothing where no line does. Words above hold to the next blank line, heading or
 * header, words below for the line before them.
 */
function turnings(lines: readonly LineSyntax[]): (Turned | undefined)[] | undefined {
  if (!lines.some(({ turning }) => turning)) return undefined;
  const turned: (Turned | undefined)[] = [];
  let above: Turned | undefined;
  for (const [at, { kind, heading, turning, statements }] of lines.entries()) {
    if (kind === 'blank' || kind === 'header' || heading) above = undefined;
    if (above && OF_A_FOOT.test(above.text) && ENDS_A_FOOT.includes(statements[0]?.section)) above = undefined;
    if (turning && turning.reaches !== 'below') {
      const before = lines.findLastIndex((line, i) => i < at && line.kind !== 'comment');
      if (lines[before]?.kind === 'statements') turned[before] ??= { text: turning.text, at: 'below' };
    }
    if (turning && turning.reaches !== 'above') above = { text: turning.text, at: 'above' };
    else if (above !== undefined) turned[at] ??= above;
  }
  return turned;
}

/** The heading in force on its own line: one that names a ray keeps the side above it. */
const headingOf = (own: HeadingNode, above: HeadingNode): HeadingNode =>
  own.subject && !own.side && above.side ? { ...own, side: above.side } : own;
const EXAMINED: readonly (Section | undefined)[] = ['exam', 'stand', 'pain'];
/** `R: 2nd drawer 2` goes on with what is examined; a plan below it names its own side. */
const isElsewhere = ({ statements: [first] }: LineSyntax): boolean =>
  first !== undefined && !EXAMINED.includes(first.section);
function headingAfter(line: LineSyntax, own: HeadingNode, here: HeadingNode, above: HeadingNode): HeadingNode {
  if (!own.inline) return here;
  if (own.subject) return withoutSubject(above);
  return line.statements.some(({ findings }) => findings.some(({ causes }) => causes.length === 0)) ? here : NO_HEADING;
}
const withoutSubject = ({ side }: HeadingNode): HeadingNode => (side ? { side } : {});

/** The rays that any statement or heading of the visit names, with or without side. */
function namedRays(lines: readonly LineSyntax[], carried: ReadonlyMap<number, unknown>): ReadonlySet<Ray> {
  const named = new Set<Ray>();
  const add = (subject: SubjectNode | undefined) => {
    if (subject?.at === 'rays') for (const ray of subject.rays) named.add(ray);
  };
  lines.forEach((line, at) => {
    add(line.heading?.subject);
    if (carried.has(at)) return;
    for (const { findings } of line.statements)
      for (const finding of findings)
        if (finding.section === 'exam' || finding.section === 'stand') add(finding.subject);
  });
  return named;
}
