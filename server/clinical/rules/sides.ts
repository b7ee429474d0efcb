import type { LineSyntax } from '../../../grammar/syntax.ts';
import type { Side, Span } from '../../../grammar/values.ts';
import type { Fix } from '../analysis.ts';
import { capital } from '../argument/phrases.ts';
import { type AnyFact, type Place, subjectKey } from '../facts.ts';
import { defineRule, replace } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

export const wrongSide = defineRule({
  ...practice,
  code: 'wrong-side',
  name: 'Wrong side',
  severity: 'danger',
  scope: 'visit',
  reads: [],
  what: "A statement names the other foot than its visit, or no side where the visit doesn't give one.",
  why: 'The wrong side reaches the imaging request and the theatre list.',
  instead: 'Correct the side, make the visit bilateral, or name the side of each statement.',
  examples: { invalid: 'L2 drawer 2', valid: 'R2 drawer 2', nearMiss: 'compression sore both feet' },
  *check({ visit, lines }) {
    const seen = new Set<number>();
    for (const { why, place, word } of visit.unclear) {
      if (why !== 'no side' || seen.has(word.line)) continue;
      seen.add(word.line);
      const message =
        visit.side === 'both'
          ? 'A bilateral visit needs the side of every statement: write R2 or L2, or a heading "right". Not staged.'
          : 'No side is given: write right, left or both on the visit line. Not staged.';
      yield { place, message };
    }
    if (visit.side !== 'right' && visit.side !== 'left') return;
    const reported = new Set<string>();
    for (const fact of visit.facts) {
      if (!fact.side || fact.side === visit.side) continue;
      const once = `${fact.origin.place.line} ${subjectKey(fact.subject, fact.side)}`;
      if (reported.has(once)) continue;
      const bothSides = visit.facts.some((other) => other.statement === fact.statement && other.side === visit.side);
      if (bothSides || isCompared(fact, lines)) continue;
      reported.add(once);
      yield {
        place: fact.origin.place,
        message: `This says ${subjectKey(fact.subject, fact.side)}, but the visit is of the ${visit.side} foot. Correct one of them.`,
        fixes: wrongSideFixes(fact, visit.side, lines),
      };
    }
  },
});

type Lines = readonly LineSyntax[];
const fix = (title: string, place: Place, text: string): Fix => ({
  title,
  safety: 'needs review',
  edits: [replace(place, text)],
});

/** The one word of the line that names the other side takes the visit's, or the visit takes both. */
function wrongSideFixes({ origin }: AnyFact, side: Side, lines: Lines): Fix[] {
  const other = side === 'right' ? 'left' : 'right';
  const here = sideWords(lines[origin.place.line], other);
  const [word] = here;
  const [head] = sideWords(lines[0], side);
  return [
    ...(word && here.length === 1
      ? [fix(`Write "${turned(word.text)}"`, { line: origin.place.line, ...word.at }, turned(word.text))]
      : []),
    ...(head
      ? [fix('Make the visit one of both feet: what names no side is not staged then', { line: 0, ...head.at }, 'both')]
      : []),
  ];
}

const NAMES = { right: /^(?:right|rt|r)(?![a-z])/i, left: /^(?:left|lt|l)(?![a-z])/i };
const sideWords = (line: LineSyntax | undefined, side: Side): { text: string; at: Span }[] =>
  line?.roles.flatMap(({ kind, start, end }) => {
    const text = line.text.slice(start, end);
    return kind !== 'finding' && kind !== 'comment' && NAMES[side].test(text) ? [{ text, at: { start, end } }] : [];
  }) ?? [];
const OTHER: Readonly<Record<string, string>> = { right: 'left', left: 'right', r: 'l', l: 'r', rt: 'lt', lt: 'rt' };
/** `L2` to `R2`, `left` to `right`, in the writer's own case. */
const turned = (text: string): string =>
  text.replace(/^[a-z]+/i, (name) => {
    const other = OTHER[name.toLowerCase()] ?? name;
    return name === name.toLowerCase() ? other : name.length > 2 ? capital(other) : other.toUpperCase();
  });

const COMPARED = /\b(?:(?:r|right)\s*[=<>≈]\s*(?:l|left)|(?:l|left)\s*[=<>≈]\s*(?:r|right))\b/i;
/** `drawer R=L` compares the feet and is kept as typed: it names no wrong side. */
const isCompared = ({ clarity, origin }: AnyFact, lines: readonly LineSyntax[]): boolean =>
  clarity === 'unclear' && COMPARED.test(lines[origin.place.line]?.text ?? '');

const INVASIVE: readonly string[] = ['operation', 'steroid'];

export const sideFromHeading = defineRule({
  ...practice,
  code: 'side-from-heading',
  name: 'Side of a plan from a heading',
  severity: 'missing',
  scope: 'statement',
  reads: ['operation', 'steroid', 'tape', 'image'],
  what: 'In a bilateral visit a line of the plan takes its side only from a heading further up.',
  why: 'A heading reaches to the next one, so a plan that was meant for the other foot, or for both, would be read as one-sided.',
  instead: 'Write the side with the treatment (tape R2), or a heading "both:" or "right:" before the plan.',
  examples: {
    invalid: 'forefoot 1\n\nvisit 2026-03-09 first both\nL:\n2nd tender plantar\nplan tape 2nd',
    valid: 'forefoot 1\n\nvisit 2026-03-09 first both\nL:\n2nd tender plantar\nplan tape L2',
    nearMiss: 'right:\n2nd tender plantar\nplan tape 2nd',
  },
  *check({ visit }) {
    if (visit.side !== 'both') return;
    const lines = new Map<number, (typeof visit.facts)[number]>();
    for (const fact of visit.facts) {
      const { line } = fact.origin.place;
      if (fact.section !== 'plan' || fact.origin.sideFrom !== 'heading' || fact.status === 'avoid') continue;
      if (!lines.has(line) || INVASIVE.includes(fact.finding)) lines.set(line, fact);
    }
    for (const fact of lines.values())
      yield {
        place: fact.origin.place,
        severity: INVASIVE.includes(fact.finding) ? 'contradiction' : 'missing',
        message: `This is read as the ${fact.side} foot, from the heading above. Write the side here, or "both:" before the plan.`,
      };
  },
});
