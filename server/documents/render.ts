import type { ClinicNote } from './clinic-note.ts';
import { type Run, type Sentence, textOf } from './sentence.ts';

export interface RenderOptions {
  /** With what was computed, under its own heading; without it the text is what may be filed. */
  readonly computed: boolean;
}

const FILED: ReadonlySet<Sentence['says']> = new Set(['stated', 'verbatim']);

interface Shown {
  readonly title: string;
  readonly paragraphs: readonly (readonly Sentence[])[];
}

/** What the options let through; a section that loses every sentence loses its heading. */
function shownSections(note: ClinicNote, { computed }: RenderOptions): Shown[] {
  return note.sections
    .map(({ title, sentences }) => ({
      title,
      paragraphs: paragraphsOf(sentences.filter(({ says }) => computed || FILED.has(says))),
    }))
    .filter(({ paragraphs }) => paragraphs.length > 0);
}

function paragraphsOf(sentences: readonly Sentence[]): Sentence[][] {
  const paragraphs: Sentence[][] = [];
  for (const sentence of sentences) {
    const last = paragraphs.at(-1);
    if (last?.[0]?.paragraph === sentence.paragraph) last.push(sentence);
    else paragraphs.push([sentence]);
  }
  return paragraphs;
}

/** The note as plain text: title, headings, one line a paragraph. */
export function renderText(note: ClinicNote, options: RenderOptions): string {
  const sections = shownSections(note, options).map(({ title, paragraphs }) =>
    [title, ...paragraphs.map((paragraph) => paragraph.map(textOf).join(' '))].join('\n'),
  );
  return `${[note.title, ...sections].join('\n\n')}\n`;
}

/** The note as an HTML fragment. A traced run is a span with the first place it came from, and all of them in `data-places`. */
export function renderHtml(note: ClinicNote, options: RenderOptions): string {
  const sections = shownSections(note, options).map(({ title, paragraphs }) => {
    const body = paragraphs.map((paragraph) => `<p>${paragraph.map(sentenceHtml).join(' ')}</p>`);
    return `<section>\n<h3>${escaped(title)}</h3>\n${body.join('\n')}\n</section>`;
  });
  return `<h2>${escaped(note.title)}</h2>\n${sections.join('\n')}\n`;
}

const sentenceHtml = ({ runs, says }: Sentence): string => `<span class="${says}">${runs.map(runHtml).join('')}</span>`;

function runHtml({ text, from }: Run): string {
  const [first] = from;
  if (!first) return escaped(text);
  const { line, start, end } = first.place;
  const places = from.map(({ place }) => `${place.line}:${place.start}-${place.end}`).join(' ');
  return `<span data-line="${line}" data-start="${start}" data-end="${end}" data-places="${places}">${escaped(text)}</span>`;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};
const escaped = (text: string): string => text.replace(/[&<>"']/g, (each) => ENTITIES[each] ?? each);
