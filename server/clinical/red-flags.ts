import type { FindingId } from '../../grammar/lexicon/index.ts';
import { RAYS, type Ray, type Side } from '../../grammar/values.ts';
import { clearFacts, dislocatedFilms, isStated, present, statementIds } from './answers.ts';
import { isOldJoint } from './deciding.ts';
import { type EpisodeState, rayKey } from './episode.ts';
import { factsOf } from './fact-index.ts';
import type { AnyFact, StatementId, VisitFacts } from './facts.ts';
import { isPoor } from './feeling.ts';
import { isOpenWound } from './open-wound.ts';
import { clot, saysNightPain, tumour } from './red-flags-beyond-the-foot.ts';
import type { WholeFoot } from './whole-visit.ts';

export type RedFlag =
  | 'infection'
  | 'ischaemia'
  | 'clot'
  | 'open injury'
  | 'acute dislocation'
  | 'fracture'
  | 'neuropathic hot foot'
  | 'tumour';
export interface Flagged {
  readonly flag: RedFlag;
  readonly statements: readonly StatementId[];
  /** Says which signs made the pair, or which word. */
  readonly why: string;
  /** It stops staging; a dislocation of unknown age is described by its own row. */
  readonly closes: boolean;
}

/** What the finders look at: one visit, what is known from earlier ones, one ray. */
export interface FlagView {
  readonly visit: VisitFacts;
  readonly before: EpisodeState;
  readonly feet: Readonly<Record<Side, Pick<WholeFoot, 'feeling' | 'acute'>>>;
  readonly side: Side;
  readonly ray: Ray;
}
export type Found = Omit<Flagged, 'flag'> | undefined;

/** Red flags from a pair of signs or the clinician's word, never from one weak word (common practice). First in order, first in every output. */
export const FINDERS: readonly Finder[] = [
  {
    flag: 'infection',
    find: infection,
    needs: ['wound', 'pin-site', 'infection-sign', 'complication', 'hot', 'redness'],
  },
  { flag: 'ischaemia', find: ischaemia, needs: ['perfusion', 'disproportionate-pain', 'capillary-refill'] },
  { flag: 'clot', find: clot, needs: ['chest', 'calf', 'complication'] },
  { flag: 'open injury', find: openInjury, needs: ['wound'] },
  { flag: 'acute dislocation', find: acuteDislocation, needs: ['dislocated', 'film-joint'], or: saysTopGrade },
  { flag: 'fracture', find: freshFracture, needs: ['image-other'] },
  { flag: 'neuropathic hot foot', find: neuropathicHotFoot, needs: ['wound', 'hot'] },
  { flag: 'tumour', find: tumour, needs: ['mass'], or: saysNightPain },
];
interface Finder {
  readonly flag: RedFlag;
  readonly find: (view: FlagView) => Found;
  /** Without one of these, or what `or` looks for, the visit can't have the flag: most visits have none, and are not searched ray by ray. */
  readonly needs: readonly FindingId[];
  readonly or?: (facts: readonly AnyFact[]) => boolean;
}
/** The red flags that a visit may have, by what it mentions. */
const possible = (facts: readonly AnyFact[]): Finder[] =>
  FINDERS.filter(({ needs, or }) => isMentioned(facts, needs) || or?.(facts));
function isMentioned(facts: readonly AnyFact[], findings: readonly FindingId[]): boolean {
  for (const finding of findings) if (factsOf(facts, finding).length > 0) return true;
  return false;
}

export interface FlagsOfVisit {
  /** Every red flag of the visit, once each, of the great toe and of feet without an examined ray too. */
  readonly all: readonly Flagged[];
  /** Those that concern a ray, in order; signs of the whole foot and of the patient concern each of its rays. */
  readonly of: (side: Side, ray: Ray) => readonly Flagged[];
}

const NO_FLAGS: FlagsOfVisit = { all: [], of: () => [] };

/** Finds the red flags of a visit, once for all who ask. */
export function redFlags(
  view: Omit<FlagView, 'side' | 'ray'>,
  finders: readonly Finder[] = possible(view.visit.facts),
): FlagsOfVisit {
  if (finders.length === 0) return NO_FLAGS;
  const all = new Map<string, Flagged>();
  const byRay = new Map<string, Flagged[]>();
  for (const side of ['right', 'left'] as const)
    for (const ray of RAYS) {
      const own: Flagged[] = [];
      const each = { ...view, side, ray };
      for (const { flag, find } of finders) {
        const found = find(each);
        if (!found) continue;
        const key = `${flag} ${found.statements.join()}`;
        const flagged = all.get(key) ?? { flag, ...found };
        all.set(key, flagged);
        own.push(flagged);
      }
      if (own.length > 0) byRay.set(rayKey(side, ray), own);
    }
  return { all: [...all.values()], of: (side, ray) => byRay.get(rayKey(side, ray)) ?? [] };
}

/** Facts of the ray itself, of its foot or of the patient. */
const nearby = ({ side, ray }: FlagView, fact: AnyFact): boolean =>
  (fact.side === undefined || fact.side === side) && (fact.subject.at !== 'ray' || fact.subject.ray === ray);

