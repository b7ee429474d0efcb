import type { Ray, Side } from '../../grammar/values.ts';
import { LESSER_RAYS } from '../../grammar/values.ts';
import type { NoStage } from './analysis.ts';
import { type Answer, ask, clearFacts, isStated } from './answers.ts';
import { type EpisodeState, rayKey } from './episode.ts';
import type { AnyFact, HeaderFacts, VisitFacts } from './facts.ts';
import { isAcuteInjury, isInjuryUnread } from './injury.ts';
import type { Settings } from './settings.ts';

/** Everything that a gate may look at, for one ray of one visit. */
export interface GateView {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly header: HeaderFacts;
  readonly side: Side;
  readonly ray: Ray;
  readonly settings?: Settings;
}
export interface Gate {
  readonly id: NoStage | 'symptoms';
  /** Why no stage is given, or `undefined` where the gate is open. */
  readonly closes: (view: GateView) => string | undefined;
  /** What is assumed because nobody asked. */
  readonly assumes?: (view: GateView) => string | undefined;
}

/** Gates before staging, common practice all. Deformity and drawer are still described where one is closed. */
export const GATES: readonly Gate[] = [
  {
    id: 'operated',
    closes: ({ visit, before, side, ray }) =>
      before.operated[rayKey(side, ray)] !== undefined || isStated(visit.facts, 'procedure', 'present', { side, ray })
        ? 'the joint has been operated on: describe residual instability instead'
        : isStated(visit.facts, 'earlier-surgery', 'present', { side, ray })
          ? 'an earlier operation on this ray is recorded: describe residual instability instead'
          : undefined,
    assumes: () => 'no operation on this ray is recorded in this file',
  },
  {
    id: 'symptoms',
    closes: () => undefined,
    assumes: ({ visit, side, ray }) => {
      const tender = ask(visit.facts, 'tenderness', { side, ray });
      const denied = tender.is === 'stated' && tender.fact.status === 'absent' && !isStatedPainless(visit, side, ray);
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
    closes: ({ visit, header }) => {
      const years = ageInYears(visit, header);
      return years !== undefined && years < 18 ? 'the patient is under 18 years old' : undefined;
    },
    assumes: ({ visit, header }) => {
      const years = ageInYears(visit, header);
      if (years === undefined) return 'the year of birth is not given, taken as an adult';
      return years === 18 ? 'the birthday may not have passed: the patient may be 17' : undefined;
    },
  },
  {
    id: 'neuropathic',
    closes: ({ visit, side }) =>
      footSensation(visit, side) === 'lost' ? 'protective sensation is lost (neuropathic foot)' : undefined,
    assumes: ({ visit, side }) => {
      const feeling = footSensation(visit, side);
      if (feeling === 'reduced') return 'feeling is reduced, protective sensation taken as kept: confirm it';
      return feeling === undefined ? 'feeling not examined' : undefined;
    },
  },
  {
    id: 'acute injury',
    closes: (view) => (isAcuteInjury(view) === true ? 'an acute injury under six weeks old' : undefined),
    assumes: (view) => {
      const { visit, before, side, ray } = view;
      if (isAcuteInjury(view) === false && isInjuryUnread(visit))
        return 'an injury or onset is written that cannot be read, taken as no acute injury';
      if (isAcuteInjury(view) === 'unknown') return 'time since the injury not stated, taken as over six weeks';
      const asked = (['onset', 'trigger'] as const).some((finding) => clearFacts(visit.facts, finding).length > 0);
      const known = asked || before.stage[rayKey(side, ray)] !== undefined;
      return known ? undefined : 'onset and injury not mentioned, taken as no acute injury';
    },
  },
  {
    id: 'systemic',
    closes: ({ visit }) =>
      isSystemic(visit) ? 'several joints are involved: think of inflammatory arthritis first' : undefined,
    assumes: ({ visit, side }) =>
      clearFacts(visit.facts, 'compression', { side }).length === 0
        ? 'compression of the MTP joints not examined'
        : undefined,
  },
];

/** Years that the patient has at most reached in the visit's year; a birth year allows one more or less. */
export function ageInYears(visit: VisitFacts, header: HeaderFacts): number | undefined {
  const born = header.patient?.born;
  return born !== undefined && visit.date ? visit.date.year - born : undefined;
}

/** What the visit says of feeling in the foot. */
export function footSensation(visit: VisitFacts, side: Side): 'normal' | 'reduced' | 'lost' | undefined {
  const words: string[] = [];
  for (const fact of clearFacts(visit.facts, 'sensation', { side })) {
    if (fact.subject.at === 'ray') continue;
    words.push(...(fact.values.state?.words ?? []));
    const felt = fact.values.monofilament;
    if (felt) words.push(felt.part === 0 ? 'lost' : felt.part < felt.whole ? 'reduced' : 'normal');
    if (fact.status === 'absent') words.push('lost');
  }
  return (['lost', 'reduced', 'normal'] as const).find((word) => words.includes(word));
}

/** Tender or swollen at three or more MTP joints over both feet, or compression sore in both feet. */
export function isSystemic(visit: VisitFacts): boolean {
  const sore = (at: Side) =>
    clearFacts(visit.facts, 'compression', { side: at }).some(
      (fact) => fact.side === at && fact.values.pain?.words.includes('sore'),
    );
  return (sore('right') && sore('left')) || inflamedJoints(visit).size >= 3;
}

/** MTP joints that are stated tender (not at the shaft) or swollen. */
export function inflamedJoints(visit: VisitFacts): ReadonlySet<string> {
  const joints = new Set<string>();
  const add = (fact: AnyFact) => {
    if (fact.status === 'present' && fact.side && fact.subject.at === 'ray' && fact.subject.part !== 'metatarsal')
      joints.add(rayKey(fact.side, fact.subject.ray));
  };
  for (const fact of clearFacts(visit.facts, 'swelling')) add(fact);
  for (const fact of clearFacts(visit.facts, 'tenderness'))
    if (!fact.values.place?.words.every((place) => place === 'shaft')) add(fact);
  return joints;
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
  answer.is === 'stated' && answer.fact.status === 'absent' && !answer.fact.values.place;

/** The lesser rays of each side about which the visit states anything. */
export function statedRays(visit: VisitFacts): { side: Side; ray: Ray }[] {
  const found: { side: Side; ray: Ray }[] = [];
  for (const side of ['right', 'left'] as const)
    for (const ray of LESSER_RAYS)
      if (
        visit.facts.some(
          (fact) => fact.side === side && fact.subject.at === 'ray' && fact.subject.ray === ray && isExamined(fact),
        )
      )
        found.push({ side, ray });
  return found;
}
const isExamined = (fact: AnyFact): boolean =>
  ['exam', 'stand', 'xray', 'us', 'mri', 'ct', 'operation', 'pain'].includes(fact.section);
