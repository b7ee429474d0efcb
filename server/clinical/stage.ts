import type { Ray, Side } from '../../grammar/values.ts';
import type { Evidence, ExamStep, NoStage, RayAnalysis, Stage, StageOutcome } from './analysis.ts';
import { clearFacts } from './answers.ts';
import { type DecidingFindings, STEPS, supporting } from './deciding.ts';
import type { AnyFact } from './facts.ts';
import { isPoor } from './feeling.ts';
import { GATES, type GateView } from './gates.ts';
import { once } from './once.ts';
import { type Deciding, type Possible, rowFor, type Verdict, worlds } from './staging-rows.ts';

export type RayStage = RayAnalysis;

/**
 * Stages one lesser ray of one visit: gates first, then the decision list over every world that the findings allow. The
 * outcome is computed at once, its argument (evidence, missing steps, assumptions) when it is asked for.
 */
export function stageRay(view: GateView, deciding: DecidingFindings): RayStage {
  const { whole, side, ray } = view;
  const redFlags = whole.flags.of(side, ray);
  const flag = redFlags.find(({ closes }) => closes);
  const closed = flag ? notApplicable('red flag', `red flag first: ${flag.why}`) : closedGate(view);
  const painless = view.painless && !isPoor(whole.feet[side].feeling());
  const decided = decide(deciding.possible);
  const shown = decided.rows.includes('dislocated') || decided.rows.includes('overlap');
  const outcome = closed ?? (painless && !shown ? withoutSymptoms(deciding.possible) : decided.outcome);
  const gated = outcome.is === 'not applicable';
  const { source, mark } = gated ? PRACTICE : decided;
  const argued = once(() => (gated ? [] : evidence(view, deciding, decided)));
  const open = outcome.is === 'span' || outcome.is === 'cannot stage';
  const asked = once(() => (open ? missingSteps(deciding.possible) : []));
  const taken = once(() => (gated ? [] : [...deciding.assumptions, ...assumed(view), ...unread(view)]));
  return {
    side,
    ray,
    outcome,
    redFlags,
    source,
    mark,
    labels: labels(view, deciding, outcome, painless),
    ...statedStage(view),
    get evidence() {
      return argued();
    },
    get missing() {
      return asked();
    },
    get assumptions() {
      return taken();
    },
    get statements() {
      return statementsOf(view);
    },
  };
}

/** Gates are common practice, whatever the source of the stages that they keep away. */
const PRACTICE = { source: 'common practice', mark: 'common practice' } as const;
const notApplicable = (by: NoStage, why: string): StageOutcome => ({ is: 'not applicable', by, why });
function closedGate(view: GateView): StageOutcome | undefined {
  for (const gate of GATES) {
    const why = 'closes' in gate ? gate.closes(view) : undefined;
    if ('closes' in gate && why) return notApplicable(gate.id, why);
  }
  return undefined;
}

/** Drawer 1 or more without symptoms is a lax joint. */
function withoutSymptoms({ drawer }: Possible): StageOutcome {
  const lax = drawer.every((step) => step !== 'not done' && step >= 1);
  return lax
    ? notApplicable('lax', 'the joint is lax without symptoms')
    : notApplicable('no symptom', 'the joint is stated to be without symptoms');
}

interface Decision {
  readonly outcome: StageOutcome;
  readonly rows: readonly string[];
  readonly decides: readonly Deciding[];
  readonly source: RayAnalysis['source'];
  readonly mark: RayAnalysis['mark'];
}

/** The outcome over all worlds that the findings allow: one stage, the span of several, or no stage with its reason. */
export function decide(possible: Possible): Decision {
  const rows = worlds(possible).map((world) => ({ row: rowFor(world), world }));
  const verdicts = rows.map(({ row, world }) => row.verdict(world));
  const [first] = rows;
  const marks = rows.map(({ row }) => row);
  const worst = marks.find(({ mark }) => mark === 'from memory, to be verified') ?? first?.row;
  return {
    outcome: outcomeOf(verdicts),
    rows: [...new Set(marks.map(({ id }) => id))],
    decides: [...new Set(marks.flatMap(({ decides }) => decides))],
    source: worst?.source ?? 'common practice',
    mark: worst?.mark ?? 'common practice',
  };
}

