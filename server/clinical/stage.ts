import type { Ray, Side } from '../../grammar/values.ts';
import type { RayAnalysis, StageOutcome } from './analysis.ts';
import { clearFacts } from './answers.ts';
import { decide, notApplicable } from './decide.ts';
import type { DecidingFindings } from './deciding.ts';
import { DRAWER_SHOWS, type DrawerStep } from './drawer.ts';
import { evidence } from './evidence.ts';
import { isPoor } from './feeling.ts';
import { gatedFindings } from './gated-findings.ts';
import { CLOSING, GATES, type GateView } from './gates.ts';
import { labels } from './labels.ts';
import type { Possible } from './staging-rows.ts';
import { severalRaysUnasked } from './systemic.ts';

/**
 * Stages one lesser ray of one visit: gates first, then the decision list over every world that the findings allow. The
 * outcome is computed at once, its argument (evidence, assumptions) when it is asked for.
 */
export function stageRay(view: GateView, deciding: DecidingFindings): RayAnalysis {
  const { whole, side, ray } = view;
  const redFlags = whole.flags.of(side, ray);
  const flag = redFlags.find(({ closes }) => closes);
  const closed = flag ? notApplicable('red flag', `red flag first: ${flag.why}`) : closedGate(view, deciding);
  const painless = view.painless && !isPoor(whole.feet[side].feeling());
  const decided = decide(deciding.possible);
  const shown = decided.rows.includes('dislocated') || decided.rows.includes('overlap');
  const outcome = closed ?? (painless && !shown ? withoutSymptoms(deciding.possible) : decided.outcome);
  const gated = outcome.is === 'not applicable';
  const { source, mark } = gated ? PRACTICE : decided;
  return new StagedRay(view, { outcome, redFlags, source, mark }, () => ({
    labels: labels(view, deciding, outcome, painless),
    ...(outcome.is === 'not applicable'
      ? { evidence: gatedFindings(view, deciding, outcome.by), assumptions: [] }
      : {
          evidence: evidence(view, deciding, decided),
          assumptions: [...deciding.assumptions, ...assumed(view), ...unread(view)],
        }),
  }));
}

type Argued = Pick<RayAnalysis, 'evidence' | 'assumptions' | 'labels'>;
/** A class, since an object that is written with getters has a shape of its own each time, which every reader of it pays for. */
class StagedRay implements RayAnalysis {
  readonly side: Side;
  readonly ray: Ray;
  readonly outcome: StageOutcome;
  readonly redFlags: RayAnalysis['redFlags'];
  readonly source: RayAnalysis['source'];
  readonly mark: RayAnalysis['mark'];
  readonly stated?: NonNullable<RayAnalysis['stated']>;
  readonly #view: GateView;
  readonly #argue: () => Argued;
  #argued: Argued | undefined;

  constructor(
    view: GateView,
    { outcome, redFlags, source, mark }: Pick<RayAnalysis, 'outcome' | 'redFlags' | 'source' | 'mark'>,
    argue: () => Argued,
  ) {
    this.side = view.side;
    this.ray = view.ray;
    this.outcome = outcome;
    this.redFlags = redFlags;
    this.source = source;
    this.mark = mark;
    const stated = statedStage(view);
    if (stated) this.stated = stated;
    this.#view = view;
    this.#argue = argue;
  }
  get evidence(): RayAnalysis['evidence'] {
    this.#argued ??= this.#argue();
    return this.#argued.evidence;
  }
  get labels(): readonly string[] {
    this.#argued ??= this.#argue();
    return this.#argued.labels;
  }
  get assumptions(): readonly string[] {
    this.#argued ??= this.#argue();
    return this.#argued.assumptions;
  }
  get statements(): readonly string[] {
    return statementsOf(this.#view);
  }
}

/** Gates are common practice, whatever the source of the stages that they keep away. */
const PRACTICE = { source: 'common practice', mark: 'common practice' } as const;
function closedGate(view: GateView, { drawer }: DecidingFindings): StageOutcome | undefined {
  for (const { id, closes } of CLOSING) {
    const why = closes(view);
    if (why) return notApplicable(id, id === 'operated' ? `${why}: ${residual(drawer.steps)}` : why);
  }
  return undefined;
}

/** An operated joint is no stage again: what is left of its instability is described. */
function residual(drawer: readonly DrawerStep[]): string {
  if (drawer.every((step) => step === 0)) return 'stable';
  if (drawer.includes('not done') || drawer.includes(0)) return 'describe residual instability instead';
  return `residual instability, ${drawer.map((step) => DRAWER_SHOWS[step]).join(' or ')}`;
}

/** Drawer 1 or more without symptoms is a lax joint. */
function withoutSymptoms({ drawer }: Possible): StageOutcome {
  const lax = drawer.every((step) => step !== 'not done' && step >= 1);
  return lax
    ? notApplicable('lax', 'the joint is lax without symptoms')
    : notApplicable('no symptom', 'the joint is stated to be without symptoms');
}

function statedStage({ visit, side, ray }: GateView): RayAnalysis['stated'] {
  const fact = clearFacts(visit.facts, 'stage', { side, ray }).find(({ values }) => values.stage);
  const stage = fact?.values.stage;
  if (!fact || !stage) return undefined;
  const { statement, origin } = fact;
  const valuePlace = origin.slots.stage;
  return {
    low: stage.low,
    high: stage.high,
    statement,
    place: origin.place,
    ...(valuePlace ? { valuePlace } : {}),
  };
}

const assumed = (view: GateView): string[] => [
  ...GATES.flatMap((gate) => gate.assumes?.(view) ?? []),
  ...[severalRaysUnasked(view.visit, view.side, view.rays()), laxityTold(view)].filter((each) => each !== undefined),
];

/** Told at an earlier visit, and not today. */
function laxityTold({ visit, before }: GateView): string | undefined {
  const on = before.known.told.laxity;
  return on && clearFacts(visit.facts, 'laxity').length === 0
    ? `lax joints in general were stated on ${on}: compare with the other foot`
    : undefined;
}

/** Unread words in an exam statement of the ray stand beside its stage. */
function unread({ visit, side, ray }: GateView): string[] {
  const about = (subject: { at: string; ray?: Ray } | undefined, on: Side | undefined) =>
    subject?.at === 'ray' && subject.ray === ray && (on === undefined || on === side);
  const texts = visit.verbatim
    .filter(
      (each) => !each.quote && (each.section === 'exam' || each.section === 'stand') && about(each.subject, each.side),
    )
    .map(({ whole }) => `not understood and not used: "${whole.text}"`);
  return [...new Set(texts)];
}

function statementsOf({ visit, side, ray }: GateView): string[] {
  const own = visit.facts.filter((fact) => fact.side === side && fact.subject.at === 'ray' && fact.subject.ray === ray);
  return [...new Set(own.map(({ statement }) => statement))];
}
