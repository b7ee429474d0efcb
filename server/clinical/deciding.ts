import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Ray, Side } from '../../grammar/values.ts';
import type { ExamStep } from './analysis.ts';
import { type Answer, ask, clearFacts, dislocatedFilms, straightToe } from './answers.ts';
import { ageOf, daysOf } from './dates.ts';
import { type DrawerReading, type DrawerStep, readDrawer } from './drawer.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { isKnownDislocated, type Known } from './known.ts';
import type { Deciding, Possible, World } from './staging-rows.ts';
import { ACUTE_DAYS } from './windows.ts';

/** The deciding findings of one ray as far as the visit tells, with what had to be assumed. */
export interface DecidingFindings {
  readonly possible: Possible;
  readonly assumptions: readonly string[];
  readonly drawer: DrawerReading;
  /** The drawer of the same ray on the other side, empty where nobody states it. */
  readonly other: OtherSide;
  readonly facts: Readonly<Partial<Record<Deciding, readonly AnyFact[]>>>;
}

/** Collects the deciding findings of a lesser ray. An unclear or equivocal finding leaves both values open; silence is assumed only where a sign would strike the eye, and says so. */
export function decidingFindings(visit: VisitFacts, known: Known, side: Side, ray: Ray): DecidingFindings {
  const about = { side, ray };
  const { facts } = visit;
  const drawerAnswer = ask(facts, 'drawer', about);
  const drawer = readDrawer(drawerAnswer, visit.drawerScale);
  const assumptions: string[] = drawer.assumption ? [drawer.assumption] : [];
  const other = otherSide(visit, side, ray);
  const dislocated = dislocation(visit, known, side, ray);
  if (dislocated.assumption) assumptions.push(dislocated.assumption);
  const overlapAnswer = ask(facts, 'overlap', about);
  if (overlapAnswer.is === 'not mentioned') assumptions.push('overlap not mentioned, taken as none');
  if (dislocated.facts.length === 0) assumptions.push('dislocation not mentioned, taken as none');
  const alignment = alignmentOf(facts, side, ray);
  const gap = clearFacts(facts, 'gap', { side }).filter(
    (fact) => fact.status === 'present' && (fact.values.between?.web === ray || fact.values.between?.web === ray - 1),
  );
  return {
    drawer,
    assumptions,
    other,
    possible: {
      dislocated: dislocated.values,
      overlap: overlapOf(overlapAnswer, ray),
      drawer: drawer.steps,
      alignment: alignment.values,
      gap: [gap.length > 0],
      tender: plateTenderness(facts, side, ray),
      swollen: sign(ask(facts, 'swelling', about)),
      purchase: purchaseOf(ask(facts, 'paper', about)),
      sameOtherSide: [isSame(2, drawer, other) && !isOutOfLine(facts, ray)],
    },
    facts: {
      drawer: factsOfAnswer(drawerAnswer),
      overlap: factsOfAnswer(overlapAnswer),
      dislocated: dislocated.facts,
      alignment: alignment.facts,
      gap,
      tender: clearFacts(facts, 'tenderness', about),
      swollen: clearFacts(facts, 'swelling', about),
      purchase: clearFacts(facts, 'paper', about),
      sameOtherSide: isSame(2, drawer, other) && !isOutOfLine(facts, ray) ? other.facts : [],
    },
  };
}

const factsOfAnswer = <F extends FindingId>(answer: Answer<F>): readonly AnyFact[] =>
  answer.is === 'stated'
    ? [answer.fact as AnyFact]
    : answer.is === 'conflicting'
      ? (answer.facts as readonly AnyFact[])
      : [];

/** Present and absent are known; all else, silence included, leaves both open. */
function sign(answer: Answer<'swelling'>): boolean[] {
  if (answer.is === 'stated' && answer.fact.status === 'present') return [true];
  return answer.is === 'stated' && answer.fact.status === 'absent' ? [false] : [true, false];
}

