import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import { ordinalOf } from '../../../grammar/values.ts';
import type { AdvisedRay, AdvisedVisit, Evidence, RayAnalysis } from '../analysis.ts';
import { CAUTIONS } from '../cautions.ts';
import { decide } from '../decide.ts';
import { type DecidingFindings, decidingFindings } from '../deciding.ts';
import type { HeaderFacts, StatementId } from '../facts.ts';
import { GATES, type GateView, isStatedPainless } from '../gates.ts';
import { hasUnreadRedFlag } from '../reading-reports.ts';
import { GATE_TEXTS, STAGING_TEXTS } from '../row-texts.ts';
import { STAGING_ROWS } from '../staging-rows.ts';
import { wholeVisit } from '../whole-visit.ts';
import { capital, GATE_OPEN, listed, outcomePhrase } from './phrases.ts';
import { whatWouldChange } from './what-if.ts';

/** One step of the argument for a stage: whole sentences, with the source of what they claim. */
export interface ArgumentPart extends Sourced {
  readonly about: 'outcome' | 'red flag' | 'gates' | 'decides' | 'weighs' | 'missing' | 'assumed' | 'next';
  readonly text: string;
  readonly statements: readonly StatementId[];
}
/** The words of the note that an evidence rests on: `"drawer 2" (line 6)`. */
export type Quote = (evidence: Evidence) => string;

interface Case {
  readonly ray: AdvisedRay;
  readonly view: GateView;
  readonly deciding: DecidingFindings;
  readonly quote: Quote;
}
const practice = { source: 'common practice', mark: 'common practice' } as const;

/**
 * Why each ray of a visit has its stage, in sentences, in the order of the visit's rays: red flags, gates, what decides, what
 * supports or questions, what is missing and what it would change, what is assumed, the next step. Nothing new is computed.
 */
export function stageArguments(analysis: AdvisedVisit, header: HeaderFacts, quote: Quote): readonly ArgumentPart[][] {
  const { facts: visit, before } = analysis;
  const whole = wholeVisit(visit, before, header);
  return analysis.rays.map((ray) => {
    const { side } = ray;
    const painless = isStatedPainless(visit, side, ray.ray);
    const view: GateView = { visit, before, header, side, ray: ray.ray, whole, painless, rays: () => analysis.rays };
    const each = { ray, view, deciding: decidingFindings(visit, before.known, side, ray.ray), quote };
    return PARTS.flatMap((part) => part(each));
  });
}

const PARTS: readonly ((each: Case) => ArgumentPart[])[] = [
  redFlag,
  outcome,
  gates,
  assumed,
  decides,
  weighs,
  missing,
  next,
];

const part = (
  about: ArgumentPart['about'],
  text: string,
  { source, mark }: Sourced = practice,
  statements: readonly StatementId[] = [],
): ArgumentPart => ({ about, text, source, mark, statements });
const statementsOf = (evidence: readonly Evidence[]): StatementId[] => [
  ...new Set(evidence.map(({ statement }) => statement)),
];

function outcome({ ray }: Case): ArgumentPart[] {
  const { side, outcome: found, labels, stated } = ray;
  const name = `The ${side} ${ordinalOf(ray.ray)} ray`;
  const marked = labels.length > 0 ? ` (${labels.join(', ')})` : '';
  const text = {
    staged: `${name} is ${outcomePhrase(found)}${marked}.`,
    span: `${name} lies ${outcomePhrase(found)}${marked}: what is stated leaves more than one stage open.`,
    'cannot stage': `${name} cannot be staged: ${'why' in found ? found.why : ''}.`,
    'not applicable': `${name} is given no stage: ${'why' in found ? found.why : ''}.`,
  }[found.is];
  return [
    part('outcome', stated ? `${text} ${besideStated(ray, stated)}` : text, ray, stated ? [stated.statement] : []),
  ];
}

function besideStated({ outcome: found }: RayAnalysis, { low, high }: NonNullable<RayAnalysis['stated']>): string {
  const said = `The clinician states stage ${low === high ? low : `${low} to ${high}`}`;
  if (found.is === 'staged' && low === high)
    return low === found.stage ? `${said}, the same.` : `${said}, which differs: read the two side by side.`;
  return `${said}.`;
}

function redFlag({ ray, view }: Case): ArgumentPart[] {
  const [first, ...others] = ray.redFlags;
  const unread = hasUnreadRedFlag(view.visit);
  if (!first && unread) return [part('red flag', CAUTIONS['unread red flag'])];
  if (!first) return [part('red flag', 'Nothing that is stated raises a red flag at this ray.')];
  const more = others.length > 0 ? ` So do these: ${others.map(({ why }) => why).join('; ')}.` : '';
  const statements = ray.redFlags.flatMap((flag) => flag.statements);
  return [part('red flag', `A red flag comes before any stage: ${first.why}.${more}`, practice, statements)];
}

