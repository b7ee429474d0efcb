import { clearFacts, straightToe } from '../answers.ts';
import type { World } from '../staging-rows.ts';
import type { Criterion, Met, Seen } from './scale.ts';

/** All possible values wanted is yes, none is no, some is open. */
function among<T>(possible: readonly T[], wanted: readonly T[]): Met {
  const fits = possible.filter((value) => wanted.includes(value)).length;
  if (fits === 0) return 'no';
  return fits === possible.length ? 'yes' : 'open';
}

/** A drawer that was not done is open; one that lies dislocated has nothing to be drawn. */
export const drawer = (says: string, steps: readonly (0 | 1 | 2 | 3)[]): Criterion => ({
  says,
  finding: 'drawer',
  ask: 'do the drawer test and give its grade and scale',
  met: ({ deciding }) =>
    deciding.possible.drawer.includes('not done') ? 'open' : among<World['drawer']>(deciding.possible.drawer, steps),
});

export const overlap = (says: string, wanted: readonly World['overlap'][]): Criterion => ({
  says,
  finding: 'overlap',
  ask: 'say whether the toe overlaps the hallux at rest, standing',
  met: ({ deciding }) => among(deciding.possible.overlap, wanted),
});

export const dislocation = (says: string, is: boolean): Criterion => ({
  says,
  finding: 'dislocated',
  ask: 'say whether the joint is dislocated at rest',
  met: ({ deciding: { possible } }) => {
    const found = among<boolean>([...possible.dislocated.map((each) => each !== 'no')], [is]);
    return possible.drawer.every((step) => step === 4) ? (is ? 'yes' : 'no') : found;
  },
});

/** At the plate or the plantar side of the head; `marked` where the description calls it extreme. */
export const plantarTenderness = (says: string, degree?: 'marked'): Criterion => ({
  says,
  finding: 'tenderness',
  ask: degree ? 'press the plate and say how tender it is' : 'press the plate and the plantar side of the head',
  met: (seen) => {
    const tender = among(seen.deciding.possible.tender, [true]);
    if (tender !== 'yes' || !degree) return tender;
    return degreeOf(seen, 'tenderness', [degree]);
  },
});

export const swelling = (says: string, degrees: readonly string[]): Criterion => ({
  says,
  finding: 'swelling',
  ask: 'look and feel for swelling around the joint and say how much',
  met: (seen) => degreeOf(seen, 'swelling', degrees),
});

/** No published cut turns degrees into words: the clinician's word counts. */
export const deviation = (
  says: string,
  degrees: readonly string[] | 'any',
  directions?: readonly string[],
): Criterion => ({
  says,
  finding: 'deviation',
  ask: 'look at the toe from above and say how far and which way it deviates, in words',
  met: (seen) => {
    const found = clearFacts(seen.facts, 'deviation', seen.about).filter(({ status }) => status === 'present');
    const ways = found.flatMap(({ values }) => values.direction?.words ?? []);
    if (directions && ways.length > 0 && !ways.some((way) => directions.includes(way))) return 'no';
    const extent = degrees === 'any' ? presence(seen, 'deviation') : degreeOf(seen, 'deviation', degrees);
    return directions && extent === 'yes' && ways.length === 0 ? 'open' : extent;
  },
});

export const noDeformity = (says: string): Criterion => ({
  says,
  finding: 'deviation',
  ask: 'look at the toe from above and from the side and say whether it is straight',
  met: ({ deciding, facts, about }) => {
    const bent = deciding.possible.alignment.some((value) => value === 'deviated' || value === 'marked');
    if (bent) return deciding.possible.alignment.includes('straight') ? 'open' : 'no';
    return straightToe(facts, about).length > 0 ? 'yes' : 'open';
  },
});

export const extension = (says: string): Criterion => ({
  says,
  finding: 'extension',
  ask: 'look from the side and say whether the toe is extended at the joint',
  met: (seen) => {
    const ways = clearFacts(seen.facts, 'deviation', seen.about).flatMap(({ status, values }) =>
      status === 'present' ? (values.direction?.words ?? []) : [],
    );
    return ways.includes('dorsomedial') || ways.includes('dorsolateral') ? 'yes' : presence(seen, 'extension');
  },
});

/** Weak is neither held nor lost. */
export const purchaseLost = (says: string): Criterion => ({
  says,
  finding: 'paper',
  ask: 'do the paper test and say whether purchase is lost',
  met: ({ facts, about }) => {
    const found = clearFacts(facts, 'paper', about).flatMap(({ values }) => values.result?.words ?? []);
    if (found.length === 0 || found.includes('weak')) return 'open';
    return among(found, ['pulls-out', 'no purchase']);
  },
});

export const filmOutOfPlace = (says: string): Criterion => ({
  says,
  finding: 'film-joint',
  ask: 'take a weight-bearing film and say whether the joint is congruent, subluxed or dislocated',
  met: ({ facts, about }) => {
    const found = clearFacts(facts, 'film-joint', about).filter(({ values }) => values.state);
    if (found.length === 0) return 'open';
    const out = found.filter(({ values }) => values.state?.words.some((word) => OUT.includes(word)));
    if (out.some(({ status }) => status === 'present')) return 'yes';
    return found.some(({ status, values }) => status === 'present' && values.state?.words.includes('congruent'))
      ? 'no'
      : 'open';
  },
});
const OUT: readonly string[] = ['subluxed', 'dislocated'];

type Graded = 'swelling' | 'tenderness' | 'deviation';
function presence({ facts, about }: Seen, finding: Graded | 'extension'): Met {
  const found = clearFacts(facts, finding, about);
  if (found.some(({ status }) => status === 'present')) return 'yes';
  return found.some(({ status }) => status === 'absent') ? 'no' : 'open';
}

function degreeOf(seen: Seen, finding: Graded, wanted: readonly string[]): Met {
  const there = presence(seen, finding);
  if (there !== 'yes') return there;
  const found = clearFacts(seen.facts, finding, seen.about).filter(({ status }) => status === 'present');
  const degrees = found.flatMap(({ values }) => values.degree?.words ?? []);
  return degrees.length === 0 ? 'open' : among(degrees, wanted);
}