/** Only the second toe lies beside the hallux: of another ray an overlap that names no neighbour leaves it open. */
function overlapOf(answer: Answer<'overlap'>, ray: Ray): World['overlap'][] {
  if (answer.is === 'not mentioned') return ['no'];
  if (answer.is !== 'stated') return ['no', 'rest'];
  const { status, values } = answer.fact;
  if (status === 'absent' || (status === 'present' && values.onto?.words.includes('third'))) return ['no'];
  if (status !== 'present' || (ray !== 2 && !values.onto)) return ['no', 'rest'];
  return values.when?.words.includes('sometimes') ? ['sometimes'] : ['rest'];
}

const PLATE_PLACES: readonly string[] = ['plate', 'plantar', 'head'];
/** Tender at the plate or plantar head. Tenderness without a place, or at the metatarsal as such, leaves it open. */
function plateTenderness(facts: readonly AnyFact[], side: Side, ray: Ray): boolean[] {
  const all = clearFacts(facts, 'tenderness', { side, ray });
  const at = (fact: (typeof all)[number]) => fact.values.place?.words ?? [];
  const plantar = (fact: (typeof all)[number]) => at(fact).some((place) => PLATE_PLACES.includes(place));
  if (all.some((fact) => fact.status === 'present' && plantar(fact))) return [true];
  if (all.some((fact) => fact.status === 'absent' && (at(fact).length === 0 || plantar(fact)))) return [false];
  return [true, false];
}

function purchaseOf(answer: Answer<'paper'>): World['purchase'][] {
  const result = answer.is === 'stated' ? answer.fact.values.result?.words[0] : undefined;
  if (result === 'holds') return ['normal'];
  return result ? ['reduced'] : ['normal', 'reduced'];
}

/** Word of the clinician only: no published cut turns degrees into mild, moderate, severe. */
function alignmentOf(
  facts: readonly AnyFact[],
  side: Side,
  ray: Ray,
): { values: World['alignment'][]; facts: AnyFact[] } {
  const about = { side, ray };
  const deviation = clearFacts(facts, 'deviation', about);
  const extension = clearFacts(facts, 'extension', about);
  const all: AnyFact[] = [...deviation, ...extension];
  const present = all.filter(({ status }) => status === 'present');
  const marked =
    deviation.some((fact) => fact.status === 'present' && fact.values.degree?.words.includes('marked')) ||
    extension.some(
      (fact) =>
        fact.status === 'present' && !fact.values.degree?.words.some((word) => word === 'slight' || word === 'mild'),
    );
  if (present.length > 0) return { values: [marked ? 'marked' : 'deviated'], facts: all };
  if (all.some(({ status }) => status === 'equivocal')) return { values: ['straight', 'deviated'], facts: all };
  const straight = straightToe(facts, about).length > 0;
  return { values: [straight ? 'straight' : 'not stated'], facts: all };
}

/** Dislocated at rest, on exam or on a film. Old only where its own statement says so. */
function dislocation(
  visit: VisitFacts,
  known: Known,
  side: Side,
  ray: Ray,
): { values: World['dislocated'][]; facts: AnyFact[]; assumption?: string } {
  const found = dislocationFound(visit, known, side, ray);
  const onFilmOnly = found.facts.length > 0 && found.facts.every(({ finding }) => finding === 'film-joint');
  const doubt = onFilmOnly ? filmDoubt(visit, side) : undefined;
  return doubt ? { ...found, assumption: doubt } : found;
}

/** A film without weight may show a joint dislocated that is not so on standing, and the other way round: confirm it. */
function filmDoubt(visit: VisitFacts, side: Side): string | undefined {
  const loads = clearFacts(visit.facts, 'view', { side }).flatMap(({ values }) => values.load?.words ?? []);
  if (loads.includes('weight-bearing')) return undefined;
  return loads.includes('not weight-bearing')
    ? 'the film was taken without weight: confirm the dislocation by exam or a weight-bearing film'
    : 'the load of the film is not stated: confirm the dislocation by exam or a weight-bearing film';
}

