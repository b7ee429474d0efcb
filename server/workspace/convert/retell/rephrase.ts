import { REPHRASED } from './phrases/index.ts';
import type { Phrase } from './phrases/phrase.ts';
import type { SaidWord } from './said-words.ts';

type Rule = { readonly find: RegExp; readonly to: Phrase[1] };
let rules: readonly Rule[] | undefined;

/** The rows of the table as patterns over whole words, made once; one may end with the space before what has to follow it. */
function ready(): readonly Rule[] {
  rules ??= REPHRASED.map(([find, to]) => ({ find: new RegExp(`(?<![^ ])(?:${find})(?:(?![^ ])|(?<= ))`, 'g'), to }));
  return rules;
}

/** The words with the turns of phrase of the table put as the language writes them; what replaces a phrase stands where the phrase was said. */
export function rephrase(said: readonly SaidWord[]): SaidWord[] {
  let words = [...said];
  for (const { find, to } of ready()) words = replaced(words, find, to);
  return words;
}

function replaced(words: SaidWord[], find: RegExp, to: Phrase[1]): SaidWord[] {
  const line = words.map(({ text }) => text).join(' ');
  if (line.search(find) < 0) return words;
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
    if (text === undefined || match[0] === '') continue;
    const from = starts.indexOf(match.index);
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

/** A quoted remark is one word. Each new word stands for all that it replaces. */
function placed(text: string, old: readonly SaidWord[]): SaidWord[] {
  const [start, end] = [old[0]?.start ?? 0, old.at(-1)?.end ?? 0];
  const own = new Map(old.map((word) => [word.text, word]));
  const fresh = text.match(/"[^"]*"|\S+/g) ?? [];
  return fresh.map((word, i) => {
    const known = own.get(word) ?? { start, end };
    return { text: word, start: i === 0 ? start : known.start, end: i === fresh.length - 1 ? end : known.end };
  });
}
