import type { Slot } from '../../../grammar/lexicon/entry.ts';
import { entryOf, type FindingId } from '../../../grammar/lexicon/index.ts';
import type { Unclear } from '../facts.ts';
import { dateFault, websMeant } from '../reading-reports.ts';
import { defineRule, replace } from './define-rule.ts';

const practice = { source: 'common practice', mark: 'common practice' } as const;

const word = (finding: Unclear['finding']): string => (finding === 'panel' ? 'normal' : entryOf(finding).word);
const slotOf = (finding: Unclear['finding'], slot: string): Slot | undefined =>
  finding === 'panel' ? undefined : entryOf(finding).slots[slot];

/** The range of a slot in words. */
function rangeOf(finding: FindingId | 'panel', slot: string): string {
  const shape = slotOf(finding, slot);
  if (shape?.kind === 'grade') return `${shape.min} to ${shape.max}, whole`;
  if (shape?.kind === 'number') return `${shape.min} to ${shape.max} ${shape.unit}`.trim();
  return 'at most so many as were tested';
}

export const valueOutOfRange = defineRule({
  ...practice,
  code: 'value-out-of-range',
  name: 'Value out of range',
  severity: 'contradiction',
  scope: 'statement',
  reads: ['drawer', 'stage', 'pain', 'hva', 'ima', 'deviation'],
  needs: ['unclear'],
  what: 'A number lies outside what its finding can measure.',
  why: 'A slip of a key turns one grade into another; such a value is kept as typed and never computed with.',
  instead: 'Write a value inside the range that the message names.',
  examples: { invalid: '2nd drawer 9', valid: '2nd drawer 3', nearMiss: 'pain 2nd 9/10' },
  *check({ visit }) {
    for (const { why, place, finding, slot, text } of visit.unclear)
      if (why === 'out of range' && slot)
        yield {
          place,
          message: `${text} is outside the range of ${word(finding)} (${rangeOf(finding, slot)}), so it is kept as typed. Correct the value.`,
        };
  },
});

export const wrongUnit = defineRule({
  ...practice,
  code: 'wrong-unit',
  name: 'Wrong unit',
  severity: 'contradiction',
  scope: 'statement',
  reads: ['drawer', 'lifted', 'hva', 'ima', 'deviation', 'tear'],
  needs: ['unclear'],
  what: 'A number carries a unit that its finding does not have.',
  why: 'No source gives millimetres for a drawer grade, nor degrees for a length; nothing is converted by guess.',
  instead: 'Write the unit of the finding, or the finding that the unit belongs to.',
  examples: { invalid: 'xray wb hva 22 mm', valid: 'xray wb hva 22°', nearMiss: 'xray wb hva 22' },
  *check({ visit }) {
    for (const { why, place, finding, slot, text } of visit.unclear) {
      if (why !== 'wrong unit' || !slot) continue;
      const shape = slotOf(finding, slot);
      const unit = shape?.kind === 'number' ? shape.unit : '';
      const wants = unit ? `is measured in ${unit}` : 'is a grade without unit';
      const number = /^[~<>≤≥]?\s*[\d.]+(?:-[\d.]+)?/.exec(text)?.[0];
      const title = `Write ${number}${unit === '°' || unit === '%' ? unit : ` ${unit}`}`.trim();
      const fixes =
        number && unit ? [{ title, safety: 'needs review', edits: [replace(place, title.slice(6))] } as const] : [];
      yield {
        place,
        message: `${word(finding)} ${wants}, not "${text}", so the value is not used. Correct the unit.`,
        fixes,
      };
    }
  },
});

