import type { Mark } from '../../grammar/lexicon/entry.ts';
import { identifiers, SOURCES, type SourceKey, studyText } from '../../grammar/sources.ts';

const MARKS: Readonly<Record<Mark, string>> = {
  read: 'read in the publication',
  secondary: 'as reported in another publication',
  'common practice': 'common practice',
  'from memory, to be verified': 'from memory, to be verified',
};

/** `*Source.* NERY15: Nery C et al. ... (read in the publication)`. */
export function cite(source: SourceKey, mark: Mark): string {
  if (source === 'common practice' || source === 'from memory') return `*Source.* ${SOURCES[source].citation}`;
  const [found] = identifiers(SOURCES[source]);
  const known = [studyText(SOURCES[source]), MARKS[mark]].filter((part) => part !== '').join('; ');
  return `*Source.* ${source}: ${SOURCES[source].citation}${found ? ` ${found}` : ''} (${known})`;
}
