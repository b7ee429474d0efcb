import type { Section } from '../../grammar/lexicon/entry.ts';
import type { FindingId } from '../../grammar/lexicon/index.ts';
import type { AnyFact, Lifecycle, VisitFacts } from './facts.ts';
import { subjectKey } from './facts.ts';
import { eventsBefore } from './lifecycle.ts';

/** What is seen, felt and imaged changes with an event; a story, an order or a plan doesn't. */
const CHANGING: ReadonlySet<Section> = new Set(['exam', 'stand', 'pain', 'xray', 'us', 'mri', 'ct']);
/** Under a block these say what the block did, and nothing of the joint or the nerve (common practice). */
const BLUNTED: ReadonlySet<FindingId> = new Set([
  'pain',
  'tenderness',
  'transfer-pain',
  'sensation',
  'squeeze',
  'compression',
  'tinel',
  'percussion',
  'nerve-stretch',
] satisfies FindingId[]);
/** A test that was not done a second time leaves the first. */
const SAYING: ReadonlySet<AnyFact['status']> = new Set(['present', 'absent', 'equivocal']);
const JOINT: ReadonlySet<FindingId> = new Set(['dislocated', 'film-joint'] satisfies FindingId[]);

type Divided = Pick<VisitFacts, 'facts'> & { readonly lifecycle: Lifecycle };

/**
 * Parts what holds at the end of a visit from what has passed: a finding that is stated again after an event, the
 * dislocation before a reduction after which the joint is described, and what is felt once a block is in. What is not
 * stated again holds on: nothing is taken to have mended because time went by.
 */
export function dividedFacts(facts: readonly AnyFact[], lifecycle: Omit<Lifecycle, 'passed'>): Divided {
  if (lifecycle.events.length === 0) return { facts, lifecycle: { ...lifecycle, passed: [] } };
  const state = new Phases(facts, { ...lifecycle, passed: [] });
  const passed = facts.filter((fact) => state.isPassed(fact));
  const gone = new Set(passed);
  return { facts: facts.filter((fact) => !gone.has(fact)), lifecycle: { ...lifecycle, passed } };
}

class Phases {
  readonly lifecycle: Lifecycle;
  /** Finding of a subject to the newest phase that states it. */
  private readonly newest = new Map<string, number>();
  /** Ray to the newest phase that says how its joint lies. */
  private readonly joint = new Map<string, number>();

  constructor(facts: readonly AnyFact[], lifecycle: Lifecycle) {
    this.lifecycle = lifecycle;
    for (const fact of facts) {
      if (fact.clarity !== 'clear' || !SAYING.has(fact.status) || !CHANGING.has(fact.section) || this.isBlunted(fact))
        continue;
      raise(this.newest, keyOf(fact), this.phaseOf(fact));
      if (saysHowJointLies(fact)) raise(this.joint, siteOf(fact), this.phaseOf(fact));
    }
  }

  isPassed(fact: AnyFact): boolean {
    if (!CHANGING.has(fact.section)) return false;
    if (this.isBlunted(fact)) return true;
    if (fact.clarity !== 'clear') return false;
    const phase = this.phaseOf(fact);
    if ((this.newest.get(keyOf(fact)) ?? 0) > phase) return true;
    const later = this.joint.get(siteOf(fact)) ?? 0;
    return (
      JOINT.has(fact.finding) && this.lifecycle.events.slice(phase, later).some(({ event }) => event === 'reduction')
    );
  }

  private phaseOf(fact: AnyFact): number {
    return eventsBefore(this, fact.origin.place.line);
  }
  private isBlunted(fact: AnyFact): boolean {
    const above = this.lifecycle.events.slice(0, this.phaseOf(fact));
    return BLUNTED.has(fact.finding) && above.some(({ event }) => event === 'block');
  }
}

const siteOf = ({ subject, side }: AnyFact): string => subjectKey(subject, side);
const keyOf = (fact: AnyFact): string => `${fact.section} ${siteOf(fact)} ${fact.finding}`;
function raise(map: Map<string, number>, key: string, value: number): void {
  map.set(key, Math.max(map.get(key) ?? 0, value));
}

/** On exam or film, or by a drawer that was graded. */
function saysHowJointLies(fact: AnyFact): boolean {
  if (fact.finding === 'dislocated') return true;
  if (fact.finding === 'film-joint') return fact.values.state?.words.some((word) => word !== 'narrowed') ?? false;
  return fact.finding === 'drawer' && fact.status === 'present' && fact.values.grade !== undefined;
}
