import { SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../../grammar/lexicon/entry.ts';
import { entryOf } from '../../../../grammar/lexicon/index.ts';
import { readLine } from '../../../../grammar/read-line.ts';
import type { CauseKind } from '../../../../grammar/syntax.ts';
import { type Run, textOf } from './clauses.ts';
import { isParted } from './parted.ts';
import { OWN_LISTS } from './rephrase.ts';
import type { SaidWord } from './said-words.ts';
import { APART } from './series.ts';
import { RAY_WORD } from './turn-context.ts';
import {
  bindsBack,
  distances,
  goesBack,
  governs,
  holds,
  isComplete,
  isFinding,
  isNeutral,
  joinsNoun,
  leans,
  NEAR,
  opensClause,
  opensFinding,
  opensRay,
  takesBack,
  tellsOf,
  turns,
  turnsNothing,
} from './turning.ts';

/** A run in its segment. */
export interface Placed extends Run {
  readonly segment: number;
  /** Which of the clauses that a turn of phrase parts. */
  readonly part: number;
  /** It was read, and falls by what stands beside it. */
  readonly fell?: true;
}

/**
 * The runs with the clauses that stand. One of several findings that falls is tried finding by finding; one that falls for good is a word that was
 * not read for those beside it.
 */
export function standing(runs: readonly Placed[]): readonly Placed[] {
  const falls = runs.map((run, i) => run.reading !== undefined && !(stands(runs, i) && agrees(runs, i)));
  // A clause that falls because the ray after it may be its own says nothing of those beside it in its row.
  const fallen = new Set(
    runs.flatMap((run, i) =>
      (isOfRow(run) ? falls[i] && !mayBeOfNext(runs, i) : falls[i] || run.fell) ? listsOf(run) : [],
    ),
  );
  const next = runs.flatMap((run, i): Placed[] => {
    const { words, segment, part, parts = [] } = run;
    if (!run.reading || (!falls[i] && !listsOf(run).some((list) => fallen.has(list)))) return [run];
    return parts.length > 0
      ? parts.map((each) => ({ ...each, segment, part }))
      : [{ words, segment, part, fell: true }];
  });
  return next.length === runs.length && next.every((run, i) => run === runs[i]) ? runs : standing(next);
}

const isOfRow = (run: Run): boolean => listsOf(run).some((list) => list >= OWN_LISTS);
/** The lists from ray to ray that a run is of: all of a list falls with one of its items. */
const listsOf = ({ words }: Run): number[] => words.flatMap(({ list }) => list ?? []);

/** Clauses that are looked at on each side. */
const BESIDE = 8;
/** The words of a clause and those of its sentence on both sides. */
const besideOf = (runs: readonly Placed[], at: number) => ({
  before: runs
    .slice(Math.max(0, at - BESIDE), at)
    .map(wordsOf)
    .join(' '),
  own: wordsOf(runs[at]),
  after: runs
    .slice(at + 1, at + 1 + BESIDE)
    .map(wordsOf)
    .join(' '),
});
const wordsOf = (run: Run | undefined): string => textOf(run?.words ?? []);

/** Is a clause free of what was not read beside it? */
function stands(runs: readonly Placed[], at: number): boolean {
  const run = runs[at];
  if (!run?.reading) return false;
  const { reading, segment, part } = run;
  if (isHeld(runs, at) || isParted({ ...besideOf(runs, at), reading })) return false;
  if (isOfValueBefore(runs, at) || isBesideNil(runs, at) || isOfRayBefore(runs, at)) return false;
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
  if ((!reading.opens && mayBeOfNext(runs, at)) || sideFollows(runs, at)) return false;
  if (!after || isInert(after.words)) return !isExcepted(runs, at);
  const words = after.words.map((word) => word.text);
  // What was read after it is a statement of its own, unless it denies: `swelling, no redness, no`.
  if (after.fell) return (!denies(after) || (after.segment !== segment && words.length > 1)) && !bindsBack(words);
  if (after.segment !== segment) return !takesBack(words, reading.section);
  if (opensRay(words) && isPlaced(run, runs)) return true;
  return after.part === part ? mayPrecede(run, words) : !goesBack(words) && !tellsOf(words);
}
/** `hardware intact, no lucency, but screw prominent`: what has no place stands between a clause and its exception. */
const isExcepted = (runs: readonly Placed[], at: number): boolean => {
  const next = runs.slice(at + 1).find(({ words }) => !isInert(words));
  return next !== undefined && !next.reading && EXCEPTS.test(wordsOf(next));
};
const EXCEPTS = /^(?:and )?(?:but|except|apart|however|although|though|bar|save)(?= |$)/;
/** `sensation second reduced third normal`: what is normal may be what was told of the ray before it, and not all of the next one. */
function isOfValueBefore(runs: readonly Placed[], at: number): boolean {
  const [run, before] = [runs[at], runs.slice(0, at).findLast(({ words }) => textOf(words) !== APART)];
  if (!run?.reading || before?.segment !== run.segment || run.words.some(({ text }) => text === 'ray')) return false;
  const last = before.reading?.findings.at(-1);
  return run.reading.findings[0]?.id === 'panel' && last !== undefined && GRADED_NORMAL.includes(last.id);
}
/** Findings of which `normal` may be said. */
const GRADED_NORMAL: readonly string[] = ['sensation', 'vibration', 'numbness'];
/** `cold third toe and warm second toe`: a ray before an `and` ends what was said of it, where something stands before it. */
const isOfRayBefore = (runs: readonly Placed[], at: number): boolean =>
  runs[at - 1]?.segment === runs[at]?.segment &&
  /^(?:(?:right|left|the) )*[1-5](?:st|nd|rd|th)(?: (?:toe|mtp|ray|joint|metatarsal|web))* and (?![1-5])/.test(
    wordsOf(runs[at]),
  );
/** `night pain nil squeeze test`: a `nil` between two clauses may be of either; `nil squeeze test positive` says both. */
function isBesideNil(runs: readonly Placed[], at: number): boolean {
  const [before, run, after] = [runs[at - 1], runs[at], runs[at + 1]];
  const opensNil = (each: Placed | undefined) => each?.segment === run?.segment && each?.words[0]?.text === 'nil';
  return (
    opensNil(after) ||
    (opensNil(run) && before?.segment === run?.segment) ||
    (after?.segment === run?.segment &&
      /^(?:positive|negative)$/.test(after?.words[0]?.text ?? '') &&
      (run?.reading?.findings.some(({ status }) => status === 'absent') ?? false))
  );
}
/** Does a clause have its ray before its finding, by its own words or those of a speaker who says rays first? */
const isPlaced = ({ reading, words }: Run, runs: readonly Placed[]): boolean =>
  (reading?.findings ?? []).every(({ subject, word }) => subject !== undefined && subject.start < word.start) &&
  (RAY_WORD.test(words.find(({ text }) => !/^(?:the|and|right|left|on|in|at)$/.test(text))?.text ?? '') ||
    (runs.find((each) => each.reading)?.reading?.opens ?? false));
/** `tender on the left third drawer two`: a side that was said as a place may be of the clause before it, unless the other side was said so first. */
function sideFollows(runs: readonly Placed[], at: number): boolean {
  const run = runs[at];
  const next = runs.slice(at + 1).find(({ words }) => textOf(words) !== APART);
  const side = next?.words[0];
  if (!run?.reading || !next || next.segment !== run.segment || !side?.leans) return false;
  const others = runs.slice(0, at + 1).some(({ words }) => words.some((each) => each.leans && each.text !== side.text));
  return !others && run.reading.findings.some((each) => each.side === undefined && each.subject?.side === undefined);
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

/** Is the last finding of a clause denied by a word before it? */
const deniesLast = (words: readonly SaidWord[]): boolean => /^(?:no|without|nil)$/.test(words.at(-2)?.text ?? '');
/** What is said of the patient has no side: one that follows opens what is said next. */
const SIDED = /^(?:right|left|[1-5](?:st|nd|rd|th))$/;
const isOfPatient = (reading: Run['reading']): boolean =>
  reading?.findings.every(({ id }) => id !== 'panel' && entryOf(id).subjects.every((kind) => kind === 'patient')) ??
  false;

/** May words stand after a clause without a break? They open a clause of their own, or turn nothing of one that has come to its end. */
const mayPrecede = (run: Placed, words: readonly string[]): boolean => {
  const { reading, words: own } = run;
  return (
    (isOfPatient(reading) && SIDED.test(words[0] ?? '')) ||
    (isMeasured(run) && turnsNothing(words)) ||
    opensClause(words, reading?.opens ?? false) ||
    // `no skin | breaks between the toes`: what is denied may be made of two nouns.
    (!leans(words) && !joinsNoun(words[0] ?? '') && (!deniesLast(own) || isNeutral(words.slice(0, 1))))
  );
};

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
    if (!reading ? holds(textOf(near)) : !ahead && reading.findings.some(isAgreed)) return true;
    left -= words.length;
    if (left <= 0) return false;
  }
  return false;
}
/** What was agreed to opens a list of risks (`consented, floating toe, stiffness`). */
const isAgreed = ({ id }: NonNullable<Run['reading']>['findings'][number]): boolean => id === 'consent';
/** What was planned or done goes on with a condition; what an image or the exam shows does not. */
const RELEASING: readonly Section[] = ['exam', 'xray', 'us', 'mri', 'ct', 'history'];
const denies = ({ words }: Run): boolean => ['no', 'not', 'non'].includes(words[0]?.text ?? '');
/**
 * May a clause follow words that were not read, without a break? With a place or a denial of its own, what is directly before it must not turn it;
 * without, nothing near it may, and none may govern it (`because of swelling`); a bare one may have a noun before it that makes it another (`phantom pain`).
 */
