import { SOURCES, type Source } from '../sources.ts';
import { list, paragraphs } from './markdown.ts';
import { findingsReference } from './reference-findings.ts';
import { languageReference } from './reference-language.ts';

/** The reference of the language for its users, as Markdown, made from the lexicon and the reader. Pure. */
export function reference(): string {
  const intro = paragraphs(
    '<!-- Made by `npm run generate` from the lexicon and the reader. Do not edit. -->',
    '# The shorthand of Forefoot Notes',
    'What can be written in a note, and how it is read. The findings and rules serve the record of a clinician; local protocol and licensed practice come first.',
  );
  const body = paragraphs(languageReference(), findingsReference());
  return `${paragraphs(intro, body, sources(body))}\n`;
}

function sources(body: string): string {
  const used = Object.entries<Source>(SOURCES).filter(([key]) => body.includes(key) && /^[A-Z]/.test(key));
  return paragraphs(
    '## Sources',
    '*Read there* means that the figure or statement was read in the publication itself; *as another page reports it*, that only another page about it was read; *from memory*, that it is recalled and to be verified before it is relied on. *Common practice* has no publication behind it.',
    list(used.map(([key, source]) => `**${key}**: ${sourceLine(source)}`)),
  );
}

const sourceLine = ({ citation, doi, pmid }: Source): string =>
  [citation, ...(doi ? [`[doi:${doi}](https://doi.org/${doi})`] : []), ...(pmid ? [`PMID ${pmid}`] : [])].join(' ');
