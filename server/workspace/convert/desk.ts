import { subjectText } from '../../../grammar/reader/read-subjects.ts';
import { type LineReader, rememberingReader } from '../../../grammar/remembering-reader.ts';
import type { LineSyntax, SectionHeading } from '../../../grammar/syntax.ts';
import { formatLine } from '../format-line.ts';
import { type SaidWord, saidWords } from './retell/said-words.ts';
import { writeLines } from './write-lines.ts';

/** What is read and written again and again while a line is converted, each once. */
export interface Desk {
  readonly read: LineReader;
  readonly words: (line: LineSyntax) => readonly SaidWord[];
  readonly format: (text: string) => string;
  readonly canonical: (text: string) => string;
}
/** `under` is the section heading above the line. */
export function newDesk(under?: SectionHeading): Desk {
  const reader = rememberingReader();
  const read: LineReader = (text) => reader(text, under);
  return {
    read,
    words: once(saidWords),
    format: once((text) => formatLine(read(text))),
    canonical: once((text) => canonical(text, read)),
  };
}
function once<K, V>(make: (key: K) => V): (key: K) => V {
  const made = new Map<K, V>();
  return (key) => {
    const known = made.get(key);
    if (known !== undefined) return known;
    const fresh = make(key);
    made.set(key, fresh);
    return fresh;
  };
}

/** In the words of the language where that is one line that says the same. */
function canonical(text: string, read: LineReader): string {
  const line = read(text);
  for (const joining of ['none', 'labels'] as const) {
    const [only, more] = writeLines(line, joining);
    const written = only && !more ? formatLine(read(only.text)).replace(/ +/g, ' ') : undefined;
    if (written && meaningOf(read(written)) === meaningOf(line)) return written;
  }
  return text;
}
const meaningOf = ({ statements }: LineSyntax): string =>
  JSON.stringify(
    statements.flatMap(({ findings }) =>
      findings.map(({ id, section, status, side, subject, slots, causes, quotes }) => [
        id,
        section,
        status,
        side,
        subject && subjectText(subject),
        Object.entries(slots).map(([slot, { value }]) => [slot, value]),
        causes.length,
        quotes.map((quote) => quote.text),
      ]),
    ),
  );
