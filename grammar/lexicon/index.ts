import type { Value, ValueOf } from '../values.ts';
import { ADVICE } from './advice.ts';
import { BACKGROUND } from './background.ts';
import { BEFORE_OPERATION } from './before-operation.ts';
import { BONE_HEALING } from './bone-healing.ts';
import { DAILY_LIFE } from './daily-life.ts';
import { DECISIONS_AND_DIAGNOSIS } from './decisions.ts';
import { DRUGS_AND_RISKS } from './drugs-and-risks.ts';
import type { Entry, Slot } from './entry.ts';
import { GAIT_AND_SKIN } from './gait-and-skin.ts';
import { HISTORY } from './history.ts';
import { IMAGES_IN_DETAIL } from './images-in-detail.ts';
import { IMAGING } from './imaging.ts';
import { INSPECTION } from './inspection.ts';
import { LABORATORY } from './laboratory.ts';
import { MEDICINES_AND_ILLNESSES } from './medicines.ts';
import { MOTION } from './motion.ts';
import { NERVE_AND_VESSEL } from './nerve-and-vessel.ts';
import { OPERATION, OPERATION_BESIDE, ORDERS } from './operation.ts';
import { RAY } from './ray.ts';
import { RECOVERY } from './recovery.ts';
import { RED_FLAG_SIGNS } from './red-flag-signs.ts';
import { SCORES } from './scores.ts';
import { SURFACE_SIGNS } from './surface-signs.ts';
import { THEATRE } from './theatre.ts';
import { PLAN, TREATMENT } from './treatment.ts';
import { WEBS_AND_FOOT } from './webs-and-foot.ts';
import { WHAT_CHANGES_IT } from './what-changes-it.ts';
import { WHOLE_SECTIONS } from './whole-sections.ts';

export const LEXICON = [
  ...HISTORY,
  ...WHAT_CHANGES_IT,
  ...TREATMENT,
  ...ADVICE,
  ...INSPECTION,
  ...RAY,
  ...SURFACE_SIGNS,
  ...WEBS_AND_FOOT,
  ...IMAGING,
  ...DAILY_LIFE,
  ...BACKGROUND,
  ...DRUGS_AND_RISKS,
  ...MEDICINES_AND_ILLNESSES,
  ...GAIT_AND_SKIN,
  ...MOTION,
  ...NERVE_AND_VESSEL,
  ...RED_FLAG_SIGNS,
  ...LABORATORY,
  ...IMAGES_IN_DETAIL,
  ...BONE_HEALING,
  ...BEFORE_OPERATION,
  ...OPERATION,
  ...OPERATION_BESIDE,
  ...ORDERS,
  ...THEATRE,
  ...RECOVERY,
  ...SCORES,
  ...DECISIONS_AND_DIAGNOSIS,
  ...PLAN,
  ...WHOLE_SECTIONS,
] as const;

export type FindingId = (typeof LEXICON)[number]['id'];
type EntryOf<F extends FindingId> = Extract<(typeof LEXICON)[number], { id: F }>;
export type SlotId<F extends FindingId> = keyof EntryOf<F>['slots'] & string;

type WordValue<W extends string> = { readonly is: 'word'; readonly words: readonly W[]; readonly said?: readonly W[] };
type GradeValue = {
  drawer: ValueOf<'drawer grade'>;
  stage: ValueOf<'stage'>;
  anatomical: ValueOf<'anatomical grade'>;
  pulse: ValueOf<'pulse grade'>;
};
type ValueOfSlot<S extends Slot> = S extends { kind: 'words'; values: Readonly<Record<infer W, readonly string[]>> }
  ? WordValue<W & string>
  : S extends { kind: 'grade'; of: infer G extends keyof GradeValue }
    ? GradeValue[G]
    : S extends { kind: 'number' }
      ? ValueOf<'number'>
      : S extends { kind: 'fraction' }
        ? ValueOf<'fraction'>
        : S extends { kind: 'duration' }
          ? ValueOf<'duration'>
          : S extends { kind: 'date' }
            ? ValueOf<'date'> | ValueOf<'ago'>
            : S extends { kind: 'clock' }
              ? ValueOf<'clock'>
              : S extends { kind: 'pair' }
                ? ValueOf<'pair'>
                : Value;

/** The values that a finding may carry, typed from its lexicon entry. */
export type ValuesOf<F extends FindingId> = {
  readonly [S in SlotId<F>]?: ValueOfSlot<Extract<EntryOf<F>['slots'][S], Slot>>;
};

const BY_ID: ReadonlyMap<string, Entry> = new Map(LEXICON.map((entry) => [entry.id, entry]));

/** The entry of a finding; every `FindingId` has one. */
export function entryOf(id: FindingId): Entry {
  const found = BY_ID.get(id);
  if (!found) throw new RangeError(`no lexicon entry ${id}`);
  return found;
}

const listed = new Map<Entry, readonly (readonly [string, Slot])[]>();
/** The slots of an entry as a list, made once: every number of a line asks for them. */
export function slotsOf(entry: Entry): readonly (readonly [string, Slot])[] {
  const before = listed.get(entry);
  if (before) return before;
  const slots = Object.entries(entry.slots);
  listed.set(entry, slots);
  return slots;
}