function outcomeOf(verdicts: readonly Verdict[]): StageOutcome {
  if (verdicts.includes('acute until shown otherwise')) {
    const certain = verdicts.every((verdict) => verdict === 'acute until shown otherwise');
    const why = certain
      ? 'dislocated, onset not stated: acute until shown otherwise'
      : 'a dislocation is possible: confirm it first';
    return { is: 'cannot stage', why };
  }
  if (verdicts.includes('cannot')) return { is: 'cannot stage', why: 'the drawer is missing' };
  if (verdicts.every((verdict) => verdict === 'no instability'))
    return notApplicable('no instability', 'no instability found');
  if (verdicts.includes('no instability'))
    return { is: 'cannot stage', why: 'stable joint: tenderness, swelling or purchase missing' };
  const stages = verdicts.flatMap((verdict) => verdict as readonly Stage[]);
  const low = Math.min(...stages) as Stage;
  const high = Math.max(...stages) as Stage;
  return low === high ? { is: 'staged', stage: low } : { is: 'span', low, high };
}

/** The smallest set of exam steps that narrows the outcome, by search: one step if one does, else two, else three. */
export function missingSteps(possible: Possible): ExamStep[] {
  const decided = decide(possible);
  // Without a drawer nothing else is asked for: whatever it shows, it says what to ask next (common practice).
  if (decided.rows.includes('no drawer') && !decided.rows.includes('dislocated')) return [STEPS.drawer];
  if (possible.dislocated.length > 1) return [POSSIBLE_DISLOCATION];
  const open = (Object.keys(STEPS) as (keyof typeof STEPS)[]).filter((key) => isOpen(possible, key));
  const width = widthOf(decided.outcome);
  for (let size = 1; size <= Math.min(3, open.length); size++) {
    const best = subsets(open, size).find((keys) => narrows(possible, keys, width));
    if (best) return best.map((key) => STEPS[key]);
  }
  return [];
}
const POSSIBLE_DISLOCATION: ExamStep = {
  finding: 'film-joint',
  ask: 'take a film and say whether the joint is dislocated and, if so, since when',
};
const isOpen = (possible: Possible, key: keyof typeof STEPS): boolean =>
  possible[key].length > 1 ||
  (key === 'drawer' && possible.drawer[0] === 'not done') ||
  (key === 'dislocated' && possible.dislocated[0] === 'undated');

/** What an exam step may show; a step that was left open may show anything that it measures. */
export const SHOWN: Readonly<Partial<Record<keyof typeof STEPS, readonly unknown[]>>> = {
  drawer: [0, 1, 2, 3],
  dislocated: ['old', 'no'],
};

function narrows(possible: Possible, keys: readonly (keyof typeof STEPS)[], width: number): boolean {
  const shown = keys.map(
    (key) => (possible[key].length > 1 ? possible[key] : (SHOWN[key] ?? possible[key])) as readonly unknown[],
  );
  return combinations(shown).every((values) => {
    const known = Object.fromEntries(keys.map((key, i) => [key, [values[i]]]));
    return widthOf(decide({ ...possible, ...known }).outcome) < width;
  });
}
const widthOf = (outcome: StageOutcome): number => {
  if (outcome.is === 'cannot stage') return 10;
  return outcome.is === 'span' ? outcome.high - outcome.low : 0;
};
function subsets<T>(list: readonly T[], size: number): T[][] {
  if (size === 0) return [[]];
  return list.flatMap((first, i) => subsets(list.slice(i + 1), size - 1).map((rest) => [first, ...rest]));
}
const combinations = (lists: readonly (readonly unknown[])[]): unknown[][] =>
  lists.reduce<unknown[][]>((all, list) => all.flatMap((each) => list.map((value) => [...each, value])), [[]]);

function labels(
  { ray }: GateView,
  { possible, facts }: DecidingFindings,
  outcome: StageOutcome,
  painless: boolean,
): string[] {
  const list: string[] = [];
  if (outcome.is !== 'staged' && outcome.is !== 'span') return list;
  if (ray === 4) list.push('extrapolated to the fourth ray');
  if (painless) list.push('painless');
  const stage = outcome.is === 'staged' ? outcome.stage : undefined;
  const weak = possible.drawer.some((step) => step === 0 || step === 1);
  if (stage === 3 && weak) list.push('low certainty');
  for (const fact of facts.dislocated ?? [])
    if (stage === 4 && fact.finding === 'dislocated') list.push(...(fact.values.reducibility?.words ?? []));
  return list;
}

function statedStage({ visit, side, ray }: GateView): Pick<RayAnalysis, 'stated'> {
  const [fact] = clearFacts(visit.facts, 'stage', { side, ray }).filter(({ values }) => values.stage);
  const stage = fact?.values.stage;
  if (!fact || !stage) return {};
  const valuePlace = fact.origin.slots.stage;
  const place = fact.origin.place;
  return {
    stated: {
      low: stage.low,
      high: stage.high,
      statement: fact.statement,
      place,
      ...(valuePlace ? { valuePlace } : {}),
    },
  };
}

