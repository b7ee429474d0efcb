import type { Ray, Side } from '../../grammar/values.ts';
import { LESSER_RAYS } from '../../grammar/values.ts';
import type { NoStage, RayAnalysis } from './analysis.ts';
import { type Answer, ask, clearFacts, isStated } from './answers.ts';
import { type EpisodeState, rayKey } from './episode.ts';
import type { AnyFact, HeaderFacts, VisitFacts } from './facts.ts';
import { feelingAssumed, neuropathicWhy } from './feeling.ts';
import { isCalledAcute, isInjuryUnread } from './injury.ts';
import { isTold } from './known.ts';
import { isOpenWound } from './open-wound.ts';
import { remarks } from './remarks.ts';
import type { Settings } from './settings.ts';
import { jointDiseaseWhy } from './systemic.ts';
import type { WholeVisit } from './whole-visit.ts';

/** Everything that a gate may look at, for one ray of one visit. */
export interface GateView {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly header: HeaderFacts;
  readonly side: Side;
  readonly ray: Ray;
  readonly settings?: Settings;
  /** What its rays share, worked out once a visit. */
  readonly whole: WholeVisit;
  /** Pain and tenderness are both stated absent. */
  readonly painless: boolean;
  /** Every ray of the visit, this one too. Read only when somebody asks for an argument. */
  readonly rays: () => readonly Pick<RayAnalysis, 'side' | 'outcome'>[];
}
/** Why no stage is given, or what is assumed because nobody asked; `undefined` where the gate is open, or was asked. */
type Say = (view: GateView) => string | undefined;
export type Gate =
  | { readonly id: NoStage; readonly closes: Say; readonly assumes?: Say }
  | { readonly id: 'symptoms' | 'infection'; readonly assumes: Say };

const SURGERY = /\bweil|osteotom|fusion|arthrodes|surg|operat|\bop\b|repair/i;
const UNREAD_OPERATION = 'what is written of an operation was not read, taken as none on this ray';
const NO_OPERATION = 'no operation on this ray is recorded in this file';

/** A visit after an operation that no note of this file tells of: any ray of the foot may be the operated one. */
const isAfterUnknown = (visit: GateView['visit'], before: GateView['before'], side: Side): boolean =>
  visit.kind === 'postop' &&
  !Object.keys(before.operated).some((key) => key.startsWith(`${side} `)) &&
  !visit.facts.some(
    ({ finding, status, clarity }) => finding === 'procedure' && status === 'present' && clarity === 'clear',
  ) &&
  LESSER_RAYS.every((ray) => ['silent', 'without ray'].includes(earlierSurgery(visit, before, side, ray)));

