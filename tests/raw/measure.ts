import type { LineSyntax } from '../../grammar/syntax.ts';
import type { NoteAnalysis } from '../../server/clinical/analyse-note.ts';
import { type AnyFact, subjectKey, type Verbatim } from '../../server/clinical/facts.ts';

/** How many words of the statements were understood, kept as a quote, unclear, or unknown. Header and comments don't count. */
export interface Shares {
  readonly words: number;
  readonly understood: number;
  readonly verbatim: number;
  readonly unclear: number;
  readonly unknown: number;
}
export interface ClearFact {
  /** The line in the note, from 1. */
  readonly line: number;
  readonly text: string;
  readonly fact: string;
}

const NOTHING: Shares = { words: 0, understood: 0, verbatim: 0, unclear: 0, unknown: 0 };
const sum = (a: Shares, b: Shares): Shares => ({
  words: a.words + b.words,
  understood: a.understood + b.understood,
  verbatim: a.verbatim + b.verbatim,
  unclear: a.unclear + b.unclear,
  unknown: a.unknown + b.unknown,
});
export const total = (shares: readonly Shares[]): Shares => shares.reduce(sum, NOTHING);
/** Understood, or kept as the clinician's own quoted words: what nothing has to be asked about. */
export const settled = ({ words, understood, verbatim }: Shares): number => (understood + verbatim) / words;

export function sharesOf(note: NoteAnalysis): Shares {
  return total(
    note.visits.flatMap(({ syntax, analysis }) =>
      syntax.map((line, at) =>
        shareOfLine(
          line,
          analysis.facts.verbatim.filter(({ place }) => place.line === at),
        ),
      ),
    ),
  );
}

/** A word is a run of characters between spaces that holds a letter or a digit; its worst part decides. */
function shareOfLine({ kind, text, roles }: LineSyntax, kept: readonly Verbatim[]): Shares {
  if (kind !== 'statements') return NOTHING;
  const counts = { ...NOTHING };
  for (const match of text.matchAll(/\S*[\p{L}\d]\S*/gu)) {
    const [start, end] = [match.index, match.index + match[0].length];
    const touches = (at: { start: number; end: number }) => at.start < end && start < at.end;
    const kinds = new Set(roles.filter(touches).map((role) => role.kind));
    if (kinds.has('comment')) continue;
    counts.words++;
    if (kinds.has('reported')) counts.unknown++;
    else if (kept.some(({ quote, place }) => !quote && touches(place) && !kinds.has('verbatim'))) counts.unclear++;
    else if (kinds.has('verbatim')) counts.verbatim++;
    else counts.understood++;
  }
  return counts;
}

/** Every fact that is clear, with the text that it was read from, in the order of the note. */
export function clearFactsOf(note: NoteAnalysis): ClearFact[] {
  return note.visits.flatMap(({ firstLine, analysis }) =>
    analysis.facts.facts
      .filter(({ clarity }) => clarity === 'clear')
      .map((fact) => {
        const line = firstLine + fact.origin.place.line;
        return { line: line + 1, text: note.lines[line] ?? '', fact: compact(fact) };
      }),
  );
}

/** `exam right ray 2: drawer present {"grade":…}`; what is unclear of it, after `unclear`. */
function compact({ section, subject, side, finding, status, values, unclear, origin, quotes }: AnyFact): string {
  const part = subject.at === 'ray' && subject.part ? ` ${subject.part}` : '';
  const open = unclear.length > 0 ? ` unclear ${unclear.join(', ')}` : '';
  const said = quotes.length > 0 ? ` "${quotes.join('" "')}"` : '';
  const panel = origin.kind === 'panel' ? ' by panel' : '';
  const slots = Object.entries(values).map(([slot, value]) => ` ${slot} ${spelled(value)}`);
  return `${section} ${subjectKey(subject, side)}${part}: ${finding} ${status}${panel}${slots.join('')}${open}${said}`;
}
const spelled = (value: object): string =>
  Object.entries(value)
    .filter(([key]) => key !== 'is')
    .map(([key, each]) => `${key}=${JSON.stringify(each)}`)
    .join(' ')
    .replaceAll('"', '');
