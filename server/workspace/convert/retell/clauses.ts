import { SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Section, Slot } from '../../../../grammar/lexicon/entry.ts';
import { entryOf, LEXICON } from '../../../../grammar/lexicon/index.ts';
import { formIndex } from '../../../../grammar/reader/forms.ts';
import type { FindingNode } from '../../../../grammar/syntax.ts';
import { type Context, sideAfter } from './context.ts';
import { isSpoken, opensFrame } from './frame-words.ts';
import { COMPLETE_MARK } from './phrases/phrase.ts';
import { type Reading, readClause, subjectOf } from './read-clause.ts';
import { inFrame } from './read-frame.ts';
import type { SaidWord } from './said-words.ts';
import { endHeading, headedIn, turnContext } from './turn-context.ts';
import { clauseStarts } from './turning.ts';

/** A run of words of a segment: read as a clause, or not read. */
export interface Run {
  readonly words: readonly SaidWord[];
  readonly reading?: Reading;
  /** The clause finding by finding, where each is read the same by itself. */
  readonly parts?: readonly Run[];
}

/** More words than this are no clause. */
const LONGEST = 18;
const typed = (text: string): string => text.replaceAll('\u200b', ' ');
export const textOf = (words: readonly SaidWord[]): string => words.map(({ text }) => text).join(' ');

/**
 * The words between two spoken breaks as clauses that are each read whole, with what lies between them. A clause is as long as it can be
 * read; it ends before a word that may open the next one. The context goes along.
 */
export function clausesOf(words: readonly SaidWord[], context: Context): Run[] {
  const runs: Run[] = [];
  const edges = edgesOf(words);
  let unread = 0;
  for (let at = 0; at < words.length; ) {
    const here = { ...context };
    if (at > unread) turnContext(here, words.slice(unread, at));
    const opens = edges.includes(at) && !JOINERS.has(words[at]?.text ?? '');
    const found = opens ? settled(words, at, edges, here) : undefined;
    if (!found) {
      at++;
      continue;
    }
    runs.push(...unreadRuns(words.slice(unread, at)));
    Object.assign(context, here);
    const own = words.slice(at, found.end);
    runs.push({ words: own, reading: found.reading, parts: partsOf(own, found.reading, { ...context }) });
    goOn(context, found.reading);
    if (found.reading.findings.every(({ subject }) => subject !== undefined))
      context.side = headedIn(context, own) ?? context.side;
    else endHeading(context);
    at = found.end;
    unread = at;
  }
  if (unread < words.length) {
    runs.push(...unreadRuns(words.slice(unread)));
    turnContext(context, words.slice(unread));
  }
  return runs;
}

/** Words that were not read, a whole statement that has no place apart from the others. */
function unreadRuns(words: readonly SaidWord[]): Run[] {
  const runs: Run[] = [];
  let from = 0;
  for (const [i, { text }] of words.entries()) {
    if (!text.startsWith(COMPLETE_MARK)) continue;
    if (i > from) runs.push({ words: words.slice(from, i) });
    runs.push({ words: words.slice(i, i + 1) });
    from = i + 1;
  }
  return from < words.length ? [...runs, { words: words.slice(from) }] : runs;
}

/** A clause of several findings as one clause each. Nothing where one would not be read the same by itself. */
function partsOf(words: readonly SaidWord[], { findings }: Reading, context: Context): Run[] {
  if (findings.length < 2) return [];
  const ends = [...edgesOf(words), words.length];
  const parts: Run[] = [];
  let from = 0;
  for (const finding of findings) {
    const end = ends.find((each) => {
      if (each <= from || (finding === findings.at(-1) && each !== words.length)) return false;
      const tried = readClause(typed(textOf(words.slice(from, each))), context);
      if (!('text' in tried) || tried.findings.length !== 1 || meaningOf(tried.findings[0]) !== meaningOf(finding))
        return false;
      parts.push({ words: words.slice(from, each), reading: tried });
      goOn(context, tried);
      return true;
    });
    if (end === undefined) return [];
    from = end;
  }
  return parts;
}
function meaningOf(finding: FindingNode | undefined): string {
  const values = Object.entries(finding?.slots ?? {}).map(([slot, { value }]) => [slot, value]);
  return JSON.stringify([
    finding?.id,
    finding?.section,
    finding?.status,
    values.sort(),
    finding?.quotes.map(({ text }) => text),
  ]);
}

/** A clause may end before them, and needs none of them. */
const JOINERS: ReadonlySet<string> = new Set([
  'and',
  'she',
  'he',
  'it',
  'there',
  'so',
  'with',
  'the',
  'also',
  'now',
  'but',
  'then',
]);

