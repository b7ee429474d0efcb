import { entryOf, type FindingId } from '../../../../../grammar/lexicon/index.ts';
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

/** Every row of the tables; what an earlier one says stands. What the lexicon has already is not said again here. */
export const VOCABULARY: readonly SaidFor[] = rowsOf(TABLES);

function rowsOf(tables: readonly Said[]): SaidFor[] {
  const claimed = new Set<string>();
  const rows: SaidFor[] = [];
  for (const table of tables)
    for (const [finding, { finding: names = {}, value = {} }] of Object.entries(table)) {
      const id = finding as FindingId;
      const add = (as: SaidFor['as'], written: string, said: readonly string[]): void => {
        const own = said.filter((phrase) => !claims(id, as, phrase).some((each) => claimed.has(each)));
        for (const phrase of own) for (const each of claims(id, as, phrase)) claimed.add(each);
        if (own.length > 0) rows.push({ id, as, written, said: [...new Set(own)] });
      };
      for (const [written, said] of Object.entries(names)) add('finding', written, said);
      for (const [written, said] of Object.entries(value)) add('value', written, said);
    }
  return rows;
}
/** One phrase names one finding in each section, and gives one value of a finding. */
function claims(id: FindingId, as: SaidFor['as'], phrase: string): string[] {
  return as === 'value' ? [`${id} ${phrase}`] : entryOf(id).sections.map((section) => `${section}: ${phrase}`);
}
