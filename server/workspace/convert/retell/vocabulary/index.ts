import type { FindingId } from '../../../../../grammar/lexicon/index.ts';
import { AFTER } from './after.ts';
import { BEFORE_THEATRE } from './before-theatre.ts';
import { DIAGNOSIS } from './diagnosis.ts';
import { IMAGES } from './images.ts';
import { JOINT } from './joint.ts';
import { LABORATORY } from './laboratory.ts';
import { STORY } from './story.ts';
import { THEATRE } from './theatre.ts';
import { WEBS } from './webs.ts';

/** Phrases that are said for a finding, or for a value of one, and how the language writes it. */
export interface SaidFor {
  readonly id: FindingId;
  readonly as: 'finding' | 'value';
  readonly written: string;
  readonly said: readonly string[];
}

/** A finding with what is said for it and its values: what the language writes, then what is said. */
export type Said = Partial<
  Record<
    FindingId,
    {
      /** Words that name the finding: they may give a value with it (`mtp stable`). */
      readonly finding?: Readonly<Record<string, readonly string[]>>;
      /** Words that give a value of it, beside its name. */
      readonly value?: Readonly<Record<string, readonly string[]>>;
    }
  >
>;

const TABLES: readonly Said[] = [JOINT, WEBS, STORY, IMAGES, LABORATORY, DIAGNOSIS, BEFORE_THEATRE, THEATRE, AFTER];

/** Every row of the tables. What the lexicon has already is not said again here. */
export const VOCABULARY: readonly SaidFor[] = TABLES.flatMap((table) =>
  Object.entries(table).flatMap(([id, { finding = {}, value = {} }]) =>
    (
      [
        ['finding', finding],
        ['value', value],
      ] as const
    ).flatMap(([as, rows]) =>
      Object.entries(rows).map(([written, said]): SaidFor => ({ id: id as FindingId, as, written, said })),
    ),
  ),
);
