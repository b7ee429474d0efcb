import * as closed from '../lexicon/closed-words.ts';
import type { Entry, Lead, Section } from '../lexicon/entry.ts';
import { type FindingId, LEXICON } from '../lexicon/index.ts';
import * as spoken from '../spoken/spoken-words.ts';
import type { Side } from '../values.ts';
import type { Item } from './items.ts';

export type WordClass =
  | 'no'
  | 'not'
  | 'absent'
  | 'not done'
  | 'unable'
  | 'reason'
  | 'equivocal'
  | 'positive'
  | 'present'
  | 'much'
  | 'avoid'
  | 'distancing'
  | 'harmless'
  | 'filler'
  | 'list end'
  | 'adjective'
  | 'emphasis'
  | 'panel'
  | 'others'
  | 'ray word'
  | 'web word'
  | 'joint word'
  | 'joints word'
  | 'foreign part';

export interface ValueClaim {
  readonly slot: string;
  readonly value: string;
}
/** All that one form (a word or a phrase) may mean; the context decides which. */
export interface Form {
  readonly parts: readonly string[];
  section?: { readonly section: Section; readonly strong: boolean };
  side?: Side | 'both';
  readonly findings: { readonly id: FindingId; readonly lead?: Lead }[];
  readonly values: Map<FindingId, ValueClaim[]>;
  readonly labels: Map<FindingId, string>;
  readonly trails: Map<FindingId, string>;
  readonly classes: Set<WordClass>;
  /** May a subject start with it? */
  opensSubject: boolean;
}

const SUBJECT_WORDS = ['others', 'web word', 'ray word'] as const;

const CLASSES: readonly (readonly [WordClass, readonly string[]])[] = [
  ['no', closed.NO],
  ['not', closed.NOT],
  ['absent', closed.ABSENT],
  ['not done', closed.NOT_DONE],
  ['unable', closed.UNABLE],
  ['reason', closed.REASONS],
  ['equivocal', closed.EQUIVOCAL],
  ['positive', closed.POSITIVE],
  ['present', closed.PRESENT],
  ['much', closed.MUCH],
  ['avoid', closed.AVOID],
  ['distancing', closed.DISTANCING],
  ['harmless', closed.HARMLESS],
  ['filler', closed.FILLERS],
  ['filler', spoken.CONNECTIVES],
  ['emphasis', spoken.EMPHASIS],
  ['distancing', spoken.CORRECTIONS],
  ['list end', closed.LIST_ENDERS],
  ['adjective', closed.HARMLESS_ADJECTIVES],
  ['panel', closed.PANEL],
  ['others', closed.OTHERS],
  ['ray word', closed.RAY_WORDS],
  ['web word', closed.WEB_WORDS],
  ['joint word', closed.JOINT_WORDS],
  ['joints word', closed.JOINTS_WORDS],
  ['foreign part', closed.FOREIGN_PARTS],
];

type FormIndex = ReadonlyMap<string, readonly Form[]>;

/** `pulls-out` and `pulls out` are one form. */
export const partsOfForm = (form: string): string[] =>
  form.includes('-')
    ? form.split(' ').flatMap((word) => (/^\p{L}.*-/u.test(word) ? word.split('-') : [word]))
    : form.split(' ');