function edgesOf(words: readonly SaidWord[]): number[] {
  const starts = clauseStarts();
  const texts = words.map(({ text }) => text);
  return words.flatMap(({ text }, i) => {
    const [first = ''] = text.split('-');
    const [before, after] = [words[i - 1]?.text, words[i + 1]?.text];
    // What a denial stands before is denied, and what comes `with` something is of it.
    if (i > 0 && (DENIALS.has(before ?? '') || isWith(words, i) || isToward(texts, i))) return [];
    // A side within a run of words may still be of what stands before it, unless a ray follows.
    if (i > 0 && SIDES.includes(text) && !/^(?:the|[1-5](?:st|nd|rd|th)|web)/.test(after ?? '')) return [];
    return i === 0 ||
      JOINERS.has(text) ||
      before?.startsWith(COMPLETE_MARK) ||
      starts.has(first) ||
      opensFrame(texts, i) ||
      qualities().has(text) ||
      /^[1-5](?:st|nd|rd|th)/.test(text)
      ? [i]
      : [];
  });
}

/**
 * `swelling mild tender`: a quality after a clause may be of it or of the next one. It is of the clause where the speaker says qualities after what
 * they are of; where any was said before, nobody knows.
 */
function settled(
  words: readonly SaidWord[],
  from: number,
  edges: readonly number[],
  context: Context,
): { reading: Reading; end: number } | undefined {
  const found = longest(words, from, edges, context);
  const next = found && words[found.end];
  if (!next || !qualities().has(next.text) || partsPhrase(words, found.end + 1)) return found;
  const longer = said(words.slice(from, found.end + 1), context);
  if (!('text' in longer) || longer.findings.length !== found.reading.findings.length) return found;
  return context.qualitiesLead ? undefined : { reading: longer, end: found.end + 1 };
}
let beforeWords: ReadonlySet<string> | undefined;
/** Words of one part that may stand before what they are of. */
function qualities(): ReadonlySet<string> {
  beforeWords ??= new Set(
    LEXICON.flatMap(({ slots }) => Object.values<Slot>(slots)).flatMap((slot) =>
      slot.kind === 'words' && (slot.before || slot.locating) ? Object.entries(slot.values).flat(2) : [],
    ),
  );
  return beforeWords;
}
/** Does a quality stand first in what is said, or right after a subject or a word that joins, before what it is of? */
export const qualitiesLead = (words: readonly SaidWord[]): boolean =>
  words.some(({ text }, i) => {
    const before = words[i - 1]?.text;
    const opens =
      before === undefined ||
      /^(?:[,;|\n]|and|the|a|some|with|toe|mtp|ray|[1-5](?:st|nd|rd|th)|right|left)$/.test(before);
    return opens && qualities().has(text) && clauseStarts().has(words[i + 1]?.text ?? '') && !SIDES.includes(text);
  });

/** Where the next section is named; an image that is planned is no section. */
function nextSection(words: readonly SaidWord[], from: number): number {
  const planned = words[from]?.text === 'plan';
  const at = words.findIndex(({ text }, i) => {
    const section = i > from ? SECTION_WORDS[text] : undefined;
    return section?.strong && !(planned && IMAGED.includes(section.section));
  });
  return at < 0 ? words.length : at;
}
const IMAGED: readonly Section[] = ['xray', 'us', 'mri', 'ct', 'lab'];
/** `shoots into the third and fourth | worse in shoes`: a ray that something goes to opens nothing. */
function isToward(texts: readonly string[], at: number): boolean {
  let before = at - 1;
  while (/^(?:the|and|to|[1-5](?:st|nd|rd|th)|second|third|fourth|fifth)$/.test(texts[before] ?? '')) before--;
  return /^(?:into|towards?|between)$/.test(texts[before] ?? '');
}
const isWith = (words: readonly SaidWord[], at: number): boolean => {
  const before = words[at - 1]?.text ?? '';
  return before === 'with' || (/^(?:an?|the|some)$/.test(before) && words[at - 2]?.text === 'with');
};
const DENIALS: ReadonlySet<string> = new Set(['no', 'not', 'nil', 'without', 'denies', 'denied', 'never', 'avoid']);
const SIDES: readonly string[] = ['right', 'left', 'both', 'bilateral'];

