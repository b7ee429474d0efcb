import { reference } from './reference.ts';
import { textmate } from './textmate.ts';

/** One generated file: where it stands in the repository and what it holds. */
export interface Output {
  readonly path: string;
  readonly text: string;
}

/** Every generated file, made from the lexicon, the closed words, the reader and the rows of the settings. Pure. */
export const outputs = (settings: readonly (readonly string[])[]): Output[] => [
  { path: 'grammar/generated/forefoot.tmLanguage.json', text: `${JSON.stringify(textmate(), null, 2)}\n` },
  { path: 'grammar/LANGUAGE.md', text: reference(settings) },
];

/** The outputs whose file on disk differs; `read` gives `undefined` where there is none. */
export const staleOutputs = (all: readonly Output[], read: (path: string) => string | undefined): Output[] =>
  all.filter(({ path, text }) => read(path) !== text);
