import { rememberingReader } from '../../../../grammar/remembering-reader.ts';
import { ERASING } from '../../../../grammar/spoken/spoken-words.ts';
import type { LineSyntax } from '../../../../grammar/syntax.ts';
import type { Side, Span } from '../../../../grammar/values.ts';
import { clausesOf, goOn, qualitiesLead, type Run, textOf } from './clauses.ts';
import type { Context } from './context.ts';
import { rephrase } from './rephrase.ts';
import { isBreak, type SaidWord, saidWords } from './said-words.ts';
import { type Placed, standing } from './standing.ts';
import { ORDINALS, RAY_WORD } from './turn-context.ts';
import { refuses } from './turning.ts';

/** The foot of the visit, missing where it is of both, and whether it is a note of an operation. */
export interface Home {
  readonly side: Side | undefined;
  readonly operation: boolean;
}

/** How a stretch of a dictated line may be written, for the clinician to confirm. */
export interface Proposal extends Span {
  readonly text: string;
  /** The same, finding by finding; empty where it can't be parted. */
  readonly parts: readonly Proposal[];
}

const NAMES_IMAGE = /(?<![^ ])(?:x-?rays?|x rays?|xr|films?|radiographs?|ultrasound|scans?|mri|m r i|ct|c t)(?![^ ])/i;

/**
 * What a dictated line may mean, clause by clause, each as a line of its own with its side and subject. Only what is read whole and with
 * certainty once its turns of phrase are put as the language writes them, and only where no word beside it may turn it.
 */
export function retell(line: LineSyntax, { side: home, operation }: Home): Proposal[] {
  const words = rephrase(saidWords(line));
  const context: Context = {
    read: rememberingReader(),
    home,
    section: operation ? 'operation' : 'exam',
    base: operation ? 'operation' : 'exam',
    side: home,
    subject: undefined,
    named: false,
    lineRays: new Set(),
    homeHeaded: false,
    finding: undefined,
    sentence: 0,
    ordinals: 0,
    only: onlyRay(words),
    imaged: NAMES_IMAGE.test(words.map(({ text }) => text).join(' ')),
    broken: words.some(isBreak),
    qualitiesLead: qualitiesLead(words),
  };
  const told = sentencesOf(words).map((sentence) => {
    context.sentence++;
    if (home !== undefined || sentence.line) context.side = home;
    if (sentence.line) openLine(context);
    const words = sentence.segments.flat(2);
    context.ordinals = ordinalsAlone(words);
    if (isClear(line, words)) {
      takeOver(line, words, context);
      return { proposals: [], erases: false, refuses: false };
    }
    return {
      proposals: proposalsOf(sentence.segments, context),
      erases: sentence.segments.flat().some(erases),
      refuses: refuses(words.map(({ text }) => text)),
    };
  });
  // `scratch that` may take back all of its sentence, or the one before; `she declined` what was proposed last.
  return told.flatMap(({ proposals, erases }, i) =>
    erases || told[i + 1]?.erases ? [] : told[i + 1]?.refuses ? proposals.slice(0, -1) : proposals,
  );
}
/** How many ordinals stand among words that were not put as rays. */
const ordinalsAlone = (words: readonly SaidWord[]): number =>
  words.filter(({ text }) => ORDINALS[text] !== undefined).length;
const within = (words: readonly SaidWord[], { start, end }: Span): boolean =>
  (words[0]?.start ?? 0) <= start && end <= (words.at(-1)?.end ?? 0);

/** Is a sentence read whole and with certainty as it was said? Nothing of it needs to be proposed. */
function isClear({ roles, statements, problems }: LineSyntax, words: readonly SaidWord[]): boolean {
  const doubted = statements.some(({ findings, verbatim }) => {
    const own = findings.filter((each) => within(words, each));
    const unclear = own.some(
      ({ causes, slots }) => causes.length > 0 || Object.values(slots).some((slot) => slot.causes.length > 0),
    );
    return unclear || verbatim.some((each) => within(words, each));
  });
  const read = statements.some(({ findings }) => findings.some((each) => within(words, each)));
  const isDoubt = ({ kind, ...span }: LineSyntax['roles'][number]) => kind === 'reported' && within(words, span);
  return read && !doubted && !roles.some(isDoubt) && !problems.some((each) => within(words, each));
}
/** What a sentence that is clear as it was said says of the place of those after it. */
function takeOver({ statements }: LineSyntax, words: readonly SaidWord[], context: Context): void {
  const findings = statements.flatMap((each) => each.findings.filter((finding) => within(words, finding)));
  const section = findings.at(-1)?.section ?? context.section;
  goOn(context, { text: '', section, findings, opens: true });
}

const erases = (words: readonly SaidWord[]): boolean => ERASED.test(textOf(words));
const ERASED = new RegExp(`(?<![^ ])(?:${ERASING.join('|')})(?![^ ])`);

/** A spoken new line ends what a line end does, but the only ray of a line goes on for what needs a ray. */
function openLine(context: Context): void {
  const { subject, only, lineRays } = context;
  const holds = subject !== undefined && subject.kind === 'ray' && only !== undefined && subject.text.startsWith(only);
  const goesOn = subject !== undefined && lineRays.size === 1 && /^\d\w\w(?: mtp)?$/i.test(subject.text);
  Object.assign(context, { section: context.base, finding: undefined });
  if (goesOn && !holds) context.subject = { ...subject, weak: true };
  else if (!holds) Object.assign(context, { subject: undefined, named: false });
  if (!goesOn) lineRays.clear();
}
function onlyRay(words: readonly SaidWord[]): string | undefined {
  const rays = words.flatMap(({ text }) => (RAY_WORD.test(text) ? [ORDINALS[text] ?? text] : []));
  const [only, more] = new Set(rays);
  return more === undefined && /^\d(?:st|nd|rd|th)$/.test(only ?? '') ? only : undefined;
}
interface SentenceWords {
  /** A new line stands before it. */
  readonly line: boolean;
  readonly segments: readonly SegmentWords[];
}
/** The words between two breaks; clauses that a turn of phrase parts are of one segment. */
type SegmentWords = readonly (readonly SaidWord[])[];
function sentencesOf(words: readonly SaidWord[]): SentenceWords[] {
  const sentences: { line: boolean; segments: SaidWord[][][] }[] = [{ line: false, segments: [[[]]] }];
  for (const word of words) {
    const segments = sentences.at(-1)?.segments;
    if (word.text === '|') segments?.at(-1)?.push([]);
    else if (!isBreak(word)) segments?.at(-1)?.at(-1)?.push(word);
    else if (word.text === ',') segments?.push([[]]);
    else sentences.push({ line: word.text === '\n', segments: [[[]]] });
  }
  return sentences;
}

function proposalsOf(segments: readonly SegmentWords[], context: Context): Proposal[] {
  const runs = segments.flatMap((parts, segment) =>
    parts.flatMap((words, part) => clausesOf(words, context).map((run): Placed => ({ ...run, segment, part }))),
  );
  const kept = standing(runs);
  // Whose words those were is not certain: nothing after them stands under their ray.
  if (kept.some(({ fell, words }) => fell && words.some(({ text }) => RAY_WORD.test(text))))
    context.subject = undefined;
  return kept.flatMap(proposalOf);
}

function proposalOf({ words, reading, parts = [] }: Run): Proposal[] {
  if (!reading) return [];
  const start = Math.min(...words.map((word) => word.start));
  const end = Math.max(...words.map((word) => word.end));
  return [{ start, end, text: reading.text, parts: parts.flatMap(proposalOf) }];
}
