import { identifiers, SOURCES, type Source, type SourceKey, studyText } from '../sources.ts';

export const KNOWN_TEXT =
  '*Read there* means that the figure or statement was read in the publication itself; *as another page reports it*, that only another page about it was read; *from memory*, that it is recalled and to be verified before it is relied on. *Common practice* has no publication behind it.';

/** Does a text name a source? A key is never part of a longer one. */
export const names = (text: string, key: SourceKey): boolean => new RegExp(`(?<![\\w-])${key}(?![\\w-])`).test(text);

/** `**PECK12**: citation [doi:...](https://doi.org/...) (2012, cohort, 154 patients)`. */
export function sourceLine(key: SourceKey): string {
  const source: Source = SOURCES[key];
  const found = identifiers(source).map((id) =>
    id.startsWith('doi:') ? `[${id}](https://doi.org/${id.slice(4)})` : id,
  );
  const study = [studyText(source), source.known === 'read' ? '' : source.known]
    .filter((part) => part !== '')
    .join('; ');
  return [`**${key}**: ${source.citation}`, ...found, study === '' ? '' : `(${study})`]
    .filter((part) => part !== '')
    .join(' ');
}