function gates({ ray, view, quote }: Case): ArgumentPart[] {
  if (ray.outcome.is === 'not applicable') {
    const text = GATE_TEXTS[ray.outcome.by];
    const found = ray.evidence.filter(({ role }) => role === 'describes');
    const described = found.map((each) => `${quote(each)}: ${each.why}`).join('; ');
    const told = described
      ? [part('gates', `It is described all the same: ${described}.`, practice, statementsOf(found))]
      : [];
    return [part('gates', `The rule: ${text.says}`, text), ...told];
  }
  const open = GATES.filter((gate) => !gate.assumes?.(view)).flatMap(({ id }) => GATE_OPEN[id] ?? []);
  const taken = GATES.flatMap((gate) => gate.assumes?.(view) ?? []);
  const told = open.length > 0 ? [`Before staging, these gates are open: ${listed(open)}.`] : [];
  const assumes = taken.length > 0 ? [`These were not settled, and are assumed: ${taken.join('; ')}.`] : [];
  return [part('gates', [...told, ...assumes].join(' '))];
}

/** The findings that decide, and the rows of the table that they leave. */
function decides({ ray, deciding, quote }: Case): ArgumentPart[] {
  if (ray.outcome.is === 'not applicable') return [];
  const found = ray.evidence.filter(({ role }) => role === 'decides');
  const lead = ray.outcome.is === 'cannot stage' ? 'What is known of the deciding findings is' : 'The stage rests on';
  const led = found.length === 0 ? 'No deciding finding is stated.' : `${lead} ${because(found, quote)}.`;
  const rows = decide(deciding.possible).rows.flatMap((id) => {
    const text = STAGING_TEXTS[id];
    const row = STAGING_ROWS.find((each) => each.id === id);
    return text && row ? [part('decides', `The table of stages, for ${text.when}: stage ${text.gives}.`, row)] : [];
  });
  return [part('decides', led, ray, statementsOf(found)), ...rows];
}

/** `"drawer 2" (line 6): over half subluxable; "straight" (line 6)`: what only repeats its own words is not explained. */
const because = (evidence: readonly Evidence[], quote: Quote): string => {
  const words = evidence.map((each) => {
    const quoted = quote(each);
    return quoted.startsWith(`"${each.why}"`) ? quoted : `${quoted}: ${each.why}`;
  });
  return [...new Set(words)].join('; ');
};

function weighs({ ray, quote }: Case): ArgumentPart[] {
  const of = (role: Evidence['role']) => ray.evidence.filter((each) => each.role === role);
  const [supports, questions] = [of('supports'), of('questions')];
  if (supports.length + questions.length === 0) return [];
  const text = [
    ...(supports.length > 0 ? [`In support: ${because(supports, quote)}.`] : []),
    ...(questions.length > 0 ? [`In question: ${because(questions, quote)}.`] : []),
    'Support and doubt never move the number.',
  ];
  return [part('weighs', text.join(' '), practice, statementsOf([...supports, ...questions]))];
}

function missing({ ray, deciding }: Case): ArgumentPart[] {
  const { outcome: found, missing: steps } = ray;
  if (found.is === 'not applicable') return [];
  if (steps.length === 0)
    return found.is === 'staged'
      ? [part('missing', 'No step of the exam is missing that could change the stage.')]
      : [];
  const asks = `To narrow it: ${listed(steps.map(({ ask }) => ask))}.`;
  return [part('missing', `${asks} ${whatWouldChange(deciding.possible, steps)}`.trim(), ray)];
}

const UNREAD = 'not understood and not used: ';

/** What is assumed beyond the gates, and what is left out of account because nobody could read it. */
function assumed({ ray, view }: Case): ArgumentPart[] {
  const taken = new Set(GATES.flatMap((gate) => gate.assumes?.(view) ?? []));
  const others = ray.assumptions.filter((text) => !taken.has(text));
  const unread = others.filter((text) => text.startsWith(UNREAD)).map((text) => text.slice(UNREAD.length));
  const rest = others.filter((text) => !text.startsWith(UNREAD));
  return [
    ...(rest.length > 0 ? [part('assumed', `Also assumed: ${rest.join('; ')}.`)] : []),
    ...(unread.length > 0 ? [part('assumed', `Not understood, and not used: ${unread.join('; ')}.`)] : []),
  ];
}

function next({ ray }: Case): ArgumentPart[] {
  const { step, why, wouldChange, urgent } = ray.next;
  const led = urgent ? 'Urgent, before anything else' : 'The next step';
  const reason = why ? ` The reason: ${why}` : '';
  const change = wouldChange ? ` It would change with this: ${wouldChange}` : '';
  return [part('next', `${led}: ${capital(step)}${reason}${change}`, ray.next, ray.next.statements)];
}
