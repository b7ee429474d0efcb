import { entryOf } from '../../../../grammar/lexicon/index.ts';
import { matchesAt } from '../../../../grammar/reader/forms.ts';
import type { Item } from '../../../../grammar/reader/items.ts';
import { outline } from '../../../../grammar/reader/outline.ts';
import { typedItem } from '../../../../grammar/spoken/as-typed.ts';
import type { LineSyntax } from '../../../../grammar/syntax.ts';
import type { Span } from '../../../../grammar/values.ts';

/** A word as it would be typed, and where it was said. A break is the mark that would be typed for it. */
export interface SaidWord extends Span {
  readonly text: string;
  /** Which list from ray to ray it is of: its items stand or fall together. */
  readonly list?: number;
  /** A side that was said as a place (`on the left`): it may be of what stands before it. */
  readonly leans?: true;
}

const BREAKS = { segment: ',', statement: ';', line: '\n' } as const;
export const isBreak = ({ text }: SaidWord): boolean => text === ',' || text === ';' || text === '\n';

/** The words of a dictated line as they would be typed, without hesitations, without what was taken back, up to its comment. */
export function saidWords({ text, roles }: LineSyntax): SaidWord[] {
  const struck = roles.filter((role) => role.struck);
  const words: SaidWord[] = [];
  for (const item of outline(text)) {
    if (item.is === 'comment') break;
    if (struck.some(({ start, end }) => start <= item.start && item.end <= end)) continue;
    for (const word of typed(item, text).split(' '))
      if (word) words.push({ text: word, start: item.start, end: item.end });
  }
  return words.map((word, i) => (isStop(words, i, text) ? { ...word, text: ';' } : word));
}

/**
 * A `stop` that may be an order (`stop tape`) is a break for a speaker who has said it as one at least twice, before anything but a
 * treatment.
 */
function isStop(words: readonly SaidWord[], at: number, line: string): boolean {
  if (words[at]?.text !== 'stop') return false;
  const said = words.filter(({ text, start, end }) => text === ';' && line.slice(start, end).toLowerCase() === 'stop');
  const [match] = matchesAt(outline(line.slice(words[at]?.end ?? 0)), 0);
  const ids = match?.form.findings.map(({ id }) => entryOf(id).kind) ?? [];
  return said.length > 1 && ids.length > 0 && !ids.includes('treatment') && !ids.includes('procedure');
}

function typed(item: Item, line: string): string {
  switch (item.is) {
    case 'word':
      return item.text.toLowerCase().replaceAll('’', "'");
    case 'break':
      return BREAKS[item.of];
    case 'number': {
      const number = `${item.bound ?? ''}${item.low}${item.range ? `-${item.high}` : ''}`;
      return `${number}${item.unit ?? ''}${item.plus ? '+' : ''}`;
    }
    case 'quote':
      return `"${item.text.replaceAll(/["“”]/g, '').replace(/\s+/g, '\u200b')}"`;
    case 'ordinal':
      return item.high === item.low ? ordinal(item.low) : `${ordinal(item.low)}-${ordinal(item.high)}`;
    default:
      return typedItem(item) ?? line.slice(item.start, item.end).toLowerCase();
  }
}
const ordinal = (ray: number): string => `${ray}${['th', 'st', 'nd', 'rd'][ray] ?? 'th'}`;
