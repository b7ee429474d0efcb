import { describe, expect, it } from 'vitest';
import { DRAWER_SCALE_TEXTS } from '../../grammar/generate/drawer-scales.ts';
import type { Mark, Sourced } from '../../grammar/lexicon/entry.ts';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import {
  identifiers,
  isPublished,
  type Publication,
  SOURCES,
  type SourceKey,
  studyText,
} from '../../grammar/sources.ts';
import { CAUTIONS } from '../../server/clinical/cautions.ts';
import { CONDITIONS } from '../../server/clinical/differential/conditions.ts';
import { PATH_ROWS } from '../../server/clinical/path-rows.ts';
import {
  CAUTION_SOURCES,
  GATE_TEXTS,
  LIMIT_TEXTS,
  RED_FLAG_TEXTS,
  STAGING_TEXTS,
} from '../../server/clinical/row-texts.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { ANATOMICAL_GRADES } from '../../server/clinical/scales/anatomical.ts';
import { OTHER_SCALES } from '../../server/clinical/scales/other-scales.ts';
import { STAGING_ROWS } from '../../server/clinical/staging-rows.ts';
import { WINDOWS } from '../../server/clinical/windows.ts';

/** Everything of the product that carries a source, by what a reader would call it. */
const SOURCED: readonly (readonly [string, Sourced])[] = [
  ...LEXICON.map((entry) => [`finding ${entry.id}`, entry] as const),
  ...RULES.map((rule) => [`rule ${rule.code}`, rule] as const),
  ...PATH_ROWS.map((row) => [`path ${row.id}`, row] as const),
  ...STAGING_ROWS.map((row) => [`stage ${row.id}`, row] as const),
  ...Object.entries(GATE_TEXTS).map(([id, row]) => [`gate ${id}`, row] as const),
  ...Object.entries(RED_FLAG_TEXTS).map(([id, row]) => [`flag ${id}`, row] as const),
  ...Object.entries(CAUTION_SOURCES).map(([id, row]) => [`caution ${id}`, row] as const),
  ...Object.entries(WINDOWS).map(([id, row]) => [`window ${id}`, row] as const),
  ...LIMIT_TEXTS.map((row) => [`limit ${row.limit}`, row] as const),
  ...CONDITIONS.map(({ id, separate }) => [`test that tells ${id}`, separate] as const),
  ...CONDITIONS.flatMap(({ id, criteria }) =>
    criteria.flatMap(({ finding, claims }) =>
      claims.map((claim, at) => [`${claim.role} ${id}: ${finding} ${at + 1}`, claim] as const),
    ),
  ),
  ...OTHER_SCALES.map((scale) => [`scale ${scale.id}`, scale] as const),
  ...Object.entries(ANATOMICAL_GRADES).map(([grade, row]) => [`anatomical grade ${grade}`, row] as const),
  ...Object.entries(DRAWER_SCALE_TEXTS).map(([id, row]) => [`drawer scale ${id}`, row] as const),
];
const TEXTS: readonly string[] = [
  ...LEXICON.flatMap(({ technique, meaning }) => [technique, meaning]),
  ...Object.values(CAUTIONS),
  ...RULES.flatMap(({ what, why, instead }) => [what, why, instead]),
  ...PATH_ROWS.flatMap(({ step, why, wouldChange, review }) => [step, why, wouldChange, review]),
  ...LIMIT_TEXTS.map(({ says }) => says),
  ...CONDITIONS.flatMap(({ criteria, separate }) => [
    separate.ask,
    ...criteria.flatMap(({ claims }) => claims.map(({ why }) => why)),
  ]),
];
const MARKS: readonly Mark[] = ['read', 'secondary', 'common practice', 'from memory, to be verified'];
/** A figure is known no better than the publication that it was taken from. */
const RANK: Readonly<Record<string, number>> = { read: 2, secondary: 1, 'from memory, to be verified': 0 };

/** Why a source and a mark don't go together, or nothing. */
function fault({ source, mark }: Sourced): string | undefined {
  if (!Object.hasOwn(SOURCES, source)) return 'the source is not in the bibliography';
  if (!MARKS.includes(mark)) return 'no such mark';
  if (source === 'common practice' || mark === 'common practice')
    return source === mark ? undefined : 'common practice names itself, and nothing else';
  if (source === 'from memory') return mark === 'from memory, to be verified' ? undefined : 'recalled only';
  return (RANK[mark] ?? 0) <= (RANK[SOURCES[source].known] ?? 0) ? undefined : 'known better than its publication';
}

describe('every finding, rule, row, gate, flag, caution, window, limit and argument', () => {
  it.each(SOURCED)('%s names a source and an honest mark', (_, sourced) => {
    expect(fault(sourced)).toBeUndefined();
  });
  it('and the check can fail', () => {
    const faults = [
      { source: 'NOBODY99', mark: 'read' },
      { source: 'PECK12', mark: 'known' },
      { source: 'PECK12', mark: 'common practice' },
      { source: 'common practice', mark: 'read' },
      { source: 'from memory', mark: 'read' },
      { source: 'THOMP87', mark: 'read' },
      { source: 'HEALIO15', mark: 'read' },
    ].map((each) => fault(each as Sourced));
    expect(faults).not.toContain(undefined);
  });
  it('every staging row has its words, in the same order, and no words are left over', () => {
    expect(Object.keys(STAGING_TEXTS)).toEqual(STAGING_ROWS.map(({ id }) => id));
  });
  it('a text that quotes something from memory says where it can be checked, or is marked so', () => {
    for (const { id, mark, meaning } of LEXICON.filter(({ meaning }) => /^[^.]*\(from memory\)\.$/.test(meaning)))
      expect([id, mark, meaning]).toEqual([id, 'from memory, to be verified', meaning]);
  });
});

describe('the bibliography', () => {
  const publications = (Object.keys(SOURCES) as SourceKey[])
    .filter(isPublished)
    .map((key) => [key, SOURCES[key]] as const);
  it.each(publications)('%s can be found, or says that no identifier was given where it was read', (_, source) => {
    const publication: Publication = source;
    expect(identifiers(source).length > 0).toBe(!('unidentified' in publication));
    for (const id of identifiers(source)) expect(id).toMatch(/^(doi:10\.\d{4,}\/\S+|PMID \d{1,8}|PMC\d{5,})$/);
    expect(source.citation).toMatch(/[.)]$/);
    expect(source.year === 'not given' || (source.year > 1950 && source.year < 2027)).toBe(true);
    expect(studyText(source)).not.toMatch(/not given|undefined/);
  });
  it('has every key that a text names', () => {
    const keys = TEXTS.join(' ').match(/\b[A-Z]{3,}(?:-?\d{2}[A-Z]?|-RF|-WB)\b/g) ?? [];
    expect(keys.length).toBeGreaterThan(20);
    expect(keys.filter((key) => !Object.hasOwn(SOURCES, key))).toEqual([]);
  });
});
