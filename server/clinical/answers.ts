import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Ray, Side, Web } from '../../grammar/values.ts';
import { clearFactsOf, clearFactsOfRay, factsOf } from './fact-index.ts';
import type { AnyFact } from './facts.ts';

type FactOf<F extends FindingId> = Extract<AnyFact, { finding: F }>;

/** How the core asks: silence is an answer of its own and never means normal. */
export type Answer<F extends FindingId> =
  | { readonly is: 'stated'; readonly fact: FactOf<F> }
  | { readonly is: 'conflicting'; readonly facts: readonly FactOf<F>[] }
  | { readonly is: 'unclear'; readonly facts: readonly FactOf<F>[] }
  | { readonly is: 'not mentioned' };

export interface About {
  readonly side?: Side;
  readonly ray?: Ray;
  readonly web?: Web;
  /** Only what is said of the foot or the patient. */
  readonly whole?: true;
}

/** Is the fact about this side and subject? A fact of the patient is about every side; one of the foot, about its rays only when asked as whole. */
export function concerns(fact: AnyFact, about: About): boolean {
  const { subject, side } = fact;
  if (about.side && side && side !== about.side) return false;
  if (about.ray !== undefined) return subject.at === 'ray' && subject.ray === about.ray;
  if (about.web !== undefined) return subject.at === 'web' && subject.web === about.web;
  return about.whole ? subject.at === 'foot' || subject.at === 'patient' : true;
}

/** The one clear statement of a finding about a subject, or why there is none. Equal statements are one. */
export function ask<F extends FindingId>(facts: readonly AnyFact[], finding: F, about: About): Answer<F> {
  const clear = clearFacts(facts, finding, about);
  const first = clear[0];
  if (!first) {
    const all = factsOf(facts, finding);
    // None of the finding is unclear, of whatever subject.
    if (all.length === clearFactsOf(facts, finding).length) return NOT_MENTIONED;
    const unclear = all.filter((fact) => concerns(fact, about));
    return unclear.length > 0 ? { is: 'unclear', facts: unclear } : NOT_MENTIONED;
  }
  return clear.length === 1 || clear.every((fact) => sameMeaning(fact, first))
    ? { is: 'stated', fact: first }
    : { is: 'conflicting', facts: clear };
}

const NOT_MENTIONED = { is: 'not mentioned' } as const;

/** Do two facts of one finding say the same? Places and quotes aside. */
export const sameMeaning = (a: AnyFact, b: AnyFact): boolean =>
  a === b || (a.status === b.status && meaningOf(a.values) === meaningOf(b.values));
/** A narrower word means what its wider one does: `severe` beside `marked` is no conflict. */
const meaningOf = (values: object): string =>
  JSON.stringify(sorted(values), (key, value) => (key === 'said' ? undefined : value));

const sorted = (values: object): [string, unknown][] => Object.entries(values).sort(([a], [b]) => a.localeCompare(b));

/** Is only one kind of the finding denied? `no gi bleed` takes back no ulcer, `no warfarin` no other anticoagulant. */
export const deniesOneKind = ({ status, values }: AnyFact): boolean =>
  status === 'absent' && ('kind' in values || 'name' in values);

/** All clear facts of a finding about a subject; for findings that may stand many times. */
export function clearFacts<F extends FindingId>(
  facts: readonly AnyFact[],
  finding: F,
  about?: About,
): readonly FactOf<F>[] {
  const { ray } = about ?? {};
  const all = ray === undefined ? clearFactsOf(facts, finding) : clearFactsOfRay(facts, finding, ray);
  // Most findings are not mentioned in most visits, and fifty rules ask.
  if (all.length === 0 || !about) return all;
  const found: FactOf<F>[] = [];
  for (const fact of all) if (concerns(fact, about)) found.push(fact);
  return found;
}

/** Is any clear fact of the finding present (or absent) about the subject? */
export const isStated = (
  facts: readonly AnyFact[],
  finding: FindingId,
  status: 'present' | 'absent',
  about: About = {},
): boolean => clearFacts(facts, finding, about).some((fact) => fact.status === status);

/** Films of a ray that show its joint dislocated; a film that denies it does not. */
export const dislocatedFilms = (facts: readonly AnyFact[], about: About): FactOf<'film-joint'>[] =>
  clearFacts(facts, 'film-joint', about).filter(
    ({ status, values }) => status === 'present' && values.state?.words.includes('dislocated'),
  );

/** Statements that the toe is straight. `no medial` denies one direction and says nothing of the other. */
export const straightToe = (facts: readonly AnyFact[], about: About): FactOf<'deviation'>[] =>
  clearFacts(facts, 'deviation', about).filter(({ status, values }) => status === 'absent' && !values.direction);

/** Those of some facts that say present. */
export const present = <T extends AnyFact>(facts: readonly T[]): T[] =>
  facts.filter(({ status }) => status === 'present');

/** The statements behind some facts, each once. */
export const statementIds = (facts: readonly AnyFact[]): string[] => [
  ...new Set(facts.map(({ statement }) => statement)),
];