/** Fever as told, or a temperature from 38 °C, 100.4 °F (common practice). */
const feverish = (facts: readonly AnyFact[]): AnyFact[] => [
  ...present(clearFacts(facts, 'fever')),
  ...present(clearFacts(facts, 'temperature')).filter(
    ({ values }) => (values.value?.low ?? 0) >= 38 || (values.fahrenheit?.low ?? 0) >= 100.4,
  ),
];

const isInfected = (states: readonly string[] | undefined): boolean =>
  states?.some((word) => word === 'pus' || word === 'spreading') ?? false;

const isHealed = ({ values }: Extract<AnyFact, { finding: 'wound' }>): boolean =>
  values.state?.words.includes('healed') ?? false;

function infection(view: FlagView): Found {
  const { facts } = view.visit;
  const near = <T extends AnyFact>(list: readonly T[]) => present(list).filter((fact) => nearby(view, fact));
  const wounds = near(clearFacts(facts, 'wound'));
  const festering = wounds.filter(({ values }) => isInfected(values.state?.words));
  if (festering.length > 0) return found(festering, 'the wound shows pus or spreading redness');
  const deep = wounds.filter((fact) => fact.values.bone && !isHealed(fact));
  if (deep.length > 0) return found(deep, 'a wound reaches bone');
  const pins = near(clearFacts(facts, 'pin-site'));
  const tracks = pins.filter(({ values }) => isInfected(values.state?.words));
  if (tracks.length > 0) return found(tracks, 'the pin site shows pus or spreading redness');
  const signsSeen = near(clearFacts(facts, 'infection-sign'));
  const signs = signsSeen.filter(({ values }) => values.what?.words.some((word) => word !== 'discharge'));
  if (signs.length > 0) return found(signs, 'pus, cellulitis or spreading redness');
  const said = near(clearFacts(facts, 'complication'));
  const named = said.filter(({ values }) => values.what?.words.includes('infection'));
  if (named.length > 0) return found(named, 'the clinician states an infection');
  const heat: AnyFact[] = [...near(clearFacts(facts, 'hot')), ...near(clearFacts(facts, 'redness'))];
  const fever = feverish(facts);
  if (heat.length > 0 && fever.length > 0) return found([...heat, ...fever], 'a hot or red joint with fever');
  const sore = isAfterOperation(view) ? hotAndRed(view) : [];
  if (sore.length > 0) return found(sore, 'heat and redness with swelling or tenderness after an operation');
  const inflamed = pins.filter(({ values }) =>
    values.state?.words.some((word) => word === 'red' || word === 'discharging'),
  );
  if (inflamed.length > 0 && fever.length > 0)
    return found([...inflamed, ...fever], 'a red or discharging pin site with fever');
  const weeping = pins.filter(({ values }) => values.state?.words.includes('discharging'));
  const reddened = weeping.filter(({ values }) => values.state?.words.includes('red'));
  if (reddened.length > 0 || (weeping.length > 0 && heat.length > 0))
    return found([...weeping, ...heat], 'a pin site that is red or hot and discharges');
  const broken: AnyFact[] = [
    ...wounds.filter(
      (fact) =>
        fact.values.state?.words.includes('open') || (fact.values.kind?.words.includes('ulcer') && !isHealed(fact)),
    ),
    ...said.filter(({ values }) => values.what?.words.includes('wound breakdown')),
  ];
  if (broken.length > 0 && fever.length > 0) return found([...broken, ...fever], 'an open wound with fever');
  const wet: AnyFact[] = [...wounds.filter(({ values }) => values.state?.words.includes('discharging')), ...signsSeen];
  if (wet.length > 0 && heat.length + fever.length > 0)
    return found([...wet, ...heat, ...fever], 'a discharging wound with fever, heat or redness');
  return broken.length > 0 && heat.length > 0
    ? found([...broken, ...heat], 'an open wound that is hot or red')
    : undefined;
}

/** Heat and redness of a ray or its foot beside swelling or tenderness of it; nothing where one of the three is missing. */
function hotAndRed(view: FlagView): AnyFact[] {
  const { facts } = view.visit;
  const near = (finding: 'hot' | 'redness' | 'swelling' | 'foot-swelling' | 'tenderness'): AnyFact[] =>
    present(clearFacts(facts, finding) as AnyFact[]).filter((fact) => nearby(view, fact));
  const signs = [near('hot'), near('redness'), [...near('swelling'), ...near('foot-swelling'), ...near('tenderness')]];
  return signs.every(({ length }) => length > 0) ? signs.flat() : [];
}

