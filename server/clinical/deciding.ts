import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { Ray, Side } from '../../grammar/values.ts';
import type { Evidence, ExamStep } from './analysis.ts';
import { type Answer, ask, clearFacts, dislocatedFilms, straightToe } from './answers.ts';
import { ageOf, daysOf } from './dates.ts';
import { type DrawerReading, readDrawer } from './drawer.ts';
import type { AnyFact, VisitFacts } from './facts.ts';
import { isKnownDislocated, type Known } from './known.ts';
import type { Deciding, Possible, World } from './staging-rows.ts';
import { ACUTE_DAYS } from './windows.ts';

/** The deciding findings of one ray as far as the visit tells, with what had to be assumed. */
export interface DecidingFindings {
  readonly possible: Possible;
  readonly assumptions: readonly string[];
  readonly drawer: DrawerReading;
  readonly facts: Readonly<Partial<Record<Deciding, readonly AnyFact[]>>>;
}

/** Collects the deciding findings of a lesser ray. An unclear or equivocal finding leaves both values open; silence is assumed only where a sign would strike the eye, and says so. */
export function decidingFindings(visit: VisitFacts, known: Known, side: Side, ray: Ray): DecidingFindings {
  const about = { side, ray };
  const { facts } = visit;
  const drawerAnswer = ask(facts, 'drawer', about);
  const drawer = readDrawer(drawerAnswer, visit.drawerScale);
  const assumptions: string[] = drawer.assumption ? [drawer.assumption] : [];
  const dislocated = dislocation(visit, known, side, ray);
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
    possible: {
      dislocated: dislocated.values,
      overlap: overlapOf(overlapAnswer, ray),
      drawer: drawer.steps,
      alignment: alignment.values,
      gap: [gap.length > 0],
      tender: plateTenderness(facts, side, ray),
      swollen: sign(ask(facts, 'swelling', about)),
      purchase: purchaseOf(ask(facts, 'paper', about)),
      sameOtherSide: [sameOnOtherSide(visit, side, ray, drawer)],
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

function sameOnOtherSide({ facts, drawerScale }: VisitFacts, side: Side, ray: Ray, drawer: DrawerReading): boolean {
  const other: Side = side === 'right' ? 'left' : 'right';
  const there = readDrawer(ask(facts, 'drawer', { side: other, ray }), drawerScale);
  const straight = (at: Side) => alignmentOf(facts, at, ray).values.every((value) => value === 'straight');
  return (
    there.steps.length === 1 && there.steps[0] === 2 && drawer.steps.includes(2) && straight(side) && straight(other)
  );
}

/** How each open finding is asked for, in the words of the shorthand. */
export const STEPS: Readonly<Record<Exclude<Deciding, 'gap' | 'sameOtherSide' | 'alignment'>, ExamStep>> = {
  dislocated: { finding: 'dislocated', ask: 'say since when the joint is dislocated' },
  overlap: { finding: 'overlap', ask: 'say whether the toe overlaps the hallux at rest, standing' },
  drawer: { finding: 'drawer', ask: 'do the drawer test and give its grade and scale' },
  tender: { finding: 'tenderness', ask: 'press the plate and the plantar side of the head' },
  swollen: { finding: 'swelling', ask: 'look and feel for swelling around the joint' },
  purchase: { finding: 'paper', ask: 'do the paper test' },
};

/** What a supporting or questioning finding says of a stage. It never moves the number. */
export function supporting(visit: VisitFacts, side: Side, ray: Ray, stages: readonly number[]): Evidence[] {
  const about = { side, ray };
  const { facts } = visit;
  const list: Evidence[] = [];
  const add = (fact: AnyFact, role: Evidence['role'], why: string) =>
    list.push({ statement: fact.statement, place: fact.origin.word, finding: fact.finding, role, why });
  const low = Math.min(...stages);
  const high = Math.max(...stages);
  for (const fact of clearFacts(facts, 'paper', about)) {
    const holds = fact.values.result?.words.includes('holds');
    if (fact.values.result)
      add(fact, holds ? 'questions' : 'supports', holds ? 'purchase is normal' : 'purchase is reduced');
  }
  for (const fact of clearFacts(facts, 'lifted', about))
    if (fact.status === 'present') add(fact, 'supports', 'the toe has lost ground contact');
  for (const fact of clearFacts(facts, 'rotation', about))
    if (fact.status === 'present' && fact.values.direction?.words.includes('supinated'))
      add(fact, 'supports', 'the toe is supinated');
  for (const fact of clearFacts(facts, 'swelling', about))
    if (fact.status === 'present' && high <= 2) add(fact, 'supports', 'the joint is swollen');
  for (const fact of clearFacts(facts, 'gap', { side }))
    if (fact.status === 'present' && (fact.values.between?.web === ray || fact.values.between?.web === ray - 1))
      add(fact, 'supports', 'the space beside the toe is widened');
  for (const fact of straightToe(facts, about)) if (low >= 2) add(fact, 'questions', 'the toe is straight');
  for (const finding of ['deviation', 'extension'] as const)
    for (const fact of clearFacts(facts, finding, about) as AnyFact[])
      if (fact.status === 'present' && low >= 1)
        add(fact, 'supports', finding === 'extension' ? 'the toe is extended' : 'the toe deviates');
  for (const fact of clearFacts(facts, 'tear', about))
    if (fact.status === 'present' || fact.status === 'absent')
      add(
        fact,
        (fact.status === 'present') === high >= 1 ? 'supports' : 'questions',
        `imaging reports ${fact.status === 'present' ? 'a tear' : 'no tear'}`,
      );
  for (const fact of clearFacts(facts, 'drawer', about))
    if (fact.values.guarding) add(fact, 'questions', 'the test met guarding');
  return list;
}
