import type { Ray, Side } from '../../grammar/values.ts';
import { ordinalOf } from '../../grammar/values.ts';
import type { NextStep, NoStage, RayAnalysis, StageOutcome } from './analysis.ts';
import { type Answer, ask, clearFacts, isStated } from './answers.ts';
import { capital } from './argument/phrases.ts';
import { CAUTIONS } from './cautions.ts';
import { pulsesFelt, webSigns } from './circulation.ts';
import type { Course } from './course.ts';
import { type Day, dayFrom, dayOf, daysBetween } from './dates.ts';
import type { DrawerStep } from './drawer.ts';
import { footKey, rayKey, steroidDays } from './episode.ts';
import type { AnyFact } from './facts.ts';
import { neuropathicWhy } from './feeling.ts';
import { earlierSurgery, type GateView, isGrowing } from './gates.ts';
import { isOpenWound } from './open-wound.ts';
import { patientToSettle } from './operation-risks.ts';
import type { PathInputs } from './path-inputs.ts';
import { pathRow } from './path-rows.ts';
import { hasUnreadRedFlag } from './reading-reports.ts';
import { jointDiseaseWhy } from './systemic.ts';
import { againstTape } from './tape-risk.ts';
import { STEROID_CLEAR_DAYS } from './windows.ts';

/** The next step for one ray, as advice: the first row of the path that its inputs meet. */
export function nextStep(view: GateView, stage: RayAnalysis, drawer: readonly DrawerStep[]): NextStep {
  const [flagged] = stage.redFlags;
  const inputs = pathInputs(view, stage, drawer);
  const row = pathRow(inputs);
  const tapeless = row.plan?.includes('tape {ray}') ? tapeBarred(view) : undefined;
  return {
    row: row.id,
    step: tapeless ? `${row.step} No tape here: ${tapeless} stated.` : row.step,
    why: flagged
      ? `${capital(flagged.why)}.`
      : [
          row.why,
          row.adequate && inputs.kept === 'not stated' && NOT_SAID,
          (row.adequate || row.id === 'poorly kept') && toldBefore(view.whole.feet[view.side].course()),
        ]
          .filter(Boolean)
          .join(' '),
    wouldChange: row.wouldChange,
    cautions: [...(hasUnreadRedFlag(view.visit) ? (['unread red flag'] as const) : []), ...row.cautions].map(
      (id) => CAUTIONS[id],
    ),
    review: row.review,
    urgent: row.urgent ?? false,
    ...(row.plan ? { plan: planFor(row.plan, view.ray, tapeless !== undefined) } : {}),
    source: row.source,
    mark: row.mark,
    statements: flagged ? flagged.statements : stage.evidence.map(({ statement }) => statement),
  };
}

const NOT_SAID = 'How it was kept is not stated; it is taken as adequate.';
const toldBefore = ({ toldOn }: Course): string | undefined =>
  toldOn && `The course is as ${toldOn === 'undated' ? 'an earlier visit' : `the visit of ${toldOn}`} told it.`;

/** What speaks against tape, in words, where the visit states it: `a tape allergy is`. */
function tapeBarred(view: GateView): string | undefined {
  const { reasons } = againstTape(view, view);
  return reasons.length === 0 ? undefined : `${reasons.join(' and ')} ${reasons.length > 1 ? 'are' : 'is'}`;
}
const planFor = (plan: string, ray: Ray, tapeless: boolean): string =>
  plan
    .split('; ')
    .filter((item) => !(tapeless && item.startsWith('tape')))
    .join('; ')
    .replaceAll('{ray}', ordinalOf(ray));

/** What the path looks at, from the facts of the visit and the episode before it. */
export function pathInputs(view: GateView, stage: RayAnalysis, drawer: readonly DrawerStep[]): PathInputs {
  const { visit, side, ray, whole } = view;
  const course = whole.feet[side].course();
  const unstable = drawer.every((step) => step !== 'not done' && step >= 1);
  const stable = drawer.every((step) => step === 0);
  const acute = whole.feet[side].acute() === true && drawer.every((step) => step !== 'not done' && step >= 2);
  const input = stageInput(stage);
  const staged =
    QUIET_MAY_BE.includes(input) && isQuiet(view)
      ? 'quiet'
      : input === 'acute injury' && isUntouched(view, drawer)
        ? 'injury elsewhere'
        : input;
  return {
    flag: stage.redFlags[0]?.flag ?? 'none',
    growing: isGrowing(view),
    bone:
      fractured(view) ||
      (tenderShaft(view) &&
        clearFacts(visit.facts, 'trigger').some(
          ({ status, values }) => status === 'present' && values.what?.words.includes('load-rise'),
        )),
    systemic: isDiseased(view),
    operated: operatedTrack(view),
    acuteRupture: acute ? (imagingOf(view, true) === 'concordant' ? 'imaged' : 'suspected') : 'no',
    transfer: isTransfer(view),
    web: webSigns(visit, side, ray),
    joint: unstable || staged === 3 || staged === 4 ? 'unstable' : stable ? 'stable' : 'unknown',
    stage: staged,
    course: course.length,
    response: course.response,
    kept: course.kept,
    imaging: imagingOf(view, isUnstable(stage.outcome)),
    progressing: progressing(view, stage.outcome),
    operation: operationOf(view),
    accommodate: view.painless || pulsesFelt(visit, side) === 'absent',
  };
}

