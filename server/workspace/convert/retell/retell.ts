import { SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../../grammar/lexicon/entry.ts';
import { entryOf } from '../../../../grammar/lexicon/index.ts';
import { readLine } from '../../../../grammar/read-line.ts';
import { rememberingReader } from '../../../../grammar/remembering-reader.ts';
import { ERASING } from '../../../../grammar/spoken/spoken-words.ts';
import type { CauseKind, LineSyntax } from '../../../../grammar/syntax.ts';
import type { Side, Span } from '../../../../grammar/values.ts';
import { clausesOf, goOn, qualitiesLead, type Run, textOf } from './clauses.ts';
import type { Context } from './context.ts';
import { rephrase } from './rephrase.ts';
import { isBreak, type SaidWord, saidWords } from './said-words.ts';
import { ORDINALS, RAY_WORD } from './turn-context.ts';
import {
  bindsBack,
  distances,
  goesBack,
  governs,
  holds,
  isComplete,
  isNeutral,
  joinsNoun,
  leans,
  NEAR,
  opensClause,
  opensFinding,
  refuses,
  takesBack,
  turns,
} from './turning.ts';

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
    finding: undefined,
    sentence: 0,
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

/** A spoken new line ends what a line end does. */
function openLine(context: Context): void {
  const { subject, only } = context;
  const holds = subject !== undefined && subject.kind === 'ray' && only !== undefined && subject.text.startsWith(only);
  Object.assign(context, { section: context.base, finding: undefined });
  if (!holds) Object.assign(context, { subject: undefined, named: false });
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

interface Placed extends Run {
  readonly segment: number;
  /** Which of the clauses that a turn of phrase parts. */
  readonly part: number;
  /** It was read, and falls by what stands beside it. */
  readonly fell?: true;
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

/**
 * The runs with the clauses that stand. One of several findings that falls is tried finding by finding; one that falls for good is a word that was
 * not read for those beside it.
 */
function standing(runs: readonly Placed[]): readonly Placed[] {
  const next = runs.flatMap((run, i): Placed[] => {
    const { words, segment, part, parts = [] } = run;
    if (!run.reading || (stands(runs, i) && agrees(runs, i))) return [run];
    return parts.length > 0
      ? parts.map((each) => ({ ...each, segment, part }))
      : [{ words, segment, part, fell: true }];
  });
  return next.length === runs.length && next.every((run, i) => run === runs[i]) ? runs : standing(next);
}

function proposalOf({ words, reading, parts = [] }: Run): Proposal[] {
  if (!reading) return [];
  const start = Math.min(...words.map((word) => word.start));
  const end = Math.max(...words.map((word) => word.end));
  return [{ start, end, text: reading.text, parts: parts.flatMap(proposalOf) }];
}

/** Is a clause free of what was not read beside it? */
function stands(runs: readonly Placed[], at: number): boolean {
  const run = runs[at];
  if (!run?.reading) return false;
  const { reading, segment, part } = run;
  if (isHeld(runs, at)) return false;
  const [before, after] = [nearest(runs, at, -1), nearest(runs, at, 1)];
  const bare = isBare(run) && !reading.opens;
  if (before && isInert(before.words)) {
    if (bare && /(?<![^ ])(?:no|negative)(?![^ ])/.test(textOf(before.words))) return false;
  } else if (before) {
    const near = before.segment === segment;
    if (!near && !reading.opens && !denies(run) && distances(lastClause(before.words))) return false;
    if (near && !mayFollow(run, before.words, before.part !== part)) return false;
    if (bare && !near && isListed(before.words)) return false;
    if (!near && !reading.opens && isQuality(run) && !namesRay(run) && isOther(before.words)) return false;
  }
  if (!reading.opens && mayBeOfNext(runs, at)) return false;
  if (!after || isInert(after.words)) return true;
  const words = after.words.map((word) => word.text);
  // What was read after it is a statement of its own, unless it denies: `swelling, no redness, no`.
  if (after.fell) return (!denies(after) || (after.segment !== segment && words.length > 1)) && !bindsBack(words);
  if (after.segment !== segment) return !takesBack(words, reading.section);
  return after.part === part ? mayPrecede(run, words) : !goesBack(words);
}
const namesRay = ({ words }: Run): boolean => words.some(({ text }) => RAY_WORD.test(text));
/** `scar lumpy, not tender`: a quality alone is of the thing that the words before it name. */
const isQuality = ({ words }: Run): boolean =>
  QUALITY.test(
    words.find(({ text }) => !/^(?:not|no|very|quite|still|also|now|and|a|bit|slightly|non)$/.test(text))?.text ?? '',
  );
/** Do words name something else than a ray of the foot, or what somebody did? */
function isOther(words: readonly SaidWord[]): boolean {
  const texts = words.map(({ text }) => text);
  return !opensClause(texts, false) && !texts.every((text) => isNeutral([text]) || /^metatarsals?$/.test(text));
}
const QUALITY =
  /^(?:tender|swollen|sore|painful|painless|dry|clean|red|warm|hot|stable|stiff|numb|bruised|fixed|flexible|reducible)$/;
/** So few words may be an item of a list. */
const isListed = (words: readonly SaidWord[]): boolean => words.length <= 2 || distances(textOf(words));

/** What is said of the patient has no side: one that follows opens what is said next. */
const SIDED = /^(?:right|left|[1-5](?:st|nd|rd|th))$/;
const isOfPatient = (reading: Run['reading']): boolean =>
  reading?.findings.every(({ id }) => id !== 'panel' && entryOf(id).subjects.every((kind) => kind === 'patient')) ??
  false;

/** May words stand after a clause without a break? They open a clause of their own, or turn nothing of one that has come to its end. */
const mayPrecede = ({ reading }: Placed, words: readonly string[]): boolean =>
  (isOfPatient(reading) && SIDED.test(words[0] ?? '')) ||
  opensClause(words, reading?.opens ?? false) ||
  (!leans(words) && !joinsNoun(words[0] ?? ''));

/**
 * A condition, another person, or what was only spoken of holds for the rest of its sentence, up to a section that was said after it; a list that
 * stands before it may be of it too.
 */
function isHeld(runs: readonly Placed[], at: number): boolean {
  const told = (near: readonly Placed[]) => near.some((each) => !each.reading && holds(textOf(each.words)));
  const run = runs[at] as Placed;
  if (isBare(run) && !run.reading?.opens && isToldIn(runs.slice(at).toReversed(), true)) return true;
  const section = runs.findLastIndex(
    ({ words, reading }, i) =>
      i <= at &&
      reading !== undefined &&
      RELEASING.includes(SECTION_WORDS[words[0]?.text ?? '']?.section ?? 'plan') &&
      !told(runs.slice(i - 1, i)),
  );
  return isToldIn(runs.slice(Math.max(section, 0), at));
}
/** In speech without breaks a condition reaches so many words; what is more than that away is another sentence. */
const HELD_FOR = 15;
/** Do the last words before a place hold a condition that was not read? */
function isToldIn(runs: readonly Placed[], ahead = false): boolean {
  let left = HELD_FOR;
  for (const { words, reading } of runs.toReversed()) {
    const near = ahead ? words.slice(0, left) : words.slice(Math.max(0, words.length - left));
    if (!reading && holds(textOf(near))) return true;
    left -= words.length;
    if (left <= 0) return false;
  }
  return false;
}
/** What was planned or done goes on with a condition; what an image or the exam shows does not. */
const RELEASING: readonly Section[] = ['exam', 'xray', 'us', 'mri', 'ct', 'history'];
const denies = ({ words }: Run): boolean => ['no', 'not', 'non'].includes(words[0]?.text ?? '');
/**
 * May a clause follow words that were not read, without a break? With a place or a denial of its own, what is directly before it must not turn it;
 * without, nothing near it may, and none may govern it (`because of swelling`); a bare one may have a noun before it that makes it another (`phantom pain`).
 */
function mayFollow(run: Run, before: readonly SaidWord[], parted: boolean): boolean {
  const texts = before.map(({ text }) => text);
  if (parted || run.reading?.opens || denies(run)) {
    const near = texts
      .slice(IMAGED.test(run.words[0]?.text ?? '') ? -1 : -DIRECTLY)
      .filter((text) => !ENDING.test(text));
    const named = IMAGED.test(run.words[0]?.text ?? '') || !governs(texts.at(-1) ?? '');
    return named && !distances(near.join(' ')) && !holds(near.join(' '));
  }
  const last = texts.at(-1) ?? '';
  if (isMeasured(run)) return !distances(texts.slice(-NEXT).join(' ')) && !holds(texts.slice(-DIRECTLY).join(' '));
  return !turns(lastClause(before)) && !governs(last) && (!needsOpening(run) || opensFinding(last));
}
const DIRECTLY = 3;
const NEXT = 2;
/** They end what is said of the thing before them, and turn nothing that opens after them. */
const ENDING =
  /^(?:ago|settled|resolved|gone|healed|improved|stopped|declined|refused|yesterday|worse|better|negative|none|absent)$/;
/** Words that open the exam or an image by themselves. */
const IMAGED = /^(?:exam|xray|mri|ultrasound)$/;
/** A noun before it may make it another (`phantom pain`, `swab sent`), or somebody else's. */
const needsOpening = (run: Run): boolean =>
  (isBare(run) && !isQuality(run)) ||
  (run.reading?.findings.some(({ id }) => id === 'pain' || (id !== 'panel' && entryOf(id).kind === 'treatment')) ??
    true);
/** A test with its result: no noun before it makes it another. */
const isMeasured = ({ reading }: Run): boolean =>
  reading?.findings.every(
    ({ id, slots, word }) =>
      id !== 'panel' &&
      entryOf(id).kind === 'measure' &&
      entryOf(id).bare === 'incomplete' &&
      Object.values(slots).some(({ start }) => start !== word.start),
  ) ?? false;

/** The last words before a place, from the last one that opens a clause. */
function lastClause(words: readonly SaidWord[]): string {
  const texts = words.map(({ text }) => text);
  const from = texts.findLastIndex((text) =>
    /^(?:she|he|they|i|we|it|this|it's|she's|he's|they're|i've|we've|i'd|i'll|we'll)$/.test(text),
  );
  return texts.slice(Math.max(0, from, texts.length - NEAR)).join(' ');
}
/** `tender third toe straight`: a ray right after a clause that has none of its own may be of it. */
function mayBeOfNext(runs: readonly Placed[], at: number): boolean {
  const [run, next] = [runs[at], runs[at + 1]];
  if (!run || !next || next.segment !== run.segment) return false;
  if (namesRay(run)) return false;
  // `drawer one, third drawer zero`: who says the same again says it of the next one.
  const own = run.reading?.findings.at(-1)?.id;
  if (next.reading?.opens && next.reading.findings[0]?.id === own && own !== undefined) return false;
  // Where rays are said first, one that opens a clause is of that clause.
  if (next.reading && runs.find(({ reading }) => reading)?.reading?.opens) return false;
  const first = next.words.find(({ text }) => text !== 'the' && text !== 'and' && text !== 'on');
  const named = RAY_WORD.test(first?.text ?? '');
  return (
    named &&
    (run.reading?.findings ?? []).some(
      ({ id }) => id === 'panel' || entryOf(id).subjects.some((kind) => kind === 'ray' || kind === 'web'),
    )
  );
}

/** What was not read directly beside a clause, all of it in its segment, past words that only join. */
function nearest(runs: readonly Placed[], at: number, step: 1 | -1): Placed | undefined {
  let found: Placed | undefined;
  for (let i = at + step; ; i += step) {
    const run = runs[i];
    if (!run || run.reading || (found && found.segment !== run.segment)) return found;
    if (isInert(run.words)) return found ?? run;
    if (!found && !run.fell && isNeutral(run.words.map(({ text }) => text))) continue;
    if (step > 0 && run.fell) return found ?? run;
    if (found && found.part !== run.part) return found;
    const words = step > 0 ? [...(found?.words ?? []), ...run.words] : [...run.words, ...(found?.words ?? [])];
    found = { words, segment: run.segment, part: run.part };
  }
}
const isInert = (words: readonly SaidWord[]): boolean => isComplete(textOf(words));

/** Neither a value, other than its name gives, nor a denial of its own: it may go on with a list whose beginning was not read. */
const isBare = ({ reading, words }: Run): boolean =>
  !words.some(({ text }) => STATED.has(text)) &&
  (reading?.findings.some(
    ({ slots, status, word }) =>
      status === 'present' && Object.values(slots).every(({ start }) => start === word.start),
  ) ??
    false);
const STATED: ReadonlySet<string> = new Set(['positive', 'present', 'yes']);

/** Does a clause still say the same beside the one before it, as after a comma (`no redness, swelling`)? */
function agrees(runs: readonly Placed[], at: number): boolean {
  const [run, before] = [runs[at], runs.slice(0, at).findLast((each) => each.reading)];
  if (!run?.reading || !before?.reading) return true;
  if (run.reading.opens) return true;
  const words = textOf(run.words).replaceAll('\u200b', ' ');
  const joined = readLine(`${before.reading.text}, ${words}`);
  const found = joined.statements.flatMap(({ findings }) => findings);
  const own = found.slice(before.reading.findings.length);
  const after = noDeniesNoAdjective(before, run);
  const beside = runs[at - 1]?.reading !== undefined;
  return !own.some(({ causes }) =>
    causes.some(
      ({ why }) => REACHED.includes(why) && !(after && why === 'reach of no') && (beside || why !== 'either neighbour'),
    ),
  );
}
const REACHED: readonly CauseKind[] = ['reach of no', 'distancing word', 'either neighbour'];

/** `no blood thinners, allergic to penicillin`: nobody says `no allergic`, so that it goes on with no list of denied nouns. */
function noDeniesNoAdjective(before: Run, { words }: Run): boolean {
  const denied = before.words.map(({ text }) => text);
  return denied.includes('no') && !denied.includes('not') && ADJECTIVES.includes(words[0]?.text ?? '');
}
const ADJECTIVES: readonly string[] = [
  'tender',
  'swollen',
  'allergic',
  'diabetic',
  'deviated',
  'puffy',
  'bruised',
  'subluxed',
];
