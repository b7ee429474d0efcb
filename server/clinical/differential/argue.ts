import type { Sourced } from '../../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../../grammar/lexicon/index.ts';
import { type AnyFact, type Place, type StatementId, type Subject, subjectKey } from '../facts.ts';
import { type Claim, type Condition, type Criterion, practice, type Role } from './condition.ts';
import { clear, type View, written } from './view.ts';

/** The words of the note that an argument rests on. */
export interface Ground {
  readonly statement: StatementId;
  readonly subject: Subject;
  /** The whole finding with its values. */
  readonly place: Place;
}

/** What one finding says of a condition: never more than one argument of a role for each finding. */
export interface Argument extends Sourced {
  readonly finding: FindingId;
  readonly role: Role;
  readonly why: string;
  /** Words of this visit; none where only an earlier one told it. */
  readonly grounds: readonly Ground[];
  /** The day of the earlier visit that told it, or `undated`. */
  readonly earlier?: string;
}

/** Something that would argue and does not yet, with the reason. Silence is one of them, and never an argument. */
export interface Open {
  readonly finding: FindingId;
  readonly ask: string;
  readonly because:
    | 'not mentioned'
    | 'not done'
    | 'unable'
    | 'doubtful'
    | 'unread'
    | 'not told apart'
    | 'contradictory';
  readonly grounds: readonly Ground[];
}

export interface Weighed {
  readonly condition: Condition;
  readonly arguments: readonly Argument[];
  /** What was not examined, not asked, or is written so that it can't be used. */
  readonly open: readonly Open[];
}

/** Weighs one condition: each criterion argues, or stays open with its reason. */
export function weigh(condition: Condition, view: View): Weighed {
  const all = condition.criteria.map((criterion) => judge(criterion, view));
  return {
    condition,
    arguments: all.flatMap((each) => each.arguments),
    open: all.flatMap((each) => each.open),
  };
}

interface Taken {
  readonly claim: Claim;
  readonly facts: AnyFact[];
}

function judge(criterion: Criterion, view: View): Pick<Weighed, 'arguments' | 'open'> {
  const { finding } = criterion;
  const taken = takenBy(criterion, view);
  const clash = contradiction(taken);
  if (clash.length > 0) return { arguments: [], open: [open(criterion, 'contradictory', clash)] };
  const positive = taken.some(({ claim }) => claim.role === 'for');
  // A sign in one neighbouring space is not undone by its absence in the other.
  const kept = taken.filter(({ claim }) => !(positive && claim.role === 'against'));
  const argued = kept.map(({ claim: { role, why, source, mark }, facts }): Argument => {
    return { finding, role, why, source, mark, grounds: facts.map(groundOf) };
  });
  argued.push(...toldEarlier(criterion, view));
  const unread = written(view, finding).filter(({ clarity }) => clarity === 'unclear');
  const rest = argued.length === 0 ? stillOpen(criterion, view) : [];
  return { arguments: argued, open: unread.length > 0 ? [open(criterion, 'unread', unread)] : rest };
}

/** What an earlier visit told and this one neither repeats nor denies. */
function toldEarlier({ finding, told }: Criterion, view: View): Argument[] {
  const days: Readonly<Partial<Record<FindingId, string>>> = view.before.known.told;
  const earlier = days[finding];
  if (!told || earlier === undefined || written(view, finding).length > 0) return [];
  return [{ finding, role: 'for', why: told, ...practice, grounds: [], earlier }];
}

/** Each fact goes to the first claim that wants it. */
function takenBy({ claims }: Criterion, view: View): Taken[] {
  const gone = new Set<AnyFact>();
  return claims.flatMap((claim) => {
    const facts = claim.when(view).filter((fact) => !gone.has(fact));
    for (const fact of facts) gone.add(fact);
    return facts.length > 0 ? [{ claim, facts }] : [];
  });
}

/** Facts of one subject of which some argue for and some against: neither is used. */
function contradiction(taken: readonly Taken[]): AnyFact[] {
  const of = (role: Role) => taken.filter(({ claim }) => claim.role === role).flatMap(({ facts }) => facts);
  const [supporting, opposing] = [of('for'), of('against')];
  const key = ({ subject, side }: AnyFact) => subjectKey(subject, side);
  const both = new Set(supporting.map(key).filter((each) => opposing.some((fact) => key(fact) === each)));
  return [...supporting, ...opposing].filter((fact) => both.has(key(fact)));
}

/** Why a criterion that is asked for does not argue. Without a question its silence is of no interest. */
function stillOpen(criterion: Criterion, view: View): Open[] {
  if (!criterion.ask) return [];
  const facts = clear(view, criterion.finding);
  const status = (wanted: AnyFact['status']) => facts.filter((fact) => fact.status === wanted);
  const [doubtful, undone, unable] = [status('equivocal'), status('not done'), status('unable')];
  if (doubtful.length > 0) return [open(criterion, 'doubtful', doubtful)];
  if (unable.length > 0) return [open(criterion, 'unable', unable)];
  if (undone.length > 0) return [open(criterion, 'not done', undone)];
  // A fact that says nothing of it (`tender`, and not where) leaves it as open as silence.
  return [open(criterion, 'not mentioned', [])];
}

const open = ({ finding, ask }: Criterion, because: Open['because'], facts: readonly AnyFact[]): Open => ({
  finding,
  ask: ask ?? '',
  because,
  grounds: facts.map(groundOf),
});

const groundOf = ({ statement, subject, origin }: AnyFact): Ground => ({ statement, subject, place: origin.place });

/** How many findings argue for and against. Plain counts: no weight, no probability. */
export function balance({ arguments: all }: Pick<Weighed, 'arguments'>): { for: number; against: number } {
  const count = (role: Role) => new Set(all.filter((each) => each.role === role).map(({ finding }) => finding)).size;
  return { for: count('for'), against: count('against') };
}
