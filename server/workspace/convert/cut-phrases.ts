import type { Cut } from './cuts.ts';
import { isBreak, type SaidWord } from './retell/said-words.ts';

/** They belong to the words after them. */
const ARTICLES = /^(?:the|a|an|and|her|his|their|its|my)$/;
/** What stands after one of these is part of the phrase before it (`some under the | second MTP joint`). */
const JOINING =
  /^(?:of|with|without|under|for|in|at|from|about|after|by|into|towards?|beneath|below|above|between|near|on|over|to)$/;
/** After one of these an order is only spoken of (`review in eight weeks with the film`). */
const SPOKEN_OF = /^(?:of|with|without|from|about|after|by)$/;
/** What was said is to come, or only about so much. */
const TURNED = /^(?:planned|booked|scheduled|listed|proposed|awaited|pending|or so)(?: |$)/;

/**
 * The cuts without what parts a phrase: an article goes with the words after it, words after a preposition stay with it, and nothing is proposed
 * for an order that is only spoken of, or for words that the next one turns.
 */
export function wholePhrases(cuts: readonly Cut[], words: readonly SaidWord[]): Cut[] {
  return cuts.flatMap((cut): Cut[] => {
    const first = words.findIndex(({ start }) => start >= cut.start);
    const next = words.filter(({ start }) => start >= cut.end).slice(0, 2);
    if (TURNED.test(next.map(({ text }) => text).join(' '))) return [];
    let at = first;
    while (at > 0 && ARTICLES.test(words[at - 1]?.text ?? '')) at--;
    const before = words[at - 1];
    const start = words[at]?.start ?? cut.start;
    if (!before || !JOINING.test(before.text)) return [{ ...cut, start }];
    const opens = words[at - 2] === undefined || isBreak(words[at - 2] as SaidWord);
    if (opens) return [{ ...cut, start: before.start }];
    const ordered = cut.texts.some((text) => text.startsWith('plan '));
    return ordered && SPOKEN_OF.test(before.text) ? [] : [{ ...cut, stays: true }];
  });
}