/** The joints of the foot, or this one, are diseased. */
const isDiseased = ({ visit, before, whole, side, ray }: GateView): boolean =>
  whole.systemic || jointDiseaseWhy({ visit, known: before.known, side, ray }) !== undefined;

/** Tender at the metatarsal head of a ray whose neighbour was operated on before this visit. */
const isTransfer = ({ visit, before, side, ray }: GateView): boolean =>
  [ray - 1, ray + 1].some((next) => before.operated[`${side} ray ${next}`] !== undefined) &&
  clearFacts(visit.facts, 'tenderness', { side, ray }).some(
    (fact) => fact.status === 'present' && fact.values.place?.words.some((at) => at === 'head' || at === 'plantar'),
  );

const tenderShaft = ({ visit, side, ray }: GateView): boolean =>
  clearFacts(visit.facts, 'tenderness', { side, ray }).some(
    (fact) => fact.status === 'present' && fact.values.place?.words.includes('shaft'),
  );

/** Stated straight and not tender, and either not swollen or with a stable drawer; a sign that says otherwise is none of that. */
function isQuiet({ visit, side, ray, painless }: GateView): boolean {
  const drawer = ask(visit.facts, 'drawer', { side, ray });
  const untested =
    drawer.is === 'not mentioned' || (drawer.is === 'stated' && drawer.fact.status === 'not done') || isStable(drawer);
  const denied = (['tenderness', 'swelling', 'deviation'] as const).every((finding) => {
    const answer = ask(visit.facts, finding, { side, ray });
    if (finding === 'swelling' && answer.is === 'not mentioned') return isStable(drawer);
    return answer.is === 'stated' && answer.fact.status === 'absent' && !('place' in answer.fact.values);
  });
  const pain = ask(visit.facts, 'pain', { side, ray });
  const others = (['dislocated', 'overlap', 'extension', 'lifted', 'hot', 'redness'] as const).every((finding) => {
    const answer = ask(visit.facts, finding, { side, ray });
    return answer.is === 'not mentioned' || (answer.is === 'stated' && answer.fact.status === 'absent');
  });
  return untested && denied && others && (pain.is === 'not mentioned' || painless);
}

const QUIET_MAY_BE: readonly PathInputs['stage'][] = ['cannot', 'none found', 'not used', 'acute injury'];

/** Stated not tender after a recent injury, and nothing recorded says that the joint is swollen, deformed or unstable. */
function isUntouched({ visit, side, ray }: GateView, drawer: readonly DrawerStep[]): boolean {
  const tender = ask(visit.facts, 'tenderness', { side, ray });
  const signs = (
    ['swelling', 'deviation', 'extension', 'overlap', 'dislocated', 'lifted', 'hot', 'pain'] as const
  ).some((finding) => isStated(visit.facts, finding, 'present', { side, ray }));
  const loose = drawer.some((step) => step !== 'not done' && step >= 1);
  return tender.is === 'stated' && tender.fact.status === 'absent' && !tender.fact.values.place && !signs && !loose;
}

const isStable = (drawer: Answer<'drawer'>): boolean =>
  drawer.is === 'stated' && (drawer.fact.status === 'absent' || drawer.fact.values.grade?.high === 0);

const BONE_SIGNS: readonly string[] = ['fracture', 'stress fracture', 'stress reaction'];
const fractured = ({ visit, side, ray }: GateView): boolean =>
  clearFacts(visit.facts, 'image-other', { side }).some(
    ({ subject, status, values }) =>
      status === 'present' &&
      values.what?.words.some((word) => BONE_SIGNS.includes(word)) &&
      (subject.at === 'foot' || (subject.at === 'ray' && subject.ray === ray)),
  );

const BY_GATE: Readonly<Partial<Record<NoStage, PathInputs['stage']>>> = {
  lax: 'lax',
  'no symptom': 'lax',
  'acute injury': 'acute injury',
  'no instability': 'none found',
  wound: 'wound',
  neuropathic: 'neuropathic',
};

/** A span takes its lower stage, unless overlap or dislocation is in it. */
function stageInput({ outcome, evidence }: RayAnalysis): PathInputs['stage'] {
  if (outcome.is === 'staged') return outcome.stage;
  if (outcome.is === 'span') {
    const severe = evidence.some(
      ({ finding, role }) => role === 'decides' && (finding === 'overlap' || finding === 'dislocated'),
    );
    return severe ? outcome.high : outcome.low;
  }
  if (outcome.is === 'cannot stage') return 'cannot';
  return BY_GATE[outcome.by] ?? 'not used';
}

