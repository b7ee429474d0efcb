import type { AdvisedRay, Evidence, StageOutcome } from '../clinical/analysis.ts';
import { changeWords } from '../clinical/change.ts';
import type { AnyFact } from '../clinical/facts.ts';
import { PHRASES } from './phrases/index.ts';
import { commas } from './phrases/phrase.ts';
import { saidOf } from './pieces.ts';
import { placeOf } from './places.ts';
import { list, type Origin, type Part, type Run, type Sentence, sentence } from './sentence.ts';
import { bare, markWords } from './source-marks.ts';

/** Names the rays with their side: computed content never leaves it to the heading. */
export const raysWords = (rays: readonly AdvisedRay[]): string =>
  placeOf(
    rays.map(({ side, ray }) => ({ side, subject: { at: 'ray', ray } })),
    'ray',
    undefined,
  ).text;

/** The computed stages. Rays of which the same is said share their sentences. */
export function stageSentences(rays: readonly AdvisedRay[], facts: readonly AnyFact[]): Sentence[] {
  const groups = new Map<string, AdvisedRay[]>();
  for (const ray of rays) {
    const { outcome, labels, source, mark, assumptions, missing } = ray;
    const evidence = ray.evidence.map((each) => [each.role, evidenceWords(each, facts)]);
    const own = besides(ray).length > 0 ? [ray.side, ray.ray] : [];
    const key = JSON.stringify([outcome, ray.change, labels, source, mark, assumptions, missing, evidence, own]);
    groups.set(key, [...(groups.get(key) ?? []), ray]);
  }
  return [...groups.values()].flatMap((same) => raySentences(same, facts));
}

const ROLES: readonly (readonly [Evidence['role'], string])[] = [
  ['decides', 'decided by '],
  ['supports', 'supported by '],
  ['questions', 'questioned by '],
  ['describes', 'described: '],
];

function raySentences(rays: readonly AdvisedRay[], facts: readonly AnyFact[]): Sentence[] {
  const [ray] = rays;
  if (!ray) return [];
  const name = raysWords(rays).replace(/^the /, '');
  const say = (says: Sentence['says'], ...parts: Part[]) => sentence(says, `stage ${name}`, ...parts);
  const labels = ray.labels.length > 0 ? `, ${ray.labels.join(', ')}` : '';
  const all = rays.flatMap(({ evidence }) => evidence);
  const evidence = ROLES.flatMap(([role, lead]): Part[] => {
    const runs = evidenceRuns(
      all.filter((each) => each.role === role),
      facts,
    );
    return runs.length === 0 ? [] : [[lead, list(runs, '; ', '; ')]];
  });
  return [
    say('computed', `${name}: ${outcomeWords(ray.outcome)}${labels} (${markWords(ray)})`),
    ...evidence.map((part) => say('computed', part)),
    ...besides(ray).map((parts) => say('computed', parts)),
    ...(ray.change ? [say('computed', `change: ${changeWords(ray.change)}`)] : []),
    ...(ray.assumptions.length > 0 ? [say('computed', `assumed: ${ray.assumptions.map(bare).join('; ')}`)] : []),
    ...ray.missing.map(({ ask }) => say('gap', `missing, and it could change this: ${bare(ask)}`)),
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

const range = (low: number, high: number): string => (low === high ? `${low}` : `${low} to ${high}`);

/** Evidence in words; what is said alike of several rays is said once, with every statement. */
function evidenceRuns(evidence: readonly Evidence[], facts: readonly AnyFact[]): Run[] {
  const runs = new Map<string, Origin[]>();
  for (const each of evidence) {
    const text = evidenceWords(each, facts);
    runs.set(text, [...(runs.get(text) ?? []), { statement: each.statement, place: each.place }]);
  }
  return [...runs].map(([text, from]) => ({ text, from }));
}

/** `deviation (medially, 12°): the toe deviates`: the finding with what was stated of it, and what it argues. */
function evidenceWords({ finding, why, statement }: Evidence, facts: readonly AnyFact[]): string {
  const phrase = PHRASES[finding];
  const fact = facts.find((each) => each.statement === statement && each.finding === finding);
  const status = fact && fact.status !== 'present' ? fact.status : undefined;
  const values = fact ? Object.values<string | undefined>(saidOf(fact, phrase)) : [];
  const stated = commas(status, ...values);
  return `${phrase.name.replace(/^(the|an?) /, '')}${stated && ` (${stated})`}: ${bare(why)}`;
}

/** The clinician's stage beside the computed one, where they differ; the clinician's stands. */
function besides({ stated, outcome }: AdvisedRay): Part[] {
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
