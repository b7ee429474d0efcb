import type { TimeUnit, Unit } from './lexicon/entry.ts';

export type Side = 'right' | 'left';
export type Ray = 1 | 2 | 3 | 4 | 5;
export type Web = 1 | 2 | 3 | 4;
export const RAYS: readonly Ray[] = [1, 2, 3, 4, 5];
export const LESSER_RAYS: readonly Ray[] = [2, 3, 4, 5];
export const WEBS: readonly Web[] = [1, 2, 3, 4];

/** Line-relative offsets, end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A date as precise as it was written: a missing month or day stays missing. */
export interface PartialDate {
  readonly year: number;
  readonly month?: number;
  readonly day?: number;
}
/** A time of day. */
export interface ClockTime {
  readonly hour: number;
  readonly minute: number;
}
export interface Duration {
  readonly low: number;
  readonly high: number;
  readonly unit: TimeUnit;
  readonly bound?: Bound;
}
/** `about` is `~`; `over` and `under` are `>` and `<`. */
export type Bound = 'about' | 'over' | 'under';

export type DrawerScale = '0-4' | '0-3' | '1-3';
export const DRAWER_SCALES: readonly DrawerScale[] = ['0-4', '0-3', '1-3'];

/** The value of a slot, tagged so that a grade, a stage and a number can't be mixed. */
export type Value =
  | {
      readonly is: 'word';
      readonly words: readonly string[];
      /** The words that were written, where one is narrower than the word in `words` that it counts as. */
      readonly said?: readonly string[];
    }
  | {
      readonly is: 'number';
      readonly low: number;
      readonly high: number;
      readonly unit: Unit | '';
      readonly bound?: Bound;
      /** The unit as typed, where it does not fit the slot. */
      readonly wrongUnit?: string;
    }
  | { readonly is: 'fraction'; readonly part: number; readonly whole: number }
  | {
      readonly is: 'drawer grade';
      readonly low: number;
      readonly high: number;
      /** Written at the statement itself; else the `scales` line or a setting decides. */
      readonly scale?: DrawerScale;
    }
  | { readonly is: 'stage'; readonly low: number; readonly high: number }
  | { readonly is: 'pulse grade'; readonly low: number; readonly high: number }
  /** Of the torn plate as seen at operation or on an image. */
  | { readonly is: 'anatomical grade'; readonly low: number; readonly high: number }
  | ({ readonly is: 'duration' } & Duration)
  | { readonly is: 'date'; readonly date: PartialDate }
  | { readonly is: 'ago'; readonly ago: Duration }
  | ({ readonly is: 'clock' } & ClockTime)
  | { readonly is: 'pair'; readonly web: Web };

export type ValueOf<K extends Value['is']> = Extract<Value, { is: K }>;

export type Status = 'present' | 'absent' | 'equivocal' | 'not done' | 'unable' | 'avoid';

const isOneOf = <T>(list: readonly T[], value: unknown): value is T => (list as readonly unknown[]).includes(value);
/** A ray as a note writes it: `2nd`. */
export const ordinalOf = (ray: Ray): string => ({ 1: '1st', 2: '2nd', 3: '3rd', 4: '4th', 5: '5th' })[ray];
export const isRay = (n: number): n is Ray => isOneOf(RAYS, n);
export const isWeb = (n: number): n is Web => isOneOf(WEBS, n);

/** Still being put together: where a line makes many of a kind, a copy by spread costs more than all the rest of it. */
export type Making<T> = { -readonly [K in keyof T]: T[K] };
