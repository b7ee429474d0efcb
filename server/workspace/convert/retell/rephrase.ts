import type { Span } from '../../../../grammar/values.ts';
import { bareRays } from './bare-rays.ts';
import { HEARD, REPHRASED } from './phrases/index.ts';
import type { Phrase } from './phrases/phrase.ts';
import type { SaidWord } from './said-words.ts';
import { spread } from './series.ts';

type Rule = { readonly find: RegExp; readonly to: Phrase[1] };
let rules: { readonly heard: readonly Rule[]; readonly told: readonly Rule[] } | undefined;

/** The rows of the tables as patterns over whole words, made once; one may end with the space before what has to follow it. */
const made = (rows: readonly Phrase[]): readonly Rule[] =>
  rows.map(([find, to]) => ({
    find: new RegExp(`(?<![^ ])(?:${lookingAhead(find)})(?:(?![^ ])|(?<= ))`, 'g'),
    to,
  }));

/** What has to stand before a phrase is looked for only where the phrase stands: looking back from every word is slow. */
function lookingAhead(find: string): string {
  if (!find.startsWith('(?<=') || /\\[1-9]/.test(find)) return find;
  const end = closeOf(find);
  const [behind, phrase] = [find.slice(0, end), find.slice(end)];
  if (phrase.startsWith('(?<') || hasAlternatives(phrase)) return find;
  return `(?=${phrase.replace(/(?<!\\)\((?!\?)/g, '(?:')})${behind}${phrase}`;
}
/** Where the group ends that a pattern starts with. */
function closeOf(find: string): number {
  let depth = 0;
  for (let at = 0; at < find.length; at++) {
    if (find[at] === '\\') at++;
    else if (find[at] === '[') at = find.indexOf(']', at + 2);
    else if (find[at] === '(') depth++;
    else if (find[at] === ')' && --depth === 0) return at + 1;
  }
  return find.length;
}
function hasAlternatives(phrase: string): boolean {
  let depth = 0;
  for (let at = 0; at < phrase.length; at++) {
    if (phrase[at] === '\\') at++;
    else if (phrase[at] === '[') at = phrase.indexOf(']', at + 2);
    else if (phrase[at] === '(') depth++;
    else if (phrase[at] === ')') depth--;
    else if (phrase[at] === '|' && depth === 0) return true;
  }
  return false;
}

/** The words with the turns of phrase of the table put as the language writes them; what replaces a phrase stands where the phrase was said. */
export function rephrase(said: readonly SaidWord[]): SaidWord[] {
  rules ??= { heard: made(HEARD), told: made(REPHRASED) };
  return applied(bareRays(spread(applied(said, rules.heard))), rules.told);
}
function applied(said: readonly SaidWord[], rows: readonly Rule[]): SaidWord[] {
  let words = [...said];
  let line = textOf(words);
  for (const { find, to } of rows) {
    find.lastIndex = 0;
    if (!find.test(line)) continue;
    find.lastIndex = 0;
    words = replaced(words, line, find, to);
    line = textOf(words);
  }
  return words;
}
const textOf = (words: readonly SaidWord[]): string => words.map(({ text }) => text).join(' ');

function replaced(words: SaidWord[], line: string, find: RegExp, to: Phrase[1]): SaidWord[] {
  const starts: number[] = [];
  let at = 0;
  for (const { text } of words) {
    starts.push(at);
    at += text.length + 1;
  }
  const list: SaidWord[] = [];
  let next = 0;
  for (const match of line.matchAll(find)) {
    const text = typeof to === 'string' ? fill(to, match) : to(match);
    if (text === undefined) continue;
    const from = starts.indexOf(match.index);
    // A row that finds a place, and no words, puts its own there.
    if (match[0] === '') {
      const { start = 0 } = words[from] ?? {};
      if (from < next) continue;
      list.push(...words.slice(next, from), { text: text.trim(), start, end: start });
      next = from;
      continue;
    }
    const until = starts.findIndex((start) => start >= match.index + match[0].length);
    const end = until < 0 ? words.length : until;
    if (from < next) continue;
    list.push(...words.slice(next, from), ...placed(text, words.slice(from, end)));
    next = end;
  }
  return [...list, ...words.slice(next)];
}
const fill = (to: string, match: RegExpMatchArray): string =>
  to.replace(/\$(\d)/g, (_, group) => match[Number(group)] ?? '');

/** What a row parts into several clauses stands or falls together. */
const listOf = (text: string, start: number): number | undefined =>
  text.split('|').filter((each) => each.trim() !== '').length > 1 ? OWN_LISTS + start : undefined;
/** Above the numbers of the lists from ray to ray. */
export const OWN_LISTS = 1_000_000;
/** A quoted remark is one word. Each new word stands for all that it replaces. */
function placed(text: string, old: readonly SaidWord[]): SaidWord[] {
  const [start, end] = [old[0]?.start ?? 0, old.at(-1)?.end ?? 0];
  const own = new Map(old.map((word) => [word.text, word]));
  const fresh = text.match(/"[^"]*"|\S+/g) ?? [];
  const list = old.every((word) => word.list === old[0]?.list) ? (old[0]?.list ?? listOf(text, start)) : undefined;
  return fresh.map((word, i) => {
    const known: Span & Pick<SaidWord, 'leans'> = own.get(word) ?? { start, end };
    const placed = { text: word, start: i === 0 ? start : known.start, end: i === fresh.length - 1 ? end : known.end };
    const leans =
      i === 0 && /^(?:right|left)$/.test(word) && (/^(?:on|in)$/.test(old[0]?.text ?? '') || known.leans === true);
    return { ...placed, ...(list === undefined ? {} : { list }), ...(leans ? { leans: true as const } : {}) };
  });
}
