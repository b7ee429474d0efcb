import type { StageOutcome } from './analysis.ts';
import type { DecidingFindings } from './deciding.ts';
import { DRAWER_SHOWS } from './drawer.ts';
import type { World } from './staging-rows.ts';

/** The deciding findings of a ray as a visit left them; small, so that later visits can be compared with it. */
export interface RaySeen {
  /** ISO day, or `undated`. */
  readonly on: string;
  /** Low and high; missing where no stage was computed. */
  readonly stage?: readonly [low: number, high: number];
  /** Why there was none. */
  readonly none?: string;
  /** A stable joint without instability ranks below every stage. */
  readonly stable?: true;
  readonly drawer: readonly World['drawer'][];
  readonly scale: string;
  readonly overlap: readonly World['overlap'][];
  readonly dislocated: readonly World['dislocated'][];
  readonly alignment: readonly World['alignment'][];
}

/** What the visit leaves behind of one ray. */
export function seenOf(outcome: StageOutcome, { possible, drawer }: DecidingFindings, on: string): RaySeen {
  const { overlap, dislocated, alignment } = possible;
  const found = { on, drawer: possible.drawer, scale: drawer.scale, overlap, dislocated, alignment };
  switch (outcome.is) {
    case 'staged':
      return { ...found, stage: [outcome.stage, outcome.stage] };
    case 'span':
      return { ...found, stage: [outcome.low, outcome.high] };
    case 'cannot stage':
      return { ...found, none: outcome.why };
    case 'not applicable':
      return outcome.by === 'no instability'
        ? { ...found, none: outcome.why, stable: true }
        : { ...found, none: outcome.why };
  }
}

/** What became of a ray since it was last examined. Computed, common practice. */
export interface Change {
  readonly since: string;
  readonly is: 'better' | 'worse' | 'same' | 'not comparable';
  /** Why the two can't be compared. */
  readonly why?: string;
  /** `stage 2`, or why there was none. */
  readonly from: string;
  readonly to: string;
  /** Deciding findings that differ, `drawer: over half subluxable, now under half subluxable`. */
  readonly findings: readonly string[];
}

/**
 * Compares a ray with what its last visit left. `undefined` where it was not examined before, or where neither visit could be
 * ranked. A span is no number: it is better or worse only where it doesn't meet the other.
 */
export function changeOf(then: RaySeen | undefined, now: RaySeen): Change | undefined {
  if (!then) return undefined;
  const [was, is] = [rankOf(then), rankOf(now)];
  if (!was && !is) return undefined;
  if (then.stable && now.stable) return undefined;
  const verdict = was && is ? compared(then, now, was, is) : unranked(was === undefined ? 'then' : 'now', then, now);
  return { since: then.on, ...verdict, from: stageWords(then), to: stageWords(now), findings: differences(then, now) };
}

type Rank = readonly [low: number, high: number];
const rankOf = ({ stage, stable }: RaySeen): Rank | undefined => stage ?? (stable ? [-1, -1] : undefined);

function compared(then: RaySeen, now: RaySeen, was: Rank, is: Rank): Pick<Change, 'is' | 'why'> {
  if (byDrawer(then) && byDrawer(now) && then.scale !== now.scale)
    return {
      is: 'not comparable',
      why: `the drawer was graded on another scale (${then.scale} then, ${now.scale} now)`,
    };
  if (is[0] > was[1]) return { is: 'worse' };
  if (is[1] < was[0]) return { is: 'better' };
  if (was[0] === was[1] && is[0] === is[1]) return { is: 'same' };
  return { is: 'not comparable', why: 'the stages overlap' };
}
/** Only the drawer can have set the stage, and it was done. */
const byDrawer = ({ drawer, overlap, dislocated }: RaySeen): boolean =>
  overlap.every((each) => each === 'no') &&
  dislocated.every((each) => each === 'no') &&
  drawer.some((step) => step !== 'not done');

const unranked = (when: 'then' | 'now', then: RaySeen, now: RaySeen): Pick<Change, 'is' | 'why'> => ({
  is: 'not comparable',
  why: `not staged ${when}: ${(when === 'then' ? then : now).none ?? 'no stage'}`,
});

const stageWords = ({ stage, none }: RaySeen): string => {
  if (!stage) return none ?? 'no stage';
  return stage[0] === stage[1] ? `stage ${stage[0]}` : `stage ${stage[0]}-${stage[1]}`;
};

const OVERLAP = { no: 'no overlap', sometimes: 'overlaps at times', rest: 'overlaps at rest' } as const;
const PLACE = { no: 'in place', old: 'dislocated', undated: 'dislocated' } as const;
const ALIGNMENT = {
  straight: 'straight',
  'not stated': '',
  deviated: 'out of line',
  marked: 'markedly out of line',
} as const;

/** Only what both visits tell, each once. A drawer on another scale is left out: its steps are read, not seen. */
function differences(then: RaySeen, now: RaySeen): string[] {
  const told = <T extends string | number>(
    label: string,
    a: readonly T[],
    b: readonly T[],
    words: Readonly<Record<T, string>>,
  ) => {
    const [was, is] = [a, b].map((each) => [...new Set(each.map((value) => words[value]))].join(' or '));
    return was && is && was !== is ? [`${label}: ${was}, now ${is}`] : [];
  };
  const drawn = then.scale === now.scale && [then, now].every(({ drawer }) => !drawer.includes('not done'));
  return [
    ...(drawn ? told('drawer', then.drawer, now.drawer, DRAWER_SHOWS) : []),
    ...told('overlap', then.overlap, now.overlap, OVERLAP),
    ...told('joint', then.dislocated, now.dislocated, PLACE),
    ...told('alignment', then.alignment, now.alignment, ALIGNMENT),
  ];
}

/** `worse since 2026-03-09: stage 1 then, stage 2 now; drawer: ...`; nothing to add where all is as it was. */
export function changeWords({ is, why, since, from, to, findings }: Change): string {
  const day = since === 'undated' ? 'the visit before' : since;
  const stages = is === 'same' ? to : `${from} then, ${to} now`;
  return [`${is}${why ? `, ${why}` : ''}, since ${day}: ${stages}`, ...findings].join('; ');
}