function mayFollow(run: Run, before: readonly SaidWord[], parted: boolean): boolean {
  const texts = before.map(({ text }) => text);
  if (DATED.test(texts.join(' ')) || (listsOf(run).length === 0 && VALUES_FIRST.test(texts.join(' ')))) return false;
  if (parted || run.reading?.opens || denies(run)) {
    const near = texts
      .slice(IMAGED.test(run.words[0]?.text ?? '') ? -1 : -DIRECTLY)
      .filter((text, i, all) => !ENDING.test(text) && !(text === 'no' && deniesItsOwn(all[i + 1] ?? '')));
    const named = IMAGED.test(run.words[0]?.text ?? '') || !governs(texts.at(-1) ?? '');
    return named && !distances(near.join(' ')) && !holds(near.join(' '));
  }
  const last = texts.at(-1) ?? '';
  if (isMeasured(run)) return !distances(texts.slice(-NEXT).join(' ')) && !holds(texts.slice(-DIRECTLY).join(' '));
  return !turns(lastClause(before)) && !governs(last) && (!needsOpening(run) || opensFinding(last));
}
/** What follows a day that was named may be of that day. */
const DATED =
  /(?<![^ ])(?:in|on|during|back in) (?:early |late |mid )?(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter)$/;
/** `negative fourth negative | fifth tender`: the ray may be that of the value before it. */
const VALUES_FIRST = (() => {
  const value = '(?:negative|positive|none|absent|normal|good|weak|reduced|fails|holds|painful|[0-4])';
  return new RegExp(
    `(?<![^ ])${value} (?:[1-5](?:st|nd|rd|th)|second|third|fourth|fifth)(?: toe| mtp| web)? ${value}$`,
  );
})();
/** `no ulcer`, `no change`: the denial has what it denies, and is spent. */
const deniesItsOwn = (word: string): boolean =>
  /^(?:changes?|problems?|issues?|trouble|complaints?|better|worse|help|relief|use|good|benefit|difference|improvement|effect|response)$/.test(
    word,
  ) || isFinding(word);
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