/** Gates before staging, common practice all. Deformity and drawer are still described where one is closed. */
export const GATES: readonly Gate[] = [
  {
    id: 'operated',
    closes: ({ visit, before, side, ray }) =>
      before.operated[rayKey(side, ray)] !== undefined || isStated(visit.facts, 'procedure', 'present', { side, ray })
        ? 'the joint has been operated on'
        : earlierSurgery(visit, before, side, ray) === 'told'
          ? 'an earlier operation on this ray is recorded'
          : isAfterUnknown(visit, before, side)
            ? 'a post-operative visit, and this file does not say which ray was operated on'
            : undefined,
    assumes: ({ visit, before, side, ray }) =>
      ({
        told: undefined,
        denied: undefined,
        'without ray': 'an operation of this foot is recorded without its ray, taken as elsewhere',
        silent: remarks(visit, 'history').some((text) => SURGERY.test(text)) ? UNREAD_OPERATION : NO_OPERATION,
      })[earlierSurgery(visit, before, side, ray)],
  },
  {
    id: 'wound',
    closes: ({ visit, side, ray }) =>
      clearFacts(visit.facts, 'wound', { side, ray }).some((fact) => isOpenWound(fact))
        ? 'a wound at this ray comes first'
        : undefined,
    assumes: ({ visit, side }) =>
      clearFacts(visit.facts, 'wound', { side, whole: true }).some((fact) => isOpenWound(fact))
        ? 'a wound of this foot is recorded without its ray, taken as elsewhere'
        : undefined,
  },
  {
    id: 'infection',
    assumes: ({ visit, side, ray }) => {
      const hot = (['hot', 'redness'] as const).some((finding) =>
        isStated(visit.facts, finding, 'present', { side, ray }),
      );
      const asked = clearFacts(visit.facts, 'fever').length + clearFacts(visit.facts, 'temperature').length > 0;
      return hot && !asked ? 'fever not asked at a hot or red joint, taken as none' : undefined;
    },
  },
  {
    id: 'symptoms',
    assumes: ({ visit, side, ray, painless }) => {
      const tender = ask(visit.facts, 'tenderness', { side, ray });
      const denied = tender.is === 'stated' && tender.fact.status === 'absent' && !painless;
      const unread = painOf(visit, side, ray).some(({ is }) => is === 'unclear');
      if (denied && unread) return 'what is written of the pain cannot be read, taken as symptomatic';
      if (denied) return 'pain at this ray not denied, taken as symptomatic';
      const silent = painOf(visit, side, ray).every(({ is }) => is === 'not mentioned');
      return silent && tender.is === 'not mentioned'
        ? 'pain and tenderness not mentioned, taken as symptomatic'
        : undefined;
    },
  },
  {
    id: 'ray 5',
    closes: ({ ray }) => (ray === 5 ? 'the stages are not used for the fifth ray (congenital overlap)' : undefined),
  },
  {
    id: 'growing',
    closes: (view) =>
      isUnder18(view) ? 'the patient is under 18 years old' : isPlateOpen(view) ? 'a growth plate is open' : undefined,
    assumes: ({ whole: { years } }) => {
      if (years === undefined) return 'the age is not known, taken as an adult';
      return years === 18 ? 'the birthday may not have passed: the patient may be 17' : undefined;
    },
  },
  {
    id: 'neuropathic',
    closes: ({ whole, side }) => neuropathicWhy(whole.feet[side].feeling()),
    assumes: ({ whole, side }) => feelingAssumed(whole.feet[side].feeling()),
  },
  {
    id: 'acute injury',
    closes: ({ visit, whole, side }) => {
      if (whole.feet[side].acute() !== true) return undefined;
      return isCalledAcute(visit, side)
        ? 'an acute injury by the working diagnosis'
        : 'an acute injury under six weeks old';
    },
    assumes: ({ visit, before, whole, side, ray }) => {
      const acute = whole.feet[side].acute();
      if (acute === false && isInjuryUnread(visit))
        return 'an injury or onset is written that cannot be read, taken as no acute injury';
      if (acute === 'unknown') return 'the injury may be under six weeks old, taken as over six weeks';
      const asked = (['onset', 'trigger'] as const).some((finding) => clearFacts(visit.facts, finding).length > 0);
      const known = asked || before.stage[rayKey(side, ray)] !== undefined;
      return known ? undefined : 'onset and injury not mentioned, taken as no acute injury';
    },
  },
  {
    id: 'systemic',
    closes: ({ visit, before, whole, side, ray }) =>
      whole.systemic
        ? 'several joints are involved: think of inflammatory arthritis first'
        : jointDiseaseWhy({ visit, known: before.known, side, ray }),
    assumes: ({ visit, before, side }) => {
      const told = isTold(before.known, visit, 'inflammatory-arthritis');
      if (told) return 'inflammatory arthritis is stated, taken as quiet in this joint';
      const stiff = isStated(visit.facts, 'morning-stiffness', 'present');
      const pressed = clearFacts(visit.facts, 'compression', { side }).length > 0;
      if (pressed) return undefined;
      return `compression of the MTP joints not examined${stiff ? ', with morning stiffness stated' : ''}`;
    },
  },
];

type ClosingGate = Extract<Gate, { readonly closes: Say }>;
/** Those that close, in their order. */
export const CLOSING: readonly ClosingGate[] = GATES.filter((gate): gate is ClosingGate => 'closes' in gate);