function ischaemia(view: FlagView): Found {
  const { facts } = view.visit;
  const pale = present(clearFacts(facts, 'perfusion')).filter(
    (fact) => nearby(view, fact) && fact.values.state?.words.some((word) => word !== 'pink'),
  );
  if (pale.length > 0) return found(pale, 'the toe is cold, pale, white or blue');
  const beyond = present(clearFacts(facts, 'disproportionate-pain')).filter((fact) => nearby(view, fact));
  if (beyond.length > 0) return found(beyond, 'pain out of proportion');
  const slow = present(clearFacts(facts, 'capillary-refill')).filter(
    (fact) => nearby(view, fact) && fact.values.state?.words.includes('delayed'),
  );
  return slow.length > 0 && isAtRisk(view) ? found(slow, 'delayed refill in an operated or dislocated toe') : undefined;
}
/** A toe whose vessels an operation, a pin or a dislocation may have caught. */
const isAtRisk = ({ visit, before, side, ray }: FlagView): boolean =>
  visit.kind === 'postop' ||
  visit.kind === 'operation' ||
  before.operated[rayKey(side, ray)] !== undefined ||
  (['procedure', 'dislocated'] as const).some((finding) => isStated(visit.facts, finding, 'present', { side, ray }));

/** An open wound beside an injury under six weeks old, or a dislocation that is not old, before any operation. */
function openInjury(view: FlagView): Found {
  if (isAfterOperation(view)) return undefined;
  const wounds = clearFacts(view.visit.facts, 'wound').filter((fact) => nearby(view, fact) && isOpenWound(fact));
  if (wounds.length === 0) return undefined;
  const harmed = injured(view);
  const out = acuteDislocation(view);
  if (harmed.length > 0) return found([...wounds, ...harmed], 'a wound with an injury under six weeks old');
  return (
    out && {
      statements: [...statementIds(wounds), ...out.statements],
      why: 'a wound over a dislocated joint',
      closes: true,
    }
  );
}

function freshFracture(view: FlagView): Found {
  if (isAfterOperation(view)) return undefined;
  const broken = present(clearFacts(view.visit.facts, 'image-other')).filter(
    (fact) => nearby(view, fact) && fact.values.what?.words.includes('fracture'),
  );
  const harmed = broken.length > 0 ? injured(view) : [];
  return harmed.length > 0 ? found([...broken, ...harmed], 'a fracture with an injury under six weeks old') : undefined;
}
const isAfterOperation = ({ visit, before, side, ray }: FlagView): boolean =>
  visit.kind === 'postop' || visit.kind === 'operation' || before.operated[rayKey(side, ray)] !== undefined;
/** The statements of an injury, where it is under six weeks old. */
const injured = ({ visit, feet, side }: FlagView): AnyFact[] =>
  feet[side].acute() === true
    ? present(clearFacts(visit.facts, 'trigger')).filter(({ values }) => values.what?.words.includes('injury'))
    : [];

/** Acute by the clinician's word, by its age, or because nobody says that it is old. */
function acuteDislocation(view: FlagView): Found {
  const { facts } = view.visit;
  const exam = present(clearFacts(facts, 'dislocated', view));
  const film = dislocatedFilms(facts, view);
  const top = clearFacts(facts, 'drawer', view).filter(({ values }) => isTopGrade(values.grade));
  const all: AnyFact[] = [...exam, ...film, ...top];
  if (all.length === 0 || isOldJoint(exam, view.visit, view.before.known, view)) return undefined;
  const said = exam.some(({ values }) => values.age || values.for || values.at || values.on);
  const why = said ? 'the dislocation is acute' : 'dislocated, and nobody says since when: acute until shown otherwise';
  return { statements: statementIds(all), why, closes: said };
}
/** Grade 4 of the 0-4 scale and grade 3 of the 0-3 scale are a joint that lies dislocated (from memory). */
const isTopGrade = (grade: { low: number; scale?: string } | undefined): boolean =>
  grade !== undefined && (grade.scale === '0-3' ? grade.low === 3 : grade.scale !== '1-3' && grade.low === 4);

function saysTopGrade(facts: readonly AnyFact[]): boolean {
  return clearFacts(facts, 'drawer').some(({ values }) => isTopGrade(values.grade));
}

function neuropathicHotFoot(view: FlagView): Found {
  const { visit, side, feet } = view;
  if (!isPoor(feet[side].feeling())) return undefined;
  const wounds = clearFacts(visit.facts, 'wound', { side }).filter((fact) => isOpenWound(fact));
  if (wounds.length > 0) return found(wounds, 'a wound in a foot with poor feeling');
  const hot = present(clearFacts(visit.facts, 'hot', { side }));
  const swollen = present<AnyFact>([
    ...clearFacts(visit.facts, 'swelling', { side }),
    ...clearFacts(visit.facts, 'foot-swelling', { side }),
  ]);
  const warmer = hot.filter(({ values }) => values.than);
  if (warmer.length > 0 && swollen.length === 0)
    return found(warmer, 'a foot with poor feeling that is warmer than the other');
  if (hot.length === 0 || swollen.length === 0) return undefined;
  return found([...hot, ...swollen], 'a hot, swollen foot with poor feeling');
}

const found = (facts: readonly AnyFact[], why: string): Found => ({
  statements: statementIds(facts),
  why,
  closes: true,
});
