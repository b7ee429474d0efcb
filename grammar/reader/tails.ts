import type { Role } from '../syntax.ts';
import { causeOf, type Draft } from './draft.ts';
import type { Item } from './items.ts';

/** `all on the left`, `neither today`, `that was before the operation`: it sums up what was just said, whatever else it says. */
const SUMS_UP =
  /^(?:(?:all|both|neither|none of|everything|these|those)\b|(?:that|this|it|all this|all that) (?:is|was|were|has|had|went)\b)/i;
/** Where or by whom it was found, and when, told after it. */
const NAMES_SOURCE =
  /^(?:(?:according to|as per|per|from|by|says|said|wrote|so says)\b.*\b(?:gp|doctor|physio\w*|podiatrist|referrer|registrar|radiologist|surgeon|colleague|clinic|letter|report|notes?)\b|(?:on|in|from) the (?:old|previous|last|earlier|outside|other)\b)/i;
/** What takes back, bounds or dates only the finding before it. */
const BENDS_LAST =
  /^(?:(?:or|no|oh|um|uh|er) )*(?:(?:but |and |then )*(?:now|then|since) (?:worse|better|gone|back|no better)|wait|hang on|hold on|oops|rather|at (?:least|most)|or so|roughly|approximately|give or take|in (?:january|february|march|april|may|june|july|august|september|october|november|december|(?:19|20)\d\d))\b/i;
/** `2nd straight, in boot`: how the toe stands, seen in what covers it. */
const COVERED =
  /^(?:in|through|under|inside) (?:(?:a|the|his|her|its) )?(?:boot|cast|dressings?|bandages?|splint|shoes?|strapping|socks?|plaster)$/i;
const isStance = ({ entry }: Draft): boolean =>
  entry?.subjects.includes('ray') === true && entry.sections.includes('stand');
/** A condition of what is planned, or a patient who has not agreed to it. */
const BENDS_PLAN =
  /\bfirst$|\b(?:undecided|not (?:yet )?(?:decided|agreed|keen|sure)|unsure|to (?:decide|confirm)|to be (?:decided|confirmed)|tbc)\b/i;
/** A side alone, after a break: of which of the findings before it? */
const SIDE_ALONE = /^(?:on the )?(?:right|left|r|l)(?: side| foot)?$/i;

/**
 * A segment without a finding that sums up the findings before it, or names a side for them, makes each of them unclear: those of its
 * sentence or, where it opens one, of the sentence before.
 */
export function tailReach(
  drafts: readonly Draft[],
  items: readonly Item[],
  line: string,
  roles: readonly Role[],
): void {
  if (drafts.length === 0) return;
  // What a correction has settled is no tail.
  const isStruck = (at: number) => roles.some(({ struck, start, end }) => struck && start <= at && at < end);
  let sentence: Draft[] = [];
  let before: Draft[] = [];
  let from = 0;
  let next = 0;
  for (let i = 0; i <= items.length; i++) {
    const item = items[i];
    if (item && item.is !== 'break' && item.is !== 'comment') continue;
    const first = items[from];
    const last = items[i - 1];
    const here: Draft[] = [];
    for (let draft = drafts[next]; draft && last && draft.word.start < last.end; draft = drafts[++next])
      here.push(draft);
    if (first && last && i > from && here.length === 0) {
      const text = line.slice(first.start, last.end);
      const reached = sentence.length > 0 ? sentence : before;
      const sums = SUMS_UP.test(text) || NAMES_SOURCE.test(text) || (sentence.length > 0 && SIDE_ALONE.test(text));
      const covered = COVERED.test(text) ? sentence.filter(isStance) : [];
      const planned = BENDS_PLAN.test(text) ? sentence.filter(({ section }) => section === 'plan') : [];
      const bent =
        planned.length + covered.length > 0
          ? [...planned, ...covered]
          : sums
            ? reached
            : sentence.length > 0 && BENDS_LAST.test(text)
              ? reached.slice(-1)
              : [];
      for (const draft of bent.length > 0 && isStruck(first.start) ? [] : bent)
        draft.causes.push(causeOf('distancing word', first, line));
    }
    sentence.push(...here);
    if (item?.is === 'break' && item.of !== 'segment') [before, sentence] = [sentence, []];
    from = i + 1;
  }
}
