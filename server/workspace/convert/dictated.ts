import { SECTION_WORD } from '../../../grammar/lexicon/closed-words.ts';
import type { LineSyntax } from '../../../grammar/syntax.ts';
import { keptSpans } from '../format-line.ts';

/** Opens the comment above converted lines that keeps the whole line as it was dictated. */
const DICTATED = '// dictated: ';

/** The line that a comment keeps as it was dictated, to the letter. */
export const dictatedIn = ({ kind, text }: LineSyntax): string | undefined =>
  kind === 'comment' && text.startsWith(DICTATED) ? text.slice(DICTATED.length) : undefined;

/** Converted lines below what was dictated, where something is proposed for it and it does not stand among them. */
export function withDictated({ text }: LineSyntax, written: readonly string[]): readonly string[] {
  const proposes = written.some((each) => each.startsWith('proposed '));
  return proposes && !written.includes(text) ? [`${DICTATED}${text}`, ...written] : written;
}

/** Where the comment stands that keeps what was dictated for a line of a visit; `undefined` where its lines have been parted from it. */
export function dictatedAbove(lines: readonly LineSyntax[], at: number): number | undefined {
  for (let above = at - 1; above > 0; above--) {
    const line = lines[above];
    if (!line || line.kind === 'blank' || line.kind === 'header' || line.heading) return undefined;
    if (dictatedIn(line) !== undefined) return above;
  }
  return undefined;
}

/** Is a line what a conversion left, or what was brought back of one? What was not proposed, or was turned down, is proposed no second time. */
export function isConverted(lines: readonly LineSyntax[], at: number): boolean {
  const line = lines[at];
  const above = dictatedAbove(lines, at);
  const dictated = above === undefined ? undefined : dictatedIn(lines[above] as LineSyntax);
  if (!line || dictated === undefined) return false;
  const said = plain(dictated.replace(/[,;…]/g, ' '));
  const unread = keptSpans(line).map(({ start, end }) => bare(line.text.slice(start, end)));
  return said.includes(bare(line.text)) || (unread.length > 0 && unread.every((words) => said.includes(words)));
}
/** Words without what a conversion writes between and before them. */
const bare = (text: string): string => plain(text.replace(/[,;…]/g, ' ')).replace(PLACE, '');
const PLACE = new RegExp(
  `^(?:(?:${Object.values(SECTION_WORD).join('|')}|right|left|[1-5](?:st|nd|rd|th)(?:-[1-5](?:nd|rd|th))?|and|toes?|mtp|mt|webs?|[1-5](?:-[1-5])?|others)(?: |$))*`,
);

/** Words without their case and the width of their spaces. */
export const plain = (text: string): string => text.toLowerCase().replace(/\s+/g, ' ').trim();