/** The longest clause that starts at a place; a word that the language does not have ends the search. */
function longest(
  words: readonly SaidWord[],
  from: number,
  edges: readonly number[],
  context: Context,
): { reading: Reading; end: number } | undefined {
  const limit = Math.min(from + LONGEST, nextSection(words, from));
  const ends = [...new Set([...edges, words.length, limit])].filter((end) => end > from && end <= limit);
  // Without a word of a finding nothing can be read, unless a value goes on with the one before.
  const first = context.finding ? from : findingFrom(words, from);
  const waiting = ends.filter((end) => end > first).sort((a, b) => a - b);
  let found: { reading: Reading; end: number } | undefined;
  let misses = 0;
  for (let end = waiting.shift(); end !== undefined && misses <= MOST; end = waiting.shift()) {
    const own = words.slice(from, end);
    if (endsOpen(own) || partsPhrase(words, end) || trailsPlace(words, from, end)) continue;
    const tried = said(own, context, from === 0 && end === words.length);
    if ('text' in tried) {
      if (!found || end > found.end) found = { reading: tried, end };
      misses = 0;
      continue;
    }
    misses++;
    const failed = from + wordAt(own, tried.failedAt);
    if (tried.unknown && failed < end - 1 && !isSpoken(own[failed - from]?.text ?? '')) waiting.splice(0);
    // It may end where it fails.
    if (failed > (found?.end ?? from) && failed < end) waiting.unshift(failed);
  }
  return found;
}
/** Where the first word of a finding stands, at or after a place. */
function findingFrom(words: readonly SaidWord[], from: number): number {
  const texts = words.map(({ text }) => text);
  const index = formIndex();
  for (let at = from; at < words.length; at++)
    if (
      opensFrame(texts, at) ||
      index
        .get(words[at]?.text.split('-')[0] ?? '')
        ?.some(({ findings, classes }) => findings.length > 0 || classes.has('panel')) ||
      index.get(words[at]?.text ?? '')?.some(({ findings }) => findings.length > 0)
    )
      return at;
  return words.length;
}
/** After so many attempts that fail no longer clause is looked for. */
const MOST = 8;

/** Would an end stand within a phrase of the language (`steroid | injection`)? */
function partsPhrase(words: readonly SaidWord[], end: number): boolean {
  for (let at = Math.max(0, end - 4); at < end; at++)
    for (const { parts } of formIndex().get(words[at]?.text ?? '') ?? [])
      if (parts.length > end - at && parts.every((part, i) => words[at + i]?.text === part)) return true;
  return LOCATING.test(words[end - 1]?.text ?? '') && LOCATED.test(words[end]?.text ?? '');
}
/** `pain for five weeks | dorsal swelling`: a place stands before its noun. */
const LOCATING = /^(?:dorsal|plantar|medial|lateral)$/;
const LOCATED = /^(?:swelling|tenderness|bruising|callus|corn|deviation|drift|numbness|incision|approach)$/;
/** `swelling mild second | toe floats`, `drawer two right | normal`: a ray or a side at the end with nothing to bind it may open what follows. */
function trailsPlace(words: readonly SaidWord[], from: number, end: number): boolean {
  if (end >= words.length) return false;
  // `one | point oh two`: a number goes on.
  if (words[end]?.text === 'point' && /\d$/.test(words[end - 1]?.text ?? '')) return true;
  let at = end - 1;
  while (at > from && /^(?:now|today|still|again|also)$/.test(words[at]?.text ?? '')) at--;
  if (at > from && SIDES.includes(words[at]?.text ?? '')) return true;
  while (at > from && /^(?:toe|mtp|joint|ray|metatarsal)$/.test(words[at]?.text ?? '')) at--;
  const before = words[at - 1]?.text ?? '';
  // `drawer two left second | drawer one`: the place after the first is that of the second, or else nobody knows.
  if (at - 1 > from && SIDES.includes(before) && /^[1-5](?:st|nd|rd|th)/.test(words[at]?.text ?? ''))
    return (
      !AT.test(words[at - 2]?.text ?? '') &&
      !/^(?:[1-5](?:st|nd|rd|th).*|right|left|the|and|no)$/.test(words[end]?.text ?? '')
    );
  return (
    at > from &&
    /^[1-5](?:st|nd|rd|th)/.test(words[at]?.text ?? '') &&
    !/^(?:of|on|in|at|over|under|the|right|left|and|to|plantar|head|heads|callus|tear|tape|weil|repair|fusion|from)$/.test(
      before,
    )
  );
}
const AT = /^(?:of|on|in|at|over|under)$/;
/** `swelling no`: a denial at the end may be of what follows; so may a word that joins. */
const endsOpen = (words: readonly SaidWord[]): boolean =>
  /^(?:no|not|nil|stop|with|and|or|nor|without|for|of|on|in|at|to|by|from|under|over|a|an|the|her|his|is|are|was|has|about|as|then|so|she|he|it|i|we|also)$/.test(
    words.at(-1)?.text ?? '',
  );

