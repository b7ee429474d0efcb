import { isPublished, SOURCES, type SourceKey } from '../sources.ts';
import { list, paragraphs } from './markdown.ts';
import { findingsReference } from './reference-findings.ts';
import { languageReference } from './reference-language.ts';
import { KNOWN_TEXT, names, sourceLine } from './reference-sources.ts';

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
  const used = (Object.keys(SOURCES) as SourceKey[]).filter((key) => isPublished(key) && names(body, key));
  return paragraphs('## Sources', KNOWN_TEXT, list(used.map(sourceLine)));
}
