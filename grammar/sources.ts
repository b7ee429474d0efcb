import { EXAM_SOURCES } from './sources/exam.ts';
import { IMAGING_SOURCES } from './sources/imaging.ts';
import type { Publication, Source, Unpublished } from './sources/source.ts';
import { TREATMENT_SOURCES } from './sources/treatment.ts';

export type { Publication, Source } from './sources/source.ts';

/** The two honest alternatives to a publication. */
const UNPUBLISHED = {
  'common practice': {
    citation: 'Common practice of forefoot specialists; the local protocol takes precedence.',
    known: 'common practice',
  },
  'from memory': {
    citation: 'Recalled, to be verified against the publication before it is relied on.',
    known: 'from memory, to be verified',
  },
} as const satisfies Readonly<Record<string, Unpublished>>;

/** The bibliography, data only. Marks (read, secondary, from memory) stand where a fact is used, since one paper may be known for one figure only. */
export const SOURCES = { ...UNPUBLISHED, ...EXAM_SOURCES, ...IMAGING_SOURCES, ...TREATMENT_SOURCES } as const;

export type SourceKey = keyof typeof SOURCES;
export type PublicationKey = Exclude<SourceKey, keyof typeof UNPUBLISHED>;

export const isPublished = (key: SourceKey): key is PublicationKey => !(key in UNPUBLISHED);

/** Where a publication can be found, in the order in which a reader would try: `doi:...`, `PMID ...`, `PMC...`. */
export function identifiers(source: Source): string[] {
  if (!('design' in source)) return [];
  const { doi, pmid, pmc } = source as { doi?: string; pmid?: string; pmc?: string };
  return [...(doi ? [`doi:${doi}`] : []), ...(pmid ? [`PMID ${pmid}`] : []), ...(pmc ? [pmc] : [])];
}

/** What is known of the study, for a reader: `2012, cohort, 154 patients, 291 toes`. Empty for what is unpublished. */
export function studyText(source: Source): string {
  if (!('design' in source)) return '';
  const { year, design, n } = source as Publication;
  return [year, design, n].filter((part) => part !== 'not given').join(', ');
}
