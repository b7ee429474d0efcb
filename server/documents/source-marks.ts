import type { Sourced } from '../../grammar/lexicon/entry.ts';
import { SOURCES, type SourceKey } from '../../grammar/sources.ts';

const UNPUBLISHED: readonly SourceKey[] = ['common practice', 'from memory'];

/** How a computed sentence is marked: a citation key with how it was known, or one of the two honest alternatives. */
export function markWords({ source, mark }: Sourced): string {
  if (source === 'common practice') return 'common practice';
  if (source === 'from memory') return 'from memory, to be verified';
  return `${source}, ${mark}`;
}

const isKey = (text: string): text is SourceKey => Object.hasOwn(SOURCES, text);

/** The publications behind the marks, and behind the keys that a text names, each once in the order of first use. */
export function citations(used: readonly Sourced[], texts: readonly string[]): string[] {
  const named = texts.flatMap((text) => text.match(/[A-Z][A-Z\d-]+/g) ?? []).filter(isKey);
  const keys = [...new Set([...used.map(({ source }) => source), ...named])];
  return keys.filter((key) => !UNPUBLISHED.includes(key)).map((key) => `${key}: ${bare(SOURCES[key].citation)}`);
}

/** A text that goes on or is closed by the sentence builder. */
export const bare = (text: string): string => text.trim().replace(/\.$/, '');