function build(): FormIndex {
  const byText = new Map<string, Form>();
  const at = (text: string): Form => {
    const parts = partsOfForm(text.toLowerCase());
    const key = parts.join(' ');
    let form = byText.get(key);
    if (!form) {
      form = {
        parts,
        findings: [],
        values: new Map(),
        labels: new Map(),
        trails: new Map(),
        classes: new Set(),
        opensSubject: false,
      };
      byText.set(key, form);
    }
    return form;
  };
  for (const [name, list] of CLASSES) for (const text of list) at(text).classes.add(name);
  for (const [text, section] of Object.entries(closed.SECTION_WORDS)) at(text).section = section;
  for (const [text, side] of Object.entries(closed.SIDES)) at(text).side = side;
  for (const entry of LEXICON) {
    const id = entry.id;
    for (const text of [entry.word, ...entry.forms]) at(text).findings.push({ id });
    for (const [text, lead] of Object.entries(entry.leads as Record<string, Lead>))
      at(text).findings.push({ id, lead });
    for (const [slot, shape] of Object.entries(entry.slots)) {
      for (const text of shape.labels ?? []) at(text).labels.set(id, slot);
      for (const text of shape.trails ?? []) at(text).trails.set(id, slot);
      if (shape.kind !== 'words') continue;
      for (const [value, others] of Object.entries(shape.values as Record<string, readonly string[]>)) {
        for (const text of [value, ...others]) {
          const { values } = at(text);
          const claims = values.get(id);
          if (claims) claims.push({ slot, value });
          else values.set(id, [{ slot, value }]);
        }
      }
    }
  }
  const byFirst = new Map<string, Form[]>();
  for (const form of byText.values()) {
    form.opensSubject = SUBJECT_WORDS.some((name) => form.classes.has(name));
    const first = form.parts[0] ?? '';
    const same = byFirst.get(first);
    if (same) same.push(form);
    else byFirst.set(first, [form]);
  }
  for (const forms of byFirst.values()) forms.sort((a, b) => b.parts.length - a.parts.length);
  return byFirst;
}

let index: FormIndex | undefined;
/** Every form by its first word, longest phrase first. Built once from the lexicon. */
export function formIndex(): FormIndex {
  index ??= build();
  return index;
}

export interface Match {
  readonly form: Form;
  /** Index of the item after the phrase. */
  readonly next: number;
}

const partsAt = (item: Item | undefined): readonly string[] | undefined =>
  item?.is === 'word'
    ? item.parts
    : item?.is === 'other'
      ? [item.text]
      : item?.is === 'number' && item.said?.length
        ? item.said
        : undefined;
/** The form that the text spells from its first word to its last. */
export function formOf(text: string): Form | undefined {
  const parts = partsOfForm(text.toLowerCase());
  const key = parts.join(' ');
  return formIndex()
    .get(parts[0] ?? '')
    ?.find((each) => each.parts.join(' ') === key);
}
/** Is the text one word of the lexicon? */
export const isForm = (text: string): boolean =>
  formIndex()
    .get(text)
    ?.some(({ parts }) => parts.length === 1) ?? false;

/** What the items of the line that is being read spell: each word is looked up once, however often the reader looks at it. */
let lookedUp: { readonly items: readonly Item[]; readonly matches: (readonly Match[] | undefined)[] } | undefined;

/** The forms that the items at `start` spell, longest first; empty for an unknown word. */
export function matchesAt(items: readonly Item[], start: number): readonly Match[] {
  if (lookedUp?.items !== items) lookedUp = { items, matches: [] };
  const { matches } = lookedUp;
  const known = matches[start];
  if (known) return known;
  const found = lookUp(items, start);
  matches[start] = found;
  return found;
}

const NOTHING: readonly Match[] = [];
function lookUp(items: readonly Item[], start: number): readonly Match[] {
  const parts = partsAt(items[start]);
  const candidates = parts && formIndex().get(parts[0] ?? '');
  if (!candidates) return NOTHING;
  // Nearly all phrases that start with the word go on with another one than the line.
  const second = parts[1] ?? partsAt(items[start + 1])?.[0];
  const found: Match[] = [];
  for (const form of candidates) {
    const goesOn = form.parts[1];
    if (goesOn !== undefined && goesOn !== second) continue;
    const next = endOf(items, start, form.parts);
    if (next !== undefined) found.push({ form, next });
  }
  return found;
}

function endOf(items: readonly Item[], start: number, parts: readonly string[]): number | undefined {
  let matched = 0;
  for (let i = start; ; i++) {
    for (const part of partsAt(items[i]) ?? [undefined]) {
      if (part === undefined || parts[matched] !== part) return undefined;
      matched++;
    }
    if (matched === parts.length) return i + 1;
  }
}

/** The slot in which a value may stand before its finding. */
export function beforeClaim(form: Form, id: FindingId, entry: Entry): ValueClaim | undefined {
  return form.values.get(id)?.find(({ slot }) => entry.slots[slot]?.before || entry.slots[slot]?.locating);
}

/** Findings of the whole foot whose words are also those of a joint. */
export const OF_FOOT: ReadonlySet<string> = new Set<FindingId>(['foot-swelling']);