function wordAt(words: readonly SaidWord[], offset: number): number {
  let at = 0;
  for (const [i, { text }] of words.entries()) {
    at += text.length + 1;
    if (offset < at) return i;
  }
  return words.length;
}

/** As said; else as a value of the finding that was said last (`third ray grade zero`). */
function said(words: readonly SaidWord[], context: Context, alone = false): ReturnType<typeof readClause> {
  const tried = readClause(typed(textOf(words)), context);
  if ('text' in tried) return tried;
  return ellipsis(words, context) ?? inFrame(words, context, alone) ?? tried;
}

const OPENS_VALUE = /^(?:grade|is|of|at|about)?$/;
function ellipsis(words: readonly SaidWord[], context: Context): Reading | undefined {
  const { finding, sentence } = context;
  if (!finding || sentence - finding.sentence > 1 || words.length > 7) return undefined;
  const value = words.findIndex(({ text }) => /^[~<>]?\d+(?:\.\d+)?(?:°|%)?$/.test(text));
  const rest = words
    .slice(value + 1)
    .filter(({ text }) => !/^(?:degrees|mm|millimet(?:re|er)s|painful|clinically)$/.test(text));
  const before = words.slice(0, value).filter(({ text }) => !OPENS_VALUE.test(text));
  const named =
    before.length > 0 &&
    before.every(({ text }) =>
      /^(?:the|and|on|it|it's|right|left|[1-5](?:st|nd|rd|th)(?:-[1-5](?:st|nd|rd|th))?|toe|toes|ray|rays|mtp|joint)$/.test(
        text,
      ),
    );
  if (value < 0 || rest.length > 0 || !named) return undefined;
  const tried = readClause(
    typed([...before.map(({ text }) => text), finding.word, textOf(words.slice(value))].join(' ')),
    context,
  );
  if (!('text' in tried)) return undefined;
  const [only, more] = tried.findings;
  return only?.id === finding.id && !more && Object.keys(only.slots).length > 0 ? tried : undefined;
}

/** `no tenderness under the third` denies of another ray; what follows may be of either. */
const isElsewhere = (last: FindingNode | undefined, now: string | undefined, before: string | undefined): boolean =>
  last?.status === 'absent' &&
  last.subject !== undefined &&
  last.subject.start > last.word.start &&
  before !== undefined &&
  before !== now;

/** What a clause says of the place of those after it. */
export function goOn(context: Context, { findings, section }: Reading): void {
  if (findings.every(({ id }) => id === 'earlier-surgery')) {
    afterSurgery(context, findings);
    return;
  }
  context.section = section;
  if (findings.every(({ id }) => id === 'transfer-pain')) return;
  const subject = subjectOf(findings);
  const others = findings.some((each) => each.subject?.at === 'others');
  const last = findings.at(-1);
  const several = subject !== undefined && !/^(?:web )?\d\w*(?: \w+)?$/.test(subject.text);
  if ((several && !context.broken) || isElsewhere(last, subject?.text, context.subject?.text))
    context.subject = undefined;
  else if (subject && !others) context.subject = { ...subject, sentence: context.sentence };
  else if (others) context.subject = undefined;
  if (subject || others) context.named = true;
  if (subject) context.lineRays.add(subject.text);
  const sides = new Set(findings.flatMap((each) => each.side ?? each.subject?.side ?? []));
  const [side, more] = sides;
  if (more || side === 'both') context.side = undefined;
  else if (side && side !== context.side) context.side = sideAfter(context, side);
  context.finding =
    last && mayGoOn(last) ? { id: last.id, word: entryOf(last.id).word, sentence: context.sentence } : undefined;
}
/** What was done before names its ray for itself; where it is one only, and none was named yet, `the toe` is that one. */
function afterSurgery(context: Context, findings: readonly FindingNode[]): void {
  const subject = subjectOf(findings);
  context.section = context.base;
  if (context.named || !subject || !/^\d\w\w(?: |$)/.test(subject.text)) context.subject = undefined;
  else context.subject = { ...subject, sentence: context.sentence, weak: true };
  context.named = true;
}
const mayGoOn = (finding: FindingNode): finding is FindingNode & { id: Exclude<FindingNode['id'], 'panel'> } =>
  finding.id !== 'panel' &&
  Object.values(finding.slots).some(({ value }) => value.is !== 'word') &&
  finding.status === 'present';
