import type { Evidence } from './analysis.ts';
import { clearFacts } from './answers.ts';
import type { Decision } from './decide.ts';
import { type DecidingFindings, isSame } from './deciding.ts';
import { DRAWER_SHOWS, type DrawerStep } from './drawer.ts';
import type { AnyFact } from './facts.ts';
import type { GateView } from './gates.ts';
import type { Deciding, Possible } from './staging-rows.ts';
import { supporting, TABLE } from './supporting.ts';

/** What a deciding finding says, over all the values that it may have. */
export function shows(key: Deciding, possible: Possible): string {
  const says: Readonly<Partial<Record<Deciding, (value: unknown) => string>>> = {
    dislocated: (value) => (value === 'no' ? 'not dislocated' : value === 'old' ? 'dislocated, and old' : 'dislocated'),
    overlap: (value) =>
      value === 'no' ? 'no overlap' : value === 'rest' ? 'it overlaps at rest' : 'it overlaps at times',
    drawer: (value) => DRAWER_SHOWS[value as DrawerStep],
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
export function evidence(
  view: GateView,
  { facts, possible, other, drawer }: Conflicting,
  decision: Decision,
): Evidence[] {
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
  if (decision.rows.includes('overlap') && !possible.drawer.includes('not done'))
    for (const fact of facts.drawer ?? []) deciding.push(besideOverlap(fact, possible));
  deciding.push(...conflicts(view, { facts, possible, other, drawer }, decision));
  const others = stages.length > 0 ? supporting(view.visit, view.side, view.ray, stages) : [];
  const decided = new Set(deciding.map(({ statement }) => statement));
  return [...deciding, ...others.filter((each) => each.role === 'questions' || !decided.has(each.statement))];
}

type Conflicting = Pick<DecidingFindings, 'facts' | 'possible' | 'other' | 'drawer'>;

/** What speaks beside the deciding findings, row by row. */
function conflicts(view: GateView, { facts, possible, other, drawer }: Conflicting, { rows }: Decision): Evidence[] {
  const of = (fact: AnyFact, why: string, role: Evidence['role'] = 'questions'): Evidence => ({
    statement: fact.statement,
    place: fact.origin.word,
    finding: fact.finding,
    role,
    why,
  });
  const list: Evidence[] = [];
  if (rows.includes('drawer 0, deviated')) for (const fact of facts.drawer ?? []) list.push(of(fact, BESIDE_DEVIATION));
  if (rows.includes('drawer 1') && possible.alignment.includes('marked'))
    for (const fact of facts.alignment ?? [])
      if (fact.finding === 'deviation' && fact.values.degree?.words.includes('marked'))
        list.push(of(fact, `${TABLE} has a severe deviation at stage 3`));
  if (rows.includes('drawer 1') && isSame(1, drawer, other))
    for (const fact of other.facts) list.push(of(fact, 'the other side gives the same'));
  if (possible.drawer.some((step) => step !== 0 && step !== 'not done') && other.facts.length === 0)
    for (const fact of clearFacts(view.visit.facts, 'laxity'))
      if (fact.status === 'present') list.push(of(fact, 'the joints are lax in general: compare with the other foot'));
  for (const fact of facts.drawer ?? [])
    if (fact.finding === 'drawer' && fact.values.under)
      list.push(of(fact, 'tested under a block, so guarding hides nothing', 'supports'));
  return list;
}
const BESIDE_DEVIATION = `the toe is out of line: repeat it; guarding, stiffness or drift with the hallux may explain it, and ${TABLE} has a toe out of line from stage 1 up`;

/** The dislocation decides; a drawer beside it that is lower contradicts it. */
const LOWER_DRAWER = { role: 'questions', why: 'the drawer is too low for a dislocated joint: recheck' } as const;
const isLowerThanDislocated = ({ dislocated, drawer }: Possible): boolean =>
  !dislocated.includes('no') && drawer.every((step) => step !== 4 && step !== 'not done');

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
