import { SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Side } from '../../../../grammar/values.ts';
import { type Context, sideAfter } from './context.ts';
import type { SaidWord } from './said-words.ts';
import { APART } from './series.ts';
import { distances, isNeutral, turns } from './turning.ts';

export const RAY_WORD =
  /^(?:[1-5](?:st|nd|rd|th)(?:-[1-5](?:st|nd|rd|th))?|second|third|fourth|fifth|others?|webs?|rest)$/;
export const ORDINALS: Readonly<Record<string, string>> = { second: '2nd', third: '3rd', fourth: '4th', fifth: '5th' };

/** `bent right back`: no side. */
const ADVERB = /^(?:back|away|through|up|across|off|into|over|under|where|after|before|now|there)$/;

/**
 * The side that words open as a heading does (`on the left`, `left foot`), which holds for what follows until another is named; a bare one may only
 * stand beside its ray, for comparison.
 */
export function headed(words: readonly SaidWord[]): Side | undefined {
  const at = words.findIndex(({ text }) => text === 'right' || text === 'left');
  const word = words[at];
  const before = words.slice(0, at).map(({ text }) => text);
  const named = word !== undefined && word.end - word.start > word.text.length + 1;
  const opens =
    before.every((text) => OPENING.test(text)) &&
    !distances(
      words
        .slice(at + 1)
        .map(({ text }) => text)
        .join(' '),
    );
  return named && opens ? (word.text as Side) : undefined;
}
const OPENING = /^(?:and|so|now|then|but|the|on|looking|at|exam|examining|standing|moving|coming|to|of)$/;

/** What was not read may name another side or ray: which one holds after it is not certain then. */
export function turnContext(context: Context, words: readonly SaidWord[]): void {
  const texts = words.map(({ text }) => text);
  const sides = new Set(
    texts.filter((text, i) => text === 'left' || (text === 'right' && !ADVERB.test(texts[i + 1] ?? ''))),
  );
  const [side, more] = sides;
  if (
    more ||
    texts.some(
      (text, i) =>
        (text === 'both' &&
          !/^(?:toes|rays|joints|plates|heads|mtps|tendons)$/.test(texts[i + 1] ?? '') &&
          !RAY_WORD.test(texts[i - 1] ?? '')) ||
        text === 'either' ||
        (text === 'other' && texts[i + 1] !== 'than'),
    )
  )
    context.side = undefined;
  else if (side === 'right' || side === 'left') context.side = headed(words) ?? sideAfter(context, side);
  const opened = texts.map((text) => SECTION_WORDS[text]).find((each) => each?.strong);
  // A plan that opens with what is not done is still the plan.
  const leads = SECTION_WORDS[texts.find((text) => !isNeutral([text])) ?? ''];
  if (leads?.section === 'plan') context.section = 'plan';
  else if (opened && !turns(texts.filter((text) => !isNeutral([text]) && !/\d/.test(text)).join(' ')))
    context.section = opened.section;
  const rays = texts.filter((text) => RAY_WORD.test(text) || text === 'toes' || text === 'hallux');
  if (rays.length > 0) {
    context.named = true;
    const [ray] = rays;
    // As for the reader, a ray that is said first is the subject of what follows, whether the words after it are read or not.
    const leads = rays.length === 1 && /^[1-5]/.test(ray ?? '') && isNeutral(texts.slice(0, texts.indexOf(ray ?? '')));
    const only = context.only !== undefined && rays.every((each) => (ORDINALS[each] ?? each) === context.only);
    const denied = texts.some((text, i) => rays.includes(texts[i + 1] ?? '') && /^(?:not|no|other|than)$/.test(text));
    if (only && !denied) context.subject = { text: context.only ?? '', kind: 'ray', sentence: context.sentence };
    else context.subject = leads ? { text: ray ?? '', kind: 'ray', sentence: context.sentence } : undefined;
  }
  if (texts.includes(APART)) Object.assign(context, { subject: undefined, named: true });
  if (!isNeutral(texts) || texts.includes(APART)) context.finding = undefined;
}
