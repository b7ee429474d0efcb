import type { AdvisedRay, AdvisedVisit, NextStep } from '../clinical/analysis.ts';
import { CAUTIONS } from '../clinical/cautions.ts';
import type { AnyFact, StatementId } from '../clinical/facts.ts';
import { hasUnreadRedFlag } from '../clinical/reading-reports.ts';
import { flagsWithoutRay } from '../clinical/red-flags-first.ts';
import { raysWords, stageSentences } from './computed-stage.ts';
import { originOf, type Part, type Run, type Sentence, sentence } from './sentence.ts';
import { bare, citations, markWords } from './source-marks.ts';

const CLOSING =
  'This is decision support: it defers to the local protocol and to the judgement of the treating clinician';

/**
 * What is set apart from the filed note: urgent steps, then the stages, then the other steps; the sources and each
 * caution once for the whole note. Empty where nothing was computed.
 */
export function computedSentences(visit: AdvisedVisit): Sentence[] {
  const { facts, rays } = visit;
  const led = flagsWithoutRay(visit);
  if (rays.length === 0 && led.length === 0) return [];
  const steps = stepsOf(rays);
  const say = (urgent: boolean) =>
    steps.filter(({ next }) => next.urgent === urgent).flatMap((step) => stepSentences(step, facts.facts));
  const flagCautions = led.flatMap(({ row }) => row.cautions.map((id) => CAUTIONS[id]));
  const cautions = [
    ...new Set([...flagCautions, ...rays.flatMap(({ next }) => next.cautions)].filter(notLed).map(bare)),
  ];
  const sources = citations(
    rays.flatMap((ray) => [ray, ray.next]),
    cautions,
  );
  return [
    ...say(true),
    ...stageSentences(rays, facts.facts),
    ...say(false),
    ...sources.map((source) => sentence('computed', 'sources', source)),
    ...cautions.map((caution) => sentence('caution', 'cautions', caution)),
    sentence('caution', 'closing', CLOSING),
  ];
}

/** It stands at the head of the note. */
const notLed = (caution: string): boolean => caution !== CAUTIONS['unread red flag'];

/** The red flags and urgent steps, once each, for the head of the note. */
export function urgentSentences(visit: AdvisedVisit): Sentence[] {
  const { facts, rays } = visit;
  const flags = flagsWithoutRay(visit).map(({ flagged, row }) =>
    sentence(
      'computed',
      'urgent',
      'computed, red flag: ',
      traced(`${bare(flagged.why)}. ${bare(row.step)}`, flagged.statements, facts.facts),
      ` (${markWords(row)})`,
    ),
  );
  const steps = stepsOf(rays.filter(({ next }) => next.urgent)).map(({ next, rays: some }) =>
    sentence(
      'computed',
      'urgent',
      `computed, for ${raysWords(some)}: `,
      traced(`${bare(next.step)}. ${bare(next.why)}`, next.statements, facts.facts),
      ` (${markWords(next)})`,
    ),
  );
  const unread = hasUnreadRedFlag(facts) ? [sentence('caution', 'urgent', CAUTIONS['unread red flag'])] : [];
  return [...flags, ...unread, ...steps];
}

interface Step {
  readonly next: NextStep;
  readonly rays: readonly AdvisedRay[];
}

/** Rays with the same next step share its sentences. */
function stepsOf(rays: readonly AdvisedRay[]): Step[] {
  const steps = new Map<string, Step>();
  for (const ray of rays) {
    const { row, step, why, wouldChange, review } = ray.next;
    const key = JSON.stringify([row, step, why, wouldChange, review]);
    const same = steps.get(key) ?? { next: ray.next, rays: [] };
    const statements = [...new Set([...same.next.statements, ...ray.next.statements])];
    steps.set(key, { next: { ...same.next, statements }, rays: [...same.rays, ray] });
  }
  return [...steps.values()];
}

function stepSentences({ next, rays }: Step, facts: readonly AnyFact[]): Sentence[] {
  const paragraph = `next ${next.row} ${raysWords(rays)}`;
  const say = (...parts: Part[]) => sentence('computed', paragraph, ...parts);
  return [
    say(
      `${next.urgent ? 'urgent, ' : ''}next step for ${raysWords(rays)}: `,
      traced(bare(next.step), next.statements, facts),
      ` (${markWords(next)})`,
    ),
    say(`why: ${bare(next.why)}`),
    say(`what would change it: ${bare(next.wouldChange)}`),
    say(`review: ${bare(next.review)}`),
  ];
}

/** A run with every statement that it came from, found among the facts of the visit. */
function traced(text: string, statements: readonly StatementId[], facts: readonly AnyFact[]): Run {
  const named = new Map(
    facts.filter(({ statement }) => statements.includes(statement)).map((fact) => [fact.statement, originOf(fact)]),
  );
  return { text, from: [...named.values()] };
}