const REASONS: Readonly<Partial<Record<Unclear['why'], (unclear: Unclear) => string>>> = {
  'unknown word': ({ text }) => `"${text}" beside it isn't understood`,
  'word out of place': ({ text }) => `"${text}" has no place here`,
  'number without place': ({ text }) => `"${text}" has no place here`,
  'distancing word': ({ text }) => `"${text}" moves it away from today`,
  'reach of no': () => 'it is not sure how far "no" reaches',
  'misplaced not': () => '"not" may stand only directly before a finding',
  doubt: () => 'it carries a question mark or a bound with its value',
  'either neighbour': ({ text }) =>
    text ? `"${text}" could belong to either neighbour` : 'it could be said of the finding beside it',
  'subject without finding': () => 'a ray or web without a finding stands beside it',
  'subject between': ({ text }) => `"${text}" could belong to the finding before or after it`,
  'absent with value': () => 'it is denied and has a value',
  'no result': () => 'the test has no result',
  'named result': () => "the test's results have names of their own",
  'wide range': () => 'only neighbouring grades make a range',
  'ambiguous web': ({ text }) => `"${text}" may be one space or two: write ${websMeant(text)}`,
  'ambiguous date': ({ text }) => `"${text}" ${dateFault(text)}`,
  'foreign part': ({ text }) => (text ? `"${text}" is another part of the body` : 'another part of the body is named'),
  comparison: () => 'a comparison is kept as typed',
  'no subject': ({ finding }) =>
    finding === 'squeeze' ? 'no web is named; of the whole row of joints write compression' : 'no ray or web is named',
  'no image': () => 'no image is named: begin the line with it, such as xray or mri',
  'two statuses': () => 'it has two statuses',
  'done or planned': () =>
    'it is not said to be done: write "operation done" on its day, "plan" before what is to come, or "history previous operation 2nd weil 2025-11"',
  'toe or web': () => 'it may be of the toe or of the web space: write "web 2 numb", or the toe on a line of its own',
  'toe or foot': () =>
    'it may be of the toe that was named before, or of the whole foot: say the toe again, as in "2nd swelling mild"',
  'both of what': () =>
    'both pulses of this foot, or both feet: write "pulses palpable", or "pulses palpable both feet"',
  'when or how long': ({ text }) =>
    `"${text}" may say when, or for how long: write "for ${text}", or put the order in quotes`,
  'which toe': () =>
    'it is not sure which toe lies on which: write "2nd overlap hallux" or "2nd overlap third", or put it in quotes',
};

/** A story is kept as typed, what was is said to be so (`drawer was 1`), and a test without its result may still be typed: no warning. */
const isQuiet = ({ why, section, finding }: Unclear): boolean =>
  why === 'no result' ||
  why === 'distancing word' ||
  section === 'history' ||
  section === 'pain' ||
  section === 'tried' ||
  (section === 'plan' && !HARMFUL_PLANS.includes(finding));
/** Plans that do harm where they are misread; a review "with films" or "if worse" is none. */
const HARMFUL_PLANS: readonly string[] = [
  'operation',
  'steroid',
  'anti-inflammatory',
  'tape',
  'boot',
  'pin-out',
  'weight-bearing',
  'ordinary-shoes',
];

export const unclearFinding = defineRule({
  ...practice,
  code: 'unclear-finding',
  name: 'Unclear finding',
  severity: 'contradiction',
  scope: 'statement',
  reads: [],
  needs: ['unclear'],
  what: 'A finding, or its value, cannot be read with certainty.',
  why: 'A misread finding is worse than an unread one: it is written as typed and nothing is computed from it.',
  instead: 'Say it in the words of the language, each finding between commas, or put the remark in quotes.',
  examples: { invalid: '2nd drawer not 2', valid: '2nd drawer 2', nearMiss: '2nd not tender' },
  *check({ visit }) {
    const seen = new Set<string>();
    for (const unclear of visit.unclear) {
      const reason = REASONS[unclear.why]?.(unclear);
      const key = `${unclear.word.line}:${unclear.word.start}:${unclear.slot ?? ''}`;
      if (!reason || seen.has(key)) continue;
      seen.add(key);
      const what = unclear.slot ? `The value of ${word(unclear.finding)}` : word(unclear.finding);
      const related = [{ place: unclear.word, message: 'the finding that is kept as typed' }];
      const quote = { title: `Keep "${unclear.text}" as a quoted remark`, safety: 'needs review' } as const;
      const quotable = unclear.why === 'unknown word' && unclear.text.length > 0;
      const fixes = quotable ? [{ ...quote, edits: [replace(unclear.place, `"${unclear.text}"`)] }] : [];
      yield {
        place: unclear.place,
        severity: isQuiet(unclear) ? 'missing' : 'contradiction',
        message: `${what} is kept as typed and not used: ${reason}.`,
        related,
        fixes,
      };
    }
  },
});
