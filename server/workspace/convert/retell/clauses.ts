import { SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Section, Slot } from '../../../../grammar/lexicon/entry.ts';
import { entryOf, LEXICON } from '../../../../grammar/lexicon/index.ts';
import { formIndex } from '../../../../grammar/reader/forms.ts';
import type { FindingNode } from '../../../../grammar/syntax.ts';
import { type Context, sideAfter } from './context.ts';
import { COMPLETE_MARK } from './phrases/phrase.ts';
import { type Reading, readClause, subjectOf } from './read-clause.ts';
import type { SaidWord } from './said-words.ts';
import { turnContext } from './turn-context.ts';
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
  return words.flatMap(({ text }, i) => {
    const [first = ''] = text.split('-');
    const [before, after] = [words[i - 1]?.text, words[i + 1]?.text];
    // What a denial stands before is denied.
    if (i > 0 && DENIALS.has(before ?? '')) return [];
    // A side within a run of words may still be of what stands before it, unless a ray follows.
    if (i > 0 && SIDES.includes(text) && !/^(?:the|[1-5](?:st|nd|rd|th)|web)/.test(after ?? '')) return [];
    return i === 0 ||
      JOINERS.has(text) ||
      before?.startsWith(COMPLETE_MARK) ||
      starts.has(first) ||
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
  if (!next || !qualities().has(next.text)) return found;
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
const DENIALS: ReadonlySet<string> = new Set(['no', 'not', 'nil', 'without', 'denies', 'denied', 'never', 'avoid']);
const SIDES: readonly string[] = ['right', 'left', 'both', 'bilateral'];

/** The longest clause that starts at a place: where reading fails, the clause ends before the word that made it fail. */
function longest(
  words: readonly SaidWord[],
  from: number,
  edges: readonly number[],
  context: Context,
): { reading: Reading; end: number } | undefined {
  const limit = Math.min(from + LONGEST, nextSection(words, from));
  const ends = [...new Set([...edges, words.length, limit])].filter((end) => end > from && end <= limit);
  const seen = new Set<number>();
  let end = ends.at(-1);
  while (end !== undefined && seen.size < MOST) {
    seen.add(end);
    const own = words.slice(from, end);
    const tried = endsOpen(own) || partsPhrase(words, end) ? { failedAt: 0 } : said(own, context);
    if ('text' in tried) return { reading: tried, end };
    const failed = from + wordAt(own, tried.failedAt);
    end = failed > from && !seen.has(failed) ? failed : ends.findLast((each) => !seen.has(each));
  }
  return undefined;
}
/** More attempts than this find no clause at a place. */
const MOST = 7;

/** Would an end stand within a phrase of the language (`steroid | injection`)? */
function partsPhrase(words: readonly SaidWord[], end: number): boolean {
  for (let at = Math.max(0, end - 4); at < end; at++)
    for (const { parts } of formIndex().get(words[at]?.text ?? '') ?? [])
      if (parts.length > end - at && parts.every((part, i) => words[at + i]?.text === part)) return true;
  return false;
}
/** `swelling no`: a denial at the end may be of what follows; so may a word that joins. */
const endsOpen = (words: readonly SaidWord[]): boolean =>
  /^(?:no|not|nil|with|and|or|nor|without|for|of|on|in|at|to|by|from|under|over|a|an|the|her|his|is|are|was|has|about|as|then|so|she|he|it|i|we|also)$/.test(
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
function said(words: readonly SaidWord[], context: Context): ReturnType<typeof readClause> {
  const tried = readClause(typed(textOf(words)), context);
  if ('text' in tried) return tried;
  return ellipsis(words, context) ?? tried;
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

/** What a clause says of the place of those after it. */
export function goOn(context: Context, { findings, section }: Reading): void {
  context.section = section;
  const subject = subjectOf(findings);
  const others = findings.some((each) => each.subject?.at === 'others');
  const last = findings.at(-1);
  if (subject && !others) context.subject = { ...subject, sentence: context.sentence };
  else if (others) context.subject = undefined;
  if (subject || others) context.named = true;
  const sides = new Set(findings.flatMap((each) => each.side ?? each.subject?.side ?? []));
  const [side, more] = sides;
  if (more || side === 'both') context.side = undefined;
  else if (side) context.side = sideAfter(context, side);
  context.finding =
    last && mayGoOn(last) ? { id: last.id, word: entryOf(last.id).word, sentence: context.sentence } : undefined;
}
const mayGoOn = (finding: FindingNode): finding is FindingNode & { id: Exclude<FindingNode['id'], 'panel'> } =>
  finding.id !== 'panel' &&
  Object.values(finding.slots).some(({ value }) => value.is !== 'word') &&
  finding.status === 'present';
