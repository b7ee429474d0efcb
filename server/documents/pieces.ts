import { entryOf, type FindingId } from '../../grammar/lexicon/index.ts';
import type { Value } from '../../grammar/values.ts';
import type { AnyFact, Fact } from '../clinical/facts.ts';
import { PHRASES } from './phrases/index.ts';
import { commas, type Noun, type Phrase, type Predicate, type Preposition, type Said, was } from './phrases/phrase.ts';
import { words } from './sentence.ts';
import { valueWords } from './values.ts';

/** One fact in the words of its finding, ready to be grouped with others of the same shape. */
export interface Piece {
  readonly fact: AnyFact;
  readonly order: number;
  readonly shape:
    | { readonly is: 'there'; readonly absent: boolean; readonly text: string }
    | { readonly is: 'subject'; readonly predicate: Predicate }
    | { readonly is: 'own' | 'status'; readonly predicate: Predicate & { readonly subject: string } };
  readonly quote: string;
  readonly preposition?: string;
  readonly topic?: string;
  readonly placeLast?: true;
  readonly noun?: Noun;
}

/** The words of a fact's clear values, slot by slot. */
export function saidOf<F extends FindingId>(fact: Pick<Fact<F>, 'values'>, phrase: Phrase<F>): Said<F> {
  const wording = phrase.wording as Readonly<Record<string, Readonly<Record<string, string>>>>;
  const entries = Object.entries(fact.values as Readonly<Record<string, Value>>).map(([slot, value]) => {
    const named = wording[slot];
    const text =
      value.is === 'word' && named
        ? words((value.said ?? value.words).map((word) => named[word] ?? word))
        : valueWords(value);
    return [slot, text] as const;
  });
  return Object.fromEntries(entries) as Said<F>;
}

/** Puts a clear fact into words: its result where it is present or absent, else what became of it. */
export function pieceOf<F extends FindingId>(fact: Fact<F>): Piece {
  const phrase: Phrase<F> = PHRASES[fact.finding];
  const said = saidOf(fact, phrase);
  const { order } = entryOf(fact.finding);
  const result = fact.status === 'present' || fact.status === 'absent';
  const { topic, preposition, noun, placeLast } = phrase;
  return {
    fact: fact as unknown as AnyFact,
    order,
    shape: shapeOf(fact, phrase, said),
    quote: [
      ...fact.quotes.map((quote) => `"${quote}"`),
      ...(fact.examiner ? [`examined by ${fact.examiner}`] : []),
    ].join(', '),
    ...(topic ? { topic } : {}),
    ...(placeLast && result ? { placeLast } : {}),
    ...(preposition ? { preposition: prepositionAt(preposition, fact.subject.at) } : {}),
    ...(noun && (phrase.shape === 'own' || result) ? { noun } : {}),
  };
}

function shapeOf<F extends FindingId>(fact: Fact<F>, phrase: Phrase<F>, said: Said<F>): Piece['shape'] {
  const { status, section } = fact;
  if (status !== 'present' && status !== 'absent') return { is: 'status', predicate: statusOf(fact, phrase, said) };
  if (phrase.shape === 'there') return { is: 'there', absent: status === 'absent', text: phrase[status](said) };
  if (phrase.shape === 'subject') return { is: 'subject', predicate: phrase[status](said) };
  const predicate = phrase[status](said, section);
  const own = { subject: phrase.name, ...(phrase.plural ? { plural: true } : {}) };
  return {
    is: 'own',
    predicate: {
      ...own,
      ...predicate,
      subject: predicate.subject ?? phrase.name,
      plural: predicate.plural || phrase.plural === true,
    },
  };
}

const prepositionAt = (preposition: Preposition, at: AnyFact['subject']['at']): string =>
  typeof preposition === 'string' ? preposition : at === 'patient' ? '' : preposition[at];

const ASSESSED = 'assessed';
/** What is left out of a plan as harmful; of the rest (`no review`, `no xray`) only that the plan does without. */
const TO_AVOID: ReadonlySet<FindingId> = new Set([
  'steroid',
  'injection',
  'anti-inflammatory',
  'medicine',
  'footwear',
  'stretching',
]);

/** Equivocal, not done, unable and avoid: what is said of the finding itself, its values in brackets. */
function statusOf<F extends FindingId>(
  fact: Fact<F>,
  phrase: Phrase<F>,
  said: Said<F>,
): Predicate & { subject: string } {
  const details = commas(...Object.values<string | undefined>(said));
  const subject = details ? `${phrase.name} (${details})` : phrase.name;
  const plural = phrase.plural === true;
  const by = phrase.by ?? ASSESSED;
  const seen = ['sign', 'measure'].includes(entryOf(fact.finding).kind);
  switch (fact.status) {
    case 'not done':
      return { ...was(`not ${by}`), subject, plural };
    case 'unable':
      return { verb: 'could', rest: `not be ${by}`, subject, plural };
    case 'avoid':
      return {
        verb: 'is',
        rest: TO_AVOID.has(fact.finding) ? 'to be avoided' : 'not part of the plan',
        subject,
        plural,
      };
    default:
      return { ...was(seen ? 'equivocal' : 'recorded as uncertain'), subject, plural };
  }
}
