import { isPublished, SOURCES, type SourceKey } from '../sources.ts';
import { abbreviations } from './abbreviations.ts';
import { list, paragraphs, slugOf, wrapped } from './markdown.ts';
import { findingsReference } from './reference-findings.ts';
import { languageReference } from './reference-language.ts';
import { KNOWN_TEXT, names, sourceLine } from './reference-sources.ts';
import { toolsReference } from './reference-tools.ts';

/** The reference of the language for its users, as Markdown, made from the lexicon, the reader and the rows of the settings. Pure. */
export function reference(settings: readonly (readonly string[])[]): string {
  const intro = paragraphs(
    '<!-- Made by `npm run generate` from the lexicon and the reader. Do not edit. -->',
    '# The shorthand of Forefoot Notes',
    'What can be written in a note, and how it is read. The findings and rules serve the record of a clinician; local protocol and licensed practice come first.',
  );
  const body = paragraphs(languageReference(), toolsReference(settings), findingsReference(), abbreviations());
  const whole = paragraphs(body, sources(body));
  return `${wrapped(paragraphs(intro, contents(whole), whole))}\n`;
}

/** Links to the chapters; a finding is found by its chapter, or by its short form at the end. */
const contents = (whole: string): string =>
  paragraphs(
    '## Contents',
    list([...whole.matchAll(/^## (.*)$/gm)].map(([, heading = '']) => `[${heading}](#${slugOf(heading)})`)),
  );

function sources(body: string): string {
  const used = (Object.keys(SOURCES) as SourceKey[]).filter((key) => isPublished(key) && names(body, key));
  return paragraphs('## Sources', KNOWN_TEXT, list(used.map(sourceLine)));
}
