import { describe, expect, it } from 'vitest';
import { names } from '../../grammar/generate/reference-sources.ts';
import { LEXICON } from '../../grammar/lexicon/index.ts';
import { isPublished, SOURCES, type SourceKey } from '../../grammar/sources.ts';
import { CONDITIONS } from '../../server/clinical/differential/conditions.ts';
import { PUBLISHED_FACTS, type PublishedFact, type PublishedFactId } from '../../server/clinical/published-facts.ts';
import { RULES } from '../../server/clinical/rules/index.ts';
import { OTHER_SCALES } from '../../server/clinical/scales/other-scales.ts';
import { EXAM_CHECKS } from './facts/exam.ts';
import { IMAGE_CHECKS } from './facts/images.ts';
import { TREATMENT_CHECKS } from './facts/treatment.ts';

/** A fact without a check doesn't compile. */
const CHECKS: Readonly<Record<PublishedFactId, () => void>> = { ...EXAM_CHECKS, ...IMAGE_CHECKS, ...TREATMENT_CHECKS };
const FACTS = Object.entries(PUBLISHED_FACTS) as [PublishedFactId, PublishedFact][];

describe('published facts', () => {
  it.each(FACTS.map(([id, { sources, mark, engine }]) => [id, sources.join(', '), mark, engine] as const))(
    '%s (%s, %s): the engine %s it',
    (id) => CHECKS[id](),
  );
  it('no check is left without its fact', () => {
    expect(Object.keys(CHECKS).sort()).toEqual(Object.keys(PUBLISHED_FACTS).sort());
  });
  it('a fact is known no better than the worst of its publications', () => {
    for (const [id, { sources, mark }] of FACTS) {
      const memory = sources.some((key) => SOURCES[key].known === 'from memory, to be verified');
      const secondary = sources.some((key) => SOURCES[key].known === 'secondary');
      if (memory) expect([id, mark]).toEqual([id, 'from memory, to be verified']);
      else if (secondary) expect([id, mark]).not.toEqual([id, 'read']);
    }
  });
});

describe('the bibliography', () => {
  it('holds no publication that nothing uses, shows or refuses', () => {
    const used = new Set<string>([
      ...FACTS.flatMap(([, { sources }]) => sources),
      ...LEXICON.map(({ source }) => source),
      ...RULES.map(({ source }) => source),
      ...OTHER_SCALES.map(({ source }) => source),
      ...CONDITIONS.flatMap(({ criteria, separate }) => [
        separate.source,
        ...criteria.flatMap(({ claims }) => claims.map(({ source }) => source)),
      ]),
    ]);
    const published = (Object.keys(SOURCES) as SourceKey[]).filter(isPublished);
    const shown = LEXICON.map(({ meaning }) => meaning).join(' ');
    expect(published.filter((key) => !used.has(key) && !names(shown, key))).toEqual([]);
  });
});
