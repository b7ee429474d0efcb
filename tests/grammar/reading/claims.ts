import { leadsIn } from '../../../grammar/generate/contexts.ts';
import * as closed from '../../../grammar/lexicon/closed-words.ts';
import type { Entry, Section } from '../../../grammar/lexicon/entry.ts';
import { LEXICON } from '../../../grammar/lexicon/index.ts';
import { partsOfForm } from '../../../grammar/reader/forms.ts';

/** A form that more than one meaning could claim in a section; a claim in every section is written once, with `any`. */
export interface Collision {
  readonly form: string;
  readonly section: Section | 'any';
  readonly claims: readonly string[];
}

/** The closed classes whose words are read by themselves; the other lists of the file qualify words of these. */
const CLASSES: Readonly<Record<string, readonly string[]>> = {
  no: closed.NO,
  not: closed.NOT,
  absent: closed.ABSENT,
  'not done': closed.NOT_DONE,
  unable: closed.UNABLE,
  equivocal: closed.EQUIVOCAL,
  positive: closed.POSITIVE,
  present: closed.PRESENT,
  avoid: closed.AVOID,
  distancing: closed.DISTANCING,
  harmless: closed.HARMLESS,
  filler: closed.FILLERS,
  'list end': closed.LIST_ENDERS,
  adjective: closed.HARMLESS_ADJECTIVES,
  panel: closed.PANEL,
  others: closed.OTHERS,
  side: Object.keys(closed.SIDES),
  'ray word': closed.RAY_WORDS,
  'web word': closed.WEB_WORDS,
  much: closed.MUCH,
  'joint word': closed.JOINT_WORDS,
  'joints word': closed.JOINTS_WORDS,
  'foreign part': closed.FOREIGN_PARTS,
};
const SECTIONS = Object.keys(closed.SECTION_WORD) as Section[];
const keyOf = (form: string): string => partsOfForm(form.toLowerCase()).join(' ');

class Claims {
  private readonly map = new Map<string, Set<string>>();
  add(form: string, claim: string): void {
    const key = keyOf(form);
    this.map.set(key, (this.map.get(key) ?? new Set()).add(claim));
  }
  /** The forms with several claims, of which one at least is of the lexicon or of two closed classes. */
  contested(): [string, string[]][] {
    return [...this.map].flatMap(([form, claims]) => (claims.size > 1 ? [[form, [...claims].sort()]] : []));
  }
}

function addClosed(claims: Claims): void {
  for (const [name, words] of Object.entries(CLASSES)) for (const word of words) claims.add(word, `class ${name}`);
  for (const word of Object.keys(closed.SECTION_WORDS)) claims.add(word, 'section word');
}
function addEntry(claims: Claims, entry: Entry, section: Section): void {
  for (const form of [entry.word, ...entry.forms]) claims.add(form, `finding ${entry.id}`);
  for (const form of leadsIn(entry, section)) claims.add(form, `lead ${entry.id}`);
}

/** Findings, leads, section words and closed words that share a form where the finding is legal. */
function sharedForms(section: Section): [string, string[]][] {
  const claims = new Claims();
  addClosed(claims);
  for (const entry of LEXICON as readonly Entry[])
    if (entry.sections.includes(section)) addEntry(claims, entry, section);
  return claims.contested();
}
function closedForms(): [string, string[]][] {
  const claims = new Claims();
  addClosed(claims);
  return claims.contested();
}
const textsOf = (entry: Entry): [string, string][] =>
  Object.entries(entry.slots).flatMap(([slot, shape]) => {
    const values = shape.kind === 'words' ? Object.entries(shape.values).flat(2) : [];
    return [...values.map((form): [string, string] => [form, `value ${entry.id}.${slot}`])].concat(
      (shape.labels ?? []).map((form): [string, string] => [form, `label ${entry.id}.${slot}`]),
    );
  });

/** Values and labels that are closed words or section words too, with all the entries that use them. */
function valueForms(): [string, string[]][] {
  const all = new Claims();
  addClosed(all);
  const taken = new Set<string>();
  for (const entry of LEXICON as readonly Entry[])
    for (const [form, claim] of textsOf(entry)) {
      all.add(form, claim);
      taken.add(keyOf(form));
    }
  return all
    .contested()
    .filter(([form, claims]) => taken.has(form) && claims.some((claim) => /^(class|section)/.test(claim)));
}

/** Forms of one entry that stand in two of its slots. */
export function twiceInOneEntry(): string[] {
  return (LEXICON as readonly Entry[]).flatMap((entry) => {
    const claims = new Claims();
    for (const [form, claim] of textsOf(entry)) claims.add(form, claim);
    return claims.contested().map(([form, list]) => `${form}: ${list.join(', ')}`);
  });
}

export function collisions(): Collision[] {
  const everywhere = closedForms().map(([form, claims]): Collision => ({ form, section: 'any', claims }));
  const known = new Set(everywhere.map(({ form, claims }) => `${form}: ${claims}`));
  const local = SECTIONS.flatMap((section) =>
    sharedForms(section)
      .filter(([form, claims]) => !known.has(`${form}: ${claims}`))
      .map(([form, claims]): Collision => ({ form, section, claims })),
  );
  const values = valueForms().map(([form, claims]): Collision => ({ form, section: 'any', claims }));
  return [...everywhere.filter(({ form }) => !values.some((value) => value.form === form)), ...local, ...values];
}