const DRAWER_SHOWS: Readonly<Record<string, string>> = {
  0: 'stable',
  1: 'under half subluxable',
  2: 'over half subluxable',
  3: 'dislocatable',
  4: 'dislocated at rest',
  'not done': 'missing',
};
/** What a deciding finding says, over all the values that it may have. */
function shows(key: Deciding, possible: Possible): string {
  const says: Readonly<Partial<Record<Deciding, (value: unknown) => string>>> = {
    dislocated: (value) => (value === 'no' ? 'not dislocated' : value === 'old' ? 'dislocated, and old' : 'dislocated'),
    overlap: (value) =>
      value === 'no' ? 'no overlap' : value === 'rest' ? 'it overlaps at rest' : 'it overlaps at times',
    drawer: (value) => DRAWER_SHOWS[String(value)] ?? String(value),
    alignment: (value) =>
      value === 'marked' ? 'markedly out of line' : value === 'deviated' ? 'out of line' : 'straight',
    tender: (value) => (value ? 'tender at the plate or plantar head' : 'not tender there'),
    swollen: (value) => (value ? 'swollen' : 'not swollen'),
    purchase: (value) => (value === 'normal' ? 'purchase is normal' : 'purchase is reduced'),
    gap: () => 'the space is widened',
    sameOtherSide: () => 'the other side is alike',
  };
  const say = says[key];
  return say ? [...new Set(possible[key].map(say))].join(' or ') : '';
}
/** Of an alignment each statement says its own; the worst of several is not said of all. */
function sayOf(fact: AnyFact, key: Deciding, possible: Possible): string {
  if (fact.finding === 'extension' && fact.status === 'present') return 'extended at the MTP joint';
  const marked = fact.finding === 'deviation' && fact.values.degree?.words.includes('marked');
  return key === 'alignment' && fact.status === 'present' && !marked ? 'out of line' : shows(key, possible);
}
function evidence(view: GateView, { facts, possible }: DecidingFindings, decision: Decision): Evidence[] {
  const beside = isLowerThanDislocated(possible);
  const deciding = decision.decides.flatMap((key) =>
    (facts[key] ?? []).map(
      (fact): Evidence => ({
        statement: fact.statement,
        place: fact.origin.word,
        finding: fact.finding,
        ...(key === 'drawer' && beside ? LOWER_DRAWER : { role: 'decides', why: sayOf(fact, key, possible) }),
      }),
    ),
  );
  const { outcome } = decision;
  const stages = outcome.is === 'staged' ? [outcome.stage] : outcome.is === 'span' ? [outcome.low, outcome.high] : [];
  if (decision.rows.includes('overlap'))
    for (const fact of facts.drawer ?? []) deciding.push(besideOverlap(fact, possible));
  const others = stages.length > 0 ? supporting(view.visit, view.side, view.ray, stages) : [];
  const decided = new Set(deciding.map(({ statement }) => statement));
  return [...deciding, ...others.filter((each) => each.role === 'questions' || !decided.has(each.statement))];
}

/** The dislocation decides; a drawer beside it that is lower contradicts it. */
const LOWER_DRAWER = { role: 'questions', why: 'the drawer is too low for a dislocated joint: recheck' } as const;
const isLowerThanDislocated = ({ dislocated, drawer }: Possible): boolean =>
  !dislocated.includes('no') && drawer.every((step) => step !== 4);

/** A toe that overlaps with drawer 0 or 1 is stage 3 with low certainty. */
function besideOverlap(fact: AnyFact, { drawer }: Possible): Evidence {
  const weak = drawer.some((step) => step === 0 || step === 1);
  const why = weak ? 'the drawer is low for a toe that overlaps: recheck' : 'the drawer fits';
  return {
    statement: fact.statement,
    place: fact.origin.word,
    finding: fact.finding,
    role: weak ? 'questions' : 'supports',
    why,
  };
}

const assumed = (view: GateView): string[] => GATES.flatMap((gate) => gate.assumes?.(view) ?? []);

/** Unread words in an exam statement of the ray stand beside its stage. */
function unread({ visit, side, ray }: GateView): string[] {
  const about = (subject: { at: string; ray?: Ray } | undefined, on: Side | undefined) =>
    subject?.at === 'ray' && subject.ray === ray && (on === undefined || on === side);
  return visit.verbatim
    .filter(
      (each) => !each.quote && (each.section === 'exam' || each.section === 'stand') && about(each.subject, each.side),
    )
    .map(({ text }) => `not understood and not used: "${text}"`);
}

function statementsOf({ visit, side, ray }: GateView): string[] {
  const own = visit.facts.filter((fact) => fact.side === side && fact.subject.at === 'ray' && fact.subject.ray === ray);
  return [...new Set(own.map(({ statement }) => statement))];
}
