import { readdirSync, readFileSync } from 'node:fs';
import { analyseNote } from '../../server/clinical/analyse-note.ts';
import type { AdvisedVisit } from '../../server/clinical/analysis.ts';
import { type ClinicNote, clinicNote } from '../../server/documents/clinic-note.ts';
import { type Sentence, textOf } from '../../server/documents/sentence.ts';

const NOTES = new URL('./notes/', import.meta.url);
/** The invented notes of this folder, by name. */
export const NOTE_NAMES: readonly string[] = readdirSync(NOTES)
  .filter((file) => file.endsWith('.forefoot'))
  .map((file) => file.replace(/\.forefoot$/, ''))
  .sort();
export const noteText = (name: string): string => readFileSync(new URL(`${name}.forefoot`, NOTES), 'utf8');

export interface WrittenVisit {
  readonly analysis: AdvisedVisit;
  readonly firstLine: number;
  readonly note: ClinicNote;
}

/** Reads a whole note and writes each of its visits. */
export function writeNote(text: string): WrittenVisit[] {
  const { header, visits } = analyseNote(text, '2026-11-24');
  return visits.map(({ analysis, firstLine }) => ({ analysis, firstLine, note: clinicNote(analysis, header) }));
}

/** What may be filed: stated sentences and the note's own words. */
export const filedSentences = (note: ClinicNote): Sentence[] =>
  note.sections.flatMap(({ sentences }) => sentences).filter(({ says }) => says === 'stated' || says === 'verbatim');

export const statementsOf = ({ runs }: Sentence): Set<string> =>
  new Set(runs.flatMap(({ from }) => from.map(({ statement }) => statement)));

/** What the note never says of itself: talks, consent that nobody wrote, causes, promises, normality by silence, a person's sex. */
const NEVER =
  /\b(discuss|understood|agree|consent|explained|risk|caused|because|due to|otherwise|safe|will|he|she|his|her)\b/i;

/** The words that are the note's own: no quotation, and no consent where the clinician stated it. */
const ofItself = (own: string, { runs }: Sentence): string => {
  const stated = runs.some(({ text, from }) => from.length > 0 && /\bconsent\b/i.test(text));
  return own.replace(/"[^"]*"/g, '').replace(stated ? /\bconsent\b/i : /(?!)/, '');
};

/** What every sentence has: a capital, one full stop, single spaces, no gap where a word should be. */
export function flawsOf(sentence: Sentence): string[] {
  const text = textOf(sentence);
  const own = sentence.says === 'verbatim' ? text.slice(0, text.search(/["“]/)) : text;
  return [
    ...(/^[A-Z]/.test(text) ? [] : ['no capital']),
    ...(/[.!?]["”]?$/.test(text) ? [] : ['no full stop']),
    ...(/ {2}/.test(text) ? ['double space'] : []),
    ...(sentence.says === 'stated' && NEVER.test(ofItself(own, sentence)) ? ['never written'] : []),
    ...(/undefined|null|NaN|\[object/.test(own) ? ['gap'] : []),
    ...(/\.\.| [,.;)]|\( |,,|\(\)/.test(own) ? ['punctuation'] : []),
  ].map((flaw) => `${flaw}: ${text}`);
}