function dislocationFound(
  visit: VisitFacts,
  known: Known,
  side: Side,
  ray: Ray,
): { values: World['dislocated'][]; facts: AnyFact[] } {
  const answer = ask(visit.facts, 'dislocated', { side, ray });
  const film = dislocatedFilms(visit.facts, { side, ray });
  const stated = answer.is === 'stated' ? [answer.fact] : answer.is === 'conflicting' ? [...answer.facts] : [];
  const all: AnyFact[] = [...stated, ...film];
  const present = stated.filter(({ status }) => status === 'present');
  if (present.length > 0 || film.length > 0)
    return { values: [isOldJoint(present, visit, known, { side, ray }) ? 'old' : 'undated'], facts: all };
  if (answer.is === 'unclear' || stated.some(({ status }) => status !== 'absent'))
    return { values: ['no', 'undated'], facts: all };
  return { values: ['no'], facts: all };
}

/** Old by the clinician's word, or by a time or date of six weeks or more before the visit. */
export function isOldDislocation({ values }: Extract<AnyFact, { finding: 'dislocated' }>, visit: VisitFacts): boolean {
  const { age, for: time, on } = values;
  if (age) return age.words.includes('chronic');
  if (time) return daysOf(time).least >= ACUTE_DAYS;
  return on !== undefined && (ageOf(on, visit)?.least ?? 0) >= ACUTE_DAYS;
}

/** Old by today's words, or known for six weeks from earlier visits where today's words give no age. */
export function isOldJoint(
  stated: readonly Extract<AnyFact, { finding: 'dislocated' }>[],
  visit: VisitFacts,
  known: Known,
  about: { readonly side: Side; readonly ray: Ray },
): boolean {
  if (stated.some((fact) => isOldDislocation(fact, visit))) return true;
  const aged = stated.some(({ values }) => values.age || values.for || values.on || values.at);
  return !aged && isKnownDislocated(known, visit, about, ACUTE_DAYS);
}

export interface OtherSide {
  readonly steps: readonly DrawerStep[];
  readonly facts: readonly AnyFact[];
}
function otherSide({ facts, drawerScale }: VisitFacts, side: Side, ray: Ray): OtherSide {
  const answer = ask(facts, 'drawer', { side: side === 'right' ? 'left' : 'right', ray });
  const found = factsOfAnswer(answer);
  return found.length > 0 ? { steps: readDrawer(answer, drawerScale).steps, facts: found } : { steps: [], facts: [] };
}
/** Both sides show this step, and no other. */
export const isSame = (step: DrawerStep, here: DrawerReading, there: OtherSide): boolean =>
  here.steps.length === 1 && here.steps[0] === step && there.steps.length === 1 && there.steps[0] === step;
/** A toe of either side that is stated out of line makes the sides unlike. */
const isOutOfLine = (facts: readonly AnyFact[], ray: Ray): boolean =>
  (['right', 'left'] as const).some((at) =>
    alignmentOf(facts, at, ray).values.some((value) => value !== 'straight' && value !== 'not stated'),
  );

/** How each open finding is asked for, in the words of the shorthand. */
export const STEPS: Readonly<Record<Exclude<Deciding, 'gap' | 'sameOtherSide' | 'alignment'>, ExamStep>> = {
  dislocated: { finding: 'dislocated', ask: 'say since when the joint is dislocated' },
  overlap: { finding: 'overlap', ask: 'say whether the toe overlaps the hallux at rest, standing' },
  drawer: { finding: 'drawer', ask: 'do the drawer test and give its grade and scale' },
  tender: { finding: 'tenderness', ask: 'press the plate and the plantar side of the head' },
  swollen: { finding: 'swelling', ask: 'look and feel for swelling around the joint' },
  purchase: { finding: 'paper', ask: 'do the paper test' },
};
