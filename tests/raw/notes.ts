import { readdirSync, readFileSync } from 'node:fs';

const FOLDER = new URL('./notes/', import.meta.url);
/** The day on which the raw notes are read. */
export const TODAY = '2026-07-02';

/** The raw notes as typed: `blind-…` by somebody who had not seen the lexicon, `own-…` after a look at the README. */
export const NOTES: readonly { readonly name: string; readonly text: string }[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.forefoot'))
  .sort()
  .map((file) => ({ name: file.replace('.forefoot', ''), text: readFileSync(new URL(file, FOLDER), 'utf8') }));
