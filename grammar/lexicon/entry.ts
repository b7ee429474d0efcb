import type { SourceKey } from '../sources.ts';
import type { ValueOf } from '../values.ts';

/** Where in a note a statement stands; `exam` is the section of a line that opens none. */
export type Section =
  | 'history'
  | 'pain'
  | 'tried'
  | 'stand'
  | 'exam'
  | 'xray'
  | 'us'
  | 'mri'
  | 'ct'
  | 'lab'
  | 'operation'
  | 'impression'
  | 'plan';

/** What a finding is said of. A foot or patient finding never takes a ray. */
export type SubjectKind = 'ray' | 'web' | 'foot' | 'patient';

export type Unit =
  | 'mm'
  | 'm'
  | 'km'
  | 'miles'
  | 'yards'
  | 'blocks'
  | 'ml'
  | 'mg'
  | '°'
  | '%'
  | '/5'
  | '/9'
  | '/10'
  | '/day'
  | 'mmHg'
  | 'mmol/mol'
  | 'mg/L'
  | 'mg/dL'
  | 'mm/h'
  | 'µmol/L'
  | 'nmol/L'
  | 'ng/mL'
  | '°C'
  | '°F'
  | 's'
  | 'days'
  | 'weeks'
  | 'months'
  | 'years'
  | 'hours'
  | 'minutes';
export type TimeUnit = 'minutes' | 'hours' | 'days' | 'weeks' | 'months' | 'years';

/** How a figure is known: read in the paper, read in another page about it, common practice, or recalled only. */
export type Mark = 'read' | 'secondary' | 'common practice' | 'from memory, to be verified';

export interface Sourced {
  readonly source: SourceKey;
  readonly mark: Mark;
}

interface SlotBase {
  /** Words that announce the slot: `grade 2`, `for 8 weeks`. */
  readonly labels?: readonly string[];
  /** Says where, not how much: may stand with an absent finding and before the finding (`no plantar tenderness`). */
  readonly locating?: boolean;
  /** May stand before the finding as an adjective (`moderate swelling`). */
  readonly before?: boolean;
  /** Words that may follow its value (`3 mm shortening`). */
  readonly trails?: readonly string[];
  /** Taken only directly after one of its labels (`faam sports 40`). */
  readonly labelled?: boolean;
}
export interface WordsSlot<V extends string = string> extends SlotBase {
  readonly kind: 'words';
  /** Canonical value to the other forms in which it is written. */
  readonly values: Readonly<Record<V, readonly string[]>>;
  /** Several values may stand together. */
  readonly many?: boolean;
  /** A value that is narrower than another one: rules see the wider, and format and prose keep the narrower. */
  readonly wider?: Readonly<Record<string, string>>;
}
export interface NumberSlot extends SlotBase {
  readonly kind: 'number';
  readonly unit: Unit | '';
  readonly min: number;
  readonly max: number;
  /** A number without unit is taken to be in `unit`. */
  readonly bare: boolean;
  /** Only from this value up, where a smaller one may be of another unit. */
  readonly bareFrom?: number;
  /** Only up to this value. */
  readonly bareTo?: number;
}
export interface FractionSlot extends SlotBase {
  /** `9/10`: so many of so many. */
  readonly kind: 'fraction';
}
export interface GradeSlot extends SlotBase {
  /** `drawer` grades carry a scale, `stage` is the clinical stage, `anatomical` the torn plate as seen, `pulse` 0 to 4; none is a bare number. */
  readonly kind: 'grade';
  readonly of: 'drawer' | 'stage' | 'anatomical' | 'pulse';
  readonly min: number;
  readonly max: number;
}
export interface DurationSlot extends SlotBase {
  readonly kind: 'duration';
  /** Minutes and hours are of something else (`trainers 20 min`). */
  readonly least?: 'days';
}
export interface DateSlot extends SlotBase {
  readonly kind: 'date';
}
export interface ClockSlot extends SlotBase {
  readonly kind: 'clock';
}
export interface PairSlot extends SlotBase {
  /** Two neighbouring rays, `2-3`. */
  readonly kind: 'pair';
}
export type Slot = WordsSlot | NumberSlot | FractionSlot | GradeSlot | DurationSlot | DateSlot | ClockSlot | PairSlot;

export interface Lead {
  /** Slot values that the leading word itself gives. */
  readonly gives?: Readonly<Record<string, string>>;
  /** The word itself denies the finding (`straight`). */
  readonly absent?: true;
  readonly sections?: readonly Section[];
  /** The word itself names all toes of the foot (`toes pink`). */
  readonly whole?: true;
  /** A noun: `no fracture` denies just that. An adjective (`not medial`) stays unclear. */
  readonly noun?: true;
}

