import type { PartialDate, Side, Span } from '../values.ts';

/** What the outer structure of a line holds; the words in it are still without meaning. */
export type Item =
  | ({ readonly is: 'word'; readonly text: string; readonly parts: readonly string[]; readonly said?: true } & Span)
  | ({
      readonly is: 'number';
      readonly low: number;
      readonly high: number;
      readonly range: boolean;
      readonly bound?: '~' | '<' | '>';
      /** `°` or `%` written at the number. */
      readonly unit?: string;
      /** `2+`. */
      readonly plus?: boolean;
      /** Its words, where it was said in words. */
      readonly said?: readonly string[];
      /** A small word that can only be a number here (`grade to`). */
      readonly heard?: true;
    } & Span)
  | ({
      readonly is: 'slashed';
      readonly first: number;
      readonly second: number;
      /** The lower end of `6-8/52`. */
      readonly from?: number;
      readonly bound?: '~' | '<' | '>';
      readonly said?: true;
    } & Span)
  | ({ readonly is: 'ordinal'; readonly low: number; readonly high: number } & Span)
  | ({ readonly is: 'sided'; readonly side: Side; readonly ray: number } & Span)
  | ({ readonly is: 'date'; readonly date: PartialDate; readonly said?: true } & Span)
  | ({ readonly is: 'bad date'; readonly why: 'ambiguous' | 'impossible' } & Span)
  | ({ readonly is: 'clock'; readonly hour: number; readonly minute: number } & Span)
  | ({ readonly is: 'quote'; readonly text: string; readonly closed: boolean } & Span)
  | ({ readonly is: 'question'; readonly touches: 'next' | 'previous' | 'nothing' } & Span)
  | ({ readonly is: 'break'; readonly of: 'statement' | 'segment' | 'line' } & Span)
  | ({ readonly is: 'keeper' } & Span)
  | ({ readonly is: 'comment' } & Span)
  | ({ readonly is: 'other'; readonly text: string } & Span);

export type ItemOf<K extends Item['is']> = Extract<Item, { is: K }>;

/** Does nothing more stand in the segment? */
export const endsSegment = (item: Item | undefined): boolean =>
  item === undefined || item.is === 'break' || item.is === 'comment';
