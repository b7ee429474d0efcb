import { readdirSync, readFileSync } from 'node:fs';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import { clearFactsOf } from '../raw/measure.ts';

/** A dictated passage, and the lines that its speaker would have typed, written by hand before it was ever read. */
export interface Passage {
  readonly name: string;
  /** The visit line under which both are read. */
  readonly visit: string;
  readonly dictated: string;
  readonly typed: string;
}

const DEFAULT_VISIT = 'visit 2026-03-09 first right';
export const TODAY = '2026-07-02';

/** Every passage of a folder beside this file. */
export function passagesOf(folder: 'passages' | 'natural' | 'spoken'): Passage[] {
  const url = new URL(`./${folder}/`, import.meta.url);
  return readdirSync(url)
    .filter((file) => file.endsWith('.txt'))
    .sort()
    .map((file) => {
      const [dictated = '', rest = ''] = readFileSync(new URL(file, url), 'utf8').split(/^---\n/m);
      const lines = rest.trim().split('\n');
      const own = lines[0]?.startsWith('visit ') ? lines.shift() : undefined;
      return {
        name: file.replace('.txt', ''),
        visit: own ?? DEFAULT_VISIT,
        dictated: dictated.trim(),
        typed: lines.join('\n').trim(),
      };
    });
}

/** The clear facts that a text under a visit line says, each once. */
export function factsOf(visit: string, text: string): string[] {
  const note = analyseNote(`forefoot 1\nscales drawer 0-4\n\n${visit}\n${text}\n`, TODAY);
  // `second toe`, `second ray` and `2nd` are the same ray: one names the toe with it.
  return [...new Set(clearFactsOf(note).map(({ fact }) => fact.replace(/^(.* ray \d) (?:joint|toe): /, '$1: ')))];
}

/** Does a fact say less than one that was meant, and nothing else? What it leaves out is still marked as unread in the note. */
function saysLess(fact: string, meant: readonly string[]): boolean {
  const pieces = (text: string) => text.replace(/ unclear [a-z, ]+$/, '').split(/(?= [a-z]+ (?:words|low|date|ago)=)/);
  const [head, ...values] = pieces(fact);
  return meant.some((each) => {
    const [other, ...all] = pieces(each);
    return head === other && values.every((value) => all.includes(value));
  });
}

/** Facts that were meant and are read, meant and not wholly read, and read though nobody meant them. */
export interface Score {
  readonly placed: readonly string[];
  readonly verbatim: readonly string[];
  readonly wrong: readonly string[];
}
export function score({ visit, typed }: Passage, text: string): Score {
  const [meant, read] = [factsOf(visit, typed), factsOf(visit, text)];
  return {
    placed: meant.filter((fact) => read.includes(fact)),
    verbatim: meant.filter((fact) => !read.includes(fact)),
    wrong: read.filter((fact) => !meant.includes(fact) && !saysLess(fact, meant)),
  };
}
