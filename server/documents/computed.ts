import type { Sourced } from '../../grammar/lexicon/entry.ts';
import { SOURCES } from '../../grammar/sources.ts';
import type { Evidence, NextStep, RayAnalysis, StageOutcome, VisitAnalysis } from '../clinical/analysis.ts';
import type { AnyFact, StatementId } from '../clinical/facts.ts';
import { PHRASES } from './phrases/index.ts';
import { placeOf, rayWords } from './places.ts';
import { list, originOf, type Part, type Run, type Sentence, sentence } from './sentence.ts';

const CLOSING =
  'This is decision support: it defers to the local protocol and to the judgement of the treating clinician';

/** How a computed sentence is marked: a citation with how it was known, or one of the two honest alternatives. */
export function markWords({ source, mark }: Sourced): string {
  if (mark === 'common practice' || source === 'common practice') return 'common practice';
  if (source === 'from memory') return 'from memory, to be verified';
  return `${SOURCES[source].citation.replace(/\.$/, '')} [${source}], ${mark}`;
}

const range = (low: number, high: number): string => (low === high ? `${low}` : `${low} to ${high}`);
const bare = (text: string): string => text.trim().replace(/\.$/, '');
const nameOf = (finding: Evidence['finding']): string => PHRASES[finding].name.replace(/^(the|an?) /, '');

/** Every run that a step came from, found by the facts of the visit. */
function traced(text: string, statements: readonly StatementId[], facts: readonly AnyFact[]): Run {
  const named = new Map(
    facts.filter(({ statement }) => statements.includes(statement)).map((fact) => [fact.statement, originOf(fact)]),
  );
  return { text, from: [...named.values()] };
}

/** What is set apart from the filed note: per ray, then the steps, then each caution once. */
export function computedSentences({ facts, rays }: VisitAnalysis): Sentence[] {
  if (rays.length === 0) return [];
  const cautions = [...new Set(rays.flatMap(({ next }) => next.cautions))];
  const steps = stepsOf(rays);
  const say = (urgent: boolean) =>
    steps
      .filter(({ next }) => next.urgent === urgent)
      .flatMap(({ next, rays: some }) => stepSentences(next, some, facts.facts));
  return [
    ...say(true),
    ...rays.flatMap(raySentences),
    ...say(false),
    ...cautions.map((caution) => sentence('caution', 'cautions', bare(caution))),
    sentence('caution', 'closing', CLOSING),
  ];
}

/** The urgent steps, once each, for the head of the note. */
export function urgentSentences({ facts, rays }: VisitAnalysis): Sentence[] {
  return stepsOf(rays.filter(({ next }) => next.urgent)).map(({ next, rays: some }) =>
    sentence(
      'computed',
      'urgent',
      'computed, for ',
      placesOf(some),
      ': ',
      traced(`${bare(next.step)}. ${bare(next.why)}`, next.statements, facts.facts),
      ` (${markWords(next)})`,
    ),
  );
}

/** Computed content always names the side. */
const placesOf = (rays: readonly RayAnalysis[]): string =>
  placeOf(
    rays.map(({ side, ray }) => ({ side, subject: { at: 'ray', ray } })),
    'ray',
    undefined,
  ).text;

/** Rays with the same next step share its sentences. */
function stepsOf(rays: readonly RayAnalysis[]): { next: NextStep; rays: RayAnalysis[] }[] {
  const steps = new Map<string, { next: NextStep; rays: RayAnalysis[] }>();
  for (const ray of rays) {
    const key = JSON.stringify([ray.next.row, ray.next.step, ray.next.why, ray.next.review]);
    const step = steps.get(key) ?? { next: ray.next, rays: [] };
    const statements = [...new Set([...step.next.statements, ...ray.next.statements])];
    steps.set(key, { next: { ...step.next, statements }, rays: [...step.rays, ray] });
  }
  return [...steps.values()];
}

function stepSentences(next: NextStep, rays: readonly RayAnalysis[], facts: readonly AnyFact[]): Sentence[] {
  const paragraph = `next ${next.row} ${placesOf(rays)}`;
  const say = (...parts: Part[]) => sentence('computed', paragraph, ...parts);
  return [
    say(
      `${next.urgent ? 'urgent, ' : ''}next step for ${placesOf(rays)}: `,
      traced(bare(next.step), next.statements, facts),
      ` (${markWords(next)})`,
    ),
    say('why: ', bare(next.why)),
    say('what would change it: ', bare(next.wouldChange)),
    say('review: ', bare(next.review)),
  ];
}

function outcomeWords(outcome: StageOutcome): string {
  switch (outcome.is) {
    case 'staged':
      return `computed clinical stage ${outcome.stage}`;
    case 'span':
      return `computed clinical stage ${range(outcome.low, outcome.high)}`;
    case 'cannot stage':
      return `no stage can be computed: ${bare(outcome.why)}`;
    case 'not applicable':
      return `staging does not apply: ${bare(outcome.why)}`;
  }
}

const ROLES: readonly (readonly [Evidence['role'], string])[] = [
  ['decides', 'decided by '],
  ['supports', 'supported by '],
  ['questions', 'questioned by '],
];

function raySentences(ray: RayAnalysis): Sentence[] {
  const name = rayWords(ray.side, ray.ray);
  const say = (says: Sentence['says'], ...parts: Part[]) => sentence(says, `stage ${name}`, ...parts);
  const labels = ray.labels.length > 0 ? `, ${ray.labels.join(', ')}` : '';
  const evidence = ROLES.flatMap(([role, lead]): Part[] => {
    const some = ray.evidence.filter((each) => each.role === role);
    return some.length === 0 ? [] : [[lead, list(some.map(evidenceRun), '; ', '; ')]];
  });
  return [
    say('computed', `${name}: ${outcomeWords(ray.outcome)}${labels} (${markWords(ray)})`),
    ...evidence.map((part) => say('computed', part)),
    ...besides(ray).map((parts) => say('computed', parts)),
    ...(ray.assumptions.length > 0 ? [say('computed', `assumed: ${ray.assumptions.map(bare).join('; ')}`)] : []),
    ...ray.missing.map(({ ask }) => say('gap', `missing, and it could change this: ${bare(ask)}`)),
  ];
}

const evidenceRun = ({ finding, why, statement, place }: Evidence): Run => ({
  text: `${nameOf(finding)}: ${bare(why)}`,
  from: [{ statement, place }],
});

/** The clinician's stage beside the computed one, where they differ; the clinician's stands. */
function besides({ stated, outcome }: RayAnalysis): Part[] {
  if (!stated) return [];
  const computed =
    outcome.is === 'staged'
      ? range(outcome.stage, outcome.stage)
      : outcome.is === 'span'
        ? range(outcome.low, outcome.high)
        : undefined;
  const said = range(stated.low, stated.high);
  if (computed === said) return [];
  const from = [{ statement: stated.statement, place: stated.place }];
  const beside = computed === undefined ? 'none could be computed' : `clinical stage ${computed} is computed`;
  return [
    [
      'beside it, ',
      { text: `clinical stage ${said} is stated by the clinician`, from },
      ` and ${beside}; the stated stage stands`,
    ],
  ];
}