const isUnder18 = ({ whole: { years } }: GateView): boolean => years !== undefined && years < 18;
/** An open growth plate of the ray, or of its foot. */
const isPlateOpen = ({ visit, side, ray }: GateView): boolean =>
  clearFacts(visit.facts, 'growth-plate', { side }).some(
    ({ status, subject, values }) =>
      status === 'present' &&
      values.state?.words.includes('open') &&
      (subject.at === 'foot' || (subject.at === 'ray' && subject.ray === ray)),
  );
export const isGrowing = (view: GateView): boolean => isUnder18(view) || isPlateOpen(view);

/** What this visit, or else an earlier one, says of an operation of the ray before this file. */
export function earlierSurgery(
  visit: VisitFacts,
  before: EpisodeState,
  side: Side,
  ray: Ray,
): 'told' | 'denied' | 'without ray' | 'silent' {
  const about = (fact: { side?: Side; subject: { at: string; ray?: Ray } }): boolean =>
    (fact.side === undefined || fact.side === side) && (fact.subject.at === 'foot' || fact.subject.ray === ray);
  const today = clearFacts(visit.facts, 'earlier-surgery').filter(about);
  const told = today.filter(({ status }) => status === 'present');
  if (told.some(({ subject }) => subject.at === 'ray')) return 'told';
  const own = before.known.surgery[rayKey(side, ray)];
  if (own === 'told') return 'told';
  const foot = before.known.surgery[side] ?? before.known.surgery.patient;
  const done = clearFacts(visit.facts, 'procedure', { side, whole: true }).some(({ status }) => status === 'present');
  if (told.length > 0 || done || foot === 'told') return 'without ray';
  return today.some(({ status }) => status === 'absent') || own === 'denied' || foot === 'denied' ? 'denied' : 'silent';
}

/** No symptom at the joint: tenderness and pain are both stated absent. Absent swelling alone does not count. */
export function isStatedPainless(visit: VisitFacts, side: Side, ray: Ray): boolean {
  const tender = ask(visit.facts, 'tenderness', { side, ray });
  const noTenderness = tender.is === 'stated' && tender.fact.status === 'absent' && !tender.fact.values.place;
  const pain = painOf(visit, side, ray);
  const denied = pain.some(isDenied);
  const felt = pain.some((answer) => answer.is !== 'not mentioned' && !isDenied(answer));
  const painfulDrawer = clearFacts(visit.facts, 'drawer', { side, ray }).some(({ values }) =>
    values.pain?.words.includes('painful'),
  );
  // What was written of the pain and not understood may be the pain.
  const unread = visit.verbatim.some(
    ({ section, subject }) => section === 'pain' && !(subject?.at === 'ray' && subject.ray !== ray),
  );
  return noTenderness && denied && !felt && !painfulDrawer && !unread;
}
/** What is said of pain at the ray and in its foot. */
const painOf = (visit: VisitFacts, side: Side, ray: Ray): Answer<'pain'>[] => [
  ask(visit.facts, 'pain', { side, ray }),
  ask(visit.facts, 'pain', { side, whole: true }),
];
const isDenied = (answer: Answer<'pain'>): boolean =>
  answer.is === 'stated' &&
  answer.fact.status === 'absent' &&
  !answer.fact.values.place &&
  !answer.fact.values.character;

/** The lesser rays of each side about which the visit states anything. */
export function statedRays(visit: VisitFacts): { side: Side; ray: Ray }[] {
  const stated = { right: new Set<Ray>(), left: new Set<Ray>() };
  for (const { side, subject, section } of visit.facts)
    if (side && subject.at === 'ray' && EXAMINED.has(section)) stated[side].add(subject.ray);
  const rays: { side: Side; ray: Ray }[] = [];
  for (const side of ['right', 'left'] as const)
    for (const ray of LESSER_RAYS) if (stated[side].has(ray)) rays.push({ side, ray });
  return rays;
}
const EXAMINED: ReadonlySet<AnyFact['section']> = new Set([
  'exam',
  'stand',
  'xray',
  'us',
  'mri',
  'ct',
  'operation',
  'pain',
]);