/** One finding of the language; completion, hover, formatting, highlighting and reference derive from it. */
export interface Entry extends Sourced {
  readonly id: string;
  readonly kind: 'sign' | 'measure' | 'treatment' | 'procedure' | 'event';
  /** Does the bare word mean present (a sign), or is it a test without its result? */
  readonly bare: 'present' | 'incomplete';
  readonly since: 1;
  readonly sections: readonly Section[];
  readonly subjects: readonly SubjectKind[];
  /** Canonical word, then every other form in which the finding is written or said. */
  readonly word: string;
  /** What stands for the word after an adjective: `exquisite tenderness`. */
  readonly noun?: string;
  readonly forms: readonly string[];
  /** Words that open the finding and give a value at once (`medial 12°`). */
  readonly leads: Readonly<Record<string, Lead>>;
  readonly slots: Readonly<Record<string, Slot>>;
  /** Several statements in one visit are no contradiction. */
  readonly many: boolean;
  /** Place in the exam sequence. */
  readonly order: number;
  readonly technique: string;
  readonly meaning: string;
}

type Draft = Omit<Entry, 'since' | 'forms' | 'leads' | 'slots' | 'many'> &
  Partial<Pick<Entry, 'forms' | 'leads' | 'many'>>;

/** Completes an entry with the empty defaults of its optional lists; no slot has a default value. */
export function entry<const I extends string, const S extends Readonly<Record<string, Slot>>>(
  draft: Draft & { readonly id: I; readonly slots: S },
): Omit<Entry, 'id' | 'slots'> & { readonly id: I; readonly slots: S } {
  return { forms: [], leads: {}, many: false, ...draft, since: 1 };
}

export function words<const V extends Readonly<Record<string, readonly string[]>>>(
  values: V,
  more: SlotBase & { readonly many?: boolean } & Pick<WordsSlot, 'wider'> = {},
): WordsSlot<keyof V & string> {
  return { kind: 'words', values, ...more };
}
/** Each narrower value with the value that it counts as. */
export const within = (groups: Readonly<Record<string, readonly string[]>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(groups).flatMap(([wide, narrow]) => narrow.map((value): [string, string] => [value, wide])),
  );
/** A value in a word of its slot: the wider word for the rules, with the narrower that was written. */
export function wordValue(slot: Slot | undefined, value: string): ValueOf<'word'> {
  const wide = slot?.kind === 'words' ? slot.wider?.[value] : undefined;
  return wide === undefined ? { is: 'word', words: [value] } : { is: 'word', words: [wide], said: [value] };
}
/** Several values of one slot as one; what was said narrower stays. */
export function joinWords(values: readonly ValueOf<'word'>[]): ValueOf<'word'> {
  const unique = (words: readonly string[]): readonly string[] => [...new Set(words)];
  const words = unique(values.flatMap((value) => value.words));
  return values.some(({ said }) => said)
    ? { is: 'word', words, said: unique(values.flatMap((value) => value.said ?? value.words)) }
    : { is: 'word', words };
}
export function number(unit: Unit | '', min: number, max: number, bare = false, more: SlotBase = {}): NumberSlot {
  return { kind: 'number', unit, min, max, bare, ...more };
}
export function grade<const G extends GradeSlot['of']>(
  of: G,
  max: number,
  labels: readonly string[] = ['grade', 'gr'],
): GradeSlot & { readonly of: G } {
  return { kind: 'grade', of, min: 0, max, labels };
}
export const duration = (labels: readonly string[] = ['for', 'x']): DurationSlot => ({ kind: 'duration', labels });
export const date = (labels: readonly string[] = ['on', 'in', 'since', 'from'], labelled = false): DateSlot => ({
  kind: 'date',
  labels,
  ...(labelled ? { labelled } : {}),
});
export const fraction = (labels: readonly string[] = []): FractionSlot => ({ kind: 'fraction', labels });
export const clock = (): ClockSlot => ({ kind: 'clock', labels: ['at'] });
export const pair = (): PairSlot => ({ kind: 'pair', locating: true });
/** How much, in the clinician's word. No published cut turns millimetres or degrees into these words. */
export const amount = () =>
  words(
    {
      slight: ['minimal', 'trace', 'slightly', 'a bit', 'a bit of', 'a little', 'a little bit', 'a little bit of'],
      mild: ['mildly', 'minor'],
      moderate: ['mod', 'moderately'],
      marked: ['very', 'markedly'],
      severe: ['severely'],
      gross: ['grossly'],
      exquisite: ['exquisitely'],
    },
    { before: true, wider: within({ marked: ['severe', 'gross', 'exquisite'] }) },
  );

/** Words that open their finding and give one slot a value each: form to value. */
export const given = (slot: string, values: Readonly<Record<string, string>>, more: Lead = {}) =>
  Object.fromEntries(
    Object.entries(values).map(([form, value]): [string, Lead] => [form, { gives: { [slot]: value }, ...more }]),
  );

/** Every form of a table of values opens its finding with that value, by a noun that may be denied. */
export const leadsOf = (slot: string, table: Readonly<Record<string, readonly string[]>>) =>
  Object.fromEntries(
    Object.entries(table).flatMap(([value, others]) =>
      [value, ...others].map((form): [string, Lead] => [form, { gives: { [slot]: value }, noun: true }]),
    ),
  );
