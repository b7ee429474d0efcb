import { SECTION_WORDS } from '../../../../grammar/lexicon/closed-words.ts';
import type { Section } from '../../../../grammar/lexicon/entry.ts';
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
 * The side that words open as a heading does (`on the left`, `left foot`): it holds for the rays that directly follow, until another is named. After
 * more words it does so only for a speaker who headed the foot of the visit too, and not where they sum it up (`left foot fine`).
 */
export function headed(context: Context, words: readonly SaidWord[]): Side | undefined {
  const at = words.findIndex(({ text }) => text === 'right' || text === 'left');
  const word = words[at];
  if (word === undefined || word.end - word.start <= word.text.length + 1) return undefined;
  if (!words.slice(0, at).every(({ text }) => OPENING.test(text))) return undefined;
  const rest = words.slice(at + 1).map(({ text }) => text);
  const side = word.text as Side;
  if (side === context.home) context.homeHeaded = true;
  const alone = rest.every((text) => OPENING.test(text));
  if (alone) return side;
  return context.homeHeaded && !SUMS_UP.test(rest.join(' ')) && !distances(rest.join(' ')) ? side : undefined;
}
/** What is said of something else ends a heading of the other foot, unless the speaker headed both. */
export function endHeading(context: Context): void {
  if (context.home !== undefined && context.side !== context.home && !context.homeHeaded) context.side = undefined;
}
/** The same for the words of a clause: its heading stands before its ray. */
export const headedIn = (context: Context, words: readonly SaidWord[]): Side | undefined => {
  const ray = words.findIndex(({ text }) => RAY_WORD.test(text));
  return ray < 0 ? undefined : headed(context, words.slice(0, ray));
};
const SUMS_UP =
  /(?<![^ ])(?:fine|normal|ok|okay|good|nothing|no|unremarkable|stable|settled|asymptomatic|examined|looked|comparison|scar|well|better|one)(?![^ ])/;
const IMAGES: readonly Section[] = ['xray', 'us', 'mri', 'ct'];
/** `third and fourth toes with tingling into both`: so near a ray, both are rays. */
const NEAR_RAYS = 5;
const OPENING = /^(?:and|so|now|then|but|the|on|looking|at|exam|examining|standing|moving|coming|to|of)$/;

/** What was not read may name another side or ray: which one holds after it is not certain then. */
export function turnContext(context: Context, words: readonly SaidWord[]): void {
  const texts = words.map(({ text }) => text);
  const sides = new Set(
    texts.filter((text, i) => text === 'left' || (text === 'right' && !ADVERB.test(texts[i + 1] ?? ''))),
  );
  const [side, more] = sides;
  const held = context.side;
  if (
    more ||
    texts.some(
      (text, i) =>
        (text === 'both' &&
          !/^(?:toes|rays|joints|plates|heads|mtps|tendons)$/.test(texts[i + 1] ?? '') &&
          texts[i - 1] !== 'into' &&
          !texts.slice(Math.max(0, i - NEAR_RAYS), i).some((each) => RAY_WORD.test(each) || each === 'toes')) ||
        text === 'either' ||
        (text === 'other' && texts[i + 1] !== 'than'),
    )
  )
    context.side = undefined;
  else if (side === 'right' || side === 'left') context.side = headed(context, words) ?? sideAfter(context, side);
  else if (!isNeutral(texts)) endHeading(context);
  // A ray of the one foot is not that of the other.
  if (context.side !== held && held !== undefined && headed(context, words) !== undefined) context.subject = undefined;
  const opened = texts.map((text) => SECTION_WORDS[text]).find((each) => each?.strong);
  // A plan that opens with what is not done is still the plan.
  const leads = SECTION_WORDS[texts.find((text) => !isNeutral([text])) ?? ''];
  const image =
    leads && IMAGES.includes(leads.section) && !distances(texts.join(' ').replace(/(?<![^ ])no [a-z]+/g, ''));
  if (leads?.section === 'plan' || (image && leads.strong)) context.section = leads.section;
  else if (opened && !turns(texts.filter((text) => !isNeutral([text]) && !/\d/.test(text)).join(' ')))
    context.section = opened.section;
  const rays = texts.filter((text) => RAY_WORD.test(text) || text === 'toes' || text === 'hallux');
  if (rays.length > 0) {
    context.named = true;
    for (const each of rays) context.lineRays.add(each);
    const [ray] = rays;
    // As for the reader, a ray that is said first is the subject of what follows, whether the words after it are read or not.
    const number = ray === 'web' ? texts[texts.indexOf(ray) + 1] : undefined;
    const leads =
      rays.length === 1 &&
      (/^[1-5]/.test(ray ?? '') || /^[1-4]$/.test(number ?? '')) &&
      isNeutral(texts.slice(0, texts.indexOf(ray ?? '')));
    const first = number
      ? ({ text: `web ${number}`, kind: 'web' } as const)
      : ({ text: ray ?? '', kind: 'ray' } as const);
    const only = context.only !== undefined && rays.every((each) => (ORDINALS[each] ?? each) === context.only);
    const denied = texts.some((text, i) => rays.includes(texts[i + 1] ?? '') && /^(?:not|no|other|than)$/.test(text));
    if (only && !denied) context.subject = { text: context.only ?? '', kind: 'ray', sentence: context.sentence };
    else context.subject = leads ? { ...first, sentence: context.sentence } : undefined;
  }
  if (texts.includes(APART)) Object.assign(context, { subject: undefined, named: true });
  if (!isNeutral(texts) || texts.includes(APART)) context.finding = undefined;
}