function operatedTrack(view: GateView): PathInputs['operated'] {
  const { visit, before, side, ray } = view;
  const here = isStated(visit.facts, 'procedure', 'present', { side, ray });
  const inFile = before.operated[rayKey(side, ray)] !== undefined || here;
  if (!inFile && earlierSurgery(visit, before, side, ray) !== 'told') return 'no';
  const off = !here && isOffTrack(view);
  // The orders of an operation before this file are not in it: there is no next dated step to follow.
  return off ? 'off track' : inFile ? 'on track' : 'no';
}

const LOOSE_PIN: readonly string[] = ['loose', 'migrated', 'red', 'discharging'];
/** Unstable again, a wound or a pin that is not as it should be, a named complication, or what was corrected has returned. */
function isOffTrack({ visit, side, ray }: GateView): boolean {
  const about = { side, ray };
  const here = ({ subject }: AnyFact) => subject.at !== 'ray' || subject.ray === ray;
  const unstable = clearFacts(visit.facts, 'drawer', about).some(({ values }) => (values.grade?.low ?? 0) >= 2);
  const wound = clearFacts(visit.facts, 'wound', { side }).some(
    (fact) => here(fact) && fact.values.state?.words.includes('open'),
  );
  const pin = clearFacts(visit.facts, 'pin-site', { side }).some(
    (fact) => here(fact) && fact.values.state?.words.some((word) => LOOSE_PIN.includes(word)),
  );
  const named = clearFacts(visit.facts, 'complication', { side }).some(
    (fact) => here(fact) && fact.status === 'present' && fact.values.what !== undefined,
  );
  const signs = (['dislocated', 'hot', 'overlap', 'recurrence'] as const).some((finding) =>
    isStated(visit.facts, finding, 'present', about),
  );
  return unstable || wound || pin || named || signs;
}

const isUnstable = (outcome: StageOutcome): boolean =>
  (outcome.is === 'staged' && outcome.stage >= 1) || (outcome.is === 'span' && outcome.low >= 1);
/** Does the newest image of the plate agree with the exam? Absent where none is reported. */
export function imagingOf({ before, whole, side, ray }: GateView, unstable: boolean): PathInputs['imaging'] {
  const key = rayKey(side, ray);
  const image = whole.plates()[key] ?? before.plate[key];
  if (!image) return 'absent';
  if (image.tear === 'equivocal') return 'discordant';
  return (image.tear === 'present') === unstable ? 'concordant' : 'discordant';
}

function progressing({ visit, before, side, ray }: GateView, outcome: StageOutcome): boolean {
  const earlier = before.stage[rayKey(side, ray)];
  const low = outcome.is === 'staged' ? outcome.stage : outcome.is === 'span' ? outcome.low : undefined;
  const worse = (['tape', 'insert', 'boot'] as const).some((finding) =>
    clearFacts(visit.facts, finding, { side }).some(({ values }) => values.response?.words.includes('worse')),
  );
  return worse || (earlier !== undefined && low !== undefined && low > earlier[1]);
}

/** An operation planned in this visit for the ray or its foot, and whether the note clears it. */
function operationOf(view: GateView): PathInputs['operation'] {
  const { visit, side, ray } = view;
  const planned = clearFacts(visit.facts, 'operation', { side }).some(
    (fact) => fact.status === 'present' && (fact.subject.at !== 'ray' || fact.subject.ray === ray),
  );
  if (!planned) return 'not planned';
  const open = clearFacts(visit.facts, 'wound', { side }).some(isOpenWound);
  const foot =
    pulsesFelt(visit, side) === 'felt' && !open && neuropathicWhy(view.whole.feet[side].feeling()) === undefined;
  const clear = foot && !recentSteroid(view) && !patientToSettle(visit, view.settings);
  return clear ? 'safety clear' : 'safety not clear';
}

const concernsFoot = (fact: AnyFact, side: Side): boolean => fact.side === undefined || fact.side === side;

/** Within three months, or without a date: then nobody can say that it is long ago. */
function recentSteroid({ visit, before, side }: GateView): boolean {
  const day: Day | undefined = visit.date ? dayFrom(visit.date) : undefined;
  const undated = clearFacts(visit.facts, 'steroid').some(
    (fact) => fact.section === 'tried' && fact.status === 'present' && !fact.values.on && concernsFoot(fact, side),
  );
  if (undated) return true;
  const stated = [before.steroid[footKey(side)], before.steroid[footKey(undefined)], ...steroidDays(visit)].flatMap(
    (iso) => (iso ? (dayOf(iso) ?? []) : []),
  );
  return day !== undefined && stated.some((given) => daysBetween(given, day) < STEROID_CLEAR_DAYS);
}
