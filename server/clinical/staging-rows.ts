import type { Sourced } from '../../grammar/lexicon/entry.ts';
import type { Stage } from './analysis.ts';
import type { DrawerStep } from './drawer.ts';

/** One complete set of deciding findings. Nothing in it is unknown but a drawer that was not done. */
export interface World {
  readonly dislocated: 'no' | 'old' | 'undated';
  readonly overlap: 'no' | 'sometimes' | 'rest';
  readonly drawer: DrawerStep;
  readonly alignment: 'straight' | 'not stated' | 'deviated' | 'marked';
  /** Only a drawer that was not done asks for it. */
  readonly gap: boolean;
  /** At the plate or the plantar side of the head. */
  readonly tender: boolean;
  readonly swollen: boolean;
  readonly purchase: 'normal' | 'reduced';
  /** Same drawer on the other side, and neither toe stated out of line. */
  readonly sameOtherSide: boolean;
}
export type Deciding = keyof World;
/** Every deciding finding with the values that it may have. */
export type Possible = { readonly [K in Deciding]: readonly World[K][] };

/** What a row decides: one or more stages, or one of the outcomes that are no stage. */
export type Verdict = readonly Stage[] | 'cannot' | 'no instability' | 'acute until shown otherwise';

export interface StagingRow extends Sourced {
  readonly id: string;
  /** The findings that decide in this row. */
  readonly decides: readonly Deciding[];
  readonly when: (world: World) => boolean;
  readonly verdict: (world: World) => Verdict;
}

const practice = { source: 'common practice', mark: 'common practice' } as const;
/** The published table of the stages is known from memory only; that stages exist was read (COUGH11). */
const table = { source: 'COUGH11', mark: 'from memory, to be verified' } as const;
const deviates = (world: World): boolean => world.alignment === 'deviated' || world.alignment === 'marked';

/**
 * The decision list: the first row that applies decides, on the 0-4 drawer scale, for a native and symptomatic joint.
 * Purchase, swelling, rotation, gap and the size of a tear support or question a stage; they move none but stage 0.
 */
export const STAGING_ROWS: readonly StagingRow[] = [
  {
    ...table,
    id: 'dislocated',
    decides: ['dislocated', 'drawer'],
    when: ({ dislocated, drawer }) => dislocated !== 'no' || drawer === 4,
    verdict: ({ dislocated }) => (dislocated === 'old' ? [4] : 'acute until shown otherwise'),
  },
  {
    ...table,
    id: 'overlap',
    decides: ['overlap'],
    // Now and then beside a joint that dislocates is left to the row of that drawer: an overlap never lowers a stage.
    when: ({ overlap, drawer }) => overlap === 'rest' || (overlap === 'sometimes' && drawer !== 3),
    verdict: ({ overlap }) => (overlap === 'sometimes' ? [2, 3] : [3]),
  },
  { ...table, id: 'drawer 3', decides: ['drawer'], when: ({ drawer }) => drawer === 3, verdict: () => [3] },
  {
    ...table,
    id: 'drawer 2',
    decides: ['drawer', 'sameOtherSide'],
    when: ({ drawer }) => drawer === 2,
    verdict: ({ sameOtherSide }) => (sameOtherSide ? [1, 2] : [2]),
  },
  {
    ...table,
    id: 'drawer 1',
    decides: ['drawer', 'alignment'],
    when: ({ drawer }) => drawer === 1,
    verdict: ({ alignment }) => (alignment === 'marked' ? [1, 2] : [1]),
  },
  {
    ...table,
    id: 'drawer 0, straight',
    decides: ['drawer', 'alignment', 'tender', 'swollen', 'purchase'],
    when: (world) => world.drawer === 0 && !deviates(world),
    verdict: ({ tender, swollen, purchase }) =>
      tender && (swollen || purchase === 'reduced') ? [0] : 'no instability',
  },
  {
    ...practice,
    id: 'drawer 0, deviated',
    decides: ['drawer', 'alignment'],
    when: (world) => world.drawer === 0,
    verdict: () => [0, 1],
  },
  {
    ...practice,
    id: 'no drawer',
    decides: ['drawer', 'alignment', 'gap'],
    when: () => true,
    verdict: (world) => (deviates(world) || (world.gap && world.alignment !== 'straight') ? [1, 2, 3] : 'cannot'),
  },
];

/** The row that decides a world; the last row takes what no other did. */
export function rowFor(world: World): StagingRow {
  const row = STAGING_ROWS.find(({ when }) => when(world));
  if (!row) throw new RangeError('the last staging row takes every world');
  return row;
}

/** Every combination of the possible values, in a fixed order. Findings with one value are shared by all. */
export function worlds(possible: Possible): World[] {
  const open = Object.entries(possible).filter(([, values]) => values.length > 1);
  const known = Object.fromEntries(Object.entries(possible).map(([key, values]) => [key, values[0]]));
  let list = [known as unknown as World];
  for (const [key, values] of open)
    list = list.flatMap((world) => (values as readonly World[Deciding][]).map((value) => ({ ...world, [key]: value })));
  return list;
}
